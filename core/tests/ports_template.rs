//! The template's drawing, measured: true size, every page, both sides.

use pitleaf_core::{
    ports::{Datum, Outline, Paper, Sheet, Template},
    trochoid::{Engine, Geometry, Point, Seals},
};
use uom::si::{f64::Length, length::millimeter};

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn at(x: f64, y: f64) -> Point {
    Point::from_millimetres(x, y)
}

const CORNERS: [(f64, f64); 4] = [(45.0, -60.0), (70.0, -55.0), (68.0, -40.0), (48.0, -44.0)];

fn port() -> Outline {
    Outline::new(CORNERS.map(|(x, y)| at(x, y))).expect("an outline")
}

fn datums() -> [Datum; 2] {
    [(-100.0, 70.0), (100.0, -70.0)].map(|(x, y)| Datum { centre: at(x, y), diameter: mm(10.0) })
}

fn sheets(engine: &Engine, paper: Paper, mirrored: bool) -> Vec<Sheet> {
    let (outlines, datums) = ([port()], datums());
    let title = "Kestrel <front> & primary";
    Template { engine, outlines: &outlines, datums: &datums, mirrored, title }
        .sheets(paper)
        .expect("a template")
}

/// An engine small enough for one page.
fn small() -> Engine {
    let geometry = Geometry::new(mm(8.0), mm(56.0), mm(2.0), mm(40.0)).expect("an engine");
    let seals = Seals {
        corner_distance: mm(52.0),
        corner_radius: mm(3.0),
        side_inset: mm(3.0),
        oil_radius: mm(25.0),
        coolant_land: mm(5.0),
    };
    Engine::new(geometry, seals).expect("seals that fit")
}

/// The value of an attribute of every element of a class.
fn attributes<'a>(svg: &'a str, class: &str, name: &str) -> Vec<&'a str> {
    svg.lines()
        .filter(|line| line.contains(&format!("class=\"{class}\"")))
        .filter_map(|line| line.split(&format!(" {name}=\"")).nth(1)?.split('"').next())
        .collect()
}

/// The numbers of a path in order.
fn numbers(path: &str) -> Vec<f64> {
    path.split(|c: char| c.is_ascii_alphabetic() || c == ' ')
        .filter_map(|n| n.parse().ok())
        .collect()
}

fn corners(svg: &str) -> Vec<(f64, f64)> {
    let path = attributes(svg, "port", "d")[0];
    numbers(path).chunks(2).map(|pair| (pair[0], pair[1])).collect()
}

#[track_caller]
fn close(got: f64, wanted: f64, what: &str) {
    assert!((got - wanted).abs() < 0.0011, "{what}: got {got}, wanted {wanted} mm");
}

#[test]
fn check_bars_measure_what_they_say() {
    for paper in [Paper::A4, Paper::Letter] {
        for sheet in sheets(&Engine::preset(), paper, false) {
            let ends: Vec<f64> = attributes(&sheet.svg, "check-bar", "d")
                .iter()
                .map(|path| {
                    let stroke = path.split('H').nth(1).expect("the bar itself");
                    numbers(stroke)[0] - numbers(path)[0]
                })
                .collect();
            assert_eq!(ends.len(), 2, "two bars on every page");
            close(ends[0], 50.0, "50 mm");
            close(ends[1], 50.8, "2 in");
        }
    }
}

#[test]
fn one_unit_is_one_millimetre_of_paper() {
    for (paper, sides) in [(Paper::A4, [210.0, 297.0]), (Paper::Letter, [215.9, 279.4])] {
        for sheet in sheets(&Engine::preset(), paper, false) {
            let mut got = [sheet.width, sheet.height];
            got.sort_by(f64::total_cmp);
            assert_eq!(got, sides, "the page is the paper");
            let (width, height) = (sheet.width, sheet.height);
            assert!(
                sheet.svg.contains(&format!(
                    "width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\""
                )),
                "drawn 1:1: {}",
                &sheet.svg[..200]
            );
        }
    }
}

