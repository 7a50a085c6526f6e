//! Checks whether a plan may be issued by the clinic and taken by the patient's copy.
//!
//! Both sides run the same check, so that a card made by another program cannot prescribe what these rules forbid.

use super::stance::{StanceField, days_reached, newest};
use super::{
    Aftercare, AgeBand, Days, Item, MAX_AFTERCARE, MAX_AFTERCARE_LINES, MAX_BASELINES, MAX_CLEARED, MAX_ITEMS, MAX_NAME,
    MAX_NAMED, MAX_NOTE, MAX_PHONE, Pattern, Phase, Plan, Risk, is_phone,
};
use crate::catalogue::{Catalogue, Exercise, Eyes, Surface};
use crate::id::ItemId;
use crate::time::DAY_BEGINS;
use chrono::NaiveDate;

/// With a shorter stance time than this, eyes open on a firm floor, no balance item may be prescribed for practice without
/// supervision; in tenths of a second. A proposal, drawn from Vellas 1997 (JAGS 45:735-8), where being unable to stand 5 s
/// went with injurious falls.
pub const MIN_STANCE_TENTHS: u16 = 50;
/// Stance time with eyes open on a firm floor that is needed before softer surfaces or closed eyes may be prescribed, in
/// tenths of a second (a proposal of ours).
pub const GATE_TENTHS: u16 = 300;
/// Number of days on which that stance time must have been reached (a proposal of ours).
pub const GATE_DAYS: usize = 2;

/// A reason why a plan may not be issued or taken.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Problem {
    /// The plan has no item.
    NoItem,
    /// More items than [`MAX_ITEMS`], complaints or activities than [`MAX_NAMED`], stance times than [`MAX_BASELINES`], lines
    /// than [`MAX_AFTERCARE_LINES`] or cleared alarms than [`MAX_CLEARED`].
    TooMany,
    /// A text is empty or longer than allowed, or holds a control character.
    Text {
        /// Which text it is.
        what: TextPlace,
        /// The largest number of characters allowed.
        most: usize,
    },
    /// Two items, two complaints or two activities have the same number.
    SameNumber,
    /// The review date is not after the day of issue or is more than a year after it, or the plan begins after its day of
    /// issue.
    ReviewDate,
    /// The catalogue has no such exercise.
    UnknownExercise(ItemId, String),
    /// The catalogue has the exercise, but not the revision of its content that the item names.
    OtherContent(ItemId, String),
    /// The exercise has no such rung. The text is empty if the exercise has ladders and the item names no rung.
    UnknownRung(ItemId, String),
    /// The dose does not fit the exercise's kind, or is out of range.
    Dose(ItemId),
    /// The item has a side although the exercise has none, or no side although the exercise is done for each side.
    Side(ItemId),
    /// The schedule has no day or no time, or a time or interval is out of range.
    Schedule(ItemId),
    /// The patient chooses the days of the item, and it is due more than once a day, or before the person's day begins at 3:00.
    OnceADay(ItemId),
    /// The item has a load or an effort that an exercise of its kind cannot have.
    Load(ItemId),
    /// The item's days do not lie within the plan, or its last day is before its first one.
    Phase(ItemId),
    /// The item is the same exercise as the second one, on the same side, and both are to be done on the same days. Without any days
    /// of their own such items may stand beside each other.
    Overlap(ItemId, ItemId),
    /// The item serves a complaint that the plan does not have.
    Serves(ItemId),
    /// Balance is prescribed without the patient's age band.
    AgeMissing,
    /// One run of this item has more than this many seconds of work on one side.
    TooMuchWork(ItemId, u32),
    /// Balance is prescribed, but the clinician has not ticked these risks as absent.
    NotTicked(Vec<Risk>),
    /// Balance is prescribed, but the list of absent risks was carried over from an earlier visit, the day of which is given, and not
    /// confirmed on the day of issue.
    NotConfirmed(NaiveDate),
    /// Balance on one leg is prescribed without a stance time with eyes open on the firm floor for each side prescribed.
    NoStanceBaseline(ItemId),
    /// That stance time is under 5 s ([`MIN_STANCE_TENTHS`]).
    StanceTooShort(ItemId),
    /// A softer surface or closed eyes, before 30 s were reached on two days ([`GATE_TENTHS`], [`GATE_DAYS`]).
    GateClosed(ItemId),
    /// A soft surface together with closed eyes for a patient of 65 years or more.
    SoftAndClosed(ItemId),
}

/// Which text of a plan a problem is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum TextPlace {
    /// The clinic's name.
    Clinic,
    /// The clinic's telephone number.
    Phone,
    /// A complaint's name.
    Complaint,
    /// An activity's name.
    Activity,
    /// An item's note.
    Note,
    /// A line of aftercare that the clinician wrote.
    Aftercare,
}

