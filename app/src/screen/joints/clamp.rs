//! One fastener: what a torque clamps, or which torque a clamp needs; its proof load and its stretch.

use super::form::{Field, Form, Presets, Why, alike, answer, fill_from, hand_over};
use super::hot_clamp::Hot;
use super::{Job, show};
use crate::dom::{El, button, el, text};
use crate::route::Route;
use crate::state::app;
use crate::widget::switch;
use pitleaf_core::joints::clamp::{
    Preload, Section, nut_factors, preload, preload_of_stretch, scatter_of_stretch, scatters,
    stretch, torque_for,
};
use pitleaf_core::joints::strength::{PropertyClass, Strength};
use pitleaf_core::joints::threads::Thread;
use pitleaf_core::joints::torsion::{TAKEN, while_tightened};
use pitleaf_core::joints::{Caution, Material, Range, bounds, shown};
use pitleaf_core::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::tr;
use uom::si::f64::{Force, Pressure, Ratio, Torque};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;

#[derive(Clone, Copy)]
struct Fields {
    way: Field,
    thread: Field,
    torque: Field,
    wanted: Field,
    nut_factor: Field,
    scatter: Field,
    proof: Field,
    tensile: Field,
    threaded: Field,
    shank_length: Field,
    shank: Field,
    stretched: Field,
    hot: Hot,
}

impl Fields {
    fn new() -> Self {
        const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
        const STRESSES: &[Unit] = &[Unit::Megapascal, Unit::Psi];
        let mut form = Form::of("clamp");
        let fields = Self {
            way: form.words(("way", "Way"), "torque"),
            thread: form.words(("thread", tr!("Thread")), ""),
            torque: form.figure(
                ("torque", tr!("Torque")),
                &bounds::TORQUE,
                &[Unit::NewtonMetre, Unit::PoundForceFoot, Unit::KilogramForceMetre],
                "",
            ),
            wanted: form.figure(
                ("wanted", tr!("Clamp wanted")),
                &bounds::PRELOAD,
                &[Unit::Kilonewton, Unit::PoundForce],
                "",
            ),
            nut_factor: form.factor(
                ("nut-factor", tr!("Nut factor K, one or a range")),
                &bounds::NUT_FACTOR,
                "",
            ),
            scatter: form.factor(("scatter", tr!("Scatter, either way")), &bounds::SCATTER, ""),
            proof: form.figure(("proof", tr!("Proof stress")), &bounds::STRENGTH, STRESSES, ""),
            tensile: form.figure(
                ("tensile", tr!("Tensile strength")),
                &bounds::STRENGTH,
                STRESSES,
                "",
            ),
            threaded: form.figure(
                ("threaded", tr!("Free thread")),
                &bounds::FREE_LENGTH,
                LENGTHS,
                "",
            ),
            shank_length: form.figure(
                ("shank-length", tr!("Free shank")),
                &bounds::FREE_LENGTH,
                LENGTHS,
                "",
            ),
            shank: form.figure(("shank", tr!("Shank’s diameter")), &bounds::SHANK, LENGTHS, ""),
            stretched: form.figure(
                ("stretched", tr!("Stretch measured")),
                &bounds::STRETCH,
                &[Unit::Millimetre, Unit::Thou],
                "",
            ),
            hot: Hot::new(&mut form),
        };
        form.keep();
        fields
    }

    fn is_wanted(self) -> bool {
        self.way.typed.with(|way| way == "clamp")
    }

    fn needed(self) -> [Field; 6] {
        let load = if self.is_wanted() { self.wanted } else { self.torque };
        [self.thread, load, self.nut_factor, self.scatter, self.proof, self.tensile]
    }

