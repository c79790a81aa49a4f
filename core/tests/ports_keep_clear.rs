//! What ports run into, by hand where the long axis makes it easy and by brute force elsewhere.
//!
//! The preset on the long axis, in mm: bore at 15 + 102 + 3 = 120, corner seals' centre at
//! 15 + 97.5 = 112.5 and their track from 107 to 118, oil seal's sweep to 15 + 56 = 71, coolant land
//! from 126.

use pitleaf_core::{
    ports::{
        Intrusion, Obstacle, Outline, bridge, intrusions, left_to_land, longest_unsupported,
        overhang,
    },
    trochoid::{Engine, Point},
};
use proptest::prelude::*;
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Length},
    length::millimeter,
    ratio::ratio,
};

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn outline(points: &[(f64, f64)]) -> Outline {
    Outline::new(points.iter().map(|(x, y)| Point::from_millimetres(*x, *y))).expect("an outline")
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within}");
}

/// A triangle on the long axis whose corner lies at `tip`.
fn triangle(tip: f64, base: f64) -> Outline {
    outline(&[(base, -4.0), (tip, 0.0), (base, 4.0)])
}

fn found(outline: &Outline, margin: f64, obstacle: Obstacle) -> Option<Intrusion> {
    intrusions(&Engine::preset(), outline, mm(margin))
        .into_iter()
        .find(|intrusion| intrusion.obstacle == obstacle)
}

#[track_caller]
fn reaches(outline: &Outline, margin: f64, obstacle: Obstacle, depth: f64, x: f64) {
    let intrusion = found(outline, margin, obstacle).expect("it runs into this");
    close(intrusion.depth.get::<millimeter>(), depth, 1e-3, "depth, mm");
    close(intrusion.place.millimetres().0, x, 0.05, "place, x in mm");
    close(intrusion.place.millimetres().1, 0.0, 0.05, "place, y in mm");
}

#[test]
fn a_port_between_the_tracks_runs_into_nothing() {
    assert_eq!(intrusions(&Engine::preset(), &triangle(106.9, 80.0), mm(2.0)), [], "clear");
}

#[test]
fn corner_seal_track() {
    reaches(&triangle(110.0, 80.0), 2.0, Obstacle::CornerSealTrack, 3.0, 110.0);
    let through = found(&triangle(119.0, 80.0), 2.0, Obstacle::CornerSealTrack).expect("through");
    close(through.depth.get::<millimeter>(), 11.0, 1e-9, "no deeper than the track is wide, mm");
}

/// An eyebrow in the strip between the corner seals' track and the bore, as a bridge port has it: its
/// nearest point is 6.045 mm from the path of the seals' centres, 0.545 mm clear of them (by Shapely).
const EYEBROW: [(f64, f64); 10] = [
    (62.82, -84.37),
    (69.77, -81.25),
    (76.71, -77.36),
    (83.51, -72.66),
    (90.04, -67.15),
    (93.45, -70.81),
    (86.54, -76.63),
    (79.35, -81.60),
    (72.01, -85.72),
    (64.66, -89.02),
];

#[test]
fn an_eyebrow_beyond_the_track_does_not_cut_it() {
    let eyebrow = outline(&EYEBROW);
    assert_eq!(found(&eyebrow, 1.0, Obstacle::CornerSealTrack), None, "clear by 0.545 mm");
    assert_eq!(overhang(&Engine::preset(), &eyebrow, &[]), None, "no seal reaches it");
    // 0.6 mm nearer to the shaft it reaches 0.055 mm in.
    let length = |(x, y): (f64, f64)| x.hypot(y);
    let nearer = EYEBROW.map(|(x, y)| {
        let share = 1.0 - 0.6 / length((x, y));
        (share * x, share * y)
    });
    let cut = found(&outline(&nearer), 1.0, Obstacle::CornerSealTrack).expect("now it does");
    let depth = cut.depth.get::<millimeter>();
    assert!(depth > 0.02 && depth < 0.055, "no more than it came nearer: {depth} mm");
}

/// The track lies between 107 and 118 mm on the long axis. A port from the outside, one within, one all
/// round it and one round the shaft.
#[test]
fn depth_is_how_much_of_the_tracks_width_is_cut() {
    let on_axis = |from: f64, to: f64| outline(&[(from, -0.5), (to, -0.5), (to, 0.5), (from, 0.5)]);
    for (from, to, depth) in [
        (100.0, 106.9, None),
        (100.0, 108.0, Some(1.0)),
        (116.0, 125.0, Some(2.0)),
        (118.1, 125.0, None),
        (110.0, 113.0, Some(3.0)),
        (100.0, 125.0, Some(11.0)),
    ] {
        let got = found(&on_axis(from, to), 0.0, Obstacle::CornerSealTrack);
        let got = got.map(|intrusion| intrusion.depth.get::<millimeter>());
        // Half a millimetre beside the axis the track runs up to 0.004 mm further in.
        match (got, depth) {
            (Some(got), Some(depth)) => close(got, depth, 0.01, &format!("{from} to {to}, mm")),
            (got, depth) => assert_eq!(got, depth, "{from} to {to}"),
        }
    }
    let square = |half: f64| outline(&[(-half, -half), (half, -half), (half, half), (-half, half)]);
    let round = found(&square(200.0), 0.0, Obstacle::CornerSealTrack).expect("all of it");
    close(round.depth.get::<millimeter>(), 11.0, 1e-9, "the whole width, mm");
    let about_shaft = found(&square(10.0), 0.0, Obstacle::OilSealSweep).expect("about the shaft");
    close(about_shaft.depth.get::<millimeter>(), 71.0, 1e-9, "as far as the shaft, mm");
    close(about_shaft.area.get::<square_millimeter>(), 400.0, 1e-9, "all of it, mm²");
}

