//! Places seals read from standard input, for the check against another library (tests/reference).
//!
//! Each line is one task of whole micrometres: `lower upper aim | seals … | slots …`. Each answer is a line:
//! slots (or seals, if they are fewer) left without a fit, metal removed, sum of squares from the aim.

use pitleaf_core::limits::{Edge, Limit};
use pitleaf_core::quantity::{Amount, Unit};
use pitleaf_core::seals::assign;
use std::error::Error;
use std::io::BufRead;

fn main() -> Result<(), Box<dyn Error>> {
    for line in std::io::stdin().lock().lines() {
        println!("{}", answer(&line?)?);
    }
    Ok(())
}

fn answer(line: &str) -> Result<String, Box<dyn Error>> {
    let mut parts = line.split('|');
    let mut numbers = || -> Result<Vec<i64>, Box<dyn Error>> {
        let part = parts.next().ok_or("a line of three parts is wanted")?;
        Ok(part.split_whitespace().map(str::parse).collect::<Result<_, _>>()?)
    };
    let (edges, seals, slots) = (numbers()?, numbers()?, numbers()?);
    let &[lower, upper, aim] = edges.as_slice() else {
        return Err("lower, upper and aim are wanted".into());
    };
    let edge = |mark: i64| Edge::read(&mark.to_string(), Unit::Micrometre);
    let limit = Limit { lower: Some(edge(lower)?), upper: Some(edge(upper)?), wear: None };
    let amounts = |marks: &[i64]| -> Vec<Amount> {
        marks.iter().map(|&mark| Amount::whole(mark, Unit::Micrometre)).collect()
    };
    let aim = Amount::whole(aim, Unit::Micrometre);
    let found = assign(&amounts(&seals), &amounts(&slots), &limit, aim)?;
    let micrometre = Amount::whole(1, Unit::Micrometre).above_zero();
    let squares: i64 = found
        .placed
        .iter()
        .filter_map(|placed| placed.gap.minus(aim).times_over(micrometre))
        .map(|off| off * off)
        .sum();
    let unfit = seals.len().min(slots.len()) - found.placed.len();
    let removed = found.removed.times_over(micrometre).ok_or("too much to count")?;
    Ok(format!("{unfit} {removed} {squares}"))
}
