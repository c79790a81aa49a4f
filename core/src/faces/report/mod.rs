//! What a survey shows, in words: one finding after the other, each against its row of the sheet.

mod bearing;
mod bench;
mod end_play;
mod face;
mod finding;
mod lapping;
mod pressed;
mod shaft;
mod width;

pub use bench::{Bench, on_bench};
pub use end_play::SpacerChoice;
pub use face::{Levelled, levelled};
pub(crate) use finding::both;
pub use finding::{Finding, figure};
pub(crate) use lapping::LAPPED_OFF;
pub use lapping::skin_left;
use pitleaf_translated::translated;
pub use shaft::{Direction, direction};
pub use width::stack;

use super::{ReadingSet, SetFault, Survey};
use crate::limits::Call;

/// What a set of readings shows.
///
/// # Errors
/// The [`SetFault`] of the first text that can't be read. What can't be computed is a finding that says why.
#[translated]
pub fn report(set: &ReadingSet, bench: &Bench<'_>) -> Result<Vec<Finding>, SetFault> {
    let taken = set.read_with(&bench.sheet.gauge(set.gauge), bench.bore)?;
    let piece = set.piece.as_str();
    let mut found = match set.of {
        Survey::Flatness => face::flatness_report(&taken, bench),
        Survey::Grid | Survey::OwnPlaces => face::grid_report(&taken, piece, bench),
        Survey::Straightedge => face::straightedge_report(&taken, piece, bench),
        Survey::Lapping => lapping::report(&taken, piece, bench),
        Survey::SideThickness => width::side_report(&taken, bench),
        Survey::HousingWidth | Survey::RotorWidth | Survey::ApexSealLength => {
            width::rotor_report(set.of, &taken, piece, bench)
        }
        Survey::Bore | Survey::Journal | Survey::PlasticGauge => {
            bearing::report(set.of, &taken, piece, bench)
        }
        Survey::BearingSeat | Survey::BearingShell => pressed::report(set.of, &taken, piece, bench),
        Survey::RunoutEight | Survey::RunoutTwelve => shaft::report(&taken, piece, bench),
        Survey::Spacers | Survey::EndPlay => end_play::report(set.of, &taken, bench),
        Survey::EndPlayAfter => end_play::after_report(&taken, bench),
    };
    // The worst place may be one that was not read: what was seen can break a limit, and not yet keep it.
    let unread = taken.unread();
    for finding in found.iter_mut().filter(|found| unread > 0 && found.call == Some(Call::Meets)) {
        finding.call = None;
        let all = taken.readings.len();
        let words = format!(" Can’t say yet: {unread} of {all} places are not read.");
        finding.says.push_str(&words);
    }
    Ok(found)
}
