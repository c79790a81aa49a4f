//! Judges for `tests/reference/conformity.py`, which holds the answers against another library.
//!
//! Each line in, in millimetres: lower edge, upper edge (`-` for none), reading, standard uncertainty.
//! Each line out: the call, whether the bare figure is within, the probability of conformity.

use pitleaf_core::limits::{Call, Edge, Limit, Side, decide_with_uncertainty};
use pitleaf_core::quantity::{Amount, Bounds, Fault, Reading, Unit::Millimetre};
use std::io::{self, BufRead, Write};

fn main() -> io::Result<()> {
    let mut out = io::stdout().lock();
    for line in io::stdin().lock().lines() {
        let line = line?;
        let answer =
            answer(&line).map_err(|fault| io::Error::other(format!("{line:?}: {fault}")))?;
        writeln!(out, "{answer}")?;
    }
    Ok(())
}

fn answer(line: &str) -> Result<String, Fault> {
    let mut fields = line.split('\t');
    let mut next = || fields.next().unwrap_or_default();
    let edge = |text: &str| match text {
        "-" => Ok(None),
        text => Edge::read(text, Millimetre).map(Some),
    };
    let read = |text: &str| Reading::read(text, Millimetre, Bounds::widest(Millimetre.dimension()));
    let limit = Limit { lower: edge(next())?, upper: edge(next())?, wear: None };
    let reading = read(next())?;
    let standard = read(next())?.amount().minus(Amount::whole(0, Millimetre));
    let verdict = decide_with_uncertainty(&limit, &reading, standard);
    let call = match verdict.call {
        Call::Meets => "meets",
        Call::DoesNotMeet(Side::Below) => "below",
        Call::DoesNotMeet(Side::Above) => "above",
        Call::TooClose => "too close",
    };
    Ok(format!("{call}\t{}\t{:e}", verdict.within, verdict.conformity))
}
