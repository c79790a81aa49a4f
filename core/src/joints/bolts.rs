//! The bolts of a joint: what each is called and where it stands, and the order that follows from it.
//!
//! Bolts that have a place are called by letters, so that a bolt is never taken for a turn, which is counted
//! (`1st`). Places are in millimetres as the housing is seen: x to the right, y up.

use super::sequence::{Order, OrderFault, check_count};
use crate::language::IS_GERMAN;
use crate::letters;
use crate::quantity::{Amount, Number, Rounding, Unit, cells, without_zeros};
use crate::trochoid::Point;

/// How the bolts of a joint stand.
#[derive(Clone, Debug, PartialEq)]
pub enum Bolts {
    /// At these places.
    Placed(Vec<Point>),
    /// So many, evenly on one circle, clockwise from the top.
    Circle(u16),
    /// Nobody said; only their names are known, in the order of their turn.
    Named(Vec<String>),
}

/// No housing reaches further from its middle, in millimetres.
const FARTHEST: f64 = 1000.0;
/// Places nearer than this are one bolt, in millimetres.
const ONE_PLACE: f64 = 2.0;
/// As near as a finger comes to a bolt, in millimetres.
const FINGER: f64 = 7.0;

impl Bolts {
    /// Bolts by their places: a row `x y` for each, in millimetres or inches.
    ///
    /// # Errors
    /// [`OrderFault::NoBolts`] for an empty text; [`OrderFault::Row`], [`OrderFault::Far`],
    /// [`OrderFault::Together`] and [`OrderFault::Count`].
    ///
    /// # Examples
    /// ```
    /// use pitleaf_core::joints::bolts::Bolts;
    /// use pitleaf_core::quantity::Unit;
    /// let bolts = Bolts::placed("10,5; 20\n-3.25 4", Unit::Millimetre)?;
    /// assert_eq!(bolts.places()[1].millimetres(), (-3.25, 4.0));
    /// # Ok::<(), pitleaf_core::joints::sequence::OrderFault>(())
    /// ```
    pub fn placed(text: &str, unit: Unit) -> Result<Self, OrderFault> {
        let mut places: Vec<Point> = Vec::new();
        for (row, line) in (1..).zip(text.lines()).filter(|(_, line)| !line.trim().is_empty()) {
            let place = read_place(line, unit).ok_or(OrderFault::Row(row))?;
            if place.norm() > FARTHEST {
                return Err(OrderFault::Far(row));
            }
            if let Some(at) = places.iter().position(|old| (*old - place).norm() < ONE_PLACE) {
                return Err(OrderFault::Together(letter(at), letter(places.len())));
            }
            places.push(place);
        }
        if places.is_empty() {
            return Err(OrderFault::NoBolts);
        }
        check_count(places.len())?;
        Ok(Self::Placed(places))
    }

    /// The bolts of those rows that can be read, for the picture while they are still typed: one bolt makes no
    /// order yet, and is shown all the same.
    #[must_use]
    pub fn readable(text: &str, unit: Unit) -> Self {
        Self::Placed(text.lines().filter_map(|line| read_place(line, unit)).collect())
    }

    /// So many bolts on one circle.
    ///
    /// # Errors
    /// [`OrderFault::Count`].
    pub fn circle(count: u16) -> Result<Self, OrderFault> {
        check_count(count.into())?;
        Ok(Self::Circle(count))
    }

    /// Bolts by names of the builder's own, in the order of their turn: `1-10-5-14`, or with commas or on
    /// lines of their own `front top, rear top`.
    ///
    /// # Errors
    /// [`OrderFault::NoBolts`] for an empty text, [`OrderFault::Twice`] and [`OrderFault::Count`].
    pub fn named(text: &str) -> Result<Self, OrderFault> {
        let names: Vec<String> = names(text).map(str::to_owned).collect();
        if names.is_empty() {
            return Err(OrderFault::NoBolts);
        }
        check_count(names.len())?;
        let twice = (1..names.len()).find(|&at| names[..at].contains(&names[at]));
        match twice {
            Some(at) => Err(OrderFault::Twice(names[at].clone())),
            None => Ok(Self::Named(names)),
        }
    }

    /// How many there are.
    #[must_use]
    pub fn count(&self) -> u16 {
        let listed = |count: usize| u16::try_from(count).unwrap_or(u16::MAX);
        match self {
            Self::Placed(places) => listed(places.len()),
            Self::Circle(count) => *count,
            Self::Named(names) => listed(names.len()),
        }
    }

    /// What a bolt is called, counted from 1.
    #[must_use]
    pub fn name(&self, bolt: u16) -> String {
        let at = usize::from(bolt.saturating_sub(1));
        match self {
            Self::Named(names) => names.get(at).cloned().unwrap_or_default(),
            Self::Placed(_) | Self::Circle(_) => letter(at),
        }
    }

    /// Where they stand; on a circle of 100 mm where that is all that is known, and none by names alone.
    #[must_use]
    pub fn places(&self) -> Vec<Point> {
        match self {
            Self::Placed(places) => places.clone(),
            Self::Circle(count) => (0..*count)
                .map(|bolt| {
                    let turned = f64::from(bolt) / f64::from(*count) * std::f64::consts::TAU;
                    Point { x: 100.0 * turned.sin(), y: 100.0 * turned.cos() }
                })
                .collect(),
            Self::Named(_) => Vec::new(),
        }
    }

    /// The order that follows from how they stand: from the middle outwards by place, crosswise on a circle,
    /// as listed by name.
    ///
    /// # Errors
    /// [`OrderFault::Count`].
    pub fn usual_order(&self) -> Result<Order, OrderFault> {
        match self {
            Self::Placed(places) => Order::outwards(places),
            Self::Circle(count) => Order::crosswise(*count),
            Self::Named(_) => Order::around(self.count()),
        }
    }

