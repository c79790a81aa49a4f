//! The part seen from above: where to read now, the relief of a face, the high side of a shaft.

use super::survey::Work;
use crate::dom::{El, el, svg, text};
use pitleaf_core::faces::report::{Levelled, direction, figure, levelled};
use pitleaf_core::faces::{Band, Survey, Taken, relief};
use pitleaf_core::quantity::Unit;
use pitleaf_core::trochoid::Trochoid;
use pitleaf_translated::tr;
use std::fmt::Write as _;
use uom::si::f64::Length;
use uom::si::length::millimeter;

/// The most bands a relief is cut into.
const BANDS: u8 = 6;

/// Tenths of a millimetre, the long axis upright: x of the housing goes up, y to the left. A larger or
/// smaller engine is drawn to the same size.
#[derive(Clone, Copy)]
struct Paper {
    scale: f64,
}

impl Paper {
    fn of(work: &Work) -> Self {
        if is_shaft(work.survey) {
            return Self { scale: 1.0 };
        }
        // Places the builder gives may lie far out: then all is drawn smaller.
        let places = if work.has_rows() { work.spots() } else { Vec::new() };
        let fit = |scale: f64, (axis, room): (usize, f64)| {
            let far = places.iter().filter_map(|place| place.at);
            let far = far.map(|at| at[axis].get::<millimeter>().abs());
            room / far.fold(room / scale, f64::max)
        };
        let scale = work.bore.get().drawing_scale();
        Self { scale: [(0, 130.0), (1, 100.0)].into_iter().fold(scale, fit) }
    }

    fn at(self, x: Length, y: Length) -> (i32, i32) {
        let place = |length: Length| tenths(-length.get::<millimeter>() * self.scale);
        (place(y), place(x))
    }
}

fn is_shaft(survey: Survey) -> bool {
    matches!(survey, Survey::RunoutEight | Survey::RunoutTwelve)
}

fn tenths(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "a housing is well under a kilometre")]
    let tenths = (value * 10.0).round() as i32;
    tenths
}

fn outline(points: impl IntoIterator<Item = (i32, i32)>) -> String {
    let mut d = String::new();
    for (index, (x, y)) in points.into_iter().enumerate() {
        // Writing to a string can't fail.
        let _ = write!(d, "{}{x} {y}", if index == 0 { 'M' } else { 'L' });
    }
    d.push('Z');
    d
}

fn path(class: &str, d: &str) -> El {
    svg("path").attrs(&[("class", class), ("d", d)])
}

fn circle(class: &str, (x, y): (i32, i32), radius: &str) -> El {
    svg("circle").attrs(&[
        ("class", class),
        ("cx", &x.to_string()),
        ("cy", &y.to_string()),
        ("r", radius),
    ])
}

/// The picture's frame and the part's outline.
fn part(work: &Work, class: &str) -> El {
    const VIEW: &str = "-1120 -1420 2240 2840";
    let shaft = is_shaft(work.survey);
    let view = if shaft { "-1420 -1420 2840 2840" } else { VIEW };
    let picture = svg("svg").attrs(&[("class", class), ("viewBox", view), ("aria-hidden", "true")]);
    if shaft {
        return picture.with(circle("outline", (0, 0), "1000"));
    }
    let (bore, paper) = (work.bore.get(), Paper::of(work));
    let line = |curve: Trochoid| {
        outline(curve.polyline(120).into_iter().map(|point| paper.at(point.x(), point.y())))
    };
    let edge = bore.beside(Length::new::<millimeter>(16.0));
    picture.with(path("outline thin", &line(edge))).with(path("outline", &line(bore)))
}

fn spots(work: &Work) -> Vec<((i32, i32), usize)> {
    let paper = Paper::of(work);
    work.spots()
        .iter()
        .enumerate()
        .filter_map(|(place, spot)| Some((spot.at.map(|[x, y]| paper.at(x, y))?, place)))
        .collect()
}

/// Where to read: places read are filled, the one in hand is ringed; a touch goes to a place.
pub fn where_to_read(work: &Work) -> El {
    let marks = spots(work).into_iter().map(|(spot, place)| {
        let (go, shown) = (work.clone(), work.clone());
        svg("g")
            .attr_live("class", move || {
                let read = shown.texts.with(|texts| !texts[place].is_empty());
                let now = shown.at.get() == place;
                Some(
                    match (now, read) {
                        (true, _) => "spot now",
                        (_, true) => "spot read",
                        _ => "spot",
                    }
                    .to_owned(),
                )
            })
            .on("click", move |_| go.go(place))
            .with(circle("spot-touch", spot, "140"))
            .with(circle("spot-ring", spot, "130"))
            .with(circle("spot-mark", spot, "44"))
    });
    part(work, "map survey-map").with_all(marks)
}

/// The places given so far.
pub fn places_given(work: &Work) -> El {
    let marks = spots(work).into_iter().map(|(spot, _)| circle("spot-mark", spot, "44"));
    part(work, "map relief").with_all(marks)
}

