//! A joint's tightening plan, as typed and as the book has it; and the hold on a shut oil passage.

use pitleaf_core::book::{Book, Entry, EntryId, FORMAT, Fact};
use pitleaf_core::joints::bolts::Bolts;
use pitleaf_core::joints::oil_feed::{Feed, Held};
use pitleaf_core::joints::plan::{Plan, joints, passes_done};
use pitleaf_core::limits::{BuildKind, Sheet};
use pitleaf_core::quantity::Unit;
use uom::si::length::millimeter;

fn id(text: &str) -> EntryId {
    EntryId(text.into())
}

/// A book with facts written one after the other, called e1, e2, …
fn book(facts: &[Fact]) -> Book {
    let mut book = Book::default();
    for (fact, order) in facts.iter().zip(1..) {
        let name = if order == 1 { "kestrel".to_owned() } else { format!("e{order}") };
        let entry = Entry {
            format: FORMAT,
            id: id(&name),
            build: id("kestrel"),
            order,
            at: 1_800_000_000_000,
            fact: fact.clone(),
        };
        assert!(book.take(entry), "{name} is new");
    }
    book
}

fn opened() -> Fact {
    let name = "Kestrel".to_owned();
    Fact::Opened { name, kind: BuildKind::ForcedInduction, rotors: 2, demo: true }
}

fn circle(count: u16) -> Bolts {
    Bolts::circle(count).expect("a circle")
}

/// Four bolts on a circle.
fn plan(joint: &str, order: &str) -> Plan {
    Plan::read(joint, circle(4), order, "33, 67, 100", "38", Unit::NewtonMetre).expect("a plan")
}

fn done(number: u16) -> Fact {
    done_at(number, "")
}

fn done_at(number: u16, read: &str) -> Fact {
    let fact = plan("Tension bolts", "").tightened(number, read, Unit::PoundForceFoot);
    fact.expect("a torque").expect("a pass")
}

#[test]
fn on_a_circle_a_plan_goes_crosswise_in_rising_passes_and_once_around() {
    let plan = plan("Stationary gear", "");
    let wanted = [
        ("12.5", "A-C-B-D", "in the order shown"),
        ("25.5", "A-C-B-D", "in the order shown"),
        // As typed, not 38.0.
        ("38", "A-C-B-D", "in the order shown"),
        ("38", "A-B-C-D", "once around"),
    ];
    assert_eq!(passes(&plan), told(wanted), "passes");
}

type Told = Vec<(String, String, String)>;

fn told<const N: usize>(rows: [(&str, &str, &str); N]) -> Told {
    rows.map(|(torque, order, way)| (torque.into(), order.into(), way.into())).into()
}

fn passes(plan: &Plan) -> Told {
    (1..)
        .zip(plan.passes())
        .map(|(number, pass)| {
            (plan.wrench(pass), plan.bolts.said(&pass.order), plan.way(number).to_owned())
        })
        .collect()
}

/// What holds the stack stands on no circle: its order comes from the places, or from the manual's own list,
/// and the last pass goes the same way once more.
#[test]
fn placed_bolts_go_from_the_middle_outwards_and_named_ones_as_listed() {
    let placed = Bolts::placed("-80 0\n0 10\n80 0\n0 -10", Unit::Millimetre).expect("places");
    let of = |bolts: Bolts| {
        Plan::read("Tension bolts", bolts, "", "50, 100", "38", Unit::NewtonMetre).expect("a plan")
    };
    let wanted = [
        ("19.0", "B-D-A-C", "in the order shown"),
        ("38", "B-D-A-C", "in the order shown"),
        ("38", "B-D-A-C", "once more, same order"),
    ];
    assert_eq!(passes(&of(placed)), told(wanted), "by place");
    let named = Bolts::named("7 2 11 4").expect("names");
    let wanted = [
        ("19.0", "7-2-11-4", "in the order shown"),
        ("38", "7-2-11-4", "in the order shown"),
        ("38", "7-2-11-4", "once more, same order"),
    ];
    assert_eq!(passes(&of(named)), told(wanted), "by name");
}

/// An order as entries had it before places were asked for: numbers, on no circle that anybody named.
#[test]
fn an_old_order_is_read_as_its_list() {
    let old = r#"{"tightening-order":{"joint":"Tension bolts","order":"1-3-2-4","shares":"33, 67, 100","torque":"38","unit":"N·m"}}"#;
    let fact: Fact = pitleaf_core::kept::read(old).expect("an old entry");
    let book = book(&[opened(), fact]);
    let plan = Plan::of(&book, &id("kestrel"), "Tension bolts").expect("a plan");
    assert_eq!(plan.bolts, Bolts::named("1 3 2 4").expect("names"), "by name alone");
    assert_eq!(plan.passes().len(), 4, "as many passes as it had");
    assert!(plan.bolts.places().is_empty(), "no picture is made up");
}

