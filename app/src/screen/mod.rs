//! The screens, each one question and its answer.

mod bench;
mod book;
mod check;
mod convert;
mod entry;
mod entry_line;
mod faces;
mod gauges;
mod limits;
mod open;
mod own_limit;
mod seals;
mod settings;
mod slot;
mod take_in;

use crate::dom::El;
use crate::route::Route;

/// The screen of a place.
pub fn of(route: Route) -> Vec<El> {
    match route {
        Route::Bench => bench::screen(),
        Route::Open => open::screen(),
        Route::Limits => limits::screen(),
        Route::Part(part) => limits::part_screen(part),
        Route::Check { row, place } => check::screen(&row, &place),
        Route::OwnLimit(row) => own_limit::screen(&row),
        Route::Convert => convert::screen(),
        Route::Seals(rotor, face) => seals::screen(rotor, face),
        Route::Slot(slot) => slot::screen(slot),
        Route::Faces => faces::screen(),
        Route::Survey(survey, piece) => faces::survey_screen(survey, &piece),
        Route::Stack => faces::stack_screen(),
        Route::Book => book::screen(),
        Route::Entry(id) => entry::screen(id),
        Route::Gauges => gauges::screen(),
        Route::TakeIn => take_in::screen(),
        Route::Settings => settings::screen(),
    }
}
