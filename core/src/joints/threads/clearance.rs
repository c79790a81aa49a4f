//! The hole a bolt passes through.

use super::clearance_rows::{INCH, METRIC};
use super::{Drill, Thread};
use crate::quantity::{Amount, Unit};
use pitleaf_translated::translated;

/// How freely the bolt passes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClearanceFit {
    /// Fine (ISO 273), close (ASME B18.2.8).
    Close,
    /// Medium, normal.
    Normal,
    /// Coarse, loose.
    Loose,
}

/// A clearance hole and the standard it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Clearance {
    /// The drill.
    pub drill: Drill,
    /// The standard.
    pub source: &'static str,
}

/// The clearance hole for a thread; none where the standard has no row for it.
#[must_use]
#[translated]
pub fn clearance_hole(thread: Thread, fit: ClearanceFit) -> Option<Clearance> {
    let (rows, parts, unit, source) = if thread.series().is_metric() {
        (METRIC, 1, Unit::Millimetre, "ISO 273:1979")
    } else {
        (INCH, 16, Unit::Inch, "ASME B18.2.8-1999")
    };
    let place = match fit {
        ClearanceFit::Close => 0,
        ClearanceFit::Normal => 1,
        ClearanceFit::Loose => 2,
    };
    rows.iter()
        .find(|row| Amount::exact(row.0, parts, unit) == Some(thread.diameter()))
        .map(|row| Clearance { drill: row.1[place], source })
}
