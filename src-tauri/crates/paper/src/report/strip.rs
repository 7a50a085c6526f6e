//! The days of one item as a small chart: a column for each day, as high as the share that was done.

use crate::mark::{Mark, circle, filled, line, outlined, rectangle};
use crate::style::{ALARM, KNOT, SOFT};
use chrono::NaiveDate;
use exercises::history::Mark as Outcome;
use exercises::id::ItemId;
use exercises::review::DayString;

/// The most days that are shown, the last ones.
const MOST_DAYS: usize = 84;
/// Height of a column, greatest width of a day, and room between two.
const COLUMN: (f32, f32, f32) = (9.0, 6.5, 0.9);
/// Height of the whole chart.
pub(super) const HEIGHT: f32 = COLUMN.0 + 3.0;

/// What became of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Day {
    /// Nothing was planned.
    Free,
    /// All of it was done.
    Full,
    /// This share was done.
    Part(f32),
    /// Nothing was done.
    Nothing,
    /// Nothing was recorded on it.
    Unseen,
    /// It was a day off.
    Off,
    /// An alarm paused it.
    Paused,
}

/// The days of an item, with the first and the last date; `None` if it was never planned.
pub(super) fn days(all: &[DayString], item: ItemId) -> Option<(Vec<Day>, NaiveDate, NaiveDate)> {
    let last = &all[all.len().saturating_sub(MOST_DAYS)..];
    let told: Vec<Day> = last.iter().map(|day| of(day, item)).collect();
    let from = told.iter().position(|day| *day != Day::Free)?;
    Some((told[from..].to_vec(), last[from].date, last.last()?.date))
}

fn of(day: &DayString, item: ItemId) -> Day {
    let marks: Vec<Outcome> = day.knots.iter().filter(|knot| knot.item == item).map(|knot| knot.mark).collect();
    let share = |mark: &Outcome| match mark {
        Outcome::Done => Some(1.0),
        Outcome::Partly(share) => Some(share.done as f32 / share.of.max(1) as f32),
        Outcome::Skipped(_) | Outcome::NotDone => Some(0.0),
        Outcome::DayOff(_) | Outcome::Paused | Outcome::Due | Outcome::ToCome | Outcome::NoSuchHour => None,
    };
    let shares: Vec<f32> = marks.iter().filter_map(share).collect();
    let done: f32 = shares.iter().sum();
    match (shares.len(), &marks) {
        (0, marks) if marks.iter().any(|mark| matches!(mark, Outcome::Paused)) => Day::Paused,
        (0, marks) if marks.iter().any(|mark| matches!(mark, Outcome::DayOff(_))) => Day::Off,
        (0, _) => Day::Free,
        (n, _) if done >= n as f32 => Day::Full,
        (n, _) if done > 0.0 => Day::Part(done / n as f32),
        _ if !day.seen => Day::Unseen,
        _ => Day::Nothing,
    }
}

/// The width that the days take of `room`.
pub(super) fn width(days: usize, room: f32) -> f32 {
    days as f32 * each(days, room)
}

fn each(days: usize, room: f32) -> f32 {
    (room / days.max(1) as f32).min(COLUMN.1)
}

/// The chart with its upper left corner at `(x, y)`. Each kind of day has a shape of its own, which is told apart in print without colour.
pub(super) fn marks(days: &[Day], (x, y): (f32, f32), room: f32) -> Vec<Mark> {
    let each = each(days.len(), room);
    let (wide, base) = (each - COLUMN.2, y + COLUMN.0);
    let mut marks = vec![line((x, base), (x + width(days.len(), room), base), SOFT, 0.5)];
    for (n, day) in days.iter().enumerate() {
        let left = x + n as f32 * each;
        let middle = left + wide / 2.0;
        match day {
            Day::Free => {}
            Day::Full => marks.push(filled(rectangle(left, y, wide, COLUMN.0), KNOT)),
            Day::Part(share) => {
                let high = (COLUMN.0 * share).max(1.2);
                marks.push(filled(rectangle(left, base - high, wide, high), KNOT));
                marks.push(outlined(rectangle(left, y, wide, COLUMN.0), KNOT, 0.4));
            }
            Day::Nothing => marks.push(outlined(rectangle(left, y, wide, COLUMN.0), SOFT, 0.4)),
            Day::Unseen => marks.push(filled(circle(middle, base - 1.6, 0.8), SOFT)),
            Day::Off => marks.push(line((left, base - COLUMN.0 / 2.0), (left + wide, base - COLUMN.0 / 2.0), SOFT, 0.8)),
            Day::Paused => {
                let (up, down) = (base - COLUMN.0 * 0.7, base - COLUMN.0 * 0.3);
                marks.push(line((left, up), (left + wide, down), ALARM, 0.8));
                marks.push(line((left, down), (left + wide, up), ALARM, 0.8));
            }
        }
    }
    marks
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::log::{Barrier, DayOffReason};
    use exercises::review::Knot;
    use exercises::run::Share;
    use exercises::time::DayNumber;

    fn day(n: u16, seen: bool, marks: &[Outcome]) -> DayString {
        let knot =
            |(number, mark): (usize, &Outcome)| Knot { item: ItemId(1), number: number as u8, minute: 480, mark: *mark };
        let date = NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date") + chrono::Days::new(n.into());
        DayString { day: DayNumber(n), date, seen, knots: marks.iter().enumerate().map(knot).collect() }
    }

    #[test]
    fn a_day_is_as_high_as_the_share_that_was_done() {
        let half = Outcome::Partly(Share { done: 5, of: 10 });
        let all = [
            day(0, true, &[]),
            day(1, true, &[Outcome::Done, Outcome::Done]),
            day(2, true, &[Outcome::Done, Outcome::NotDone]),
            day(3, true, &[half, Outcome::Skipped(Barrier::NoTime)]),
            day(4, true, &[Outcome::NotDone]),
            day(5, false, &[Outcome::NotDone]),
            day(6, false, &[Outcome::DayOff(DayOffReason::Holiday)]),
            day(7, true, &[Outcome::Paused]),
            day(8, true, &[Outcome::Done, Outcome::Paused]),
        ];
        let (told, from, to) = days(&all, ItemId(1)).expect("it was planned");
        let expected =
            [Day::Full, Day::Part(0.5), Day::Part(0.25), Day::Nothing, Day::Unseen, Day::Off, Day::Paused, Day::Full];
        assert_eq!((told.as_slice(), from, to), (&expected[..], all[1].date, all[8].date), "it begins when it is planned");
        assert_eq!(days(&all, ItemId(2)), None);
        let long: Vec<DayString> = (0..400).map(|n| day(n, true, &[Outcome::Done])).collect();
        assert_eq!(days(&long, ItemId(1)).expect("it was planned").0.len(), MOST_DAYS);
    }
}
