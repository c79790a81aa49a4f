//! Surveys: their places, what the book holds of them, and the sentences of their reports.

use super::read;
use pitleaf_core::faces::report::{Bench, Finding, SpacerChoice, direction, report, stack};
use pitleaf_core::faces::{LANDS, Place, ReadingSet, Sense, Skin, Survey, piece_words};
use pitleaf_core::kept;
use pitleaf_core::limits::{BuildKind, Call, Edge, Gauge, GaugeKind, Sheet, Side};
use pitleaf_core::quantity::{Unit, usual_leaves};
use pitleaf_core::trochoid::Geometry;
use std::collections::HashSet;
use uom::si::f64::Length;
use uom::si::length::millimeter;

fn set(of: Survey, piece: &str, texts: &[&str]) -> ReadingSet {
    let texts: Vec<String> = texts.iter().map(|text| (*text).to_owned()).collect();
    ReadingSet::typed(of, piece, Unit::Millimetre, &texts)
}

fn bench<'a>(sheet: &'a Sheet, set: &'a dyn Fn(Survey, &str) -> Option<ReadingSet>) -> Bench<'a> {
    Bench {
        sheet,
        kind: BuildKind::ForcedInduction,
        rotors: 2,
        bore: Geometry::preset().bore(),
        leaves: usual_leaves(),
        sense: Sense::ThickerGivesMore,
        chosen: None,
        set,
        order: &|_, _| None,
        skin: &|_| Skin::default(),
    }
}

/// The report of a set, with other sets written down.
pub(super) fn with(
    of: &ReadingSet,
    others: &[ReadingSet],
    chosen: Option<SpacerChoice>,
) -> Vec<Finding> {
    let sheet = Sheet::starter();
    let find = |survey: Survey, piece: &str| {
        others.iter().find(|set| set.of == survey && set.piece == piece).cloned()
    };
    // The later of two was written later.
    let order = |survey: Survey, piece: &str| {
        let place = others.iter().position(|set| set.of == survey && set.piece == piece)?;
        u64::try_from(place).ok()
    };
    let bench = Bench { chosen, order: &order, ..bench(&sheet, &find) };
    report(of, &bench).expect("readable readings")
}

#[track_caller]
pub(super) fn finding<'all>(all: &'all [Finding], what: &str) -> &'all Finding {
    all.iter().find(|finding| finding.what == what).unwrap_or_else(|| {
        panic!("no finding {what:?} in {:?}", all.iter().map(|one| &one.what).collect::<Vec<_>>())
    })
}

#[test]
fn every_survey_is_named_once_and_stands_in_one_group() {
    let words: HashSet<&str> = Survey::ALL.iter().map(|survey| survey.word()).collect();
    assert_eq!(words.len(), Survey::ALL.len(), "a word is taken twice");
    for survey in Survey::ALL {
        assert_eq!(Survey::named(survey.word()), Some(survey), "{}", survey.word());
        let groups = Survey::GROUPS.iter().filter(|(_, group)| group.contains(&survey)).count();
        assert_eq!(groups, 1, "{} stands in {groups} groups", survey.word());
        let places = survey.places(Geometry::preset().bore());
        let names: HashSet<&str> = places.iter().map(|place| place.name.as_str()).collect();
        assert_eq!(names.len(), places.len(), "{}: a place is named twice", survey.word());
        assert!(survey.how().ends_with('.'), "{}: how is no sentence", survey.word());
    }
    assert_eq!(Survey::named("polish"), None, "an unknown survey is not guessed");
}

#[test]
fn pieces_follow_the_rotors() {
    let faces = Survey::Flatness.pieces(3);
    assert_eq!(
        faces,
        [
            "front",
            "intermediate-1-front",
            "intermediate-1-rear",
            "intermediate-2-front",
            "intermediate-2-rear",
            "rear"
        ],
        "three rotors"
    );
    assert_eq!(Survey::EndPlay.pieces(2), [""], "one shaft");
    assert_eq!(piece_words("intermediate-1-rear"), "intermediate 1, rear face", "a face");
    assert_eq!(piece_words("main-front"), "main front", "a bearing");
    assert_eq!(piece_words("front"), "front", "a housing");
}

