//! Where and how to measure, drawn: the part (outline), the gauge (filled), the places (dots and arrows).
//!
//! Bores and housings are the real trochoid, drawn from the preset's geometry; the rest are sections.

use crate::dom::{El, svg};
use pitleaf_core::limits::Picture;
use pitleaf_core::trochoid::Engine;
use std::fmt::Write as _;
use uom::si::length::millimeter;

/// Strokes of a picture: the part's, the gauge's, and the marks of places and movements.
struct Drawing {
    part: &'static str,
    gauge: &'static str,
    marks: &'static str,
    /// The real bore stands behind it.
    bore: bool,
}

/// On a sheet of 320 by 150.
fn drawing(picture: Picture) -> Drawing {
    let (part, gauge, marks, bore) = match picture {
        Picture::LeafAtEnd => (
            "M20 70H190V98H20zM214 84a36 36 0 1 0 72 0a36 36 0 1 0-72 0z",
            "M198 12h10v100h-10z",
            "M150 84h36m-10-7 10 7-10 7",
            false,
        ),
        Picture::LeafInSlot => (
            "M30 130V50h90v60h74V50h90v80zM128 20h46v82h-46z",
            "M180 8h8v92h-8z",
            "M60 76h50m-10-7 10 7-10 7",
            false,
        ),
        Picture::StraightedgeOnFace => (
            "",
            "M8 116h132v12H8zM20 134h100v4H20z",
            "M236 8V142M160 75H312M186 24 286 126M286 24 186 126",
            true,
        ),
        Picture::LeafOnPlate => (
            "M10 120H310v16H10zM40 118Q160 60 280 118l-4-16Q160 44 44 102z",
            "M150 96h20v24h-20z",
            "M160 20v38m-7-10 7 10 7-10",
            false,
        ),
        Picture::MicrometerOverHousing => (
            "",
            "M14 60V24h96v36H94V40H30v20zM44 56h36v10H44zM110 46h26v12h-26z",
            "M236 4v12m0 118v12M304 42l-10 6m10 60-10-6M168 42l10 6m-10 60 10-6M312 75h-12M160 75h12",
            true,
        ),
        Picture::MicrometerOverRound => (
            "M110 78a50 50 0 1 0 100 0a50 50 0 1 0-100 0z",
            "M60 100V66h48v24H78v10zM212 66h48v24h-48zM60 100h18v40h164V90h18v50H60z",
            "M116 78h88m-8-6 8 6-8 6M124 72l-8 6 8 6M160 34v88m-6-8 6 8 6-8M154 42l6-8 6 8",
            false,
        ),
        Picture::MicrometerOverSeal => (
            "M30 56H290V96H30z",
            "M148 30h24v24h-24zM148 98h24v24h-24z",
            "M52 34v18m0 48v18M268 34v18m0 48v18M46 44l6 8 6-8M46 108l6-8 6 8M262 44l6 8 6-8M262 108l6-8 6 8",
            false,
        ),
        Picture::MicrometerOverRotor => (
            "M236 6Q286 36 304 118Q236 162 168 118Q186 36 236 6z",
            "M14 60V24h96v36H94V40H30v20zM44 56h36v10H44zM110 46h26v12h-26z",
            "M236 12v12m0 108v-12M304 118l-12-6M168 118l12-6M276 54l-12 6M196 54l12 6",
            false,
        ),
        Picture::StripInBearing => (
            "M20 70a70 70 0 0 0 140 0zM44 70a46 46 0 0 1 92 0",
            "M84 118h12v12H84zM196 70h104v14H196z",
            "M196 40h104v20H196zM216 40v20m24-20v20m28-20v20",
            false,
        ),
        Picture::BoreGauge => (
            "M96 75a64 64 0 1 0 128 0a64 64 0 1 0-128 0zM70 75a90 74 0 1 0 180 0a90 74 0 1 0-180 0z",
            "M100 70h120v10H100z",
            "M160 15v120m-7-10 7 10 7-10M153 25l7-10 7 10",
            false,
        ),
        Picture::DepthFromFace => (
            "M10 70H120v40h80V70H310v66H10z",
            "M80 50H240v18H80zM150 10h20v40h-20zM156 68h8v42h-8z",
            "M222 72v36m-6-8 6 8 6-8M216 80l6-8 6 8",
            false,
        ),
        Picture::CoverOverStack => (
            "M20 8h26v134H20zM46 66h16V44h12v22h14V34h14v32h30v18H102v32H88V84H74v22H62V84H46zM46 14h186v122H46v-12h172V26H46z",
            "M236 50h10v50h-10zM246 66h44v18h-44z",
            "M138 75h74m-8-6 8 6-8 6M146 69l-8 6 8 6",
            false,
        ),
        Picture::DialOverTrack => (
            "M10 90H110q20 22 50 22t50-22H310v46H10z",
            "M60 68H260v14H60zM76 82h12v8H76zM232 82h12v8h-12zM138 30a22 22 0 1 0 44 0a22 22 0 1 0-44 0zM157 52h6v58h-6z",
            "M160 30l10-12M150 122h20",
            false,
        ),
        Picture::DialOnShaft => (
            "M20 60H300V88H20zM60 136l20-44h8l-14 44zM108 136 88 92h-8l14 44zM212 136l20-44h8l-14 44zM260 136 240 92h-8l14 44z",
            "M138 22a18 18 0 1 0 36 0a18 18 0 1 0-36 0zM153 40h6v20h-6z",
            "M286 100q22-26 0-52m-2 10 2-10 9 4M156 22l8-10",
            false,
        ),
        Picture::DialOnEnd => (
            "M20 60H220V92H20zM120 34h20v84h-20zM60 44h14v64H60z",
            "M262 76a22 22 0 1 0 44 0a22 22 0 1 0-44 0zM220 73h42v6h-42z",
            "M150 20h70m-10-7 10 7-10 7M160 13l-10 7 10 7M284 76l10-10",
            false,
        ),
        Picture::DialOnTooth => (
            "M20 140q30-60 60-60l10-26h20l10 26q40 0 60 10l14-24 18 8-4 26q40 14 62 44z",
            "M122 22a20 20 0 1 0 40 0a20 20 0 1 0-40 0zM104 52 124 34l4 5-20 17z",
            "M60 40h50m-10-7 10 7-10 7M70 33l-10 7 10 7",
            false,
        ),
        Picture::HeightOnPlate => (
            "M10 122H310v14H10zM110 122q25-74 50-74t50 74",
            "M100 30H220v10H100zM226 30h10v92h-10z",
            "M160 50v70m-6-8 6 8 6-8M154 58l6-8 6 8",
            false,
        ),
        Picture::ChainSlack => (
            "M20 80a36 36 0 1 0 72 0a36 36 0 1 0-72 0zM244 80a28 28 0 1 0 56 0a28 28 0 1 0-56 0zM56 44Q164 66 272 52M56 116 272 108",
            "M156 24h16v26h-16z",
            "M200 36v30m-6-8 6 8 6-8M194 44l6-8 6 8",
            false,
        ),
        Picture::TorqueWrench => (
            "M80 60 106 45l26 15v30l-26 15-26-15z",
            "M106 68H290v14H106zM250 62h50v26h-50z",
            "M270 130q-70 24-130-8m10-2-10 2 4 10",
            false,
        ),
        Picture::PressureGauge => (
            "M10 104H150v14h20v-14H310v34H10z",
            "M154 60h12v50h-12zM122 40a38 38 0 1 0 76 0a38 38 0 1 0-76 0z",
            "M160 40l20-18M134 52l6-4m40 0 6 4",
            false,
        ),
        Picture::Balance => (
            "M90 60h140v20H90zM120 30h80v30h-80z",
            "M60 84H260l16 52H44zM130 98h60v22h-60z",
            "M160 6v18m-6-8 6 8 6-8",
            false,
        ),
        Picture::Vessel => (
            "M100 30v100h120V30M100 70H220",
            "M152 8h10v104h-10z",
            "M106 90h16m-16 20h16m-16-40h16",
            false,
        ),
    };
    Drawing { part, gauge, marks, bore }
}

