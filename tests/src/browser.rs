//! A browser with a profile of its own, and what a person can do with it.

use crate::engine::{Driver, Engine};
use crate::locate::Named;
use crate::process::Tree;
use serde_json::{Value, json};
use std::cell::Cell;
use std::fmt::Debug;
use std::future::Future;
use std::time::{Duration, Instant};
use tempfile::TempDir;
use thirtyfour::common::command::{Command, FormatRequestData};
use thirtyfour::error::{WebDriverErrorInner, WebDriverResult};
use thirtyfour::{Capabilities, RequestData, SessionId, WebDriver};
use tokio::runtime::Runtime;

/// How long anything that must come may take on a busy machine. Waiting ends as soon as it is there.
const PATIENCE: Duration = Duration::from_secs(20);

/// A phone's screen, in CSS pixels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phone {
    /// Across.
    pub width: u32,
    /// Down.
    pub height: u32,
}

impl Phone {
    /// A usual phone.
    pub const USUAL: Self = Self { width: 390, height: 844 };
    /// The narrowest that must do.
    pub const SMALL: Self = Self { width: 320, height: 640 };
}

/// What a browser keeps on the disk.
#[derive(Debug)]
pub struct Profile {
    folder: TempDir,
}

impl Profile {
    /// A profile in which nothing happened yet.
    ///
    /// # Panics
    /// No folder can be made.
    #[must_use]
    pub fn fresh() -> Self {
        Self { folder: tempfile::tempdir().expect("a folder for the profile") }
    }
}

/// A running browser, open at the app.
#[derive(Debug)]
pub struct Browser {
    engine: Engine,
    // Dropped in this order: the session is let go first, then everything is ended.
    session: Option<WebDriver>,
    runtime: Runtime,
    driver: Driver,
    profile: Option<Profile>,
    url: String,
    taps: Cell<u32>,
}

impl Browser {
    /// Opens a page on a usual phone that never saw it.
    #[must_use]
    pub fn open(url: &str) -> Self {
        Self::open_on(Phone::USUAL, Profile::fresh(), url)
    }

    /// Opens a page on a phone, with what an earlier browser has kept.
    #[must_use]
    pub fn open_on(phone: Phone, profile: Profile, url: &str) -> Self {
        Self::open_in(Engine::chosen(), phone, profile, url)
    }

    /// Opens a page in a browser of any engine.
    ///
    /// # Panics
    /// The browser does not start, or the page does not show the app.
    #[must_use]
    pub fn open_in(engine: Engine, phone: Phone, profile: Profile, url: &str) -> Self {
        let browser = Self::start(engine, phone, profile, url);
        browser.go("");
        browser
    }

    /// Starts a browser that looks at nothing yet.
    ///
    /// # Panics
    /// It does not start.
    #[must_use]
    pub fn start(engine: Engine, phone: Phone, profile: Profile, url: &str) -> Self {
        let (driver, address) = engine.drive();
        let runtime =
            tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
        let capabilities: Capabilities =
            serde_json::from_value(engine.capabilities(profile.folder.path(), phone))
                .expect("capabilities");
        let mut browser = Self {
            engine,
            session: None,
            runtime,
            driver,
            profile: Some(profile),
            url: url.to_owned(),
            taps: Cell::default(),
        };
        let session = browser.wait_for(WebDriver::new(address, capabilities), "a session");
        browser.session = Some(session);
        browser
    }

    /// Ends the whole browser with SIGKILL and gives what it left on the disk.
    ///
    /// # Panics
    /// It does not end.
    #[must_use]
    pub fn kill(mut self) -> Profile {
        self.end();
        self.profile.take().expect("taken only here")
    }

    /// The browser's processes: to be ended with no time lost in finding them.
    #[must_use]
    pub fn tree(&self) -> Tree {
        self.driver.process.tree()
    }

    fn end(&mut self) {
        let tree = self.driver.process.tree();
        tree.kill();
        self.driver.process.kill();
        if let Some(session) = self.session.take() {
            // It has no one to say goodbye to.
            let _ = session.leak();
        }
        let start = Instant::now();
        while !tree.is_gone() && start.elapsed() < PATIENCE {
            std::thread::yield_now();
        }
    }

    pub(crate) fn session(&self) -> &WebDriver {
        self.session.as_ref().expect("there from start to end")
    }

