//! The fields of a joint's screen: read against their bounds, kept as they are left, and the answer over them.

use crate::dom::{El, el, follow, text};
use crate::signal::*;
use crate::state::App;
use crate::store::keep;
use pitleaf_core::book::BuildId;
use pitleaf_core::joints::bounds::Plain;
use pitleaf_core::joints::{Range, Refusal, shown, typed};
use pitleaf_core::quantity::{Amount, Bounds, Reading, Rounding, Unit, places_for};
use pitleaf_translated::tr;
use uom::si::f64::{Force, Length, Pressure, ThermodynamicTemperature};

/// Why there is no answer yet.
pub enum Why {
    /// A field is empty, or says beside it what is wrong.
    Missing,
    /// The figures do not go together.
    Refused(String),
}

impl From<Refusal> for Why {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal.to_string())
    }
}

/// What a field takes.
#[derive(Clone, Copy)]
enum Kind {
    Figure(&'static Bounds),
    Spread(&'static Bounds),
    Factor(&'static Plain),
    Count(u16),
    Words,
}

/// One field.
#[derive(Clone, Copy)]
pub struct Field {
    /// What it is kept by, the same in every language.
    id: &'static str,
    label: &'static str,
    kind: Kind,
    /// The text.
    pub typed: RwSignal<String>,
    /// The unit set.
    pub unit: RwSignal<Unit>,
    units: &'static [Unit],
}

/// A field's id and its label: what it is kept by, and what it is called on the screen.
pub type Named = (&'static str, &'static str);

/// What fills fields in: a name, and the text and unit for each field.
pub type Presets = Vec<(String, Vec<(Field, String, Option<Unit>)>)>;

/// A field's id with its text and unit, as kept.
type Kept = Vec<(String, String, Unit)>;

fn key(name: &str) -> String {
    format!("pitleaf.form.{name}")
}

/// The key of a form whose figures are written down as those of one engine.
fn key_of_build(name: &str, build: &BuildId) -> String {
    format!("{} {}", key(name), build.0)
}

/// Puts a figure into another screen's field, where it stands when that is opened.
pub fn hand_over(name: &str, id: &str, text: String, unit: Unit) {
    let mut kept: Kept = keep::get(&key(name)).unwrap_or_default();
    kept.retain(|(old, ..)| old != id);
    kept.push((id.to_owned(), text, unit));
    keep::set(&key(name), &kept);
}

/// The fields of one screen.
pub struct Form {
    key: String,
    kept: Kept,
    fields: Vec<Field>,
}

impl Form {
    /// The form of a screen, as it was left.
    pub fn of(name: &str) -> Self {
        Self::at(key(name))
    }

    /// The form of a screen for the build in hand, as it was left for that. What was typed while none was
    /// open goes to the one opened then.
    pub fn of_build(name: &str, app: App) -> Self {
        let Some(build) = untrack(|| app.build()) else { return Self::of(name) };
        let mut form = Self::at(key_of_build(name, &build));
        if form.kept.is_empty() {
            form.kept = Self::of(name).kept;
            keep::forget(&key(name));
        }
        form
    }

    fn at(key: String) -> Self {
        let kept = keep::get(&key).unwrap_or_default();
        Self { key, kept, fields: Vec::new() }
    }

    fn field(
        &mut self,
        (id, label): Named,
        kind: Kind,
        units: &'static [Unit],
        start: &str,
    ) -> Field {
        // Before fields had ids they were kept by their labels.
        let kept =
            [id, label].into_iter().find_map(|key| self.kept.iter().find(|old| old.0 == key));
        let first = units.first().copied().unwrap_or(Unit::Millimetre);
        let unit = kept.map(|kept| kept.2).filter(|unit| units.contains(unit)).unwrap_or(first);
        let text = kept.map_or_else(|| start.to_owned(), |kept| kept.1.clone());
        let (typed, unit) = (RwSignal::new(text), RwSignal::new(unit));
        let field = Field { id, label, kind, typed, unit, units };
        self.fields.push(field);
        field
    }

    /// A figure with a unit.
    pub fn figure(
        &mut self,
        named: Named,
        bounds: &'static Bounds,
        units: &'static [Unit],
        start: &str,
    ) -> Field {
        self.field(named, Kind::Figure(bounds), units, start)
    }

    /// One figure with a unit, or least and greatest.
    pub fn spread(
        &mut self,
        named: Named,
        bounds: &'static Bounds,
        units: &'static [Unit],
        start: &str,
    ) -> Field {
        self.field(named, Kind::Spread(bounds), units, start)
    }

    /// A plain number, or least and greatest.
    pub fn factor(&mut self, named: Named, bounds: &'static Plain, start: &str) -> Field {
        self.field(named, Kind::Factor(bounds), &[], start)
    }

    /// A whole number.
    pub fn count(&mut self, named: Named, most: u16, start: &str) -> Field {
        self.field(named, Kind::Count(most), &[], start)
    }

    /// Words, or a choice.
    pub fn words(&mut self, named: Named, start: &str) -> Field {
        self.field(named, Kind::Words, &[], start)
    }

    /// Rows of figures, with the unit of all of them.
    pub fn rows(&mut self, named: Named, units: &'static [Unit]) -> Field {
        self.field(named, Kind::Words, units, "")
    }

    /// Keeps every field from now on; gives the fields for the answer.
    pub fn keep(self) -> Vec<Field> {
        let (key, fields) = (self.key, self.fields);
        let kept = fields.clone();
        follow(move || {
            let texts: Kept = kept
                .iter()
                .map(|field| (field.id.to_owned(), field.typed.get(), field.unit.get()))
                .collect();
            keep::set(&key, &texts);
        });
        fields
    }
}

impl Field {
    /// The text, as typed.
    pub fn text(self) -> String {
        self.typed.get()
    }

    /// The text, where there is any.
    pub fn given(self) -> Result<String, Why> {
        let words = self.text().trim().to_owned();
        if words.is_empty() { Err(Why::Missing) } else { Ok(words) }
    }

    /// Whether anything stands in it.
    pub fn is_given(self) -> bool {
        self.typed.with(|typed| !typed.trim().is_empty())
    }

    fn ends(self) -> Result<(Amount, Amount), Refusal> {
        let (text, unit) = (self.typed.get(), self.unit.get());
        match self.kind {
            Kind::Spread(bounds) => typed::range(&text, unit, bounds),
            Kind::Figure(bounds) => {
                let amount = Reading::read(&text, unit, bounds)?.amount();
                Ok((amount, amount))
            }
            _ => Ok((Amount::whole(0, unit), Amount::whole(0, unit))),
        }
    }

    /// The amount.
    pub fn amount(self) -> Result<Amount, Why> {
        self.ends().map(|ends| ends.0).map_err(|_| Why::Missing)
    }

    /// The amount as a quantity: `field.of(Amount::torque)`.
    pub fn of<Q>(self, quantity: impl Fn(Amount) -> Option<Q>) -> Result<Q, Why> {
        quantity(self.amount()?).ok_or(Why::Missing)
    }

    /// A length.
    pub fn length(self) -> Result<Length, Why> {
        self.of(Amount::length)
    }

    fn range<Q: Copy + PartialOrd>(
        self,
        quantity: impl Fn(Amount) -> Option<Q>,
    ) -> Result<Range<Q>, Why> {
        let (least, greatest) = self.ends().map_err(|_| Why::Missing)?;
        let ends = quantity(least).zip(quantity(greatest));
        ends.and_then(|(least, greatest)| Range::new(least, greatest)).ok_or(Why::Missing)
    }

    /// A range of forces.
    pub fn forces(self) -> Result<Range<Force>, Why> {
        self.range(Amount::force)
    }

    /// A range of pressures or stresses.
    pub fn pressures(self) -> Result<Range<Pressure>, Why> {
        self.range(Amount::pressure)
    }

    /// A range of lengths.
    pub fn lengths(self) -> Result<Range<Length>, Why> {
        self.range(Amount::length)
    }

    /// A range of temperatures.
    pub fn temperatures(self) -> Result<Range<ThermodynamicTemperature>, Why> {
        self.range(Amount::temperature)
    }

    /// A range of plain numbers.
    pub fn factors(self) -> Result<Range<f64>, Why> {
        match self.kind {
            Kind::Factor(bounds) => {
                typed::plain(&self.typed.get(), bounds).map_err(|_| Why::Missing)
            }
            _ => Err(Why::Missing),
        }
    }

    /// The greater end of a plain number.
    pub fn factor(self) -> Result<f64, Why> {
        self.factors().map(Range::greatest)
    }

    /// The count.
    pub fn counted(self) -> Result<u16, Why> {
        match self.kind {
            Kind::Count(most) => typed::count(&self.typed.get(), most).map_err(|_| Why::Missing),
            _ => Err(Why::Missing),
        }
    }

    /// What is wrong with it, if anything was typed.
    fn fault(self) -> Option<String> {
        if !self.is_given() {
            return None;
        }
        let refusal = match self.kind {
            Kind::Figure(_) | Kind::Spread(_) => self.ends().err(),
            Kind::Factor(bounds) => typed::plain(&self.typed.get(), bounds).err(),
            Kind::Count(most) => typed::count(&self.typed.get(), most).err(),
            Kind::Words => None,
        };
        refusal.map(|refusal| refusal.to_string())
    }

    /// What it takes, or what was typed in another unit.
    fn beside(self) -> String {
        match self.kind {
            Kind::Figure(bounds) | Kind::Spread(bounds) if !self.is_given() => {
                shown::bounds(bounds, self.unit.get())
            }
            Kind::Figure(bounds) => self.converted(bounds).unwrap_or_default(),
            Kind::Spread(_) => self.spread_converted().unwrap_or_default(),
            Kind::Factor(bounds) => shown::plain_bounds(bounds),
            Kind::Count(_) | Kind::Words => String::new(),
        }
    }

    fn converted(self, bounds: &'static Bounds) -> Option<String> {
        let reading = Reading::read(&self.typed.get(), self.unit.get(), bounds).ok()?;
        let other = *self.units.iter().find(|unit| **unit != reading.unit())?;
        let places = places_for(reading.step(), other).min(5);
        let figure = reading.amount().show(other, places, Rounding::Nearest);
        Some(format!("= {figure} {}", other.symbol()))
    }

    fn spread_converted(self) -> Option<String> {
        let (least, greatest) = self.ends().ok()?;
        let other = *self.units.iter().find(|unit| **unit != self.unit.get())?;
        let range = Range::new(least.value(other), greatest.value(other))?;
        Some(format!("= {} {}", shown::plain_range(range), other.symbol()))
    }

    /// The field with its unit and the line beside it.
    pub fn el(self) -> El {
        let keyboard = match self.kind {
            Kind::Figure(_) => "decimal",
            Kind::Count(_) => "numeric",
            _ => "text",
        };
        let id = format!("hint-{}", self.id);
        let input = el("input")
            .attrs(&[("type", "text"), ("inputmode", keyboard), ("autocomplete", "off")])
            .attr("aria-describedby", &id)
            .class(if matches!(self.kind, Kind::Words) { "" } else { "figures" })
            .attr_live("aria-invalid", move || self.fault().map(|_| "true".to_owned()))
            .bound(self.typed);
        let mut row = el("div")
            .class("joint-field")
            .with(el("label").with(text("span", "", self.label)).with(input));
        match self.units {
            [] => {}
            [only] => row = row.with(text("span", "joint-unit", only.symbol())),
            units => row = row.with(self.unit_select(units)),
        }
        let line = el("p")
            .attr_live("class", move || {
                Some(if self.fault().is_some() { "hint fault" } else { "hint" }.to_owned())
            })
            .attr("id", &id)
            .text_live(move || self.fault().unwrap_or_else(|| self.beside()));
        row.with(line)
    }

    /// The field as rows, with their unit.
    pub fn rows_el(self) -> El {
        let rows = el("textarea")
            .attrs(&[("rows", "4"), ("autocomplete", "off"), ("spellcheck", "false")])
            .class("figures")
            .bound_rows(self.typed);
        el("div")
            .class("joint-field")
            .with(el("label").with(text("span", "", self.label)).with(rows))
            .with(self.unit_select(self.units))
    }

    fn unit_select(self, units: &'static [Unit]) -> El {
        let options = units.iter().map(|&unit| {
            text("option", "", unit.symbol())
                .attr("value", unit.symbol())
                .attr_live("selected", move || (self.unit.get() == unit).then(String::new))
        });
        el("select").attr("aria-label", &tr!("Unit of {}", self.label)).with_all(options).on(
            "change",
            move |event| {
                if let Some(unit) = Unit::named(&event_target_value(&event)) {
                    self.unit.set(unit);
                }
            },
        )
    }

    /// A choice in place of a line to type: of each, the word that is kept and the name that is shown.
    pub fn choice(self, choices: impl IntoIterator<Item = (String, String)>) -> El {
        let options = choices.into_iter().map(|(word, name)| {
            let option = text("option", "", &name).attr("value", &word);
            // A name is what older versions kept.
            option.attr_live("selected", move || {
                self.typed.with(|typed| *typed == word || *typed == name).then(String::new)
            })
        });
        let none = text("option", "", tr!("choose…")).attr("value", "");
        let select = el("select")
            .attr("aria-label", self.label)
            .with(none)
            .with_all(options)
            .on("change", move |event| self.typed.set(event_target_value(&event)));
        el("label").class("joint-choice").with(text("span", "", self.label)).with(select)
    }
}

/// Choices whose names are the same in every language: kept as they are shown.
pub fn alike(names: impl Iterator<Item = String>) -> impl Iterator<Item = (String, String)> {
    names.map(|name| (name.clone(), name))
}

/// A choice that fills fields in.
pub fn fill_from(label: &str, presets: Presets) -> El {
    let options: Vec<El> =
        presets.iter().map(|(name, _)| text("option", "", name).attr("value", name)).collect();
    let none = text("option", "", tr!("choose, or type below")).attr("value", "");
    let select = el("select").attr("aria-label", label).with(none).with_all(options).on(
        "change",
        move |event| {
            let wanted = event_target_value(&event);
            for (field, text, unit) in presets
                .iter()
                .find(|(name, _)| *name == wanted)
                .into_iter()
                .flat_map(|(_, fields)| fields)
            {
                field.typed.set(text.clone());
                if let Some(unit) = unit {
                    field.unit.set(*unit);
                }
            }
        },
    );
    el("label").class("joint-choice").with(text("span", "", label)).with(select)
}

/// The answer over the fields; what is still to be given, or what does not go together.
pub fn answer(fields: &[Field], made: Result<Vec<El>, Why>) -> Vec<El> {
    let words = match made {
        Ok(made) => return made,
        Err(Why::Refused(words)) => words,
        Err(Why::Missing) => fields
            .iter()
            .find(|field| field.fault().is_some())
            .map(|field| tr!("{}: see the line beside it.", field.label))
            .or_else(|| {
                let empty = fields.iter().find(|field| !field.is_given())?;
                Some(tr!("Still to give: {}.", empty.label))
            })
            .unwrap_or_default(),
    };
    vec![text("p", "refusal empty", &words).attr("role", "status")]
}
