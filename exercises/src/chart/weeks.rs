//! Chart of one item's days side by side, each day drawn as a string. It shows at which hour and since which day the item is no
//! longer done.
//!
//! Marks on a string: a slot done in full is a knot, one done in part a half-tied knot. At a slot that was not done the string is
//! missing. A skipped slot is an open loop, a day off a bar across. Days on which an alarm paused slots have a band behind them. A
//! day without any record is dotted.

use super::axis::{DayAxis, WeekStart};
use crate::choice::array;
use crate::history::Mark;
use crate::id::ItemId;
use crate::review::{DayString, Knot};
use crate::time::DayNumber;
use strum::VariantArray;

/// Length of the string beyond its outermost knots.
const STUB: f64 = 9.0;
/// Length of the piece of string that is drawn at each end of a gap over the whole string.
const PEG: f64 = 3.5;
/// Space above the first knot.
const TOP: f64 = 14.0;
/// Space below the last knot, for the string's end and the dates.
const BOTTOM: f64 = 32.0;
/// Distance between two slots if there are few of them.
const FEW_APART: f64 = 30.0;
/// Distance between two slots if there are many of them.
const MANY_APART: f64 = 21.0;
/// Number of slots a day from which on they are drawn closer together.
const MANY: usize = 4;

/// The chart of one item. Lengths in CSS pixels.
#[derive(Debug, Clone, PartialEq)]
pub struct Weeks {
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
    /// Radius of a knot.
    pub knot: f64,
    /// The days with slots.
    pub days: Vec<DayShape>,
    /// Days with slots that an alarm paused, as spans from left to right; neighbouring days are one span.
    pub bands: Vec<(f64, f64)>,
    /// Times of day at the left.
    pub hours: Vec<HourLabel>,
    /// Dates below the chart.
    pub starts: Vec<WeekStart>,
    /// Position of the vertical line between the days before the exercise was broken off and those after.
    pub broke_off: Option<f64>,
}

/// The string of one day.
#[derive(Debug, Clone, PartialEq)]
pub struct DayShape {
    /// Day number.
    pub day: DayNumber,
    /// Horizontal position.
    pub x: f64,
    /// Whether there is a record of the day; if not, the string is dotted and has no knots.
    pub seen: bool,
    /// Pieces of string, as `(top, bottom)`.
    pub pieces: Vec<(f64, f64)>,
    /// The marks on the string.
    pub marks: Vec<MarkAt>,
}

/// A mark on a string.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MarkAt {
    /// Vertical position.
    pub y: f64,
    /// The shape of the mark.
    pub shape: Shape,
    /// Minute of the day (0 to 1439), for its description in words.
    pub minute: u16,
    /// What happened to the slot, for its description in words.
    pub mark: Mark,
}

/// The shape of a mark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
pub enum Shape {
    /// A knot: done in full.
    Knot,
    /// A knot half tied: done in part.
    Half,
    /// An open loop: skipped, with a reason.
    Loop,
    /// A bar across: a day off.
    Bar,
    /// Paused by an alarm: a band behind the days, a cross in texts.
    Cross,
}

impl Shape {
    /// All shapes.
    pub const ALL: [Shape; Shape::VARIANTS.len()] = array(Shape::VARIANTS);

    /// The shape of a mark; `None` for marks that leave a gap or are not drawn.
    pub fn of(mark: Mark) -> Option<Shape> {
        match mark {
            Mark::Done => Some(Shape::Knot),
            Mark::Partly(_) => Some(Shape::Half),
            Mark::Skipped(_) => Some(Shape::Loop),
            Mark::DayOff(_) => Some(Shape::Bar),
            Mark::Paused => Some(Shape::Cross),
            Mark::NotDone | Mark::Due | Mark::ToCome | Mark::NoSuchHour => None,
        }
    }
}

/// A sign that can occur on a string and is explained in the legend.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LegendEntry {
    /// A mark on the string.
    Mark(Shape),
    /// A gap: not done.
    Gap,
    /// A dotted string: no record.
    Unseen,
}

/// The signs that occur on the strings of `days`, without repetition.
pub fn legend_entries(days: &[DayString]) -> Vec<LegendEntry> {
    let knots = || days.iter().filter(|day| day.seen).flat_map(|day| &day.knots);
    let occurs = |sign: &LegendEntry| match sign {
        LegendEntry::Mark(shape) => knots().any(|knot| Shape::of(knot.mark) == Some(*shape)),
        LegendEntry::Gap => knots().any(|knot| knot.mark == Mark::NotDone),
        LegendEntry::Unseen => days.iter().any(|day| !day.seen && !day.knots.is_empty()),
    };
    let all = Shape::ALL.into_iter().map(LegendEntry::Mark).chain([LegendEntry::Gap, LegendEntry::Unseen]);
    all.filter(occurs).collect()
}

