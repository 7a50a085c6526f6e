//! Reads a plan from the text of its file.

use crate::fields::{self, Value, Wrong};
use crate::names;
use chrono::NaiveDate;
use exercises::alarm::ClearedAlarm;
use exercises::file_fault::{FaultKind, FileFault, PlanFault};
use exercises::id::{ActivityId, ComplaintId};
use exercises::plan::stance::MAX_STANCE_TENTHS;
use exercises::plan::{Activity, Aftercare, Complaint, Prescription, Side, StanceBaseline};
use exercises::score::Score;

const FIELDS: [&str; 10] =
    ["review", "age", "absent", "confirmed", "aftercare", "clear", "complaint", "activity", "item", "stance"];

/// Reads a prescription. The exercises' revisions are 0 until the plan is issued; `today` is the day of issue.
///
/// # Errors
/// The first [`FileFault`] that is found in the file. The ranges of doses and the rules for balance are not checked here;
/// `exercises::plan::check` does that.
pub fn read(text: &str, today: NaiveDate) -> Result<Prescription, FileFault> {
    let file = fields::toml(text)?;
    let mut prescription = prescription(&file, today).map_err(|wrong| wrong.in_text(text))?;
    prescription.clean_texts();
    Ok(prescription)
}

fn prescription(file: &Value, today: NaiveDate) -> Result<Prescription, Wrong> {
    let file = file.fields()?;
    file.only(&FIELDS)?;
    Ok(Prescription {
        review: file.required("review")?.date()?,
        age: file.maybe("age", Value::named)?,
        absent: file.each("absent", Value::named)?.into_iter().collect(),
        confirmed: file.maybe("confirmed", |day| past(day, today))?,
        items: file.each("item", |item| super::item::item(item, today))?,
        complaints: file.each("complaint", complaint)?,
        activities: file.each("activity", activity)?,
        baselines: file.each("stance", |taken| stance(taken, today))?,
        aftercare: file.each("aftercare", line_of_aftercare)?,
        cleared: file.each("clear", alarm_name)?,
    })
}

fn complaint(value: &Value) -> Result<Complaint, Wrong> {
    let complaint = value.fields()?;
    complaint.only(&["number", "name", "side", "pain"])?;
    Ok(Complaint {
        id: ComplaintId(complaint.required("number")?.whole(u8::MAX)?),
        name: complaint.required("name")?.text()?.to_owned(),
        side: complaint.maybe("side", Value::named)?.unwrap_or(Side::Neither),
        pain: complaint.maybe("pain", |pain| pain.whole(Score::MOST))?,
    })
}

fn activity(value: &Value) -> Result<Activity, Wrong> {
    let activity = value.fields()?;
    activity.only(&["number", "name", "rating"])?;
    Ok(Activity {
        id: ActivityId(activity.required("number")?.whole(u8::MAX)?),
        name: activity.required("name")?.text()?.to_owned(),
        rating: activity.maybe("rating", |rating| rating.whole(Score::MOST))?,
    })
}

fn stance(value: &Value, today: NaiveDate) -> Result<StanceBaseline, Wrong> {
    let stance = value.fields()?;
    stance.only(&["leg", "surface", "eyes", "seconds", "capped", "taken"])?;
    let seconds = stance.required("seconds")?.number((MAX_STANCE_TENTHS / 10).into())?;
    let taken = stance.maybe("taken", |taken| past(taken, today))?;
    Ok(StanceBaseline {
        taken,
        leg: stance.required("leg")?.named()?,
        surface: stance.required("surface")?.named()?,
        eyes: stance.required("eyes")?.named()?,
        tenths: (seconds * 10.0).round() as u16,
        capped: stance.maybe("capped", Value::truth)?.unwrap_or(false),
    })
}

/// A day that is not after today.
fn past(value: &Value, today: NaiveDate) -> Result<NaiveDate, Wrong> {
    match value.date()? {
        day if day > today => Err(value.wrong(FaultKind::DateAfterToday { today })),
        day => Ok(day),
    }
}

fn line_of_aftercare(value: &Value) -> Result<Aftercare, Wrong> {
    let line = value.text()?;
    Ok(names::find(line).unwrap_or_else(|| Aftercare::Own(line.to_owned())))
}

