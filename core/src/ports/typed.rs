//! What the builder typed of a plate: which face, the outlines, the holes to lay a template on by.

use crate::{kept_fields, kept_words};
use pitleaf_translated::translated;
use std::fmt;

use uom::si::{
    angle::degree,
    f64::{Angle, Length},
    length::millimeter,
};

use super::{
    Corner, Datum, Form, Outline, PeripheralPort, PlugSide, Rotation, SealedBy, SeenFrom,
    SideHousing, View, on_bore, read_rows, rows::read_edges,
};
use crate::{
    quantity::{Bounds, Reading, Unit},
    trochoid::Engine,
};

/// What flows through a port.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Flow {
    /// Fresh charge.
    Intake,
    /// Burnt gas.
    Exhaust,
}

kept_words!(Flow {
    Intake = "intake",
    Exhaust = "exhaust",
});

/// Before the work or after it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Stage {
    /// As it came.
    Stock,
    /// As it is to be cut.
    Cut,
}

kept_words!(Stage {
    Stock = "stock",
    Cut = "cut",
});

/// Which outline.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct PortName {
    /// On which housing.
    pub housing: SideHousing,
    /// What flows through.
    pub flow: Flow,
    /// Primary 1, secondary 2.
    pub number: u8,
    /// Stock or cut.
    pub stage: Stage,
}

kept_fields!(PortName { housing, flow, number, stage });

impl PortName {
    /// Every outline a housing can have.
    pub fn all(housing: SideHousing) -> impl Iterator<Item = Self> {
        let numbers = [(Flow::Intake, 1), (Flow::Intake, 2), (Flow::Exhaust, 1)];
        numbers.into_iter().flat_map(move |(flow, number)| {
            [Stage::Stock, Stage::Cut].map(|stage| Self { housing, flow, number, stage })
        })
    }

    /// The name as one word of an address, `intake-1-cut`.
    #[must_use]
    pub fn word(self) -> String {
        let flow = match self.flow {
            Flow::Intake => "intake",
            Flow::Exhaust => "exhaust",
        };
        let stage = match self.stage {
            Stage::Stock => "stock",
            Stage::Cut => "cut",
        };
        format!("{flow}-{}-{stage}", self.number)
    }

    /// The same port before or after the work.
    #[must_use]
    pub const fn at(self, stage: Stage) -> Self {
        Self { stage, ..self }
    }

    /// The port without its stage: "Primary intake".
    #[must_use]
    #[translated]
    pub const fn port(self) -> &'static str {
        match (self.flow, self.number) {
            (Flow::Intake, 1) => "Primary intake",
            (Flow::Intake, _) => "Secondary intake",
            (Flow::Exhaust, _) => "Exhaust",
        }
    }
}

impl fmt::Display for PortName {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let stage = match self.stage {
            Stage::Stock => "stock",
            Stage::Cut => "cut",
        };
        write!(f, "{}, {stage}", self.port())
    }
}

/// How a plate is looked at, and what closes its ports.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PortFace {
    /// The view.
    pub view: View,
    /// What closes the ports.
    pub sealed_by: SealedBy,
}

kept_fields!(PortFace { view, sealed_by = "sealed-by" });

impl PortFace {
    /// The face as it is taken until the builder says otherwise.
    #[must_use]
    pub const fn usual(housing: SideHousing) -> Self {
        Self { view: View::usual(housing), sealed_by: SealedBy::SideSeal }
    }
}

impl fmt::Display for PortFace {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let View { seen_from, rotation, plugs, .. } = self.view;
        let from = match seen_from {
            SeenFrom::Rotor => "seen from the rotor",
            SeenFrom::Outside => "seen from outside",
        };
        let rotation = match rotation {
            Rotation::Clockwise => "shaft turns with the clock",
            Rotation::Anticlockwise => "shaft turns against the clock",
        };
        let plugs = match plugs {
            PlugSide::Top => "plugs at the top",
            PlugSide::Bottom => "plugs at the bottom",
        };
        let sealed = match self.sealed_by {
            SealedBy::FlankEdge => "ports closed by the flank’s edge",
            SealedBy::SideSeal => "ports closed by the side seal",
        };
        write!(f, "{from}, {rotation}, {plugs}, {sealed}")
    }
}

