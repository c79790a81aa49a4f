//! Short cautions for the places where the work can hurt.

use pitleaf_translated::{tr, translated};
use std::fmt;

/// What can hurt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// Tightening close to yield.
    YieldingBolt,
    /// Oil under pressure.
    OilPressure,
    /// Oil near an exhaust.
    HotOil,
    /// A pin from liquid nitrogen.
    LiquidNitrogen,
    /// A housing from the oven.
    HotHousing,
    /// A drill press or mill.
    Drilling,
}

impl fmt::Display for Caution {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::YieldingBolt => "A bolt that yields can break under the wrench: pull, don’t push, and keep your face out of line.",
            Self::OilPressure => "Oil under pressure goes through skin: never feel for a leak with the hand.",
            Self::HotOil => "Oil on a hot exhaust burns: route and shield the line, and check every joint before the first start.",
            Self::LiquidNitrogen => "Liquid nitrogen freezes skin and drives out the air: face shield, loose dry gloves, open doors, tongs.",
            Self::HotHousing => "A warm housing looks like a cold one: dry gloves, mark it hot, and keep solvents away.",
            Self::Drilling => "Clamp the part, eye protection on, no gloves at a turning spindle.",
        })
    }
}

/// What stands over every figure of the joints.
pub const ABOVE_ALL: &str = tr!("The engine’s own manual and local rules stand above this figure.");
