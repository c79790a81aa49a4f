//! The picture of how a row is measured fits what the row says.

use pitleaf_core::faces::Survey;
use pitleaf_core::limits::{Picture, Sheet};
use pitleaf_core::trochoid::Geometry;
use std::collections::HashSet;

#[test]
fn each_row_is_drawn_with_its_own_gauge() {
    let sheet = Sheet::starter();
    for (id, wanted) in [
        ("side-seal-gap-na", Picture::LeafAtEnd),
        ("side-seal-slot-clearance", Picture::LeafInSlot),
        ("side-housing-warp", Picture::StraightedgeOnFace),
        ("apex-seal-warp", Picture::LeafOnPlate),
        ("rotor-housing-width", Picture::MicrometerOverHousing),
        ("shaft-main-journal", Picture::MicrometerOverRound),
        ("apex-seal-height-2mm", Picture::MicrometerOverSeal),
        ("main-bearing-bore", Picture::BoreGauge),
        ("rotor-land-protrusion", Picture::DepthFromFace),
        ("side-housing-step-side-seal", Picture::DialOverTrack),
        ("front-cover-stack", Picture::CoverOverStack),
        ("shaft-runout", Picture::DialOnShaft),
        ("flywheel-runout", Picture::DialOnShaft),
        ("end-play", Picture::DialOnEnd),
        ("gear-backlash", Picture::DialOnTooth),
        ("corner-seal-spring-spread", Picture::HeightOnPlate),
        ("oil-pump-chain-slack", Picture::ChainSlack),
        ("front-bolt-torque", Picture::TorqueWrench),
        ("compression-na", Picture::PressureGauge),
        ("rotor-mass-spread", Picture::Balance),
        ("thermostat-opens", Picture::Vessel),
    ] {
        let row = sheet.row(id).unwrap_or_else(|| panic!("no row {id}"));
        assert_eq!(row.picture(), wanted, "{id}");
    }
    let used: HashSet<Picture> = sheet.rows().iter().map(|row| row.picture()).collect();
    assert_eq!(used.len(), 20, "a picture is drawn for no row: {used:?}");
}

/// What is read place by place shows its places on the part's own map, or a picture; a plan measures nothing,
/// and places the builder gives are drawn as they are typed.
#[test]
fn each_survey_shows_where_it_is_read() {
    for survey in Survey::ALL.into_iter().filter(|survey| *survey != Survey::Lapping) {
        let places = survey.places(Geometry::preset().bore());
        assert_eq!(places.is_empty(), survey == Survey::OwnPlaces, "{}", survey.word());
        let has_map = places.first().is_none_or(|place| place.at.is_some());
        assert!(has_map != survey.picture().is_some(), "{}: a map or a picture", survey.word());
    }
    assert_eq!(Survey::RotorWidth.picture(), Some(Picture::MicrometerOverRotor), "a rotor");
    assert_eq!(Survey::PlasticGauge.picture(), Some(Picture::StripInBearing), "a strip");
}
