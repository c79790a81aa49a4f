//! Which seal goes where: measured seals to measured slots.
//!
//! The gap a seal would have is the slot's length less the seal's. In the limits it fits as it is; too
//! long, it can be ground to the aim; too short, nothing helps. Among all assignments: fewest slots
//! left without a fitting seal, then least metal removed, then gaps nearest to the aim, as the least
//! sum of squares, so that one large deviation counts more than several small ones.
//!
//! The three are one exact integer, each worth more than all that can come of the next together;
//! Kuhn and Munkres' method (crate `pathfinding`) then finds the least sum.

use super::bracket::figure;
use crate::limits::Limit;
use crate::quantity::{Amount, Dimension, Rounding, Span, Unit};
use pathfinding::kuhn_munkres::kuhn_munkres_min;
use pathfinding::matrix::Matrix;
use pitleaf_translated::translated;
use std::fmt;

/// A seal put to a slot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placed {
    /// Which seal, by its place in the list.
    pub seal: usize,
    /// Which slot, by its place in the list.
    pub slot: usize,
    /// The gap as the seal is; below zero it is longer than its slot.
    pub as_it_is: Amount,
    /// What is to be ground off; zero where it fits as it is.
    pub remove: Span,
    /// The gap then.
    pub gap: Amount,
}

/// A slot no seal is put to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Empty {
    /// Which slot.
    pub slot: usize,
    /// The gap with the longest seal of all.
    pub narrowest: Amount,
    /// Whether some seal would fit, but is needed elsewhere.
    pub fits_some: bool,
}

/// Which seal goes where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Assignment {
    /// In the order of the slots.
    pub placed: Vec<Placed>,
    /// Slots left empty, in order.
    pub empty: Vec<Empty>,
    /// Seals left over, in order.
    pub unused: Vec<usize>,
    /// Metal removed in all.
    pub removed: Span,
}

/// Why there is no assignment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AssignFault {
    /// No seal or no slot.
    Nothing,
    /// A length of 0 or less.
    NoLength,
    /// The limit lacks an edge, or is no limit of length.
    NoEdge,
    /// The aim lies outside the limit.
    AimOutside,
    /// More or larger than can be weighed exactly.
    TooLarge,
}

impl fmt::Display for AssignFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Nothing => "Nothing to place. Measure at least one seal and one slot.",
            Self::NoLength => "A seal or a slot is longer than 0. Check the lengths.",
            Self::NoEdge => "Placing seals takes a limit of length with a lower and an upper edge. Complete it on the sheet.",
            Self::AimOutside => "The gap aimed at lies outside the limit. Aim inside it.",
            Self::TooLarge => "Too many or too large lengths to weigh exactly. Place them in smaller groups.",
        })
    }
}

impl std::error::Error for AssignFault {}

/// What a pair costs: nothing can outweigh the field before it.
#[derive(Clone, Copy)]
struct Cost {
    is_unfit: bool,
    metal: i128,
    unevenness: i128,
}

/// Puts seals to slots, by their lengths, all at one temperature.
///
/// # Errors
/// An [`AssignFault`] with its sentence.
pub fn assign(
    seals: &[Amount],
    slots: &[Amount],
    limit: &Limit,
    aim: Amount,
) -> Result<Assignment, AssignFault> {
    if seals.is_empty() || slots.is_empty() {
        return Err(AssignFault::Nothing);
    }
    let zero = Amount::whole(0, Unit::Millimetre);
    if seals
        .iter()
        .chain(slots)
        .any(|length| length.order(zero) != Some(std::cmp::Ordering::Greater))
    {
        return Err(AssignFault::NoLength);
    }
    let (Some(lower), Some(upper)) = (&limit.lower, &limit.upper) else {
        return Err(AssignFault::NoEdge);
    };
    let dimensions = [lower.amount(), upper.amount(), aim].map(Amount::dimension);
    if dimensions != [Dimension::Length; 3] {
        return Err(AssignFault::NoEdge);
    }
    if !limit.holds(aim) {
        return Err(AssignFault::AimOutside);
    }
    let edges = (lower.amount(), upper.amount());
    let place = |seal: usize, slot: usize| placed(seal, slot, seals[seal], slots[slot], edges, aim);
    let pairs = best_pairs(seals.len(), slots.len(), |seal, slot| match place(seal, slot) {
        None => Some(Cost { is_unfit: true, metal: 0, unevenness: 0 }),
        Some(placed) => {
            let deviation = placed.gap.minus(aim).as_whole();
            let unevenness = deviation.checked_mul(deviation)?;
            Some(Cost { is_unfit: false, metal: placed.remove.as_whole(), unevenness })
        }
    })?;
    let mut found: Vec<Placed> =
        pairs.into_iter().filter_map(|(seal, slot)| place(seal, slot)).collect();
    found.sort_by_key(|placed| placed.slot);
    let longest =
        seals.iter().copied().fold(zero, |most, seal| if seal > most { seal } else { most });
    let empty = (0..slots.len())
        .filter(|&slot| found.iter().all(|placed| placed.slot != slot))
        .map(|slot| Empty {
            slot,
            narrowest: zero.plus(slots[slot].minus(longest)),
            fits_some: (0..seals.len()).any(|seal| place(seal, slot).is_some()),
        })
        .collect();
    let unused =
        (0..seals.len()).filter(|&seal| found.iter().all(|placed| placed.seal != seal)).collect();
    let removed =
        found.iter().fold(Span::whole(0, Unit::Millimetre), |sum, placed| sum.plus(placed.remove));
    Ok(Assignment { placed: found, empty, unused, removed })
}

