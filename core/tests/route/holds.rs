//! Every hold, tried and refused once, on the way through a whole build.

use super::sheet::{section, sheet as printed};
use super::{Shop, unread};
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::joints::bolts::Bolts;
use pitleaf_core::joints::plan::Plan;
use pitleaf_core::limits::BuildKind;
use pitleaf_core::ports::{PortName, SideHousing, Stage, TypedOutline};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::{
    Choice, Copy, Kind, OVERHANG, OpenPoints, Progress, Refusal, State, cuts, decide_on,
};

fn plan() -> Plan {
    Plan::read(
        "Tension bolts",
        Bolts::circle(4).expect("four"),
        "",
        "50, 100",
        "38",
        Unit::NewtonMetre,
    )
    .expect("a plan")
}

/// What makes the book answer a hold.
fn answer(shop: &mut Shop, id: &str) {
    match id {
        "oil-feed" => shop.write(Fact::OilFeed {
            words: "filter block to front cover".to_owned(),
            bore: String::new(),
            unit: Unit::Millimetre,
        }),
        "slots-fitted" => {
            for slot in Slot::of_engine(2) {
                shop.write(Fact::Fitted { slot, fitted: true });
            }
        }
        "passes-complete" => {
            let plan = plan();
            shop.write(plan.fact());
            for number in 1..=3 {
                shop.write(
                    plan.tightened(number, "", Unit::NewtonMetre)
                        .expect("no reading")
                        .expect("a pass"),
                );
            }
        }
        "end-play-last" => shop.read("end-play", "", "0.055", Unit::Millimetre),
        _ => panic!("{id} is not answered by the book"),
    }
}

fn is_answered_by_the_book(progress: &Progress, place: usize) -> bool {
    let kind = &progress.standings[place].station.step.kind;
    matches!(kind, Kind::Hold(answer) if !["builder", "outlines-clear"].contains(&answer.word()))
}

/// Walks a whole build. At each hold, a step that needs it is refused by the hold's words; the hold itself
/// is refused without a name, or while the book does not have it so.
#[test]
fn each_hold_refuses_what_needs_it_until_it_is_true() {
    let mut shop = Shop::new(BuildKind::ForcedInduction, 2);
    shop.write(Fact::DowelsSolid { solid: true });
    let keys: Vec<String> =
        shop.progress().standings.iter().map(|standing| standing.station.key()).collect();
    let mut tried = 0;
    for (place, key) in keys.iter().enumerate() {
        let progress = shop.progress();
        let standing = &progress.standings[place];
        if !standing.station.is_hold() {
            if standing.station.row().is_some() && standing.state != State::Done {
                let said = shop.refused(key, "J.");
                assert!(said.contains("pieces are read"), "{key}: {said}");
            }
            if standing.state != State::Done {
                shop.mark(key, "J.", "walked through by the test");
            }
            continue;
        }
        let by_the_book = is_answered_by_the_book(&progress, place);
        if key == "dowels-known" {
            // Written at the start: the steps of solid dowels are on this way. It has a test of its own.
            tried += 1;
            continue;
        }
        assert_eq!(standing.state, State::Ready, "{key} can be tried");
        let over = progress
            .standings
            .iter()
            .position(|standing| standing.station.needs.contains(&place))
            .unwrap_or_else(|| panic!("nothing needs {key}"));
        let over = keys[over].as_str();
        let Err(Refusal::Held(holds)) = progress.mark(over, "J.", "") else {
            panic!("{over} went over {key}")
        };
        assert!(holds.contains(&progress.words(place)), "{over} over {key}: {holds:?}");
        assert!(progress.mark(over, "J.", "the customer waits").is_ok(), "a reason goes over it");
        if by_the_book {
            let said = shop.refused(key, "J.");
            assert!(said.starts_with("Not marked: the book does not have it so."), "{key}: {said}");
            let id = standing.station.step.id.clone();
            answer(&mut shop, &id);
        } else {
            assert_eq!(progress.mark(key, " ", ""), Err(Refusal::NoName), "{key} by nobody");
            shop.mark(key, "J.", "");
        }
        assert_eq!(shop.progress().standings[place].state, State::Done, "{key} is true");
        tried += 1;
    }
    let holds = shop.progress().standings.iter().filter(|s| s.station.is_hold()).count();
    assert_eq!(tried, holds, "every hold was tried");
    let points = OpenPoints::of(&shop.book, &shop.build, &shop.sheet());
    assert_eq!((points.holds, points.steps), (vec![], vec![]), "nothing is open at the end");
}

