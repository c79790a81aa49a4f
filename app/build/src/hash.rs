//! SHA-256, as names, integrity attributes and lists use it.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

/// The checksum of one file's final bytes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(crate) struct Sum([u8; 32]);

impl Sum {
    /// The SHA-256 of `bytes`.
    pub(crate) fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// All 64 hexadecimal digits.
    pub(crate) fn hex(self) -> String {
        self.0.iter().map(|byte| format!("{byte:02x}")).collect()
    }

    /// An `integrity` attribute's value (W3C, *Subresource Integrity*, 2016, section 3.5).
    pub(crate) fn integrity(self) -> String {
        format!("sha256-{}", STANDARD.encode(self.0))
    }
}

/// `name.ext` with the first 16 digits of the bytes' checksum before the extension.
pub(crate) fn hashed_name(name: &str, bytes: &[u8]) -> String {
    let digits = &Sum::of(bytes).hex()[..16];
    match name.rsplit_once('.') {
        Some((stem, extension)) => format!("{stem}-{digits}.{extension}"),
        None => format!("{name}-{digits}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NIST, FIPS 180-4 example values, SHA-256 of the one-block message "abc".
    #[test]
    fn the_sum_of_abc_is_the_standards_own() {
        assert_eq!(
            Sum::of(b"abc").hex(),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
            "hexadecimal"
        );
        assert_eq!(
            Sum::of(b"abc").integrity(),
            "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=",
            "base64 of the same bytes"
        );
    }

    #[test]
    fn a_name_carries_its_bytes() {
        assert_eq!(hashed_name("a.b.css", b"abc"), "a.b-ba7816bf8f01cfea.css", "with extension");
        assert_eq!(hashed_name("plain", b"abc"), "plain-ba7816bf8f01cfea", "without");
    }
}
