//! The build sheet against the book.

use super::Shop;
use pitleaf_core::book::{Face, Fact, Slot, Subject};
use pitleaf_core::faces::{ReadingSet, Survey};
use pitleaf_core::joints::bolts::Bolts;
use pitleaf_core::joints::plan::Plan;
use pitleaf_core::limits::{BuildKind, decide, limit_line};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{
    BuildSheet, Choice, Copy, HOW_COMPARED, RouteFact, Row, Section, decide_on, past_limits,
};
use pitleaf_core::seals::Drawing;
use pitleaf_core::trochoid::TypedEngine;

pub(super) fn sheet(shop: &Shop, copy: Copy) -> BuildSheet {
    // The shop's clock, as far as the tests need one: the entry's number.
    let moment = |at: u64| format!("at {}", at - 1_800_000_000_000);
    BuildSheet::of(&shop.book, &shop.build, &shop.sheet(), copy, &moment)
        .expect("the build is open")
}

pub(super) fn section<'a>(sheet: &'a BuildSheet, heading: &str) -> &'a Section {
    let found = sheet.sections.iter().find(|section| section.heading == heading);
    found.unwrap_or_else(|| panic!("no section {heading}"))
}

/// The demo, with a part past its limit, a tightening and a note of the shop.
fn shop() -> Shop {
    let mut shop = Shop::demo();
    shop.read("side-housing-warp", "rear", "0.30", Unit::Millimetre);
    shop.route(
        decide_on("side-housing-warp", "rear", Choice::Accept, "one race only").expect("taken"),
    );
    let plan = Plan::read(
        "Tension bolts",
        Bolts::circle(4).expect("four"),
        "",
        "50, 100",
        "38",
        Unit::NewtonMetre,
    )
    .expect("a plan");
    shop.write(plan.fact());
    shop.write(plan.tightened(1, "", Unit::NewtonMetre).expect("no reading").expect("a pass"));
    shop
}

/// Every figure of the demo and of the shop stands in the sheet as it stands in the book: the text as
/// typed, the verdict by the same decision, the limit and its source.
#[test]
fn every_figure_of_the_book_stands_in_it() {
    let shop = shop();
    let limits = shop.sheet();
    let printed = sheet(&shop, Copy::Customer);
    let readings = section(&printed, "Readings against their limits");
    let mut count = 0;
    for entry in shop.book.entries() {
        let Fact::Figure(figure) = &entry.fact else { continue };
        count += 1;
        let row = limits.row(&figure.row).expect("a row");
        let name = format!("{} · {}", figure.place, row.what);
        let line = readings.rows.iter().find(|line| line.cells[0] == name);
        let line = line.unwrap_or_else(|| panic!("{name} is missing"));
        let reading = figure.reading().expect("a reading");
        let verdict = decide(&row.limit, &reading, &limits.gauge(figure.gauge));
        assert_eq!(line.cells.len(), readings.heads.len(), "a cell for each head");
        assert_eq!(line.cells[1], format!("{} {}", figure.text, figure.unit.symbol()), "{name}");
        assert!(
            line.cells[3].starts_with(&limit_line(&row.limit, figure.unit)),
            "{name}: {:?}",
            line.cells
        );
        assert!(line.cells[4].starts_with(verdict.call.word()), "{name}: {:?}", line.cells);
        assert_eq!(line.call, Some(verdict.call), "{name}");
        assert!(line.cells[5].starts_with(figure.gauge.name()), "{name}: {:?}", line.cells);
        assert_eq!(line.cells[6], row.source.kind(), "{name}");
    }
    assert_eq!(readings.rows.len(), count, "and nothing else");
    assert_eq!(count, 5, "four gaps and a warp");
}

/// By hand: 2½ thou is 0.0635 mm; u² = (10 µm)²/12 + (3 µm)²/3, and 1.65 u = 5.55 µm = 0.2187 thou, rounded up.
#[test]
fn a_reading_stands_in_both_systems() {
    let printed = sheet(&shop(), Copy::Customer);
    let readings = section(&printed, "Readings against their limits");
    let gap = readings.rows.iter().find(|line| line.cells[0].starts_with("1F-BC")).expect("a gap");
    assert_eq!(
        gap.cells,
        [
            "1F-BC · Side seal to corner seal, forced induction",
            "2½ thou",
            "0.0635 mm",
            "1.5…4.0\u{a0}thou\n0.0381…0.1016\u{a0}mm",
            "Meets",
            "feeler leaf\n±0.22 thou",
            "common practice"
        ],
        "the line"
    );
}