#[test]
fn the_book_holds_a_set_as_a_person_can_read_it() {
    let set = set(Survey::EndPlay, "", &["0,10", "", "", "8.00"]);
    let json = kept::write(&set);
    assert_eq!(
        json,
        r#"{"of":"end-play","unit":"mm","gauge":"dial-indicator","readings":[{"place":"reading 1","text":"0,10"},{"place":"spacer that is in","text":"8.00"}]}"#,
        "written"
    );
    assert_eq!(kept::read::<ReadingSet>(&json).expect("read back"), set, "read back");
    assert_eq!(set.texts(), ["0,10", "", "", "8.00"], "each at its place");
}

#[test]
fn a_text_that_cannot_be_read_is_refused_with_its_place() {
    let refused = read(&set(Survey::HousingWidth, "rotor-1", &["79.98", "abc"]));
    let said = refused.expect_err("a word is no width").to_string();
    assert!(said.starts_with("3 o’clock: ") || said.starts_with("2 o’clock: "), "{said}");
    assert!(said.contains("“abc” is no number"), "{said}");
}

#[test]
fn a_bare_zero_does_not_coarsen_the_doubt() {
    let fine = read(&set(Survey::RunoutEight, "front-end", &["0.000", "0.012"])).expect("fine");
    let bare = read(&set(Survey::RunoutEight, "front-end", &["0", "0.012"])).expect("bare");
    assert_eq!(bare.doubt, fine.doubt, "0 was taken as a step of a whole millimetre");
}

#[test]
fn a_face_tells_its_warp_from_its_step() {
    // A level land, and a swept band 0.02 mm under it: no warp, all step.
    let texts: Vec<String> = (0..2 * LANDS)
        .map(|place| if place < LANDS { "0.000" } else { "-0.020" }.to_owned())
        .collect();
    let face = ReadingSet::typed(Survey::Flatness, "front", Unit::Millimetre, &texts);
    let all = with(&face, &[], None);
    let warp = finding(&all, "Warp of the land");
    assert_eq!(
        (warp.figure.as_str(), warp.call),
        ("0.000 mm · 0.00 thou", Some(Call::Meets)),
        "warp"
    );
    assert_eq!(finding(&all, "Flatness, whole face").figure, "0.020 mm · 0.79 thou", "whole");
    let step = finding(&all, "Step worn by the side seals");
    assert_eq!(
        (step.figure.as_str(), step.call),
        ("0.020 mm · 0.79 thou", Some(Call::Meets)),
        "step"
    );
    assert!(
        step.says.contains("Limit at most 0.10\u{a0}mm, from memory."),
        "its source: {}",
        step.says
    );
    assert_eq!(finding(&all, "Step told from warp").figure, "0.020 mm · 0.79 thou", "apart");
    assert!(finding(&all, "High spots").says.contains("o’clock, land"), "named by place");
    assert!(finding(&all, "Low spots").says.contains("o’clock, swept band"), "named by place");
}

