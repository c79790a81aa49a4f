//! A limit: the edges a reading must keep, each as its source wrote it.

use crate::kept::{Json, Kept, Refused};
use crate::kept_fields;
use crate::quantity::{Amount, Bounds, Fault, Reading, Rounding, Span, Unit, places_for};
use pitleaf_translated::translated;

/// One edge of a limit, as written in its source.
///
/// Not a reading: converted, it rounds inward, so that it never admits what the original rejects.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Edge(Reading);

impl Edge {
    /// Reads an edge as its source prints it: a number, and behind it a unit if one is printed; else `unit` holds.
    ///
    /// # Errors
    /// The [`Fault`] of the text.
    pub fn read(text: &str, unit: Unit) -> Result<Self, Fault> {
        let bounds = Bounds::widest(unit.dimension());
        let read = Reading::read(text, unit, bounds)?;
        // Number and unit apart, so that an edge is the same edge however its unit was given.
        Reading::read(read.number(), read.unit(), bounds).map(Self)
    }

    /// Exactly where it lies.
    #[must_use]
    pub fn amount(&self) -> Amount {
        self.0.amount()
    }

    /// How far from the zero of its unit's scale, as a size.
    #[must_use]
    pub(crate) fn size(&self) -> Span {
        self.amount().minus(Amount::whole(0, self.unit())).size()
    }

    /// The unit its source uses.
    #[must_use]
    pub fn unit(&self) -> Unit {
        self.0.unit()
    }

    /// The number as written, without its unit.
    #[must_use]
    pub fn text(&self) -> &str {
        self.0.text()
    }

    /// One step of its last digit.
    #[must_use]
    pub fn step(&self) -> Span {
        self.0.step()
    }

    /// In a unit: as written in its own, rounded inward in another.
    #[must_use]
    pub fn show(&self, unit: Unit, inward: Rounding) -> String {
        let amount = self.amount();
        let places = places_for(self.0.step(), unit);
        if unit == self.0.unit()
            && let Some(figure) = amount.exact_figure(unit, 6)
        {
            // Keep the zeros its source printed: they say how finely it was meant.
            let printed = self.0.text().split_once(['.', ',']).map_or(0, |(_, part)| part.len());
            let printed = u8::try_from(printed).unwrap_or(0);
            return if amount.is_exact(unit, printed) {
                amount.show(unit, printed, inward)
            } else {
                figure
            };
        }
        // One digit less where that is still exact: 1.5 thou for 0.0015 in.
        let fewer = places.saturating_sub(1);
        amount.show(unit, if amount.is_exact(unit, fewer) { fewer } else { places }, inward)
    }
}

impl Kept for Edge {
    fn json(&self) -> Json<'_> {
        Json::words(&format_args!("{} {}", self.0.text(), self.0.unit().symbol()))
    }

    #[translated]
    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let text = json.text()?;
        let unit = Reading::unit_behind(text);
        let unit = unit.ok_or_else(|| Refused::because(&"a limit without its unit"))?;
        Self::read(text, unit).map_err(|fault| Refused::because(&fault))
    }
}

/// What a reading must keep: a lower edge, an upper edge, or both; and where wear ends the part's life.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Limit {
    /// The least that meets, inclusive.
    pub lower: Option<Edge>,
    /// The most that meets, inclusive.
    pub upper: Option<Edge>,
    /// Beyond it a used part is done; on the worn side of the lower or upper edge.
    pub wear: Option<Edge>,
}

kept_fields!(Limit { lower: left_out, upper: left_out, wear: left_out });

impl Limit {
    /// Whether there is an edge to keep; without one nothing can be judged.
    #[must_use]
    pub fn has_edge(&self) -> bool {
        self.lower.is_some() || self.upper.is_some()
    }

    /// Whether an amount meets both edges; equal to an edge meets it. Exact.
    #[must_use]
    pub fn holds(&self, amount: Amount) -> bool {
        let above =
            self.lower.as_ref().is_none_or(|edge| !amount.minus(edge.amount()).is_negative());
        let below =
            self.upper.as_ref().is_none_or(|edge| !edge.amount().minus(amount).is_negative());
        above && below
    }

    /// Whether an amount lies past the wear limit; none where there is no such limit.
    #[must_use]
    pub fn is_worn_out(&self, amount: Amount) -> Option<bool> {
        let wear = self.wear.as_ref()?.amount();
        let past = if self.wears_upwards() { wear.minus(amount) } else { amount.minus(wear) };
        Some(past.is_negative())
    }

    /// Whether wear makes it greater: the worn side is the one away from the fresh limits, so that a wear
    /// limit above them is passed upwards.
    pub(super) fn wears_upwards(&self) -> bool {
        let Some(wear) = self.wear.as_ref().map(Edge::amount) else { return true };
        match (&self.upper, &self.lower) {
            (Some(upper), _) if !wear.minus(upper.amount()).is_negative() => true,
            (_, Some(lower)) if !lower.amount().minus(wear).is_negative() => false,
            (Some(_), _) => false,
            _ => true,
        }
    }

    /// The unit the limit was written in.
    #[must_use]
    pub fn unit(&self) -> Option<Unit> {
        self.lower.as_ref().or(self.upper.as_ref()).or(self.wear.as_ref()).map(Edge::unit)
    }
}