    /// The answer of the driver.
    pub(crate) fn wait_for<T, E: Debug>(
        &self,
        answer: impl Future<Output = Result<T, E>>,
        what: &str,
    ) -> T {
        self.runtime
            .block_on(answer)
            .unwrap_or_else(|error| panic!("the driver refuses {what}: {error:?}"))
    }

    /// Whether the driver answers with an error.
    pub(crate) fn fails<T, E>(&self, answer: impl Future<Output = Result<T, E>>) -> bool {
        self.runtime.block_on(answer).is_err()
    }

    /// Sends the driver a command of the standard, below the session's address.
    pub(crate) fn command(&self, method: http::Method, path: &str, body: Option<Value>) -> Value {
        let asked = Asked { method, path: path.to_owned(), body };
        self.wait_for(self.answer(asked), path)
    }

    async fn answer(&self, asked: Asked) -> WebDriverResult<Value> {
        self.session().cmd(asked).await?.value_json()
    }

    /// The driver's answer; none if an element that the command names was made anew meanwhile.
    fn attempt(&self, command: impl FormatRequestData) -> Option<Value> {
        let what = format!("{command:?}");
        let answer = async { self.session().cmd(command).await?.value_json() };
        match self.runtime.block_on(answer) {
            Ok(answer) => Some(answer),
            Err(error) if matches!(*error, WebDriverErrorInner::StaleElementReference(_)) => None,
            Err(error) => panic!("the driver refuses {what}: {error:?}"),
        }
    }

    /// Runs a script on an element; none if that was made anew meanwhile.
    fn run_on(&self, element: &Value, script: &str, more: &[Value]) -> Option<Value> {
        let arguments: Vec<Value> = [element.clone()].into_iter().chain(more.to_vec()).collect();
        self.attempt(Command::ExecuteScript(script.into(), arguments.into()))
    }

    /// Runs a script in the page.
    ///
    /// # Panics
    /// It throws.
    pub fn run(&self, script: &str, arguments: &[Value]) -> Value {
        let command = Command::ExecuteScript(script.into(), arguments.into());
        let answer = async { self.session().cmd(command).await?.value_json() };
        self.wait_for(answer, script)
    }

    /// Runs a script that ends by calling its last argument.
    ///
    /// # Panics
    /// It throws, or does not end.
    pub fn run_until_called(&self, script: &str, arguments: &[Value]) -> Value {
        let command = Command::ExecuteAsyncScript(script.into(), arguments.into());
        let answer = async { self.session().cmd(command).await?.value_json() };
        self.wait_for(answer, script)
    }

    /// Waits until something is so.
    ///
    /// # Panics
    /// It does not become so; the page's words are said.
    #[track_caller]
    pub fn until(&self, what: &str, mut is: impl FnMut(&Self) -> bool) {
        self.until_some(what, |browser| is(browser).then_some(()));
    }

    /// Waits until there is something, and gives it.
    ///
    /// # Panics
    /// It does not come; the page's words are said.
    #[track_caller]
    pub fn until_some<T>(&self, what: &str, mut find: impl FnMut(&Self) -> Option<T>) -> T {
        let start = Instant::now();
        loop {
            if let Some(found) = find(self) {
                return found;
            }
            assert!(
                start.elapsed() < PATIENCE,
                "waited in vain: {what}. At {} the page says:\n{}",
                self.place(),
                self.words()
            );
            // Not for the page to get ready: only so that asking does not keep the machine from it.
            std::thread::sleep(Duration::from_millis(10));
        }
    }

    /// Goes to a place in the app: the part of the address behind its folder.
    pub fn go(&self, place: &str) {
        let url = format!("{}{place}", self.url);
        self.wait_for(self.session().goto(url), place);
        self.until_open();
    }

    /// Loads the page again.
    pub fn reload(&self) {
        self.wait_for(self.session().refresh(), "a reload");
        self.until_open();
    }

    /// Waits until the app shows a screen and has read its book.
    #[track_caller]
    pub fn until_open(&self) {
        self.until("the app shows a screen, and has read the book", |browser| {
            browser.run("return document.querySelector('.shell:not([aria-busy]) h1') !== null", &[])
                == json!(true)
        });
    }

    /// Lets the page draw itself anew twice: whatever it does on its own at the next picture is then done.
    pub fn two_frames(&self) {
        self.run_until_called(
            "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(done));",
            &[],
        );
    }

    /// The place in the app.
    #[must_use]
    pub fn place(&self) -> String {
        self.run("return location.hash", &[]).as_str().unwrap_or_default().to_owned()
    }

