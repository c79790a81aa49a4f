//! Answers `tests/reference/keep_clear.py`: reads one engine with a port a line as JSON, writes what the
//! port runs into and what it does to the corner seals.
//!
//! In: `{"engine": [e, R, a], "corner": [distance, radius], "oil": r, "land": d, "margin": m,
//! "outline": [[x, y], …], "beside": [[x, y], …] or null}` in mm.
//! Out: `{"track": [mm, mm²] or null, "oil": …, "land": …, "bore": …,
//! "overhang": [share, θ in degrees, can drop in] or null}`.

use std::{
    error::Error,
    io::{BufRead, Write, stdin, stdout},
};

use pitleaf_core::{
    ports::{Obstacle, Outline, intrusions, overhang},
    trochoid::{Engine, Geometry, Point, Seals},
};
use serde_json::{Value, json};
use uom::si::{
    angle::degree, area::square_millimeter, f64::Length, length::millimeter, ratio::ratio,
};

fn main() -> Result<(), Box<dyn Error>> {
    for line in stdin().lock().lines() {
        writeln!(stdout().lock(), "{}", answer(&serde_json::from_str(&line?)?)?)?;
    }
    Ok(())
}

fn answer(asked: &Value) -> Result<Value, Box<dyn Error>> {
    let mm = Length::new::<millimeter>;
    let number = |name: &str| asked[name].as_f64().map(mm).ok_or(format!("no {name}"));
    let [e, r, a] = numbers(&asked["engine"])[..] else { return Err("three measures".into()) };
    let [distance, radius] = numbers(&asked["corner"])[..] else { return Err("two".into()) };
    let geometry = Geometry::new(mm(e), mm(r), mm(a), mm(80.0)).map_err(|faults| faults[0])?;
    let seals = Seals {
        corner_distance: mm(distance),
        corner_radius: mm(radius),
        side_inset: mm(1.0),
        oil_radius: number("oil")?,
        coolant_land: number("land")?,
    };
    let engine = Engine::new(geometry, seals).map_err(|faults| faults[0])?;
    let port = outline(&asked["outline"])?;
    let beside = match &asked["beside"] {
        Value::Null => Vec::new(),
        beside => vec![outline(beside)?],
    };
    let found = intrusions(&engine, &port, number("margin")?);
    let into = |obstacle: Obstacle| {
        let found = found.iter().find(|intrusion| intrusion.obstacle == obstacle);
        found.map(|found| [found.depth.get::<millimeter>(), found.area.get::<square_millimeter>()])
    };
    let hangs = overhang(&engine, &port, &beside).map(|hangs| {
        json!([hangs.share.get::<ratio>(), hangs.theta.get::<degree>(), hangs.drops.is_some()])
    });
    Ok(json!({
        "track": into(Obstacle::CornerSealTrack),
        "oil": into(Obstacle::OilSealSweep),
        "land": into(Obstacle::CoolantLand),
        "bore": into(Obstacle::RotorHousing),
        "overhang": hangs,
    }))
}

fn outline(rows: &Value) -> Result<Outline, Box<dyn Error>> {
    let rows = rows.as_array().ok_or("an outline")?;
    let points = rows.iter().map(|row| Point::from_millimetres(numbers(row)[0], numbers(row)[1]));
    Ok(Outline::new(points).map_err(|faults| faults[0].clone())?)
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().into_iter().flatten().filter_map(Value::as_f64).collect()
}
