//! A port put into its plate: swept once, then asked at every shaft angle.

use std::num::NonZeroU32;

use uom::si::{
    angle::radian,
    area::square_millimeter,
    f64::{Angle, Area},
};

use super::{Outline, Port, PortFace, PortFigures, PortName, Shape, Sweep, TypedOutline};
use crate::trochoid::{Chamber, Engine};

/// Half a degree between the steps of a sweep.
const PER_TURN: NonZeroU32 = NonZeroU32::new(720).unwrap();

/// A port of a plate with its sweep and its figures.
#[derive(Debug, Clone)]
pub struct PlatePort {
    /// Which.
    pub name: PortName,
    /// Its shape in the housing frame.
    pub shape: Shape,
    /// The side port cut to the bore; none for one in the bore itself.
    pub port: Option<Port>,
    /// Its open area over the cycle.
    pub sweep: Sweep,
    /// Its figures.
    pub figures: PortFigures,
}

impl PlatePort {
    /// Puts an outline as typed into its plate.
    ///
    /// # Errors
    /// A sentence for everything that is wrong with it.
    pub fn new(typed: &TypedOutline, engine: &Engine, face: PortFace) -> Result<Self, Vec<String>> {
        let shape = typed.shape(engine, face.view)?;
        let (port, sweep, area) = match &shape {
            Shape::Side(outline) => {
                let port = Port::new(engine, outline, face.sealed_by)
                    .map_err(|fault| vec![fault.to_string()])?;
                let (sweep, area) = (port.sweep(PER_TURN), port.area());
                (Some(port), sweep, area)
            }
            Shape::Peripheral(port) => (None, port.sweep(PER_TURN), port.area()),
        };
        let figures = PortFigures::new(area, &sweep);
        Ok(Self { name: typed.port, shape, port, sweep, figures })
    }

    /// The outline of a side port.
    #[must_use]
    pub const fn outline(&self) -> Option<&Outline> {
        match &self.shape {
            Shape::Side(outline) => Some(outline),
            Shape::Peripheral(_) => None,
        }
    }

    /// The area open to each chamber at the shaft angle θ.
    #[must_use]
    pub fn open_now(&self, theta: Angle) -> [Area; 3] {
        match &self.port {
            Some(port) => port.open_areas(theta).areas(),
            None => Chamber::ALL.map(|chamber| {
                let first = (theta + chamber.lead()).get::<radian>();
                Area::new::<square_millimeter>(self.sweep.between(first))
            }),
        }
    }
}
