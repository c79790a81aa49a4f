//! The clamp hot: what is between head and nut grows more than the bolt does.

use super::clamp::forces;
use super::form::{Field, Form, Why, answer, fill_from};
use super::show;
use crate::dom::{El, el, text};
use pitleaf_core::joints::clamp::{Preload, Section, stiffness};
use pitleaf_core::joints::heat::{BOUND, Piece, hot_clamp, stretched_by};
use pitleaf_core::joints::strength::Strength;
use pitleaf_core::joints::threads::Thread;
use pitleaf_core::joints::{Material, Refusal, bounds, shown};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::seals::{Expansion, MATERIALS, Temperatures};
use pitleaf_translated::tr;
use uom::si::f64::{Length, ThermodynamicTemperature};
use uom::si::ratio::ratio;

const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
const DEGREES: &[Unit] = &[Unit::Celsius, Unit::Fahrenheit];

/// A metal that grows: its expansion and how warm it gets.
#[derive(Clone, Copy)]
pub(super) struct Grows {
    expansion: Field,
    running: Field,
    presets: &'static str,
}

impl Grows {
    pub(super) fn new(
        form: &mut Form,
        presets: &'static str,
        expansion: (&'static str, &'static str),
        running: (&'static str, &'static str),
    ) -> Self {
        Self {
            expansion: form.factor(expansion, &bounds::EXPANSION, ""),
            running: form.spread(running, &bounds::TEMPERATURE, DEGREES, ""),
            presets,
        }
    }

    pub(super) fn needed(self) -> [Field; 2] {
        [self.expansion, self.running]
    }

    pub(super) fn piece(self, length: Length) -> Result<Piece, Why> {
        let factors = self.expansion.factors()?;
        let expansion = Expansion::of_millionths(factors.least(), factors.greatest());
        let expansion = expansion.map_err(Refusal::from)?;
        Ok(Piece { length, expansion, running: temperatures(self.running)? })
    }

    pub(super) fn els(self) -> [El; 3] {
        let metals = MATERIALS
            .iter()
            .map(|metal| {
                let range =
                    format!("{}…{}", shown::shortest(metal.cold, 1), shown::shortest(metal.hot, 1));
                (metal.name.to_owned(), vec![(self.expansion, range, None)])
            })
            .collect();
        [fill_from(self.presets, metals), self.expansion.el(), self.running.el()]
    }
}

pub(super) fn temperatures(field: Field) -> Result<Temperatures, Why> {
    let range = field.temperatures()?;
    let (coldest, hottest): (ThermodynamicTemperature, _) = (range.least(), range.greatest());
    Ok(Temperatures { coldest, hottest })
}

/// The fields of the clamp once hot.
#[derive(Clone, Copy)]
pub(super) struct Hot {
    light: Field,
    rest: Field,
    light_grows: Grows,
    rest_grows: Grows,
    bolt_grows: Grows,
    tightened_at: Field,
}

impl Hot {
    pub(super) fn new(form: &mut Form) -> Self {
        Self {
            light: form.figure(
                ("light", tr!("Light metal clamped, length")),
                &bounds::FREE_LENGTH,
                LENGTHS,
                "",
            ),
            rest: form.figure(
                ("rest", tr!("Iron clamped, length")),
                &bounds::FREE_LENGTH,
                LENGTHS,
                "",
            ),
            light_grows: Grows::new(
                form,
                tr!("Light metal is"),
                ("light-expansion", tr!("Light metal’s expansion, 10⁻⁶/K")),
                ("light-running", tr!("Light metal, running")),
            ),
            rest_grows: Grows::new(
                form,
                tr!("Iron is"),
                ("rest-expansion", tr!("Iron’s expansion, 10⁻⁶/K")),
                ("rest-running", tr!("Iron, running")),
            ),
            bolt_grows: Grows::new(
                form,
                tr!("Bolt’s metal is"),
                ("bolt-expansion", tr!("Bolt’s expansion, 10⁻⁶/K")),
                ("bolt-running", tr!("Bolt, running")),
            ),
            tightened_at: form.spread(
                ("tightened-at", tr!("Tightened at")),
                &bounds::TEMPERATURE,
                DEGREES,
                "20",
            ),
        }
    }

    fn needed(self) -> Vec<Field> {
        let grows = [self.light_grows, self.rest_grows, self.bolt_grows];
        [self.light, self.rest]
            .into_iter()
            .chain(grows.into_iter().flat_map(Grows::needed))
            .chain([self.tightened_at])
            .collect()
    }

    pub(super) fn el(self) -> El {
        el("details")
            .class("joint-more")
            .with(text("summary", "", tr!("Hot: the stack grows past the bolt")))
            .with(text(
                "p",
                "plain",
                tr!("Lengths between head and nut, and metals as you know them: none is chosen for you. Give the free thread and shank above as well."),
            ))
            .with(self.light.el())
            .with_all(self.light_grows.els())
            .with(self.rest.el())
            .with_all(self.rest_grows.els())
            .with_all(self.bolt_grows.els())
            .with(self.tightened_at.el())
    }

    /// What is shown of it, once any of it is given.
    pub(super) fn answered(
        self,
        got: &Preload,
        strength: Strength,
        thread: Thread,
        sections: impl Fn() -> Result<Vec<Section>, Why>,
    ) -> Vec<El> {
        if !self.light.is_given() && !self.rest.is_given() {
            return Vec::new();
        }
        answer(&self.needed(), self.hot(got, strength, thread, sections))
    }

    fn hot(
        self,
        got: &Preload,
        strength: Strength,
        thread: Thread,
        sections: impl Fn() -> Result<Vec<Section>, Why>,
    ) -> Result<Vec<El>, Why> {
        let (light, rest) = (self.light.length()?, self.rest.length()?);
        let pieces = [self.light_grows.piece(light)?, self.rest_grows.piece(rest)?];
        let bolt = self.bolt_grows.piece(light + rest)?;
        let past = stretched_by(&pieces, &bolt, temperatures(self.tightened_at)?)
            .map_err(Refusal::from)?;
        let steel = Material::of_bolts().ok_or(Why::Missing)?;
        let stiffness = stiffness(&sections()?, steel.modulus().least())?;
        let hot = hot_clamp(got.force, stiffness, past);
        let stress = hot.map(|force| force / thread.stress_area());
        let share =
            shown::percent(strength.share_of_proof(stress).map(|share| share.get::<ratio>()));
        let show = |unit| shown::range(past, Amount::of_length, unit);
        let [metric, inch] = forces(hot);
        Ok(vec![
            show::table(
                tr!("Hot"),
                [
                    show::row(
                        tr!("Stack grows past the bolt"),
                        show(Unit::Millimetre),
                        show(Unit::Thou),
                    ),
                    show::row(tr!("Clamp hot"), metric, inch),
                    show::row(tr!("Pull alone, hot"), tr!("{share} of proof"), String::new()),
                ],
            ),
            show::line(BOUND),
        ])
    }
}
