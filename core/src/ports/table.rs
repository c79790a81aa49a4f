//! A port's figures as rows, and what a cut changed.

use super::{PlatePort, View, shown};
use crate::trochoid::Chamber;
use pitleaf_translated::translated;

/// A figure of the stock port, of the cut one, and the difference.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Row {
    /// What.
    pub name: &'static str,
    /// Before the work; empty if there is no stock outline.
    pub stock: String,
    /// After it; empty if there is no cut one.
    pub cut: String,
    /// The difference, if there are both.
    pub change: String,
}

/// Stock and cut side by side, for a speed in turns a minute.
#[must_use]
#[translated]
pub fn table(
    view: View,
    stock: Option<&PlatePort>,
    cut: Option<&PlatePort>,
    per_minute: Option<f64>,
) -> Vec<Row> {
    let (before, after) = (figures(view, stock, per_minute), figures(view, cut, per_minute));
    let change = stock.zip(cut).map(|(stock, cut)| changes(stock, cut, per_minute));
    let names = ["Area", "Opens", "Closes", "Open for", "Greatest open", "Angle-area", "Time-area"];
    let mut rows: Vec<Row> = Vec::new();
    for (i, name) in names.into_iter().enumerate() {
        let of = |figures: &Option<[String; 7]>| {
            figures.as_ref().map(|figures| figures[i].clone()).unwrap_or_default()
        };
        let row = Row { name, stock: of(&before), cut: of(&after), change: of(&change) };
        if !(row.stock.is_empty() && row.cut.is_empty()) {
            rows.push(row);
        }
    }
    rows
}

fn figures(view: View, port: Option<&PlatePort>, per_minute: Option<f64>) -> Option<[String; 7]> {
    let figures = &port?.figures;
    let metric = |both: shown::Both| format!("{} ({})", both.metric, both.inch);
    let mut opens = Vec::new();
    let mut closes = Vec::new();
    let mut spans = Vec::new();
    for opening in &figures.openings {
        let words = |theta| {
            let (angle, centre) = shown::timing(view, theta);
            format!("{angle} {centre}")
        };
        opens.push(words(opening.opens(Chamber::First)));
        closes.push(words(opening.closes(Chamber::First)));
        spans.push(shown::angle(opening.duration()));
    }
    let time = per_minute.and_then(|speed| shown::time_area(figures.angle_area, speed));
    Some([
        metric(shown::area(figures.area)),
        opens.join(", "),
        closes.join(", "),
        spans.join(", "),
        metric(shown::area(figures.greatest.area)),
        metric(shown::angle_area(figures.angle_area)),
        time.map(metric).unwrap_or_default(),
    ])
}

#[translated]
fn changes(stock: &PlatePort, cut: &PlatePort, per_minute: Option<f64>) -> [String; 7] {
    let change = cut.figures.since(&stock.figures);
    let signed = |words: String| {
        if words.starts_with('−') { words } else { format!("+{words}") }
    };
    let later = |by: Option<uom::si::f64::Angle>| {
        by.map(|by| {
            let side = if by.value < 0.0 { "earlier" } else { "later" };
            format!("{} {side}", shown::angle(by.abs()))
        })
        .unwrap_or_default()
    };
    let time = per_minute.and_then(|speed| shown::time_area(change.angle_area, speed));
    [
        signed(shown::area(change.area).metric),
        later(change.opens_later),
        later(change.closes_later),
        change.duration.map(|by| signed(shown::angle(by))).unwrap_or_default(),
        signed(shown::area(change.greatest).metric),
        signed(shown::angle_area(change.angle_area).metric),
        time.map(|time| signed(time.metric)).unwrap_or_default(),
    ]
}

/// A port's figures in one line, to be written down with its outline.
#[must_use]
#[translated]
pub fn line(view: View, port: &PlatePort) -> String {
    let opens = port.figures.openings.iter().map(|opening| {
        let event = |theta| {
            let (angle, centre) = shown::timing(view, theta);
            format!("{angle} {centre}")
        };
        format!(
            "opens {}, closes {}",
            event(opening.opens(Chamber::First)),
            event(opening.closes(Chamber::First))
        )
    });
    let area = shown::area(port.figures.area);
    opens.chain([format!("area {} ({})", area.metric, area.inch)]).collect::<Vec<_>>().join("; ")
}
