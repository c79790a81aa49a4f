//! The tightening of one joint as planned: its order, its passes, and the full torque; and how far
//! the book says it has come.

use super::Refusal;
use super::bolts::Bolts;
use super::bounds::TORQUE;
use super::sequence::{Order, OrderFault, Pass, own_passes};
use crate::book::{Book, BuildId, Entry, Fact, Subject};
use crate::quantity::{Amount, Number, Reading, Rounding, Unit};
use pitleaf_translated::translated;
use std::fmt;
use uom::si::ratio::ratio;

/// A joint's plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Which joint, in the builder's words.
    pub joint: String,
    /// Its bolts.
    pub bolts: Bolts,
    /// The order of the passes.
    pub order: Order,
    /// The passes as typed, in percent.
    pub shares: String,
    /// The full torque.
    pub torque: Reading,
    /// Whether it does not hold the stack together: the gears' bolts, the oil pan's.
    pub elsewhere: bool,
    passes: Vec<Pass>,
}

/// Why a plan was not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PlanFault {
    /// It does not say which joint.
    NoJoint,
    /// The order, the count or the passes.
    Order(OrderFault),
    /// The torque.
    Torque(Refusal),
}

impl Plan {
    /// The plan of a joint of the stack: in the order that follows from how its bolts stand where `order` is
    /// empty, else in the builder's own. The last pass is followed by one more at the full torque.
    ///
    /// # Errors
    /// The first [`PlanFault`].
    pub fn read(
        joint: &str,
        bolts: Bolts,
        order: &str,
        shares: &str,
        torque: &str,
        unit: Unit,
    ) -> Result<Self, PlanFault> {
        let joint = joint.trim();
        if joint.is_empty() {
            return Err(PlanFault::NoJoint);
        }
        let order =
            if order.trim().is_empty() { bolts.usual_order() } else { bolts.read_order(order) };
        let order = order.map_err(PlanFault::Order)?;
        let torque = Reading::read(torque, unit, &TORQUE)
            .map_err(|fault| PlanFault::Torque(fault.into()))?;
        let mut passes = own_passes(&order, &read_shares(shares)?).map_err(PlanFault::Order)?;
        let once_more = bolts.once_more(&order);
        passes.extend(passes.last().map(|last| Pass { order: once_more, ..last.clone() }));
        let (joint, shares) = (joint.to_owned(), shares.trim().to_owned());
        Ok(Self { joint, bolts, order, shares, torque, elsewhere: false, passes })
    }

    /// The plan in force of a joint in a build.
    ///
    /// An entry that says neither where its bolts stand nor that they are on a circle gives them by name alone,
    /// in the order written: that is all it says.
    #[must_use]
    pub fn of(book: &Book, build: &BuildId, joint: &str) -> Option<Self> {
        let subject = Subject::TighteningOrder(joint.to_owned());
        let Fact::TighteningOrder { joint, order, shares, torque, unit, elsewhere, circle, places } =
            &book.current(build, &subject)?.fact
        else {
            return None;
        };
        let bolts = if *circle {
            Bolts::named(order).and_then(|bolts| Bolts::circle(bolts.count()))
        } else if places.is_empty() {
            Bolts::named(order)
        } else {
            Bolts::placed(places, Unit::Millimetre)
        };
        let plan = Self::read(joint, bolts.ok()?, order, shares, torque, *unit).ok()?;
        Some(Self { elsewhere: *elsewhere, ..plan })
    }

    /// What the book writes of it.
    #[must_use]
    pub fn fact(&self) -> Fact {
        Fact::TighteningOrder {
            joint: self.joint.clone(),
            order: self.bolts.said(&self.order),
            shares: self.shares.clone(),
            torque: self.torque.number().to_owned(),
            unit: self.torque.unit(),
            elsewhere: self.elsewhere,
            circle: matches!(self.bolts, Bolts::Circle(_)),
            places: self.bolts.rows(),
        }
    }

