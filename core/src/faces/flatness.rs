//! Flatness: how far apart two parallel planes must be to hold every reading of a face.
//!
//! Terms after ISO 12781-1:2011. DIFFERENCE: distances are taken along the gauge's spindle, not square
//! to the planes; on a face set up to within 1 mm over 200 mm the two differ by 13 parts in a million.

use super::Refusal;
use super::input::{PLACE, all_taken, extremes, mm, of_mm};
use super::least_squares::{self, Fit};
use super::minimum_zone::minimum_zone;
use super::support::shares;
use super::uncertainty::{Doubt, Measured};
use crate::quantity::Bounds;
use uom::si::f64::Length;

/// A reading of a face: where, and how high.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: Length,
    /// Up the face.
    pub y: Length,
    /// Height along the gauge's spindle; higher stands out of the face.
    pub z: Length,
}

/// The plane that heights are counted from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reference {
    /// Midway in the minimum zone: the least flatness any plane gives, and the one the standard means.
    MinimumZone,
    /// The plane of least squares.
    LeastSquares,
    /// The plane through three places, as when a face is levelled on three jacks.
    Corners([usize; 3]),
}

/// The form of a face against a reference plane.
#[derive(Clone, Debug, PartialEq)]
pub struct Flatness {
    value: Length,
    deviations: Vec<Length>,
    /// How much the value sways with each reading that it rests on.
    weights: Vec<(usize, f64)>,
}

/// Finds the flatness of at least four readings, not on one line.
///
/// # Errors
/// [`Refusal::TooFew`], [`Refusal::OneLine`], [`Refusal::OutOfBounds`] (places within a metre,
/// heights within [`Bounds::HEIGHT`]) and [`Refusal::NoCorners`].
///
/// # Examples
/// *A spot in the middle of three jacks, 0.02 mm proud:*
/// ```
/// use pitleaf_core::faces::{Point, Reference, flatness};
/// use uom::si::{f64::Length, length::millimeter};
/// let points = [(0.0, 0.0, 0.0), (100.0, 0.0, 0.0), (50.0, 86.6, 0.0), (50.0, 28.9, 0.02)]
///     .map(|(x, y, z)| Point {
///         x: Length::new::<millimeter>(x),
///         y: Length::new::<millimeter>(y),
///         z: Length::new::<millimeter>(z),
///     });
/// let flatness = flatness(&points, Reference::MinimumZone)?;
/// assert!((flatness.value().get::<millimeter>() - 0.02).abs() < 1e-12);
/// assert_eq!(flatness.highest(), 3);
/// # Ok::<(), pitleaf_core::faces::Refusal>(())
/// ```
pub fn flatness(points: &[Point], reference: Reference) -> Result<Flatness, Refusal> {
    const NEEDED: usize = 4;
    if points.len() < NEEDED {
        return Err(Refusal::TooFew { found: "flatness", given: points.len(), needed: NEEDED });
    }
    let levelled = Levelled::of(points)?;
    Ok(match reference {
        Reference::MinimumZone => levelled.within_minimum_zone(),
        Reference::LeastSquares => levelled.over_least_squares(),
        Reference::Corners(corners) => levelled.over_corners(corners)?,
    })
}

/// Three places far apart, to level a face on when none are named.
///
/// # Errors
/// As [`flatness`].
pub fn far_corners(points: &[Point]) -> Result<[usize; 3], Refusal> {
    Levelled::of(points).map(|levelled| levelled.corners)
}

impl Flatness {
    /// The flatness: highest less lowest deviation.
    #[must_use]
    pub fn value(&self) -> Length {
        self.value
    }

    /// The height of each reading over the reference plane, in the order given.
    #[must_use]
    pub fn deviations(&self) -> &[Length] {
        &self.deviations
    }

    /// The points with their deviations as heights, for a relief; `points` are those it was found from.
    #[must_use]
    pub fn levelled(&self, points: &[Point]) -> Vec<Point> {
        points.iter().zip(&self.deviations).map(|(point, &z)| Point { z, ..*point }).collect()
    }

