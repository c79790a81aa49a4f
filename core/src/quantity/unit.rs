//! The units in use: each a whole number of its dimension's ticks.

use crate::kept::{Json, Kept, Refused};
use crate::language::IS_GERMAN;
use crate::letters;
use pitleaf_translated::translated;

/// What kind of thing is measured. Amounts compare only within one dimension.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Dimension {
    /// Length; tick 0.1 nm.
    Length,
    /// Plane angle; tick 1/3 600 000 000 of a degree.
    Angle,
    /// Mass; tick 10⁻¹⁵ g.
    Mass,
    /// Force; tick 10⁻¹⁹ N.
    Force,
    /// Moment of force; tick 10⁻²² N·m.
    Torque,
    /// Pressure; tick 1/64 516 000 000 000 000 000 Pa, which makes both the pascal and the psi whole.
    Pressure,
    /// Volume; tick 10⁻¹⁶ mL.
    Volume,
    /// Power; tick 10⁻²⁰ W.
    Power,
    /// Temperature; tick 1/9 000 000 K, counted from absolute zero.
    Temperature,
    /// Volume flow; tick 10⁻¹⁵ L/min.
    Flow,
    /// Unbalance (mass times radius); tick 10⁻¹⁵ g·mm.
    Unbalance,
}

impl Dimension {
    /// Every dimension, in the order a person meets them.
    pub const ALL: [Self; 11] = [
        Self::Length,
        Self::Torque,
        Self::Pressure,
        Self::Volume,
        Self::Mass,
        Self::Force,
        Self::Power,
        Self::Temperature,
        Self::Angle,
        Self::Flow,
        Self::Unbalance,
    ];

    /// The dimension's name, in lower case.
    #[must_use]
    #[translated]
    pub fn name(self) -> &'static str {
        match self {
            Self::Length => "length",
            Self::Angle => "angle",
            Self::Mass => "mass",
            Self::Force => "force",
            Self::Torque => "torque",
            Self::Pressure => "pressure",
            Self::Volume => "volume",
            Self::Power => "power",
            Self::Temperature => "temperature",
            Self::Flow => "flow",
            Self::Unbalance => "unbalance",
        }
    }

    /// The units of this dimension, most used first.
    pub fn units(self) -> impl Iterator<Item = Unit> {
        TABLE.iter().filter(move |row| row.dimension == self).map(|row| row.unit)
    }
}

/// One row of the table of units.
struct Row {
    unit: Unit,
    dimension: Dimension,
    /// Ticks in one unit.
    ticks: i128,
    /// Ticks at the unit's zero; not 0 for temperatures alone.
    zero: i128,
    symbol: &'static str,
    /// Other ways it is written, in lower case.
    spellings: &'static [&'static str],
}

