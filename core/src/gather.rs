//! `gather`, which is `collect` in little code.

/// What items can be gathered into.
pub trait Gathered<T> {
    /// All items of an iterator, in order.
    fn gathered(items: impl Iterator<Item = T>) -> Self;
}

/// [`Gather::gather`] for every iterator.
pub trait Gather: Iterator + Sized {
    /// All items, like `collect`. That expands, for every iterator anew, into asking how many items there
    /// will be, making room, asking again; for a phone's few items, one push after the other does.
    fn gather<B: Gathered<Self::Item>>(self) -> B {
        B::gathered(self)
    }
}

impl<I: Iterator> Gather for I {}

impl<T> Gathered<T> for Vec<T> {
    fn gathered(items: impl Iterator<Item = T>) -> Self {
        let mut all = Self::new();
        for item in items {
            all.push(item);
        }
        all
    }
}

/// Up to the first error.
impl<T, E> Gathered<Result<T, E>> for Result<Vec<T>, E> {
    fn gathered(items: impl Iterator<Item = Result<T, E>>) -> Self {
        let mut all = Vec::new();
        for item in items {
            all.push(item?);
        }
        Ok(all)
    }
}

/// None as soon as one is none.
impl<T> Gathered<Option<T>> for Option<Vec<T>> {
    fn gathered(items: impl Iterator<Item = Option<T>>) -> Self {
        let mut all = Vec::new();
        for item in items {
            all.push(item?);
        }
        Some(all)
    }
}

/// What a text is made of.
pub trait Piece {
    /// Puts it behind a text.
    fn put_behind(self, text: &mut String);
}

impl Piece for char {
    fn put_behind(self, text: &mut String) {
        text.push(self);
    }
}

impl<S: AsRef<str> + ?Sized> Piece for &S {
    fn put_behind(self, text: &mut String) {
        text.push_str(self.as_ref());
    }
}

impl Piece for String {
    fn put_behind(self, text: &mut String) {
        text.push_str(&self);
    }
}

impl<P: Piece> Gathered<P> for String {
    fn gathered(items: impl Iterator<Item = P>) -> Self {
        let mut all = Self::new();
        for item in items {
            item.put_behind(&mut all);
        }
        all
    }
}

#[cfg(test)]
mod tests {
    use super::Gather;

    #[test]
    fn as_collect_does() {
        let numbers = || 1..=4;
        assert_eq!(numbers().gather::<Vec<_>>(), [1, 2, 3, 4]);
        assert_eq!(["a", "b"].iter().gather::<String>(), "ab");
        assert_eq!(["a".to_owned(), "b".to_owned()].into_iter().gather::<String>(), "ab");
        assert_eq!("ab".chars().rev().gather::<String>(), "ba");
        let below = |most: i32| move |at: i32| if at < most { Ok(at) } else { Err(at) };
        assert_eq!(numbers().map(below(9)).gather::<Result<Vec<_>, _>>(), Ok(vec![1, 2, 3, 4]));
        assert_eq!(numbers().map(below(3)).gather::<Result<Vec<_>, _>>(), Err(3), "the first");
        assert_eq!(numbers().map(Some).gather::<Option<Vec<_>>>(), Some(vec![1, 2, 3, 4]));
        assert_eq!([Some(1), None].into_iter().gather::<Option<Vec<_>>>(), None);
    }
}