    /// The free lengths that are given.
    fn sections(self, thread: Thread) -> Result<Vec<Section>, Why> {
        let mut sections = Vec::new();
        if self.threaded.is_given() {
            sections.push(Section { length: self.threaded.length()?, area: thread.stress_area() });
        }
        if self.shank_length.is_given() && self.shank.is_given() {
            sections.push(Section::shank(self.shank_length.length()?, self.shank.length()?));
        }
        Ok(sections)
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let fields = Fields::new();
    let ways = switch(
        tr!("Given"),
        &[("torque", tr!("Torque → clamp")), ("clamp", tr!("Clamp → torque"))],
        move |choice| fields.way.typed.with(|way| way == choice),
        move |choice| fields.way.typed.set(choice.to_owned()),
    );
    let load = el("div").live(move || {
        vec![if fields.is_wanted() { fields.wanted.el() } else { fields.torque.el() }]
    });
    let stretch = el("details")
        .class("joint-more")
        .with(text("summary", "", tr!("Stretch: free length and shank")))
        .with_all(
            [fields.threaded, fields.shank_length, fields.shank, fields.stretched].map(Field::el),
        );
    show::page(
        Job::Clamp.name(),
        Job::Clamp.about(),
        move || answer(&fields.needed(), clamp(fields)),
        [
            ways,
            fields.thread.choice(alike(Thread::all().map(Thread::name))),
            load,
            fill_from(tr!("Threads and seats are"), lubrications(fields)),
            fields.nut_factor.el(),
            fill_from(tr!("Tightened by"), tightenings(fields)),
            fields.scatter.el(),
            fill_from(tr!("Bolt’s class"), classes(fields)),
            fields.proof.el(),
            fields.tensile.el(),
            stretch,
            fields.hot.el(),
        ],
        show::cautions(&[Caution::YieldingBolt]),
    )
}

fn lubrications(fields: Fields) -> Presets {
    nut_factors()
        .map(|usual| (usual.condition.to_owned(), vec![(fields.nut_factor, usual.typed(), None)]))
        .collect()
}

fn tightenings(fields: Fields) -> Presets {
    scatters()
        .map(|usual| (usual.condition.to_owned(), vec![(fields.scatter, usual.typed(), None)]))
        .collect()
}

fn classes(fields: Fields) -> Presets {
    PropertyClass::all()
        .map(|class| {
            let own = |field: Field, stress: Amount| {
                let unit =
                    if class.source().starts_with("SAE") { Unit::Psi } else { Unit::Megapascal };
                (field, stress.show(unit, 0, Rounding::Nearest), Some(unit))
            };
            let stresses = vec![
                own(fields.proof, class.proof_stress()),
                own(fields.tensile, class.tensile_strength()),
            ];
            (format!("{} ({})", class.name(), class.source()), stresses)
        })
        .collect()
}

fn clamp(fields: Fields) -> Result<Vec<El>, Why> {
    let thread = Thread::named(&fields.thread.given()?).ok_or(Why::Missing)?;
    let diameter = thread.diameter().length().ok_or(Why::Missing)?;
    let (factor, scatter) = (fields.nut_factor.factors()?, fields.scatter.factor()?);
    let torque = if fields.is_wanted() {
        torque_for(fields.wanted.of(Amount::force)?, diameter, factor)?
    } else {
        fields.torque.of(Amount::torque)?
    };
    let got = preload(torque, diameter, factor, scatter)?;
    let strength = Strength::of_material(
        fields.proof.of(Amount::pressure)?,
        fields.tensile.of(Amount::pressure)?,
    )?;
    let exactly = |unit| shown::range(Range::exactly(torque), Amount::of_torque, unit);
    let torques = [exactly(Unit::NewtonMetre), exactly(Unit::PoundForceFoot)];
    let clamps = forces(got.force);
    let mut made = if fields.is_wanted() {
        vec![
            show::key(&torques[0], &torques[1]),
            show::table(
                tr!("Clamp"),
                [show::row(tr!("It clamps"), clamps[0].clone(), clamps[1].clone())],
            ),
        ]
    } else {
        vec![show::key(&clamps[0], &clamps[1])]
    };
    made.extend(proof(&got, torque, strength, thread));
    made.extend(strength.too_large(thread.diameter()).map(|words| show::line(&words)));
    made.push(show::line(&got.weakest.to_string()));
    made.extend(stretches(fields, thread, &got)?);
    made.extend(fields.hot.answered(&got, strength, thread, || fields.sections(thread)));
    made.push(hand_on(got.force));
    made.push(show::write_down(
        tr!("Clamp of a fastener"),
        tr!("{thread} at {}: {} ({})", torques[0], clamps[0], clamps[1]),
    ));
    Ok(made)
}

/// A range of forces in both systems.
pub(super) fn forces(force: Range<Force>) -> [String; 2] {
    [Unit::Kilonewton, Unit::PoundForce].map(|unit| shown::range(force, Amount::of_force, unit))
}

fn proof(got: &Preload, torque: Torque, strength: Strength, thread: Thread) -> Vec<El> {
    let area = thread.stress_area();
    let pull = got.force.map(|force| force / area);
    let both = while_tightened(torque, got.force, thread);
    let pascals = |stress: Range<Pressure>| stress.map(|stress| stress.get::<pascal>());
    let shares = |stress| {
        shown::percent(strength.share_of_proof(stress).map(|share: Ratio| share.get::<ratio>()))
    };
    let proof = Range::exactly(strength.proof());
    let load = forces(Range::exactly(strength.proof_load(area)));
    vec![
        show::bars(
            &[
                (tr!("Pull alone"), pascals(pull), tr!("{} of proof", shares(pull))),
                (
                    tr!("Pull and twist, tightening"),
                    pascals(both),
                    tr!("{} of proof", shares(both)),
                ),
                (tr!("Proof stress"), pascals(proof), format!("{}   {}", stresses(proof), load[0])),
            ],
            2,
        ),
        show::line(&strength.verdict(both).to_string()),
        show::source(TAKEN),
    ]
}

fn stresses(stress: Range<Pressure>) -> String {
    shown::range(stress, Amount::of_pressure, Unit::Megapascal)
}

/// How much longer it gets, and what a measured stretch tells.
fn stretches(fields: Fields, thread: Thread, got: &Preload) -> Result<Vec<El>, Why> {
    let sections = fields.sections(thread)?;
    if sections.is_empty() {
        return Ok(Vec::new());
    }
    let steel = Material::of_bolts().ok_or(Why::Missing)?;
    let modulus: Pressure = steel.modulus().least();
    let longer = stretch(got.force, &sections, modulus)?;
    let show = |unit| shown::range(longer, Amount::of_length, unit);
    let mut rows = vec![show::row(tr!("Stretch"), show(Unit::Millimetre), show(Unit::Thou))];
    if fields.stretched.is_given() {
        let scatter = scatter_of_stretch();
        let told =
            preload_of_stretch(fields.stretched.length()?, &sections, modulus, scatter)?.force;
        let [metric, inch] = forces(told);
        rows.push(show::row(tr!("Clamp by stretch"), metric, inch));
    }
    Ok(vec![show::table(tr!("Stretch"), rows)])
}

/// Takes the clamp on to the stack.
fn hand_on(force: Range<Force>) -> El {
    let app = app();
    let take = move |id: &'static str, words: &str| {
        let text = shown::range(force, Amount::of_force, Unit::Kilonewton);
        button("plate-link", words, move || {
            let figure = text.trim_end_matches(" kN").to_owned();
            hand_over("stack", id, figure, Unit::Kilonewton);
            app.go(&Route::Joints(Job::Stack));
        })
    };
    el("div")
        .class("pair")
        .with(take("bolt", tr!("Take it for the bolts")))
        .with(take("stud", tr!("Take it for the studs")))
}
