//! What was done: ports, tightening, decisions, notes, the steps, the sign-off.

use super::{Copy, Row, Section, Source, row};
use crate::book::{Fact, Subject};
use crate::joints::plan::{Plan, joints, passes_done};
use crate::ports::SideHousing;
use crate::route::cuts;
use crate::route::decision::{fates, past_limits};
use crate::route::{Progress, State, Topic, said};
use pitleaf_translated::translated;

impl Source<'_> {
    pub(super) fn work(&self) -> Vec<Section> {
        let mut sections = vec![self.ports(), self.tightening(), self.decisions(), self.notes()];
        if self.copy == Copy::Shop {
            sections.push(self.steps());
        }
        sections.push(self.sign_off());
        sections
    }

    #[translated]
    fn ports(&self) -> Section {
        let outlines = SideHousing::ALL.into_iter().flat_map(|housing| {
            self.book.outlines(self.build, housing).map(move |outline| {
                row([housing.name(), &outline.port.to_string(), &outline.figures])
            })
        });
        // What would destroy the engine stands on its sheet as well.
        let cuts = cuts(self.book, self.build);
        let cuts = cuts.iter().filter(|cut| !cut.can_be_decided).map(|cut| {
            let words = format!("Must not be cut so: {}.", cut.words);
            row([cut.port.housing.name(), &cut.port.to_string(), &words])
        });
        Section {
            heading: "Ports",
            heads: &["Side housing", "Port", "Figures when it was drawn"],
            rows: outlines.chain(cuts).collect(),
            ..Section::default()
        }
    }

    #[translated]
    fn tightening(&self) -> Section {
        let mut rows = Vec::new();
        for joint in joints(self.book, self.build) {
            let Some(plan) = Plan::of(self.book, self.build, &joint) else { continue };
            let done = passes_done(self.book, self.build, &joint);
            for (number, pass) in (1_u16..).zip(plan.passes()) {
                let said = done.iter().find(|done| done.pass == number).map_or_else(
                    || "to do".to_owned(),
                    |done| format!("done at {} {}", done.torque, done.unit.symbol()),
                );
                rows.push(row([
                    &joint,
                    &format!("{number} of {}", plan.passes().len()),
                    &format!("{} {}", plan.wrench(pass), plan.torque.unit().symbol()),
                    &plan.bolts.said(&pass.order),
                    &said,
                ]));
            }
        }
        Section {
            heading: "Tightening",
            heads: &["Joint", "Pass", "Torque", "Order of the bolts", "State"],
            whole: &[1, 2, 4],
            rows,
            ..Section::default()
        }
    }

    /// Readings past a limit or too close to call with what was decided, and the fates of whole parts.
    #[translated]
    fn decisions(&self) -> Section {
        let past = past_limits(self.book, self.build, self.sheet);
        let past = past.iter().map(|past| {
            let (choice, why) =
                past.decision.map_or(("not decided", ""), |(choice, why)| (choice.name(), why));
            let reading = format!("{}\n{}", past.reading, past.call.word());
            Row { call: Some(past.call), ..row([&past.name(), &reading, choice, why]) }
        });
        let cuts = cuts(self.book, self.build);
        let cuts = cuts.iter().filter(|cut| cut.can_be_decided).map(|cut| {
            let (choice, why) =
                cut.decision.map_or(("not decided", ""), |(choice, why)| (choice.name(), why));
            row([&cut.name(), &cut.words, choice, why])
        });
        let fates = fates(self.book, self.build);
        let fates = fates.iter().map(|(part, choice, why)| row([part, "", choice.name(), why]));
        Section {
            heading: "Past a limit or too close to call, and what became of parts",
            heads: &["Part", "Reading", "Decided", "Why"],
            whole: &[1],
            rows: past.chain(cuts).chain(fates).collect(),
            ..Section::default()
        }
    }

    #[translated]
    fn notes(&self) -> Section {
        let lines = self.book.lines(self.build).filter(|line| !line.withdrawn);
        let notes = lines.filter_map(|line| match &line.entry.fact {
            Fact::Note { about, words } => Some(row([about.as_str(), words])),
            _ => None,
        });
        Section {
            heading: "Notes",
            heads: &["About", "Words"],
            rows: notes.collect(),
            ..Section::default()
        }
    }

    /// Every step with who did it or found it true, and when; why, where something was open.
    #[translated]
    fn steps(&self) -> Section {
        let Some(progress) = Progress::of(self.book, self.build, self.sheet) else {
            return Section::default();
        };
        let mut last = None;
        let rows = progress.standings.iter().enumerate().map(|(place, standing)| {
            let stage = standing.station.step.stage;
            let is_new = last.replace(stage) != Some(stage);
            row([
                if is_new { stage.name() } else { "" },
                &progress.words(place),
                if standing.state == State::Done { "done" } else { "open" },
                &standing.who,
                &standing.at.map_or_else(String::new, self.moment),
                &standing.why,
            ])
        });
        Section {
            heading: "Steps",
            heads: &[
                "Stage",
                "Step",
                "State",
                "By",
                "When",
                "Although something was open, because",
            ],
            whole: &[2, 4],
            rows: rows.collect(),
            ..Section::default()
        }
    }

    #[translated]
    fn sign_off(&self) -> Section {
        let mut rows = Vec::new();
        if let Some(entry) = self.book.current(self.build, &Subject::SignOff)
            && let Fact::SignedOff { who } = &entry.fact
        {
            rows.push(row(["Signed off by", who]));
            rows.push(row(["When", &(self.moment)(entry.at)]));
            let over = said(self.book, self.build, Topic::SignedOver);
            if !over.is_empty() {
                rows.push(row([Topic::SignedOver.name(), over]));
            }
        }
        Section { heading: "Sign-off", heads: &["", ""], rows, ..Section::default() }
    }
}
