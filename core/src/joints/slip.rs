//! Whether a joint face can turn: friction and dowels against the reaction of a rotor's torque.
//!
//! Friction and dowels are shown side by side and not added: a dowel with clearance carries nothing
//! until the face has slipped.

use super::assumption::spread;
use super::bounds::{
    self, CIRCLE, FRICTION, PEAK_FACTOR, PIN, PIN_BORE, POWER, REACTION, SEAT, SPEED, STRENGTH,
};
use super::separation::check_clamp;
use super::{Assumption, Range, Refusal};
use pitleaf_translated::translated;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::f64::{AngularVelocity, Area, Energy, Force, Length, Power, Pressure, Ratio, Torque};
use uom::si::length::millimeter;
use uom::si::power::kilowatt;
use uom::si::pressure::megapascal;
use uom::si::ratio::ratio;
use uom::si::torque::newton_meter;

/// The dowels across one joint face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dowels {
    /// How many.
    pub count: u32,
    /// From the shaft's axis to the dowels.
    pub radius: Length,
    /// Outside diameter.
    pub diameter: Length,
    /// The hole through a hollow one.
    pub bore: Length,
    /// The length that sits in the weaker of the two parts.
    pub seat: Length,
    /// Shear strength of the dowel.
    pub shear_strength: Range<Pressure>,
    /// What the wall of its hole bears before it gives.
    pub bearing_strength: Range<Pressure>,
}

/// What one kind of dowel holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// The torque.
    pub torque: Range<Torque>,
    /// That torque over the reaction; below 1 it does not hold alone.
    pub margin: Range<Ratio>,
    /// What decides most.
    pub weakest: Assumption,
}

impl Held {
    /// Whether it holds alone, in a few words.
    #[must_use]
    #[translated]
    pub fn words(&self) -> &'static str {
        let holds = |margin: Ratio| margin.get::<ratio>() >= 1.0;
        if holds(self.margin.least()) {
            "Holds alone"
        } else if holds(self.margin.greatest()) {
            "May hold alone, or not"
        } else {
            "Does not hold alone"
        }
    }
}

/// A joint face between two housings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slip {
    /// The face held by friction.
    pub friction: Held,
    /// Hollow dowels in shear.
    pub hollow: Held,
    /// Solid dowels in shear.
    pub solid: Held,
}

/// The reaction torque of one rotor: mean torque of its share of the output times the peak factor.
///
/// The whole reaction is taken to pass through one face, which is the safe side.
///
/// # Errors
/// An output out of [`POWER`], a speed out of [`SPEED`], a peak factor out of [`PEAK_FACTOR`];
/// [`Refusal::NoRotors`] without rotors.
pub fn reaction(
    output: Power,
    speed: AngularVelocity,
    rotors: u8,
    peak_factor: Range<f64>,
) -> Result<Range<Torque>, Refusal> {
    bounds::check(&POWER, output.get::<kilowatt>())?;
    SPEED.check(speed.get::<revolution_per_minute>())?;
    PEAK_FACTOR.check(peak_factor.least())?;
    PEAK_FACTOR.check(peak_factor.greatest())?;
    if rotors == 0 {
        return Err(Refusal::NoRotors);
    }
    let mean = Torque::from(output / speed) / f64::from(rotors);
    Ok(peak_factor.map(|factor| mean * factor))
}

/// What holds a face against a reaction torque.
///
/// # Errors
/// Any input out of its bounds; [`Refusal::NoClamp`] where the clamp may be nothing; a hole through a dowel no smaller than the dowel.
pub fn slip(
    clamp: Range<Force>,
    circle: Length,
    friction: Range<f64>,
    dowels: &Dowels,
    reaction: Range<Torque>,
) -> Result<Slip, Refusal> {
    bounds::check(&CIRCLE, circle.get::<millimeter>())?;
    FRICTION.check(friction.least())?;
    FRICTION.check(friction.greatest())?;
    check_dowels(dowels)?;
    check_clamp(clamp)?;
    for torque in [reaction.least(), reaction.greatest()] {
        bounds::check(&REACTION, torque.get::<newton_meter>())?;
    }
    let peak = (Assumption::PeakFactor, spread(reaction));
    let torque = |force: Force, radius: Length| Torque::from(force * radius);
    let by_friction = clamp.with(friction, |clamp, friction| torque(clamp * friction, circle));
    let held = |torque: Range<Torque>, weakest| Held {
        torque,
        margin: torque
            .with(reaction, |torque, reaction| Energy::from(torque) / Energy::from(reaction)),
        weakest,
    };
    let sheared = |bore: Length| {
        let shear = dowels.shear_strength.map(|strength| strength * ring(dowels.diameter, bore));
        let bearing =
            dowels.bearing_strength.map(|strength| strength * (dowels.diameter * dowels.seat));
        let each =
            shear.with(bearing, |shear, bearing| if shear < bearing { shear } else { bearing });
        let all = each.map(|force| torque(force * f64::from(dowels.count), dowels.radius));
        let own = if shear.least() <= bearing.least() {
            (Assumption::ShearStrength, spread(shear))
        } else {
            (Assumption::BearingStrength, spread(bearing))
        };
        held(all, Assumption::widest([own, peak]))
    };
    Ok(Slip {
        friction: held(
            by_friction,
            Assumption::widest([
                (Assumption::Friction, spread(friction)),
                (Assumption::Clamp, spread(clamp)),
                peak,
            ]),
        ),
        hollow: sheared(dowels.bore),
        solid: sheared(Length::new::<millimeter>(0.0)),
    })
}

fn check_dowels(dowels: &Dowels) -> Result<(), Refusal> {
    bounds::check(&CIRCLE, dowels.radius.get::<millimeter>())?;
    bounds::check(&PIN, dowels.diameter.get::<millimeter>())?;
    bounds::check(&PIN_BORE, dowels.bore.get::<millimeter>())?;
    bounds::check(&SEAT, dowels.seat.get::<millimeter>())?;
    for strength in [dowels.shear_strength, dowels.bearing_strength] {
        bounds::check(&STRENGTH, strength.least().get::<megapascal>())?;
        bounds::check(&STRENGTH, strength.greatest().get::<megapascal>())?;
    }
    if dowels.bore >= dowels.diameter { Err(Refusal::BoreTooWide) } else { Ok(()) }
}

fn ring(outer: Length, inner: Length) -> Area {
    (outer * outer - inner * inner) * std::f64::consts::FRAC_PI_4
}
