//! Lighthouse on every screen: 100 in accessibility and best practices; performance on the screens that are
//! opened first. `tests/lighthouse/judge.mjs` has the rules.

use pitleaf_tests::dist;
use pitleaf_tests::places::PLACES;
use std::path::Path;
use std::process::{Command, ExitCode};

/// Where a phone comes in, or comes back to.
const TIMED: [&str; 4] = ["#/", "#/check/side-seal-gap-fi/1F-AB", "#/seals/1F", "#/work"];

/// What no timed screen may fall below, on a machine with other work; with little of it, medians are 92 and
/// more. The aim is 100: bench and work compute what a cut port does to a corner seal before they are drawn.
const FLOOR: &str = "85";

/// Judges side by side where nothing is timed: each mostly waits.
const JUDGES: usize = 3;

fn judge() -> Command {
    let mut node = Command::new("node");
    node.arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("lighthouse/judge.mjs"));
    node.arg(dist()).args(["--floor", FLOOR]);
    node
}

fn main() -> ExitCode {
    let mut timed = judge();
    for screen in TIMED {
        timed.args(["--timed", screen]);
    }
    let mut is_well = timed.status().expect("node").success();
    // One entry's own place has an id that nobody knows beforehand.
    let places = PLACES.iter().map(|(_, place)| place).filter(|place| !place.ends_with("ENTRY"));
    let places: Vec<_> = places.collect();
    let judges = places
        .chunks(places.len().div_ceil(JUDGES))
        .map(|part| judge().arg("--").args(part).spawn().expect("node"));
    for mut judge in judges.collect::<Vec<_>>() {
        is_well &= judge.wait().expect("node, to its end").success();
    }
    if is_well { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
