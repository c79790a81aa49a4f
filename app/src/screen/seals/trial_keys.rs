//! The keys for a trial: which leaf, what was ground off before, and what was seen. One touch writes it down.

use super::leaves_on_bench;
use super::slot_answer::SlotAnswer;
use crate::dom::{El, button, el, follow, link, text};
use crate::draft;
use crate::route::Route;
use crate::signal::*;
use crate::state::App;
use crate::widget::switch;
use pitleaf_core::book::{Fact, Slot};
use pitleaf_core::quantity::Unit;
use pitleaf_core::seals::{
    Ground, GroundBy, LeafFault, Outcome, Stack, Step, Trial, TrialFault, last_leaf_unit,
    usual_tolerance,
};
use pitleaf_translated::tr;

/// What stands on the keys.
#[derive(Clone, Copy)]
pub(super) struct TrialKeys {
    app: App,
    slot: Slot,
    leaf: RwSignal<String>,
    /// The unit of a leaf typed without one.
    unit: RwSignal<Unit>,
    ground: RwSignal<String>,
    by: RwSignal<GroundBy>,
    /// Whether the leaves lie open, and whether the next one touched is put to those in hand.
    open: RwSignal<bool>,
    stacking: RwSignal<bool>,
    /// Whether what is seen of the seal alone lies open.
    alone: RwSignal<bool>,
    fault: RwSignal<Option<String>>,
    /// What is to be written only if it is said once more.
    asked: RwSignal<Option<Outcome>>,
    known: Memo<Option<SlotAnswer>>,
}

/// The unit a leaf is typed in where none is chosen: that of the last trial in any slot, else of the leaves on
/// the bench, else the one the limit is spoken in on this page.
fn usual_unit(app: App, spoken: Option<Unit>) -> Unit {
    let tried = app.build().and_then(|build| app.book.with(|book| last_leaf_unit(book, &build)));
    let leaf = || leaves_on_bench(app)?.leaves().first().map(|leaf| leaf.unit());
    tried.or_else(leaf).or(spoken).unwrap_or(Unit::Millimetre)
}

/// Parts leaf and count in the draft.
const PARTS: char = '|';

impl TrialKeys {
    /// The keys of a slot, as they were left, else with the leaf proposed.
    pub(super) fn of(
        app: App,
        slot: Slot,
        by: RwSignal<GroundBy>,
        known: Memo<Option<SlotAnswer>>,
    ) -> Self {
        let hash = Route::Slot(slot).hash();
        let draft = draft::at(&hash);
        let unit = draft.as_ref().and_then(|draft| draft.unit).unwrap_or_else(|| {
            usual_unit(app, known.with_untracked(|known| known.as_ref().map(|known| known.unit)))
        });
        let kept = draft.map(|draft| draft.text).unwrap_or_default();
        let (leaf, ground) = kept.split_once(PARTS).unwrap_or((&kept, ""));
        let keys = Self {
            app,
            slot,
            leaf: RwSignal::new(leaf.to_owned()),
            unit: RwSignal::new(unit),
            ground: RwSignal::new(ground.to_owned()),
            by,
            open: RwSignal::new(false),
            stacking: RwSignal::new(false),
            alone: RwSignal::new(false),
            fault: RwSignal::new(None),
            asked: RwSignal::new(None),
            known,
        };
        let proposed = keys.proposed();
        // A new proposal takes the old one's place, but never what was typed.
        follow({
            let mut shown = String::new();
            move || {
                let next = proposed.get();
                if keys.leaf.with_untracked(|leaf| leaf.is_empty() || *leaf == shown) {
                    keys.leaf.set(next.clone());
                }
                shown = next;
            }
        });
        follow(move || {
            let (leaf, ground) = (keys.leaf.get(), keys.ground.get());
            let is_as_proposed = leaf == proposed.get_untracked() && ground.is_empty();
            let text =
                if is_as_proposed { String::new() } else { format!("{leaf}{PARTS}{ground}") };
            draft::put(&hash, &text, Some(keys.unit.get()));
        });
        follow(move || {
            keys.leaf.track();
            keys.unit.track();
            keys.ground.track();
            keys.fault.set(None);
            keys.asked.set(None);
        });
        keys
    }

    fn proposed(self) -> Memo<String> {
        Memo::new(move || {
            self.known.with(|known| {
                known
                    .as_ref()
                    .and_then(|known| known.next.as_ref().ok())
                    .map(|next| next.stack.clone())
                    .unwrap_or_default()
            })
        })
    }

