//! What is kept as JSON: every type by way of one plain tree.
//!
//! `serde` would expand a reader and a writer of its own for each type and each variant. Here it reads
//! and writes only [`Json`]; a type says which fields it has ([`kept_fields!`](crate::kept_fields)),
//! which words ([`kept_words!`](crate::kept_words)) or which variants
//! ([`kept_variants!`](crate::kept_variants)), and those are looked up in the tree. [`checksum`] is what
//! goes before a written text.

pub mod checksum;
mod fields;
mod tree;
mod types;

use std::borrow::Cow;
use std::fmt;
use tree::{DEPTH, Tree};

/// JSON as a tree, as far as it is needed: texts are borrowed where they can be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Json<'text> {
    /// Not there at all.
    Missing,
    /// `null`.
    Null,
    /// `true` or `false`.
    Truth(bool),
    /// A number from 0, without a fraction: the only kind that is kept.
    Whole(u64),
    /// A text.
    Text(Cow<'text, str>),
    /// A list.
    List(Vec<Self>),
    /// Fields, in the order written.
    Fields(Fields<'text>),
    /// Sound JSON, but nothing that is ever kept.
    Foreign,
}

/// Named values, in the order written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Fields<'text>(Vec<(Cow<'text, str>, Json<'text>)>);

/// Why a value could not be read from its JSON, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused(Box<str>);

/// A value with a form in JSON.
pub trait Kept: Sized {
    /// Its JSON.
    fn json(&self) -> Json<'_>;

    /// The value of a JSON.
    ///
    /// # Errors
    /// What is wrong with it.
    fn of_json(json: &Json<'_>) -> Result<Self, Refused>;

    /// Whether a field that may be left out is.
    fn is_left_out(&self) -> bool {
        false
    }

    /// As [`Self::of_json`], where a missing field stands for the usual value.
    ///
    /// # Errors
    /// What is wrong with it.
    fn or_usual(json: &Json<'_>) -> Result<Self, Refused>
    where
        Self: Default,
    {
        match json {
            Json::Missing => Ok(Self::default()),
            json => Self::of_json(json),
        }
    }
}

/// The JSON text of a value.
pub fn write(value: &impl Kept) -> String {
    // Writing to a text can't fail, and every name is a text.
    serde_json::to_string(&value.json()).unwrap_or_default()
}

/// The value of a JSON text.
///
/// # Errors
/// The text is no JSON, or not that of such a value.
pub fn read<T: Kept>(text: &str) -> Result<T, Refused> {
    T::of_json(&Json::read(text)?)
}

impl Refused {
    /// For a reason with words of its own.
    #[must_use]
    pub fn because(reason: &dyn fmt::Display) -> Self {
        Self(reason.to_string().into())
    }
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Refused {}

impl<'text> Json<'text> {
    /// The tree of a text.
    ///
    /// # Errors
    /// The text is no JSON.
    pub fn read(text: &'text str) -> Result<Self, Refused> {
        Tree { depth: DEPTH, each: None }.read(text)
    }

    /// The tree of a text, but for one field's list: its items are handed over one by one, so that a
    /// long list never stands as a tree. In the tree it is empty.
    ///
    /// # Errors
    /// The text is no JSON.
    pub fn read_each(
        text: &'text str,
        field: &str,
        mut take: impl FnMut(Self),
    ) -> Result<Self, Refused> {
        Tree { depth: DEPTH, each: Some((Some(field), &mut take)) }.read(text)
    }

    /// The JSON of something by its words.
    #[must_use]
    pub fn words(words: &dyn fmt::Display) -> Self {
        Self::Text(words.to_string().into())
    }

    /// The JSON of a variant: its name, and what is in it.
    #[must_use]
    pub fn variant(name: &'static str, inside: Self) -> Self {
        let mut fields = Fields::default();
        fields.put(name, inside);
        Self::Fields(fields)
    }

    /// A text.
    ///
    /// # Errors
    /// It is something else.
    pub fn text(&self) -> Result<&str, Refused> {
        match self {
            Self::Text(text) => Ok(text),
            _ => Err(self.misplaced("a text")),
        }
    }

    /// A list.
    ///
    /// # Errors
    /// It is something else.
    pub fn list(&self) -> Result<&[Self], Refused> {
        match self {
            Self::List(list) => Ok(list),
            _ => Err(self.misplaced("a list")),
        }
    }

    /// Fields.
    ///
    /// # Errors
    /// It is something else.
    pub fn fields(&self) -> Result<&Fields<'text>, Refused> {
        match self {
            Self::Fields(fields) => Ok(fields),
            _ => Err(self.misplaced("fields")),
        }
    }

    /// A variant's name, and what is in it.
    ///
    /// # Errors
    /// It is something else.
    pub fn named(&self) -> Result<(&str, &Self), Refused> {
        match self {
            Self::Text(name) => Ok((name, &Self::Missing)),
            Self::Fields(Fields(fields)) if fields.len() == 1 => Ok((&fields[0].0, &fields[0].1)),
            _ => Err(self.misplaced("a variant")),
        }
    }

    /// Which of several words a text is.
    ///
    /// # Errors
    /// It is none of them.
    pub fn one_of(&self, words: &[&str]) -> Result<usize, Refused> {
        let text = self.text()?;
        words.iter().position(|word| *word == text).ok_or_else(|| unknown(text))
    }

    fn misplaced(&self, wanted: &str) -> Refused {
        let is = if *self == Self::Missing { "missing" } else { "something else" };
        Refused::because(&format_args!("{is} where {wanted} belongs"))
    }
}

/// A variant or word that is not known here.
#[must_use]
pub fn unknown(name: &str) -> Refused {
    Refused::because(&format_args!("unknown variant `{name}`"))
}

impl<'text> Fields<'text> {
    /// Adds a field.
    pub fn put(&mut self, name: &'static str, value: Json<'text>) {
        self.0.push((Cow::Borrowed(name), value));
    }

    /// The value of a field.
    #[must_use]
    pub fn at(&self, name: &str) -> &Json<'text> {
        let mut found = self.0.iter().filter(|(field, _)| field == name);
        match (found.next(), found.next()) {
            (None, _) => &Json::Missing,
            (Some((_, value)), None) => value,
            // Which of the two was meant can't be told.
            (Some(_), Some(_)) => &Json::Foreign,
        }
    }
}