    /// In which way a pass goes, in a few words: what the picture and the list show.
    #[must_use]
    #[translated]
    pub fn way(&self, number: usize) -> &'static str {
        let is_last = number == self.passes.len();
        match (&self.bolts, is_last) {
            (Bolts::Circle(_), true) => "once around",
            (_, true) => "once more, same order",
            _ => "in the order shown",
        }
    }

    /// Its passes, the last once more at the full torque.
    #[must_use]
    pub fn passes(&self) -> &[Pass] {
        &self.passes
    }

    /// What to set the wrench to in a pass, in the unit the torque was given in: to the tenth.
    ///
    /// The last passes take the torque as typed.
    #[must_use]
    pub fn wrench(&self, pass: &Pass) -> String {
        let share = pass.share.get::<ratio>();
        if share > 1.0 - 1e-9 {
            return self.torque.number().to_owned();
        }
        let unit = self.torque.unit();
        let set = Amount::nearest(self.torque.amount().value(unit) * share, unit);
        set.map(|set| set.show(unit, 1, Rounding::Nearest)).unwrap_or_default()
    }

    /// What the book writes when a pass is done, counted from 1: at what the wrench was to be set to, or
    /// where it read otherwise, at what is typed. None of a pass that is not planned.
    ///
    /// # Errors
    /// What is typed is no torque within [`TORQUE`].
    pub fn tightened(&self, number: u16, read: &str, unit: Unit) -> Result<Option<Fact>, Refusal> {
        let at = usize::from(number).checked_sub(1);
        let (Some(pass), Ok(of)) =
            (at.and_then(|at| self.passes.get(at)), u16::try_from(self.passes.len()))
        else {
            return Ok(None);
        };
        let (torque, unit) = if read.trim().is_empty() {
            (self.wrench(pass), self.torque.unit())
        } else {
            let read = Reading::read(read, unit, &TORQUE)?;
            (read.number().to_owned(), read.unit())
        };
        Ok(Some(Fact::Tightened { joint: self.joint.clone(), pass: number, of, torque, unit }))
    }
}

impl Plan {
    /// A question, where what the wrench is said to have read in a pass is more than twice or less than
    /// half of what it was to be set to.
    #[must_use]
    #[translated]
    pub fn far_off(&self, number: u16, read: &str, unit: Unit) -> Option<String> {
        let pass = self.passes.get(usize::from(number).checked_sub(1)?)?;
        let wrench = self.wrench(pass);
        let set = Reading::read(&wrench, self.torque.unit(), &TORQUE).ok()?;
        let read = Reading::read(read, unit, &TORQUE).ok()?;
        let newton_metres = |reading: &Reading| reading.amount().value(Unit::NewtonMetre);
        let times = newton_metres(&read) / newton_metres(&set);
        (!(0.5..=2.0).contains(&times)).then(|| {
            format!(
                "{} {} is far from the {wrench} {} of pass {number}. Did the point or the unit slip? Press again if it is so.",
                read.number(),
                read.unit().symbol(),
                self.torque.unit().symbol()
            )
        })
    }
}

/// A pass that is done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Done {
    /// Which, counted from 1.
    pub pass: u16,
    /// At which torque, as written.
    pub torque: String,
    /// Its unit.
    pub unit: Unit,
}

/// The passes of a joint that are done, in order, each as ticked off last: those since its order was last
/// written. A new order starts over, since the bolts were loosened for it.
#[must_use]
pub fn passes_done(book: &Book, build: &BuildId, joint: &str) -> Vec<Done> {
    let planned =
        book.current(build, &Subject::TighteningOrder(joint.to_owned())).map(Entry::place);
    let mut done: Vec<Done> = Vec::new();
    for line in book.history(build, &Subject::Tightened(joint.to_owned())) {
        if let Fact::Tightened { pass, torque, unit, .. } = &line.entry.fact
            && !line.withdrawn
            && Some(line.entry.place()) > planned
        {
            done.retain(|old| old.pass != *pass);
            done.push(Done { pass: *pass, torque: torque.clone(), unit: *unit });
        }
    }
    done.sort_by_key(|done| done.pass);
    done
}

/// The joints of a build that have an order, each once, the first written first.
#[must_use]
pub fn joints(book: &Book, build: &BuildId) -> Vec<String> {
    let mut joints: Vec<String> = Vec::new();
    for line in book.lines(build) {
        if let Fact::TighteningOrder { joint, .. } = &line.entry.fact
            && !line.withdrawn
            && !joints.contains(joint)
        {
            joints.push(joint.clone());
        }
    }
    joints
}

fn pieces(text: &str) -> impl Iterator<Item = &str> {
    text.split(|letter: char| letter.is_whitespace() || ",;-–→%".contains(letter))
        .filter(|piece| !piece.is_empty())
}

/// Percents as typed: `33, 67, 100`.
fn read_shares(text: &str) -> Result<Vec<f64>, PlanFault> {
    pieces(text)
        .map(|piece| {
            let number = Number::read(piece).map_err(|_| PlanFault::Order(OrderFault::Passes))?;
            Ok(number.value())
        })
        .collect()
}

impl fmt::Display for PlanFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoJoint => f.write_str("Say which joint it is: “Tension bolts”."),
            Self::Order(fault) => fault.fmt(f),
            Self::Torque(refusal) => refusal.fmt(f),
        }
    }
}

impl std::error::Error for PlanFault {}
