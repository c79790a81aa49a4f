//! Without touching the screen: Tab, Enter, digits.

use pitleaf_tests::{Browser, Named, Server, button, link, textbox};

const TAB: &str = "\u{e004}";
const ENTER: &str = "\u{e007}";

/// An outline, or the figure's own line drawn solid and thick.
const FOCUS_IS_SEEN: &str = "
    const style = getComputedStyle(document.activeElement);
    return style.outlineStyle !== 'none'
        || style.borderBottomStyle === 'solid' && parseFloat(style.borderBottomWidth) >= 3;
";

/// Presses Tab until the thing has the focus, and sees that the focus can be seen.
#[track_caller]
fn tab_to(phone: &Browser, named: &Named) {
    phone.find(named);
    for _ in 0..80 {
        phone.type_keys(TAB);
        if phone.has_focus(named) {
            let seen = phone.run(FOCUS_IS_SEEN, &[]);
            assert_eq!(seen, true, "the focus on {named} can be seen");
            return;
        }
    }
    panic!("80 tabs do not lead to {named}");
}

#[test]
fn a_reading_is_checked_and_written_by_keys_alone() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    tab_to(&phone, &link("Open a build"));
    phone.type_keys(ENTER);
    tab_to(&phone, &textbox("Name"));
    phone.type_keys("Merlin");
    phone.type_keys(ENTER);
    phone.until_notice("Written a new build: Merlin");

    tab_to(&phone, &link("Side seal to corner seal, naturally aspirated").starting());
    phone.type_keys(ENTER);
    tab_to(&phone, &textbox("Reading"));
    phone.type_keys("0.0025in");
    phone.until_verdict("Meets");
    phone.type_keys(ENTER);
    phone.until_says("Choose which one it is of");
    tab_to(&phone, &button("1F-AB"));
    phone.type_keys(ENTER);
    phone.until_notice("Written 0.0025 in on 1F-AB: meets");

    // The keys on the screen answer a keyboard too, once each.
    tab_to(&phone, &button("2"));
    phone.type_keys(ENTER);
    phone.type_keys(" ");
    assert_eq!(phone.property(&textbox("Reading"), "value"), "22", "Enter and space");
    tab_to(&phone, &button("Undo"));
    phone.type_keys(ENTER);
    phone.until_notice("Withdrawn; still in the book");
    assert_eq!(phone.taps(), 0, "the screen was not touched");
}
