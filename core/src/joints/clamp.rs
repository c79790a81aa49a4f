//! Torque, preload and stretch, and the clamp of a set of bolts and studs.
//!
//! T = K·d·F (Shigley, *Mechanical Engineering Design*, section 8-8). A torque wrench measures friction
//! and little else, so a preload is a range.

use super::assumption::spread;
use super::bounds::{self, FREE_LENGTH, MODULUS, NUT_FACTOR, PRELOAD, SCATTER, STRETCH, TORQUE};
use super::friction_rows::{NUT_FACTORS, SCATTERS, STRETCH_SCATTER};
use super::{Assumption, Range, Refusal, shown};
use uom::si::f64::{Area, Energy, Force, Length, Pressure, Ratio, Torque};
use uom::si::force::kilonewton;
use uom::si::length::millimeter;
use uom::si::pressure::megapascal;
use uom::si::torque::newton_meter;

/// Force over length: how hard a part is to stretch.
pub type Stiffness = <Force as std::ops::Div<Length>>::Output;

/// A figure of the tables with what it holds for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// What it holds for.
    pub condition: &'static str,
    /// The figure, or from where to where it lies.
    pub value: Range<f64>,
}

impl Usual {
    /// The figure as it is typed: `0.18`, `0.1…0.2`.
    #[must_use]
    pub fn typed(&self) -> String {
        shown::shortest_range(self.value, 2)
    }
}

/// The preload of one fastener.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Preload {
    /// Least and greatest.
    pub force: Range<Force>,
    /// What decides most.
    pub weakest: Assumption,
}

/// A length of a fastener with one cross-section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Its length, free to stretch.
    pub length: Length,
    /// Its cross-section: the stress area in the thread, the shank's circle beside it.
    pub area: Area,
}

impl Section {
    /// A round shank of this diameter.
    #[must_use]
    pub fn shank(length: Length, diameter: Length) -> Self {
        Self { length, area: diameter * diameter * std::f64::consts::FRAC_PI_4 }
    }
}

/// Some fasteners tightened alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fasteners {
    /// How many.
    pub count: u32,
    /// The preload of each.
    pub preload: Range<Force>,
}

/// The usual nut factors.
pub fn nut_factors() -> impl Iterator<Item = Usual> {
    NUT_FACTORS.iter().filter_map(|&(condition, least, greatest)| {
        Some(Usual { condition, value: Range::new(least, greatest)? })
    })
}

/// The usual scatter of what a torque gives, either way, as a share.
pub fn scatters() -> impl Iterator<Item = Usual> {
    SCATTERS.iter().map(|row| Usual { condition: row.0, value: Range::exactly(row.1) })
}

/// The scatter of a preload that is told by the stretch, as a share (NASA-STD-5020B, table 3).
#[must_use]
pub const fn scatter_of_stretch() -> f64 {
    STRETCH_SCATTER
}

/// The preload a torque gives.
///
/// `scatter` is the share the preload may lie off either way. It holds what friction does from bolt to
/// bolt; a range of K on top is for not knowing how the threads are lubricated.
///
/// # Errors
/// A torque out of [`TORQUE`], K out of [`NUT_FACTOR`], a scatter out of [`SCATTER`].
pub fn preload(
    torque: Torque,
    diameter: Length,
    nut_factor: Range<f64>,
    scatter: f64,
) -> Result<Preload, Refusal> {
    bounds::check(&TORQUE, torque.get::<newton_meter>())?;
    check_fastener(diameter, nut_factor)?;
    let scatter = SCATTER.check(scatter)?;
    let mean = |factor: f64| Energy::from(torque) / (factor * diameter);
    let off = Range::new(1.0 - scatter, 1.0 + scatter).unwrap_or(Range::exactly(1.0));
    Ok(Preload {
        force: nut_factor.map(mean).with(off, |force: Force, off| force * off),
        weakest: Assumption::widest([
            (Assumption::NutFactor, spread(nut_factor)),
            (Assumption::Scatter, spread(off)),
        ]),
    })
}

/// The torque to set for a wanted preload, at the middle of K's range.
///
/// What that torque then gives, from least to greatest, [`preload`] tells.
///
/// # Errors
/// As [`preload`]; a force out of [`PRELOAD`].
pub fn torque_for(
    wanted: Force,
    diameter: Length,
    nut_factor: Range<f64>,
) -> Result<Torque, Refusal> {
    bounds::check(&PRELOAD, wanted.get::<kilonewton>())?;
    check_fastener(diameter, nut_factor)?;
    let middle = f64::midpoint(nut_factor.least(), nut_factor.greatest());
    Ok((middle * diameter * wanted).into())
}