/// An alarm by its name, or by its entry as files of version 1 name it.
fn alarm_name(value: &Value) -> Result<ClearedAlarm, Wrong> {
    let name = value.text()?;
    let entry = || name.parse().map(ClearedAlarm::of_entry);
    let id = name.parse().map(|id| ClearedAlarm { id, seen: None });
    id.or_else(|_| entry()).map_err(|_| value.wrong(FaultKind::Plan(PlanFault::AlarmName)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::catalogue::IdFault;
    use exercises::catalogue::Kind;
    use exercises::file_fault::ValueKind;
    use exercises::plan::Pattern;

    fn today() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date")
    }

    fn example() -> String {
        super::super::example(NaiveDate::from_ymd_opt(2027, 1, 6).expect("a date"))
    }

    #[test]
    fn the_example_is_valid() {
        let plan = read(&example(), today()).expect("the example reads");
        assert_eq!((plan.items.len(), plan.complaints.len(), plan.baselines.len()), (3, 2, 2));
        assert_eq!(plan.items[0].schedule.pattern, Pattern::Every { minutes: 60, from: 540, to: 1020 });
    }

    /// Checks that the example with one change is refused at the changed line, for that field and reason.
    #[track_caller]
    fn refused(from: &str, to: &str, field: &str, kind: FaultKind) {
        let text = example().replacen(from, to, 1);
        let line = 1 + example()[..example().find(from).expect("part of the example")].matches('\n').count() as u32;
        assert_eq!(read(&text, today()), Err(FileFault { line, field: field.into(), kind }), "{to}");
    }

    fn unknown_word(found: &str, allowed: &[&str]) -> FaultKind {
        FaultKind::UnknownWord { found: found.into(), allowed: allowed.iter().map(|word| (*word).to_owned()).collect() }
    }

    #[test]
    fn a_wrong_word_is_named_with_its_line_and_field() {
        let bands = ["under-18", "18-39", "40-49", "50-59", "60-64", "65-69", "70-79", "80-plus"];
        refused("\"40-49\"", "\"old\"", "age", unknown_word("old", &bands));
        refused(
            "side = \"left\"",
            "side = \"up\"",
            "side",
            unknown_word("up", &["left", "right", "both", "neither", "alternating"]),
        );
        refused("\"every-day\"", "\"weekends\"", "days", FaultKind::Plan(PlanFault::Days));
        refused("\"every-day\"", "5", "days", FaultKind::Plan(PlanFault::Days));
        refused("from = \"09:00\"", "from = \"9 o'clock\"", "from", FaultKind::TimeOfDay);
        refused("clear = []", "clear = [\"x\"]", "clear", FaultKind::Plan(PlanFault::AlarmName));
        refused("\"heel-raise\"", "\"Heel raise\"", "exercise", FaultKind::Id(IdFault::NotKebabCase));
        let fault = read(&example().replacen("\"numb-feet\"", "\"cold-feet\"", 1), today()).expect_err("no such risk");
        assert!(matches!(fault.kind, FaultKind::UnknownWord { found, .. } if found == "cold-feet"));
    }

    #[test]
    fn a_wrong_number_or_day_is_named_with_its_line_and_field() {
        let byte = || FaultKind::NumberRange { least: 0, most: 255 };
        refused("repetitions = 3", "repetitions = -3", "repetitions", byte());
        refused("repetitions = 3", "repetitions = 10000", "repetitions", byte());
        let three = FaultKind::WrongKind { expected: ValueKind::ListOfNumbers(3), found: ValueKind::List };
        refused("tempo = [2, 1, 3]", "tempo = [2, 1]", "tempo", three);
        let whole = FaultKind::WrongKind { expected: ValueKind::WholeNumber, found: ValueKind::Number };
        refused("minutes = 60", "minutes = 60.5", "minutes", whole);
        refused("seconds = 12.4", "seconds = 1e9", "seconds", FaultKind::NumberRange { least: 0, most: 600 });
        let late = FaultKind::DateAfterToday { today: today() };
        refused("seconds = 12.4", "taken = 2026-11-26\nseconds = 12.4", "taken", late);
        refused("seconds = 12.4", "taken = \"Monday\"\nseconds = 12.4", "taken", FaultKind::Date);
        refused("review = 2027-01-06", "review = 2027-01-06T08:00:00", "review", FaultKind::Date);
    }

    fn kind_names() -> Vec<&'static str> {
        Kind::ALL.iter().map(|kind| kind.rules().name()).collect()
    }

    #[test]
    fn a_field_that_does_not_exist_is_named_with_those_that_do() {
        let fault = read(&example().replacen("serves = 1", "cures = 1", 1), today()).expect_err("no such field");
        let FaultKind::UnknownField { found, allowed } = fault.kind else { panic!("{fault:?}") };
        assert_eq!(
            (found.as_str(), allowed.len()),
            ("cures", 17 + Kind::ALL.len()),
            "eleven fields, and a dose of each kind: {allowed:?}"
        );
        let broken = read(&example().replacen("[[stance]]", "[[stance]", 1), today()).expect_err("no TOML");
        assert!(matches!(broken.kind, FaultKind::NotToml { .. }) && broken.line > 60, "{broken:?}");
        let missing = |field: &str| FaultKind::MissingField { field: field.into() };
        assert_eq!(read("", today()), Err(FileFault::at(1, missing("review"))));
        // The line of the table in which it is missing is reported.
        let table = "[[stance]]\nleg = \"left\"";
        refused(table, "[[stance]]", "", missing("leg"));
    }

    #[test]
    fn a_stance_time_keeps_the_day_that_the_file_gives() {
        let text = example().replacen("seconds = 12.4", "taken = 2026-11-18\nseconds = 12.4", 1);
        let plan = read(&text, today()).expect("a plan");
        let taken: Vec<_> = plan.baselines.iter().map(|baseline| baseline.taken).collect();
        assert_eq!(taken, [NaiveDate::from_ymd_opt(2026, 11, 18), None], "a file without days is read as it always was");
    }

    #[test]
    fn an_item_has_one_pattern_and_one_dose() {
        let lacks = |from: &str| read(&example().replacen(from, "", 1), today()).expect_err(from).kind;
        let one_of = |fields: &[&str]| FaultKind::OneOfFields { fields: fields.iter().map(|f| (*f).to_owned()).collect() };
        assert_eq!(lacks("at = [\"19:45\"]"), one_of(&["every", "at", "as_needed"]));
        assert_eq!(lacks("hold = { repetitions = 3, seconds = 10, rest = 10 }"), one_of(&kind_names()));
    }
}
