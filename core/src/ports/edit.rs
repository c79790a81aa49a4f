//! Editing an outline's rows by hand: a corner dragged, added, taken away.

use super::{Corner, Form};
use crate::{
    decimal::Decimal,
    quantity::{Unit, cells, parted},
    trochoid::Point,
};

/// The corner nearest to a place, as its number from 0.
#[must_use]
pub fn nearest_corner(corners: &[Corner], place: Point) -> Option<usize> {
    let far = |corner: &Corner| (corner.point - place).norm();
    (0..corners.len()).min_by(|a, b| far(&corners[*a]).total_cmp(&far(&corners[*b])))
}

/// The rows with a corner moved to a place; its radius and all other rows stay as typed.
#[must_use]
pub fn move_corner(rows: &str, number: usize, place: Point, unit: Unit, form: Form) -> String {
    edited(rows, number, |line| {
        let mut moved = numbers(place, unit, form);
        if let Some(radius) = cells(line).get(2) {
            moved.push(' ');
            moved.push_str(radius);
        }
        Some(moved)
    })
}

/// What is typed as a corner's radius: all that stands behind its place.
#[must_use]
pub fn corner_radius(rows: &str, number: usize) -> String {
    let row = rows.lines().filter(|line| !line.trim().is_empty()).nth(number);
    row.and_then(|row| Some(parted(row).get(2..)?.join(" "))).unwrap_or_default()
}

/// The rows with a corner rounded to a radius as it is typed; its place and all other rows stay.
#[must_use]
pub fn round_corner(rows: &str, number: usize, radius: &str) -> String {
    edited(rows, number, |line| match cells(line)[..] {
        [first, second, ..] => {
            Some(format!("{first} {second} {}", radius.trim()).trim().to_owned())
        }
        _ => Some(line.to_owned()),
    })
}

/// The rows without a corner.
#[must_use]
pub fn remove_corner(rows: &str, number: usize) -> String {
    edited(rows, number, |_| None)
}

/// The rows with a new corner half way between a corner and the next.
#[must_use]
pub fn add_corner(rows: &str, corners: &[Corner], number: usize, unit: Unit, form: Form) -> String {
    let (Some(here), Some(next)) =
        (corners.get(number), corners.get((number + 1) % corners.len().max(1)))
    else {
        return rows.to_owned();
    };
    let place = here.point.between(next.point, 0.5);
    edited(rows, number, |line| Some(format!("{line}\n{}", numbers(place, unit, form))))
}

/// The rows of points, without radii.
#[must_use]
pub fn write_rows(points: impl IntoIterator<Item = Point>, unit: Unit, form: Form) -> String {
    points.into_iter().map(|point| numbers(point, unit, form)).collect::<Vec<_>>().join("\n")
}

/// The rows with one that is not empty put otherwise.
fn edited(rows: &str, number: usize, change: impl FnOnce(&str) -> Option<String>) -> String {
    let mut change = Some(change);
    let mut count = 0;
    let mut lines = Vec::new();
    for line in rows.lines() {
        let filled = !line.trim().is_empty();
        let meant = filled && count == number;
        count += usize::from(filled);
        match change.take_if(|_| meant) {
            Some(change) => lines.extend(change(line.trim())),
            None => lines.push(line.to_owned()),
        }
    }
    lines.join("\n")
}

/// A place as the first two numbers of a row: to a hundredth of a millimetre, a ten-thousandth of an
/// inch, a hundredth of a degree.
fn numbers(place: Point, unit: Unit, form: Form) -> String {
    let length = |length: f64| match unit {
        Unit::Inch => Decimal(length / 25.4, 4),
        _ => Decimal(length, 2),
    };
    match form {
        Form::Coordinates => format!("{} {}", length(place.x), length(place.y)),
        Form::RadiusAndAngle => {
            let angle = place.y.atan2(place.x).to_degrees();
            format!("{} {}", length(place.norm()), Decimal(angle, 2))
        }
    }
}