#[test]
fn the_refusals_say_what_is_missing() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 1);
    assert_eq!(
        shop.refused("compression-before", ""),
        "Not marked: “Write down the customer’s words and what the engine is” comes first. If it is to be done all the same, write down why.",
        "a step before it"
    );
    assert_eq!(
        shop.refused("end-play-before", ""),
        "Not marked: “Oil, coolant and fuel are drained and put aside safely” must be true first. If it is to be done all the same, write down why.",
        "a hold before it"
    );
    assert_eq!(shop.refused("nothing", ""), "This build’s route has no such step.", "no step");
    shop.mark("drained", "J.", "came dry");
    assert_eq!(
        shop.refused("end-play-before", ""),
        "Not marked: 0 of 1 pieces are read. Read the others, or write down why they are left out.",
        "no reading"
    );
    assert_eq!(
        shop.refused("agreed", ""),
        "Say by whom it was found true: a name or initials.",
        "no name"
    );
    assert_eq!(
        shop.refused("rotor-on/1", ""),
        "Not marked: “Coolant seals are seated all round, not twisted, and the housing’s legs have their sealant (rotor 1)”, “Every seal of this rotor is in the slot it was cut for: marks read once more (rotor 1)”, “No corner seal has turned: each one’s slot lines up with the apex groove (rotor 1)” must be true first. If it is to be done all the same, write down why.",
        "three holds"
    );
}

#[test]
fn a_hold_that_the_book_answers_is_true_only_while_the_book_has_it_so() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let state = |shop: &Shop, key: &str| {
        let progress = shop.progress();
        progress.standings[progress.place(key).expect("a step")].state
    };
    answer(&mut shop, "slots-fitted");
    assert_eq!(state(&shop, "slots-fitted"), State::Done, "twelve seals");
    let slot = Slot::named("2R-CA").expect("a slot");
    shop.write(Fact::Fitted { slot, fitted: false });
    let progress = shop.progress();
    let standing = &progress.standings[progress.place("slots-fitted").expect("a step")];
    assert_ne!(standing.state, State::Done, "one was taken out");
    assert_eq!(standing.answer, "No seal is written down as fitted in 2R-CA.", "which");

    answer(&mut shop, "passes-complete");
    assert_eq!(state(&shop, "passes-complete"), State::Done, "three passes");
    answer(&mut shop, "end-play-last");
    assert_eq!(state(&shop, "end-play-last"), State::Done, "read after them");
    shop.write(plan().fact());
    let progress = shop.progress();
    let answer =
        |key: &str| progress.standings[progress.place(key).expect("a step")].answer.clone();
    assert_eq!(
        answer("passes-complete"),
        "Tension bolts: 0 of 3 passes are ticked off.",
        "started over"
    );
    shop.write(plan().tightened(1, "", Unit::NewtonMetre).expect("no reading").expect("a pass"));
    let progress = shop.progress();
    let answer =
        |key: &str| progress.standings[progress.place(key).expect("a step")].answer.clone();
    assert_eq!(
        answer("end-play-last"),
        "Bolts were tightened after end play was measured: measure it again.",
        "an old reading"
    );
    shop.withdraw_last();
    assert_eq!(state(&shop, "end-play-last"), State::Done, "that pass was withdrawn");
}

/// Read when the engine came in, end play says nothing of the engine put together.
#[test]
fn a_reading_as_it_came_closes_no_later_step_and_no_hold() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let standing = |shop: &Shop, key: &str| {
        let progress = shop.progress();
        progress.standings[progress.place(key).expect("a step")].clone()
    };
    shop.read("end-play", "", "0.06", Unit::Millimetre);
    assert_eq!(standing(&shop, "end-play-before").state, State::Done, "as it came");
    assert_ne!(standing(&shop, "end-play").state, State::Done, "with the spacer that stays in");
    let last = standing(&shop, "end-play-last");
    assert_ne!(last.state, State::Done, "nothing was tightened");
    assert_eq!(
        last.answer,
        "No tightening is written down yet: end play counts when it is measured after it."
    );
    shop.mark("front-bolt", "J.", "the wrench is out of the house");
    answer(&mut shop, "passes-complete");
    assert_ne!(standing(&shop, "end-play").state, State::Done, "read before the front bolt");
    assert_eq!(standing(&shop, "end-play").pieces, [unread("")], "no verdict of then");
    assert_ne!(standing(&shop, "end-play-last").state, State::Done, "read before the passes");
    shop.read("end-play", "", "0.055", Unit::Millimetre);
    assert_eq!(standing(&shop, "end-play").state, State::Done, "read again");
    assert_eq!(standing(&shop, "end-play-last").state, State::Done, "after the passes");
    shop.mark("front-bolt", "J.", "tightened once more");
    assert_ne!(standing(&shop, "end-play").state, State::Done, "older than the bolt now");
}

