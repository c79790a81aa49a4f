//! Answers of `faces` to cases on standard input, one a line, for `tests/reference/faces.py` to compare.
//!
//! A line is a word and numbers in millimetres; the answer is a line of numbers in millimetres.

use pitleaf_core::faces::{Point, Reference, flatness};
use std::error::Error;
use std::io::{BufRead, stdin};
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
    match word {
        "flatness" => {
            let points: Vec<Point> = numbers
                .chunks_exact(3)
                .map(|point| Point { x: mm(point[0]), y: mm(point[1]), z: mm(point[2]) })
                .collect();
            let zone = flatness(&points, Reference::MinimumZone)?;
            let squares = flatness(&points, Reference::LeastSquares)?;
            let unit = mm(1.0);
            Ok([zone.value(), squares.value(), zone.uncertainty(unit), squares.uncertainty(unit)]
                .map(|length| length.get::<millimeter>())
                .to_vec())
        }
        _ => Err(format!("no such case: {word}").into()),
    }
}

fn mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}
