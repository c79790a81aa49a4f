//! A routing: steps in an order that can be gone through, and edits that keep it so.

use super::expand::{self, Station};
use super::{Each, Kind, Stage, Step, usual};
use crate::limits::BuildKind;
use pitleaf_translated::translated;
use std::fmt;

/// Steps in the order of the work: whatever a step needs stands before it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Routing {
    steps: Vec<Step>,
}

/// Why steps make no routing, or an edit was not made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RoutingFault {
    /// No step at all.
    Empty,
    /// More than [`Routing::MOST_STEPS`].
    TooMany,
    /// An id that is empty, too long, or has other signs than small letters, digits and hyphens.
    Id(String),
    /// An id stands twice.
    Twice(String),
    /// A step says nothing, or too much: its id.
    Words(String),
    /// A measure names no row: the step's id.
    NoRow(String),
    /// More needs than [`Routing::MOST_NEEDS`]: the step's id.
    TooManyNeeds(String),
    /// A step needs one that is not there: its words, and the id.
    Unknown(String, String),
    /// Steps that wait for each other in a ring, by their words.
    Ring(Vec<String>),
    /// A step stands before one it needs: the words of both.
    Before(String, String),
    /// `<` to a step that is not made for the same things in one go: the words of both.
    NotOfOneGo(String, String),
    /// A step stands among those of a later stage: its words.
    StageOrder(String),
    /// The step to be edited is not there: its id.
    Gone(String),
    /// It can't be taken away while others need it: its words, and theirs.
    Needed(String, Vec<String>),
    /// It stands at the end already.
    AtEnd,
}

/// A change to a routing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Edit {
    /// A new step behind another; it takes on that one's stage.
    AddAfter(String, Step),
    /// A step taken away.
    Remove(String),
    /// A step put in place of the one with its id.
    Put(Step),
    /// A step before the one above it; at the head of its stage, into the stage before.
    Up(String),
    /// A step behind the one below it; at the end of its stage, into the next.
    Down(String),
}

impl Routing {
    /// The most steps.
    pub const MOST_STEPS: usize = 300;
    /// The most steps that one may need.
    pub const MOST_NEEDS: usize = 20;
    /// The longest text of a step, in bytes.
    pub const LONGEST: usize = 500;

    /// The route that ships.
    #[must_use]
    pub fn usual() -> Self {
        Self { steps: usual::steps() }
    }

    /// Steps as a routing.
    ///
    /// # Errors
    /// The first [`RoutingFault`].
    pub fn new(steps: Vec<Step>) -> Result<Self, RoutingFault> {
        check(&steps)?;
        Ok(Self { steps })
    }

    /// Its steps.
    #[must_use]
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// The step with an id.
    #[must_use]
    pub fn step(&self, id: &str) -> Option<&Step> {
        self.steps.iter().find(|step| step.id == id)
    }

    /// An id that no step has yet.
    #[must_use]
    pub fn free_id(&self) -> String {
        let mut number = self.steps.len() + 1;
        while self.step(&format!("own-{number}")).is_some() {
            number += 1;
        }
        format!("own-{number}")
    }

    /// The steps as they are made in a build.
    #[must_use]
    pub fn stations(&self, kind: BuildKind, rotors: u8, solid_dowels: bool) -> Vec<Station> {
        expand::stations(&self.steps, kind, rotors, solid_dowels)
    }

