//! What every screen shares: the book in hand, the settings, the place.

use crate::draft;
use crate::finger::Finger;
use crate::route::Route;
use crate::settings::{self, Settings};
use crate::signal::*;
use crate::store::{Channel, Database, Fault, keep};
use crate::trail::Trail;
use pitleaf_core::book::{Book, BuildId, Coming, EntryId};
use pitleaf_core::limits::{BuildKind, GaugeKind, Row, Sheet};
use pitleaf_core::seals::{Leaf, leaf_set};
use pitleaf_translated::tr;

/// Whether what is written lasts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Keeping {
    /// The book is being opened.
    Opening,
    /// Entries are on the disk before the screen says so.
    Kept,
    /// They are not, and why.
    NotKept(Fault),
}

/// A line over the screen: what was just done, or what went wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Notice {
    /// Entries were written in one go, and are undone in one go.
    Written(Vec<EntryId>, String),
    /// They were withdrawn, and can hold again.
    Withdrawn(Vec<EntryId>),
    /// Said, nothing to undo.
    Said(String),
    /// Something went wrong; nothing was changed.
    Wrong(String),
}

/// A record that could not be taken into the book, kept as it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Aside {
    /// Its key.
    pub key: String,
    /// Why.
    pub why: String,
}

/// The shared state. Copy: only handles.
#[derive(Clone, Copy)]
pub struct App {
    /// All entries and what they add up to.
    pub book: RwSignal<Book>,
    /// The sheet in force.
    pub sheet: Memo<Sheet>,
    /// Whether it lasts.
    pub keeping: RwSignal<Keeping>,
    /// Records kept aside.
    pub aside: RwSignal<Vec<Aside>>,
    /// The settings.
    pub settings: RwSignal<Settings>,
    /// The place.
    pub route: RwSignal<Route>,
    /// The line over the screen.
    pub notice: RwSignal<Option<Notice>>,
    /// The first order that no entry of this phone has, not even one on its way to the disk.
    pub(crate) reserved: RwSignal<u64>,
    /// What is on its way to the disk: each write's build and facts as they will stand there.
    pub(crate) on_its_way: RwSignal<Vec<String>>,
    /// How many screens were made so far: what was pressed on one says nothing on another.
    pub(crate) screens: RwSignal<u32>,
    /// The finger on the screen.
    pub finger: Finger,
    /// The gauge last chosen for a row, by its id, as long as the app is open.
    gauges: RwSignal<Vec<(String, GaugeKind)>>,
    /// The line that goes along to the next place.
    along: RwSignal<Option<Notice>>,
    /// What was last looked for, so that it stands there again on the way back.
    pub sought: RwSignal<String>,
    /// The way back from finding.
    trail: RwSignal<Trail>,
    /// What a chosen file would bring, until it is taken in or put away.
    pub coming: RwSignal<Option<Coming>>,
    /// The open storage and the line to other tabs; none where nothing is kept.
    pub(crate) store: RwSignal<Option<(Database, Channel)>>,
}

/// The state of the app around this screen.
pub fn app() -> App {
    expect_context::<App>()
}

fn in_hand(book: RwSignal<Book>, settings: RwSignal<Settings>) -> Option<BuildId> {
    let chosen = settings.with(|settings| settings.build.clone()).map(|id| EntryId(id.into()));
    book.with(|book| {
        chosen.filter(|id| book.opening(id).is_some()).or_else(|| book.builds().into_iter().next())
    })
}

impl App {
    /// The state at the start, with settings and place as they were left.
    pub fn new() -> Self {
        let book = RwSignal::new(Book::default());
        let hash =
            web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default();
        let settings = RwSignal::new(keep::get(settings::KEY).unwrap_or_default());
        // The sheet is made anew only for another build, or when rows and gauges change, not for every entry.
        let behind = Memo::new(move || {
            let build = in_hand(book, settings);
            let ids = book.with(|book| {
                book.behind_sheet(build.as_ref()).map(|entry| entry.id.clone()).collect::<Vec<_>>()
            });
            (build, ids)
        });
        Self {
            book,
            sheet: Memo::new(move || {
                behind.with(|(build, _)| book.with_untracked(|book| book.sheet_for(build.as_ref())))
            }),
            keeping: RwSignal::new(Keeping::Opening),
            aside: RwSignal::default(),
            settings,
            route: RwSignal::new(Route::read(&hash)),
            notice: RwSignal::default(),
            reserved: RwSignal::default(),
            on_its_way: RwSignal::default(),
            screens: RwSignal::default(),
            finger: Finger::watch(),
            gauges: RwSignal::default(),
            along: RwSignal::default(),
            sought: RwSignal::new(keep::get(draft::SOUGHT).unwrap_or_default()),
            trail: RwSignal::default(),
            coming: RwSignal::default(),
            store: RwSignal::default(),
        }
    }

