//! When an item is due, as FHIR can say it.
//!
//! In R4 times of day and days of the week may not stand beside a frequency. So fixed times on fixed days of the week are written as such;
//! everything else is a frequency, and the words beside it say the times. Nothing is ever written that would mean other days.

use super::elements::{CodeableConcept, Period, Repeat, Timing};
use chrono::{NaiveDate, Weekday};
use exercises::catalogue::kind::WorkForm;
use exercises::plan::{Days, Item, Weekdays};
use exercises::time::{DAY_MINUTES, MinuteOfDay};

/// The days from which to which an item is to be done, in a plan with these first and last days.
pub(super) fn bounds(item: &Item, first: NaiveDate, last: NaiveDate) -> Period {
    let start = [item.phase.first, item.schedule.days.begin(), Some(first)].into_iter().flatten().max();
    period(start.unwrap_or(first), item.phase.ends(Some(last)).unwrap_or(last))
}

/// A period; one that would end before it begins has no end.
pub(super) fn period(start: NaiveDate, end: NaiveDate) -> Period {
    Period { start: Some(start.to_string()), end: (start <= end).then(|| end.to_string()) }
}

/// When an item is due; `None` if it is done as needed. `said` says it in words.
pub(super) fn timing(item: &Item, bounds: Period, said: String) -> Option<Timing> {
    if item.schedule.is_as_needed() {
        return None;
    }
    let minutes = item.schedule.pattern.minutes();
    let times = minutes.len() as u32;
    let every = |frequency: u32, period: u32, period_unit| Repeat {
        frequency: Some(frequency),
        period: Some(period),
        period_unit,
        ..Repeat::default()
    };
    let repeat = match item.schedule.days {
        Days::On(days) => match fixed(days, &minutes) {
            Some(fixed) => fixed,
            None => every(times * days.iter().count() as u32, 1, "wk"),
        },
        Days::EveryNth { n, .. } => every(times, n.into(), "d"),
        Days::TimesAWeek { n, .. } => every(times * u32::from(n), 1, "wk"),
    };
    let repeat = Repeat { bounds_period: Some(bounds), ..repeat };
    Some(Timing { repeat: Some(with_length(repeat, item)), code: Some(CodeableConcept::said(said)) })
}

/// These times on these days of the week. Times after midnight belong to the next day, which can only be said where that is the same:
/// on every day.
fn fixed(days: Weekdays, minutes: &[u16]) -> Option<Repeat> {
    let over_midnight = minutes.last().is_some_and(|last| *last >= DAY_MINUTES);
    if over_midnight && days != Weekdays::ALL {
        return None;
    }
    let mut times: Vec<u16> = minutes.iter().map(|minute| minute % DAY_MINUTES).collect();
    times.sort_unstable();
    let time_of_day = times.iter().map(|minute| format!("{}:00", MinuteOfDay::on_the_clock(*minute))).collect();
    // Without days of the week it is every day.
    let day_of_week = if days == Weekdays::ALL { Vec::new() } else { days.iter().map(day).collect() };
    Some(Repeat { day_of_week, time_of_day, ..Repeat::default() })
}

/// How long one session lasts with its rests, where the dose is a time. It is not the length of one hold: at each time of the day the
/// whole session is done.
fn with_length(repeat: Repeat, item: &Item) -> Repeat {
    if item.dose.kind().form() != WorkForm::Timed {
        return repeat;
    }
    let seconds = item.dose.total_s(item.side.sidedness());
    let (duration, duration_unit) = if seconds.is_multiple_of(60) { (seconds / 60, "min") } else { (seconds, "s") };
    Repeat { duration: Some(duration), duration_unit, ..repeat }
}

