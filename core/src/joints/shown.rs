//! Results as text and on a scale: a range stays a range, and shows no more figures than it has.

use super::Range;
use super::bounds::Plain;
use crate::quantity::without_zeros;
use crate::quantity::{Amount, Bounds, Rounding, Unit};
use pitleaf_translated::translated;

/// Figures that count: friction and castings are never known to more.
const FIGURES: u8 = 3;

/// A plain number to nearest, with a number of decimals.
#[must_use]
pub fn plain(value: f64, places: u8) -> String {
    // A number is written as a length is: whole ticks, and no printing of floats on the phone.
    Amount::nearest(value, Unit::Metre).map_or_else(
        || "–".to_owned(),
        |amount| amount.show(Unit::Metre, places, Rounding::Nearest),
    )
}

/// A plain number with no more decimals than it needs, or `most` to nearest.
#[must_use]
pub fn shortest(value: f64, most: u8) -> String {
    without_zeros(&plain(value, most)).to_owned()
}

/// A range of plain numbers, each with no more decimals than it needs, or `most` to nearest.
#[must_use]
pub fn shortest_range(range: Range<f64>, most: u8) -> String {
    joined(&shortest(range.least(), most), &shortest(range.greatest(), most))
}

/// A range in a unit, with its symbol: `12.3…18.1 kN`; one figure where both ends show alike.
///
/// `amount` is how the quantity becomes an [`Amount`]: `Amount::of_force`, `Amount::of_length`.
#[must_use]
pub fn range<Q: Copy + PartialOrd>(
    range: Range<Q>,
    amount: impl Fn(Q) -> Option<Amount>,
    unit: Unit,
) -> String {
    let ends = (amount(range.least()), amount(range.greatest()));
    let (Some(least), Some(greatest)) = ends else { return "–".to_owned() };
    let (least, greatest) = (least.value(unit), greatest.value(unit));
    let figure = figures(least.abs().max(greatest.abs()), unit);
    format!("{} {}", joined(&figure(least), &figure(greatest)), unit.symbol())
}

/// How a figure is shown beside one of this size: [`FIGURES`] figures of the size, in tens or hundreds
/// where it has more before the point.
fn figures(size: f64, unit: Unit) -> impl Fn(f64) -> String {
    let places = places(size);
    let mut step = 1.0;
    while size / step >= 1000.0 && size.is_finite() {
        step *= 10.0;
    }
    move |value| {
        Amount::nearest((value / step).round_ties_even() * step, unit)
            .filter(|_| step > 1.0)
            .or_else(|| Amount::nearest(value, unit))
            .map_or_else(|| "–".to_owned(), |amount| amount.show(unit, places, Rounding::Nearest))
    }
}

/// A range of plain numbers, to three figures of the greater.
#[must_use]
pub fn plain_range(range: Range<f64>) -> String {
    let figure = figures(range.least().abs().max(range.greatest().abs()), Unit::Metre);
    joined(&figure(range.least()), &figure(range.greatest()))
}

/// A range of shares in whole percent.
#[must_use]
pub fn percent(range: Range<f64>) -> String {
    format!("{} %", joined(&plain(range.least() * 100.0, 0), &plain(range.greatest() * 100.0, 0)))
}

/// What a field takes: `1 to 1000 N·m`.
#[must_use]
#[translated]
pub fn bounds(bounds: &Bounds, unit: Unit) -> String {
    let edge = |amount: Amount, inward| without_zeros(&amount.show(unit, 2, inward)).to_owned();
    format!(
        "{} to {} {}",
        edge(bounds.least(), Rounding::Up),
        edge(bounds.greatest(), Rounding::Down),
        unit.symbol()
    )
}

/// What a field of a plain number takes: `0.05 to 0.5`.
#[must_use]
#[translated]
pub fn plain_bounds(bounds: &Plain) -> String {
    let words = format!("{} to {}", shortest(bounds.least, 2), shortest(bounds.greatest, 2));
    if bounds.symbol.is_empty() { words } else { format!("{words} {}", bounds.symbol) }
}

/// Ranges on one scale from nothing to the greatest of all, in thousandths of it; what lies below
/// nothing stands at 0.
#[must_use]
pub fn on_scale(ranges: &[Range<f64>]) -> Vec<(u16, u16)> {
    let greatest = ranges.iter().map(|range| range.greatest()).fold(0.0, f64::max);
    let place = |value: f64| {
        let share = if greatest > 0.0 { (value / greatest).clamp(0.0, 1.0) } else { 0.0 };
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "between 0 and 1000"
        )]
        let place = (share * 1000.0).round() as u16;
        place
    };
    ranges.iter().map(|range| (place(range.least()), place(range.greatest()))).collect()
}

fn joined(least: &str, greatest: &str) -> String {
    if least == greatest { least.to_owned() } else { format!("{least}…{greatest}") }
}

/// Decimals that leave [`FIGURES`] figures of a size; none above a hundred, six at most.
fn places(size: f64) -> u8 {
    const MOST: u8 = 6;
    let mut places = FIGURES - 1;
    let mut size = size;
    while size >= 10.0 && places > 0 {
        size /= 10.0;
        places -= 1;
    }
    while size < 1.0 && size > 0.0 && places < MOST {
        size *= 10.0;
        places += 1;
    }
    places
}
