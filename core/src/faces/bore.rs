//! Bores and journals read at several places and directions: out-of-round, taper, bearing clearance.
//!
//! A two-point gauge sees no lobes of an odd number: a bore that reads round all the way may still be
//! three-lobed. A circle through points taken on a rotary table shows it (`least_squares_circle`).

use super::Refusal;
use super::clearance::{Clearance, Sizes};
use super::input::{DIAMETER, all_taken, count, extremes, mean, mm, of_mm};
use super::uncertainty::{Doubt, Measured};
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// A bore or a journal, from its diameters.
#[derive(Clone, Debug, PartialEq)]
pub struct Cylinder {
    /// Least, mean and greatest diameter.
    pub sizes: Sizes,
    /// Greatest less least diameter at each place along it.
    pub out_of_round: Vec<Length>,
    /// The place that is most out of round, the first of equals.
    pub worst_place: usize,
    /// The greatest less the least of the places' mean diameters; none with one place.
    pub taper: Option<Measured>,
    /// Where the least diameter is: place and direction.
    pub least_at: (usize, usize),
    /// Where the greatest is.
    pub greatest_at: (usize, usize),
}

/// Sums up the diameters of a bore or a journal: a list of directions for each place along it.
///
/// The gauge's error stays in every mean; for the taper each place counts as measured by itself, which
/// errs on the careful side.
///
/// # Errors
/// [`Refusal::TooFew`] without a place or with under two directions at one; [`Refusal::OutOfBounds`]
/// (diameters 1 to 500 mm), readings counted through all places.
#[translated]
pub fn cylinder(places: &[Vec<Length>], doubt: &Doubt) -> Result<Cylinder, Refusal> {
    const DIRECTIONS: usize = 2;
    if places.is_empty() {
        return Err(Refusal::TooFew { found: "a diameter", given: 0, needed: DIRECTIONS });
    }
    let doubt = doubt.taken()?;
    let single = mm(doubt.single());
    let mut before = 0;
    let mut diameters = Vec::with_capacity(places.len());
    for directions in places {
        let found = "out-of-round at one place";
        let place = all_taken(directions, &DIAMETER, found, DIRECTIONS);
        diameters.push(place.map_err(|refusal| refusal.counted_from(before))?);
        before += directions.len();
    }
    let ranges: Vec<_> = diameters.iter().map(|place| extremes(place)).collect();
    let means: Vec<f64> = diameters.iter().map(|place| mean(place)).collect();
    let round: Vec<f64> = ranges.iter().map(|(least, greatest)| greatest.1 - least.1).collect();
    let least: Vec<f64> = ranges.iter().map(|range| range.0.1).collect();
    let greatest: Vec<f64> = ranges.iter().map(|range| range.1.1).collect();
    let (thin, thick) = (extremes(&least).0, extremes(&greatest).1);
    let ((narrow, narrowest), (wide, widest)) = extremes(&means);
    let of_mean = |place: usize| doubt.of_mean(diameters[place].len());
    let taper_doubt = |place: usize| single / count(diameters[place].len()).sqrt();
    // The mean of all places weighs each place alike, however many directions it was read in.
    let shares: f64 = (0..means.len()).map(|place| mm(of_mean(place).scatter).powi(2)).sum();
    let scatter = shares.sqrt() / count(means.len());
    let measured = |value: f64, uncertainty: f64| Measured {
        value: of_mm(value),
        uncertainty: of_mm(uncertainty),
    };
    Ok(Cylinder {
        sizes: Sizes {
            least: measured(thin.1, single),
            mean: measured(mean(&means), scatter.hypot(mm(doubt.gauge))),
            greatest: measured(thick.1, single),
        },
        worst_place: extremes(&round).1.0,
        out_of_round: round.into_iter().map(of_mm).collect(),
        taper: (means.len() > 1)
            .then(|| measured(widest - narrowest, taper_doubt(narrow).hypot(taper_doubt(wide)))),
        least_at: (thin.0, ranges[thin.0].0.0),
        greatest_at: (thick.0, ranges[thick.0].1.0),
    })
}

/// The running clearance of a journal in its bearing, or, turned round, the interference of a pressed one.
#[must_use]
pub fn bearing_clearance(bore: &Cylinder, journal: &Cylinder) -> Clearance {
    Clearance::of(&bore.sizes, &journal.sizes)
}
