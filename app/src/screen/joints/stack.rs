//! The stack against firing pressure: how much of the clamp is used up.

use super::clamp::forces;
use super::form::{Field, Form, Why, answer, hand_over};
use super::{Job, show};
use crate::dom::{El, button, el, link, text};
use crate::route::{PortsPlace, Route};
use crate::screen::ports::written_engine;
use crate::state::app;
use pitleaf_core::joints::clamp::{Fasteners, total_clamp};
use pitleaf_core::joints::separation::{Chamber, separation};
use pitleaf_core::joints::{Caution, Range, Refusal, bounds, shown};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::trochoid::{Geometry, GeometryFault};
use pitleaf_translated::tr;
use uom::si::angle::degree;
use uom::si::area::square_centimeter;
use uom::si::f64::{Angle, Force};
use uom::si::force::newton;
use uom::si::length::millimeter;
use uom::si::ratio::ratio;

/// The most fasteners through a stack.
const MOST: u16 = 60;

#[derive(Clone, Copy)]
struct Fields {
    bolts: Field,
    bolt: Field,
    studs: Field,
    stud: Field,
    pressure: Field,
    angle: Field,
    share: Field,
    eccentricity: Field,
    radius: Field,
    offset: Field,
}

impl Fields {
    fn new() -> Self {
        const FORCES: &[Unit] = &[Unit::Kilonewton, Unit::PoundForce];
        const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
        let preset = Geometry::preset();
        let mm = |length: uom::si::f64::Length| shown::shortest(length.get::<millimeter>(), 3);
        let mut form = Form::of("stack");
        let fields = Self {
            bolts: form.count(("bolts", tr!("Tension bolts")), MOST, ""),
            bolt: form.spread(("bolt", tr!("Clamp of each bolt")), &bounds::PRELOAD, FORCES, ""),
            studs: form.count(("studs", tr!("Through studs")), MOST, "0"),
            stud: form.spread(("stud", tr!("Clamp of each stud")), &bounds::PRELOAD, FORCES, ""),
            pressure: form.spread(
                ("pressure", tr!("Firing pressure")),
                &bounds::FIRING_PRESSURE,
                &[Unit::Bar, Unit::Psi],
                "",
            ),
            angle: form.figure(
                ("angle", tr!("Shaft after top")),
                &bounds::AFTER_TOP,
                &[Unit::Degree],
                "45",
            ),
            share: form.factor(
                ("share", tr!("Fasteners’ share of the load")),
                &bounds::LOAD_SHARE,
                tr!("0…0.3"),
            ),
            eccentricity: form.figure(
                ("eccentricity", tr!("Eccentricity")),
                &bounds::CIRCLE,
                LENGTHS,
                &mm(preset.eccentricity()),
            ),
            radius: form.figure(
                ("radius", tr!("Generating radius")),
                &bounds::CIRCLE,
                LENGTHS,
                &mm(preset.generating_radius()),
            ),
            offset: form.figure(
                ("offset", tr!("Apex seal’s nose radius")),
                &pitleaf_core::quantity::Bounds::GAP,
                LENGTHS,
                &mm(preset.apex_seal_offset()),
            ),
        };
        form.keep();
        fields
    }

    fn needed(self) -> [Field; 5] {
        let clamp =
            if self.bolts.counted().is_ok_and(|count| count > 0) { self.bolt } else { self.stud };
        [self.bolts, clamp, self.pressure, self.angle, self.share]
    }

    fn set(count: Field, each: Field) -> Result<Option<Fasteners>, Why> {
        let number = if count.is_given() { count.counted()? } else { 0 };
        if number == 0 {
            return Ok(None);
        }
        Ok(Some(Fasteners { count: number.into(), preload: each.forces()? }))
    }

    fn clamp(self) -> Result<Range<Force>, Why> {
        let sets = [Self::set(self.bolts, self.bolt)?, Self::set(self.studs, self.stud)?];
        if !self.bolts.is_given() {
            return Err(Why::Missing);
        }
        Ok(total_clamp(&sets.into_iter().flatten().collect::<Vec<_>>())?)
    }

    /// The build's own shape where its measures are in the book, else as typed here.
    fn geometry(self) -> Result<Geometry, Why> {
        if let Some(engine) = written_engine(app()) {
            return Ok(*engine.geometry());
        }
        // The width does not count for the area seen along the shaft.
        let width = Geometry::preset().housing_width();
        let (e, r, a) = (self.eccentricity.length()?, self.radius.length()?, self.offset.length()?);
        Geometry::new(e, r, a, width).map_err(|faults| {
            Why::Refused(faults.first().map(GeometryFault::to_string).unwrap_or_default())
        })
    }

