//! What can be sensible in each place of a joint: one table gives the check, the sentence and the
//! tests' range. Our own choice throughout, to catch slips of the decimal point and the unit.

use super::Refusal;
use crate::quantity::{Bounds, Fault, Number, Unit};
use pitleaf_translated::{tr, translated};

/// The bounds of a number without a unit of [`Unit`] (a factor, a coefficient, a density).
#[derive(Debug, PartialEq)]
pub struct Plain {
    /// The sentence's subject: "The nut factor K".
    pub name: &'static str,
    /// The least, inclusive.
    pub least: f64,
    /// The greatest, inclusive.
    pub greatest: f64,
    /// What stands behind the number; empty for a pure number.
    pub symbol: &'static str,
}

// No row holds a value that is not a number, so equality holds for each row with itself.
impl Eq for Plain {}

impl Plain {
    /// Reads a typed number.
    ///
    /// # Errors
    /// [`Refusal::Quantity`] where it can't be read, [`Refusal::OutOfBounds`] outside the bounds.
    pub fn read(&'static self, text: &str) -> Result<f64, Refusal> {
        self.check(Number::read(text)?.value())
    }

    /// Gives a value back where it lies within the bounds.
    ///
    /// # Errors
    /// [`Refusal::OutOfBounds`], also for what is not a number.
    pub fn check(&'static self, value: f64) -> Result<f64, Refusal> {
        if within(value, self.least, self.greatest) {
            Ok(value)
        } else {
            Err(Refusal::OutOfBounds(self))
        }
    }
}

/// Checks a value, given in the bounds' own unit.
pub(super) fn check(bounds: &'static Bounds, value: f64) -> Result<(), Refusal> {
    let (least, greatest) =
        (bounds.least().value(bounds.unit), bounds.greatest().value(bounds.unit));
    if within(value, least, greatest) {
        Ok(())
    } else {
        Err(Refusal::Quantity(Fault::OutOfBounds { bounds, unit: bounds.unit }))
    }
}

/// Within, with room for the rounding of a conversion: a reading at the edge must pass.
fn within(value: f64, least: f64, greatest: f64) -> bool {
    let room = 1e-9 * least.abs().max(greatest.abs());
    (least - room..=greatest + room).contains(&value)
}

const fn row(name: &'static str, lowest: i64, highest: i64, unit: Unit) -> Bounds {
    Bounds { name, lowest, highest, unit }
}

const fn plain(name: &'static str, least: f64, greatest: f64, symbol: &'static str) -> Plain {
    Plain { name, least, greatest, symbol }
}

/// The diameter of a thread, measured or nominal.
pub static THREAD_DIAMETER: Bounds = row(tr!("A thread’s diameter"), 2, 50, Unit::Millimetre);
/// The distance from one thread to the next.
pub static PITCH: Bounds = row(tr!("A pitch"), 200, 4_000, Unit::Micrometre);
/// The diameter of a drill or a hole for a thread.
pub static DRILL: Bounds = row(tr!("A drill"), 1, 50, Unit::Millimetre);
/// A tightening torque.
pub static TORQUE: Bounds = row(tr!("A tightening torque"), 1, 1_000, Unit::NewtonMetre);
/// The force in one fastener.
pub static PRELOAD: Bounds = row(tr!("A preload"), 0, 500, Unit::Kilonewton);
/// The clamp of all fasteners together.
pub static CLAMP: Bounds = row(tr!("A clamp"), 0, 10_000, Unit::Kilonewton);
/// The torque a joint face must hold.
pub static REACTION: Bounds = row(tr!("A reaction torque"), 1, 100_000, Unit::NewtonMetre);
/// The length of a fastener that is free to stretch.
pub static FREE_LENGTH: Bounds = row(tr!("A free length"), 1, 1_000, Unit::Millimetre);
/// How much a fastener got longer.
pub static STRETCH: Bounds = row(tr!("A stretch"), 0, 5, Unit::Millimetre);
/// The shank of a fastener.
pub static SHANK: Bounds = row(tr!("A shank’s diameter"), 2, 50, Unit::Millimetre);
/// A strength of a material.
pub static STRENGTH: Bounds = row(tr!("A strength"), 20, 3_000, Unit::Megapascal);
/// Young's modulus.
pub static MODULUS: Bounds = row(tr!("Young’s modulus"), 10_000, 500_000, Unit::Megapascal);
/// The highest pressure in a chamber, over that of the air.
pub static FIRING_PRESSURE: Bounds = row(tr!("A firing pressure"), 0, 300, Unit::Bar);
/// The shaft's angle after a chamber's least volume.
pub static AFTER_TOP: Bounds = row(tr!("An angle after top"), 0, 270, Unit::Degree);
/// The radius of a circle of bolts or dowels, or of a joint face.
pub static CIRCLE: Bounds = row(tr!("A radius of the joint"), 5, 1_000, Unit::Millimetre);
/// A pin, a dowel, or the hole for it.
pub static PIN: Bounds = row(tr!("A pin’s diameter"), 1, 200, Unit::Millimetre);
/// A nominal size in the tables of limits and fits, which begin above 1 mm and end at 250 mm: here to the
/// next micrometre, so that what is taken has limits.
pub static FIT_NOMINAL: Bounds = row(tr!("A nominal size"), 1_001, 250_000, Unit::Micrometre);
/// The distance between two dowels.
pub static DOWEL_SPACING: Bounds =
    row(tr!("A distance between dowels"), 20, 1_000, Unit::Millimetre);
