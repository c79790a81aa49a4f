//! What a page becomes on paper: printed to PDF, and measured there in millimetres.

use crate::Browser;
use base64::{Engine as _, prelude::BASE64_STANDARD};
use serde_json::json;
use std::path::{Path, PathBuf};
use std::process::Command;
use tempfile::TempDir;

/// A point in the units of PDF: a seventy-second of an inch.
const POINT: f64 = 25.4 / 72.0;

/// A sheet of paper as printed.
#[derive(Debug, Clone, PartialEq)]
pub struct Printed {
    /// Width and height.
    pub size: (f64, f64),
    /// Every stroked line: its points from the left and the top.
    pub lines: Vec<Vec<(f64, f64)>>,
}

/// A page of words as printed.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// Width and height.
    pub size: (f64, f64),
    /// Each word with its left, top, right and bottom.
    pub words: Vec<(String, [f64; 4])>,
}

impl Page {
    /// Its words in a line.
    #[must_use]
    pub fn text(&self) -> String {
        self.words.iter().map(|(word, _)| word.as_str()).collect::<Vec<_>>().join(" ")
    }
}

impl Browser {
    /// Prints the page as its own rules for paper say, and gives the sheets.
    ///
    /// # Panics
    /// It can't be printed, or poppler's `pdftocairo` is missing or can't read the result.
    #[must_use]
    pub fn print(&self) -> Vec<Printed> {
        let (_folder, file) = self.pdf();
        let mut sheets = Vec::new();
        loop {
            let number = (sheets.len() + 1).to_string();
            let output = Command::new("pdftocairo")
                .args(["-svg", "-f", &number, "-l", &number])
                .arg(&file)
                .arg("-")
                .output()
                .expect("pdftocairo, from poppler-utils");
            // Past the last page it ends with an error.
            if !output.status.success() || output.stdout.is_empty() {
                return sheets;
            }
            sheets.push(Printed::read(&String::from_utf8_lossy(&output.stdout)));
        }
    }

    /// Prints the page, makes a picture of every sheet under a name that its number is put behind, and
    /// gives the words on them.
    ///
    /// # Panics
    /// It can't be printed, or poppler's `pdftotext` or `pdftoppm` is missing or can't read the result.
    #[must_use]
    pub fn print_words(&self, pictures: &Path) -> Vec<Page> {
        let (_folder, file) = self.pdf();
        let drawn =
            Command::new("pdftoppm").args(["-png", "-r", "80"]).args([&file, pictures]).status();
        assert!(drawn.is_ok_and(|status| status.success()), "pdftoppm, from poppler-utils");
        let output = Command::new("pdftotext")
            .arg("-bbox")
            .arg(&file)
            .arg("-")
            .output()
            .expect("pdftotext, from poppler-utils");
        assert!(output.status.success(), "a PDF that can be read");
        let text = String::from_utf8_lossy(&output.stdout);
        text.split("<page ").skip(1).map(page).collect()
    }

    /// The page printed to a file, which goes with its folder.
    fn pdf(&self) -> (TempDir, PathBuf) {
        let answer = self.devtools("Page.printToPDF", json!({ "preferCSSPageSize": true }));
        let data = answer["data"].as_str().expect("a PDF");
        let pdf = BASE64_STANDARD.decode(data).expect("base64, as DevTools says");
        let folder = tempfile::tempdir().expect("a folder");
        let file = folder.path().join("printed.pdf");
        std::fs::write(&file, pdf).expect("the PDF is written");
        (folder, file)
    }
}

/// A page with its words, as `pdftotext` lists them.
fn page(text: &str) -> Page {
    let number = |tag: &str, name: &str| {
        let number = attribute(tag, name).and_then(|number| number.parse::<f64>().ok());
        number.unwrap_or_else(|| panic!("no {name} in {tag}")) * POINT
    };
    let head = format!(" {}", text.lines().next().unwrap_or_default());
    let words = text.lines().filter(|line| line.contains("<word ")).map(|line| {
        let word = line.split_once('>').and_then(|(_, rest)| rest.split_once("</word>"));
        let word = word.map(|(word, _)| word).unwrap_or_default();
        let word = word.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"");
        let sides = ["xMin", "yMin", "xMax", "yMax"].map(|side| number(line, side));
        (word.replace("&amp;", "&"), sides)
    });
    Page { size: (number(&head, "width"), number(&head, "height")), words: words.collect() }
}

impl Printed {
    fn read(svg: &str) -> Self {
        let head = svg.lines().find(|line| line.starts_with("<svg")).expect("a drawing");
        let side = |name: &str| {
            let size = attribute(head, name).and_then(|size| size.strip_suffix("pt"));
            size.and_then(|size| size.parse::<f64>().ok()).expect("a size in points") * POINT
        };
        let lines = svg.lines().filter(|line| line.contains("fill:none")).map(line).collect();
        Self { size: (side("width"), side("height")), lines }
    }

    /// Width and height of each line that has about the given ones, to be measured.
    pub fn boxes(&self, width: f64, height: f64) -> impl Iterator<Item = [f64; 4]> {
        self.lines.iter().map(|line| extent(line)).filter(move |[left, top, right, bottom]| {
            (right - left - width).abs() < 0.4 && (bottom - top - height).abs() < 0.4
        })
    }
}

/// Left, top, right and bottom.
fn extent(points: &[(f64, f64)]) -> [f64; 4] {
    points.iter().fold([f64::MAX, f64::MAX, f64::MIN, f64::MIN], |[l, t, r, b], (x, y)| {
        [l.min(*x), t.min(*y), r.max(*x), b.max(*y)]
    })
}

/// A path's points on the paper; of a curve its control points too.
fn line(path: &str) -> Vec<(f64, f64)> {
    let numbers = |text: &str| -> Vec<f64> {
        text.split([' ', ',']).filter_map(|number| number.parse().ok()).collect()
    };
    let matrix = attribute(path, "transform")
        .and_then(|transform| transform.strip_prefix("matrix(")?.strip_suffix(')'))
        .map_or_else(|| vec![1.0, 0.0, 0.0, 1.0, 0.0, 0.0], numbers);
    let [a, b, c, d, e, f] = matrix[..] else { panic!("no matrix: {path}") };
    let points = numbers(attribute(path, "d").expect("a path"));
    points
        .chunks_exact(2)
        .map(|at| (POINT * (a * at[0] + c * at[1] + e), POINT * (b * at[0] + d * at[1] + f)))
        .collect()
}

fn attribute<'a>(tag: &'a str, name: &str) -> Option<&'a str> {
    tag.split_once(&format!(" {name}=\""))?.1.split('"').next()
}
