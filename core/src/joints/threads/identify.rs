//! What thread is this? From a measured diameter, and a pitch or a count of threads.

use super::Thread;
use crate::joints::Refusal;
use crate::joints::bounds::{self, PITCH, THREAD_DIAMETER};
use crate::quantity::{Amount, Rounding, Unit};
use pitleaf_translated::translated;

/// Which half of the thread was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// A bolt's or fitting's outside diameter.
    Outside,
    /// A hole's inside diameter, over the crests.
    Inside,
}

/// What was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Measured {
    /// Which half.
    pub side: Side,
    /// The diameter over its crests.
    pub diameter: Amount,
    /// The pitch; none where it was not measured.
    pub pitch: Option<Amount>,
}

impl Measured {
    /// The pitch from a count of threads on an inch.
    ///
    /// # Errors
    /// A count out of [`bounds::THREADS_PER_INCH`].
    pub fn pitch_of_count(count: f64) -> Result<Amount, Refusal> {
        let count = bounds::THREADS_PER_INCH.check(count)?;
        let none = Refusal::OutOfBounds(&bounds::THREADS_PER_INCH);
        Amount::nearest(1.0 / count, Unit::Inch).ok_or(none)
    }
}

/// A thread it may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Candidate {
    /// Which.
    pub thread: Thread,
    /// How far the measured diameter lies from the middle of where it should, in mm.
    pub diameter_off: f64,
    /// How far the measured pitch lies from the thread's, in mm; none where it was not measured.
    pub pitch_off: Option<f64>,
}

/// What a thread gauge can still be laid on, as a share of the pitch. Common practice, no source.
const PITCH_ROOM: f64 = 0.04;

/// The threads of the tables it may be, likeliest first.
///
/// A bolt is cut a little under its size and a nut's crests a little over theirs: the room allowed
/// is 0.05 mm the one way and 0.1 mm with a fifth of the pitch the other (as wide as the tolerances
/// 6g, 6H, 2A and 2B of these sizes; a worn or plated thread may fall outside).
///
/// # Errors
/// A diameter out of [`THREAD_DIAMETER`], a pitch out of [`PITCH`].
pub fn identify(measured: &Measured) -> Result<Vec<Candidate>, Refusal> {
    let diameter = measured.diameter.value(Unit::Millimetre);
    bounds::check(&THREAD_DIAMETER, diameter)?;
    let pitch = measured.pitch.map(|pitch| pitch.value(Unit::Millimetre));
    if let Some(pitch) = pitch {
        bounds::check(&PITCH, pitch * 1000.0)?;
    }
    let mut found: Vec<Candidate> = Thread::all()
        .filter_map(|thread| candidate(thread, measured.side, diameter, pitch))
        .collect();
    found.sort_by(|a, b| misfit(a).total_cmp(&misfit(b)));
    Ok(found)
}

fn candidate(thread: Thread, side: Side, diameter: f64, pitch: Option<f64>) -> Option<Candidate> {
    let own_pitch = thread.pitch().value(Unit::Millimetre);
    let room = 0.1 + own_pitch / 5.0;
    let (least, greatest) = match side {
        Side::Outside => {
            let full = thread.diameter().value(Unit::Millimetre);
            (full - room, full + 0.05)
        }
        Side::Inside => {
            let basic = thread.minor_diameter().get::<uom::si::length::millimeter>();
            (basic - 0.05, basic + room)
        }
    };
    let pitch_off = pitch.map(|pitch| (pitch - own_pitch).abs());
    let pitch_fits = pitch_off.is_none_or(|off| off <= own_pitch * PITCH_ROOM);
    ((least..=greatest).contains(&diameter) && pitch_fits).then_some(Candidate {
        thread,
        diameter_off: (diameter - (least + greatest) / 2.0).abs(),
        pitch_off,
    })
}

/// Ten threads of pitch weigh as much as the diameter: a gauge is laid over about that many.
fn misfit(candidate: &Candidate) -> f64 {
    candidate.diameter_off + 10.0 * candidate.pitch_off.unwrap_or(0.0)
}

/// What to measure to tell two threads apart.
///
/// # Examples
/// ```
/// use pitleaf_core::joints::threads::{Thread, what_tells_apart};
/// let fine = Thread::named("M12 × 1.25").expect("in the table");
/// let inch = Thread::named("1/2-20 UNF").expect("in the table");
/// assert_eq!(
///     what_tells_apart(fine, inch),
///     "Ten threads of M12 × 1.25 measure 12.50 mm, ten of 1/2-20 UNF 12.70 mm; \
///      outside 12.00 mm against 12.70 mm."
/// );
/// ```
#[must_use]
#[translated]
pub fn what_tells_apart(one: Thread, other: Thread) -> String {
    let mm = |amount: Amount| amount.show(Unit::Millimetre, 2, Rounding::Nearest);
    let ten = |thread: Thread| {
        Amount::nearest(thread.pitch().value(Unit::Millimetre) * 10.0, Unit::Millimetre)
            .map(mm)
            .unwrap_or_default()
    };
    format!(
        "Ten threads of {one} measure {} mm, ten of {other} {} mm; outside {} mm against {} mm.",
        ten(one),
        ten(other),
        mm(one.diameter()),
        mm(other.diameter())
    )
}
