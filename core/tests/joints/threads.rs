//! Threads, drills, holes and ports.

use super::close;
use pitleaf_core::joints::Refusal;
use pitleaf_core::joints::threads::{
    BossPort, ClearanceFit, Drill, DrillKind, Measured, Series, Side, Thread, clearance_hole,
    find_ports, find_threads, identify, nearest_drills, what_tells_apart,
};
use pitleaf_core::quantity::{Amount, Unit};
use uom::si::area::{square_inch, square_millimeter};
use uom::si::f64::Length;
use uom::si::length::{inch, millimeter};
use uom::si::ratio::{percent, ratio};

fn thread(name: &str) -> Thread {
    Thread::named(name).unwrap_or_else(|| panic!("{name} is in no table"))
}

fn drill(name: &str) -> Drill {
    Drill::named(name).unwrap_or_else(|| panic!("{name} is no drill"))
}

fn mm(amount: Amount) -> f64 {
    amount.value(Unit::Millimetre)
}

/// ISO 898-1, ASME B1.1: each printed stress area follows from its formula, to its last digit. R.
///
/// DIFFERENCE: the table cuts 5/16-24 and 1/2-20 off instead of rounding them: 0.0580 and 0.1599,
/// where the formula gives 0.05807 and 0.15995.
#[test]
fn every_stress_area_follows_from_its_formula() {
    assert_eq!(Thread::all().count(), 38, "rows of the tables");
    for thread in Thread::all() {
        let (printed, _) = thread.printed_stress_area();
        let decimals = printed.split_once('.').map_or(0, |(_, part)| part.len());
        let got = if thread.series().is_metric() {
            thread.stress_area().get::<square_millimeter>()
        } else {
            thread.stress_area().get::<square_inch>()
        };
        let cut_off = ["5/16-24 UNF", "1/2-20 UNF"].contains(&thread.name().as_str());
        let room = if cut_off { 0.67 } else { 0.501 };
        let last_digit = 0.1_f64.powi(i32::try_from(decimals).expect("a few decimals"));
        close(got, printed.parse().expect("a figure"), room * last_digit, &thread.name());
    }
}

/// ISO 898-1:2013 (P; the fine pitches M, R) and Shigley 9th ed., table 8-2 (P).
#[test]
fn stress_areas_are_the_published_ones() {
    for (name, area) in [
        ("M6 × 1", 20.1),
        ("M8 × 1.25", 36.6),
        ("M10 × 1.5", 58.0),
        ("M12 × 1.75", 84.3),
        ("M14 × 2", 115.0),
        ("M10 × 1.25", 61.2),
        ("M12 × 1.5", 88.1),
        ("M12 × 1.25", 92.1),
    ] {
        let printed: f64 = thread(name).printed_stress_area().0.parse().expect("a figure");
        close(printed, area, 0.0, name);
    }
    for (size, coarse, fine, unc, unf) in [
        ("1/4", 20, 28, 0.0318, 0.0364),
        ("5/16", 18, 24, 0.0524, 0.0580),
        ("3/8", 16, 24, 0.0775, 0.0878),
        ("7/16", 14, 20, 0.1063, 0.1187),
        ("1/2", 13, 20, 0.1419, 0.1599),
        ("9/16", 12, 18, 0.182, 0.203),
    ] {
        for (count, series, area) in [(coarse, "UNC", unc), (fine, "UNF", unf)] {
            let name = format!("{size}-{count} {series}");
            let printed: f64 = thread(&name).printed_stress_area().0.parse().expect("a figure");
            close(printed, area, 0.0, &name);
        }
    }
}

/// The inch rule on a metric thread would give another area: M10 × 1.25 61.2 against 60.6 mm².
#[test]
fn the_two_stress_area_rules_are_kept_apart() {
    let metric = thread("M10 × 1.25").stress_area().get::<square_millimeter>();
    let by_inch_rule = std::f64::consts::FRAC_PI_4 * (10.0 - 0.9743 * 1.25_f64).powi(2);
    assert!(metric - by_inch_rule > 0.5, "{metric} by the inch rule too: {by_inch_rule}");
}

