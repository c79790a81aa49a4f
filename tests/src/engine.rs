//! The browser engines: what drives each, and how it is asked for a phone.

use crate::browser::Phone;
use crate::process::Process;
use serde_json::{Value, json};
use std::path::Path;
use std::process::Command;

/// A browser engine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Chromium by chromedriver.
    Chromium,
    /// Chromium that lets no page keep anything.
    ChromiumKeepingNothing,
    /// Firefox by geckodriver, which must be installed by hand.
    Firefox,
}

impl Engine {
    /// Starts its driver on a free port and gives the driver's address.
    ///
    /// # Panics
    /// The driver is not installed.
    pub(crate) fn drive(self) -> (Process, String) {
        let at = |port: &str| format!("http://127.0.0.1:{}", port.trim_end_matches('.'));
        match self {
            Self::Chromium | Self::ChromiumKeepingNothing => {
                Process::start(Command::new("chromedriver").arg("--port=0"), |line| {
                    line.split("successfully on port ").nth(1).map(at)
                })
            }
            Self::Firefox => {
                Process::start(Command::new("geckodriver").args(["--port=0"]), |line| {
                    line.split("Listening on 127.0.0.1:").nth(1).map(at)
                })
            }
        }
    }

    /// What to ask the driver for: a phone's screen and touch, this profile, and every line of its log.
    pub(crate) fn capabilities(self, profile: &Path, phone: Phone) -> Value {
        match self {
            Self::Chromium => chromium(profile, phone, 1),
            Self::ChromiumKeepingNothing => chromium(profile, phone, 2),
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
        }
    }
}

/// `cookies` is the browser's own setting for all that a page may keep: 1 lets it, 2 forbids it.
fn chromium(profile: &Path, phone: Phone, cookies: u8) -> Value {
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