    /// The keys themselves.
    pub(super) fn shown(self) -> Vec<El> {
        let seen = |words: &str, outcome: Outcome| {
            button("key", words, move || self.write(outcome, false))
        };
        let pair = el("div")
            .class("pair trial-pair")
            .with(button("key action", tr!("Goes"), move || self.write(Outcome::Goes, false)))
            .with(button("key action", tr!("Does not go"), move || {
                self.write(Outcome::DoesNotGo, false)
            }));
        let more = button("quiet more", tr!("Without a leaf…"), move || {
            self.alone.update(|on| *on = !*on)
        })
        .attr_live("aria-expanded", move || Some(self.alone.get().to_string()));
        let without = el("div")
            .class("pair without-leaf")
            .attr_live("hidden", move || (!self.alone.get()).then(String::new))
            .with_all([
                seen(tr!("Will not enter"), Outcome::WillNotEnter),
                seen(tr!("Moves the corner seal"), Outcome::MovesCornerSeal),
                seen(tr!("Free, no leaf enters"), Outcome::FreeNoLeaf),
            ]);
        let fault = el("p")
            .class("refusal trial-fault")
            .attr("role", "alert")
            .attr_live("hidden", move || self.fault.with(Option::is_none).then(String::new));
        vec![
            self.leaves(),
            fault.text_live(move || self.fault.get().unwrap_or_default()).live(move || {
                let units = self.fault.with(Option::is_some).then(|| {
                    self.leaf
                        .with_untracked(|leaf| Stack::likely_units(leaf, self.unit.get_untracked()))
                });
                let read = units.into_iter().flatten().map(|unit| {
                    let words = tr!("Read as {}", unit.symbol());
                    button("unit", &words, move || self.unit.set(unit))
                });
                let asked = self.asked.get().into_iter();
                let anyway = asked.map(|outcome| {
                    button("quiet", tr!("Write it all the same"), move || self.write(outcome, true))
                });
                read.chain(anyway).collect()
            }),
            self.leaf_line(),
            self.ground_line(),
            self.burr(),
            pair,
            more,
            without,
        ]
    }

    fn leaf_line(self) -> El {
        let input = el("input")
            .attrs(&[("autocomplete", "off"), ("autocapitalize", "off"), ("spellcheck", "false")])
            .attr_live("aria-label", move || {
                Some(tr!("Leaf or stack tried, in {}", self.unit.get().symbol()))
            })
            .attr_live("placeholder", move || Some(self.unit.get().symbol().to_owned()))
            .class("leaf-input")
            .bound(self.leaf);
        let label = el("span")
            .class("dim")
            .attr("aria-hidden", "true")
            .text_live(move || tr!("Leaf in {}", self.unit.get().symbol()));
        let units = [(Unit::Thou, "thou"), (Unit::Inch, "in"), (Unit::Millimetre, "mm")];
        let units = switch(
            tr!("Unit of the leaf"),
            &units,
            move |unit| self.unit.get() == unit,
            move |unit| self.unit.set(unit),
        );
        let leaves = button("unit", tr!("Leaves"), move || self.open.update(|open| *open = !*open))
            .attr_live("aria-expanded", move || Some(self.open.get().to_string()));
        el("div").class("trial-line leaf-line").with_all([label, units, leaves, input])
    }

    fn ground_line(self) -> El {
        let step = move |by: i64| {
            // What can't be read stays, for its sentence to be seen.
            let count = self.ground.with_untracked(|ground| {
                if ground.trim().is_empty() { Some(0) } else { ground.trim().parse::<i64>().ok() }
            });
            if let Some(count) = count {
                let next = (count + by).max(0);
                self.ground.set(if next == 0 { String::new() } else { next.to_string() });
            }
        };
        let input = el("input")
            .attrs(&[
                ("aria-label", tr!("Ground off since the last trial")),
                ("inputmode", "numeric"),
                ("autocomplete", "off"),
                ("placeholder", "0"),
            ])
            .class("ground-input")
            .bound(self.ground);
        let option = |by: GroundBy| {
            el("option")
                .attr("value", by.words(2))
                .text(by.words(2))
                .attr_live("selected", move || (self.by.get() == by).then(String::new))
        };
        let select = el("select")
            .attr("aria-label", tr!("Counted in"))
            .with_all(GroundBy::ALL.map(option))
            .on("change", move |event| {
                let chosen = event_target_value(&event);
                if let Some(by) = GroundBy::ALL.into_iter().find(|by| by.words(2) == chosen) {
                    self.by.set(by);
                }
            });
        el("div")
            .class("trial-line ground-line")
            .with(text("span", "dim", tr!("Ground since")))
            .with(button("unit", "−", move || step(-1)).attr("aria-label", tr!("One less")))
            .with(input)
            .with(button("unit", "+", move || step(1)).attr("aria-label", tr!("One more")))
            .with(select)
    }

