//! The set of leaves on the bench, and how far a leaf may be off its mark.

use super::leaves::{MOST_IN_SET, refuse_twins};
use super::{Leaf, LeafFault, Written};
use crate::kept::{Fields, Json, Kept, Refused};
use crate::limits::{Gauge, GaugeKind};
use crate::quantity::{Amount, Bounds, Dimension, Rounding, Span, Unit};

/// The coarsest tolerance a leaf is taken with, 20 µm.
fn coarsest() -> Span {
    Span::whole(20, Unit::Micrometre)
}

/// The leaves on the bench, thinnest first, each thickness once, and what each may be off.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LeafSet {
    name: String,
    leaves: Vec<Leaf>,
    tolerance: Written,
}

impl LeafSet {
    /// A set of leaves in any order and any mix of units.
    ///
    /// # Errors
    /// [`LeafFault::NoLeaf`], [`LeafFault::SetTooLarge`], [`LeafFault::Twice`],
    /// [`LeafFault::Tolerance`], [`LeafFault::ToleranceEatsLeaf`].
    pub fn of(name: &str, mut leaves: Vec<Leaf>, tolerance: Written) -> Result<Self, LeafFault> {
        if leaves.len() > MOST_IN_SET {
            return Err(LeafFault::SetTooLarge);
        }
        refuse_twins(&leaves)?;
        leaves.sort_by_key(|leaf| leaf.thickness().above_zero().as_whole());
        let Some(thinnest) = leaves.first() else { return Err(LeafFault::NoLeaf) };
        let span = tolerance_span(&tolerance)?;
        if thinnest.thickness().above_zero() <= span {
            return Err(LeafFault::ToleranceEatsLeaf(thinnest.to_string()));
        }
        Ok(Self { name: name.to_owned(), leaves, tolerance })
    }

    /// What the builder calls it.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Its leaves, thinnest first.
    #[must_use]
    pub fn leaves(&self) -> &[Leaf] {
        &self.leaves
    }

    /// What each leaf may be off its mark, either way, as typed.
    #[must_use]
    pub fn tolerance(&self) -> &Written {
        &self.tolerance
    }
}

/// A leaf's tolerance as a span.
///
/// # Errors
/// [`LeafFault::Tolerance`].
pub(super) fn tolerance_span(tolerance: &Written) -> Result<Span, LeafFault> {
    let span = tolerance.amount().above_zero();
    if span.is_negative() || span > coarsest() {
        return Err(LeafFault::Tolerance);
    }
    Ok(span)
}

/// The tolerance a leaf is taken with where the builder gives none: what the usual feeler leaf may be off.
///
/// # Errors
/// None in fact; the text is read like any other.
pub fn usual_tolerance() -> Result<Written, LeafFault> {
    let usual = Gauge::usual(GaugeKind::FeelerLeaf);
    let error = usual.error(Amount::whole(0, Unit::Micrometre), Unit::Micrometre);
    let span = Span::nearest(error, Unit::Micrometre).unwrap_or_else(coarsest);
    let text = span.show(Unit::Millimetre, 4, Rounding::Up);
    Ok(Written::read(&text, Unit::Millimetre, Bounds::widest(Dimension::Length))?)
}

impl Kept for LeafSet {
    fn json(&self) -> Json<'_> {
        let mut fields = Fields::default();
        fields.put("name", self.name.json());
        fields.put("leaves", self.leaves.json());
        fields.put("tolerance", self.tolerance.json());
        Json::Fields(fields)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let fields = json.fields()?;
        Self::of(
            fields.at("name").text()?,
            Kept::of_json(fields.at("leaves"))?,
            Kept::of_json(fields.at("tolerance"))?,
        )
        .map_err(|fault| Refused::because(&fault))
    }
}
