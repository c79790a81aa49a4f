//! Linear least squares for a handful of unknowns.
//!
//! Normal equations on columns of like size: at most seven unknowns on centred, scaled places, where
//! they lose no digit that matters; a matrix library would weigh more than all of this module.

/// The coefficients that leave the least sum of squares, and how they share the readings' noise.
pub(super) struct Fit<const N: usize> {
    /// The coefficients.
    pub(super) coefficients: [f64; N],
    /// (AᵀA)⁻¹: times the variance of one reading, the coefficients' covariance.
    pub(super) cofactor: [[f64; N]; N],
}

impl<const N: usize> Fit<N> {
    /// The model's value at a row.
    pub(super) fn at(&self, row: &[f64; N]) -> f64 {
        dot(&self.coefficients, row)
    }

    /// How much the reading at `other` sways the model at `row` (an entry of the hat matrix).
    pub(super) fn sway(&self, row: &[f64; N], other: &[f64; N]) -> f64 {
        self.cofactor.iter().zip(row).map(|(line, value)| value * dot(line, other)).sum()
    }
}

/// Fits `rows · coefficients ≈ values`; none where the rows leave a coefficient free.
pub(super) fn fit<const N: usize>(rows: &[[f64; N]], values: &[f64]) -> Option<Fit<N>> {
    let mut normal = [[0.0; N]; N];
    let mut right = [0.0; N];
    for (row, value) in rows.iter().zip(values) {
        for i in 0..N {
            right[i] += row[i] * value;
            for j in 0..N {
                normal[i][j] += row[i] * row[j];
            }
        }
    }
    let cofactor = inverse(normal)?;
    let coefficients = cofactor.map(|line| dot(&line, &right));
    Some(Fit { coefficients, cofactor })
}

/// The inverse of a symmetric positive matrix by elimination; none where it is singular.
fn inverse<const N: usize>(mut matrix: [[f64; N]; N]) -> Option<[[f64; N]; N]> {
    /// A pivot that has lost this much of its diagonal depends on the others.
    const SINGULAR: f64 = 1e-11;
    let diagonal: [f64; N] = std::array::from_fn(|i| matrix[i][i]);
    let mut inverse = [[0.0; N]; N];
    for (i, line) in inverse.iter_mut().enumerate() {
        line[i] = 1.0;
    }
    for i in 0..N {
        let pivot = matrix[i][i];
        // Positive definite: the diagonal is a good pivot as long as anything is left of it.
        if pivot.is_nan() || pivot <= diagonal[i] * SINGULAR {
            return None;
        }
        for j in 0..N {
            matrix[i][j] /= pivot;
            inverse[i][j] /= pivot;
        }
        for k in (0..N).filter(|&k| k != i) {
            let factor = matrix[k][i];
            for j in 0..N {
                matrix[k][j] -= factor * matrix[i][j];
                inverse[k][j] -= factor * inverse[i][j];
            }
        }
    }
    Some(inverse)
}

fn dot<const N: usize>(one: &[f64; N], other: &[f64; N]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}