/// A label with a time of day at the left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HourLabel {
    /// Vertical position.
    pub y: f64,
    /// Minute of the day.
    pub minute: u16,
}

/// Draws the strings of `item` over `axis`. `broke_off` is the first day after the exercise was broken off. `None` if the item has
/// no slots.
pub fn weeks(days: &[DayString], item: ItemId, axis: &DayAxis, broke_off: Option<DayNumber>) -> Option<Weeks> {
    let own: Vec<(&DayString, Vec<Knot>)> = days
        .iter()
        .filter(|day| (axis.first..=axis.last).contains(&day.day))
        .map(|day| (day, day.knots.iter().filter(|knot| knot.item == item).copied().collect()))
        .filter(|(_, knots): &(_, Vec<Knot>)| !knots.is_empty())
        .collect();
    let scale = Scale::of(own.iter().flat_map(|(_, knots)| knots.iter().map(|knot| knot.minute)), most_a_day(&own))?;
    let shapes = own.iter().map(|(day, knots)| day_shape(day, knots, axis.x(day.day), &scale));
    Some(Weeks {
        width: axis.width(),
        height: scale.y(scale.last) + BOTTOM,
        knot: (axis.step * 0.24).min(4.6),
        days: shapes.collect(),
        bands: bands(&own, axis),
        hours: scale.labels(),
        starts: axis.weeks(),
        broke_off: broke_off.filter(|day| (axis.first..=axis.last).contains(day)).map(|day| axis.x(day) - axis.step * 0.5),
    })
}

fn bands(days: &[(&DayString, Vec<Knot>)], axis: &DayAxis) -> Vec<(f64, f64)> {
    let paused = days.iter().filter(|(_, knots)| knots.iter().any(|knot| knot.mark == Mark::Paused));
    let mut spans: Vec<(DayNumber, DayNumber)> = Vec::new();
    // Days without slots, such as weekends, do not part a span.
    let before = |day: DayNumber| days.iter().map(|(other, _)| other.day).take_while(|other| *other < day).last();
    for (day, _) in paused {
        match spans.last_mut() {
            Some((_, last)) if before(day.day) == Some(*last) => *last = day.day,
            _ => spans.push((day.day, day.day)),
        }
    }
    let half = axis.step * 0.5;
    spans.into_iter().map(|(first, last)| (axis.x(first) - half, axis.x(last) + half)).collect()
}

fn most_a_day(days: &[(&DayString, Vec<Knot>)]) -> usize {
    days.iter().map(|(_, knots)| knots.len()).max().unwrap_or(0)
}

/// Converts minutes of the day to vertical positions.
struct Scale {
    first: u16,
    last: u16,
    length: f64,
}

impl Scale {
    fn of(minutes: impl Iterator<Item = u16>, most: usize) -> Option<Scale> {
        let all: Vec<u16> = minutes.collect();
        let (first, last) = (*all.iter().min()?, *all.iter().max()?);
        let apart = if most >= MANY { MANY_APART } else { FEW_APART };
        let spaces = if first == last { 0 } else { most.saturating_sub(1).max(1) };
        Some(Scale { first, last, length: spaces as f64 * apart })
    }

    fn y(&self, minute: u16) -> f64 {
        let span = f64::from(self.last - self.first);
        let part = if span > 0.0 { f64::from(minute - self.first) / span } else { 0.0 };
        TOP + part * self.length
    }

    /// Labels for the first slot, the last slot, and the full hour nearest to the middle if there is space for it.
    fn labels(&self) -> Vec<HourLabel> {
        let middle = (self.first + (self.last - self.first) / 2 + 30) / 60 * 60;
        let mut minutes = vec![self.first];
        if self.length >= 80.0 && self.first < middle && middle < self.last {
            minutes.push(middle);
        }
        if self.last > self.first {
            minutes.push(self.last);
        }
        minutes.into_iter().map(|minute| HourLabel { y: self.y(minute), minute }).collect()
    }
}