/// Where the passes were gone over with a reason, that is when the bolts were tightened.
#[test]
fn end_play_counts_from_the_reason_that_went_over_the_passes() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.read("end-play", "", "0.06", Unit::Millimetre);
    shop.mark("passes-complete", "J.", "ticked off on paper");
    let answer = |shop: &Shop| {
        let progress = shop.progress();
        progress.standings[progress.place("end-play-last").expect("a step")].answer.clone()
    };
    assert_eq!(
        answer(&shop),
        "Bolts were tightened after end play was measured: measure it again."
    );
    shop.read("end-play", "", "0.055", Unit::Millimetre);
    assert_eq!(answer(&shop), "");
}

/// Ticking such a hold does nothing; only a reason written down goes over it.
#[test]
fn a_tick_without_a_reason_does_not_answer_for_the_book() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.route(pitleaf_core::route::RouteFact::Done {
        step: "slots-fitted".to_owned(),
        who: "J.".to_owned(),
        why: String::new(),
    });
    let state = |shop: &Shop| {
        let progress = shop.progress();
        progress.standings[progress.place("slots-fitted").expect("a step")].state
    };
    assert_ne!(state(&shop), State::Done, "ticked");
    shop.mark("slots-fitted", "J.", "all twelve are on the paper of the shop");
    assert_eq!(state(&shop), State::Done, "with a reason");
}

/// A joint that does not hold the stack together is no part of closing it, nor does it undo the end play.
#[test]
fn only_the_joints_of_the_stack_close_it() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let answer = |shop: &Shop, key: &str| {
        let progress = shop.progress();
        progress.standings[progress.place(key).expect("a step")].answer.clone()
    };
    let tick = |shop: &mut Shop, plan: &Plan| {
        shop.write(plan.fact());
        for number in 1..=3 {
            let pass = plan.tightened(number, "", Unit::NewtonMetre);
            shop.write(pass.expect("no reading").expect("a pass"));
        }
    };
    let mut gears = plan();
    gears.joint = "Stationary gears".to_owned();
    gears.elsewhere = true;
    tick(&mut shop, &gears);
    assert_eq!(
        answer(&shop, "passes-complete"),
        "No tightening order of the stack is written down yet.",
        "gears alone"
    );
    tick(&mut shop, &plan());
    assert_eq!(answer(&shop, "passes-complete"), "", "all passes of the stack");
    shop.read("end-play", "", "0.055", Unit::Millimetre);
    gears.joint = "Oil pan".to_owned();
    tick(&mut shop, &gears);
    assert_eq!(answer(&shop, "end-play-last"), "", "the pan moves no shaft");
    // An order that can't be read is no proof that nothing is open.
    shop.write(Fact::TighteningOrder {
        joint: "Through studs".to_owned(),
        order: "1-1-1".to_owned(),
        shares: "100".to_owned(),
        torque: "38".to_owned(),
        unit: Unit::NewtonMetre,
        elsewhere: false,
        circle: false,
        places: String::new(),
    });
    assert_eq!(
        answer(&shop, "passes-complete"),
        "Through studs: the order can’t be read. Write it anew."
    );
}

/// What changes the end play afterwards wants it measured again.
#[test]
fn end_play_is_measured_after_the_spacer_and_the_front_bolt() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    answer(&mut shop, "passes-complete");
    answer(&mut shop, "end-play-last");
    let said = |shop: &Shop| {
        let progress = shop.progress();
        progress.standings[progress.place("end-play-last").expect("a step")].answer.clone()
    };
    assert_eq!(said(&shop), "");
    let choice = r#"{"spacer":"B","predicted":"0.055 mm","uncertainty":"0.003 mm"}"#;
    shop.write(Fact::Spacer(pitleaf_core::kept::read(choice).expect("a choice")));
    assert_eq!(
        said(&shop),
        "A spacer was chosen after end play was measured: measure it again with that one in."
    );
    answer(&mut shop, "end-play-last");
    assert_eq!(said(&shop), "");
    shop.read("front-bolt-torque", "", "120", Unit::NewtonMetre);
    assert_eq!(said(&shop), "Bolts were tightened after end play was measured: measure it again.");
}

#[test]
fn the_upper_dowels_are_known_once_they_are_written_down() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.mark("cleaned", "J.", "walked through by the test");
    let said = shop.refused("dowels-known", "J.");
    assert!(said.contains("Nothing is written of the upper dowels yet."), "{said}");
    shop.write(Fact::DowelsSolid { solid: false });
    let progress = shop.progress();
    let standing = &progress.standings[progress.place("dowels-known").expect("a step")];
    assert_eq!(standing.state, State::Done);
}

