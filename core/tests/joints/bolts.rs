//! Bolts by place, on a circle and by name; what a tap does; the picture.

use pitleaf_core::joints::bolt_picture::picture;
use pitleaf_core::joints::bolts::{Bolts, tapped, turn};
use pitleaf_core::joints::sequence::OrderFault;
use pitleaf_core::quantity::Unit;
use pitleaf_core::trochoid::Point;

fn placed(text: &str) -> Bolts {
    Bolts::placed(text, Unit::Millimetre).unwrap_or_else(|fault| panic!("{text}: {fault}"))
}

#[test]
fn places_are_read_in_both_units_and_signs() {
    let bolts = placed("-80 12,5\n\n80; -12.5\n0 -0.000\n");
    let places: Vec<_> = bolts.places().iter().map(|place| place.millimetres()).collect();
    assert_eq!(places, [(-80.0, 12.5), (80.0, -12.5), (0.0, 0.0)], "millimetres");
    let inches = Bolts::placed("1 2\n-4 0", Unit::Inch).expect("places");
    let places: Vec<_> = inches.places().iter().map(|place| place.millimetres()).collect();
    assert_eq!(places, [(25.4, 50.8), (-101.6, 0.0)], "inches");
    let back = Bolts::placed(&inches.rows(), Unit::Millimetre);
    assert_eq!(back.as_ref(), Ok(&inches), "as written in the book");
}

#[test]
fn what_makes_no_bolts_says_where_and_what_to_do() {
    let places =
        |text: &str| Bolts::placed(text, Unit::Millimetre).expect_err("refused").to_string();
    for (text, sentence) in [
        (
            " ",
            "Still to give: the bolts. Tap them on the picture, paste their places, or list their names in the manual’s order.",
        ),
        ("0 0", "One bolt makes no order. Give at least two."),
        ("0 0\n\n5", "Row 3 is no place. Give two figures, x and y: 40 -62.5."),
        ("0 0\n1 2 3", "Row 2 is no place. Give two figures, x and y: 40 -62.5."),
        ("0 0\n1 two", "Row 2 is no place. Give two figures, x and y: 40 -62.5."),
        (
            "0 0\n0 1100",
            "Row 2 lies more than a metre from the middle. Check the point and the unit.",
        ),
        ("0 0\n40 0\n40 1", "Bolts B and C stand in one place. Leave one of them out."),
    ] {
        assert_eq!(places(text), sentence, "{text:?}");
    }
    let many: String = (0..61).map(|bolt| format!("{} 0\n", 5 * bolt)).collect();
    assert_eq!(places(&many), "61 bolts make no pattern here. Give 2 to 60.", "too many");
    assert_eq!(Bolts::circle(61), Err(OrderFault::Count(61)), "a circle of too many");
    assert_eq!(Bolts::named("\n"), Err(OrderFault::NoBolts), "no name");
    assert_eq!(Bolts::named("1-2-1"), Err(OrderFault::Twice("1".to_owned())), "a name twice");
}