#[test]
fn slots_marks_ports_passes_and_decisions_stand_in_it() {
    let shop = shop();
    let printed = sheet(&shop, Copy::Customer);
    let slots = section(&printed, "Side-seal slots");
    for slot in Slot::of_engine(2) {
        let line = slots.rows.iter().find(|line| line.cells[0] == slot.to_string());
        let mark = shop.book.mark(&shop.build, slot);
        assert_eq!(line.map(|line| line.cells[1].as_str()), mark, "{slot}");
    }
    assert_eq!(slots.rows[0].cells[5], "fitted", "the first is");
    let ports = section(&printed, "Ports");
    let figures = shop.book.entries().filter_map(|entry| match &entry.fact {
        Fact::Outline(outline) => Some(outline.figures.clone()),
        _ => None,
    });
    let printed_figures: Vec<String> =
        ports.rows.iter().map(|line| line.cells[2].clone()).collect();
    for figures in figures {
        assert!(
            !figures.is_empty() && printed_figures.contains(&figures),
            "{figures} in {printed_figures:?}"
        );
    }
    let tightening = section(&printed, "Tightening");
    let passes: Vec<String> = tightening.rows.iter().map(|line| line.cells.join(" | ")).collect();
    assert_eq!(
        passes,
        [
            "Tension bolts | 1 of 3 | 19.0 N·m | A-C-B-D | done at 19.0 N·m",
            "Tension bolts | 2 of 3 | 38 N·m | A-C-B-D | to do",
            "Tension bolts | 3 of 3 | 38 N·m | A-B-C-D | to do",
        ],
        "its passes"
    );
    let decisions =
        section(&printed, "Past a limit or too close to call, and what became of parts");
    let lines: Vec<String> = decisions.rows.iter().map(|line| line.cells.join(" | ")).collect();
    assert_eq!(
        lines,
        [
            "rear Side housing, warp | 0.30 mm\nDoes not meet | accept | one race only",
            "Rotor 1, face 2 Compression, each face, forced induction | 710 kPa\nToo close to call | not decided | ",
            "Rotor 1, face 3 Compression, each face, forced induction | 705 kPa\nToo close to call | not decided | ",
            "Rotor 2, face 1 Compression, each face, forced induction | 690 kPa\nToo close to call | not decided | ",
            "Rotor 2, face 2 Compression, each face, forced induction | 560 kPa\nDoes not meet | not decided | ",
            "Rotor 2, face 3 Compression, each face, forced induction | 700 kPa\nToo close to call | not decided | ",
            "rotor-housing 2 |  | replace | flaked at the spark plugs"
        ],
        "what became of them"
    );
    let readings = section(&printed, "Readings against their limits");
    let warp =
        readings.rows.iter().find(|line| line.cells[0].starts_with("rear")).expect("the warp");
    assert_eq!(warp.cells[4], "Does not meet\naccept: one race only", "beside its verdict too");
}

/// A mark may be drawn alone, or beside its words; it stands in the cell of the marks.
#[test]
fn a_drawn_mark_stands_at_its_slot() {
    let mut shop = shop();
    let drawing = |x| Drawing::of(vec![vec![[x, 20], [x, 200]]]).expect("a line");
    let at = |shop: &Shop, slot: &str| {
        let printed = sheet(shop, Copy::Customer);
        let slots = section(&printed, "Side-seal slots");
        assert_eq!(slots.heads[1], "Mark", "where marks stand");
        let line = slots.rows.iter().find(|line| line.cells[0] == slot);
        line.map(|line| (line.cells[1].clone(), line.drawing.clone()))
    };
    let worded = Slot::new(1, Face::Front, 0).expect("a slot");
    let bare = Slot::new(2, Face::Rear, 2).expect("a slot");
    assert_eq!(at(&shop, "1F-AB"), Some(("two dots".to_owned(), None)), "in words alone");
    assert_eq!(at(&shop, "2R-CA"), None, "nothing known of it");
    shop.write(Fact::Drawing { slot: worded, drawing: drawing(10) });
    shop.write(Fact::Drawing { slot: bare, drawing: drawing(30) });
    let wanted = Some(("two dots".to_owned(), Some((1, drawing(10)))));
    assert_eq!(at(&shop, "1F-AB"), wanted, "beside its words");
    assert_eq!(at(&shop, "2R-CA"), Some((String::new(), Some((1, drawing(30))))), "drawn alone");
    shop.withdraw_last();
    assert_eq!(at(&shop, "2R-CA"), None, "withdrawn");
}

