//! Answers the reference scripts in `tests/reference`: one question a line on stdin, one answer a line.
//!
//! - `drop BORE LENGTH ROUGHNESS VISCOSITY DENSITY FLOW FITTING×COUNT;…` (m, m, m, m²/s, kg/m³, m³/s) →
//!   Reynolds number, least and greatest drop in Pa;
//! - `viscosity T1 V1 T2 V2 T` (°C, mm²/s) → mm²/s;
//! - `limits SIZE CLASS` (mm) → lower and upper deviation in µm.
//!
//! What is refused is answered with its sentence behind `refused: `.

use pitleaf_core::joints::fits::{Class, limits};
use pitleaf_core::joints::oil_line::{Fitting, Line, Oil, OilState};
use pitleaf_core::quantity::{Amount, Span, Unit};
use std::error::Error;
use std::io::{BufRead, Write};
use uom::si::f64::{KinematicViscosity, Length, MassDensity, ThermodynamicTemperature, VolumeRate};
use uom::si::kinematic_viscosity::{square_meter_per_second, square_millimeter_per_second};
use uom::si::length::meter;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume_rate::cubic_meter_per_second;

fn main() -> Result<(), Box<dyn Error>> {
    let mut out = std::io::stdout().lock();
    for line in std::io::stdin().lock().lines() {
        let line = line?;
        let (question, rest) = line.split_once(' ').ok_or("a question without figures")?;
        let answer = match question {
            "drop" => lost(rest),
            "viscosity" => viscosity(rest),
            "limits" => deviations(rest),
            other => Err(format!("no question {other:?}").into()),
        };
        match answer {
            Ok(answer) => writeln!(out, "{answer}")?,
            Err(fault) => writeln!(out, "refused: {fault}")?,
        }
    }
    Ok(())
}

/// The first figures of a line, and what stands behind them.
fn figures<const N: usize>(text: &str) -> Result<([f64; N], &str), Box<dyn Error>> {
    let mut rest = text;
    let mut found = [0.0; N];
    for figure in &mut found {
        let (first, after) = rest.split_once(' ').unwrap_or((rest, ""));
        *figure = first.parse()?;
        rest = after;
    }
    Ok((found, rest))
}

fn lost(text: &str) -> Result<String, Box<dyn Error>> {
    let ([bore, length, roughness, viscosity, density, flow], rest) = figures(text)?;
    let metres = Length::new::<meter>;
    let mut fittings = Vec::new();
    for piece in rest.split(';').filter(|piece| !piece.is_empty()) {
        let (name, count) = piece.split_once('×').ok_or("a fitting without a count")?;
        fittings.push((Fitting::named(name).ok_or("an unknown fitting")?, count.parse()?));
    }
    let line =
        Line { bore: metres(bore), length: metres(length), roughness: metres(roughness), fittings };
    let oil = OilState {
        viscosity: KinematicViscosity::new::<square_meter_per_second>(viscosity),
        density: MassDensity::new::<kilogram_per_cubic_meter>(density),
    };
    let drop = line.drop(&oil, VolumeRate::new::<cubic_meter_per_second>(flow))?;
    let (least, greatest) = (drop.pressure.least(), drop.pressure.greatest());
    Ok(format!("{} {} {}", drop.reynolds, least.get::<pascal>(), greatest.get::<pascal>()))
}

fn viscosity(text: &str) -> Result<String, Box<dyn Error>> {
    let ([t1, v1, t2, v2, at], _) = figures(text)?;
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let thick = KinematicViscosity::new::<square_millimeter_per_second>;
    let oil = Oil::through((celsius(t1), thick(v1)), (celsius(t2), thick(v2)))?;
    Ok(oil.at(celsius(at))?.get::<square_millimeter_per_second>().to_string())
}

fn deviations(text: &str) -> Result<String, Box<dyn Error>> {
    let (size, class) = text.split_once(' ').ok_or("a size without a class")?;
    let found = limits(Amount::whole(size.parse()?, Unit::Millimetre), Class::read(class)?)?;
    let micrometres = |span: Span| span.value(Unit::Micrometre);
    Ok(format!("{} {}", micrometres(found.lower), micrometres(found.upper)))
}
