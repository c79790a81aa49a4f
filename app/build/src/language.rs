//! The languages the app is built in: a site for each, the German one in a folder of its own.

use crate::template;
use anyhow::{Context, Result};
use pitleaf_words::Catalogue;

/// A language of the app.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Language {
    English,
    German,
}

impl Language {
    /// Every language, the one at the root first.
    pub(crate) const ALL: [Self; 2] = [Self::English, Self::German];

    /// As pages name it (BCP 47).
    pub(crate) fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
        }
    }

    /// The folder of its site below the root, with a slash behind it; none at the root.
    pub(crate) fn folder(self) -> &'static str {
        match self {
            Self::English => "",
            Self::German => "de/",
        }
    }

    /// The app's feature that compiles it.
    pub(crate) fn feature(self) -> Option<&'static str> {
        (self == Self::German).then_some("german")
    }

    /// A file's texts, marked `{{say: …}}`, in this language.
    ///
    /// # Errors
    /// A text the catalogue lacks.
    pub(crate) fn say(self, name: &str, text: &str) -> Result<String> {
        let german = Catalogue::german();
        template::say(text, |english| match self {
            Self::English => Ok(english.to_owned()),
            Self::German => german
                .text(name, english)
                .map(str::to_owned)
                .with_context(|| format!("german.po has no text for {english:?}, of {name}")),
        })
    }
}
