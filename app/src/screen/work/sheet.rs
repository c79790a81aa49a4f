//! The build sheet, to be read here and printed.

use super::with_build;
use crate::device;
use crate::dom::{El, button, el, text};
use crate::screen::ports::template_pages;
use crate::screen::seals::{maps, picture};
use crate::signal::*;
use crate::state::App;
use crate::widget::{frame, switch};
use pitleaf_core::book::BuildId;
use pitleaf_core::limits::Call;
use pitleaf_core::ports::Paper;
use pitleaf_core::route::{BuildSheet, Copy, Section};
use pitleaf_translated::tr;

/// The screen.
pub fn screen(app: App) -> Vec<El> {
    let shop = RwSignal::new(false);
    let paper = RwSignal::new(Paper::A4);
    let templates = RwSignal::new(false);
    let keys = el("div").class("no-print").with_all([
        switch(
            tr!("Whose copy"),
            &[(false, tr!("Customer’s")), (true, tr!("Shop’s"))],
            move |choice| shop.get() == choice,
            move |choice| shop.set(choice),
        ),
        switch(
            tr!("Paper"),
            &[(Paper::A4, "A4"), (Paper::Letter, tr!("Letter"))],
            move |choice| paper.get() == choice,
            move |choice| paper.set(choice),
        ),
        switch(
            tr!("Port templates, 1:1, behind it"),
            &[(false, tr!("Without templates")), (true, tr!("With templates"))],
            move |choice| templates.get() == choice,
            move |choice| templates.set(choice),
        ),
        button("button action", tr!("Print or save as PDF"), || {
            if let Some(window) = web_sys::window() {
                // A browser without printing has nothing to say.
                let _ = window.print();
            }
        }),
    ]);
    let sheet = move |build: &BuildId| {
        let copy = if shop.get() { Copy::Shop } else { Copy::Customer };
        let size =
            if paper.get() == Paper::A4 { "build-sheet on-a4" } else { "build-sheet on-letter" };
        let made = app.book.with(|book| {
            app.sheet.with(|sheet| BuildSheet::of(book, build, sheet, copy, &device::moment))
        });
        let behind =
            if templates.get() { template_pages(app, build, paper.get()) } else { Vec::new() };
        made.map(|made| laid_out(app, &made).class(size)).into_iter().chain(behind).collect()
    };
    let body = el("main").class("page").with(keys).live(move || with_build(app, &sheet));
    frame(|| tr!("Build sheet").to_owned(), move || app.build_name(), true, body)
}

fn laid_out(app: App, sheet: &BuildSheet) -> El {
    let head = el("header")
        .with(text("h1", "", &sheet.title))
        .with_all(sheet.under.iter().map(|line| text("p", "", line)));
    let lines = sheet.signatures.map(|who| el("p").with(text("span", "", who)));
    let mut sections = sheet.sections.iter().map(|made| section(app, made)).collect::<Vec<_>>();
    let last = sections.pop();
    let end = el("div")
        .class("sheet-end")
        .with_all(last)
        .with(el("div").class("signatures").with_all(lines))
        .with(el("footer").with_all(sheet.foot.iter().map(|line| text("p", "", line))));
    el("article").with(head).with_all(sections).with(end)
}

fn section(app: App, section: &Section) -> El {
    let heads = section.heads.iter().map(|head| text("th", "", head).attr("scope", "col"));
    let rows = section.rows.iter().map(|row| {
        let class = if row.call.is_some_and(|call| call != Call::Meets) { "not" } else { "" };
        let cells = (0..).zip(&row.cells).map(|(column, cell)| {
            let class = if section.whole.contains(&column) { "whole" } else { "" };
            let made = text("td", class, cell);
            match &row.drawing {
                Some((at, drawing)) if *at == column => made.with(picture(drawing.strokes())),
                _ => made,
            }
        });
        el("tr").class(class).with_all(cells)
    });
    let has_heads = section.heads.iter().any(|head| !head.is_empty());
    let table = if has_heads {
        el("table").with(el("thead").with(el("tr").with_all(heads)))
    } else {
        el("table").class("about")
    };
    let table = table.with(el("tbody").with_all(rows));
    let mut made = el("section").with(text("h2", "", section.heading));
    if section.is_of_slots {
        made = made.with(maps(app));
    }
    if !section.rows.is_empty() {
        made = made.with(
            el("div")
                .class("scroll")
                .attrs(&[("tabindex", "0"), ("role", "region"), ("aria-label", section.heading)])
                .with(table),
        );
    }
    if section.says.is_empty() { made } else { made.with(text("p", "", &section.says)) }
}