/// Every reason why `plan` may not be issued or taken; empty if there is no such reason.
pub fn problems(plan: &Plan, catalogue: &Catalogue) -> Vec<Problem> {
    let mut found = whole(plan);
    for item in &plan.prescription.items {
        match catalogue.get(&item.exercise) {
            None => found.push(Problem::UnknownExercise(item.id, item.exercise.to_string())),
            Some(exercise) if exercise.revision != item.content => {
                found.push(Problem::OtherContent(item.id, item.exercise.to_string()));
            }
            Some(exercise) => found.extend(of_item(plan, item, exercise)),
        }
    }
    let balances =
        plan.prescription.items.iter().any(|item| catalogue.get(&item.exercise).is_some_and(|e| e.kind.is_balance()));
    if balances {
        found.extend(screening(plan, catalogue));
    }
    found
}

fn whole(plan: &Plan) -> Vec<Problem> {
    let mut found = Vec::new();
    if plan.prescription.items.is_empty() {
        found.push(Problem::NoItem);
    }
    if plan.prescription.items.len() > MAX_ITEMS
        || plan.prescription.complaints.len() > MAX_NAMED
        || plan.prescription.activities.len() > MAX_NAMED
    {
        found.push(Problem::TooMany);
    }
    if plan.prescription.baselines.len() > MAX_BASELINES
        || plan.prescription.aftercare.len() > MAX_AFTERCARE_LINES
        || plan.prescription.cleared.len() > MAX_CLEARED
    {
        found.push(Problem::TooMany);
    }
    found.extend(texts(plan));
    let twice = twice(plan.prescription.items.iter().map(|item| item.id.0))
        || twice(plan.prescription.complaints.iter().map(|complaint| complaint.id.0))
        || twice(plan.prescription.activities.iter().map(|activity| activity.id.0));
    if twice {
        found.push(Problem::SameNumber);
    }
    let ahead = plan.prescription.review.signed_duration_since(plan.header.issued).num_days();
    if !(1..=366).contains(&ahead) || plan.header.start > plan.header.issued {
        found.push(Problem::ReviewDate);
    }
    found
}

fn twice(numbers: impl Iterator<Item = u8>) -> bool {
    let mut seen = [false; 256];
    numbers.into_iter().any(|number| std::mem::replace(&mut seen[usize::from(number)], true))
}

fn texts(plan: &Plan) -> Vec<Problem> {
    let fits = |text: &str, most: usize, least: usize| {
        (least..=most).contains(&text.chars().count()) && !text.chars().any(char::is_control)
    };
    let mut found = Vec::new();
    let mut need = |ok: bool, what, most| {
        if !ok {
            found.push(Problem::Text { what, most });
        }
    };
    need(fits(&plan.header.clinic, MAX_NAME, 1), TextPlace::Clinic, MAX_NAME);
    need(plan.header.phone.as_deref().is_none_or(is_phone), TextPlace::Phone, MAX_PHONE);
    need(plan.prescription.complaints.iter().all(|c| fits(&c.name, MAX_NAME, 1)), TextPlace::Complaint, MAX_NAME);
    need(plan.prescription.activities.iter().all(|a| fits(&a.name, MAX_NAME, 1)), TextPlace::Activity, MAX_NAME);
    need(plan.prescription.items.iter().all(|item| fits(&item.note, MAX_NOTE, 0)), TextPlace::Note, MAX_NOTE);
    let own_lines_fit = plan.prescription.aftercare.iter().all(|line| match line {
        Aftercare::Own(text) => fits(text, MAX_AFTERCARE, 1),
        _ => true,
    });
    need(own_lines_fit, TextPlace::Aftercare, MAX_AFTERCARE);
    found
}

fn of_item(plan: &Plan, item: &Item, exercise: &Exercise) -> Vec<Problem> {
    let mut found = Vec::new();
    if item.dose.kind() != exercise.kind || item.dose.check().is_err() {
        found.push(Problem::Dose(item.id));
    }
    if let Some(most_s) = exercise.kind.rules().most_work_s().filter(|most| item.dose.work_s() > *most) {
        found.push(Problem::TooMuchWork(item.id, most_s));
    }
    if !item.side.fits(exercise.level(item.rung.as_ref()).side()) {
        found.push(Problem::Side(item.id));
    }
    if !schedule_fits(item) {
        found.push(Problem::Schedule(item.id));
    } else if item.schedule.days.are_chosen() && !is_once_a_day(&item.schedule.pattern) {
        found.push(Problem::OnceADay(item.id));
    }
    let loaded = item.load.is_some() && !Item::may_have_load(item.dose.kind());
    if loaded || item.effort.is_some() && !Item::may_have_effort(item.dose) {
        found.push(Problem::Load(item.id));
    }
    if !phase_fits(plan, item) {
        found.push(Problem::Phase(item.id));
    }
    found.extend(overlapping(plan, item).map(|other| Problem::Overlap(item.id, other)));
    if item.serves.is_some_and(|served| plan.prescription.complaints.iter().all(|complaint| complaint.id != served)) {
        found.push(Problem::Serves(item.id));
    }
    match &item.rung {
        Some(rung) => match exercise.rung(rung) {
            None => found.push(Problem::UnknownRung(item.id, rung.to_string())),
            Some(rung) if exercise.kind.is_balance() => {
                found.extend(stance(plan, item, rung.surface.unwrap_or(Surface::Firm), rung.eyes.unwrap_or(Eyes::Open)));
            }
            Some(_) => {}
        },
        None if !exercise.ladders.is_empty() => found.push(Problem::UnknownRung(item.id, String::new())),
        None if exercise.kind.is_balance() => found.extend(stance(plan, item, Surface::Firm, Eyes::Open)),
        None => {}
    }
    found
}