/// Metric tap drills are d − P to the nearest tenth of a millimetre, ties to even (ISO 2306), and
/// lie within the nut's minor diameter at 6H (ISO 965-1: 230 P^0.7 µm, below 1 mm of pitch
/// 433 P − 190 P^1.22). R.
#[test]
fn every_metric_tap_drill_follows_from_its_rule() {
    for thread in Thread::all().filter(|thread| thread.series().is_metric()) {
        let (diameter, pitch) = (mm(thread.diameter()), mm(thread.pitch()));
        let got = mm(thread.tap_drill().diameter().expect("a drill"));
        let tenths = (diameter - pitch) * 10.0;
        let wanted = (tenths * 1e6).round() / 1e6;
        close(got * 10.0, wanted.round_ties_even(), 1e-9, &thread.name());
        let tolerance = if pitch >= 1.0 {
            230.0 * pitch.powf(0.7)
        } else {
            433.0 * pitch - 190.0 * pitch.powf(1.22)
        };
        let minor = thread.minor_diameter().get::<millimeter>();
        let room = minor..=minor + tolerance / 1000.0 * 1.03;
        assert!(room.contains(&got), "{thread}: {got} not in {room:?}");
    }
}

/// Inch tap drills lie within 9 thou of D − 1/n and leave 60 to 80 % of a thread. R.
#[test]
fn every_inch_tap_drill_follows_from_its_rule() {
    for thread in Thread::all().filter(|thread| !thread.series().is_metric()) {
        let count = f64::from(thread.threads_per_inch().expect("an inch thread"));
        let full = thread.diameter().value(Unit::Inch);
        let size = thread.tap_drill().diameter().expect("a drill").value(Unit::Inch);
        close(size, full - 1.0 / count, 0.009, &thread.name());
        let left = thread.engagement(Length::new::<inch>(size)).get::<percent>();
        assert!((60.0..=80.0).contains(&left), "{thread}: {left} %");
    }
}

/// ISO 2306 and the inch charts. P; engagements R.
#[test]
fn tap_drills_and_engagement_are_the_published_ones() {
    for (name, tap) in [
        ("M6 × 1", "5.0"),
        ("M8 × 1.25", "6.8"),
        ("M10 × 1.5", "8.5"),
        ("M12 × 1.75", "10.2"),
        ("M10 × 1.25", "8.8"),
        ("M12 × 1.5", "10.5"),
        ("1/4-20 UNC", "no. 7"),
        ("7/16-20 UNF", "25/64"),
        ("1/2-20 UNF", "29/64"),
        ("9/16-18 UNF", "33/64"),
    ] {
        assert_eq!(thread(name).tap_drill(), drill(tap), "{name}");
    }
    for (name, share) in [("1/4-20 UNC", 75.4), ("1/2-20 UNF", 72.2), ("M8 × 1.25", 73.9)] {
        let thread = thread(name);
        let hole = thread.tap_drill().diameter().and_then(Amount::length).expect("a length");
        close(thread.engagement(hole).get::<percent>(), share, 0.05, name);
    }
}

/// ASME B94.11M. Sizes to number 51 and letter K in agreeing transcriptions (P), and R in that the sizes must fall with the number and rise with the letter.
#[test]
fn drills_stand_in_order_and_are_found_by_their_names() {
    let sizes = |kind: DrillKind| -> Vec<f64> {
        Drill::all()
            .filter(|drill| drill.kind() == kind)
            .map(|drill| mm(drill.diameter().expect("a drill has a diameter")))
            .collect()
    };
    let numbers = sizes(DrillKind::Number);
    assert_eq!(numbers.len(), 60, "numbers");
    assert!(numbers.is_sorted_by(|a, b| a > b), "numbers: {numbers:?}");
    for kind in [DrillKind::Letter, DrillKind::Fraction, DrillKind::Metric] {
        let sizes = sizes(kind);
        assert!(sizes.is_sorted_by(|a, b| a < b), "{kind:?}: {sizes:?}");
    }
    for (drill, inches) in [
        (Drill::Number(1), 0.2280),
        (Drill::Number(7), 0.2010),
        (Drill::Number(10), 0.1935),
        (Drill::Number(20), 0.1610),
        (Drill::Number(29), 0.1360),
        (Drill::Number(30), 0.1285),
        (Drill::Number(40), 0.0980),
        (Drill::Number(50), 0.0700),
        (Drill::Letter('A'), 0.234),
        (Drill::Letter('F'), 0.257),
        (Drill::Letter('K'), 0.281),
    ] {
        let size = drill.diameter().expect("a drill has a diameter").value(Unit::Inch);
        close(size, inches, 1e-12, &drill.to_string());
    }
    for (name, wanted, text) in [
        ("#7", Drill::Number(7), "no. 7"),
        ("number 30", Drill::Number(30), "no. 30"),
        ("Nr. 1", Drill::Number(1), "no. 1"),
        ("letter f", Drill::Letter('F'), "letter F"),
        ("Q drill", Drill::Letter('Q'), "letter Q"),
        ("25/64", Drill::Fraction(25), "25/64 in"),
        ("1 15/64 in", Drill::Fraction(79), "1 15/64 in"),
        ("1/2\"", Drill::Fraction(32), "1/2 in"),
        ("1\"", Drill::Fraction(64), "1 in"),
        ("8,5", Drill::Metric(850), "8.5 mm"),
        ("6.8 mm", Drill::Metric(680), "6.8 mm"),
        ("10.25mm", Drill::Metric(1025), "10.25 mm"),
    ] {
        let found = Drill::named(name);
        assert_eq!(found, Some(wanted), "{name}");
        assert_eq!(wanted.to_string(), text, "{name}");
    }
    for nothing in ["", "#0", "#61", "no.", "é", "1/7", "abc", "-5", "0", "99"] {
        assert_eq!(Drill::named(nothing), None, "{nothing:?}");
    }
}

