//! End play in words: which spacer to fit, and whether it did what was predicted.

use super::finding::{both, figure};
use super::{Bench, Finding};
use crate::faces::{
    Choice, Closing, Measured, Refusal, Sense, Spacer, Survey, Taken, choose, close, end_play,
    ideal_thickness,
};
use crate::kept_fields;
use crate::language::said;
use crate::limits::{Call, Row, Side};
use crate::quantity::{Bounds, Dimension, Reading, Unit};
use crate::seals::Written;
use pitleaf_translated::translated;
use uom::si::f64::Length;

/// The row that end play stands against.
const ROW: &str = "end-play";

/// A spacer chosen, with what it is to give.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SpacerChoice {
    /// Its mark.
    pub spacer: String,
    /// The end play predicted.
    pub predicted: Written,
    /// Its standard uncertainty.
    pub uncertainty: Written,
    /// A thicker spacer gives less in this engine.
    pub thicker_gives_less: bool,
}

kept_fields!(SpacerChoice { spacer, predicted, uncertainty, thicker_gives_less: left_out });

impl SpacerChoice {
    fn of(spacer: &str, predicted: &Measured, sense: Sense) -> Option<Self> {
        let written = |length: Length| {
            let text = figure(length, Unit::Millimetre);
            Written::read(
                &text.replace('−', "-"),
                Unit::Millimetre,
                Bounds::widest(Dimension::Length),
            )
            .ok()
        };
        Some(Self {
            spacer: spacer.to_owned(),
            predicted: written(predicted.value)?,
            uncertainty: written(predicted.uncertainty)?,
            thicker_gives_less: sense == Sense::ThickerGivesLess,
        })
    }

    /// What a thicker spacer was taken to do.
    #[must_use]
    pub fn sense(&self) -> Sense {
        if self.thicker_gives_less { Sense::ThickerGivesLess } else { Sense::ThickerGivesMore }
    }

    fn measured(&self) -> Option<Measured> {
        Some(Measured {
            value: self.predicted.amount().length()?,
            uncertainty: self.uncertainty.amount().length()?,
        })
    }
}

/// End play from the repeated readings: every place but the spacer's.
fn play(taken: &Taken) -> Result<Measured, Refusal> {
    let readings: Vec<Length> = taken
        .lengths()
        .into_iter()
        .filter(|(place, _)| *place < READINGS)
        .map(|(_, length)| length)
        .collect();
    end_play(&readings, &taken.doubt)
}

/// Readings of end play; the place behind them is the spacer that is in.
const READINGS: usize = 3;

#[translated]
fn against(measured: &Measured, bench: &Bench<'_>, unit: Unit) -> Finding {
    Finding::measured("End play", measured, unit).against(measured, bench.row(ROW), unit)
}

/// End play, and the spacers at hand with what each would give, best first.
#[translated]
pub(super) fn report(survey: Survey, taken: &Taken, bench: &Bench<'_>) -> Vec<Finding> {
    let other = |of: Survey| if of == survey { Some(taken.clone()) } else { bench.taken(of, "") };
    let what = "Spacer to fit";
    let Some(read) = other(Survey::EndPlay) else {
        return vec![Finding::new(what, String::new(), "Read the end play first.".to_owned())];
    };
    let unit = taken.unit;
    let play = match play(&read) {
        Ok(play) => play,
        Err(refusal) => return vec![Finding::refused("End play", refusal)],
    };
    let mut findings = vec![against(&play, bench, unit)];
    let gauge = bench.sheet.gauge(Survey::Spacers.gauge());
    let micrometer = |reading: &Reading| Measured::of(reading, &gauge);
    let fitted = read.readings[READINGS].as_ref().and_then(micrometer);
    let (Some(fitted), Some(row)) = (fitted, bench.row(ROW)) else {
        findings.push(Finding::new(
            what,
            String::new(),
            "Give the thickness of the spacer that is in.".to_owned(),
        ));
        return findings;
    };
    let at_hand =
        other(Survey::Spacers).map(|spacers| at_hand(&spacers, micrometer)).unwrap_or_default();
    let mut proved = false;
    match choose(&play, &fitted, &at_hand, bench.sense, &row.limit) {
        Ok(choices) => {
            let fits = |choice: &Choice| !matches!(choice.verdict.call, Call::DoesNotMeet(_));
            proved = choices.iter().any(|choice| choice.verdict.call == Call::Meets);
            if !choices.iter().any(fits) {
                findings.push(predicted(Finding::new(
                    what,
                    String::new(),
                    "None of the spacers at hand fits.".to_owned(),
                )));
            }
            findings.extend(choices.iter().map(|choice| {
                let spacer = &at_hand[choice.spacer];
                let mut finding = with_spacer(spacer, choice, unit);
                if fits(choice) {
                    finding.offer = SpacerChoice::of(&spacer.mark, &choice.predicted, bench.sense)
                        .map(Box::new);
                }
                finding
            }));
        }
        Err(_) if at_hand.is_empty() => {
            findings.push(Finding::new(
                what,
                String::new(),
                "Enter the spacers at hand.".to_owned(),
            ));
        }
        Err(refusal) => findings.push(Finding::refused(what, refusal)),
    }
    findings.extend(ideal(&play, &fitted, row, bench, unit, proved));
    findings
}

