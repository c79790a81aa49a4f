//! Slots by name.

use super::slot;
use pitleaf_core::book::{Face, Slot};
use pitleaf_core::kept;

#[test]
fn a_slot_is_named_by_rotor_face_and_corners() {
    let second = slot("2R-CA");
    assert_eq!((second.rotor(), second.face(), second.flank()), (2, Face::Rear, 2), "2R-CA");
    assert_eq!(second.to_string(), "2R-CA", "and back");
}

#[test]
fn what_no_rotor_has_is_no_slot() {
    for text in [
        "", "-", "1F", "1F-", "0F-AB", "5F-AB", "1f-AB", "1F-BA", "1F-AC", "1FF-AB", "F-AB",
        "1F-AB ",
    ] {
        assert_eq!(Slot::named(text), None, "{text:?}");
    }
    assert_eq!(Slot::new(1, Face::Front, 3), None, "a fourth flank");
    let refused = kept::read::<Slot>("\"9F-AB\"").unwrap_err().to_string();
    assert!(refused.starts_with("a slot that no rotor has"), "{refused}");
}

#[test]
fn an_engine_has_six_slots_a_rotor() {
    let slots = Slot::of_engine(2);
    let names: Vec<String> = slots.iter().map(Slot::to_string).collect();
    assert_eq!(
        names,
        [
            "1F-AB", "1F-BC", "1F-CA", "1R-AB", "1R-BC", "1R-CA", "2F-AB", "2F-BC", "2F-CA",
            "2R-AB", "2R-BC", "2R-CA"
        ],
        "front to rear"
    );
    assert!(slots.iter().all(|slot| Slot::named(&slot.to_string()) == Some(*slot)), "each by name");
}