/// Ten times the grid of nine of `a_grid_of_nine`, in a corner of the builder's grid: 0.115 and 0.120 mm.
#[test]
fn a_grid_of_ones_own_gives_the_flatness_of_the_whole() {
    let mut texts = vec![String::new(); 9 * 7];
    for (row, heights) in [[0, 4, -2], [6, 10, 3], [-1, 5, 1]].iter().enumerate() {
        for (column, height) in heights.iter().enumerate() {
            texts[7 * row + column] = format!("{height}0 um");
        }
    }
    let face = ReadingSet::typed(Survey::Grid, "rotor-1-front", Unit::Micrometre, &texts);
    let all = with(&face, &[], None);
    let whole = finding(&all, "Flatness, whole face");
    assert_eq!(
        (whole.figure.as_str(), whole.call),
        ("115 µm · 4.53 thou", Some(Call::DoesNotMeet(Side::Above))),
        "whole"
    );
    assert!(whole.says.contains("By least squares 120 µm"), "compared: {}", whole.says);
    assert!(finding(&all, "High spots").says.contains("row 2, column 2"), "named by place");
    assert!(all.iter().all(|one| !one.what.contains("Step")), "a grid tells no step");

    // A lapping plan takes it where the face was not read spot by spot.
    let plan = set(Survey::Lapping, "rotor-1-front", &["", "", "0.005"]);
    let says = |others: &[ReadingSet]| with(&plan, others, None)[0].says.clone();
    let by_grid = "Flatness from the readings written down last (Flatness, on a grid).";
    assert!(says(std::slice::from_ref(&face)).starts_with(by_grid), "not read spot by spot");

    // Lapped and read again in another way: the later reading counts, whichever it is.
    let mut spots = vec![String::new(); Survey::Flatness.places(Geometry::preset().bore()).len()];
    for (spot, height) in spots.iter_mut().zip([0, 1, 2, 1, 0, 1, 2, 1]) {
        *spot = format!("{height} um");
    }
    let map = ReadingSet::typed(Survey::Flatness, "rotor-1-front", Unit::Micrometre, &spots);
    assert!(says(&[map.clone(), face.clone()]).starts_with(by_grid), "the grid is later");
    assert!(says(&[face, map]).contains(Survey::Flatness.name()), "the map is later");
}

#[test]
fn two_readings_or_a_line_of_them_are_no_face() {
    let two = with(&set(Survey::Flatness, "front", &["0.00", "0.01"]), &[], None);
    assert!(two[0].says.contains("2 readings are too few for flatness."), "{}", two[0].says);
    let row = with(&set(Survey::Grid, "front", &["0.00", "0.01", "0.00", "0.02"]), &[], None);
    assert!(row[0].says.contains("All places lie on one line"), "{}", row[0].says);
}

/// The places of a larger engine lie along its own bore.
#[test]
fn places_lie_on_the_engines_own_housing() {
    let mm = Length::new::<millimeter>;
    let large = Geometry::new(mm(17.0), mm(120.0), mm(3.0), mm(85.0)).expect("an engine").bore();
    for survey in [Survey::Flatness, Survey::Grid, Survey::HousingWidth] {
        let farthest = |bore| {
            let reach = |place: &Place| place.at.expect("a map")[0].get::<millimeter>();
            survey.places(bore).iter().map(reach).fold(0.0, f64::max)
        };
        let (ours, preset) = (farthest(large), farthest(Geometry::preset().bore()));
        // R + e: 137 against 117 mm; what lies beside the bore is the same on both.
        assert!((ours - preset - 20.0).abs() < 1e-9, "{}: {ours} and {preset}", survey.word());
    }
}

#[test]
fn the_builders_own_gauge_counts() {
    let mut sheet = Sheet::starter();
    let edge = |text: &str| Edge::read(text, Unit::Millimetre).expect("an edge");
    sheet.put_gauge(Gauge::own(
        GaugeKind::OutsideMicrometer,
        &edge("0.001"),
        &edge("0.050").into(),
    ));
    let none = |_: Survey, _: &str| None;
    let bench = bench(&sheet, &none);
    let all = report(&set(Survey::HousingWidth, "rotor-1", &["79.980"]), &bench).expect("a width");
    // m/√3 with m = 0.050 mm, twice over for 95 of 100 cases.
    assert!(all[0].says.starts_with("±0.058 mm"), "{}", all[0].says);
    assert_eq!(all[0].call, Some(Call::TooClose), "0.040 mm over the limit is within its doubt");
}

#[test]
fn a_straightedge_gives_a_bracket_and_the_next_leaf() {
    let all =
        with(&set(Survey::Straightedge, "front", &["0.03", "0.06", "0.02", "0.03"]), &[], None);
    let hollow = &all[0];
    assert_eq!(hollow.figure, "at least 0.030 mm and under 0.060 mm", "bracket");
    assert_eq!(hollow.call, Some(Call::TooClose), "0.04 lies inside");
    assert!(hollow.says.contains("Try the leaf of 0.040 mm · 1.57 thou next."), "{}", hollow.says);
}

