//! An entry: one small fact about a build, written once and never changed.

use super::Slot;
use crate::faces::report::SpacerChoice;
use crate::faces::{FaceWork, ReadingSet};
use crate::kept::{Json, Kept, Refused};
use crate::language;
use crate::limits::{BuildKind, Edge, GaugeKind, PermissibleError, Row};
use crate::ports::{PortFace, TypedDatums, TypedOutline};
use crate::quantity::{Bounds, Fault, Reading, Unit};
use crate::route::RouteFact;
use crate::seals::{Drawing, LeafSet, Trial};
use crate::trochoid::TypedEngine;
use crate::{kept_fields, kept_variants};

/// The format of entries this version writes.
pub const FORMAT: u32 = 1;

/// An entry's id: made once, the same on every phone.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct EntryId(pub Box<str>);

/// A build's id: that of the entry that opened it.
pub type BuildId = EntryId;

impl Kept for EntryId {
    fn json(&self) -> Json<'_> {
        Json::Text((&*self.0).into())
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        json.text().map(|id| Self(id.into()))
    }
}

/// One small fact.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// The format it was written in.
    pub format: u32,
    /// Its id.
    pub id: EntryId,
    /// The build it is about.
    pub build: BuildId,
    /// One more than the greatest its writer knew: the order holds even when a clock is set back.
    pub order: u64,
    /// When, in milliseconds since 1970 by the writer's clock. To be read, not sorted by.
    pub at: u64,
    /// The fact.
    pub fact: Fact,
}

kept_fields!(Entry { format, id, build, order, at, fact });

impl Entry {
    /// Where it stands among all: by its order, and by its id where two phones wrote at once.
    #[must_use]
    pub fn place(&self) -> (u64, &EntryId) {
        (self.order, &self.id)
    }
}

/// What an entry says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fact {
    /// A build was opened. Its id is this entry's.
    Opened {
        /// What the shop calls it.
        name: String,
        /// How it breathes.
        kind: BuildKind,
        /// Rotors, 1 to 4.
        rotors: u8,
        /// Invented, to show the tool.
        demo: bool,
    },
    /// Something was measured.
    Figure(Figure),
    /// A slot's own mark, in the builder's words.
    Mark {
        /// Which slot.
        slot: Slot,
        /// "two dots and a short line".
        mark: String,
    },
    /// A seal was fitted to its slot, or taken out again.
    Fitted {
        /// Which slot.
        slot: Slot,
        /// In its slot for good.
        fitted: bool,
    },
    /// A slot's own mark, drawn.
    Drawing {
        /// Which slot.
        slot: Slot,
        /// As drawn.
        drawing: Drawing,
    },
    /// A leaf, or the seal itself, was tried in a slot.
    Trial {
        /// Which slot.
        slot: Slot,
        /// What was seen.
        seen: Trial,
    },
    /// A fresh seal was taken for a slot: earlier trials were of another one.
    FreshSeal {
        /// Which slot.
        slot: Slot,
    },
    /// The feeler leaves on the bench.
    Leaves(LeafSet),
    /// A gauge of the builder's own, in place of the usual one of its kind.
    Gauge {
        /// Which kind.
        kind: GaugeKind,
        /// The finest step it shows.
        resolution: Edge,
        /// The greatest error its maker allows, either way.
        error: PermissibleError<Edge>,
    },
    /// A part was read at several places: faces, widths, bores, runout, end play, spacers at hand.
    Readings(ReadingSet),
    /// A spacer was chosen for the end play.
    Spacer(SpacerChoice),
    /// Something was done to a face of a side housing: lapped, hardened, finished; or how it came in.
    FaceWork(FaceWork),
    /// A note.
    Note {
        /// About which part or place; may be empty.
        about: String,
        /// The words.
        words: String,
    },
    /// The order a joint is tightened in, its passes and full torque. Writing it anew starts over.
    TighteningOrder {
        /// Which joint, in the builder's words.
        joint: String,
        /// Bolts' names, `A-E-C-G`.
        order: String,
        /// The passes in percent, `33, 67, 100`; one more at the full torque follows.
        shares: String,
        /// The full torque, as typed.
        torque: String,
        /// Its unit.
        unit: Unit,
        /// Whether it is a joint that does not hold the stack together.
        elsewhere: bool,
        /// Whether its bolts stand evenly on one circle, clockwise from the top.
        circle: bool,
        /// Where its bolts stand, a row `x y` in millimetres for each; empty where nobody said.
        places: String,
    },
    /// A pass of a joint's order was done.
    Tightened {
        /// Which joint.
        joint: String,
        /// Which pass, from 1.
        pass: u16,
        /// Of how many.
        of: u16,
        /// What the wrench was set to.
        torque: String,
        /// Its unit.
        unit: Unit,
    },
    /// Whether the upper dowels are solid, which shuts the oil passage to the front bearing.
    DowelsSolid {
        /// Solid, not hollow.
        solid: bool,
    },
    /// An outside oil feed to the front bearing was fitted.
    OilFeed {
        /// From where to where, in the builder's words.
        words: String,
        /// The line's bore, as typed; may be empty.
        bore: String,
        /// Its unit.
        unit: Unit,
    },
    /// The engine's measures, as the port screens draw it.
    Engine(TypedEngine),
    /// How a side housing is looked at, and what closes its ports.
    PortFace(PortFace),
    /// A port's outline, stock or cut.
    Outline(TypedOutline),
    /// The holes a side housing's template is laid on by.
    Datums(TypedDatums),
    /// A limit of the builder's own for every build, in place of the sheet's row of the same id.
    Limit(Box<Row>),
    /// A limit of the builder's own for this build alone: its engine's manual says so.
    BuildLimit(Box<Row>),
    /// The order of work: steps, decisions, compression, what is said of the build.
    Route(RouteFact),
    /// The build is signed off: read-only until it is reopened.
    SignedOff {
        /// By whom; may be empty.
        who: String,
    },
    /// The build is open again.
    Reopened {
        /// Why.
        why: String,
    },
    /// An entry is withdrawn; it stays in the book.
    Withdrawn {
        /// Which.
        entry: EntryId,
    },
    /// A withdrawn entry holds again.
    Restored {
        /// Which.
        entry: EntryId,
    },
}

