//! What a port screen shows: rows typed and edited, the picture, the curve, the sentences.

use pitleaf_core::{
    book::{Fact, demo},
    ports::{
        DeadCentre, Flow, Form, PlatePort, PlugSide, PortFace, PortName, Rotation, Shape,
        SideHousing, Stage, Timing, TypedDatums, TypedOutline, View, Weight, Window, add_corner,
        as_it_will_be, chart, corner_radius, findings, line, move_corner, nearest_corner, on_bore,
        picture, read_rows, remove_corner, round_corner, shown, table, write_rows,
    },
    quantity::Unit,
    trochoid::{Chamber, Engine, Measure, Point, TypedEngine},
};
use uom::si::{
    angle::degree,
    area::square_millimeter,
    f64::{Angle, Area, Length},
    length::millimeter,
};

const STOCK: &str = "61 -42 4\n74 -46 5\n70 -63 5\n50 -72 6\n48 -58 5";
const CUT: &str = "60 -41 4\n78 -44 5\n75 -66 6\n46 -76 5\n44 -62 5";

fn mm(value: f64) -> Length {
    Length::new::<millimeter>(value)
}

fn deg(value: f64) -> Angle {
    Angle::new::<degree>(value)
}

fn named(flow: Flow, stage: Stage) -> PortName {
    PortName { housing: SideHousing::Front, flow, number: 1, stage }
}

fn typed(stage: Stage, rows: &str) -> TypedOutline {
    let empty = TypedOutline::empty(named(Flow::Intake, stage), Unit::Millimetre);
    TypedOutline { rows: rows.to_owned(), ..empty }
}

fn face() -> PortFace {
    PortFace::usual(SideHousing::Front)
}

#[track_caller]
fn put_in(outline: &TypedOutline, face: PortFace) -> PlatePort {
    PlatePort::new(outline, &Engine::preset(), face).expect("an outline that can be put in")
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within}");
}

/// What is typed in inches is the same port, and so is what is typed by radius and angle.
#[test]
fn rows_in_other_units_and_forms_are_the_same_port() {
    let engine = Engine::preset();
    let metric = typed(Stage::Stock, "61 -42\n74 -46\n70 -63\n50 -72");
    let corners = metric.corners_in(&engine).expect("rows that can be read");
    let points = || corners.iter().map(|corner| corner.point);
    let area = |outline: &TypedOutline| match outline.shape(&engine, face().view) {
        Ok(Shape::Side(outline)) => outline.area().get::<square_millimeter>(),
        other => panic!("no side port: {other:?}"),
    };
    for (unit, form) in [
        (Unit::Inch, Form::Coordinates),
        (Unit::Millimetre, Form::RadiusAndAngle),
        (Unit::Inch, Form::RadiusAndAngle),
    ] {
        let rows = write_rows(points(), unit, form);
        let other = TypedOutline { rows, unit, form, ..metric.clone() };
        // Rows are written to about a hundredth of a millimetre.
        close(area(&other), area(&metric), 0.8, &format!("{unit:?}, {form:?}"));
    }
}

#[test]
fn a_corner_is_moved_added_and_taken_away_and_the_others_stay_as_typed() {
    let rows = "61, -42, 4\n\n  74;-46  5\n70 -63";
    let to = Point::from_millimetres(75.126, -45.0);
    let moved = move_corner(rows, 1, to, Unit::Millimetre, Form::Coordinates);
    assert_eq!(moved, "61, -42, 4\n\n75.13 -45.00 5\n70 -63", "the second, with its radius");
    let moved = move_corner("61,-42,4\n70,-63,2", 0, to, Unit::Inch, Form::Coordinates);
    assert_eq!(moved, "2.9577 -1.7717 4\n70,-63,2", "parted by commas, in inches");
    assert_eq!(remove_corner(rows, 2), "61, -42, 4\n\n  74;-46  5", "the third");
    assert_eq!(remove_corner(rows, 9), rows, "one that is not there");
    let corners = read_rows(rows, Unit::Millimetre, Form::Coordinates).expect("rows");
    let added = add_corner(rows, &corners, 2, Unit::Millimetre, Form::Coordinates);
    assert!(added.ends_with("70 -63\n65.50 -52.50"), "between the last and the first: {added}");
    assert_eq!(nearest_corner(&corners, to), Some(1), "the nearest");
    assert_eq!(nearest_corner(&[], to), None, "of none");
}

