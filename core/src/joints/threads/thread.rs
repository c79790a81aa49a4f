//! A thread, and what follows from its diameter and pitch.

use super::{Drill, metric_rows, nearest_drills, unified_rows};
use crate::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::translated;
use std::fmt;
use uom::si::f64::{Area, Length, Ratio};
use uom::si::length::millimeter;
use uom::si::ratio::ratio;

/// The family a thread belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Series {
    /// ISO metric, the pitch that goes without saying.
    MetricCoarse,
    /// ISO metric, a finer pitch.
    MetricFine,
    /// Unified coarse.
    Unc,
    /// Unified fine.
    Unf,
    /// Unified with a constant number of threads to the inch.
    Un,
}

impl Series {
    /// Metric, not inch.
    #[must_use]
    pub fn is_metric(self) -> bool {
        matches!(self, Self::MetricCoarse | Self::MetricFine)
    }

    /// As it stands behind a size; empty for metric threads.
    #[must_use]
    #[translated]
    pub fn symbol(self) -> &'static str {
        match self {
            Self::MetricCoarse | Self::MetricFine => "",
            Self::Unc => "UNC",
            Self::Unf => "UNF",
            Self::Un => "UN",
        }
    }
}

/// A pitch as the tables give it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Pitch {
    Micrometres(u16),
    PerInch(u8),
}

/// A diameter as the tables give it: a fraction of a unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Size(i64, i64, Unit);

pub(super) const fn mm(whole: i64) -> Size {
    Size(whole, 1, Unit::Millimetre)
}

pub(super) const fn inch(numerator: i64, denominator: i64) -> Size {
    Size(numerator, denominator, Unit::Inch)
}

/// A row of the tables: series, diameter, pitch, tap drill, stress area as printed (mm² or in²).
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Row(
    pub(super) Series,
    pub(super) Size,
    pub(super) Pitch,
    pub(super) Drill,
    pub(super) &'static str,
);

/// A thread of the tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Thread(&'static Row);

/// Twice the depth of a full thread over its pitch, as drill charts reckon it: 2 · (3/4) · (√3/2).
const FULL_ENGAGEMENT: f64 = 1.299_038_105_676_658;

/// Shares of a full thread that a tap still cuts and that still hold. Common practice, no source.
const USEFUL: std::ops::RangeInclusive<f64> = 0.5..=0.9;

impl Thread {
    /// Every thread of the tables, metric first.
    pub fn all() -> impl Iterator<Item = Self> {
        metric_rows::ROWS.iter().chain(unified_rows::ROWS).map(Self)
    }

