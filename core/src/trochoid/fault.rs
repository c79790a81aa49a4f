//! What can be wrong with an engine's measures, in sentences.

use pitleaf_translated::translated;
use std::fmt;

use uom::si::{f64::Length, length::millimeter};

use super::Bound;
use crate::decimal::shown;
use crate::quantity::without_zeros;

/// A measure that can't be, and what to do about it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GeometryFault {
    /// A length outside its bounds, or not a number.
    OutOfBounds {
        /// The row of the bounds table.
        bound: &'static Bound,
        /// What was given.
        given: Length,
    },
    /// R is not more than 3e: the bore would cross itself.
    BoreCrosses {
        /// The generating radius given.
        radius: Length,
        /// Three times the eccentricity given.
        least: Length,
    },
    /// R is less than 4.5e: the flanks would turn hollow.
    FlankHollow {
        /// The generating radius given.
        radius: Length,
        /// Four and a half times the eccentricity given.
        least: Length,
    },
    /// The offset reaches the centre of curvature at the waist: the bore would have a corner there.
    OffsetTooLarge {
        /// The offset given.
        offset: Length,
        /// The radius of curvature at the waist.
        waist: Length,
    },
    /// The corner seal sticks out over the flank's edge.
    CornerSealOutside {
        /// The corner seal's radius.
        radius: Length,
        /// How far its centre is from the edge.
        room: Length,
    },
    /// The oil seal reaches the line of the side seal.
    OilSealOutside {
        /// The oil seal's radius.
        radius: Length,
        /// The least distance from the rotor's centre to the line of the side seal.
        room: Length,
    },
}

impl fmt::Display for GeometryFault {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::OutOfBounds { bound, given } => write!(
                f,
                "the {} of {} is outside {} … {}: measure again",
                bound.name,
                Millimetres(given),
                Millimetres(bound.least()),
                Millimetres(bound.greatest())
            ),
            Self::BoreCrosses { radius, least } => write!(
                f,
                "the generating radius of {} is not more than three times the eccentricity ({}), so \
                 the bore would cross itself: check both",
                Millimetres(radius),
                Millimetres(least)
            ),
            Self::FlankHollow { radius, least } => write!(
                f,
                "the generating radius of {} is less than four and a half times the eccentricity \
                 ({}), so the rotor's flanks would be hollow: check both",
                Millimetres(radius),
                Millimetres(least)
            ),
            Self::OffsetTooLarge { offset, waist } => write!(
                f,
                "the apex-seal offset of {} is not less than the radius of the bore's waist ({}), so \
                 the bore would have a corner there: check the offset",
                Millimetres(offset),
                Millimetres(waist)
            ),
            Self::CornerSealOutside { radius, room } => write!(
                f,
                "a corner seal of radius {} sticks out of the rotor, its centre is {} from the \
                 flank's edge: check its distance and its radius",
                Millimetres(radius),
                Millimetres(room)
            ),
            Self::OilSealOutside { radius, room } => write!(
                f,
                "an oil seal of radius {} reaches the side seal, which comes within {} of the \
                 rotor's centre: check the oil seal's radius",
                Millimetres(radius),
                Millimetres(room)
            ),
        }
    }
}

impl std::error::Error for GeometryFault {}

/// A length as a sentence shows it: millimetres, at most three decimals, no trailing zeros.
pub(crate) struct Millimetres(pub(crate) Length);

impl fmt::Display for Millimetres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = shown(self.0.get::<millimeter>(), 3);
        write!(f, "{} mm", without_zeros(&text))
    }
}

#[cfg(test)]
mod tests {
    use uom::si::{f64::Length, length::millimeter};

    use crate::trochoid::{Engine, Geometry, Seals};

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    #[track_caller]
    fn refused([e, r, a, b]: [f64; 4], sentences: &[&str]) {
        let faults = Geometry::new(mm(e), mm(r), mm(a), mm(b)).expect_err("measures that can't be");
        let got: Vec<_> = faults.iter().map(ToString::to_string).collect();
        assert_eq!(got, sentences, "e {e}, R {r}, a {a}, b {b}");
    }

    #[test]
    fn geometry_that_cannot_be() {
        refused(
            [15.0, 45.0, 0.0, 80.0],
            &["the generating radius of 45 mm is not more than three times the eccentricity \
               (45 mm), so the bore would cross itself: check both"],
        );
        refused(
            [15.0, 60.0, 0.0, 80.0],
            &[
                "the generating radius of 60 mm is less than four and a half times the eccentricity \
               (67.5 mm), so the rotor's flanks would be hollow: check both",
            ],
        );
        refused(
            [15.0, 70.0, 10.0, 80.0],
            &["the apex-seal offset of 10 mm is not less than the radius of the bore's waist \
               (9.615 mm), so the bore would have a corner there: check the offset"],
        );
        refused(
            [0.591, f64::NAN, -1.0, f64::INFINITY],
            &[
                "the eccentricity of 0.591 mm is outside 1 mm … 60 mm: measure again",
                "the generating radius of NaN mm is outside 5 mm … 600 mm: measure again",
                "the apex-seal offset of -1 mm is outside 0 mm … 20 mm: measure again",
                "the housing width of inf mm is outside 2 mm … 500 mm: measure again",
            ],
        );
    }

    #[test]
    fn seals_that_do_not_fit_the_rotor() {
        let preset = Engine::preset();
        let wide = Seals { corner_radius: mm(9.0), ..*preset.seals() };
        let large = Seals { oil_radius: mm(72.0), side_inset: mm(31.0), ..*preset.seals() };
        let sentences = |seals| -> Vec<String> {
            let faults = Engine::new(*preset.geometry(), seals).expect_err("seals that can't be");
            faults.iter().map(ToString::to_string).collect()
        };
        assert_eq!(
            sentences(wide),
            [
                "a corner seal of radius 9 mm sticks out of the rotor, its centre is 7.016 mm from the \
              flank's edge: check its distance and its radius"
            ],
            "corner seal"
        );
        assert_eq!(
            sentences(large),
            ["the side seal's inset of 31 mm is outside 0 mm … 30 mm: measure again"],
            "side seal"
        );
        let large = Seals { side_inset: mm(4.0), ..large };
        assert_eq!(
            sentences(large),
            ["an oil seal of radius 72 mm reaches the side seal, which comes within 71 mm of the \
              rotor's centre: check the oil seal's radius"],
            "oil seal"
        );
    }

    #[test]
    fn presets_pass_their_own_checks() {
        let engine = Engine::preset();
        let shape = engine.geometry();
        let again = Geometry::new(
            shape.eccentricity(),
            shape.generating_radius(),
            shape.apex_seal_offset(),
            shape.housing_width(),
        );
        assert!(again.is_ok(), "the preset's geometry: {again:?}");
        let again = Engine::new(*shape, *engine.seals());
        assert!(again.is_ok(), "the preset's seals: {again:?}");
    }
}
