//! Can a joint face turn? Friction, hollow and solid dowels against a rotor's reaction.

use super::form::{Field, Form, Why, answer};
use super::hot_dowels::Hot;
use super::stack::{rotors, torques};
use super::{Job, show};
use crate::dom::{El, el, text};
use crate::state::app;
use pitleaf_core::joints::slip::{Dowels, reaction, slip};
use pitleaf_core::joints::{Range, bounds, shown};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_translated::tr;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::f64::{AngularVelocity, Torque};
use uom::si::ratio::ratio;
use uom::si::torque::newton_meter;

#[derive(Clone, Copy)]
struct Fields {
    clamp: Field,
    circle: Field,
    friction: Field,
    output: Field,
    speed: Field,
    rotors: Field,
    peak: Field,
    count: Field,
    radius: Field,
    diameter: Field,
    bore: Field,
    seat: Field,
    shear: Field,
    bearing: Field,
    hot: Hot,
}

impl Fields {
    fn new() -> Self {
        const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
        const STRESSES: &[Unit] = &[Unit::Megapascal, Unit::Psi];
        const POWERS: &[Unit] = &[Unit::Kilowatt, Unit::Horsepower, Unit::MetricHorsepower];
        let rotors = app().rotors();
        let mut form = Form::of("slip");
        let fields = Self {
            clamp: form.spread(
                ("clamp", tr!("Clamp of all")),
                &bounds::CLAMP,
                &[Unit::Kilonewton, Unit::PoundForce],
                "",
            ),
            output: form.figure(("output", tr!("Output")), &bounds::POWER, POWERS, ""),
            speed: form.factor(("speed", tr!("at turns a minute")), &bounds::SPEED, ""),
            rotors: form.count(("rotors", tr!("Rotors")), 4, &rotors.to_string()),
            circle: form.figure(
                ("circle", tr!("Bolts’ mean radius")),
                &bounds::CIRCLE,
                LENGTHS,
                "",
            ),
            count: form.count(("count", tr!("Dowels through the face")), 12, "2"),
            radius: form.figure(("radius", tr!("Dowels’ radius")), &bounds::CIRCLE, LENGTHS, ""),
            diameter: form.figure(("diameter", tr!("Dowel’s diameter")), &bounds::PIN, LENGTHS, ""),
            bore: form.figure(("bore", tr!("Hollow dowel’s bore")), &bounds::PIN_BORE, LENGTHS, ""),
            seat: form.figure(
                ("seat", tr!("Length in the weaker part")),
                &bounds::SEAT,
                LENGTHS,
                "",
            ),
            friction: form.factor(
                ("friction", tr!("Friction of the faces")),
                &bounds::FRICTION,
                "0.10…0.20",
            ),
            peak: form.factor(("peak", tr!("Peak over mean torque")), &bounds::PEAK_FACTOR, "2…5"),
            shear: form.spread(
                ("shear", tr!("Dowel’s shear strength")),
                &bounds::STRENGTH,
                STRESSES,
                "300…500",
            ),
            bearing: form.spread(
                ("bearing", tr!("Its hole bears")),
                &bounds::STRENGTH,
                STRESSES,
                "150…300",
            ),
            hot: Hot::new(&mut form),
        };
        form.keep();
        fields
    }

    fn needed(self) -> [Field; 14] {
        [
            self.clamp,
            self.output,
            self.speed,
            self.rotors,
            self.circle,
            self.count,
            self.radius,
            self.diameter,
            self.bore,
            self.seat,
            self.friction,
            self.peak,
            self.shear,
            self.bearing,
        ]
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let fields = Fields::new();
    let assumed = [fields.friction, fields.peak, fields.shear, fields.bearing];
    let mut shown: Vec<El> = fields.needed()[..10].iter().map(|field| field.el()).collect();
    shown.push(
        el("details")
            .class("joint-more")
            .with(text("summary", "", tr!("Assumed: friction, peak, strengths")))
            .with(text(
                "p",
                "plain",
                tr!("These are to start from: common practice, no source. Put in what you know."),
            ))
            .with_all(assumed.map(Field::el)),
    );
    shown.push(fields.hot.el());
    show::page(
        Job::Slip.name(),
        Job::Slip.about(),
        move || {
            let mut shown = answer(&fields.needed(), faces(fields));
            shown.extend(fields.hot.answered());
            shown
        },
        shown,
        [text("p", "how", tr!("Friction and dowels are not added: a dowel with clearance carries nothing until the face has slipped."))]
            .into_iter()
            .chain(show::cautions(&[])),
    )
}

fn faces(fields: Fields) -> Result<Vec<El>, Why> {
    let reaction = reaction(
        fields.output.of(Amount::power)?,
        AngularVelocity::new::<revolution_per_minute>(fields.speed.factor()?),
        rotors(fields.rotors.counted()?)?,
        fields.peak.factors()?,
    )?;
    let dowels = Dowels {
        count: fields.count.counted()?.into(),
        radius: fields.radius.length()?,
        diameter: fields.diameter.length()?,
        bore: fields.bore.length()?,
        seat: fields.seat.length()?,
        shear_strength: fields.shear.pressures()?,
        bearing_strength: fields.bearing.pressures()?,
    };
    let held = slip(
        fields.clamp.forces()?,
        fields.circle.length()?,
        fields.friction.factors()?,
        &dowels,
        reaction,
    )?;
    let metres = |torque: Range<Torque>| torque.map(|torque| torque.get::<newton_meter>());
    let all = [
        (tr!("Friction"), held.friction),
        (tr!("Hollow dowels"), held.hollow),
        (tr!("Solid dowels"), held.solid),
    ];
    let words = |torque: Range<Torque>| torques(torque)[0].clone();
    let mut rows = vec![(tr!("Rotor’s reaction"), metres(reaction), words(reaction))];
    rows.extend(all.iter().map(|(name, held)| (*name, metres(held.torque), words(held.torque))));
    let table = all.iter().map(|(name, held)| {
        let margin = shown::plain_range(held.margin.map(|margin| margin.get::<ratio>()));
        show::row(name, format!("{margin} ×"), format!("{}. {}", held.words(), held.weakest))
    });
    Ok(vec![
        show::key(&words(reaction), &torques(reaction)[1]),
        show::line(tr!("is the reaction of one rotor. It is held by:")),
        show::bars(&rows, 0),
        show::table(tr!("Held over reaction"), table),
        show::write_down(
            tr!("Can a face turn?"),
            tr!(
                "reaction {}; friction {}, hollow dowels {}, solid {}",
                words(reaction),
                words(held.friction.torque),
                words(held.hollow.torque),
                words(held.solid.torque)
            ),
        ),
    ])
}
