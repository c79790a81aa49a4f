//! What the book itself says of a hold.

use super::outlines::{Cut, cuts};
use super::progress::done_by;
use super::{Answer, Kind, Standing};
use crate::book::{Book, BuildId, Entry, Fact, Slot};
use crate::faces::Survey;
use crate::joints::oil_feed::Feed;
use crate::joints::plan::{Plan, joints, passes_done};
use pitleaf_translated::translated;

/// Whether the book finds a hold true; none where it does not answer it. With what is missing.
#[translated]
pub(super) fn asked(
    book: &Book,
    build: &BuildId,
    rotors: u8,
    answer: Answer,
    before: &[Standing],
) -> (Option<bool>, String) {
    let missing = match answer {
        Answer::Builder => return (None, String::new()),
        Answer::OilFeed => match Feed::of(book, build) {
            Feed::Outside | Feed::Passage => String::new(),
            feed => feed.to_string(),
        },
        Answer::Tightened => untightened(book, build),
        Answer::SlotsFitted => {
            let slots = Slot::of_engine(rotors);
            let open: Vec<String> = slots
                .into_iter()
                .filter(|&slot| !book.is_fitted(build, slot))
                .map(|slot| slot.to_string())
                .collect();
            if open.is_empty() {
                String::new()
            } else {
                format!("No seal is written down as fitted in {}.", open.join(", "))
            }
        }
        Answer::EndPlayAfter => end_play_after(book, build, before),
        Answer::DowelsWritten => match Feed::of(book, build) {
            Feed::NotKnown => Feed::NotKnown.to_string(),
            _ => String::new(),
        },
        Answer::OutlinesClear => {
            let says = |cut: &Cut<'_>| {
                let Cut { port, words, can_be_decided, .. } = cut;
                if *can_be_decided {
                    format!("{port}: {words}. Accept that with a reason under “Decisions”.")
                } else {
                    format!("{port}: {words}.")
                }
            };
            let cuts = cuts(book, build);
            let open = cuts.iter().filter(|cut| cut.decision.is_none());
            let open: Vec<String> = open.map(says).collect();
            let open = open.join(" ");
            // None in the book is no proof: then the builder says so.
            return (if open.is_empty() { None } else { Some(false) }, open);
        }
    };
    (Some(missing.is_empty()), missing)
}

#[translated]
fn untightened(book: &Book, build: &BuildId) -> String {
    let mut joints = joints(book, build);
    joints.retain(|joint| is_of_stack(book, build, joint));
    if joints.is_empty() {
        return "No tightening order of the stack is written down yet.".to_owned();
    }
    let open = joints.iter().find_map(|joint| {
        let Some(plan) = Plan::of(book, build, joint) else {
            return Some(format!("{joint}: the order can’t be read. Write it anew."));
        };
        let done = passes_done(book, build, joint).len();
        (done < plan.passes().len())
            .then(|| format!("{joint}: {done} of {} passes are ticked off.", plan.passes().len()))
    });
    open.unwrap_or_default()
}

/// Whether a joint holds the stack together, so far as its order says.
fn is_of_stack(book: &Book, build: &BuildId, joint: &str) -> bool {
    Plan::of(book, build, joint).is_none_or(|plan| !plan.elsewhere)
}

#[translated]
fn end_play_after(book: &Book, build: &BuildId, before: &[Standing]) -> String {
    let last = |is: &dyn Fn(&Fact) -> bool| {
        let lines = book.lines(build).rev().filter(|line| !line.withdrawn);
        lines.map(|line| line.entry).find(|entry| is(&entry.fact)).map(Entry::place)
    };
    let read = last(&|fact| match fact {
        Fact::Figure(figure) => figure.row == "end-play",
        Fact::Readings(set) => matches!(set.of, Survey::EndPlay | Survey::EndPlayAfter),
        _ => false,
    });
    // Where the passes were not ticked off, somebody wrote down why: then that was the moment.
    let passed_over = before
        .iter()
        .filter(|other| other.station.step.kind == Kind::Hold(Answer::Tightened))
        .filter_map(|other| done_by(book, build, other).map(Entry::place));
    let tightened = last(&|fact| match fact {
        Fact::Tightened { joint, .. } => is_of_stack(book, build, joint),
        Fact::Figure(figure) => figure.row == "front-bolt-torque",
        _ => false,
    });
    let spacer = last(&|fact| matches!(fact, Fact::Spacer(_)));
    match (read, tightened.into_iter().chain(passed_over).max()) {
        (None, _) => "End play was not measured yet.".to_owned(),
        (_, None) => {
            "No tightening is written down yet: end play counts when it is measured after it."
                .to_owned()
        }
        (read, tightened) if read < tightened => {
            "Bolts were tightened after end play was measured: measure it again.".to_owned()
        }
        (read, _) if read < spacer => {
            "A spacer was chosen after end play was measured: measure it again with that one in."
                .to_owned()
        }
        _ => String::new(),
    }
}
