//! Places that the builder gives, with their readings, as rows.

use super::read;
use super::survey::{finding, with};
use super::{close_to, mm};
use pitleaf_core::faces::report::levelled;
use pitleaf_core::faces::{ReadingSet, Survey};
use pitleaf_core::kept;
use pitleaf_core::limits::{Call, Side};
use pitleaf_core::quantity::Unit;

fn set(rows: &str, places_in: &str) -> ReadingSet {
    let texts = [rows.to_owned(), places_in.to_owned()];
    ReadingSet::typed(Survey::OwnPlaces, "rotor-1-front", Unit::Millimetre, &texts)
}

#[track_caller]
fn refused(rows: &str, sentence: &str) {
    let refused = read(&set(rows, "mm")).expect_err("no such row").to_string();
    assert_eq!(refused, sentence, "{rows:?}");
}

/// The grid of nine of `a_grid_of_nine`, ten times as high, its steps stretched to 40 and 25 mm: flatness
/// stays as it is when a face is stretched in its plane. 0.115 mm by the minimum zone, 0.120 by least squares.
const NINE: [[f64; 3]; 9] = [
    [40.0, -25.0, 0.00],
    [40.0, 0.0, 0.04],
    [40.0, 25.0, -0.02],
    [0.0, -25.0, 0.06],
    [0.0, 0.0, 0.10],
    [0.0, 25.0, 0.03],
    [-40.0, -25.0, -0.01],
    [-40.0, 0.0, 0.05],
    [-40.0, 25.0, 0.01],
];

fn nine(row: impl Fn([f64; 3]) -> String) -> String {
    NINE.map(row).join("\n")
}

#[test]
fn places_freely_given_give_the_flatness_of_the_face() {
    for (rows, places_in) in [
        (nine(|[x, y, z]| format!("{x} {y} {z}")), "mm"),
        (nine(|[x, y, z]| format!("{x};{y};{z}")).replace('.', ","), "mm"),
        (nine(|[x, y, z]| format!("{x}\t{y}\t{} um", z * 1000.0)), "mm"),
        (nine(|[x, y, z]| format!("{x} mm, {y} mm, {z}")), "in"),
        (nine(|[x, y, z]| format!("\n{x},{y},{z}")), "mm"),
        (nine(|[x, y, z]| format!("{} {} {z}", x / 20.0, y / 20.0)), "in"),
    ] {
        let all = with(&set(&rows, places_in), &[], None);
        let whole = finding(&all, "Flatness, whole face");
        assert_eq!(
            (whole.figure.as_str(), whole.call),
            ("0.115 mm · 4.53 thou", Some(Call::DoesNotMeet(Side::Above))),
            "{rows}"
        );
        assert!(whole.says.contains("By least squares 0.120 mm"), "compared: {}", whole.says);
    }
    let all = with(&set(&nine(|[x, y, z]| format!("{x} {y} {z}")), "mm"), &[], None);
    let high = &finding(&all, "High spots").says;
    assert!(high.starts_with("row 5 (0 mm, 0 mm)"), "{high}");
    assert!(finding(&all, "Low spots").says.contains("row 3 (40 mm, 25 mm)"), "by its place");

    // A lapping plan takes it where the face was read in no other way.
    let plan = ["", "", "0.005"].map(str::to_owned);
    let plan = ReadingSet::typed(Survey::Lapping, "rotor-1-front", Unit::Millimetre, &plan);
    let all = with(&plan, &[set(&nine(|[x, y, z]| format!("{x} {y} {z}")), "mm")], None);
    assert!(
        all[0].says.starts_with("Flatness from the readings written down last"),
        "{}",
        all[0].says
    );
}

/// Along is x of the housing; across runs towards 3 o'clock, away from its y.
#[test]
fn places_lie_where_they_were_measured() {
    let taken = read(&set("100 30 0\n0 60 0\n-100 -30 0.02\n4in 0 0", "mm")).expect("four rows");
    let at: Vec<_> = taken.places.iter().map(|place| place.at.expect("a place")).collect();
    for (at, [x, y]) in at.iter().zip([[100.0, -30.0], [0.0, -60.0], [-100.0, 30.0], [101.6, 0.0]])
    {
        close_to(at[0], x, 1e-9);
        close_to(at[1], y, 1e-9);
    }
    let shown = levelled(&taken).expect("a face to draw");
    assert_eq!(shown.points.len(), 4, "every place is drawn");
    assert_eq!(shown.points[1].x, mm(0.0), "where it was given");
}

