//! The four measures an engine's shape follows from.

use pitleaf_translated::translated;
use uom::si::{f64::Length, length::millimeter};

use super::{GeometryFault, Trochoid};

/// The range a length may lie in, and what it is called.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bound {
    /// What is measured.
    pub name: &'static str,
    least: f64,
    greatest: f64,
}

impl Bound {
    pub(super) const fn new(name: &'static str, least: f64, greatest: f64) -> Self {
        Self { name, least, greatest }
    }

    /// The least length allowed.
    #[must_use]
    pub fn least(&self) -> Length {
        Length::new::<millimeter>(self.least)
    }

    /// The greatest length allowed.
    #[must_use]
    pub fn greatest(&self) -> Length {
        Length::new::<millimeter>(self.greatest)
    }

    pub(super) fn check(&'static self, given: Length, faults: &mut Vec<GeometryFault>) {
        let fits = (self.least..=self.greatest).contains(&given.get::<millimeter>());
        if !fits {
            faults.push(GeometryFault::OutOfBounds { bound: self, given });
        }
    }
}

/// The bounds of eccentricity, generating radius, apex-seal offset and housing width, in mm: wide
/// enough for a model engine and for a marine one (our own choice, to catch slips of the unit).
#[translated]
pub static BOUNDS: [Bound; 4] = [
    Bound::new("eccentricity", 1.0, 60.0),
    Bound::new("generating radius", 5.0, 600.0),
    Bound::new("apex-seal offset", 0.0, 20.0),
    Bound::new("housing width", 2.0, 500.0),
];

/// An engine's shape: eccentricity e, generating radius R, apex-seal offset a, housing width b.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Geometry {
    bore: Trochoid,
    housing_width: Length,
}

impl Geometry {
    /// Puts the four measures together.
    ///
    /// # Errors
    /// All that is wrong with them: a length out of [`BOUNDS`]; R ≤ 3e, where the bore would cross
    /// itself; R < 4.5e, where the flanks would be hollow; an offset that leaves a corner in the
    /// bore's waist.
    ///
    /// # Examples
    /// ```
    /// use pitleaf_core::trochoid::Geometry;
    /// use uom::si::{f64::Length, length::millimeter};
    ///
    /// let mm = |value| Length::new::<millimeter>(value);
    /// assert!(Geometry::new(mm(15.0), mm(102.0), mm(3.0), mm(80.0)).is_ok());
    /// let faults = Geometry::new(mm(15.0), mm(45.0), mm(3.0), mm(80.0)).unwrap_err();
    /// assert!(faults[0].to_string().contains("the bore would cross itself"));
    /// ```
    pub fn new(
        eccentricity: Length,
        generating_radius: Length,
        apex_seal_offset: Length,
        housing_width: Length,
    ) -> Result<Self, Vec<GeometryFault>> {
        let mut faults = Vec::new();
        let given = [eccentricity, generating_radius, apex_seal_offset, housing_width];
        for (bound, length) in BOUNDS.iter().zip(given) {
            bound.check(length, &mut faults);
        }
        let bore = Trochoid {
            eccentricity: eccentricity.get::<millimeter>(),
            radius: generating_radius.get::<millimeter>(),
            offset: apex_seal_offset.get::<millimeter>(),
        };
        if faults.is_empty() {
            faults.extend(shape_fault(bore));
        }
        if faults.is_empty() { Ok(Self { bore, housing_width }) } else { Err(faults) }
    }

    /// The shape as commonly quoted for engines of 654 cm³ a rotor, from memory: e 15, R 102, a 3, b 80 mm.
    #[must_use]
    pub fn preset() -> Self {
        let bore = Trochoid { eccentricity: 15.0, radius: 102.0, offset: 3.0 };
        Self { bore, housing_width: Length::new::<millimeter>(80.0) }
    }

    /// The eccentricity e: from the shaft's axis to the rotor's centre.
    #[must_use]
    pub fn eccentricity(&self) -> Length {
        Length::new::<millimeter>(self.bore.eccentricity)
    }

    /// The generating radius R: from the rotor's centre to the centre of an apex seal's nose.
    #[must_use]
    pub fn generating_radius(&self) -> Length {
        Length::new::<millimeter>(self.bore.radius)
    }

    /// The apex-seal offset a: the radius of the seal's nose.
    #[must_use]
    pub fn apex_seal_offset(&self) -> Length {
        Length::new::<millimeter>(self.bore.offset)
    }

    /// The housing's width b.
    #[must_use]
    pub const fn housing_width(&self) -> Length {
        self.housing_width
    }

    /// The bore.
    #[must_use]
    pub const fn bore(&self) -> Trochoid {
        self.bore
    }
}

/// What is wrong with the shape as a whole: the first thing only, as the rest would follow from it.
fn shape_fault(bore: Trochoid) -> Option<GeometryFault> {
    let mm = Length::new::<millimeter>;
    let Trochoid { eccentricity: e, radius: r, offset } = bore;
    let waist = (r - 3.0 * e).powi(2) / (9.0 * e - r);
    if r <= 3.0 * e {
        Some(GeometryFault::BoreCrosses { radius: mm(r), least: mm(3.0 * e) })
    } else if r < 4.5 * e {
        Some(GeometryFault::FlankHollow { radius: mm(r), least: mm(4.5 * e) })
    } else if r < 9.0 * e && offset >= waist {
        Some(GeometryFault::OffsetTooLarge { offset: mm(offset), waist: mm(waist) })
    } else {
        None
    }
}
