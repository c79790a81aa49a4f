//! Prints how long the next-leaf advice takes over a set of 30 leaves and stacks of up to three.
//!
//! Run it with `cargo run --profile bench -p pitleaf-core --example next_leaf_time`.

use pitleaf_core::limits::{Edge, Limit};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::seals::{Bracket, Leaf, LeafSet, NextLeaf, next_leaf, usual_tolerance};
use std::error::Error;
use std::hint::black_box;
use std::time::Instant;

const RUNS: usize = 201;

fn main() -> Result<(), Box<dyn Error>> {
    // 30 leaves as a mixed bench has them: 0.03 to 0.10 mm by 0.01, and 22 of an inch set, none thicker than 0.025 in.
    let metric = (3..=10).map(|hundredths| (hundredths * 10, Unit::Micrometre));
    let inch = (3..=24).map(|thou| (thou, Unit::Thou));
    let leaves: Result<Vec<Leaf>, _> =
        metric.chain(inch).map(|(mark, unit)| Leaf::read(&mark.to_string(), unit)).collect();
    let set = LeafSet::of("mixed", leaves?, usual_tolerance()?)?;
    let edge = |text| Edge::read(text, Unit::Inch);
    let limit = Limit { lower: Some(edge("0.0015")?), upper: Some(edge("0.0040")?), wear: None };
    let micrometres = |count| Some(Amount::whole(count, Unit::Micrometre));
    let cases = [
        ("nothing known", Bracket::default()),
        ("free in its slot", Bracket { low: micrometres(0), high: None }),
        ("close to the upper edge", Bracket { low: micrometres(47), high: micrometres(130) }),
    ];
    println!("{} leaves, stacks of up to 3, median of {RUNS} runs:", set.leaves().len());
    for (name, bracket) in cases {
        let mut times: Vec<f64> = (0..RUNS)
            .map(|_| {
                let start = Instant::now();
                black_box(next_leaf(black_box(bracket), black_box(&limit), black_box(&set), 3));
                start.elapsed().as_secs_f64() * 1e6
            })
            .collect();
        times.sort_by(f64::total_cmp);
        let advice = match next_leaf(bracket, &limit, &set, 3) {
            NextLeaf::Try(next) => format!("try {}, at most {} tries", next.stack, next.most_tries),
            other => format!("{other:?}"),
        };
        println!(
            "{name}: {:.0} µs, at worst {:.0} µs ({advice})",
            times[RUNS / 2],
            times[RUNS - 1]
        );
    }
    Ok(())
}
