//! Figures as a screen shows them: rounded to nearest, in metric and in inches.

use pitleaf_translated::translated;
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Area, Length, Ratio, Volume},
    length::millimeter,
    ratio::percent,
    volume::cubic_centimeter,
};

use super::{AngleArea, DeadCentre, Timing, View};
use crate::{
    decimal,
    trochoid::{Chamber, Point},
};

/// A figure in both unit systems.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Both {
    /// In millimetres and what is made of them.
    pub metric: String,
    /// In inches and what is made of them; empty where there is no such unit.
    pub inch: String,
}

fn number(value: f64, places: u8) -> String {
    decimal::shown(value, places).replace('-', "−")
}

fn both(metric: f64, places: u8, unit: &str, inch: f64, inch_places: u8, inch_unit: &str) -> Both {
    Both {
        metric: format!("{} {unit}", number(metric, places)),
        inch: format!("{} {inch_unit}", number(inch, inch_places)),
    }
}

/// An area to a tenth of a square millimetre.
#[must_use]
pub fn area(area: Area) -> Both {
    let area = area.get::<square_millimeter>();
    both(area, 1, "mm²", area / (25.4 * 25.4), 4, "in²")
}

/// A length to a hundredth of a millimetre, and a thousandth of an inch.
#[must_use]
pub fn length(length: Length) -> Both {
    let length = length.get::<millimeter>();
    both(length, 2, "mm", length / 25.4, 3, "in")
}

/// A volume to a tenth of a cubic centimetre.
#[must_use]
pub fn volume(volume: Volume) -> Both {
    let volume = volume.get::<cubic_centimeter>();
    both(volume, 1, "cm³", volume / 16.387_064, 2, "in³")
}

/// A summed area over the shaft's angle.
#[must_use]
pub fn angle_area(sum: AngleArea) -> Both {
    let sum = sum.square_millimetre_degrees();
    both(sum, 0, "mm²·°", sum / (25.4 * 25.4), 1, "in²·°")
}

/// A summed area over time at a shaft speed in turns a minute; none if the shaft stands still.
#[must_use]
pub fn time_area(sum: AngleArea, per_minute: f64) -> Option<Both> {
    use uom::si::{angular_velocity::revolution_per_minute, f64::AngularVelocity};
    let sum = sum.at(AngularVelocity::new::<revolution_per_minute>(per_minute))?;
    // In mm²·s a port has so small a figure that it is better read in thousandths.
    let sum = 1000.0 * sum.square_millimetre_seconds();
    Some(both(sum, 1, "mm²·ms", sum / (25.4 * 25.4), 4, "in²·ms"))
}

/// An angle to a hundredth of a degree.
#[must_use]
pub fn angle(angle: Angle) -> String {
    format!("{}°", number(angle.get::<degree>(), 2))
}

/// A share in percent, to one decimal.
#[must_use]
pub fn share(share: Ratio) -> String {
    format!("{} %", number(share.get::<percent>(), 1))
}

/// A ratio to two decimals.
#[must_use]
pub fn ratio(ratio: f64) -> String {
    format!("{} : 1", number(ratio, 2))
}

/// A place on the plate, as seen.
#[must_use]
#[translated]
pub fn place(point: Point) -> String {
    format!("x {}, y {} mm", number(point.x, 1), number(point.y, 1))
}

/// A shaft angle by the first chamber's nearest dead centre: "32.10°" and "after top dead centre".
#[must_use]
#[translated]
pub fn timing(view: View, theta: Angle) -> (String, String) {
    let timing = Timing::at(view.cycle_angle(Chamber::First, theta));
    let centre = match timing.dead_centre {
        DeadCentre::GasExchangeTop => "top",
        DeadCentre::IntakeBottom => "intake bottom",
        DeadCentre::IgnitionTop => "ignition top",
        DeadCentre::ExpansionBottom => "expansion bottom",
    };
    let side = if timing.is_before() { "before" } else { "after" };
    (angle(timing.after.abs()), format!("{side} {centre}"))
}
