//! A drawing's `11 ± 0.3` or `11 +0.3/-0.1`, and what a gauge in another unit may show.

use super::{Amount, Bounds, Fault, Reading, Rounding, Span, Unit, places_for};

/// Two limits from a nominal size and its tolerance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tolerance {
    lower: Amount,
    upper: Amount,
    step: Span,
}

/// The lower and the upper limit as figures.
pub(super) type Figures = (String, String);

impl Tolerance {
    /// Whether a text is a size with its tolerance, which [`Self::read`] reads.
    #[must_use]
    pub fn is_typed(text: &str) -> bool {
        parted(text).is_some()
    }

    /// The unit typed behind a size or any part of its tolerance.
    #[must_use]
    pub fn unit_behind(text: &str) -> Option<Unit> {
        match parted(text) {
            Some((nominal, [one, other])) => {
                [nominal, one.size, other.size].into_iter().find_map(Reading::unit_behind)
            }
            None => Reading::unit_behind(text),
        }
    }

    /// Reads `11 ± 0.3`, `11 +/- 0.3`, `11 +0.3/-0.1` and `11 +0.3 -0.1`, in the unit typed behind any part,
    /// else the one set.
    ///
    /// # Errors
    /// The [`Fault`] of a number, or of a limit out of bounds.
    pub fn read(text: &str, unit: Unit, bounds: &'static Bounds) -> Result<Self, Fault> {
        let (nominal, [one, other]) = parted(text).ok_or(Fault::Empty)?;
        let unit = Self::unit_behind(text).unwrap_or(unit);
        let nominal = Reading::read(nominal, unit, bounds)?;
        let mut step = nominal.step();
        let mut edge = |deviation: Deviation<'_>| {
            let size = Reading::read(deviation.size, unit, bounds)?;
            let span = size.amount().minus(Amount::whole(0, size.unit()));
            if span.is_negative() {
                return Err(Fault::unreadable(text));
            }
            if size.step().ticks() < step.ticks() {
                step = size.step();
            }
            Ok(nominal.amount().plus(if deviation.is_minus { span.opposite() } else { span }))
        };
        let (one, other) = (edge(one)?, edge(other)?);
        let (lower, upper) = if one <= other { (one, other) } else { (other, one) };
        Ok(Self { lower, upper, step })
    }

    /// The lower and upper limit, exactly.
    #[must_use]
    pub fn edges(&self) -> (Amount, Amount) {
        (self.lower, self.upper)
    }

    /// The limits with a number of decimals of a unit, rounded inward (ANSI/IEEE 268, now IEEE/ASTM SI 10).
    #[must_use]
    pub fn inward(&self, unit: Unit, places: u8) -> Figures {
        (self.lower.show(unit, places, Rounding::Up), self.upper.show(unit, places, Rounding::Down))
    }

    /// The limits in every unit: as a gauge is read, and with one decimal more.
    #[must_use]
    pub fn limits(&self) -> Vec<(Unit, Figures, Figures)> {
        self.lower
            .dimension()
            .units()
            .map(|unit| {
                let fine = places_for(self.step, unit);
                (unit, self.inward(unit, fine.saturating_sub(1)), self.inward(unit, fine))
            })
            .collect()
    }
}

/// How far a limit lies from the nominal size, as typed.
#[derive(Clone, Copy)]
struct Deviation<'a> {
    is_minus: bool,
    size: &'a str,
}

/// The nominal size and the two deviations; none where the text is not of that form.
fn parted(text: &str) -> Option<(&str, [Deviation<'_>; 2])> {
    const BOTH: [&str; 5] = ["±", "+/-", "+/−", "+-", "+−"];
    if let Some((nominal, size)) = BOTH.iter().find_map(|sign| text.split_once(sign)) {
        return Some((nominal, [true, false].map(|is_minus| Deviation { is_minus, size })));
    }
    let text = text.trim();
    // A sign in front is the nominal size's own, and so is one inside “1-1/8”.
    let signs: Vec<(usize, char)> =
        text.char_indices().skip(1).filter(|(_, c)| matches!(c, '+' | '-' | '−' | '–')).collect();
    let [.., (one, first), (other, second)] = signs[..] else { return None };
    // Without a plus it may be “1-1/8”, or no tolerance at all.
    (first == '+' || second == '+').then(|| {
        let (nominal, rest) = text.split_at(one);
        let (one, other) = rest.split_at(other - one);
        (nominal, [deviation(one, first), deviation(other, second)])
    })
}

/// A deviation with its sign, and the bar that parts it from the next.
fn deviation(text: &str, sign: char) -> Deviation<'_> {
    let size = text[sign.len_utf8()..].trim().trim_end_matches('/').trim_end();
    Deviation { is_minus: sign != '+', size }
}
