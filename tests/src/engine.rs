//! The browser engines: what drives each, and how it is asked for a phone.

use crate::browser::Phone;
use crate::port::Port;
use crate::process::Process;
use serde_json::{Value, json};
use std::net::TcpStream;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

/// A browser engine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Chromium by chromedriver.
    Chromium,
    /// Chromium that lets no page keep anything.
    ChromiumKeepingNothing,
    /// Chromium of someone who has set its text to twice the usual size.
    ChromiumWithLargeText,
    /// Firefox by geckodriver, which must be installed by hand.
    Firefox,
    /// WebKitGTK by its own driver, in a window on a screen that is only in memory.
    WebKit,
}

/// A driver, and the screen its browser draws on where it needs one. Dropped in this order.
#[derive(Debug)]
pub(crate) struct Driver {
    /// The driver.
    pub(crate) process: Process,
    _screen: Option<Process>,
    _port: Port,
}

impl Engine {
    /// The engine to test in: Chromium, or what `PITLEAF_ENGINE` says.
    ///
    /// # Panics
    /// It says something else.
    #[must_use]
    pub fn chosen() -> Self {
        match std::env::var("PITLEAF_ENGINE").as_deref() {
            Err(_) | Ok("chromium") => Self::Chromium,
            Ok("firefox") => Self::Firefox,
            Ok("webkit") => Self::WebKit,
            Ok(other) => panic!("no engine is called {other}: chromium, firefox or webkit"),
        }
    }

    /// Starts its driver on a port kept for it and gives the driver's address.
    ///
    /// # Panics
    /// The driver is not installed.
    pub(crate) fn drive(self) -> (Driver, String) {
        if self == Self::WebKit {
            return webkit();
        }
        let (program, ready) = match self {
            Self::Firefox => ("geckodriver", "Listening on 127.0.0.1:"),
            _ => ("chromedriver", "successfully on port "),
        };
        let port = Port::keep();
        let (process, ()) = Process::start(Command::new(program).arg(port.option()), |line| {
            line.contains(ready).then_some(())
        });
        let address = format!("http://{}", port.address());
        (Driver { process, _screen: None, _port: port }, address)
    }

    /// What to ask the driver for: a phone's screen and touch, this profile, and every line of its log.
    pub(crate) fn capabilities(self, profile: &Path, phone: Phone) -> Value {
        match self {
            Self::Chromium => chromium(profile, phone, 1, 16),
            Self::ChromiumKeepingNothing => chromium(profile, phone, 2, 16),
            Self::ChromiumWithLargeText => chromium(profile, phone, 1, 32),
            Self::Firefox => json!({
                "browserName": "firefox",
                "moz:firefoxOptions": {
                    "binary": "/usr/bin/firefox-esr",
                    "args": [
                        "--headless", "--profile", profile,
                        "--width", phone.width.to_string(), "--height", phone.height.to_string(),
                    ],
                },
            }),
            Self::WebKit => json!({
                "webkitgtk:browserOptions": {
                    "binary": concat!(env!("CARGO_MANIFEST_DIR"), "/src/webkit.py"),
                    "args": [profile, phone.width.to_string(), phone.height.to_string()],
                },
            }),
        }
    }
}

/// The driver says nothing when it is ready, so it is asked until it answers.
fn webkit() -> (Driver, String) {
    let (screen, number) = Process::start(
        Command::new("Xvfb").args(["-displayfd", "1", "-screen", "0", "1280x1024x24"]),
        |line| line.trim().parse::<u32>().ok(),
    );
    let port = Port::keep();
    let mut command = Command::new("WebKitWebDriver");
    command.arg(port.option()).env("DISPLAY", format!(":{number}"));
    let process = Process::start_silent(&mut command);
    let start = Instant::now();
    while TcpStream::connect(port.address()).is_err() {
        assert!(start.elapsed() < Duration::from_secs(20), "WebKitWebDriver does not answer");
        std::thread::sleep(Duration::from_millis(10));
    }
    let address = format!("http://{}", port.address());
    (Driver { process, _screen: Some(screen), _port: port }, address)
}

/// `cookies` is the browser's own setting for all that a page may keep: 1 lets it, 2 forbids it; `letters`
/// is its text's usual size, 16 where nobody has set it.
fn chromium(profile: &Path, phone: Phone, cookies: u8, letters: u8) -> Value {
    let mut arguments = vec![format!("--user-data-dir={}", profile.display())];
    arguments.extend(CHROMIUM.map(str::to_owned));
    json!({
        "browserName": "chrome",
        "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
        "goog:chromeOptions": {
            "binary": "/usr/bin/chromium",
            "args": arguments,
            "prefs": {
                // Files fall into a folder without asking a person.
                "download.prompt_for_download": false,
                "profile.default_content_setting_values.cookies": cookies,
                "webkit.webprefs.default_font_size": letters,
            },
            "mobileEmulation": { "deviceMetrics": {
                "width": phone.width, "height": phone.height, "pixelRatio": 1.0,
                "touch": true, "mobile": true,
            } },
        },
    })
}

/// No window, no sandbox (a container has none to give), and no business of its own on the network.
const CHROMIUM: [&str; 8] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
];
