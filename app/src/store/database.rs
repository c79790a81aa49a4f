//! The book's records in IndexedDB: added one by one, never rewritten.

use js_sys::{Array, Function, Object, Promise, Reflect};
use std::fmt;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{DomException, IdbDatabase, IdbOpenDbRequest, IdbRequest, IdbTransaction};

const NAME: &str = "pitleaf";
const VERSION: u32 = 1;
const ENTRIES: &str = "entries";

/// Why nothing could be read or written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The browser has no storage, or forbids it here.
    Blocked,
    /// No room is left.
    Full,
    /// A newer version of the tool has changed the storage's shape.
    Newer,
    /// A newer version in another tab has taken the storage over.
    TakenOver,
    /// Anything else, in the browser's words.
    Other(String),
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Blocked => f.write_str(
                "This browser keeps nothing for this page, so nothing written here will last. Use a normal window, or save the book as a file before you leave.",
            ),
            Self::Full => f.write_str(
                "The phone has no room left: not written. Free some space, then press “Write down” again; what is typed stays here.",
            ),
            Self::Newer => f.write_str(
                "This book was opened by a newer Pitleaf. Nothing was changed. Close this page and open it again with the network on.",
            ),
            Self::TakenOver => f.write_str("A newer Pitleaf is open in another tab. Reload this page to go on."),
            Self::Other(words) => write!(f, "Not written: the browser says “{words}”. Try again; what is typed stays here."),
        }
    }
}

impl From<JsValue> for Fault {
    fn from(value: JsValue) -> Self {
        let Some(error) = value.dyn_ref::<DomException>() else {
            return Self::Other(crate::device::words(&value));
        };
        match error.name().as_str() {
            "QuotaExceededError" => Self::Full,
            "VersionError" => Self::Newer,
            "SecurityError" | "NotAllowedError" => Self::Blocked,
            "InvalidStateError" => Self::TakenOver,
            name => Self::Other(format!("{name}: {}", error.message())),
        }
    }
}

/// The open database.
#[derive(Clone)]
pub struct Database(IdbDatabase);

impl Database {
    /// Opens the book's storage, made anew where there is none.
    ///
    /// # Errors
    /// [`Fault::Blocked`] where the browser has none, [`Fault::Newer`] where a newer version was here.
    pub async fn open() -> Result<Self, Fault> {
        let window = web_sys::window().ok_or(Fault::Blocked)?;
        let factory = window.indexed_db().ok().flatten().ok_or(Fault::Blocked)?;
        let request = factory.open_with_u32(NAME, VERSION)?;
        let upgraded = request.clone();
        let upgrade = Closure::once(move |_: JsValue| make_stores(&upgraded));
        request.set_onupgradeneeded(Some(upgrade.as_ref().unchecked_ref()));
        let database: IdbDatabase = settled(&request).await?.dyn_into()?;
        // Another tab that upgrades must not wait for this one.
        let closing = database.clone();
        let give_way = Closure::<dyn FnMut(JsValue)>::new(move |_| closing.close());
        database.set_onversionchange(Some(give_way.as_ref().unchecked_ref()));
        give_way.forget();
        Ok(Self(database))
    }

    /// Adds records under their ids, all or none; returns when they are on the disk.
    ///
    /// # Errors
    /// The [`Fault`]; then none of them was added.
    pub async fn add(&self, records: &[(String, String)]) -> Result<(), Fault> {
        let transaction = self.transaction("readwrite")?;
        let entries = transaction.object_store(ENTRIES)?;
        for (id, record) in records {
            entries.add_with_key(&record.into(), &id.into())?;
        }
        completed(&transaction).await
    }

    /// Every record, as it is, in the order of the keys.
    ///
    /// # Errors
    /// The [`Fault`].
    pub async fn records(&self) -> Result<Array, Fault> {
        let entries = self.transaction("readonly")?.object_store(ENTRIES)?;
        Ok(settled(&entries.get_all()?).await?.dyn_into()?)
    }

    /// Every key, in the same order.
    ///
    /// # Errors
    /// The [`Fault`].
    pub async fn keys(&self) -> Result<Array, Fault> {
        let entries = self.transaction("readonly")?.object_store(ENTRIES)?;
        Ok(settled(&entries.get_all_keys()?).await?.dyn_into()?)
    }

    /// A transaction with strict durability. `web-sys` has the option only behind an unstable flag.
    fn transaction(&self, mode: &str) -> Result<IdbTransaction, Fault> {
        let options = Object::new();
        Reflect::set(&options, &"durability".into(), &"strict".into())?;
        let transaction: Function = Reflect::get(&self.0, &"transaction".into())?.dyn_into()?;
        Ok(transaction.call3(&self.0, &ENTRIES.into(), &mode.into(), &options)?.dyn_into()?)
    }
}

fn make_stores(request: &IdbOpenDbRequest) {
    if let Ok(database) = request.result().and_then(|result| result.dyn_into::<IdbDatabase>())
        && !database.object_store_names().contains(ENTRIES)
    {
        // A failure here fails the opening itself, which reports it.
        let _ = database.create_object_store(ENTRIES);
    }
}

/// A request's result, once it has one.
async fn settled(request: &IdbRequest) -> Result<JsValue, Fault> {
    let promise = Promise::new(&mut |resolve, reject| {
        let done = request.clone();
        let success = Closure::once_into_js(move |_: JsValue| {
            let _ = resolve.call1(&JsValue::NULL, &done.result().unwrap_or(JsValue::UNDEFINED));
        });
        let failed = request.clone();
        let failure = Closure::once_into_js(move |_: JsValue| {
            let error = failed.error().ok().flatten().map_or(JsValue::UNDEFINED, JsValue::from);
            let _ = reject.call1(&JsValue::NULL, &error);
        });
        request.set_onsuccess(Some(success.unchecked_ref()));
        request.set_onerror(Some(failure.unchecked_ref()));
    });
    Ok(JsFuture::from(promise).await?)
}

/// Returns once a transaction has completed; its error if it was aborted.
async fn completed(transaction: &IdbTransaction) -> Result<(), Fault> {
    let promise = Promise::new(&mut |resolve, reject| {
        transaction.set_oncomplete(Some(&resolve));
        let aborted = transaction.clone();
        let abort = Closure::once_into_js(move |_: JsValue| {
            let error = aborted.error().map_or(JsValue::UNDEFINED, JsValue::from);
            let _ = reject.call1(&JsValue::NULL, &error);
        });
        transaction.set_onabort(Some(abort.unchecked_ref()));
    });
    JsFuture::from(promise).await?;
    Ok(())
}
