//! The hot gap from what a person types: every text read, every fault said at once.

use super::growth::{Band, Chain, Piece, Temperatures, gap_at_reference, hot_gap};
use super::{Expansion, MATERIALS, Material};
use crate::quantity::{Amount, Bounds, Fault, Reading, Unit};
use pitleaf_translated::translated;
use uom::si::f64::{Length, ThermodynamicTemperature};

/// A piece as typed: its metal by its place in [`MATERIALS`], none before it is chosen, and its running temperatures.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TypedPiece {
    /// Which row of [`MATERIALS`].
    pub material: Option<usize>,
    /// The builder's own coefficients in millionths a kelvin, "10.5 to 12"; empty for the row's.
    pub own: String,
    /// The coldest it runs.
    pub coldest: String,
    /// The hottest it runs.
    pub hottest: String,
}

/// Everything typed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TypedHotGap {
    /// The side seal's length.
    pub seal_length: String,
    /// A corner seal's diameter.
    pub corner_diameter: String,
    /// The least cold gap.
    pub least_gap: String,
    /// The greatest cold gap; empty where it is the same.
    pub greatest_gap: String,
    /// The bench's temperature.
    pub bench: String,
    /// Rotor, side seal, corner seal.
    pub pieces: [TypedPiece; 3],
    /// The unit of lengths typed without one.
    pub length: Option<Unit>,
    /// The unit of temperatures typed without one.
    pub temperature: Option<Unit>,
}

/// The gaps that come out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HotGap {
    /// Running.
    pub hot: Band,
    /// All parts at 20 °C.
    pub at_reference: Band,
    /// Whether the bench was at 20 °C, so that nothing is to be corrected.
    pub bench_is_reference: bool,
}

/// What the three pieces are called.
#[translated]
pub const PIECES: [&str; 3] = ["Rotor", "Side seal", "Corner seal"];

/// Running temperatures to start from, coldest and hottest in °C, in the order of [`PIECES`].
///
/// From memory, and broad: nobody knows them well.
pub const RUNNING: [(&str, &str); 3] = [("120", "200"), ("140", "230"), ("140", "230")];

impl TypedHotGap {
    /// The gaps, or everything that is wrong, each with its field's name before it.
    ///
    /// # Errors
    /// The sentences to show.
    #[translated]
    pub fn work_out(&self) -> Result<HotGap, Vec<String>> {
        let mut faults = Vec::new();
        let length_unit = self.length.unwrap_or(Unit::Millimetre);
        let temperature_unit = self.temperature.unwrap_or(Unit::Celsius);
        let mut length = |name: &str, text: &str, bounds: &'static Bounds| -> Option<Length> {
            read(text, length_unit, bounds)
                .map_err(|fault| faults.push(format!("{name}: {fault}")))
                .ok()?
                .length()
        };
        let seal = length("Seal’s length", &self.seal_length, &Bounds::SIZE);
        let corner = length("Corner seal’s diameter", &self.corner_diameter, &Bounds::SIZE);
        let least = length("Least cold gap", &self.least_gap, &Bounds::GAP);
        let greatest = if self.greatest_gap.trim().is_empty() {
            least
        } else {
            length("Greatest cold gap", &self.greatest_gap, &Bounds::GAP)
        };
        let mut temperature = |name: &str, text: &str| -> Option<ThermodynamicTemperature> {
            read(text, temperature_unit, Bounds::widest(Unit::Celsius.dimension()))
                .map_err(|fault| faults.push(format!("{name}: {fault}")))
                .ok()?
                .temperature()
        };
        let bench = temperature("Bench", &self.bench);
        let running: Vec<Option<Temperatures>> = PIECES
            .iter()
            .zip(&self.pieces)
            .map(|(name, piece)| {
                let coldest = temperature(&format!("{name}, coldest"), &piece.coldest);
                let hottest = temperature(&format!("{name}, hottest"), &piece.hottest);
                Some(Temperatures { coldest: coldest?, hottest: hottest? })
            })
            .collect();
        let expansions: Vec<Option<(Expansion, Expansion)>> = PIECES
            .iter()
            .zip(&self.pieces)
            .map(|(name, piece)| {
                piece.expansions().map_err(|fault| faults.push(format!("{name}: {fault}"))).ok()
            })
            .collect();
        let whole = || {
            let chain = Chain {
                seal: seal?,
                corner_radius: corner? / 2.0,
                least_gap: least?,
                greatest_gap: greatest?,
                bench: Temperatures::of(bench?),
            };
            let piece = |at: usize| -> Option<(Piece, Expansion)> {
                let (hot, near_room) = expansions[at]?;
                Some((Piece { expansion: hot, running: running[at]? }, near_room))
            };
            Some((chain, piece(0)?, piece(1)?, piece(2)?))
        };
        let Some((chain, rotor, seal, corner)) = whole() else { return Err(faults) };
        let hot = hot_gap(&chain, rotor.0, seal.0, corner.0);
        let cold = gap_at_reference(&chain, rotor.1, seal.1, corner.1);
        let reference = Temperatures::reference().coldest;
        match (hot, cold) {
            (Ok(hot), Ok(at_reference)) => {
                Ok(HotGap { hot, at_reference, bench_is_reference: bench == Some(reference) })
            }
            (Err(fault), _) | (_, Err(fault)) => Err(vec![fault.to_string()]),
        }
    }
}

