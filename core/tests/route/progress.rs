//! Where a build stands, and where it was left.

use super::{Shop, unread};
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::limits::{BuildKind, Call};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{Answer, Edit, Kind, RouteFact, Routing, Stage, State, Step, write};

fn shop() -> Shop {
    Shop::new(BuildKind::NaturallyAspirated, 2)
}

fn at(shop: &Shop) -> Option<String> {
    let progress = shop.progress();
    progress.left_at.map(|place| progress.standings[place].station.key())
}

#[test]
fn a_new_build_begins_at_the_beginning() {
    let shop = shop();
    let progress = shop.progress();
    let ready: Vec<String> =
        progress.ready().map(|place| progress.standings[place].station.key()).collect();
    assert_eq!(ready, ["describe", "outside"], "what waits for nothing");
    assert_eq!(at(&shop).as_deref(), Some("describe"), "the first of them");
    assert!(progress.last.is_empty(), "nothing done");
    assert_eq!(progress.of_stage(Stage::Intake), (0, 5), "five steps");
}

#[test]
fn it_opens_at_the_step_left_with_the_last_three_things_done() {
    let mut shop = shop();
    for key in ["describe", "outside", "compression-before", "leaks-before"] {
        shop.mark(key, "J.", "");
    }
    let progress = shop.progress();
    let last: Vec<String> =
        progress.last.iter().map(|&place| progress.standings[place].station.key()).collect();
    assert_eq!(last, ["leaks-before", "compression-before", "outside"], "the last first");
    assert_eq!(at(&shop).as_deref(), Some("drained"), "behind the last one done");
    shop.route(RouteFact::LeftAt { step: "land/2".to_owned() });
    assert_eq!(at(&shop).as_deref(), Some("land/2"), "where it was left, step and piece");
    shop.mark("land/2", "J.", "measured elsewhere");
    assert_eq!(at(&shop).as_deref(), Some("drained"), "done: on to what can be done");
}

#[test]
fn a_measure_is_done_once_every_piece_is_read_and_shows_each_verdict() {
    let mut shop = shop();
    shop.mark("drained", "J.", "came dry");
    for key in ["end-play-before", "front-off", "flywheel-off", "unbolted", "opened", "cleaned"] {
        shop.mark(key, "J.", "walked through by the test");
    }
    let standing = |shop: &Shop, key: &str| {
        let progress = shop.progress();
        progress.standings[progress.place(key).expect("a step")].clone()
    };
    assert_eq!(standing(&shop, "side-warp/rear").pieces, [unread("rear")], "its piece");
    shop.read("side-housing-warp", "rear", "0.02", Unit::Millimetre);
    assert_eq!(standing(&shop, "side-warp/rear").state, State::Done, "read");
    assert_eq!(standing(&shop, "side-warp/front").state, State::Ready, "not yet");
    let gaps = standing(&shop, "side-gap-na/1F").pieces;
    let names: Vec<&str> = gaps.iter().map(|piece| piece.name.as_str()).collect();
    assert_eq!(names, ["1F-AB", "1F-BC", "1F-CA"], "the slots of its face");
    for slot in Slot::of_face(1, pitleaf_core::book::Face::Front) {
        shop.read("side-seal-gap-na", &slot.to_string(), "0.0022", Unit::Inch);
    }
    let gaps = standing(&shop, "side-gap-na/1F");
    assert_eq!(gaps.state, State::Done, "three read");
    assert!(gaps.pieces.iter().all(|piece| piece.call == Some(Call::Meets)), "{:?}", gaps.pieces);
    shop.withdraw_last();
    assert_ne!(standing(&shop, "side-gap-na/1F").state, State::Done, "one was withdrawn");
}

/// Both rotors’ bearings are one step: it is done when each was read.
#[test]
fn a_step_for_several_places_is_done_at_each_of_them() {
    let mut shop = shop();
    let standing = |shop: &Shop, key: &str| {
        let progress = shop.progress();
        progress.standings[progress.place(key).expect("a step")].clone()
    };
    shop.read("rotor-bearing-clearance", "", "0.06", Unit::Millimetre);
    assert_ne!(standing(&shop, "rotor-bearing").state, State::Done, "of an older book: which one?");
    shop.read("rotor-bearing-clearance", "rotor-1", "0.06", Unit::Millimetre);
    assert_ne!(standing(&shop, "rotor-bearing").state, State::Done, "one of two");
    shop.read("rotor-bearing-clearance", "rotor-2", "0.06", Unit::Millimetre);
    assert_eq!(standing(&shop, "rotor-bearing").state, State::Done, "both");
    let pieces = |key: &str| -> Vec<String> {
        standing(&shop, key).pieces.into_iter().map(|piece| piece.name).collect()
    };
    assert_eq!(pieces("main-bearing"), ["main-front", "main-rear"]);
    assert_eq!(pieces("side-warp/front"), ["front"], "and no other housing’s");
    assert_eq!(
        pieces("side-warp/intermediate-1"),
        ["intermediate-1-front", "intermediate-1-rear"],
        "both its faces"
    );
    assert_eq!(pieces("land/2"), ["2F", "2R"]);
    let boosted = Shop::new(BuildKind::ForcedInduction, 2);
    assert_eq!(standing(&boosted, "plug-gap").pieces.len(), 4, "two of each rotor");
}

