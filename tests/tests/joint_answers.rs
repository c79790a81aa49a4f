//! What the joints answer: threads and drills by a shop's names, fits, firing pressure, slip, the oil line.

use pitleaf_tests::{
    Browser, Phone, Profile, Server, button, combobox, image, link, list, searchbox, table, textbox,
};

fn small(server: &Server) -> Browser {
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Merlin");
    phone
}

fn fill(phone: &Browser, fields: &[(&str, &str)]) {
    for (field, text) in fields {
        phone.fill(&textbox(field), text);
    }
}

#[test]
fn threads_ports_and_drills_are_found_by_a_shops_names() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/limits");
    phone.tap(&link("Bolts and dowels").starting());
    phone.tap(&link("Joints"));
    phone.tap(&link("Threads and ports").starting());
    let search = searchbox("Find a thread or a port");
    phone.fill(&search, "whitworth");
    phone.until_says("No thread of the tables answers to that");
    phone.fill(&search, "dash 6");
    phone.tap(&link("Boss port −6").starting());
    // SAE J1926-1: 9/16-18, full thread 0.500 in.
    phone.until_says("9/16-18 UNF");
    let sizes = phone.text(&table("Sizes"));
    assert!(sizes.contains("33/64 in") && sizes.contains("0.5000 in"), "{sizes}");
    phone.until_says("larger than the greatest minor diameter of class 2B");
    phone.go("#/joints/threads");
    phone.fill(&search, "metric fine 10");
    phone.tap(&link("M10 × 1.25").starting());
    // ISO 2306 8.8 mm; ISO 273 10.5, 11, 12 mm; 61.2 mm².
    let holes = phone.text(&table("Clearance holes"));
    assert!(["10.5 mm", "11.0 mm", "12.0 mm"].iter().all(|hole| holes.contains(hole)), "{holes}");
    assert!(phone.text(&table("Tap drills")).contains("74 % of full thread"), "engagement");
    phone.until_says("61.2 mm²");

    phone.go("#/joints/drills");
    let search = searchbox("A drill or a size");
    for (typed, size, tapped) in [
        ("#7", "5.105 mm", "1/4-20 UNC"),
        ("letter F", "6.528 mm", "5/16-18 UNC"),
        ("25/64", "9.922 mm", "7/16-20 UNF"),
    ] {
        phone.fill(&search, typed);
        phone.until_says(size);
        let taps = phone.text(&list("Tap drill of"));
        assert!(taps.contains(tapped), "{typed} is the tap drill of {tapped}: {taps}");
    }
    phone.fill(&search, "#99");
    phone.until_says("is no number");
}

#[test]
fn a_measured_thread_is_named_with_what_tells_it_from_the_next() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/what-thread");
    fill(&phone, &[("Diameter over the crests", "7.85")]);
    phone.until_says("is the likeliest");
    let found = phone.text(&list("It may be"));
    assert!(found.contains("M8 × 1.25") && found.contains("5/16-18 UNC"), "{found}");
    phone.until_says("Ten threads of M8 × 1.25 measure 12.50 mm, ten of M8 × 1 10.00 mm");
    fill(&phone, &[("or threads on an inch", "18")]);
    phone.until("the count decides", |phone| !phone.words().contains("M8 × 1.25"));
    assert!(phone.words().contains("5/16-18 UNC\nis the likeliest"), "by its count");
    fill(&phone, &[("Diameter over the crests", "100")]);
    phone.until_says("A thread’s diameter lies between 2 and 50 mm.");
}

/// ∅50 H7/s6: 0.018 to 0.059 mm tight (Bhandari, Ex 3.3).
#[test]
fn a_fit_by_class_by_inch_limits_and_of_a_measured_pair() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/fits");
    fill(&phone, &[("Nominal size", "50")]);
    phone.choose(&combobox("Shaft"), "s");
    phone.until_says("0.0180…0.0590 mm tight");
    fill(&phone, &[("Nominal size", "300")]);
    phone.until_says("A nominal size lies between 1.01 and 250 mm.");
    fill(&phone, &[("Nominal size", "1")]);
    phone.until_says("A nominal size lies between 1.01 and 250 mm.");
    // ISO 286-2: 12 H7 is +18/0, 12 f7 −16/−34.
    fill(&phone, &[("Nominal size", "12")]);
    phone.choose(&combobox("Shaft"), "f");
    phone.choose(&combobox("Shaft’s grade"), "7");
    phone.until_says("0.0160…0.0520 mm loose");
    phone.tap(&button("Limits"));
    fill(&phone, &[("Pin or shaft, least", "0.5 mm")]);
    phone.until_says("A pin’s or shaft’s diameter lies between 1 and 260 mm.");
    for (field, text) in [
        ("Hole, least", "0.6250 in"),
        ("Hole, greatest", "0.6257 in"),
        ("Pin or shaft, least", "0.6245 in"),
        ("Pin or shaft, greatest", "0.6249 in"),
    ] {
        fill(&phone, &[(field, text)]);
    }
    // 0.0001 to 0.0012 in, exactly.
    phone.until_says("0.10…1.20 thou loose");
    phone.tap(&button("Measured"));
    fill(&phone, &[("Hole, measured", "15.995"), ("Pin or shaft, measured", "16.003")]);
    phone.until_says("0.0080 mm tight");
    phone.tap(&button("Write it down"));
    phone.until_notice("Written Fit");
    phone.tap_screen("Book");
    phone.until_says("Measured pair: 0.0080 mm tight");
}