#[test]
fn a_corners_radius_is_typed_and_its_place_stays() {
    let rows = "61, -42, 4\n\n74;-46\n70,5 -63 2,5\n10,20,3";
    let read =
        |rows: &str| read_rows(rows, Unit::Millimetre, Form::Coordinates).expect("readable rows");
    for (number, was, typed, wanted) in [
        (0, "4", "6.5", "61 -42 6.5\n\n74;-46\n70,5 -63 2,5\n10,20,3"),
        (1, "", "1,5", "61, -42, 4\n\n74 -46 1,5\n70,5 -63 2,5\n10,20,3"),
        (2, "2,5", "", "61, -42, 4\n\n74;-46\n70,5 -63\n10,20,3"),
        (3, "3", "2,5", "61, -42, 4\n\n74;-46\n70,5 -63 2,5\n10 20 2,5"),
    ] {
        assert_eq!(corner_radius(rows, number), was, "corner {number}");
        let rounded = round_corner(rows, number, typed);
        assert_eq!(rounded, wanted, "corner {number}");
        assert_eq!(corner_radius(&rounded, number), typed, "read back as typed");
        for (at, (old, new)) in read(rows).iter().zip(read(&rounded)).enumerate() {
            assert_eq!(old.point, new.point, "the place of corner {at}");
            assert!(at == number || old.radius == new.radius, "the radius of corner {at}");
        }
    }
    let half = round_corner(rows, 0, "4,");
    assert_eq!(corner_radius(&half, 0), "4,", "half typed: the comma is not eaten");
    let odd = round_corner(rows, 0, "4 x");
    assert_eq!(corner_radius(&odd, 0), "4 x", "what can't be read stays as typed");
    assert_eq!(round_corner(rows, 9, "5"), rows, "one that is not there");
    assert_eq!(corner_radius(rows, 9), "", "of none");
    let to = Point::from_millimetres(75.0, -45.0);
    let moved = move_corner("74;-46;2,5", 0, to, Unit::Millimetre, Form::Coordinates);
    assert_eq!(moved, "75.00 -45.00 2,5", "a decimal comma is no end of the radius");
}

#[test]
fn an_outline_that_cannot_be_says_why() {
    let refused = |outline: &TypedOutline| {
        PlatePort::new(outline, &Engine::preset(), face()).expect_err("no port")
    };
    assert_eq!(
        refused(&typed(Stage::Cut, "60 -42\nabc -46\n70")),
        [
            "row 2: “abc” is no number. Use digits with one point or comma.",
            "row 3: one number found, give two, or three with the corner's radius"
        ],
        "every row"
    );
    let wide = TypedOutline { width: "20 mm".to_owned(), ..typed(Stage::Cut, "100 0") };
    assert_eq!(
        refused(&wide),
        ["a port in the bore has two edges, each a row of its own: 1 row found"],
        "one edge"
    );
    let holes = TypedDatums {
        housing: SideHousing::Front,
        rows: "98 64 10\n-98 64".to_owned(),
        unit: Unit::Millimetre,
    };
    assert_eq!(
        holes.datums().expect_err("a hole without a diameter"),
        ["hole 2 has no diameter: give it as the third number of its row"],
        "holes"
    );
}

