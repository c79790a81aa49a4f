//! Units as they are said, and a figure with its unit.

use super::{figure, german, whole};
use crate::language::IS_GERMAN;
use crate::quantity::Unit;

/// One of a unit, and several.
#[must_use]
pub fn of_unit(unit: Unit) -> (&'static str, &'static str) {
    match unit {
        Unit::Millimetre => ("millimetre", "millimetres"),
        Unit::Inch => ("inch", "inches"),
        Unit::Thou => ("thou", "thou"),
        Unit::Micrometre => ("micron", "microns"),
        Unit::Centimetre => ("centimetre", "centimetres"),
        Unit::Metre => ("metre", "metres"),
        Unit::Foot => ("foot", "feet"),
        Unit::NewtonMetre => ("newton metre", "newton metres"),
        Unit::PoundForceFoot => ("pound foot", "pound feet"),
        Unit::PoundForceInch => ("pound inch", "pound inches"),
        Unit::KilogramForceMetre => ("kilogram metre", "kilogram metres"),
        Unit::KilogramForceCentimetre => ("kilogram centimetre", "kilogram centimetres"),
        Unit::Bar => ("bar", "bar"),
        Unit::Psi => ("pound a square inch", "pounds a square inch"),
        Unit::Kilopascal => ("kilopascal", "kilopascals"),
        Unit::KilogramForcePerSquareCentimetre => {
            ("kilogram a square centimetre", "kilograms a square centimetre")
        }
        Unit::Atmosphere => ("atmosphere", "atmospheres"),
        Unit::InchOfMercury => ("inch of mercury", "inches of mercury"),
        Unit::Megapascal => ("megapascal", "megapascals"),
        Unit::Hectopascal => ("hectopascal", "hectopascals"),
        Unit::Pascal => ("pascal", "pascals"),
        Unit::Millilitre => ("millilitre", "millilitres"),
        Unit::CubicInch => ("cubic inch", "cubic inches"),
        Unit::Litre => ("litre", "litres"),
        Unit::FluidOunce => ("fluid ounce", "fluid ounces"),
        Unit::Quart => ("quart", "quarts"),
        Unit::Gram => ("gram", "grams"),
        Unit::Ounce => ("ounce", "ounces"),
        Unit::Kilogram => ("kilogram", "kilograms"),
        Unit::Pound => ("pound", "pounds"),
        Unit::Newton => ("newton", "newtons"),
        Unit::PoundForce => ("pound of force", "pounds of force"),
        Unit::KilogramForce => ("kilogram of force", "kilograms of force"),
        Unit::Kilonewton => ("kilonewton", "kilonewtons"),
        Unit::Kilowatt => ("kilowatt", "kilowatts"),
        Unit::Horsepower => ("horsepower", "horsepower"),
        Unit::MetricHorsepower => ("metric horsepower", "metric horsepower"),
        Unit::Watt => ("watt", "watts"),
        Unit::Celsius => ("degree Celsius", "degrees Celsius"),
        Unit::Fahrenheit => ("degree Fahrenheit", "degrees Fahrenheit"),
        Unit::Kelvin => ("kelvin", "kelvin"),
        Unit::Degree => ("degree", "degrees"),
        Unit::ArcMinute => ("minute of arc", "minutes of arc"),
        Unit::Turn => ("turn", "turns"),
        Unit::LitrePerMinute => ("litre a minute", "litres a minute"),
        Unit::GallonPerMinute => ("gallon a minute", "gallons a minute"),
        Unit::MillilitrePerSecond => ("millilitre a second", "millilitres a second"),
        Unit::MillilitrePerMinute => ("millilitre a minute", "millilitres a minute"),
        Unit::GramMillimetre => ("gram millimetre", "gram millimetres"),
        Unit::OunceInch => ("ounce inch", "ounce inches"),
        Unit::GramInch => ("gram inch", "gram inches"),
    }
}

/// A figure with its unit: “two and a half thou”, “half a millimetre”, “one inch”.
#[must_use]
pub fn quantity(text: &str, unit: Unit) -> String {
    if let Some(above) = text.strip_prefix(['-', '−']) {
        return format!("minus {}", quantity(above, unit));
    }
    if IS_GERMAN {
        return german::quantity(text, unit);
    }
    let (one, many) = of_unit(unit);
    let (before, behind) = text.split_once('.').unwrap_or((text, ""));
    let part = match behind.trim_end_matches('0') {
        "5" => "half",
        "25" => "quarter",
        "75" => "three quarters",
        "" if before == "1" => return format!("one {one}"),
        "" => return format!("{} {many}", figure(before)),
        _ => return format!("{} {many}", figure(text)),
    };
    let article = if one.starts_with(['a', 'e', 'i', 'o']) { "an" } else { "a" };
    match (before.parse::<u32>(), part) {
        (Err(_), _) => format!("{} {many}", figure(text)),
        (Ok(0), "half") => format!("half {article} {one}"),
        (Ok(0), "quarter") => format!("a quarter of {article} {one}"),
        (Ok(0), part) => format!("{part} of {article} {one}"),
        (Ok(count), "three quarters") => format!("{} and three quarters {many}", whole(count)),
        (Ok(count), part) => format!("{} and a {part} {many}", whole(count)),
    }
}
