//! Numbers, units and figures as they are said in German. Numbers to the rules of the Duden, which
//! `tests/reference/say_german.py` holds against another library.

use crate::quantity::Unit;

const UNDER_TWENTY: [&str; 20] = [
    "null",
    "eins",
    "zwei",
    "drei",
    "vier",
    "fünf",
    "sechs",
    "sieben",
    "acht",
    "neun",
    "zehn",
    "elf",
    "zwölf",
    "dreizehn",
    "vierzehn",
    "fünfzehn",
    "sechzehn",
    "siebzehn",
    "achtzehn",
    "neunzehn",
];
const TENS: [&str; 10] = [
    "", "", "zwanzig", "dreißig", "vierzig", "fünfzig", "sechzig", "siebzig", "achtzig", "neunzig",
];

/// A whole number in words, to 999 999; beyond that in digits.
#[must_use]
pub fn whole(number: u32) -> String {
    match number {
        0..20 => UNDER_TWENTY[number as usize].to_owned(),
        20..100 if number.is_multiple_of(10) => TENS[number as usize / 10].to_owned(),
        20..100 => format!("{}und{}", before(number % 10), TENS[number as usize / 10]),
        100..1000 => joined(number / 100, "hundert", number % 100),
        1000..1_000_000 => joined(number / 1000, "tausend", number % 1000),
        _ => number.to_string(),
    }
}

fn joined(count: u32, name: &str, rest: u32) -> String {
    let rest = if rest == 0 { String::new() } else { whole(rest) };
    format!("{}{name}{rest}", before(count))
}

/// A number with a word behind it: “ein”, not “eins”.
fn before(number: u32) -> String {
    let words = whole(number);
    words.strip_suffix("eins").map_or(words.clone(), |start| format!("{start}ein"))
}

/// A figure as it stands on the screen (`2,5`, `−0,05`) in words; what is no such figure stays as it is.
pub(super) fn figure(text: &str) -> String {
    let (minus, digits) = match text.strip_prefix(['-', '−']) {
        Some(digits) => ("minus ", digits),
        None => ("", text),
    };
    let (whole_part, behind) = digits.split_once(',').unwrap_or((digits, ""));
    let Ok(count) = whole_part.parse() else { return text.to_owned() };
    if !behind.bytes().all(|byte| byte.is_ascii_digit()) {
        return text.to_owned();
    }
    let mut words = format!("{minus}{}", whole(count));
    if !behind.is_empty() {
        words.push_str(" Komma");
    }
    for digit in behind.bytes() {
        words.push(' ');
        words.push_str(UNDER_TWENTY[usize::from(digit - b'0')]);
    }
    words
}

/// A figure with its unit: “zweieinhalb Thou”, “eine Unze”, “null Komma null fünf Millimeter”.
pub(super) fn quantity(text: &str, unit: Unit) -> String {
    let (name, is_feminine, many) = named(unit);
    let (whole_part, behind) = text.split_once(',').unwrap_or((text, ""));
    match (whole_part.parse::<u32>(), behind.trim_end_matches('0')) {
        (Ok(1), "") => format!("{} {name}", if is_feminine { "eine" } else { "ein" }),
        (Ok(count), "") => format!("{} {many}", whole(count)),
        (Ok(count @ 1..), "5") => format!("{}einhalb {many}", before(count)),
        _ => format!("{} {many}", figure(text)),
    }
}