/// The picture over the findings; none for surveys without a map.
pub fn result_picture(work: &Work) -> Vec<El> {
    let unit = work.unit.get();
    match (work.survey, &work.taken()) {
        (Survey::Flatness | Survey::Grid | Survey::OwnPlaces, Ok(taken)) => face(work, taken, unit),
        (Survey::RunoutEight | Survey::RunoutTwelve, Ok(taken)) => vec![shaft(work, taken)],
        _ => Vec::new(),
    }
}

/// A hatch for a band: over zero it leans one way, under zero the other, and the farther the denser.
fn hatch(rank: i32) -> El {
    let spacing =
        ["110", "66", "42", "28", "20"][usize::try_from(rank.abs() - 1).unwrap_or(0).min(4)];
    let (class, lean) =
        if rank > 0 { ("hatch-over", "rotate(45)") } else { ("hatch-under", "rotate(-45)") };
    svg("pattern")
        .attrs(&[
            ("id", &hatch_id(rank)),
            ("width", spacing),
            ("height", spacing),
            ("patternUnits", "userSpaceOnUse"),
            ("patternTransform", lean),
        ])
        .with(path(class, "M0 0v110"))
}

fn hatch_id(rank: i32) -> String {
    if rank > 0 { format!("over{rank}") } else { format!("under{}", -rank) }
}

/// Bands counted from zero: 1, 2, … upwards, −1, −2, … downwards.
fn ranks(bands: &[Band]) -> Vec<i32> {
    let zero = Length::default();
    let under = bands.iter().filter(|band| band.upper <= zero).count();
    let place = |index: usize| i32::try_from(index).unwrap_or(0);
    (0..bands.len())
        .map(
            |index| {
                if index < under { place(index) - place(under) } else { place(index - under) + 1 }
            },
        )
        .collect()
}

fn face(work: &Work, taken: &Taken, unit: Unit) -> Vec<El> {
    let Ok(Levelled { points, highest, lowest }) = levelled(taken) else { return Vec::new() };
    let Ok(relief) = relief(&points) else { return Vec::new() };
    let bands = relief.bands(unit, BANDS);
    let ranks = ranks(&bands);
    let fill = |rank: i32| format!("url(#{})", hatch_id(rank));
    let paper = Paper::of(work);
    let areas = bands.iter().zip(&ranks).map(|(band, &rank)| {
        let pieces: String = band
            .pieces
            .iter()
            .map(|piece| outline(piece.iter().map(|&[x, y]| paper.at(x, y))))
            .collect();
        path("band", &pieces).attr("fill", &fill(rank))
    });
    let end = |class: &str, point: &pitleaf_core::faces::Point, shape: &str, words: &str| {
        let (x, y) = paper.at(point.x, point.y);
        let place = format!("translate({x} {y})");
        svg("g")
            .attr("transform", &place)
            .with(path(class, shape))
            .with(svg("text").attrs(&[("y", if y > 0 { "-110" } else { "190" })]).text(words))
    };
    let dots = points.iter().map(|point| circle("spot-mark", paper.at(point.x, point.y), "22"));
    let picture = part(work, "map relief")
        .with(svg("defs").with_all(ranks.iter().map(|&rank| hatch(rank))))
        .with_all(areas)
        .with_all(dots)
        .with(end("end", &highest, "M-60 52 0-60 60 52z", tr!("high")))
        .with(end("end", &lowest, "M-60-52 0 60 60-52z", tr!("low")));
    let legend = bands.iter().zip(&ranks).rev().map(|(band, &rank)| {
        let swatch = svg("svg")
            .attrs(&[("class", "swatch"), ("viewBox", "0 0 280 160"), ("aria-hidden", "true")])
            .with(path("band", "M0 0h280v160H0z").attr("fill", &fill(rank)));
        let words = tr!("{} to {}", figure(band.lower, unit), figure(band.upper, unit));
        el("li").with(swatch).with(text("span", "number", &words))
    });
    vec![
        picture,
        el("ul")
            .class("legend")
            .attr("aria-label", tr!("Heights, over the middle of the zone"))
            .with_all(legend),
    ]
}

/// Places round the shaft, and an arrow to its high side.
fn shaft(work: &Work, taken: &Taken) -> El {
    let numbers = spots(work).into_iter().map(|((x, y), place)| {
        let (x, y) = (x * 6 / 5, y * 6 / 5);
        svg("text")
            .attrs(&[("x", &x.to_string()), ("y", &(y + 40).to_string())])
            .text(&(place + 1).to_string())
    });
    let dots = spots(work).into_iter().map(|(spot, _)| circle("spot-mark", spot, "34"));
    let arrow = direction(taken).map(|way| {
        // As the places: x goes up, y to the left.
        let tip = |length: f64, aside: f64| {
            (tenths(-way.y * length + way.x * aside), tenths(-way.x * length - way.y * aside))
        };
        let ((x, y), (a, b), (c, d)) = (tip(90.0, 0.0), tip(72.0, 9.0), tip(72.0, -9.0));
        path("high-side", &format!("M0 0L{x} {y}M{a} {b}L{x} {y}L{c} {d}"))
    });
    part(work, "map relief").with_all(dots).with_all(numbers).with_all(arrow)
}