/// Ten bolts of 20 to 30 kN and four studs of 40 to 50: 360 to 500 kN. With 60 to 90 bar the pull is a range
/// whose ends are as 60 to 90; with a share of 0 all of it comes off the faces.
#[test]
fn firing_pressure_and_slip_are_ranges_with_the_weakest_named() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/stack");
    fill(
        &phone,
        &[
            ("Tension bolts", "10"),
            ("Clamp of each bolt", "20…30"),
            ("Through studs", "4"),
            ("Clamp of each stud", "40…50"),
            ("Firing pressure", "60…90"),
        ],
    );
    phone.until_says(
        "The faces stay shut, even with the least clamp and the highest pressure given.",
    );
    let forces = phone.text(&table("Forces"));
    assert!(forces.contains("360…500 kN"), "bolts and studs together: {forces}");
    phone.until_says("The firing pressure decides most: it is rarely measured");
    fill(&phone, &[("Clamp of each bolt", "0.2…0.3"), ("Clamp of each stud", "0.4…0.5")]);
    phone.until_says("The faces may part: more clamp, or less pressure.");
    fill(&phone, &[("Clamp of each bolt", "20…30"), ("Clamp of each stud", "40…50")]);
    phone.tap(&button("Take the clamp to “Can a face turn?”"));
    fill(
        &phone,
        &[
            // 300 kW at 9549.3 /min is 300 N·m: 150 a rotor, twice to five times that at its peak.
            ("Output", "300"),
            ("at turns a minute", "9549.3"),
            ("Bolts’ mean radius", "135"),
            ("Dowels’ radius", "140"),
            ("Dowel’s diameter", "16"),
            ("Hollow dowel’s bore", "11"),
            ("Length in the weaker part", "12"),
        ],
    );
    phone.until_says("300…750 N·m");
    let held = phone.text(&table("Held over reaction"));
    for row in ["Friction", "Hollow dowels", "Solid dowels"] {
        assert!(held.contains(row), "{row}: {held}");
    }
    assert!(held.contains("decides most"), "the weakest assumption: {held}");
    fill(&phone, &[("Hollow dowel’s bore", "17")]);
    phone.until_says("hole");

    // 240 mm of aluminium against grey iron, 80 K warmer: 240·10.1·80e-6 = 0.194 mm.
    phone.run(
        "document.querySelectorAll('details.joint-more').forEach((more) => { more.open = true })",
        &[],
    );
    fill(
        &phone,
        &[
            ("Distance between the two dowels", "240"),
            ("One part’s expansion, 10⁻⁶/K", "21.5"),
            ("One part, running", "100"),
            ("Hole less dowel, one part", "6…35"),
            ("Other part’s expansion, 10⁻⁶/K", "11.4"),
            ("Other part, running", "100"),
        ],
    );
    phone.until_says("Still to give: Hole less dowel, other part.");
    fill(&phone, &[("Hole less dowel, other part", "6…35")]);
    phone.until_says("0.194 mm");
    phone.until_says("two tight solid dowels fight that");
}

/// The published oil is 24.2 mm²/s at 90 °C by the rule through its two grade points; 6 L/min in 8 mm is 1.99
/// m/s, Reynolds number 656: in layers.
#[test]
fn an_oil_line_costs_its_pressure_and_names_its_port() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/oil-line");
    fill(
        &phone,
        &[
            ("Flow wanted", "6"),
            ("Oil pressure there is", "5"),
            ("Line’s bore", "8"),
            ("Line’s length", "900"),
        ],
    );
    phone.choose(&combobox("Oil"), "20W-50 (typical, from memory)");
    phone.until_says("in layers");
    phone.until_says("Reynolds number 656");
    phone.until_says("The pressure is enough for the flow.");
    phone.find(&link("Boss port −8").starting());
    let straight = phone.words();
    phone.tap(&button("Write it down"));
    phone.until_notice("Written Oil line");
    fill(&phone, &[("Line’s length", "60000")]);
    phone.until_says("A line’s length lies between");
    fill(&phone, &[("Line’s length", "15000"), ("Line’s bore", "4")]);
    phone.until_says(
        "The pressure is too little for the flow: a wider or shorter line, fewer elbows.",
    );
    assert!(straight.contains("Oil on a hot exhaust burns"), "the caution: {straight}");
}

