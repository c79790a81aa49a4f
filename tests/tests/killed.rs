//! The whole browser is ended with SIGKILL: what it said was written is there.
//!
//! `cargo test -p pitleaf-tests --bench kills` fills the whole table, in other engines too.

use pitleaf_tests::kills::{after, in_a_stream};
use pitleaf_tests::{Engine, Server};
use std::time::Duration;

#[test]
fn killed_at_once_ten_times_nothing_is_lost() {
    let server = Server::start();
    assert_eq!(after(Engine::chosen(), &server, Duration::ZERO, 10), 0, "lost");
}

#[test]
fn killed_later_nothing_is_lost() {
    let server = Server::start();
    for wait in [50, 200, 1000, 3000].map(Duration::from_millis) {
        assert_eq!(after(Engine::chosen(), &server, wait, 2), 0, "lost when killed after {wait:?}");
    }
}

#[test]
fn killed_in_a_stream_of_writes_nothing_acknowledged_is_lost() {
    let server = Server::start();
    // Times that fall anywhere in a write: they have no common measure with it.
    for wait in [137, 311, 523, 797, 1049].map(Duration::from_millis) {
        let stream = in_a_stream(Engine::chosen(), &server, wait);
        assert!(stream.acknowledged > 0, "it was killed before anything was written");
        assert_eq!(stream.lost, 0, "lost of {} when killed after {wait:?}", stream.acknowledged);
    }
}
