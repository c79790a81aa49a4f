//! Feeler leaves, and stacks of up to three.

use super::Written;
use crate::kept::{Json, Kept, Refused};
use crate::letters;
use crate::quantity::without_zeros;
use crate::quantity::{Amount, Bounds, Dimension, Fault, Rounding, Unit};
use pitleaf_translated::translated;
use std::fmt;

/// The most leaves put together.
pub const MOST_LEAVES: usize = 3;
/// The most leaves one set holds.
pub(super) const MOST_IN_SET: usize = 60;

/// The thickest leaf or stack used, 1.5 mm: thicker is no feeler any more.
#[must_use]
pub fn thickest() -> Amount {
    Amount::whole(1_500, Unit::Micrometre)
}

/// The thickest leaf or stack that a seal's gap is likely tried with, 0.04 in (1.016 mm): any limit lies far
/// below, so that beyond it the unit is more likely wrong than the gap.
fn thickest_likely() -> Amount {
    Amount::whole(40, Unit::Thou)
}

/// The thinnest leaf a gap is likely tried with, 0.01 mm: none thinner is sold as a feeler. From memory.
fn thinnest_likely() -> Amount {
    Amount::whole(10, Unit::Micrometre)
}

/// What is wrong with a leaf, a stack or a set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LeafFault {
    /// The text can't be read.
    Text(Fault),
    /// A thickness of 0 or less.
    NoThickness,
    /// A leaf or stack too thick; its thickness and the unit to speak in.
    TooThick(Amount, Unit),
    /// No leaf named.
    NoLeaf,
    /// More than three in a stack.
    TooMany,
    /// The same thickness twice.
    Twice(String),
    /// A set beyond what is used.
    SetTooLarge,
    /// A tolerance below 0 or above 20 µm.
    Tolerance,
    /// A tolerance that could make this leaf nothing.
    ToleranceEatsLeaf(String),
}

impl From<Fault> for LeafFault {
    fn from(fault: Fault) -> Self {
        Self::Text(fault)
    }
}

impl fmt::Display for LeafFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Text(fault) => fault.fmt(f),
            Self::NoThickness => {
                f.write_str("A leaf is thicker than 0. Type the thickness marked on it.")
            }
            Self::TooThick(amount, unit) => write!(
                f,
                "That is {} {unit} of leaves; at most {} {unit} is used in a gap. Take a thinner leaf, or one leaf less.",
                plain(*amount, *unit, Rounding::Up),
                plain(thickest(), *unit, Rounding::Down),
                unit = unit.symbol(),
            ),
            Self::NoLeaf => f.write_str("No leaf named. Say which leaf or leaves were tried."),
            Self::TooMany => {
                f.write_str("More than three leaves. Take a thicker leaf and stack fewer.")
            }
            Self::Twice(leaf) => write!(f, "{leaf} is named twice. Leave one of the two out."),
            Self::SetTooLarge => {
                write!(f, "A set holds at most {MOST_IN_SET} leaves. Leave out those never used.")
            }
            Self::Tolerance => {
                f.write_str("A leaf’s tolerance lies between 0 and 0.02 mm. Check the unit.")
            }
            Self::ToleranceEatsLeaf(leaf) => write!(
                f,
                "{leaf} is no thicker than the tolerance, so it proves nothing. Leave it out, or type a smaller tolerance."
            ),
        }
    }
}

impl std::error::Error for LeafFault {}

fn plain(amount: Amount, unit: Unit, rounding: Rounding) -> String {
    without_zeros(&amount.show(unit, 4, rounding)).to_owned()
}

/// A leaf, by the thickness marked on it. In the book's file: `"0.0020 in"`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Leaf(Written);

impl Leaf {
    /// Reads a typed thickness; `unit` holds where none is typed.
    ///
    /// # Errors
    /// [`LeafFault::Text`], [`LeafFault::NoThickness`], [`LeafFault::TooThick`].
    pub fn read(text: &str, unit: Unit) -> Result<Self, LeafFault> {
        Written::read(text, unit, Bounds::widest(Dimension::Length))?.try_into()
    }

    /// Reads several typed thicknesses, parted by spaces, semicolons or plus signs: "0.05 0,10 0.002 in".
    ///
    /// `unit` holds where none is typed. A unit behind a figure is that figure's alone.
    ///
    /// # Errors
    /// That of the first text that is no leaf.
    pub fn read_many(text: &str, unit: Unit) -> Result<Vec<Self>, LeafFault> {
        let mut texts: Vec<String> = Vec::new();
        let pieces = text.split(|c: char| c.is_whitespace() || matches!(c, ';' | '+'));
        // A comma behind a figure parts it from the next; inside, it is a decimal comma.
        for piece in pieces.map(|piece| piece.trim_end_matches(',')).filter(|p| !p.is_empty()) {
            match texts.last_mut() {
                Some(last) if Unit::named(piece).is_some() => {
                    last.push(' ');
                    last.push_str(piece);
                }
                _ => texts.push(piece.to_owned()),
            }
        }
        texts.iter().map(|text| Self::read(text, unit)).collect()
    }

