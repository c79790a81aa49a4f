//! Chambers with an apex-seal offset: their areas against the outlines that are drawn of them, and the
//! preset's volumes against Shapely's.

use pitleaf_core::trochoid::{Chamber, Chambers, Geometry, GeometryFault, Point, TypedEngine};
use proptest::prelude::*;
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Length, Volume},
    length::millimeter,
    volume::cubic_centimeter,
};

fn geometry(e: f64, r: f64, a: f64) -> Result<Geometry, Vec<GeometryFault>> {
    let mm = Length::new::<millimeter>;
    Geometry::new(mm(e), mm(r), mm(a), mm(80.0))
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within}");
}

fn enclosed(points: &[Point]) -> f64 {
    let mut twice = 0.0;
    for (i, point) in points.iter().enumerate() {
        let ((x, y), (u, v)) = (point.millimetres(), points[(i + 1) % points.len()].millimetres());
        twice += x * v - y * u;
    }
    0.5 * twice
}

/// The area of the outline with sides without end: those of two outlines, one with twice the sides, by
/// Richardson's rule.
fn drawn(geometry: &Geometry, theta: Angle) -> f64 {
    let [coarse, fine] = [257, 513].map(|count| {
        enclosed(&geometry.chamber_outline(Chamber::First, theta, geometry.flank(), count))
    });
    (4.0 * fine - coarse) / 3.0
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Any engine within the bounds, its chamber followed through a whole cycle.
    #[test]
    fn areas_are_those_of_the_outlines_drawn(
        e in 1.0..60.0_f64,
        k in 4.5..12.0_f64,
        a in prop_oneof![0.0..6.0_f64, 0.0..20.0_f64],
    ) {
        let Ok(geometry) = geometry(e, e * k, a) else { return Ok(()) };
        let chambers = Chambers::new(&geometry);
        let area = |theta| chambers.area(Chamber::First, theta).get::<square_millimeter>();
        let greatest = area(Angle::new::<degree>(360.0));
        for step in 0..36 {
            let theta = Angle::new::<degree>(30.0 * f64::from(step));
            let (got, wanted) = (area(theta), drawn(&geometry, theta));
            prop_assert!(
                (got - wanted).abs() <= 1e-6 * greatest,
                "e {e}, R {}, a {a} at {theta:?}: got {got}, drawn {wanted} mm²", e * k
            );
        }
    }
}

/// Areas Shapely gives for the bore's sector less the rotor's, as polygons of 60 000 sides: 486.2498 mm² at
/// least and 8664.2710 at greatest, 80 mm wide. `tests/reference/chamber_areas.py` goes on from here.
#[test]
fn the_presets_volumes_are_those_of_bore_less_rotor() {
    let chambers = Chambers::new(&Geometry::preset());
    let cm3 = |volume: Volume| volume.get::<cubic_centimeter>();
    close(cm3(chambers.least_volume()), 38.89998, 1e-4, "least, cm³");
    close(cm3(chambers.greatest_volume()), 693.14168, 1e-4, "greatest, cm³");
    close(chambers.theoretical_ratio(), 693.14168 / 38.89998, 1e-4, "ratio");
    // (V − 9 v)/8 and (V + 30)/(v + 30) with the same two volumes.
    let recess = chambers.recess_for(9.0).expect("a ratio within reach");
    close(cm3(recess), 42.8802, 2e-4, "recess for 9, cm³");
    let poured = chambers.ratio(Volume::new::<cubic_centimeter>(30.0)).expect("a recess");
    close(poured, 723.14168 / 68.89998, 1e-4, "ratio with 30 cm³ poured");
}

/// At R = 4.5e the flank is flat in its middle, below it is hollow and refused.
#[test]
fn flanks_are_hollow_below_four_and_a_half_eccentricities() {
    for (k, is_hollow) in [(4.21, true), (4.35, true), (4.49, true), (4.5, false), (4.6, false)] {
        let found = geometry(15.0, 15.0 * k, 0.0);
        let refused =
            found.is_err_and(|faults| matches!(faults[..], [GeometryFault::FlankHollow { .. }]));
        assert_eq!(refused, is_hollow, "R = {k} e");
    }
}

/// What earlier versions showed of the preset: 50.0 cm³ least, 704.3 greatest, 14.08 : 1, and 31.8 cm³ for
/// 9 : 1. An engine put in with one of them is known by what its entry lacks.
#[test]
fn an_engine_put_in_with_an_earlier_version_is_corrected() {
    let preset = TypedEngine::preset();
    let now = pitleaf_core::kept::write(&preset);
    let then = now.replace(r#","noses":true"#, "");
    assert_ne!(then, now, "a new entry says so: {now}");
    let old: TypedEngine = pitleaf_core::kept::read(&then).expect("an old entry");
    assert_eq!(old.engine(), preset.engine(), "the same measures");
    let correction = old.correction().expect("an offset of 3 mm");
    let chambers = Chambers::new(&Geometry::preset());
    close(correction.excess.get::<cubic_centimeter>(), 11.13, 0.005, "too large by, cm³");
    let least = chambers.least_volume() + correction.excess;
    close(least.get::<cubic_centimeter>(), 50.0, 0.05, "least as it was, cm³");
    close(correction.ratio_then, 14.08, 0.005, "ratio as it was");
    let recess = chambers.recess_for(9.0).expect("a ratio") - correction.excess;
    close(recess.get::<cubic_centimeter>(), 31.8, 0.06, "recess as it was, cm³");
    assert_eq!(
        correction.to_string(),
        "When these measures were put in, each chamber was counted 11.13 cm³ too large: the noses of the \
         rotor’s apex seals were left out. Without a recess it said 14.08 : 1; it is 17.82 : 1. A recess \
         worked out then is 11.13 cm³ too small, and the ratio higher than was said: work it out again."
    );
    let read: TypedEngine = pitleaf_core::kept::read(&now).expect("a new entry");
    assert_eq!(read.correction(), None, "put in with this version");
    let mut no_offset = old;
    no_offset.texts[2] = "0".to_owned();
    assert_eq!(no_offset.correction(), None, "nothing was wrong without an offset");
}
