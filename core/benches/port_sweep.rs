//! How quick a full sweep of a port is, beside GEOS on the same work.
//!
//! ```sh
//! PYTHON=target/python/bin/python cargo bench -p pitleaf-core --bench port_sweep
//! ```
//!
//! `PYTHON` is an interpreter with `tests/reference/requirements.txt` installed; `python3` if unset.
//! The sweep: 1080° in steps of 0.5°, an outline of 200 points, all three chambers, times the best
//! of several runs. GEOS (through Shapely, one call for all) intersects the same outline with
//! chambers already built as polygons of just so many sides that its areas are good to a millionth
//! of the port's; only those intersections count. Ends with an error if the sweep takes more than
//! 2.5 ms, GEOS less than 50 times as long, or the cost per point and step grows by more than half
//! at ten or a hundred times the points or steps.

use std::{
    error::Error,
    hint::black_box,
    io::Write,
    num::NonZeroU32,
    process::{Command, Stdio},
    time::Instant,
};

use pitleaf_core::{
    ports::{Outline, Port, SealedBy, Seat},
    trochoid::{Chamber, Engine, Point},
};
use serde_json::{Value, json};
use uom::si::{area::square_millimeter, length::millimeter};

const POINTS: u32 = 200;
const STEPS: u32 = 720;
const BUDGET: f64 = 2.5e-3;
const TIMES_GEOS: f64 = 50.0;

fn main() -> Result<(), Box<dyn Error>> {
    let engine = Engine::preset();
    let port = port(&engine, POINTS)?;
    let sweep = time(&port, STEPS, 200)?;
    println!("one sweep, {POINTS} points, 0.5°, three chambers: {:.3} ms", 1e3 * sweep);
    let seat = Seat::new(&engine, SealedBy::SideSeal);
    let (shape, whole) =
        (outline(POINTS)?, |outline: &Outline| Port::new(&engine, outline, SealedBy::SideSeal));
    println!("putting the port into the engine, once: {:.3} ms", 1e3 * best(&shape, whole)?);
    println!("and into a seat tabled before: {:.3} ms", 1e3 * best(&shape, |o| seat.port(o))?);

    let mut faults = Vec::new();
    if sweep > BUDGET {
        faults.push(format!("a sweep takes {:.3} ms, more than {} ms", 1e3 * sweep, 1e3 * BUDGET));
    }
    for factor in [10, 100] {
        let runs = 200 / factor;
        let points = time(&self::port(&engine, POINTS * factor)?, STEPS, runs.max(3))?;
        let steps = time(&port, STEPS * factor, runs.max(3))?;
        for (what, taken) in [("points", points), ("steps", steps)] {
            let growth = taken / sweep / f64::from(factor);
            println!(
                "{factor} times the {what}: {:.2} ms, {growth:.2} of the cost per point and step",
                1e3 * taken
            );
            if growth > 1.5 {
                faults.push(format!("the cost grows faster than the {what}"));
            }
        }
    }

    let geos = geos(&engine, &port)?;
    let number = |name: &str| geos[name].as_f64().ok_or(format!("no {name} from the reference"));
    let (seconds, sides, off) = (number("seconds")?, number("sides")?, number("worst")?);
    println!(
        "GEOS {}: {:.0} ms for {} intersections with chambers of {sides} sides, good to {off:.1e}",
        geos["version"],
        1e3 * seconds,
        geos["intersections"]
    );
    println!("GEOS takes {:.0} times as long", seconds / sweep);
    if seconds < TIMES_GEOS * sweep {
        faults.push(format!("GEOS takes less than {TIMES_GEOS} times as long"));
    }
    if faults.is_empty() { Ok(()) } else { Err(faults.join("; ").into()) }
}

/// A rounded side port that reaches a little behind the rotor housing.
fn outline(points: u32) -> Result<Outline, Box<dyn Error>> {
    let corners = (0..points).map(|i| {
        let (sin, cos) = (std::f64::consts::TAU * f64::from(i) / f64::from(points)).sin_cos();
        let round = |share: f64| share.signum() * share.abs().sqrt();
        Point::from_millimetres(60.0 + 17.0 * round(cos), -66.0 + 21.0 * round(sin))
    });
    Outline::new(corners).map_err(|faults| faults[0].clone().into())
}

fn port(engine: &Engine, points: u32) -> Result<Port, Box<dyn Error>> {
    Ok(Port::new(engine, &outline(points)?, SealedBy::SideSeal)?)
}

/// The best time of several sweeps, in seconds.
fn time(port: &Port, per_turn: u32, runs: u32) -> Result<f64, Box<dyn Error>> {
    let per_turn = NonZeroU32::new(per_turn).ok_or("no steps")?;
    let run = |_| {
        let start = Instant::now();
        black_box(black_box(port).sweep(per_turn));
        start.elapsed().as_secs_f64()
    };
    Ok((0..runs).map(run).fold(f64::INFINITY, f64::min))
}

/// The best time to put an outline in, in seconds.
fn best<T, E: Error + 'static>(
    outline: &Outline,
    put_in: impl Fn(&Outline) -> Result<T, E>,
) -> Result<f64, Box<dyn Error>> {
    let mut best = f64::INFINITY;
    for _ in 0..50 {
        let start = Instant::now();
        black_box(put_in(black_box(outline))?);
        best = best.min(start.elapsed().as_secs_f64());
    }
    Ok(best)
}

/// Has `port_sweep.py` do the same sweep with GEOS.
fn geos(engine: &Engine, port: &Port) -> Result<Value, Box<dyn Error>> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/benches/port_sweep.py");
    let python = std::env::var("PYTHON").unwrap_or_else(|_| "python3".into());
    let mut child =
        Command::new(python).arg(folder).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn()?;
    let per_turn = NonZeroU32::new(STEPS).ok_or("no steps")?;
    let sweep = port.sweep(per_turn);
    let areas: Vec<Vec<f64>> = Chamber::ALL
        .iter()
        .map(|k| sweep.areas(*k).map(|area| area.get::<square_millimeter>()).collect())
        .collect();
    let outline = outline(POINTS)?;
    let points: Vec<_> = outline.points().iter().map(|point| point.millimetres()).collect();
    let shape = engine.geometry();
    let lengths = [shape.eccentricity(), shape.generating_radius(), shape.apex_seal_offset()];
    let asked = json!({
        "engine": lengths.map(|length| length.get::<millimeter>()),
        "inset": engine.seals().side_inset.get::<millimeter>(),
        "outline": points,
        "area": port.area().get::<square_millimeter>(),
        "areas": areas,
    });
    child.stdin.take().ok_or("no way to ask")?.write_all(asked.to_string().as_bytes())?;
    let answer = child.wait_with_output()?;
    if !answer.status.success() {
        return Err("the reference failed: set PYTHON to an interpreter with its packages".into());
    }
    Ok(serde_json::from_slice(&answer.stdout)?)
}
