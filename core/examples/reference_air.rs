//! Answers `tests/reference/air.py`: an altitude in metres a line, the standard pressure in pascals a line.

use pitleaf_core::air::standard_pressure;
use uom::si::f64::Length;

fn main() {
    for line in std::io::stdin().lines() {
        let line = line.expect("standard input can be read");
        let metres: f64 = line.trim().parse().expect("an altitude");
        let pressure = standard_pressure(Length::new::<uom::si::length::meter>(metres));
        println!("{:?}", pressure.get::<uom::si::pressure::pascal>());
    }
}