/// Marked true by name, it is true only as long as no outline in the book says otherwise.
#[test]
fn a_cut_into_the_corner_seals_track_reopens_the_hold() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    let state = |shop: &Shop| {
        let progress = shop.progress();
        progress.standings[progress.place("outline-clear").expect("a step")].state
    };
    let port = PortName::all(SideHousing::Front).find(|port| port.stage == Stage::Cut);
    let empty = TypedOutline::empty(port.expect("a cut port"), Unit::Millimetre);
    let outline =
        |rows: &str| Fact::Outline(TypedOutline { rows: rows.to_owned(), ..empty.clone() });
    shop.write(outline("75 10\n80 10\n80 -10\n75 -10"));
    shop.mark("outline-drawn", "J.", "walked through by the test");
    shop.mark("outline-clear", "J.", "");
    assert_eq!(state(&shop), State::Done, "clear of everything");
    // From 85 to 120 mm along the long axis: across the track of the corner seals at R = 102 mm and beyond.
    shop.write(outline("85 20\n120 20\n120 -20\n85 -20"));
    assert_ne!(state(&shop), State::Done, "changed since");
    let said = shop.refused("outline-clear", "J.");
    assert!(said.contains("into the corner seals’ track; a corner seal can drop in"), "{said}");
    let sheet = printed(&shop, Copy::Customer);
    let ports = section(&sheet, "Ports");
    let cells: Vec<&str> =
        ports.rows.iter().flat_map(|row| row.cells.iter().map(String::as_str)).collect();
    assert!(cells.iter().any(|cell| cell.contains("into the corner seals’ track")), "{cells:?}");
    shop.mark("outline-clear", "J.", "the housing is scrap, cut for show");
    assert_eq!(state(&shop), State::Done, "with a reason");
}

/// A seal that hangs over and is held asks for a decision with a reason; drawn anew, it asks again. One that
/// only touches an edge asks for none.
#[test]
fn an_overhanging_corner_seal_is_decided_on() {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    shop.mark("outline-drawn", "J.", "walked through by the test");
    let port = PortName::all(SideHousing::Front).find(|port| port.stage == Stage::Cut);
    let empty = TypedOutline::empty(port.expect("a cut port"), Unit::Millimetre);
    // A rectangle whose right end lies in the track, which begins at 107 mm on the long axis.
    let to = |x: &str| {
        let rows = format!("85 4\n{x} 4\n{x} -4\n85 -4");
        Fact::Outline(TypedOutline { rows, ..empty.clone() })
    };
    let undecided = |shop: &Shop| OpenPoints::of(&shop.book, &shop.build, &shop.sheet()).undecided;
    shop.write(to("107.5"));
    assert_eq!(undecided(&shop), [""; 0], "an edge is only touched");
    shop.mark("outline-clear", "J.", "");
    shop.write(to("109.5"));
    let open = undecided(&shop);
    assert_eq!(open.len(), 1, "{open:?}");
    assert!(open[0].starts_with("Primary intake, cut (front side housing): 2.5"), "{open:?}");
    assert!(open[0].contains("a corner seal hangs over by "), "{open:?}");
    let said = shop.refused("outline-clear", "J.");
    assert!(said.contains("Accept that with a reason under “Decisions”."), "{said}");
    let place = cuts(&shop.book, &shop.build)[0].place();
    assert_eq!(place, "front-intake-1-cut");
    assert!(decide_on(OVERHANG, &place, Choice::Accept, " ").is_err(), "not without a reason");
    shop.route(decide_on(OVERHANG, &place, Choice::Accept, "one race").expect("a reason"));
    assert_eq!(undecided(&shop), [""; 0], "decided");
    shop.mark("outline-clear", "J.", "");
    let sheet = printed(&shop, Copy::Customer);
    let decisions = section(&sheet, "Past a limit or too close to call, and what became of parts");
    let row = &decisions.rows[0].cells;
    assert_eq!(row[2..], ["accept", "one race"], "{row:?}");
    shop.write(to("110"));
    assert_eq!(undecided(&shop).len(), 1, "decided before it was drawn");
    shop.write(to("119"));
    assert_eq!(undecided(&shop), [""; 0], "no decision goes over a seal that can drop in");
    shop.route(decide_on(OVERHANG, &place, Choice::Accept, "one race").expect("a reason"));
    let said = shop.refused("outline-clear", "J.");
    assert!(said.contains("a corner seal can drop in"), "{said}");
}
