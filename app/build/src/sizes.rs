//! How many bytes a phone downloads.

use crate::language::Language;
use anyhow::{Context, Result, ensure};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;
use std::io::Write as _;
use std::path::Path;

/// Bytes of some files, as they are and as a host sends them (brotli, quality 11).
#[derive(Default, Clone, Copy, PartialEq, Debug)]
struct Size {
    raw: usize,
    brotli: usize,
}

/// Prints a table of each language of a finished folder and compares its brotli bytes with a budget.
///
/// # Errors
/// The folder can't be read, or is above the budget.
pub(crate) fn report(folder: &Path, budgets: &[usize]) -> Result<()> {
    let all = budgets.iter().chain(std::iter::repeat(budgets.last().context("no budget")?));
    for (language, budget) in Language::ALL.into_iter().zip(all) {
        let site = folder.join(language.folder());
        if language == Language::English || site.is_dir() {
            println!("{}", language.tag());
            count(&site, *budget)?;
        }
    }
    Ok(())
}

/// One language: a phone downloads no other.
fn count(folder: &Path, budget: usize) -> Result<()> {
    let mut kinds = BTreeMap::<&str, Size>::new();
    let entries = fs::read_dir(folder)
        .with_context(|| format!("{} can't be read; build first", folder.display()))?;
    for entry in entries {
        let path = entry?.path();
        if path.is_dir() {
            continue;
        }
        let bytes = fs::read(&path).with_context(|| format!("{} can't be read", path.display()))?;
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let size = kinds.entry(kind(&name)).or_default();
        size.raw += bytes.len();
        size.brotli += brotli(&bytes)?;
    }
    print!("{}", table(&kinds));
    within(total(&kinds).brotli, budget)
}

fn kind(name: &str) -> &'static str {
    match name.rsplit_once('.').map(|(_, extension)| extension) {
        Some("wasm") => "wasm",
        Some("js") => "JS",
        Some("css") => "CSS",
        Some("woff2") => "fonts",
        _ => "other",
    }
}

fn brotli(bytes: &[u8]) -> Result<usize> {
    let mut writer = brotli::CompressorWriter::new(Vec::new(), 4096, 11, 22);
    writer.write_all(bytes)?;
    Ok(writer.into_inner().len())
}

fn total(kinds: &BTreeMap<&str, Size>) -> Size {
    kinds.values().fold(Size::default(), |sum, size| Size {
        raw: sum.raw + size.raw,
        brotli: sum.brotli + size.brotli,
    })
}

fn table(kinds: &BTreeMap<&str, Size>) -> String {
    let mut text = format!("{:<8}{:>10}{:>10}\n", "", "raw", "brotli");
    let rows = ["wasm", "JS", "CSS", "fonts", "other"].map(|kind| (kind, kinds.get(kind).copied()));
    for (kind, size) in rows.into_iter().chain([("all", Some(total(kinds)))]) {
        let Size { raw, brotli } = size.unwrap_or_default();
        // Writing to a String can't fail.
        let _ = writeln!(text, "{kind:<8}{raw:>10}{brotli:>10}");
    }
    text
}

fn within(brotli: usize, budget: usize) -> Result<()> {
    ensure!(
        brotli <= budget,
        "the app is {brotli} bytes after brotli, {} above its budget of {budget}",
        brotli - budget
    );
    println!("{} bytes are left of the budget of {budget}", budget - brotli);
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_is_counted_by_kind_and_held_to_its_budget() {
        let folder = tempfile::tempdir().expect("a folder for this test");
        for (name, length) in [("a.wasm", 5000), ("b.js", 10), ("c.js", 20), ("d.txt", 3)] {
            fs::write(folder.path().join(name), vec![b'x'; length]).expect("a file");
        }
        // Four files of one repeated letter: far fewer bytes after brotli, but some each.
        let error = report(folder.path(), &[0]).expect_err("nothing fits in no bytes");
        let words = error.to_string();
        let brotli: usize =
            words.split(' ').nth(3).and_then(|word| word.parse().ok()).expect("a count");
        assert!((4..200).contains(&brotli), "{words}");
        assert_eq!(
            words,
            format!("the app is {brotli} bytes after brotli, {brotli} above its budget of 0")
        );
        report(folder.path(), &[brotli]).expect("exactly the budget fits");
    }

    #[test]
    fn the_table_has_every_kind_and_the_sum() {
        let kinds = BTreeMap::from([
            ("wasm", Size { raw: 100, brotli: 40 }),
            ("JS", Size { raw: 10, brotli: 4 }),
        ]);
        assert_eq!(
            table(&kinds),
            "               raw    brotli\n\
             wasm           100        40\n\
             JS              10         4\n\
             CSS              0         0\n\
             fonts            0         0\n\
             other            0         0\n\
             all            110        44\n"
        );
    }

    #[test]
    fn kinds_go_by_extension() {
        for (name, wanted) in [
            ("a.wasm", "wasm"),
            ("a.js", "JS"),
            ("a.css", "CSS"),
            ("a.woff2", "fonts"),
            ("a.png", "other"),
        ] {
            assert_eq!(kind(name), wanted, "for {name}");
        }
    }
}