#[test]
fn compression_stands_in_it_with_its_conditions() {
    let shop = shop();
    let printed = sheet(&shop, Copy::Customer);
    let compression = section(&printed, "Compression");
    let read: Vec<&str> = compression.rows.iter().map(|line| line.cells[1].as_str()).collect();
    assert_eq!(
        read,
        [
            "720 kPa", "710 kPa", "705 kPa", "15 kPa", "690 kPa", "560 kPa", "700 kPa", "140 kPa",
            "62 kPa"
        ],
        "faces, spreads, evenness"
    );
    assert_eq!(
        compression.says,
        format!(
            "Rotor 1: cranked at 250 /min, 120 m above the sea. Rotor 2: cranked at 250 /min, 120 m above the sea. {HOW_COMPARED}"
        ),
        "how it was read"
    );
}

#[test]
fn what_was_decided_of_a_compression_stands_beside_its_verdict() {
    let mut shop = shop();
    let said = |shop: &Shop| {
        let printed = sheet(shop, Copy::Customer);
        let found = section(&printed, "Compression").rows.iter().map(|line| line.cells[5].clone());
        found.collect::<Vec<_>>()
    };
    // By hand: 120 m are 1.44 %; the tester's ±32 kPa in steps of 10 and 30 hPa of weather leave 37 kPa in doubt.
    let close = "Too close to call";
    let mut wanted =
        vec!["Meets", close, close, "Meets", close, "Does not meet", close, "Meets", "Meets"];
    assert_eq!(said(&shop), wanted, "730, 720, 715 and 700, 568, 710 kPa at the sea");
    shop.route(
        decide_on("compression-fi", "Rotor 2, face 2", Choice::Accept, "sold as it is")
            .expect("taken"),
    );
    wanted[5] = "Does not meet\naccept: sold as it is";
    assert_eq!(said(&shop), wanted, "accepted");
    let printed = sheet(&shop, Copy::Customer);
    let decisions =
        section(&printed, "Past a limit or too close to call, and what became of parts");
    let is_low = |line: &&Row| line.cells[0].starts_with("Rotor 2, face 2");
    let line = decisions.rows.iter().find(is_low).expect("the low face");
    assert_eq!(line.cells[2..], ["accept", "sold as it is"], "and among the decisions");
}

#[test]
fn the_shops_copy_has_every_step_and_the_customers_has_none() {
    let mut shop = shop();
    shop.mark("drained", "J.", "came dry");
    let steps = |copy: Copy| {
        let printed = sheet(&shop, copy);
        printed.sections.iter().find(|section| section.heading == "Steps").map(|s| s.rows.clone())
    };
    assert_eq!(steps(Copy::Customer), None, "the customer’s");
    let rows = steps(Copy::Shop).expect("the shop’s");
    assert_eq!(rows.len(), shop.progress().standings.len(), "all of them");
    let drained =
        rows.iter().find(|line| line.cells[1].starts_with("Oil, coolant and fuel")).expect("it");
    let at = format!("at {}", shop.order);
    assert_eq!(drained.cells[2..], ["done", "J.", &at, "came dry"], "by whom, when, and why");
    let land =
        rows.iter().find(|line| line.cells[1].starts_with("Height of the land")).expect("it");
    assert_eq!(land.cells[2..], ["open", "", "", ""], "nobody yet");
}

