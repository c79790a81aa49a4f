//! The build from strip-down to hand-over: the order of work, what holds it, what was decided, and what
//! the customer gets.
//!
//! [`Routing`] is the order of work, for any engine; [`Progress`] is where one build stands in it. All of
//! it is read from the book: a step done, a hold found true, a decision are entries like any other.

mod asked;
mod compare;
mod compression;
mod copy;
mod decision;
mod description;
mod expand;
mod fact;
mod file;
mod leads;
mod outlines;
mod own_route;
mod pairs;
mod progress;
mod routing;
mod sheet;
mod sign_off;
mod stage;
mod step;
mod usual;

pub use compare::{Comparison, Point, compare, compared_rows};
pub use compression::{
    Air, Compared, Compression, CompressionFault, Finding, HOW_COMPARED, NOT_COMPARED, NotCompared,
    SPEEDS, TESTER, Tested, TypedTest, compare as compare_compression,
    record as compression_record, record_in as compression_in,
};
pub use copy::set_up;
pub use decision::{DecisionFault, Past, decide_on, decision_words, fates, past_limits};
pub use description::{Topic, builds, own_rows, said};
pub use expand::Station;
pub use fact::{Choice, RouteFact};
pub use file::{FileFault, MOST_BYTES, read, write};
pub use leads::{LeadsTo, STEPS as LEADING_STEPS};
pub use outlines::{Cut, OVERHANG, cuts};
pub use pairs::{Paired, pairs, pairs_with};
use pitleaf_translated::tr;
pub use progress::{Piece, Progress, Refusal, Standing, State};
pub use routing::{Edit, Routing, RoutingFault};
pub use sheet::{BuildSheet, Copy, Row, Section};
pub use sign_off::{Open, OpenPoints, SignFault};
pub use stage::Stage;
pub use step::{Answer, Each, Kind, Step, When};

/// What stands over the whole order of work.
pub const ABOVE_ALL: &str = tr!(
    "The order is common practice, no source. The engine’s own manual and local rules stand above it and above every figure."
);