fn day(day: Weekday) -> &'static str {
    match day {
        Weekday::Mon => "mon",
        Weekday::Tue => "tue",
        Weekday::Wed => "wed",
        Weekday::Thu => "thu",
        Weekday::Fri => "fri",
        Weekday::Sat => "sat",
        Weekday::Sun => "sun",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::catalogue::{Dose, ExerciseId, Tempo};
    use exercises::id::ItemId;
    use exercises::plan::{Pattern, Phase, Schedule};

    fn date(day: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 3, day).expect("a date")
    }

    fn item(days: Days, pattern: Pattern) -> Item {
        let dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
        Item::new(ItemId(1), ExerciseId::new("sit-tall").expect("an id"), dose, Schedule { days, pattern })
    }

    /// What is written of an item in a plan from 1 to 30 March 2027; its times in words are "words".
    fn written(item: &Item) -> serde_json::Value {
        let timing = timing(item, bounds(item, date(1), date(30)), "words".to_owned());
        let timing = serde_json::json!(timing);
        assert!(timing.is_null() || timing["code"]["text"] == "words");
        timing["repeat"].clone()
    }

    fn whole_plan() -> serde_json::Value {
        serde_json::json!({ "start": "2027-03-01", "end": "2027-03-30" })
    }

    #[test]
    fn every_hour_of_working_days_is_nine_times_on_five_days() {
        let hourly = Pattern::Every { minutes: 60, from: 540, to: 1020 };
        let repeat = written(&item(Days::WORKDAYS, hourly));
        assert_eq!(repeat["dayOfWeek"], serde_json::json!(["mon", "tue", "wed", "thu", "fri"]));
        let times: Vec<String> = (9..=17).map(|hour| format!("{hour:02}:00:00")).collect();
        assert_eq!(repeat["timeOfDay"], serde_json::json!(times));
        assert_eq!((&repeat["frequency"], &repeat["period"]), (&serde_json::Value::Null, &serde_json::Value::Null));
        assert_eq!((&repeat["duration"], &repeat["durationUnit"]), (&50.into(), &"s".into()), "with the rests");
    }

    #[test]
    fn every_day_needs_no_days_of_the_week() {
        let repeat = written(&item(Days::ALL, Pattern::At { times: vec![480, 1080] }));
        let expected = serde_json::json!({
            "boundsPeriod": whole_plan(), "duration": 50, "durationUnit": "s", "timeOfDay": ["08:00:00", "18:00:00"],
        });
        assert_eq!(repeat, expected);
    }

    #[test]
    fn other_rhythms_are_a_frequency_without_times() {
        let times = || Pattern::At { times: vec![480, 1080] };
        let of = |days| {
            let repeat = written(&item(days, times()));
            assert_eq!((&repeat["timeOfDay"], &repeat["dayOfWeek"]), (&serde_json::Value::Null, &serde_json::Value::Null));
            (repeat["frequency"].clone(), repeat["period"].clone(), repeat["periodUnit"].clone())
        };
        assert_eq!(of(Days::EveryNth { n: 3, from: date(2) }), (2.into(), 3.into(), "d".into()));
        assert_eq!(of(Days::TimesAWeek { n: 3, from: date(2) }), (6.into(), 1.into(), "wk".into()));
    }

    #[test]
    fn times_after_midnight_are_told_by_the_clock_only_where_every_day_is_the_same() {
        let night = || Pattern::Every { minutes: 120, from: 1320, to: 120 };
        let repeat = written(&item(Days::ALL, night()));
        assert_eq!(repeat["timeOfDay"], serde_json::json!(["00:00:00", "02:00:00", "22:00:00"]));
        let repeat = written(&item(Days::WORKDAYS, night()));
        assert_eq!((&repeat["frequency"], &repeat["period"], &repeat["periodUnit"]), (&15.into(), &1.into(), &"wk".into()));
        assert_eq!(repeat["dayOfWeek"], serde_json::Value::Null);
    }

    #[test]
    fn as_needed_has_no_timing() {
        assert_eq!(
            written(&Item { schedule: Schedule::AS_NEEDED, ..item(Days::ALL, Pattern::AsNeeded) }),
            serde_json::Value::Null
        );
    }

    #[test]
    fn a_phase_and_the_first_day_of_a_rhythm_are_its_bounds() {
        let of = |item: &Item| written(item)["boundsPeriod"].clone();
        let pattern = || Pattern::At { times: vec![480] };
        let phase = Phase { first: Some(date(8)), last: Some(date(14)) };
        let expected = serde_json::json!({ "start": "2027-03-08", "end": "2027-03-14" });
        assert_eq!(of(&Item { phase, ..item(Days::ALL, pattern()) }), expected);
        let every_other = item(Days::EveryNth { n: 2, from: date(5) }, pattern());
        assert_eq!(of(&every_other), serde_json::json!({ "start": "2027-03-05", "end": "2027-03-30" }));
        let late = Phase { first: Some(date(31)), last: None };
        assert_eq!(of(&Item { phase: late, ..item(Days::ALL, pattern()) }), serde_json::json!({ "start": "2027-03-31" }));
    }

    #[test]
    fn only_a_dose_of_time_has_a_length() {
        let dose = Dose::Reps { sets: 3, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 0, down_s: 2 } };
        let times = || Pattern::At { times: vec![480] };
        assert_eq!(written(&Item { dose, ..item(Days::ALL, times()) })["duration"], serde_json::Value::Null);
        let walk = Item { dose: Dose::Go { minutes: 20, effort: 4 }, ..item(Days::ALL, times()) };
        assert_eq!((&written(&walk)["duration"], &written(&walk)["durationUnit"]), (&20.into(), &"min".into()));
    }
}
