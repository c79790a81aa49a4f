//! The screens, each one question and its answer.

mod bench;
mod book;
mod check;
mod convert;
mod entry;
mod entry_line;
mod faces;
mod find;
mod gauges;
mod help;
mod joints;
mod limits;
mod missing;
mod open;
mod own_limit;
mod ports;
mod seals;
mod settings;
mod take_in;
mod which;
mod work;

use crate::dom::El;
use crate::route::Route;
use crate::state::app;
pub use joints::Job;

/// The screen of a place.
pub fn of(route: Route) -> Vec<El> {
    if let Some(missing) = missing::screen(app(), &route) {
        return missing;
    }
    match route {
        Route::Bench => bench::screen(),
        Route::Open => open::screen(),
        Route::Limits => limits::screen(),
        Route::Part(part) => limits::part_screen(part),
        Route::Check { row, place } => check::screen(&row, &place),
        Route::OwnLimit(row) => own_limit::screen(&row),
        Route::Convert => convert::screen(),
        Route::Faces => faces::screen(),
        Route::Survey(survey, piece) => faces::survey_screen(survey, &piece),
        Route::Stack => faces::stack_screen(),
        Route::FaceLedger(piece) => faces::ledger_screen(&piece),
        Route::Joints(job) => joints::screen(&job),
        Route::Seals(rotor, face) => seals::face_screen(rotor, face),
        Route::SealTable => seals::table_screen(),
        Route::Slot(slot) => seals::slot_screen(slot),
        Route::Mark(slot) => seals::mark_screen(slot),
        Route::Leaves => seals::leaves_screen(),
        Route::HotGap(slot) => seals::hot_gap_screen(slot),
        Route::Placing => seals::placing_screen(),
        Route::Sets => seals::sets_screen(),
        Route::Set(row) => seals::set_screen(&row),
        Route::Matching => seals::matching_screen(),
        Route::Ports(place) => ports::screen(place),
        Route::Work(place) => work::screen(&place),
        Route::Book => book::screen(),
        Route::Entry(id) => entry::screen(id),
        Route::PutRight(id) => check::right_screen(id),
        Route::Gauges => gauges::screen(),
        Route::TakeIn => take_in::screen(),
        Route::Settings => settings::screen(),
        Route::Find => find::screen(),
        Route::Help(topic) => help::screen(&topic),
    }
}
