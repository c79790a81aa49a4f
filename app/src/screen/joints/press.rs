//! A press fit: its grip, how it goes in, and what is left of it at running temperature.

use super::form::{Field, Form, Why, answer};
use super::{Job, show};
use crate::dom::{El, el, text};
use pitleaf_core::joints::press::{PressFit, Pressed, Reach, SPRINGS_BACK, grip_words};
use pitleaf_core::joints::{Caution, Material, Range, bounds, shown};
use pitleaf_core::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::tr;
use uom::si::f64::{Length, Pressure, ThermodynamicTemperature};
use uom::si::thermodynamic_temperature::degree_celsius;

/// The choice for a metal that is not in the table.
const OWN: (&str, &str) = ("own", tr!("A metal of one’s own"));

/// A metal: one of the table, or the builder's own with its figures.
#[derive(Clone, Copy)]
struct Metal {
    choice: Field,
    modulus: Field,
    poisson: Field,
    expansion: Field,
    /// As hot as it may be made; a pin is cooled, never warmed.
    warmest: Option<Field>,
}

impl Metal {
    fn is_own(self) -> bool {
        self.choice.typed.with(|name| name == OWN.0 || name == OWN.1)
    }

    /// What is to be given of it.
    fn needed(self) -> impl Iterator<Item = Field> {
        let own = [self.modulus, self.poisson, self.expansion].into_iter().chain(self.warmest);
        std::iter::once(self.choice).chain(own.filter(move |_| self.is_own()))
    }

    fn read(self) -> Result<Material, Why> {
        if !self.is_own() {
            return Material::named(&self.choice.text()).ok_or(Why::Missing);
        }
        let warmest = match self.warmest {
            Some(field) => field.of(Amount::temperature)?,
            None => ThermodynamicTemperature::new::<degree_celsius>(20.0),
        };
        let expansion = Material::expansion_in_millionths(self.expansion.factor()?);
        let (modulus, poisson) = (self.modulus.pressures()?, self.poisson.factor()?);
        Ok(Material::own(OWN.1, modulus, poisson, expansion, warmest)?)
    }

    fn el(self) -> El {
        let metals = Material::usual();
        let metals = metals.iter().map(|metal| (metal.word(), metal.name())).chain([OWN]);
        let choices = metals.map(|(word, name)| (word.to_owned(), name.to_owned()));
        let own = [self.modulus, self.poisson, self.expansion].into_iter().chain(self.warmest);
        el("div").with(self.choice.choice(choices)).with(
            el("div")
                .attr_live("hidden", move || (!self.is_own()).then(String::new))
                .with_all(own.map(Field::el)),
        )
    }
}

#[derive(Clone, Copy)]
struct Fields {
    diameter: Field,
    interference: Field,
    bore: Field,
    housing: Field,
    seat: Field,
    pin_metal: Metal,
    housing_metal: Metal,
    friction: Field,
    gap: Field,
    shop: Field,
    hot_housing: Field,
    hot_pin: Field,
}