    /// Before measuring what was ground, the burr comes off.
    fn burr(self) -> El {
        el("p")
            .class("burr")
            .attr_live("hidden", move || {
                self.ground
                    .with(|ground| matches!(Ground::read(ground, GroundBy::Strokes), Ok(None)))
                    .then(String::new)
            })
            .text(Step::Measuring.caution())
    }

    /// The leaves on the bench, to be touched; or the way to enter them.
    fn leaves(self) -> El {
        el("div")
            .class("leaf-panel")
            .attr_live("hidden", move || (!self.open.get()).then(String::new))
            .live(move || {
                let Some(set) = leaves_on_bench(self.app) else {
                    return vec![
                        link("button", &Route::Leaves.hash()).text(tr!("Enter your feeler leaves")),
                    ];
                };
                let mut shown: Vec<El> = set
                    .leaves()
                    .iter()
                    .map(|leaf| {
                        let (mark, thickness) = (leaf.to_string(), leaf.thickness());
                        let touched = mark.clone();
                        button("unit leaf", &mark, move || self.touch(&touched)).pressed(
                            move || {
                                self.stack().is_ok_and(|stack| {
                                    stack
                                        .leaves()
                                        .iter()
                                        .any(|other| other.thickness() == thickness)
                                })
                            },
                        )
                    })
                    .collect();
                shown.push(
                    button("unit", tr!("Put together"), move || {
                        self.stacking.update(|on| *on = !*on)
                    })
                    .pressed(move || self.stacking.get()),
                );
                shown
            })
    }

    /// A leaf touched takes the place of the one in hand, or is put to it.
    fn touch(self, mark: &str) {
        if self.stacking.get_untracked() && !self.leaf.with_untracked(|leaf| leaf.trim().is_empty())
        {
            self.leaf.update(|leaf| {
                leaf.push_str(" + ");
                leaf.push_str(mark);
            });
        } else {
            self.leaf.set(mark.to_owned());
        }
    }

    fn stack(self) -> Result<Stack, LeafFault> {
        self.leaf.with(|leaf| Stack::read(leaf, self.unit.get()))
    }

    /// The trial as it stands on the keys.
    fn trial(self, outcome: Outcome) -> Result<Trial, TrialFault> {
        let ground = Ground::read(&self.ground.get_untracked(), self.by.get_untracked())?;
        if !outcome.takes_leaves() {
            return Trial::without_leaves(outcome, ground);
        }
        let set = leaves_on_bench(self.app);
        let stack = match (outcome, &set) {
            // Said of the thinnest leaf there is.
            (Outcome::FreeNoLeaf, Some(set)) => {
                Stack::of(set.leaves().iter().take(1).cloned().collect())?
            }
            _ => self.stack()?,
        };
        let tolerance = match &set {
            Some(set) => set.tolerance().clone(),
            None => usual_tolerance()?,
        };
        Trial::with_leaves(outcome, stack, tolerance, ground)
    }

    fn write(self, outcome: Outcome, is_sure: bool) {
        self.asked.set(None);
        match untrack(|| self.trial(outcome)) {
            Err(fault) => self.fault.set(Some(fault.to_string())),
            Ok(seen) => {
                if let Some(doubt) = seen.leaves().and_then(Stack::doubt).filter(|_| !is_sure) {
                    self.fault.set(Some(doubt));
                    self.asked.set(Some(outcome));
                    return;
                }
                self.fault.set(None);
                let said = format!("{}: {seen}", self.slot);
                let emptied = draft::all_emptied([self.ground, self.leaf]);
                self.app.write(vec![Fact::Trial { slot: self.slot, seen }], said, move || {
                    emptied();
                    if self.leaf.with_untracked(String::is_empty) {
                        self.leaf.set(self.proposed_now());
                    }
                    self.open.set(false);
                    self.stacking.set(false);
                    self.alone.set(false);
                });
            }
        }
    }

    fn proposed_now(self) -> String {
        self.known.with_untracked(|known| {
            known
                .as_ref()
                .and_then(|known| known.next.as_ref().ok())
                .map(|next| next.stack.clone())
                .unwrap_or_default()
        })
    }
}
