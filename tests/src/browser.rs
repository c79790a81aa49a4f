//! A browser with a profile of its own, and what a person can do with it.

use crate::engine::{Driver, Engine};
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
    pub(crate) engine: Engine,
    // Dropped in this order: the session is let go first, then everything is ended.
    session: Option<WebDriver>,
    runtime: Runtime,
    driver: Driver,
    profile: Option<Profile>,
    url: String,
    pub(crate) taps: Cell<u32>,
    /// When and where the page was touched last.
    pub(crate) touched: Cell<Option<(Instant, (f64, f64))>>,
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
            touched: Cell::default(),
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
    pub(crate) fn attempt(&self, command: impl FormatRequestData) -> Option<Value> {
        let what = format!("{command:?}");
        let answer = async { self.session().cmd(command).await?.value_json() };
        match self.runtime.block_on(answer) {
            Ok(answer) => Some(answer),
            Err(error) if matches!(*error, WebDriverErrorInner::StaleElementReference(_)) => None,
            Err(error) => panic!("the driver refuses {what}: {error:?}"),
        }
    }

    /// Runs a script on an element; none if that was made anew meanwhile.
    pub(crate) fn run_on(&self, element: &Value, script: &str, more: &[Value]) -> Option<Value> {
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

    /// The picture on the screen, as a PNG; it is also put in the target folder's `screens`, for looking at.
    ///
    /// # Panics
    /// It can't be put there.
    pub fn picture(&self, name: &str) -> Vec<u8> {
        let picture = self.wait_for(self.session().screenshot_as_png(), "a picture");
        let test = std::env::current_exe().expect("the place of this test");
        let folder = test.ancestors().nth(3).expect("a target folder").join("screens");
        std::fs::create_dir_all(&folder).expect("a folder for the pictures");
        std::fs::write(folder.join(format!("{name}.png")), &picture).expect("room for a picture");
        picture
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        self.end();
    }
}

/// The driver's own name of an element.
pub(crate) fn id(element: &Value) -> String {
    let first = element.as_object().and_then(|object| object.values().next());
    first.and_then(Value::as_str).expect("an element").to_owned()
}

/// A command of the standard.
#[derive(Debug)]
pub(crate) struct Asked {
    pub(crate) method: http::Method,
    pub(crate) path: String,
    pub(crate) body: Option<Value>,
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