/// The angle alone is a place on the bore: the same port as by its coordinates.
#[test]
fn edges_in_the_bore_may_be_given_by_their_angle() {
    let engine = Engine::preset();
    let bore = engine.geometry().bore();
    let points = [200.0, 215.0].map(|alpha| bore.point(deg(alpha)));
    let by_points = TypedOutline {
        width: "20".to_owned(),
        ..typed(Stage::Stock, &write_rows(points, Unit::Millimetre, Form::Coordinates))
    };
    let angle = |point: Point| {
        let (x, y) = point.millimetres();
        format!("{:.6}", y.atan2(x).to_degrees())
    };
    let rows = points.map(angle).join("\n");
    let form = Form::RadiusAndAngle;
    let by_angles = TypedOutline { rows, form, ..by_points.clone() };
    let (one, other) = (put_in(&by_points, face()), put_in(&by_angles, face()));
    let opens = |port: &PlatePort| port.figures.openings[0].opens(Chamber::First).get::<degree>();
    close(opens(&other), opens(&one), 0.02, "opens");
    let area = |port: &PlatePort| port.figures.area.get::<square_millimeter>();
    close(area(&other), area(&one), 0.3, "area");
    // Against the curve itself: on it, and in the direction asked for, all round.
    for degrees in -36..=36 {
        let wanted = f64::from(degrees) * 5.0;
        let (x, y) = on_bore(engine.geometry(), deg(wanted)).millimetres();
        let (sin, cos) = wanted.to_radians().sin_cos();
        close(x * sin - y * cos, 0.0, 1e-9, "to the side of the direction");
        assert!(x * cos + y * sin > 0.0, "{wanted}°: on the other side of the shaft");
        let near = (0..7200).fold(f64::MAX, |least, step| {
            let (a, b) = bore.point(deg(f64::from(step) * 0.05)).millimetres();
            least.min((a - x).hypot(b - y))
        });
        // Samples lie up to a tenth of a millimetre apart.
        assert!(near < 0.06, "{wanted}°: {near} mm off the bore");
    }
    let refused = |rows: &str, form| {
        let outline = TypedOutline { rows: rows.to_owned(), form, ..by_points.clone() };
        PlatePort::new(&outline, &engine, face()).expect_err("no port")
    };
    assert_eq!(
        refused("200\nabc", Form::RadiusAndAngle),
        ["row 2: “abc” is no number. Use digits with one point or comma."]
    );
    assert_eq!(
        refused("200\n215", Form::Coordinates),
        [
            "row 1: one number found, give two, or three with the corner's radius",
            "row 2: one number found, give two, or three with the corner's radius"
        ],
        "of x and y one is no place"
    );
    let side = TypedOutline { width: String::new(), ..by_angles };
    assert_eq!(side.corners_in(&engine).unwrap_err().len(), 2, "in the side an angle is no place");
}

/// A port in the bore runs the shorter way between its edges, however the face is looked at.
#[test]
fn edges_in_the_bore_may_be_given_in_either_order() {
    let bore = Engine::preset().geometry().bore();
    let [one, other] = [200.0, 215.0].map(|alpha| bore.point(deg(alpha)));
    let port = |points: [Point; 2], face: PortFace| {
        let points = points.map(|point| face.view.turn_over(point));
        let outline = TypedOutline {
            width: "20".to_owned(),
            ..typed(Stage::Stock, &write_rows(points, Unit::Millimetre, Form::Coordinates))
        };
        put_in(&outline, face)
    };
    let usual = port([one, other], face());
    let mut turned = face();
    turned.view.rotation = Rotation::Clockwise;
    for (port, what) in [
        (port([other, one], face()), "the other way round"),
        (port([one, other], turned), "as seen from the other side"),
    ] {
        let area = port.figures.area.get::<square_millimeter>();
        close(area, usual.figures.area.get::<square_millimeter>(), 0.5, what);
        close(
            port.figures.openings[0].opens(Chamber::First).get::<degree>(),
            usual.figures.openings[0].opens(Chamber::First).get::<degree>(),
            0.05,
            what,
        );
    }
    let opening = usual.figures.openings[0];
    let middle = 0.5 * (opening.opens(Chamber::First) + opening.closes(Chamber::First));
    let open = usual.open_now(middle)[0].get::<square_millimeter>();
    close(open, usual.figures.area.get::<square_millimeter>(), 1e-6, "wide open in the middle");
}

