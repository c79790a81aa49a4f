//! What an answer rests on; the weakest is named beside it.

use super::Range;
use pitleaf_translated::translated;
use std::fmt;
use uom::num_traits::Zero;

/// Something an answer takes for granted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Assumption {
    /// How greasy the threads are.
    NutFactor,
    /// How evenly the wrench pulls.
    Scatter,
    /// What the clamp comes to.
    Clamp,
    /// How high the pressure peaks.
    FiringPressure,
    /// How a load parts between fastener and joint.
    LoadShare,
    /// How slippery the faces are.
    Friction,
    /// How far the torque peaks over its mean.
    PeakFactor,
    /// How strong the dowels are.
    ShearStrength,
    /// How strong the dowels' holes are.
    BearingStrength,
    /// How tight the pin sits.
    Interference,
    /// How stiff the materials are.
    Modulus,
    /// Whether the flow is smooth or turbulent.
    Transition,
    /// Nothing of these is known only to a range.
    Inputs,
}

impl Assumption {
    /// The one with the widest range, as greatest over least; the first of equals. [`Self::Inputs`]
    /// where all are known.
    pub(super) fn widest<const N: usize>(spreads: [(Self, f64); N]) -> Self {
        let mut widest = (Self::Inputs, 1.0);
        for spread in spreads {
            if spread.1 > widest.1 {
                widest = spread;
            }
        }
        widest.0
    }
}

/// Greatest over least; without end where the least is not above zero. 1 for a known value.
pub(super) fn spread<Q>(range: Range<Q>) -> f64
where
    Q: Copy + PartialOrd + Zero + std::ops::Div<Q>,
    <Q as std::ops::Div<Q>>::Output: Into<f64>,
{
    if range.least() == range.greatest() {
        1.0
    } else if range.least() > Q::zero() {
        (range.greatest() / range.least()).into()
    } else {
        f64::INFINITY
    }
}

impl fmt::Display for Assumption {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NutFactor => "The nut factor decides most: oil the threads and seats alike, or measure the stretch.",
            Self::Scatter => "The way of tightening decides most: measure the stretch to know the clamp better.",
            Self::Clamp => "The clamp decides most: measure the stretch to know it better.",
            Self::FiringPressure => "The firing pressure decides most: it is rarely measured, and detonation goes far above it.",
            Self::LoadShare => "The fasteners’ share of the load decides most: it needs the stiffness of the joint.",
            Self::Friction => "The friction of the faces decides most: oil and sealant lower it.",
            Self::PeakFactor => "The peak factor decides most: mean torque says little about the highest.",
            Self::ShearStrength => "The dowels’ strength decides most: ask for their material and hardness.",
            Self::BearingStrength => "The strength of the dowels’ holes decides most: soft metal gives before a dowel shears.",
            Self::Interference => "The interference decides most: measure pin and hole.",
            Self::Modulus => "The stiffness of the cast iron decides most: it differs from casting to casting.",
            Self::Transition => "Between smooth and turbulent flow either may happen: count on the higher drop.",
            Self::Inputs => "The answer is as good as the figures given.",
        })
    }
}
