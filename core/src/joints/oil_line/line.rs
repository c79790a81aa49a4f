//! Pressure and flow in a line of hose and fittings.

use super::fitting_rows::ROWS;
use crate::joints::bounds::{self, DENSITY, FLOW, LINE_BORE, LINE_LENGTH, OIL_PRESSURE, ROUGHNESS};
use crate::joints::{Assumption, Range, Refusal};
use crate::quantity::Amount;
use pitleaf_translated::translated;
use std::f64::consts::{FRAC_PI_4, LN_10};
use std::fmt;
use uom::si::f64::{KinematicViscosity, Length, MassDensity, Pressure, VolumeRate};
use uom::si::kinematic_viscosity::square_meter_per_second;
use uom::si::length::{meter, micrometer, millimeter};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::{bar, pascal};
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_minute};

/// A fitting of the tables.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fitting {
    /// The word it is kept by, the same in every language.
    pub word: &'static str,
    /// Its name.
    pub name: &'static str,
    smooth: f64,
    turbulent: f64,
    grows_in_small_bores: bool,
}

/// A line of one bore.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Inside diameter.
    pub bore: Length,
    /// Length.
    pub length: Length,
    /// Roughness of the wall: next to nothing for smooth hose and drawn tube.
    pub roughness: Length,
    /// Fittings, and how many of each.
    pub fittings: Vec<(Fitting, u32)>,
}

/// The oil as it is in the line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OilState {
    /// Kinematic viscosity at the line's temperature.
    pub viscosity: KinematicViscosity,
    /// Density.
    pub density: MassDensity,
}

/// How the oil runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Regime {
    /// In layers; Reynolds number below 2000.
    Laminar,
    /// Either may happen; 2000 to 4000.
    Transition,
    /// In eddies; above 4000.
    Turbulent,
}

/// What a flow costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drop {
    /// Reynolds number.
    pub reynolds: f64,
    /// How the oil runs.
    pub regime: Regime,
    /// The pressure lost; a range in the transition.
    pub pressure: Range<Pressure>,
    /// What decides most.
    pub weakest: Assumption,
}

/// Whether the pressure there is will push the flow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Feed {
    /// Even at the greatest drop.
    Enough,
    /// At the least drop, not at the greatest.
    Doubtful,
    /// Not even at the least drop.
    TooLittle,
}

impl Regime {
    /// In words.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Laminar => "in layers",
            Self::Transition => "between layers and eddies",
            Self::Turbulent => "in eddies",
        }
    }
}

impl fmt::Display for Feed {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Enough => "The pressure is enough for the flow.",
            Self::Doubtful => "The pressure may be enough, or not: count on the higher drop.",
            Self::TooLittle => {
                "The pressure is too little for the flow: a wider or shorter line, fewer elbows."
            }
        })
    }
}

impl Drop {
    /// What an available pressure makes of it.
    #[must_use]
    pub fn against(&self, available: Pressure) -> Feed {
        if self.pressure.greatest() <= available {
            Feed::Enough
        } else if self.pressure.least() <= available {
            Feed::Doubtful
        } else {
            Feed::TooLittle
        }
    }
}

const LAMINAR_BELOW: f64 = 2_000.0;
const TURBULENT_ABOVE: f64 = 4_000.0;

/// The fittings of the tables.
pub fn fittings() -> impl Iterator<Item = Fitting> {
    ROWS.iter().map(|row| Fitting {
        word: row.0,
        name: row.1,
        smooth: row.2,
        turbulent: row.3,
        grows_in_small_bores: row.4,
    })
}

impl Fitting {
    /// The fitting of the tables with a name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        fittings().find(|fitting| fitting.name == name)
    }

    fn coefficient(&self, reynolds: f64, bore: Length) -> f64 {
        let small = if self.grows_in_small_bores {
            Length::new::<millimeter>(25.4) / bore
        } else {
            0.0.into()
        };
        self.smooth / reynolds + self.turbulent * (1.0 + small.value)
    }
}

impl Line {
    /// The pressure a flow costs: (f·L/d + ΣK)·ρ·v²/2.
    ///
    /// f is 64/Re in laminar flow and Colebrook's in turbulent flow; in between the answer reaches from
    /// the one to the other.
    ///
    /// # Errors
    /// The line, the oil or the flow out of its bounds.
    pub fn drop(&self, oil: &OilState, flow: VolumeRate) -> Result<Drop, Refusal> {
        self.check(oil)?;
        bounds::check(&FLOW, flow.get::<liter_per_minute>() * 1000.0)?;
        Ok(self.lost(oil, flow.get::<cubic_meter_per_second>()))
    }

