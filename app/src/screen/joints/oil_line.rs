//! An oil line: what a wanted flow costs, what the pressure gives, and the port to drill for it.

use super::form::{Field, Form, Why, answer, fill_from};
use super::threads::port_link;
use super::{Job, show};
use crate::dom::{El, el, text};
use crate::screen::bench::list;
use pitleaf_core::joints::oil_line::{Line, Oil, OilState, fittings, typical_oils};
use pitleaf_core::joints::threads::BossPort;
use pitleaf_core::joints::{Caution, Range, bounds, shown};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_translated::tr;
use uom::si::f64::{KinematicViscosity, MassDensity, ThermodynamicTemperature};
use uom::si::kinematic_viscosity::square_millimeter_per_second;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;

/// The most of one kind in a line.
const MOST: u16 = 20;
/// The usual wall, in micrometres.
const ROUGHNESS: &str = "1.5";
/// Where it is from.
const SMOOTH: &str = tr!(
    "Roughness 1.5 µm stands for drawn tube and smooth hose liners (Moody, 1944; from memory). It counts only where the oil runs in eddies."
);

#[derive(Clone)]
struct Fields {
    bore: Field,
    length: Field,
    flow: Field,
    pressure: Field,
    at: Field,
    at_40: Field,
    at_100: Field,
    density: Field,
    roughness: Field,
    counts: Vec<Field>,
}

impl Fields {
    fn new() -> Self {
        const LENGTHS: &[Unit] = &[Unit::Millimetre, Unit::Inch];
        let mut form = Form::of("oil-line");
        let fields = Self {
            flow: form.figure(
                ("flow", tr!("Flow wanted")),
                &bounds::FLOW,
                &[Unit::LitrePerMinute, Unit::GallonPerMinute],
                "",
            ),
            pressure: form.figure(
                ("pressure", tr!("Oil pressure there is")),
                &bounds::OIL_PRESSURE,
                &[Unit::Bar, Unit::Psi, Unit::Kilopascal],
                "",
            ),
            bore: form.figure(("bore", tr!("Line’s bore")), &bounds::LINE_BORE, LENGTHS, ""),
            length: form.figure(
                ("length", tr!("Line’s length")),
                &bounds::LINE_LENGTH,
                &[Unit::Millimetre, Unit::Metre, Unit::Inch, Unit::Foot],
                "",
            ),
            at: form.figure(
                ("at", tr!("Oil’s temperature")),
                &bounds::TEMPERATURE,
                &[Unit::Celsius, Unit::Fahrenheit],
                "90",
            ),
            at_40: form.factor(("at-40", tr!("Viscosity at 40 °C")), &bounds::VISCOSITY, ""),
            at_100: form.factor(("at-100", tr!("Viscosity at 100 °C")), &bounds::VISCOSITY, ""),
            density: form.factor(("density", tr!("Density")), &bounds::DENSITY, "850"),
            roughness: form.figure(
                ("roughness", tr!("Roughness of the wall")),
                &bounds::ROUGHNESS,
                &[Unit::Micrometre, Unit::Thou],
                ROUGHNESS,
            ),
            counts: fittings()
                .map(|fitting| form.count((fitting.word, fitting.name), MOST, "0"))
                .collect(),
        };
        form.keep();
        fields
    }

    fn needed(&self) -> [Field; 9] {
        [
            self.flow,
            self.pressure,
            self.bore,
            self.length,
            self.at_40,
            self.at_100,
            self.at,
            self.density,
            self.roughness,
        ]
    }

    fn line(&self) -> Result<Line, Why> {
        let mut kinds = Vec::new();
        for (fitting, count) in fittings().zip(&self.counts) {
            if count.is_given() {
                kinds.push((fitting, u32::from(count.counted()?)));
            }
        }
        Ok(Line {
            bore: self.bore.length()?,
            length: self.length.length()?,
            roughness: self.roughness.length()?,
            fittings: kinds,
        })
    }

