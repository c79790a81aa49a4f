//! O-ring boss ports.

use super::Thread;
use super::boss_port_rows::{ROWS, Row};
use crate::quantity::{Amount, Unit};
use std::fmt;

/// A port of SAE J1926-1 (ISO 11926-1).
#[derive(Clone, Copy)]
pub struct BossPort(&'static Row);

impl BossPort {
    /// Every port, −3 to −16.
    pub fn all() -> impl Iterator<Item = Self> {
        ROWS.iter().map(Self)
    }

    /// The port of a dash size.
    #[must_use]
    pub fn dash_size(dash: u8) -> Option<Self> {
        Self::all().find(|port| port.dash() == dash)
    }

    /// The smallest port whose tube is at least as wide inside as a line of this bore.
    ///
    /// DIFFERENCE: a dash size names the tube's *outside*; a wall of 1/16 in altogether is taken off,
    /// which is common practice for low pressures and has no source.
    #[must_use]
    pub fn for_line_bore(bore: Amount) -> Option<Self> {
        Self::all().find(|port| {
            Amount::exact(i64::from(port.dash()) - 1, 16, Unit::Inch)
                .and_then(|inside| inside.order(bore))
                .is_some_and(std::cmp::Ordering::is_ge)
        })
    }

    /// The dash size: the tube's outside diameter in sixteenths of an inch.
    #[must_use]
    pub fn dash(self) -> u8 {
        self.0.dash
    }

    /// The thread to cut. None only if the tables had no such thread, which the tests forbid.
    #[must_use]
    pub fn thread(self) -> Option<Thread> {
        Thread::named(self.0.thread)
    }

    /// The least diameter of the spot face the fitting seats on. From memory.
    #[must_use]
    pub fn spot_face(self) -> Amount {
        Amount::whole(self.0.spot_face.into(), Unit::Thou)
    }

    /// The least depth of full thread, and whether that figure was read in a published source.
    #[must_use]
    pub fn full_thread(self) -> (Amount, bool) {
        let depth = Amount::whole(self.0.full_thread.into(), Unit::Thou);
        (depth, self.0.full_thread_is_published)
    }

    /// The least depth of the tap drill with a bottoming tap. From memory.
    #[must_use]
    pub fn drill_depth(self) -> Amount {
        Amount::whole(self.0.drill_depth.into(), Unit::Thou)
    }
}

impl fmt::Debug for BossPort {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "BossPort({self})")
    }
}

impl PartialEq for BossPort {
    fn eq(&self, other: &Self) -> bool {
        self.dash() == other.dash()
    }
}

impl fmt::Display for BossPort {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "−{} ({})", self.0.dash, self.0.thread)
    }
}
