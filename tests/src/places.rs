//! Every place in the app, with a book full enough that each has something to show.

use crate::answers::fill_in;
use crate::{Browser, Engine, Phone, Profile, Server, button, link, searchbox, textbox};

/// Every place, and a name for its picture. "ENTRY" stands for an entry's id.
pub const PLACES: &[(&str, &str)] = &[
    ("bench", "#/"),
    ("open", "#/open"),
    ("limits", "#/limits"),
    ("part", "#/limits/side-seals"),
    ("check", "#/check/side-seal-gap-fi"),
    ("check-piece", "#/check/side-seal-gap-fi/1F-AB"),
    ("no-such-limit", "#/check/nothing"),
    ("own-limit", "#/own-limit/end-play"),
    ("convert", "#/convert"),
    ("seals-front", "#/seals/1F"),
    ("seals-rear", "#/seals/2R"),
    ("seals-table", "#/seals/table"),
    ("slot", "#/slot/1F-BC"),
    ("slot-empty", "#/slot/2R-CA"),
    ("mark", "#/mark/1F-BC"),
    ("leaves", "#/leaves"),
    ("hot-gap", "#/hot-gap/1F-BC"),
    ("placing", "#/placing"),
    ("sets", "#/sets"),
    ("set", "#/set/apex-seal-warp"),
    ("matching", "#/matching"),
    ("ports", "#/ports/front"),
    ("ports-face", "#/ports/front/face"),
    ("ports-figures", "#/ports/front/figures"),
    ("ports-template", "#/ports/front/template"),
    ("ports-outline", "#/ports/front/outline/intake-1-cut"),
    ("ports-room", "#/ports/front/room/intake-1-cut"),
    ("ports-engine", "#/ports/engine"),
    ("ports-volume", "#/ports/volume"),
    ("joints", "#/joints"),
    ("joints-threads", "#/joints/threads"),
    ("joints-thread", "#/joints/thread/m10-1-25"),
    ("joints-port", "#/joints/port/4"),
    ("joints-what-thread", "#/joints/what-thread"),
    ("joints-drills", "#/joints/drills"),
    ("joints-drill", "#/joints/drill/no-7"),
    ("joints-clamp", "#/joints/clamp"),
    ("joints-stack", "#/joints/stack"),
    ("joints-slip", "#/joints/slip"),
    ("joints-order", "#/joints/order"),
    ("joints-fits", "#/joints/fits"),
    ("joints-press", "#/joints/press"),
    ("joints-oil-feed", "#/joints/oil-feed"),
    ("joints-oil-line", "#/joints/oil-line"),
    ("faces", "#/faces"),
    ("faces-flatness", "#/faces/flatness/front"),
    ("faces-flatness-read", "#/faces/flatness/rear"),
    ("faces-grid", "#/faces/grid/front"),
    ("faces-grid-read", "#/faces/grid/rear"),
    ("faces-places", "#/faces/own-places/front"),
    ("faces-places-rows", "#/faces/own-places/rear"),
    ("faces-straightedge", "#/faces/straightedge/front"),
    ("faces-straightedge-read", "#/faces/straightedge/rear"),
    ("faces-lapping", "#/faces/lapping/front"),
    ("faces-ledger", "#/faces/ledger/front"),
    ("faces-width", "#/faces/housing-width/rotor-1"),
    ("faces-rotor-read", "#/faces/rotor-width/rotor-2"),
    ("faces-strip-read", "#/faces/plastic-gauge/rotor-1"),
    ("faces-bore", "#/faces/bore/rotor-1"),
    ("faces-runout", "#/faces/runout-eight/front-end"),
    ("faces-spacers", "#/faces/spacers"),
    ("faces-end-play", "#/faces/end-play"),
    ("faces-stack", "#/faces/stack"),
    ("work", "#/work"),
    ("work-step", "#/work/step/outside"),
    ("work-route", "#/work/route"),
    ("work-edit", "#/work/route/outside"),
    ("work-describe", "#/work/describe"),
    ("work-decisions", "#/work/decisions"),
    ("work-compression", "#/work/compression/1"),
    ("work-builds", "#/work/builds"),
    ("work-compare", "#/work/compare/side-seal-gap-fi"),
    ("work-sheet", "#/work/sheet"),
    ("work-sign-off", "#/work/sign-off"),
    ("book", "#/book"),
    ("take-in", "#/take-in"),
    ("entry", "#/entry/ENTRY"),
    ("gauges", "#/gauges"),
    ("settings", "#/settings"),
    ("find", "#/find"),
    ("help", "#/help/end-play"),
];

/// The words and names that a person may type have no place to break.
pub const LONG: &str = "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW";

/// A phone on which two builds are open, with words as long as a person may type; and an entry's id.
#[must_use]
pub fn with_a_full_book(phone: Phone, server: &Server) -> (Browser, String) {
    with_a_full_book_in(Engine::chosen(), phone, server)
}

/// As [`with_a_full_book`], in a browser of any engine.
#[must_use]
pub fn with_a_full_book_in(engine: Engine, phone: Phone, server: &Server) -> (Browser, String) {
    let browser = Browser::open_in(engine, phone, Profile::fresh(), server.url());
    browser.open_build(LONG);
    browser.go("#/open");
    browser.tap(&button("Open the demo engine (invented figures)"));
    browser.until_notice("Written");
    fill_in(&browser);
    browser.go("#/mark/1F-BC");
    browser.fill(&textbox("As scribed on the part"), LONG);
    browser.tap(&button("Write down"));
    browser.until_notice("Written");
    browser.go("#/check/side-seal-gap-fi/1F-BC");
    browser.fill(&textbox("Reading"), "0.0555 in");
    browser.tap(&button("Write down"));
    browser.until_notice("Written 0.0555");
    browser.go("#/book");
    browser.fill(&textbox("Note"), LONG);
    browser.tap(&button("Write down"));
    browser.until_notice("Written a note");
    browser.tap(&link("0.0555 in").starting());
    let id = browser.until_some("an entry's own place", |browser| {
        browser.place().strip_prefix("#/entry/").map(str::to_owned)
    });
    (browser, id)
}

/// Goes to every place, and to the states of a check and of a conversion that have to be typed first.
pub fn each_place(browser: &Browser, id: &str, mut look: impl FnMut(&str)) {
    for (name, place) in PLACES {
        browser.go(&place.replace("ENTRY", id));
        look(name);
    }
    // States that have to be typed first.
    for (name, typed) in [("meets", "2½"), ("fails", "5"), ("close", "1.5"), ("bad", "abc")] {
        browser.go("#/check/side-seal-gap-fi/1F-AB");
        browser.fill(&textbox("Reading"), typed);
        look(&format!("check-{name}"));
    }
    browser.fill(&textbox("Reading"), "");
    for (name, typed) in [("found", "end paly"), ("nothing", LONG)] {
        browser.go("#/find");
        browser.fill(&searchbox("Find"), typed);
        look(&format!("find-{name}"));
    }
    for (name, typed) in [("figure", "0.0025 in"), ("tolerance", "11±0.3 mm")] {
        browser.go("#/convert");
        browser.fill(&textbox("Figure"), typed);
        look(&format!("convert-{name}"));
    }
    browser.fill(&textbox("Figure"), "");
}
