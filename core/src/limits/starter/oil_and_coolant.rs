//! Oil pump, oil pressure, coolant.

use super::{GaugeKind, Kind, LEAF, Line, PRESSURE, WRENCH};
use crate::quantity::Unit;
use pitleaf_translated::{tr, translated};

const HOT_OIL: &str =
    tr!("Hot oil under pressure burns and catches fire: fit the gauge cold, keep clear.");

#[translated(what, how, note, caution, words)]
pub(super) const LINES: &[Line] = &[
    Line {
        id: "oil-pump-tip-clearance",
        what: "Oil pump, inner to outer rotor, tip clearance",
        how: "Leaf between the lobes’ tips, at several turns of the pump.",
        lower: "0.03",
        upper: "0.12",
        wear: "0.15",
        note: "Scored faces count as worn.",
        words: "lobe trochoid gerotor",
        ..LEAF
    },
    Line {
        id: "oil-pump-body-clearance",
        what: "Oil pump, outer rotor to body",
        how: "Outer rotor pushed to one side; leaf at the other.",
        lower: "0.20",
        upper: "0.25",
        wear: "0.30",
        words: "side clearance housing",
        ..LEAF
    },
    Line {
        id: "oil-pump-end-float",
        what: "Oil pump, end float",
        how: "Straightedge over the body; leaf under it over both rotors.",
        gauge: GaugeKind::StraightedgeAndLeaf,
        lower: "0.03",
        upper: "0.13",
        wear: "0.15",
        words: "endplay end play axial cover",
        ..LEAF
    },
    Line {
        id: "oil-pump-chain-slack",
        what: "Oil pump chain, slack",
        how: "Middle of the free run pushed in and pulled out by a finger; steel rule across.",
        gauge: GaugeKind::SteelRule,
        upper: "12",
        note: "Change chain and both sprockets together.",
        words: "sag stretch drive sprocket",
        ..LEAF
    },
    Line {
        id: "oil-pressure-running",
        what: "Oil pressure, warm, 3000 turns a minute",
        how: "Mechanical gauge in place of the sender, oil at working heat.",
        lower: "340",
        upper: "490",
        note: "Older sheets say 490 and more. Builders of fast engines set the regulator higher.",
        caution: HOT_OIL,
        words: "psi pump regulator bearing",
        ..PRESSURE
    },
    Line {
        id: "oil-pressure-idle",
        what: "Oil pressure, warm, idling",
        how: "Mechanical gauge in place of the sender, oil at working heat.",
        lower: "100",
        source: Kind::CommonPractice,
        note: "A rule of thumb, with thick and thin oil far apart. None within seconds of the first start: stop the engine.",
        caution: HOT_OIL,
        words: "psi pump regulator bearing tickover",
        ..PRESSURE
    },
    Line {
        id: "coolant-pressure-loss",
        what: "Coolant, pressure lost in ten minutes",
        gauge: GaugeKind::CoolingTester,
        how: "Cold, filled, all air bled, pumped up to the cap’s own pressure and left, as warm at the end as at the start; plugs out to see what comes.",
        upper: "5",
        source: Kind::CommonPractice,
        note: "A rule of thumb: a sound engine loses none that can be read. Air left in it loses 0.7 kPa for each degree it cools, at 2 bar absolute. Coolant at a plug hole: a coolant seal.",
        caution: "Never open a hot system.",
        words: "water seal leak leak-down o-ring pressure test",
        ..PRESSURE
    },
    Line {
        id: "thermostat-opens",
        what: "Thermostat, begins to open",
        how: "Hung in a pot of water with a thermometer, warmed slowly, a thread held in its valve: the thread drops.",
        gauge: GaugeKind::Thermometer,
        unit: Unit::Celsius,
        lower: "80",
        upper: "84",
        note: "Usually stamped on it: the stamp stands above this.",
        caution: "Scalding water: tongs, eye protection.",
        words: "temperature water heat stat",
        ..WRENCH
    },
];
