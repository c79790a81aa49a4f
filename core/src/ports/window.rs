//! The times between which a port may be open, by its own dead centres.

use pitleaf_translated::translated;
use uom::si::{angle::degree, f64::Angle};

use super::{Flow, Opening, View};
use crate::trochoid::Chamber;

/// When a port may open at the earliest and close at the latest.
///
/// An intake is counted from the gas-exchange top and its own bottom, an exhaust from the expansion
/// bottom and the gas-exchange top. Below zero is before the dead centre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// After its first dead centre.
    pub opens: Angle,
    /// After its second.
    pub closes: Angle,
}

impl Window {
    /// The dead centres in words, and where they are in the cycle.
    #[must_use]
    #[translated]
    pub const fn centres(flow: Flow) -> [(&'static str, f64); 2] {
        match flow {
            Flow::Intake => [("top", 0.0), ("bottom", 270.0)],
            Flow::Exhaust => [("bottom", -270.0), ("top", 0.0)],
        }
    }

    /// The times of an opening.
    #[must_use]
    pub fn of(flow: Flow, view: View, opening: &Opening) -> Self {
        let [(_, first), (_, second)] = Self::centres(flow);
        let after = |theta: Angle, centre: f64| {
            let angle = view.cycle_angle(Chamber::First, theta).get::<degree>() - centre;
            Angle::new::<degree>((angle + 540.0).rem_euclid(1080.0) - 540.0)
        };
        Self {
            opens: after(opening.opens(Chamber::First), first),
            closes: after(opening.closes(Chamber::First), second),
        }
    }

    /// As shaft angles θ of the first chamber, the closing after the opening.
    #[must_use]
    pub fn thetas(self, flow: Flow, view: View) -> (Angle, Angle) {
        let [(_, first), (_, second)] = Self::centres(flow);
        let opens = view.theta(self.opens + Angle::new::<degree>(first));
        let span = Angle::new::<degree>(second - first) + self.closes - self.opens;
        (opens, opens + span)
    }
}
