//! Which gauges a row offers, and what "other" means in older books.

use super::read;
use pitleaf_core::limits::{Gauge, GaugeKind, Row, Sheet};
use pitleaf_core::quantity::{Amount, Unit};

fn row(id: &str) -> Row {
    Sheet::starter().row(id).unwrap_or_else(|| panic!("no row {id}")).clone()
}

fn micrometres(count: i64) -> Amount {
    Amount::whole(count, Unit::Micrometre)
}

#[test]
fn each_row_offers_only_what_measures_its_dimension_and_states_its_doubt() {
    for row in Sheet::starter().rows() {
        let kinds = row.gauges(None);
        for kind in &kinds {
            let (of, name) = (kind.unit().dimension(), kind.name());
            assert_eq!(of, row.unit.dimension(), "{}: {name}", row.id);
            assert_eq!(row.gauge_meant(*kind), *kind, "{}: {name} would be another", row.id);
        }
        let first = Gauge::usual(kinds[0]);
        assert!(first.is_stated(row.unit.dimension()), "{} starts with a perfect gauge", row.id);
        let once: std::collections::HashSet<_> = kinds.iter().collect();
        assert_eq!(once.len(), kinds.len(), "{}: one is offered twice", row.id);
    }
}

#[test]
fn a_row_starts_with_the_gauge_it_is_meant_for() {
    for (id, kind) in [
        ("compression-na", GaugeKind::CompressionTester),
        ("oil-pressure-running", GaugeKind::PressureGauge),
        ("coolant-pressure-loss", GaugeKind::CoolingTester),
        ("tension-bolt-torque", GaugeKind::TorqueWrench),
        ("thermostat-opens", GaugeKind::Thermometer),
        ("rotor-mass-spread", GaugeKind::Balance),
        ("oil-pump-chain-slack", GaugeKind::SteelRule),
        ("side-housing-roughness", GaugeKind::RoughnessTester),
        ("side-seal-gap-na", GaugeKind::FeelerLeaf),
        ("end-play", GaugeKind::DialIndicator),
    ] {
        assert_eq!(row(id).gauges(None)[0], kind, "{id}");
    }
}

/// The thinnest usual leaf is 0.03 mm (metric sets) or 1½ thou: neither goes into a gap of 0.020 mm.
#[test]
fn no_leaf_is_offered_for_what_is_thinner_than_any() {
    let thin = row("corner-seal-clearance");
    let lower = thin.limit.lower.as_ref().expect("a lower edge").amount();
    assert!(lower < micrometres(30), "the row this is about");
    let kinds = thin.gauges(None);
    assert_eq!(kinds[0], GaugeKind::SizeDifference, "starts with bore less seal");
    assert!(!kinds.contains(&GaugeKind::FeelerLeaf), "{kinds:?}");
    // The builder's own set decides: one that begins at 0.01 mm goes, one from 0.05 mm does not.
    assert!(thin.gauges(Some(micrometres(10))).contains(&GaugeKind::FeelerLeaf), "thin leaves");
    let gap = row("side-seal-gap-na");
    assert!(gap.gauges(None).contains(&GaugeKind::FeelerLeaf), "1½ thou");
    assert!(!gap.gauges(Some(micrometres(50))).contains(&GaugeKind::FeelerLeaf), "from 0.05 mm");
}

/// "Other" was the word for torque wrench, pressure gauge, balance before they had names: a reading in an older
/// book is judged with the usual doubt of the gauge it must have been, never with none.
#[test]
fn other_in_an_older_book_is_judged_with_a_doubt_or_not_at_all() {
    let sheet = Sheet::starter();
    for (id, text, unit, kind) in [
        ("oil-pressure-idle", "106", Unit::Kilopascal, GaugeKind::PressureGauge),
        ("front-bolt-torque", "118", Unit::NewtonMetre, GaugeKind::TorqueWrench),
        ("oil-pump-chain-slack", "5", Unit::Millimetre, GaugeKind::SteelRule),
        ("rotor-mass-spread", "2", Unit::Gram, GaugeKind::Balance),
    ] {
        let judged = sheet.judge(&row(id), &read(text, unit), GaugeKind::Other).expect(id);
        assert_eq!(judged.gauge, Gauge::usual(kind), "{id}");
        assert!(!judged.verdict.guard.is_zero(), "{id} has a doubt");
    }
    let meant = row("compression-na").gauge_meant(GaugeKind::Other);
    assert_eq!(meant, GaugeKind::CompressionTester, "of a compression");
    // A builder's own row as an older book has it, with "other" for its gauge.
    let old = Row { gauge: GaugeKind::Other, ..row("compression-na") };
    assert_eq!(old.gauge_meant(GaugeKind::Other), GaugeKind::PressureGauge, "an own row");
    // Of a length "other" may be anything: it stays so, and proves nothing until its doubt is stated.
    assert_eq!(row("rotor-housing-width").gauge_meant(GaugeKind::Other), GaugeKind::Other);
}
