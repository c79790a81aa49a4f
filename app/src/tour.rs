//! The first two minutes: the demo engine's real screens, with a line each that says what to try.

use crate::dom::{El, button, el, text};
use crate::route::Route;
use crate::state::App;
use pitleaf_translated::tr;

/// Where to stop, and what to try there.
const STOPS: [(&str, &str); 6] = [
    (
        "#/check/side-seal-gap-fi/1F-AB",
        tr!(
            "Touch 2, then ½: there is the verdict, in thou, inches and millimetres. Then “Write down”."
        ),
    ),
    (
        "#/book",
        tr!(
            "There it is. Touch a line for every value it ever had: nothing is overwritten, and undo is one touch."
        ),
    ),
    (
        "#/seals/1F",
        tr!(
            "Every slot has its own seal. Touch one: say whether a leaf goes, and the next leaf to try is named."
        ),
    ),
    (
        "#/ports/front",
        tr!(
            "Turn the rotor: the open part of the port fills, and what the cut would run into is named below."
        ),
    ),
    (
        "#/work",
        tr!("What comes next, what it waits for, and what you were doing when the phone rang."),
    ),
    ("#/open", tr!("Now your own engine: give it a name. The demo stays in the list of builds.")),
];

impl App {
    /// Where the first two minutes have got to; none where they are over or were never asked for.
    pub fn tour_stop(self) -> Option<Route> {
        let at = self.settings.with_untracked(|settings| settings.tour)?;
        STOPS.get(at as usize).map(|(hash, _)| Route::read(hash))
    }

    /// Goes on to a stop, or ends.
    pub fn tour(self, to: Option<u8>) {
        self.set(|settings| settings.tour = to);
        if let Some(stop) = self.tour_stop() {
            self.go(&stop);
        }
    }
}

/// The line over the screen.
pub fn line(app: App) -> Vec<El> {
    let Some(at) = app.settings.with(|settings| settings.tour) else { return Vec::new() };
    let Some((_, words)) = STOPS.get(at as usize) else { return Vec::new() };
    let (number, count) = (at + 1, STOPS.len());
    let is_last = usize::from(number) == count;
    let line = el("section")
        .class("tour")
        .attr("aria-label", tr!("First look"))
        .with(el("p").with(text("b", "", &tr!("{number} of {count}: "))).text(words))
        .with_all((!is_last).then(|| button("unit", tr!("Next"), move || app.tour(Some(number)))))
        .with(button("unit", tr!("End"), move || app.tour(None)));
    vec![line]
}
