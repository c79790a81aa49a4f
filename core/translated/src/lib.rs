//! Puts German in place of English while the German app is compiled (feature `german`); otherwise every
//! text stays as it stands in the source.
//!
//! A text that `german.po` lacks is a compile error there, at its place in the source, and so is a
//! placeholder the German made up. One it forgot fails the tests of `pitleaf-words`.

mod language;
mod tokens;

use proc_macro::TokenStream;
use tokens::{Texts, translate};

/// A text, or a text with placeholders and what fills them, as `format!` takes it.
///
/// `tr!("Bench")` is a `&'static str`, `tr!("{count} left")` a `String`.
#[proc_macro]
pub fn tr(input: TokenStream) -> TokenStream {
    tokens::text(input)
}

/// Translates the texts of an item: every string literal in it that has letters, or with `fields` only
/// those behind a field of such a name: `#[translated(what, how)]`.
///
/// Attributes and the words of a panic stay as they are. So does a single lower-case word the catalogue
/// does not have: it may be a name.
#[proc_macro_attribute]
pub fn translated(fields: TokenStream, item: TokenStream) -> TokenStream {
    translate(item, &Texts::named(fields))
}