#[test]
fn oil_seal_sweep() {
    reaches(&triangle(68.0, 90.0), 2.0, Obstacle::OilSealSweep, 3.0, 68.0);
    // Nearest to the shaft in the middle of an edge.
    let edge = outline(&[(60.0, -40.0), (80.0, -40.0), (80.0, 40.0), (60.0, 40.0)]);
    reaches(&edge, 2.0, Obstacle::OilSealSweep, 11.0, 60.0);
}

#[test]
fn rotor_housing_and_coolant_land() {
    let cut = triangle(125.0, 80.0);
    reaches(&cut, 2.0, Obstacle::RotorHousing, 5.0, 125.0);
    reaches(&cut, 2.0, Obstacle::CoolantLand, 1.0, 125.0);
    assert_eq!(found(&cut, 0.5, Obstacle::CoolantLand), None, "a smaller margin is kept");
    close(left_to_land(&Engine::preset(), &cut).get::<millimeter>(), 1.0, 1e-3, "left, mm");
    let through = left_to_land(&Engine::preset(), &triangle(127.5, 80.0));
    close(through.get::<millimeter>(), -1.5, 1e-3, "into the land, mm");
}

/// The areas by counting squares of 0.1 mm, with the distance to a curve taken to a polygon.
#[test]
fn areas_by_counting() {
    let engine = Engine::preset();
    let cut = outline(&[(66.0, -3.0), (124.0, -6.0), (126.0, 2.0), (68.0, 5.0)]);
    let path: Vec<_> =
        engine.corner_seal_path().polyline(3000).iter().map(|p| p.millimetres()).collect();
    let bore = Outline::new(engine.geometry().bore().polyline(1200)).expect("a bore");
    let land = engine.coolant_land().beside(mm(-2.0));
    let land = Outline::new(land.polyline(1200)).expect("a land");
    let near = |x: f64, y: f64| {
        path.iter().any(|(u, v)| (u - x).abs() < 5.5 && (u - x).hypot(v - y) < 5.5)
    };
    let side = 0.1;
    let mut counts = [0_u32; 4];
    for i in 0..620 {
        for j in 0..120 {
            let (x, y) = (65.5 + side * f64::from(i), -6.5 + side * f64::from(j));
            let point = Point::from_millimetres(x, y);
            if cut.contains(point) {
                let hits =
                    [near(x, y), x.hypot(y) < 71.0, !land.contains(point), !bore.contains(point)];
                for (count, hit) in counts.iter_mut().zip(hits) {
                    *count += u32::from(hit);
                }
            }
        }
    }
    let order = [
        Obstacle::CornerSealTrack,
        Obstacle::OilSealSweep,
        Obstacle::CoolantLand,
        Obstacle::RotorHousing,
    ];
    for (obstacle, count) in order.into_iter().zip(counts) {
        let got = found(&cut, 2.0, obstacle).expect("all four").area.get::<square_millimeter>();
        close(got, f64::from(count) * side * side, 0.35, &format!("{obstacle:?}, mm²"));
    }
}

#[test]
fn bridge_between_two_ports() {
    let one = outline(&[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]);
    let beside = outline(&[(14.0, 2.0), (20.0, 2.0), (20.0, 8.0)]);
    let narrow = bridge(&one, &beside);
    close(narrow.width.get::<millimeter>(), 4.0, 1e-12, "width, mm");
    assert_eq!(narrow.from.millimetres(), (10.0, 2.0), "on the first");
    assert_eq!(narrow.to.millimetres(), (14.0, 2.0), "on the second");
    let corner = outline(&[(13.0, 14.0), (20.0, 14.0), (20.0, 20.0)]);
    close(bridge(&one, &corner).width.get::<millimeter>(), 5.0, 1e-12, "3-4-5 corner, mm");
    let across = outline(&[(8.0, 2.0), (20.0, 2.0), (20.0, 8.0)]);
    close(bridge(&one, &across).width.get::<millimeter>(), 0.0, 0.0, "crossing, mm");
    let within = outline(&[(4.0, 4.0), (6.0, 4.0), (5.0, 6.0)]);
    close(bridge(&one, &within).width.get::<millimeter>(), 0.0, 0.0, "within, mm");
    close(bridge(&within, &one).width.get::<millimeter>(), 0.0, 0.0, "around, mm");
}

