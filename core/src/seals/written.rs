//! A length as written down: figure and unit in one text, exact, readable in the book's file.

use crate::kept::{Json, Kept, Refused};
use crate::quantity::{Amount, Bounds, Fault, Reading, Unit};
use pitleaf_translated::translated;
use std::fmt;

/// A length as typed. In the book's file: `"0.0020 in"`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written(Reading);

impl Written {
    /// Reads a typed length; `unit` holds where none is typed.
    ///
    /// # Errors
    /// The [`Fault`] of the text.
    pub fn read(text: &str, unit: Unit, bounds: &'static Bounds) -> Result<Self, Fault> {
        let typed = Reading::read(text, unit, bounds)?;
        // The unit goes into the text, so that what is read back from the book is the same.
        let whole = format!("{} {}", typed.number(), typed.unit().symbol());
        Reading::read(&whole, typed.unit(), bounds).map(Self)
    }

    /// Exactly what it amounts to.
    #[must_use]
    pub fn amount(&self) -> Amount {
        self.0.amount()
    }

    /// The unit it was typed in.
    #[must_use]
    pub fn unit(&self) -> Unit {
        self.0.unit()
    }
}

impl fmt::Display for Written {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0.text())
    }
}

impl Kept for Written {
    fn json(&self) -> Json<'_> {
        Json::Text(self.0.text().into())
    }

    #[translated]
    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let text = json.text()?;
        // A length whose unit was lost must not be read in some other.
        let named = text.rsplit_once(' ').and_then(|(_, symbol)| Unit::named(symbol));
        let unit = named.ok_or_else(|| Refused::because(&"a length without its unit"))?;
        Self::read(text, unit, Bounds::widest(crate::quantity::Dimension::Length))
            .map_err(|fault| Refused::because(&fault))
    }
}
