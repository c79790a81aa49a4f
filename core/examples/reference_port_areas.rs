//! Answers `tests/reference/port_areas.py`: reads one engine with a port a line as JSON, writes its
//! open areas and its openings.
//!
//! In: `{"engine": [e, R, a], "inset": i, "side_seal": bool, "outline": [[x, y], …],
//! "angles": [θ, …]}` in mm and degrees.
//! Out: `{"area": mm², "open": [[mm² by chamber], …], "openings": [[opens, closes], …]}`.

use std::{
    error::Error,
    io::{BufRead, Write, stdin, stdout},
    num::NonZeroU32,
};

use pitleaf_core::{
    ports::{Outline, Port, SealedBy},
    trochoid::{Chamber, Engine, Geometry, Point, Seals},
};
use serde_json::{Value, json};
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Length},
    length::millimeter,
};

const STEPS_PER_TURN: NonZeroU32 = NonZeroU32::new(720).expect("more than none");

fn main() -> Result<(), Box<dyn Error>> {
    for line in stdin().lock().lines() {
        writeln!(stdout().lock(), "{}", answer(&serde_json::from_str(&line?)?)?)?;
    }
    Ok(())
}

fn answer(asked: &Value) -> Result<Value, Box<dyn Error>> {
    let engine = numbers(&asked["engine"]);
    let mm = Length::new::<millimeter>;
    let geometry = Geometry::new(mm(engine[0]), mm(engine[1]), mm(engine[2]), mm(80.0))
        .map_err(|faults| faults[0])?;
    // The seals but for the inset play no part here; these fit every engine.
    let seals = Seals {
        corner_distance: mm(0.8 * engine[1]),
        corner_radius: mm(0.5),
        side_inset: mm(asked["inset"].as_f64().ok_or("an inset")?),
        oil_radius: mm(1.0),
        coolant_land: mm(6.0),
    };
    let engine = Engine::new(geometry, seals).map_err(|faults| faults[0])?;
    let points = asked["outline"].as_array().ok_or("an outline")?;
    let points =
        points.iter().map(|point| Point::from_millimetres(numbers(point)[0], numbers(point)[1]));
    let outline = Outline::new(points).map_err(|faults| faults[0].clone())?;
    let side_seal = asked["side_seal"] == Value::Bool(true);
    let sealed_by = if side_seal { SealedBy::SideSeal } else { SealedBy::FlankEdge };
    let port = Port::new(&engine, &outline, sealed_by)?;
    let open: Vec<_> = numbers(&asked["angles"])
        .iter()
        .map(|theta| {
            let areas = port.open_areas(Angle::new::<degree>(*theta)).areas();
            areas.map(|area| area.get::<square_millimeter>())
        })
        .collect();
    let openings: Vec<_> = port
        .sweep(STEPS_PER_TURN)
        .openings()
        .iter()
        .map(|opening| {
            [opening.opens(Chamber::First), opening.closes(Chamber::First)]
                .map(|angle| angle.get::<degree>())
        })
        .collect();
    Ok(json!({
        "area": port.area().get::<square_millimeter>(),
        "open": open,
        "openings": openings,
    }))
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().into_iter().flatten().filter_map(Value::as_f64).collect()
}
