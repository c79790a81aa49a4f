//! Metals of pins and housings, and what counts for a press fit.

use super::bounds::{self, EXPANSION, MODULUS, POISSON};
use super::material_rows::ROWS;
use super::{Range, Refusal};
use uom::si::f64::{Pressure, TemperatureCoefficient, ThermodynamicTemperature};
use uom::si::pressure::{gigapascal, megapascal};
use uom::si::temperature_coefficient::per_kelvin;
use uom::si::thermodynamic_temperature::degree_celsius;

/// A metal.
#[derive(Clone, Debug, PartialEq)]
pub struct Material {
    word: &'static str,
    name: String,
    modulus: Range<Pressure>,
    poisson: f64,
    expansion: TemperatureCoefficient,
    warmest: ThermodynamicTemperature,
}

impl Material {
    /// The metals of the tables (Callister, appendix B).
    #[must_use]
    pub fn usual() -> Vec<Self> {
        let gpa = Pressure::new::<gigapascal>;
        ROWS.iter()
            .map(|row| Self {
                word: row.0,
                name: row.1.to_owned(),
                modulus: Range::exactly(gpa(row.2)).reaching(gpa(row.3)),
                poisson: row.4,
                expansion: Self::expansion_in_millionths(row.5),
                warmest: ThermodynamicTemperature::new::<degree_celsius>(row.6.into()),
            })
            .collect()
    }

    /// The metal of the tables by the word it is kept by, or by its name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::usual().into_iter().find(|metal| metal.word == name || metal.name == name)
    }

    /// The steel that bolts and studs stretch as; none where the tables lost it, which the tests forbid.
    #[must_use]
    pub fn of_bolts() -> Option<Self> {
        Self::named("steel-1020")
    }

    /// An expansion in millionths a kelvin, as handbooks print it.
    #[must_use]
    pub fn expansion_in_millionths(figure: f64) -> TemperatureCoefficient {
        TemperatureCoefficient::new::<per_kelvin>(figure * 1e-6)
    }

    /// A metal of the builder's own; `warmest` is as hot as it may be made.
    ///
    /// # Errors
    /// A modulus out of [`MODULUS`], Poisson's ratio out of [`POISSON`], an expansion out of
    /// [`EXPANSION`], a temperature out of [`bounds::TEMPERATURE`].
    pub fn own(
        name: &str,
        modulus: Range<Pressure>,
        poisson: f64,
        expansion: TemperatureCoefficient,
        warmest: ThermodynamicTemperature,
    ) -> Result<Self, Refusal> {
        bounds::check(&MODULUS, modulus.least().get::<megapascal>())?;
        bounds::check(&MODULUS, modulus.greatest().get::<megapascal>())?;
        POISSON.check(poisson)?;
        EXPANSION.check(expansion.get::<per_kelvin>() * 1e6)?;
        bounds::check(&bounds::TEMPERATURE, warmest.get::<degree_celsius>())?;
        Ok(Self { word: "", name: name.to_owned(), modulus, poisson, expansion, warmest })
    }

    /// The word it is kept by, the same in every language; empty for one of the builder's own.
    #[must_use]
    pub fn word(&self) -> &'static str {
        self.word
    }

    /// Its name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Young's modulus.
    #[must_use]
    pub fn modulus(&self) -> Range<Pressure> {
        self.modulus
    }

    /// Poisson's ratio.
    #[must_use]
    pub fn poisson(&self) -> f64 {
        self.poisson
    }

    /// Linear expansion.
    #[must_use]
    pub fn expansion(&self) -> TemperatureCoefficient {
        self.expansion
    }

    /// As hot as it may be made.
    #[must_use]
    pub fn warmest(&self) -> ThermodynamicTemperature {
        self.warmest
    }
}
