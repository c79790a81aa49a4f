//! Outlines that can't be, and rows that can't be read.

use pitleaf_core::{
    ports::{Corner, Form, Outline, Port, SealedBy, read_rows},
    quantity::Unit,
    trochoid::{Engine, Point},
};
use proptest::prelude::*;
use uom::si::{area::square_millimeter, f64::Length, length::millimeter};

#[track_caller]
fn refused(points: &[(f64, f64)], sentences: &[&str]) {
    let points = points.iter().map(|(x, y)| Point::from_millimetres(*x, *y));
    let faults = Outline::new(points).expect_err("no outline");
    let got: Vec<_> = faults.iter().map(ToString::to_string).collect();
    assert_eq!(got, sentences, "what is wrong with the outline");
}

#[test]
fn outlines_that_cannot_be() {
    refused(&[], &["0 points make no outline: give three or more"]);
    refused(&[(1.0, 1.0), (1.0, 1.0)], &["one point makes no outline: give three or more"]);
    refused(&[(0.0, 0.0), (5.0, 0.0)], &["2 points make no outline: give three or more"]);
    refused(
        &[(0.0, 0.0), (5.0, f64::NAN), (5.0, 5.0), (2000.0, 5.0)],
        &[
            "row 2 is not a point on this plate: check the number and its unit",
            "row 4 is not a point on this plate: check the number and its unit",
        ],
    );
    refused(
        &[(0.0, 0.0), (10.0, 0.0), (20.0, 0.0)],
        &["all points lie on one line and enclose no area: add a point"],
    );
    // An edge that runs back over the one before.
    refused(
        &[(0.0, 0.0), (10.0, 0.0), (5.0, 0.0), (5.0, 5.0)],
        &[
            "the edge after row 1 and the edge after row 2 cross or touch: put the points in order \
             round the port",
            "the edge after row 1 and the edge after row 3 cross or touch: put the points in order \
             round the port",
        ],
    );
    refused(
        &[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (5.0, -5.0), (0.0, 10.0)],
        &[
            "the edge after row 1 and the edge after row 3 cross or touch: put the points in order \
             round the port",
            "the edge after row 1 and the edge after row 4 cross or touch: put the points in order \
             round the port",
        ],
    );
}

#[test]
fn ports_that_cannot_be() {
    let engine = Engine::preset();
    let port = |scale: f64, x: f64| {
        let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
        let points = corners.map(|(u, v)| Point::from_millimetres(x + scale * u, scale * v));
        let outline = Outline::new(points).expect("an outline");
        Port::new(&engine, &outline, SealedBy::SideSeal)
    };
    assert!(port(5.0, 100.0).is_ok(), "a port in the bore");
    assert!(port(5.0, 121.0).is_ok(), "a port that only reaches in");
    assert_eq!(
        port(5.0, 150.0).expect_err("no port").to_string(),
        "the outline lies wholly outside the bore, so this port would never open: check the signs \
         and the unit of its points",
        "outside"
    );
    assert_eq!(
        port(300.0, 0.0).expect_err("no port").to_string(),
        "the outline goes round the whole bore: check the unit of its points",
        "around"
    );
}

