//! What the screens are made of.

mod bracket_picture;
mod fields;
mod frame;
mod how_picture;
mod keypad;
mod mark;
mod other_language;
mod rule_picture;
mod say;
mod update_line;
mod verdict_card;

pub use bracket_picture::bracket_picture;
pub use fields::{fault_list, field, figure_input, search, sentences, switch};
pub use frame::{frame, help, help_beside, nav, no_such_limit, notice_bar, texts};
pub use how_picture::how_picture;
pub use keypad::{figure_unit, keypad, meant_keys, unit_keys, unit_keys_of};
pub use mark::call_mark;
pub use other_language::{language_missing, other_language};
pub use rule_picture::rule_picture;
pub use say::say_button;
pub use update_line::update_line;
pub use verdict_card::{Shown, verdict_card};