    /// The thread of a size and pitch written as [`Thread::name`] writes it.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::all().find(|thread| thread.name() == name)
    }

    /// The family.
    #[must_use]
    pub fn series(self) -> Series {
        self.0.0
    }

    /// `M10 × 1.25`, `7/16-20 UNF`. A coarse metric thread is named with its pitch too.
    #[must_use]
    pub fn name(self) -> String {
        match self.0.2 {
            Pitch::Micrometres(_) => {
                let pitch = self.pitch().exact_figure(Unit::Millimetre, 3).unwrap_or_default();
                format!("{} × {pitch}", self.size_name())
            }
            Pitch::PerInch(count) => {
                format!("{}-{count} {}", self.size_name(), self.series().symbol())
            }
        }
    }

    /// The size alone: `M10`, `7/16`, `1 1/16`.
    #[must_use]
    pub fn size_name(self) -> String {
        let Size(above, below, unit) = self.0.1;
        if unit == Unit::Millimetre {
            format!("M{above}")
        } else if above > below {
            format!("{} {}/{below}", above / below, above % below)
        } else {
            format!("{above}/{below}")
        }
    }

    /// The nominal (outside) diameter, exactly.
    #[must_use]
    pub fn diameter(self) -> Amount {
        let Size(above, below, unit) = self.0.1;
        // Every fraction in the tables is a whole number of ticks; the tests read all of them.
        Amount::exact(above, below, unit).unwrap_or_else(|| Amount::whole(0, unit))
    }

    /// The pitch; exact for metric threads, to the nearest 0.1 nm for inch threads.
    #[must_use]
    pub fn pitch(self) -> Amount {
        let none = Amount::whole(0, Unit::Millimetre);
        match self.0.2 {
            Pitch::Micrometres(count) => Amount::whole(count.into(), Unit::Micrometre),
            Pitch::PerInch(count) => {
                Amount::nearest(1.0 / f64::from(count), Unit::Inch).unwrap_or(none)
            }
        }
    }

    /// Threads on an inch; none for metric threads.
    #[must_use]
    pub fn threads_per_inch(self) -> Option<u8> {
        match self.0.2 {
            Pitch::Micrometres(_) => None,
            Pitch::PerInch(count) => Some(count),
        }
    }

    /// Basic pitch diameter, d − (3√3/8)·P (ISO 724, ASME B1.1).
    #[must_use]
    pub fn pitch_diameter(self) -> Length {
        self.less_pitches(FULL_ENGAGEMENT / 2.0)
    }

    /// Basic minor diameter of the nut's thread, d − (5√3/8)·P (ISO 724, ASME B1.1).
    #[must_use]
    pub fn minor_diameter(self) -> Length {
        self.less_pitches(1.082_531_754_730_548)
    }

    /// Stress area: (π/4)(d − 0.9382 P)² for metric threads (ISO 898-1), (π/4)(d − 0.9743 P)² for
    /// inch threads (ASME B1.1). The two rules are not interchangeable.
    #[must_use]
    pub fn stress_area(self) -> Area {
        let depth = if self.series().is_metric() { 0.9382 } else { 0.9743 };
        let diameter = self.less_pitches(depth);
        diameter * diameter * std::f64::consts::FRAC_PI_4
    }

    /// The stress area as its standard prints it, and the unit it is printed in.
    #[must_use]
    pub fn printed_stress_area(self) -> (&'static str, &'static str) {
        (self.0.4, if self.series().is_metric() { "mm²" } else { "in²" })
    }

    /// The tap drill of the table.
    #[must_use]
    pub fn tap_drill(self) -> Drill {
        self.0.3
    }

    /// The greatest minor diameter of a nut's thread: of class 2B (ASME B1.1: basic minor diameter and
    /// 0.25 P − 0.4 P², in inches, to the nearest thousandth as it is printed), or of 6H (ISO 965-1, from memory).
    #[must_use]
    pub fn greatest_minor_diameter(self) -> Length {
        let basic = self.minor_diameter().get::<millimeter>();
        let most = match self.0.2 {
            Pitch::Micrometres(pitch) => basic + metric_rows::minor_tolerance(pitch),
            Pitch::PerInch(count) => {
                let pitch = 1.0 / f64::from(count);
                let inches = basic / 25.4 + 0.25 * pitch - 0.4 * pitch * pitch;
                (inches * 1000.0).round() * 0.0254
            }
        };
        Length::new::<millimeter>(most)
    }

    /// What is to be said of a drill that is larger than the thread's own limit lets its minor diameter be.
    #[must_use]
    #[translated]
    pub fn past_minor(self, drill: Drill) -> Option<String> {
        let most = self.greatest_minor_diameter();
        if drill.diameter()?.length()? <= most {
            return None;
        }
        let class = if self.series().is_metric() { "6H" } else { "2B" };
        let most = Amount::of_length(most)?;
        let (mm, inch) = (
            most.show(Unit::Millimetre, 2, Rounding::Down),
            most.show(Unit::Inch, 3, Rounding::Nearest),
        );
        Some(format!(
            "{} is larger than the greatest minor diameter of class {class}, {mm} mm ({inch} in): the thread is out of its limits.",
            drill.said()
        ))
    }

    /// The share of a full thread a hole leaves: (D − hole) / (0.75·√3·P). Above 1 or below 0 where
    /// the hole is too small or larger than the thread.
    #[must_use]
    pub fn engagement(self, hole: Length) -> Ratio {
        (length(self.diameter()) - hole) / (FULL_ENGAGEMENT * length(self.pitch()))
    }

    /// The drills to tap it after: its own, then those near it that leave a useful share of a full thread,
    /// with that share.
    #[must_use]
    pub fn tap_drills(self) -> Vec<(Drill, Ratio)> {
        let own = self.tap_drill();
        let near = own.diameter().map(nearest_drills).unwrap_or_default();
        let others = near.into_iter().map(|(drill, _)| drill).filter(|drill| *drill != own);
        std::iter::once(own)
            .chain(others)
            .filter_map(|drill| {
                let engagement = self.engagement(drill.diameter()?.length()?);
                USEFUL.contains(&engagement.get::<ratio>()).then_some((drill, engagement))
            })
            .collect()
    }

    fn less_pitches(self, count: f64) -> Length {
        length(self.diameter()) - count * length(self.pitch())
    }
}

impl fmt::Display for Thread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.name())
    }
}

/// An amount known to be a length.
pub(in crate::joints) fn length(amount: Amount) -> Length {
    Length::new::<millimeter>(amount.value(Unit::Millimetre))
}
