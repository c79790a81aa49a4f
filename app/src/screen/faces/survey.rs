//! A survey of a piece: place after place with the keys, then what they show.

use super::reading::reading_view;
use super::result::result_view;
use super::rows::rows_view;
use crate::dom::{El, el, follow};
use crate::draft;
use crate::route::Route;
use crate::screen::ports::engine;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::book::Fact;
use pitleaf_core::faces::{Place, ReadingSet, SetFault, Survey, Taken, piece_words};
use pitleaf_core::kept;
use pitleaf_core::quantity::{Reading, Unit};
use pitleaf_core::trochoid::Trochoid;
use std::cell::Cell;
use std::rc::Rc;

/// What a survey's two views share, behind one handle. Texts stand in the order of the places; where the
/// builder gives these, they are the rows and the unit of their places.
pub type Work = Rc<InHand>;

/// A survey in hand.
pub struct InHand {
    pub app: App,
    pub survey: Survey,
    pub piece: Rc<str>,
    pub places: Rc<[Place]>,
    /// The engine's bore, along which a housing's places lie.
    pub bore: Memo<Trochoid>,
    pub texts: RwSignal<Vec<String>>,
    pub typed: RwSignal<String>,
    pub at: RwSignal<usize>,
    pub unit: RwSignal<Unit>,
    /// The unit that texts without one are in.
    bare_unit: Cell<Unit>,
    /// A thicker spacer gives less.
    pub less: RwSignal<bool>,
    /// Changed since it was last written down.
    pub touched: RwSignal<bool>,
    pub showing: RwSignal<bool>,
}

/// What is kept of a survey half read: its texts, and whether a thicker spacer gives less.
type Kept = (Vec<String>, bool);

/// A survey's screen.
pub fn survey_screen(survey: Survey, piece: &str) -> Vec<El> {
    let work = InHand::open(app(), survey, piece);
    let app = work.app;
    let under = {
        let piece = piece_words(piece);
        move || {
            let name = app.build_name();
            if piece.is_empty() { name } else { format!("{piece} · {name}") }
        }
    };
    let showing = work.showing;
    let body = el("div").class("screen").live(move || {
        vec![match (showing.get(), work.has_rows()) {
            (true, _) => result_view(&work),
            (_, true) => rows_view(&work),
            _ => reading_view(&work),
        }]
    });
    frame(move || survey.name().to_owned(), under, true, body)
}

impl InHand {
    fn open(app: App, survey: Survey, piece: &str) -> Work {
        let hash = Route::Survey(survey, piece.to_owned()).hash();
        let bore = Memo::new(move || engine(app).geometry().bore());
        let places: Rc<[Place]> = survey.places(bore.get_untracked()).into();
        let draft = draft::at(&hash);
        let usual = app.settings.with_untracked(|settings| settings.lengths.unit());
        let unit = draft.as_ref().and_then(|draft| draft.unit).unwrap_or(usual);
        let kept = draft.as_ref().and_then(|draft| kept::read::<Kept>(&draft.text).ok());
        let (mut kept, less) = kept.unwrap_or_else(|| {
            let inches = matches!(unit, Unit::Inch | Unit::Thou);
            let places_in = if inches { Unit::Inch } else { Unit::Millimetre };
            let rows = vec![String::new(), places_in.symbol().to_owned()];
            let begun = if survey == Survey::OwnPlaces { rows } else { Vec::new() };
            (begun, thicker_gives_less(app))
        });
        if survey != Survey::OwnPlaces {
            kept.resize(places.len(), String::new());
        }
        let bare_unit = Cell::new(unit);
        let unit = RwSignal::new(unit);
        let touched = RwSignal::new(draft.is_some());
        // The text of the place in hand: an empty one would be put in its place at once.
        let typed = RwSignal::new(kept[0].clone());
        let texts = RwSignal::new(kept);
        let work = Rc::new(Self {
            app,
            survey,
            piece: piece.into(),
            texts,
            typed,
            at: RwSignal::new(0),
            unit,
            bare_unit,
            less: RwSignal::new(less),
            touched,
            showing: RwSignal::new(false),
            places,
            bore,
        });
        work.fill_from_book();
        work.keep_draft(hash);
        work.go(work.next_empty(0).unwrap_or(0));
        work
    }

    /// What is written down stands in the fields, until something is typed over it.
    fn fill_from_book(self: &Rc<Self>) {
        let work = self.clone();
        follow(move || {
            let set = work.app.build().and_then(|build| {
                work.app.book.with(|book| book.readings(&build, work.survey, &work.piece).cloned())
            });
            if set.is_none() && !untrack(|| work.set()).is_empty() {
                // It was withdrawn: what stands here is not in the book any more.
                work.touched.set(true);
            }
            if let Some(set) = set.filter(|_| !work.touched.get_untracked()) {
                work.bare_unit.set(set.unit);
                work.unit.set(set.unit);
                work.texts.set(set.texts());
                let at = work.at.get_untracked();
                work.typed.set(work.text(at));
                work.less.set(thicker_gives_less(work.app));
                work.showing.set(true);
            }
        });
    }

