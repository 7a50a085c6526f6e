//! Plans in `everything.json`.

use super::{PlanData, clock, moment};
use crate::names::name;
use exercises::catalogue::{Dose, Exercise, Lang, Rung};
use exercises::id::ItemId;
use exercises::plan::{Aftercare, Days, Item, Load, Pattern, Plan, Schedule, Weekdays};
use exercises::score::Score;
use serde_json::{Value, json};
use std::collections::BTreeSet;

pub(super) fn plan(held: &PlanData<'_>, lang: Lang) -> Value {
    let plan = &held.followed.plan;
    let agreed = held.followed.history.taken.last().map(|taken| agreed(&taken.agreed)).unwrap_or_default();
    let named: BTreeSet<_> =
        held.revisions.values().flat_map(|plan| plan.prescription.items.iter().map(|item| &item.exercise)).collect();
    let exercises = named.into_iter().filter_map(|id| held.catalogue.get(id)).map(|one| exercise(one, lang));
    json!({
        "id": plan.header.id.to_string(),
        "clinic": plan.header.clinic,
        "fingerprint": held.fingerprint,
        "start": plan.header.start.to_string(),
        "follows": plan.header.revision,
        "agreed": agreed,
        "revisions": held.revisions.values().map(|plan| revision(held, plan)).collect::<Vec<Value>>(),
        "exercises": exercises.collect::<Vec<Value>>(),
    })
}

/// Items with the schedules that the patient agreed to.
pub(super) fn agreed(all: &[(ItemId, Schedule)]) -> Vec<Value> {
    all.iter().map(|(item, schedule)| json!({ "item": item.0, "schedule": self::schedule(schedule) })).collect()
}

fn revision(held: &PlanData<'_>, plan: &Plan) -> Value {
    let taken = held.followed.history.taken.iter().filter(|taken| taken.revision == plan.header.revision);
    let complaint = |one: &exercises::plan::Complaint| json!({ "id": one.id.0, "name": one.name, "side": name(&one.side), "pain": one.pain.map(Score::points) });
    let activity = |one: &exercises::plan::Activity| json!({ "id": one.id.0, "name": one.name, "rating": one.rating.map(Score::points) });
    json!({
        "revision": plan.header.revision,
        "taken": taken.map(|taken| moment(taken.at)).collect::<Vec<_>>(),
        "clinic": plan.header.clinic,
        "phone": plan.header.phone,
        "issued": plan.header.issued.to_string(),
        "review": plan.prescription.review.to_string(),
        "age": plan.prescription.age.as_ref().map(name),
        "considered_absent": plan.prescription.absent.iter().map(name).collect::<Vec<_>>(),
        "confirmed": plan.prescription.confirmed.map(|day| day.to_string()),
        "items": plan.prescription.items.iter().map(item).collect::<Vec<Value>>(),
        "complaints": plan.prescription.complaints.iter().map(complaint).collect::<Vec<Value>>(),
        "activities": plan.prescription.activities.iter().map(activity).collect::<Vec<Value>>(),
        "stance": plan.prescription.baselines.iter().map(stance).collect::<Vec<Value>>(),
        "aftercare": plan.prescription.aftercare.iter().map(aftercare).collect::<Vec<_>>(),
        "cleared": plan.prescription.cleared.iter().map(|one| one.id.to_string()).collect::<Vec<_>>(),
    })
}

/// An item; what was added later is left out where the card does not have it.
fn item(item: &Item) -> Value {
    let mut all = json!({
        "id": item.id.0,
        "exercise": item.exercise.to_string(),
        "exercise_revision": item.content,
        "rung": item.rung.as_ref().map(ToString::to_string),
        "side": name(&item.side),
        "dose": dose(item.dose),
        "schedule": schedule(&item.schedule),
        "pain_limit": item.pain_limit.points(),
        "may_step": item.may_step,
        "serves": item.serves.map(|complaint| complaint.0),
        "note": item.note,
    });
    let days = [("first", item.phase.first), ("last", item.phase.last)];
    if let Some(of) = item.load {
        all["load"] = load(of);
    }
    if let Some(effort) = item.effort {
        all["effort"] = effort.points().into();
    }
    if item.with_helper {
        all["with_helper"] = true.into();
    }
    days.iter().for_each(|(name, day)| day.iter().for_each(|day| all[*name] = day.to_string().into()));
    all
}