    /// The flow an available pressure gives: the least is sure, the greatest possible.
    ///
    /// # Errors
    /// The line or the oil out of its bounds, a pressure out of [`OIL_PRESSURE`];
    /// [`Refusal::BeyondFlow`] where the answer leaves [`FLOW`].
    pub fn flow(&self, oil: &OilState, available: Pressure) -> Result<Range<VolumeRate>, Refusal> {
        self.check(oil)?;
        bounds::check(&OIL_PRESSURE, available.get::<bar>())?;
        let sure = self.flow_where(oil, available, Range::greatest)?;
        let possible = self.flow_where(oil, available, Range::least)?;
        Ok(Range::exactly(sure).reaching(possible))
    }

    /// The greatest flow that still costs no more than is available, by halving: both ends of the drop
    /// rise with the flow.
    fn flow_where(
        &self,
        oil: &OilState,
        available: Pressure,
        end: impl Fn(Range<Pressure>) -> Pressure,
    ) -> Result<VolumeRate, Refusal> {
        const HALVINGS: u32 = 80;
        let edge =
            |bound: Amount| bound.flow().map_or(0.0, |flow| flow.get::<cubic_meter_per_second>());
        let (mut below, mut above) = (edge(FLOW.least()), edge(FLOW.greatest()));
        if end(self.lost(oil, below).pressure) > available
            || end(self.lost(oil, above).pressure) < available
        {
            return Err(Refusal::BeyondFlow);
        }
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(below, above);
            if end(self.lost(oil, middle).pressure) <= available {
                below = middle;
            } else {
                above = middle;
            }
        }
        Ok(VolumeRate::new::<cubic_meter_per_second>(below))
    }

    fn check(&self, oil: &OilState) -> Result<(), Refusal> {
        bounds::check(&LINE_BORE, self.bore.get::<millimeter>())?;
        bounds::check(&LINE_LENGTH, self.length.get::<millimeter>())?;
        bounds::check(&ROUGHNESS, self.roughness.get::<micrometer>())?;
        if self.roughness * 20.0 > self.bore {
            return Err(Refusal::TooRough);
        }
        let viscosity = oil.viscosity.get::<square_meter_per_second>() * 1e6;
        bounds::LINE_VISCOSITY.check(viscosity)?;
        DENSITY.check(oil.density.get::<kilogram_per_cubic_meter>())?;
        Ok(())
    }

    /// `flow` in m³/s.
    fn lost(&self, oil: &OilState, flow: f64) -> Drop {
        let bore = self.bore.get::<meter>();
        let speed = flow / (FRAC_PI_4 * bore * bore);
        let reynolds = speed * bore / oil.viscosity.get::<square_meter_per_second>();
        let head = oil.density.get::<kilogram_per_cubic_meter>() * speed * speed / 2.0;
        let fittings: f64 = self
            .fittings
            .iter()
            .map(|(fitting, count)| f64::from(*count) * fitting.coefficient(reynolds, self.bore))
            .sum();
        let lost = |friction: f64| {
            let wall = friction * self.length.get::<meter>() / bore;
            Pressure::new::<pascal>((wall + fittings) * head)
        };
        let laminar = 64.0 / reynolds;
        let rough = || colebrook(reynolds, (self.roughness / self.bore).value);
        let (regime, pressure) = if reynolds < LAMINAR_BELOW {
            (Regime::Laminar, Range::exactly(lost(laminar)))
        } else if reynolds > TURBULENT_ABOVE {
            (Regime::Turbulent, Range::exactly(lost(rough())))
        } else {
            (Regime::Transition, Range::exactly(lost(laminar)).reaching(lost(rough())))
        };
        let weakest =
            if regime == Regime::Transition { Assumption::Transition } else { Assumption::Inputs };
        Drop { reynolds, regime, pressure, weakest }
    }
}

/// Colebrook's friction factor: 1/√f = −2 lg(ε/3.7 + 2.51/(Re·√f)), by Newton's method on 1/√f.
fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    const STEPS: u32 = 20;
    let (rough, smooth) = (relative_roughness / 3.7, 2.51 / reynolds);
    // Smooth-pipe start, good to a few percent.
    let mut x = 1.8 * (reynolds / 6.9).log10();
    for _ in 0..STEPS {
        let inside = rough + smooth * x;
        let error = x + 2.0 * inside.log10();
        let slope = 1.0 + 2.0 * smooth / (inside * LN_10);
        x -= error / slope;
    }
    1.0 / (x * x)
}
