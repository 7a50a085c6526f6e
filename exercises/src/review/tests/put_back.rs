//! A log that was copied, moved or put back goes on under another id: nothing that both ids report counts twice, and nothing that only
//! the lost part of the old one reported is lost.

use super::super::samples::*;
use super::super::{Review, build};
use crate::alarm::Trouble;
use crate::history::Mark;
use crate::id::{LogId, RunId};
use crate::summary::{FormerPart, Summary};
use crate::time::DayNumber;
use chrono::Duration;

/// The id that the phone's log has after a copy was put back on day 3.
const AGAIN: LogId = LogId([9; 8]);

fn page(summaries: &[Summary]) -> Review {
    build(&revisions([plan()]), &catalogue(), summaries).expect("a summary")
}

/// Days 0 to 5 as the phone recorded them: an item done on days 1 and 4, mornings on 2 and 5, an alarm on day 5.
fn before() -> Summary {
    let mut told = summary(PHONE, 4, 0, 5);
    told.days = (0..=5).map(|day| item_day(day, HOLD, &[if day % 3 == 1 { Mark::Done } else { Mark::NotDone }])).collect();
    told.runs = vec![run(1, 1, HOLD, Some(0)), run(2, 4, HOLD, Some(0))];
    told.mornings = vec![morning(12, 2, BACK, 4), morning(25, 5, BACK, 6)];
    told.alarms = vec![alarm(PHONE, 26, 5, Trouble::Nerve, None)];
    told
}

/// The same after a copy of day 2 was put back, in which entry 12 and run 1 were the last: day 4 is not done, and other things have the
/// numbers that were used before.
fn after() -> Summary {
    let mut told = summary(AGAIN, 3, 0, 8);
    told.former = vec![FormerPart { log: PHONE, entries: 12, runs: 1, until: DayNumber(6) }];
    told.days =
        (0..=8).map(|day| item_day(day, HOLD, &[if [1, 7].contains(&day) { Mark::Done } else { Mark::NotDone }])).collect();
    told.runs = vec![run(1, 1, HOLD, Some(0)), run(2, 7, HOLD, Some(0))];
    told.mornings = vec![morning(12, 2, BACK, 4), morning(25, 7, BACK, 1)];
    told.alarms = vec![alarm(AGAIN, 26, 7, Trouble::Fell, None)];
    told
}

#[test]
fn what_both_report_counts_once_and_what_only_one_reports_counts() {
    for summaries in [[before(), after()], [after(), before()]] {
        let review = page(&summaries);
        let of_item = &review.adherence[0];
        let done = of_item.slots.done;
        assert_eq!((done, of_item.extra.runs), (3, 0), "days 1, 4 and 7, each once");
        let points: Vec<_> = review.pain[0].points.iter().map(|(day, score)| (day.0, score.points())).collect();
        assert_eq!(points, [(2, 4), (5, 6), (7, 1)]);
        let alarms: Vec<_> = review.alarms.iter().map(|alarm| (alarm.day.0, alarm.trouble)).collect();
        assert_eq!(alarms, [(7, Trouble::Fell), (5, Trouble::Nerve)]);
    }
}

#[test]
fn it_is_one_device_and_the_review_says_when_it_was_put_back() {
    let review = page(&[before(), after()]);
    assert_eq!((review.logs, review.behind.len()), (1, 0));
    assert_eq!(review.renewed, [start() + Duration::days(6)]);
    let mut moved_again = after();
    moved_again.log = LogId([10; 8]);
    moved_again.former.push(FormerPart { log: AGAIN, entries: 30, runs: 2, until: DayNumber(8) });
    let review = page(&[before(), moved_again, summary(DESK, 1, 0, 8)]);
    assert_eq!((review.logs, review.renewed.len()), (2, 2));
    assert_eq!(review.adherence[0].slots.done, 3);
}

#[test]
fn corrections_reach_what_was_made_under_the_old_id_and_no_more() {
    let mut corrected = after();
    corrected.runs.retain(|run| run.run == RunId(2));
    corrected.corrections.runs = [RunId(1)].into();
    corrected.corrections.changed = [12, 25].into();
    corrected.corrections.days = 1;
    corrected.mornings = vec![morning(12, 2, BACK, 3), morning(25, 7, BACK, 2)];
    let mut lost = before();
    lost.corrections.gone = [12, 20].into();
    lost.corrections.days = 1;
    let review = page(&[lost, corrected]);
    let points: Vec<_> = review.pain[0].points.iter().map(|(day, score)| (day.0, score.points())).collect();
    assert_eq!(points, [(2, 3), (5, 6), (7, 2)], "what was said last of entry 12, and entry 25 of both");
    assert_eq!(review.corrected, 5, "run 1, entry 12, entry 20 that was lost, entry 25, one day");
}
