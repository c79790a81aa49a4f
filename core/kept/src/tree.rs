//! Reading and writing the tree, by `serde`.

use crate::{Fields, Json, Refused};
use serde::de::{DeserializeSeed, Error, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;

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
pub(crate) const DEPTH: u8 = 16;

pub(crate) type Taker<'taker, 'text> = dyn FnMut(Json<'text>) + 'taker;

/// Reads a tree. The list that `each` is for lies in the field it still names, or is what is read.
///
/// It takes whatever comes and judges it later: asking `serde_json` for a certain type would bring along
/// what prints a wrong one, with the tables that print fractions.
pub(crate) struct Tree<'each, 'taker, 'text> {
    pub(crate) depth: u8,
    pub(crate) each: Option<(Option<&'each str>, &'each mut Taker<'taker, 'text>)>,
}

impl<'text> Tree<'_, '_, 'text> {
    pub(crate) fn read(self, text: &'text str) -> Result<Json<'text>, Refused> {
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
        // An entry has six.
        let mut fields = Vec::with_capacity(6);
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
