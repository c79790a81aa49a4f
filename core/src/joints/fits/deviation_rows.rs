//! ISO 286-1:2010, tables 1 to 5, sizes above 1 and up to 250 mm, in micrometres. The standard's first step
//! begins at nothing; up to 1 mm some classes are not to be used, so it begins at 1 here.
//!
//! Published in agreeing transcriptions for most sizes, the rest from memory; the tests hold every
//! row against the standard's own rules.

/// A range of sizes with one set of tolerances.
pub(super) struct Step {
    /// Above, mm.
    pub(super) over: i64,
    /// Up to and with, mm.
    pub(super) to: i64,
    /// IT5 to IT11.
    pub(super) tolerance: [i32; 7],
    /// Δ for grades 5 to 8, added to the deviation of holes K to S.
    pub(super) delta: [i32; 4],
    /// Upper deviations of shafts d, e, f, g.
    pub(super) d_to_g: [i32; 4],
    /// Lower deviation of shaft j in grades 5 and 6, in grade 7, and in grade 8 where there is one.
    pub(super) j: &'static [i32],
    /// Lower deviations of shafts k (grades 5 to 7), m, n, p.
    pub(super) k_to_p: [i32; 4],
    /// Upper deviation of hole J in grades 6, 7, 8.
    pub(super) hole_j: [i32; 3],
    /// Upper deviations of holes K and N above grade 8, where they keep one.
    pub(super) k_n_above_8: Option<[i32; 2]>,
}

/// A range of sizes with one deviation of r and of s.
pub(super) struct FineStep {
    /// Above, mm.
    pub(super) over: i64,
    /// Up to and with, mm.
    pub(super) to: i64,
    /// Lower deviation of shaft r.
    pub(super) r: i32,
    /// Lower deviation of shaft s.
    pub(super) s: i32,
}

pub(super) const STEPS: [Step; 10] = [
    Step {
        over: 1,
        to: 3,
        tolerance: [4, 6, 10, 14, 25, 40, 60],
        delta: [0, 0, 0, 0],
        d_to_g: [-20, -14, -6, -2],
        j: &[-2, -4, -6],
        k_to_p: [0, 2, 4, 6],
        hole_j: [2, 4, 6],
        k_n_above_8: Some([0, -4]),
    },
    Step {
        over: 3,
        to: 6,
        tolerance: [5, 8, 12, 18, 30, 48, 75],
        delta: [1, 3, 4, 6],
        d_to_g: [-30, -20, -10, -4],
        j: &[-2, -4],
        k_to_p: [1, 4, 8, 12],
        hole_j: [5, 6, 10],
        k_n_above_8: None,
    },
    Step {
        over: 6,
        to: 10,
        tolerance: [6, 9, 15, 22, 36, 58, 90],
        delta: [2, 3, 6, 7],
        d_to_g: [-40, -25, -13, -5],
        j: &[-2, -5],
        k_to_p: [1, 6, 10, 15],
        hole_j: [5, 8, 12],
        k_n_above_8: None,
    },
    Step {
        over: 10,
        to: 18,
        tolerance: [8, 11, 18, 27, 43, 70, 110],
        delta: [3, 3, 7, 9],
        d_to_g: [-50, -32, -16, -6],
        j: &[-3, -6],
        k_to_p: [1, 7, 12, 18],
        hole_j: [6, 10, 15],
        k_n_above_8: None,
    },
    Step {
        over: 18,
        to: 30,
        tolerance: [9, 13, 21, 33, 52, 84, 130],
        delta: [3, 4, 8, 12],
        d_to_g: [-65, -40, -20, -7],
        j: &[-4, -8],
        k_to_p: [2, 8, 15, 22],
        hole_j: [8, 12, 20],
        k_n_above_8: None,
    },
    Step {
        over: 30,
        to: 50,
        tolerance: [11, 16, 25, 39, 62, 100, 160],
        delta: [4, 5, 9, 14],
        d_to_g: [-80, -50, -25, -9],
        j: &[-5, -10],
        k_to_p: [2, 9, 17, 26],
        hole_j: [10, 14, 24],
        k_n_above_8: None,
    },
    Step {
        over: 50,
        to: 80,
        tolerance: [13, 19, 30, 46, 74, 120, 190],
        delta: [5, 6, 11, 16],
        d_to_g: [-100, -60, -30, -10],
        j: &[-7, -12],
        k_to_p: [2, 11, 20, 32],
        hole_j: [13, 18, 28],
        k_n_above_8: None,
    },
    Step {
        over: 80,
        to: 120,
        tolerance: [15, 22, 35, 54, 87, 140, 220],
        delta: [5, 7, 13, 19],
        d_to_g: [-120, -72, -36, -12],
        j: &[-9, -15],
        k_to_p: [3, 13, 23, 37],
        hole_j: [16, 22, 34],
        k_n_above_8: None,
    },
    Step {
        over: 120,
        to: 180,
        tolerance: [18, 25, 40, 63, 100, 160, 250],
        delta: [6, 7, 15, 23],
        d_to_g: [-145, -85, -43, -14],
        j: &[-11, -18],
        k_to_p: [3, 15, 27, 43],
        hole_j: [18, 26, 41],
        k_n_above_8: None,
    },
    Step {
        over: 180,
        to: 250,
        tolerance: [20, 29, 46, 72, 115, 185, 290],
        delta: [6, 9, 17, 26],
        d_to_g: [-170, -100, -50, -15],
        j: &[-13, -21],
        k_to_p: [4, 17, 31, 50],
        hole_j: [22, 30, 47],
        k_n_above_8: None,
    },
];

pub(super) const FINE_STEPS: [FineStep; 16] = [
    FineStep { over: 1, to: 3, r: 10, s: 14 },
    FineStep { over: 3, to: 6, r: 15, s: 19 },
    FineStep { over: 6, to: 10, r: 19, s: 23 },
    FineStep { over: 10, to: 18, r: 23, s: 28 },
    FineStep { over: 18, to: 30, r: 28, s: 35 },
    FineStep { over: 30, to: 50, r: 34, s: 43 },
    FineStep { over: 50, to: 65, r: 41, s: 53 },
    FineStep { over: 65, to: 80, r: 43, s: 59 },
    FineStep { over: 80, to: 100, r: 51, s: 71 },
    FineStep { over: 100, to: 120, r: 54, s: 79 },
    FineStep { over: 120, to: 140, r: 63, s: 92 },
    FineStep { over: 140, to: 160, r: 65, s: 100 },
    FineStep { over: 160, to: 180, r: 68, s: 108 },
    FineStep { over: 180, to: 200, r: 77, s: 122 },
    FineStep { over: 200, to: 225, r: 80, s: 130 },
    FineStep { over: 225, to: 250, r: 84, s: 140 },
];
