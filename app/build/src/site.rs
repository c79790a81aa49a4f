//! The finished folder: every file by its name, and how they refer to each other.

use crate::fonts;
use crate::hash::{Sum, hashed_name};
use crate::language::Language;
use crate::stylesheet::{self, Stylesheet};
use crate::template::fill;
use crate::workspace::Workspace;
use anyhow::{Context, Result, ensure};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

const START: &str = include_str!("../templates/start.js");
const WORKER: &str = include_str!("../templates/service-worker.js");
const WORKER_NAME: &str = "service-worker.js";
const MANIFEST: &str = "manifest.webmanifest";

/// What a site is made of.
pub(crate) struct Source {
    /// The module, as small as it gets.
    wasm: Vec<u8>,
    /// The module's JavaScript half.
    script: String,
    /// `index.html` with its places.
    page: String,
    /// Whose words the page, its script and its manifest have.
    language: Language,
    /// `public/style.css` with all that it imports.
    stylesheet: Stylesheet,
    /// Files that keep their names: the rest of `public`, and the fonts' licences.
    named: BTreeMap<String, Vec<u8>>,
}

impl Source {
    /// Reads everything but the module and its script from the workspace.
    ///
    /// # Errors
    /// A file that can't be read, or a stylesheet that names what isn't there.
    pub(crate) fn read(
        workspace: &Workspace,
        wasm: Vec<u8>,
        script: String,
        language: Language,
    ) -> Result<Self> {
        let public = workspace.at("public");
        let mut named = BTreeMap::new();
        for entry in fs::read_dir(&public).context("public can't be read")? {
            let path = entry?.path();
            let is_style = path.extension().is_some_and(|extension| extension == "css");
            if path.is_file() && !is_style {
                let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
                named.insert(name, read(&path)?);
            }
        }
        let mut packages = BTreeSet::new();
        let sheet = String::from_utf8(read(&public.join("style.css"))?).context("style.css")?;
        let stylesheet = stylesheet::assemble(&sheet, |path| {
            // "@scope/package/files/…" lies among npm's packages, all else beside the sheet.
            let mut parts = path.split('/');
            match (parts.next(), parts.next()) {
                (Some(scope), Some(package)) if scope.starts_with('@') => {
                    packages.insert(format!("{scope}/{package}"));
                    fonts::subset(workspace, &workspace.node_modules().join(path))
                }
                _ => read(&public.join(path)),
            }
        })?;
        let mut licences = Vec::new();
        for package in packages {
            licences.extend_from_slice(format!("{package}\n\n").as_bytes());
            licences.extend(read(&workspace.node_modules().join(package).join("LICENSE"))?);
            licences.extend_from_slice(b"\n\n");
        }
        named.insert("font-licences.txt".to_owned(), licences);
        let page = String::from_utf8(read(&workspace.at("index.html"))?).context("index.html")?;
        Ok(Self { wasm, script, page, language, stylesheet, named })
    }
}

/// The finished files by name.
#[derive(Debug)]
pub(crate) struct Site {
    files: BTreeMap<String, Vec<u8>>,
}

/// Names, refers and lists. The same source always makes the same site.
///
/// # Errors
/// A template whose places do not fit.
pub(crate) fn assemble(source: &Source) -> Result<Site> {
    let language = source.language;
    let mut files = source.named.clone();
    if let Some(manifest) = files.get_mut(MANIFEST) {
        let text = String::from_utf8(std::mem::take(manifest)).context("the manifest")?;
        let text = fill(&language.say(MANIFEST, &text)?, &[("language", language.tag())])?;
        *manifest = text.into_bytes();
    }
    files.extend(source.stylesheet.assets.clone());
    let mut add = |name: &str, bytes: &[u8]| {
        let name = hashed_name(name, bytes);
        files.insert(name.clone(), bytes.to_vec());
        (name, Sum::of(bytes).integrity())
    };
    let (wasm, _) = add("pitleaf.wasm", &source.wasm);
    let (script, script_integrity) = add("pitleaf.js", source.script.as_bytes());
    let (sheet, sheet_integrity) = add("pitleaf.css", source.stylesheet.css.as_bytes());
    let module = [("script", script.as_str()), ("wasm", wasm.as_str())];
    let begin = language.say("app/build/templates/start.js", &without_comments(START))?;
    let others = below(language);
    let of_start = [module.as_slice(), &[("others", others.as_str())]].concat();
    let (start, start_integrity) = add("start.js", fill(&begin, &of_start)?.as_bytes());
    let parts = [
        ("script-integrity", script_integrity.as_str()),
        ("stylesheet", &sheet),
        ("stylesheet-integrity", &sheet_integrity),
        ("language", language.tag()),
        ("start", &start),
        ("start-integrity", &start_integrity),
    ];
    let page = language.say("index.html", &source.page)?;
    let page = fill(&page, &[module.as_slice(), parts.as_slice()].concat())?;
    files.insert("index.html".to_owned(), page.into_bytes());
    ensure!(!files.contains_key(WORKER_NAME), "public/{WORKER_NAME} would hide the build's own");
    let worker = worker(&files, language)?;
    files.insert(WORKER_NAME.to_owned(), worker.into_bytes());
    Ok(Site { files })
}

