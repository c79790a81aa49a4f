//! Gauges: what a reading can be trusted to.

use super::decide::guard;
use super::usual_gauges::{USUAL, UsualGauge};
use super::{Edge, ErrorFault, GaugeKind, PermissibleError, Source};
use crate::quantity::{Amount, Dimension, Reading, Span, Unit};

/// A gauge with what can be said for it. The builder can change both figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gauge {
    /// Which kind.
    pub kind: GaugeKind,
    /// The finest step it shows; none where nothing is stated.
    pub resolution: Option<Span>,
    /// The greatest error its maker allows, either way; none where nothing is stated.
    pub permissible_error: Option<PermissibleError>,
}

impl Gauge {
    /// The builder's own gauge of a kind.
    #[must_use]
    pub fn own(
        kind: GaugeKind,
        resolution: &Edge,
        permissible_error: &PermissibleError<Edge>,
    ) -> Self {
        Self {
            kind,
            resolution: Some(resolution.size()),
            permissible_error: Some(permissible_error.spans()),
        }
    }

    /// The usual gauge of a kind; of one of which nothing is usual, a gauge with no doubt stated.
    #[must_use]
    pub fn usual(kind: GaugeKind) -> Self {
        let row = usual(kind);
        let steps = row.and_then(|row| Edge::read(row.steps, kind.unit()).ok());
        let error = row.and_then(|row| PermissibleError::read(row.error, kind.unit()).ok());
        Self {
            kind,
            resolution: steps.map(|steps| steps.size()),
            permissible_error: error.map(|error| error.spans()),
        }
    }

    /// Reads the two figures of a builder's own gauge of a kind as typed: its steps, and its error.
    ///
    /// # Errors
    /// Which of the two figures, and its [`ErrorFault`].
    pub fn read(
        kind: GaugeKind,
        steps: &str,
        error: &str,
    ) -> Result<(Edge, PermissibleError<Edge>), (GaugeFigure, ErrorFault)> {
        let steps = Edge::read(steps, kind.unit())
            .map_err(|fault| (GaugeFigure::Steps, ErrorFault::Size(fault)))?;
        let error = PermissibleError::read(error, kind.unit())
            .map_err(|fault| (GaugeFigure::Error, fault))?;
        let is_fixed = matches!(error, PermissibleError::Fixed(_));
        if kind.is_stamped() && !is_fixed {
            return Err((GaugeFigure::Error, ErrorFault::Leaf));
        }
        Ok((steps, error))
    }

    /// Where the usual figures of a kind are from: the standard they are remembered from, if there is one, and
    /// how sure they are; none where nothing is usual.
    #[must_use]
    pub fn usual_source(kind: GaugeKind) -> Option<(&'static str, Source)> {
        let UsualGauge { standard, .. } = usual(kind)?;
        let source = if standard.is_empty() { Source::CommonPractice } else { Source::FromMemory };
        Some((standard, source))
    }

    /// Whether anything is stated of its doubt in a dimension: without that no reading proves anything.
    #[must_use]
    pub fn is_stated(&self, dimension: Dimension) -> bool {
        let by_error = match self.permissible_error {
            Some(PermissibleError::Fixed(span) | PermissibleError::OfSpan(_, span)) => {
                span.dimension() == dimension
            }
            // A share needs no unit; what the gauge measures, its kind says.
            Some(PermissibleError::OfReading(_)) => self.kind.unit().dimension() == dimension,
            None => false,
        };
        by_error || self.resolution.is_some_and(|steps| steps.dimension() == dimension)
    }

    /// The standard uncertainty of a reading taken with it, in `unit`; nothing where no doubt is stated.
    ///
    /// Type B (JCGM 100:2008, 4.3.7): r/√12 for a resolution r, m/√3 for a greatest error ±m, added in squares.
    /// The doubt is the gauge's: more digits typed never make it less. Fewer digits than the gauge shows make
    /// it more, for what was left out is not known; but not of a leaf, whose figure is stamped on it.
    #[must_use]
    pub fn uncertainty(&self, reading: &Reading, unit: Unit) -> f64 {
        let (resolution, error) = (self.steps(reading, unit), self.error(reading.amount(), unit));
        (resolution * resolution / 12.0 + error * error / 3.0).sqrt()
    }

    /// The step a reading taken with it is good to, in `unit`.
    pub(crate) fn steps(&self, reading: &Reading, unit: Unit) -> f64 {
        let own = self.own_steps(unit);
        if !self.is_stated(unit.dimension()) || self.kind.is_stamped() {
            own
        } else {
            own.max(reading.step().value(unit))
        }
    }

    /// The finest step it shows, in `unit`.
    pub(crate) fn own_steps(&self, unit: Unit) -> f64 {
        let own = self.resolution.filter(|own| own.dimension() == unit.dimension());
        own.map_or(0.0, |own| own.value(unit))
    }

    /// The greatest error at a reading, in `unit`.
    pub(crate) fn error(&self, reading: Amount, unit: Unit) -> f64 {
        self.permissible_error.and_then(|error| error.at(reading, unit)).unwrap_or(0.0)
    }

    /// The guard band of a reading taken with it: how far inside an edge it must lie to prove it.
    #[must_use]
    pub fn guard(&self, reading: &Reading) -> Span {
        guard(self.uncertainty(reading, reading.unit()), reading.unit(), reading.step())
    }

    /// Its steps and its error as the builder would type them; empty where nothing is stated.
    #[must_use]
    pub fn texts(&self) -> [String; 2] {
        let unit = self.kind.unit();
        let steps = self.resolution.filter(|steps| steps.dimension() == unit.dimension());
        let steps = steps.map(|steps| format!("{} {}", steps.shortest(unit, 6), unit.symbol()));
        let error = self.permissible_error.map(|error| error.text(unit));
        [steps.unwrap_or_default(), error.unwrap_or_default()]
    }
}

/// Which figure of a gauge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GaugeFigure {
    /// Its steps.
    Steps,
    /// Its greatest error.
    Error,
}

fn usual(kind: GaugeKind) -> Option<&'static UsualGauge> {
    USUAL.iter().find(|row| row.kind == kind)
}
