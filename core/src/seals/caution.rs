//! Cautions and reminders, each at the step where it matters. Common practice, no published source.

use pitleaf_translated::translated;

/// The steps that need a word of warning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Step {
    /// Grinding a seal's end.
    Grinding,
    /// Measuring after grinding.
    Measuring,
    /// Putting springs under seals, or taking them out.
    Springs,
    /// Setting corner seals before the apex seals go in.
    CornerSeals,
    /// Choosing which end to grind.
    WhichEnd,
}

impl Step {
    /// Every step.
    pub const ALL: [Self; 5] =
        [Self::Grinding, Self::Measuring, Self::Springs, Self::CornerSeals, Self::WhichEnd];

    /// What to say there.
    #[must_use]
    #[translated]
    pub fn caution(self) -> &'static str {
        match self {
            Self::Grinding => {
                "Wear eye protection. Keep fingers and loose sleeves off a turning wheel, and hold the seal so that it can’t be thrown."
            }
            Self::Measuring => {
                "Hone the burr off the ground end before you measure: a burr reads as a tighter gap than there is."
            }
            Self::Springs => {
                "Springs fly. Wear eye protection, and keep a hand over each until it is held."
            }
            Self::CornerSeals => {
                "A corner seal that has turned in its bore no longer lets the apex seal down. Line its slot up with the groove before you go on."
            }
            Self::WhichEnd => {
                "Leave the end its maker radiused as it is. Grind the square end, and keep it square."
            }
        }
    }
}
