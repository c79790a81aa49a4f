//! How entries look in a file: this text is what older books hold, so it must go on being read.

use super::{entry, figure, id, opened, slot};
use pitleaf_core::book::{Entry, Fact};
use pitleaf_core::kept;
use pitleaf_core::limits::{BuildKind, Edge, GaugeKind, Input, Limit, Part, Row, Source};
use pitleaf_core::quantity::{Bounds, Dimension, Unit};
use pitleaf_core::seals::{
    Drawing, Ground, GroundBy, Leaf, LeafSet, Outcome, Stack, Trial, Written,
};

fn leaf(text: &str) -> Leaf {
    Leaf::read(text, Unit::Inch).expect("a leaf")
}

fn tolerance() -> Written {
    Written::read("0.0001", Unit::Inch, Bounds::widest(Dimension::Length)).expect("a length")
}

/// An entry of every kind.
pub(super) fn sample() -> Vec<Entry> {
    let own = Row {
        id: "end-play".to_owned(),
        part: Part::Assembly,
        what: "End play".to_owned(),
        how: String::new(),
        gauge: GaugeKind::DialIndicator,
        input: Input::Gap,
        unit: Unit::Millimetre,
        limit: Limit {
            lower: Edge::read("0.04", Unit::Millimetre).ok(),
            upper: Edge::read("0.07", Unit::Millimetre).ok(),
            wear: Edge::read("0.09", Unit::Millimetre).ok(),
        },
        build: BuildKind::Any,
        source: Source::Yours {
            who: "J.".to_owned(),
            when: "3 May".to_owned(),
            from: "workshop manual, p. 14".to_owned(),
        },
        note: String::new(),
        caution: String::new(),
        words: String::new(),
        cranking_speed: None,
    };
    let note = Fact::Note {
        about: "front housing".to_owned(),
        words: "“blue” by the plug".to_owned(),
    };
    let drawing = Drawing::of(vec![vec![[10, 20], [30, 40]]]).expect("little ink");
    let seen = Trial::with_leaves(
        Outcome::Goes,
        Stack::of(vec![leaf("0.0020")]).expect("one leaf"),
        tolerance(),
        Some(Ground { count: 3, by: GroundBy::Strokes }),
    )
    .expect("a trial");
    let leaves = vec![leaf("0.0020"), leaf("0.0015")];
    let leaves = LeafSet::of("Bench", leaves, tolerance()).expect("a set");
    let gauge = Fact::Gauge {
        kind: GaugeKind::DialIndicator,
        resolution: Edge::read("0.01", Unit::Millimetre).expect("an edge"),
        error: Edge::read("0.02", Unit::Millimetre).expect("an edge").into(),
    };
    vec![
        opened(),
        entry("e2", 2, figure("0,0025")),
        entry("e3", 3, Fact::Mark { slot: slot("2R-AB"), mark: "two dots".to_owned() }),
        entry("e4", 4, Fact::Fitted { slot: slot("2R-AB"), fitted: true }),
        entry("e5", 5, note),
        entry("e6", 6, Fact::Limit(Box::new(own.clone()))),
        entry("e7", 7, Fact::Withdrawn { entry: id("e2") }),
        entry("e8", 8, Fact::Restored { entry: id("e2") }),
        entry("e9", 9, Fact::Drawing { slot: slot("2R-AB"), drawing }),
        entry("e10", 10, Fact::Trial { slot: slot("2R-AB"), seen }),
        entry("e11", 11, Fact::FreshSeal { slot: slot("2R-AB") }),
        entry("e12", 12, Fact::Leaves(leaves)),
        entry("e13", 13, gauge),
        entry("e14", 14, Fact::SignedOff { who: "J.".to_owned() }),
        entry("e15", 15, Fact::Reopened { why: "rear housing changed".to_owned() }),
        entry("e16", 16, joint_order()),
        entry("e17", 17, tightened()),
        entry("e18", 18, Fact::DowelsSolid { solid: true }),
        entry("e19", 19, oil_feed()),
        entry("e20", 20, Fact::BuildLimit(Box::new(own))),
    ]
}

fn joint_order() -> Fact {
    Fact::TighteningOrder {
        joint: "Tension bolts".to_owned(),
        order: "1-3-2-4".to_owned(),
        shares: "33, 67, 100".to_owned(),
        torque: "38".to_owned(),
        unit: Unit::NewtonMetre,
        elsewhere: false,
        circle: false,
        places: String::new(),
    }
}

fn tightened() -> Fact {
    Fact::Tightened {
        joint: "Tension bolts".to_owned(),
        pass: 1,
        of: 4,
        torque: "12.5".to_owned(),
        unit: Unit::NewtonMetre,
    }
}

fn oil_feed() -> Fact {
    Fact::OilFeed {
        words: "filter block to front cover".to_owned(),
        bore: "6".to_owned(),
        unit: Unit::Millimetre,
    }
}