/// What a spacer would give. A prediction is no reading: it says how it would stand, and has no verdict.
#[translated]
fn with_spacer(spacer: &Spacer, choice: &Choice, unit: Unit) -> Finding {
    let stands = match choice.verdict.call {
        Call::Meets => "that would be within the limit",
        Call::TooClose => "that would be too close to the limit’s edge to call",
        Call::DoesNotMeet(Side::Below) => "that would be too little",
        Call::DoesNotMeet(Side::Above) => "that would be too much",
    };
    let with = figure(spacer.thickness.value, unit);
    let finding = Finding::measured(&said(&spacer.mark), &choice.predicted, unit);
    predicted(finding.saying(&format!("Predicted, with {with}: {stands}.")))
}

fn predicted(finding: Finding) -> Finding {
    Finding { is_predicted: true, ..finding }
}

fn at_hand(spacers: &Taken, measured: impl Fn(&Reading) -> Option<Measured>) -> Vec<Spacer> {
    let spacer = |(place, reading): (usize, &Option<Reading>)| {
        let thickness = measured(reading.as_ref()?)?;
        Some(Spacer { mark: spacers.name(place).to_owned(), thickness })
    };
    spacers.readings.iter().enumerate().filter_map(spacer).collect()
}

/// What to order or grind, when no spacer at hand is proved to do.
#[translated]
fn ideal(
    play: &Measured,
    fitted: &Measured,
    row: &Row,
    bench: &Bench<'_>,
    unit: Unit,
    proved: bool,
) -> Option<Finding> {
    let wanted = ideal_thickness(play, fitted, bench.sense, &row.limit)?;
    (!proved).then(|| {
        predicted(Finding::new(
            "Thickness to order or grind",
            both(wanted, unit),
            "Brings the end play to the middle of its limit.".to_owned(),
        ))
    })
}

/// The loop closed: end play with the chosen spacer in, against the prediction.
#[translated]
pub(super) fn after_report(taken: &Taken, bench: &Bench<'_>) -> Vec<Finding> {
    let measured = match play(taken) {
        Ok(measured) => measured,
        Err(refusal) => return vec![Finding::refused("End play", refusal)],
    };
    let mut findings = vec![against(&measured, bench, taken.unit)];
    let what = "Against the prediction";
    let predicted = bench.chosen.as_ref().and_then(|chosen| Some((chosen, chosen.measured()?)));
    findings.push(match predicted {
        None => Finding::new(what, String::new(), "No spacer was chosen yet.".to_owned()),
        Some((chosen, predicted)) => {
            let closing = close(&predicted, &measured);
            let mut finding = Finding::new(
                what,
                both(measured.value - predicted.value, taken.unit),
                format!("With {}. {closing}", said(&chosen.spacer)),
            );
            finding.call = matches!(closing, Closing::Mismatch { .. })
                .then_some(Call::DoesNotMeet(Side::Above));
            finding
        }
    });
    findings
}