    fn oil(&self) -> Result<OilState, Why> {
        let viscosity = |field: Field| {
            field.factor().map(KinematicViscosity::new::<square_millimeter_per_second>)
        };
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        let oil = Oil::through(
            (celsius(40.0), viscosity(self.at_40)?),
            (celsius(100.0), viscosity(self.at_100)?),
        )?;
        Ok(OilState {
            viscosity: oil.at(self.at.of(Amount::temperature)?)?,
            density: MassDensity::new::<kilogram_per_cubic_meter>(self.density.factor()?),
        })
    }
}

/// The screen.
pub fn screen() -> Vec<El> {
    let fields = Fields::new();
    let oils = typical_oils()
        .map(|oil| {
            let figure = |viscosity: KinematicViscosity| {
                shown::shortest(viscosity.get::<square_millimeter_per_second>(), 1)
            };
            let texts = vec![
                (fields.at_40, figure(oil.at_40), None),
                (fields.at_100, figure(oil.at_100), None),
            ];
            (tr!("{} (typical, from memory)", oil.name), texts)
        })
        .collect();
    let kinds = el("details")
        .class("joint-more")
        .with(text("summary", "", tr!("Fittings in the line")))
        .with_all(fields.counts.iter().map(|count| count.el()));
    let shown = [
        fields.flow.el(),
        fields.pressure.el(),
        fields.bore.el(),
        fields.length.el(),
        kinds,
        fill_from(tr!("Oil"), oils),
        fields.at_40.el(),
        fields.at_100.el(),
        fields.at.el(),
        fields.density.el(),
        fields.roughness.el(),
        show::source(SMOOTH),
    ];
    show::page(
        Job::OilLine.name(),
        Job::OilLine.about(),
        move || answer(&fields.needed(), answered(&fields)),
        shown,
        show::cautions(&[Caution::HotOil, Caution::OilPressure]),
    )
}

fn answered(fields: &Fields) -> Result<Vec<El>, Why> {
    let (line, oil) = (fields.line()?, fields.oil()?);
    let flow = fields.flow.of(Amount::flow)?;
    let available = fields.pressure.of(Amount::pressure)?;
    let drop = line.drop(&oil, flow)?;
    let gives = line.flow(&oil, available)?;
    let pressures = |range, unit| shown::range(range, Amount::of_pressure, unit);
    let pascals =
        |range: Range<_>| range.map(|pressure: uom::si::f64::Pressure| pressure.get::<pascal>());
    let flows = |unit| shown::range(gives, Amount::of_flow, unit);
    let there = Range::exactly(available);
    let costs = pressures(drop.pressure, Unit::Bar);
    let viscosity = oil.viscosity.get::<square_millimeter_per_second>();
    let mut made = vec![
        show::key(&costs, &pressures(drop.pressure, Unit::Psi)),
        show::line(tr!("is what the wanted flow costs in this line.")),
        show::bars(
            &[
                (tr!("Costs"), pascals(drop.pressure), costs.clone()),
                (tr!("There is"), pascals(there), pressures(there, Unit::Bar)),
            ],
            1,
        ),
        show::line(&drop.against(available).to_string()),
        show::table(
            tr!("Oil line"),
            [
                show::row(
                    tr!("The pressure gives"),
                    flows(Unit::LitrePerMinute),
                    flows(Unit::GallonPerMinute),
                ),
                show::row(
                    tr!("The oil runs"),
                    drop.regime.name().to_owned(),
                    tr!("Reynolds number {}", shown::plain(drop.reynolds, 0)),
                ),
                show::row(
                    tr!("Viscosity there"),
                    format!("{} mm²/s", shown::plain_range(Range::exactly(viscosity))),
                    String::new(),
                ),
            ],
        ),
        show::line(&drop.weakest.to_string()),
    ];
    if let Some(port) = BossPort::for_line_bore(fields.bore.amount()?) {
        made.push(text("h2", "", tr!("Port to drill and tap")));
        made.push(list("rows", tr!("Port"), [port_link(port)]));
    }
    made.push(show::write_down(
        tr!("Oil line"),
        tr!(
            "bore {} {}: {costs} for the wanted flow",
            fields.bore.text(),
            fields.bore.unit.get().symbol()
        ),
    ));
    Ok(made)
}