#[test]
fn lapping_says_what_goes_and_in_which_order() {
    let plan = set(Survey::Lapping, "front", &["0.05", "0.08", "0.01", "0.05", "0.20"]);
    let all = with(&plan, &[], None);
    assert_eq!(
        finding(&all, "To come off the highest place").figure,
        "0.080 mm · 3.15 thou",
        "worst place"
    );
    let case = finding(&all, "Hardened case left");
    assert_eq!(case.figure, "0.000 mm to 0.120 mm", "case");
    assert!(case.says.contains("test the hardness there"), "{}", case.says);
    let in_all = finding(&all, "Off since it was hardened, this included");
    assert!(in_all.says.starts_with("At least: what came off before is not known."), "{in_all:?}");
    let changes = |all: &[Finding]| {
        ["Lapped, hardened last", "Finished after hardening"].map(|order| {
            let what = format!("{order}: change of the stack’s length");
            finding(all, &what).figure.clone()
        })
    };
    assert_eq!(changes(&all), ["−0.080 mm · −3.15 thou", ""], "no growth, no finish given");
    // By hand: 0.08 off, 0.01 to 0.03 grown, and then 0.006 finished off of a layer of 0.010 to 0.020.
    let texts = ["0.05", "0.08", "0.01", "0.05", "0.20", "0.01", "0.03", "0.006", "0.010", "0.020"];
    let both = with(&set(Survey::Lapping, "front", &texts), &[], None);
    assert_eq!(changes(&both), ["−0.070 mm to −0.050 mm", "−0.076 mm to −0.056 mm"], "both orders");
    let layer = finding(&both, "Finished after hardening: change of the stack’s length");
    assert_eq!(layer.says, "0.004 mm to 0.014 mm of the compound layer stays.");
    assert!(
        finding(&all, "Order").says.contains("Rough lap, harden, then a light finish"),
        "order"
    );
    let empty = with(&set(Survey::Lapping, "front", &[]), &[], None);
    assert_eq!(empty[0].says, "Read the face first, or type its flatness.", "nothing known");
}

/// A plan is of what is not done yet, and without the case's depth it can say nothing of the case.
#[test]
fn a_lapping_plan_has_no_verdict_and_no_case_without_its_depth() {
    for texts in [["0.05", "0.00", "0.01", "", ""], ["0.05", "0.00", "0.01", "0.30", "0.50"]] {
        let all = with(&set(Survey::Lapping, "front", &texts), &[], None);
        for found in &all {
            assert_eq!((found.call, found.is_predicted), (None, true), "{found:?}");
        }
        let case = finding(&all, "Hardened case left");
        if texts[3].is_empty() {
            assert!(case.figure.is_empty(), "{case:?}");
            assert!(case.says.starts_with("Can’t say: the case depth is not given."), "{case:?}");
            assert!(case.says.ends_with("ask for hardening again at any removal."), "{case:?}");
        } else {
            assert!(case.says.starts_with("It may be gone"), "not known what came off: {case:?}");
        }
    }
}

#[test]
fn widths_give_the_rotors_room_and_the_seals_gap() {
    let housing = set(Survey::HousingWidth, "rotor-1", &["80.00"; 8]);
    let rotor = set(Survey::RotorWidth, "rotor-1", &["79.84"; 6]);
    let seals = set(Survey::ApexSealLength, "rotor-1", &["79.81"; 3]);
    let all = with(&housing, &[rotor, seals], None);
    let room = finding(&all, "Rotor’s room, both sides together");
    assert_eq!(
        (room.figure.as_str(), room.call),
        ("0.160 mm · 6.30 thou", Some(Call::Meets)),
        "room"
    );
    assert!(room.says.contains("0.080 mm on each face"), "{}", room.says);
    let gap = finding(&all, "Apex seals’ end gap, both ends together");
    assert_eq!(gap.figure, "0.190 mm · 7.48 thou", "gap");
    let alone = with(&housing, &[], None);
    assert!(
        finding(&alone, "Rotor, width over its lands").says.starts_with("Not read yet"),
        "rotor missing"
    );
}