/// The longest run over a slot, by walking a dense side seal at every degree: between the tracks, and
/// on the corner seals' path, where the seal ends at its corner seal.
#[test]
fn longest_unsupported_side_seal_by_brute_force() {
    let engine = Engine::preset();
    let between = outline(&[(50.0, 45.0), (76.0, 37.0), (81.0, 58.0), (58.0, 62.0)]);
    let in_track = outline(&[(108.0, -9.0), (118.0, -9.0), (118.0, 9.0), (108.0, 9.0)]);
    for slot in [between, in_track] {
        let got =
            longest_unsupported(&engine, std::slice::from_ref(&slot)).expect("it passes over");
        let longest = walked(&engine, &slot);
        close(got.length.get::<millimeter>(), longest, 0.2, "longest run, mm");
        assert!(got.length.get::<millimeter>() > 3.0, "a run worth finding");
        let (from, to) = (got.from.distance(got.to), got.length);
        assert!(from <= to && from > to * 0.98, "its ends are as far apart as it is long");
    }
    let nowhere = outline(&[(0.0, 0.0), (2.0, 0.0), (0.0, 2.0)]);
    assert_eq!(longest_unsupported(&engine, &[nowhere]), None, "no seal passes the shaft");
}

fn walked(engine: &Engine, slot: &Outline) -> f64 {
    let line = engine.side_seal_line().polyline(1500);
    let seals = engine.seals();
    let mut longest = 0.0;
    for degrees in 0..1080 {
        let theta = Angle::new::<degree>(f64::from(degrees));
        let pose = engine.geometry().pose(theta);
        let corners = engine.geometry().towards_apexes(theta, seals.corner_distance);
        let mut run = 0.0;
        for pair in line.windows(2) {
            let place = pose.place(pair[0]);
            let held = corners.iter().any(|corner| corner.distance(place) < seals.corner_radius);
            if slot.contains(place) && !held {
                run += pair[0].distance(pair[1]).get::<millimeter>();
                longest = f64::max(longest, run);
            } else {
                run = 0.0;
            }
        }
    }
    longest
}

/// Numbered marks lie beside their places and never on one another, even for places that are the same.
#[test]
fn marks_of_findings_keep_clear_of_one_another() {
    use pitleaf_core::ports::picture::{MARK, drawn, marks};
    let at = Point::from_millimetres;
    let places = [at(70.0, -60.0), at(70.0, -60.0), at(69.0, -60.5), at(-90.0, 10.0), at(0.0, 0.0)];
    let placed = marks(&places);
    assert_eq!(placed.len(), places.len(), "one each");
    let apart = |a: (i32, i32), b: (i32, i32)| f64::from(a.0 - b.0).hypot(f64::from(a.1 - b.1));
    let two = f64::from(2 * MARK);
    for (i, one) in placed.iter().enumerate() {
        for other in &placed[i + 1..] {
            assert!(apart(*one, *other) >= two, "{one:?} and {other:?}");
        }
    }
    for (place, mark) in places.iter().zip(&placed) {
        let off = apart(drawn(*place), *mark);
        assert!(off > f64::from(MARK), "a mark must not hide its place: {off}");
    }
    assert!(apart(drawn(places[0]), placed[0]) < two, "the first is right beside its place");
    assert!(apart(drawn(places[3]), placed[3]) < two, "and so is one that is alone");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// A small square beside the path of the corner seals: apart, in the track, or reaching in.
    #[test]
    fn a_square_is_in_the_track_or_it_is_not(
        alpha in 0.0..360.0_f64, off in -20.0..20.0_f64, half in 0.3..3.0_f64,
    ) {
        let path = Engine::preset().corner_seal_path().beside(mm(off));
        let (x, y) = path.point(Angle::new::<degree>(alpha)).millimetres();
        let square = outline(&[
            (x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half),
        ]);
        let got = found(&square, 0.0, Obstacle::CornerSealTrack);
        let hangs = overhang(&Engine::preset(), &square, &[]);
        let corner = half * std::f64::consts::SQRT_2;
        if off.abs() >= 5.5 + corner {
            prop_assert_eq!(got, None, "apart");
            prop_assert_eq!(hangs, None, "apart");
        } else if off.abs() + corner <= 5.5 {
            let got = got.expect("in the track");
            let (depth, area) =
                (got.depth.get::<millimeter>(), got.area.get::<square_millimeter>());
            prop_assert!(depth >= 2.0 * half - 0.2 && depth <= 2.0 * corner + 1e-6, "{} mm", depth);
            prop_assert!((area - 4.0 * half * half).abs() < 1e-6, "{} mm²", area);
            let share = hangs.expect("under the seal").share.get::<ratio>();
            let wanted = 4.0 * half * half / (std::f64::consts::PI * 5.5 * 5.5);
            prop_assert!((share - wanted).abs() < 1e-6, "{} of {}", share, wanted);
        } else if let Some(got) = got {
            prop_assert!(got.area.get::<square_millimeter>() > 0.0, "a depth without an area");
            prop_assert!(hangs.is_some(), "cut, but no seal reaches it: {:?}", got);
        }
    }
}
