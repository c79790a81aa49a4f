//! Records that were damaged: found, told apart, and never read as something else.

use super::file::sample;
use super::{entry, figure, opened};
use pitleaf_core::book::written::{self, Damage};
use pitleaf_core::kept;

fn record() -> String {
    written::record(&entry("a", 2, figure("0,0025")))
}

/// A record of a text, its checksum right.
fn sealed(text: &str) -> String {
    format!("{:08x} {text}", crc32fast::hash(text.as_bytes()))
}

#[test]
fn a_record_is_a_checksum_a_space_and_the_entry() {
    // CRC-32 of these bytes by zlib.
    let wanted = r#"9d4604b3 {"format":1,"id":"kestrel","build":"kestrel","order":1,"at":1800000001000,"fact":{"opened":{"name":"Kestrel","kind":"naturally-aspirated","rotors":2,"demo":true}}}"#;
    assert_eq!(written::record(&opened()), wanted, "older books hold this");
}

#[test]
fn every_kind_of_entry_reads_back() {
    for entry in sample() {
        assert_eq!(written::entry(&written::record(&entry)), Ok(entry), "as it was");
    }
}

#[test]
fn a_flipped_bit_is_found_wherever_it_is() {
    let (record, sound) = (record(), Ok(entry("a", 2, figure("0,0025"))));
    let mut tried = 0;
    for place in 0..record.len() {
        for bit in 0..7 {
            let mut bytes = record.clone().into_bytes();
            bytes[place] ^= 1 << bit;
            let flipped = String::from_utf8(bytes).expect("seven bits are a letter");
            let read = written::entry(&flipped);
            tried += 1;
            if place > 8 {
                assert_eq!(read, Err(Damage::Checksum), "bit {bit} of byte {place}: {flipped}");
            } else if flipped.eq_ignore_ascii_case(&record) {
                assert_eq!(read, sound, "a checksum’s digit in capitals is the same digit");
            } else {
                assert!(
                    matches!(read, Err(Damage::Checksum | Damage::Foreign)),
                    "bit {bit} of byte {place}: {flipped} {read:?}"
                );
            }
        }
    }
    assert_eq!(tried, record.len() * 7, "every bit of every letter");
}

#[test]
fn half_an_entry_is_found_wherever_it_was_cut() {
    let record = record();
    for length in 0..record.len() {
        let wanted = if length < 9 { Damage::Foreign } else { Damage::Checksum };
        assert_eq!(written::entry(&record[..length]), Err(wanted), "cut after {length}");
        let rest = written::entry(&record[length + 1..]);
        assert!(rest.is_err(), "what is left after {length} is no entry: {rest:?}");
    }
    assert_eq!(written::entry(&format!("{record} ")), Err(Damage::Checksum), "more than one");
}

#[test]
fn a_newer_version_is_told_from_what_cant_be_read() {
    let newer = r#"{"format":2,"id":"x","build":"kestrel","order":2,"at":0,"fact":{"note":{"words":"dry"}}}"#;
    assert_eq!(written::entry(&sealed(newer)), Err(Damage::Newer), "readable by its looks alone");
    let stranger = r#"{"format":2,"name":"x","said":{"blessed":true}}"#;
    assert_eq!(written::entry(&sealed(stranger)), Err(Damage::Newer), "of another make");
    for text in [
        "",
        "null",
        "[]",
        "{}",
        r#"{"format":1}"#,
        r#"{"format":"2"}"#,
        r#"{"format":-1}"#,
        r#"{"format":1,"id":"x","build":"k","order":-2,"at":0,"fact":{"note":{"words":"dry"}}}"#,
        r#"{"format":1,"id":"x","build":"k","order":2,"at":0,"fact":{"blessed":{}}}"#,
        r#"{"format":1,"id":"x","id":"y","build":"k","order":2,"at":0,"fact":{"note":{"words":""}}}"#,
    ] {
        assert_eq!(written::entry(&sealed(text)), Err(Damage::Unreadable), "{text}");
    }
}

#[test]
fn what_is_not_ours_is_foreign() {
    let nine = format!("0{}", record());
    for text in
        ["", " ", "theirs", "{\"token\": 1}", "0000000 {}", "0000000g {}", "zzzzzzzz {}", &nine]
    {
        assert_eq!(written::entry(text), Err(Damage::Foreign), "{text:?}");
    }
}

#[test]
fn each_damage_has_its_words() {
    for (damage, wanted) in [
        (Damage::Foreign, "not a record of this tool"),
        (Damage::Checksum, "damaged: its checksum does not fit"),
        (Damage::Newer, "written by a newer version; bring this one up to date to read it"),
        (Damage::Unreadable, "sound, but not readable here"),
    ] {
        assert_eq!(damage.to_string(), wanted, "{damage:?}");
    }
}

/// Sound JSON of a limit or a gauge that nothing can be judged by: kept aside, with what is wrong.
#[test]
fn a_limit_that_no_reading_can_be_held_against_is_kept_aside() {
    let text = |name: &str| {
        let of = sample().into_iter().find(|entry| &*entry.id.0 == name).expect("of the sample");
        kept::write(&of)
    };
    for (name, sound, bad, wanted) in [
        (
            "e6",
            r#""lower":"0.04 mm""#,
            r#""lower":"9 psi""#,
            "a limit that can’t be used. A limit’s unit measures something else than the row. Change the unit.",
        ),
        (
            "e20",
            r#""wear":"0.09 mm""#,
            r#""wear":"9 °C""#,
            "a limit that can’t be used. A limit’s unit measures something else than the row. Change the unit.",
        ),
        (
            "e20",
            r#""lower":"0.04 mm""#,
            r#""lower":"0.4 mm""#,
            "a limit that can’t be used. The lower limit lies above the upper. Swap them, or check the decimal point.",
        ),
        (
            "e6",
            r#""lower":"0.04 mm","upper":"0.07 mm","#,
            "",
            "a limit that can’t be used. Give a lower limit, an upper limit, or both.",
        ),
        (
            "e20",
            r#""unit":"mm","limit":{"lower":"0.04 mm","upper":"0.07 mm","wear":"0.09 mm"}"#,
            r#""unit":"psi","limit":{"lower":"4 psi","upper":"7 psi"}"#,
            "a limit that can’t be used. A limit’s unit measures something else than the row. Change the unit.",
        ),
        (
            "e13",
            r#""error":"0.02 mm""#,
            r#""error":"3 psi""#,
            "a gauge that can’t be used. Its steps and its error measure different things.",
        ),
    ] {
        let text = text(name);
        assert!(text.contains(sound), "{sound} in {text}");
        written::entry(&sealed(&text)).expect("as it was");
        let refused = written::entry(&sealed(&text.replacen(sound, bad, 1)));
        assert_eq!(refused.map_err(|damage| damage.to_string()), Err(wanted.to_owned()), "{bad}");
    }
}
