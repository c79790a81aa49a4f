//! What the screens are made of.

mod frame;
mod keypad;
mod mark;
mod rule_picture;
mod verdict_card;

pub use frame::{Frame, Nav, NoticeBar};
pub use keypad::{Keypad, UnitKeys};
pub use mark::CallMark;
pub use rule_picture::RulePicture;
pub use verdict_card::{Shown, VerdictCard};
