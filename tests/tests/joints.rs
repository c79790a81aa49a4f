//! Joints as the builder meets them: a torque's clamp, a tightening ticked off, and the oil that solid
//! dowels shut off.

use pitleaf_tests::{Browser, Named, Phone, Profile, Server, button, combobox, link, textbox};

#[test]
fn solid_dowels_hold_the_build_until_the_feed_is_recorded() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.tap(&link("Joints").starting());
    phone.tap(&link("Oil to the front bearing").starting());
    phone.tap(&button("Solid"));
    phone.until_notice("Written upper dowels solid");
    let held = "Not to be signed off: the upper dowels are solid and shut the oil passage";
    phone.until_says(held);
    // Both screens say it: wait for what the bench alone shows.
    phone.tap_screen("Bench");
    phone.until_says("Check a limit");
    phone.until_says(held);

    // The line on the bench leads to where it is put right.
    phone.tap(&link(held).starting());
    phone.fill(&textbox("From where to where"), "filter block to front cover");
    phone.fill(&textbox("Line’s bore"), "600");
    phone.until_says("A line’s bore lies between 1 and 60 mm.");
    phone.fill(&textbox("Line’s bore"), "6");
    phone.tap(&button("Record the feed"));
    phone.until_notice("Written outside oil feed");
    phone.until_says("Solid upper dowels, and an outside feed to the front bearing is recorded.");
    phone.tap_screen("Bench");
    phone.until_says("Check a limit");
    phone.until("the hold is gone from the bench", |phone| !phone.words().contains(held));
    phone.until_says("filter block to front cover, bore 6 mm");

    // Undone, the build is held again.
    phone.tap_screen("Book");
    phone.until_says("entries in all");
    phone.tap(&link("filter block to front cover").starting());
    phone.tap(&button("Withdraw"));
    phone.tap_screen("Bench");
    phone.until_says(held);
}

/// From the bench, from every part that has joints, and from the steps of the work.
#[test]
fn the_joints_are_reached_from_the_bench_the_parts_and_the_steps() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    // Where from, by what words (all of them, or as far as they go); where to, and what stands in its fields.
    type Way =
        (&'static str, Named, &'static str, &'static str, &'static [(&'static str, &'static str)]);
    let slip: &[(&str, &str)] =
        &[("Clamp of all", ""), ("Rotors", "2"), ("Dowels through the face", "2"), ("Output", "")];
    let ways: [Way; 8] = [
        ("#/", link("Joints").starting(), "#/joints", "Torque and clamp", &[]),
        ("#/limits/bolts-and-dowels", link("Joints"), "#/joints", "Torque and clamp", &[]),
        (
            "#/limits/bearings",
            link("Press fit"),
            "#/joints/press",
            "Still to give: Pin’s diameter",
            &[("Pin’s diameter", ""), ("Hole through the pin (solid: 0)", "0")],
        ),
        (
            "#/limits/rotor-housings",
            link("Can a face turn?"),
            "#/joints/slip",
            "Still to give: Clamp of all",
            slip,
        ),
        (
            "#/limits/side-housings",
            link("Can a face turn?"),
            "#/joints/slip",
            "Still to give: Clamp of all",
            slip,
        ),
        (
            "#/limits/assembled-engine",
            link("Firing pressure"),
            "#/joints/stack",
            "Still to give: Tension bolts",
            &[("Tension bolts", ""), ("Firing pressure", "")],
        ),
        (
            "#/work/step/dowels-known",
            link("Oil to the front bearing"),
            "#/joints/oil-feed",
            "Solid",
            &[],
        ),
        (
            "#/work/step/tightened",
            link("Tightening order"),
            "#/joints/order",
            "Still to give: the bolts. Tap them on the picture",
            &[("Joint", "Tension bolts"), ("Passes in %, one more at 100 follows", "33, 67, 100")],
        ),
    ];
    for (from, way, to, says, fields) in ways {
        phone.go(from);
        phone.tap(&way);
        phone.until(to, |phone| phone.place() == to);
        phone.until_says(says);
        for (field, start) in fields {
            assert_eq!(phone.property(&textbox(field), "value"), *start, "{from}: {field}");
        }
    }
    // The parts without joints of their own have no such way.
    phone.go("#/limits/side-seals");
    phone.until_says("Side seal in its slot");
    let ways =
        phone.run("return document.querySelectorAll('main [href^=\"#/joints\"]').length", &[]);
    assert_eq!(ways, 0, "ways from a seal to a joint");
}

#[test]
fn a_thread_goes_along_to_its_clamp() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.go("#/joints/thread/m10-1-25");
    phone.tap(&link("Its torque and clamp"));
    phone.until("the clamp", |phone| phone.place() == "#/joints/clamp");
    assert_eq!(phone.property(&combobox("Thread"), "value"), "M10 × 1.25", "its thread");
    // Another one in its place.
    phone.go("#/joints/thread/1-2-20-unf");
    phone.tap(&link("Its torque and clamp"));
    phone.until("the clamp", |phone| phone.place() == "#/joints/clamp");
    assert_eq!(phone.property(&combobox("Thread"), "value"), "1/2-20 UNF", "its thread");
}

