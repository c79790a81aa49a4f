//! The unit a reading is typed in, from the limit to the figure that is written.

use super::read;
use Unit::*;
use pitleaf_core::limits::{Input, LengthsIn, Row, Sheet};
use pitleaf_core::quantity::{Dimension, Reading, Unit};

fn row(id: &str) -> Row {
    Sheet::starter().row(id).unwrap_or_else(|| panic!("no {id}")).clone()
}

#[test]
fn a_limit_is_typed_as_it_is_written_unless_the_builder_wants_it_otherwise() {
    use LengthsIn::{AsWritten, Millimetre as InMillimetres, Thou as InThou};
    for (id, written, metric, inch) in [
        ("side-seal-gap-na", Thou, Millimetre, Thou),
        ("end-play", Millimetre, Millimetre, Thou),
        ("rotor-housing-width", Millimetre, Millimetre, Inch),
        ("compression-na", Kilopascal, Kilopascal, Kilopascal),
        ("front-bolt-torque", NewtonMetre, NewtonMetre, NewtonMetre),
    ] {
        let row = row(id);
        let got = [AsWritten, InMillimetres, InThou].map(|lengths| row.unit_in(lengths));
        assert_eq!(got, [written, metric, inch], "{id}");
    }
    assert_eq!(LengthsIn::default(), AsWritten, "as long as nothing is set");
}

#[test]
fn every_row_is_typed_in_a_unit_of_what_it_measures() {
    for row in Sheet::starter().rows() {
        for lengths in [LengthsIn::AsWritten, LengthsIn::Millimetre, LengthsIn::Thou] {
            let unit = row.unit_in(lengths);
            assert_eq!(unit.dimension(), row.unit.dimension(), "{}", row.id);
            let is_size = row.input == Input::Size && row.unit.dimension() == Dimension::Length;
            assert!(!(is_size && unit == Thou), "{}: a size of thousands of thou", row.id);
        }
    }
}

/// A figure is kept as its number and its unit: the unit behind it is not lost, nor the one in hand put in its
/// place.
#[test]
fn what_is_written_is_what_was_read() {
    for (typed, hand) in [
        (".003\"", Thou),
        ("2½", Thou),
        ("0,06 mm", Thou),
        ("1 1/8 in", Millimetre),
        ("1/64 mm", Inch),
        ("105 psi", Bar),
        ("180°", Fahrenheit),
    ] {
        let reading = read(typed, hand);
        let kept = read(reading.number(), reading.unit());
        assert_eq!(kept.amount(), reading.amount(), "{typed} under {}", hand.symbol());
        let beside = if typed.ends_with('°') { hand } else { Reading::unit_of(typed, hand) };
        assert_eq!(reading.unit(), beside, "{typed}: the unit beside the figure");
        if let Some(bare) = Reading::without_unit(typed) {
            assert_eq!(read(&bare, hand).unit(), hand, "{typed}: a unit pressed takes its place");
        }
    }
    assert_eq!(Reading::unit_of("3 N·m", Thou), Thou, "a torque is no unit of a gap");
    assert_eq!(Reading::without_unit("2½"), None, "nothing to take off");
    assert_eq!(Reading::without_unit("11 mm ± 0.3"), None, "nothing typed is lost");
}
