//! Fittings by the two-K method: K = K₁/Re + K∞·(1 + 1/bore in inches); for entrance and exit
//! K = K₁/Re + K∞. It holds for smooth flow too, where a single K falls far short.
//!
//! W. B. Hooper, "The two-K method predicts head losses in pipe fittings", *Chemical Engineering*, 24
//! August 1981. Published in one transcription (the elbows, tees and valve); entrance and exit from
//! memory.

use pitleaf_translated::translated;

/// A fitting: the word it is kept by, name, K₁, K∞, whether K∞ grows in small bores.
#[translated]
pub(super) const ROWS: &[(&str, &str, f64, f64, bool)] = &[
    ("elbow-screwed", "Elbow 90°, screwed", 800.0, 0.40, true),
    ("elbow-swept", "Elbow 90°, swept", 800.0, 0.20, true),
    ("elbow-45", "Elbow 45°", 500.0, 0.20, true),
    ("tee-through", "Tee, straight through", 200.0, 0.10, true),
    ("tee-branch", "Tee, into the branch", 500.0, 0.70, true),
    ("ball-valve", "Ball valve, reduced", 500.0, 0.15, true),
    ("entrance", "Entrance, sharp", 160.0, 0.50, false),
    ("exit", "Exit", 0.0, 1.0, false),
];