    /// Every word on the page that can be seen.
    #[must_use]
    pub fn words(&self) -> String {
        self.run("return document.body.innerText", &[]).as_str().unwrap_or_default().to_owned()
    }

    /// Waits until the page says something.
    #[track_caller]
    pub fn until_says(&self, words: &str) {
        self.until(&format!("the page says “{words}”"), |browser| {
            browser.words().contains(words)
        });
    }

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
    fn seen(&self, named: &Named) -> Option<Value> {
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
        match self.run(script, &arguments) {
            Value::Array(found) => {
                assert!(found.len() < 2, "{} things are called {named}", found.len());
                found
            }
            other => panic!("not a list: {other}"),
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
    fn of(&self, named: &Named, script: &str, more: &[Value]) -> Value {
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

    /// Touches a thing with a finger, in its middle, once it can be touched there.
    ///
    /// # Panics
    /// It is not there, can't be used, or something else lies over it.
    #[track_caller]
    pub fn tap(&self, named: &Named) {
        self.until_some(&format!("{named} can be touched"), |browser| {
            let element = browser.seen(named)?;
            (browser.run_on(&element, CAN_BE_TOUCHED, &[])? == json!(true)).then_some(())?;
            browser.touch(&element)
        });
        self.taps.set(self.taps.get() + 1);
    }

    /// Touches an element; none if that was made anew before the finger came down.
    fn touch(&self, element: &Value) -> Option<()> {
        let finger = json!({
            "type": "pointer", "id": "finger", "parameters": { "pointerType": "touch" },
            "actions": [
                { "type": "pointerMove", "origin": element, "x": 0, "y": 0, "duration": 0 },
                { "type": "pointerDown", "button": 0 },
                { "type": "pointerUp", "button": 0 },
            ],
        });
        let body = Some(json!({ "actions": [finger] }));
        self.attempt(Asked { method: http::Method::POST, path: "actions".to_owned(), body })?;
        Some(())
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

    /// Opens the app in another tab, and looks at that.
    pub fn open_tab(&self, place: &str) {
        let made = self.command(http::Method::POST, "window/new", Some(json!({ "type": "tab" })));
        self.look_at(made["handle"].as_str().unwrap_or_default());
        self.go(place);
    }

    /// Opens a file of the same host that is no app in another tab, and looks at that.
    pub fn open_file_tab(&self, file: &str) {
        let made = self.command(http::Method::POST, "window/new", Some(json!({ "type": "tab" })));
        self.look_at(made["handle"].as_str().unwrap_or_default());
        self.wait_for(self.session().goto(format!("{}{file}", self.url)), file);
    }

    /// The tabs, in the order they were opened.
    #[must_use]
    pub fn tabs(&self) -> Vec<String> {
        let handles = self.command(http::Method::GET, "window/handles", None);
        serde_json::from_value(handles).unwrap_or_default()
    }

    /// Looks at a tab.
    pub fn look_at(&self, tab: &str) {
        self.command(http::Method::POST, "window", Some(json!({ "handle": tab })));
    }

    /// The picture on the screen, as a PNG.
    #[must_use]
    pub fn picture(&self) -> Vec<u8> {
        self.wait_for(self.session().screenshot_as_png(), "a picture")
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        self.end();
    }
}

/// In view, in use, and uppermost at its middle.
const CAN_BE_TOUCHED: &str = "
    const [element] = arguments;
    if (!element.isConnected || element.disabled) return false;
    const middle = () => {
        const { left, top, width, height } = element.getBoundingClientRect();
        return [left + width / 2, top + height / 2];
    };
    const uppermost = () => {
        const hit = document.elementFromPoint(...middle());
        return hit !== null && (element.contains(hit) || hit.contains(element) && hit.tagName === 'LABEL');
    };
    if (!uppermost()) element.scrollIntoView({ block: 'center', behavior: 'instant' });
    return uppermost();
";

/// The driver's own name of an element.
fn id(element: &Value) -> String {
    let first = element.as_object().and_then(|object| object.values().next());
    first.and_then(Value::as_str).expect("an element").to_owned()
}

/// A command of the standard.
#[derive(Debug)]
struct Asked {
    method: http::Method,
    path: String,
    body: Option<Value>,
}

impl FormatRequestData for Asked {
    fn format_request(&self, session: &SessionId) -> RequestData {
        let request =
            RequestData::new(self.method.clone(), format!("session/{session}/{}", self.path));
        match &self.body {
            Some(body) => request.add_body(body.clone()),
            None => request,
        }
    }
}
