//! What is typed where a range may stand: `12…18`, `12 to 18 kN`, or one figure.

use super::bounds::Plain;
use super::{Range, Refusal};
use crate::quantity::{Amount, Bounds, Reading, Unit};

/// Between the two ends: as it is shown, and as it is typed on a phone.
const BETWEEN: [&str; 6] = ["…", "...", "..", " to ", " bis ", "–"];

fn ends(text: &str) -> (&str, &str) {
    BETWEEN
        .iter()
        .find_map(|between| text.split_once(between))
        .or_else(|| inner_hyphen(text))
        .unwrap_or((text, text))
}

/// A hyphen behind the first character is no minus.
fn inner_hyphen(text: &str) -> Option<(&str, &str)> {
    let text = text.trim();
    let place = text.char_indices().skip(1).find(|(_, letter)| *letter == '-')?.0;
    Some((&text[..place], &text[place + 1..]))
}

/// Reads one figure or two ends of a quantity; a unit behind one end alone holds for both.
///
/// # Errors
/// As [`Reading::read`]; [`Refusal::EndsSwapped`] where the first end is the greater.
///
/// # Examples
/// ```
/// use pitleaf_core::joints::{bounds, typed};
/// use pitleaf_core::quantity::{Amount, Unit};
/// let (least, greatest) = typed::range("12…18 kN", Unit::PoundForce, &bounds::PRELOAD)?;
/// assert_eq!(least, Amount::whole(12, Unit::Kilonewton));
/// assert_eq!(greatest, Amount::whole(18, Unit::Kilonewton));
/// # Ok::<(), pitleaf_core::joints::Refusal>(())
/// ```
pub fn range(text: &str, unit: Unit, bounds: &'static Bounds) -> Result<(Amount, Amount), Refusal> {
    let (least, greatest) = ends(text);
    // A unit behind the first end alone holds for both as well.
    let unit = Reading::read(least, unit, bounds).map_or(unit, |least| least.unit());
    let greatest = Reading::read(greatest, unit, bounds)?;
    let least = Reading::read(least, greatest.unit(), bounds)?.amount();
    match least.order(greatest.amount()) {
        Some(order) if order.is_le() => Ok((least, greatest.amount())),
        _ => Err(Refusal::EndsSwapped),
    }
}

/// Reads one plain number or two ends.
///
/// # Errors
/// As [`Plain::read`]; [`Refusal::EndsSwapped`].
pub fn plain(text: &str, bounds: &'static Plain) -> Result<Range<f64>, Refusal> {
    let (least, greatest) = ends(text);
    Range::new(bounds.read(least)?, bounds.read(greatest)?).ok_or(Refusal::EndsSwapped)
}

/// Reads a count.
///
/// # Errors
/// [`Refusal::Count`] for anything but a whole number up to `most`.
pub fn count(text: &str, most: u16) -> Result<u16, Refusal> {
    text.trim().parse().ok().filter(|count| *count <= most).ok_or(Refusal::Count(most))
}