/// The picture under "how"; what it shows is said in words beside it.
pub fn how_picture(picture: Picture) -> El {
    let Drawing { part, gauge, marks, bore } = drawing(picture);
    let outline = if bore { real_bore() } else { String::new() };
    let strokes = [("part", outline.as_str()), ("part", part), ("gauge", gauge), ("marks", marks)];
    let drawn = strokes.iter().filter(|(_, d)| !d.is_empty());
    svg("svg")
        .attrs(&[("class", "how-picture"), ("viewBox", "0 0 320 150"), ("aria-hidden", "true")])
        .with_all(drawn.map(|(class, d)| svg("path").attrs(&[("class", class), ("d", d)])))
}

/// The bore with its long axis upright, in the right half of the sheet.
fn real_bore() -> String {
    let mut d = String::new();
    for (index, point) in Engine::preset().geometry().bore().polyline(60).into_iter().enumerate() {
        let (x, y) = (
            place(236.0 - point.y().get::<millimeter>() * 0.55),
            place(75.0 - point.x().get::<millimeter>() * 0.55),
        );
        // Writing to a string can't fail.
        let _ = write!(d, "{}{x} {y}", if index == 0 { 'M' } else { 'L' });
    }
    d.push('Z');
    d
}

fn place(value: f64) -> i32 {
    #[expect(clippy::cast_possible_truncation, reason = "the sheet is 320 wide")]
    let whole = value.round() as i32;
    whole
}
