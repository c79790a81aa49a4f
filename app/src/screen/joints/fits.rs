//! Limits and fits: by ISO class, by limits as given, or of a measured pair.

use super::form::{Field, Form, Why, alike, answer};
use super::{Job, show};
use crate::dom::{El, el, svg, text};
use crate::widget::switch;
use pitleaf_core::joints::bounds;
use pitleaf_core::joints::fits::{Class, Fit, FitFault, FitKind, Letter, Sizes, zones};
use pitleaf_core::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::tr;

impl From<FitFault> for Why {
    fn from(fault: FitFault) -> Self {
        Self::Refused(fault.to_string())
    }
}

#[derive(Clone, Copy)]
struct Fields {
    way: Field,
    nominal: Field,
    hole: Field,
    hole_grade: Field,
    shaft: Field,
    shaft_grade: Field,
    hole_least: Field,
    hole_greatest: Field,
    shaft_least: Field,
    shaft_greatest: Field,
    hole_size: Field,
    shaft_size: Field,
}

impl Fields {
    fn new() -> Self {
        const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
        let mut form = Form::of("fits");
        let mut size = |named, bounds| form.figure(named, bounds, LENGTHS, "");
        let fields = [
            size(("nominal", tr!("Nominal size")), &bounds::FIT_NOMINAL),
            size(("hole-least", tr!("Hole, least")), &bounds::FIT_HOLE),
            size(("hole-greatest", tr!("Hole, greatest")), &bounds::FIT_HOLE),
            size(("shaft-least", tr!("Pin or shaft, least")), &bounds::FIT_SHAFT),
            size(("shaft-greatest", tr!("Pin or shaft, greatest")), &bounds::FIT_SHAFT),
            size(("hole-size", tr!("Hole, measured")), &bounds::FIT_HOLE),
            size(("shaft-size", tr!("Pin or shaft, measured")), &bounds::FIT_SHAFT),
        ];
        let [
            nominal,
            hole_least,
            hole_greatest,
            shaft_least,
            shaft_greatest,
            hole_size,
            shaft_size,
        ] = fields;
        let fields = Self {
            way: form.words(("way", "Way"), "class"),
            nominal,
            hole: form.words(("hole", tr!("Hole")), "H"),
            hole_grade: form.words(("hole-grade", tr!("Hole’s grade")), "7"),
            shaft: form.words(("shaft", tr!("Shaft")), "m"),
            shaft_grade: form.words(("shaft-grade", tr!("Shaft’s grade")), "6"),
            hole_least,
            hole_greatest,
            shaft_least,
            shaft_greatest,
            hole_size,
            shaft_size,
        };
        form.keep();
        fields
    }

