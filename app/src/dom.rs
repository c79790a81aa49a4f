//! Elements: made once, and changed in place where a signal says so.
//!
//! Leptos' signals, memos and effects do the work. Its `view!` is not used: a view type for each piece
//! of a page came to more than half of all bytes (DEVELOPERS.md has the figures), where calls of these
//! few functions come to next to nothing. Text is always set as text, never as markup.

use crate::finger::Finger;
use crate::signal::*;
use leptos::ev::Custom;
use leptos::reactive::effect::RenderEffect;
use leptos::reactive::owner::Owner;
use send_wrapper::SendWrapper;
use std::cell::RefCell;
use wasm_bindgen::prelude::*;
use web_sys::{
    Document, Element, Event, EventTarget, HtmlInputElement, HtmlTextAreaElement, KeyboardEvent,
    Node,
};

const SVG: &str = "http://www.w3.org/2000/svg";

/// An element in the making.
#[derive(Clone)]
pub struct El(Element);

/// What can change while the page stands, run again whenever a signal it reads changes.
pub type Live<T> = Box<dyn Fn() -> T>;

fn document() -> Document {
    leptos::prelude::document()
}

/// Makes an element of the page.
///
/// # Panics
/// On a name that no element can have, which would be a slip in this code.
pub fn el(tag: &'static str) -> El {
    El(document().create_element(tag).expect("an element's name"))
}

/// Makes an element of a picture.
///
/// # Panics
/// As [`el`].
pub fn svg(tag: &'static str) -> El {
    El(document().create_element_ns(Some(SVG), tag).expect("an element's name"))
}

/// An element with a class and a text: the most common kind.
pub fn text(tag: &'static str, class: &str, words: &str) -> El {
    el(tag).class(class).text(words)
}

/// A link to a place in the app.
pub fn link(class: &str, hash: &str) -> El {
    el("a").class(class).attr("href", hash)
}

/// A button that does `act`.
pub fn button(class: &str, words: &str, act: impl Fn() + 'static) -> El {
    fn boxed(class: &str, words: &str, act: Box<dyn FnMut(Event)>) -> El {
        el("button").attr("type", "button").class(class).text(words).on_boxed("click", act)
    }
    boxed(class, words, Box::new(move |_| act()))
}

/// Runs `change` now, and again whenever a signal it reads changes, until the screen around it goes.
pub fn follow(change: impl FnMut() + 'static) {
    fn boxed(mut change: Box<dyn FnMut()>) {
        let effect = SendWrapper::new(RenderEffect::new(move |_: Option<()>| change()));
        on_cleanup(move || drop(effect));
    }
    boxed(Box::new(change));
}

/// Calls `act` on an event that reaches the window, until the screen around this goes.
pub fn listen(event: &'static str, act: impl Fn(Event) + 'static) {
    let listener = window_event_listener(Custom::<Event>::new(event), act);
    on_cleanup(move || listener.remove());
}

impl El {
    /// With classes; none for an empty text.
    #[must_use]
    pub fn class(self, names: &str) -> Self {
        if !names.is_empty() {
            // A picture's element has a class attribute, but no class name that can be set.
            set(&self.0, "class", Some(names));
        }
        self
    }

    /// With an attribute.
    #[must_use]
    pub fn attr(self, name: &str, value: &str) -> Self {
        set(&self.0, name, Some(value));
        self
    }

    /// With several attributes.
    #[must_use]
    pub fn attrs(self, pairs: &[(&str, &str)]) -> Self {
        for (name, value) in pairs {
            set(&self.0, name, Some(value));
        }
        self
    }

    /// With an attribute that follows a signal; none takes it away.
    #[must_use]
    pub fn attr_live(
        self,
        name: &'static str,
        value: impl Fn() -> Option<String> + 'static,
    ) -> Self {
        fn boxed(element: Element, name: &'static str, value: Live<Option<String>>) {
            follow(move || set(&element, name, value().as_deref()));
        }
        boxed(self.0.clone(), name, Box::new(value));
        self
    }

    /// With `aria-pressed` that follows a signal.
    #[must_use]
    pub fn pressed(self, is: impl Fn() -> bool + 'static) -> Self {
        self.attr_live("aria-pressed", move || Some(if is() { "true" } else { "false" }.to_owned()))
    }

    /// With `disabled` that follows a signal.
    #[must_use]
    pub fn disabled(self, is: impl Fn() -> bool + 'static) -> Self {
        self.attr_live("disabled", move || is().then(String::new))
    }

