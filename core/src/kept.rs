//! What is kept as JSON: every type by way of one plain tree.
//!
//! `serde` would expand a reader and a writer of its own for each type and each variant. Here it reads
//! and writes only [`Json`]; a type says which fields it has ([`kept_fields!`](crate::kept_fields)),
//! which words ([`kept_words!`](crate::kept_words)) or which variants
//! ([`kept_variants!`](crate::kept_variants)), and those are looked up in the tree.

use crate::gather::Gather;
use serde::de::{DeserializeSeed, Error, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;

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

/// Says which fields a type has, in the order written, and the key where it is not the field's name.
/// Behind it: `or_usual` where older entries lack it, `left_out` where it is also not written while it
/// says nothing.
#[macro_export]
macro_rules! kept_fields {
    ($type:ty { $($field:ident $(= $key:literal)? $(: $how:ident)?),+ $(,)? }) => {
        impl $crate::kept::Kept for $type {
            fn json(&self) -> $crate::kept::Json<'_> {
                let Self { $($field),+ } = self;
                $crate::kept_fields!(@write $($field $(= $key)? $(: $how)?),+)
            }

            fn of_json(json: &$crate::kept::Json<'_>) -> Result<Self, $crate::kept::Refused> {
                let fields = json.fields()?;
                Ok(Self { $($field: $crate::kept_fields!(@read fields $field $(= $key)? $(: $how)?)),+ })
            }
        }
    };
    (@write $($field:ident $(= $key:literal)? $(: $how:ident)?),+) => {{
        let mut fields = $crate::kept::Fields::default();
        $($crate::kept_fields!(@put fields $field $(= $key)? $(: $how)?);)+
        $crate::kept::Json::Fields(fields)
    }};
    (@put $fields:ident $field:ident $(= $key:literal)? : left_out) => {
        if !$crate::kept::Kept::is_left_out($field) {
            $crate::kept_fields!(@put $fields $field $(= $key)?);
        }
    };
    (@put $fields:ident $field:ident $(= $key:literal)? $(: or_usual)?) => {
        $fields.put($crate::kept_fields!(@key $field $(= $key)?), $crate::kept::Kept::json($field))
    };
    (@read $fields:ident $field:ident $(= $key:literal)?) => {
        $crate::kept::Kept::of_json($fields.at($crate::kept_fields!(@key $field $(= $key)?)))?
    };
    (@read $fields:ident $field:ident $(= $key:literal)? : $how:ident) => {
        $crate::kept::Kept::or_usual($fields.at($crate::kept_fields!(@key $field $(= $key)?)))?
    };
    (@key $field:ident) => { stringify!($field) };
    (@key $field:ident = $key:literal) => { $key };
}

/// Says by which word each variant of an enumeration is kept.
#[macro_export]
macro_rules! kept_words {
    ($type:ty { $($variant:ident = $word:literal),+ $(,)? }) => {
        impl $crate::kept::Kept for $type {
            fn json(&self) -> $crate::kept::Json<'_> {
                $crate::kept::Json::Text(match self { $(Self::$variant => $word),+ }.into())
            }

            fn of_json(json: &$crate::kept::Json<'_>) -> Result<Self, $crate::kept::Refused> {
                Ok([$(Self::$variant),+][json.one_of(&[$($word),+])?])
            }
        }
    };
}