impl Fields {
    fn new() -> Self {
        const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
        const SMALL: &[Unit] = &[Unit::Micrometre, Unit::Thou, Unit::Millimetre];
        const STRESSES: &[Unit] = &[Unit::Megapascal, Unit::Psi];
        const DEGREES: &[Unit] = &[Unit::Celsius, Unit::Fahrenheit];
        let mut form = Form::of("press");
        let fields = Self {
            diameter: form.figure(("diameter", tr!("Pin’s diameter")), &bounds::PIN, LENGTHS, ""),
            interference: form.spread(
                ("interference", tr!("Pin less hole")),
                &bounds::INTERFERENCE,
                SMALL,
                "",
            ),
            bore: form.figure(
                ("bore", tr!("Hole through the pin (solid: 0)")),
                &bounds::PIN_BORE,
                LENGTHS,
                "0",
            ),
            housing: form.figure(
                ("housing", tr!("Housing’s width around it")),
                &bounds::HOUSING,
                LENGTHS,
                "",
            ),
            seat: form.figure(("seat", tr!("Length it sits on")), &bounds::SEAT, LENGTHS, ""),
            pin_metal: Metal {
                choice: form.words(("pin-metal", tr!("Pin’s metal")), ""),
                modulus: form.spread(
                    ("pin-modulus", tr!("Pin’s modulus")),
                    &bounds::MODULUS,
                    STRESSES,
                    "",
                ),
                poisson: form.factor(
                    ("pin-poisson", tr!("Pin’s Poisson’s ratio")),
                    &bounds::POISSON,
                    "",
                ),
                expansion: form.factor(
                    ("pin-expansion", tr!("Pin’s expansion, 10⁻⁶/K")),
                    &bounds::EXPANSION,
                    "",
                ),
                warmest: None,
            },
            housing_metal: Metal {
                choice: form.words(("housing-metal", tr!("Housing’s metal")), ""),
                modulus: form.spread(
                    ("housing-modulus", tr!("Housing’s modulus")),
                    &bounds::MODULUS,
                    STRESSES,
                    "",
                ),
                poisson: form.factor(
                    ("housing-poisson", tr!("Housing’s Poisson’s ratio")),
                    &bounds::POISSON,
                    "",
                ),
                expansion: form.factor(
                    ("housing-expansion", tr!("Housing’s expansion, 10⁻⁶/K")),
                    &bounds::EXPANSION,
                    "",
                ),
                warmest: Some(form.figure(
                    ("housing-warmest", tr!("Housing may get as hot as")),
                    &bounds::TEMPERATURE,
                    DEGREES,
                    "",
                )),
            },
            friction: form.factor(
                ("friction", tr!("Friction")),
                &bounds::FRICTION,
                tr!("0.08…0.20"),
            ),
            gap: form.figure(("gap", tr!("Gap to drop in")), &bounds::DROP_IN_GAP, SMALL, "20"),
            shop: form.figure(("shop", tr!("Measured at")), &bounds::TEMPERATURE, DEGREES, "20"),
            hot_housing: form.figure(
                ("hot-housing", tr!("Housing, running")),
                &bounds::TEMPERATURE,
                DEGREES,
                "90",
            ),
            hot_pin: form.figure(
                ("hot-pin", tr!("Pin, running")),
                &bounds::TEMPERATURE,
                DEGREES,
                "90",
            ),
        };
        form.keep();
        fields
    }

    fn needed(self) -> Vec<Field> {
        [self.diameter, self.interference, self.housing, self.seat]
            .into_iter()
            .chain(self.housing_metal.needed())
            .chain(self.pin_metal.needed())
            .chain([self.friction, self.gap, self.shop, self.hot_housing, self.hot_pin])
            .collect()
    }

