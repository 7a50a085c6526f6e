//! Isometric holds.

use crate::{HOLD, STEADY_MS, WALL_MS, Watched, at};
use exercises::catalogue::Dose;
use exercises::guide::{Controls, GuideEvent, MORE_REST_MS, Moment, Phase, Press};
use exercises::plan::{BodySide, Side};
use exercises::run::{HoldRecord, RunEnd, Work};

fn held(watched: &Watched) -> Vec<(Option<BodySide>, u32)> {
    let Work::Timed(holds) = watched.guide.snapshot().work else { panic!("holds") };
    holds.into_iter().map(|HoldRecord { side: leg, held_ms }| (leg, held_ms)).collect()
}

#[test]
fn three_holds_of_ten_seconds_from_begin_to_end() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(70_000);
    let expected = [
        (5_000, Phase::Holding),
        (15_000, Phase::Resting),
        (22_000, Phase::CountIn),
        (25_000, Phase::Holding),
        (35_000, Phase::Resting),
        (42_000, Phase::CountIn),
        (45_000, Phase::Holding),
    ];
    assert_eq!(watched.phases(), expected);
    assert_eq!(watched.events.last(), Some(&(55_000, GuideEvent::Ended(RunEnd::Completed))));
    assert_eq!(held(&watched), [(None, 10_000); 3]);
    let run = watched.guide.snapshot();
    assert_eq!((run.end, run.paused_ms, run.interruptions), (RunEnd::Completed, 0, vec![]));
}

#[test]
fn sides_come_one_after_the_other_and_are_named() {
    let mut watched = Watched::new(Dose::Hold { repetitions: 1, hold_s: 5, rest_s: 0 }, Side::Both);
    assert_eq!(watched.until(7_000).guide.view().part.side, Some(BodySide::Left));
    let resting = watched.until(12_000).guide.view();
    assert_eq!((resting.phase, resting.part.side, resting.part.changes_side), (Phase::Resting, Some(BodySide::Right), true));
    watched.until(30_000);
    assert_eq!(held(&watched), [(Some(BodySide::Left), 5_000), (Some(BodySide::Right), 5_000)]);
}

#[test]
fn the_shown_time_counts_down_second_by_second() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    let shown: Vec<Option<u32>> =
        [0, 100, 4_999, 5_000, 5_001, 14_100, 14_999].into_iter().map(|ms| watched.until(ms).guide.view().seconds).collect();
    assert_eq!(shown, [Some(5), Some(5), Some(1), Some(10), Some(10), Some(1), Some(1)]);
}

#[test]
fn half_of_a_hold_and_how_far_it_got() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    let before = watched.until(9_900).guide.view();
    let after = watched.until(10_000).guide.view();
    assert!(!before.half && after.half);
    assert!((after.progress - 0.5).abs() < 1e-9);
    assert_eq!((after.part.number, after.part.of, after.pose), (1, 3, 1.0));
}

#[test]
fn a_pause_is_not_held_and_the_hold_goes_on_after_a_count_in() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(9_000).press(Press::Pause);
    assert_eq!(watched.phase(), Phase::Paused { slept: false });
    watched.until(29_000);
    assert_eq!(held(&watched), [(None, 4_000)], "twenty seconds on pause are not held");
    watched.press(Press::Resume).until(31_900);
    assert_eq!(watched.phase(), Phase::CountIn);
    assert_eq!(watched.until(32_000).guide.view().seconds, Some(6));
    watched.until(38_000);
    assert_eq!((watched.phase(), held(&watched)), (Phase::Resting, vec![(None, 10_000)]));
    assert_eq!(watched.guide.snapshot().paused_ms, 20_000);
}

#[test]
fn a_pause_in_the_lead_in_keeps_what_was_held() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(9_000).press(Press::Pause).press(Press::Resume).until(10_000).press(Press::Pause);
    watched.until(20_000).press(Press::Resume).until(23_000);
    assert_eq!((watched.phase(), held(&watched)), (Phase::Holding, vec![(None, 4_000)]));
}