fn phase_fits(plan: &Plan, item: &Item) -> bool {
    let within = |day: &NaiveDate| (plan.header.start..=plan.prescription.review).contains(day);
    let Phase { first, last } = item.phase;
    let in_order = first.zip(last).is_none_or(|(first, last)| first <= last);
    in_order && [first, last].iter().flatten().all(within)
}

/// The item before `item` that is the same exercise on the same side on the same days, if at least one has days of its own.
fn overlapping(plan: &Plan, item: &Item) -> Option<ItemId> {
    let before = plan.prescription.items.iter().take_while(|other| other.id != item.id);
    let same = |other: &&Item| (&other.exercise, other.side) == (&item.exercise, item.side);
    let both = |other: &&Item| other.phase.overlaps(item.phase) && !(other.phase.is_whole() && item.phase.is_whole());
    before.filter(same).find(both).map(|other| other.id)
}

fn schedule_fits(item: &Item) -> bool {
    let fits = |minute: u16| minute < crate::time::DAY_MINUTES;
    let pattern = match &item.schedule.pattern {
        Pattern::Every { minutes, from, to } => (15..=720).contains(minutes) && fits(*from) && fits(*to),
        Pattern::At { times } => {
            (1..=12).contains(&times.len()) && times.iter().all(|time| fits(*time)) && times.windows(2).all(|w| w[0] < w[1])
        }
        Pattern::AsNeeded => item.schedule.days == Days::ALL,
    };
    pattern && item.schedule.days.are_valid()
}

/// Where the patient chooses the days, an item is due once on each, at a time that is of that day of the person's.
fn is_once_a_day(pattern: &Pattern) -> bool {
    matches!(pattern, Pattern::At { times } if times.len() == 1 && times[0] >= DAY_BEGINS)
}

/// The stance times that are required before practice without supervision. For each leg the newest time counts, even if an
/// earlier one was better. The time needed for softer surfaces and closed eyes must have been reached on [`GATE_DAYS`] days.
fn stance(plan: &Plan, item: &Item, surface: Surface, eyes: Eyes) -> Vec<Problem> {
    let mut found = Vec::new();
    let harder = surface != Surface::Firm || eyes == Eyes::Closed;
    let dated = plan.dated_baselines();
    for leg in item.side.in_turn().iter().flatten().filter(|_| item.dose.kind().is_by_leg()) {
        match newest(&dated, StanceField::firm_open(*leg)) {
            None => found.push(Problem::NoStanceBaseline(item.id)),
            Some(newest) if newest.tenths < MIN_STANCE_TENTHS => found.push(Problem::StanceTooShort(item.id)),
            Some(_) if harder && days_reached(&dated, *leg, GATE_TENTHS, []) < GATE_DAYS => {
                found.push(Problem::GateClosed(item.id));
            }
            Some(_) => {}
        }
    }
    let old_enough = plan.prescription.age.is_some_and(|age| age >= AgeBand::From65);
    if surface != Surface::Firm && eyes == Eyes::Closed && old_enough {
        found.push(Problem::SoftAndClosed(item.id));
    }
    found.dedup();
    found
}

/// The age band and the ticked risks that balance requires. Severe loss of sight matters only if an item has the eyes closed;
/// every other risk is a reason against any balance practice without supervision.
fn screening(plan: &Plan, catalogue: &Catalogue) -> Vec<Problem> {
    let mut found = Vec::new();
    if plan.prescription.age.is_none() {
        found.push(Problem::AgeMissing);
    }
    let eyes_closed = plan.prescription.items.iter().any(|item| {
        let rung = item.rung.as_ref().and_then(|rung| catalogue.get(&item.exercise)?.rung(rung));
        rung.is_some_and(|rung| rung.eyes == Some(Eyes::Closed))
    });
    let asked = |risk: &Risk| *risk != Risk::SevereVisualLoss || eyes_closed;
    let missing: Vec<Risk> =
        Risk::ALL.into_iter().filter(asked).filter(|risk| !plan.prescription.absent.contains(risk)).collect();
    if !missing.is_empty() {
        found.push(Problem::NotTicked(missing));
    }
    let earlier = plan.prescription.confirmed.filter(|day| *day != plan.header.issued);
    found.extend(earlier.map(Problem::NotConfirmed));
    found
}

#[cfg(test)]
mod tests;
