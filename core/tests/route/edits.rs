//! Edits: whatever is done to a route, it can be gone through.

use super::usual::{builds, unreached};
use pitleaf_core::route::{Answer, Each, Edit, Kind, Routing, RoutingFault, Stage, Step, When};
use proptest::prelude::*;

pub(super) fn step(id: &str, needs: &[&str]) -> Step {
    Step {
        id: id.to_owned(),
        stage: Stage::Intake,
        kind: Kind::Do,
        words: id.to_uppercase(),
        care: String::new(),
        needs: needs.iter().map(|&need| need.to_owned()).collect(),
        when: When::Always,
        each: Each::Once,
    }
}

fn routing(steps: &[(&str, &[&str])]) -> Result<Routing, RoutingFault> {
    Routing::new(steps.iter().map(|(id, needs)| step(id, needs)).collect())
}

#[track_caller]
fn fault(steps: &[(&str, &[&str])], sentence: &str) {
    assert_eq!(routing(steps).expect_err("no routing").to_string(), sentence, "{steps:?}");
}

#[test]
fn what_makes_no_route_gets_its_sentence() {
    fault(&[], "A route has at least one step.");
    fault(
        &[("A b", &[])],
        "“A b” is no id of a step: at most 40 small letters, digits and hyphens.",
    );
    fault(&[("a", &[]), ("a", &[])], "Two steps have the id “a”. Give one of them another.");
    fault(
        &[("a", &["x"])],
        "“A” needs a step “x” that is not in the route. Add it, or take it out of the needs.",
    );
    fault(
        &[("a", &["c"]), ("b", &["a"]), ("c", &["b"]), ("d", &["a"])],
        "These steps wait for each other, so none could ever be done: “A” → “C” → “B” → “A”. Take one of the needs out.",
    );
    fault(
        &[("a", &["a"])],
        "These steps wait for each other, so none could ever be done: “A” → “A”. Take one of the needs out.",
    );
    fault(&[("a", &["b"]), ("b", &[])], "“A” needs “B”, so it can’t stand before it.");
    fault(
        &[("a", &[]), ("b", &["<a"])],
        "“B” waits for “A” of the one before: both must be made for the same things, next to each other in one stage.",
    );
    let many: Vec<String> = (0..30).map(|number| format!("s{number}")).collect();
    let names: Vec<&str> = many.iter().map(String::as_str).collect();
    let mut steps: Vec<(&str, &[&str])> = names.iter().map(|&name| (name, [].as_slice())).collect();
    steps.push(("last", &names));
    fault(
        &steps,
        "Step “last” waits for more than 20 others. Leave out those that the others wait for anyway.",
    );
    let mut wordless = step("a", &[]);
    wordless.words = " ".to_owned();
    assert_eq!(
        Routing::new(vec![wordless]).expect_err("no words").to_string(),
        "Step “a” needs words, at most 500 letters.",
        "no words"
    );
    let rowless = Step { kind: Kind::Measure(String::new()), ..step("a", &[]) };
    assert_eq!(
        Routing::new(vec![rowless]).expect_err("no row").to_string(),
        "Step “a” is to measure: say which row of the sheet, by its id.",
        "no row"
    );
    let late = Step { stage: Stage::Running, ..step("a", &[]) };
    assert_eq!(
        Routing::new(vec![late, step("b", &[])]).expect_err("stages").to_string(),
        "“B” stands behind steps of a later stage. Put it with its own stage.",
        "a stage out of order"
    );
    let crowd = (0..=Routing::MOST_STEPS).map(|number| step(&format!("s{number}"), &[])).collect();
    assert_eq!(
        Routing::new(crowd).expect_err("too many").to_string(),
        "A route has at most 300 steps. Put some together.",
        "too many"
    );
}

