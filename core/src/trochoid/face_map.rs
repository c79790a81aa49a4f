//! A rotor's face as it lies on the bench: outline, side-seal slots, corners, oil seal; for drawing.

use super::{Direction, Engine, Point};
use std::f64::consts::TAU;
use uom::si::{f64::Length, length::millimeter};

/// A face in its own plane: x to the right, y upwards, corner A at the top.
///
/// Front face up, the corners A, B, C run anticlockwise; rear face up, the part is turned over and
/// they run clockwise.
#[derive(Debug, Clone, PartialEq)]
pub struct FaceMap {
    /// The rotor's outline.
    pub outline: Vec<Point>,
    /// The side-seal lines AB, BC, CA, each from its first corner to its second.
    pub slots: [Vec<Point>; 3],
    /// The corner seals' centres A, B, C.
    pub corners: [Point; 3],
    /// The corner seals' radius.
    pub corner_radius: Length,
    /// The oil seal's radius about the rotor's centre.
    pub oil_radius: Length,
}

impl Engine {
    /// The face of a rotor, the rear one mirrored as the part is turned over.
    #[must_use]
    pub fn face_map(&self, rear: bool) -> FaceMap {
        const PER_FLANK: u32 = 48;
        // In the rotor's frame the first apex lies along x; a quarter turn brings it up.
        let place = |point: Point, third: f64| {
            let up = point.turned(Direction::of(TAU * (third / 3.0 + 0.25)));
            if rear { Point { x: -up.x, ..up } } else { up }
        };
        let seals = self.seals();
        let line = self.side_seal_line().polyline(PER_FLANK);
        let corner = Point::polar(seals.corner_distance.get::<millimeter>(), 0.0);
        let clear = seals.corner_radius.get::<millimeter>();
        // A slot ends at the corner seals' bores.
        let slot = |third: f64| {
            let ends = [place(corner, third), place(corner, third + 1.0)];
            line.iter()
                .map(|&point| place(point, third))
                .filter(|point| {
                    ends.iter().all(|end| (point.x - end.x).hypot(point.y - end.y) >= clear)
                })
                .collect()
        };
        FaceMap {
            outline: self
                .geometry()
                .rotor_outline(PER_FLANK)
                .into_iter()
                .map(|point| place(point, 0.0))
                .collect(),
            slots: [slot(0.0), slot(1.0), slot(2.0)],
            corners: [0.0, 1.0, 2.0].map(|third| place(corner, third)),
            corner_radius: seals.corner_radius,
            oil_radius: seals.oil_radius,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn corner_a_is_up_and_the_rear_is_turned_over() {
        let (front, rear) = (Engine::preset().face_map(false), Engine::preset().face_map(true));
        assert!(
            front.corners[0].y > 90.0 && front.corners[0].x.abs() < 1e-9,
            "A is not at the top"
        );
        assert!(front.corners[1].x < 0.0, "front: B is not on the left");
        assert!(rear.corners[1].x > 0.0, "rear: B is not on the right");
    }

    #[test]
    fn each_slot_runs_from_its_first_corner_to_its_second() {
        let map = Engine::preset().face_map(false);
        for (flank, slot) in map.slots.iter().enumerate() {
            let (from, to) = (map.corners[flank], map.corners[(flank + 1) % 3]);
            let (first, last) = (slot[0], slot[slot.len() - 1]);
            let reach = 2.0 * map.corner_radius.get::<millimeter>();
            assert!(
                (first.x - from.x).hypot(first.y - from.y) < reach,
                "slot {flank} starts elsewhere"
            );
            assert!((last.x - to.x).hypot(last.y - to.y) < reach, "slot {flank} ends elsewhere");
        }
    }
}
