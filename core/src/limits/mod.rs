//! Limits: what a part may measure, who says so, and whether a reading meets it.

mod decide;
mod gauge;
mod gauge_kind;
mod judge;
mod limit;
mod offered;
mod own;
mod permissible_error;
mod picture;
mod places;
mod row;
mod rule;
mod sheet;
mod slip;
mod source;
mod speak;
mod starter;
mod usual_gauges;

pub(crate) use decide::GUARD;
pub use decide::{Call, Side, Verdict, decide, decide_computed, decide_with_uncertainty};
pub use gauge::{Gauge, GaugeFigure};
pub use gauge_kind::GaugeKind;
pub use judge::Judged;
pub use limit::{Edge, Limit};
pub use own::TypedEdges;
pub use permissible_error::{ErrorFault, Percent, PermissibleError};
pub use picture::Picture;
pub use places::{place_words, places};
pub use row::{BuildKind, Input, LengthsIn, Part, Row};
pub use rule::{Rule, place_on_rule, rule};
pub use sheet::{RowFault, Sheet};
pub use slip::{Meant, Question, Slip, question, slips, two_readings};
pub use source::Source;
pub(crate) use speak::wear_line;
pub use speak::{limit_line, limit_lines};
