//! What earlier versions made of an engine's chambers, for the engines put in with one of them.

use pitleaf_translated::translated;
use std::fmt;

use uom::si::{
    f64::{Area, Volume},
    volume::cubic_centimeter,
};

use super::{Chambers, Geometry, TypedEngine, chamber::nose};
use crate::decimal::shown;

/// Earlier versions counted the noses of the rotor's two apex seals into each chamber: every volume came
/// out too large by the same amount, and every recess too small by it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Correction {
    /// By how much each chamber was too large.
    pub excess: Volume,
    /// The ratio without a recess as it was given.
    pub ratio_then: f64,
    /// The ratio without a recess.
    pub ratio: f64,
}

impl Correction {
    /// The correction of a shape; none without an apex-seal offset, where there was nothing to correct.
    #[must_use]
    pub fn of(geometry: &Geometry) -> Option<Self> {
        let bore = geometry.bore();
        let noses =
            Area::new::<uom::si::area::square_millimeter>(2.0 * nose(bore, bore.steepest_lean()));
        let excess: Volume = noses * geometry.housing_width();
        let chambers = Chambers::new(geometry);
        let [least, greatest] = [chambers.least_volume(), chambers.greatest_volume()];
        (bore.offset > 0.0).then(|| Self {
            excess,
            ratio_then: ((greatest + excess) / (least + excess)).value,
            ratio: chambers.theoretical_ratio(),
        })
    }
}

impl TypedEngine {
    /// What is to be corrected of an engine put in with an earlier version.
    #[must_use]
    pub fn correction(&self) -> Option<Correction> {
        let engine = if self.noses { None } else { self.engine().ok() };
        Correction::of(engine?.geometry())
    }
}

impl fmt::Display for Correction {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let excess = shown(self.excess.get::<cubic_centimeter>(), 2);
        let [then, now] = [self.ratio_then, self.ratio].map(|ratio| shown(ratio, 2));
        write!(
            f,
            "When these measures were put in, each chamber was counted {excess} cm³ too large: the noses \
             of the rotor’s apex seals were left out. Without a recess it said {then} : 1; it is \
             {now} : 1. A recess worked out then is {excess} cm³ too small, and the ratio higher than \
             was said: work it out again."
        )
    }
}
