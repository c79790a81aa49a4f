//! Finding things on the page as a person does, and what they say.

use crate::browser::{Asked, id};
use crate::locate::Named;
use crate::{Browser, Engine};
use serde_json::{Value, json};
use thirtyfour::common::command::Command;

impl Browser {
    /// Waits for the one thing called so, and gives it as the driver names it.
    ///
    /// # Panics
    /// There is none, or the browser tells a screen reader something else.
    #[track_caller]
    pub fn find(&self, named: &Named) -> Value {
        self.until_some(&format!("there is one {named}"), |browser| browser.seen(named))
    }

    /// The one thing called so, if there is one now.
    #[track_caller]
    pub(crate) fn seen(&self, named: &Named) -> Option<Value> {
        let element = self.found(named).pop()?;
        self.compare(&element, named)?;
        Some(element)
    }

    /// Whether anything is called so now.
    #[must_use]
    pub fn shows(&self, named: &Named) -> bool {
        !self.found(named).is_empty()
    }

    fn found(&self, named: &Named) -> Vec<Value> {
        let script = include_str!("locate.js");
        let arguments = [json!(named.role), json!(named.name), json!(named.is_start)];
        // Made anew while the driver took hold of it: the page now shows the new one.
        let look = || self.attempt(Command::ExecuteScript(script.into(), arguments.clone().into()));
        match std::iter::repeat_with(look).flatten().next() {
            Some(Value::Array(found)) => {
                assert!(found.len() < 2, "{} things are called {named}", found.len());
                found
            }
            other => panic!("not a list: {other:?}"),
        }
    }

    /// What the browser itself makes of the element must be what the test calls it; none if it was made
    /// anew meanwhile. Asked of Chromium alone: others name roles in words of their own.
    #[track_caller]
    fn compare(&self, element: &Value, named: &Named) -> Option<()> {
        if self.engine != Engine::Chromium {
            return Some(());
        }
        let id = id(element);
        let computed = |what: &str| {
            let path = format!("element/{id}/computed{what}");
            let answer = self.attempt(Asked { method: http::Method::GET, path, body: None })?;
            answer.as_str().map(str::to_owned)
        };
        let (role, label) = (computed("role")?, computed("label")?);
        // Asked last: an element taken off the page meanwhile has no role and no name any more, and is
        // no fault.
        let is_there = self.run_on(element, "return arguments[0].isConnected", &[])?;
        if is_there == json!(false) {
            return None;
        }
        assert_eq!(role, named.role, "the browser's role of {named}");
        let close = |text: &str| text.split_whitespace().collect::<String>();
        let (label, name) = (close(&label), close(&named.name));
        let is_so = if named.is_start { label.starts_with(&name) } else { label == name };
        assert!(is_so, "a screen reader says “{label}” of {named}");
        Some(())
    }

    /// What a script makes of the thing called so, once it is there.
    #[track_caller]
    pub(crate) fn of(&self, named: &Named, script: &str, more: &[Value]) -> Value {
        self.until_some(&format!("there is one {named}"), |browser| {
            browser.run_on(&browser.seen(named)?, script, more)
        })
    }

    /// The text of a thing, once it is there.
    #[track_caller]
    pub fn text(&self, named: &Named) -> String {
        let text = self.of(named, "return arguments[0].innerText", &[]);
        text.as_str().unwrap_or_default().to_owned()
    }

    /// Waits until a thing says something, and gives all it says.
    #[track_caller]
    pub fn until_in(&self, named: &Named, words: &str) -> String {
        self.until_some(&format!("{named} says “{words}”"), |browser| {
            let element = browser.found(named).pop()?;
            let text = browser.run_on(&element, "return arguments[0].innerText", &[])?;
            text.as_str().filter(|text| text.contains(words)).map(str::to_owned)
        })
    }

    /// A thing's property, as the page's script sees it.
    #[track_caller]
    pub fn property(&self, named: &Named, property: &str) -> Value {
        self.of(named, "return arguments[0][arguments[1]]", &[json!(property)])
    }

    /// Whether a thing has the focus.
    #[track_caller]
    pub fn has_focus(&self, named: &Named) -> bool {
        self.of(named, "return document.activeElement === arguments[0]", &[]) == json!(true)
    }
}
