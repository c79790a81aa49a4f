//! A fit as it is drawn: the zones of hole and shaft beside each other, tight below, large above.

use super::Sizes;
use crate::quantity::{Amount, Unit};

/// Heights in thousandths of the picture, 0 at the largest size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Zones {
    /// Greatest and least size of the hole.
    pub hole: (u16, u16),
    /// Greatest and least size of the shaft.
    pub shaft: (u16, u16),
    /// The nominal size; none where there is none.
    pub nominal: Option<u16>,
}

/// The zones of a fit; a nominal size is taken into the picture.
#[must_use]
pub fn zones(hole: Sizes, shaft: Sizes, nominal: Option<Amount>) -> Zones {
    let mm = |size: Amount| size.value(Unit::Millimetre);
    let sizes = [hole.least(), hole.greatest(), shaft.least(), shaft.greatest()];
    let all = sizes.into_iter().chain(nominal).map(mm);
    let (least, greatest) = all
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(least, greatest), size| {
            (least.min(size), greatest.max(size))
        });
    let place = |size: Amount| {
        let down = if greatest > least { (greatest - mm(size)) / (greatest - least) } else { 0.5 };
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "between 0 and 1000"
        )]
        let place = (down * 1000.0).round() as u16;
        place
    };
    Zones {
        hole: (place(hole.greatest()), place(hole.least())),
        shaft: (place(shaft.greatest()), place(shaft.least())),
        nominal: nominal.map(place),
    }
}