#[test]
fn a_face_starts_with_the_rotors_of_its_build() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.go("#/open");
    phone.fill(&textbox("Name"), "Merlin");
    phone.tap(&button("3 rotors"));
    phone.tap(&button("Open"));
    phone.until_notice("Written a new build: Merlin");
    phone.go("#/limits/rotor-housings");
    phone.tap(&link("Can a face turn?"));
    phone.until("its place", |phone| phone.place() == "#/joints/slip");
    assert_eq!(phone.property(&textbox("Rotors"), "value"), "3", "as many as the build has");
}

/// T = K·d·F: 45 N·m on 12.7 mm with K 0.18 is 19.685 kN, ±25 % is 14.8 to 24.6; Shigley's K and NASA's
/// scatter. R.
#[test]
fn a_torque_is_shown_as_the_range_it_clamps_and_handed_on() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.go("#/joints/clamp");
    phone.until_says("Still to give: Thread.");
    phone.choose(&combobox("Thread"), "1/2-20 UNF");
    phone.fill(&textbox("Torque"), "45000");
    phone.until_says("A tightening torque lies between 1 and 1000 N·m.");
    phone.fill(&textbox("Torque"), "45");
    phone.until_says("= 33.19 lbf·ft");
    phone.choose(&combobox("Threads and seats are"), "Lubricated");
    phone.choose(&combobox("Tightened by"), "Torque wrench, lubricated");
    phone.choose(&combobox("Bolt’s class"), "12.9 (ISO 898-1:2013)");
    phone.until_says("14.8…24.6 kN");
    phone.until_says("Below proof stress throughout");
    phone.until_says("The way of tightening decides most");

    // As it was left, after the tab was thrown away.
    phone.reload();
    phone.until_says("14.8…24.6 kN");
    phone.tap(&button("Take it for the studs"));
    phone.until_says("Firing pressure");
    assert_eq!(phone.property(&textbox("Clamp of each stud"), "value"), "14.8…24.6", "handed on");
}

#[test]
fn passes_are_ticked_off_and_an_undone_one_is_to_do_again() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.open_build("Merlin");
    phone.order_bolts();
    phone.until_says("pass 1 of 4");
    phone.tap(&button("Pass 1 is done"));
    phone.until_says("pass 2 of 4");
    phone.until_says("25.5 N·m");
    phone.tap(&button("Undo"));
    phone.until_says("pass 1 of 4");

    // Where the wrench read otherwise, that is what the book says.
    phone.fill(&textbox("Wrench read, if not that"), "130000");
    phone.tap(&button("Pass 1 is done"));
    phone.until_notice("A tightening torque lies between 1 and 1000 N·m.");
    phone.fill(&textbox("Wrench read, if not that"), "13");
    phone.tap(&button("Pass 1 is done"));
    phone.until_says("✓ done at 13 N·m");
    phone.until("the field is empty for the next pass", |phone| {
        phone.property(&textbox("Wrench read, if not that"), "value") == ""
    });
}

/// The metal of one's own is asked for only where it is chosen, and a build's own shape stands in for typing.
#[test]
fn a_metal_of_ones_own_and_the_builds_own_shape() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_build("Merlin");
    phone.go("#/joints/press");
    for (field, text) in [
        ("Pin’s diameter", "20"),
        ("Pin less hole", "31.711"),
        ("Housing’s width around it", "60"),
        ("Length it sits on", "30"),
    ] {
        phone.fill(&textbox(field), text);
    }
    phone.choose(&combobox("Housing’s metal"), "A metal of one’s own");
    phone.until_says("Still to give: Housing’s modulus.");
    for (field, text) in [
        ("Housing’s modulus", "90000"),
        ("Housing’s Poisson’s ratio", "0.26"),
        ("Housing’s expansion, 10⁻⁶/K", "11.4"),
        ("Housing may get as hot as", "300"),
    ] {
        phone.fill(&textbox(field), text);
    }
    phone.until_says("Still to give: Pin’s metal.");
    phone.choose(&combobox("Pin’s metal"), "Steel 4140 or 4340, hardened");
    phone.until_says("Pull round the hole");
    let own = phone.words();
    assert!(own.contains("pushes it in or out"), "{own}");

    phone.go("#/joints/stack");
    phone.until_says("as commonly quoted for 654 cm³ a rotor");
    phone.tap(&link("Put the engine’s measures in once for all screens"));
    phone.fill(&textbox("Eccentricity"), "15.5");
    phone.tap(&button("Put it in"));
    phone.until_notice("the engine’s measures");
    phone.go("#/joints/stack");
    phone.until_says("eccentricity 15.5 mm, generating radius 102 mm");
}
