//! Every figure that stands in a field before anybody typed one, and what holds it.
//!
//! A default is either held by a check against the outside at that very value, or it is an assumption, which then
//! stands here as one. A new default without a row fails; so does a row whose check is gone.

use pitleaf_core::seals::{RUNNING, USUAL_SETS, usual_tolerance};
use pitleaf_core::trochoid::{Measure, TypedEngine};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// What holds a default.
enum Held {
    /// A test of this folder, which names its source: its file, and its function.
    Check(&'static str, &'static str),
    /// Nothing outside: why it stands there all the same. The builder's own figure replaces it.
    Assumed(&'static str),
}
use Held::{Assumed, Check};

/// Where it stands, the figure, and what holds it.
const DEFAULTS: &[(&str, &str, Held)] = &[
    (
        "engine: eccentricity",
        "15",
        Check("trochoid_published", "displacement_with_an_offset_is_not_that_of_the_longer_radius"),
    ),
    (
        "engine: generating radius",
        "102",
        Check("trochoid_published", "displacement_with_an_offset_is_not_that_of_the_longer_radius"),
    ),
    (
        "engine: apex-seal offset",
        "3",
        Check("trochoid_published", "displacement_with_an_offset_is_not_that_of_the_longer_radius"),
    ),
    (
        "engine: housing width",
        "80",
        Check("trochoid_published", "displacement_with_an_offset_is_not_that_of_the_longer_radius"),
    ),
    (
        "engine: corner seal's distance from the rotor's centre",
        "97.5",
        Assumed("a size to start from, invented to fit the shape"),
    ),
    (
        "engine: corner seal's radius",
        "5.5",
        Assumed("a size to start from, invented to fit the shape"),
    ),
    ("engine: side seal's inset", "4", Assumed("a size to start from, invented to fit the shape")),
    ("engine: oil seal's radius", "56", Assumed("a size to start from, invented to fit the shape")),
    (
        "engine: coolant land's distance",
        "6",
        Assumed("a size to start from, invented to fit the shape"),
    ),
    ("hot gap: running", "120", Assumed("from memory, and broad: the coldest a rotor runs")),
    ("hot gap: running", "140", Assumed("from memory, and broad: the coldest a seal runs")),
    ("hot gap: running", "200", Assumed("from memory, and broad: the hottest a rotor runs")),
    ("hot gap: running", "230", Assumed("from memory, and broad: the hottest a seal runs")),
    (
        "leaves: Metric, 8 leaves",
        "0.05 to 0.50",
        Check("seals/leaves", "the_usual_sets_are_those_of_their_series"),
    ),
    (
        "leaves: Metric, 20 leaves",
        "0.05 to 1.00",
        Check("seals/leaves", "the_usual_sets_are_those_of_their_series"),
    ),
    ("leaves: Metric, with the thin leaves", "0.03 to 0.50", Assumed("a common set, from memory")),
    ("leaves: Inch, thin leaves", "0.0015 to 0.015", Assumed("a common set, from memory")),
    ("leaves: Inch, 25 leaves", "0.0015 to 0.035", Assumed("a common set, from memory")),
    ("leaves: tolerance", "3 µm", Assumed("from memory, of the order of DIN 2275’s")),
    ("fits", "7", Check("joints/fits", "limits_are_the_published_ones")),
    ("fits", "6", Check("joints/fits", "limits_are_the_published_ones")),
    ("hot_clamp", "20", Check("joints/heat", "a_stack_with_aluminium_grows_past_its_bolts")),
    (
        "hot_dowels",
        "20",
        Check("joints/heat", "two_tight_dowels_fight_what_one_part_grows_past_the_other"),
    ),
    ("oil_line", "850", Check("joints/oil_line", "a_drawn_tube_as_the_form_offers_it")),
    ("oil_line", "1.5", Check("joints/oil_line", "a_drawn_tube_as_the_form_offers_it")),
    ("oil_line", "90", Assumed("oil of a warm engine, from memory")),
    ("oil_line", "0", Assumed("no fitting, until one is counted")),
    ("order", "33, 67, 100", Assumed("thirds of the full torque: common practice, no source")),
    ("press", "0", Assumed("a solid pin, until a hole is typed")),
    ("press", "0.08…0.20", Assumed("from memory: dry to oiled steel on metal")),
    ("press", "20", Check("joints/press", "a_pin_dropped_in_with_the_gap_the_form_offers")),
    ("press", "90", Assumed("about a coolant’s temperature, from memory")),
    ("slip", "2", Assumed("two dowels a face: common practice, no source")),
    ("slip", "0.10…0.20", Check("joints/slip", "friction_and_dowels_stand_side_by_side")),
    ("slip", "2…5", Assumed("from memory: nobody knows a rotor’s peak torque well")),
    ("slip", "300…500", Assumed("from memory: soft to hardened dowels")),
    ("slip", "150…300", Assumed("from memory: cast aluminium to iron")),
    ("stack", "0", Assumed("no studs, until they are counted")),
    ("stack", "45", Assumed("about where pressure and arm are greatest together, from memory")),
    (
        "stack",
        "0…0.3",
        Assumed("from memory; a published joint has 0.32 (Shigley, 9th ed., example 8-3)"),
    ),
];

fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).to_owned()
}

