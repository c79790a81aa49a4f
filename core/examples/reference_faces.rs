//! Answers of `faces` to cases on standard input, one a line, for `tests/reference/faces.py` to compare.
//!
//! A line is a word and numbers in millimetres; the answer is a line of numbers in millimetres (a
//! direction in radians).

use pitleaf_core::faces::{
    Doubt, Measured, Point, Reference, StackPart, bearing_clearance, cylinder, flatness,
    least_squares_circle, runout, stack_length, step_and_warp,
};
use std::error::Error;
use std::io::{BufRead, stdin};
use uom::si::angle::radian;
use uom::si::f64::Length;
use uom::si::length::millimeter;

fn main() -> Result<(), Box<dyn Error>> {
    for line in stdin().lock().lines() {
        let line = line?;
        let mut pieces = line.split_whitespace();
        let word = pieces.next().ok_or("an empty line")?;
        let numbers = pieces.map(str::parse).collect::<Result<Vec<f64>, _>>()?;
        let answers = answer(word, &numbers)?;
        let answers: Vec<String> = answers.iter().map(|answer| format!("{answer:.17e}")).collect();
        println!("{}", answers.join(" "));
    }
    Ok(())
}

fn answer(word: &str, numbers: &[f64]) -> Result<Vec<f64>, Box<dyn Error>> {
    Ok(match word {
        // x y z …
        "flatness" => {
            let points = points(numbers.chunks_exact(3));
            let zone = flatness(&points, Reference::MinimumZone)?.measured(&doubt(1.0, 0.0));
            let squares = flatness(&points, Reference::LeastSquares)?.measured(&doubt(1.0, 0.0));
            pairs(&[zone, squares])
        }
        // u, then x y z swept …
        "step" => {
            let rows = numbers[1..].chunks_exact(4);
            let swept: Vec<bool> = rows.clone().map(|row| row[3] > 0.5).collect();
            let apart = step_and_warp(&points(rows), &swept, &doubt(numbers[0], 0.0))?;
            let mut all = pairs(&[apart.step]);
            all.extend([apart.warp, apart.rest].map(number));
            all
        }
        // x y …
        "circle" => {
            let points: Vec<[Length; 2]> =
                numbers.chunks_exact(2).map(|point| [mm(point[0]), mm(point[1])]).collect();
            let circle = least_squares_circle(&points)?;
            [circle.x, circle.y, circle.radius, circle.roundness].map(number).to_vec()
        }
        // u, then readings
        "runout" => {
            let turn = runout(&lengths(&numbers[1..]), &doubt(numbers[0], 0.0))?;
            let mut all = pairs(&[turn.eccentricity]);
            all.extend([turn.direction.get::<radian>(), number(turn.out_of_round)]);
            all
        }
        // scatter and gauge of the bore, of the journal, directions (2 or 3), then the bore's and the journal's diameters
        "clearance" => {
            let [bore_scatter, bore_gauge, journal_scatter, journal_gauge, directions] =
                numbers[..5]
            else {
                return Err("five figures before the diameters".into());
            };
            let (bore, journal) = numbers[5..].split_at((numbers.len() - 5) / 2);
            let places = |all: &[f64]| -> Vec<Vec<Length>> {
                let directions = usize::from(directions > 2.5) + 2;
                all.chunks_exact(directions).map(lengths).collect()
            };
            let bore = cylinder(&places(bore), &doubt(bore_scatter, bore_gauge))?;
            let journal = cylinder(&places(journal), &doubt(journal_scatter, journal_gauge))?;
            let room = bearing_clearance(&bore, &journal);
            let taper = bore.taper.ok_or("two places at least")?;
            pairs(&[room.least, room.mean, room.most, taper])
        }
        // width, scatter, gauge error, gauge …
        "stack" => {
            let parts: Vec<StackPart> = numbers
                .chunks_exact(4)
                .map(|part| StackPart {
                    width: mm(part[0]),
                    doubt: doubt(part[1], part[2]),
                    gauge: u8::from(part[3] > 0.5),
                })
                .collect();
            pairs(&[stack_length(&parts)?])
        }
        _ => return Err(format!("no such case: {word}").into()),
    })
}

fn points<'numbers>(rows: impl Iterator<Item = &'numbers [f64]>) -> Vec<Point> {
    rows.map(|row| Point { x: mm(row[0]), y: mm(row[1]), z: mm(row[2]) }).collect()
}

fn lengths(numbers: &[f64]) -> Vec<Length> {
    numbers.iter().copied().map(mm).collect()
}

/// Values and uncertainties, one after the other.
fn pairs(measured: &[Measured]) -> Vec<f64> {
    measured.iter().flat_map(|one| [one.value, one.uncertainty]).map(number).collect()
}

fn doubt(scatter: f64, gauge: f64) -> Doubt {
    Doubt { scatter: mm(scatter), gauge: mm(gauge) }
}

fn mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}

fn number(length: Length) -> f64 {
    length.get::<millimeter>()
}