fn day_shape(day: &DayString, knots: &[Knot], x: f64, scale: &Scale) -> DayShape {
    let mut sorted = knots.to_vec();
    sorted.sort_by_key(|knot| knot.minute);
    let at: Vec<f64> = sorted.iter().map(|knot| scale.y(knot.minute)).collect();
    let (Some(top), Some(bottom)) = (at.first(), at.last()) else {
        return DayShape { day: day.day, x, seen: day.seen, pieces: Vec::new(), marks: Vec::new() };
    };
    let whole = (top - STUB, bottom + STUB);
    if !day.seen {
        return DayShape { day: day.day, x, seen: false, pieces: vec![whole], marks: Vec::new() };
    }
    let gaps: Vec<(f64, f64)> = (0..at.len())
        .filter(|place| matches!(sorted[*place].mark, Mark::NotDone | Mark::Paused | Mark::Due | Mark::ToCome))
        .map(|place| gap(&at, place))
        .collect();
    let marks =
        sorted.iter().zip(&at).filter(|(knot, _)| knot.mark != Mark::Paused).filter_map(|(knot, y)| {
            Some(MarkAt { y: *y, shape: Shape::of(knot.mark)?, minute: knot.minute, mark: knot.mark })
        });
    DayShape { day: day.day, x, seen: true, pieces: without(whole, &gaps), marks: marks.collect() }
}

/// The gap in the string at a slot: half-way to both neighbours. At the first or last slot it reaches the string's end but for a
/// short piece.
fn gap(at: &[f64], place: usize) -> (f64, f64) {
    let y = at[place];
    let above = place.checked_sub(1).map_or(y - STUB + PEG, |before| (at[before] + y) / 2.0);
    let below = at.get(place + 1).map_or(y + STUB - PEG, |after| (y + after) / 2.0);
    (above, below)
}