impl TypedHotGap {
    /// What was typed in one line, to stand beside the answer in the book.
    #[must_use]
    #[translated]
    pub fn words(&self) -> String {
        let with_unit = |text: &str, unit: Option<Unit>, usual: Unit| {
            let text = text.trim();
            let is_bare = !text.contains(crate::letters::is_letter) && !text.contains('°');
            let unit = unit.unwrap_or(usual).symbol();
            if is_bare { format!("{text} {unit}") } else { text.to_owned() }
        };
        let length = |text: &str| with_unit(text, self.length, Unit::Millimetre);
        let temperature = |text: &str| with_unit(text, self.temperature, Unit::Celsius);
        let greatest = if self.greatest_gap.trim().is_empty() {
            String::new()
        } else {
            format!(" to {}", length(&self.greatest_gap))
        };
        let mut words = format!(
            "Seal {}, corner seal {}, cold gap {}{greatest} at {}.",
            length(&self.seal_length),
            length(&self.corner_diameter),
            length(&self.least_gap),
            temperature(&self.bench)
        );
        for (name, piece) in PIECES.iter().zip(&self.pieces) {
            let metal = match (piece.own.trim(), piece.row()) {
                ("", Some(row)) => row.name.to_owned(),
                (own, _) => format!("{own} millionths a kelvin"),
            };
            words.push_str(&format!(
                " {name}: {metal}, {} to {}.",
                temperature(&piece.coldest),
                temperature(&piece.hottest)
            ));
        }
        words
    }
}

impl TypedPiece {
    /// The metal's row.
    fn row(&self) -> Option<&'static Material> {
        MATERIALS.get(self.material?)
    }

    /// Up to running temperature, and near room temperature.
    #[translated]
    fn expansions(&self) -> Result<(Expansion, Expansion), String> {
        if self.own.trim().is_empty() {
            let row = self.row().ok_or("choose its metal.")?;
            let of = |expansion: Result<Expansion, super::GrowthFault>| {
                expansion.map_err(|fault| fault.to_string())
            };
            return Ok((of(row.expansion())?, of(row.near_room())?));
        }
        const HOW: &str =
            "two figures in millionths a kelvin are wanted, as “10.5 to 12”, the lower first.";
        let mut figures = figures_between(&self.own).map(millionths);
        let (Some(Some(least)), Some(Some(greatest)), None) =
            (figures.next(), figures.next().or(Some(millionths(&self.own))), figures.next())
        else {
            return Err(HOW.to_owned());
        };
        let own = Expansion::of_millionths(least, greatest).map_err(|fault| fault.to_string())?;
        Ok((own, own))
    }
}

/// What stands before and behind either language's word between two figures.
fn figures_between(text: &str) -> impl Iterator<Item = &str> {
    text.split("to").flat_map(|piece| piece.split("bis"))
}

/// A bare figure. Read as millimetres: the reader of lengths is exact, and its digits are all that is wanted.
fn millionths(text: &str) -> Option<f64> {
    let reading = Reading::read(text, Unit::Millimetre, &Bounds::SIZE).ok()?;
    (reading.number() == reading.text()).then(|| reading.amount().value(Unit::Millimetre))
}

fn read(text: &str, unit: Unit, bounds: &'static Bounds) -> Result<Amount, Fault> {
    Reading::read(text, unit, bounds).map(|reading| reading.amount())
}

impl HotGap {
    /// The gap at 20 °C in a sentence; none where the bench was at 20 °C.
    #[must_use]
    #[translated]
    pub fn reference_words(&self, unit: Unit) -> Option<String> {
        use super::bracket::figure;
        use crate::quantity::Rounding::{Down, Up};
        if self.bench_is_reference {
            return None;
        }
        let (least, greatest) = self.at_reference.amounts()?;
        let (least, greatest) = (figure(least, unit, Down), figure(greatest, unit, Up));
        Some(format!("At 20 °C, where lengths are compared (ISO 1): {least} to {greatest}."))
    }
}
