//! What a bolt's material bears: property classes, or a stated material.

use super::bounds::{self, STRENGTH};
use super::strength_rows::{ROWS, Row};
use super::{Range, Refusal};
use crate::letters;
use crate::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::translated;
use std::fmt;
use uom::si::f64::{Area, Force, Pressure, Ratio};
use uom::si::pressure::megapascal;

/// A property class of the tables.
#[derive(Clone, Copy)]
pub struct PropertyClass(&'static Row);

/// The stresses a material bears.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strength {
    proof: Pressure,
    tensile: Pressure,
}

/// What a share of proof stress means for the bolt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ProofVerdict {
    /// Below proof stress at its greatest.
    Holds,
    /// Below proof stress at its least, above it at its greatest.
    MayYield,
    /// Above proof stress even at its least.
    Yields,
    /// Above what it breaks at, at its greatest.
    MayBreak,
    /// Above what it breaks at even at its least.
    Breaks,
}

impl PropertyClass {
    /// Every class.
    pub fn all() -> impl Iterator<Item = Self> {
        ROWS.iter().map(Self)
    }

    /// The class of a name: `10.9`, `10,9`, `grade 8`.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        let name = letters::lower(name.trim()).replace(',', ".");
        Self::all().find(|class| class.name() == name)
    }

    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.0.0
    }

    /// The standard it stands in.
    #[must_use]
    pub fn source(self) -> &'static str {
        self.0.1
    }

    /// The proof stress, exactly as the standard gives it.
    #[must_use]
    pub fn proof_stress(self) -> Amount {
        Amount::whole(self.0.3, self.0.2)
    }

    /// The tensile strength, exactly as the standard gives it.
    #[must_use]
    pub fn tensile_strength(self) -> Amount {
        Amount::whole(self.0.4, self.0.2)
    }

    /// The greatest thread diameter the stresses hold for: larger bolts of the class bear less.
    #[must_use]
    pub fn greatest_diameter(self) -> Amount {
        let count = self.0.5;
        match self.0.2 {
            Unit::Psi => Amount::exact(count, 16, Unit::Inch),
            _ => Amount::exact(count, 1, Unit::Millimetre),
        }
        .unwrap_or_else(|| Amount::whole(0, Unit::Millimetre))
    }

    /// Both stresses, for physics.
    #[must_use]
    pub fn strength(self) -> Strength {
        let stress =
            |amount: Amount| amount.pressure().unwrap_or_else(|| Pressure::new::<megapascal>(0.0));
        Strength { proof: stress(self.proof_stress()), tensile: stress(self.tensile_strength()) }
    }
}

impl Strength {
    /// A stated material.
    ///
    /// # Errors
    /// A stress out of [`STRENGTH`]; a proof stress above the tensile strength.
    pub fn of_material(proof: Pressure, tensile: Pressure) -> Result<Self, Refusal> {
        for stress in [proof, tensile] {
            bounds::check(&STRENGTH, stress.get::<megapascal>())?;
        }
        if proof > tensile { Err(Refusal::ProofAboveTensile) } else { Ok(Self { proof, tensile }) }
    }

    /// What is to be said where the stresses are those of a class that bears less at so great a diameter.
    #[must_use]
    #[translated]
    pub fn too_large(self, diameter: Amount) -> Option<String> {
        let is_past = |class: &PropertyClass| {
            class.strength() == self && diameter > class.greatest_diameter()
        };
        let class = PropertyClass::all().find(is_past)?;
        let (unit, places) =
            if class.0.2 == Unit::Psi { (Unit::Inch, 2) } else { (Unit::Millimetre, 0) };
        Some(format!(
            "These are the stresses of {} up to {} {} across; a larger bolt of it bears less. Type what its maker states.",
            class.name(),
            class.greatest_diameter().show(unit, places, Rounding::Nearest),
            unit.symbol()
        ))
    }

    /// The stress a bolt must bear without growing longer for good.
    #[must_use]
    pub fn proof(self) -> Pressure {
        self.proof
    }

    /// The stress it breaks at.
    #[must_use]
    pub fn tensile(self) -> Pressure {
        self.tensile
    }

    /// Proof load of a stress area.
    #[must_use]
    pub fn proof_load(self, stress_area: Area) -> Force {
        self.proof * stress_area
    }

    /// What a stress does to a bolt: of a pull alone, or with the twist of tightening.
    ///
    /// Held against the proof stress, which lies near the nine tenths of the yield strength that VDI 2230
    /// lets tightening use.
    #[must_use]
    pub fn verdict(self, stress: Range<Pressure>) -> ProofVerdict {
        if stress.least() > self.tensile {
            ProofVerdict::Breaks
        } else if stress.greatest() > self.tensile {
            ProofVerdict::MayBreak
        } else {
            ProofVerdict::of(self.share_of_proof(stress))
        }
    }

    /// The share of the proof stress that a stress takes.
    #[must_use]
    pub fn share_of_proof(self, stress: Range<Pressure>) -> Range<Ratio> {
        stress.map(|stress| stress / self.proof)
    }
}

impl fmt::Display for ProofVerdict {
    #[translated]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::MayBreak => "Pull and twist may pass what the bolt breaks at. Do not tighten so: less torque, a larger thread or a higher class.",
            Self::Breaks => "Pull and twist pass what the bolt breaks at even at the least. Do not tighten so: less torque, a larger thread or a higher class.",
            Self::Holds => "Below proof stress throughout, twist and all: the bolt springs back.",
            Self::MayYield => "Pull and twist may pass proof stress: the bolt may stay longer for good. Less torque, or a higher class.",
            Self::Yields => "Pull and twist pass proof stress even at the least: the bolt yields. Less torque, a larger thread or a higher class.",
        })
    }
}

impl ProofVerdict {
    /// What a share of proof stress means.
    #[must_use]
    pub fn of(share: Range<Ratio>) -> Self {
        let full = Ratio::new::<uom::si::ratio::ratio>(1.0);
        if share.greatest() <= full {
            Self::Holds
        } else if share.least() <= full {
            Self::MayYield
        } else {
            Self::Yields
        }
    }
}
