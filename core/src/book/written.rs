//! The written form of an entry: a checksum, a space, and the entry as JSON.
//!
//! The checksum is CRC-32 (ISO-HDLC) over the JSON's bytes, in eight hexadecimal digits.

use super::{Entry, FORMAT, Fact};
use crate::kept::{self, Json, Kept, checksum};
use crate::limits::{Row, RowFault, Sheet};
use crate::quantity::Unit;
use pitleaf_translated::translated;
use std::fmt;

/// Why a record is kept aside instead of being taken into the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Damage {
    /// It is no record of ours at all.
    Foreign,
    /// Its checksum and its text disagree: it was cut or changed.
    Checksum,
    /// It was written by a newer version.
    Newer,
    /// Sound, but not an entry this version can read.
    Unreadable,
    /// A limit that no reading can be held against.
    Limit(RowFault),
    /// A gauge whose steps and greatest error are of different dimensions.
    Gauge,
}

impl fmt::Display for Damage {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Foreign => "not a record of this tool",
            Self::Checksum => "damaged: its checksum does not fit",
            Self::Newer => "written by a newer version; bring this one up to date to read it",
            Self::Unreadable => "sound, but not readable here",
            Self::Limit(fault) => {
                return write!(f, "a limit that can’t be used. {fault}");
            }
            Self::Gauge => {
                "a gauge that can’t be used. Its steps and its error measure different things."
            }
        })
    }
}

/// The record of an entry.
#[must_use]
pub fn record(entry: &Entry) -> String {
    let text = kept::write(entry);
    format!("{:08x} {text}", checksum::of(text.as_bytes()))
}

/// The entry of a record.
///
/// # Errors
/// The [`Damage`]; the record is then to be kept as it is.
pub fn entry(record: &str) -> Result<Entry, Damage> {
    // Where the space stands is known: looking for it takes longer than the rest of this.
    let (sum, text) = record.split_at_checked(9).ok_or(Damage::Foreign)?;
    let sum = sum.strip_suffix(' ').ok_or(Damage::Foreign)?;
    let sum = u32::from_str_radix(sum, 16).map_err(|_| Damage::Foreign)?;
    if checksum::of(text.as_bytes()) != sum {
        return Err(Damage::Checksum);
    }
    read(text)
}

/// The entry of a JSON text.
///
/// # Errors
/// [`Damage::Newer`] and [`Damage::Unreadable`].
pub fn read(text: &str) -> Result<Entry, Damage> {
    of_json(&Json::read(text).map_err(|_| Damage::Unreadable)?)
}

/// The entry of a JSON.
pub(super) fn of_json(json: &Json<'_>) -> Result<Entry, Damage> {
    let newer = || {
        let format = json.fields().map(|fields| u32::of_json(fields.at("format")));
        matches!(format, Ok(Ok(format)) if format > FORMAT)
    };
    match Entry::of_json(json) {
        Ok(entry) if entry.format <= FORMAT => unusable(&entry.fact).map_or(Ok(entry), Err),
        _ if newer() => Err(Damage::Newer),
        _ => Err(Damage::Unreadable),
    }
}

/// Why a fact that can be read is not taken in all the same: what is of another dimension than the readings
/// held against it must never come as far as a verdict or a figure on the screen.
fn unusable(fact: &Fact) -> Option<Damage> {
    match fact {
        Fact::Limit(row) | Fact::BuildLimit(row) => {
            // It stands in the place of a row that calculators read, each for what it measures.
            let is_other = |shipped: &Row| shipped.unit.dimension() != row.unit.dimension();
            let fault = row.faults().first().copied();
            let other = || Sheet::starter().row(&row.id).is_some_and(is_other);
            fault.or_else(|| other().then_some(RowFault::OtherDimension)).map(Damage::Limit)
        }
        Fact::Gauge { resolution, error, .. } => {
            let of_error = error.unit().map(Unit::dimension);
            of_error
                .is_some_and(|error| error != resolution.unit().dimension())
                .then_some(Damage::Gauge)
        }
        _ => None,
    }
}