    /// The build in hand: the one chosen, else the last opened.
    pub fn build(self) -> Option<BuildId> {
        in_hand(self.book, self.settings)
    }

    /// The name of the build in hand, as it stands under a screen's own.
    pub fn build_name(self) -> String {
        match self.opening() {
            Some((name, ..)) => name,
            None if self.is_opening() => tr!("The book is being opened").to_owned(),
            None => tr!("no build open").to_owned(),
        }
    }

    /// How many rotors the build in hand has; two while none is open.
    pub fn rotors(self) -> u8 {
        self.opening().map_or(2, |opening| opening.2)
    }

    /// The gauges that can measure a row, with the leaves on the bench; the one to start with first.
    pub fn gauges_for(self, row: &Row) -> Vec<GaugeKind> {
        let thinnest = self.book.with_untracked(|book| {
            leaf_set(book).and_then(|set| set.leaves().first()).map(Leaf::thickness)
        });
        row.gauges(thinnest)
    }

    /// The gauge in hand for a row: the one last chosen, else the one to start with.
    pub fn gauge_in_hand(self, row: &Row) -> GaugeKind {
        let kinds = self.gauges_for(row);
        self.gauges.with_untracked(|all| {
            let chosen = all.iter().find(|(id, kind)| *id == row.id && kinds.contains(kind));
            chosen.map_or(kinds[0], |(_, kind)| *kind)
        })
    }

    /// Takes a gauge in hand for a row.
    pub fn take_in_hand(self, row: &str, kind: GaugeKind) {
        self.gauges.update(|all| {
            all.retain(|(id, _)| id != row);
            all.push((row.to_owned(), kind));
        });
    }

    /// Whether the book is still being read.
    pub fn is_opening(self) -> bool {
        self.keeping.with(|keeping| *keeping == Keeping::Opening)
    }

    /// The name, kind and rotors of the build in hand.
    pub fn opening(self) -> Option<(String, BuildKind, u8, bool)> {
        let build = self.build()?;
        self.book.with(|book| {
            book.opening(&build)
                .map(|(name, kind, rotors, demo)| (name.to_owned(), kind, rotors, demo))
        })
    }

    /// The kind of the build in hand, or any.
    pub fn kind(self) -> BuildKind {
        self.opening().map_or(BuildKind::Any, |opening| opening.1)
    }

    /// The address has changed: shows its place, and whatever was sent along to it.
    pub fn arrive(self, hash: &str) {
        let to = Route::read(hash);
        self.trail.update(|trail| self.route.with_untracked(|from| trail.go(from, &to)));
        self.route.set(to);
        self.notice.set(self.along.get_untracked());
        self.along.set(None);
    }

    /// Where "back" leads.
    pub fn back(self) -> Route {
        self.route.with(|here| self.trail.with_untracked(|trail| trail.back(here)))
    }

    /// Changes the settings and keeps them.
    pub fn set(self, change: impl FnOnce(&mut Settings)) {
        self.settings.update(change);
        self.settings.with_untracked(|settings| keep::set(settings::KEY, settings));
    }

    /// Goes to a place.
    pub fn go(self, route: &Route) {
        if *route == self.route.get_untracked() {
            return;
        }
        // What was just said goes along: "Written" and its undo belong to what led here.
        self.along.set(self.notice.get_untracked());
        if let Some(window) = web_sys::window() {
            // The address listener sets the route, so that the browser's own "back" works the same way.
            let _ = window.location().set_hash(&route.hash());
        }
    }
}
