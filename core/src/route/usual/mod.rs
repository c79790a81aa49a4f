//! The route that ships, as tables: common practice in our own words, no source. The builder's own
//! stands in its place.
//!
//! The tables beside this file hold rows alone. Two rows of one stage that are made for each rotor are
//! gone through rotor by rotor.

mod assembly;
mod close_up;
mod parts;
mod seals;
mod strip_down;

use super::{Answer, Each, Kind, Stage, Step, When};

/// A row of the tables.
struct Line {
    id: &'static str,
    kind: Sort,
    words: &'static str,
    care: &'static str,
    /// Ids, with spaces between.
    needs: &'static str,
    when: When,
    each: Each,
}

/// The kind of a row.
#[derive(Clone, Copy)]
enum Sort {
    Do,
    Measure(&'static str),
    Hold(Answer),
}

/// What a row starts from: something to do, once, in every build.
const DO: Line = Line {
    id: "",
    kind: Sort::Do,
    words: "",
    care: "",
    needs: "",
    when: When::Always,
    each: Each::Once,
};

/// A hold that the builder finds true.
const HOLD: Line = Line { kind: Sort::Hold(Answer::Builder), ..DO };

const TABLES: &[(Stage, &[Line])] = &[
    (Stage::Intake, strip_down::INTAKE),
    (Stage::StripDown, strip_down::STRIP_DOWN),
    (Stage::Decisions, parts::DECISIONS),
    (Stage::Porting, parts::PORTING),
    (Stage::Machining, parts::MACHINING),
    (Stage::Lapping, parts::LAPPING),
    (Stage::Balancing, parts::BALANCING),
    (Stage::Seals, seals::SEALS),
    (Stage::MockUp, assembly::MOCK_UP),
    (Stage::Assembly, assembly::ASSEMBLY),
    (Stage::FrontStack, close_up::FRONT_STACK),
    (Stage::After, close_up::AFTER),
    (Stage::Running, close_up::RUNNING),
];

/// Every step of it.
pub(super) fn steps() -> Vec<Step> {
    TABLES.iter().flat_map(|(stage, lines)| lines.iter().map(|line| step(*stage, line))).collect()
}

/// The words of a step of the usual route.
pub(super) fn words_of(id: &str) -> Option<&'static str> {
    TABLES.iter().flat_map(|(_, lines)| *lines).find(|line| line.id == id).map(|line| line.words)
}

fn step(stage: Stage, line: &Line) -> Step {
    Step {
        id: line.id.to_owned(),
        stage,
        kind: match line.kind {
            Sort::Do => Kind::Do,
            Sort::Measure(row) => Kind::Measure(row.to_owned()),
            Sort::Hold(answer) => Kind::Hold(answer),
        },
        words: line.words.to_owned(),
        care: line.care.to_owned(),
        needs: line.needs.split_whitespace().map(str::to_owned).collect(),
        when: line.when,
        each: line.each,
    }
}
