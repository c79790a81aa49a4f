//! One figure in every unit, and a drawing's tolerance as limits.

use pitleaf_tests::{Browser, Server, button, combobox, status, table, textbox};

/// The rows of the table, each as its cells.
fn rows(phone: &Browser, of: &str) -> Vec<Vec<String>> {
    let text = phone.text(&table(of));
    text.lines().map(|line| line.split('\t').map(str::to_owned).collect()).collect()
}

fn figure(phone: &Browser, of: &str, unit: &str) -> (String, String) {
    let rows = rows(phone, of);
    let row = rows.iter().find(|row| row[0] == unit);
    let row = row.unwrap_or_else(|| panic!("no {unit} in {rows:?}"));
    (row[1].clone(), row[2].clone())
}

#[test]
fn thousandths_are_millimetres_exactly() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    phone.fill(&textbox("Figure"), "0.0025 in");
    phone.until_in(&table("In every unit"), "mm");
    // 25.4 mm an inch, by definition.
    let (rounded, beside) = figure(&phone, "In every unit", "mm");
    assert_eq!((rounded.as_str(), beside.as_str()), ("0.0635", "exact"), "in millimetres");
    assert_eq!(figure(&phone, "In every unit", "thou").0, "2.5", "in thousandths");
    let near = phone.text(&table("Nearest"));
    assert!(near.contains("0 in") && near.contains("0.06 mm"), "fraction and leaf: {near}");
}

#[test]
fn a_foreign_torque_is_read() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    phone.choose(&combobox("What is measured"), "torque");
    phone.fill(&textbox("Figure"), "3.5 kgf·m");
    phone.until_in(&table("In every unit"), "N·m");
    // 9.80665 N a kilogram-force (NIST SP 811), so 34.323275 N·m; over 1.3558179483314004, 25.3155… lbf·ft.
    let newton_metres = figure(&phone, "In every unit", "N·m");
    let exact = ("34.323275".to_owned(), "rounded 34.32".to_owned());
    assert_eq!(newton_metres, exact, "in newton metres");
    let pound_feet = figure(&phone, "In every unit", "lbf·ft");
    assert!(pound_feet.0.starts_with("25.3"), "{pound_feet:?}");
}

#[test]
fn a_drawings_limits_round_inward() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    phone.fill(&textbox("Figure"), "11±0.3 mm");
    phone.until_in(&table("Limits in every unit"), "in");
    // ANSI/IEEE 268: 11 ± 0.3 mm is 0.422 to 0.444 in, never 0.421 or 0.445.
    assert_eq!(figure(&phone, "Limits in every unit", "in").0, "0.422…0.444", "in inches");
}

#[test]
fn bad_figures_get_their_sentence() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    let digits = "9".repeat(400);
    for (typed, sentence) in [
        ("abc", "“abc” is no number. Use digits with one point or comma."),
        ("1..2", "More than one point or comma. Leave only the decimal one."),
        ("−0", "Minus zero is no reading. Type 0, or a value below it."),
        ("1e9", "Powers of ten are not read. Write the number out in full."),
        (&digits, "Too many digits. At most 12 can be held exactly."),
    ] {
        phone.fill(&textbox("Figure"), typed);
        phone.until_says(sentence);
        assert!(!phone.shows(&table("In every unit")), "no figure for {typed:?}");
    }
}

#[test]
fn an_exact_figure_stands_large_and_the_unit_chosen_stays_here() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    phone.tap(&button("in"));
    phone.fill(&textbox("Figure"), "1/2");
    phone.until_in(&table("In every unit"), "12.7");
    let millimetres = ("12.7".to_owned(), "rounded 13".to_owned());
    assert_eq!(figure(&phone, "In every unit", "mm"), millimetres, "half an inch");
    phone.go("#/check/rotor-housing-width");
    let verdict = phone.until_in(&status("Verdict"), "Type the reading.");
    assert!(verdict.contains("at least 79.94\u{a0}mm. Type"), "in its own unit alone: {verdict}");
    // Chosen at a check, the limit stands in both.
    phone.tap(&button("in"));
    let verdict = phone.until_in(&status("Verdict"), "in (");
    assert!(verdict.contains("at least 3.14725\u{a0}in (at least 79.94\u{a0}mm)"), "{verdict}");
    phone.fill(&textbox("Reading"), "3.1");
    let verdict = phone.until_in(&status("Verdict"), "as written");
    assert!(verdict.contains("The limit as written: at least 79.94\u{a0}mm."), "{verdict}");
}
