//! The table of kills: `cargo test -p pitleaf-tests --bench kills -- [RUNS]`, in the engine that
//! `PITLEAF_ENGINE` names.
//!
//! The app must be built; Firefox needs firefox-esr and geckodriver in the path.

use pitleaf_tests::kills::{after, in_a_stream};
use pitleaf_tests::{Engine, Server};
use std::time::Duration;

fn main() {
    let engine = Engine::chosen();
    let runs = std::env::args().skip(1).find_map(|word| word.parse().ok()).unwrap_or(20);
    let server = Server::start();
    println!("{engine:?}\nkilled after “Written” | runs | lost");
    for wait in [0, 50, 200, 1000, 3000] {
        let lost = after(engine, &server, Duration::from_millis(wait), runs);
        println!("{wait} ms | {runs} | {lost}");
    }
    let streams = (0..runs as u64).map(|run| {
        // Spread over a second and a half, with no common measure with a write.
        in_a_stream(engine, &server, Duration::from_millis(100 + run * 7919 % 1400))
    });
    let (acknowledged, lost) =
        streams.fold((0, 0), |sum, stream| (sum.0 + stream.acknowledged, sum.1 + stream.lost));
    println!("in a stream | {runs}, {acknowledged} entries acknowledged | {lost}");
}