/// The chart and the shaft are two ways of saying the same, for every view.
#[test]
fn across_the_chart_and_back() {
    for rotation in [Rotation::Clockwise, Rotation::Anticlockwise] {
        for plugs in [PlugSide::Top, PlugSide::Bottom] {
            let view = View { rotation, plugs, ..View::usual(SideHousing::Rear) };
            for tenths in [0, 10, 2_700, 5_400, 8_110, 10_790] {
                let theta = chart::theta_at(view, tenths);
                assert_eq!(10 * chart::across(view, theta), tenths, "{view:?} at {tenths}");
                let angle = view.cycle_angle(Chamber::First, theta).get::<degree>();
                let wanted = (0.1 * f64::from(tenths) + 540.0).rem_euclid(1080.0);
                let off = (angle - wanted + 540.0).rem_euclid(1080.0) - 540.0;
                close(off, 0.0, 1e-9, "off the chamber's own place");
            }
        }
    }
    assert_eq!(chart::turned_on(10_790, deg(2.0)), 10, "past the end");
    assert_eq!(chart::turned_on(0, deg(-1.0)), 10_790, "before the start");
}

/// A finger that turns the rotor by a third of what the shaft turns, either way round.
#[test]
fn a_finger_on_the_rotor_turns_the_shaft_three_times_as_far() {
    let from = Point::from_millimetres(80.0, 0.0);
    let to = Point::from_millimetres(0.0, 40.0);
    let mut view = View::usual(SideHousing::Front);
    close(view.shaft_turn(from, to).get::<degree>(), 270.0, 1e-9, "against the clock");
    view.rotation = Rotation::Clockwise;
    close(view.shaft_turn(from, to).get::<degree>(), -270.0, 1e-9, "with the clock");
}

/// The picture's rotor stands where the geometry puts it: an apex drawn by the transform is the
/// apex.
#[test]
fn the_drawn_rotor_is_the_rotor() {
    let engine = Engine::preset();
    let apex = Point::new(engine.geometry().generating_radius(), mm(0.0));
    for rotation in [Rotation::Anticlockwise, Rotation::Clockwise] {
        let view = View { rotation, ..View::usual(SideHousing::Front) };
        for theta in [0.0, 77.0, 400.0, 1079.0].map(deg) {
            let transform = picture::rotor_transform(engine.geometry(), view, theta);
            let (x, y) = picture::drawn(apex);
            let got = applied(&transform, (f64::from(x), f64::from(y)));
            let wanted = picture::drawn(view.turn_over(engine.geometry().apexes(theta)[0]));
            let off = (got.0 - f64::from(wanted.0)).hypot(got.1 - f64::from(wanted.1));
            assert!(off < 3.0, "{transform}: {off} hundredths of a millimetre off");
        }
    }
}

/// A point under `translate(x y)rotate(a)`, and `scale(-1 1)` if it is there, as SVG 1.1 says in
/// 7.6: the last is applied first.
fn applied(transform: &str, (x, y): (f64, f64)) -> (f64, f64) {
    let of = |name: &str| -> Vec<f64> {
        let rest = transform.split(name).nth(1).expect("the transform");
        let inside = rest.split(')').next().expect("its end");
        inside.split(' ').map(|number| number.parse().expect("a number")).collect()
    };
    let x = if transform.contains("scale(-1 1)") { -x } else { x };
    let (sin, cos) = of("rotate(")[0].to_radians().sin_cos();
    let shift = of("translate(");
    (x * cos - y * sin + shift[0], x * sin + y * cos + shift[1])
}

#[test]
fn a_place_in_the_picture_is_the_place_under_the_finger() {
    let frame = picture::Frame::of(&Engine::preset());
    let (x, y) = picture::drawn(frame.place(0.25, 0.75));
    assert_eq!(x, frame.left + frame.width / 4, "across");
    close(f64::from(y), f64::from(frame.top) + 0.75 * f64::from(frame.height), 1.0, "down");
    let small = picture::Frame::around(&[Point::from_millimetres(60.0, -40.0)], mm(5.0));
    let shaped = small.shaped_like(frame);
    let shape = |frame: picture::Frame| f64::from(frame.width) / f64::from(frame.height);
    close(shape(shaped), shape(frame), 0.01, "as wide for its height");
    assert!(shaped.width >= small.width && shaped.height >= small.height, "nothing is cut off");
}

