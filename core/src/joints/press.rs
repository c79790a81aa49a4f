//! Press fits of a solid or hollow pin in a round housing, by Lamé's thick-walled cylinders.
//!
//! Source: V. B. Bhandari, *Design of Machine Elements*, section 22 (Lamé's equations). Both parts are
//! taken to be as long as the seat and elastic; a housing that is not round is taken as the largest
//! circle that fits into it.

use super::assumption::spread;
use super::bounds::{self, DROP_IN_GAP, FRICTION, HOUSING, INTERFERENCE, PIN, PIN_BORE, SEAT};
use super::material::Material;
use super::{Assumption, Range, Refusal};
use pitleaf_translated::{tr, translated};
use std::f64::consts::PI;
use uom::si::f64::{Force, Length, Pressure, ThermodynamicTemperature};
use uom::si::length::{micrometer, millimeter};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

/// The boiling point of nitrogen in °C, the coldest a shop gets a pin.
const LIQUID_NITROGEN: f64 = -196.0;

/// A pin in a housing.
#[derive(Clone, Debug, PartialEq)]
pub struct PressFit {
    /// The pin's outside diameter, which is the hole's nominal one.
    pub diameter: Length,
    /// The hole through the pin; nothing for a solid one.
    pub bore: Length,
    /// The housing's outside diameter around the pin.
    pub housing: Length,
    /// The length the pin sits on.
    pub seat: Length,
    /// Pin less hole across the diameter, both at one temperature.
    pub interference: Range<Length>,
    /// Friction between the two.
    pub friction: Range<f64>,
    /// The pin's metal.
    pub pin_material: Material,
    /// The housing's metal.
    pub housing_material: Material,
}

/// What a press fit comes to. All of it nothing where the pin is loose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pressed {
    /// Pressure between pin and hole.
    pub pressure: Range<Pressure>,
    /// Greatest pull in the housing, around the hole.
    pub housing_hoop: Range<Pressure>,
    /// Greatest push in the pin: around its own hole, or throughout a solid one.
    pub pin_hoop: Range<Pressure>,
    /// Force to push the pin in or out, at the full seat.
    pub push: Range<Force>,
    /// What decides most.
    pub weakest: Assumption,
}

/// Whether a temperature can be had.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reach {
    /// It can.
    Can(ThermodynamicTemperature),
    /// The housing would lose its strength: hotter than its metal may be made.
    TooWarm(ThermodynamicTemperature),
    /// Colder than liquid nitrogen.
    TooCold,
}

/// What stands under the stresses of a press fit.
pub const SPRINGS_BACK: &str = tr!(
    "Reckoned as springing back. Where the pull round the hole passes what the housing’s metal yields at, the boss stretches or cracks, and grips less than this."
);

/// Below this, in degrees Celsius, metals shrink clearly less for each degree than near room temperature.
const DEEP_COLD: f64 = -50.0;

/// What is left of a grip when the engine is at its temperature: the fit then, and what it comes to.
#[must_use]
#[translated]
pub fn grip_words(running: &PressFit, hot: &Pressed) -> &'static str {
    if running.interference.greatest() <= Length::new::<millimeter>(0.0) {
        "Running, the pin is loose: it wants a locking screw or a tighter fit."
    } else if hot.push.least() <= Force::default() {
        "Running, the loosest pair lets go: it wants a locking screw or a tighter fit."
    } else {
        "It still grips when running."
    }
}

impl Reach {
    /// What is to be known of a pin so cold. How much less it shrinks: from memory.
    #[must_use]
    #[translated]
    pub fn care(self) -> Option<&'static str> {
        let Self::Can(temperature) = self else { return None };
        (temperature.get::<degree_celsius>() < DEEP_COLD).then_some(
            "So cold, metals shrink up to a quarter less than reckoned: go colder, or warm the housing as well.",
        )
    }
}

impl PressFit {
    fn check(&self) -> Result<(), Refusal> {
        bounds::check(&PIN, self.diameter.get::<millimeter>())?;
        bounds::check(&PIN_BORE, self.bore.get::<millimeter>())?;
        bounds::check(&HOUSING, self.housing.get::<millimeter>())?;
        bounds::check(&SEAT, self.seat.get::<millimeter>())?;
        for edge in [self.interference.least(), self.interference.greatest()] {
            bounds::check(&INTERFERENCE, edge.get::<micrometer>())?;
        }
        FRICTION.check(self.friction.least())?;
        FRICTION.check(self.friction.greatest())?;
        if self.bore >= self.diameter {
            return Err(Refusal::BoreTooWide);
        }
        if self.housing <= self.diameter { Err(Refusal::HousingTooSmall) } else { Ok(()) }
    }

