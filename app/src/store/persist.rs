//! Asking the browser not to clear this page's storage when the phone runs low.

use super::Fault;
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;

/// Whether the browser has promised to keep the storage; none where it makes no such promises.
pub async fn is_kept() -> Option<bool> {
    ask("persisted").await.ok()
}

/// Asks for that promise, and says whether it was given.
pub async fn keep() -> bool {
    ask("persist").await.unwrap_or(false)
}

/// Some browsers have no storage manager at all, so its methods are looked for by name.
async fn ask(method: &str) -> Result<bool, Fault> {
    let window = web_sys::window().ok_or(Fault::Blocked)?;
    let storage = Reflect::get(&window.navigator(), &"storage".into())?;
    let method: Function = Reflect::get(&storage, &method.into())?.dyn_into()?;
    let promise: Promise = method.call0(&storage)?.dyn_into()?;
    Ok(JsFuture::from(promise).await?.is_truthy())
}
