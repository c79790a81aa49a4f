//! What holds for every input, over random ones.

use Unit::*;
use pitleaf_core::limits::{Edge, Limit};
use pitleaf_core::quantity::{Bounds, Reading, Rounding, Unit, conversions};
use proptest::prelude::*;
use proptest::sample::select;

/// Tenths of a nanometre in a unit, by its definition, apart from the crate's own table.
fn tenths_of_nanometre(unit: Unit) -> i128 {
    match unit {
        Millimetre => 10_000_000,
        Inch => 254_000_000,
        Thou => 254_000,
        Micrometre => 10_000,
        Centimetre => 100_000_000,
        Metre => 10_000_000_000,
        Foot => 3_048_000_000,
        _ => panic!("{} is no length", unit.symbol()),
    }
}

fn decimal(count: i64, places: usize) -> String {
    let sign = if count < 0 { "-" } else { "" };
    let digits = format!("{:0width$}", count.unsigned_abs(), width = places + 1);
    let (whole, part) = digits.split_at(digits.len() - places);
    if places == 0 { format!("{sign}{whole}") } else { format!("{sign}{whole}.{part}") }
}

/// A shown figure as a whole number of tenths of a nanometre over a power of ten, by text alone.
fn parsed(figure: &str, unit: Unit) -> (i128, i128) {
    let places = figure.split_once('.').map_or(0, |(_, part)| part.len());
    let digits: i128 =
        figure.replace('.', "").replace('−', "-").parse().expect("a shown figure is digits alone");
    (digits * tenths_of_nanometre(unit), 10_i128.pow(u32::try_from(places).expect("few decimals")))
}

/// Count, decimals and unit of a length under 3900 of the unit: what the widest bounds take.
fn lengths() -> impl Strategy<Value = (i64, usize, Unit)> {
    select(vec![(Millimetre, 4_usize), (Inch, 5), (Thou, 3), (Micrometre, 2)])
        .prop_flat_map(|(unit, most)| (0..=most, Just(unit)))
        .prop_flat_map(|(places, unit)| {
            let most = 3_900 * 10_i64.pow(u32::try_from(places).expect("few decimals"));
            (-most..most, Just(places), Just(unit))
        })
        .prop_filter("minus zero is refused", |(count, _, _)| *count != 0)
}

fn read(text: &str, unit: Unit) -> Reading {
    Reading::read(text, unit, Bounds::widest(unit.dimension())).expect("a length in bounds")
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// k/1000 thou is k × 25.4 nm: typed in millimetres it is the same length, and meets a limit there;
    /// a tenth of a nanometre past it, it does not.
    #[test]
    fn the_edge_is_exact_in_either_unit(thousandths in 1_i64..9_000_000) {
        let tenths = thousandths * 254;
        let edge = Edge::read(&decimal(thousandths, 3), Thou).unwrap();
        let on_edge = read(&decimal(tenths, 7), Millimetre).amount();
        let above = read(&decimal(tenths + 1, 7), Millimetre).amount();
        let below = read(&decimal(tenths - 1, 7), Millimetre).amount();
        prop_assert_eq!(edge.amount(), on_edge);
        let upper = Limit { upper: Some(edge.clone()), ..Limit::default() };
        let lower = Limit { lower: Some(edge), ..Limit::default() };
        prop_assert!(upper.holds(on_edge) && upper.holds(below) && !upper.holds(above));
        prop_assert!(lower.holds(on_edge) && lower.holds(above) && !lower.holds(below));
    }

    /// Lengths compare as the whole numbers they are made of.
    #[test]
    fn order_is_the_order_of_whole_numbers(one in lengths(), other in lengths()) {
        let whole = |(count, places, unit): (i64, usize, Unit)| {
            i128::from(count) * tenths_of_nanometre(unit) * 10_i128.pow(6 - u32::try_from(places).expect("few decimals"))
        };
        let amount = |(count, places, unit): (i64, usize, Unit)| read(&decimal(count, places), unit).amount();
        prop_assert_eq!(amount(one).order(amount(other)), Some(whole(one).cmp(&whole(other))));
    }

    /// Where a figure can be told exactly, reading it gives the same length again.
    #[test]
    fn exact_figures_read_back((count, places, unit) in lengths()) {
        let reading = read(&decimal(count, places), unit);
        for row in conversions(&reading) {
            // Six decimals are held in every unit of length but the thou, which needs fewer here.
            let short = |exact: &String| exact.split_once('.').is_none_or(|(_, part)| part.len() <= 6);
            if let Some(exact) = row.exact.filter(short) {
                let back = read(&exact, row.unit).amount();
                prop_assert_eq!(back, reading.amount(), "{} {}", exact, row.unit.symbol());
            }
        }
    }

    /// A limit shown in any unit never admits what the original rejects, and gives away less than its last digit.
    #[test]
    fn an_edge_rounds_inward_in_every_unit(
        (count, places, unit) in lengths(),
        shown in select(vec![Millimetre, Inch, Thou, Micrometre, Centimetre, Metre, Foot]),
    ) {
        let edge = Edge::read(&decimal(count, places), unit).unwrap();
        let scale = 10_i128.pow(u32::try_from(places).expect("few decimals"));
        let original = i128::from(count) * tenths_of_nanometre(unit);
        for (inward, sign) in [(Rounding::Down, 1), (Rounding::Up, -1)] {
            let figure = edge.show(shown, inward);
            let (value, power) = parsed(&figure, shown);
            let inside = sign * (original * power - value * scale);
            prop_assert!(inside >= 0, "{figure} {} admits more", shown.symbol());
            let last_digit = tenths_of_nanometre(shown) * scale;
            prop_assert!(inside < last_digit, "{figure} {} gives away a digit", shown.symbol());
        }
    }

    /// Two edges a step apart never cross when both are rounded inward.
    #[test]
    fn a_limit_shown_in_another_unit_stays_a_limit(
        (count, places, unit) in lengths(),
        shown in select(vec![Millimetre, Inch, Thou, Micrometre, Centimetre, Metre, Foot]),
    ) {
        prop_assume!(count != -1);
        let lower = Edge::read(&decimal(count, places), unit).unwrap().show(shown, Rounding::Up);
        let upper = Edge::read(&decimal(count + 1, places), unit).unwrap().show(shown, Rounding::Down);
        let (low, low_power) = parsed(&lower, shown);
        let (high, high_power) = parsed(&upper, shown);
        prop_assert!(low * high_power < high * low_power, "{lower} to {upper} {}", shown.symbol());
    }

    /// No text whatever makes the reader panic, nor comes back outside its bounds.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,40}", unit in select(Unit::all().collect::<Vec<_>>())) {
        if let Ok(reading) = Reading::read(&text, unit, &Bounds::HEIGHT) {
            let millimetres = reading.amount().value(Millimetre);
            prop_assert!((-25.0..=25.0).contains(&millimetres));
        }
    }

    /// Texts made of the pieces a person types: read, or refused with a sentence that ends.
    #[test]
    fn likely_texts_are_read_or_refused(
        pieces in prop::collection::vec(
            select(vec!["0", "1", "9", ".", ",", "-", "−", "/", " ", "½", "⅓", "e", "in", "mm", "thou", "\"", "°", "\u{a0}"]),
            0..9,
        ),
    ) {
        let text = pieces.concat();
        match Reading::read(&text, Millimetre, &Bounds::HEIGHT) {
            Ok(reading) => prop_assert_eq!(reading.text(), text.trim()),
            Err(fault) => prop_assert!(fault.to_string().ends_with('.'), "{}", fault),
        }
    }
}