    fn keep_draft(self: &Rc<Self>, hash: String) {
        let work = self.clone();
        follow(move || {
            let (texts, unit) = (work.texts.get(), work.unit.get());
            if work.touched.get() {
                let text = if work.set().is_empty() {
                    String::new()
                } else {
                    kept::write(&(texts, work.less.get()))
                };
                draft::put(&hash, &text, Some(unit));
            } else {
                draft::put(&hash, "", None);
            }
        });
        let work = self.clone();
        follow(move || {
            let typed = work.typed.get();
            work.put(work.at.get_untracked(), typed);
        });
        let work = self.clone();
        follow(move || {
            let unit = work.unit.get();
            work.take_unit(unit);
        });
    }

    /// Another unit is of the reading in hand and those to come: the ones before it keep theirs.
    fn take_unit(&self, unit: Unit) {
        let before = self.bare_unit.replace(unit);
        if before == unit || self.has_rows() {
            return;
        }
        let in_hand = self.at.get_untracked();
        self.texts.update(|texts| {
            for (at, text) in texts.iter_mut().enumerate() {
                if at != in_hand
                    && let Some(named) = Reading::with_unit_named(text, before)
                {
                    *text = named;
                }
            }
        });
        self.touched.set(true);
    }

    /// Whether the builder gives the places, as rows.
    pub fn has_rows(&self) -> bool {
        self.survey == Survey::OwnPlaces
    }

    /// The readings as they stand.
    pub fn set(&self) -> ReadingSet {
        let unit = self.unit.get();
        self.texts.with(|texts| ReadingSet::typed(self.survey, &self.piece, unit, texts))
    }

    /// The readings, read.
    pub fn taken(&self) -> Result<Taken, SetFault> {
        let set = self.set();
        let gauge = self.app.sheet.with(|sheet| sheet.gauge(set.gauge));
        set.read_with(&gauge, self.bore.get())
    }

    /// The text at a place.
    pub fn text(&self, at: usize) -> String {
        self.texts.with_untracked(|texts| texts[at].clone())
    }

    /// The places as they lie on this engine's part.
    pub fn spots(&self) -> Vec<Place> {
        if self.has_rows() {
            return self.set().given().0.into_iter().map(|(place, _)| place).collect();
        }
        self.survey.places(self.bore.get())
    }

    /// Puts a text at a place.
    pub fn put(&self, at: usize, text: String) {
        if self.text(at) != text {
            self.touched.set(true);
            self.texts.update(|texts| texts[at] = text);
        }
    }

    /// Goes to a place; what was typed at the one before stays there.
    pub fn go(&self, at: usize) {
        self.put(self.at.get_untracked(), self.typed.get_untracked());
        self.at.set(at);
        self.typed.set(self.text(at));
    }

    /// Back to a place read, to mend it.
    pub fn again(&self, at: usize) {
        if !self.has_rows() {
            self.go(at);
        }
        self.showing.set(false);
    }

    /// Puts another text in the place of the one read there.
    pub fn mend(&self, at: usize, text: &str) {
        let (at, text) = if self.has_rows() {
            let mut set = untrack(|| self.set());
            set.put(at, text);
            (0, set.rows)
        } else {
            (at, text.to_owned())
        };
        self.put(at, text.clone());
        if self.at.get_untracked() == at {
            self.typed.set(text);
        }
    }

    /// The first place from `from` on that has no text, from the beginning again after the last.
    pub fn next_empty(&self, from: usize) -> Option<usize> {
        let count = self.places.len();
        self.texts.with_untracked(|texts| {
            (from..from + count).map(|at| at % count).find(|&at| texts[at].is_empty())
        })
    }

    /// On to the next place without a reading, or to what they show.
    pub fn on(&self) {
        let (at, typed) = (self.at.get_untracked(), self.typed.get_untracked());
        self.put(at, typed.clone());
        match self.next_empty(at + 1).filter(|_| !typed.is_empty()) {
            Some(next) => self.go(next),
            None => self.showing.set(true),
        }
    }

    /// Writes all readings down as one entry.
    pub fn write(&self) {
        let set = untrack(|| self.set());
        if !set.is_readable() || set.is_empty() {
            return;
        }
        let said = format!("{}, {}", set.about(), set.count_words());
        let (touched, texts, written) = (self.touched, self.texts, self.texts.get_untracked());
        self.app.write(vec![Fact::Readings(set)], said, move || {
            // What was typed since is another set.
            touched.set(texts.get_untracked() != written);
        });
    }
}

/// Whether the spacer chosen last says so of this engine.
fn thicker_gives_less(app: App) -> bool {
    let build = app.build();
    build.is_some_and(|build| {
        app.book.with(|book| book.spacer(&build).is_some_and(|chosen| chosen.thicker_gives_less))
    })
}