/// What stands between the bracket that opens at the head of a text and its own end.
fn inside(text: &str) -> &str {
    let mut depth = 0_i32;
    for (at, letter) in text.char_indices() {
        depth += match letter {
            '(' | '[' => 1,
            ')' | ']' => -1,
            _ => 0,
        };
        if depth == 0 {
            return &text[1..at];
        }
    }
    text
}

/// Every figure a field of a form begins with: the last thing its call is given, where that has a digit.
fn of_forms() -> BTreeSet<(String, String)> {
    let folder = top().join("../app/src/screen/joints");
    let mut found = BTreeSet::new();
    for entry in fs::read_dir(folder).expect("the forms’ sources") {
        let path = entry.expect("an entry").path();
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let text = fs::read_to_string(&path).expect("a source");
        for kind in ["figure", "factor", "spread", "count", "words"] {
            for (at, call) in text.match_indices(&format!(".{kind}(")) {
                let given = inside(&text[at + call.len() - 1..]);
                let last = given.trim().trim_end_matches(',');
                // A name in place of a text: a constant of the same file.
                let word = last.rsplit([',', ' ']).next().unwrap_or(last);
                let constant = text.split_once(&format!("const {word}: &str = "));
                let literal =
                    constant.map_or(last, |(_, behind)| behind.lines().next().unwrap_or(""));
                let Some(default) = literal.rsplit('"').nth(1) else { continue };
                let is_last = literal.trim_end_matches([')', ';', ' ', '\n']).ends_with('"');
                if is_last && default.starts_with(|first: char| first.is_ascii_digit()) {
                    found.insert((name.clone(), default.to_owned()));
                }
            }
        }
    }
    found
}

fn of_core() -> BTreeSet<(String, String)> {
    let mut found = BTreeSet::new();
    for (measure, text) in Measure::ALL.iter().zip(TypedEngine::preset().texts) {
        found.insert((format!("engine: {}", measure.name().replace('’', "'")), text));
    }
    for (coldest, hottest) in RUNNING {
        for figure in [coldest, hottest] {
            found.insert(("hot gap: running".to_owned(), figure.to_owned()));
        }
    }
    for set in USUAL_SETS {
        let (first, last) = (set.marks[0], set.marks[set.marks.len() - 1]);
        found.insert((format!("leaves: {}", set.name), format!("{first} to {last}")));
    }
    let tolerance = usual_tolerance().expect("a length").amount();
    let micrometres = tolerance.exact_figure(pitleaf_core::quantity::Unit::Micrometre, 3);
    found.insert(("leaves: tolerance".to_owned(), format!("{} µm", micrometres.expect("whole"))));
    found
}

#[test]
fn every_default_has_what_holds_it() {
    let mut found = of_forms();
    assert!(found.len() >= 12, "the forms were not found: {found:?}");
    found.extend(of_core());
    let listed: BTreeSet<(String, String)> = DEFAULTS
        .iter()
        .map(|(place, figure, _)| ((*place).to_owned(), (*figure).to_owned()))
        .collect();
    let without: Vec<_> = found.difference(&listed).collect();
    assert!(without.is_empty(), "defaults that nothing is said of: {without:?}");
    let gone: Vec<_> = listed.difference(&found).collect();
    assert!(gone.is_empty(), "rows of defaults that are none any more: {gone:?}");
}

#[test]
fn every_check_named_is_there_and_every_assumption_says_why() {
    for (place, figure, held) in DEFAULTS {
        match held {
            Check(file, name) => {
                let path = top().join(format!("tests/{file}.rs"));
                let text = fs::read_to_string(&path).unwrap_or_default();
                assert!(
                    text.contains(&format!("fn {name}(")),
                    "{place} {figure}: no {file}::{name}"
                );
            }
            Assumed(why) => assert!(why.contains(' '), "{place} {figure}: say why"),
        }
    }
}
