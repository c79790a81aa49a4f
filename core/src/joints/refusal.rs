//! Why a joint can't be reckoned, each with its sentence for the bench.

use super::bounds::Plain;
use super::shown;
use crate::quantity::Fault;
use crate::seals::GrowthFault;
use pitleaf_translated::translated;
use std::fmt;

/// Why an input was not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// A measured quantity can't be read or lies outside its bounds.
    Quantity(Fault),
    /// A plain number outside its bounds.
    OutOfBounds(&'static Plain),
    /// Two ends of a range the wrong way round.
    EndsSwapped,
    /// No whole number, or more than this.
    Count(u16),
    /// Neither bolt nor stud.
    NoFasteners,
    /// A hole as wide as the pin it runs through, or wider.
    BoreTooWide,
    /// A housing no wider than the pin in it.
    HousingTooSmall,
    /// A clamp that may be nothing.
    NoClamp,
    /// An engine without rotors.
    NoRotors,
    /// A fastener without a free length.
    NoSections,
    /// A proof stress above the tensile strength.
    ProofAboveTensile,
    /// Two viscosities at one temperature.
    SameTemperature,
    /// An oil that would get thicker with heat.
    ThickerWhenHot,
    /// Thinner than the viscosity rule holds for.
    TooThin,
    /// A wall too rough for its bore.
    TooRough,
    /// A growth with heat that can't be told.
    Growth(GrowthFault),
    /// A pressure that would push more or less oil than any feed carries.
    BeyondFlow,
}

impl fmt::Display for Refusal {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Quantity(fault) => fault.fmt(f),
            Self::Growth(fault) => fault.fmt(f),
            Self::OutOfBounds(plain) => {
                let edge = |value| shown::shortest(value, 2);
                write!(f, "{} lies between {} and {}", plain.name, edge(plain.least), edge(plain.greatest))?;
                if !plain.symbol.is_empty() {
                    write!(f, " {}", plain.symbol)?;
                }
                f.write_str(". Check the decimal point and the unit.")
            }
            Self::EndsSwapped => {
                f.write_str("The least comes first, then the greatest: 12…18. Swap them.")
            }
            Self::Count(most) => write!(f, "A whole number is counted here, 0 to {most}."),
            Self::NoFasteners => f.write_str("No bolt and no stud counted. Give at least one."),
            Self::BoreTooWide => {
                f.write_str("The hole through the pin must be smaller than the pin. Check both.")
            }
            Self::HousingTooSmall => f.write_str(
                "The housing around the pin must be wider than the pin. Check both diameters.",
            ),
            Self::NoClamp => {
                f.write_str("The clamp may be nothing. Give the preload of the bolts first.")
            }
            Self::NoRotors => f.write_str("No rotor counted. Give at least one."),
            Self::NoSections => f.write_str(
                "No length that can stretch. Give the free length and its diameter.",
            ),
            Self::ProofAboveTensile => f.write_str(
                "The proof stress lies above the tensile strength. Check both, or swap them.",
            ),
            Self::SameTemperature => f.write_str(
                "Both viscosities are given at one temperature. Give the second at another, as 40 and 100 °C.",
            ),
            Self::ThickerWhenHot => f.write_str(
                "An oil gets thinner as it gets warmer, these two points say otherwise. Swap them.",
            ),
            Self::TooRough => f.write_str(
                "The wall is rougher than a twentieth of the bore. Check both.",
            ),
            Self::BeyondFlow => f.write_str(
                "This pressure gives a flow outside 0.001 to 500 L/min. Check the line and the pressure.",
            ),
            Self::TooThin => f.write_str(
                "Below 2 mm²/s the viscosity rule does not hold. Ask for a lower temperature.",
            ),
        }
    }
}

impl std::error::Error for Refusal {}

impl From<Fault> for Refusal {
    fn from(fault: Fault) -> Self {
        Self::Quantity(fault)
    }
}