    /// The routing with a change made.
    ///
    /// # Errors
    /// The [`RoutingFault`]; this one stays as it is.
    pub fn edit(&self, edit: Edit) -> Result<Self, RoutingFault> {
        let mut steps = self.steps.clone();
        let find = |id: &str| {
            let place = self.steps.iter().position(|step| step.id == id);
            place.ok_or_else(|| RoutingFault::Gone(id.to_owned()))
        };
        match edit {
            Edit::AddAfter(id, mut step) => {
                let place = find(&id)?;
                step.stage = steps[place].stage;
                steps.insert(place + 1, step);
            }
            Edit::Remove(id) => {
                let place = find(&id)?;
                let needing: Vec<String> = steps
                    .iter()
                    .filter(|step| step.needs.iter().any(|need| bare(need) == id))
                    .map(|step| step.words.clone())
                    .collect();
                let gone = steps.remove(place);
                if !needing.is_empty() {
                    return Err(RoutingFault::Needed(gone.words, needing));
                }
            }
            Edit::Put(step) => {
                let place = find(&step.id)?;
                steps[place] = step;
            }
            Edit::Up(id) => {
                let place = find(&id)?;
                let above = place.checked_sub(1).ok_or(RoutingFault::AtEnd)?;
                shift(&mut steps, place, above);
            }
            Edit::Down(id) => {
                let place = find(&id)?;
                if place + 1 == steps.len() {
                    return Err(RoutingFault::AtEnd);
                }
                shift(&mut steps, place, place + 1);
            }
        }
        Self::new(steps)
    }
}

/// Swaps a step with its neighbour; at a stage's edge it changes its stage instead.
fn shift(steps: &mut [Step], place: usize, neighbour: usize) {
    if steps[place].stage == steps[neighbour].stage {
        steps.swap(place, neighbour);
    } else {
        steps[place].stage = steps[neighbour].stage;
    }
}

/// The id of a need, without the sign for the one before.
pub(super) fn bare(need: &str) -> &str {
    need.strip_prefix('<').unwrap_or(need)
}

fn is_id(text: &str) -> bool {
    const LONGEST: usize = 40;
    (1..=LONGEST).contains(&text.len())
        && text.bytes().all(|byte| matches!(byte, b'a'..=b'z' | b'0'..=b'9' | b'-'))
}

fn check(steps: &[Step]) -> Result<(), RoutingFault> {
    if steps.is_empty() {
        return Err(RoutingFault::Empty);
    }
    if steps.len() > Routing::MOST_STEPS {
        return Err(RoutingFault::TooMany);
    }
    let place = |id: &str| steps.iter().position(|step| step.id == id);
    for (index, step) in steps.iter().enumerate() {
        let id = || step.id.clone();
        if !is_id(&step.id) {
            return Err(RoutingFault::Id(id()));
        }
        if place(&step.id) != Some(index) {
            return Err(RoutingFault::Twice(id()));
        }
        let says_enough = !step.words.trim().is_empty();
        if !says_enough || step.words.len().max(step.care.len()) > Routing::LONGEST {
            return Err(RoutingFault::Words(id()));
        }
        if matches!(&step.kind, Kind::Measure(row) if !is_id(row)) {
            return Err(RoutingFault::NoRow(id()));
        }
        if step.needs.len() > Routing::MOST_NEEDS {
            return Err(RoutingFault::TooManyNeeds(id()));
        }
        if let Some(need) = step.needs.iter().find(|need| place(bare(need)).is_none()) {
            return Err(RoutingFault::Unknown(step.words.clone(), bare(need).to_owned()));
        }
    }
    // What each waits for, by place; the one of the thing before is no wait within one thing.
    let needs: Vec<Vec<usize>> = steps
        .iter()
        .map(|step| {
            step.needs
                .iter()
                .filter(|need| !need.starts_with('<'))
                .filter_map(|id| place(id))
                .collect()
        })
        .collect();
    let words = |index: usize| steps[index].words.clone();
    if let Some(ring) = ring(&needs) {
        return Err(RoutingFault::Ring(ring.into_iter().map(words).collect()));
    }
    let go = expand::goes(steps);
    for (index, step) in steps.iter().enumerate() {
        if index > 0 && step.stage < steps[index - 1].stage {
            return Err(RoutingFault::StageOrder(words(index)));
        }
        if let Some(&need) = needs[index].iter().find(|&&need| need > index) {
            return Err(RoutingFault::Before(words(index), words(need)));
        }
        for need in step.needs.iter().filter_map(|need| need.strip_prefix('<')) {
            let other = place(need).unwrap_or(index);
            if go[other] != go[index] || step.each == Each::Once {
                return Err(RoutingFault::NotOfOneGo(words(index), words(other)));
            }
        }
    }
    Ok(())
}

