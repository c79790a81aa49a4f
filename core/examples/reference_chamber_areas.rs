//! Answers `tests/reference/chamber_areas.py`: reads one engine a line as JSON, writes its chambers' areas.
//!
//! In: `{"engine": [e, R, a], "angles": [θ, …]}` in mm and degrees.
//! Out: `{"areas": [[mm² by chamber], …], "least": mm², "greatest": mm²}`.

use std::{
    error::Error,
    io::{BufRead, Write, stdin, stdout},
};

use pitleaf_core::trochoid::{Chamber, Chambers, Geometry};
use serde_json::{Value, json};
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Length, Volume},
    length::millimeter,
};

fn main() -> Result<(), Box<dyn Error>> {
    for line in stdin().lock().lines() {
        writeln!(stdout().lock(), "{}", answer(&serde_json::from_str(&line?)?)?)?;
    }
    Ok(())
}

fn answer(asked: &Value) -> Result<Value, Box<dyn Error>> {
    let mm = Length::new::<millimeter>;
    let [e, r, a] = numbers(&asked["engine"])[..] else { return Err("three measures".into()) };
    let width = mm(80.0);
    let geometry = Geometry::new(mm(e), mm(r), mm(a), width).map_err(|faults| faults[0])?;
    let chambers = Chambers::new(&geometry);
    let area = |volume: Volume| (volume / width).get::<square_millimeter>();
    let areas: Vec<_> = numbers(&asked["angles"])
        .into_iter()
        .map(|theta| {
            let theta = Angle::new::<degree>(theta);
            Chamber::ALL.map(|chamber| chambers.area(chamber, theta).get::<square_millimeter>())
        })
        .collect();
    Ok(json!({
        "areas": areas,
        "least": area(chambers.least_volume()),
        "greatest": area(chambers.greatest_volume()),
    }))
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().into_iter().flatten().filter_map(Value::as_f64).collect()
}
