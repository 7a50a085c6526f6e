//! Balance trials.

use crate::{BALANCE, STEADY_MS, WALL_MS, Watched, at};
use exercises::guide::{Controls, GuideEvent, Moment, Phase, Press, balance_results};
use exercises::plan::{BodySide, Side};
use exercises::run::{RunEnd, SetUp, Trial, TrialEnd, Work};

fn trials(watched: &Watched) -> Vec<(u32, TrialEnd)> {
    let Work::Balance(balance) = watched.guide.snapshot().work else { panic!("trials") };
    balance.trials.into_iter().map(|Trial { held_ms, end, .. }| (held_ms, end)).collect()
}

/// Begins a trial now and lets `ms` milliseconds pass.
fn stand(watched: &mut Watched, ms: u64) {
    watched.press(Press::Next);
    assert_eq!(watched.phase(), Phase::CountIn);
    let start = watched.now + 5_000;
    watched.until(start + ms);
}

#[test]
fn nothing_begins_before_the_person_starts_it() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    assert_eq!((watched.until(600_000).phase(), watched.guide.view().seconds), (Phase::Waiting, None));
    stand(&mut watched, 0);
    assert_eq!(watched.phase(), Phase::Trial);
}

#[test]
fn a_touch_ends_the_trial_and_presses_work_again_a_second_later() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    stand(&mut watched, 12_340);
    assert_eq!(watched.guide.view().seconds, Some(12));
    assert_eq!(watched.guide.view().controls, Controls { touch: true, ..Controls::default() });
    watched.press(Press::Touch);
    assert_eq!((watched.phase(), watched.guide.view().controls), (Phase::Settling, Controls::default()));
    let now = watched.now;
    watched.until(now + 999).press(Press::Next).press(Press::Stop);
    assert_eq!(watched.phase(), Phase::Settling, "the touch that ended the trial chooses nothing");
    assert_eq!(watched.until(now + 1_000).phase(), Phase::Resting);
    assert_eq!(trials(&watched), [(12_340, TrialEnd::Touch)]);
}

#[test]
fn anything_that_is_pressed_ends_a_trial_and_does_nothing_else() {
    for press in [Press::Pause, Press::Stop, Press::Trouble, Press::Next, Press::Failed, Press::MoreRest, Press::Resume] {
        let mut watched = Watched::new(BALANCE, Side::Left);
        stand(&mut watched, 5_000);
        watched.press(press);
        assert_eq!((watched.phase(), trials(&watched)), (Phase::Settling, vec![(5_000, TrialEnd::Touch)]), "{press:?}");
    }
}

#[test]
fn the_target_ends_the_trial_as_a_lower_bound() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    stand(&mut watched, 30_000);
    assert_eq!((watched.phase(), trials(&watched)), (Phase::Settling, vec![(30_000, TrialEnd::Target)]));
    watched.press(Press::Touch);
    assert_eq!(trials(&watched).len(), 1, "a touch after the target ends nothing more");
}

#[test]
fn a_touch_while_counting_in_cancels_the_count_in() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    watched.until(1_000).press(Press::Next).until(4_000).press(Press::Touch);
    assert_eq!((watched.phase(), trials(&watched)), (Phase::Waiting, vec![]));
}

#[test]
fn a_rest_ends_in_a_wait_and_can_be_ended_at_any_time() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    stand(&mut watched, 8_000);
    watched.press(Press::Touch);
    let now = watched.now;
    assert_eq!(watched.until(now + 1_000).guide.view().seconds, Some(30));
    assert_eq!(watched.until(now + 31_000).phase(), Phase::Waiting);
    stand(&mut watched, 9_000);
    watched.press(Press::Touch);
    let now = watched.now;
    watched.until(now + 2_000);
    stand(&mut watched, 10_000);
    watched.press(Press::Touch);
    let now = watched.now;
    assert_eq!(watched.until(now + 1_000).phase(), Phase::Ended(RunEnd::Completed));
    assert_eq!(trials(&watched).iter().map(|(ms, _)| *ms).collect::<Vec<_>>(), [8_000, 9_000, 10_000]);
}

#[test]
fn a_window_out_of_sight_measures_nothing() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    stand(&mut watched, 8_000);
    let now = crate::at(watched.now);
    watched.guide.window_hidden(now);
    assert_eq!(trials(&watched), [(8_000, TrialEnd::CutOff)]);
    let Work::Balance(balance) = watched.guide.snapshot().work else { panic!("trials") };
    assert_eq!(balance_results(&balance.trials), []);
}

