//! The demo engine from intake to a signed-off sheet on paper, through the screens.

use pitleaf_core::limits::place_words;
use pitleaf_tests::{Browser, Page, Server, button, link, list, textbox};
use std::collections::BTreeMap;
use std::path::PathBuf;

/// Every step of the shipped route, in its order, as the tool leads from one to the next.
#[test]
fn the_demo_goes_from_intake_to_a_signed_sheet() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_demo();
    // What the book itself answers is put in where it belongs.
    phone.go("#/joints/order");
    phone.tap(&button("By name only"));
    phone.fill(&textbox("Names in the order of their turn"), "2 4 1 3");
    phone.fill(&textbox("Full torque"), "38");
    phone.until_says("12.5 N·m");
    phone.tap(&button("Write the order down and start"));
    for pass in 1..=4 {
        phone.tap(&button(&format!("Pass {pass} is done")));
    }
    phone.until_says("All passes done");
    phone.go("#/check/side-housing-warp/rear");
    phone.tap_keys(&["0", "Decimal point", "3", "0"]);
    phone.tap(&button("Write down"));
    phone.until_notice("Written 0.30 mm");
    phone.go("#/work/decisions");
    for (part, why) in [
        ("rear Side housing, warp", "one hillclimb only, then lapped"),
        ("Rotor 2, face 2", "measured before the rebuild"),
    ] {
        phone.fill(&textbox("Why"), why);
        phone.tap(&button(&format!("accept {part}")).starting());
        phone.until_notice("Written accept");
        phone.until_says(&format!("accept: {why}"));
    }

    // Others may be too close to call.
    while let Some(accept) = undecided(&phone) {
        phone.fill(&textbox("Why"), "measured before the rebuild");
        phone.tap(&button(&accept));
        phone.until("it is decided", |phone| undecided(phone).as_ref() != Some(&accept));
    }

    phone.tap_screen("Bench");
    phone.tap(&link("What was I doing?").starting());
    let (mut walked, mut measured) = (0, 0);
    while phone.place().starts_with("#/work/step/") {
        measured += walk(&phone);
        walked += 1;
        assert!(walked < 400, "the route has an end");
    }
    phone.until_says("Every step is done");
    assert!(measured > 70, "every piece of every measure: {measured}");
    let done = phone.facts().iter().filter(|fact| fact["route"][0] == "done").count();
    assert!(done > 70, "what the hands did, for every rotor, face and housing: {done}");

    phone.go("#/work/sign-off");
    phone.until_says("Nothing is open.");
    phone.tap(&button("Sign the build off"));
    phone.until_says("Say who signs it off.");
    phone.fill(&textbox("By whom"), "S. of Saltmarsh");
    phone.tap(&button("Sign the build off"));
    phone.until_says("This build is signed off");

    phone.go("#/work/sheet");
    phone.until_says("Signed off by");
    for (paper, size) in [("A4", (210.0, 297.0)), ("Letter", (215.9, 279.4))] {
        for copy in ["Customer’s", "Shop’s"] {
            phone.tap(&button(paper));
            phone.tap(&button(copy));
            phone.two_frames();
            let folder = sheets();
            let name = format!("{paper}-{}", &copy[..4]);
            let pages = phone.print_words(&folder.join(name));
            on_paper(&phone, &pages, size);
        }
        // The cut ports' templates, at their true size, on sheets of their own.
        phone.tap(&button("With templates"));
        phone.two_frames();
        let sheets = phone.print();
        let bars = |width| {
            let bars = sheets.iter().flat_map(move |sheet| sheet.boxes(width, 4.0));
            bars.filter(|[left, _, right, _]| (right - left - width).abs() <= 0.1).count()
        };
        assert_eq!((bars(50.0), bars(50.8)), (2, 2), "a bar of 50 mm and of 2 in on either half");
        phone.tap(&button("Without templates"));
    }
}