    /// Reads an order of the builder's own by the bolts' names: `A C B D`, `a-c-b-d`.
    ///
    /// # Errors
    /// [`OrderFault::Unknown`], [`OrderFault::Twice`] and [`OrderFault::Missing`].
    pub fn read_order(&self, text: &str) -> Result<Order, OrderFault> {
        let last = || self.name(self.count());
        let mut order = Vec::new();
        for name in names(text) {
            let bolt = (1..=self.count())
                .find(|&bolt| letters::lower(&self.name(bolt)) == letters::lower(name))
                .ok_or_else(|| OrderFault::Unknown {
                    bolt: name.chars().take(12).collect(),
                    last: last(),
                })?;
            if order.contains(&bolt) {
                return Err(OrderFault::Twice(self.name(bolt)));
            }
            order.push(bolt);
        }
        match (1..=self.count()).find(|bolt| !order.contains(bolt)) {
            Some(missing) => Err(OrderFault::Missing(self.name(missing))),
            None => Ok(Order::of_numbers(order)),
        }
    }

    /// The last time through, at full torque: around a circle, else in the same order once more.
    #[must_use]
    pub fn once_more(&self, order: &Order) -> Order {
        match self {
            Self::Circle(count) => Order::of_numbers((1..=*count).collect()),
            Self::Placed(_) | Self::Named(_) => order.clone(),
        }
    }

    /// An order by the bolts' names, as it is shown, written and read: `A-C-B-D`; with commas where a name
    /// would fall apart at its own hyphens or blanks.
    #[must_use]
    pub fn said(&self, order: &Order) -> String {
        let called: Vec<String> = order.bolts().iter().map(|&bolt| self.name(bolt)).collect();
        let falls_apart = |name: &String| names(name).nth(1).is_some();
        called.join(if called.iter().any(falls_apart) { ", " } else { "-" })
    }

    /// Their places as rows of millimetres, which [`Bolts::placed`] reads; empty where they have none.
    #[must_use]
    pub fn rows(&self) -> String {
        match self {
            Self::Placed(places) => places
                .iter()
                .map(|place| row(*place, Unit::Millimetre, 2))
                .collect::<Vec<_>>()
                .join("\n"),
            Self::Circle(_) | Self::Named(_) => String::new(),
        }
    }
}

/// What a tap at a place makes of the rows: the bolt under the finger is taken out, else one is added there.
///
/// A tap is good to a millimetre or 0.05 in. Rows that can't be read stay as they are.
#[must_use]
pub fn tapped(rows: &str, unit: Unit, at: Point) -> String {
    let lines: Vec<&str> = rows.lines().filter(|line| !line.trim().is_empty()).collect();
    let off = |line: &str| read_place(line, unit).map(|place| (place - at).norm());
    let nearest = (0..lines.len())
        .filter_map(|line| Some((line, off(lines[line])?)))
        .min_by(|one, other| one.1.total_cmp(&other.1))
        .filter(|(_, off)| *off <= FINGER);
    let mut lines: Vec<String> = lines.into_iter().map(str::to_owned).collect();
    match nearest {
        Some((line, _)) => {
            lines.remove(line);
        }
        None => {
            let step = if unit == Unit::Inch { 1.27 } else { 1.0 };
            let near = |value: f64| (value / step).round() * step;
            lines.push(row(Point { x: near(at.x), y: near(at.y) }, unit, 2));
        }
    }
    lines.join("\n")
}

/// A turn, as it is counted: `1st`, `22nd`.
#[must_use]
pub fn turn(number: u16) -> String {
    if IS_GERMAN {
        return format!("{number}.");
    }
    let ending = match (number % 100, number % 10) {
        (11..=13, _) => "th",
        (_, 1) => "st",
        (_, 2) => "nd",
        (_, 3) => "rd",
        _ => "th",
    };
    format!("{number}{ending}")
}

/// `A` for 0, `Z` for 25, `AA` for 26.
fn letter(at: usize) -> String {
    let one = |at: usize| char::from(b'A' + u8::try_from(at % 26).unwrap_or(0));
    if at < 26 { one(at).to_string() } else { format!("{}{}", one(at / 26 - 1), one(at)) }
}

/// Names parted by commas, semicolons or lines; without any of those by blanks, hyphens and arrows too.
fn names(text: &str) -> impl Iterator<Item = &str> {
    let wide = |letter: char| ",;\n".contains(letter);
    let is_wide = text.contains(wide);
    text.split(move |letter: char| {
        wide(letter) || (!is_wide && (letter.is_whitespace() || "-–→".contains(letter)))
    })
    .map(str::trim)
    .filter(|name| !name.is_empty())
}

fn read_place(line: &str, unit: Unit) -> Option<Point> {
    let scale = if unit == Unit::Inch { 25.4 } else { 1.0 };
    let figure = |cell: &str| match Number::read(cell) {
        Ok(number) => Some(number.value() * scale),
        // Drawing programs write -0.000.
        Err(crate::quantity::Fault::MinusZero) => Some(0.0),
        Err(_) => None,
    };
    match cells(line)[..] {
        [x, y] => Some(Point { x: figure(x)?, y: figure(y)? }),
        _ => None,
    }
}

fn row(place: Point, unit: Unit, places: u8) -> String {
    let figure = |value: f64| {
        let shown = Amount::nearest(value, Unit::Millimetre)
            .map(|amount| amount.show(unit, places, Rounding::Nearest))
            .unwrap_or_default();
        without_zeros(&shown).replace('−', "-").replace(',', ".")
    };
    format!("{} {}", figure(place.x), figure(place.y))
}
