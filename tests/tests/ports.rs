//! Ports: the rotor turned by a finger, outlines put in and refused, and a template on paper.

use pitleaf_tests::{Browser, Printed, Server, alert, button, textbox};
use serde_json::json;

const ROWS: &str = "One corner a row; a third number rounds it";

/// The printed millimetre.
const TRUE: f64 = 0.1;

fn at_demo(server: &Server, place: &str) -> Browser {
    let phone = Browser::open(server.url());
    phone.open_demo();
    phone.go(place);
    phone
}

#[test]
fn a_finger_turns_the_rotor_and_the_open_area_follows() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front");
    phone.until_says("120.00° after top");
    phone.until_says("opens 7.47° before top, closes 65.95° after intake bottom");
    phone.until_says("Destroys the engine");
    let open = |phone: &Browser| {
        let script = "return document.querySelectorAll('.open-now b')[1].textContent";
        phone.run(script, &[]).as_str().unwrap_or_default().to_owned()
    };
    let before = open(&phone);
    // A quarter turn of the finger against the clock, from the right of the shaft to above it.
    for (kind, across, down) in [
        ("mousePressed", 0.9, 0.5),
        ("mouseMoved", 0.8, 0.3),
        ("mouseMoved", 0.5, 0.1),
        ("mouseReleased", 0.5, 0.1),
    ] {
        let place = phone.run(
            "const b = document.querySelector('.plate-picture').getBoundingClientRect();
             return [b.left + b.width * arguments[0], b.top + b.height * arguments[1]];",
            &[json!(across), json!(down)],
        );
        phone.devtools(
            "Input.dispatchMouseEvent",
            json!({ "type": kind, "x": place[0], "y": place[1], "button": "left", "clickCount": 1 }),
        );
    }
    // Three times a quarter turn: 120° + 270° is 120° after the intake's bottom. A finger is placed to
    // the pixel, which is about a degree of the shaft.
    phone.until_says("° after intake bottom\n");
    let turned = angle(&phone);
    assert!((turned - 120.0).abs() <= 1.5, "three times the finger's turn: {turned}°");
    assert_ne!(open(&phone), before, "the open area");
    phone.tap(&button("+1°"));
    phone.until("a step of a degree", |phone| (angle(phone) - turned - 1.0).abs() < 1e-6);
}

/// Where the first chamber is said to be, in degrees from its dead centre.
fn angle(phone: &Browser) -> f64 {
    let said = phone.run("return document.querySelector('.turn-at b').textContent", &[]);
    let number = said.as_str().and_then(|said| said.split('°').next()?.parse().ok());
    number.expect("an angle")
}

#[test]
fn an_outline_that_cannot_be_gets_its_sentence_and_is_not_written() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front/outline/intake-1-cut");
    for (rows, sentence) in [
        (
            "50 -45\n70 -65\n70 -45\n50 -65",
            "the edge after row 1 and the edge after row 3 cross or touch: put the points in order \
             round the port",
        ),
        ("50 -45\n70 -65", "2 points make no outline: give three or more"),
        ("50 -45\nabc 2\n70 -65", "row 2: “abc” is no number. Use digits with one point or comma."),
        (
            "250 -45\n270 -45\n270 -65",
            "the outline lies wholly outside the bore, so this port would never open: check the signs \
             and the unit of its points",
        ),
    ] {
        phone.fill(&textbox(ROWS), rows);
        let said = phone.until_in(&alert(""), sentence);
        assert_eq!(said, sentence, "for {rows:?}");
        assert_eq!(phone.property(&textbox(ROWS), "value"), rows, "the text stays");
        let disabled = phone.property(&button("Put it in the book"), "disabled");
        assert_eq!(disabled, true, "nothing to write for {rows:?}");
    }
}