#[test]
fn bolts_are_called_by_letters_and_turns_are_counted() {
    let circle = Bolts::circle(60).expect("a circle");
    let names: Vec<String> = [1, 26, 27, 52, 53, 60].map(|bolt| circle.name(bolt)).into();
    assert_eq!(names, ["A", "Z", "AA", "AZ", "BA", "BH"], "letters");
    let turns: Vec<String> = [1, 2, 3, 4, 11, 12, 13, 21, 22, 60].map(turn).into();
    let wanted = if pitleaf_core::language::IS_GERMAN {
        ["1.", "2.", "3.", "4.", "11.", "12.", "13.", "21.", "22.", "60."]
    } else {
        ["1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "22nd", "60th"]
    };
    assert_eq!(turns, wanted, "turns");
}

#[test]
fn an_own_order_is_read_by_the_bolts_names() {
    let circle = Bolts::circle(5).expect("a circle");
    for text in ["A C E B D", "a-c-e-b-d", "a, c; e\nB,D", "A→C→E→B→D"] {
        let order = circle.read_order(text).unwrap_or_else(|fault| panic!("{text}: {fault}"));
        assert_eq!(circle.said(&order), "A-C-E-B-D", "{text}");
    }
    let sentence = |text: &str| circle.read_order(text).expect_err("refused").to_string();
    assert_eq!(sentence("A B B"), "Bolt B comes twice. Leave it in once.", "twice");
    assert_eq!(sentence("A B C E"), "Bolt D is missing. Every bolt comes once.", "missing");
    assert_eq!(sentence("A B C 4"), "There is no bolt 4: they are called A to E.", "a number");
    let named = Bolts::named("front top, rear-top, low").expect("names");
    let order = named.usual_order().expect("an order");
    assert_eq!(named.said(&order), "front top, rear-top, low", "commas, so that it reads back");
    assert_eq!(Bolts::named(&named.said(&order)), Ok(named), "and it does");
}

#[test]
fn a_tap_adds_a_bolt_and_a_tap_on_it_takes_it_out() {
    let tap =
        |rows: &str, x: f64, y: f64| tapped(rows, Unit::Millimetre, Point::from_millimetres(x, y));
    let one = tap("", 40.4, -62.6);
    assert_eq!(one, "40 -63", "to the millimetre");
    let two = tap(&one, -40.0, 63.0);
    assert_eq!(two, "40 -63\n-40 63", "behind the first");
    assert_eq!(tap(&two, 43.0, -60.0), "-40 63", "near the first: out");
    assert_eq!(tap("4o -63\n-40 63", 0.0, 0.0), "4o -63\n-40 63\n0 0", "what can’t be read stays");
    assert_eq!(
        tapped("", Unit::Inch, Point::from_millimetres(25.2, -50.9)),
        "1 -2",
        "to a twentieth of an inch"
    );
}

/// The picture holds every bolt within its frame, its turn beside it, and a leg of the way less than bolts.
#[test]
fn the_picture_shows_each_bolt_its_turn_and_the_way() {
    let bolts = placed("-80 0\n0 30\n80 0\n0 -30");
    let order = bolts.usual_order().expect("an order");
    let drawn = picture(&bolts, Some(&order), &[]);
    let shown: Vec<_> = drawn.marks.iter().map(|mark| (mark.name.as_str(), mark.at)).collect();
    assert_eq!(
        shown,
        [("A", (-8000, 0)), ("B", (0, -3000)), ("C", (8000, 0)), ("D", (0, 3000))],
        "hundredths of a millimetre, y downward"
    );
    let turns: Vec<_> =
        drawn.marks.iter().map(|mark| mark.turn.clone().map(|turn| turn.0)).collect();
    let wanted = [3, 1, 4, 2].map(|number| Some(turn(number)));
    assert_eq!(turns, wanted, "B, D, A, C");
    assert_eq!(drawn.way.matches('M').count(), 3, "legs: {}", drawn.way);
    assert_eq!(drawn.heads.matches('Z').count(), 3, "heads: {}", drawn.heads);
    // The first leg runs from B straight down to D: an arrowhead whose tip is at D's edge.
    let tip = format!("M0 {}", 3000 - drawn.radius);
    assert!(drawn.heads.starts_with(&tip), "{} at {tip}", drawn.heads);
    for mark in &drawn.marks {
        let (_, beside) = mark.turn.clone().expect("a turn");
        for (x, y) in [mark.at, beside] {
            let (right, low) =
                (drawn.frame.left + drawn.frame.width, drawn.frame.top + drawn.frame.height);
            assert!(
                (drawn.frame.left..right).contains(&x) && (drawn.frame.top..low).contains(&y),
                "{mark:?}"
            );
        }
    }
    let named = Bolts::named("1 2 3").expect("names");
    assert!(picture(&named, None, &[]).marks.is_empty(), "nobody said where they stand");
}

#[test]
fn a_circle_is_drawn_clockwise_from_the_top() {
    let circle = Bolts::circle(4).expect("a circle");
    let places: Vec<_> =
        picture(&circle, None, &[]).marks.into_iter().map(|mark| mark.at).collect();
    assert_eq!(places, [(0, -10_000), (10_000, 0), (0, 10_000), (-10_000, 0)], "clockwise");
}
