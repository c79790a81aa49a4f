//! A bracket: what trials prove about a gap, and what that says about a limit.

use crate::limits::Limit;
use crate::quantity::{Amount, Rounding, Span, Unit, places_for};
use pitleaf_translated::translated;

/// Bounds of a gap: `low` ≤ gap < `high`. A gap below zero is a seal longer than its place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Bracket {
    /// The least it can be, inclusive; none where nothing has gone in yet.
    pub low: Option<Amount>,
    /// What it is narrower than; none where nothing was refused yet.
    pub high: Option<Amount>,
}

/// What a bracket says about one edge of a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Proof {
    /// Proved to keep it, or there is no such edge.
    Keeps,
    /// Proved to break it.
    Breaks,
    /// Neither.
    Open,
}

/// What a bracket says about a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// Of the lower edge.
    pub lower: Proof,
    /// Of the upper edge.
    pub upper: Proof,
}

/// A standing in a word.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    /// Proved inside.
    Meets,
    /// Proved below the lower edge: can still be ground.
    TooTight,
    /// Proved above the upper edge: the seal can't be made longer.
    TooWide,
    /// Not proved either way.
    CannotSay,
}

impl Bracket {
    /// Both brackets hold. It may come out empty; see [`Self::is_empty`].
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            low: of_two(self.low, other.low, |a, b| a > b),
            high: of_two(self.high, other.high, |a, b| a < b),
        }
    }

    /// No gap at all fits it.
    #[must_use]
    pub fn is_empty(self) -> bool {
        matches!((self.low, self.high), (Some(low), Some(high)) if low >= high)
    }

    /// Its width, where both ends are known.
    #[must_use]
    pub fn width(self) -> Option<Span> {
        Some(self.high?.minus(self.low?))
    }

    /// Whether a gap lies in it.
    #[must_use]
    pub fn holds(self, gap: Amount) -> bool {
        self.low.is_none_or(|low| gap >= low) && self.high.is_none_or(|high| gap < high)
    }

    /// What it proves about a limit. A gap equal to an edge keeps it.
    #[must_use]
    pub fn against(self, limit: &Limit) -> Standing {
        let lower = limit.lower.as_ref().map_or(Proof::Keeps, |edge| {
            let edge = edge.amount();
            match (self.low, self.high) {
                (Some(low), _) if low >= edge => Proof::Keeps,
                (_, Some(high)) if high <= edge => Proof::Breaks,
                _ => Proof::Open,
            }
        });
        let upper = limit.upper.as_ref().map_or(Proof::Keeps, |edge| {
            let edge = edge.amount();
            match (self.low, self.high) {
                (Some(low), _) if low > edge => Proof::Breaks,
                (_, Some(high)) if high <= edge => Proof::Keeps,
                _ => Proof::Open,
            }
        });
        Standing { lower, upper }
    }

    /// The bracket in words: "at least 0.047 mm and under 0.093 mm". Rounded outward, so it never claims more than is known.
    #[must_use]
    #[translated]
    pub fn words(self, unit: Unit) -> String {
        let low = self.low.map(|low| format!("at least {}", figure(low, unit, Rounding::Down)));
        let high = self.high.map(|high| match high == Amount::whole(0, Unit::Millimetre) {
            true => "below zero".to_owned(),
            false => format!("under {}", figure(high, unit, Rounding::Up)),
        });
        match (low, high) {
            (Some(low), Some(high)) => format!("{low} and {high}"),
            (Some(one), None) | (None, Some(one)) => one,
            (None, None) => "not known at all".to_owned(),
        }
    }
}

impl Bracket {
    /// The bracket in as few signs as it takes, for a drawing or a table: "0.047…0.093 mm", "<0.093 mm".
    #[must_use]
    pub fn short(self, unit: Unit) -> String {
        let symbol = unit.symbol();
        let of = |amount: Amount, rounding| amount.show(unit, places(unit), rounding);
        match (self.low, self.high) {
            (None, None) => "–".to_owned(),
            (Some(low), None) => format!("≥{} {symbol}", of(low, Rounding::Down)),
            (None, Some(high)) if high == Amount::whole(0, Unit::Millimetre) => "<0".to_owned(),
            (None, Some(high)) => format!("<{} {symbol}", of(high, Rounding::Up)),
            (Some(low), Some(high)) => {
                format!("{}…{} {symbol}", of(low, Rounding::Down), of(high, Rounding::Up))
            }
        }
    }
}

impl Standing {
    /// In a word.
    #[must_use]
    pub fn answer(self) -> Answer {
        match (self.lower, self.upper) {
            (Proof::Breaks, _) => Answer::TooTight,
            (_, Proof::Breaks) => Answer::TooWide,
            (Proof::Keeps, Proof::Keeps) => Answer::Meets,
            _ => Answer::CannotSay,
        }
    }
}

/// A bracket's standing in a sentence, with what is certain.
#[must_use]
#[translated]
pub fn sentence(bracket: Bracket, limit: &Limit, unit: Unit) -> String {
    let standing = bracket.against(limit);
    let gap = bracket.words(unit);
    let edge = |inward: Rounding| {
        let edge = if inward == Rounding::Up { &limit.lower } else { &limit.upper };
        edge.as_ref().map_or_else(String::new, |edge| {
            format!("{} {}", edge.show(unit, inward), unit.symbol())
        })
    };
    match (standing.answer(), standing.lower, standing.upper) {
        (Answer::Meets, ..) => format!("Meets the limit: the gap is {gap}."),
        (Answer::TooTight, ..) => {
            format!("Too tight: the gap is {gap}; at least {} is wanted.", edge(Rounding::Up))
        }
        (Answer::TooWide, ..) => {
            format!("Too wide: the gap is {gap}; at most {} is allowed.", edge(Rounding::Down))
        }
        (_, Proof::Keeps, _) => format!(
            "Can’t say yet: the gap is {gap}. It is wide enough, but may be over {}.",
            edge(Rounding::Down)
        ),
        (_, _, Proof::Keeps) => format!(
            "Can’t say yet: the gap is {gap}. It is not too wide, but may be under {}.",
            edge(Rounding::Up)
        ),
        _ => format!(
            "Can’t say yet: the gap is {gap}. It may be under {} or over {}.",
            edge(Rounding::Up),
            edge(Rounding::Down)
        ),
    }
}

/// A gap as text, to the micrometre or finer.
pub(super) fn figure(gap: Amount, unit: Unit, rounding: Rounding) -> String {
    format!("{} {}", gap.show(unit, places(unit), rounding), unit.symbol())
}

fn places(unit: Unit) -> u8 {
    places_for(Span::whole(10, Unit::Micrometre), unit)
}

fn of_two(
    one: Option<Amount>,
    other: Option<Amount>,
    wins: fn(&Amount, &Amount) -> bool,
) -> Option<Amount> {
    match (one, other) {
        (Some(a), Some(b)) => Some(if wins(&a, &b) { a } else { b }),
        (one, other) => one.or(other),
    }
}
