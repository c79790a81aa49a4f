//! How long the minimum zone takes, and how that grows: `cargo bench -p pitleaf-core --bench minimum_zone`.
//!
//! Ends with a panic when 400 points take over 5 ms, or when time grows faster than n log n does.
//! The best of several runs is taken: other work on the machine only ever adds.

use pitleaf_core::faces::{Point, Reference, flatness};
use std::hint::black_box;
use std::time::{Duration, Instant};
use uom::si::f64::Length;
use uom::si::length::millimeter;

const RUNS: usize = 50;
const MOST: Duration = Duration::from_millis(5);
/// Slack for the caches that 400 points fit and 10,000 don't.
const SLACK: f64 = 2.0;

fn main() {
    for (name, shape) in
        [("bowl", bowl as fn(f64, f64, f64) -> f64), ("noise", noise), ("coarse gauge", coarse)]
    {
        let base = best(name, 400, shape);
        assert!(base <= MOST, "{name}: 400 points took {base:?}, more than {MOST:?}");
        for count in [1_000, 10_000] {
            let took = best(name, count, shape);
            let of = |n: u32| f64::from(n) * f64::from(n).ln();
            let allowed = SLACK * of(count) / of(400);
            let grown = took.as_secs_f64() / base.as_secs_f64();
            assert!(grown <= allowed, "{name}: {count} points took {grown:.1} times as long");
        }
    }
}

fn best(name: &str, count: u32, shape: fn(f64, f64, f64) -> f64) -> Duration {
    let points: Vec<Point> = (0..count)
        .map(|place| {
            // The R2 sequence: places spread evenly, the same in every run.
            let part = |step: f64| (0.5 + f64::from(place) * step).fract();
            let (x, y) = (part(0.754_877_666_246_692_8), part(0.569_840_290_998_053_3));
            let noise = part(0.414_213_562_373_095_1);
            let mm = Length::new::<millimeter>;
            Point { x: mm(240.0 * x), y: mm(180.0 * y), z: mm(shape(x, y, noise)) }
        })
        .collect();
    let took = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            let found = flatness(black_box(&points), Reference::MinimumZone);
            assert!(black_box(found).is_ok(), "{name}: refused");
            start.elapsed()
        })
        .min()
        .unwrap_or_default();
    println!("{name:12} {count:6} points  {:8.3} ms", took.as_secs_f64() * 1e3);
    took
}

fn bowl(x: f64, y: f64, noise: f64) -> f64 {
    0.03 * ((x - 0.4) * (x - 0.4) + (y - 0.6) * (y - 0.6)) + 0.001 * noise
}

fn noise(_: f64, _: f64, noise: f64) -> f64 {
    0.02 * noise
}

fn coarse(x: f64, y: f64, noise: f64) -> f64 {
    ((bowl(x, y, noise) + 0.002 * noise) * 500.0).round() / 500.0
}