    /// Pressure, stresses and push force.
    ///
    /// # Errors
    /// Any measure out of its bounds; a hole no smaller than its pin, a housing no larger.
    pub fn pressed(&self) -> Result<Pressed, Refusal> {
        self.check()?;
        let outer = 1.0 / (self.diameter / self.housing).get::<uom::si::ratio::ratio>().powi(2);
        let inner = (self.bore / self.diameter).get::<uom::si::ratio::ratio>().powi(2);
        let around_hole = (outer + 1.0) / (outer - 1.0);
        let around_pin = (1.0 + inner) / (1.0 - inner);
        let (pin, housing) = (&self.pin_material, &self.housing_material);
        let pressure = |interference: Length, pin_modulus: Pressure, housing_modulus: Pressure| {
            let give = (around_hole + housing.poisson()) / housing_modulus
                + (around_pin - pin.poisson()) / pin_modulus;
            let tight = interference.max(Length::new::<millimeter>(0.0));
            tight / self.diameter / give
        };
        // Tighter and stiffer both press harder, so the ends go together.
        let least =
            pressure(self.interference.least(), pin.modulus().least(), housing.modulus().least());
        let greatest = pressure(
            self.interference.greatest(),
            pin.modulus().greatest(),
            housing.modulus().greatest(),
        );
        let pressure = Range::exactly(least).reaching(greatest);
        let pin_factor = if inner > 0.0 { 2.0 / (1.0 - inner) } else { 1.0 };
        let skin = PI * self.diameter * self.seat;
        let tight = self.interference.map(|edge| edge.max(Length::new::<millimeter>(0.0)));
        Ok(Pressed {
            pressure,
            housing_hoop: pressure.map(|pressure| pressure * around_hole),
            pin_hoop: pressure.map(|pressure| pressure * pin_factor),
            push: pressure.with(self.friction, |pressure, friction| pressure * skin * friction),
            weakest: Assumption::widest([
                (Assumption::Interference, spread(tight)),
                (Assumption::Friction, spread(self.friction)),
                (Assumption::Modulus, spread(housing.modulus()) * spread(pin.modulus())),
            ]),
        })
    }

    /// The same fit with housing and pin at other temperatures than the one they were measured at.
    ///
    /// What is left of the grip, [`PressFit::pressed`] of the answer tells. Expansion is taken as even
    /// over the range, and stiffness as when cold.
    ///
    /// # Errors
    /// As [`PressFit::pressed`]; a temperature out of [`bounds::TEMPERATURE`].
    pub fn at(
        &self,
        measured: ThermodynamicTemperature,
        housing: ThermodynamicTemperature,
        pin: ThermodynamicTemperature,
    ) -> Result<Self, Refusal> {
        self.check()?;
        for temperature in [measured, housing, pin] {
            bounds::check(&bounds::TEMPERATURE, temperature.get::<degree_celsius>())?;
        }
        let growth = |material: &Material, at: ThermodynamicTemperature| {
            self.diameter * expanded(material, measured, at)
        };
        let tighter = growth(&self.pin_material, pin) - growth(&self.housing_material, housing);
        let interference = self.interference.map(|edge| edge + tighter);
        Ok(Self { interference, ..self.clone() })
    }

    /// How warm the housing must be for the pin, at its own temperature, to drop in with a gap all round
    /// the tightest pair. `gap` is across the diameter.
    ///
    /// # Errors
    /// As [`PressFit::at`]; a gap out of [`DROP_IN_GAP`].
    pub fn warm_housing(
        &self,
        gap: Length,
        measured: ThermodynamicTemperature,
        pin: ThermodynamicTemperature,
    ) -> Result<Reach, Refusal> {
        bounds::check(&DROP_IN_GAP, gap.get::<micrometer>())?;
        let cold = self.at(measured, measured, pin)?;
        let open = (cold.interference.greatest() + gap) / self.diameter;
        let rise = open / self.housing_material.expansion();
        let warm = warmer(measured, rise.value.max(0.0));
        Ok(if warm > self.housing_material.warmest() {
            Reach::TooWarm(warm)
        } else {
            Reach::Can(warm)
        })
    }

    /// How cold the pin must be to drop into the housing at its temperature, likewise.
    ///
    /// # Errors
    /// As [`PressFit::warm_housing`].
    pub fn cold_pin(
        &self,
        gap: Length,
        measured: ThermodynamicTemperature,
        housing: ThermodynamicTemperature,
    ) -> Result<Reach, Refusal> {
        bounds::check(&DROP_IN_GAP, gap.get::<micrometer>())?;
        let warm = self.at(measured, housing, measured)?;
        let open = (warm.interference.greatest() + gap) / self.diameter;
        let fall = open / self.pin_material.expansion();
        let cold = warmer(measured, -fall.value.max(0.0));
        let too_cold = cold < ThermodynamicTemperature::new::<degree_celsius>(LIQUID_NITROGEN);
        Ok(if too_cold { Reach::TooCold } else { Reach::Can(cold) })
    }
}

/// The share a length grows from one temperature to another.
fn expanded(
    material: &Material,
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
) -> f64 {
    let per_kelvin = material.expansion().get::<uom::si::temperature_coefficient::per_kelvin>();
    per_kelvin * (to.get::<kelvin>() - from.get::<kelvin>())
}

fn warmer(from: ThermodynamicTemperature, by: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(from.get::<kelvin>() + by)
}