#[test]
fn the_stack_names_what_is_missing() {
    let sheet = Sheet::starter();
    let side = |survey: Survey, piece: &str| {
        (survey == Survey::SideThickness || piece == "rotor-1")
            .then(|| set(survey, piece, &["50.00", "50.00"]))
    };
    let missing = stack(&bench(&sheet, &side), Unit::Millimetre);
    assert_eq!(missing[0].says, "Still to be read: rotor 2 (Rotor housing, width).", "missing");
    let all = |survey: Survey, piece: &str| Some(set(survey, piece, &["50.00", "50.00"]));
    let whole = stack(&bench(&sheet, &all), Unit::Millimetre);
    assert_eq!(whole[0].figure, "250.000 mm · 9.84252 in", "three sides and two rotor housings");
}

/// The worst place may be one that was not read.
#[test]
fn a_few_of_all_places_can_break_a_limit_and_not_keep_it() {
    let least = |texts: &[&str]| {
        let set = set(Survey::HousingWidth, "rotor-1", texts);
        let found = finding(&with(&set, &[], None), "Least").clone();
        (found.call, found.says)
    };
    let places = Survey::HousingWidth.places(Geometry::preset().bore()).len();
    let (call, says) = least(&["79.98", "79.97"]);
    assert_eq!(call, None, "the others may be worse");
    let unread = places - 2;
    assert!(
        says.ends_with(&format!("Can’t say yet: {unread} of {places} places are not read.")),
        "{says}"
    );
    assert_eq!(least(&["79.98", "79.50"]).0, Some(Call::DoesNotMeet(Side::Below)), "worn out");
    let all = vec!["79.97"; places];
    assert_eq!(least(&all).0, Some(Call::Meets), "every place");
}

#[test]
fn a_bearing_joins_bore_journal_and_strips() {
    let bore = set(Survey::Bore, "main-front", &["43.035", "43.036", "43.034", "43.036"]);
    let journal = set(Survey::Journal, "main-front", &["42.975", "42.976", "42.975", "42.976"]);
    let agree = set(Survey::PlasticGauge, "main-front", &["0.051", "0.076"]);
    let apart = set(Survey::PlasticGauge, "main-front", &["0.090", "0.120"]);
    let all = with(&bore, &[journal.clone(), agree], None);
    let clearance = finding(&all, "Clearance");
    assert_eq!(
        (clearance.figure.as_str(), clearance.call),
        ("0.060 mm · 2.35 thou", Some(Call::Meets)),
        "clearance"
    );
    assert!(
        finding(&all, "By plastic strips").says.ends_with("Bore and journal agree with it."),
        "agree"
    );
    let all = with(&bore, &[journal, apart], None);
    assert!(finding(&all, "By plastic strips").says.contains("do not agree"), "apart");
}

/// A bore wears wide, but one too tight is past its limit as well; and a clearance past it shows the end that is.
#[test]
fn the_end_that_is_past_the_limit_is_the_one_shown() {
    let tight = set(Survey::Bore, "main-front", &["43.005", "43.006", "43.040", "43.040"]);
    let all = with(&tight, &[], None);
    let least = finding(&all, "Least diameter");
    assert_eq!(least.call, Some(Call::DoesNotMeet(Side::Below)), "the tight place");
    assert!(least.figure.starts_with("43.005 mm"), "{}", least.figure);
    let good = set(Survey::Bore, "main-front", &["43.035", "43.036", "43.034", "43.036"]);
    let all = with(&good, &[], None);
    assert_eq!(finding(&all, "Greatest diameter").call, Some(Call::Meets), "where it wears");
    let thick = set(Survey::Journal, "main-front", &["42.975", "42.976", "43.030", "43.030"]);
    let all = with(&thick, &[], None);
    assert_eq!(finding(&all, "Greatest diameter").call, Some(Call::DoesNotMeet(Side::Above)));

    let thin = set(Survey::Journal, "main-front", &["42.800", "42.975", "42.975", "42.976"]);
    let all = with(&good, &[thin], None);
    let clearance = finding(&all, "Clearance");
    assert_eq!(clearance.call, Some(Call::DoesNotMeet(Side::Above)));
    // By hand: 43.036 less 42.800.
    assert!(clearance.figure.starts_with("0.236 mm"), "the loose end: {}", clearance.figure);
    assert!(clearance.says.starts_with("Mean 0.1"), "{}", clearance.says);
}

