//! Which limit is in force: of the build's own and the shop's, the last that was not taken back.

use super::books::{BUILDS, GAP, build, config, entries, folded, is_withdrawn};
use pitleaf_core::book::Fact;
use pitleaf_core::limits::{Gauge, GaugeKind, Limit, Sheet};
use proptest::prelude::*;

proptest! {
    #![proptest_config(config())]

    /// By a model of its own: a build's last own limit, if it is of this build alone; else the shop's last of
    /// any build; else the row that ships.
    #[test]
    fn the_sheet_of_a_build_has_the_limit_last_put_in(entries in entries()) {
        let book = folded(&entries);
        for name in BUILDS {
            let of = build(name);
            let held = entries.iter().filter(|entry| !is_withdrawn(&entries, &entry.id));
            let (mut of_build, mut of_shop): (Option<&Limit>, Option<&Limit>) = (None, None);
            for entry in held {
                match &entry.fact {
                    Fact::BuildLimit(row) if row.id == GAP && entry.build == of => {
                        of_build = Some(&row.limit);
                    }
                    Fact::Limit(row) if row.id == GAP => {
                        of_shop = Some(&row.limit);
                        if entry.build == of {
                            of_build = None;
                        }
                    }
                    _ => {}
                }
            }
            let starter = Sheet::starter();
            let shipped = &starter.row(GAP).expect("a row").limit;
            let wanted = of_build.or(of_shop).unwrap_or(shipped);
            let sheet = book.sheet_for(Some(&of));
            prop_assert_eq!(&sheet.row(GAP).expect("a row").limit, wanted, "{}", name);
            let shop = book.sheet();
            prop_assert_eq!(&shop.row(GAP).expect("a row").limit, of_shop.unwrap_or(shipped), "without a build");
        }
    }

    /// The gauge in hand is the last the shop put in of its kind, whichever build it was put in at.
    #[test]
    fn the_gauge_in_hand_is_the_last_put_in(entries in entries()) {
        let book = folded(&entries);
        let kind = GaugeKind::FeelerLeaf;
        let held = entries.iter().filter(|entry| !is_withdrawn(&entries, &entry.id));
        let mut own = held.filter_map(|entry| match &entry.fact {
            Fact::Gauge { kind: of, resolution, error } if *of == kind => {
                Some(Gauge::own(kind, resolution, error))
            }
            _ => None,
        });
        let wanted = own.next_back().unwrap_or(Gauge::usual(kind));
        for name in BUILDS {
            prop_assert_eq!(book.sheet_for(Some(&build(name))).gauge(kind), wanted, "{}", name);
        }
    }
}