#[test]
fn every_drill_is_found_by_the_name_it_shows() {
    for drill in Drill::all() {
        assert_eq!(Drill::named(&drill.to_string()), Some(drill), "{drill}");
    }
}

/// 6.8 mm: no letter H (6.756), 17/64 (6.747); numbers end at 5.8 mm.
#[test]
fn the_nearest_drill_of_each_kind_is_offered() {
    let wanted = Amount::exact(68, 10, Unit::Millimetre).expect("a length");
    let found: Vec<String> = nearest_drills(wanted).iter().map(|(d, _)| d.to_string()).collect();
    assert_eq!(found, ["6.8 mm", "letter H", "17/64 in"], "drills near 6.8 mm");
}

/// ISO 273 (M): the holes grow by the clearance class; ASME B18.2.8 normal holes (P) for 1/4 to 7/16, 3/4 from
/// memory.
#[test]
fn clearance_holes() {
    for (name, close, normal, loose) in [
        ("M5 × 0.8", "5.3", "5.5", "5.8"),
        ("M6 × 1", "6.4", "6.6", "7"),
        ("M8 × 1.25", "8.4", "9", "10"),
        ("M10 × 1.25", "10.5", "11", "12"),
        ("M12 × 1.75", "13", "13.5", "14.5"),
        ("M14 × 2", "15", "15.5", "16.5"),
        ("M16 × 2", "17", "17.5", "18.5"),
        ("1/4-20 UNC", "17/64", "9/32", "19/64"),
        ("5/16-18 UNC", "21/64", "11/32", "23/64"),
        ("3/8-16 UNC", "25/64", "13/32", "27/64"),
        ("7/16-20 UNF", "29/64", "15/32", "31/64"),
        ("3/4-16 UNF", "25/32", "13/16", "29/32"),
    ] {
        for (fit, wanted) in [
            (ClearanceFit::Close, close),
            (ClearanceFit::Normal, normal),
            (ClearanceFit::Loose, loose),
        ] {
            let hole = clearance_hole(thread(name), fit).expect("a row");
            assert_eq!(hole.drill, drill(wanted), "{name} {fit:?}");
        }
    }
    let none = clearance_hole(thread("9/16-18 UNF"), ClearanceFit::Normal);
    assert_eq!(none, None, "the standard has no 9/16");
    for thread in Thread::all().filter(|thread| thread.series() != Series::Un) {
        let of = |fit| clearance_hole(thread, fit).and_then(|hole| hole.drill.diameter()).map(mm);
        if let Some(close) = of(ClearanceFit::Close) {
            let (normal, loose) = (of(ClearanceFit::Normal), of(ClearanceFit::Loose));
            assert!(mm(thread.diameter()) < close, "{thread}");
            assert!(Some(close) < normal && normal < loose, "{thread}");
        }
    }
}