    fn classes(self) -> Result<(Class, Class), Why> {
        let class = |letter: Field, grade: Field| Class::read(&(letter.text() + &grade.text()));
        Ok((class(self.hole, self.hole_grade)?, class(self.shaft, self.shaft_grade)?))
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let fields = Fields::new();
    let way = fields.way.typed;
    let ways = switch(
        tr!("Given"),
        &[("class", tr!("ISO class")), ("limits", tr!("Limits")), ("pair", tr!("Measured"))],
        move |choice| way.with(|way| way == choice),
        move |choice| way.set(choice.to_owned()),
    );
    let given = el("div").class("form").live(move || match way.get().as_str() {
        "limits" => {
            [fields.hole_least, fields.hole_greatest, fields.shaft_least, fields.shaft_greatest]
                .map(Field::el)
                .to_vec()
        }
        "pair" => {
            let mut given = vec![fields.hole_size.el(), fields.shaft_size.el()];
            given.push(text(
                "p",
                "how",
                tr!("Both at the same temperature: measure after an hour on the same bench."),
            ));
            given
        }
        _ => vec![fields.nominal.el(), picker(fields)],
    });
    show::page(
        Job::Fits.name(),
        Job::Fits.about(),
        move || {
            let needed = match way.get().as_str() {
                "limits" => vec![
                    fields.hole_least,
                    fields.hole_greatest,
                    fields.shaft_least,
                    fields.shaft_greatest,
                ],
                "pair" => vec![fields.hole_size, fields.shaft_size],
                _ => vec![fields.nominal],
            };
            answer(&needed, fit(fields))
        },
        [ways, given],
        show::cautions(&[]),
    )
}

/// Letter and grade of hole and shaft.
fn picker(fields: Fields) -> El {
    let letters = |is_hole: bool| {
        Letter::ALL.into_iter().filter_map(move |letter| {
            let class = if is_hole { Class::hole(letter, 7) } else { Class::shaft(letter, 6) };
            Some(class.ok()?.to_string().trim_end_matches(|c: char| c.is_ascii_digit()).to_owned())
        })
    };
    let grades = || Class::GRADES.map(|grade| grade.to_string());
    el("div")
        .class("pair")
        .with(fields.hole.choice(alike(letters(true))))
        .with(fields.hole_grade.choice(alike(grades())))
        .with(fields.shaft.choice(alike(letters(false))))
        .with(fields.shaft_grade.choice(alike(grades())))
}

fn fit(fields: Fields) -> Result<Vec<El>, Why> {
    let (hole, shaft, nominal, about) = match fields.way.text().as_str() {
        "limits" => (
            Sizes::new(fields.hole_least.amount()?, fields.hole_greatest.amount()?)?,
            Sizes::new(fields.shaft_least.amount()?, fields.shaft_greatest.amount()?)?,
            None,
            tr!("As given").to_owned(),
        ),
        "pair" => (
            Sizes::measured(fields.hole_size.amount()?),
            Sizes::measured(fields.shaft_size.amount()?),
            None,
            tr!("Measured pair").to_owned(),
        ),
        _ => {
            let nominal = fields.nominal.amount()?;
            let (hole, shaft) = fields.classes()?;
            let sizes = (Sizes::of_class(nominal, hole)?, Sizes::of_class(nominal, shaft)?);
            let text = fields.nominal.text();
            let symbol = fields.nominal.unit.get().symbol();
            (sizes.0, sizes.1, Some(nominal), format!("{text} {symbol} {hole}/{shaft}"))
        }
    };
    let fit = Fit::of(hole, shaft);
    let (metric, inch) = (fit.words(Unit::Millimetre, 4), fit.words(Unit::Thou, 2));
    let mut made = vec![show::key(&capital(fit.kind()), &about)];
    if hole.least() != hole.greatest() {
        made.push(drawn(hole, shaft, nominal));
    }
    made.push(show::table(
        tr!("Fit"),
        [
            show::row(tr!("Fit"), metric.clone(), inch.clone()),
            sizes_row(tr!("Hole"), hole),
            sizes_row(tr!("Pin or shaft"), shaft),
        ],
    ));
    if nominal.is_some() {
        made.push(show::source(tr!(
            "ISO 286-1:2010. Inch sizes are rounded inward: they admit nothing the class rejects."
        )));
    }
    made.push(show::write_down(tr!("Fit"), format!("{about}: {metric} ({inch})")));
    Ok(made)
}

fn capital(kind: FitKind) -> String {
    match kind {
        FitKind::Clearance => tr!("Clearance"),
        FitKind::Transition => tr!("Transition"),
        FitKind::Interference => tr!("Interference"),
    }
    .to_owned()
}

/// Limits of size, inward.
fn sizes_row(label: &str, sizes: Sizes) -> (String, String, String) {
    let edges = |unit: Unit, places: u8| {
        let edge = |size: Amount, inward| size.show(unit, places, inward);
        if sizes.least() == sizes.greatest() {
            return format!("{} {}", edge(sizes.least(), Rounding::Nearest), unit.symbol());
        }
        let least = edge(sizes.least(), Rounding::Up);
        format!("{least}…{} {}", edge(sizes.greatest(), Rounding::Down), unit.symbol())
    };
    (label.to_owned(), edges(Unit::Millimetre, 4), edges(Unit::Inch, 5))
}

/// The zones of hole and shaft beside each other.
fn drawn(hole: Sizes, shaft: Sizes, nominal: Option<Amount>) -> El {
    let zones = zones(hole, shaft, nominal);
    // A measured size is a line, drawn a hair wide.
    let zone = |class: &str, x: u16, (top, bottom): (u16, u16)| {
        let bottom = bottom.max(top + 12);
        svg("path").attrs(&[("class", class), ("d", &format!("M{x} {top}h700V{bottom}H{x}z"))])
    };
    let mut picture = svg("svg")
        .attrs(&[("class", "zones"), ("viewBox", "0 -40 1800 1092"), ("aria-hidden", "true")])
        .with(zone("hole", 150, zones.hole))
        .with(zone("shaft", 950, zones.shaft));
    if let Some(zero) = zones.nominal {
        picture = picture
            .with(svg("path").attrs(&[("class", "zero"), ("d", &format!("M0 {zero}H1800"))]));
    }
    el("figure").class("fit-picture").with(picture).with(
        el("figcaption").with(text("span", "", tr!("hole"))).with(text(
            "span",
            "",
            tr!("pin or shaft"),
        )),
    )
}
