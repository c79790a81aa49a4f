//! Tightening orders and passes.

use super::close;
use pitleaf_core::joints::sequence::{MOST_BOLTS, Order, OrderFault, own_passes, usual_passes};
use std::collections::HashSet;
use uom::si::f64::Torque;
use uom::si::ratio::percent;
use uom::si::torque::newton_meter;

/// ASME PCC-1, the crosswise order for 4 and 8 bolts. M.
#[test]
fn crosswise_orders_are_the_published_ones() {
    assert_eq!(Order::crosswise(4).expect("4").to_string(), "1-3-2-4", "4 bolts");
    assert_eq!(Order::crosswise(8).expect("8").to_string(), "1-5-3-7-2-6-4-8", "8 bolts");
}

fn apart(one: u16, other: u16, count: u16) -> u16 {
    let way = one.abs_diff(other);
    way.min(count - way)
}

/// Every bolt once; from five bolts on never two neighbours in turn; and the tightened ones spread:
/// once a quarter of a large circle is done, no stretch of more than half of it is left untouched.
#[test]
fn every_crosswise_order_is_spread() {
    for count in 2..=MOST_BOLTS {
        let order = Order::crosswise(count).expect("within");
        let seen: HashSet<u16> = order.bolts().iter().copied().collect();
        assert_eq!(seen, (1..=count).collect(), "{count}: {order}");
        assert_eq!(order.bolts().len(), usize::from(count), "{count}: {order}");
        if count >= 5 {
            for pair in order.bolts().windows(2) {
                assert!(apart(pair[0], pair[1], count) > 1, "{count}: {pair:?} in {order}");
            }
        }
        if count >= 8 {
            let mut done: Vec<u16> = order.bolts()[..usize::from(count / 4).max(2)].to_vec();
            done.sort_unstable();
            let wrap = done[0] + count - done[done.len() - 1];
            let widest = done.windows(2).map(|pair| pair[1] - pair[0]).chain([wrap]).max();
            assert!(widest <= Some(count.div_ceil(2)), "{count}: {done:?}");
        }
    }
}

#[test]
fn an_own_order_is_read() {
    let wanted = [1, 10, 5, 14, 2, 3, 4, 6, 7, 8, 9, 11, 12, 13];
    for text in ["1 10 5 14 2 3 4 6 7 8 9 11 12 13", "1-10-5-14, 2; 3 4→6 7 8 9 11 12 13"] {
        assert_eq!(Order::read(text, 14).expect("an order").bolts(), wanted, "{text}");
    }
    assert_eq!(Order::own(&[2, 1]).expect("an order").bolts(), [2, 1], "as numbers");
    close(Order::around(8).expect("8").place(3), 0.25, 1e-12, "bolt 3 of 8");
}

#[test]
fn an_order_that_is_none_is_refused() {
    let sentence =
        |text: &str, count: u16| Order::read(text, count).expect_err("refused").to_string();
    assert_eq!(sentence("1 2", 1), "1 bolts make no pattern here. Give 2 to 60.", "one bolt");
    assert_eq!(sentence("1 2 2", 3), "Bolt 2 comes twice. Leave it in once.", "twice");
    assert_eq!(sentence("1 3", 3), "Bolt 2 is missing. Every bolt comes once.", "missing");
    assert_eq!(sentence("", 3), "Bolt 1 is missing. Every bolt comes once.", "nothing typed");
    assert_eq!(
        sentence("1 2 4", 3),
        "There is no bolt 4: they are numbered 1 to 3.",
        "too high a number"
    );
    assert_eq!(
        sentence("1 two 3", 3),
        "“two” is no bolt’s number. Write the numbers with spaces between.",
        "a word"
    );
    assert_eq!(Order::own(&[1, 1]), Err(OrderFault::Twice(1)), "twice as numbers");
    assert_eq!(Order::own(&[0, 1]), Err(OrderFault::Unknown { bolt: 0, count: 2 }), "zero");
    assert_eq!(Order::own(&[1]), Err(OrderFault::Count(1)), "one bolt");
    assert_eq!(Order::crosswise(61), Err(OrderFault::Count(61)), "too many");
}

#[test]
fn passes_rise_to_the_full_torque() {
    let passes = usual_passes(8).expect("8");
    let shares: Vec<f64> = passes.iter().map(|pass| pass.share.get::<percent>().round()).collect();
    assert_eq!(shares, [33.0, 67.0, 100.0, 100.0], "shares");
    assert_eq!(passes[3].order.to_string(), "1-2-3-4-5-6-7-8", "the last goes around");
    assert_eq!(passes[0].order.to_string(), "1-5-3-7-2-6-4-8", "the first goes crosswise");
    let full = Torque::new::<newton_meter>(40.0);
    close(passes[0].torque(full).get::<newton_meter>(), 13.2, 1e-9, "first torque");
    let order = Order::crosswise(4).expect("4");
    for wrong in [&[][..], &[50.0], &[60.0, 50.0, 100.0], &[0.0, 100.0], &[50.0, 100.0, 110.0]] {
        let fault = own_passes(&order, wrong).expect_err("refused");
        assert_eq!(
            fault.to_string(),
            "The passes must rise and end at 100 %. Write them as 33, 67, 100.",
            "{wrong:?}"
        );
    }
}
