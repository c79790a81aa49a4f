//! The order a circle of bolts is tightened in, and the passes it is done in.
//!
//! Bolts are numbered from 1, clockwise as the builder looks at them. Passes: a third, two thirds and
//! all of the torque crosswise, then once around at full torque, after the pattern of ASME PCC-1 (from
//! memory); the builder's own order and shares stand above it.

use crate::gather::Gather;
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

/// Why an order or its passes were not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OrderFault {
    /// Too few or too many bolts.
    Count(usize),
    /// A piece that is no bolt's number.
    Unreadable(String),
    /// A bolt there is not.
    Unknown {
        /// Its number.
        bolt: u16,
        /// How many bolts there are.
        count: u16,
    },
    /// A bolt that comes twice.
    Twice(u16),
    /// A bolt left out.
    Missing(u16),
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
        Ok(Self((1..=count).gather()))
    }

    /// The builder's own order; as many bolts as there are numbers.
    ///
    /// # Errors
    /// Every [`OrderFault`] but [`OrderFault::Passes`] and [`OrderFault::Unreadable`].
    pub fn own(bolts: &[u16]) -> Result<Self, OrderFault> {
        check_count(bolts.len())?;
        let count = u16::try_from(bolts.len()).map_err(|_| OrderFault::Count(bolts.len()))?;
        let mut seen = vec![false; bolts.len()];
        for &bolt in bolts {
            let place = usize::from(bolt).checked_sub(1);
            let place = place.and_then(|place| seen.get_mut(place));
            let place = place.ok_or(OrderFault::Unknown { bolt, count })?;
            if std::mem::replace(place, true) {
                return Err(OrderFault::Twice(bolt));
            }
        }
        Ok(Self(bolts.to_vec()))
    }

    /// Reads the builder's own order for so many bolts: `1 10 5 14`, `1-10-5-14`, `1, 10, 5, 14`.
    ///
    /// # Errors
    /// Every [`OrderFault`] but [`OrderFault::Passes`].
    pub fn read(text: &str, count: u16) -> Result<Self, OrderFault> {
        check_count(count.into())?;
        let pieces = text
            .split(|c: char| c.is_whitespace() || matches!(c, ',' | ';' | '-' | '–' | '→'))
            .filter(|piece| !piece.is_empty());
        let mut bolts = Vec::new();
        for piece in pieces {
            let bolt: u16 = piece
                .parse()
                .map_err(|_| OrderFault::Unreadable(piece.chars().take(12).gather()))?;
            if !(1..=count).contains(&bolt) {
                return Err(OrderFault::Unknown { bolt, count });
            }
            if bolts.contains(&bolt) {
                return Err(OrderFault::Twice(bolt));
            }
            bolts.push(bolt);
        }
        match (1..=count).find(|bolt| !bolts.contains(bolt)) {
            Some(missing) => Err(OrderFault::Missing(missing)),
            None => Ok(Self(bolts)),
        }
    }

    /// The bolts' numbers, first first.
    #[must_use]
    pub fn bolts(&self) -> &[u16] {
        &self.0
    }

    /// Where a bolt stands on the circle: the share of a turn clockwise from bolt 1, for drawing.
    /// Bolts stand evenly there, whatever the housing does.
    #[must_use]
    pub fn place(&self, bolt: u16) -> f64 {
        f64::from(bolt.saturating_sub(1)) / f64::from(u16::try_from(self.0.len()).unwrap_or(1))
    }

    /// That place on a circle of radius 1000 round (0, 0), bolt 1 on top: x to the right, y down.
    #[must_use]
    pub fn on_circle(&self, bolt: u16) -> (i32, i32) {
        let (sine, cosine) = (self.place(bolt) * std::f64::consts::TAU).sin_cos();
        #[expect(clippy::cast_possible_truncation, reason = "no further out than 1000")]
        let whole = |value: f64| (value * 1000.0).round() as i32;
        (whole(sine), whole(-cosine))
    }
}

impl fmt::Display for Order {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (place, bolt) in self.0.iter().enumerate() {
            let dash = if place == 0 { "" } else { "-" };
            write!(f, "{dash}{bolt}")?;
        }
        Ok(())
    }
}

/// The usual passes: 33, 67 and 100 % crosswise, then once around at 100 %.
///
/// # Errors
/// [`OrderFault::Count`].
pub fn usual_passes(count: u16) -> Result<Vec<Pass>, OrderFault> {
    let crosswise = Order::crosswise(count)?;
    let mut passes = own_passes(&crosswise, &[33.0, 67.0, 100.0])?;
    passes.push(Pass { share: Ratio::new::<percent>(100.0), order: Order::around(count)? });
    Ok(passes)
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
    Ok(shares.iter().map(pass).gather())
}

impl Pass {
    /// What to set the wrench to.
    #[must_use]
    pub fn torque(&self, full: Torque) -> Torque {
        (full * self.share).into()
    }
}

fn check_count(count: usize) -> Result<(), OrderFault> {
    if (usize::from(FEWEST_BOLTS)..=usize::from(MOST_BOLTS)).contains(&count) {
        Ok(())
    } else {
        Err(OrderFault::Count(count))
    }
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
            Self::Count(count) => write!(
                f,
                "{count} bolts make no pattern here. Give {FEWEST_BOLTS} to {MOST_BOLTS}."
            ),
            Self::Unreadable(piece) => {
                write!(f, "“{piece}” is no bolt’s number. Write the numbers with spaces between.")
            }
            Self::Unknown { bolt, count } => {
                write!(f, "There is no bolt {bolt}: they are numbered 1 to {count}.")
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