    /// How far a place lies under the highest; none without such a place.
    #[must_use]
    pub fn under_highest(&self, place: usize) -> Option<Length> {
        let highest = of_mm(self.extremes().1.1);
        self.deviations.get(place).map(|&deviation| highest - deviation)
    }

    /// The highest place, the first of equals.
    #[must_use]
    pub fn highest(&self) -> usize {
        self.extremes().1.0
    }

    /// The lowest place, the first of equals.
    #[must_use]
    pub fn lowest(&self) -> usize {
        self.extremes().0.0
    }

    /// The place farthest from the reference plane, up or down.
    #[must_use]
    pub fn worst(&self) -> usize {
        let (lowest, highest) = self.extremes();
        if lowest.1.abs() > highest.1.abs() { lowest.0 } else { highest.0 }
    }

    /// All places no farther than `within` below the highest, highest first.
    #[must_use]
    pub fn high_spots(&self, within: Length) -> Vec<usize> {
        let highest = self.extremes().1.1;
        self.spots(|deviation| highest - deviation, within)
    }

    /// All places no farther than `within` above the lowest, lowest first.
    #[must_use]
    pub fn low_spots(&self, within: Length) -> Vec<usize> {
        let lowest = self.extremes().0.1;
        self.spots(|deviation| deviation - lowest, within)
    }

    /// The value with its standard uncertainty, from the doubt of the readings.
    ///
    /// Propagated by JCGM 100:2008, 5.1.2 through the readings the value rests on. The noise that makes
    /// a true plane look hollow is not in it: a flatness of the order of the gauge's own step is none.
    #[must_use]
    pub fn measured(&self, doubt: &Doubt) -> Measured {
        let squares: f64 = self.weights.iter().map(|(_, weight)| weight * weight).sum();
        Measured { value: self.value, uncertainty: doubt.single() * squares.sqrt() }
    }

    fn extremes(&self) -> ((usize, f64), (usize, f64)) {
        extremes(&self.deviations.iter().copied().map(mm).collect::<Vec<_>>())
    }

    fn spots(&self, from_edge: impl Fn(f64) -> f64, within: Length) -> Vec<usize> {
        let mut spots: Vec<(f64, usize)> = self
            .deviations
            .iter()
            .enumerate()
            .map(|(place, &deviation)| (from_edge(mm(deviation)), place))
            .filter(|&(distance, _)| distance <= mm(within))
            .collect();
        spots.sort_by(|one, other| one.0.total_cmp(&other.0));
        spots.into_iter().map(|(_, place)| place).collect()
    }
}

/// Readings with the plane of least squares taken off, their places centred and of size 1.
struct Levelled {
    points: Vec<[f64; 3]>,
    fit: Fit<3>,
    corners: [usize; 3],
}

impl Levelled {
    fn of(points: &[Point]) -> Result<Self, Refusal> {
        let all = |part: fn(&Point) -> Length, bounds| {
            all_taken(&points.iter().map(part).collect::<Vec<_>>(), bounds, "flatness", 3)
        };
        let x = centred(&all(|point| point.x, &PLACE)?);
        let y = centred(&all(|point| point.y, &PLACE)?);
        let z = all(|point| point.z, &Bounds::HEIGHT)?;
        let size = x.iter().chain(&y).fold(0.0_f64, |most, part| most.max(part.abs()));
        let flat: Vec<[f64; 2]> = x.iter().zip(&y).map(|(x, y)| [x / size, y / size]).collect();
        let corners = corners(&flat).ok_or(Refusal::OneLine)?;
        let rows: Vec<[f64; 3]> = flat.iter().map(|&[x, y]| [1.0, x, y]).collect();
        let fit = least_squares::fit(&rows, &z).ok_or(Refusal::OneLine)?;
        let points =
            rows.iter().zip(&z).map(|(row, z)| [row[1], row[2], z - fit.at(row)]).collect();
        Ok(Self { points, fit, corners })
    }