/// The key that accepts the first reading nothing was decided of.
fn undecided(phone: &Browser) -> Option<String> {
    let name = phone.run(
        "const open = [...document.querySelectorAll('.finding')]
             .find((one) => one.innerText.includes('not decided'));
         return open?.querySelector('button[aria-label^=accept]')?.ariaLabel ?? null;",
        &[],
    );
    name.as_str().map(str::to_owned)
}

/// Where pictures of the printed sheets go, to be looked at.
fn sheets() -> PathBuf {
    let test = std::env::current_exe().expect("the place of this test");
    let folder = test.ancestors().nth(3).expect("a target folder").join("sheets");
    std::fs::create_dir_all(&folder).expect("a folder for the pictures");
    folder
}

/// Everything stands within the margins, and the book's figures are all there.
#[track_caller]
fn on_paper(phone: &Browser, pages: &[Page], (width, height): (f64, f64)) {
    for (page, number) in pages.iter().zip(1..) {
        let (across, down) = page.size;
        // Chromium gives a page's size in whole pixels of 1/96 in.
        assert!((across - width).abs() <= 0.27 && (down - height).abs() <= 0.27, "{:?}", page.size);
        assert!(page.words.len() > 20, "hardly anything on a sheet: {}", page.text());
        let foot = format!("Page {number} of {}", pages.len());
        assert!(page.text().ends_with(&foot), "no “{foot}”: {}", page.text());
        let (words, _) = page.words.split_last_chunk::<4>().expect("more than its foot");
        for (word, [left, top, right, bottom]) in words {
            let is_in =
                *left >= 13.0 && *top >= 13.0 && *right <= width - 13.0 && *bottom <= height - 13.0;
            assert!(is_in, "“{word}” stands out of the margins: {left} {top} {right} {bottom}");
        }
    }
    let paper = pages.iter().map(Page::text).collect::<Vec<_>>().join(" ");
    let mut last = BTreeMap::new();
    for fact in phone.facts() {
        if let Some(figure) = fact.get("figure") {
            let text = |name: &str| figure[name].as_str().unwrap_or_default().to_owned();
            last.insert((text("row"), text("place")), format!("{} {}", text("text"), text("unit")));
        }
    }
    assert!(last.len() > 60, "what the walk measured: {last:?}");
    for ((_, place), figure) in &last {
        assert!(paper.contains(figure.as_str()), "{place} {figure} is not on the paper:\n{paper}");
        let of =
            if place.is_empty() { String::new() } else { format!("{} ·", place_words(place)) };
        assert!(paper.contains(&of), "{of} is not on the paper");
    }
    for words in [
        "two dots and a short line",
        "38 N·m",
        "720 kPa",
        "S. of Saltmarsh",
        "flaked at the spark plugs",
        "measured before the rebuild",
        "local rules stand above",
    ] {
        assert!(paper.contains(words), "{words} is not on the paper:\n{paper}");
    }
}

/// What the walk reads on each row: the figure and its unit, as the key has it.
const READ: &[(&str, &str, &str)] = &[
    ("apex-seal-gap-fi", "mm", "0.19"),
    ("apex-seal-slot-clearance", "mm", "0.08"),
    ("coolant-pressure-loss", "kPa", "2"),
    ("corner-seal-clearance", "mm", "0.034"),
    ("end-play", "mm", "0.055"),
    ("flywheel-nut-torque", "N·m", "440"),
    ("front-bolt-torque", "N·m", "118"),
    ("main-bearing-clearance", "mm", "0.06"),
    ("oil-pressure-idle", "kPa", "180"),
    ("oil-seal-protrusion", "mm", "0.62"),
    ("plug-gap", "mm", "0.65"),
    ("rotor-bearing-clearance", "mm", "0.06"),
    ("rotor-housing-pair-spread", "mm", "0.01"),
    ("rotor-housing-width", "mm", "79.98"),
    ("rotor-housing-width-spread", "mm", "0.02"),
    ("rotor-land-protrusion", "mm", "0.15"),
    ("rotor-mass-spread", "g", "2"),
    ("rotor-side-clearance", "mm", "0.16"),
    ("shaft-runout", "mm", "0.02"),
    ("shaft-unbalance", "g·mm", "12"),
    ("side-housing-lapped-off", "mm", "0.04"),
    ("side-housing-roughness", "µm", "0.4"),
    ("side-housing-step-side-seal", "mm", "0.03"),
    ("side-housing-thickness-spread", "mm", "0.01"),
    ("side-housing-warp", "mm", "0.02"),
    ("side-seal-gap-fi", "mm", "0.07"),
    ("side-seal-slot-clearance", "mm", "0.05"),
];