#[test]
fn runout_points_to_its_high_side() {
    // 0.05 mm off centre towards place 3 of 8, a quarter turn on.
    let texts = ["0.000", "0.035", "0.050", "0.035", "0.000", "-0.035", "-0.050", "-0.035"];
    let shaft = set(Survey::RunoutEight, "front-end", &texts);
    let all = with(&shaft, &[], None);
    assert_eq!(finding(&all, "Runout, whole reading").figure, "0.100 mm · 3.94 thou", "whole");
    let off = finding(&all, "Off centre");
    assert!(off.says.contains("High side 90° from place 1"), "{}", off.says);
    assert!(off.says.ends_with("nearest to place 3."), "{}", off.says);
    let way = direction(&read(&shaft).expect("numbers")).expect("well over the noise");
    // Drawn with x up and y to the left, place 3 lies to the right.
    assert!(way.x.abs() < 1e-9 && (way.y + 1.0).abs() < 1e-9, "{way:?}");
    let seven = with(&set(Survey::RunoutEight, "front-end", &texts[..7]), &[], None);
    assert_eq!(
        seven[0].says, "Read all 8 places: the direction needs them evenly spaced.",
        "one short"
    );
}

/// By hand: 0.115 mm with 8.00 in; each spacer at hand adds what it is thicker, and 0.040 to 0.070 is the limit.
#[test]
fn a_spacer_not_fitted_has_no_verdict_and_says_what_it_would_give() {
    let play = set(Survey::EndPlay, "", &["0.115", "", "", "8.00"]);
    let all = with(&play, &[set(Survey::Spacers, "", &["8.02", "7.98", "7.88", "7.94"])], None);
    let told = |spacer: &str| {
        let found = finding(&all, spacer);
        assert_eq!((found.call, found.row.as_deref()), (None, None), "{spacer} is no reading");
        assert!(found.is_predicted, "{spacer}");
        (found.figure.as_str(), found.says.rsplit(": ").next().unwrap_or_default())
    };
    assert_eq!(told("spacer A"), ("0.135 mm · 5.31 thou", "that would be too much."));
    assert_eq!(told("spacer C"), ("−0.005 mm · −0.20 thou", "that would be too little."));
    assert_eq!(told("spacer D"), ("0.055 mm · 2.17 thou", "that would be within the limit."));
    assert!(all.iter().all(|found| found.what != "Spacer to fit"), "one of them fits");
    let none = with(&play, &[set(Survey::Spacers, "", &["8.02", "8.04", "8.10"])], None);
    assert_eq!(none[1].says, "None of the spacers at hand fits.", "said before they are listed");
    assert_eq!(
        finding(&none, "Thickness to order or grind").figure,
        "7.940 mm · 0.31260 in",
        "what would"
    );
    assert_eq!(none[0].call, Some(Call::DoesNotMeet(Side::Above)), "the play that was read");
}

#[test]
fn the_spacer_chosen_closes_the_loop() {
    let play = set(Survey::EndPlay, "", &["0.10", "0.11", "0.10", "8.000"]);
    let spacers = set(Survey::Spacers, "", &["8.000", "7.950", "7.900"]);
    let all = with(&spacers, &[play], None);
    let best = all.iter().find_map(|finding| finding.offer.as_ref()).expect("a spacer to fit");
    assert_eq!(
        (best.spacer.as_str(), best.predicted.to_string()),
        ("spacer B", "0.053 mm".to_owned()),
        "best"
    );
    assert!(finding(&all, "spacer C").offer.is_none(), "one that does not meet is not offered");
    let json = kept::write(best);
    assert_eq!(kept::read::<SpacerChoice>(&json).expect("read back"), **best, "{json}");
    let chosen = Some(SpacerChoice::clone(best));
    let good = with(&set(Survey::EndPlayAfter, "", &["0.055", "0.054"]), &[], chosen.clone());
    let loop_closed = finding(&good, "Against the prediction");
    assert!(loop_closed.says.starts_with("With spacer B. As predicted:"), "{}", loop_closed.says);
    let bad = with(&set(Survey::EndPlayAfter, "", &["0.155", "0.154"]), &[], chosen);
    assert_eq!(
        finding(&bad, "Against the prediction").call,
        Some(Call::DoesNotMeet(Side::Above)),
        "mismatch"
    );
}