#[test]
fn an_edit_that_would_break_it_is_refused_and_changes_nothing() {
    let three = routing(&[("a", &[]), ("b", &["a"]), ("c", &["b"])]).expect("a routing");
    let refused = |edit: Edit| three.edit(edit).expect_err("refused").to_string();
    assert_eq!(
        refused(Edit::Remove("b".into())),
        "“B” can’t be taken out while others need it: “C”. Change what they need first.",
        "needed"
    );
    assert_eq!(refused(Edit::Up("b".into())), "“B” needs “A”, so it can’t stand before it.", "up");
    assert_eq!(
        refused(Edit::Down("b".into())),
        "“C” needs “B”, so it can’t stand before it.",
        "down"
    );
    assert_eq!(refused(Edit::Up("a".into())), "It stands at the end already.", "the first");
    assert_eq!(refused(Edit::Down("c".into())), "It stands at the end already.", "the last");
    for edit in [
        Edit::Remove("x".into()),
        Edit::Up("x".into()),
        Edit::Down("x".into()),
        Edit::Put(step("x", &[])),
        Edit::AddAfter("x".into(), step("new", &[])),
    ] {
        assert_eq!(refused(edit), "There is no step “x” in this route any more.", "gone");
    }
    let twice = Edit::AddAfter("a".into(), step("c", &[]));
    assert_eq!(refused(twice), "Two steps have the id “c”. Give one of them another.", "twice");
    let ids =
        |routing: &Routing| routing.steps().iter().map(|step| step.id.clone()).collect::<Vec<_>>();
    let added = three.edit(Edit::AddAfter("a".into(), step("new", &["a"]))).expect("added");
    assert_eq!(ids(&added), ["a", "new", "b", "c"], "behind a");
    let moved = added.edit(Edit::Down("new".into())).expect("moved");
    assert_eq!(ids(&moved), ["a", "b", "new", "c"], "one further down");
    assert_eq!(
        ids(&moved.edit(Edit::Remove("c".into())).expect("removed")),
        ["a", "b", "new"],
        "c is gone"
    );
    let reworded = Step { words: "Look twice".into(), ..step("new", &["b"]) };
    let put = moved.edit(Edit::Put(reworded)).expect("reworded");
    assert_eq!(put.step("new").map(|step| step.words.as_str()), Some("Look twice"), "its words");
    assert_eq!(ids(&three), ["a", "b", "c"], "the first one stays as it was");
}

#[test]
fn at_the_edge_of_a_stage_a_step_changes_its_stage() {
    let late = Step { stage: Stage::StripDown, ..step("b", &[]) };
    let two = Routing::new(vec![step("a", &[]), late]).expect("a routing");
    let up = two.edit(Edit::Up("b".into())).expect("into the stage before");
    assert_eq!(up.step("b").map(|step| step.stage), Some(Stage::Intake), "its stage");
    let order =
        |routing: &Routing| routing.steps().iter().map(|step| step.id.clone()).collect::<Vec<_>>();
    assert_eq!(order(&up), ["a", "b"], "its place stays");
    let down = two.edit(Edit::Down("a".into())).expect("into the next stage");
    assert_eq!(down.step("a").map(|step| step.stage), Some(Stage::StripDown), "its stage");
    assert_eq!(order(&down), ["a", "b"], "its place stays");
    let added = two.edit(Edit::AddAfter("b".into(), step("new", &[]))).expect("added");
    assert_eq!(added.step("new").map(|step| step.stage), Some(Stage::StripDown), "where it stands");
    assert_eq!(order(&added), ["a", "b", "new"], "behind b");
}

#[test]
fn a_step_is_not_taken_out_while_the_next_thing_waits_for_it() {
    let each = |id, needs: &[&str]| Step { each: Each::Rotor, ..step(id, needs) };
    let two = Routing::new(vec![each("a", &[]), each("b", &["<a"])]).expect("a routing");
    assert_eq!(
        two.edit(Edit::Remove("a".into())).expect_err("refused").to_string(),
        "“A” can’t be taken out while others need it: “B”. Change what they need first.",
        "b of the next rotor waits for a of the one before"
    );
}

/// Some edit of the usual route, sensible or not.
fn edits() -> impl Strategy<Value = Vec<(usize, usize, usize, bool)>> {
    prop::collection::vec((0..6_usize, 0..200_usize, 0..200_usize, any::<bool>()), 1..60)
}

proptest! {
    // Every case goes through sixteen sorts of build.
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn no_cycle_and_no_unreachable_step_whatever_the_edits(edits in edits()) {
        let mut routing = Routing::usual();
        for (what, at, other, one_before) in edits {
            let steps = routing.steps();
            let at = steps[at % steps.len()].clone();
            let other = steps[other % steps.len()].id.clone();
            let sign = if one_before { "<" } else { "" };
            let edit = match what {
                0 => Edit::Up(at.id),
                1 => Edit::Down(at.id),
                2 => Edit::Remove(at.id),
                3 => Edit::AddAfter(at.id.clone(), Step { id: routing.free_id(), ..step("new", &[&other]) }),
                4 => {
                    let mut put = at;
                    put.needs.push(format!("{sign}{other}"));
                    Edit::Put(put)
                }
                _ => {
                    let mut put = at;
                    put.each = Each::ALL[other.len() % Each::ALL.len()];
                    put.kind = Kind::Hold(Answer::Builder);
                    Edit::Put(put)
                }
            };
            if let Ok(edited) = routing.edit(edit) {
                routing = edited;
            }
        }
        for (kind, rotors, solid) in builds() {
            let stations = routing.stations(kind, rotors, solid);
            prop_assert_eq!(unreached(&stations), Vec::<String>::new());
            for (at, station) in stations.iter().enumerate() {
                prop_assert!(station.needs.iter().all(|&need| need < at), "{} stands before what it needs", station.key());
            }
        }
        prop_assert_eq!(pitleaf_core::route::read(&pitleaf_core::route::write(&routing)), Ok(routing));
    }
}