    fn chamber(self) -> Result<Chamber, Why> {
        let geometry = self.geometry()?;
        let angle = self.angle.amount()?.value(Unit::Degree);
        Ok(Chamber::after_top(&geometry, Angle::new::<degree>(angle), self.pressure.pressures()?))
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let fields = Fields::new();
    let app = app();
    let shape = el("div").live(move || match written_engine(app) {
        Some(engine) => vec![carried(engine.geometry())],
        None => vec![
            el("details")
                .class("joint-more")
                .with(text(
                    "summary",
                    "",
                    tr!("Engine’s shape (as commonly quoted for 654 cm³ a rotor; measure yours)"),
                ))
                .with_all([fields.eccentricity, fields.radius, fields.offset].map(Field::el)),
            measures(tr!("Put the engine’s measures in once for all screens")),
        ],
    });
    show::page(
        Job::Stack.name(),
        Job::Stack.about(),
        move || answer(&fields.needed(), stack(fields)),
        [
            fields.bolts.el(),
            fields.bolt.el(),
            fields.studs.el(),
            fields.stud.el(),
            fields.pressure.el(),
            fields.angle.el(),
            fields.share.el(),
            shape,
        ],
        [text("p", "how", tr!("The pressure peaks some 40 to 50° after top (common practice, no source). Share 0 is the safe side for the faces: then they lose all of the pull."))]
            .into_iter()
            .chain(show::cautions(&[Caution::YieldingBolt])),
    )
}

/// The shape by the book, and the way to it.
fn carried(geometry: &Geometry) -> El {
    let mm = |length: uom::si::f64::Length| shown::shortest(length.get::<millimeter>(), 3);
    let words = tr!(
        "Engine’s shape as this build has it: eccentricity {} mm, generating radius {} mm, apex seal’s nose {} mm.",
        mm(geometry.eccentricity()),
        mm(geometry.generating_radius()),
        mm(geometry.apex_seal_offset())
    );
    el("div").with(show::line(&words)).with(measures(tr!("Change the engine’s measures")))
}

fn measures(words: &str) -> El {
    link("quiet", &Route::Ports(PortsPlace::Engine).hash()).text(words)
}

fn stack(fields: Fields) -> Result<Vec<El>, Why> {
    let clamp = fields.clamp()?;
    let chamber = fields.chamber()?;
    let pull = separation(clamp, &[chamber], fields.share.factors()?)?;
    let newtons = |force: Range<Force>| force.map(|force| force.get::<newton>());
    let (clamps, pulls, left) = (forces(clamp), forces(pull.force), forces(pull.clamp_left));
    let used = shown::percent(pull.share.map(|share| share.get::<ratio>()));
    let area = shown::plain(chamber.area.get::<square_centimeter>(), 1);
    let take = forces(clamp)[0].trim_end_matches(" kN").to_owned();
    let app = app();
    Ok(vec![
        show::key(&used, tr!("of the clamp is used up")),
        show::bars(
            &[
                (tr!("Clamp of all"), newtons(clamp), clamps[0].clone()),
                (tr!("Pull of the gas"), newtons(pull.force), pulls[0].clone()),
            ],
            1,
        ),
        show::line(pull.words()),
        show::table(
            tr!("Forces"),
            [
                show::row(tr!("Left on the faces"), left[0].clone(), left[1].clone()),
                show::row(tr!("Clamp of all"), clamps[0].clone(), clamps[1].clone()),
                show::row(tr!("Pull of the gas"), pulls[0].clone(), pulls[1].clone()),
                show::row(tr!("Chamber’s area"), format!("{area} cm²"), String::new()),
            ],
        ),
        show::line(&pull.weakest.to_string()),
        button("plate-link", tr!("Take the clamp to “Can a face turn?”"), move || {
            hand_over("slip", "clamp", take.clone(), Unit::Kilonewton);
            app.go(&Route::Joints(Job::Slip));
        }),
        show::write_down(
            tr!("Firing pressure against the clamp"),
            tr!("clamp {}, pull {}: {used} used up", clamps[0], pulls[0]),
        ),
    ])
}

/// A torque's range in both systems.
pub(super) fn torques(torque: Range<uom::si::f64::Torque>) -> [String; 2] {
    [Unit::NewtonMetre, Unit::PoundForceFoot]
        .map(|unit| shown::range(torque, Amount::of_torque, unit))
}

/// No rotor is no engine.
pub(super) fn rotors(count: u16) -> Result<u8, Why> {
    u8::try_from(count).map_err(|_| Refusal::Count(4).into())
}
