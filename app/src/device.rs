//! The device: clock, new ids, the awake screen, a short buzz, files.

use js_sys::{Array, Function, Object, Promise, Reflect, Uint8Array};
use pitleaf_core::book::EntryId;
use pitleaf_core::language;
use pitleaf_translated::tr;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Blob, BlobPropertyBag, File, FilePropertyBag, HtmlAnchorElement, SpeechSynthesis,
    SpeechSynthesisUtterance, Url,
};

/// Milliseconds since 1970 by the device's clock.
pub fn now() -> u64 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole milliseconds after 1970"
    )]
    let now = js_sys::Date::now().max(0.0) as u64;
    now
}

/// Date and minute of a moment, in the device's own way of writing them.
pub fn moment(at: u64) -> String {
    #[expect(clippy::cast_precision_loss, reason = "milliseconds fit a double")]
    let date = js_sys::Date::new(&JsValue::from_f64(at as f64));
    let two = |number: u32| format!("{number:02}");
    format!(
        "{}-{}-{} {}:{}",
        date.get_full_year(),
        two(date.get_month() + 1),
        two(date.get_date()),
        two(date.get_hours()),
        two(date.get_minutes())
    )
}

/// A new id: sixteen letters and digits at random.
pub fn new_id() -> EntryId {
    const LETTERS: &[u8; 32] = b"0123456789abcdefghjkmnpqrstvwxyz";
    let mut bytes = [0_u8; 16];
    if let Some(crypto) = web_sys::window().and_then(|window| window.crypto().ok()) {
        // Present since long before WebAssembly was, with https or without.
        let _ = crypto.get_random_values_with_u8_array(&mut bytes);
    }
    EntryId(
        bytes
            .iter()
            .map(|byte| char::from(LETTERS[usize::from(byte % 32)]))
            .collect::<String>()
            .into(),
    )
}

/// A short buzz, where the device has one.
pub fn buzz() {
    if let Some(window) = web_sys::window() {
        window.navigator().vibrate_with_duration(12);
    }
}

/// Whether the device can read out.
pub fn can_speak() -> bool {
    speech().is_some()
}

/// Whether the browser is set to a language, by its tag.
pub fn is_set_to(tag: &str) -> bool {
    web_sys::window()
        .and_then(|window| window.navigator().language())
        .is_some_and(|language| language.starts_with(tag))
}

/// Reads words out, in place of what it is still reading.
pub fn say(words: &str) {
    let (Some(speech), Ok(utterance)) = (speech(), SpeechSynthesisUtterance::new_with_text(words))
    else {
        return;
    };
    utterance.set_lang(language::TAG);
    speech.cancel();
    speech.speak(&utterance);
}

fn speech() -> Option<SpeechSynthesis> {
    // A browser without it has nothing under this name, or no way to get at it.
    let speech = web_sys::window()?.speech_synthesis().ok()?;
    speech.is_truthy().then_some(speech)
}

/// Keeps the screen awake until let go of; the browser lets go by itself when the page is hidden.
#[derive(Clone, Default)]
pub struct Awake(std::rc::Rc<std::cell::RefCell<Option<JsValue>>>);

impl Awake {
    /// Asks for it, where the device has it. `web-sys` has it only behind an unstable flag.
    pub fn hold(&self) {
        let slot = self.0.clone();
        spawn_local(async move {
            let Some(window) = web_sys::window() else { return };
            let lock =
                Reflect::get(&window.navigator(), &"wakeLock".into()).unwrap_or(JsValue::UNDEFINED);
            let Ok(request) =
                Reflect::get(&lock, &"request".into()).and_then(JsCast::dyn_into::<Function>)
            else {
                return;
            };
            let Ok(promise) =
                request.call1(&lock, &"screen".into()).and_then(JsCast::dyn_into::<Promise>)
            else {
                return;
            };
            if let Ok(sentinel) = JsFuture::from(promise).await {
                slot.replace(Some(sentinel));
            }
        });
    }

    /// Lets go.
    pub fn release(&self) {
        if let Some(sentinel) = self.0.take()
            && let Ok(release) =
                Reflect::get(&sentinel, &"release".into()).and_then(JsCast::dyn_into::<Function>)
        {
            let _ = release.call0(&sentinel);
        }
    }
}

/// Hands a text file to whatever the phone shares with, or to the downloads where it shares nothing.
///
/// # Errors
/// What the browser says.
pub async fn hand_over(name: &str, kind: &str, text: &str) -> Result<(), String> {
    if let Some(promise) = share(name, kind, text)
        && JsFuture::from(promise).await.is_ok()
    {
        return Ok(());
    }
    // Nothing to share with, or put away by the person, who then still has the downloads.
    save_file(name, kind, text)
}

/// Web Share, where the device has it and takes this kind of file.
fn share(name: &str, kind: &str, text: &str) -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let method = |name: &str| {
        Reflect::get(&navigator, &name.into()).and_then(JsCast::dyn_into::<Function>).ok()
    };
    let (can, share) = (method("canShare")?, method("share")?);
    let options = FilePropertyBag::new();
    options.set_type(kind);
    let parts = Array::of1(&Uint8Array::from(text.as_bytes()));
    let file = File::new_with_u8_array_sequence_and_options(&parts, name, &options).ok()?;
    let data = Object::new();
    Reflect::set(&data, &"files".into(), &Array::of1(&file)).ok()?;
    if !can.call1(&navigator, &data).ok()?.is_truthy() {
        return None;
    }
    share.call1(&navigator, &data).ok()?.dyn_into().ok()
}

/// Hands a text file to the browser's downloads.
///
/// # Errors
/// What the browser says.
pub fn save_file(name: &str, kind: &str, text: &str) -> Result<(), String> {
    offer(name, kind, text).map_err(|error| words(&error))
}

fn offer(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let document = web_sys::window().and_then(|window| window.document()).ok_or(tr!("no page"))?;
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    // The text's bytes are copied: the blob must not look into memory that grows.
    let bytes = Array::of1(&Uint8Array::from(text.as_bytes()));
    let blob = Blob::new_with_u8_array_sequence_and_options(&bytes, &options)?;
    let url = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlAnchorElement = document.create_element("a")?.dyn_into()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    Url::revoke_object_url(&url)
}

/// What the browser says of an error.
pub fn words(error: &JsValue) -> String {
    error.as_string().unwrap_or_else(|| String::from(Object::from(error.clone()).to_string()))
}