/// Hole less dowel: below zero a press.
pub static CLEARANCE: Bounds = row(tr!("A clearance"), -1_000, 1_000, Unit::Micrometre);
/// A hole that something is fitted into.
pub static FIT_HOLE: Bounds = row(tr!("A hole’s diameter"), 1, 260, Unit::Millimetre);
/// A pin or a shaft that is fitted into a hole.
pub static FIT_SHAFT: Bounds = row(tr!("A pin’s or shaft’s diameter"), 1, 260, Unit::Millimetre);
/// A hole through a pin; 0 for a solid one.
pub static PIN_BORE: Bounds = row(tr!("The hole through a pin"), 0, 200, Unit::Millimetre);
/// The housing around a pin.
pub static HOUSING: Bounds = row(tr!("The housing around a pin"), 2, 1_000, Unit::Millimetre);
/// The length on which a pin sits in its hole.
pub static SEAT: Bounds = row(tr!("A seat’s length"), 1, 500, Unit::Millimetre);
/// Pin less hole: an interference above zero, a clearance below.
pub static INTERFERENCE: Bounds = row(tr!("An interference"), -1_000, 1_000, Unit::Micrometre);
/// The gap wanted to drop a pin in.
pub static DROP_IN_GAP: Bounds = row(tr!("A gap to drop in"), 0, 500, Unit::Micrometre);
/// A temperature of a part or of oil.
pub static TEMPERATURE: Bounds = row(tr!("A temperature"), -196, 400, Unit::Celsius);
/// Engine output.
pub static POWER: Bounds = row(tr!("An output"), 1, 2_000, Unit::Kilowatt);
/// Oil through the line.
pub static FLOW: Bounds = row(tr!("An oil flow"), 1, 500_000, Unit::MillilitrePerMinute);
/// The bore of a line.
pub static LINE_BORE: Bounds = row(tr!("A line’s bore"), 1, 60, Unit::Millimetre);
/// The length of a line.
pub static LINE_LENGTH: Bounds = row(tr!("A line’s length"), 0, 40_000, Unit::Millimetre);
/// The roughness of a line's wall.
pub static ROUGHNESS: Bounds = row(tr!("A wall’s roughness"), 0, 500, Unit::Micrometre);
/// The pressure there is to push the oil.
pub static OIL_PRESSURE: Bounds = row(tr!("An oil pressure"), 0, 50, Unit::Bar);

/// Threads on an inch.
pub static THREADS_PER_INCH: Plain = plain(tr!("A count of threads per inch"), 6.0, 80.0, "");
/// The nut factor.
pub static NUT_FACTOR: Plain = plain(tr!("The nut factor K"), 0.05, 0.5, "");
/// The scatter of a way of tightening, either way, as a share of the preload.
pub static SCATTER: Plain = plain(tr!("A scatter"), 0.0, 0.6, "");
/// A coefficient of friction.
pub static FRICTION: Plain = plain(tr!("A coefficient of friction"), 0.02, 0.8, "");
/// The share of a joint's outside load that a fastener takes.
pub static LOAD_SHARE: Plain = plain(tr!("A fastener’s share of the load"), 0.0, 1.0, "");
/// Greatest over mean torque.
pub static PEAK_FACTOR: Plain = plain(tr!("A peak factor"), 1.0, 20.0, "");
/// Turns of the eccentric shaft.
#[translated]
pub static SPEED: Plain = plain("A speed", 100.0, 30_000.0, "/min");
/// The chamber's area seen along the shaft.
pub static CHAMBER_AREA: Plain = plain(tr!("A chamber’s area"), 0.1, 2_000.0, "cm²");
/// Poisson's ratio.
pub static POISSON: Plain = plain(tr!("Poisson’s ratio"), 0.0, 0.49, "");
/// Linear expansion.
pub static EXPANSION: Plain = plain(tr!("An expansion"), 0.1, 40.0, "10⁻⁶/K");
/// Kinematic viscosity in a line; thinner than any oil, so that water can be tried.
pub static LINE_VISCOSITY: Plain = plain(tr!("A viscosity"), 0.2, 20_000.0, "mm²/s");
/// Kinematic viscosity of an oil's known points; below 2 the viscosity rule does not hold.
pub static VISCOSITY: Plain = plain(tr!("A viscosity"), 2.0, 20_000.0, "mm²/s");
/// The density of an oil.
pub static DENSITY: Plain = plain(tr!("A density"), 600.0, 1_100.0, "kg/m³");