kept_variants!(Fact {
    "opened" = Opened { name, kind, rotors, demo: left_out },
    "figure" = Figure(inside),
    "mark" = Mark { slot, mark },
    "fitted" = Fitted { slot, fitted },
    "drawing" = Drawing { slot, drawing },
    "trial" = Trial { slot, seen },
    "fresh-seal" = FreshSeal { slot },
    "leaves" = Leaves(inside),
    "gauge" = Gauge { kind, resolution, error },
    "readings" = Readings(inside),
    "spacer" = Spacer(inside),
    "face-work" = FaceWork(inside),
    "note" = Note { about: or_usual, words },
    "tightening-order" = TighteningOrder { joint, order, shares, torque, unit, elsewhere: left_out, circle: left_out, places: left_out },
    "tightened" = Tightened { joint, pass, of, torque, unit },
    "dowels-solid" = DowelsSolid { solid },
    "oil-feed" = OilFeed { words, bore: or_usual, unit },
    "engine" = Engine(inside),
    "port-face" = PortFace(inside),
    "outline" = Outline(inside),
    "datums" = Datums(inside),
    "limit" = Limit(inside),
    "build-limit" = BuildLimit(inside),
    "signed-off" = SignedOff { who: or_usual },
    "reopened" = Reopened { why: or_usual },
    "withdrawn" = Withdrawn { entry },
    "restored" = Restored { entry },
    "route" = Route(inside),
});

impl Fact {
    /// The entry it is about, where it withdraws one or lets it hold again.
    #[must_use]
    pub fn of_entry(&self) -> Option<&EntryId> {
        match self {
            Self::Withdrawn { entry } | Self::Restored { entry } => Some(entry),
            _ => None,
        }
    }

    /// The side-seal slot it is about.
    #[must_use]
    pub fn slot(&self) -> Option<Slot> {
        match self {
            Self::Figure(figure) => Slot::named(&figure.place),
            Self::Mark { slot, .. }
            | Self::Drawing { slot, .. }
            | Self::Trial { slot, .. }
            | Self::FreshSeal { slot }
            | Self::Fitted { slot, .. } => Some(*slot),
            _ => None,
        }
    }
}

/// A reading as written down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// The limit row it was checked against.
    pub row: String,
    /// On which piece: a slot's name, or words; empty where there is only one.
    pub place: String,
    /// As typed.
    pub text: String,
    /// The unit typed or set.
    pub unit: Unit,
    /// The gauge.
    pub gauge: GaugeKind,
    /// The figure it puts right, which is withdrawn with it; none where it stands for itself.
    pub instead_of: Option<EntryId>,
}

kept_fields!(Figure { row, place: or_usual, text, unit, gauge, instead_of: left_out });

impl Figure {
    /// The figure with its unit, as it is shown.
    #[must_use]
    pub fn shown(&self) -> String {
        format!("{} {}", language::figure(&self.text), self.unit.symbol())
    }

    /// The reading behind the text.
    ///
    /// # Errors
    /// The text's [`Fault`], if it was written by something else than this tool.
    pub fn reading(&self) -> Result<Reading, Fault> {
        Reading::read(&self.text, self.unit, Bounds::widest(self.unit.dimension()))
    }
}
