//! Limits: by their own words, by the trade's, by both names of a unit.

use crate::{limits, tables};
use pitleaf_core::limits::Sheet;
use pitleaf_core::quantity::{Dimension, Unit};

#[test]
fn every_row_is_found_by_each_of_its_words_and_by_its_name() {
    let (sheet, finder) = (Sheet::starter(), tables());
    for row in sheet.rows() {
        for word in row.words.split(' ').chain(row.part.name().split(' ')) {
            assert!(limits(&finder, word).contains(&row.id.as_str()), "{}: {word:?}", row.id);
        }
        let best = limits(&finder, &row.what)[0];
        assert_eq!(sheet.row(best).map(|best| &best.what), Some(&row.what), "by its name");
    }
}

#[test]
fn every_row_is_found_by_each_unit_of_its_kind() {
    let (sheet, finder) = (Sheet::starter(), tables());
    for row in sheet.rows() {
        for unit in row.unit.dimension().units() {
            // A sign alone, such as that of a degree, is no word.
            if unit.symbol().chars().any(char::is_alphanumeric) {
                let found = limits(&finder, unit.symbol());
                assert!(found.contains(&row.id.as_str()), "{} by {}", row.id, unit.symbol());
            }
        }
    }
    let lengths = |row: &&pitleaf_core::limits::Row| row.unit.dimension() == Dimension::Length;
    let count = sheet.rows().iter().filter(lengths).count();
    for word in
        ["thou", "thousandths", "inch", "inches", "mm", "millimetre", "thousanths", "milimetre"]
    {
        assert!(limits(&finder, word).len() >= count, "{word}");
    }
    assert!(limits(&finder, "side seal gap thou").contains(&"side-seal-gap-na"), "inch row");
    assert!(limits(&finder, "end play thou").contains(&"end-play"), "metric row");
    assert!(limits(&finder, "side seal gap mm").contains(&"side-seal-gap-na"), "inch row");
    assert!(!limits(&finder, "tension bolts torque").is_empty(), "a torque");
    let torque = Unit::all().filter(|unit| unit.dimension() == Dimension::Torque);
    for unit in torque {
        let query = format!("front bolt {}", unit.symbol());
        assert!(limits(&finder, &query).contains(&"front-bolt-torque"), "{query}");
    }
}

#[test]
fn the_trades_words_find_what_they_mean() {
    let finder = tables();
    for (query, wanted) in [
        ("end float", "end-play"),
        ("endplay", "end-play"),
        ("end play", "end-play"),
        ("warp", "side-housing-warp"),
        ("warp rotor housing", "rotor-housing-warp"),
        ("crank runout", "shaft-runout"),
        ("e-shaft runout", "shaft-runout"),
        ("eshaft runout", "shaft-runout"),
        ("turbo side-seal gap", "side-seal-gap-fi"),
        ("gap side NA", "side-seal-gap-na"),
        ("backlash", "gear-backlash"),
        ("chain", "oil-pump-chain-slack"),
        ("comp spread", "compression-face-spread"),
        ("stretch bolt", "tension-bolt-length-spread"),
        ("chrome", "rotor-housing-track-wear"),
        ("solid dowel", "dowel-clearance-solid"),
        ("weight", "rotor-mass-spread"),
        // Words of the same meaning that no row has itself.
        ("shim", "end-play"),
        ("imbalance", "shaft-unbalance"),
        ("lap iron", "side-housing-lapped-off"),
        ("what is the end play of a shaft", "end-play"),
        // Words of the trade.
        ("pressure test", "coolant-pressure-loss"),
        ("bob weight", "shaft-unbalance"),
        ("case depth", "side-housing-lapped-off"),
        ("nitrocarburising", "side-housing-lapped-off"),
        ("flaking", "rotor-housing-track-wear"),
        // Misspelt.
        ("appex seal", "apex-seal-warp"),
        ("feler side seal", "side-seal-gap-na"),
        ("torqe", "tension-bolt-torque"),
        ("schim", "end-play"),
        ("backlsah", "gear-backlash"),
        ("comprssion", "compression-na"),
        ("excentric runout", "shaft-runout"),
        ("termostat", "thermostat-opens"),
    ] {
        let found = limits(&finder, query);
        assert!(found.iter().take(6).any(|id| *id == wanted), "{query:?} finds {found:?}");
    }
}