/// The seal in the slot, ground if it must be; none where it is too short.
fn placed(
    seal: usize,
    slot: usize,
    seal_length: Amount,
    slot_length: Amount,
    (lower, upper): (Amount, Amount),
    aim: Amount,
) -> Option<Placed> {
    let as_it_is = Amount::whole(0, Unit::Millimetre).plus(slot_length.minus(seal_length));
    if as_it_is > upper {
        return None;
    }
    let gap = if as_it_is < lower { aim } else { as_it_is };
    Some(Placed { seal, slot, as_it_is, remove: gap.minus(as_it_is), gap })
}

/// The pairs (seal, slot) of least cost, as many as the fewer of the two.
fn best_pairs(
    seals: usize,
    slots: usize,
    cost: impl Fn(usize, usize) -> Option<Cost>,
) -> Result<Vec<(usize, usize)>, AssignFault> {
    let (rows, columns) = (seals.min(slots), seals.max(slots));
    let turned = seals > slots;
    let pair = |row: usize, column: usize| if turned { (column, row) } else { (row, column) };
    let mut costs = Vec::with_capacity(rows * columns);
    for row in 0..rows {
        for column in 0..columns {
            let (seal, slot) = pair(row, column);
            costs.push(cost(seal, slot).ok_or(AssignFault::TooLarge)?);
        }
    }
    let weights = weigh(&costs, rows).ok_or(AssignFault::TooLarge)?;
    let matrix = Matrix::from_vec(rows, columns, weights).map_err(|_| AssignFault::TooLarge)?;
    let (_, chosen) = kuhn_munkres_min(&matrix);
    Ok(chosen.into_iter().enumerate().map(|(row, column)| pair(row, column)).collect())
}

/// One integer for each cost, in the same order as the three fields; none where it can't be held.
fn weigh(costs: &[Cost], rows: usize) -> Option<Vec<i128>> {
    let rows = i128::try_from(rows).ok()?;
    let most = |of: fn(&Cost) -> i128| costs.iter().map(of).max().unwrap_or(0);
    let metal_unit = most(|cost| cost.unevenness).checked_mul(rows)?.checked_add(1)?;
    let all_metal = most(|cost| cost.metal).checked_mul(rows)?.checked_add(1)?;
    let unfit_unit = all_metal.checked_mul(metal_unit)?;
    // The method adds and subtracts a few weights of its own: keep well clear of the end.
    unfit_unit.checked_mul(rows)?.checked_mul(8)?;
    Some(
        costs
            .iter()
            .map(|cost| {
                i128::from(cost.is_unfit) * unfit_unit + cost.metal * metal_unit + cost.unevenness
            })
            .collect(),
    )
}

impl Placed {
    /// "Seal 3: grind off 0.120 mm at most, then by leaf to a gap of 0.075 mm." `number` is the one marked on
    /// the seal; what is ground off before a leaf is tried stays back by the `doubt` of the two lengths.
    #[must_use]
    #[translated]
    pub fn words(&self, number: usize, unit: Unit, doubt: Span) -> String {
        let gap = figure(self.gap, unit, Rounding::Nearest);
        let zero = Amount::whole(0, Unit::Millimetre);
        if zero.plus(self.remove) == zero {
            return format!(
                "Seal {number}: fits as it is, with a gap of about {gap}. Prove it by leaf."
            );
        }
        let off = zero.plus(self.remove.minus(doubt));
        if off > zero {
            let off = figure(off, unit, Rounding::Down);
            return format!(
                "Seal {number}: grind off {off} at most, then by leaf to a gap of {gap}."
            );
        }
        format!(
            "Seal {number}: grind by leaf alone, to a gap of {gap}: what is to come off is less than the doubt of the lengths."
        )
    }
}

impl Empty {
    /// Why the slot is empty and what to do.
    #[must_use]
    #[translated]
    pub fn words(&self, unit: Unit) -> String {
        if self.fits_some {
            return "No seal is left for this slot: those that would fit are needed elsewhere. Take a fresh one.".to_owned();
        }
        format!(
            "No seal fits this slot: the longest leaves a gap of {}, and it can’t be made longer. Take a fresh one.",
            figure(self.narrowest, unit, Rounding::Nearest)
        )
    }
}
