//! Is it working: times of balance and results of tests by repetitions.

use super::{About, Amount, Choice, Code, Measure, Part, Reviewed, Unit, Value};
use crate::names::name;
use exercises::catalogue::ExerciseId;
use exercises::review::{CountDay, CountSeries, StanceDay, StanceSeries};

/// The longest time of each leg, day and set of conditions. One that ended at the target is a lower bound, and never a bare number.
pub(super) fn stance(of: Reviewed<'_>) -> Vec<Measure> {
    of.review.balance.iter().flat_map(|series| series.days.iter().map(move |day| one_day(of, series, day))).collect()
}

fn one_day(of: Reviewed<'_>, series: &StanceSeries, day: &StanceDay) -> Measure {
    let best = tenths(day.best_s);
    let value = if day.capped { Value::AtLeast(best, Unit::Seconds) } else { Value::Amount(best, Unit::Seconds) };
    let code = if series.leg.is_some() { Code::OneLegStance } else { Code::Stance };
    let median = Value::Amount(tenths(day.median_s), Unit::Seconds);
    let parts = [
        Part::count(Code::Trials, day.trials),
        Part::new(Code::StanceMedian, median),
        Part::new(Code::SurfaceStoodOn, Value::One(series.surface.into())),
        Part::new(Code::PhonePlace, Value::One(series.set_up.into())),
    ];
    let level = series.rung.as_ref().map(ToString::to_string).unwrap_or_default();
    let conditions = [name(&series.surface), name(&series.eyes), name(&series.set_up)].join("/");
    let leg = series.leg.as_ref().map_or("both", name);
    Measure {
        item: of.item_with(&series.exercise, series.rung.as_ref(), series.leg),
        exercise: Some(series.exercise.clone()),
        level: series.rung.clone(),
        side: series.leg,
        parts: parts.to_vec(),
        method: Some(Choice::from(series.eyes)),
        which: format!("{}/{level}/{leg}/{conditions}/{}", series.exercise, of.date(day.day)),
        ..Measure::new(code, About::Exercise, value)
    }
    .on(of.date(day.day))
}

pub(super) fn counts(of: Reviewed<'_>) -> Vec<Measure> {
    of.review.counts.iter().flat_map(|series| series.days.iter().map(move |day| one_count(of, series, *day))).collect()
}

fn one_count(of: Reviewed<'_>, series: &CountSeries, day: CountDay) -> Measure {
    let level = series.rung.as_ref().map(ToString::to_string).unwrap_or_default();
    let exercise: &ExerciseId = &series.exercise;
    Measure {
        item: of.item_with(exercise, series.rung.as_ref(), None),
        exercise: Some(exercise.clone()),
        level: series.rung.clone(),
        parts: vec![Part::new(Code::TestSeconds, Value::whole(series.seconds, Unit::Seconds))],
        which: format!("{exercise}/{level}/{}/{}", series.seconds, of.date(day.day)),
        ..Measure::new(Code::Repetitions, About::Exercise, Value::whole(day.count, Unit::One))
    }
    .on(of.date(day.day))
}

/// Rounded to a tenth of a second: timed by hand, no more is known.
fn tenths(seconds: f64) -> Amount {
    Amount::Tenths((seconds * 10.0).round() as i32)
}