const FILE: &str = r#"[
  {"format":1,"id":"kestrel","build":"kestrel","order":1,"at":1800000001000,
   "fact":{"opened":{"name":"Kestrel","kind":"naturally-aspirated","rotors":2,"demo":true}}},
  {"format":1,"id":"e2","build":"kestrel","order":2,"at":1800000002000,
   "fact":{"figure":{"row":"side-seal-gap-na","place":"1F-AB","text":"0,0025","unit":"in","gauge":"feeler-leaf"}}},
  {"format":1,"id":"e3","build":"kestrel","order":3,"at":1800000003000,
   "fact":{"mark":{"slot":"2R-AB","mark":"two dots"}}},
  {"format":1,"id":"e4","build":"kestrel","order":4,"at":1800000004000,
   "fact":{"fitted":{"slot":"2R-AB","fitted":true}}},
  {"format":1,"id":"e5","build":"kestrel","order":5,"at":1800000005000,
   "fact":{"note":{"about":"front housing","words":"“blue” by the plug"}}},
  {"format":1,"id":"e6","build":"kestrel","order":6,"at":1800000006000,
   "fact":{"limit":{"id":"end-play","part":"assembly","what":"End play","how":"","gauge":"dial-indicator",
    "input":"gap","unit":"mm","limit":{"lower":"0.04 mm","upper":"0.07 mm","wear":"0.09 mm"},"build":"any",
    "source":{"yours":{"who":"J.","when":"3 May","from":"workshop manual, p. 14"}},
    "note":"","caution":"","words":""}}},
  {"format":1,"id":"e7","build":"kestrel","order":7,"at":1800000007000,
   "fact":{"withdrawn":{"entry":"e2"}}},
  {"format":1,"id":"e8","build":"kestrel","order":8,"at":1800000008000,
   "fact":{"restored":{"entry":"e2"}}},
  {"format":1,"id":"e9","build":"kestrel","order":9,"at":1800000009000,
   "fact":{"drawing":{"slot":"2R-AB","drawing":[[[10,20],[30,40]]]}}},
  {"format":1,"id":"e10","build":"kestrel","order":10,"at":1800000010000,
   "fact":{"trial":{"slot":"2R-AB","seen":{"outcome":"goes","leaves":["0.0020 in"],"tolerance":"0.0001 in",
    "ground":{"count":3,"by":"strokes"}}}}},
  {"format":1,"id":"e11","build":"kestrel","order":11,"at":1800000011000,
   "fact":{"fresh-seal":{"slot":"2R-AB"}}},
  {"format":1,"id":"e12","build":"kestrel","order":12,"at":1800000012000,
   "fact":{"leaves":{"name":"Bench","leaves":["0.0015 in","0.0020 in"],"tolerance":"0.0001 in"}}},
  {"format":1,"id":"e13","build":"kestrel","order":13,"at":1800000013000,
   "fact":{"gauge":{"kind":"dial-indicator","resolution":"0.01 mm","error":"0.02 mm"}}},
  {"format":1,"id":"e14","build":"kestrel","order":14,"at":1800000014000,
   "fact":{"signed-off":{"who":"J."}}},
  {"format":1,"id":"e15","build":"kestrel","order":15,"at":1800000015000,
   "fact":{"reopened":{"why":"rear housing changed"}}},
  {"format":1,"id":"e16","build":"kestrel","order":16,"at":1800000016000,
   "fact":{"tightening-order":{"joint":"Tension bolts","order":"1-3-2-4","shares":"33, 67, 100","torque":"38","unit":"N·m"}}},
  {"format":1,"id":"e17","build":"kestrel","order":17,"at":1800000017000,
   "fact":{"tightened":{"joint":"Tension bolts","pass":1,"of":4,"torque":"12.5","unit":"N·m"}}},
  {"format":1,"id":"e18","build":"kestrel","order":18,"at":1800000018000,
   "fact":{"dowels-solid":{"solid":true}}},
  {"format":1,"id":"e19","build":"kestrel","order":19,"at":1800000019000,
   "fact":{"oil-feed":{"words":"filter block to front cover","bore":"6","unit":"mm"}}},
  {"format":1,"id":"e20","build":"kestrel","order":20,"at":1800000020000,
   "fact":{"build-limit":{"id":"end-play","part":"assembly","what":"End play","how":"","gauge":"dial-indicator","input":"gap","unit":"mm",
   "limit":{"lower":"0.04 mm","upper":"0.07 mm","wear":"0.09 mm"},"build":"any",
   "source":{"yours":{"who":"J.","when":"3 May","from":"workshop manual, p. 14"}},"note":"","caution":"","words":""}}}
]"#;

#[test]
fn entries_are_written_like_this() {
    let written = kept::write(&sample());
    let wanted: String = FILE.lines().map(str::trim_start).collect();
    assert_eq!(
        written, wanted,
        "a change here leaves older books unread: raise the format instead"
    );
}

#[test]
fn and_read_back_the_same() {
    assert_eq!(kept::read::<Vec<Entry>>(FILE).unwrap(), sample(), "the sample");
}

#[test]
fn what_may_be_left_out_is_filled_in() {
    let text = r#"{"format":1,"id":"n","build":"kestrel","order":2,"at":0,"fact":{"note":{"words":"dry"}}}"#;
    let note = Fact::Note { about: String::new(), words: "dry".to_owned() };
    assert_eq!(kept::read::<Entry>(text).unwrap().fact, note, "about nothing in particular");
}

#[test]
fn what_is_not_known_here_is_refused_and_not_guessed() {
    for (fact, wanted) in [
        (r#"{"blessed":{}}"#, "unknown variant `blessed`"),
        (r#"{"mark":{"slot":"9F-AB","mark":""}}"#, "a slot that no rotor has"),
        (
            r#"{"figure":{"row":"r","text":"1","unit":"furlong","gauge":"other"}}"#,
            "a unit that is not known here",
        ),
    ] {
        let text = format!(r#"{{"format":1,"id":"x","build":"k","order":1,"at":0,"fact":{fact}}}"#);
        let refused = kept::read::<Entry>(&text).unwrap_err().to_string();
        assert!(refused.starts_with(wanted), "{fact}: {refused}");
    }
}