#[test]
fn a_device_that_sleeps_cuts_the_trial_off_at_the_last_look() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    stand(&mut watched, 8_000);
    let last = watched.now;
    let woken = Moment { steady_ms: STEADY_MS + last + 50, wall_ms: WALL_MS + 10_000_000 };
    assert!(watched.guide.advance(woken).contains(&GuideEvent::Interrupted));
    assert_eq!(trials(&watched), [(8_000, TrialEnd::CutOff)]);
    assert_eq!(watched.guide.snapshot().interruptions, [last as u32]);
}

#[test]
fn a_trial_in_progress_is_logged_as_cut_off() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    stand(&mut watched, 8_000);
    assert_eq!(trials(&watched), [(8_000, TrialEnd::CutOff)], "should this be the last entry, it was");
    assert!(watched.checkpoints().iter().any(|at| *at == watched.now - 3_000), "five seconds into the trial");
}

#[test]
fn both_legs_in_turn_with_their_results() {
    let mut watched = Watched::new(BALANCE, Side::Both);
    for ms in [10_000, 14_000, 12_000, 30_000, 5_000, 6_000] {
        stand(&mut watched, ms);
        watched.press(Press::Touch);
        let now = watched.now;
        watched.until(now + 1_500);
    }
    let Work::Balance(balance) = watched.guide.snapshot().work else { panic!("trials") };
    let found: Vec<_> = balance_results(&balance.trials).iter().map(|s| (s.leg, s.best_ms, s.median_ms, s.capped)).collect();
    assert_eq!(found, [(Some(BodySide::Left), 14_000, 12_000, false), (Some(BodySide::Right), 30_000, 6_000, true)]);
}

#[test]
fn something_is_wrong_can_be_pressed_before_and_between_trials() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    assert!(watched.guide.view().controls.stop, "before");
    stand(&mut watched, 6_000);
    watched.press(Press::Touch);
    let now = watched.now;
    assert!(watched.until(now + 1_000).guide.view().controls.stop, "between");
    watched.press(Press::Trouble);
    assert_eq!((watched.phase(), trials(&watched).len()), (Phase::Ended(RunEnd::Trouble), 1));
}

#[test]
fn a_phone_that_is_worn_gets_a_longer_count_in_and_the_set_up_is_logged() {
    for (set_up, count_in) in [(SetUp::AtBreastbone, 8_000), (SetUp::InPocket, 15_000)] {
        let mut watched = Watched::new(BALANCE, Side::Left);
        watched.guide.choose_set_up(set_up);
        watched.press(Press::Next);
        let begun = watched.now;
        watched.until(begun + count_in - 100);
        assert_eq!((watched.phase(), watched.guide.trial_began()), (Phase::CountIn, None));
        watched.until(begun + count_in + 500);
        assert_eq!(watched.guide.trial_began(), Some(STEADY_MS + begun + count_in), "the tone, not the look at the clock");
        let Work::Balance(balance) = watched.guide.snapshot().work else { panic!("trials") };
        assert_eq!(balance.set_up, set_up);
    }
}

#[test]
fn set_ups_are_never_mixed_in_one_run() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    assert!(watched.guide.may_choose_set_up());
    watched.press(Press::Next);
    watched.guide.choose_set_up(SetUp::InPocket);
    assert!(!watched.guide.may_choose_set_up());
    let Work::Balance(balance) = watched.guide.snapshot().work else { panic!("trials") };
    assert_eq!(balance.set_up, SetUp::OnSupport);
}

#[test]
fn a_touch_down_proposed_by_the_sensor_ends_a_trial_without_a_measured_time() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    watched.guide.choose_set_up(SetUp::InPocket);
    assert_eq!(watched.guide.propose_end(at(0)), [], "nothing is in progress yet");
    watched.press(Press::Next);
    let now = watched.now + 15_000 + 9_000;
    watched.until(now);
    let events = watched.guide.propose_end(at(now));
    assert!(
        events.contains(&GuideEvent::Entered(Phase::Settling)) && events.contains(&GuideEvent::Checkpoint),
        "{events:?}"
    );
    assert_eq!(trials(&watched), [(9_000, TrialEnd::CutOff)]);
}
