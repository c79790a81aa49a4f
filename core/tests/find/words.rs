//! What is no limit: calculators, tables, steps, help.

use crate::{of_kind, tables};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::find::{Finder, Kind, Place};
use pitleaf_core::help::Topic;
use pitleaf_core::joints::threads::{Drill, Thread};
use pitleaf_core::route::Routing;

/// Among the first of its kind stands what leads there.
#[track_caller]
fn check(finder: &Finder, query: &str, wanted: &Place) {
    let groups = finder.find(query);
    let first = groups.iter().flat_map(|group| group.found.iter().take(6));
    let places: Vec<&Place> = first.map(|found| &found.place).collect();
    assert!(places.contains(&wanted), "{query:?} finds {places:?}");
}

#[test]
fn calculators_are_found_by_name_by_other_words_and_misspelt() {
    let finder = tables();
    for calculator in Calculator::all() {
        check(&finder, calculator.name(), &Place::Calculator(calculator));
    }
    for (query, calculator) in [
        ("bolt stretch", Calculator::Clamp),
        ("sequence", Calculator::Order),
        ("interferance", Calculator::Press),
        ("H7", Calculator::Fits),
        ("h6", Calculator::Fits),
        ("port timing", Calculator::Ports),
        ("convertor", Calculator::Convert),
        ("thermal expansion", Calculator::HotGap),
        ("feler leaves", Calculator::Leaves),
        ("hose", Calculator::OilLine),
    ] {
        check(&finder, query, &Place::Calculator(calculator));
    }
}

#[test]
fn rows_of_the_tables_are_found_by_their_names() {
    let finder = tables();
    for thread in Thread::all() {
        check(&finder, &thread.name(), &Place::Thread(thread));
    }
    for drill in Drill::all() {
        check(&finder, &format!("drill {drill}"), &Place::Drill(drill));
    }
    check(&finder, "#7", &Place::Drill(Drill::Number(7)));
    check(&finder, "M10x1,25", &Place::Thread(Thread::named("M10 × 1.25").expect("a thread")));
    check(&finder, "dash 6", &Place::Port(6));
    check(&finder, "-4", &Place::Port(4));
}

#[test]
fn steps_and_help_are_found_by_their_words() {
    let finder = tables();
    for step in Routing::usual().steps() {
        // Two steps may have the same words: for engines with boost and without.
        let found = of_kind(&finder, Kind::Step, &step.words);
        assert!(
            found.iter().any(|found| found.place == Place::Step(step.id.clone())),
            "{}: {:?}",
            step.id,
            found.first()
        );
    }
    for topic in Topic::all() {
        let found = of_kind(&finder, Kind::Help, topic.title);
        assert_eq!(found.first().map(|found| &found.place), Some(&Place::Help(topic.id)));
    }
    check(&finder, "needle bearing dropped", &Place::Step("needles-in-place".to_owned()));
    check(&finder, "why backlash", &Place::Help("gear-backlash"));
}

#[test]
fn the_kind_with_the_best_answer_comes_first() {
    let finder = tables();
    let kinds = |query: &str| finder.find(query).iter().map(|group| group.kind).collect::<Vec<_>>();
    assert_eq!(kinds("drill no. 7").first(), Some(&Kind::Table));
    assert_eq!(kinds("tightening order").first(), Some(&Kind::Calculator));
    assert_eq!(kinds("needle bearing dropped"), [Kind::Step]);
    let names = [
        Kind::Limit,
        Kind::Calculator,
        Kind::Table,
        Kind::Step,
        Kind::Slot,
        Kind::Note,
        Kind::Help,
    ]
    .map(Kind::name);
    for (at, name) in names.iter().enumerate() {
        assert!(!names[..at].contains(name), "{name} twice");
    }
}
