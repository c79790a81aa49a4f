//! One figure over several builds.

use super::Shop;
use pitleaf_core::limits::{BuildKind, Call, Side};
use pitleaf_core::quantity::Unit;
use pitleaf_core::route::compare;

const ROW: &str = "side-seal-gap-na";

fn shop() -> Shop {
    let mut shop = Shop::new(BuildKind::NaturallyAspirated, 2);
    for (name, text, unit) in
        [("a", "0.0015", Unit::Inch), ("b", "2.25", Unit::Thou), ("c", "0.0762", Unit::Millimetre)]
    {
        shop.open(name, BuildKind::NaturallyAspirated, 2);
        shop.read(ROW, "1F-AB", text, unit);
    }
    shop
}

#[test]
fn the_latest_build_stands_first_and_each_at_its_height() {
    let shop = shop();
    let comparison = compare(&shop.book, &shop.sheet(), ROW, "1F-AB", 5);
    let points: Vec<(&str, &str, i32, i32)> = comparison
        .points
        .iter()
        .map(|point| (point.name.as_str(), point.figure.as_str(), point.x, point.y))
        .collect();
    // 0.0762 mm is 0.0030 in, the upper limit; 0.0015 in the lower; 2¼ thou lies midway.
    assert_eq!(
        points,
        [
            ("c", "0.0762 mm · 1F-AB", 0, 0),
            ("b", "2.25 thou · 1F-AB", 500, 500),
            ("a", "0.0015 in · 1F-AB", 1000, 1000)
        ],
        "without the build that has no figure"
    );
    assert_eq!((comparison.upper, comparison.lower), (Some(0), Some(1000)), "the limit");
    let two = compare(&shop.book, &shop.sheet(), ROW, "1F-AB", 2);
    assert_eq!(two.points.len(), 2, "at most so many");
}

#[test]
fn without_a_place_the_worst_of_each_build_stands() {
    let mut shop = shop();
    shop.read(ROW, "2R-CA", "0.0040", Unit::Inch);
    shop.read(ROW, "2R-AB", "0.0022", Unit::Inch);
    let comparison = compare(&shop.book, &shop.sheet(), ROW, "", 5);
    let first = &comparison.points[0];
    assert_eq!(first.figure, "0.0040 in · 2R-CA", "farthest past an edge");
    assert_eq!(first.call, Some(Call::DoesNotMeet(Side::Above)), "its verdict");
    assert_eq!(first.y, 0, "the highest");
    assert_eq!(compare(&shop.book, &shop.sheet(), "no-row", "", 5).points, [], "no such row");
}
