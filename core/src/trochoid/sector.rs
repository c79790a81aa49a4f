//! Length along a trochoid, and the area the radius sweeps, both exact at any angle.

use std::f64::consts::TAU;

use super::{Direction, Point, Trochoid};

/// Integrals along a trochoid, prepared so that one evaluation costs a short series.
///
/// The speed |R + 3e exp(2iα)| is expanded in cosines of 2nα. Its coefficients are products of the
/// binomial series of √(1 + z), and fall off like (3e/R)ⁿ.
#[derive(Debug, Clone)]
pub(crate) struct SectorArea {
    curve: Trochoid,
    series: Vec<f64>,
}

impl SectorArea {
    pub(crate) fn new(curve: Trochoid) -> Self {
        let q = 3.0 * curve.eccentricity / curve.radius;
        let mut powers = vec![1.0];
        let mut last = 1.0_f64;
        let mut order = 0.0;
        while last.abs() > 1e-17 {
            last *= q * (0.5 - order) / (order + 1.0);
            order += 1.0;
            powers.push(last);
        }
        let series = (0..powers.len())
            .map(|n| powers.iter().zip(&powers[n..]).map(|(a, b)| a * b).sum())
            .collect();
        Self { curve, series }
    }

    /// The length of the curve from 0 to α.
    pub(crate) fn length(&self, alpha: f64) -> f64 {
        self.generator_length(alpha) + self.curve.offset * self.curve.normal_angle(alpha)
    }

    /// The area swept by the line from `centre` to the curve, from one angle to another.
    pub(crate) fn area_about(&self, centre: Point, from: f64, to: f64) -> f64 {
        let chord = self.curve.at(to) - self.curve.at(from);
        self.area(from, to) - 0.5 * centre.cross(chord)
    }

    /// The area swept by the line from the origin to the curve, from one angle to another.
    pub(crate) fn area(&self, from: f64, to: f64) -> f64 {
        self.primitive(to) - self.primitive(from)
    }

    fn primitive(&self, alpha: f64) -> f64 {
        let Trochoid { eccentricity: e, radius: r, offset: a } = self.curve;
        let plain = 0.5 * (r * r + 3.0 * e * e) * alpha + e * r * (2.0 * alpha).sin();
        if a == 0.0 {
            return plain;
        }
        let turned = self.curve.normal_angle(alpha);
        let lever = -Direction::of(turned).cross(self.curve.generator(alpha));
        plain + a * (0.5 * lever + self.generator_length(alpha)) + 0.5 * a * a * turned
    }

    fn generator_length(&self, alpha: f64) -> f64 {
        // Σ cₙ sin(2nα)/n by the recurrence of sin(n·2α).
        let (sin, cos) = (2.0 * alpha).rem_euclid(TAU).sin_cos();
        let (mut before, mut now) = (0.0, sin);
        let mut sum = self.series[0] * alpha;
        let mut n = 1.0;
        for coefficient in &self.series[1..] {
            sum += coefficient * now / n;
            (before, now) = (now, 2.0 * cos * now - before);
            n += 1.0;
        }
        sum * self.curve.radius
    }
}
