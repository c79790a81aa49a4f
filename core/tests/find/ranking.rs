//! What comes first.

use crate::{of_kind, tables};
use pitleaf_core::calculators::Calculator;
use pitleaf_core::find::{Kind, Place};
use pitleaf_core::route::Routing;

/// The very first answer leads there.
#[track_caller]
fn check(query: &str, wanted: &Place) {
    let finder = tables();
    let groups = finder.find(query);
    let first = groups.first().map(|group| &group.found[0].place);
    assert_eq!(first, Some(wanted), "{query:?} finds {groups:#?}");
}

fn limit(id: &str) -> Place {
    Place::Limit(id.to_owned())
}

fn step(id: &str) -> Place {
    Place::Step(id.to_owned())
}

/// Words as builders type them: common practice, no source.
#[test]
fn the_first_answer_to_a_word_of_the_trade_is_what_it_means() {
    for (query, wanted) in [
        ("endplay", limit("end-play")),
        ("end play", limit("end-play")),
        ("J port", Place::Calculator(Calculator::Ports)),
        ("j-port", Place::Calculator(Calculator::Ports)),
        ("side port", Place::Calculator(Calculator::Ports)),
        ("spring force", limit("apex-seal-spring-long")),
        ("chatter marks", limit("rotor-housing-track-wear")),
        ("flaking", limit("rotor-housing-track-wear")),
        ("coolant seal", step("coolant-seals")),
        ("water seal", step("coolant-seals")),
        ("water seals", step("coolant-seals")),
        ("crack test", step("rotor-looked-at")),
    ] {
        check(query, &wanted);
    }
}

/// Whether two words are run together or not, they ask the same.
#[test]
fn two_words_run_together_find_what_they_find_apart() {
    let finder = tables();
    for two in [
        "end play",
        "end float",
        "end gap",
        "side seal",
        "apex seal",
        "corner seal",
        "oil seal",
        "oil pump",
    ] {
        let apart = finder.find(two);
        assert!(apart.len() > 2, "{two}: {apart:?}");
        assert_eq!(finder.find(&two.replace(' ', "")), apart, "{two}");
    }
}

/// Of what is nowhere here, another word that looks like it is no answer.
#[test]
fn a_word_of_the_trade_that_is_nowhere_here_is_not_taken_for_another() {
    let finder = tables();
    for query in ["flood", "omp", "OMP", "metering pump"] {
        assert_eq!(finder.find(query), [], "{query:?}");
    }
    for query in ["crack", "crack test"] {
        assert_eq!(of_kind(&finder, Kind::Calculator, query), [] as [&_; 0], "{query:?}: crank");
    }
}

/// What a step belongs to counts more than what is said beside it: who asks for a stage gets its steps
/// before those of other stages whose cautions have the word.
#[test]
fn a_steps_stage_counts_more_than_its_cautions() {
    let finder = tables();
    let routing = Routing::usual();
    let has = |text: &str, word: &str| {
        text.to_lowercase().split(|letter: char| !letter.is_alphanumeric()).any(|own| own == word)
    };
    let mut others = 0;
    for stage in routing.steps().iter().map(|step| step.stage.name().to_lowercase()) {
        for word in stage.split(' ').filter(|word| word.len() > 3) {
            let mut is_past = false;
            for found in of_kind(&finder, Kind::Step, word) {
                let Place::Step(id) = &found.place else { panic!("{:?}", found.place) };
                let step = routing.steps().iter().find(|step| step.id == *id).expect("a step");
                let in_stage = has(step.stage.name(), word);
                let in_words = step.words.to_lowercase().contains(&word[..4]);
                if has(&step.care, word) && !in_stage && !in_words {
                    is_past = true;
                    others += 1;
                } else if in_stage && !in_words {
                    assert!(!is_past, "{word}: {id} of the stage comes after one of another");
                }
            }
        }
    }
    assert!(others > 0, "no caution has the word of another stage");
}