/// A hold among what is open is named before any step, wherever it stands in the route.
#[test]
fn of_what_comes_first_a_hold_is_named_before_a_step() {
    let mut shop = shop();
    let before = Step { kind: Kind::Do, ..super::edits::step("own-do", &[]) };
    let hold = Step { kind: Kind::Hold(Answer::Builder), ..super::edits::step("own-hold", &[]) };
    let last = super::edits::step("own-last", &["own-do", "own-hold"]);
    for (step, behind) in [(before, "describe"), (hold, "own-do"), (last, "own-hold")] {
        shop.route(RouteFact::Edited(Edit::AddAfter(behind.to_owned(), step)));
    }
    let progress = shop.progress();
    let place = |key: &str| progress.place(key).expect("a step");
    let last = &progress.standings[place("own-last")];
    assert_eq!(last.open, [place("own-hold"), place("own-do")], "the hold first");
    assert_eq!(last.state, State::Held, "not only waiting");
    let said = shop.refused("own-last", "J.");
    assert!(said.contains("must be true first"), "{said}");
}

#[test]
fn an_undone_step_is_to_do_again() {
    let mut shop = shop();
    shop.mark("describe", "J.", "");
    assert_eq!(shop.progress().of_stage(Stage::Intake), (1, 5), "done");
    shop.route(RouteFact::Undone { step: "describe".to_owned() });
    assert_eq!(shop.progress().of_stage(Stage::Intake), (0, 5), "undone");
}

#[test]
fn what_the_book_says_of_the_dowels_brings_its_steps() {
    let mut shop = shop();
    let has = |shop: &Shop| shop.progress().place("oil-feed").is_some();
    assert!(!has(&shop), "hollow, or not known");
    shop.write(Fact::DowelsSolid { solid: true });
    assert!(has(&shop), "solid");
}

#[test]
fn a_route_of_the_builders_own_holds_for_its_build_and_a_broken_one_is_said() {
    let mut shop = shop();
    let own = Routing::usual().edit(Edit::Remove("handed-over".into())).expect("nothing needs it");
    shop.route(RouteFact::OwnRoute { text: write(&own) });
    let progress = shop.progress();
    assert!(progress.is_own_route() && progress.route_fault().is_none(), "its own");
    assert_eq!(progress.place("handed-over"), None, "without that step");
    shop.route(RouteFact::OwnRoute { text: "{".to_owned() });
    let progress = shop.progress();
    assert!(progress.place("handed-over").is_some(), "the usual one instead");
    assert_eq!(
        progress.route_fault(),
        Some(
            "Nothing taken in: this file is no route. Choose one saved by “Save the route as a file”."
        ),
        "and why"
    );
    shop.route(RouteFact::OwnRoute { text: String::new() });
    assert!(!shop.progress().is_own_route(), "back to the usual one");
}

/// Each change of a route is an entry of its own, on what was in force before it.
#[test]
fn changes_of_a_route_add_up_and_one_withdrawn_is_left_out() {
    let mut shop = shop();
    let has = |shop: &Shop, id: &str| shop.progress().routing.step(id).is_some();
    let add = |id: &str, behind: &str| {
        RouteFact::Edited(Edit::AddAfter(behind.to_owned(), super::edits::step(id, &[behind])))
    };
    shop.route(add("own-1", "describe"));
    let size = pitleaf_core::kept::write(&Fact::Route(add("own-1", "describe"))).len();
    assert!(size < 300, "not the whole route: {size} bytes");
    assert!(shop.progress().is_own_route() && has(&shop, "own-1"), "added");
    shop.route(add("own-2", "own-1"));
    assert!(has(&shop, "own-1") && has(&shop, "own-2"), "both");
    shop.withdraw_last();
    assert!(has(&shop, "own-1") && !has(&shop, "own-2"), "the last was withdrawn");

    // Joined from another phone: a change of a step that this one has taken out.
    shop.route(RouteFact::Edited(Edit::Up("own-2".to_owned())));
    let progress = shop.progress();
    assert_eq!(
        progress.route_fault(),
        Some("A change of the route is left out: There is no step “own-2” in this route any more."),
        "said"
    );
    assert!(progress.routing.step("own-1").is_some(), "the others hold");
    shop.route(add("own-4", "own-1"));
    let progress = shop.progress();
    let said = progress.route_fault().unwrap_or_default();
    assert!(said.ends_with("There is no step “own-2” in this route any more."), "still: {said}");
    assert!(progress.routing.step("own-4").is_some(), "and what comes after it adds up");

    let file =
        write(&Routing::usual().edit(Edit::Remove("handed-over".into())).expect("not needed"));
    shop.route(RouteFact::OwnRoute { text: file });
    shop.route(add("own-3", "describe"));
    assert!(has(&shop, "own-3") && !has(&shop, "own-1"), "on the file that was taken in");
    assert!(!has(&shop, "handed-over"), "as it came");
    assert_eq!(shop.progress().route_fault(), None, "nothing left out");
    shop.route(RouteFact::OwnRoute { text: String::new() });
    assert!(!shop.progress().is_own_route() && has(&shop, "handed-over"), "back to the usual one");
}
