//! Writes a prescription as the file that [`super::read()`] reads.

use crate::names::{Named, name};
use crate::toml_text::{list, quoted};
use chrono::NaiveDate;
use exercises::catalogue::Dose;
use exercises::catalogue::kind::DoseField;
use exercises::plan::{Activity, Aftercare, Complaint, Item, Load, Pattern, Prescription, Schedule, Side, StanceBaseline};
use exercises::time::MinuteOfDay;

/// The prescription as a file. What a file does not have is left out: the revisions of exercises, and of an alarm that is cleared its sign
/// and day. Each exercise is named as `exercise` says.
pub fn write(prescription: &Prescription, exercise: impl Fn(&Item) -> String) -> String {
    in_lines(prescription, None, exercise)
}

/// The prescription of a set as a file, as [`write()`] writes it, without dates: days of a plan that begins on `start` are numbered, and a
/// rhythm is counted from the day on which it is prescribed.
pub fn write_set(prescription: &Prescription, start: NaiveDate, exercise: impl Fn(&Item) -> String) -> String {
    in_lines(prescription, Some(start), exercise)
}

fn in_lines(prescription: &Prescription, start: Option<NaiveDate>, exercise: impl Fn(&Item) -> String) -> String {
    let Prescription { review, age, absent, confirmed, items, complaints, activities, baselines, aftercare, cleared } =
        prescription;
    let mut out = Lines { text: String::new(), start };
    out.put("review", review);
    out.word("age", age.as_ref());
    if !absent.is_empty() {
        out.put("absent", list(&absent.iter().map(|risk| name(risk).to_owned()).collect::<Vec<_>>()));
    }
    out.date("confirmed", *confirmed);
    if !aftercare.is_empty() {
        out.put("aftercare", list(&aftercare.iter().map(line_of_aftercare).collect::<Vec<_>>()));
    }
    if !cleared.is_empty() {
        out.put("clear", list(&cleared.iter().map(|alarm| alarm.id.to_string()).collect::<Vec<_>>()));
    }
    complaints.iter().for_each(|complaint| out.complaint(complaint));
    activities.iter().for_each(|activity| out.activity(activity));
    items.iter().for_each(|item| out.item(item, &exercise(item)));
    baselines.iter().for_each(|baseline| out.stance(baseline));
    out.text
}

fn line_of_aftercare(line: &Aftercare) -> String {
    match line {
        Aftercare::Own(text) => text.clone(),
        stock => name(stock).to_owned(),
    }
}

/// A file as far as it is written.
struct Lines {
    text: String,
    /// Of a set: the day from which its days are numbered.
    start: Option<NaiveDate>,
}

impl Lines {
    fn put(&mut self, field: &str, value: impl std::fmt::Display) {
        self.text += &format!("{field} = {value}\n");
    }

    fn word<T: Named + PartialEq>(&mut self, field: &str, value: Option<&T>) {
        value.into_iter().for_each(|value| self.put(field, quoted(name(value))));
    }

    fn date(&mut self, field: &str, day: Option<NaiveDate>) {
        day.into_iter().for_each(|day| self.put(field, day));
    }

    fn entry(&mut self, list: &str) {
        self.text += &format!("\n[[{list}]]\n");
    }

    fn side(&mut self, side: Side) {
        self.word("side", Some(&side).filter(|side| **side != Side::Neither));
    }

    fn complaint(&mut self, Complaint { id, name, side, pain }: &Complaint) {
        self.entry("complaint");
        self.put("number", id.0);
        self.put("name", quoted(name));
        self.side(*side);
        pain.iter().for_each(|pain| self.put("pain", pain.points()));
    }

    fn activity(&mut self, Activity { id, name, rating }: &Activity) {
        self.entry("activity");
        self.put("number", id.0);
        self.put("name", quoted(name));
        rating.iter().for_each(|rating| self.put("rating", rating.points()));
    }

    fn item(&mut self, item: &Item, named: &str) {
        let Item {
            id,
            exercise: _,
            content: _,
            rung,
            side,
            dose,
            load,
            effort,
            with_helper,
            schedule,
            phase,
            pain_limit,
            may_step,
            serves,
            note,
        } = item;
        self.entry("item");
        self.put("number", id.0);
        self.put("exercise", quoted(named));
        rung.iter().for_each(|rung| self.put("rung", quoted(rung.as_str())));
        self.side(*side);
        self.put(dose.kind().rules().name(), written(dose));
        load.iter().for_each(|load| self.put("load", load_written(*load)));
        effort.iter().for_each(|effort| self.put("effort", effort.points()));
        if *with_helper {
            self.put("helper", true);
        }
        self.schedule(schedule);
        self.day_of_plan("first", phase.first);
        self.day_of_plan("last", phase.last);
        self.put("pain_limit", pain_limit.points());
        self.put("may_step", may_step);
        serves.iter().for_each(|complaint| self.put("serves", complaint.0));
        if !note.is_empty() {
            self.put("note", quoted(note));
        }
    }

    fn schedule(&mut self, Schedule { days, pattern }: &Schedule) {
        let time = |minute: &u16| quoted(&MinuteOfDay::on_the_clock(*minute).to_string());
        match pattern {
            Pattern::Every { minutes, from, to } => {
                self.put("every", format!("{{ minutes = {minutes}, from = {}, to = {} }}", time(from), time(to)));
            }
            Pattern::At { times } => self.put("at", format!("[{}]", times.iter().map(time).collect::<Vec<_>>().join(", "))),
            Pattern::AsNeeded => return self.put("as_needed", true),
        }
        self.put("days", super::days::written(*days, self.start.is_none()));
    }

    /// A day of the plan: its date, or in a set its number.
    fn day_of_plan(&mut self, field: &str, day: Option<NaiveDate>) {
        match (day, self.start) {
            (Some(day), Some(start)) => self.put(field, day.signed_duration_since(start).num_days() + 1),
            (day, _) => self.date(field, day),
        }
    }

    fn stance(&mut self, StanceBaseline { taken, leg, surface, eyes, tenths, capped }: &StanceBaseline) {
        self.entry("stance");
        self.word("leg", Some(leg));
        self.word("surface", Some(surface));
        self.word("eyes", Some(eyes));
        self.put("seconds", format!("{}.{}", tenths / 10, tenths % 10));
        self.put("capped", capped);
        self.date("taken", *taken);
    }
}

/// A load as a table.
fn load_written(load: Load) -> String {
    match load {
        Load::Weight(weight) => format!("{{ kg = {} }}", weight.kilograms()),
        Load::Band(band) => format!("{{ band = {} }}", quoted(name(&band))),
    }
}

/// A dose as its kind names its fields in plan files.
fn written(dose: &Dose) -> String {
    let all: Vec<(&DoseField, i64)> = dose.fields().iter().zip(dose.values()).collect();
    let together = all.chunk_by(|(one, _), (next, _)| one.group.is_some() && one.group == next.group);
    let fields: Vec<String> = together
        .map(|fields| match fields {
            [(field, value)] if field.group.is_none() => format!("{} = {value}", field.plan_key),
            fields => {
                let values: Vec<String> = fields.iter().map(|(_, value)| value.to_string()).collect();
                format!("{} = [{}]", fields[0].0.group.unwrap_or_default(), values.join(", "))
            }
        })
        .collect();
    format!("{{ {} }}", fields.join(", "))
}
