//! A route as a file, to be carried to another shop: `{"file":"pitleaf route","format":1,"steps":[…]}`.

use super::{Answer, Each, Kind, Routing, RoutingFault, Stage, Step, When};
use crate::kept;
use crate::kept_fields;
use pitleaf_translated::{tr, translated};
use std::fmt;

const KIND: &str = "pitleaf route";
const FORMAT: u32 = 1;
/// The largest file taken in.
pub const MOST_BYTES: usize = 1 << 20;
/// Braces and brackets in each other: the file, its steps, a step, its needs.
const DEEPEST: usize = 4;

/// Why a file was not taken in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileFault {
    /// Larger than any route.
    TooLarge,
    /// Lists within lists, deeper than a route's.
    TooDeep,
    /// No route of ours.
    NotARoute,
    /// Written by a newer version.
    Newer,
    /// A step, counted from 1, has a word that is not known: which, and what it says.
    Word(usize, &'static str, String),
    /// The steps make no routing.
    Routing(RoutingFault),
}

struct Text {
    file: String,
    format: u32,
    steps: Vec<StepText>,
}

struct StepText {
    id: String,
    stage: String,
    kind: String,
    row: String,
    by: String,
    words: String,
    care: String,
    needs: Vec<String>,
    when: String,
    each: String,
}

kept_fields!(Text { file, format, steps });
kept_fields!(StepText {
    id: or_usual,
    stage: or_usual,
    kind: or_usual,
    row: left_out,
    by: left_out,
    words: or_usual,
    care: left_out,
    needs: or_usual,
    when: left_out,
    each: left_out,
});

/// A routing as a file's text.
#[must_use]
pub fn write(routing: &Routing) -> String {
    let steps = routing.steps().iter().map(StepText::of).collect();
    let text = Text { file: KIND.to_owned(), format: FORMAT, steps };
    kept::write(&text)
}

/// The routing of a file's text.
///
/// # Errors
/// The first [`FileFault`]; nothing of the file is taken in then.
pub fn read(text: &str) -> Result<Routing, FileFault> {
    if text.len() > MOST_BYTES {
        return Err(FileFault::TooLarge);
    }
    if depth(text) > DEEPEST {
        return Err(FileFault::TooDeep);
    }
    let text: Text = kept::read(text).map_err(|_| FileFault::NotARoute)?;
    if text.file != KIND {
        return Err(FileFault::NotARoute);
    }
    if text.format > FORMAT {
        return Err(FileFault::Newer);
    }
    let steps = (1..).zip(text.steps).map(|(number, step)| step.step(number));
    Routing::new(steps.collect::<Result<_, _>>()?).map_err(FileFault::Routing)
}

/// A step as a text by itself.
pub(super) fn write_step(step: &Step) -> String {
    kept::write(&StepText::of(step))
}

/// The step of a text.
pub(super) fn read_step(text: &str) -> Result<Step, &'static str> {
    const UNREADABLE: &str = tr!("a step that can’t be read here");
    if text.len() > MOST_BYTES || depth(text) > DEEPEST {
        return Err(UNREADABLE);
    }
    let step: StepText = kept::read(text).map_err(|_| UNREADABLE)?;
    step.step(1).map_err(|_| UNREADABLE)
}

/// How deep braces and brackets stand in each other, texts left out.
fn depth(text: &str) -> usize {
    let (mut depth, mut deepest, mut in_text, mut escaped) = (0_usize, 0, false, false);
    for byte in text.bytes() {
        match byte {
            _ if escaped => escaped = false,
            b'\\' if in_text => escaped = true,
            b'"' => in_text = !in_text,
            b'{' | b'[' if !in_text => {
                depth += 1;
                deepest = deepest.max(depth);
            }
            b'}' | b']' if !in_text => depth = depth.saturating_sub(1),
            _ => {}
        }
    }
    deepest
}

impl StepText {
    fn of(step: &Step) -> Self {
        let (kind, row, by) = match &step.kind {
            Kind::Do => ("do", "", ""),
            Kind::Measure(row) => ("measure", row.as_str(), ""),
            Kind::Hold(answer) => ("hold", "", answer.word()),
        };
        let word =
            |word: &str, usual: &str| if word == usual { String::new() } else { word.to_owned() };
        Self {
            id: step.id.clone(),
            stage: step.stage.word().to_owned(),
            kind: kind.to_owned(),
            row: row.to_owned(),
            by: word(by, Answer::Builder.word()),
            words: step.words.clone(),
            care: step.care.clone(),
            needs: step.needs.clone(),
            when: word(step.when.word(), When::Always.word()),
            each: word(step.each.word(), Each::Once.word()),
        }
    }

    fn step(self, number: usize) -> Result<Step, FileFault> {
        let unknown =
            |what, word: &str| FileFault::Word(number, what, word.chars().take(40).collect());
        Ok(Step {
            stage: Stage::named(&self.stage).ok_or_else(|| unknown(tr!("stage"), &self.stage))?,
            kind: match self.kind.as_str() {
                "do" => Kind::Do,
                "measure" => Kind::Measure(self.row),
                "hold" => Kind::Hold(
                    Answer::named(&self.by).ok_or_else(|| unknown(tr!("answer"), &self.by))?,
                ),
                kind => return Err(unknown(tr!("kind"), kind)),
            },
            when: When::named(&self.when)
                .ok_or_else(|| unknown(tr!("sort of build"), &self.when))?,
            each: Each::named(&self.each)
                .ok_or_else(|| unknown(tr!("thing it is made for"), &self.each))?,
            id: self.id,
            words: self.words,
            care: self.care,
            needs: self.needs,
        })
    }
}

impl fmt::Display for FileFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Nothing taken in: ")?;
        match self {
            Self::TooLarge => f.write_str("the file is larger than any route. Choose one saved by “Save the route as a file”."),
            Self::TooDeep => f.write_str("the file has lists within lists, deeper than a route’s. Choose one saved by “Save the route as a file”."),
            Self::NotARoute => f.write_str("this file is no route. Choose one saved by “Save the route as a file”."),
            Self::Newer => f.write_str("a newer Pitleaf wrote this route. Bring this one up to date first."),
            Self::Word(number, what, word) => write!(f, "step {number}: the {what} “{word}” is not known here."),
            Self::Routing(fault) => fault.fmt(f),
        }
    }
}

impl std::error::Error for FileFault {}
