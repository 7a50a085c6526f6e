//! The day as a string from morning to evening, with a row for each slot and one for the present moment.
//!
//! The height of a row depends on its text, so each row defines its own piece of string above and below its knot. The pieces of
//! neighbouring rows join.

use crate::history::Mark;
use crate::id::{ItemId, PlanId};
use crate::slots::SlotRef;
use crate::today::{Head, Today, TodayKnot};

/// One row of the day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayRow {
    /// Minute of the wall clock, from midnight of the day.
    pub minute: u16,
    /// The string above its knot.
    pub above: Segment,
    /// The knot or other sign in the string.
    pub shape: KnotShape,
    /// The string below its knot.
    pub below: Segment,
    /// The slot; `None` for a row that only marks the present moment.
    pub slot: Option<(PlanId, SlotRef)>,
    /// The slot's item.
    pub item: Option<ItemId>,
    /// What happened to the slot, or its present state.
    pub mark: Option<Mark>,
    /// Whether an alarm pauses it.
    pub paused: bool,
}

/// A piece of string.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Segment {
    /// Over: drawn dark.
    Past,
    /// Still to come: drawn pale.
    ToCome,
    /// No string, because the slot was not done.
    Gap,
    /// No string, because the day's string ends here.
    End,
}

/// The sign in the string at a slot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum KnotShape {
    /// A knot: done in full.
    Knot,
    /// A half-tied knot: done in part, with the share done from 0 to 1.
    Half(f64),
    /// An open loop: skipped, with a reason.
    Loop,
    /// A bar across: a day off.
    Bar,
    /// A cross: paused by an alarm.
    Cross,
    /// Nothing: the slot was not done and the string is missing.
    Gap,
    /// A short peg: still to come.
    Peg,
    /// The bob: the present moment.
    Bob,
}

/// The shape of a half-tied knot: a core, and an open loop beside it. Lengths are multiples of the radius of a full knot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfTied {
    /// Radius of the core.
    pub core: f64,
    /// How far the loop reaches to the side, from the core's middle.
    pub reach: f64,
    /// How far the loop opens upward and downward from its middle.
    pub open: f64,
}

/// Radius of the core if almost nothing was done, and by how much it grows until almost everything is done.
const CORE: (f64, f64) = (0.38, 0.34);
/// The same for how far the loop reaches to the side, which shrinks as the knot is tightened.
const REACH: (f64, f64) = (1.5, -0.35);
/// The same for how far the loop opens, which also shrinks.
const OPEN: (f64, f64) = (0.95, -0.3);

/// The shape of a knot for a slot of which `part`, 0 to 1, was done. It always differs visibly from a full knot and from none.
pub fn half_tied(part: f64) -> HalfTied {
    let part = if part.is_finite() { part.clamp(0.0, 1.0) } else { 0.0 };
    let at = |(least, more): (f64, f64)| least + more * part;
    HalfTied { core: at(CORE), reach: at(REACH), open: at(OPEN) }
}

impl KnotShape {
    /// The shape for a slot's mark. The due slot has the bob only if `now` is at that slot.
    fn of(mark: Mark, paused: bool, now: bool) -> KnotShape {
        match mark {
            Mark::Done => KnotShape::Knot,
            Mark::Partly(_) if now => KnotShape::Bob,
            Mark::Partly(share) => KnotShape::Half(f64::from(share.done) / f64::from(share.of.max(1))),
            Mark::Skipped(_) => KnotShape::Loop,
            Mark::DayOff(_) => KnotShape::Bar,
            Mark::Paused => KnotShape::Cross,
            Mark::ToCome | Mark::Due if paused => KnotShape::Cross,
            Mark::Due | Mark::ToCome if now => KnotShape::Bob,
            Mark::ToCome | Mark::Due => KnotShape::Peg,
            Mark::NotDone | Mark::NoSuchHour => KnotShape::Gap,
        }
    }
}