    fn fit(self) -> Result<PressFit, Why> {
        Ok(PressFit {
            diameter: self.diameter.length()?,
            bore: self.bore.length()?,
            housing: self.housing.length()?,
            seat: self.seat.length()?,
            interference: self.interference.lengths()?,
            friction: self.friction.factors()?,
            pin_material: self.pin_metal.read()?,
            housing_material: self.housing_metal.read()?,
        })
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let fields = Fields::new();
    let more = el("details")
        .class("joint-more")
        .with(text("summary", "", tr!("Friction, gap, temperatures")))
        .with(text("p", "plain", tr!("Friction is from common practice, no source.")))
        .with_all(
            [fields.friction, fields.gap, fields.shop, fields.hot_housing, fields.hot_pin]
                .map(Field::el),
        );
    show::page(
        Job::Press.name(),
        Job::Press.about(),
        move || answer(&fields.needed(), pressed(fields)),
        [
            fields.diameter.el(),
            fields.interference.el(),
            fields.housing.el(),
            fields.seat.el(),
            fields.housing_metal.el(),
            fields.pin_metal.el(),
            fields.bore.el(),
            more,
        ],
        show::cautions(&[Caution::HotHousing, Caution::LiquidNitrogen]),
    )
}

fn pressed(fields: Fields) -> Result<Vec<El>, Why> {
    let fit = fields.fit()?;
    let cold = fit.pressed()?;
    let shop = fields.shop.of(Amount::temperature)?;
    let running = fit.at(
        shop,
        fields.hot_housing.of(Amount::temperature)?,
        fields.hot_pin.of(Amount::temperature)?,
    )?;
    let hot = running.pressed()?;
    let gap = fields.gap.length()?;
    let warm = fit.warm_housing(gap, shop, shop)?;
    let freezing = fit.cold_pin(gap, shop, shop)?;
    let grip = pushes(&cold);
    let metal = fit.housing_material.name();
    let deep_cold = freezing.care();
    let (warm, freezing) = (reach(warm, metal), reach(freezing, metal));
    let interference = |range: Range<Length>, unit| shown::range(range, Amount::of_length, unit);
    Ok(vec![
        show::key(&grip[0], &grip[1]),
        show::line(tr!("pushes it in or out, cold. Running, it is:")),
        show::bars(
            &[
                (tr!("Cold"), newtons(&cold), grip[0].clone()),
                (tr!("Running"), newtons(&hot), pushes(&hot)[0].clone()),
            ],
            0,
        ),
        show::line(grip_words(&running, &hot)),
        show::table(
            tr!("Press fit"),
            [
                show::row(tr!("Warm the housing to"), warm.0.clone(), warm.1),
                show::row(tr!("or cool the pin to"), freezing.0.clone(), freezing.1),
                pressure_row(tr!("Pressure"), cold.pressure),
                pressure_row(tr!("Pull round the hole"), cold.housing_hoop),
                pressure_row(tr!("Push in the pin"), cold.pin_hoop),
                show::row(
                    tr!("Pin less hole, running"),
                    interference(running.interference, Unit::Micrometre),
                    interference(running.interference, Unit::Thou),
                ),
            ],
        ),
        show::line(SPRINGS_BACK),
        el("div").with_all(deep_cold.map(show::line)),
        show::line(&cold.weakest.to_string()),
        show::write_down(
            tr!("Press fit"),
            tr!(
                "push {} cold, {} running; housing to {}, or pin to {}",
                grip[0],
                pushes(&hot)[0],
                warm.0,
                freezing.0
            ),
        ),
    ])
}

fn newtons(pressed: &Pressed) -> Range<f64> {
    pressed.push.map(|force| force.get::<uom::si::force::newton>())
}

fn pushes(pressed: &Pressed) -> [String; 2] {
    super::clamp::forces(pressed.push)
}

fn pressure_row(label: &str, pressure: Range<Pressure>) -> (String, String, String) {
    let show = |unit| shown::range(pressure, Amount::of_pressure, unit);
    show::row(label, show(Unit::Megapascal), show(Unit::Psi))
}

/// A temperature to get to, or why it can't be had.
fn reach(reach: Reach, metal: &str) -> (String, String) {
    let show = |temperature, unit: Unit| {
        Amount::of_temperature(temperature).map_or_else(String::new, |amount| {
            format!("{} {}", amount.show(unit, 0, Rounding::Nearest), unit.symbol())
        })
    };
    match reach {
        Reach::Can(at) => (show(at, Unit::Celsius), show(at, Unit::Fahrenheit)),
        Reach::TooWarm(at) => (
            tr!("{}: too warm", show(at, Unit::Celsius)),
            tr!("{metal} would lose its strength. Cool the pin as well, or press."),
        ),
        Reach::TooCold => (
            tr!("colder than can be had").to_owned(),
            tr!("Below liquid nitrogen. Warm the housing as well, or press.").to_owned(),
        ),
    }
}
