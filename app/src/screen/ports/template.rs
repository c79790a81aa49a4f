//! A template at its true size, to be printed, cut out and scribed round.

use super::{Plate, care, under};
use crate::device;
use crate::dom::{El, button, el, follow, text};
use crate::draft;
use crate::route::{PortsPlace, Route};
use crate::signal::*;
use crate::state::{App, Notice, app};
use crate::widget::{fault_list, frame, sentences, switch};
use pitleaf_core::book::{BuildId, Fact};
use pitleaf_core::ports::{
    Outline, Paper, Sheet, SideHousing, Template, TypedDatums, as_it_will_be,
};
use pitleaf_core::quantity::Unit;
use pitleaf_translated::tr;

/// What the template is made from.
#[derive(Clone, Copy)]
struct Choice {
    housing: SideHousing,
    rows: RwSignal<String>,
    unit: RwSignal<Unit>,
    paper: RwSignal<Paper>,
    mirrored: RwSignal<bool>,
}

impl Choice {
    fn datums(self) -> TypedDatums {
        TypedDatums { housing: self.housing, rows: self.rows.get(), unit: self.unit.get() }
    }

    fn sheets(self, app: App) -> Result<Vec<Sheet>, Vec<String>> {
        sheets(app, &self.datums(), self.paper.get(), self.mirrored.get())
    }
}

fn sheets(
    app: App,
    datums: &TypedDatums,
    paper: Paper,
    mirrored: bool,
) -> Result<Vec<Sheet>, Vec<String>> {
    let housing = datums.housing;
    let datums = datums.datums()?;
    let plate = Plate::load(app, housing);
    let view = plate.face.view;
    let outlines: Vec<Outline> = as_it_will_be(&plate.ports)
        .iter()
        .filter_map(|port| port.outline())
        .map(|outline| view.turn_outline_over(outline))
        .collect();
    let title = under(app, housing);
    let template = Template {
        engine: &plate.engine,
        outlines: &outlines,
        datums: &datums,
        mirrored,
        title: &title,
    };
    template.sheets(paper).map_err(|fault| vec![fault.to_string()])
}

/// The pages of every side housing that has a port, by the book.
pub(in crate::screen) fn pages(app: App, build: &BuildId, paper: Paper) -> Vec<El> {
    let datums: Vec<TypedDatums> = app.book.with(|book| {
        let drawn = SideHousing::ALL
            .into_iter()
            .filter(|&housing| book.outlines(build, housing).next().is_some());
        let datums = |housing| {
            book.datums(build, housing).cloned().unwrap_or_else(|| TypedDatums {
                housing,
                rows: String::new(),
                unit: Unit::Millimetre,
            })
        };
        drawn.map(datums).collect()
    });
    datums
        .iter()
        .flat_map(|datums| match sheets(app, datums, paper, false) {
            Ok(sheets) => shown(&sheets, paper),
            Err(faults) => sentences(&faults),
        })
        .collect()
}

/// The print screen.
pub fn screen(housing: SideHousing) -> Vec<El> {
    let app = app();
    let hash = Route::Ports(PortsPlace::Template(housing)).hash();
    let known =
        app.build().and_then(|build| app.book.with(|book| book.datums(&build, housing).cloned()));
    let (rows, unit) =
        known.map_or((String::new(), Unit::Millimetre), |known| (known.rows, known.unit));
    let written = (rows, unit);
    let (rows, unit) = draft::at(&hash).map_or_else(
        || written.clone(),
        |draft| (draft.text, draft.unit.unwrap_or(Unit::Millimetre)),
    );
    let choice = Choice {
        housing,
        rows: RwSignal::new(rows),
        unit: RwSignal::new(unit),
        paper: RwSignal::new(Paper::A4),
        mirrored: RwSignal::new(false),
    };
    follow(move || {
        let typed = (choice.rows.get(), choice.unit.get());
        let text = if typed == written { "" } else { &typed.0 };
        draft::put(&hash, text, Some(typed.1));
    });
    let page = el("main").class("page").with(form(app, choice)).with(el("div").live(move || {
        match choice.sheets(app) {
            Ok(sheets) => shown(&sheets, choice.paper.get()),
            Err(faults) => sentences(&faults),
        }
    }));
    frame(|| tr!("Template").to_owned(), move || under(app, housing), true, page)
}

fn form(app: App, choice: Choice) -> El {
    let print = || {
        if let Some(window) = web_sys::window() {
            // A browser without printing says so itself.
            let _ = window.print();
        }
    };
    let save_sheets = move || {
        let Ok(sheets) = choice.sheets(app) else { return };
        for (sheet, number) in sheets.iter().zip(1..) {
            let name = format!("template-{}-{number}.svg", choice.housing.word());
            if let Err(words) = device::save_file(&name, "image/svg+xml", &sheet.svg) {
                app.notice.set(Some(Notice::Wrong(words)));
            }
        }
    };
    let keep = move || {
        let datums = choice.datums();
        if datums.datums().is_ok() {
            app.write(vec![Fact::Datums(datums)], tr!("datum holes").to_owned(), || {});
        }
    };
    let rows = el("textarea")
        .attrs(&[
            ("rows", "4"),
            ("spellcheck", "false"),
            ("placeholder", "-96.5 62 10\n96.5 62 10"),
        ])
        .bound_rows(choice.rows);
    el("div").class("form no-print").with_all([
        care(tr!(
            "print at 100 %, never “fit to page”, and measure both check bars before you scribe. \
             Walls to the water jacket are thin."
        )),
        switch(
            tr!("Paper"),
            &[(Paper::A4, "A4"), (Paper::Letter, tr!("Letter"))],
            move |paper| choice.paper.get() == paper,
            move |paper| choice.paper.set(paper),
        ),
        switch(
            tr!("Laid"),
            &[(false, tr!("face up")), (true, tr!("face down (mirrored)"))],
            move |mirrored| choice.mirrored.get() == mirrored,
            move |mirrored| choice.mirrored.set(mirrored),
        ),
        button("button action", tr!("Print"), print),
        button("button", tr!("Save the pages as SVG"), save_sheets),
        el("label")
            .class("rows-field")
            .with(text("span", "", tr!("Dowels and other holes: x, y and diameter, one a row")))
            .with(rows),
        switch(
            tr!("Unit of the holes"),
            &[(Unit::Millimetre, "mm"), (Unit::Inch, "in")],
            move |unit| choice.unit.get() == unit,
            move |unit| choice.unit.set(unit),
        ),
        fault_list(move || choice.datums().datums().err().unwrap_or_default()),
        button("button", tr!("Put the holes in the book"), keep),
    ])
}

/// The pages: as wide as the screen, and at their true size on paper.
fn shown(sheets: &[Sheet], paper: Paper) -> Vec<El> {
    sheets
        .iter()
        .map(|sheet| {
            let class = match (paper, sheet.width > sheet.height) {
                (Paper::A4, false) => "sheet a4",
                (Paper::A4, true) => "sheet a4-across",
                (Paper::Letter, false) => "sheet letter",
                (Paper::Letter, true) => "sheet letter-across",
            };
            el("div").class(class).drawing(&sheet.svg)
        })
        .collect()
}