/// Says by which name each variant of an enumeration is kept, and with which fields (as in
/// [`kept_fields!`](crate::kept_fields)) or which one thing inside.
#[macro_export]
macro_rules! kept_variants {
    ($type:ty { $($name:literal = $variant:ident
        $({ $($field:ident $(= $key:literal)? $(: $how:ident)?),+ })? $(($inside:ident))?),+ $(,)? }) => {
        impl $crate::kept::Kept for $type {
            fn json(&self) -> $crate::kept::Json<'_> {
                match self {
                    $(Self::$variant $({ $($field),+ })? $(($inside))? => $crate::kept_variants!(
                        @write $name $({ $($field $(= $key)? $(: $how)?),+ })? $(($inside))?
                    ),)+
                }
            }

            fn of_json(json: &$crate::kept::Json<'_>) -> Result<Self, $crate::kept::Refused> {
                let (name, inside) = json.named()?;
                Ok(match name {
                    $($name => $crate::kept_variants!(
                        @read inside $variant $({ $($field $(= $key)? $(: $how)?),+ })? $(($inside))?
                    ),)+
                    _ => return Err($crate::kept::unknown(name)),
                })
            }
        }
    };
    (@write $name:literal) => { $crate::kept::Json::Text($name.into()) };
    (@write $name:literal ($inside:ident)) => {
        $crate::kept::Json::variant($name, $crate::kept::Kept::json($inside))
    };
    (@write $name:literal { $($fields:tt)+ }) => {
        $crate::kept::Json::variant($name, $crate::kept_fields!(@write $($fields)+))
    };
    (@read $json:ident $variant:ident) => { Self::$variant };
    (@read $json:ident $variant:ident ($inside:ident)) => {
        Self::$variant($crate::kept::Kept::of_json($json)?)
    };
    (@read $json:ident $variant:ident { $($field:ident $(= $key:literal)? $(: $how:ident)?),+ }) => {{
        let fields = $json.fields()?;
        Self::$variant { $($field: $crate::kept_fields!(@read fields $field $(= $key)? $(: $how)?)),+ }
    }};
}

impl Kept for bool {
    fn json(&self) -> Json<'_> {
        Json::Truth(*self)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        match json {
            Json::Truth(truth) => Ok(*truth),
            _ => Err(json.misplaced("true or false")),
        }
    }

    fn is_left_out(&self) -> bool {
        !self
    }
}

macro_rules! kept_whole {
    ($($type:ty),+) => { $(
        impl Kept for $type {
            fn json(&self) -> Json<'_> {
                // Nothing kept is wider than 64 bits.
                u64::try_from(*self).map_or(Json::Foreign, Json::Whole)
            }

            fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
                match json {
                    Json::Whole(whole) => (*whole).try_into().ok(),
                    _ => None,
                }
                .ok_or_else(|| json.misplaced("a smaller whole number"))
            }
        }
    )+ };
}

kept_whole!(u8, u16, u32, u64, usize);

impl Kept for String {
    fn json(&self) -> Json<'_> {
        Json::Text(Cow::Borrowed(self))
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        json.text().map(str::to_owned)
    }

    fn is_left_out(&self) -> bool {
        self.is_empty()
    }
}

impl<T: Kept> Kept for Option<T> {
    fn json(&self) -> Json<'_> {
        self.as_ref().map_or(Json::Null, T::json)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        match json {
            Json::Missing | Json::Null => Ok(None),
            json => T::of_json(json).map(Some),
        }
    }

    fn is_left_out(&self) -> bool {
        self.is_none()
    }
}

impl<T: Kept> Kept for Box<T> {
    fn json(&self) -> Json<'_> {
        (**self).json()
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        T::of_json(json).map(Self::new)
    }
}

impl<T: Kept> Kept for Vec<T> {
    fn json(&self) -> Json<'_> {
        Json::List(self.iter().map(T::json).gather())
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        json.list()?.iter().map(T::of_json).gather()
    }
}

impl<T: Kept, const N: usize> Kept for [T; N] {
    fn json(&self) -> Json<'_> {
        Json::List(self.iter().map(T::json).gather())
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        Vec::of_json(json)?.try_into().map_err(|_| json.misplaced("a list of another length"))
    }
}

impl<A: Kept, B: Kept> Kept for (A, B) {
    fn json(&self) -> Json<'_> {
        Json::List(vec![self.0.json(), self.1.json()])
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        match json.list()? {
            [a, b] => Ok((A::of_json(a)?, B::of_json(b)?)),
            _ => Err(json.misplaced("a list of two")),
        }
    }
}

impl<A: Kept, B: Kept, C: Kept> Kept for (A, B, C) {
    fn json(&self) -> Json<'_> {
        Json::List(vec![self.0.json(), self.1.json(), self.2.json()])
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        match json.list()? {
            [a, b, c] => Ok((A::of_json(a)?, B::of_json(b)?, C::of_json(c)?)),
            _ => Err(json.misplaced("a list of three")),
        }
    }
}