macro_rules! units {
    ($($dimension:ident { $($(#[$doc:meta])* $unit:ident = $ticks:expr, $zero:expr, $symbol:literal, [$($spelling:literal),*];)* })*) => {
        /// A unit of measurement.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Unit { $($($(#[$doc])* $unit,)*)* }

        const TABLE: &[Row] = &[$($(Row {
            unit: Unit::$unit,
            dimension: Dimension::$dimension,
            ticks: $ticks,
            zero: $zero,
            symbol: $symbol,
            spellings: &[$($spelling),*],
        },)*)*];
    };
}

/// Six decimals of headroom under the last digit of an exact definition.
const MICRO: i128 = 1_000_000;
/// Ticks of pressure in a pascal: 0.0254² × 10²³, so that lbf/in² comes out whole, and inHg with decimals.
const PASCAL: i128 = 64_516_000_000_000 * MICRO;

// Exact definitions: NIST SP 811 (2008), appendix B: in 25.4 mm, lb 0.453 592 37 kg,
// standard gravity 9.806 65 m/s²; the rest are products of these.
units! {
    Length {
        /// Millimetre.
        Millimetre = 10_000_000, 0, "mm", ["millimetre", "millimetres", "millimeter"];
        /// Inch, 25.4 mm.
        Inch = 254_000_000, 0, "in", ["inch", "inches", "\"", "″", "zoll"];
        /// Thousandth of an inch, 25.4 µm.
        Thou = 254_000, 0, "thou", ["mil", "mils", "thous"];
        /// Micrometre.
        Micrometre = 10_000, 0, "µm", ["um", "μm", "micron", "microns", "mu"];
        /// Centimetre.
        Centimetre = 100_000_000, 0, "cm", [];
        /// Metre.
        Metre = 10_000_000_000, 0, "m", ["metre", "meter"];
        /// Foot, 12 in.
        Foot = 12 * 254_000_000, 0, "ft", ["foot", "feet", "fuß"];
    }
    Torque {
        /// Newton metre.
        NewtonMetre = 10_000_000_000_000_000 * MICRO, 0, "N·m", ["nm", "n.m", "n m"];
        /// Pound-force foot, 1.355 817 948 331 400 4 N·m.
        PoundForceFoot = 13_558_179_483_314_004 * MICRO, 0, "lbf·ft", ["lbft", "lb-ft", "ft-lb", "ftlb", "lb ft", "ft lb", "lbf.ft", "lbf ft", "ft·lbf", "ft-lbs", "ft lbs", "ftlbs", "ft.lbs", "ft.lb", "lbs-ft", "lbs ft", "lbsft", "ft lbf", "ft-lbf", "ftlbf", "lb.ft", "lb·ft", "foot pounds", "foot-pounds"];
        /// Pound-force inch, a twelfth of a pound-force foot.
        PoundForceInch = 1_129_848_290_276_167 * MICRO, 0, "lbf·in", ["lbin", "lb-in", "in-lb", "inlb", "lb in", "in lb", "lbf.in", "lbf in", "in·lbf", "in-lbs", "in lbs", "inlbs", "in.lbs", "in.lb", "lb.in", "lb·in", "inch pounds", "inch-pounds"];
        /// Kilogram-force metre, 9.806 65 N·m.
        KilogramForceMetre = 98_066_500_000_000_000 * MICRO, 0, "kgf·m", ["kgm", "kgfm", "kg.m", "kg-m", "kgf.m", "kgf m", "kg m", "mkg", "kp·m", "kpm", "kg·m"];
        /// Kilogram-force centimetre.
        KilogramForceCentimetre = 980_665_000_000_000 * MICRO, 0, "kgf·cm", ["kgcm", "kgfcm", "kg.cm", "kg-cm", "kgf.cm", "kgf cm", "kg cm", "kg·cm"];
    }
    Pressure {
        /// Bar, 100 kPa.
        Bar = 100_000 * PASCAL, 0, "bar", [];
        /// Pound-force per square inch, 6 894.757 293 168 361… Pa.
        Psi = 444_822_161_526_050_000 * MICRO, 0, "psi", ["lbf/in²", "lbf/in2", "lb/in2"];
        /// Kilopascal.
        Kilopascal = 1_000 * PASCAL, 0, "kPa", [];
        /// Kilogram-force per square centimetre, 98 066.5 Pa.
        KilogramForcePerSquareCentimetre = 980_665 * (PASCAL / 10), 0, "kgf/cm²", ["kgf/cm2", "kg/cm2", "kg/cm²", "at"];
        /// Standard atmosphere, 101 325 Pa.
        Atmosphere = 101_325 * PASCAL, 0, "atm", [];
        /// Inch of mercury (conventional), 3 386.388 640 341 Pa.
        InchOfMercury = 3_386_388_640_341 * (PASCAL / 1_000_000_000), 0, "inHg", ["in hg", "\"hg"];
        /// Megapascal.
        Megapascal = 1_000_000 * PASCAL, 0, "MPa", ["n/mm²", "n/mm2"];
        /// Hectopascal, the millibar of barometers.
        Hectopascal = 100 * PASCAL, 0, "hPa", ["mbar"];
        /// Pascal, the newton on a square metre.
        Pascal = PASCAL, 0, "Pa", ["pascal", "n/m²", "n/m2"];
    }
    Volume {
        /// Millilitre, which is the cubic centimetre.
        Millilitre = 10_000_000_000 * MICRO, 0, "mL", ["cc", "cm3", "cm³", "ccm"];
        /// Cubic inch, 16.387 064 mL.
        CubicInch = 163_870_640_000 * MICRO, 0, "in³", ["in3", "cu in", "cuin", "ci"];
        /// Litre.
        Litre = 10_000_000_000_000 * MICRO, 0, "L", ["litre", "liter", "litres"];
        /// Fluid ounce of the United States, 29.573 529 562 5 mL.
        FluidOunce = 295_735_295_625 * MICRO, 0, "US fl oz", ["fl oz", "floz", "us floz"];
        /// Quart of the United States, 32 fluid ounces.
        Quart = 32 * 295_735_295_625 * MICRO, 0, "US qt", ["qt", "quart"];
    }
    Mass {
        /// Gram.
        Gram = 1_000_000_000 * MICRO, 0, "g", ["gram", "grams"];
        /// Ounce, a sixteenth of a pound.
        Ounce = 28_349_523_125 * MICRO, 0, "oz", ["ounce", "ounces"];
        /// Kilogram.
        Kilogram = 1_000_000_000_000 * MICRO, 0, "kg", [];
        /// Pound, 0.453 592 37 kg.
        Pound = 453_592_370_000 * MICRO, 0, "lb", ["lbs", "pound", "pounds"];
    }
    Force {
        /// Newton.
        Newton = 10_000_000_000_000 * MICRO, 0, "N", ["newton"];
        /// Pound-force, 4.448 221 615 260 5 N.
        PoundForce = 44_482_216_152_605 * MICRO, 0, "lbf", ["lbs force"];
        /// Kilogram-force, 9.806 65 N.
        KilogramForce = 98_066_500_000_000 * MICRO, 0, "kgf", ["kp"];
        /// Kilonewton.
        Kilonewton = 10_000_000_000_000_000 * MICRO, 0, "kN", [];
    }
    Power {
        /// Kilowatt.
        Kilowatt = 100_000_000_000_000_000 * MICRO, 0, "kW", [];
        /// Horsepower of 550 ft·lbf/s, 745.699 871 582 270 22 W.
        Horsepower = 74_569_987_158_227_022 * MICRO, 0, "hp", ["bhp"];
        /// Metric horsepower of 75 kgf·m/s, 735.498 75 W.
        MetricHorsepower = 73_549_875_000_000_000 * MICRO, 0, "hp (metric)", ["ps", "cv", "metric hp"];
        /// Watt.
        Watt = 100_000_000_000_000 * MICRO, 0, "W", [];
    }
    Temperature {
        /// Degree Celsius.
        Celsius = 9_000_000, 2_458_350_000, "°C", ["c", "degc", "deg c", "celsius", "grad celsius"];
        /// Degree Fahrenheit.
        Fahrenheit = 5_000_000, 2_298_350_000, "°F", ["f", "degf", "deg f", "fahrenheit", "grad fahrenheit"];
        /// Kelvin.
        Kelvin = 9_000_000, 0, "K", ["kelvin"];
    }
    Angle {
        /// Degree of arc.
        Degree = 3_600_000_000, 0, "°", ["deg", "degree", "degrees"];
        /// Minute of arc.
        ArcMinute = 60_000_000, 0, "′", ["'", "arcmin"];
        /// A whole turn.
        Turn = 360 * 3_600_000_000, 0, "turn", ["turns", "rev"];
    }
    Flow {
        /// Litre a minute.
        LitrePerMinute = 1_000_000_000 * MICRO, 0, "L/min", ["lpm"];
        /// Gallon of the United States a minute, 3.785 411 784 L/min.
        GallonPerMinute = 3_785_411_784 * MICRO, 0, "US gal/min", ["gpm", "gal/min"];
        /// Millilitre a second.
        MillilitrePerSecond = 60_000_000 * MICRO, 0, "mL/s", ["cc/s"];
        /// Cubic centimetre a minute, as injectors and jets are marked.
        MillilitrePerMinute = 1_000_000 * MICRO, 0, "mL/min", ["cc/min", "ccm/min"];
    }
    Unbalance {
        /// Gram millimetre.
        GramMillimetre = 1_000_000_000 * MICRO, 0, "g·mm", ["gmm", "g mm"];
        /// Ounce inch, 720.077 887 375 g·mm.
        OunceInch = 720_077_887_375 * MICRO, 0, "oz·in", ["ozin", "oz in", "oz-in"];
        /// Gram inch.
        GramInch = 25_400_000_000 * MICRO, 0, "g·in", ["g in", "gin"];
    }
}

impl Unit {
    fn row(self) -> &'static Row {
        &TABLE[self as usize]
    }

    /// What it measures.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        self.row().dimension
    }

    /// As it is written behind a figure.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        self.row().symbol
    }

    /// Every way it is written: its symbol, then the other spellings a shop uses.
    pub fn written(self) -> impl Iterator<Item = &'static str> {
        let row = self.row();
        std::iter::once(row.symbol).chain(row.spellings.iter().copied())
    }

    /// Ticks in one unit.
    pub(super) fn ticks(self) -> i128 {
        self.row().ticks
    }

    /// Ticks at the unit's zero.
    pub(super) fn zero(self) -> i128 {
        self.row().zero
    }

    /// The unit written as `text`: its symbol, or any spelling a shop uses; outer spaces don't count, and case
    /// only where it changes a prefix: m is milli, M is mega.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        let text = text.trim();
        Self::in_any_case(text).filter(|unit| !is_other_prefix(text, unit.symbol()))
    }

    /// The unit whose symbol a text would be with m and M, milli and mega, the other way round.
    #[must_use]
    pub fn with_prefix_mistaken(text: &str) -> Option<Self> {
        let text = text.trim();
        Self::in_any_case(text).filter(|unit| is_other_prefix(text, unit.symbol()))
    }

    fn in_any_case(text: &str) -> Option<Self> {
        let lower = letters::lower(text);
        // “Grad” is the degree in German alone: elsewhere it is a hundredth of a right angle.
        if IS_GERMAN && lower == "grad" {
            return Some(Self::Degree);
        }
        TABLE
            .iter()
            .find(|row| row.symbol == text)
            .or_else(|| {
                TABLE.iter().find(|row| {
                    letters::lower(row.symbol) == lower || row.spellings.contains(&lower.as_str())
                })
            })
            .map(|row| row.unit)
    }

    /// Every unit.
    pub fn all() -> impl Iterator<Item = Self> {
        TABLE.iter().map(|row| row.unit)
    }
}

