//! Was it done: by week, the longest gap, as needed, and the reasons for skipping.

use super::{About, Amount, Choice, Code, Measure, Part, PartCode, Reviewed, Unit, Value};
use exercises::review::{ItemWeek, item_weeks};

pub(super) fn weeks(of: Reviewed<'_>) -> Vec<Measure> {
    item_weeks(of.review).into_iter().map(|week| one_week(of, &week)).collect()
}

fn one_week(of: Reviewed<'_>, week: &ItemWeek) -> Measure {
    let slots = &week.slots;
    let share = slots.done_permille().map(|tenths| Value::Amount(Amount::Tenths(tenths.cast_signed()), Unit::Percent));
    let known = [
        (Code::Planned, slots.owed),
        (Code::Done, slots.done),
        (Code::Partial, slots.partly),
        (Code::NotRecorded, slots.unrecorded),
        (Code::DayOff, slots.day_off),
        (Code::Paused, slots.paused),
    ];
    // Planned and done are always said, so that the share can be worked out again.
    let parts = known.into_iter().enumerate().filter(|(place, (_, count))| *place < 2 || *count > 0);
    let parts = parts.map(|(_, (code, count))| Part::count(code, count)).collect();
    let measure = of.of_item(Code::Adherence, week.item, share.unwrap_or(Value::NonePlanned));
    Measure { parts, ..measure.in_week(&of, week.monday) }
}

pub(super) fn gaps(of: Reviewed<'_>) -> Vec<Measure> {
    let gaps = of.review.adherence.iter().filter_map(|item| Some((item.item, item.longest_gap?)));
    let one = |(item, gap): (_, exercises::adherence::Gap)| {
        let days = Value::whole(gap.days, Unit::Days);
        of.of_item(Code::LongestGap, item, days).over(of.date(gap.from), of.date(gap.until))
    };
    gaps.map(one).collect()
}

pub(super) fn as_needed(of: Reviewed<'_>) -> Vec<Measure> {
    let (start, last) = (of.review.start, of.date(of.review.until));
    let items = of.review.adherence.iter().filter_map(|item| Some((item.item, item.as_needed?)));
    items
        .map(|(item, done)| of.of_item(Code::AsNeeded, item, Value::whole(done.runs, Unit::One)).over(start, last))
        .collect()
}

pub(super) fn reasons(of: Reviewed<'_>) -> Option<Measure> {
    let given = of.review.barriers.iter();
    let parts: Vec<Part> = given
        .map(|(reason, times)| Part {
            code: PartCode::Chosen(Choice::from(*reason)),
            value: Value::whole(*times, Unit::One),
        })
        .collect();
    let (start, last) = (of.review.start, of.date(of.review.until));
    let all = Measure { parts, ..Measure::new(Code::Reasons, About::Plan, Value::Parts) }.over(start, last);
    (!all.parts.is_empty()).then_some(all)
}
