//! Tightening orders and passes.

use super::close;
use pitleaf_core::joints::sequence::{MOST_BOLTS, Order, OrderFault, own_passes};
use pitleaf_core::trochoid::Point;
use proptest::prelude::*;
use std::collections::HashSet;
use uom::si::f64::Torque;
use uom::si::ratio::percent;
use uom::si::torque::newton_meter;

/// ASME PCC-1, the crosswise order for 4 and 8 bolts. M.
#[test]
fn crosswise_orders_are_the_published_ones() {
    assert_eq!(Order::crosswise(4).expect("4").bolts(), [1, 3, 2, 4], "4 bolts");
    assert_eq!(Order::crosswise(8).expect("8").bolts(), [1, 5, 3, 7, 2, 6, 4, 8], "8 bolts");
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
        assert_eq!(seen, (1..=count).collect(), "{count}: {order:?}");
        assert_eq!(order.bolts().len(), usize::from(count), "{count}: {order:?}");
        if count >= 5 {
            for pair in order.bolts().windows(2) {
                assert!(apart(pair[0], pair[1], count) > 1, "{count}: {pair:?} in {order:?}");
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

fn at(places: &[(f64, f64)]) -> Vec<Point> {
    places.iter().map(|&(x, y)| Point::from_millimetres(x, y)).collect()
}

/// Two rows of five, as on a cylinder head: the middle pair, then the four beside it, then the four at the
/// ends, each group corner to corner. Common practice, no source.
#[test]
fn two_rows_go_from_the_middle_outwards() {
    let rows = [
        (-160.0, 40.0),
        (-80.0, 40.0),
        (0.0, 40.0),
        (80.0, 40.0),
        (160.0, 40.0), //
        (-160.0, -40.0),
        (-80.0, -40.0),
        (0.0, -40.0),
        (80.0, -40.0),
        (160.0, -40.0),
    ];
    let order = Order::outwards(&at(&rows)).expect("ten");
    assert_eq!(order.bolts(), [3, 8, 2, 9, 7, 4, 6, 5, 1, 10], "order");
}

/// Where all are as far from the middle, the rule for a circle and the rule by place are one.
#[test]
fn on_a_circle_outwards_is_crosswise() {
    for count in 2..=24 {
        let circle: Vec<(f64, f64)> = (0..count)
            .map(|bolt| (f64::from(bolt) / f64::from(count) * std::f64::consts::TAU).sin_cos())
            .map(|(x, y)| (120.0 * x + 31.0, 120.0 * y - 7.0))
            .collect();
        let outwards = Order::outwards(&at(&circle)).expect("bolts");
        assert_eq!(outwards, Order::crosswise(count).expect("bolts"), "{count}");
    }
}

proptest! {
    /// Every bolt once, and none while one nearer the middle by more than a tenth of the farthest is loose.
    #[test]
    fn outwards_leaves_nothing_loose_inside(
        places in proptest::collection::vec((-200.0..200.0, -150.0..150.0), 2..40)
    ) {
        let places: Vec<(f64, f64)> = places;
        let order = Order::outwards(&at(&places)).expect("bolts");
        let count = places.len();
        let each: HashSet<u16> = order.bolts().iter().copied().collect();
        prop_assert_eq!(each.len(), count);
        let mean = |of: fn(&(f64, f64)) -> f64| places.iter().map(of).sum::<f64>() / count as f64;
        let (x, y) = (mean(|place| place.0), mean(|place| place.1));
        let out: Vec<f64> = order
            .bolts()
            .iter()
            .map(|&bolt| places[usize::from(bolt) - 1])
            .map(|place| (place.0 - x).hypot(place.1 - y))
            .collect();
        let farthest = out.iter().copied().fold(0.0, f64::max);
        for turn in 0..count {
            for later in turn + 1..count {
                prop_assert!(out[turn] <= out[later] + 0.1 * farthest + 1e-9, "{turn} before {later}: {out:?}");
            }
        }
    }
}

#[test]
fn too_few_and_too_many_make_no_order() {
    assert_eq!(Order::crosswise(61), Err(OrderFault::Count(61)), "too many");
    assert_eq!(Order::outwards(&at(&[(0.0, 0.0)])), Err(OrderFault::Count(1)), "one");
    assert_eq!(OrderFault::Count(1).to_string(), "One bolt makes no order. Give at least two.");
}

#[test]
fn passes_rise_to_the_full_torque() {
    let order = Order::crosswise(8).expect("8");
    let passes = own_passes(&order, &[33.0, 67.0, 100.0]).expect("rising");
    let shares: Vec<f64> = passes.iter().map(|pass| pass.share.get::<percent>().round()).collect();
    assert_eq!(shares, [33.0, 67.0, 100.0], "shares");
    assert_eq!(passes[0].order, order, "each in the order");
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
