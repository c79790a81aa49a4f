//! The JSON of plain types, lists and pairs.

use crate::{Json, Kept, Refused};
use std::borrow::Cow;

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
        Json::List(self.iter().map(T::json).collect())
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        json.list()?.iter().map(T::of_json).collect()
    }
}

impl<T: Kept, const N: usize> Kept for [T; N] {
    fn json(&self) -> Json<'_> {
        Json::List(self.iter().map(T::json).collect())
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
