//! Seals: where they lie, what leaves prove about their gaps, and how far they can be ground.
//!
//! - [`Place`]: names of every place on an engine's rotors.
//! - [`Leaf`], [`Stack`], [`LeafSet`]: the feeler leaves on the bench.
//! - [`Trial`], [`Bracket`], [`History`]: from "goes" and "does not go" to bounds of the gap.
//! - [`next_leaf()`]: the leaf that decides most about a limit.
//! - [`advise`]: how much can be ground, and no stroke more.
//! - [`hot_gap`]: the cold gap in the running engine.
//! - [`assign`]: which seal goes where.
//! - [`slot_report`]: what a book's entries say of each slot.
//! - [`TypedHotGap`]: the hot gap from what a person types.
//! - [`LooseKind`]: pieces measured before they have a place.
//! - [`SpreadCheck`]: springs measured one by one, judged by their spread.
//! - [`SetCheck`], [`match_by_weight`], [`match_by_height`]: sets measured in one go.

mod assignment;
mod bracket;
mod caution;
mod drawing;
mod grinding;
mod grinding_words;
mod ground;
mod growth;
mod history;
mod hot_gap_sheet;
mod leaf_set;
mod leaves;
mod loose;
mod materials;
mod next_leaf;
mod place;
mod set;
mod set_words;
mod spread;
mod state;
mod trial;
mod usual_sets;
mod written;

pub use assignment::{AssignFault, Assignment, Empty, Placed, assign};
pub use bracket::{Answer, Bracket, Proof, Standing, sentence};
pub use caution::Step;
pub use drawing::{Drawing, TooMuchInk};
pub use grinding::{Advice, Rate, Refusal, Removal, Strokes, advise, removal, removal_for};
pub use grinding_words::GrindingWords;
pub use ground::{Ground, GroundBy};
pub use growth::{
    Band, Chain, ESTIMATE, GrowthFault, Piece, Temperatures, gap_at_reference, hot_gap, length_at,
};
pub use history::{Contradiction, History, Stage};
pub use hot_gap_sheet::{HotGap, PIECES, RUNNING, TypedHotGap, TypedPiece};
pub use leaf_set::{LeafSet, usual_tolerance};
pub use leaves::{Leaf, LeafFault, MOST_LEAVES, Stack, thickest};
pub use loose::{
    Loose, LooseKind, MOST_LOOSE, free_number, length_doubt, slot_from_gap, slot_length_fact,
    slot_lengths,
};
pub use materials::{Expansion, MATERIALS, Material, SOURCE_COLD, SOURCE_HOT};
pub use next_leaf::{NextLeaf, Try, halving_leaf, next_leaf};
pub use place::{Corner, Place, PlaceFault};
pub use set::{Matched, SetCheck, SetFault, match_by_height, match_by_weight};
pub use set_words::set_readings;
pub use spread::SpreadCheck;
pub use state::{
    SIDE_SEAL_GAP, SlotReport, SlotState, engine_report, gap_row, last_leaf_unit, leaf_set,
    slot_report, stages, trials,
};
pub use trial::{Outcome, Trial, TrialFault};
pub use usual_sets::{USUAL_SETS, UsualSet};
pub use written::Written;