/// The check goes on frame by frame behind a change; until it is through, nothing can be written.
#[test]
fn an_outline_is_written_with_the_figures_of_its_own_rows() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front/outline/intake-1-cut");
    let answer = |phone: &Browser| {
        let said = phone.run("return document.querySelector('.answer').innerText", &[]);
        said.as_str().unwrap_or_default().to_owned()
    };
    phone.until("the first rows are checked", |phone| answer(phone).contains("area"));
    let before = answer(&phone);
    let disabled = phone.run_until_called(
        "const [rows, done] = arguments;
         const field = document.querySelector('textarea');
         field.value = rows;
         field.dispatchEvent(new Event('input', { bubbles: true }));
         setTimeout(() => {
             const write = [...document.querySelectorAll('button')].find((one) => one.innerText === 'Put it in the book');
             write.click();
             done(write.disabled);
         });",
        &[json!("50 -45\n70 -45\n70 -65\n50 -65")],
    );
    assert_eq!(disabled, true, "not checked yet");
    assert_eq!(phone.place(), "#/ports/front/outline/intake-1-cut", "nothing was written");
    phone.until("the rows are checked", |phone| answer(phone) != before);
    let figures = answer(&phone);
    assert!(figures.contains("area 400.0 mm²"), "a square of 20 mm: {figures}");
    phone.tap(&button("Put it in the book"));
    phone.until_notice("Written Primary intake, cut");
    phone.until_says(&figures);
}

#[test]
fn a_corner_touched_gets_its_radius_in_a_field() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front/outline/intake-1-cut");
    phone.fill(&textbox(ROWS), "50 -45\n70 -45\n70 -65\n50 -65");
    phone.until("four corners", |phone| {
        phone.run("return document.querySelectorAll('.handle').length", &[]) == json!(5)
    });
    // The second corner is nearest to where it is touched.
    let place = phone.run(
        "document.querySelector('.plate-picture').scrollIntoView({ block: 'center' });
         const b = document.querySelectorAll('.handle')[1].getBoundingClientRect();
         return [b.left + b.width / 2, b.top + b.height / 2];",
        &[],
    );
    for kind in ["mousePressed", "mouseReleased"] {
        phone.devtools(
            "Input.dispatchMouseEvent",
            json!({ "type": kind, "x": place[0], "y": place[1], "button": "left", "clickCount": 1 }),
        );
    }
    phone.fill(&textbox("Radius of corner 2"), "4,5");
    phone.until("its row has it", |phone| {
        let rows = phone.property(&textbox(ROWS), "value");
        rows.as_str()
            .is_some_and(|rows| rows.lines().nth(1).is_some_and(|row| row.ends_with(" 4,5")))
    });
    phone.fill(&textbox("Radius of corner 2"), "400");
    phone.until_in(&alert(""), "the corner in row 2 has no room for a radius of 400");
}

#[test]
fn a_corner_dragged_takes_its_row_and_its_handle_along() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front/outline/intake-1-cut");
    phone.fill(&textbox(ROWS), "40 -35\n80 -35\n60 -50\n70 -75\n40 -75");
    let rows = |phone: &Browser| -> Vec<Vec<f64>> {
        let rows = phone.property(&textbox(ROWS), "value");
        let rows = rows.as_str().unwrap_or_default().lines();
        rows.map(|row| row.split(' ').filter_map(|cell| cell.parse().ok()).collect()).collect()
    };
    let handles = |phone: &Browser| -> Vec<[f64; 2]> {
        let script = "return [...document.querySelectorAll('.handle')].map((one) => [+one.getAttribute('cx'), +one.getAttribute('cy')])";
        let handles = phone.run(script, &[]);
        let number = |at: &serde_json::Value| at.as_f64().unwrap_or(f64::NAN);
        handles
            .as_array()
            .into_iter()
            .flatten()
            .map(|at| [number(&at[0]), number(&at[1])])
            .collect()
    };
    // Five corners, and the mark of the one that is chosen.
    phone.until("five handles", |phone| handles(phone).len() == 6);
    let before = rows(&phone);
    let place = phone.run(
        "document.querySelector('.plate-picture').scrollIntoView({ block: 'center' });
         const b = document.querySelectorAll('.handle')[2].getBoundingClientRect();
         return [b.left + b.width / 2, b.top + b.height / 2];",
        &[],
    );
    let [x, y] = [&place[0], &place[1]].map(|at| at.as_f64().expect("a place"));
    for (kind, across, down) in
        [("mousePressed", 0.0, 0.0), ("mouseMoved", 12.0, -9.0), ("mouseReleased", 12.0, -9.0)]
    {
        phone.devtools(
            "Input.dispatchMouseEvent",
            json!({ "type": kind, "x": x + across, "y": y + down, "button": "left", "clickCount": 1 }),
        );
    }
    phone.until("its row has moved", |phone| rows(phone) != before);
    let (now, at) = (rows(&phone), handles(&phone));
    assert!(now[2][0] > before[2][0] && now[2][1] > before[2][1], "right and up: {now:?}");
    for (row, was) in [0, 1, 3, 4].map(|row| (&now[row], &before[row])) {
        assert_eq!(row, was, "the others stay");
    }
    let scale = at[0][0] / now[0][0];
    for (row, handle) in now.iter().zip(&at) {
        close(handle[0], scale * row[0], 1.0, "the handle stands on its corner, across");
        close(handle[1], -scale * row[1], 1.0, "the handle stands on its corner, up");
    }
}

