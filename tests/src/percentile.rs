//! Times that benchmarks measure in the page.

use serde_json::Value;

/// The time below which so many in a hundred lie.
///
/// # Panics
/// Nothing was measured.
#[must_use]
pub fn percentile(times: &Value, hundredths: usize) -> f64 {
    let mut times: Vec<f64> =
        times.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
    times.sort_by(f64::total_cmp);
    assert!(!times.is_empty(), "something was measured");
    times[(times.len() * hundredths).div_ceil(100).saturating_sub(1)]
}
