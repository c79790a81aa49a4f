//! Corner seals over ports: how much of the face is in the air, and whether it can drop in.

use pitleaf_core::{
    ports::{Grade, Outline, Overhang, overhang},
    trochoid::{Engine, Point},
};
use uom::si::{angle::degree, ratio::ratio};

fn outline(points: &[(f64, f64)]) -> Outline {
    Outline::new(points.iter().map(|(x, y)| Point::from_millimetres(*x, *y))).expect("an outline")
}

fn rectangle((left, right): (f64, f64), (low, high): (f64, f64)) -> Outline {
    outline(&[(left, low), (right, low), (right, high), (left, high)])
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within}");
}

/// The preset's corner seal of 11 mm at the long axis, its middle at 112.5 mm, over what lies `over` mm in
/// from its outer edge at 118 mm.
fn over_an_edge(over: f64) -> Overhang {
    overhang(&Engine::preset(), &rectangle((118.0 - over, 140.0), (-30.0, 30.0)), &[])
        .expect("the seal reaches it")
}

/// The segment of a circle, r² acos((r − h)/r) − (r − h)√(2rh − h²), of r 5.5 mm: 1 mm 4.5 %, 2 mm 12 %,
/// 3 mm 22 %, 5 mm 44 %. By hand.
#[test]
fn the_share_over_a_straight_edge_is_that_of_a_segment() {
    for (over, percent, grade) in [
        (0.5, 1.6, Grade::TouchesEdge),
        (1.0, 4.5, Grade::TouchesEdge),
        (2.0, 12.4, Grade::Overhangs),
        (3.0, 22.1, Grade::Overhangs),
        (5.0, 44.2, Grade::Overhangs),
        (5.4, 48.8, Grade::Overhangs),
        (5.6, 51.2, Grade::DropsIn),
        (9.0, 87.6, Grade::DropsIn),
    ] {
        let found = over_an_edge(over);
        let (r, h) = (5.5_f64, over);
        let segment = r * r * ((r - h) / r).acos() - (r - h) * (2.0 * r * h - h * h).sqrt();
        let share = found.share.get::<ratio>();
        close(share, segment / (std::f64::consts::PI * r * r), 1e-6, "share");
        close(100.0 * share, percent, 0.06, "percent by hand");
        assert_eq!(found.grade(), grade, "{over} mm over the edge");
        // On the long axis once every half turn of the track: θ = 0 or 540°.
        close((found.theta.get::<degree>() + 1.0).rem_euclid(540.0), 1.0, 0.01, "θ, °");
    }
}

/// It runs on the edge as long as its outer rim is beyond 117 mm: by walking round in hundredths of a degree.
#[test]
fn the_angles_are_those_at_which_the_seal_reaches_the_edge() {
    let found = over_an_edge(1.0);
    let reaches = |theta: f64| {
        let alpha = (theta / 3.0).to_radians();
        97.5 * alpha.cos() + 15.0 * (3.0 * alpha).cos() + 5.5 > 117.0
    };
    let last = (0..9000).map(|i| 0.01 * f64::from(i)).take_while(|theta| reaches(*theta)).last();
    let last = last.expect("at the axis itself");
    let half = found.theta.get::<degree>();
    let after = (found.to.get::<degree>() - half).rem_euclid(1080.0);
    let before = (half - found.from.get::<degree>()).rem_euclid(1080.0);
    close(after, last, 0.02, "after the axis, °");
    close(before, last, 0.02, "before the axis, °");
    // The rotor turns anticlockwise in the housing: it climbs back at the upper end.
    let [off, back] = [found.runs_off, found.climbs_back].map(Point::millimetres);
    let turned = if half > 270.0 && half < 810.0 { -1.0 } else { 1.0 };
    assert!(turned * back.1 > 0.0 && turned * off.1 < 0.0, "off at {off:?}, back at {back:?}");
}

/// A slot right across the track, narrower than half the seal: before the seal's middle has passed the one
/// edge its rim is over the other. A wider one lets it tip in between. By hand: at the middle of 5 mm the
/// slot takes 2 (r² asin(2.5/r) + 2.5 √(r² − 2.5²)) of π r².
#[test]
fn a_seal_held_on_both_sides_does_not_drop_in() {
    let engine = Engine::preset();
    let slot = |wide: f64| {
        let slot = rectangle((100.0, 125.0), (-0.5 * wide, 0.5 * wide));
        overhang(&engine, &slot, &[]).expect("over the slot")
    };
    close(slot(5.0).share.get::<ratio>(), 0.558, 0.001, "more than half in the air");
    assert_eq!(slot(5.0).grade(), Grade::Overhangs, "held on both sides");
    assert_eq!(slot(6.0).grade(), Grade::DropsIn, "its middle is over before its rim is");
    let wide = slot(12.0);
    assert_eq!(wide.grade(), Grade::DropsIn, "nothing left under it");
    close(wide.share.get::<ratio>(), 1.0, 1e-9, "all of it");
}

/// Each of two ports leaves the seal held; together they do not.
#[test]
fn ports_beside_each_other_count_together() {
    let engine = Engine::preset();
    // From both sides over the seal at the long axis, with a bridge of 0.2 mm off its middle.
    let inner = rectangle((90.0, 112.9), (-20.0, 20.0));
    let outer = rectangle((113.1, 140.0), (-20.0, 20.0));
    let one = overhang(&engine, &outer, &[]).expect("over the outer");
    assert_eq!(one.grade(), Grade::Overhangs, "the outer alone leaves more than half");
    let both = overhang(&engine, &outer, std::slice::from_ref(&inner)).expect("over both");
    assert!(both.share.get::<ratio>() > 0.95, "a bridge is all that is left: {both:?}");
    assert_eq!(both.grade(), Grade::DropsIn, "the bridge runs beside its middle");
}
