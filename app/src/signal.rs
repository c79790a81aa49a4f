//! Signals and memos of any type, on one of each of Leptos'.
//!
//! Leptos makes its own code for every type a signal or memo holds, two kilobytes and more each. Here
//! Leptos holds only "something, shared", and what is done for a type is no more than to look into it.

use leptos::prelude::{
    Get, GetUntracked, LocalStorage, Memo as LeptosMemo, Notify, RwSignal as LeptosSignal,
};
use send_wrapper::SendWrapper;
use std::any::Any;
use std::cell::RefCell;
use std::marker::PhantomData;
use std::rc::Rc;

pub use leptos::prelude::{
    document, event_target_value, expect_context, on_cleanup, provide_context,
    request_animation_frame, set_timeout, untrack, window, window_event_listener,
};

type Shared = Rc<dyn Any>;

/// A value that can be changed, and is followed by what reads it.
pub struct RwSignal<T> {
    cell: LeptosSignal<Shared, LocalStorage>,
    of: PhantomData<fn() -> T>,
}

/// A value that follows the signals it is made from; what reads it runs again only when it differs.
pub struct Memo<T> {
    made: LeptosMemo<Made>,
    of: PhantomData<fn() -> T>,
}

/// What a memo made, and how it is told from what it makes next.
#[derive(Clone)]
struct Made {
    value: SendWrapper<Shared>,
    is_same: fn(&dyn Any, &dyn Any) -> bool,
}

impl PartialEq for Made {
    fn eq(&self, other: &Self) -> bool {
        (self.is_same)(&**self.value, &**other.value)
    }
}

impl<T> Clone for RwSignal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for RwSignal<T> {}

impl<T> Clone for Memo<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Memo<T> {}

impl<T: Default + 'static> Default for RwSignal<T> {
    fn default() -> Self {
        Self::new(T::default())
    }
}

// What no type needs code of its own for.

fn signal(value: Shared) -> LeptosSignal<Shared, LocalStorage> {
    LeptosSignal::new_local(value)
}

fn held(signal: LeptosSignal<Shared, LocalStorage>) -> Option<Shared> {
    signal.try_get_untracked()
}

fn followed(signal: LeptosSignal<Shared, LocalStorage>) -> Shared {
    signal.get()
}

fn tell(signal: LeptosSignal<Shared, LocalStorage>) {
    signal.notify();
}

fn memo(make: Box<dyn Fn() -> Made>) -> LeptosMemo<Made> {
    let make = SendWrapper::new(make);
    LeptosMemo::new(move |_| make())
}

fn made(memo: LeptosMemo<Made>) -> Shared {
    memo.get().value.take()
}

fn made_untracked(memo: LeptosMemo<Made>) -> Shared {
    memo.get_untracked().value.take()
}

fn inside<T: 'static>(shared: &Shared) -> &T {
    shared.downcast_ref().expect("the type it was made with")
}

impl<T: 'static> RwSignal<T> {
    /// A signal with this value.
    pub fn new(value: T) -> Self {
        Self { cell: signal(Rc::new(RefCell::new(value))), of: PhantomData }
    }

    /// Looks at the value, and follows it.
    pub fn with<R>(self, look: impl FnOnce(&T) -> R) -> R {
        look(&inside::<RefCell<T>>(&followed(self.cell)).borrow())
    }

    /// Looks at the value as it is now.
    ///
    /// # Panics
    /// The screen the signal was made on is gone.
    pub fn with_untracked<R>(self, look: impl FnOnce(&T) -> R) -> R {
        let shared = held(self.cell).expect("a signal that is still there");
        look(&inside::<RefCell<T>>(&shared).borrow())
    }

    /// The value as it is now; none when the screen the signal was made on is gone.
    pub fn try_get_untracked(self) -> Option<T>
    where
        T: Clone,
    {
        held(self.cell).map(|shared| inside::<RefCell<T>>(&shared).borrow().clone())
    }

    /// Changes the value, if the screen the signal was made on is still there.
    pub fn update(self, change: impl FnOnce(&mut T)) {
        if let Some(shared) = held(self.cell) {
            change(&mut inside::<RefCell<T>>(&shared).borrow_mut());
            tell(self.cell);
        }
    }

    /// Puts another value in, if the screen the signal was made on is still there.
    pub fn set(self, value: T) {
        self.update(|held| *held = value);
    }
}

impl<T: PartialEq + 'static> Memo<T> {
    /// A memo of what `make` makes.
    pub fn new(make: impl Fn() -> T + 'static) -> Self {
        fn is_same<T: PartialEq + 'static>(one: &dyn Any, other: &dyn Any) -> bool {
            one.downcast_ref::<T>() == other.downcast_ref()
        }
        let make = move || Made { value: SendWrapper::new(Rc::new(make())), is_same: is_same::<T> };
        Self { made: memo(Box::new(make)), of: PhantomData }
    }

    /// Looks at the value, and follows it.
    pub fn with<R>(self, look: impl FnOnce(&T) -> R) -> R {
        look(inside(&made(self.made)))
    }

    /// Looks at the value as it is now.
    pub fn with_untracked<R>(self, look: impl FnOnce(&T) -> R) -> R {
        look(inside(&made_untracked(self.made)))
    }
}

/// What both do by looking.
macro_rules! look {
    ($type:ident, $bound:path) => {
        impl<T: $bound + 'static> $type<T> {
            /// Follows the value. A memo is made by that: one never made follows nothing itself.
            pub fn track(self) {
                self.with(|_| ());
            }

            /// The value; follows it.
            pub fn get(self) -> T
            where
                T: Clone,
            {
                self.with(T::clone)
            }

            /// The value as it is now.
            pub fn get_untracked(self) -> T
            where
                T: Clone,
            {
                self.with_untracked(T::clone)
            }
        }
    };
}

look!(RwSignal, Sized);
look!(Memo, PartialEq);
