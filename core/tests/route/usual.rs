//! The route that ships.

use pitleaf_core::book::Face;
use pitleaf_core::limits::{BuildKind, Sheet};
use pitleaf_core::route::{
    Answer, Each, Kind, LEADING_STEPS, LeadsTo, Routing, Stage, Station, Step,
};

const KINDS: [BuildKind; 2] = [BuildKind::NaturallyAspirated, BuildKind::ForcedInduction];

/// Every sort of build a route is made in.
pub(super) fn builds() -> impl Iterator<Item = (BuildKind, u8, bool)> {
    KINDS.into_iter().flat_map(|kind| {
        (1..=4).flat_map(move |rotors| [false, true].map(|solid| (kind, rotors, solid)))
    })
}

/// Goes through a list by doing whatever waits for nothing, and gives what was never reached.
pub(super) fn unreached(stations: &[Station]) -> Vec<String> {
    let mut done = vec![false; stations.len()];
    loop {
        let ready: Vec<usize> = (0..stations.len())
            .filter(|&at| !done[at] && stations[at].needs.iter().all(|&need| done[need]))
            .collect();
        if ready.is_empty() {
            break;
        }
        ready.into_iter().for_each(|at| done[at] = true);
    }
    stations.iter().zip(done).filter(|(_, done)| !done).map(|(station, _)| station.key()).collect()
}

#[test]
fn it_is_a_routing_of_thirteen_stages() {
    let usual = Routing::usual();
    assert_eq!(Routing::new(usual.steps().to_vec()), Ok(usual.clone()), "it passes its own rules");
    for stage in Stage::ALL {
        assert!(stage.of(&usual).count() > 0, "{} has no step", stage.name());
        assert_eq!(Stage::named(stage.word()), Some(stage), "its word");
    }
    let holds = usual.steps().iter().filter(|step| step.kind.is_hold()).count();
    assert!(holds >= 20, "the trade has more holds than {holds}");
}

#[test]
fn every_step_is_reached_in_every_build() {
    for (kind, rotors, solid) in builds() {
        let stations = Routing::usual().stations(kind, rotors, solid);
        assert_eq!(unreached(&stations), Vec::<String>::new(), "{kind:?}, {rotors}, {solid}");
        let mut keys: Vec<String> = stations.iter().map(Station::key).collect();
        let all = keys.len();
        keys.sort();
        keys.dedup();
        assert_eq!(keys.len(), all, "a key for each");
    }
}

#[test]
fn every_row_stands_in_the_sheet_and_is_read_on_its_pieces() {
    let sheet = Sheet::starter();
    for station in Routing::usual().stations(BuildKind::Any, 2, true) {
        let Some(id) = station.row() else { continue };
        let row = sheet.row(id).unwrap_or_else(|| panic!("{id} is no row of the sheet"));
        assert!(!station.pieces(row, 2).is_empty(), "{id} at {} is read on nothing", station.place);
    }
}

fn step<'route>(usual: &'route Routing, id: &str) -> &'route Step {
    usual.step(id).unwrap_or_else(|| panic!("{id} is a step"))
}

#[test]
fn the_holds_of_the_trade_are_in_it() {
    let usual = Routing::usual();
    for (id, answer, each) in [
        ("springs-in", Answer::Builder, Each::RotorFromRear),
        ("corners-straight", Answer::Builder, Each::RotorFromRear),
        ("dowel-moment", Answer::Builder, Each::RotorFromRear),
        ("in-own-slot", Answer::Builder, Each::RotorFromRear),
        ("coolant-seals", Answer::Builder, Each::RotorFromRear),
        ("turns", Answer::Builder, Each::RotorFromRear),
        ("oil-feed", Answer::OilFeed, Each::Once),
        ("passes-complete", Answer::Tightened, Each::Once),
        ("slots-fitted", Answer::SlotsFitted, Each::Once),
        ("end-play-last", Answer::EndPlayAfter, Each::Once),
    ] {
        let step = step(&usual, id);
        assert_eq!((&step.kind, step.each), (&Kind::Hold(answer), each), "{id}");
    }
}

/// An engine is stacked from the rear: the next rotor waits for the shaft to turn in the last.
#[test]
fn the_next_rotor_waits_for_the_shaft_to_turn_in_the_last() {
    let stations = Routing::usual().stations(BuildKind::NaturallyAspirated, 3, false);
    let at =
        |key: &str| stations.iter().position(|station| station.key() == key).expect("it is there");
    assert!(stations[at("springs-in/2")].needs.contains(&at("turns/3")), "the one behind it");
    assert!(!stations[at("springs-in/3")].needs.contains(&at("turns/2")), "the rearmost does not");
    assert!(at("turns/3") < at("springs-in/2"), "rotor by rotor");
    let slots = &stations[at("in-own-slot/2")].needs;
    let own: Vec<String> = slots.iter().map(|&need| stations[need].key()).collect();
    assert_eq!(own, ["own-slot/2F", "own-slot/2R", "springs-in/2"], "its own two faces");
}

#[test]
fn cautions_stand_where_the_work_hurts() {
    let usual = Routing::usual();
    for (id, word) in [
        ("outside", "Nobody under it"),
        ("cleaned", "Solvent"),
        ("seals-out", "Springs fly"),
        ("ports-cut", "eye protection"),
        ("balanced", "guard shut"),
        ("side-gap-na", "eye protection"),
        ("springs-in/", "eye protection"),
        ("fire-watch", "Exhaust gas"),
        ("first-start", "belts and fan"),
        ("oil-primed", "do not start"),
    ] {
        let care = &step(&usual, id.trim_end_matches('/')).care;
        assert!(care.contains(word), "{id}: {care}");
    }
}

#[test]
fn a_step_leads_to_the_slots_of_its_own_rotor_and_face() {
    let usual = Routing::usual();
    for (id, _) in LEADING_STEPS {
        assert!(usual.steps().iter().any(|step| step.id == id), "no step is called {id}");
    }
    let stations = usual.stations(BuildKind::ForcedInduction, 2, true);
    let leads =
        |key: &str| stations.iter().find(|station| station.key() == key).map(Station::leads_to);
    assert_eq!(leads("own-slot/2R"), Some(Some(LeadsTo::Slots(2, Face::Rear))));
    assert_eq!(leads("in-own-slot/2"), Some(Some(LeadsTo::Slots(2, Face::Front))));
    assert_eq!(leads("outside"), Some(None), "only on the bench");
    for station in &stations {
        if let Some(LeadsTo::Slots(rotor, _)) = station.leads_to() {
            assert!(
                station.place.is_empty() || station.place.starts_with(&rotor.to_string()),
                "{}",
                station.key()
            );
        }
    }
}

/// The flywheel holds the front bolt and its end carries the indicator: it comes off behind the one and goes
/// on before it, and its taper, which lets go at once, is warned of.
#[test]
fn the_flywheel_is_on_while_the_front_bolt_is_turned() {
    let stations = Routing::usual().stations(BuildKind::NaturallyAspirated, 2, false);
    let at = |id: &str| {
        let at = stations.iter().position(|station| station.step.id == id);
        at.unwrap_or_else(|| panic!("no step {id}"))
    };
    let needs = |later: &str, earlier: &str| {
        let earlier = at(earlier);
        let needs = stations[at(later)].needs.contains(&earlier);
        assert!(needs, "{later} waits for {earlier}");
    };
    needs("flywheel-off", "front-off");
    needs("unbolted", "flywheel-off");
    needs("front-bolt", "flywheel");
    let care = &stations[at("flywheel-off")].step.care;
    assert!(care.contains("leave the nut on a few threads"), "{care}");
}
