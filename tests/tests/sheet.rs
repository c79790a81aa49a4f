//! Marks drawn with the finger stand in the build sheet at their slots: on the screen and on paper.

use pitleaf_tests::{Browser, Phone, Profile, Server, button, image};
use serde_json::{Value, json};

/// How large a mark stands on paper, in millimetres.
const SIZE: f64 = 8.0;

/// The strokes of a slot's mark, as they lie on the disk: points 0 to 255 from the upper left.
fn drawn(phone: &Browser, slot: &str) -> Vec<Vec<[u8; 2]>> {
    let facts = phone.facts();
    let mut drawings = facts.iter().map(|fact| &fact["drawing"]);
    let drawing = drawings.find(|drawing| drawing["slot"] == slot).expect("a drawing");
    serde_json::from_value(drawing["drawing"].clone()).expect("strokes")
}

#[test]
fn a_drawn_mark_stands_in_the_sheet_at_its_slot() {
    let server = Server::start();
    let phone = Browser::open_on(Phone::SMALL, Profile::fresh(), server.url());
    phone.open_demo();
    // The first has its words, too; of the second nothing else is known.
    let slots = [
        ("1F-AB", "two dots", [(-60, -40), (0, 40), (60, -40)]),
        ("2R-CA", "", [(-20, 60), (-20, -60), (40, 0)]),
    ];
    let mut wanted = Vec::new();
    for (slot, words, line) in slots {
        phone.go(&format!("#/mark/{slot}"));
        let pad = image("Draw the mark here with a finger");
        phone.draw(&pad, &line);
        phone.draw(&pad, &[(-30, 70), (30, 70)]);
        phone.tap(&button("Keep the drawing"));
        phone.until_notice(&format!("Written mark of {slot}, drawn"));
        wanted.push((slot, words, drawn(&phone, slot)));
    }

    phone.go("#/work/sheet");
    phone.until_says("Side-seal slots");
    let shown = phone.run(
        "return [...document.querySelectorAll('.build-sheet td svg')].map((mark) => [
             mark.closest('tr').cells[0].innerText, mark.closest('td').innerText.trim(),
             mark.role, mark.ariaLabel, mark.querySelector('path').getAttribute('d')])",
        &[],
    );
    let path = |strokes: &[Vec<[u8; 2]>]| -> String {
        let stroke = |points: &Vec<[u8; 2]>| {
            format!(
                "M{}",
                points.iter().map(|[x, y]| format!("{x} {y}")).collect::<Vec<_>>().join("L")
            )
        };
        strokes.iter().map(stroke).collect()
    };
    let rows = wanted.iter().map(|(slot, words, strokes)| {
        json!([slot, words, "img", "The mark as drawn", path(strokes)])
    });
    assert_eq!(shown, rows.collect::<Value>(), "beside the slot, under the words");

    let paper = phone.print();
    for (slot, _, strokes) in &wanted {
        let points: Vec<[u8; 2]> = strokes.concat();
        let extent = |axis: usize| {
            let along = points.iter().map(|point| f64::from(point[axis]));
            let (low, high) = along.fold((f64::MAX, f64::MIN), |(l, h), at| (l.min(at), h.max(at)));
            (high - low) / 255.0 * SIZE
        };
        let (wide, high) = (extent(0), extent(1));
        assert!(wide > 1.0 && high > 1.0, "{slot}: a mark that can be told, {wide} by {high}");
        let found = paper
            .iter()
            .flat_map(|sheet| sheet.boxes(wide, high))
            .filter(|[l, t, r, b]| (r - l - wide).abs() < 0.1 && (b - t - high).abs() < 0.1);
        assert_eq!(found.count(), 1, "{slot} on paper, {wide} by {high} mm");
    }
}
