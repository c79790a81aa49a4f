//! What is known of a slot's seal and what to do next, worked out once for its page.

use super::{STACKED, leaves_on_bench, unit_of, with_report};
use crate::state::App;
use pitleaf_core::book::Slot;
use pitleaf_core::limits::{Limit, limit_line};
use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{
    Bracket, GrindingWords, GroundBy, LeafSet, NextLeaf, Place, SlotState, halving_leaf, next_leaf,
    sentence, stages,
};
use pitleaf_translated::tr;

/// A leaf or stack to try next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Proposal {
    /// As it is typed.
    pub(super) stack: String,
    /// What it is for.
    pub(super) why: String,
}

/// A slot's answer.
#[derive(Clone, PartialEq)]
pub(super) struct SlotAnswer {
    /// How far its seal has come.
    pub(super) state: SlotState,
    /// What is known, in a sentence or two.
    pub(super) words: String,
    /// The bracket on the limit's rule; none where nothing was tried or trials disagree.
    pub(super) bracket: Option<Bracket>,
    /// The limit.
    pub(super) limit: Limit,
    /// The unit spoken in.
    pub(super) unit: Unit,
    /// What to try next.
    pub(super) next: Result<Proposal, String>,
    /// How much to grind.
    pub(super) grinding: Option<GrindingWords>,
    /// The mark in words.
    pub(super) mark: Option<String>,
    /// The mark as drawn.
    pub(super) drawing: Vec<Vec<[u8; 2]>>,
    /// How the last grinding was counted.
    pub(super) counted: Option<GroundBy>,
    /// How many trials its seal has had.
    pub(super) trials: usize,
}

/// The answer for a slot, grinding counted so; none where there is no build or no limit.
pub(super) fn answer(app: App, slot: Slot, by: GroundBy) -> Option<SlotAnswer> {
    Place::SideSeal(slot).on_engine(app.rotors()).ok()?;
    let set = leaves_on_bench(app);
    let stages = app
        .build()
        .map(|build| app.book.with(|book| stages(book, &build, app.rotors())))
        .unwrap_or_default();
    with_report(app, slot, |report, row| {
        let unit = unit_of(report, row, set.as_ref());
        let other = if unit == Unit::Thou { Unit::Millimetre } else { Unit::Thou };
        let bracket = report.bracket();
        let limit = row.limit.clone();
        let words = match (&report.history, report.measured) {
            (Err(fault), _) => tr!("{fault} Withdraw the wrong one below."),
            (Ok(_), Some(figure)) => tr!(
                "Measured {}{}. The limit is {}.",
                figure.shown(),
                if report.trials.is_empty() { "" } else { tr!(", later than any leaf tried") },
                limit_line(&limit, unit)
            ),
            (Ok(_), None) if report.trials.is_empty() => {
                tr!("Nothing tried yet. The limit is {}.", limit_line(&limit, unit))
            }
            (Ok(_), None) => {
                let (told, again) = (sentence(bracket, &limit, unit), bracket.words(other));
                if again == bracket.words(unit) { told } else { tr!("{told} That is {again}.") }
            }
        };
        let next = match (&report.history, &set) {
            (Err(_), _) => Err(tr!("No leaf proposed while two trials disagree.").to_owned()),
            (_, None) => {
                Err(tr!("Enter the feeler leaves on your bench, and the next to try is proposed.").to_owned())
            }
            (Ok(_), Some(set)) => match next_leaf(bracket, &limit, set, STACKED) {
                NextLeaf::Try(next) => Ok(Proposal {
                    stack: next.stack.to_string(),
                    why: match next.most_tries {
                        1 => tr!("This try decides, if a leaf of this set can.").to_owned(),
                        most => tr!("Decided in {most} tries at most, if this set can."),
                    },
                }),
                NextLeaf::Decided(_) if report.state == SlotState::ToGrind => {
                    after_grinding(bracket, &limit, set)
                }
                NextLeaf::Decided(_) => Err(tr!("Decided: no more leaf is needed.").to_owned()),
                NextLeaf::SetCannotSay => match halving_leaf(bracket, set, STACKED) {
                    Some(stack) => Ok(Proposal {
                        stack: stack.to_string(),
                        why: tr!("No leaf of this set can decide. This one parts what is left in two.").to_owned(),
                    }),
                    None => Err(tr!("No leaf or stack of this set can tell more. Take a finer set, or measure with a gauge.").to_owned()),
                },
            },
        };
        let grinding = GrindingWords::of(report, &stages, by, row, unit);
        SlotAnswer {
            state: report.state,
            words,
            bracket: (!report.trials.is_empty()
                && report.history.is_ok()
                && report.measured.is_none())
            .then_some(bracket),
            limit,
            unit,
            next,
            grinding,
            mark: report.mark.map(str::to_owned),
            drawing: report.drawing.map(|drawing| drawing.strokes().to_vec()).unwrap_or_default(),
            counted: report
                .trials
                .iter()
                .rev()
                .find_map(|(_, trial)| trial.ground())
                .map(|ground| ground.by),
            trials: report.trials.len(),
        }
    })
}

/// The leaf to try once more was ground off: how wide the gap is then, nothing bounds any more.
fn after_grinding(now: Bracket, limit: &Limit, set: &LeafSet) -> Result<Proposal, String> {
    match next_leaf(Bracket { high: None, ..now }, limit, set, STACKED) {
        NextLeaf::Try(next) => Ok(Proposal {
            stack: next.stack.to_string(),
            why: tr!("Too tight: grind first, then try this one.").to_owned(),
        }),
        _ => Err(tr!("Decided: no more leaf is needed before it is ground.").to_owned()),
    }
}
