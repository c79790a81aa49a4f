//! Kinematic viscosity at any temperature from two known points.

use super::oil_rows::OILS;
use crate::joints::Refusal;
use crate::joints::bounds::{self, TEMPERATURE, VISCOSITY};
use uom::si::f64::{KinematicViscosity, ThermodynamicTemperature};
use uom::si::kinematic_viscosity::square_millimeter_per_second;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

/// An oil known at two temperatures.
///
/// Walther's rule as ASTM D341 keeps it: lg lg(ν + 0.7) = A − B·lg T, ν in mm²/s from 2 up, T in kelvin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Oil {
    intercept: f64,
    slope: f64,
}

/// An oil of a class, with its viscosity at 40 and 100 °C. From memory.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TypicalOil {
    /// The class.
    pub name: &'static str,
    /// At 40 °C.
    pub at_40: KinematicViscosity,
    /// At 100 °C.
    pub at_100: KinematicViscosity,
}

/// Oils of the usual classes. From memory: the oil's own sheet stands above them.
pub fn typical_oils() -> impl Iterator<Item = TypicalOil> {
    let viscosity = KinematicViscosity::new::<square_millimeter_per_second>;
    OILS.iter().map(move |row| TypicalOil {
        name: row.0,
        at_40: viscosity(row.1),
        at_100: viscosity(row.2),
    })
}

impl Oil {
    /// The oil through two points, in either order.
    ///
    /// # Errors
    /// A temperature out of [`TEMPERATURE`], a viscosity out of [`VISCOSITY`]; points at one temperature,
    /// or thicker at the warmer one.
    pub fn through(
        one: (ThermodynamicTemperature, KinematicViscosity),
        other: (ThermodynamicTemperature, KinematicViscosity),
    ) -> Result<Self, Refusal> {
        for (temperature, viscosity) in [one, other] {
            bounds::check(&TEMPERATURE, temperature.get::<degree_celsius>())?;
            VISCOSITY.check(viscosity.get::<square_millimeter_per_second>())?;
        }
        let point = |(temperature, viscosity): (ThermodynamicTemperature, KinematicViscosity)| {
            let thick = (viscosity.get::<square_millimeter_per_second>() + 0.7).log10().log10();
            (temperature.get::<kelvin>().log10(), thick)
        };
        let ((x1, y1), (x2, y2)) = (point(one), point(other));
        if (x1 - x2).abs() < 1e-9 {
            return Err(Refusal::SameTemperature);
        }
        let slope = (y1 - y2) / (x2 - x1);
        if slope > 0.0 {
            Ok(Self { intercept: y1 + slope * x1, slope })
        } else {
            Err(Refusal::ThickerWhenHot)
        }
    }

    /// The viscosity at a temperature.
    ///
    /// # Errors
    /// A temperature out of [`TEMPERATURE`]; [`Refusal::TooThin`] where the rule no longer holds, and a
    /// viscosity past [`VISCOSITY`]'s greatest.
    pub fn at(&self, temperature: ThermodynamicTemperature) -> Result<KinematicViscosity, Refusal> {
        bounds::check(&TEMPERATURE, temperature.get::<degree_celsius>())?;
        let thick = self.intercept - self.slope * temperature.get::<kelvin>().log10();
        let viscosity = 10_f64.powf(10_f64.powf(thick)) - 0.7;
        if viscosity < VISCOSITY.least {
            return Err(Refusal::TooThin);
        }
        VISCOSITY.check(viscosity).map(KinematicViscosity::new::<square_millimeter_per_second>)
    }
}