    /// As marked, exactly.
    #[must_use]
    pub fn thickness(&self) -> Amount {
        self.0.amount()
    }

    /// The unit it is marked in.
    #[must_use]
    pub fn unit(&self) -> Unit {
        self.0.unit()
    }
}

impl TryFrom<Written> for Leaf {
    type Error = LeafFault;

    fn try_from(written: Written) -> Result<Self, LeafFault> {
        let amount = written.amount();
        if amount <= Amount::whole(0, Unit::Millimetre) {
            return Err(LeafFault::NoThickness);
        }
        if amount > thickest() {
            return Err(LeafFault::TooThick(amount, written.unit()));
        }
        Ok(Self(written))
    }
}

impl Kept for Leaf {
    fn json(&self) -> Json<'_> {
        self.0.json()
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Written::of_json(json)?.try_into().map_err(|fault: LeafFault| Refused::because(&fault))
    }
}

impl fmt::Display for Leaf {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

/// One to three leaves put together, no thicker than 1.5 mm.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stack(Vec<Leaf>);

impl Stack {
    /// Reads a typed stack, as it is shown: "0.05 mm + 0.0020 in"; `unit` holds where none is typed.
    ///
    /// # Errors
    /// As [`Leaf::read_many`] and [`Self::of`].
    pub fn read(text: &str, unit: Unit) -> Result<Self, LeafFault> {
        Self::of(Leaf::read_many(text, unit)?)
    }

    /// Puts leaves together.
    ///
    /// # Errors
    /// [`LeafFault::NoLeaf`], [`LeafFault::TooMany`], [`LeafFault::Twice`], [`LeafFault::TooThick`].
    pub fn of(leaves: Vec<Leaf>) -> Result<Self, LeafFault> {
        let Some(first) = leaves.first() else { return Err(LeafFault::NoLeaf) };
        if leaves.len() > MOST_LEAVES {
            return Err(LeafFault::TooMany);
        }
        refuse_twins(&leaves)?;
        let unit = first.unit();
        let stack = Self(leaves);
        let thickness = stack.thickness();
        if thickness > thickest() {
            return Err(LeafFault::TooThick(thickness, unit));
        }
        Ok(stack)
    }

    /// The leaves.
    #[must_use]
    pub fn leaves(&self) -> &[Leaf] {
        &self.0
    }

    /// The units in which a text typed without one is a stack that a gap is likely tried with, other than `unit`.
    #[must_use]
    pub fn likely_units(text: &str, unit: Unit) -> Vec<Unit> {
        let is_bare = !text.contains(|c| letters::is_letter(c) || matches!(c, '"' | '″'));
        let is_likely = |other: &Unit| {
            is_bare && Self::read(text, *other).is_ok_and(|stack| stack.doubt().is_none())
        };
        let units = [Unit::Millimetre, Unit::Thou, Unit::Inch].into_iter();
        units.filter(|other| *other != unit).filter(is_likely).collect()
    }

    /// What is to be asked before a trial with it is written down: none where it is no thicker than any gap
    /// is likely to be, and no thinner than any leaf.
    #[must_use]
    #[translated]
    pub fn doubt(&self) -> Option<String> {
        let likely = thickest_likely();
        let symbol = self.0.first().map_or("", |leaf| leaf.unit().symbol());
        if self.thickness() < thinnest_likely() {
            return Some(format!(
                "{self} is thinner than {} mm: no leaf is made so thin. Is {symbol} the right unit?",
                plain(thinnest_likely(), Unit::Millimetre, Rounding::Nearest),
            ));
        }
        (self.thickness() > likely).then(|| {
            format!(
                "{self} is thicker than {} mm ({} in): more than any such gap. Is {symbol} the right unit?",
                plain(likely, Unit::Millimetre, Rounding::Nearest),
                plain(likely, Unit::Inch, Rounding::Nearest),
            )
        })
    }

    /// As marked, all leaves together, exactly.
    #[must_use]
    pub fn thickness(&self) -> Amount {
        let zero = Amount::whole(0, Unit::Millimetre);
        self.0.iter().fold(zero, |sum, leaf| sum.plus(leaf.thickness().above_zero()))
    }
}

impl Kept for Stack {
    fn json(&self) -> Json<'_> {
        self.0.json()
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Self::of(Kept::of_json(json)?).map_err(|fault| Refused::because(&fault))
    }
}

impl fmt::Display for Stack {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (place, leaf) in self.0.iter().enumerate() {
            let joint = if place == 0 { "" } else { " + " };
            write!(f, "{joint}{leaf}")?;
        }
        Ok(())
    }
}

/// The same thickness twice is the same piece of steel.
pub(super) fn refuse_twins(leaves: &[Leaf]) -> Result<(), LeafFault> {
    for (place, leaf) in leaves.iter().enumerate() {
        if leaves[..place].iter().any(|other| other.thickness() == leaf.thickness()) {
            return Err(LeafFault::Twice(leaf.to_string()));
        }
    }
    Ok(())
}
