//! A port swept a part at a time, as a screen does it frame by frame.

use pitleaf_core::{
    ports::{
        Flow, Form, PlatePort, PortFace, PortName, Seat, SideHousing, Stage, SweptSoFar,
        TypedOutline,
    },
    quantity::Unit,
    trochoid::{Chamber, Engine},
};
use uom::si::area::square_millimeter;

fn outline(rows: &str) -> TypedOutline {
    let (housing, flow) = (SideHousing::Front, Flow::Intake);
    let name = PortName { housing, flow, number: 1, stage: Stage::Stock };
    TypedOutline { rows: rows.to_owned(), ..TypedOutline::empty(name, Unit::Millimetre) }
}

fn face() -> PortFace {
    PortFace::usual(SideHousing::Front)
}

/// Gone on with frame by frame, a port comes out as in one go; however large the steps.
#[test]
fn a_port_swept_a_few_steps_at_a_time_is_the_same_port() {
    let engine = Engine::preset();
    let outline = outline("61 -42 4\n74 -46 5\n70 -63 5\n50 -72 6\n48 -58 5");
    let whole = PlatePort::new(&outline, &engine, face()).expect("an outline");
    let seat = Seat::new(&engine, face().sealed_by);
    for (steps, goes) in [(1, 720), (60, 12), (100, 8), (u32::MAX, 1)] {
        let mut port = SweptSoFar::begin(&outline, &engine, face(), &seat).expect("a port");
        let mut gone = 1;
        while !port.go_on(steps) {
            gone += 1;
        }
        assert_eq!(gone, goes, "in steps of {steps}");
        assert_eq!(port.finish().sweep, whole.sweep, "in steps of {steps}");
    }
    let begun = SweptSoFar::begin(&outline, &engine, face(), &seat).expect("a port");
    assert_eq!(begun.finish().sweep, whole.sweep, "what is left is done at the end");
    // In one go it is swept by the same code: each step of each chamber is asked of the port itself, too.
    let port = whole.port.as_ref().expect("a side port");
    for (index, chamber) in Chamber::ALL.into_iter().enumerate() {
        let mut steps = 0;
        for area in whole.sweep.areas(chamber) {
            let theta = whole.sweep.step() * f64::from(steps);
            let wanted = port.open_areas(theta).areas()[index].get::<square_millimeter>();
            let what = format!("{chamber:?}, step {steps}");
            let off = (area.get::<square_millimeter>() - wanted).abs();
            assert!(off <= 1e-6, "{what}: {off} off");
            steps += 1;
        }
        assert_eq!(steps, 3 * 720, "the full cycle");
    }
}

/// A port in the bore is swept in no time: it is done at the first go, and comes out as in one.
#[test]
fn a_port_in_the_bore_is_done_at_the_first_go() {
    let engine = Engine::preset();
    let outline =
        TypedOutline { width: "20".to_owned(), form: Form::RadiusAndAngle, ..outline("200\n215") };
    let whole = PlatePort::new(&outline, &engine, face()).expect("an outline");
    let seat = Seat::new(&engine, face().sealed_by);
    let mut port = SweptSoFar::begin(&outline, &engine, face(), &seat).expect("a port");
    assert!(port.go_on(1), "done");
    let port = port.finish();
    assert_eq!(port.sweep, whole.sweep, "the same sweep");
    assert_eq!(port.sweep.areas(Chamber::ALL[0]).count(), 3 * 720, "in half degrees");
    assert!(port.port.is_none(), "no side port");
}
