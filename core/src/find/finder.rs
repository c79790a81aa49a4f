//! Everything that can be found, from the tables and from what the book adds up to.

use super::found::{Found, Kind, Place};
use super::index::{Index, Weight};
use super::words::asked;
use crate::book::{Book, BuildId, Entry, Fact, Slot};
use crate::calculators::Calculator;
use crate::help::Topic;
use crate::joints::fits::{Class, Letter};
use crate::joints::threads::{BossPort, Drill, Thread, port_words, thread_words};
use crate::limits::{BuildKind, Row, Sheet, limit_line};
use crate::quantity::{Rounding, Unit};
use crate::route::{Progress, RouteFact, Routing, State, Step};
use pitleaf_translated::translated;

/// A word of the name.
const NAME: Weight = 8;
/// A word of the trade for it.
const WORDS: Weight = 5;
/// What it belongs to.
const PART: Weight = 3;
/// What is said beside it.
const REST: Weight = 1;

/// Everything that can be found in a book, ready to be asked.
#[derive(Debug, Default)]
pub struct Finder {
    index: Index,
    things: Vec<Found>,
}

/// What was found of one kind, best first.
#[derive(Clone, Debug, PartialEq)]
pub struct Group<'finder> {
    /// The kind.
    pub kind: Kind,
    /// The things.
    pub found: Vec<&'finder Found>,
}

impl Finder {
    /// Everything: of the tables, of the sheet in force, of the build in hand, and every note of the book.
    #[must_use]
    pub fn of(book: &Book, build: Option<&BuildId>, sheet: &Sheet) -> Self {
        let mut finder = Self::default();
        let opening = build.and_then(|build| Some((build, book.opening(build)?)));
        finder.put_limits(sheet, opening.map_or(BuildKind::Any, |(_, opening)| opening.1));
        finder.put_calculators();
        finder.put_tables();
        finder.put_steps(build.and_then(|build| Progress::of(book, build, sheet)));
        if let Some((build, (_, _, rotors, _))) = opening {
            finder.put_slots(book, build, rotors);
        }
        finder.put_notes(book, build, sheet);
        for topic in Topic::all() {
            finder.put(
                Found::help(topic),
                &[(NAME, topic.title), (REST, topic.what), (REST, topic.why)],
            );
        }
        finder
    }