#[test]
fn a_plan_of_the_builders_own_reads_back_from_the_book() {
    let on_circle = plan("Front cover", "b d a c");
    let read = |name: &str, bolts: Result<Bolts, _>| {
        Plan::read(name, bolts.expect("bolts"), "", "50, 100", "38", Unit::NewtonMetre)
            .expect("a plan")
    };
    let placed = read("Tension bolts", Bolts::placed("-3.15 0.5\n0 10,25\n2 -4", Unit::Inch));
    let named = read("Studs", Bolts::named("front top, rear-top, low"));
    let book = book(&[opened(), on_circle.fact(), placed.fact(), named.fact()]);
    for own in [on_circle, named] {
        assert_eq!(Plan::of(&book, &id("kestrel"), &own.joint), Some(own.clone()), "{}", own.joint);
    }
    let back = Plan::of(&book, &id("kestrel"), "Tension bolts").expect("a plan");
    assert_eq!(back.order, placed.order, "the same order");
    for (one, other) in back.bolts.places().iter().zip(placed.bolts.places()) {
        // Written to the hundredth of a millimetre.
        assert!(one.distance(other).get::<millimeter>() < 0.008, "{one:?} {other:?}");
    }
    assert_eq!(Plan::of(&book, &id("kestrel"), "Oil pan"), None, "another joint");
}

#[test]
fn what_makes_no_plan_says_why() {
    let sentence = |joint: &str, order: &str, shares: &str, torque: &str| {
        Plan::read(joint, circle(4), order, shares, torque, Unit::NewtonMetre)
            .expect_err("refused")
            .to_string()
    };
    let passes = "The passes must rise and end at 100 %. Write them as 33, 67, 100.";
    assert_eq!(
        sentence(" ", "", "100", "38"),
        "Say which joint it is: “Tension bolts”.",
        "no joint"
    );
    assert_eq!(
        sentence("x", "A B C", "100", "38"),
        "Bolt D is missing. Every bolt comes once.",
        "a bolt left out"
    );
    assert_eq!(sentence("x", "", "100, 50", "38"), passes, "falling");
    assert_eq!(sentence("x", "", "half, 100", "38"), passes, "a word");
    assert_eq!(sentence("x", "", "", "38"), passes, "no pass");
    assert_eq!(
        sentence("x", "", "100", "3800"),
        "A tightening torque lies between 1 and 1000 N·m. Check the decimal point and the unit.",
        "ten times too much"
    );
}

#[test]
fn passes_are_ticked_off_and_a_new_order_starts_over() {
    let order = plan("Tension bolts", "").fact();
    let mut facts = vec![opened(), order.clone(), done(2), done(1), done(2)];
    let passes = |facts: &[Fact]| -> Vec<u16> {
        let done = passes_done(&book(facts), &id("kestrel"), "Tension bolts");
        done.iter().map(|done| done.pass).collect()
    };
    assert_eq!(passes(&facts), [1, 2], "each once, in order");
    facts.push(Fact::Withdrawn { entry: id("e4") });
    assert_eq!(passes(&facts), [2], "the first was withdrawn");
    facts.push(order);
    assert_eq!(passes(&facts), [0; 0], "loosened: nothing counts");
    facts.push(done(1));
    assert_eq!(passes(&facts), [1], "and again from the first");
    let none = |number| plan("x", "").tightened(number, "", Unit::NewtonMetre);
    assert_eq!(none(0), Ok(None), "passes are counted from 1");
    assert_eq!(none(5), Ok(None), "there are four");
}

#[test]
fn a_pass_is_written_at_what_the_wrench_read() {
    let facts = [
        opened(),
        plan("Tension bolts", "").fact(),
        done(1),
        done_at(2, "19"),
        done_at(1, "13 N·m"),
    ];
    let done = passes_done(&book(&facts), &id("kestrel"), "Tension bolts");
    let read: Vec<_> = done.iter().map(|at| (at.pass, at.torque.as_str(), at.unit)).collect();
    assert_eq!(
        read,
        [(1, "13", Unit::NewtonMetre), (2, "19", Unit::PoundForceFoot)],
        "as read last, in the unit read in"
    );
    let refused = plan("x", "").tightened(1, "1300", Unit::NewtonMetre).expect_err("far off");
    assert_eq!(
        refused.to_string(),
        "A tightening torque lies between 1 and 1000 N·m. Check the decimal point and the unit."
    );
    assert!(plan("x", "").tightened(1, "tight", Unit::NewtonMetre).is_err(), "a word");
}