#[test]
fn an_order_of_ones_own_is_drawn_and_a_wrong_one_refused() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/order");
    let own = "Own order by letters, if the manual has one";
    let passes = "Passes in %, one more at 100 follows";
    phone.tap(&button("On one circle"));
    fill(&phone, &[("How many bolts", "5"), ("Full torque", "40")]);
    phone.find(&image("Order of the bolts: A-C-E-B-D"));
    fill(&phone, &[(own, "A C E B B")]);
    phone.until_says("Bolt B comes twice. Leave it in once.");
    fill(&phone, &[(own, "A C E B 4")]);
    phone.until_says("There is no bolt 4: they are called A to E.");
    fill(&phone, &[(own, "A C B E D"), (passes, "50, 40")]);
    phone.until_says("The passes must rise and end at 100 %.");
    fill(&phone, &[(passes, "50, 100")]);
    phone.find(&image("Order of the bolts: A-C-B-E-D"));
    phone.tap(&button("Write the order down and start"));
    phone.until_says("pass 1 of 3");
    phone.until_says("20.0 N·m");
    phone.tap(&button("Pass 1 is done"));
    phone.until_says("pass 2 of 3");
    phone.reload();
    phone.until_says("pass 2 of 3");
    phone.find(&image("Order of the bolts: A-C-B-E-D"));
}

/// What holds the stack goes by place: tapped on the housing, or pasted, which is the equal way.
#[test]
fn bolts_are_tapped_where_they_stand_and_go_from_the_middle_outwards() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/order");
    phone.until_says("Still to give: the bolts. Tap them on the picture");
    let picture = image("Bolts on the housing. Tap to add one.");
    let places = textbox("Places, a row x y for each bolt");
    let rows = |phone: &Browser| {
        let rows = phone.property(&places, "value");
        rows.as_str().map_or(0, |rows| rows.lines().count())
    };
    // Half a second between touches: they are meant as two.
    for (number, place) in (1..).zip([(-90, 0), (90, 0), (0, 40)]) {
        phone.draw(&picture, &[place]);
        phone.until("the bolt has its row", |phone| rows(phone) == number);
    }
    phone.draw(&picture, &[(90, 0)]);
    phone.until("a second tap takes it out", |phone| rows(phone) == 2);

    phone.fill(&places, "-120 20\n0 75\n120 20\n0 -75");
    phone.fill(&textbox("Full torque"), "38");
    phone.until_says("B-D-A-C");
    phone.tap(&button("Write the order down and start"));
    phone.find(&image("Order of the bolts: B-D-A-C"));
    phone.until_says("pass 1 of 4, in the order shown");
    phone.reload();
    phone.find(&image("Order of the bolts: B-D-A-C"));
}

/// A stated steel, and the stretch of the free length: 20 kN on 58.0 mm² of M10 thread, 50 mm of it, with
/// 207 GPa: F·l/(A·E) = 0.0833 mm.
#[test]
fn a_stated_material_and_a_measured_stretch_tell_the_clamp() {
    let server = Server::start();
    let phone = small(&server);
    phone.go("#/joints/clamp");
    phone.tap(&button("Clamp → torque"));
    phone.choose(&combobox("Thread"), "M10 × 1.5");
    fill(
        &phone,
        &[
            ("Clamp wanted", "20"),
            ("Nut factor K, one or a range", "0.20"),
            ("Scatter, either way", "0"),
            ("Proof stress", "640"),
            ("Tensile strength", "500"),
        ],
    );
    phone.until("a proof stress above the strength is refused", |phone| {
        !phone.words().contains("N·m\n29.5 lbf·ft")
    });
    fill(&phone, &[("Tensile strength", "800")]);
    // T = K·d·F = 0.2 · 10 mm · 20 kN = 40 N·m; 20 of 37.1 kN is 54 %.
    phone.until_says("40.0 N·m");
    phone.until_says("54 % of proof");
    // µ 0.154, so the twist makes it 1.18 times as much.
    phone.until_says("64 % of proof");
    phone.run("document.querySelector('details.joint-more').open = true", &[]);
    fill(&phone, &[("Free thread", "50")]);
    phone.until_says("0.0833 mm");
    // Measured instead: the same stretch is the same clamp, within the tenth of measuring it.
    fill(&phone, &[("Stretch measured", "0.0833")]);
    phone.until_says("18.0…22.0 kN");

    // Hot: 100 mm of aluminium and 50 of iron past a bolt of 12.3, all 70 K warmer.
    phone.run(
        "document.querySelectorAll('details.joint-more').forEach((more) => { more.open = true })",
        &[],
    );
    fill(
        &phone,
        &[
            ("Light metal clamped, length", "100"),
            ("Light metal’s expansion, 10⁻⁶/K", "21.5"),
            ("Light metal, running", "90"),
            ("Iron clamped, length", "50"),
            ("Iron’s expansion, 10⁻⁶/K", "11.4"),
            ("Iron, running", "90"),
            ("Bolt’s expansion, 10⁻⁶/K", "12.3"),
        ],
    );
    phone.until_says("Still to give: Bolt, running.");
    fill(&phone, &[("Bolt, running", "90")]);
    // 100·9.2·70e-6 − 50·0.9·70e-6 = 0.06125 mm.
    phone.until_says("0.0612 mm");
    phone.until_says("as if the housings gave nothing");
}