/// SAE J1926-1 / ISO 11926-1: threads P (−12 and −16 in one transcription), full thread of −4, −6
/// and −8 P, the rest M.
#[test]
fn boss_ports() {
    let rows: Vec<(u8, String)> = BossPort::all()
        .map(|port| (port.dash(), port.thread().expect("a thread of the tables").name()))
        .collect();
    let wanted = [
        (3, "3/8-24 UNF"),
        (4, "7/16-20 UNF"),
        (5, "1/2-20 UNF"),
        (6, "9/16-18 UNF"),
        (8, "3/4-16 UNF"),
        (10, "7/8-14 UNF"),
        (12, "1 1/16-12 UN"),
        (16, "1 5/16-12 UN"),
    ];
    assert_eq!(rows, wanted.map(|(dash, name)| (dash, name.to_owned())), "ports");
    for (dash, thou) in [(4, 454), (6, 500), (8, 562)] {
        let port = BossPort::dash_size(dash).expect("a port");
        assert_eq!(port.full_thread(), (Amount::whole(thou, Unit::Thou), true), "−{dash}");
    }
    for port in BossPort::all() {
        let thread = port.thread().expect("a thread of the tables");
        let spare = mm(port.drill_depth()) - mm(port.full_thread().0);
        assert!(spare >= 1.25 * mm(thread.pitch()), "{port}: {spare} mm left for the tap's lead");
        assert!(mm(port.spot_face()) > 1.4 * mm(thread.diameter()), "{port}: spot face");
    }
    let bore = |text: f64| Amount::nearest(text, Unit::Millimetre).expect("a length");
    assert_eq!(BossPort::for_line_bore(bore(8.0)).map(BossPort::dash), Some(8), "8 mm of bore");
    assert_eq!(BossPort::for_line_bore(bore(30.0)), None, "no port is so large");
}

fn outside(diameter: f64, pitch: f64) -> Measured {
    Measured {
        side: Side::Outside,
        diameter: Amount::nearest(diameter, Unit::Millimetre).expect("a length"),
        pitch: Amount::nearest(pitch, Unit::Millimetre),
    }
}

#[track_caller]
fn names(measured: &Measured) -> Vec<String> {
    identify(measured).expect("within bounds").iter().map(|found| found.thread.name()).collect()
}

#[test]
fn a_measured_thread_is_named() {
    assert_eq!(names(&outside(9.90, 1.25)), ["M10 × 1.25"], "a bolt");
    assert_eq!(names(&outside(12.62, 1.27)), ["1/2-20 UNF"], "a bolt by its inch pitch");
    let both = Measured { pitch: None, ..outside(7.85, 1.0) };
    assert_eq!(
        names(&both),
        ["M8 × 1.25", "M8 × 1", "5/16-24 UNF", "5/16-18 UNC"],
        "8 mm and 5/16 lie so close that the pitch must tell"
    );
    let twenty = Measured::pitch_of_count(20.0).expect("within bounds");
    let nut = Measured { side: Side::Inside, pitch: Some(twenty), ..outside(11.45, 1.0) };
    assert_eq!(names(&nut), ["1/2-20 UNF"], "a nut");
}

/// 13.95 mm lies nearer to the middle of what a 9/16-12 may measure; the pitch of 2.04 mm says M14.
#[test]
fn the_pitch_outweighs_the_diameter() {
    assert_eq!(names(&outside(13.95, 2.04)), ["M14 × 2", "9/16-12 UNC"], "order");
}

/// Every thread of the tables is first among its own candidates, cut at the middle of its room.
#[test]
fn every_thread_is_likeliest_itself() {
    for thread in Thread::all() {
        let pitch = mm(thread.pitch());
        let cut = mm(thread.diameter()) - (0.05 + pitch / 5.0) / 2.0;
        let found = identify(&outside(cut, pitch)).expect("within bounds");
        assert_eq!(found.first().map(|first| first.thread), Some(thread), "{found:?}");
    }
}

#[test]
fn what_tells_apart_says_what_to_measure() {
    assert_eq!(
        what_tells_apart(thread("M8 × 1.25"), thread("5/16-18 UNC")),
        "Ten threads of M8 × 1.25 measure 12.50 mm, ten of 5/16-18 UNC 14.11 mm; outside 8.00 mm against 7.94 mm.",
        "the sentence"
    );
}

#[test]
fn a_thread_out_of_bounds_is_refused() {
    let refusal = identify(&outside(100.0, 1.0)).expect_err("too large");
    assert_eq!(
        refusal.to_string(),
        "A thread’s diameter lies between 2 and 50 mm. Check the decimal point and the unit.",
        "diameter"
    );
    let refusal = identify(&outside(10.0, 12.5)).expect_err("too coarse");
    assert_eq!(
        refusal.to_string(),
        "A pitch lies between 200 and 4000 µm. Check the decimal point and the unit.",
        "pitch"
    );
    let refusal = Measured::pitch_of_count(0.0).expect_err("no threads");
    assert_eq!(
        refusal.to_string(),
        "A count of threads per inch lies between 6 and 80. Check the decimal point and the unit.",
        "count"
    );
    assert!(matches!(refusal, Refusal::OutOfBounds(_)), "kind");
}