/// What an item is done against.
fn load(load: Load) -> Value {
    match load {
        Load::Weight(weight) => json!({ "kilograms": weight.kilograms() }),
        Load::Band(band) => json!({ "band": name(&band) }),
    }
}

/// A stance time; `taken` is left out if the card does not give the day.
fn stance(one: &exercises::plan::StanceBaseline) -> Value {
    let mut stance = json!({
        "leg": name(&one.leg),
        "surface": name(&one.surface),
        "eyes": name(&one.eyes),
        "seconds": f64::from(one.tenths) / 10.0,
        "lower_bound": one.capped,
    });
    if let Some(taken) = one.taken {
        stance["taken"] = taken.to_string().into();
    }
    stance
}

/// A line of the fixed list by its name; a line that the clinician wrote as it is.
fn aftercare(line: &Aftercare) -> &str {
    match line {
        Aftercare::Own(text) => text,
        known => name(known),
    }
}

pub(super) fn dose(dose: Dose) -> Value {
    let fields = dose.fields().iter().zip(dose.values()).map(|(field, value)| (field.key, value.into()));
    let all = std::iter::once(("kind", Value::from(dose.kind().rules().name()))).chain(fields);
    Value::Object(all.map(|(key, value)| (key.to_owned(), value)).collect())
}

pub(super) fn schedule(schedule: &Schedule) -> Value {
    let mut all = match &schedule.pattern {
        Pattern::Every { minutes, from, to } => {
            json!({ "days": [], "every_minutes": minutes, "from": clock(*from), "to": clock(*to) })
        }
        Pattern::At { times } => {
            json!({ "days": [], "at": times.iter().map(|time| clock(*time)).collect::<Vec<_>>() })
        }
        Pattern::AsNeeded => return json!({ "days": [], "as_needed": true }),
    };
    match schedule.days {
        Days::On(days) => all["days"] = weekdays(days).into(),
        Days::EveryNth { n, from } => {
            all["every_days"] = n.into();
            all["counted_from"] = from.to_string().into();
        }
        Days::TimesAWeek { n, from } => {
            all["times_a_week"] = n.into();
            all["counted_from"] = from.to_string().into();
        }
    }
    all
}

fn weekdays(days: Weekdays) -> Vec<&'static str> {
    const NAMES: [&str; 7] = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
    days.iter().map(|day| NAMES[day.num_days_from_monday() as usize]).collect()
}

fn exercise(exercise: &Exercise, lang: Lang) -> Value {
    let Some(text) = exercise.text(lang) else { return json!({ "id": exercise.id.to_string() }) };
    json!({
        "id": exercise.id.to_string(),
        "revision": exercise.revision,
        "name": text.name,
        "purpose": text.purpose,
        "set_up": text.set_up,
        "steps": text.steps,
        "should_feel": text.should_feel,
        "should_not_feel": text.should_not_feel,
        "mistakes": text.mistakes,
        "cautions": text.cautions,
        "stop_signs": text.stop_signs,
        "levels": exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| level(rung, lang)).collect::<Vec<_>>(),
    })
}

/// A level; its set-up and steps are left out if they are the exercise's.
fn level(rung: &Rung, lang: Lang) -> Value {
    let mut level = json!({ "id": rung.id.to_string() });
    if let Some(text) = rung.text(lang) {
        level["name"] = text.name.clone().into();
        level["change"] = text.change.clone().into();
        if let Some(set_up) = &text.set_up {
            level["set_up"] = set_up.clone().into();
        }
        if let Some(steps) = &text.steps {
            level["steps"] = steps.clone().into();
        }
    }
    level
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;

    #[test]
    fn days_that_are_counted_have_names_of_their_own() {
        let from = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date");
        let of = |days| schedule(&Schedule { days, pattern: Pattern::At { times: vec![1080] } });
        assert_eq!(of(Days::WORKDAYS)["days"].as_array().map(Vec::len), Some(5));
        let every = json!({ "days": [], "at": ["18:00"], "every_days": 2, "counted_from": "2026-11-25" });
        assert_eq!(of(Days::EveryNth { n: 2, from }), every);
        let chosen = json!({ "days": [], "at": ["18:00"], "times_a_week": 3, "counted_from": "2026-11-25" });
        assert_eq!(of(Days::TimesAWeek { n: 3, from }), chosen);
        assert_eq!(schedule(&Schedule::AS_NEEDED), json!({ "days": [], "as_needed": true }));
    }
}