#[test]
fn a_pause_in_a_count_in_counts_in_again_and_one_in_a_rest_goes_on_resting() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(4_000).press(Press::Pause).until(9_000).press(Press::Resume);
    assert_eq!(watched.guide.view().seconds, Some(5));
    watched.until(26_000);
    assert_eq!((watched.phase(), watched.guide.view().seconds), (Phase::Resting, Some(5)));
    watched.press(Press::Pause).until(60_000).press(Press::Resume);
    assert_eq!((watched.phase(), watched.guide.view().seconds), (Phase::Resting, Some(5)));
}

#[test]
fn stopping_keeps_what_was_held() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(28_500).press(Press::Stop);
    assert_eq!(held(&watched), [(None, 10_000), (None, 3_500)]);
    assert_eq!(watched.guide.snapshot().end, RunEnd::Stopped);
    assert_eq!(watched.press(Press::Resume).until(90_000).phase(), Phase::Ended(RunEnd::Stopped));
}

#[test]
fn trouble_ends_the_run_also_on_pause_and_counts_the_pause() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(6_000).press(Press::Pause).until(16_000).press(Press::Trouble);
    let run = watched.guide.snapshot();
    assert_eq!((run.end, run.paused_ms), (RunEnd::Trouble, 10_000));
    assert_eq!(held(&watched), [(None, 1_000)]);
}

#[test]
fn a_rest_can_be_made_longer_or_ended() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(16_000).press(Press::MoreRest);
    assert_eq!(watched.guide.view().seconds, Some(6 + (MORE_REST_MS / 1000) as u32));
    watched.press(Press::Next);
    assert_eq!((watched.phase(), watched.guide.view().seconds), (Phase::CountIn, Some(3)));
}

#[test]
fn a_device_that_sleeps_pauses_the_hold_at_the_last_look() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(8_000);
    let woken = Moment { steady_ms: STEADY_MS + 8_100, wall_ms: WALL_MS + 3_600_000 };
    let events = watched.guide.advance(woken);
    assert!(events.contains(&GuideEvent::Interrupted) && events.contains(&GuideEvent::Checkpoint));
    assert_eq!(watched.phase(), Phase::Paused { slept: true });
    assert_eq!(held(&watched), [(None, 3_000)]);
    assert_eq!(watched.guide.snapshot().interruptions, [8_000]);
}

#[test]
fn time_in_which_the_program_did_not_run_is_not_held_either() {
    let mut watched = Watched::new(Dose::Hold { repetitions: 1, hold_s: 60, rest_s: 0 }, Side::Neither);
    watched.until(7_000);
    watched.guide.advance(at(40_000));
    assert_eq!(held(&watched), [(None, 2_000)]);
    assert_eq!(watched.guide.snapshot().paused_ms, 33_000);
}

#[test]
fn a_hidden_window_that_looks_every_two_seconds_loses_nothing() {
    let mut seen = Watched::new(HOLD, Side::Neither);
    for ms in (2_000..=70_000).step_by(2_000) {
        seen.guide.advance(at(ms));
    }
    seen.guide.window_hidden(at(70_000));
    assert_eq!(held(&seen), [(None, 10_000); 3]);
    assert_eq!(seen.guide.snapshot().interruptions, Vec::<u32>::new());
}

#[test]
fn it_is_logged_at_each_phase_and_every_five_seconds_of_a_hold() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(25_000);
    assert_eq!(watched.checkpoints(), [5_000, 10_000, 15_000, 22_000, 25_000]);
}

#[test]
fn what_can_be_pressed_when() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    let working = Controls { pause: true, stop: true, ..Controls::default() };
    assert_eq!(watched.until(6_000).guide.view().controls, working);
    let resting = Controls { next: true, more_rest: true, ..working };
    assert_eq!(watched.until(16_000).guide.view().controls, resting);
    watched.press(Press::Pause);
    assert_eq!(watched.guide.view().controls, Controls { resume: true, stop: true, ..Controls::default() });
    watched.press(Press::Stop);
    assert_eq!(watched.guide.view().controls, Controls::default());
}
