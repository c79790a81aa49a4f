//! What may be lost: settings, drafts, the joints’ forms as they were left.

use gloo_storage::{LocalStorage, Storage as _};
use pitleaf_core::kept::{self, Kept};
use web_sys::Storage;

/// The value kept under a key; none where there is none, it can't be read, or storage is blocked.
pub fn get<T: Kept>(key: &str) -> Option<T> {
    kept::read(&storage()?.get_item(key).ok()??).ok()
}

/// Keeps a value under a key, if it can.
pub fn set<T: Kept>(key: &str, value: &T) {
    if let Some(storage) = storage() {
        // Full or forbidden: this is what may be lost.
        let _ = storage.set_item(key, &kept::write(value));
    }
}

/// Lets a key go.
pub fn forget(key: &str) {
    if let Some(storage) = storage() {
        let _ = storage.remove_item(key);
    }
}

/// None where the browser blocks it: `gloo-storage` panics there, so that is asked first.
fn storage() -> Option<Storage> {
    let local = web_sys::window().map(|window| window.local_storage());
    matches!(local, Some(Ok(Some(_)))).then(LocalStorage::raw)
}
