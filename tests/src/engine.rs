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
}

impl Engine {
    /// Starts its driver on a free port and gives the driver's address.
    ///
    /// # Panics
    /// The driver is not installed.
    pub(crate) fn drive(self) -> (Process, String) {
        match self {
            Self::Chromium => {
                Process::start(Command::new("chromedriver").arg("--port=0"), |line| {
                    let port = line.split("successfully on port ").nth(1)?;
                    Some(format!("http://127.0.0.1:{}", port.trim_end_matches('.')))
                })
            }
        }
    }

    /// What to ask the driver for: a phone's screen and touch, this profile, and every line of its log.
    pub(crate) fn capabilities(self, profile: &Path, phone: Phone, more: &[&str]) -> Value {
        match self {
            Self::Chromium => {
                let mut arguments = vec![format!("--user-data-dir={}", profile.display())];
                arguments.extend(CHROMIUM.iter().chain(more).map(|&word| word.to_owned()));
                json!({
                    "browserName": "chrome",
                    "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
                    "goog:chromeOptions": {
                        "binary": "/usr/bin/chromium",
                        "args": arguments,
                        // Dates, and nothing to ask a person for.
                        "prefs": { "download.prompt_for_download": false },
                        "mobileEmulation": { "deviceMetrics": {
                            "width": phone.width, "height": phone.height, "pixelRatio": 1.0,
                            "touch": true, "mobile": true,
                        } },
                    },
                })
            }
        }
    }
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
