//! CRC-32 (ISO-HDLC), the checksum of a written entry.
//!
//! The tables are made when first needed: as data they would be four kilobytes of a phone's download
//! that no compression makes smaller (`crc32fast` has sixteen).

use std::sync::LazyLock;

type Tables = [[u32; 256]; 4];

static TABLES: LazyLock<Tables> = LazyLock::new(tables);

/// The remainders of a byte, and of a byte with one, two and three zero bytes behind it.
fn tables() -> Tables {
    let mut tables = [[0; 256]; 4];
    for byte in 0..=u8::MAX {
        let mut sum = u32::from(byte);
        for _ in 0..8 {
            sum = if sum & 1 == 1 { sum >> 1 ^ 0xEDB8_8320 } else { sum >> 1 };
        }
        tables[0][usize::from(byte)] = sum;
    }
    for zeros in 1..tables.len() {
        for byte in 0..256 {
            let before: u32 = tables[zeros - 1][byte];
            tables[zeros][byte] = before >> 8 ^ tables[0][last(before)];
        }
    }
    tables
}

/// The last byte, as a place in a table.
fn last(sum: u32) -> usize {
    usize::from(sum.to_le_bytes()[0])
}

/// The checksum of some bytes.
#[must_use]
pub fn of(bytes: &[u8]) -> u32 {
    let tables = &*TABLES;
    let mut fours = bytes.chunks_exact(4);
    let mut sum = u32::MAX;
    for four in &mut fours {
        let [a, b, c, d] = [four[0], four[1], four[2], four[3]];
        sum ^= u32::from_le_bytes([a, b, c, d]);
        sum = tables[3][last(sum)]
            ^ tables[2][last(sum >> 8)]
            ^ tables[1][last(sum >> 16)]
            ^ tables[0][last(sum >> 24)];
    }
    for byte in fours.remainder() {
        sum = sum >> 8 ^ tables[0][last(sum ^ u32::from(*byte))];
    }
    !sum
}

#[cfg(test)]
mod tests {
    use super::of;

    /// The check value that the standard's catalogue of CRC algorithms gives for CRC-32/ISO-HDLC.
    #[test]
    fn the_catalogue_s_check_value() {
        assert_eq!(of(b"123456789"), 0xCBF4_3926);
        assert_eq!(of(b""), 0);
    }

    /// Against `crc32fast`, for every length that the fours can leave a rest of.
    #[test]
    fn the_same_as_another_library() {
        let bytes: Vec<u8> = (0..=u8::MAX).rev().chain(0..=u8::MAX).collect();
        for start in 0..8 {
            for end in start..bytes.len() {
                let piece = &bytes[start..end];
                assert_eq!(of(piece), crc32fast::hash(piece), "bytes {start} to {end}");
            }
        }
    }
}