#[test]
fn the_joints_of_a_build_are_those_with_an_order_in_force() {
    let cover = plan("Front cover", "").fact();
    let book = book(&[
        opened(),
        cover.clone(),
        plan("Tension bolts", "").fact(),
        cover,
        plan("Oil pan", "").fact(),
        Fact::Withdrawn { entry: id("e5") },
    ]);
    assert_eq!(joints(&book, &id("kestrel")), ["Front cover", "Tension bolts"], "each once");
}

#[test]
fn solid_dowels_hold_the_build_until_a_feed_is_recorded() {
    let solid = |solid| Fact::DowelsSolid { solid };
    let feed = Fact::OilFeed {
        words: "filter block to front cover".to_owned(),
        bore: "6".to_owned(),
        unit: Unit::Millimetre,
    };
    let state = |facts: &[Fact]| Feed::of(&book(facts), &id("kestrel"));
    assert_eq!(state(&[opened()]), Feed::NotKnown, "nothing written");
    assert_eq!(state(&[opened(), solid(false)]), Feed::Passage, "hollow");
    assert_eq!(state(&[opened(), solid(true)]), Feed::Shut, "solid");
    assert_eq!(state(&[opened(), feed.clone(), solid(true)]), Feed::Outside, "fed, then solid");
    let fed = [opened(), solid(true), feed];
    assert_eq!(state(&fed), Feed::Outside, "solid, then fed");
    let mut withdrawn = fed.to_vec();
    withdrawn.push(Fact::Withdrawn { entry: id("e3") });
    assert_eq!(state(&withdrawn), Feed::Shut, "the feed was withdrawn");
    assert_eq!(state(&[opened(), solid(true), solid(false)]), Feed::Passage, "hollow after all");
    assert_eq!(Feed::Shut.sign_off(), Err(Held), "held");
    for free in [Feed::NotKnown, Feed::Passage, Feed::Outside] {
        assert_eq!(free.sign_off(), Ok(()), "{free}");
    }
}

#[test]
fn the_feed_in_words() {
    for (feed, words) in [
        (Feed::NotKnown, "Nothing is written of the upper dowels yet."),
        (Feed::Passage, "Hollow upper dowels: the passage to the front bearing is open."),
        (
            Feed::Outside,
            "Solid upper dowels, and an outside feed to the front bearing is recorded.",
        ),
        (
            Feed::Shut,
            "Not to be signed off: the upper dowels are solid and shut the oil passage to the front bearing. Record the outside feed, or say that the dowels are hollow.",
        ),
    ] {
        assert_eq!(feed.to_string(), words, "{feed:?}");
    }
}

#[test]
fn the_book_tells_them_in_words() {
    let facts = [
        opened(),
        plan("Tension bolts", "").fact(),
        done(1),
        Fact::DowelsSolid { solid: true },
        Fact::DowelsSolid { solid: false },
        Fact::OilFeed {
            words: "block to cover".to_owned(),
            bore: "6".to_owned(),
            unit: Unit::Millimetre,
        },
        Fact::OilFeed { words: "block to cover".to_owned(), bore: String::new(), unit: Unit::Inch },
    ];
    let sheet = Sheet::starter();
    let words: Vec<(String, String)> = book(&facts)
        .entries()
        .skip(1)
        .map(|entry| entry.words(&sheet))
        .map(|words| (words.about, words.says))
        .collect();
    let wanted = [
        ("Tension bolts · order", "A-C-B-D to 38 N·m"),
        ("Tension bolts · tightened", "pass 1 of 4 at 12.5 N·m"),
        ("Upper dowels", "solid"),
        ("Upper dowels", "hollow"),
        ("Outside oil feed", "block to cover, bore 6 mm"),
        ("Outside oil feed", "block to cover"),
    ];
    assert_eq!(words, wanted.map(|(about, says)| (about.into(), says.into())), "lines");
}

#[test]
fn a_wrench_that_read_twice_what_it_was_set_to_is_asked_about() {
    let plan =
        Plan::read("Studs", circle(4), "", "50, 100", "40", Unit::NewtonMetre).expect("a plan");
    let asks = |read: &str, unit| plan.far_off(1, read, unit);
    assert_eq!(
        asks("400", Unit::NewtonMetre).as_deref(),
        Some(
            "400 N·m is far from the 20.0 N·m of pass 1. Did the point or the unit slip? Press again if it is so."
        )
    );
    // 15 lbf·ft are 20.3 N·m.
    for (read, unit) in
        [("21", Unit::NewtonMetre), ("15", Unit::PoundForceFoot), ("", Unit::NewtonMetre)]
    {
        assert_eq!(asks(read, unit), None, "{read}");
    }
    assert!(asks("2", Unit::NewtonMetre).is_some(), "far too little");
}