/// The service worker with its list of files. Its build's name stands for the list and for the
/// worker's own text, so that no two different workers ever share a cache.
fn worker(files: &BTreeMap<String, Vec<u8>>, language: Language) -> Result<String> {
    let list: String = files
        .iter()
        .map(|(name, bytes)| format!("  {name:?}: {:?},\n", Sum::of(bytes).hex()))
        .collect();
    let build = Sum::of(format!("{WORKER}{list}").as_bytes()).hex();
    let others = below(language);
    let places = [("build", &build[..16]), ("files", list.trim_end()), ("others", &others)];
    fill(&without_comments(WORKER), &places)
}

/// The languages in folders below a language's own, in a list's words.
fn below(language: Language) -> String {
    let is_below = |other: &Language| {
        other.folder() != language.folder() && other.folder().starts_with(language.folder())
    };
    let tags = Language::ALL.into_iter().filter(is_below).map(|other| format!("{:?}", other.tag()));
    tags.collect::<Vec<_>>().join(", ")
}

/// Comments and indentation are for the reader of the source, not for the phone.
fn without_comments(script: &str) -> String {
    let lines = script.lines().map(str::trim).filter(|line| !line.starts_with("//"));
    lines.flat_map(|line| [line, "\n"]).collect()
}

impl Site {
    /// Every file's bytes by name.
    pub(crate) fn files(&self) -> &BTreeMap<String, Vec<u8>> {
        &self.files
    }
}

/// Replaces what is in `folder` by the sites, each at its language's place.
///
/// # Errors
/// The folder can't be emptied or written.
pub(crate) fn write(sites: &[(Language, Site)], folder: &Path) -> Result<()> {
    if folder.exists() {
        fs::remove_dir_all(folder)
            .with_context(|| format!("{} can't be emptied", folder.display()))?;
    }
    for (language, site) in sites {
        let folder = folder.join(language.folder());
        fs::create_dir_all(&folder)
            .with_context(|| format!("{} can't be made", folder.display()))?;
        for (name, bytes) in &site.files {
            fs::write(folder.join(name), bytes)
                .with_context(|| format!("{name} can't be written"))?;
        }
    }
    Ok(())
}

