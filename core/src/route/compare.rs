//! One figure over several builds: how did this gap come out on the last five engines?

use super::decision::figures;
use crate::book::{Book, BuildId, Fact, Figure, call};
use crate::limits::{Call, Row, Sheet, place_words};
use crate::quantity::Amount;

/// A build's figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// The build.
    pub build: BuildId,
    /// Its name.
    pub name: String,
    /// The figure as typed, with its unit, and the piece.
    pub figure: String,
    /// How it stands.
    pub call: Option<Call>,
    /// From the left, 0 to 1000: the latest build at the left.
    pub x: i32,
    /// From the top, 0 to 1000: greater figures higher.
    pub y: i32,
}

/// A row's figures over builds.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Comparison {
    /// The latest build first.
    pub points: Vec<Point>,
    /// Where the lower limit lies, from the top.
    pub lower: Option<i32>,
    /// Where the upper limit lies, from the top.
    pub upper: Option<i32>,
}

/// A row's figure at a place over the last builds, at most `most`; with an empty place, the worst of all
/// its places in each build: nearest to an edge of the limit, or farthest past one.
#[must_use]
pub fn compare(book: &Book, sheet: &Sheet, row: &str, place: &str, most: usize) -> Comparison {
    let Some(row) = sheet.row(row) else { return Comparison::default() };
    let mut found: Vec<(Point, Amount)> = Vec::new();
    for build in book.builds() {
        if found.len() == most {
            break;
        }
        let amount = |figure: &Figure| {
            let amount = figure.reading().ok()?.amount();
            (amount.dimension() == row.unit.dimension()).then_some(amount)
        };
        let here = figures(book, &build)
            .map(|(_, figure)| figure)
            .filter(|figure| figure.row == row.id && (place.is_empty() || figure.place == place))
            .filter_map(|figure| Some((figure, amount(figure)?)));
        let worst =
            here.min_by(|(_, one), (_, two)| margin(row, *one).total_cmp(&margin(row, *two)));
        if let (Some((figure, amount)), Some((name, ..))) = (worst, book.opening(&build)) {
            let on = if figure.place.is_empty() {
                String::new()
            } else {
                format!(" · {}", place_words(&figure.place))
            };
            let point = Point {
                name: name.to_owned(),
                figure: format!("{}{on}", figure.shown()),
                // Each by the limits of its own build.
                call: call(figure, &book.sheet_for(Some(&build))),
                build,
                x: 0,
                y: 0,
            };
            found.push((point, amount));
        }
    }
    let edge = |edge: &Option<crate::limits::Edge>| edge.as_ref().map(crate::limits::Edge::amount);
    let (lower, upper) = (edge(&row.limit.lower), edge(&row.limit.upper));
    let value = |amount: Amount| amount.value(row.unit);
    let all = found.iter().map(|(_, amount)| *amount).chain(lower).chain(upper).map(value);
    let (least, most) = all.fold((f64::MAX, f64::MIN), |(l, m), v| (l.min(v), m.max(v)));
    let y = |amount: Amount| {
        let share = if most > least { (value(amount) - least) / (most - least) } else { 0.5 };
        thousandths(1.0 - share)
    };
    let last = i32::try_from(found.len().saturating_sub(1)).unwrap_or(0).max(1);
    let points = (0..)
        .zip(&found)
        .map(|(index, (point, amount))| {
            let x = if found.len() == 1 { 500 } else { index * 1000 / last };
            Point { x, y: y(*amount), ..point.clone() }
        })
        .collect();
    Comparison { points, lower: lower.map(y), upper: upper.map(y) }
}

/// The rows that any build has a figure of, in the order of the sheet.
#[must_use]
pub fn compared_rows<'sheet>(book: &Book, sheet: &'sheet Sheet) -> Vec<&'sheet Row> {
    let mut ids: Vec<&str> = book
        .entries()
        .filter_map(|entry| match &entry.fact {
            Fact::Figure(figure) => Some(figure.row.as_str()),
            _ => None,
        })
        .collect();
    ids.sort_unstable();
    sheet.rows().iter().filter(|row| ids.binary_search(&row.id.as_str()).is_ok()).collect()
}

/// How far inside its limit a figure lies, in the row's unit; below zero is past it.
fn margin(row: &Row, amount: Amount) -> f64 {
    let lower = row.limit.lower.as_ref().map(|edge| amount.minus(edge.amount()));
    let upper = row.limit.upper.as_ref().map(|edge| edge.amount().minus(amount));
    [lower, upper].into_iter().flatten().map(|span| span.value(row.unit)).fold(f64::MAX, f64::min)
}

fn thousandths(share: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a share lies between 0 and 1")]
    let whole = (share.clamp(0.0, 1.0) * 1000.0).round() as i32;
    whole
}
