//! What the patient said: warning signs, pain, named activities.

use super::{About, Code, Measure, Part, Reviewed, Unit, Value};
use chrono::NaiveDate;
use exercises::plan::days::monday;
use exercises::review::ReviewAlarm;
use exercises::score::Score;
use exercises::time::DayNumber;
use std::collections::BTreeMap;

fn score(of: Score) -> Value {
    Value::whole(of.points(), Unit::Score)
}

pub(super) fn alarms(of: Reviewed<'_>) -> Vec<Measure> {
    of.review.alarms.iter().map(|alarm| one_alarm(of, alarm)).collect()
}

fn one_alarm(of: Reviewed<'_>, alarm: &ReviewAlarm) -> Measure {
    let mut parts = vec![Part::new(Code::AlarmCleared, Value::Yes(alarm.cleared))];
    if alarm.said_mistaken {
        parts.push(Part::new(Code::AlarmMistaken, Value::Yes(true)));
    }
    if alarm.wrong_clock {
        parts.push(Part::new(Code::DayNotKnown, Value::Yes(true)));
    }
    parts.extend(alarm.circumstances.iter().map(|one| Part::new(Code::CircumstanceOf, Value::One((*one).into()))));
    if let Some((rated, limit)) = alarm.above {
        parts.extend([Part::new(Code::PainRated, score(rated)), Part::new(Code::PainLimit, score(limit))]);
    }
    let kind = Value::One(alarm.trouble.into());
    let measure = match alarm.item {
        Some(item) => of.of_item(Code::Alarm, item, kind),
        None => Measure::new(Code::Alarm, About::Plan, kind),
    };
    let days = (!alarm.wrong_clock).then_some((alarm.date, alarm.date));
    Measure { parts, days, which: alarm.id.to_string(), ..measure }
}

/// Each morning as it was rated: a median of ratings would be no rating.
pub(super) fn mornings(of: Reviewed<'_>) -> Vec<Measure> {
    let all = of.review.pain.iter().flat_map(|series| series.points.iter().map(move |point| (series.complaint, *point)));
    all.map(|(complaint, (day, rated))| {
        let date = of.date(day);
        let measure = Measure::new(Code::MorningPain, About::Complaint(complaint), score(rated));
        Measure { which: format!("complaint-{complaint}/{date}"), ..measure }.on(date)
    })
    .collect()
}

/// The highest rating of each week.
pub(super) fn during(of: Reviewed<'_>) -> Vec<Measure> {
    let mut all = Vec::new();
    for series in &of.review.during {
        for (begins, points) in by_week(of, &series.points) {
            let Some(highest) = points.iter().copied().max() else { continue };
            let parts = vec![Part::count(Code::DaysRated, points.len() as u32)];
            let measure = of.of_item(Code::DuringPain, series.item, score(highest)).in_week(&of, begins);
            all.push(Measure { parts, ..measure });
        }
    }
    all
}

fn by_week(of: Reviewed<'_>, points: &[(DayNumber, Score)]) -> BTreeMap<NaiveDate, Vec<Score>> {
    let mut weeks: BTreeMap<NaiveDate, Vec<Score>> = BTreeMap::new();
    for (day, rated) in points {
        weeks.entry(monday(of.date(*day))).or_default().push(*rated);
    }
    weeks
}

pub(super) fn activities(of: Reviewed<'_>) -> Vec<Measure> {
    let all =
        of.review.activities.iter().flat_map(|series| series.points.iter().map(move |point| (series.activity, *point)));
    all.map(|(activity, (day, rated))| {
        let date = of.date(day);
        let measure = Measure::new(Code::Activity, About::Activity(activity), score(rated));
        Measure { which: format!("activity-{activity}/{date}"), ..measure }.on(date)
    })
    .collect()
}
