//! Touching and typing.

use crate::Browser;
use crate::browser::{Asked, id};
use crate::locate::Named;
use serde_json::{Value, json};
use std::time::{Duration, Instant};

impl Browser {
    /// Touches a thing with a finger, in its middle, once it can be touched there.
    ///
    /// # Panics
    /// It is not there, can't be used, or something else lies over it.
    #[track_caller]
    pub fn tap(&self, named: &Named) {
        self.press(named, Duration::ZERO);
    }

    /// Touches a thing as [`Browser::tap`] does, and lifts the finger only so much later.
    ///
    /// # Panics
    /// As there.
    #[track_caller]
    pub fn press(&self, named: &Named, rest: Duration) {
        self.until_some(&format!("{named} can be touched"), |browser| {
            let element = browser.seen(named)?;
            let middle = browser.run_on(&element, CAN_BE_TOUCHED, &[])?;
            let middle = (middle[0].as_f64()?, middle[1].as_f64()?);
            browser.take_time(middle);
            browser.touch(&element, rest)?;
            browser.touched.set(Some((Instant::now(), middle)));
            Some(())
        });
        self.taps.set(self.taps.get() + 1);
    }

    /// Touches a thing twice as quickly as a nervous finger does.
    ///
    /// # Panics
    /// As [`Browser::tap`].
    #[track_caller]
    pub fn double_tap(&self, named: &Named) {
        self.tap(named);
        let point = self.touched.get().map_or((0.0, 0.0), |(_, point)| point);
        let mut finger = vec![json!({
            "type": "pointerMove", "origin": "viewport", "duration": 150,
            "x": point.0.round(), "y": point.1.round(),
        })];
        finger.extend(DOWN_AND_UP.iter().map(|kind| json!({ "type": kind, "button": 0 })));
        self.perform(json!([{
            "type": "pointer", "id": "finger", "parameters": { "pointerType": "touch" }, "actions": finger,
        }]));
        self.touched.set(Some((Instant::now(), point)));
    }

    /// A person's two touches at one place are no double tap unless they are meant as one.
    fn take_time(&self, (x, y): (f64, f64)) {
        if let Some((when, (last_x, last_y))) = self.touched.get()
            && (x - last_x).hypot(y - last_y) < 32.0
        {
            std::thread::sleep(BETWEEN_TOUCHES.saturating_sub(when.elapsed()));
        }
    }

    /// Touches an element; none if that was made anew before the finger came down.
    fn touch(&self, element: &Value, rest: Duration) -> Option<()> {
        let mut actions = vec![
            json!({ "type": "pointerMove", "origin": element, "x": 0, "y": 0, "duration": 0 }),
        ];
        actions.extend(DOWN_AND_UP.iter().map(|kind| json!({ "type": kind, "button": 0 })));
        if !rest.is_zero() {
            actions.insert(2, json!({ "type": "pause", "duration": rest.as_millis() }));
        }
        let finger = json!({
            "type": "pointer", "id": "finger", "parameters": { "pointerType": "touch" },
            "actions": actions,
        });
        let body = Some(json!({ "actions": [finger] }));
        self.attempt(Asked { method: http::Method::POST, path: "actions".to_owned(), body })?;
        Some(())
    }

    /// Draws a line on a thing with a finger: from point to point, counted from its middle in CSS pixels.
    ///
    /// # Panics
    /// It is not there, or is made anew meanwhile.
    #[track_caller]
    pub fn draw(&self, named: &Named, points: &[(i32, i32)]) {
        let element = self.find(named);
        self.run_on(&element, "arguments[0].scrollIntoView({ block: 'center' })", &[]);
        let to = |(x, y): (i32, i32)| json!({ "type": "pointerMove", "origin": element, "x": x, "y": y, "duration": 20 });
        let mut actions: Vec<Value> = points.iter().map(|&point| to(point)).collect();
        actions.insert(1.min(actions.len()), json!({ "type": "pointerDown", "button": 0 }));
        // A flick would go on by itself, and its end swallows the next touch.
        actions.push(json!({ "type": "pause", "duration": 150 }));
        actions.push(json!({ "type": "pointerUp", "button": 0 }));
        self.perform(json!([{
            "type": "pointer", "id": "finger", "parameters": { "pointerType": "touch" }, "actions": actions,
        }]));
    }

    /// How many times the page was touched since the last call.
    #[must_use]
    pub fn taps(&self) -> u32 {
        self.taps.take()
    }

    /// Presses and lets go of keys, one after the other, on whatever has the focus.
    pub fn type_keys(&self, keys: &str) {
        let actions: Vec<Value> = keys
            .chars()
            .flat_map(|key| {
                ["keyDown", "keyUp"].map(|kind| json!({ "type": kind, "value": key.to_string() }))
            })
            .collect();
        self.perform(json!([{ "type": "key", "id": "keyboard", "actions": actions }]));
        // Whatever is touched next is no half of a double tap.
        self.touched.set(None);
    }

    /// Puts a text in a field in place of what was there.
    #[track_caller]
    pub fn fill(&self, named: &Named, text: &str) {
        self.of(named, "arguments[0].focus(); arguments[0].select();", &[]);
        // The delete key: an empty text empties the field.
        self.type_keys(&format!("\u{e017}{text}"));
    }

    /// Chooses out of a list, by its words.
    ///
    /// # Panics
    /// The list has no such choice.
    #[track_caller]
    pub fn choose(&self, named: &Named, words: &str) {
        let chosen = self.of(
            named,
            "const [select, words] = arguments;
             const option = Array.from(select.options).find((option) => option.text === words);
             if (!option) return false;
             select.value = option.value;
             select.dispatchEvent(new Event('change', { bubbles: true }));
             return true;",
            &[json!(words)],
        );
        assert_eq!(chosen, true, "{named} has the choice {words}");
    }

    /// Chooses a file for the page's one file field.
    ///
    /// # Panics
    /// The page has none.
    pub fn choose_file(&self, file: &std::path::Path) {
        let field = self.run("return document.querySelector('input[type=file]')", &[]);
        let path = format!("element/{}/value", id(&field));
        self.command(http::Method::POST, &path, Some(json!({ "text": file })));
    }

    fn perform(&self, actions: Value) {
        self.command(http::Method::POST, "actions", Some(json!({ "actions": actions })));
    }
}

/// The app takes two touches at one place within 0.4 s for a double tap, unless something was typed between.
const BETWEEN_TOUCHES: Duration = Duration::from_millis(450);

const DOWN_AND_UP: [&str; 2] = ["pointerDown", "pointerUp"];

/// Its middle, once it is in view, in use, and uppermost there.
const CAN_BE_TOUCHED: &str = "
    const [element] = arguments;
    if (!element.isConnected || element.disabled) return null;
    const middle = () => {
        const { left, top, width, height } = element.getBoundingClientRect();
        return [left + width / 2, top + height / 2];
    };
    const uppermost = () => {
        const hit = document.elementFromPoint(...middle());
        return hit !== null && (element.contains(hit) || hit.contains(element) && hit.tagName === 'LABEL');
    };
    if (!uppermost()) element.scrollIntoView({ block: 'center', behavior: 'instant' });
    return uppermost() ? middle() : null;
";
