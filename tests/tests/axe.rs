//! A judge from outside, on every screen in both lights: axe-core, with the rules of WCAG 2.2 up to AAA.

use pitleaf_tests::places::{each_place, with_a_full_book};
use pitleaf_tests::{Browser, Phone, Server};
use std::fs;
use std::path::Path;

#[test]
fn axe_finds_no_violation_on_any_screen_in_either_light() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("node_modules/axe-core/axe.min.js");
    let axe = fs::read_to_string(file).expect("axe-core, which tests/run fetches from npm");
    let server = Server::start();
    let (browser, id) = with_a_full_book(Phone::USUAL, &server);
    let mut found = Vec::new();
    let mut screens = 0;
    for light in ["dark", "light"] {
        browser.prefer(light);
        each_place(&browser, &id, |name| {
            found.extend(
                violations(&browser, &axe)
                    .into_iter()
                    .map(|fault| format!("{name}, {light}: {fault}")),
            );
            screens += 1;
        });
    }
    println!("axe-core: {screens} screens, {} violations", found.len());
    assert_eq!(found, Vec::<String>::new(), "violations");
}

/// What it finds on the page as it is now: the rule, and where.
fn violations(browser: &Browser, axe: &str) -> Vec<String> {
    // A page loaded anew has lost it.
    if browser.run("return typeof window.axe", &[]) != "object" {
        browser.run(axe, &[]);
    }
    let found = browser.run_until_called(RUN, &[]);
    let passes = found["passes"].as_u64().unwrap_or_default();
    assert!(passes > 5, "it has looked: {found}");
    let violations = found["violations"].as_array().cloned().unwrap_or_default();
    violations.iter().map(ToString::to_string).collect()
}

const RUN: &str = "
    const [done] = arguments;
    const tags = ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const rules = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } };
    axe.run(document, { runOnly: { type: 'tag', values: tags }, rules }).then(
        ({ violations, passes }) => done({
            passes: passes.length,
            violations: violations.map(({ id, nodes }) => [id, nodes.length, nodes[0].html.slice(0, 160), nodes[0].failureSummary.slice(0, 300)].join(' · ')),
        }),
        (error) => done({ passes: 0, violations: [String(error)] }),
    );
";