    /// With a text behind what is there.
    #[must_use]
    pub fn text(self, words: &str) -> Self {
        add(&self.0, &document().create_text_node(words));
        self
    }

    /// With a text that follows a signal, behind what is there.
    #[must_use]
    pub fn text_live(self, words: impl Fn() -> String + 'static) -> Self {
        fn boxed(parent: &Element, words: Live<String>) {
            let node = document().create_text_node("");
            add(parent, &node);
            follow(move || node.set_data(&words()));
        }
        boxed(&self.0, Box::new(words));
        self
    }

    /// With an element inside.
    #[must_use]
    pub fn with(self, child: El) -> Self {
        add(&self.0, &child.0);
        self
    }

    /// With elements inside.
    #[must_use]
    pub fn with_all(self, children: impl IntoIterator<Item = El>) -> Self {
        for child in children {
            add(&self.0, &child.0);
        }
        self
    }

    /// With elements that follow a signal, behind what is there: made anew whenever it changes, but not
    /// under a finger.
    #[must_use]
    pub fn live(self, make: impl Fn() -> Vec<El> + 'static) -> Self {
        fn boxed(parent: Element, make: Live<Vec<El>>) {
            let end = document().create_comment("");
            add(&parent, &end);
            let shown = RefCell::new(Vec::<El>::new());
            let finger = expect_context::<Finger>();
            // What is on the page goes on until there is something else, so it does not belong to the run.
            let owner = Owner::current().unwrap_or_default().child();
            follow(move || {
                if finger.is_down() {
                    return;
                }
                let made = owner.with_cleanup(&make);
                for old in shown.take() {
                    old.0.remove();
                }
                for new in &made {
                    // The end mark is this element's own child.
                    let _ = parent.insert_before(&new.0, Some(&end));
                }
                shown.replace(made);
            });
        }
        boxed(self.0.clone(), Box::new(make));
        self
    }

    /// Calls `act` on an event.
    #[must_use]
    pub fn on(self, event: &str, act: impl FnMut(Event) + 'static) -> Self {
        self.on_boxed(event, Box::new(act))
    }

    fn on_boxed(self, event: &str, act: Box<dyn FnMut(Event)>) -> Self {
        // The closure goes when the browser lets go of the element.
        let act = Closure::wrap(act).into_js_value();
        let target: &EventTarget = &self.0;
        let _ = target.add_event_listener_with_callback(event, act.unchecked_ref());
        self
    }

    /// Calls `act` when Enter is pressed inside.
    #[must_use]
    pub fn on_enter(self, act: impl Fn() + 'static) -> Self {
        self.on("keydown", move |event| {
            if event.dyn_ref::<KeyboardEvent>().is_some_and(|event| event.key() == "Enter") {
                act();
            }
        })
    }

    /// Calls `act` instead of sending a form.
    #[must_use]
    pub fn on_submit(self, act: impl Fn() + 'static) -> Self {
        self.on("submit", move |event| {
            event.prevent_default();
            act();
        })
    }

    /// Holds an input to a text, both ways.
    #[must_use]
    pub fn bound(self, text: RwSignal<String>) -> Self {
        let Some(input) = self.0.dyn_ref::<HtmlInputElement>().cloned() else { return self };
        let field = input.clone();
        follow(move || {
            let words = text.get();
            // Setting an equal text would move the caret.
            if field.value() != words {
                field.set_value(&words);
            }
        });
        self.on("input", move |_| text.set(input.value()))
    }

    /// Holds a field of several rows to a text, both ways.
    #[must_use]
    pub fn bound_rows(self, text: RwSignal<String>) -> Self {
        let Some(input) = self.0.dyn_ref::<HtmlTextAreaElement>().cloned() else { return self };
        let field = input.clone();
        follow(move || {
            let words = text.get();
            if field.value() != words {
                field.set_value(&words);
            }
        });
        self.on("input", move |_| text.set(input.value()))
    }

    /// With a drawing of our own making inside, given as its source.
    #[must_use]
    pub fn drawing(self, source: &str) -> Self {
        self.0.set_inner_html(source);
        self
    }

    /// The element itself.
    pub fn element(&self) -> &Element {
        &self.0
    }
}

fn set(element: &Element, name: &str, value: Option<&str>) {
    // A browser refuses only names that no attribute can have.
    let _ = match value {
        Some(value) => element.set_attribute(name, value),
        None => element.remove_attribute(name),
    };
}

fn add(parent: &Node, child: &Node) {
    // Refused only for a node that can have no children, which would be a slip in this code.
    let _ = parent.append_child(child);
}
