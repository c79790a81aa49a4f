//! The language that is compiled.

use pitleaf_words::Catalogue;

thread_local! {
    static GERMAN: Catalogue = Catalogue::german();
}

/// A text of a source file in the language that is compiled; none where its catalogue lacks it.
pub(crate) fn said(file: &str, english: &str) -> Option<String> {
    if cfg!(feature = "german") {
        GERMAN.with(|german| german.text(file, english).map(str::to_owned))
    } else {
        Some(english.to_owned())
    }
}