/// A square with rounded corners has r²(4 − π) less area.
#[test]
fn rounded_corners() {
    let square = |radius: f64| {
        [(0.0, 0.0), (30.0, 0.0), (30.0, 30.0), (0.0, 30.0)].map(|(x, y)| Corner {
            point: Point::from_millimetres(x, y),
            radius: Length::new::<millimeter>(radius),
        })
    };
    for radius in [0.0, 0.5, 5.0, 15.0] {
        let outline = Outline::rounded(&square(radius)).expect("room for the radius");
        let wanted = 900.0 - radius * radius * (4.0 - std::f64::consts::PI);
        let got = outline.area().get::<square_millimeter>();
        assert!(
            (got - wanted).abs() < 0.002 * 2.0 * 3.2 * radius + 1e-9,
            "radius {radius}: got {got}, wanted {wanted} mm²"
        );
    }
    let faults = Outline::rounded(&square(15.1)).expect_err("no room");
    assert_eq!(faults.len(), 4, "all four corners");
    assert_eq!(
        faults[1].to_string(),
        "the corner in row 2 has no room for a radius of 15.1 mm: make it smaller",
        "no room"
    );
    // 12 mm fit the long edge before the second corner but not the short one after it.
    let mut low = square(0.0).map(|corner| {
        let (x, y) = corner.point.millimetres();
        Corner { point: Point::from_millimetres(x, y / 3.0), ..corner }
    });
    low[1].radius = Length::new::<millimeter>(12.0);
    let faults = Outline::rounded(&low).expect_err("no room");
    let got: Vec<_> = faults.iter().map(ToString::to_string).collect();
    assert_eq!(
        got,
        ["the corner in row 2 has no room for a radius of 12 mm: make it smaller"],
        "the second corner alone"
    );
    let faults = Outline::rounded(&square(-1.0)).expect_err("no radius");
    assert_eq!(
        faults[0].to_string(),
        "the corner in row 1 has no room for a radius of -1 mm: make it smaller",
        "below nothing"
    );
    // Where metal juts into the port, its tip is rounded off and the port grows.
    let mut notch = square(3.0).to_vec();
    notch.insert(2, Corner { point: Point::from_millimetres(20.0, 15.0), ..notch[0] });
    let outline = Outline::rounded(&notch).expect("room for the radius");
    assert!(outline.contains(Point::from_millimetres(20.01, 15.0)), "the tip is gone");
    assert!(
        outline
            .points()
            .iter()
            .all(|p| p.distance(Point::from_millimetres(20.0, 15.0))
                > Length::new::<millimeter>(0.3)),
        "its corner is rounded"
    );
}

#[test]
fn rows_as_pasted() {
    let read = |text, unit, form| -> Vec<(f64, f64)> {
        read_rows(text, unit, form)
            .expect("rows")
            .iter()
            .map(|corner| corner.point.millimetres())
            .collect()
    };
    let places = [(10.5, 20.25), (-3.0, 0.0)];
    for text in
        ["10,5 20,25\n-3 0", "10.5;20.25\n\n-3;0\n", "10.5\t20.25\n-3\t-0.0", "10.5, 20.25\n-3,0"]
    {
        assert_eq!(read(text, Unit::Millimetre, Form::Coordinates), places, "{text:?}");
    }
    assert_eq!(read("1 1/2", Unit::Inch, Form::Coordinates), [(25.4, 12.7)], "inches");
    let polar = read("100 30", Unit::Millimetre, Form::RadiusAndAngle)[0];
    assert!((polar.0 - 86.602_540).abs() < 1e-6 && (polar.1 - 50.0).abs() < 1e-9, "{polar:?}");
    let corner = read_rows("1 2 0.25", Unit::Inch, Form::Coordinates).expect("a row")[0];
    assert!((corner.radius.get::<millimeter>() - 6.35).abs() < 1e-12, "{corner:?}");
}

#[test]
fn rows_that_cannot_be_read() {
    let faults = read_rows("1 2\n3\n\n4 5 6 7\n8 nine", Unit::Millimetre, Form::Coordinates)
        .expect_err("rows that can't be read");
    let got: Vec<_> = faults.iter().map(ToString::to_string).collect();
    assert_eq!(got.len(), 3, "three rows: {got:?}");
    assert_eq!(
        got[0], "row 2: one number found, give two, or three with the corner's radius",
        "one number"
    );
    assert_eq!(
        got[1], "row 4: 4 numbers found, give two, or three with the corner's radius",
        "four numbers"
    );
    assert!(got[2].starts_with("row 5: "), "the number's own sentence with its row: {}", got[2]);
}

proptest! {
    #[test]
    fn no_text_brings_the_reader_down(text in "[-0-9,.; \n\tex/½]{0,60}") {
        for form in [Form::Coordinates, Form::RadiusAndAngle] {
            if let Ok(corners) = read_rows(&text, Unit::Inch, form) {
                prop_assert!(
                    corners.iter().all(|corner| corner.point.millimetres().0.is_finite()),
                    "{text:?} became {corners:?}"
                );
            }
        }
    }

    #[test]
    fn no_outline_brings_the_port_down(
        points in prop::collection::vec((-130.0..130.0_f64, -110.0..110.0_f64), 3..9),
    ) {
        let points = points.into_iter().map(|(x, y)| Point::from_millimetres(x, y));
        let Ok(outline) = Outline::new(points) else { return Ok(()) };
        let Ok(port) = Port::new(&Engine::preset(), &outline, SealedBy::SideSeal) else { return Ok(()) };
        prop_assert!(port.area() <= outline.area() * (1.0 + 1e-9), "{:?} of {:?}", port.area(), outline.area());
    }
}