/// Distances on paper are those of the plate, and left and right are the plate's or the mirror's.
#[test]
fn outline_is_true_and_mirrored_on_demand() {
    for mirrored in [false, true] {
        let sheet = &sheets(&Engine::preset(), Paper::A4, mirrored)[0];
        let drawn = corners(&sheet.svg);
        assert_eq!(drawn.len(), 4, "four corners");
        let axis: Vec<f64> = numbers(attributes(&sheet.svg, "centre-line", "d")[0]);
        // The centre lines' path: left, y of the axis, right, x of the axis, top, bottom.
        let (x0, y0) = (axis[3], axis[1]);
        let side = if mirrored { -1.0 } else { 1.0 };
        let outline = port();
        for ((x, y), point) in drawn.iter().zip(outline.points()) {
            let (u, v) = point.millimetres();
            close((x - x0) * side, u, "x from the centre line");
            close(y0 - y, v, "y from the centre line");
        }
        let holes = attributes(&sheet.svg, "datum", "cx");
        close((holes[0].parse::<f64>().expect("a number") - x0) * side, -100.0, "first hole");
        assert_eq!(
            attributes(&sheet.svg, "datum", "r"),
            ["5.000", "5.000"],
            "radius of a 10 mm hole"
        );
        let words = if mirrored { "mirrored: lay it face down" } else { "lay it face up" };
        assert!(sheet.svg.contains(words), "the sheet says how to lay it");
        assert!(sheet.svg.contains("Kestrel &lt;front&gt; &amp; primary"), "the title, escaped");
    }
}

/// What one page can't hold is spread: every point of the bore lies on a page, and every joint on
/// as many as are to be joined there.
#[test]
fn pages_cover_the_bore_and_share_their_joints() {
    let engine = Engine::preset();
    for paper in [Paper::A4, Paper::Letter] {
        let pages = sheets(&engine, paper, false);
        assert!(pages.len() > 1, "the bore is wider than the paper");
        let within = |sheet: &Sheet, x: f64, y: f64| {
            let rect = sheet.svg.lines().find(|line| line.contains("<rect")).expect("a field");
            let value = |name: &str| -> f64 {
                let after = rect.split(&format!(" {name}=\"")).nth(1).expect("an attribute");
                after.split('"').next().and_then(|n| n.parse().ok()).expect("a number")
            };
            let (left, top) = (value("x"), value("y"));
            let inside = (left..=left + value("width")).contains(&x);
            inside && (top..=top + value("height")).contains(&y)
        };
        let bores: Vec<Vec<f64>> =
            pages.iter().map(|sheet| numbers(attributes(&sheet.svg, "bore", "d")[0])).collect();
        for i in 0..bores[0].len() / 2 {
            let covered = pages
                .iter()
                .zip(&bores)
                .any(|(sheet, bore)| within(sheet, bore[2 * i], bore[2 * i + 1]));
            assert!(covered, "point {i} of the bore lies on no page");
        }
        let joints: Vec<Vec<Vec<f64>>> = pages
            .iter()
            .map(|sheet| attributes(&sheet.svg, "joint", "d").iter().map(|d| numbers(d)).collect())
            .collect();
        for i in 0..joints[0].len() {
            let shared = pages
                .iter()
                .zip(&joints)
                .filter(|(sheet, joints)| {
                    let [left, y, right, ..] = joints[i][..] else { return false };
                    within(sheet, 0.5 * (left + right), y)
                })
                .count();
            assert!(shared >= 2, "joint {i} lies on {shared} pages");
        }
        let last = pages.last().expect("pages");
        assert!(last.svg.contains(&format!("page {0} of {0}", pages.len())), "pages are numbered");
    }
}

#[test]
fn a_small_bore_fits_one_page() {
    let pages = {
        let outlines =
            [Outline::new([at(20.0, 20.0), at(30.0, 20.0), at(25.0, 30.0)]).expect("a port")];
        let engine = small();
        let template = Template {
            engine: &engine,
            outlines: &outlines,
            datums: &[],
            mirrored: false,
            title: "small",
        };
        template.sheets(Paper::A4).expect("a template")
    };
    assert_eq!(pages.len(), 1, "132 mm fit 190");
    assert!(attributes(&pages[0].svg, "joint", "d").is_empty(), "nothing to join");
}

#[test]
fn templates_that_cannot_be() {
    let engine = Engine::preset();
    let (outlines, mut datums) = ([port()], datums());
    let none = Template { engine: &engine, outlines: &[], datums: &[], mirrored: false, title: "" };
    assert_eq!(
        none.sheets(Paper::A4).expect_err("nothing to draw").to_string(),
        "there is no outline to scribe: draw a port first",
        "no outline"
    );
    datums[1].diameter = mm(0.0);
    let hole = Template {
        engine: &engine,
        outlines: &outlines,
        datums: &datums,
        mirrored: false,
        title: "",
    };
    assert_eq!(
        hole.sheets(Paper::A4).expect_err("no hole").to_string(),
        "hole 2 with a diameter of 0 mm is not on this plate: check its place and its diameter",
        "no diameter"
    );
}