/// One of a unit, whether it is feminine, and several.
fn named(unit: Unit) -> (&'static str, bool, &'static str) {
    let alike = |name| (name, false, name);
    match unit {
        Unit::Millimetre => alike("Millimeter"),
        Unit::Inch => alike("Zoll"),
        Unit::Thou => alike("Thou"),
        Unit::Micrometre => alike("Mikrometer"),
        Unit::Centimetre => alike("Zentimeter"),
        Unit::Metre => alike("Meter"),
        Unit::Foot => alike("Fuß"),
        Unit::NewtonMetre => alike("Newtonmeter"),
        Unit::PoundForceFoot => alike("Pfund mal Fuß"),
        Unit::PoundForceInch => alike("Pfund mal Zoll"),
        Unit::KilogramForceMetre => alike("Kilopondmeter"),
        Unit::KilogramForceCentimetre => alike("Kilopondzentimeter"),
        Unit::Bar => alike("Bar"),
        Unit::Psi => alike("Pfund je Quadratzoll"),
        Unit::Kilopascal => alike("Kilopascal"),
        Unit::KilogramForcePerSquareCentimetre => alike("Kilopond je Quadratzentimeter"),
        Unit::Atmosphere => ("Atmosphäre", true, "Atmosphären"),
        Unit::InchOfMercury => alike("Zoll Quecksilbersäule"),
        Unit::Megapascal => alike("Megapascal"),
        Unit::Hectopascal => alike("Hektopascal"),
        Unit::Pascal => alike("Pascal"),
        Unit::Millilitre => alike("Milliliter"),
        Unit::CubicInch => alike("Kubikzoll"),
        Unit::Litre => alike("Liter"),
        Unit::FluidOunce => ("Flüssigunze", true, "Flüssigunzen"),
        Unit::Quart => alike("Quart"),
        Unit::Gram => alike("Gramm"),
        Unit::Ounce => ("Unze", true, "Unzen"),
        Unit::Kilogram => alike("Kilogramm"),
        Unit::Pound => alike("Pfund"),
        Unit::Newton => alike("Newton"),
        Unit::PoundForce => alike("Pfund Kraft"),
        Unit::KilogramForce => alike("Kilopond"),
        Unit::Kilonewton => alike("Kilonewton"),
        Unit::Kilowatt => alike("Kilowatt"),
        Unit::Horsepower => ("britische Pferdestärke", true, "britische Pferdestärken"),
        Unit::MetricHorsepower => ("Pferdestärke", true, "Pferdestärken"),
        Unit::Watt => alike("Watt"),
        Unit::Celsius => alike("Grad Celsius"),
        Unit::Fahrenheit => alike("Grad Fahrenheit"),
        Unit::Kelvin => alike("Kelvin"),
        Unit::Degree => alike("Grad"),
        Unit::ArcMinute => ("Winkelminute", true, "Winkelminuten"),
        Unit::Turn => ("Umdrehung", true, "Umdrehungen"),
        Unit::LitrePerMinute => alike("Liter je Minute"),
        Unit::GallonPerMinute => ("Gallone je Minute", true, "Gallonen je Minute"),
        Unit::MillilitrePerSecond => alike("Milliliter je Sekunde"),
        Unit::MillilitrePerMinute => alike("Milliliter je Minute"),
        Unit::GramMillimetre => alike("Gramm-Millimeter"),
        Unit::OunceInch => alike("Unzen-Zoll"),
        Unit::GramInch => alike("Gramm-Zoll"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_said_with_a_comma() {
        assert_eq!(figure("0,05"), "null Komma null fünf", "a decimal");
        assert_eq!(figure("−21"), "minus einundzwanzig", "below zero");
        assert_eq!(figure("2½"), "2½", "no such figure");
    }

    #[test]
    fn one_has_its_gender_and_a_half_is_a_half() {
        assert_eq!(quantity("1", Unit::Millimetre), "ein Millimeter", "masculine");
        assert_eq!(quantity("1", Unit::Ounce), "eine Unze", "feminine");
        assert_eq!(quantity("2,5", Unit::Thou), "zweieinhalb Thou", "a half");
        assert_eq!(quantity("1,5", Unit::Turn), "eineinhalb Umdrehungen", "one and a half");
        assert_eq!(quantity("0,5", Unit::Inch), "null Komma fünf Zoll", "less than one");
    }
}