fn check_fastener(diameter: Length, nut_factor: Range<f64>) -> Result<(), Refusal> {
    bounds::check(&bounds::THREAD_DIAMETER, diameter.get::<millimeter>())?;
    NUT_FACTOR.check(nut_factor.least())?;
    NUT_FACTOR.check(nut_factor.greatest())?;
    Ok(())
}

fn check_preload(preload: Range<Force>) -> Result<(), Refusal> {
    for force in [preload.least(), preload.greatest()] {
        bounds::check(&PRELOAD, force.get::<kilonewton>())?;
    }
    Ok(())
}

/// How stiff the free length is: 1 / Σ(l / (A·E)).
///
/// # Errors
/// A section out of [`FREE_LENGTH`] or [`bounds::SHANK`], a modulus out of [`MODULUS`];
/// [`Refusal::NoSections`] without any.
pub fn stiffness(sections: &[Section], modulus: Pressure) -> Result<Stiffness, Refusal> {
    bounds::check(&MODULUS, modulus.get::<megapascal>())?;
    let (first, rest) = sections.split_first().ok_or(Refusal::NoSections)?;
    let mut give = give(first, modulus)?;
    for section in rest {
        give += self::give(section, modulus)?;
    }
    Ok(1.0 / give)
}

type Give = <Length as std::ops::Div<Force>>::Output;

fn give(section: &Section, modulus: Pressure) -> Result<Give, Refusal> {
    bounds::check(&FREE_LENGTH, section.length.get::<millimeter>())?;
    let across = (section.area / std::f64::consts::FRAC_PI_4).sqrt();
    bounds::check(&bounds::SHANK, across.get::<millimeter>())?;
    Ok(section.length / (section.area * modulus))
}

/// How much longer the free length gets under a preload, below proof load.
///
/// # Errors
/// As [`stiffness`]; a preload out of [`PRELOAD`].
pub fn stretch(
    preload: Range<Force>,
    sections: &[Section],
    modulus: Pressure,
) -> Result<Range<Length>, Refusal> {
    check_preload(preload)?;
    let stiffness = stiffness(sections, modulus)?;
    Ok(preload.map(|force| force / stiffness))
}

/// The preload a measured stretch tells; `scatter` as in [`preload`].
///
/// # Errors
/// As [`stiffness`]; a stretch out of [`STRETCH`], a scatter out of [`SCATTER`].
pub fn preload_of_stretch(
    stretch: Length,
    sections: &[Section],
    modulus: Pressure,
    scatter: f64,
) -> Result<Preload, Refusal> {
    bounds::check(&STRETCH, stretch.get::<millimeter>())?;
    let scatter = SCATTER.check(scatter)?;
    let force = stretch * stiffness(sections, modulus)?;
    let off = Range::new(1.0 - scatter, 1.0 + scatter).unwrap_or(Range::exactly(1.0));
    let weakest = Assumption::widest([(Assumption::Scatter, spread(off))]);
    Ok(Preload { force: off.map(|off| force * off), weakest })
}

/// The clamp of several kinds of fasteners together, as if all were least or all greatest at once.
///
/// # Errors
/// [`Refusal::NoFasteners`] where none is counted; a preload out of [`PRELOAD`].
pub fn total_clamp(sets: &[Fasteners]) -> Result<Range<Force>, Refusal> {
    if sets.iter().all(|set| set.count == 0) {
        return Err(Refusal::NoFasteners);
    }
    let mut total = Range::exactly(Force::new::<kilonewton>(0.0));
    for set in sets {
        check_preload(set.preload)?;
        let count = f64::from(set.count);
        total = total.plus(set.preload.map(|force| force * count));
    }
    Ok(total)
}

/// The share of an outside load that the fastener takes: k_b / (k_b + k_m) (Shigley, eq. 8-24).
#[must_use]
pub fn load_share(fastener: Stiffness, joint: Stiffness) -> Ratio {
    fastener / (fastener + joint)
}

/// The force in a fastener under an outside load: F + C·P.
///
/// # Errors
/// A share out of [`bounds::LOAD_SHARE`].
pub fn loaded(
    preload: Range<Force>,
    share: Range<f64>,
    load: Range<Force>,
) -> Result<Range<Force>, Refusal> {
    bounds::LOAD_SHARE.check(share.least())?;
    bounds::LOAD_SHARE.check(share.greatest())?;
    Ok(preload.plus(share.with(load, |share, load| share * load)))
}
