//! What may be lost: settings, the last place, the draft in hand.

use gloo_storage::{LocalStorage, Storage};
use serde::{Serialize, de::DeserializeOwned};

/// The value kept under a key; none where there is none, it can't be read, or storage is blocked.
pub fn get<T: DeserializeOwned>(key: &str) -> Option<T> {
    if !is_present() {
        return None;
    }
    LocalStorage::get(key).ok()
}

/// Keeps a value under a key, if it can.
pub fn set<T: Serialize>(key: &str, value: &T) {
    if is_present() {
        // Full or forbidden: this is what may be lost.
        let _ = LocalStorage::set(key, value);
    }
}

/// Lets a key go.
pub fn forget(key: &str) {
    if is_present() {
        LocalStorage::delete(key);
    }
}

/// `gloo-storage` panics where the browser blocks storage, so that is asked first.
fn is_present() -> bool {
    web_sys::window().is_some_and(|window| matches!(window.local_storage(), Ok(Some(_))))
}
