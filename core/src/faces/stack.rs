//! The stack: widths of the housings, its length, and the room of rotors and apex seals in it.

use super::Refusal;
use super::clearance::{Clearance, Sizes};
use super::flatness::Point;
use super::input::{PLACE, UNCERTAINTY, all_taken, extremes, mean, mm, of_mm, taken};
use super::least_squares::fit;
use super::uncertainty::{Contribution, Doubt, Measured, combined};
use crate::quantity::Bounds;
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// The width of a housing, a rotor or a seal, from several places.
#[derive(Clone, Debug, PartialEq)]
pub struct Widths {
    /// Least, mean and greatest.
    pub sizes: Sizes,
    /// The doubt of the mean, in its two parts.
    pub mean_doubt: Doubt,
    /// Greatest less least.
    pub spread: Length,
    /// Where the least is.
    pub least_at: usize,
    /// Where the greatest is.
    pub greatest_at: usize,
    /// The place farthest from the mean, the first of equals.
    pub worst_at: usize,
}

/// Sums up a width read at one or more places.
///
/// # Errors
/// [`Refusal::TooFew`] without a reading, [`Refusal::OutOfBounds`] (widths within [`Bounds::SIZE`]).
#[translated]
pub fn widths(readings: &[Length], doubt: &Doubt) -> Result<Widths, Refusal> {
    let values = all_taken(readings, &Bounds::SIZE, "a width", 1)?;
    let single = doubt.taken()?.single();
    let mean_doubt = doubt.of_mean(values.len());
    let ((least_at, least), (greatest_at, greatest)) = extremes(&values);
    let middle = mean(&values);
    let off: Vec<f64> = values.iter().map(|value| (value - middle).abs()).collect();
    let measured = |value: f64, uncertainty| Measured { value: of_mm(value), uncertainty };
    Ok(Widths {
        sizes: Sizes {
            least: measured(least, single),
            mean: measured(middle, mean_doubt.single()),
            greatest: measured(greatest, single),
        },
        mean_doubt,
        spread: of_mm(greatest - least),
        least_at,
        greatest_at,
        worst_at: extremes(&off).1.0,
    })
}

/// The taper of a housing: how much its width changes steadily from one side to the other, over the
/// places read, and what remains of the spread when that is taken off (waves and burrs).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taper {
    /// Change of width across the places, along the steepest direction's plane.
    pub across: Length,
    /// The place where the plane is widest.
    pub widest: usize,
    /// Greatest less least of what remains.
    pub rest: Length,
}

/// Finds the taper from widths at places on the housing: each point's z is the width there.
///
/// # Errors
/// [`Refusal::TooFew`] under three points, [`Refusal::OneLine`], [`Refusal::OutOfBounds`] (places within a
/// metre, widths within [`Bounds::SIZE`]).
pub fn taper(widths: &[Point]) -> Result<Taper, Refusal> {
    let all = |part: fn(&Point) -> Length, bounds| {
        all_taken(&widths.iter().map(part).collect::<Vec<_>>(), bounds, "taper", 3)
    };
    let (x, y) = (all(|point| point.x, &PLACE)?, all(|point| point.y, &PLACE)?);
    let z = all(|point| point.z, &Bounds::SIZE)?;
    let (x_middle, y_middle) = (mean(&x), mean(&y));
    let rows: Vec<[f64; 3]> =
        x.iter().zip(&y).map(|(x, y)| [1.0, x - x_middle, y - y_middle]).collect();
    let plane = fit(&rows, &z).ok_or(Refusal::OneLine)?;
    let level: Vec<f64> = rows.iter().map(|row| plane.at(row)).collect();
    let rest: Vec<f64> = level.iter().zip(&z).map(|(level, z)| z - level).collect();
    let ((_, narrow), (widest, wide)) = extremes(&level);
    let ((_, low), (_, high)) = extremes(&rest);
    Ok(Taper { across: of_mm(wide - narrow), widest, rest: of_mm(high - low) })
}

/// A part of the stack.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StackPart {
    /// Its mean width.
    pub width: Length,
    /// The doubt of that mean.
    pub doubt: Doubt,
    /// Which gauge: one number for each on the bench.
    pub gauge: u8,
}

impl Widths {
    /// The part as it goes into the stack, measured with gauge number `gauge`.
    #[must_use]
    pub fn in_stack(&self, gauge: u8) -> StackPart {
        StackPart { width: self.sizes.mean.value, doubt: self.mean_doubt, gauge }
    }
}

/// The length of the stack as measured.
///
/// One micrometer's error goes into every part it measured with the same sign: those add up, they don't
/// average out.
///
/// # Errors
/// [`Refusal::TooFew`] without a part; [`Refusal::OutOfBounds`] (widths within [`Bounds::SIZE`]).
#[translated]
pub fn stack_length(parts: &[StackPart]) -> Result<Measured, Refusal> {
    let widths: Vec<Length> = parts.iter().map(|part| part.width).collect();
    let widths = all_taken(&widths, &Bounds::SIZE, "the stack’s length", 1)?;
    let mut contributions = Vec::with_capacity(2 * parts.len());
    for (reading, part) in parts.iter().enumerate() {
        let doubts = [(part.doubt.scatter, None), (part.doubt.gauge, Some(part.gauge))];
        for (uncertainty, shared) in doubts {
            taken(uncertainty, &UNCERTAINTY, Some(reading))?;
            contributions.push(Contribution { sensitivity: 1.0, uncertainty, shared });
        }
    }
    Ok(Measured { value: of_mm(widths.iter().sum()), uncertainty: combined(&contributions) })
}

/// The room of a rotor between its side housings, per face: half of housing less rotor, the rotor in the middle.
#[must_use]
pub fn rotor_side_clearance(housing: &Widths, rotor: &Widths) -> Clearance {
    Clearance::of(&housing.sizes, &rotor.sizes).per_side()
}

/// The end gap of an apex seal over both ends: the rotor housing's width less the seal's length.
#[must_use]
pub fn apex_seal_end_gap(housing: &Widths, seal: &Widths) -> Clearance {
    Clearance::of(&housing.sizes, &seal.sizes)
}

/// How much the housings' mean widths differ: greatest less least, and which they are (least, greatest).
///
/// None without a housing.
#[must_use]
pub fn housings_apart(housings: &[Widths]) -> Option<(Measured, usize, usize)> {
    let means: Vec<f64> = housings.iter().map(|housing| mm(housing.sizes.mean.value)).collect();
    if means.is_empty() {
        return None;
    }
    let ((least, _), (greatest, _)) = extremes(&means);
    let apart = housings[greatest].sizes.mean.minus(&housings[least].sizes.mean);
    Some((apart, least, greatest))
}
