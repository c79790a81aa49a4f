//! Two solid dowels between parts that grow unlike.

use super::form::{Field, Form, Why, answer};
use super::hot_clamp::{Grows, temperatures};
use super::show;
use crate::dom::{El, el, text};
use pitleaf_core::joints::heat::dowels;
use pitleaf_core::joints::{Range, Refusal, bounds, shown};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_translated::tr;
use uom::si::f64::Length;

#[derive(Clone, Copy)]
pub(super) struct Hot {
    spacing: Field,
    one: Grows,
    other: Grows,
    fit_one: Field,
    fit_other: Field,
    fitted_at: Field,
}

impl Hot {
    pub(super) fn new(form: &mut Form) -> Self {
        const SMALL: &[Unit] = &[Unit::Micrometre, Unit::Thou, Unit::Millimetre];
        Self {
            spacing: form.figure(
                ("spacing", tr!("Distance between the two dowels")),
                &bounds::DOWEL_SPACING,
                &[Unit::Millimetre, Unit::Inch],
                "",
            ),
            one: Grows::new(
                form,
                tr!("One part is"),
                ("one-expansion", tr!("One part’s expansion, 10⁻⁶/K")),
                ("one-running", tr!("One part, running")),
            ),
            other: Grows::new(
                form,
                tr!("Other part is"),
                ("other-expansion", tr!("Other part’s expansion, 10⁻⁶/K")),
                ("other-running", tr!("Other part, running")),
            ),
            fit_one: form.spread(
                ("fit-one", tr!("Hole less dowel, one part")),
                &bounds::CLEARANCE,
                SMALL,
                "",
            ),
            fit_other: form.spread(
                ("fit-other", tr!("Hole less dowel, other part")),
                &bounds::CLEARANCE,
                SMALL,
                "",
            ),
            fitted_at: form.spread(
                ("fitted-at", tr!("Fitted at")),
                &bounds::TEMPERATURE,
                &[Unit::Celsius, Unit::Fahrenheit],
                "20",
            ),
        }
    }

    fn needed(self) -> Vec<Field> {
        std::iter::once(self.spacing)
            .chain(self.one.needed())
            .chain(self.other.needed())
            .chain([self.fit_one, self.fit_other, self.fitted_at])
            .collect()
    }

    pub(super) fn el(self) -> El {
        el("details")
            .class("joint-more")
            .with(text("summary", "", tr!("Solid dowels when hot")))
            .with(text(
                "p",
                "plain",
                tr!("Aluminium between iron grows past it, and dowels that are tight in both fight that. A press is below zero: -5."),
            ))
            .with(self.spacing.el())
            .with_all(self.one.els())
            .with(self.fit_one.el())
            .with_all(self.other.els())
            .with(self.fit_other.el())
            .with(self.fitted_at.el())
    }

    /// What is shown of it, once the distance is given.
    pub(super) fn answered(self) -> Vec<El> {
        if self.spacing.is_given() { answer(&self.needed(), self.hot()) } else { Vec::new() }
    }

    fn hot(self) -> Result<Vec<El>, Why> {
        let spacing = self.spacing.length()?;
        let (one, other) = (self.one.piece(spacing)?, self.other.piece(spacing)?);
        let fits = [self.fit_one.lengths()?, self.fit_other.lengths()?];
        let hot =
            dowels(&one, &other, temperatures(self.fitted_at)?, fits).map_err(Refusal::from)?;
        let row = |label, range: Range<Length>| {
            let show = |unit| shown::range(range, Amount::of_length, unit);
            show::row(label, show(Unit::Millimetre), show(Unit::Thou))
        };
        Ok(vec![
            show::table(
                tr!("Solid dowels when hot"),
                [
                    row(tr!("One part grows past the other"), hot.past),
                    row(tr!("Both dowels’ fits give"), hot.room),
                ],
            ),
            show::line(hot.verdict().words()),
        ])
    }
}