impl Serialize for Json<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Missing | Self::Null | Self::Foreign => serializer.serialize_unit(),
            Self::Truth(truth) => serializer.serialize_bool(*truth),
            Self::Whole(whole) => serializer.serialize_u64(*whole),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(list) => serializer.collect_seq(list),
            Self::Fields(Fields(fields)) => {
                serializer.collect_map(fields.iter().map(|(name, value)| (&**name, value)))
            }
        }
    }
}

/// How deep values are taken; what lies deeper is passed over, however deep it is. Nothing that is kept
/// comes near.
const DEPTH: u8 = 16;

type Taker<'taker, 'text> = dyn FnMut(Json<'text>) + 'taker;

/// Reads a tree. The list that `each` is for lies in the field it still names, or is what is read.
///
/// It takes whatever comes and judges it later: asking `serde_json` for a certain type would bring along
/// what prints a wrong one, with the tables that print fractions.
struct Tree<'each, 'taker, 'text> {
    depth: u8,
    each: Option<(Option<&'each str>, &'each mut Taker<'taker, 'text>)>,
}

impl<'text> Tree<'_, '_, 'text> {
    fn read(self, text: &'text str) -> Result<Json<'text>, Refused> {
        let mut deserializer = serde_json::Deserializer::from_str(text);
        self.deserialize(&mut deserializer)
            .and_then(|json| deserializer.end().map(|()| json))
            .map_err(|_| Refused::because(&"no JSON"))
    }
}

impl<'text> DeserializeSeed<'text> for Tree<'_, '_, 'text> {
    type Value = Json<'text>;

    fn deserialize<D: Deserializer<'text>>(self, deserializer: D) -> Result<Json<'text>, D::Error> {
        if self.depth == 0 {
            return IgnoredAny::deserialize(deserializer).map(|_| Json::Foreign);
        }
        deserializer.deserialize_any(self)
    }
}

impl<'text> Visitor<'text> for Tree<'_, '_, 'text> {
    type Value = Json<'text>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E: Error>(self) -> Result<Self::Value, E> {
        Ok(Json::Null)
    }

    fn visit_bool<E: Error>(self, truth: bool) -> Result<Self::Value, E> {
        Ok(Json::Truth(truth))
    }

    fn visit_u64<E: Error>(self, whole: u64) -> Result<Self::Value, E> {
        Ok(Json::Whole(whole))
    }

    fn visit_i64<E: Error>(self, _: i64) -> Result<Self::Value, E> {
        Ok(Json::Foreign)
    }

    fn visit_f64<E: Error>(self, _: f64) -> Result<Self::Value, E> {
        Ok(Json::Foreign)
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Self::Value, E> {
        Ok(Json::Text(Cow::Owned(text.to_owned())))
    }

    fn visit_borrowed_str<E: Error>(self, text: &'text str) -> Result<Self::Value, E> {
        Ok(Json::Text(Cow::Borrowed(text)))
    }

    fn visit_seq<A: SeqAccess<'text>>(self, mut items: A) -> Result<Self::Value, A::Error> {
        let mut list = Vec::new();
        let (depth, mut each) = (self.depth - 1, self.each);
        while let Some(item) = items.next_element_seed(Tree { depth, each: None })? {
            match &mut each {
                Some((None, take)) => take(item),
                _ => list.push(item),
            }
        }
        Ok(Json::List(list))
    }

    fn visit_map<A: MapAccess<'text>>(self, mut entries: A) -> Result<Self::Value, A::Error> {
        let mut fields = Vec::new();
        let (depth, mut each) = (self.depth - 1, self.each);
        while let Some(name) = entries.next_key_seed(Tree { depth: 1, each: None })? {
            // A name is always a text; its value follows.
            let Json::Text(name) = name else { continue };
            let each = match &mut each {
                Some((Some(field), take)) if *field == name => Some((None, &mut **take)),
                _ => None,
            };
            fields.push((name, entries.next_value_seed(Tree { depth, each })?));
        }
        Ok(Json::Fields(Fields(fields)))
    }
}