#[test]
fn what_the_customer_said_the_sign_off_and_the_foot_stand_in_it() {
    let mut shop = shop();
    let printed = sheet(&shop, Copy::Customer);
    assert!(
        printed.under.iter().any(|line| line.starts_with("Not signed off")),
        "{:?}",
        printed.under
    );
    assert!(
        printed.foot.iter().any(|line| line.contains("local rules stand above")),
        "the caution"
    );
    let engine = section(&printed, "Engine");
    let wish = engine.rows.iter().find(|line| line.cells[0] == "The customer’s words").expect("it");
    assert!(wish.cells[1].starts_with("Hard to start when hot"), "{:?}", wish.cells);
    let open = pitleaf_core::route::OpenPoints::of(&shop.book, &shop.build, &shop.sheet());
    let facts = open.sign("J.", "a demo").expect("with a reason");
    facts.into_iter().for_each(|fact| shop.write(fact));
    let printed = sheet(&shop, Copy::Customer);
    let signed = section(&printed, "Sign-off");
    assert_eq!(signed.rows[0].cells, ["Signed off by", "J."], "by whom");
    assert_eq!(signed.rows[1].cells, ["When", &format!("at {}", shop.order)], "when");
    assert!(signed.rows[2].cells[1].ends_with("open: a demo"), "{:?}", signed.rows);
    assert!(
        !printed.under.iter().any(|line| line.starts_with("Not signed off")),
        "{:?}",
        printed.under
    );
}

/// What a spacer would give was not measured: it fails nobody's engine, and is no open point.
#[test]
fn what_is_only_predicted_stands_on_no_sheet() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let typed = |of, texts: &[&str]| {
        let texts: Vec<String> = texts.iter().map(|text| (*text).to_owned()).collect();
        Fact::Readings(ReadingSet::typed(of, "", Unit::Millimetre, &texts))
    };
    shop.write(typed(Survey::Spacers, &["8.02", "8.04"]));
    shop.write(typed(Survey::EndPlay, &["0.115", "0.115", "0.115", "8.00"]));
    for copy in [Copy::Customer, Copy::Shop] {
        let printed = sheet(&shop, copy);
        let found = &section(&printed, "Surveys").rows;
        let play = found.iter().filter(|line| line.cells[1].starts_with("0.115 mm"));
        assert!(play.count() > 0, "the play that was read: {found:?}");
        for line in found {
            assert!(!line.cells[0].contains("spacer"), "{line:?}");
            assert!(line.call.is_none() || line.cells[1].starts_with("0.115 mm"), "{line:?}");
        }
    }
    let limits = shop.sheet();
    let past = past_limits(&shop.book, &shop.build, &limits);
    let past: Vec<_> = past.iter().map(|past| past.reading.as_str()).collect();
    assert_eq!(past, ["0.115 mm · 4.53 thou"], "the reading alone");
}

/// A withdrawn reading stands in it no longer; one written over stands beside the later.
#[test]
fn it_follows_the_book() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.read("end-play", "", "0.050", Unit::Millimetre);
    shop.read("end-play", "", "0.060", Unit::Millimetre);
    let read = |shop: &Shop| {
        let printed = sheet(shop, Copy::Customer);
        section(&printed, "Readings against their limits")
            .rows
            .iter()
            .map(|line| line.cells[1].clone())
            .collect::<Vec<_>>()
    };
    assert_eq!(read(&shop), ["0.060 mm\nwas 0.050 mm"], "the later, and what it was before");
    shop.withdraw_last();
    assert_eq!(read(&shop), ["0.050 mm"], "the one before it");
    let subject = Subject::Route(RouteFact::LeftAt { step: String::new() }.subject());
    assert!(shop.book.current(&shop.build, &subject).is_none(), "nothing was left anywhere");
}

/// An engine put in with a version that counted its chambers too large; put in anew, nothing is left to say.
#[test]
fn an_engine_of_an_earlier_version_says_what_changed() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let says = |shop: &Shop| {
        let sheet = sheet(shop, Copy::Customer);
        let rows = section(&sheet, "Engine").rows.clone();
        rows.into_iter()
            .find(|row| row.cells[0] == "Ratio and recess")
            .map(|row| row.cells[1].clone())
    };
    shop.write(Fact::Engine(TypedEngine { noses: false, ..TypedEngine::preset() }));
    let said = says(&shop).expect("the correction");
    assert!(said.contains("11.13 cm³ too large"), "{said}");
    assert!(said.contains("it said 14.08 : 1; it is 17.82 : 1"), "{said}");
    shop.write(Fact::Engine(TypedEngine::preset()));
    assert_eq!(says(&shop), None, "put in anew");
}