#[test]
fn a_bad_row_is_named_and_says_what_to_do() {
    refused(
        "10 20 0.01\n10 20",
        "Row 2: a row takes three figures, and here are 2. Give along, across and the reading, a blank between them.",
    );
    refused(
        "0.01",
        "Row 1: a row takes three figures, and here is 1. Give along, across and the reading, a blank between them.",
    );
    refused(
        "10 20 0.01\n\n10 2o 0.02",
        "Row 3, across: “o” is no unit known here. Use one from the keys, or none.",
    );
    refused("abc 20 0.01", "Row 1, along: “abc” is no number. Use digits with one point or comma.");
    refused(
        "20in 5 0",
        "Row 1, along: A place along the long axis lies between −19.68 and 19.68 in. Check the decimal point and the unit.",
    );
    refused(
        "1 -501 0",
        "Row 1, across: A place across the long axis lies between −500 and 500 mm. Check the decimal point and the unit.",
    );
    refused(
        "1 2 120",
        "Row 1: A height lies between −25 and 25 mm. Check the decimal point and the unit.",
    );
    refused(
        "1 25.4 0\n3 4 0\n1 1in 0.01",
        "Row 3: the same place as row 1 (1 mm, 25.4 mm). Take one of the two out.",
    );
    // All of them at once, and what can be read beside them.
    let (given, faults) = set("1 2\n3 4 0.01\n5 x 0\n-0.0 7 0", "mm").given();
    assert_eq!(faults.len(), 2, "{faults:?}");
    let names: Vec<&str> = given.iter().map(|(place, _)| place.name.as_str()).collect();
    assert_eq!(names, ["row 2 (3 mm, 4 mm)", "row 4 (0 mm, 7 mm)"], "those that can be read");
}

#[test]
fn three_places_or_a_line_of_them_are_no_face() {
    for (rows, says) in [
        ("", "No readings yet. Take at least 4 for flatness."),
        ("1 2 0\n3 4 0", "2 readings are too few for flatness. Take at least 4."),
        // Three always lie on a plane.
        ("0 0 0\n50 0 0.1\n0 50 0.2", "3 readings are too few for flatness. Take at least 4."),
        (
            "0 0 0\n10 20 0.1\n20 40 0\n30 60 0.05",
            "All places lie on one line, which fixes no plane. Add a place well off that line.",
        ),
    ] {
        let all = with(&set(rows, "mm"), &[], None);
        assert_eq!(all[0].says, says, "{rows:?}");
        assert_eq!((all.len(), all[0].call), (1, None), "no verdict: {rows:?}");
    }
}

#[test]
fn the_book_holds_the_rows_as_they_were_typed() {
    let rows = "1,5 -2 0.01\n\n 3 4in  5 thou ";
    let set = set(rows, "in");
    let json = kept::write(&set);
    assert_eq!(
        json,
        r#"{"of":"own-places","piece":"rotor-1-front","unit":"mm","gauge":"dial-indicator","readings":[],"rows":"1,5 -2 0.01\n\n 3 4in  5 thou","places_in":"in"}"#,
        "written"
    );
    let back: ReadingSet = kept::read(&json).expect("read back");
    assert_eq!(back, set, "read back");
    assert_eq!(back.texts(), [rows.trim_end(), "in"], "as typed");
    assert_eq!(set.count_words(), "2 readings", "empty rows don't count");
    let lines: Vec<String> = set
        .lines()
        .into_iter()
        .map(|(at, place, figure)| format!("{at} {place} {figure}"))
        .collect();
    assert_eq!(
        lines,
        ["0 row 1 (1,5 in, -2 in) 0.01 mm", "1 row 3 (3 in, 4 in) 5 thou"],
        "as a list"
    );
    assert!(self::set("\n \n", "mm").is_empty(), "nothing in it");

    // An entry from before there were rows.
    let old = r#"{"of":"grid","piece":"front","unit":"mm","gauge":"dial-indicator","readings":[{"place":"row 1, column 1","text":"0.01"}]}"#;
    let old_set: ReadingSet = kept::read(old).expect("an old entry");
    assert_eq!((old_set.rows.as_str(), old_set.places_in), ("", None), "nothing is made up");
    assert_eq!(kept::write(&old_set), old, "and it is written as it was");
}

#[test]
fn an_inch_among_millimetres_is_asked_about_and_put_into_its_row() {
    let rows = "10 20 0.40\n30 -20 0.41\n\n-30 5 0.0158\n0 -40 0.40";
    let mut set = set(rows, "mm");
    let taken = read(&set).expect("four rows");
    let slips = taken.slips();
    assert_eq!(slips.len(), 1, "{slips:?}");
    let meant = taken.meant(slips[0].0, &slips[0].1).expect("inches");
    set.put(slips[0].0, &meant);
    assert_eq!(
        set.rows, "10 20 0.40\n30 -20 0.41\n\n-30; 5; 0.0158 in\n0 -40 0.40",
        "only that row"
    );
    assert_eq!(read(&set).expect("four rows").slips(), [], "asked no more");
}