#[test]
fn figures_are_shown_in_both_systems() {
    let area = shown::area(Area::new::<square_millimeter>(645.16));
    assert_eq!((area.metric.as_str(), area.inch.as_str()), ("645.2 mm²", "1.0000 in²"), "an area");
    let length = shown::length(mm(-1.27));
    assert_eq!(
        (length.metric.as_str(), length.inch.as_str()),
        ("−1.27 mm", "−0.050 in"),
        "a length"
    );
    let view = View::usual(SideHousing::Front);
    // Plugs at the top: the gas exchange is at the bottom, at θ = 630°.
    let timing = |theta: f64| {
        let (angle, centre) = shown::timing(view, deg(theta));
        format!("{angle} {centre}")
    };
    assert_eq!(timing(662.1), "32.10° after top", "an intake opens");
    assert_eq!(timing(600.0), "30.00° before top", "and earlier");
    assert_eq!(timing(951.0), "51.00° after intake bottom", "and closes");
    assert_eq!(timing(90.0), "0.00° after ignition top", "ignition");
}

#[test]
fn times_to_keep_are_those_of_the_port_and_back() {
    for flow in [Flow::Intake, Flow::Exhaust] {
        let rows = if flow == Flow::Intake { STOCK } else { "-58 -46\n-73 -46\n-69 -63\n-50 -71" };
        let port = put_in(
            &TypedOutline { port: named(flow, Stage::Stock), ..typed(Stage::Stock, rows) },
            face(),
        );
        let opening = port.figures.openings[0];
        let (opens, closes) = Window::of(flow, face().view, &opening).thetas(flow, face().view);
        close(
            opens.get::<degree>(),
            opening.opens(Chamber::First).get::<degree>().rem_euclid(1080.0),
            1e-6,
            "opens",
        );
        close((closes - opens).get::<degree>(), opening.duration().get::<degree>(), 1e-6, "for");
    }
}

#[test]
fn a_cut_too_far_is_said_to_destroy_the_engine_and_comes_first() {
    let engine = Engine::preset();
    let ports =
        [put_in(&typed(Stage::Stock, STOCK), face()), put_in(&typed(Stage::Cut, CUT), face())];
    let will_be = as_it_will_be(&ports);
    assert_eq!(will_be.len(), 1, "the cut one stands for the port");
    assert_eq!(will_be[0].name.stage, Stage::Cut, "the cut one");
    // Half a millimetre in: the seal runs on the edge.
    let found = findings(&engine, face().view, &will_be, mm(1.0));
    assert_eq!(found[0].weight, Weight::Attend, "the worst first: {found:?}");
    assert_eq!(found[0].title, "Touches the corner-seal track");
    assert!(found[0].words.contains("Chamfer the edge from x "), "{}", found[0].words);
    // Some millimetres at a corner: it hangs over, and is held on both sides.
    let over = put_in(&typed(Stage::Cut, "60 -41\n78 -44\n78 -69\n46 -76\n44 -62"), face());
    let found = findings(&engine, face().view, &[&over], mm(1.0));
    assert_eq!(found[0].weight, Weight::Attend, "{found:?}");
    assert!(found[0].title.starts_with("A corner seal hangs over by "), "{}", found[0].title);
    assert!(found[0].words.contains("decide, with a reason"), "{}", found[0].words);
    // Beyond the middle of the track.
    let far = put_in(&typed(Stage::Cut, "60 -41\n90 -44\n82 -72\n46 -76\n44 -62"), face());
    let found = findings(&engine, face().view, &[&far], mm(1.0));
    assert_eq!(found[0].weight, Weight::Destroys, "the worst first: {found:?}");
    assert_eq!(found[0].title, "A corner seal can drop in");
    assert!(found[0].words.contains("tips into the port and destroys the engine"));
    let stock = findings(&engine, face().view, &[&ports[0]], mm(1.0));
    assert!(
        stock.iter().all(|finding| finding.weight == Weight::Know),
        "the stock port is clear: {stock:?}"
    );
    assert!(stock[0].title.starts_with("Side seal unsupported over "), "{}", stock[0].title);
}

