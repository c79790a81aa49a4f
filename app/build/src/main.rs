//! From cargo to a finished folder for a static host.
fn main() {}
