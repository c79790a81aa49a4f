//! Readings as a table for a spreadsheet (RFC 4180), safe against formulas.

use super::{Book, BuildId, Fact};
use crate::limits::Sheet;
use crate::quantity::{Dimension, Unit};

const HEAD: &str =
    "build,order,milliseconds since 1970,row,piece,reading,unit,in mm,verdict,withdrawn";

/// Every reading of every build, one a line, in order; each judged by the limits of its build.
#[must_use]
pub fn write(book: &Book) -> String {
    let mut sheets: Vec<(&BuildId, Sheet)> = Vec::new();
    let mut text = String::from(HEAD);
    text.push_str("\r\n");
    for entry in book.entries() {
        let Fact::Figure(figure) = &entry.fact else { continue };
        let known = sheets.iter().position(|(build, _)| **build == entry.build);
        let at = known.unwrap_or_else(|| {
            sheets.push((&entry.build, book.sheet_for(Some(&entry.build))));
            sheets.len() - 1
        });
        let sheet = &sheets[at].1;
        let build = book.opening(&entry.build).map_or(&*entry.build.0, |(name, ..)| name);
        let what = sheet.row(&figure.row).map_or(figure.row.as_str(), |row| row.what.as_str());
        let metric = figure
            .reading()
            .ok()
            .filter(|reading| reading.amount().dimension() == Dimension::Length);
        let metric =
            metric.map(|reading| reading.amount().readable(Unit::Millimetre, reading.step()));
        let cells = [
            build.to_owned(),
            entry.order.to_string(),
            entry.at.to_string(),
            what.to_owned(),
            figure.place.clone(),
            figure.text.clone(),
            figure.unit.symbol().to_owned(),
            metric.unwrap_or_default().replace('−', "-"),
            super::call(figure, sheet).map_or_else(String::new, |call| call.word().to_owned()),
            if book.is_withdrawn(&entry.id) { "withdrawn".to_owned() } else { String::new() },
        ];
        text.push_str(&cells.map(|cell| quoted(&cell)).join(","));
        text.push_str("\r\n");
    }
    text
}

/// A cell: what a spreadsheet would take for a formula gets a quote in front, unless it is a number.
fn quoted(cell: &str) -> String {
    let is_number = cell
        .strip_prefix('-')
        .unwrap_or(cell)
        .bytes()
        .all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b','));
    let guard = if cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']) && !is_number {
        "'"
    } else {
        ""
    };
    if guard.is_empty() && !cell.contains([',', '"', '\r', '\n']) {
        return cell.to_owned();
    }
    format!("\"{guard}{}\"", cell.replace('"', "\"\""))
}
