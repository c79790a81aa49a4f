//! What a chosen file would bring, before anything of it is taken in.

use super::bench::list;
use crate::dom::{El, button, el, text};
use crate::route::Route;
use crate::state::{App, app};
use crate::widget::frame;
use pitleaf_core::book::{Coming, Entry, EntryId};
use pitleaf_translated::tr;

/// The preview of a file.
pub fn screen() -> Vec<El> {
    let app = app();
    let page = el("main")
        .class("page")
        .live(move || app.coming.with(|coming| shown(app, coming.as_ref())));
    frame(
        || tr!("Take in a book").to_owned(),
        || tr!("Nothing is taken in before you say so").to_owned(),
        true,
        page,
    )
}

fn shown(app: App, coming: Option<&Coming>) -> Vec<El> {
    let Some(coming) = coming else {
        return vec![text("p", "plain", tr!("No file is chosen. Choose one in the book."))];
    };
    let count = coming.new.len();
    let mut lines = vec![
        text("p", "entry-figure", &tr!("{count} new")),
        text("p", "plain", &tr!("{} known already: they change nothing.", coming.known)),
    ];
    if !coming.altered.is_empty() {
        let words = tr!(
            "{} have the name of an entry here but say something else: one of the two was changed by hand. They are left out.",
            coming.altered.len()
        );
        lines.push(text("p", "caution", &words));
    }
    if !coming.conflicts.is_empty() {
        lines.push(text("h2", "", &tr!("{} said differently in both", coming.conflicts.len())));
        lines.push(text("p", "plain", tr!("Both are kept. The later one is shown; the other stays in its history, one touch away.")));
        lines.push(list(
            "rows",
            tr!("Said differently"),
            coming.conflicts.iter().take(50).map(|conflict| {
                let line = el("span").class("entry-words");
                let here = words(app, coming, &conflict.here);
                let theirs = words(app, coming, &conflict.theirs);
                let (shown, kept) = if conflict.here == conflict.joined {
                    (here, tr!("is the later one and stays; the file’s: {theirs}"))
                } else {
                    (theirs, tr!("from the file, in place of {here}"))
                };
                let words = line.with(text("b", "", &shown)).with(text("span", "dim", &kept));
                el("div").class("entry").with(words)
            }),
        ));
    }
    if count > 0 {
        let take = move || app.take_in();
        lines.push(button("button action", &tr!("Take in {count}"), take));
    }
    lines.push(button("button", tr!("Leave it"), move || {
        app.coming.set(None);
        app.go(&Route::Book);
    }));
    lines
}

/// An entry in words, whether it is here or still in the file.
fn words(app: App, coming: &Coming, id: &EntryId) -> String {
    let say = |entry: &Entry| {
        app.sheet.with(|sheet| {
            let words = entry.words(sheet);
            format!("{} · {}", words.says, words.about)
        })
    };
    let here = app.book.with(|book| book.entry(id).map(say));
    here.or_else(|| coming.new.iter().find(|entry| entry.id == *id).map(say)).unwrap_or_default()
}
