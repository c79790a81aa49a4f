//! A reading of a set that is off by a factor 25.4: asked about, never changed.

use super::input::{extremes, mm};
use crate::quantity::{Reading, Unit};
use pitleaf_translated::translated;
use std::fmt;

/// A reading that would fall in with the others if it were 25.4 times as large, or as small.
#[derive(Clone, Debug, PartialEq)]
pub struct UnitSlip {
    /// Which reading, from 0.
    pub reading: usize,
    /// The figure alone.
    text: String,
    /// As typed, with its unit.
    pub typed: String,
    /// The other unit in which the same figure would fall in; none where the factor goes the other way,
    /// as when a figure was converted by hand and then typed in the wrong unit.
    pub meant: Option<Unit>,
    /// The least and the greatest of the others, as typed, each with its unit.
    pub others: (String, String),
}

/// The factor between inch and millimetre, and between thou and micrometre.
const FACTOR: f64 = 25.4;

/// The readings to ask about. A set needs at least three readings, most of them right.
///
/// A reading is asked about when it lies apart from the others by more than their own spread, and comes to
/// lie among them when multiplied or divided by 25.4. Readings that are no lengths are left alone.
#[must_use]
pub fn unit_slips(readings: &[Reading]) -> Vec<UnitSlip> {
    const NEEDED: usize = 3;
    let values: Option<Vec<f64>> =
        readings.iter().map(|reading| reading.amount().length().map(mm)).collect();
    let Some(values) = values.filter(|values| values.len() >= NEEDED) else {
        return Vec::new();
    };
    let mut sizes: Vec<f64> = values.iter().map(|value| value.abs()).collect();
    sizes.sort_by(f64::total_cmp);
    let typical = sizes[(sizes.len() - 1) / 2];
    // Halfway to a slip on a scale of ratios: nearer than that belongs to the set.
    let reach = FACTOR.sqrt();
    let belongs = |value: f64| value.abs() <= typical * reach && value.abs() * reach >= typical;
    let rest: Vec<usize> = (0..values.len()).filter(|&place| belongs(values[place])).collect();
    if typical == 0.0 || rest.len() * 2 <= values.len() {
        return Vec::new();
    }
    let of_rest: Vec<f64> = rest.iter().map(|&place| values[place]).collect();
    let ((low_at, low), (high_at, high)) = extremes(&of_rest);
    let width = high - low;
    // A set of sizes is narrow, so a slip comes back only near it: a tenth covers what parts differ by.
    let near = width.max(typical / 10.0);
    let apart = |value: f64| value < low - near || value > high + near;
    let among = |value: f64| value >= low - near / 2.0 && value <= high + near / 2.0;
    (0..values.len())
        .filter(|place| !rest.contains(place) && apart(values[*place]))
        .filter_map(|place| {
            let factor = [FACTOR, 1.0 / FACTOR].into_iter().find(|f| among(values[place] * f))?;
            let unit = readings[place].unit();
            Some(UnitSlip {
                reading: place,
                text: readings[place].number().to_owned(),
                typed: typed(&readings[place]),
                meant: other_unit(unit, factor > 1.0),
                others: (typed(&readings[rest[low_at]]), typed(&readings[rest[high_at]])),
            })
        })
        .collect()
}

/// The unit in which a figure is 25.4 times as much (or as little) as in this one.
fn other_unit(unit: Unit, larger: bool) -> Option<Unit> {
    match (unit, larger) {
        (Unit::Millimetre, true) => Some(Unit::Inch),
        (Unit::Inch, false) => Some(Unit::Millimetre),
        (Unit::Micrometre, true) => Some(Unit::Thou),
        (Unit::Thou, false) => Some(Unit::Micrometre),
        _ => None,
    }
}

fn typed(reading: &Reading) -> String {
    format!("{} {}", reading.number(), reading.unit().symbol())
}

impl fmt::Display for UnitSlip {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (place, typed, (least, greatest)) = (self.reading + 1, &self.typed, &self.others);
        write!(
            f,
            "Reading {place}: {typed} stands apart; the others lie between {least} and {greatest}. "
        )?;
        match self.meant {
            Some(meant) => write!(f, "Was it {} {}?", self.text, meant.symbol()),
            None => {
                f.write_str("It is off by about 25.4, the factor between mm and in. Read it again?")
            }
        }
    }
}