/// An outline as typed, as seen on the face.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TypedOutline {
    /// Which.
    pub port: PortName,
    /// Its rows, as typed.
    pub rows: String,
    /// The unit of their lengths.
    pub unit: Unit,
    /// What their first two numbers are.
    pub form: Form,
    /// The width of a port in the bore, whose two edges the rows then are; empty for a side port.
    pub width: String,
    /// Its figures in words, as they were when it was written down.
    pub figures: String,
}

kept_fields!(TypedOutline { port, rows, unit, form, width: left_out, figures: left_out });

/// A port's shape in the housing frame.
#[derive(Debug, Clone)]
pub enum Shape {
    /// In the side housing.
    Side(Outline),
    /// In the bore.
    Peripheral(PeripheralPort),
}

impl TypedOutline {
    /// An outline without rows.
    #[must_use]
    pub const fn empty(port: PortName, unit: Unit) -> Self {
        Self {
            port,
            rows: String::new(),
            unit,
            form: Form::Coordinates,
            width: String::new(),
            figures: String::new(),
        }
    }

    /// The corners as seen; of a port in the bore its edges, which the angle alone may give.
    ///
    /// # Errors
    /// A sentence for every row that can't be read.
    pub fn corners_in(&self, engine: &Engine) -> Result<Vec<Corner>, Vec<String>> {
        let at = |angle| on_bore(engine.geometry(), Angle::new::<degree>(angle));
        if self.width.trim().is_empty() {
            read_rows(&self.rows, self.unit, self.form).map_err(said)
        } else {
            read_edges(&self.rows, self.unit, self.form, at).map_err(said)
        }
    }

    /// The shape in the engine.
    ///
    /// # Errors
    /// A sentence for everything that is wrong.
    #[translated]
    pub fn shape(&self, engine: &Engine, view: View) -> Result<Shape, Vec<String>> {
        let corners = self.corners_in(engine)?;
        if self.width.trim().is_empty() {
            return outline_of(&corners, view).map(Shape::Side);
        }
        let width = Reading::read(&self.width, self.unit, &Bounds::SIZE)
            .map_err(|fault| vec![format!("width: {fault}")])?;
        let width = Length::new::<millimeter>(width.amount().value(Unit::Millimetre));
        let [one, other] = corners[..] else {
            let rows = if corners.len() == 1 { "row" } else { "rows" };
            return Err(vec![format!(
                "a port in the bore has two edges, each a row of its own: {} {rows} found",
                corners.len()
            )]);
        };
        let [one, other] = [one, other].map(|corner| view.turn_over(corner.point));
        let port = |first, second| PeripheralPort::new(engine.geometry(), first, second, width);
        // A port takes the shorter way between its edges.
        let (there, back) = (
            port(one, other).map_err(|fault| vec![fault.to_string()])?,
            port(other, one).map_err(|fault| vec![fault.to_string()])?,
        );
        Ok(Shape::Peripheral(if there.area() <= back.area() { there } else { back }))
    }
}

/// The outline of corners as seen, in the housing frame.
///
/// # Errors
/// A sentence for everything that is wrong.
pub fn outline_of(corners: &[Corner], view: View) -> Result<Outline, Vec<String>> {
    Outline::rounded(corners).map(|outline| view.turn_outline_over(&outline)).map_err(said)
}

fn said<T: fmt::Display>(faults: Vec<T>) -> Vec<String> {
    faults.iter().map(ToString::to_string).collect()
}

/// The holes a template is laid on by, as typed: rows of x, y and diameter, as seen.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TypedDatums {
    /// On which housing.
    pub housing: SideHousing,
    /// The rows, as typed.
    pub rows: String,
    /// The unit of their lengths.
    pub unit: Unit,
}

kept_fields!(TypedDatums { housing, rows, unit });

impl TypedDatums {
    /// The holes.
    ///
    /// # Errors
    /// A sentence for every row that can't be read or has no diameter.
    #[translated]
    pub fn datums(&self) -> Result<Vec<Datum>, Vec<String>> {
        let holes = read_rows(&self.rows, self.unit, Form::Coordinates).map_err(said)?;
        let faults: Vec<_> = (1..)
            .zip(&holes)
            .filter(|(_, hole)| hole.radius <= Length::default())
            .map(|(number, _)| {
                format!("hole {number} has no diameter: give it as the third number of its row")
            })
            .collect();
        if !faults.is_empty() {
            return Err(faults);
        }
        let datum = |hole: &Corner| Datum { centre: hole.point, diameter: hole.radius };
        Ok(holes.iter().map(datum).collect())
    }
}
