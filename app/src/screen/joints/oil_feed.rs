//! The oil to the front bearing: solid upper dowels shut its passage, until an outside feed is recorded.

use super::form::{Field, Form};
use super::{Job, held, show};
use crate::dom::{El, el, follow, link, text};
use crate::draft;
use crate::route::Route;
use crate::screen::bench::list;
use crate::screen::entry_line::entry_line;
use crate::signal::*;
use crate::state::{App, app};
use crate::widget::{frame, switch};
use pitleaf_core::book::{EntryId, Fact, Subject};
use pitleaf_core::joints::oil_feed::Feed;
use pitleaf_core::joints::{Caution, bounds};
use pitleaf_core::quantity::{Reading, Unit};
use pitleaf_translated::tr;

/// The screen.
pub fn screen() -> Vec<El> {
    let app = app();
    let mut form = Form::of_build("oil-feed", app);
    let words = form.words(("way", tr!("From where to where")), "");
    let bore = form.figure(
        ("bore", tr!("Line’s bore")),
        &bounds::LINE_BORE,
        &[Unit::Millimetre, Unit::Inch],
        "",
    );
    form.keep();
    let hash = Route::Joints(Job::OilFeed).hash();
    // What is typed leads back here, should a build have to be opened first.
    follow(move || draft::put(&hash, &words.text(), None));
    let dowels = Memo::new(move || {
        let build = app.build()?;
        match app
            .book
            .with(|book| book.current(&build, &Subject::Dowels).map(|entry| entry.fact.clone()))
        {
            Some(Fact::DowelsSolid { solid }) => Some(solid),
            _ => None,
        }
    });
    let choose = switch(
        tr!("Upper dowels"),
        &[(false, tr!("Hollow")), (true, tr!("Solid"))],
        move |solid| dowels.get() == Some(solid),
        move |solid| {
            let said = tr!("upper dowels {}", if solid { tr!("solid") } else { tr!("hollow") });
            app.write(vec![Fact::DowelsSolid { solid }], said, || {});
        },
    );
    let page = el("main")
        .class("page joint")
        .live(move || held(app).into_iter().collect())
        .with(el("p").class("joint-state").attr("role", "status").text_live(move || state(app)))
        .with(text("h2", "", tr!("Upper dowels of this build")))
        .with(choose)
        .with(text("h2", "", tr!("Outside feed")))
        .with(record(app, words, bore))
        .with(
            link("plate-link", &Route::Joints(Job::OilLine).hash())
                .text(tr!("Size the line and its port")),
        )
        .live(move || history(app))
        .with_all(show::cautions(&[Caution::HotOil, Caution::OilPressure]));
    frame(|| Job::OilFeed.name().to_owned(), || Job::OilFeed.about().to_owned(), true, page)
}

/// What the book says; the line that holds the build says it otherwise.
fn state(app: App) -> String {
    let feed =
        app.build().map_or(Feed::NotKnown, |build| app.book.with(|book| Feed::of(book, &build)));
    if feed == Feed::Shut { String::new() } else { feed.to_string() }
}

fn record(app: App, words: Field, bore: Field) -> El {
    let save = move || {
        let said = words.typed.get_untracked().trim().to_owned();
        let typed = bore.typed.get_untracked();
        let unit = bore.unit.get_untracked();
        let reading = Reading::read(&typed, unit, &bounds::LINE_BORE).ok();
        // A bore that can't be read says so beside its field.
        if said.is_empty() || (!typed.trim().is_empty() && reading.is_none()) {
            return;
        }
        let (figure, unit) = reading
            .map_or((String::new(), unit), |reading| (reading.number().to_owned(), reading.unit()));
        let feed = Fact::OilFeed { words: said, bore: figure, unit };
        let emptied = draft::all_emptied([words.typed, bore.typed]);
        app.write(vec![feed], tr!("outside oil feed").to_owned(), emptied);
    };
    let send = text("button", "button action", tr!("Record the feed"))
        .attr("type", "submit")
        .disabled(move || !words.is_given());
    el("form").class("form").on_submit(save).with_all([words.el(), bore.el(), send])
}

/// Everything written of it, the latest first.
fn history(app: App) -> Vec<El> {
    let Some(build) = app.build() else { return Vec::new() };
    let mut entries: Vec<(u64, EntryId)> = app.book.with(|book| {
        let of = |subject| {
            book.history(&build, &subject)
                .map(|line| (line.entry.order, line.entry.id.clone()))
                .collect::<Vec<_>>()
        };
        [Subject::Dowels, Subject::OilFeed].into_iter().flat_map(of).collect()
    });
    if entries.is_empty() {
        return Vec::new();
    }
    entries.sort();
    let lines = entries.into_iter().rev().map(|(_, id)| entry_line(id));
    vec![text("h2", "", tr!("Written so far")), list("entries", tr!("Written so far"), lines)]
}