/// Steps that wait for each other in a ring, if there are any: walked along first needs that are still
/// waited for once everything that can be done is done.
fn ring(needs: &[Vec<usize>]) -> Option<Vec<usize>> {
    let mut done = vec![false; needs.len()];
    loop {
        let ready: Vec<usize> = (0..needs.len())
            .filter(|&step| !done[step] && needs[step].iter().all(|&need| done[need]))
            .collect();
        if ready.is_empty() {
            break;
        }
        ready.into_iter().for_each(|step| done[step] = true);
    }
    let mut path = vec![done.iter().position(|done| !done)?];
    loop {
        let last = *path.last()?;
        let next = *needs[last].iter().find(|&&need| !done[need])?;
        if let Some(start) = path.iter().position(|&step| step == next) {
            return Some(path.split_off(start));
        }
        path.push(next);
    }
}

impl Stage {
    /// The steps of a routing that belong to it.
    pub fn of(self, routing: &Routing) -> impl Iterator<Item = &Step> {
        routing.steps.iter().filter(move |step| step.stage == self)
    }
}

impl fmt::Display for RoutingFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("A route has at least one step."),
            Self::TooMany => {
                write!(f, "A route has at most {} steps. Put some together.", Routing::MOST_STEPS)
            }
            Self::Id(id) => write!(
                f,
                "“{}” is no id of a step: at most 40 small letters, digits and hyphens.",
                short(id)
            ),
            Self::Twice(id) => write!(f, "Two steps have the id “{id}”. Give one of them another."),
            Self::Words(id) => {
                write!(f, "Step “{id}” needs words, at most {} letters.", Routing::LONGEST)
            }
            Self::NoRow(id) => {
                write!(f, "Step “{id}” is to measure: say which row of the sheet, by its id.")
            }
            Self::TooManyNeeds(id) => write!(
                f,
                "Step “{id}” waits for more than {} others. Leave out those that the others wait for anyway.",
                Routing::MOST_NEEDS
            ),
            Self::Unknown(words, id) => write!(
                f,
                "“{words}” needs a step “{}” that is not in the route. Add it, or take it out of the needs.",
                short(id)
            ),
            Self::Ring(words) => {
                f.write_str("These steps wait for each other, so none could ever be done: ")?;
                for words in words {
                    write!(f, "“{words}” → ")?;
                }
                write!(
                    f,
                    "“{}”. Take one of the needs out.",
                    words.first().map_or("", String::as_str)
                )
            }
            Self::Before(step, need) => {
                write!(f, "“{step}” needs “{need}”, so it can’t stand before it.")
            }
            Self::NotOfOneGo(step, need) => write!(
                f,
                "“{step}” waits for “{need}” of the one before: both must be made for the same things, next to each other in one stage."
            ),
            Self::StageOrder(words) => write!(
                f,
                "“{words}” stands behind steps of a later stage. Put it with its own stage."
            ),
            Self::Gone(id) => write!(f, "There is no step “{}” in this route any more.", short(id)),
            Self::Needed(words, by) => {
                write!(f, "“{words}” can’t be taken out while others need it: ")?;
                for (index, by) in by.iter().enumerate() {
                    write!(f, "{}“{by}”", if index == 0 { "" } else { ", " })?;
                }
                f.write_str(". Change what they need first.")
            }
            Self::AtEnd => f.write_str("It stands at the end already."),
        }
    }
}

impl std::error::Error for RoutingFault {}

/// What stands in a sentence of an id that may be anything.
fn short(text: &str) -> String {
    text.chars().take(40).collect()
}
