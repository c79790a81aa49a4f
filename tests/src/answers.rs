//! What a builder types at the joints and reads on the faces, so that every screen has its answer to show.

use crate::{Browser, button, combobox, textbox};

/// A screen, its choices and its fields, in the order they are filled in.
type Form = (
    &'static str,
    &'static [(&'static str, &'static str)],
    &'static [(&'static str, &'static str)],
);

/// Every form at the joints.
const FORMS: &[Form] = &[
    (
        "#/joints/clamp",
        &[
            ("Thread", "1/2-20 UNF"),
            ("Threads and seats are", "Lubricated"),
            ("Tightened by", "Torque wrench, lubricated"),
            ("Bolt’s class", "10.9 (ISO 898-1:2013)"),
        ],
        &[("Torque", "85")],
    ),
    (
        "#/joints/stack",
        &[],
        &[
            ("Tension bolts", "17"),
            ("Clamp of each bolt", "13…22"),
            ("Through studs", "4"),
            ("Clamp of each stud", "29…49"),
            ("Firing pressure", "60…90"),
        ],
    ),
    (
        "#/joints/slip",
        &[],
        &[
            ("Clamp of all", "340…570"),
            ("Output", "300"),
            ("at turns a minute", "7500"),
            ("Bolts’ mean radius", "135"),
            ("Dowels’ radius", "140"),
            ("Dowel’s diameter", "16"),
            ("Hollow dowel’s bore", "11"),
            ("Length in the weaker part", "12"),
        ],
    ),
    (
        "#/joints/press",
        &[
            ("Housing’s metal", "Aluminium 356, cast"),
            ("Pin’s metal", "Steel 4140 or 4340, hardened"),
        ],
        &[
            ("Pin’s diameter", "16"),
            ("Pin less hole", "10…35"),
            ("Housing’s width around it", "40"),
            ("Length it sits on", "12"),
        ],
    ),
    (
        "#/joints/oil-line",
        &[("Oil", "20W-50 (typical, from memory)")],
        &[
            ("Flow wanted", "6"),
            ("Oil pressure there is", "5"),
            ("Line’s bore", "8"),
            ("Line’s length", "900"),
        ],
    ),
    (
        "#/joints/what-thread",
        &[],
        &[("Diameter over the crests", "11.9"), ("Pitch, if measured", "1.5")],
    ),
    ("#/joints/fits", &[("Shaft", "s")], &[("Nominal size", "50")]),
    (
        "#/joints/order",
        &[],
        &[
            ("Places, a row x y for each bolt", "-120 20\n0 75\n120 20\n0 -75"),
            ("Full torque", "38"),
        ],
    ),
];

/// Readings of every survey that has a result of its own.
const SURVEYS: &[(&str, &[&str])] = &[
    (
        "flatness/front",
        &[
            "0.000", "0.004", "0.011", "0.018", "0.012", "0.006", "0.001", "-0.004", "-0.009",
            "-0.012", "-0.008", "-0.002", "-0.031", "-0.026", "-0.014", "-0.010", "-0.016",
            "-0.021", "-0.034", "-0.038", "-0.041", "-0.046", "-0.040", "-0.035",
        ],
    ),
    (
        "grid/front",
        &[
            "0.000", "0.004", "-0.002", "0.003", "0.006", "0.010", "0.003", "-0.001", "0.005",
            "0.001",
        ],
    ),
    ("straightedge/front", &["0.03", "0.06", "0.02", "0.03"]),
    ("lapping/front", &["0.05", "0.08", "0.01", "0.05", "0.20", "0.01", "0.03"]),
    (
        "housing-width/rotor-1",
        &["80.00", "79.99", "79.98", "79.99", "80.00", "80.01", "80.00", "80.00"],
    ),
    ("rotor-width/rotor-1", &["79.84", "79.84", "79.85", "79.83", "79.84", "79.84"]),
    ("apex-seal-length/rotor-1", &["79.81", "79.82", "79.80"]),
    ("bore/rotor-1", &["74.060", "74.058", "74.061", "74.057", "74.060", "74.059"]),
    ("journal/rotor-1", &["73.990", "73.988", "73.991", "73.989", "73.990", "73.990"]),
    (
        "runout-eight/front-end",
        &["0.000", "0.012", "0.021", "0.026", "0.022", "0.010", "0.002", "-0.003"],
    ),
    ("spacers", &["8.000", "7.950", "8.040", "7.980"]),
    ("end-play", &["0.10", "0.11", "0.10", "8.000"]),
];

/// Fills every form in and writes every survey down; the book is open at a build.
pub fn fill_in(browser: &Browser) {
    for (place, choices, fields) in FORMS {
        browser.go(place);
        for (choice, words) in *choices {
            browser.choose(&combobox(choice), words);
        }
        for (field, text) in *fields {
            browser.fill(&textbox(field), text);
        }
    }
    for (survey, texts) in SURVEYS {
        browser.go(&format!("#/faces/{survey}"));
        for text in *texts {
            read(browser, text);
        }
        if browser.shows(&button("Show result")) {
            browser.tap(&button("Show result"));
        }
        browser.tap(&button("Write down"));
        browser.find(&button("Written down"));
    }
    browser.go("#/faces/own-places/front");
    let rows =
        "105 0 0.000\n60 -70 0.012\n-60 -72 -0.008\n-104 4 0.003\n-30 60 0.021\n48 66 -0.014";
    browser.fill(&textbox("Along, across, reading: a row a place"), rows);
    browser.tap(&button("Show result"));
    browser.tap(&button("Write down"));
    browser.find(&button("Written down"));
    browser.go("#/joints/oil-feed");
    browser.tap(&button("Solid"));
    browser.until_notice("upper dowels solid");
}

/// Types a reading at the place in hand and goes on to the next.
pub fn read(browser: &Browser, text: &str) {
    browser.fill(&textbox("Reading"), text);
    browser.tap(&button("Next"));
}
