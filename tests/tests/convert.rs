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
    assert!(!near.contains("1/64") && near.contains("0.06 mm"), "a leaf, no fraction: {near}");
}

#[test]
fn a_foreign_torque_is_read() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    // Typed under length: the unit says what it is, and the figure stays.
    phone.fill(&textbox("Figure"), "3.5 kgf·m");
    phone.until_in(&table("In every unit"), "N·m");
    assert_eq!(phone.property(&combobox("What is measured"), "value"), "torque");
    assert_eq!(phone.property(&textbox("Figure"), "value"), "3.5 kgf·m", "what was typed");
    // 9.80665 N a kilogram-force (NIST SP 811), so 34.323275 N·m; over 1.3558179483314004, 25.3155… lbf·ft.
    let newton_metres = figure(&phone, "In every unit", "N·m");
    let exact = ("34.32".to_owned(), "exactly 34.323275".to_owned());
    assert_eq!(newton_metres, exact, "in newton metres");
    let pound_feet = figure(&phone, "In every unit", "lbf·ft");
    assert!(pound_feet.0.starts_with("25.3"), "{pound_feet:?}");
    // Another unit pressed takes the place of the one typed.
    phone.tap(&button("N·m"));
    phone.until("the unit pressed", |phone| phone.property(&textbox("Figure"), "value") == "3.5");
    assert_eq!(figure(&phone, "In every unit", "N·m").0, "3.5", "in the unit pressed");
}

#[test]
fn a_figure_with_two_readings_is_asked_about_and_read_with_one_touch() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.tap_screen("Convert");
    phone.fill(&textbox("Figure"), "1/64");
    phone.until_says("Fractions are usually of an inch. Was that in?");
    phone.tap(&button("Read as 1/64 in"));
    // 25.4 mm over 64.
    phone.until_in(&table("In every unit"), "0.396875");
    phone.until("nothing is asked", |phone| !phone.words().contains("Fractions are usually"));
    phone.fill(&textbox("Figure"), "1,234 mm");
    phone.until_says("Read as 1,234. Was that 1234?");
    phone.tap(&button("Read as 1234 mm"));
    phone.until("the thousands", |phone| phone.property(&textbox("Figure"), "value") == "1234");
    phone.fill(&textbox("Figure"), "5 mPa");
    phone.until_says("“mPa” is not MPa: m is a thousandth, M a million.");
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
    let head = rows(&phone, "Limits in every unit").remove(0);
    assert_eq!(head, ["Unit", "Hold to", "With a finer gauge"], "what each column is");
    phone.fill(&textbox("Figure"), "11 +0.3/-0.1 mm");
    phone.until_in(&table("Limits in every unit"), "10.9");
    assert_eq!(figure(&phone, "Limits in every unit", "mm").0, "10.9…11.3", "each side its own");
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
    let millimetres = ("12.7".to_owned(), "exact".to_owned());
    assert_eq!(figure(&phone, "In every unit", "mm"), millimetres, "half an inch");
    phone.go("#/check/rotor-housing-width");
    let verdict = phone.until_in(&status("Verdict"), "Type the reading.");
    let both = "at least 79.94\u{a0}mm (at least 3.14725\u{a0}in). Type";
    assert!(verdict.contains(both), "as written, the other unit beside it: {verdict}");
    phone.tap(&button("in"));
    let verdict = phone.until_in(&status("Verdict"), "in (");
    assert!(verdict.contains("at least 3.14725\u{a0}in (at least 79.94\u{a0}mm)"), "{verdict}");
    phone.fill(&textbox("Reading"), "3.1");
    let verdict = phone.until_in(&status("Verdict"), "as written");
    assert!(verdict.contains("The limit as written: at least 79.94\u{a0}mm."), "{verdict}");
}
