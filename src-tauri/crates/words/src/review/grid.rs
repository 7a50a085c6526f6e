//! The days' strings for a terminal: one column per day, one row per time, with a gap between weeks.

use crate::Words;
use chrono::{Datelike, Weekday};
use exercises::chart::{LegendEntry, Shape};
use exercises::history::Mark;
use exercises::id::ItemId;
use exercises::review::DayString;
use std::collections::BTreeSet;

/// Largest number of days that fit beside the times.
const MAX_DAYS: usize = 56;

impl Words {
    /// The last days of one item, with a [`letter`] for each slot and a blank where no slot was due; empty if the item had no slots.
    pub(super) fn string_rows(self, days: &[DayString], item: ItemId) -> Vec<String> {
        let days = &days[days.len().saturating_sub(MAX_DAYS)..];
        let knots = days.iter().flat_map(|day| day.knots.iter().filter(|knot| knot.item == item));
        let minutes: BTreeSet<u16> = knots.map(|knot| knot.minute).collect();
        if minutes.is_empty() {
            return Vec::new();
        }
        let width = minutes.iter().map(|minute| self.minute(*minute).chars().count()).max().unwrap_or_default();
        let mut rows = vec![format!("{:width$} {}", "", self.week_starts(days))];
        rows.extend(minutes.into_iter().map(|minute| {
            let cells = days.iter().enumerate().map(|(place, day)| {
                let gap = if place > 0 && day.date.weekday() == Weekday::Mon { " " } else { "" };
                let knot = day.knots.iter().find(|knot| (knot.item, knot.minute) == (item, minute));
                format!(
                    "{gap}{}",
                    knot.map_or(' ', |knot| if day.seen { cell(knot.mark) } else { letter(LegendEntry::Unseen) })
                )
            });
            format!("{:>width$} {}", self.minute(minute), cells.collect::<String>()).trim_end().to_owned()
        }));
        rows
    }

    /// The dates above the first day and each Monday, if the previous date leaves enough space.
    fn week_starts(self, days: &[DayString]) -> String {
        let mut line = String::new();
        let mut column = 0;
        for (place, day) in days.iter().enumerate() {
            let monday = day.date.weekday() == Weekday::Mon;
            column += usize::from(place > 0 && monday);
            let free = line.chars().count();
            if (place == 0 || monday) && (free < column || column == 0) {
                line.push_str(&" ".repeat(column - free));
                line.push_str(&self.date_short(day.date));
            }
            column += 1;
        }
        line
    }
}

fn cell(mark: Mark) -> char {
    match (Shape::of(mark), mark) {
        (Some(shape), _) => letter(LegendEntry::Mark(shape)),
        (None, Mark::NotDone) => letter(LegendEntry::Gap),
        (None, _) => ' ',
    }
}

/// The letter for a sign.
pub(super) fn letter(sign: LegendEntry) -> char {
    match sign {
        LegendEntry::Mark(Shape::Knot) => '●',
        LegendEntry::Mark(Shape::Half) => '∝',
        LegendEntry::Mark(Shape::Loop) => '○',
        LegendEntry::Mark(Shape::Bar) => '-',
        LegendEntry::Mark(Shape::Cross) => 'x',
        LegendEntry::Gap => '.',
        LegendEntry::Unseen => ':',
    }
}