/// Each card of the keep-clear check repeats the number of a mark on the picture.
#[test]
fn findings_are_marked_on_the_picture_by_number() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front");
    let numbers = |phone: &Browser, within: &str| {
        let script = "return [...document.querySelectorAll(arguments[0])].map(e => e.textContent)";
        phone.run(script, &[json!(within)])
    };
    phone.until_says("Destroys the engine");
    assert_eq!(numbers(&phone, ".plate-picture .found text"), json!(["1"]), "the worst");
    phone.go("#/ports/front/figures");
    phone.until_says("Before and after");
    let marks = numbers(&phone, ".plate-picture .found text");
    assert!(marks.as_array().is_some_and(|marks| marks.len() >= 2), "{marks}");
    assert_eq!(numbers(&phone, ".call-mark.found text"), marks, "the list repeats them");
    phone.until_says("1 on the picture.");
}

/// A square of 20 mm, with a hole beside it, comes out of the printer as it was drawn.
#[test]
fn a_template_is_true_on_paper() {
    let server = Server::start();
    let phone = at_demo(&server, "#/ports/front/outline/intake-1-cut");
    phone.fill(&textbox(ROWS), "50 -45\n70 -45\n70 -65\n50 -65");
    phone.tap(&button("Put it in the book"));
    phone.until_notice("Written Primary intake, cut");
    phone.go("#/ports/front/template");
    phone.until_says("Print at 100 %");
    measure(&phone.print(), (210.0, 297.0));
    phone.tap(&button("Letter"));
    phone.until("the pages are Letter", |phone| {
        phone.run("return document.querySelectorAll('.sheet.letter').length > 0", &[])
            == json!(true)
    });
    measure(&phone.print(), (215.9, 279.4));
}

#[track_caller]
fn measure(sheets: &[Printed], paper: (f64, f64)) {
    assert_eq!(sheets.len(), 2, "the bore is wider than the paper");
    for sheet in sheets {
        // Chromium gives a page's size in whole pixels of 1/96 in.
        close(sheet.size.0, paper.0, 0.27, "the paper's width");
        close(sheet.size.1, paper.1, 0.27, "the paper's height");
        let bars: Vec<f64> = [50.0, 50.8]
            .iter()
            .flat_map(|bar| sheet.boxes(*bar, 4.0).map(|[left, _, right, _]| right - left))
            .filter(|width| [50.0, 50.8].iter().any(|bar| (width - bar).abs() <= TRUE))
            .collect();
        assert!(bars.len() == 2, "50 mm and 2 in on every sheet: {bars:?}");
    }
    let (square, hole) = sheets
        .iter()
        .find_map(|sheet| Some((sheet.boxes(20.0, 20.0).next()?, sheet.boxes(10.0, 10.0).next()?)))
        .expect("the square, and the hole of 10 mm");
    let middle =
        |[left, top, right, bottom]: [f64; 4]| (0.5 * (left + right), 0.5 * (top + bottom));
    close(square[2] - square[0], 20.0, TRUE, "the square's width");
    close(square[3] - square[1], 20.0, TRUE, "the square's height");
    close(hole[2] - hole[0], 10.0, TRUE, "the hole's diameter");
    // The square's middle is at 60, −55, the hole at 98, −64.
    close(middle(hole).0 - middle(square).0, 38.0, TRUE, "from the square to the hole, across");
    close(middle(hole).1 - middle(square).1, 9.0, TRUE, "from the square to the hole, down");
}

#[track_caller]
fn close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got - wanted).abs() <= within, "{what}: got {got}, wanted {wanted} ± {within} mm");
}
