//! Addresses of what the engine in hand or the book has not.

use pitleaf_tests::{Browser, Server, button, textbox};

#[test]
fn nothing_is_written_of_a_piece_this_engine_has_not() {
    let server = Server::start();
    let phone = Browser::open(server.url());
    phone.go("#/open");
    phone.fill(&textbox("Name"), "Wren");
    phone.tap(&button("1 rotor"));
    phone.tap(&button("Open"));
    phone.until_notice("Written a new build: Wren");
    for (place, words) in [
        ("#/slot/2R-BC", "This build has no rotor 2"),
        ("#/mark/2R-BC", "This build has no rotor 2"),
        ("#/hot-gap/2R-BC", "This build has no rotor 2"),
        ("#/check/side-seal-gap-na/2F-AB", "This build has no rotor 2"),
        ("#/seals/2F", "This build has no rotor 2"),
        ("#/work/compression/2", "This build has no rotor 2"),
        ("#/faces/flatness/intermediate-1-front", "This build has no such piece"),
        ("#/faces/flatness/foo", "This build has no such piece: “foo”."),
    ] {
        phone.go(place);
        phone.until_says("Not on this engine");
        phone.until_says(words);
        assert!(!phone.shows(&button("Write down")), "nothing to write at {place}");
    }
    for place in ["#/slot/1R-BC", "#/check/side-housing-warp/front", "#/faces/flatness/rear"] {
        phone.go(place);
        assert!(!phone.words().contains("Not on this engine"), "{place} is there");
    }
    phone.go("#/entry/whatever");
    phone.until_says("The book has no such entry");
}
