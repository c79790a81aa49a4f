//! The relief: passes through every reading, fills the face once, keeps each band's heights.

use crate::{close_to, mm, number, points};
use pitleaf_core::faces::{Band, Point, Refusal, relief};
use pitleaf_core::quantity::Unit;
use proptest::prelude::*;

fn area(band: &Band) -> f64 {
    band.pieces
        .iter()
        .map(|piece| {
            let turned = piece.iter().cycle().skip(1);
            let twice: f64 = piece
                .iter()
                .zip(turned)
                .map(|(a, b)| number(a[0]) * number(b[1]) - number(b[0]) * number(a[1]))
                .sum();
            twice.abs() / 2.0
        })
        .sum()
}

fn square(heights: [f64; 5]) -> Vec<Point> {
    let places = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0), (50.0, 50.0)];
    let rows: Vec<_> = places.iter().zip(heights).map(|(&(x, y), z)| (x, y, z)).collect();
    points(&rows)
}

/// A pyramid of 10 mm² over 100 mm: the band above half its height is a quarter of its base.
#[test]
fn a_pyramid_in_two_bands() {
    let face = relief(&square([0.0, 0.0, 0.0, 0.0, 0.02])).expect("a relief");
    let bands = face.bands(Unit::Millimetre, 2);
    assert_eq!(bands.len(), 2, "two bands");
    close_to(bands[0].upper, 0.01, 1e-15);
    close_to(bands[1].lower, 0.01, 1e-15);
    assert!((area(&bands[0]) - 7_500.0).abs() < 1e-6, "lower band {}", area(&bands[0]));
    assert!((area(&bands[1]) - 2_500.0).abs() < 1e-6, "upper band {}", area(&bands[1]));
    close_to(face.height_at(mm(50.0), mm(25.0)).expect("inside"), 0.01, 1e-12);
    assert_eq!(face.height_at(mm(101.0), mm(50.0)), None, "nothing is shown outside");
}

#[test]
fn bands_are_round_in_the_unit_asked_for() {
    let face = relief(&square([0.0, 0.0, 0.0, 0.0, 0.0508])).expect("a relief");
    let thou = face.bands(Unit::Thou, 4);
    assert_eq!(thou.len(), 4, "2 thou in halves");
    close_to(thou[0].upper, 0.0127, 1e-12);
    assert_eq!(face.bands(Unit::Millimetre, 6).len(), 6, "51 µm in steps of 10");
}

#[test]
fn a_level_piece_on_an_edge_is_shown_once() {
    let face = relief(&square([0.01, 0.01, 0.02, 0.0, 0.01])).expect("a relief");
    let bands = face.bands(Unit::Millimetre, 2);
    let filled: Vec<f64> = bands.iter().map(area).collect();
    assert!((filled[0] - 3_750.0).abs() < 1e-6, "the lower band: {filled:?}");
    assert!((filled[1] - 6_250.0).abs() < 1e-6, "the level quarter lies in the upper: {filled:?}");
}

/// Binary floats hold 15 µm and three steps of 5 µm as two numbers, and 35 µm is 7.000 000 000 000 001 steps.
#[test]
fn level_pieces_at_the_ends_are_shown() {
    for (top, bottom, most) in [(15.0, -16.0, 7), (35.0, -20.0, 11)] {
        for sign in [1.0, -1.0] {
            let heights = [top, top, bottom, 0.0, top].map(|height| sign * height / 1_000.0);
            let bands = relief(&square(heights)).expect("a relief").bands(Unit::Millimetre, most);
            let filled: Vec<f64> = bands.iter().map(area).collect();
            assert_eq!(filled.len(), usize::from(most), "steps of 5 µm: {filled:?}");
            assert!((filled.iter().sum::<f64>() - 10_000.0).abs() < 1e-6, "all shown: {filled:?}");
            assert!(filled.iter().all(|&area| area > 0.0), "no empty band: {filled:?}");
        }
    }
}

#[test]
fn a_true_plane_is_one_band() {
    let bands = relief(&square([0.0; 5])).expect("a relief").bands(Unit::Micrometre, 8);
    let filled: Vec<f64> = bands.iter().map(area).collect();
    assert_eq!(filled.len(), 1, "{filled:?}");
    assert!((filled[0] - 10_000.0).abs() < 1e-6, "all of the face: {filled:?}");
}

#[test]
fn places_on_a_line_have_no_relief() {
    let line = points(&[(0.0, 0.0, 0.0), (1.0, 1.0, 0.0), (2.0, 2.0, 0.0), (5.0, 5.0, 0.0)]);
    assert_eq!(relief(&line), Err(Refusal::OneLine), "a line");
    let two = Refusal::TooFew { found: "a relief", given: 2, needed: 3 };
    assert_eq!(relief(&line[..2]), Err(two), "two points");
}

proptest! {
    #[test]
    fn bands_fill_the_face_once_and_keep_their_heights(
        heights in prop::array::uniform5(-20..20_i32),
        most in 2..12_u8,
        thou in prop::bool::ANY,
    ) {
        let (unit, size) = if thou { (Unit::Thou, 0.0254) } else { (Unit::Millimetre, 0.001) };
        let face = square(heights.map(|height| f64::from(height) * size));
        let relief = relief(&face).expect("a relief");
        let bands = relief.bands(unit, most);
        for band in [bands.first(), bands.last()].into_iter().flatten() {
            prop_assert!(area(band) > 0.0, "an empty band at an end: {bands:?}");
        }
        prop_assert!(bands.len() <= usize::from(most), "{} bands, {most} wanted", bands.len());
        let filled: f64 = bands.iter().map(area).sum();
        prop_assert!((filled - 10_000.0).abs() < 1e-6, "{filled} mm² of 10,000");
        for band in &bands {
            for piece in &band.pieces {
                let count = f64::from(u8::try_from(piece.len()).expect("a few corners"));
                let middle = [0, 1].map(|axis| mm(piece.iter().map(|c| number(c[axis])).sum::<f64>() / count));
                let height = number(relief.height_at(middle[0], middle[1]).expect("inside"));
                let within = height >= number(band.lower) - 1e-9 && height <= number(band.upper) + 1e-9;
                prop_assert!(within, "{height} in {} to {}", number(band.lower), number(band.upper));
            }
        }
        for point in &face {
            let height = relief.height_at(point.x, point.y).expect("a reading");
            prop_assert!((number(height) - number(point.z)).abs() < 1e-12, "through the reading");
        }
    }
}