    /// Whether nothing was put in yet.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.things.is_empty()
    }

    /// What answers a question, kind by kind, the kind with the best answer first; none for an empty one.
    #[must_use]
    pub fn find(&self, query: &str) -> Vec<Group<'_>> {
        let mut groups: Vec<Group<'_>> = Vec::new();
        for (number, _) in self.index.ask(query) {
            let found = &self.things[number as usize];
            match groups.iter_mut().find(|group| group.kind == found.kind) {
                Some(group) => group.found.push(found),
                None => groups.push(Group { kind: found.kind, found: vec![found] }),
            }
        }
        groups
    }

    /// What to try where nothing answers.
    #[must_use]
    #[translated]
    pub fn nothing(&self, query: &str) -> String {
        let words = asked(query);
        let strange = words.iter().find(|word| !word.forms().any(|form| self.index.knows(form)));
        match strange {
            Some(word) => format!(
                "Nothing here is like “{}”. Check its letters, or try another word for it: the part’s name, the gauge’s, a word of your note.",
                word.whole
            ),
            None if words.is_empty() => {
                "Type a word: a part, a figure, a tool, a word of a note.".to_owned()
            }
            None => "No one thing answers to all these words. Take one away.".to_owned(),
        }
    }

    fn put(&mut self, found: Found, fields: &[(Weight, &str)]) {
        self.index.put(fields);
        self.things.push(found);
    }

    fn put_limits(&mut self, sheet: &Sheet, kind: BuildKind) {
        for row in sheet.rows().iter().filter(|row| row.build.holds_for(kind)) {
            let limit = limit_line(&row.limit, row.spoken_unit());
            self.put(
                Found {
                    kind: Kind::Limit,
                    title: row.what.clone(),
                    below: format!("{limit} · {}", row.source.kind()),
                    place: Place::Limit(row.id.clone()),
                },
                &[
                    (NAME, &row.what),
                    (WORDS, &row.words),
                    (PART, row.part.name()),
                    (REST, row.gauge.name()),
                    (REST, row.build.name()),
                    (REST, &unit_words(row)),
                ],
            );
        }
    }

    fn put_calculators(&mut self) {
        let classes = Letter::ALL.into_iter().flat_map(|letter| {
            Class::GRADES.filter_map(move |grade| Class::hole(letter, grade).ok())
        });
        let classes = classes.map(|class| class.to_string()).collect::<Vec<_>>().join(" ");
        for calculator in Calculator::all() {
            let help = calculator.help();
            let rows = if calculator == Calculator::Fits { classes.as_str() } else { "" };
            self.put(
                Found::calculator(calculator),
                &[
                    (NAME, calculator.name()),
                    (WORDS, calculator.words()),
                    (PART, calculator.about()),
                    (WORDS, rows),
                    (REST, help.what),
                ],
            );
        }
    }

    #[translated]
    fn put_tables(&mut self) {
        let table =
            |title: String, below: String, place| Found { kind: Kind::Table, title, below, place };
        for thread in Thread::all() {
            let below = format!("tap drill {}", thread.tap_drill());
            let words = thread_words(thread).join(" ");
            self.put(
                table(thread.name(), below, Place::Thread(thread)),
                &[(NAME, &words), (REST, "thread bolt stud tap")],
            );
        }
        for port in BossPort::all() {
            let title = format!("Boss port −{}", port.dash());
            let below = port.thread().map(Thread::name).unwrap_or_default();
            let words = port_words(port).join(" ");
            self.put(table(title, below, Place::Port(port.dash())), &[(NAME, &words)]);
        }
        for drill in Drill::all() {
            let Some(size) = drill.diameter() else { continue };
            let below = [(Unit::Millimetre, 2), (Unit::Inch, 4)]
                .map(|(unit, places)| {
                    size.show(unit, places, Rounding::Nearest) + " " + unit.symbol()
                })
                .join("   ");
            let name = drill.said();
            let other = if let Drill::Number(number) = drill {
                format!("#{number}")
            } else {
                String::new()
            };
            self.put(
                table(format!("Drill {name}"), below, Place::Drill(drill)),
                &[(PART, &name), (PART, &other), (REST, "drill bit number fraction")],
            );
        }
    }

    /// One line for each step: that of the first thing it is still to be made on.
    fn put_steps(&mut self, progress: Option<Progress>) {
        let Some(progress) = progress else {
            Routing::usual()
                .steps()
                .iter()
                .for_each(|step| self.put_step(step, step.id.clone(), ""));
            return;
        };
        for step in progress.routing.steps() {
            let mut of_step =
                progress.standings.iter().filter(|standing| standing.station.step.id == step.id);
            let mut first = of_step.clone();
            let next =
                of_step.find(|standing| standing.state != State::Done).or_else(|| first.next());
            if let Some(next) = next {
                let thing = next.station.place_words();
                let comma = if thing.is_empty() { "" } else { ", " };
                let stands = format!(" · {thing}{comma}{}", next.state.name());
                self.put_step(step, next.station.key(), &stands);
            }
        }
    }

    #[translated]
    fn put_step(&mut self, step: &Step, key: String, stands: &str) {
        let (stage, kind) = (step.stage.name(), step.kind.name());
        // What a step is about stands first; what follows only names more things.
        let (about, more) = step.words.split_once([',', ':']).unwrap_or((&step.words, ""));
        self.put(
            Found {
                kind: Kind::Step,
                title: step.words.clone(),
                below: format!("{stage} · {kind}{stands}"),
                place: Place::Step(key),
            },
            &[
                (NAME, about),
                (WORDS, more),
                (REST, &step.care),
                (PART, stage),
                (REST, kind),
                (REST, "step"),
            ],
        );
    }

    #[translated]
    fn put_slots(&mut self, book: &Book, build: &BuildId, rotors: u8) {
        for slot in Slot::of_engine(rotors) {
            let mark = book.mark(build, slot).unwrap_or("no mark yet");
            let fitted = if book.is_fitted(build, slot) { " · seal fitted" } else { "" };
            let where_it_is =
                format!("rotor {} {} face side seal", slot.rotor(), slot.face().name());
            self.put(
                Found {
                    kind: Kind::Slot,
                    title: format!("Slot {slot}"),
                    below: format!("{mark}{fitted}"),
                    place: Place::Slot(slot),
                },
                &[(NAME, &format!("slot {slot}")), (WORDS, mark), (PART, &where_it_is)],
            );
        }
    }

    /// What the builder wrote in words, those of the build in hand first, the latest first.
    fn put_notes(&mut self, book: &Book, build: Option<&BuildId>, sheet: &Sheet) {
        let others = book.builds().into_iter().filter(|other| Some(other) != build);
        for build in build.cloned().into_iter().chain(others) {
            let name = book.opening(&build).map_or("", |opening| opening.0);
            for line in book.lines(&build).rev() {
                if is_of_words(&line.entry.fact)
                    && !line.withdrawn
                    && holds(book, &build, line.entry)
                {
                    let words = line.entry.words(sheet);
                    self.put(
                        Found {
                            kind: Kind::Note,
                            title: short(&words.says),
                            below: format!("{} · {name}", words.about),
                            place: Place::Entry(line.entry.id.clone()),
                        },
                        &[(NAME, &words.says), (WORDS, &words.about), (REST, name), (REST, "note")],
                    );
                }
            }
        }
    }
}

/// A row is asked for in any unit of its kind.
fn unit_words(row: &Row) -> String {
    row.unit.dimension().units().flat_map(Unit::written).collect::<Vec<_>>().join(" ")
}

/// Whether a fact carries words of the builder’s own. A slot’s mark is found at its slot.
fn is_of_words(fact: &Fact) -> bool {
    match fact {
        Fact::Note { .. } | Fact::OilFeed { .. } | Fact::Reopened { .. } => true,
        Fact::Route(RouteFact::Said { words, .. }) => !words.is_empty(),
        Fact::Route(RouteFact::Decided { why, .. } | RouteFact::Done { why, .. }) => {
            !why.is_empty()
        }
        _ => false,
    }
}

/// Whether an entry is the latest word on its subject.
fn holds(book: &Book, build: &BuildId, entry: &Entry) -> bool {
    let latest = entry.fact.subject().and_then(|subject| book.current(build, &subject));
    latest.is_none_or(|latest| latest.id == entry.id)
}

/// A text short enough for a line of a list.
fn short(text: &str) -> String {
    const MOST: usize = 120;
    match text.char_indices().nth(MOST) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}
