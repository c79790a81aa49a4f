//! German number words from standard input, for the check against another library (tests/reference): a
//! whole number a line, its words a line.

use pitleaf_core::spoken::german::whole;
use std::error::Error;
use std::io::BufRead;

fn main() -> Result<(), Box<dyn Error>> {
    for line in std::io::stdin().lock().lines() {
        println!("{}", whole(line?.trim().parse()?));
    }
    Ok(())
}