#[test]
fn a_width_in_inches_is_asked_about_and_meant_text_is_offered() {
    let taken = read(&set(Survey::HousingWidth, "rotor-1", &["79.98", "79.97", "3.149", "79.98"]))
        .expect("numbers");
    let slips = taken.slips();
    assert_eq!(slips.len(), 1, "{slips:?}");
    assert_eq!(taken.meant(slips[0].0, &slips[0].1).as_deref(), Some("3.149 in"), "what was meant");
    let lapping = read(&set(Survey::Lapping, "front", &["0.05", "0.05", "0.002", "0.05", "0.05"]))
        .expect("numbers");
    assert_eq!(lapping.slips(), [], "a plan's figures differ by design");
}

#[test]
fn a_pressed_bearing_tells_its_interference_and_whether_it_grips() {
    let seat = |text: &str| set(Survey::BearingSeat, "rotor-1", &[text; 6]);
    let shell = |texts: [&str; 6]| set(Survey::BearingShell, "rotor-1", &texts);
    // Seat 49.950; bearing 50.000 to 50.010: 0.050 to 0.060 mm tight.
    let round = ["50.000", "50.010", "50.000", "50.010", "50.000", "50.010"];
    let tight = with(&seat("49.950"), &[shell(round)], None);
    let found = finding(&tight, "Interference");
    assert_eq!(found.figure, "0.055 mm · 2.17 thou", "the mean");
    assert!(found.says.starts_with("Least 0.050 mm, most 0.060 mm."), "{}", found.says);
    assert_eq!(finding(&tight, "Grip").figure, "grips all round");
    assert!(finding(&tight, "Grip").says.starts_with("An interference fit at every place read."));
    // From the other side the same.
    let again = with(&shell(round), &[seat("49.950")], None);
    assert_eq!(finding(&again, "Interference"), found);
    for (bore, grip, kind) in [
        ("50.002", "grips, but may be loose at places", "A transition fit"),
        ("50.008", "may not grip", "A transition fit"),
        ("50.100", "does not grip", "A clearance fit"),
        // 3 µm of interference at least: less than the gauges can tell from none.
        ("49.997", "grips, but may be loose at places", "An interference fit"),
    ] {
        let all = with(&seat(bore), &[shell(round)], None);
        let found = finding(&all, "Grip");
        assert_eq!(found.figure, grip, "seat {bore}");
        assert!(found.says.starts_with(kind), "seat {bore}: {}", found.says);
    }
    let alone = with(&seat("49.950"), &[], None);
    assert_eq!(
        finding(&alone, "Interference").says,
        "Read the seat and the bearing’s outside: both are needed."
    );
    let one = with(&set(Survey::BearingSeat, "rotor-1", &["49.950"]), &[], None);
    assert_eq!(one.len(), 1, "one direction tells nothing: {one:?}");
    assert!(
        Survey::Bore.beside("rotor-1", 2).any(|other| other == Survey::BearingShell),
        "offered beside the bore"
    );
}

#[test]
fn a_full_drawer_of_spacers_has_a_letter_each() {
    let places = Survey::Spacers.places(Geometry::preset().bore());
    assert_eq!(places.len(), 78);
    let named: Vec<&str> =
        [0, 25, 26, 77].iter().map(|&at: &usize| places[at].name.as_str()).collect();
    assert_eq!(named, ["spacer A", "spacer Z", "spacer AA", "spacer BZ"]);
}