/// The pieces of the step on the screen that are not read yet; none where it is no measure.
fn unread(phone: &Browser) -> Vec<String> {
    let pieces = phone.run(
        "return [...document.querySelectorAll('ul[aria-label=Readings] a')]
             .filter((line) => line.innerText.includes('Read it'))
             .map((line) => line.querySelector('b').innerText)",
        &[],
    );
    let pieces = pieces.as_array().expect("a list");
    pieces.iter().map(|piece| piece.as_str().expect("a name").to_owned()).collect()
}

/// Reads a piece of the step on the screen through its check, and comes back to the step.
fn measure(phone: &Browser, piece: &str) {
    let step = phone.place();
    phone.tap(&link(piece).starting());
    let check = phone.until_some("its check", |phone| {
        Some(phone.place().strip_prefix("#/work/check/")?.to_owned())
    });
    let row = check.split('/').next().unwrap_or_default();
    let (_, unit, text) = READ.iter().find(|(id, ..)| *id == row).expect("a figure for the row");
    let shown = phone.until_some("the unit in hand", |phone| {
        let unit = phone.run("return document.querySelector('.figure-unit')?.innerText", &[]);
        Some(unit.as_str()?.to_owned())
    });
    if shown != *unit {
        phone.tap(&button(unit));
    }
    for sign in text.chars() {
        let key = if sign == '.' { "Decimal point".to_owned() } else { sign.to_string() };
        phone.tap(&button(&key));
    }
    phone.tap(&button("Write down"));
    phone.until("back at the step", |phone| phone.place() == step);
}

/// Does the step on the screen, goes to the next, and gives how many pieces it measured. A reason goes over
/// what is done with the hands alone.
fn walk(phone: &Browser) -> usize {
    let here = phone.place();
    let kind = phone.until_some("the step", |phone| {
        let kind = phone.run("return document.querySelector('.step-kind')?.innerText", &[]);
        Some(kind.as_str()?.to_owned())
    });
    let pieces = unread(phone);
    if !pieces.is_empty() {
        pieces.iter().for_each(|piece| measure(phone, piece));
        phone.until_says("The book has it so.");
        let read = phone.text(&list("Readings"));
        // What lapping takes off has no limit of its own: it is read, and has no verdict.
        let answer = if here.contains("/lapped-off") { "Read" } else { "Meets" };
        assert!(read.matches(answer).count() >= pieces.len(), "{here}: {read}");
        phone.tap_screen("Bench");
        phone.tap(&link("What was I doing?").starting());
        phone.until("the next step", |phone| phone.place() != "#/");
        phone.two_frames();
        return pieces.len();
    }
    assert!(!kind.starts_with("Measure"), "{here} is measured: {kind}");
    let key = phone.until_some("the step’s key", |phone| {
        ["Done", "It is true"].map(button).into_iter().find(|key| phone.shows(key))
    });
    phone.tap(&key);
    let refused = phone.until_some("the next step, or a sentence", |phone| {
        if phone.place() != here {
            return Some(false);
        }
        phone.words().contains("Not marked:").then_some(true)
    });
    if refused {
        phone.fill(&textbox("Why all the same"), "walked through by the test");
        phone.tap(&key);
        phone.until("the next step", |phone| phone.place() != here);
    }
    phone.two_frames();
    0
}