fn read(path: &Path) -> Result<Vec<u8>> {
    fs::read(path).with_context(|| {
        let fonts = path.components().any(|part| part.as_os_str() == "node_modules");
        let hint = if fonts { "; run app/setup, which fetches it from npm" } else { "" };
        format!("{} can't be read{hint}", path.display())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn source() -> Source {
        Source {
            wasm: b"\0asm".to_vec(),
            script: "export default () => {};".to_owned(),
            page: fs::read_to_string(Workspace::here().at("index.html")).expect("index.html"),
            language: Language::English,
            stylesheet: Stylesheet {
                css: "a { src: url(f-1.woff2); }".to_owned(),
                assets: BTreeMap::from([("f-1.woff2".to_owned(), b"font".to_vec())]),
            },
            named: BTreeMap::from([("icon.svg".to_owned(), b"<svg/>".to_vec())]),
        }
    }

    fn text<'site>(site: &'site Site, name: &str) -> &'site str {
        std::str::from_utf8(&site.files[name]).expect("text")
    }

    fn named_like<'site>(site: &'site Site, start: &str, end: &str) -> &'site str {
        let mut names =
            site.files.keys().filter(|name| name.starts_with(start) && name.ends_with(end));
        let name = names.next().expect("a file of that kind");
        assert_eq!(names.next(), None, "only one {start}…{end}");
        name
    }

    #[test]
    fn the_page_names_each_part_with_its_integrity() {
        let site = assemble(&source()).expect("a site");
        let page = text(&site, "index.html");
        for (start, end) in [("start-", ".js"), ("pitleaf-", ".js"), ("pitleaf-", ".css")] {
            let name = named_like(&site, start, end);
            let integrity = Sum::of(&site.files[name]).integrity();
            let element = page
                .split('<')
                .find(|element| element.contains(&format!("\"{name}\"")))
                .unwrap_or_else(|| panic!("{name} is not in the page"));
            assert!(element.contains(&format!("integrity=\"{integrity}\"")), "{element}");
        }
        let wasm = named_like(&site, "pitleaf-", ".wasm");
        assert!(page.contains(&format!("href=\"{wasm}\"")), "the page does not preload {wasm}");
        let start = text(&site, named_like(&site, "start-", ".js"));
        assert!(start.contains(wasm), "the start script does not load {wasm}");
    }

    #[test]
    fn the_german_page_says_all_in_german_and_lies_in_its_own_folder() {
        let german = assemble(&Source { language: Language::German, ..source() }).expect("a site");
        let page = text(&german, "index.html");
        assert!(page.contains("<html lang=\"de\">"), "its language: {page}");
        assert!(!page.contains(" and ") && page.contains(" und "), "its words: {page}");
        let others = |site: &Site| text(site, WORKER_NAME).contains("OTHERS = [\"de\"]");
        assert!(others(&assemble(&source()).expect("a site")), "the root leaves it alone");
        assert!(!others(&german), "the folder has no other below it");
    }

    #[test]
    fn the_worker_lists_every_file_but_itself_with_its_sum() {
        let site = assemble(&source()).expect("a site");
        let worker = text(&site, WORKER_NAME);
        for (name, bytes) in site.files().iter().filter(|(name, _)| *name != WORKER_NAME) {
            let row = format!("  {name:?}: {:?},\n", Sum::of(bytes).hex());
            assert!((worker.to_owned() + "\n").contains(&row), "no row {row}");
        }
        assert!(!worker.contains(&format!("{WORKER_NAME:?}:")), "the worker lists itself");
        assert_eq!(
            worker.matches("\",\n").count(),
            site.files().len() - 1,
            "as many rows as files"
        );
    }

    #[test]
    fn any_change_makes_another_worker_and_none_the_same() {
        let build = |source: &Source| {
            let site = assemble(source).expect("a site");
            let worker = text(&site, WORKER_NAME);
            let after = worker.split("BUILD = \"").nth(1).expect("a build name");
            after.split('"').next().expect("its end").to_owned()
        };
        let first = build(&source());
        assert_eq!(build(&source()), first, "the same source");
        let mut changed = source();
        changed.named.insert("icon.svg".to_owned(), b"<svg />".to_vec());
        assert_ne!(build(&changed), first, "one byte of an icon");
    }

    /// The policy is what keeps every request on the origin: no directive may be loosened unseen.
    #[test]
    fn the_page_has_a_strict_policy_and_nothing_inline() {
        let site = assemble(&source()).expect("a site");
        let page = text(&site, "index.html");
        let policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
                      img-src 'self'; font-src 'self'; connect-src 'self'; manifest-src 'self'; \
                      worker-src 'self'; base-uri 'none'; form-action 'none'";
        let whole = page.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(whole.contains(&format!("content=\"{policy}\"")), "another policy: {whole}");
        for inline in
            ["<style", " style=", " onload=", " onerror=", "javascript:", "http:", "https:", "=\"/"]
        {
            assert!(!page.contains(inline), "the page has {inline}");
        }
        for script in page.split("<script").skip(1) {
            assert!(script.starts_with(" type=\"module\" src="), "an inline script: {script}");
        }
    }

    /// A host's sub-folder is the app's whole world, and what page and manifest name must be there.
    #[test]
    fn every_icon_named_is_in_public() {
        let workspace = Workspace::here();
        let public = |name: &str| fs::read_to_string(workspace.at("public").join(name));
        let manifest = public("manifest.webmanifest").expect("the manifest");
        let icons = manifest.split("\"src\": \"").skip(1);
        let icons: Vec<&str> = icons.map(|rest| rest.split('"').next().expect("a name")).collect();
        assert!(icons.len() >= 2, "too few icons: {icons:?}");
        for name in icons.into_iter().chain(["icon-192.png", "icon.svg"]) {
            assert!(workspace.at("public").join(name).is_file(), "public has no {name}");
        }
    }

    #[test]
    fn writing_leaves_exactly_the_site() {
        let folder = tempfile::tempdir().expect("a folder for this test");
        let dist = folder.path().join("dist");
        fs::create_dir(&dist).expect("an old folder");
        fs::write(dist.join("old.js"), "").expect("an old file");
        let site = assemble(&source()).expect("a site");
        let german = assemble(&Source { language: Language::German, ..source() }).expect("a site");
        let sites = [(Language::English, site), (Language::German, german)];
        write(&sites, &dist).expect("written");
        let names = |folder: &Path| -> BTreeSet<String> {
            let entries = fs::read_dir(folder).expect("the folder").map(|entry| {
                let entry = entry.expect("an entry");
                (entry.path().is_file(), entry.file_name().to_string_lossy().into_owned())
            });
            entries.filter(|(is_file, _)| *is_file).map(|(_, name)| name).collect()
        };
        let wanted = |at: usize| sites[at].1.files().keys().cloned().collect();
        assert_eq!(names(&dist), wanted(0), "names in the folder");
        assert_eq!(names(&dist.join("de")), wanted(1), "names in the German folder");
    }
}
