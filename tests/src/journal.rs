//! What the browser noted: errors on the console, and every request.

use crate::Browser;
use serde_json::Value;

impl Browser {
    /// Errors and warnings noted since the last call: exceptions, failed requests, what the content
    /// security policy forbade.
    ///
    /// # Panics
    /// The driver keeps no log.
    pub fn complaints(&self) -> Vec<String> {
        let lines = self.wait_for(self.session().get_log("browser"), "the console's log");
        lines
            .into_iter()
            .filter(|line| matches!(line.level.as_str(), "SEVERE" | "WARNING"))
            .map(|line| format!("{}: {}", line.level, line.message))
            .collect()
    }

    /// The address of every request of the page since the last call, whether it was answered or not.
    ///
    /// # Panics
    /// The driver keeps no log.
    pub fn requests(&self) -> Vec<String> {
        let lines = self.wait_for(self.session().get_log("performance"), "the network's log");
        lines
            .into_iter()
            .filter_map(|line| {
                let event: Value = serde_json::from_str(&line.message).ok()?;
                let message = event.get("message")?;
                (message.get("method")? == "Network.requestWillBeSent").then_some(())?;
                Some(message.pointer("/params/request/url")?.as_str()?.to_owned())
            })
            .collect()
    }
}
