//! The closed form of the flank against brute force: the rotor, turned through every position, must
//! stay inside the bore and touch it with every point of its flank.

use pitleaf_core::trochoid::{Geometry, Point};
use uom::si::{angle::degree, f64::Angle, f64::Length, length::millimeter};

/// Signed distance from the closed polygon: below zero inside.
fn distance(polygon: &[(f64, f64)], (x, y): (f64, f64)) -> f64 {
    let (mut nearest, mut inside) = (f64::INFINITY, false);
    let mut last = polygon[polygon.len() - 1];
    for &corner in polygon {
        let (dx, dy) = (corner.0 - last.0, corner.1 - last.1);
        let share = ((x - last.0) * dx + (y - last.1) * dy) / (dx * dx + dy * dy);
        let share = share.clamp(0.0, 1.0);
        let (u, v) = (x - last.0 - share * dx, y - last.1 - share * dy);
        nearest = nearest.min(u * u + v * v);
        if (corner.1 > y) != (last.1 > y) && x < last.0 + (y - last.1) * dx / dy {
            inside = !inside;
        }
        last = corner;
    }
    if inside { -nearest.sqrt() } else { nearest.sqrt() }
}

/// The furthest the point reaches towards the bore over a whole turn of the rotor.
fn furthest(geometry: &Geometry, bore: &[(f64, f64)], point: Point) -> f64 {
    (0..1440)
        .map(|step| {
            let pose = geometry.pose(Angle::new::<degree>(0.75 * f64::from(step)));
            distance(bore, pose.place(point).millimetres())
        })
        .fold(f64::NEG_INFINITY, f64::max)
}

#[test]
fn flank_is_the_inner_envelope() {
    let mm = Length::new::<millimeter>;
    for (e, k, a) in [(15.0, 7.0, 0.0), (15.0, 6.8, 3.0), (12.0, 5.0, 4.0), (10.0, 10.0, 1.0)] {
        let geometry = Geometry::new(mm(e), mm(e * k), mm(a), mm(80.0)).expect("an engine");
        let bore: Vec<_> =
            geometry.bore().polyline(1500).iter().map(|point| point.millimetres()).collect();
        for point in geometry.flank().polyline(11) {
            let reach = furthest(&geometry, &bore, point);
            assert!(
                reach.abs() < 2e-3,
                "e {e}, K {k}, a {a}: the flank at {point:?} reaches {reach} mm past the bore"
            );
        }
    }
}