/// The pieces of a string without its gaps; the gaps must be in order.
fn without((top, bottom): (f64, f64), gaps: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut pieces = Vec::new();
    let mut from = top;
    for (above, below) in gaps {
        if *above > from {
            pieces.push((from, *above));
        }
        from = from.max(*below);
    }
    if bottom > from {
        pieces.push((from, bottom));
    }
    pieces
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::log::Barrier;
    use crate::run::Share;
    use chrono::NaiveDate;

    fn axis() -> DayAxis {
        DayAxis::for_strings(NaiveDate::from_ymd_opt(2026, 10, 26).expect("a date"), DayNumber(0), DayNumber(6), 300.0)
    }

    fn day(number: u16, seen: bool, marks: &[(u16, Mark)]) -> DayString {
        let knots = marks.iter().enumerate().map(|(place, (minute, mark))| Knot {
            item: ItemId(1),
            number: place as u8,
            minute: *minute,
            mark: *mark,
        });
        DayString { day: DayNumber(number), date: axis().date(DayNumber(number)), seen, knots: knots.collect() }
    }

    fn one(days: &[DayString]) -> Weeks {
        weeks(days, ItemId(1), &axis(), None).expect("slots")
    }

    #[test]
    fn a_kept_day_is_one_unbroken_string_with_a_knot_each() {
        let chart = one(&[day(0, true, &[(540, Mark::Done), (600, Mark::Done), (660, Mark::Done)])]);
        assert_eq!(chart.days[0].pieces.len(), 1);
        assert_eq!(chart.days[0].marks.len(), 3);
        assert!(chart.days[0].marks.iter().all(|mark| mark.shape == Shape::Knot));
        let (top, bottom) = chart.days[0].pieces[0];
        assert!(top < chart.days[0].marks[0].y && chart.days[0].marks[2].y < bottom && bottom < chart.height);
    }

    #[test]
    fn a_slot_not_done_is_a_gap_half_way_to_its_neighbours() {
        let chart = one(&[day(0, true, &[(540, Mark::Done), (600, Mark::NotDone), (660, Mark::Done)])]);
        let [(_, above), (below, _)] = chart.days[0].pieces[..] else { panic!("two pieces") };
        let [first, last] = chart.days[0].marks[..] else { panic!("two knots") };
        let middle = (first.y + last.y) / 2.0;
        assert_eq!((above, below), ((first.y + middle) / 2.0, (middle + last.y) / 2.0));
    }

    #[test]
    fn a_day_with_nothing_done_shows_only_the_ends_of_its_string() {
        let chart = one(&[day(0, true, &[(540, Mark::NotDone), (600, Mark::NotDone)])]);
        assert_eq!(chart.days[0].marks, []);
        assert!(chart.days[0].pieces.iter().all(|(from, to)| to - from <= PEG + 1e-9), "{:?}", chart.days[0].pieces);
        let single = one(&[day(0, true, &[(1080, Mark::NotDone)])]);
        assert_eq!(single.days[0].pieces.len(), 2, "a peg above and one below");
    }

    #[test]
    fn paused_slots_are_a_gap_and_their_days_one_band() {
        let paused = [(540, Mark::Paused), (600, Mark::Paused)];
        let chart =
            one(&[day(0, true, &paused), day(1, true, &[(540, Mark::Done), paused[1]]), day(2, true, &[(540, Mark::Done)])]);
        let shapes = chart.days.iter().map(|day| day.marks.iter().map(|mark| mark.shape).collect::<Vec<_>>());
        assert_eq!(shapes.collect::<Vec<_>>(), [vec![], vec![Shape::Knot], vec![Shape::Knot]]);
        let [(from, to)] = chart.bands[..] else { panic!("{:?}", chart.bands) };
        assert!(from < chart.days[0].x && chart.days[1].x < to && to < chart.days[2].x, "{from} to {to}");
        assert!(
            chart.days[0].pieces.iter().all(|(from, to)| to - from <= PEG + 1e-9),
            "no kept day: {:?}",
            chart.days[0].pieces
        );
    }

    #[test]
    fn every_kind_of_mark_has_a_shape_of_its_own() {
        let marks = [
            (Mark::Done, Some(Shape::Knot)),
            (Mark::Partly(Share { done: 1, of: 3 }), Some(Shape::Half)),
            (Mark::Skipped(Barrier::Forgot), Some(Shape::Loop)),
            (Mark::DayOff(crate::log::DayOffReason::Ill), Some(Shape::Bar)),
            (Mark::Paused, Some(Shape::Cross)),
            (Mark::NotDone, None),
            (Mark::NoSuchHour, None),
        ];
        for (mark, shape) in marks {
            assert_eq!(Shape::of(mark), shape);
        }
    }

    #[test]
    fn a_day_without_a_record_looks_different_from_one_with_nothing_done() {
        let nothing = [(540, Mark::NotDone), (600, Mark::NotDone)];
        let chart = one(&[day(0, false, &nothing), day(1, true, &nothing)]);
        assert_eq!((chart.days[0].seen, chart.days[0].pieces.len()), (false, 1), "one dotted string");
        assert!(chart.days[1].seen && chart.days[1].pieces.len() > 1);
    }

    #[test]
    fn an_hour_skipped_by_the_clock_change_leaves_no_gap() {
        let chart = one(&[day(0, true, &[(120, Mark::Done), (150, Mark::NoSuchHour), (180, Mark::Done)])]);
        assert_eq!((chart.days[0].pieces.len(), chart.days[0].marks.len()), (1, 2));
    }

    #[test]
    fn only_signs_that_occur_are_in_the_legend() {
        let seen = day(0, true, &[(540, Mark::Done), (600, Mark::NotDone)]);
        assert_eq!(legend_entries(std::slice::from_ref(&seen)), [LegendEntry::Mark(Shape::Knot), LegendEntry::Gap]);
        let unseen = day(1, false, &[(540, Mark::NotDone)]);
        assert_eq!(legend_entries(&[unseen]), [LegendEntry::Unseen], "nobody knows whether it was passed by");
        assert_eq!(legend_entries(&[]), []);
    }

    #[test]
    fn labels_name_the_first_the_middle_and_the_last_time() {
        let hourly: Vec<(u16, Mark)> = (9..=17).map(|hour| (hour * 60, Mark::Done)).collect();
        let minutes = |chart: &Weeks| chart.hours.iter().map(|label| label.minute).collect::<Vec<_>>();
        assert_eq!(minutes(&one(&[day(0, true, &hourly)])), [540, 780, 1020]);
        assert_eq!(minutes(&one(&[day(0, true, &[(1080, Mark::Done)])])), [1080]);
        assert_eq!(minutes(&one(&[day(0, true, &[(480, Mark::Done), (1080, Mark::Done)])])), [480, 1080]);
    }

    #[test]
    fn only_the_item_s_slots_are_shown_and_without_any_there_is_no_chart() {
        assert_eq!(weeks(&[day(0, true, &[(540, Mark::Done)])], ItemId(2), &axis(), None), None);
        assert_eq!(weeks(&[], ItemId(1), &axis(), None), None);
    }

    #[test]
    fn the_line_for_breaking_off_is_drawn_before_its_day() {
        let days = [day(0, true, &[(540, Mark::Done)]), day(3, true, &[(540, Mark::NotDone)])];
        let chart = weeks(&days, ItemId(1), &axis(), Some(DayNumber(3))).expect("slots");
        let x = chart.broke_off.expect("a line");
        assert!(axis().x(DayNumber(2)) < x && x < axis().x(DayNumber(3)));
        assert_eq!(
            weeks(&days, ItemId(1), &axis(), Some(DayNumber(40))).expect("slots").broke_off,
            None,
            "outside the chart"
        );
    }
}