#[test]
fn before_and_after_stand_side_by_side() {
    let stock = put_in(&typed(Stage::Stock, STOCK), face());
    let cut = put_in(&typed(Stage::Cut, CUT), face());
    let rows = table(face().view, Some(&stock), Some(&cut), Some(8000.0));
    let names: Vec<_> = rows.iter().map(|row| row.name).collect();
    assert_eq!(
        names,
        ["Area", "Opens", "Closes", "Open for", "Greatest open", "Angle-area", "Time-area"],
        "every figure"
    );
    assert!(rows[1].change.ends_with("° earlier"), "opens: {}", rows[1].change);
    assert!(rows[2].change.ends_with("° later"), "closes: {}", rows[2].change);
    assert!(rows[0].change.starts_with('+'), "area: {}", rows[0].change);
    let alone = table(face().view, None, Some(&cut), None);
    assert_eq!(alone.len(), 6, "no time without a speed");
    assert!(alone.iter().all(|row| row.stock.is_empty() && row.change.is_empty()), "no stock port");
    assert!(line(face().view, &cut).starts_with("opens "), "in a line");
}

#[test]
fn measures_say_what_is_wrong_beside_themselves() {
    let preset = TypedEngine::preset();
    let (engine, wanted) = (preset.engine().expect("the preset"), Engine::preset());
    let measures = |engine: &Engine| {
        let (shape, seals) = (engine.geometry(), engine.seals());
        [
            shape.eccentricity(),
            shape.generating_radius(),
            shape.apex_seal_offset(),
            shape.housing_width(),
            seals.corner_distance,
            seals.corner_radius,
            seals.side_inset,
            seals.oil_radius,
            seals.coolant_land,
        ]
        .map(|length| length.get::<millimeter>())
    };
    for ((got, wanted), measure) in
        measures(&engine).iter().zip(measures(&wanted)).zip(Measure::ALL)
    {
        close(*got, wanted, 1e-9, measure.name());
    }
    let with = |measure: Measure, text: &str| {
        let mut typed = preset.clone();
        let place = Measure::ALL.iter().position(|other| *other == measure).expect("one of all");
        typed.texts[place] = text.to_owned();
        typed.engine()
    };
    assert_eq!(with(Measure::GeneratingRadius, "4.015748 in").map(|_| ()), Ok(()), "in inches");
    for (measure, text, words) in [
        (Measure::HousingWidth, "abc", "“abc” is no number. Use digits with one point or comma."),
        (
            Measure::GeneratingRadius,
            "45",
            "the generating radius of 45 mm is not more than three times the eccentricity (45 mm), \
             so the bore would cross itself: check both",
        ),
        (
            Measure::CornerRadius,
            "9",
            "a corner seal of radius 9 mm sticks out of the rotor, its centre is 7.016 mm from the \
             flank's edge: check its distance and its radius",
        ),
        (
            Measure::CoolantLand,
            "61",
            "the coolant land's distance of 61 mm is outside 0.5 mm … 60 mm: measure again",
        ),
    ] {
        let faults = with(measure, text).expect_err("a measure that can't be");
        assert_eq!(faults[0].measure, measure, "beside the field for {text}");
        assert_eq!(faults[0].words, words, "for {text}");
    }
}

/// The demo's side ports shut and open near top as such ports do (common practice, no source: an exhaust
/// within some 35° before it, an intake within 35° after), and only the cut that was drawn too far is objected to.
#[test]
fn the_demos_ports_are_plausible() {
    let engine = Engine::preset();
    for fact in demo::facts() {
        let Fact::Outline(typed) = fact else { continue };
        let port = put_in(&typed, face());
        let cycle = |theta| Timing::at(face().view.cycle_angle(Chamber::First, theta));
        let opening = port.figures.openings[0];
        let (opens, closes) =
            (cycle(opening.opens(Chamber::First)), cycle(opening.closes(Chamber::First)));
        let said = &typed.figures;
        let at_top = if typed.port.flow == Flow::Intake { opens } else { closes };
        assert_eq!(at_top.dead_centre, DeadCentre::GasExchangeTop, "{said}");
        let after = at_top.after.get::<degree>();
        let wanted = if typed.port.flow == Flow::Intake { -10.0..35.0 } else { -35.0..0.0 };
        assert!(wanted.contains(&after), "{said}");
        let found = findings(&engine, face().view, &[&port], mm(1.0));
        let worst = if typed.port.stage == Stage::Cut { Weight::Destroys } else { Weight::Know };
        assert_eq!(found[0].weight, worst, "{said}: {found:?}");
    }
}
