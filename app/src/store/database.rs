//! The book's records in IndexedDB: added one by one, never rewritten.
//!
//! Reading a hundred thousand small records takes the browser seconds, so records are also copied, some
//! thousands at a time, into *sheaves*: the bytes of one long text each, a record a line; a text of its
//! own would be handed over letter by letter. A sheaf only saves time. The records stay where they are,
//! and are read again, and bound anew, wherever a sheaf does not hold what it should.

use js_sys::{Array, Function, Object, Promise, Reflect, Uint8Array};
use pitleaf_translated::translated;
use std::fmt;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    DomException, IdbDatabase, IdbKeyRange, IdbObjectStoreParameters, IdbOpenDbRequest, IdbRequest,
    IdbTransaction,
};

const NAME: &str = "pitleaf";
const VERSION: u32 = 1;
const ENTRIES: &str = "entries";
const SHEAVES: &str = "sheaves";

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
    /// The storage can't be opened, in the browser's words: some say so where they forbid it.
    Unopened(String),
    /// Anything else, in the browser's words.
    Other(String),
}

impl fmt::Display for Fault {
    #[translated]
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
            Self::Unopened(words) => write!(
                f,
                "The book can’t be opened, so nothing written here will last. The browser says “{words}”. Load the page again, in a normal window; or save the book as a file before you leave."
            ),
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
        let opened = settled(&request).await.map_err(|fault| match fault {
            Fault::Other(words) => Fault::Unopened(words),
            known => known,
        })?;
        let database: IdbDatabase = opened.dyn_into()?;
        // Another tab that upgrades must not wait for this one.
        let closing = database.clone();
        let give_way = Closure::<dyn FnMut(JsValue)>::new(move |_| closing.close());
        database.set_onversionchange(Some(give_way.as_ref().unchecked_ref()));
        give_way.forget();
        Ok(Self(database))
    }

    /// Adds records, all or none; returns when they are on the disk.
    ///
    /// # Errors
    /// The [`Fault`]; then none of them was added.
    pub async fn add(&self, records: &[String]) -> Result<(), Fault> {
        let transaction = self.transaction("readwrite")?;
        let entries = transaction.object_store(ENTRIES)?;
        for record in records {
            entries.add(&record.into())?;
        }
        completed(&transaction).await
    }

    /// Copies the records up to a key into a sheaf.
    ///
    /// # Errors
    /// The [`Fault`]; nothing is lost by it.
    pub async fn bind(&self, last: &JsValue, sheaf: &str) -> Result<(), Fault> {
        let transaction = self.transaction("readwrite")?;
        let sheaf = Uint8Array::from(sheaf.as_bytes());
        transaction.object_store(SHEAVES)?.put_with_key(&sheaf, last)?;
        completed(&transaction).await
    }

    /// The sheaves, and the last key they reach; undefined where there is none.
    ///
    /// # Errors
    /// The [`Fault`].
    pub async fn sheaves(&self) -> Result<(Array, JsValue), Fault> {
        let sheaves = self.transaction("readonly")?.object_store(SHEAVES)?;
        let (texts, keys) = (sheaves.get_all()?, sheaves.get_all_keys()?);
        let texts: Array = settled(&texts).await?.dyn_into()?;
        let keys: Array = settled(&keys).await?.dyn_into()?;
        Ok((texts, keys.pop()))
    }

    /// Every record behind a key, as it is; from the first where the key is undefined.
    ///
    /// # Errors
    /// The [`Fault`].
    pub async fn records(&self, behind: &JsValue) -> Result<Array, Fault> {
        let entries = self.transaction("readonly")?.object_store(ENTRIES)?;
        Ok(settled(&entries.get_all_with_key(&range(behind)?)?).await?.dyn_into()?)
    }

    /// The keys of those records, in the same order.
    ///
    /// # Errors
    /// The [`Fault`].
    pub async fn keys(&self, behind: &JsValue) -> Result<Array, Fault> {
        let entries = self.transaction("readonly")?.object_store(ENTRIES)?;
        Ok(settled(&entries.get_all_keys_with_key(&range(behind)?)?).await?.dyn_into()?)
    }

    /// A transaction with strict durability. `web-sys` has the option only behind an unstable flag.
    fn transaction(&self, mode: &str) -> Result<IdbTransaction, Fault> {
        let options = Object::new();
        Reflect::set(&options, &"durability".into(), &"strict".into())?;
        let transaction: Function = Reflect::get(&self.0, &"transaction".into())?.dyn_into()?;
        let stores = Array::of2(&ENTRIES.into(), &SHEAVES.into());
        Ok(transaction.call3(&self.0, &stores, &mode.into(), &options)?.dyn_into()?)
    }
}

fn make_stores(request: &IdbOpenDbRequest) {
    let Ok(database) = request.result().and_then(JsCast::dyn_into::<IdbDatabase>) else { return };
    let counting = IdbObjectStoreParameters::new();
    counting.set_auto_increment(true);
    // A failure here fails the opening itself, which reports it.
    let _ = database.create_object_store_with_optional_parameters(ENTRIES, &counting);
    let _ = database.create_object_store(SHEAVES);
}

fn range(behind: &JsValue) -> Result<JsValue, Fault> {
    if behind.is_undefined() {
        return Ok(JsValue::UNDEFINED);
    }
    Ok(IdbKeyRange::lower_bound_with_open(behind, true)?.into())
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