#[test]
fn threads_are_found_by_any_name() {
    let first = |query: &str| find_threads(query).first().map(|thread| thread.name());
    for (query, wanted) in [
        ("m10", "M10 × 1.5"),
        ("M10x1,25", "M10 × 1.25"),
        ("m10 x 1.25", "M10 × 1.25"),
        ("10 × 1.25", "M10 × 1.25"),
        ("metric fine 12", "M12 × 1.5"),
        ("7/16 20", "7/16-20 UNF"),
        ("7/16 x 20", "7/16-20 UNF"),
        ("7/16-20", "7/16-20 UNF"),
        ("7/16\" unf", "7/16-20 UNF"),
        (".4375 coarse", "7/16-14 UNC"),
        ("1 1/16-12", "1 1/16-12 UN"),
    ] {
        assert_eq!(first(query).as_deref(), Some(wanted), "{query}");
    }
    for nothing in ["", "  ", "m11", "whitworth"] {
        assert_eq!(find_threads(nothing), [], "{nothing:?}");
    }
    for (query, dash) in [("-4", 4), ("−6", 6), ("dash 8", 8), ("orb 10", 10), ("9/16-18", 6)] {
        let found = find_ports(query).first().map(|port| port.dash());
        assert_eq!(found, Some(dash), "{query}");
    }
}

/// By hand: M8 × 1.25 with a 6.8 drill has (8 − 6.8)/(0.75·√3·1.25) = 74 % of a full thread.
#[test]
fn the_drills_to_tap_after_leave_a_useful_thread() {
    for thread in Thread::all() {
        let drills = thread.tap_drills();
        assert_eq!(drills.first().map(|(drill, _)| *drill), Some(thread.tap_drill()), "{thread}");
        for (drill, engagement) in drills {
            let share = engagement.get::<ratio>();
            assert!((0.5..=0.9).contains(&share), "{thread} after {drill}: {share}");
        }
    }
    let own = thread("M8 × 1.25").tap_drills()[0].1.get::<ratio>();
    assert!((own - 0.739).abs() < 0.001, "{own}");
}

/// ASME B1.1, greatest minor diameter of class 2B, in, as printed. M.
#[test]
fn greatest_minor_diameters_are_the_published_ones() {
    use uom::si::length::{inch, millimeter};
    for (name, wanted) in [
        ("1/4-20 UNC", 0.207),
        ("1/4-28 UNF", 0.220),
        ("3/8-16 UNC", 0.321),
        ("7/16-20 UNF", 0.395),
        ("1/2-13 UNC", 0.434),
        ("9/16-18 UNF", 0.515),
        ("5/8-18 UNF", 0.578),
    ] {
        let thread = Thread::named(name).expect("in the tables");
        close(thread.greatest_minor_diameter().get::<inch>(), wanted, 1e-9, name);
    }
    // ISO 965-1, 6H. M.
    for (name, wanted) in [
        ("M6 × 1", 5.153),
        ("M8 × 1.25", 6.912),
        ("M10 × 1.5", 8.676),
        ("M12 × 1.75", 10.441),
        ("M16 × 2", 14.210),
    ] {
        let thread = Thread::named(name).expect("in the tables");
        close(thread.greatest_minor_diameter().get::<millimeter>(), wanted, 0.001, name);
    }
}

/// Every tap drill of the tables is held against its thread's greatest minor diameter; the two of the drill
/// charts that lie past it say so.
#[test]
fn a_tap_drill_past_the_threads_own_limit_says_so() {
    let past: Vec<String> =
        Thread::all().filter_map(|thread| thread.past_minor(thread.tap_drill())).collect();
    assert_eq!(
        past,
        [
            "33/64 in is larger than the greatest minor diameter of class 2B, 13.08 mm (0.515 in): the thread is out of its limits.",
            "37/64 in is larger than the greatest minor diameter of class 2B, 14.68 mm (0.578 in): the thread is out of its limits.",
        ],
        "and no other"
    );
    for thread in Thread::all() {
        assert!(
            thread.greatest_minor_diameter() > thread.minor_diameter(),
            "{thread}: a tolerance"
        );
        for (drill, _) in thread.tap_drills() {
            let size = drill.diameter().and_then(Amount::length).expect("a size");
            let is_past = size > thread.greatest_minor_diameter();
            assert_eq!(thread.past_minor(drill).is_some(), is_past, "{thread}: {drill}");
        }
    }
}
