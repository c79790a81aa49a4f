//! Converts for `tests/reference/unit_conversion.py`, which holds the answers against another library.
//!
//! Each line in: a number, the symbol of its unit, the symbol of another. Each line out: the figure in
//! the other unit, exact (`-` where twelve decimals can't tell it), to nearest, down and up at nine decimals.

use pitleaf_core::quantity::{Bounds, Reading, Rounding, Unit};
use std::io::{self, BufRead, Write};

fn main() -> io::Result<()> {
    let mut out = io::stdout().lock();
    for line in io::stdin().lock().lines() {
        writeln!(out, "{}", answer(&line?).map_err(io::Error::other)?)?;
    }
    Ok(())
}

fn answer(line: &str) -> Result<String, String> {
    let fields: Vec<&str> = line.split('\t').collect();
    let [number, from, to] = fields[..] else {
        return Err(format!("{line:?} has no three fields"));
    };
    let unit = |symbol: &str| Unit::named(symbol).ok_or(format!("{symbol} is no unit"));
    let (from, to) = (unit(from)?, unit(to)?);
    let reading = Reading::read(number, from, Bounds::widest(from.dimension()))
        .map_err(|fault| format!("{line:?}: {fault}"))?;
    let amount = reading.amount();
    let exact = amount.exact_figure(to, 12).unwrap_or_else(|| "-".to_owned());
    let [nearest, down, up] = [Rounding::Nearest, Rounding::Down, Rounding::Up]
        .map(|rounding| amount.show(to, 9, rounding));
    Ok([exact, nearest, down, up].join("\t"))
}