/// Whether a text is a symbol but for its first letter, which makes it milli for mega or the reverse.
/// “MM” is how a phone in capitals writes mm; there is no other such unit.
fn is_other_prefix(text: &str, symbol: &str) -> bool {
    let first = |text: &str| text.chars().next().filter(|c| matches!(c, 'm' | 'M'));
    let differs = |symbol: &str| {
        letters::lower(text) == letters::lower(symbol) && first(text) != first(symbol)
    };
    (differs(symbol) && text != "MM") || differs("mbar")
}

impl Kept for Unit {
    fn json(&self) -> Json<'_> {
        Json::Text(self.symbol().into())
    }

    #[translated]
    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let symbol = json.text()?;
        TABLE
            .iter()
            .find(|row| row.symbol == symbol)
            .map(|row| row.unit)
            .ok_or_else(|| Refused::because(&"a unit that is not known here"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_row_stands_at_its_unit() {
        for (place, row) in TABLE.iter().enumerate() {
            assert_eq!(row.unit as usize, place, "{} stands at the wrong place", row.symbol);
        }
    }

    #[test]
    fn no_spelling_is_taken_twice() {
        let mut seen = std::collections::HashSet::new();
        for row in TABLE {
            assert!(seen.insert(row.symbol.to_lowercase()), "{} twice", row.symbol);
            for spelling in row.spellings {
                assert!(seen.insert((*spelling).to_owned()), "{spelling} twice");
            }
        }
    }

    #[test]
    fn every_symbol_and_spelling_finds_its_unit() {
        for row in TABLE {
            assert_eq!(Unit::named(row.symbol), Some(row.unit), "{}", row.symbol);
            for spelling in row.spellings {
                assert_eq!(Unit::named(spelling), Some(row.unit), "{spelling}");
            }
        }
        assert_eq!(Unit::named("furlong"), None, "an unknown unit is not guessed");
    }
}