    fn within_minimum_zone(&self) -> Flatness {
        let zone = minimum_zone(&self.points, self.corners);
        let over: Vec<f64> =
            self.points.iter().map(|[x, y, z]| z - zone.slope[0] * x - zone.slope[1] * y).collect();
        let ((_, low), (_, high)) = extremes(&over);
        let middle = f64::midpoint(low, high);
        let deviations = over.into_iter().map(|over| over - middle).collect();
        Flatness::new(deviations, zone.weights)
    }

    fn over_least_squares(&self) -> Flatness {
        let deviations: Vec<f64> = self.points.iter().map(|point| point[2]).collect();
        let ((low, _), (high, _)) = extremes(&deviations);
        let row = |place: usize| [1.0, self.points[place][0], self.points[place][1]];
        let weights = (0..self.points.len())
            .map(|place| {
                let own = f64::from(u8::from(place == high)) - f64::from(u8::from(place == low));
                let sway =
                    self.fit.sway(&row(high), &row(place)) - self.fit.sway(&row(low), &row(place));
                (place, own - sway)
            })
            .collect();
        Flatness::new(deviations, weights)
    }

    fn over_corners(&self, corners: [usize; 3]) -> Result<Flatness, Refusal> {
        let points = &self.points;
        if corners.iter().any(|&corner| corner >= points.len()) {
            return Err(Refusal::NoCorners);
        }
        let over = |place: usize| -> Option<(f64, [f64; 3])> {
            let shares = shares(points, corners, place)?;
            let plane: f64 =
                corners.iter().zip(shares).map(|(&corner, share)| share * points[corner][2]).sum();
            Some((points[place][2] - plane, shares))
        };
        let over: Vec<(f64, [f64; 3])> =
            (0..points.len()).map(over).collect::<Option<_>>().ok_or(Refusal::NoCorners)?;
        let deviations: Vec<f64> = over.iter().map(|over| over.0).collect();
        let ((low, _), (high, _)) = extremes(&deviations);
        let mut weights: Vec<(usize, f64)> = (0..3)
            .map(|corner| (corners[corner], over[low].1[corner] - over[high].1[corner]))
            .collect();
        for (place, own) in [(high, 1.0), (low, -1.0)] {
            // A corner that is itself an extreme: its own weight and its share in the plane add up.
            match weights.iter_mut().find(|(corner, _)| *corner == place) {
                Some((_, weight)) => *weight += own,
                None => weights.push((place, own)),
            }
        }
        Ok(Flatness::new(deviations, weights))
    }
}

impl Flatness {
    fn new(deviations: Vec<f64>, weights: Vec<(usize, f64)>) -> Self {
        let ((_, low), (_, high)) = extremes(&deviations);
        Self {
            value: of_mm(high - low),
            deviations: deviations.into_iter().map(of_mm).collect(),
            weights,
        }
    }
}

fn centred(values: &[f64]) -> Vec<f64> {
    let ((_, least), (_, greatest)) = extremes(values);
    let middle = f64::midpoint(least, greatest);
    values.iter().map(|value| value - middle).collect()
}

/// Three places far apart; none where all lie on one line.
fn corners(flat: &[[f64; 2]]) -> Option<[usize; 3]> {
    /// The least height of their triangle over its length.
    const SLIMMEST: f64 = 1e-3;
    let far = |size: &dyn Fn([f64; 2]) -> f64| {
        extremes(&flat.iter().map(|&place| size(place)).collect::<Vec<_>>()).1.0
    };
    let a = far(&|place| place[0].hypot(place[1]));
    let from_a = |place: [f64; 2]| [place[0] - flat[a][0], place[1] - flat[a][1]];
    let b = far(&|place| from_a(place)[0].hypot(from_a(place)[1]));
    let along = from_a(flat[b]);
    let off = |place: [f64; 2]| (along[0] * from_a(place)[1] - along[1] * from_a(place)[0]).abs();
    let c = far(&off);
    let length = along[0].hypot(along[1]);
    (length > 0.0 && off(flat[c]) >= SLIMMEST * length * length).then_some([a, b, c])
}
