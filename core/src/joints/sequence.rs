//! The order the bolts of a joint are tightened in, and the passes it is done in.
//!
//! Bolts are numbered from 1; what each is called, and which order is usual for how they stand, is told by
//! [`Bolts`](super::bolts::Bolts). The builder's own order and shares stand above all of it.

use crate::trochoid::Point;
use pitleaf_translated::translated;
use std::fmt;
use uom::si::f64::{Ratio, Torque};
use uom::si::ratio::percent;

/// The most bolts in one pattern.
pub const MOST_BOLTS: u16 = 60;
/// The fewest that make an order.
pub const FEWEST_BOLTS: u16 = 2;

/// An order in which every bolt comes once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Order(Vec<u16>);

/// One time through the bolts.
#[derive(Clone, Debug, PartialEq)]
pub struct Pass {
    /// The share of the full torque it goes to.
    pub share: Ratio,
    /// In which order.
    pub order: Order,
}

/// Why bolts, their order or its passes were not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OrderFault {
    /// Neither places nor names.
    NoBolts,
    /// Too few or too many bolts.
    Count(usize),
    /// A row that does not give a place; rows count from 1, empty ones too.
    Row(usize),
    /// A row with a place no housing reaches to.
    Far(usize),
    /// Two bolts in one place.
    Together(String, String),
    /// A bolt there is not.
    Unknown {
        /// What it was called.
        bolt: String,
        /// What the last one is called.
        last: String,
    },
    /// A bolt that comes twice.
    Twice(String),
    /// A bolt left out.
    Missing(String),
    /// No passes, or the last not at the full torque, or one below the one before.
    Passes,
}

impl Order {
    /// Crosswise: each next bolt is as far as can be from every one already tightened, and of equals
    /// the farthest from the last; then the lowest number.
    ///
    /// # Errors
    /// [`OrderFault::Count`].
    ///
    /// # Examples
    /// ```
    /// use pitleaf_core::joints::sequence::Order;
    /// assert_eq!(Order::crosswise(8)?.bolts(), [1, 5, 3, 7, 2, 6, 4, 8]);
    /// # Ok::<(), pitleaf_core::joints::sequence::OrderFault>(())
    /// ```
    pub fn crosswise(count: u16) -> Result<Self, OrderFault> {
        check_count(count.into())?;
        let mut order: Vec<u16> = vec![1];
        while let Some(next) =
            (1..=count).filter(|bolt| !order.contains(bolt)).max_by_key(|&bolt| {
                let nearest = order.iter().map(|&done| apart(bolt, done, count)).min();
                let last = order.last().map(|&done| apart(bolt, done, count));
                (nearest, last, std::cmp::Reverse(bolt))
            })
        {
            order.push(next);
        }
        Ok(Self(order))
    }

    /// Once around, clockwise from bolt 1.
    ///
    /// # Errors
    /// [`OrderFault::Count`].
    pub fn around(count: u16) -> Result<Self, OrderFault> {
        check_count(count.into())?;
        Ok(Self((1..=count).collect()))
    }

    /// From the middle outwards: of the bolts about as near to the middle as the nearest left, the one
    /// farthest from every one already tightened, then farthest from the last, then the lowest number.
    ///
    /// The middle is the mean of all places; about as near is within a tenth of the farthest bolt's
    /// distance. Common practice, no source. On one circle it comes to [`Order::crosswise`].
    ///
    /// # Errors
    /// [`OrderFault::Count`].
    pub fn outwards(places: &[Point]) -> Result<Self, OrderFault> {
        check_count(places.len())?;
        let count = f64::from(u16::try_from(places.len()).unwrap_or(MOST_BOLTS));
        let sum = places.iter().fold(Point::default(), |sum, place| sum + *place);
        let middle = Point { x: sum.x / count, y: sum.y / count };
        let out: Vec<f64> = places.iter().map(|place| (*place - middle).norm()).collect();
        let band = 0.1 * out.iter().copied().fold(0.0, f64::max);
        let mut left: Vec<u16> = (1..).zip(places).map(|(bolt, _)| bolt).collect();
        let at = |bolt: u16| usize::from(bolt - 1);
        let apart = |one: u16, other: u16| tenths((places[at(one)] - places[at(other)]).norm());
        let mut order: Vec<u16> = Vec::new();
        while !left.is_empty() {
            let nearest = left.iter().map(|&bolt| out[at(bolt)]).fold(f64::INFINITY, f64::min);
            let near = left.iter().copied().filter(|&bolt| out[at(bolt)] <= nearest + band);
            let next = near.max_by_key(|&bolt| {
                let from_done = order.iter().map(|&done| apart(bolt, done)).min();
                let from_last = order.last().map(|&last| apart(bolt, last));
                (from_done, from_last, std::cmp::Reverse(bolt))
            });
            order.extend(next);
            left.retain(|bolt| Some(*bolt) != next);
        }
        Ok(Self(order))
    }

