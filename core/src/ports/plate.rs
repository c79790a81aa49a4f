//! A port put into its plate: swept once, then asked at every shaft angle.

use std::num::NonZeroU32;

use uom::si::{
    angle::radian,
    area::square_millimeter,
    f64::{Angle, Area},
};

use super::sweep::Sweeping;
use super::{
    Outline, PeripheralPort, Port, PortFace, PortFigures, PortName, Seat, Shape, Sweep,
    TypedOutline,
};
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

/// A port on its way into its plate: it is swept so many steps at a time.
#[derive(Debug, Clone)]
pub struct SweptSoFar {
    name: PortName,
    begun: Begun,
}

#[derive(Debug, Clone)]
enum Begun {
    Side(Outline, Port, Sweeping),
    /// Swept in no time: nothing of it is worked out before.
    Peripheral(PeripheralPort),
}

impl SweptSoFar {
    /// Begins with an outline as typed, in a seat that may serve for many.
    ///
    /// # Errors
    /// A sentence for everything that is wrong with it.
    pub fn begin(
        typed: &TypedOutline,
        engine: &Engine,
        face: PortFace,
        seat: &Seat,
    ) -> Result<Self, Vec<String>> {
        let begun = match typed.shape(engine, face.view)? {
            Shape::Side(outline) => {
                let port = seat.port(&outline).map_err(|fault| vec![fault.to_string()])?;
                Begun::Side(outline, port, Sweeping::new(PER_TURN))
            }
            Shape::Peripheral(port) => Begun::Peripheral(port),
        };
        Ok(Self { name: typed.port, begun })
    }

    /// Goes on at most so many half degrees of the shaft. Whether that was the last of them.
    pub fn go_on(&mut self, steps: u32) -> bool {
        match &mut self.begun {
            Begun::Side(_, port, sweeping) => sweeping.go_on(port, steps),
            Begun::Peripheral(_) => true,
        }
    }

    /// The port in its plate; what is left of the sweep is done now.
    #[must_use]
    pub fn finish(self) -> PlatePort {
        let (shape, port, sweep, area) = match self.begun {
            Begun::Side(outline, port, mut sweeping) => {
                sweeping.go_on(&port, PER_TURN.get());
                let (sweep, area) = (sweeping.finish(&port), port.area());
                (Shape::Side(outline), Some(port), sweep, area)
            }
            Begun::Peripheral(port) => {
                let (sweep, area) = (port.sweep(PER_TURN), port.area());
                (Shape::Peripheral(port), None, sweep, area)
            }
        };
        let figures = PortFigures::new(area, &sweep);
        PlatePort { name: self.name, shape, port, sweep, figures }
    }
}

impl PlatePort {
    /// Puts an outline as typed into its plate.
    ///
    /// # Errors
    /// A sentence for everything that is wrong with it.
    pub fn new(typed: &TypedOutline, engine: &Engine, face: PortFace) -> Result<Self, Vec<String>> {
        let seat = Seat::new(engine, face.sealed_by);
        SweptSoFar::begin(typed, engine, face, &seat).map(SweptSoFar::finish)
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