/// The rows of the day, by time. The bob is at the slot that the page is about, or in a row of its own at the present moment.
/// Without slots there are no rows.
pub fn day(today: &Today) -> Vec<DayRow> {
    let due = match &today.head {
        Head::Due { slot, .. } => Some(*slot),
        _ => None,
    };
    let mut rows: Vec<DayRow> = today.string.iter().map(|knot| row(knot, due == Some(knot.slot))).collect();
    if rows.is_empty() {
        return rows;
    }
    if rows.iter().all(|row| row.shape != KnotShape::Bob) {
        let minute = today.now.minute() + over_midnight(today);
        let place = rows.partition_point(|row| row.minute <= minute);
        rows.insert(place, now_row(minute));
    }
    hang(&mut rows);
    rows
}

/// After midnight, while a slot of yesterday is still open, minutes count on beyond 24:00. Returns the minutes to add to the present
/// time.
fn over_midnight(today: &Today) -> u16 {
    let yesterday = today.string.iter().any(|knot| knot.slot.day < today.now.date());
    if yesterday { crate::time::DAY_MINUTES } else { 0 }
}

fn row(knot: &TodayKnot, now: bool) -> DayRow {
    DayRow {
        minute: knot.minute,
        above: Segment::Past,
        shape: KnotShape::of(knot.mark, knot.paused, now),
        below: Segment::Past,
        slot: Some((knot.plan, knot.slot)),
        item: Some(knot.slot.item),
        mark: Some(knot.mark),
        paused: knot.paused,
    }
}

fn now_row(minute: u16) -> DayRow {
    DayRow {
        minute,
        above: Segment::Past,
        shape: KnotShape::Bob,
        below: Segment::Past,
        slot: None,
        item: None,
        mark: None,
        paused: false,
    }
}