    /// An order by numbers, in which each of as many bolts comes once.
    pub(super) fn of_numbers(bolts: Vec<u16>) -> Self {
        Self(bolts)
    }

    /// The bolts' numbers, first first.
    #[must_use]
    pub fn bolts(&self) -> &[u16] {
        &self.0
    }
}

/// Passes of the builder's own, in percent of the full torque: none below the one before, the last 100.
///
/// # Errors
/// [`OrderFault::Passes`].
pub fn own_passes(order: &Order, shares: &[f64]) -> Result<Vec<Pass>, OrderFault> {
    let rising = shares.is_sorted_by(|a, b| a <= b);
    let full = shares.last().is_some_and(|share| (share - 100.0).abs() < 1e-9);
    if !rising || !full || shares.iter().any(|share| !(1.0..=100.0).contains(share)) {
        return Err(OrderFault::Passes);
    }
    let pass = |&share: &f64| Pass { share: Ratio::new::<percent>(share), order: order.clone() };
    Ok(shares.iter().map(pass).collect())
}

impl Pass {
    /// What to set the wrench to.
    #[must_use]
    pub fn torque(&self, full: Torque) -> Torque {
        (full * self.share).into()
    }
}

pub(super) fn check_count(count: usize) -> Result<(), OrderFault> {
    if (usize::from(FEWEST_BOLTS)..=usize::from(MOST_BOLTS)).contains(&count) {
        Ok(())
    } else {
        Err(OrderFault::Count(count))
    }
}

/// A distance in whole tenths of a millimetre: a finer difference decides no order.
fn tenths(distance: f64) -> i64 {
    #[expect(clippy::cast_possible_truncation, reason = "places lie within a metre of the middle")]
    let tenths = (distance * 10.0).round() as i64;
    tenths
}

/// Bolts between two, the shorter way round.
fn apart(one: u16, other: u16, count: u16) -> u16 {
    let way = one.abs_diff(other);
    way.min(count - way)
}

impl fmt::Display for OrderFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoBolts => f.write_str(
                "Still to give: the bolts. Tap them on the picture, paste their places, or list their names in the manual’s order.",
            ),
            Self::Count(1) => f.write_str("One bolt makes no order. Give at least two."),
            Self::Count(count) => write!(
                f,
                "{count} bolts make no pattern here. Give {FEWEST_BOLTS} to {MOST_BOLTS}."
            ),
            Self::Row(row) => write!(f, "Row {row} is no place. Give two figures, x and y: 40 -62.5."),
            Self::Far(row) => {
                write!(f, "Row {row} lies more than a metre from the middle. Check the point and the unit.")
            }
            Self::Together(one, other) => {
                write!(f, "Bolts {one} and {other} stand in one place. Leave one of them out.")
            }
            Self::Unknown { bolt, last } => {
                write!(f, "There is no bolt {bolt}: they are called A to {last}.")
            }
            Self::Twice(bolt) => write!(f, "Bolt {bolt} comes twice. Leave it in once."),
            Self::Missing(bolt) => write!(f, "Bolt {bolt} is missing. Every bolt comes once."),
            Self::Passes => {
                f.write_str("The passes must rise and end at 100 %. Write them as 33, 67, 100.")
            }
        }
    }
}

impl std::error::Error for OrderFault {}
