//! Every text of the interface in one place, and its German: `german.po`, in GNU gettext's PO format.
//!
//! The English is the key, as it stands in the source. `pitleaf-translated` puts the German in its place
//! while the German app is compiled, so a phone downloads one language and nothing looks a text up there.

use polib::po_file;
use std::collections::HashMap;

const GERMAN: &str = include_str!("../german.po");

/// The texts of another language by their English.
#[derive(Debug)]
pub struct Catalogue {
    /// By context (a source file, for a text that means something else there) and English.
    texts: HashMap<(String, String), String>,
}

impl Catalogue {
    /// The German texts.
    ///
    /// # Panics
    /// When `german.po` is no PO file: whoever edits it learns so at the next build.
    #[must_use]
    pub fn german() -> Self {
        Self::read(GERMAN)
    }

    fn read(text: &str) -> Self {
        let file = po_file::parse_from_reader(text.as_bytes()).expect("german.po is a PO file");
        let texts = file.messages().map(|message| {
            let context = message.msgctxt().unwrap_or_default().to_owned();
            let german = message.msgstr().expect("no plural forms are used").to_owned();
            ((context, message.msgid().to_owned()), german)
        });
        Self { texts: texts.collect() }
    }

    /// A text of a source file; none where the catalogue has none, or leaves it open.
    #[must_use]
    pub fn text(&self, file: &str, english: &str) -> Option<&str> {
        let at = |context: &str| self.texts.get(&(context.to_owned(), english.to_owned()));
        let known = at(file).or_else(|| at(""))?;
        (!known.is_empty()).then_some(known.as_str())
    }

    /// The English and the German of every text.
    pub fn texts(&self) -> impl Iterator<Item = (&str, &str)> {
        self.texts.iter().map(|((_, english), german)| (english.as_str(), german.as_str()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_found_by_its_english_and_where_it_stands() {
        let catalogue = Catalogue::read(
            "msgid \"\"\nmsgstr \"Language: de\\n\"\n\n\
             msgid \"Bench\"\nmsgstr \"Werkbank\"\n\n\
             msgctxt \"core/src/faces/mod.rs\"\nmsgid \"Bench\"\nmsgstr \"Bank\"\n\n\
             msgid \"Open\"\nmsgstr \"\"\n",
        );
        assert_eq!(catalogue.text("app/src/main.rs", "Bench"), Some("Werkbank"), "anywhere");
        assert_eq!(catalogue.text("core/src/faces/mod.rs", "Bench"), Some("Bank"), "there");
        assert_eq!(catalogue.text("app/src/main.rs", "Open"), None, "left open");
        assert_eq!(catalogue.text("app/src/main.rs", "Nothing"), None, "not in it");
    }
}
