//! What holds a zone together: touching points whose weights, seen along z, balance.
//!
//! A point over a triangle or a chord of the other plane, or two chords where they cross. The width of the
//! zone is the weighted sum of their heights, whatever the slope of the planes: so no other planes can be
//! closer, and the weights are how the width sways with each reading.

/// A share this little outside its triangle or chord is binary noise.
const NOISE: f64 = 1e-9;

/// The weights of the touching points: those of the upper plane add up to 1, of the lower to −1.
///
/// None where nothing balances, or where only points right over each other do.
pub(super) fn support(
    points: &[[f64; 3]],
    low: &[usize],
    high: &[usize],
) -> Option<Vec<(usize, f64)>> {
    over(points, high, low, 1.0)
        .or_else(|| over(points, low, high, -1.0))
        .or_else(|| crossing(points, low, high))
}

/// One point over (or under) a triangle or a chord of the others.
fn over(
    points: &[[f64; 3]],
    lone: &[usize],
    others: &[usize],
    sign: f64,
) -> Option<Vec<(usize, f64)>> {
    lone.iter().find_map(|&point| {
        let on_triangle = |corners: [usize; 3]| {
            let shares = shares(points, corners, point)?;
            let inside = shares.iter().all(|&share| share >= -NOISE);
            inside.then(|| corners.into_iter().zip(shares).collect::<Vec<_>>())
        };
        let on_chord = |[from, to]: [usize; 2]| {
            let share = share(flat(points, from), flat(points, to), flat(points, point))?;
            Some(vec![(from, 1.0 - share), (to, share)])
        };
        let base =
            triples(others).find_map(on_triangle).or_else(|| pairs(others).find_map(on_chord))?;
        let base = base.into_iter().map(|(corner, share)| (corner, -sign * share));
        Some(std::iter::once((point, sign)).chain(base).collect())
    })
}

/// Two chords, one on each plane, that cross.
fn crossing(points: &[[f64; 3]], low: &[usize], high: &[usize]) -> Option<Vec<(usize, f64)>> {
    let within = |share: f64| (-NOISE..=1.0 + NOISE).contains(&share);
    pairs(high).find_map(|[a, b]| {
        pairs(low).find_map(|[c, d]| {
            let [from, to, left, right] = [a, b, c, d].map(|point| flat(points, point));
            let (at_from, at_to) = (turn(left, right, from), turn(left, right, to));
            let (at_left, at_right) = (turn(from, to, left), turn(from, to, right));
            let along = at_from / (at_from - at_to);
            let across = at_left / (at_left - at_right);
            (within(along) && within(across))
                .then(|| vec![(a, 1.0 - along), (b, along), (c, across - 1.0), (d, -across)])
        })
    })
}

/// How far along a chord a place on it lies, 0 to 1; none beside it.
fn share(from: [f64; 2], to: [f64; 2], at: [f64; 2]) -> Option<f64> {
    let along = [to[0] - from[0], to[1] - from[1]];
    let square = along[0] * along[0] + along[1] * along[1];
    let share = ((at[0] - from[0]) * along[0] + (at[1] - from[1]) * along[1]) / square;
    let beside = turn(from, to, at).abs() / square;
    (beside <= NOISE && (-NOISE..=1.0 + NOISE).contains(&share)).then_some(share)
}

/// The barycentric shares of a place in a triangle; none in a triangle without area.
pub(super) fn shares(points: &[[f64; 3]], corners: [usize; 3], at: usize) -> Option<[f64; 3]> {
    let [a, b, c] = corners.map(|corner| flat(points, corner));
    let at = flat(points, at);
    let area = turn(a, b, c);
    let shares = [turn(at, b, c) / area, turn(a, at, c) / area, turn(a, b, at) / area];
    shares.iter().all(|share| share.is_finite()).then_some(shares)
}

fn pairs(of: &[usize]) -> impl Iterator<Item = [usize; 2]> {
    (0..of.len()).flat_map(move |a| of[a + 1..].iter().map(move |&b| [of[a], b]))
}

fn triples(of: &[usize]) -> impl Iterator<Item = [usize; 3]> {
    (0..of.len()).flat_map(move |a| pairs(&of[a + 1..]).map(move |[b, c]| [of[a], b, c]))
}

fn flat(points: &[[f64; 3]], point: usize) -> [f64; 2] {
    [points[point][0], points[point][1]]
}

/// Twice the signed area of a triangle.
pub(super) fn turn(a: [f64; 2], b: [f64; 2], c: [f64; 2]) -> f64 {
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
}
