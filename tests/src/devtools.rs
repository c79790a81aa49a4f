//! What only Chromium's DevTools can do, sent through its driver.

use crate::Browser;
use serde_json::{Value, json};

impl Browser {
    /// Sends one DevTools command.
    ///
    /// # Panics
    /// The browser refuses it, or isn't Chromium.
    pub fn devtools(&self, method: &str, parameters: Value) -> Value {
        self.wait_for(self.session().cdp().send_raw(method, parameters), method)
    }

    /// Gives the page another screen.
    pub fn resize(&self, width: u32, height: u32) {
        self.devtools(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": true }),
        );
        self.until("the page has its new width", |browser| {
            browser.run("return window.innerWidth", &[]) == json!(width)
        });
    }

    /// Sets the phone to dark or light.
    pub fn prefer(&self, scheme: &str) {
        self.devtools(
            "Emulation.setEmulatedMedia",
            json!({ "features": [{ "name": "prefers-color-scheme", "value": scheme }] }),
        );
    }

    /// Slows the page's processor down so many times.
    pub fn slow_down(&self, times: u32) {
        self.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": times }));
    }

    /// Takes the network away from the page, or gives it back.
    pub fn offline(&self, is: bool) {
        self.devtools("Network.enable", json!({}));
        self.devtools(
            "Network.emulateNetworkConditions",
            json!({ "offline": is, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 }),
        );
    }

    /// Lets files that the page makes fall into a folder.
    ///
    /// # Panics
    /// The folder's name is no text.
    pub fn downloads_into(&self, folder: &std::path::Path) {
        let folder = folder.to_str().expect("a plain folder name");
        self.devtools(
            "Browser.setDownloadBehavior",
            json!({ "behavior": "allow", "downloadPath": folder }),
        );
    }

    /// Runs a script before every page from now on, ahead of the page's own.
    pub fn before_every_page(&self, script: &str) {
        self.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": script }));
    }

    /// Leaves an origin so many bytes of storage. To be said before a page of it first writes: the browser
    /// remembers for half a minute how much room there was.
    pub fn quota(&self, url: &str, bytes: u64) {
        let origin = url.trim_end_matches('/');
        self.devtools(
            "Storage.overrideQuotaForOrigin",
            json!({ "origin": origin, "quotaSize": bytes }),
        );
    }

    /// Ends the page's own process, as a phone short of memory does, and looks at a fresh tab.
    pub fn throw_away(&self) {
        let fresh = self.command(http::Method::POST, "window/new", Some(json!({ "type": "tab" })));
        let devtools = self.session().cdp();
        assert!(
            self.fails(devtools.send_raw("Page.crash", json!({}))),
            "a page that is gone can't answer"
        );
        self.look_at(fresh["handle"].as_str().unwrap_or_default());
    }
}