/// Sets the pieces of string of each row: dark above the bob, pale below it, missing where a slot was not done.
fn hang(rows: &mut [DayRow]) {
    let bob = rows.iter().position(|row| row.shape == KnotShape::Bob).unwrap_or(rows.len());
    let last = rows.len() - 1;
    for (place, row) in rows.iter_mut().enumerate() {
        let side = |past: bool| if past { Segment::Past } else { Segment::ToCome };
        (row.above, row.below) = match row.shape {
            KnotShape::Gap => (Segment::Gap, Segment::Gap),
            _ => (side(place <= bob), side(place < bob)),
        };
        if place == 0 && row.shape == KnotShape::Bob {
            row.above = Segment::End;
        }
        if place == last {
            row.below = Segment::End;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::log::Barrier;
    use crate::run::Share;
    use crate::time::Stamp;
    use chrono::NaiveDate;

    /// 14:02 on a Wednesday, at UTC+1.
    const NOW: Stamp = Stamp { utc_ms: 1_772_024_520_000, offset_s: 3600 };

    fn slot(number: u8) -> SlotRef {
        let day = NaiveDate::from_ymd_opt(2026, 2, 25).expect("a date");
        SlotRef { day, item: ItemId(1), number }
    }

    /// A day with hourly slots from 09:00 and these marks.
    fn today(marks: &[Mark], head: Head) -> Today {
        let knot = |(number, mark): (usize, &Mark)| TodayKnot {
            plan: PlanId([0; 8]),
            slot: slot(number as u8),
            minute: 540 + 60 * number as u16,
            mark: *mark,
            paused: false,
            put_off: None,
        };
        Today {
            now: NOW,
            head,
            item: None,
            string: marks.iter().enumerate().map(knot).collect(),
            items: Vec::new(),
            questions: Vec::new(),
            aftercare: Vec::new(),
            alarms: Vec::new(),
            clinics: Vec::new(),
            try_first: None,
            weeks: Vec::new(),
        }
    }

    fn due(number: u8) -> Head {
        Head::Due { slot: slot(number), due: NOW, closes: NOW, put_off: None }
    }

    #[test]
    fn the_bob_is_at_the_due_slot() {
        let share = Share { done: 2, of: 3 };
        let marks = [
            Mark::Done,
            Mark::Done,
            Mark::NotDone,
            Mark::Partly(share),
            Mark::Skipped(Barrier::NoTime),
            Mark::Due,
            Mark::ToCome,
        ];
        let rows = day(&today(&marks, due(5)));
        let ties: Vec<KnotShape> = rows.iter().map(|row| row.shape).collect();
        let half = KnotShape::Half(2.0 / 3.0);
        assert_eq!(
            ties,
            [KnotShape::Knot, KnotShape::Knot, KnotShape::Gap, half, KnotShape::Loop, KnotShape::Bob, KnotShape::Peg]
        );
        let strands: Vec<(Segment, Segment)> = rows.iter().map(|row| (row.above, row.below)).collect();
        let past = (Segment::Past, Segment::Past);
        let gap = (Segment::Gap, Segment::Gap);
        let expected = [past, past, gap, past, past, (Segment::Past, Segment::ToCome), (Segment::ToCome, Segment::End)];
        assert_eq!(strands, expected);
    }

    #[test]
    fn if_nothing_is_due_the_bob_is_at_the_present_moment() {
        let head = Head::Next { slot: slot(6), due: NOW };
        let marks = [Mark::Done, Mark::Done, Mark::Done, Mark::Done, Mark::Done, Mark::Done, Mark::ToCome];
        let rows = day(&today(&marks, head));
        assert_eq!(rows.len(), 8);
        let bob = rows.iter().position(|row| row.shape == KnotShape::Bob).expect("a bob");
        assert_eq!((bob, rows[bob].minute, rows[bob].mark), (6, 14 * 60 + 2, None), "14:02 lies between 14:00 and 15:00");
    }

    #[test]
    fn a_kept_day_is_an_unbroken_string() {
        let head = Head::DoneForToday { done: 3, of: 3, next: None };
        let rows = day(&today(&[Mark::Done; 3], head));
        assert!(rows.iter().all(|row| row.above == Segment::Past), "{rows:?}");
        assert_eq!(rows.last().map(|row| (row.shape, row.below)), Some((KnotShape::Bob, Segment::End)));
    }

    #[test]
    fn after_midnight_the_time_counts_on_beyond_24_hours() {
        let mut night = today(&[Mark::Done, Mark::Done], Head::DoneForToday { done: 2, of: 2, next: None });
        // 00:30 on the next day.
        night.now = Stamp { utc_ms: NOW.utc_ms + (10 * 60 + 28) * 60_000, ..NOW };
        night.string[0].minute = 1320;
        night.string[1].minute = 1440;
        let rows = day(&night);
        assert_eq!(rows.iter().map(|row| row.minute).collect::<Vec<_>>(), [1320, 1440, 1470]);
    }

    #[test]
    fn a_paused_slot_carries_a_cross() {
        let mut held = today(&[Mark::Done, Mark::Due, Mark::ToCome], due(1));
        held.string[1].paused = true;
        held.string[2].paused = true;
        let ties: Vec<KnotShape> = day(&held).iter().map(|row| row.shape).collect();
        assert_eq!(ties[1..3], [KnotShape::Cross, KnotShape::Cross]);
    }

    #[test]
    fn a_half_tied_knot_is_drawn_tighter_the_more_was_done() {
        let (little, most) = (half_tied(0.01), half_tied(0.99));
        assert!(little.core < most.core && little.reach > most.reach && little.open > most.open);
        assert!(little.core > 0.3, "little of it is seen");
        assert!(most.core < 1.0 && most.reach > 1.0, "it is seen not to be all");
        assert_eq!(half_tied(f64::NAN), half_tied(0.0));
    }

    #[test]
    fn a_day_without_slots_has_no_string() {
        assert_eq!(day(&today(&[], Head::DayOff { chosen: false, next: None })), []);
    }
}
