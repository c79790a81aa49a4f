//! Overlap: when a chamber is open to intake and exhaust at once.

use std::f64::consts::TAU;

use uom::si::{angle::radian, f64::Angle};

use super::{AngleArea, Opening, Sweep};

/// The stretches of a chamber's cycle in which two ports are open at once.
#[derive(Debug, Clone, PartialEq)]
pub struct Overlap {
    /// Each stretch, in order.
    pub stretches: Vec<Opening>,
    /// The smaller of the two open areas summed over the shaft's angle: what can flow straight
    /// through.
    pub angle_area: AngleArea,
}

impl Overlap {
    /// The overlap of two ports in the same engine.
    #[must_use]
    pub fn of(one: &Sweep, other: &Sweep) -> Self {
        let cycle = 3.0 * TAU;
        let mut stretches = Vec::new();
        for a in one.openings() {
            for b in other.openings() {
                for shift in [-cycle, 0.0, cycle] {
                    let opens = a.opens.max(b.opens + shift);
                    let closes = a.closes.min(b.closes + shift);
                    if closes > opens {
                        let turns = (opens / cycle).floor() * cycle;
                        stretches.push(Opening { opens: opens - turns, closes: closes - turns });
                    }
                }
            }
        }
        stretches.sort_by(|a, b| a.opens.total_cmp(&b.opens));
        let fine = if one.per_turn >= other.per_turn { one } else { other };
        let sum: f64 = (0..fine.samples.len())
            .map(|step| {
                let theta = fine.angle(step);
                one.between(theta).min(other.between(theta))
            })
            .sum();
        Self { stretches, angle_area: AngleArea { sum: sum * fine.step().get::<radian>() } }
    }

    /// How long both are open, all stretches together.
    #[must_use]
    pub fn duration(&self) -> Angle {
        self.stretches.iter().map(Opening::duration).fold(Angle::default(), |sum, next| sum + next)
    }
}
