//! The courses of stretches, movements at one's own pace, activities, breathing, care, prompts, timed stands, counts and movements on a beat.

use crate::{STEADY_MS, WALL_MS, Watched, at, run};
use exercises::catalogue::kind::BreathPace;
use exercises::catalogue::{Dose, Tempo};
use exercises::guide::{Beat, Breathing, EASE_IN_MS, GuideEvent, Moment, Phase, Press, Sound};
use exercises::guide::{Guide, balance_results};
use exercises::plan::{BodySide, Side};
use exercises::run::{RunEnd, SetUp, Share, Tally, TrialEnd, Work};

const STRETCH: Dose = Dose::Stretch { repetitions: 2, stretch_s: 20, rest_s: 10 };
const MOVE: Dose = Dose::Move { repetitions: 3 };
const WALK: Dose = Dose::Go { minutes: 10, effort: 3 };
const PACE: BreathPace = BreathPace { in_s: 4, full_s: 0, out_s: 6, empty_s: 0 };
const BREATH: Dose = Dose::Breath { minutes: 1, pace: PACE };
const CARE: Dose = Dose::Care { minutes: 10 };
const BEAT: Dose = Dose::Beat { repetitions: 2, seconds: 10, per_minute: 60, rest_s: 8 };
const COUNT: Dose = Dose::Count { seconds: 30 };
const LIMIT: Dose = Dose::Limit { trials: 2, cap_s: 20, rest_s: 10 };
const MINUTE: u64 = 60_000;

fn held(watched: &Watched) -> Vec<u32> {
    let Work::Timed(parts) = watched.guide.snapshot().work else { panic!("timed") };
    parts.into_iter().map(|part| part.held_ms).collect()
}

fn counted(watched: &Watched) -> Vec<(Option<BodySide>, u8)> {
    let Work::Counted(sets) = watched.guide.snapshot().work else { panic!("counted") };
    sets.into_iter().map(|set| (set.side, set.done)).collect()
}

fn end(watched: &Watched) -> RunEnd {
    watched.guide.snapshot().end
}

/// The moment `ms` after the beginning, after a sleep of `asleep` milliseconds in which the steady clock stood still.
fn after_sleep(ms: u64, asleep: u64) -> Moment {
    Moment { steady_ms: STEADY_MS + ms, wall_ms: WALL_MS + (ms + asleep) as i64 }
}

#[test]
fn a_stretch_is_eased_into_and_then_counts() {
    let mut watched = Watched::new(STRETCH, Side::Neither);
    let easing = watched.until(7_500).guide.view();
    assert_eq!((easing.phase, easing.pose, easing.seconds), (Phase::EasingIn, 0.5, Some(3)));
    watched.until(80_000);
    let first = 5_000 + EASE_IN_MS;
    let expected = [
        (5_000, Phase::EasingIn),
        (first, Phase::Stretching),
        (first + 20_000, Phase::Resting),
        (first + 27_000, Phase::CountIn),
        (first + 30_000, Phase::EasingIn),
        (first + 30_000 + EASE_IN_MS, Phase::Stretching),
    ];
    assert_eq!(watched.phases(), expected);
    assert_eq!((held(&watched), end(&watched)), (vec![20_000, 20_000], RunEnd::Completed));
}

#[test]
fn easing_into_a_stretch_does_not_count() {
    let mut watched = Watched::new(STRETCH, Side::Neither);
    watched.until(9_900).press(Press::Stop);
    assert_eq!((held(&watched), end(&watched)), (vec![], RunEnd::Stopped));
}

#[test]
fn movements_at_ones_own_pace_are_counted_press_by_press_and_end_by_themselves() {
    let mut watched = Watched::new(MOVE, Side::Neither);
    watched.until(5_000);
    assert_eq!(watched.guide.view().repetition, Some((0, 3)));
    assert!(watched.guide.view().controls.count && !watched.guide.view().controls.pause);
    watched.until(9_000).press(Press::CountOne).until(12_000).press(Press::CountOne);
    assert_eq!((watched.phase(), watched.guide.view().repetition), (Phase::OwnPace, Some((2, 3))));
    watched.until(300_000).press(Press::CountOne);
    assert_eq!((counted(&watched), end(&watched)), (vec![(None, 3)], RunEnd::Completed), "however long it takes");
}

#[test]
fn whoever_counted_none_and_says_all_done_did_all_and_whoever_counted_did_those() {
    let done = |presses: u8| {
        let mut watched = Watched::new(MOVE, Side::Neither);
        watched.until(6_000);
        for _ in 0..presses {
            watched.press(Press::CountOne);
        }
        watched.press(Press::AllDone);
        assert_eq!(end(&watched), RunEnd::Completed);
        counted(&watched)
    };
    assert_eq!(done(0), [(None, 3)]);
    assert_eq!(done(2), [(None, 2)]);
}

#[test]
fn stopping_movements_keeps_what_was_counted_and_invents_nothing() {
    let mut watched = Watched::new(MOVE, Side::Neither);
    watched.until(6_000).press(Press::CountOne).press(Press::Stop);
    assert_eq!((counted(&watched), end(&watched)), (vec![(None, 1)], RunEnd::Stopped));
    let mut watched = Watched::new(MOVE, Side::Neither);
    watched.until(6_000).press(Press::Stop);
    assert_eq!((counted(&watched), end(&watched)), (vec![], RunEnd::Stopped));
}

#[test]
fn sides_that_take_turns_are_counted_in_turn_and_shown_in_turn() {
    let mut watched = Watched::new(MOVE, Side::Alternating);
    let shown = |watched: &Watched| watched.guide.view().part.side;
    assert_eq!(shown(watched.until(6_000)), Some(BodySide::Left));
    assert_eq!(shown(watched.until(10_000)), Some(BodySide::Right));
    for _ in 0..5 {
        watched.press(Press::CountOne);
    }
    assert_eq!(watched.guide.view().repetition, Some((5, 6)));
    assert_eq!(counted(&watched), [(Some(BodySide::Left), 3), (Some(BodySide::Right), 2)]);
    watched.press(Press::CountOne);
    assert_eq!(end(&watched), RunEnd::Completed);
    assert!(watched.guide.snapshot().share(2).full());
}

#[test]
fn repetitions_whose_sides_take_turns_change_side_with_each_movement() {
    let tempo = Tempo { up_s: 1, hold_s: 0, down_s: 1 };
    let mut watched = Watched::new(Dose::Reps { sets: 1, repetitions: 2, rest_s: 30, tempo }, Side::Alternating);
    let sides: Vec<_> = [5_500, 7_500, 9_500, 11_500]
        .into_iter()
        .map(|ms| {
            let view = watched.until(ms).guide.view();
            (view.phase, view.part.side, view.repetition)
        })
        .collect();
    let (up, left, right) = (Phase::Beat(Beat::Up), Some(BodySide::Left), Some(BodySide::Right));
    let expected =
        [(up, left, Some((1, 2))), (up, right, Some((1, 2))), (up, left, Some((2, 2))), (up, right, Some((2, 2)))];
    assert_eq!(sides, expected);
    watched.until(20_000);
    assert_eq!((counted(&watched), end(&watched)), (vec![(left, 2), (right, 2)], RunEnd::Completed));
}

#[test]
fn holds_whose_sides_take_turns_alternate() {
    let mut watched = Watched::new(Dose::Hold { repetitions: 2, hold_s: 5, rest_s: 5 }, Side::Alternating);
    watched.until(90_000);
    let Work::Timed(parts) = watched.guide.snapshot().work else { panic!("timed") };
    let (left, right) = (Some(BodySide::Left), Some(BodySide::Right));
    assert_eq!(parts.iter().map(|part| part.side).collect::<Vec<_>>(), [left, right, left, right]);
    assert!(watched.guide.snapshot().share(2).full());
}

#[test]
fn a_walk_goes_on_while_the_device_sleeps_and_asks_how_long_it_was() {
    let mut watched = Watched::new(WALK, Side::Neither);
    watched.until(2 * MINUTE);
    assert_eq!(watched.phase(), Phase::Timing);
    // The phone sleeps for six minutes, and wakes.
    let events = watched.guide.advance(after_sleep(2 * MINUTE + 100, 6 * MINUTE));
    assert!(events.contains(&GuideEvent::Interrupted));
    let view = watched.guide.view();
    assert_eq!((view.phase, view.seconds), (Phase::Timing, Some(120)), "eight of ten minutes are over");
    assert_eq!(watched.guide.unseen_ms(), 6 * MINUTE + 100);
    for ms in (2 * MINUTE + 200..=4 * MINUTE + 200).step_by(1_000) {
        watched.guide.advance(after_sleep(ms, 6 * MINUTE));
    }
    assert_eq!(watched.phase(), Phase::Confirming);
    assert_eq!((held(&watched), end(&watched)), (vec![600_000], RunEnd::Going), "counted, even if nobody answers");
    watched.guide.press(Press::Minutes(7), after_sleep(4 * MINUTE + 300, 6 * MINUTE));
    assert_eq!((held(&watched), end(&watched)), (vec![420_000], RunEnd::Completed));
    assert_eq!(watched.guide.snapshot().interruptions.len(), 1);
}

#[test]
fn what_is_said_after_a_walk_never_exceeds_what_the_clock_says() {
    let mut watched = Watched::new(WALK, Side::Neither);
    watched.until(2 * MINUTE);
    watched.guide.advance(after_sleep(2 * MINUTE, 3 * MINUTE));
    watched.guide.press(Press::Stop, after_sleep(2 * MINUTE, 3 * MINUTE));
    assert_eq!(watched.phase(), Phase::Confirming, "stopped by somebody who came back to a sleeping phone");
    watched.guide.press(Press::Minutes(180), after_sleep(2 * MINUTE, 3 * MINUTE));
    assert_eq!((held(&watched), end(&watched)), (vec![300_000], RunEnd::Stopped));
}

#[test]
fn a_walk_in_which_the_screen_was_seen_asks_nothing() {
    let mut watched = Watched::new(WALK, Side::Neither);
    watched.until(10 * MINUTE);
    assert_eq!((held(&watched), end(&watched)), (vec![600_000], RunEnd::Completed));
    assert_eq!(watched.guide.snapshot().interruptions, Vec::<u32>::new());
}

#[test]
fn a_device_that_sleeps_far_beyond_a_walk_counts_the_walk_alone() {
    let mut watched = Watched::new(CARE, Side::Neither);
    watched.until(MINUTE);
    watched.guide.advance(after_sleep(MINUTE, 600 * MINUTE));
    assert_eq!(watched.phase(), Phase::Confirming);
    assert_eq!((held(&watched), watched.guide.unseen_ms()), (vec![600_000], 9 * MINUTE));
}

#[test]
fn a_paused_walk_stays_paused_while_the_device_sleeps() {
    let mut watched = Watched::new(WALK, Side::Neither);
    watched.until(MINUTE).press(Press::Pause);
    watched.guide.advance(after_sleep(MINUTE + 100, 30 * MINUTE));
    assert_eq!((watched.phase(), held(&watched)), (Phase::Paused { slept: false }, vec![60_000]));
    watched.guide.press(Press::Resume, after_sleep(MINUTE + 200, 30 * MINUTE));
    assert_eq!(watched.phase(), Phase::Timing, "without a count-in");
}

#[test]
fn sounds_after_a_sleep_are_given_on_the_steady_clock() {
    let mut watched = Watched::new(WALK, Side::Neither);
    watched.until(MINUTE);
    watched.guide.advance(after_sleep(MINUTE + 1_000, 8 * MINUTE + 40_000));
    let cues = watched.guide.cues();
    let end = STEADY_MS + MINUTE + 1_000 + 19_000;
    assert!(cues.iter().any(|cue| cue.sound == Sound::End && cue.at_ms == end), "{cues:?}");
}

#[test]
fn breaths_follow_the_pace_until_the_time_is_over() {
    let mut watched = Watched::new(BREATH, Side::Neither);
    let view = watched.until(7_000).guide.view();
    assert_eq!((view.phase, view.pose, view.seconds), (Phase::Breathing(Breathing::In), 0.5, Some(58)));
    let view = watched.until(12_000).guide.view();
    assert_eq!((view.phase, view.pose), (Phase::Breathing(Breathing::Out), 0.5));
    watched.until(65_000);
    assert_eq!((held(&watched), end(&watched)), (vec![60_000], RunEnd::Completed));
    let breaths = watched.phases().iter().filter(|(_, phase)| *phase == Phase::Breathing(Breathing::In)).count();
    assert_eq!(breaths, 6, "of ten seconds each");
}

#[test]
fn a_breath_that_a_pause_interrupted_starts_over_and_counts_once() {
    let mut watched = Watched::new(BREATH, Side::Neither);
    watched.until(12_000).press(Press::Pause).until(20_000).press(Press::Resume);
    watched.until(23_100);
    assert_eq!(watched.phase(), Phase::Breathing(Breathing::In), "after a count-in");
    watched.until(90_000);
    assert_eq!((held(&watched), end(&watched)), (vec![60_000], RunEnd::Completed));
}

#[test]
fn a_prompt_is_done_with_one_press() {
    let mut watched = Watched::new(Dose::Prompt, Side::Neither);
    assert_eq!((watched.phase(), watched.guide.view().repetition), (Phase::OwnPace, Some((0, 1))));
    watched.press(Press::CountOne);
    assert_eq!((counted(&watched), end(&watched)), (vec![(None, 1)], RunEnd::Completed));
    assert!(watched.guide.snapshot().share(1).full());
}

#[test]
fn a_press_that_does_not_belong_to_the_step_does_nothing() {
    for dose in [STRETCH, WALK, BREATH, CARE] {
        let mut watched = Watched::new(dose, Side::Neither);
        watched.until(6_000);
        let before = watched.guide.clone();
        for press in [Press::CountOne, Press::AllDone, Press::Minutes(1), Press::MoreRest, Press::Failed, Press::Touch] {
            watched.guide.press(press, at(6_000));
            assert_eq!(watched.guide, before, "{dose:?} {press:?}");
        }
    }
}

#[test]
fn a_timed_stand_on_both_feet_ends_at_a_touch_or_at_the_cap_and_has_no_leg() {
    assert!(Guide::new(run(LIMIT), Side::Both, at(0)).is_none(), "it has no sides");
    let mut watched = Watched::new(LIMIT, Side::Neither);
    watched.guide.choose_set_up(SetUp::InPocket);
    assert_eq!(
        (watched.guide.set_up(), watched.guide.may_choose_set_up()),
        (SetUp::OnSupport, false),
        "sway is not measured"
    );
    watched.press(Press::Next).until(5_000 + 12_300).press(Press::Touch).until(40_000);
    assert_eq!(watched.phase(), Phase::Waiting, "the second attempt waits for the person");
    watched.press(Press::Next).until(40_000 + 5_000 + 25_000);
    let Work::Balance(done) = watched.guide.snapshot().work else { panic!("trials") };
    let trials: Vec<_> = done.trials.iter().map(|trial| (trial.leg, trial.held_ms, trial.end)).collect();
    assert_eq!(trials, [(None, 12_300, TrialEnd::Touch), (None, 20_000, TrialEnd::Target)]);
    assert_eq!(balance_results(&done.trials).len(), 1);
    assert_eq!(end(&watched), RunEnd::Completed);
}

fn tally(watched: &Watched) -> (u32, Option<u8>) {
    let Work::Tally(Tally { held_ms, count }) = watched.guide.snapshot().work else { panic!("a count") };
    (held_ms, count)
}

#[test]
fn a_test_waits_for_the_person_and_asks_for_the_number_at_its_end() {
    let mut watched = Watched::new(COUNT, Side::Neither);
    assert_eq!((watched.until(60_000).phase(), watched.guide.view().controls.next), (Phase::Waiting, true));
    watched.press(Press::Next).until(65_000);
    let cues: Vec<_> = watched.guide.cues().into_iter().map(|cue| (cue.at_ms - STEADY_MS, cue.sound)).collect();
    assert_eq!(cues, [(65_000, Sound::Start), (80_000, Sound::Half), (95_000, Sound::End)]);
    watched.until(70_000).press(Press::CountOne).press(Press::CountOne).press(Press::Pause);
    let view = watched.guide.view();
    assert_eq!((view.phase, view.tally, view.seconds, view.controls.pause), (Phase::Tallying, Some(2), Some(25), false));
    watched.until(300_000);
    assert_eq!((watched.phase(), tally(&watched), end(&watched)), (Phase::Saying, (30_000, Some(2)), RunEnd::Going));
    watched.press(Press::CountOne).press(Press::Number(11));
    assert_eq!((tally(&watched), end(&watched)), ((30_000, Some(11)), RunEnd::Completed), "the person corrects the number");
    assert_eq!(watched.guide.snapshot().share(1), Share { done: 1, of: 1 });
}

#[test]
fn none_is_a_result_and_a_number_that_nobody_said_is_not() {
    let mut watched = Watched::new(COUNT, Side::Neither);
    watched.press(Press::Next).until(60_000);
    assert_eq!((tally(&watched), watched.guide.snapshot().result()), ((30_000, None), None));
    assert_eq!(watched.guide.snapshot().share(1), Share { done: 0, of: 1 });
    watched.press(Press::Number(0));
    assert_eq!(watched.guide.snapshot().result(), Some((0, true)));
}

#[test]
fn a_test_that_is_stopped_or_slept_through_keeps_its_count_and_is_no_result() {
    let mut stopped = Watched::new(COUNT, Side::Neither);
    stopped.press(Press::Next).until(10_000).press(Press::CountOne).until(17_000).press(Press::Stop);
    assert_eq!((stopped.guide.snapshot().result(), end(&stopped)), (Some((1, false)), RunEnd::Stopped));
    assert_eq!((tally(&stopped), stopped.guide.snapshot().share(1)), ((12_000, Some(1)), Share { done: 0, of: 1 }));
    let mut slept = Watched::new(COUNT, Side::Neither);
    slept.press(Press::Next).until(10_000).press(Press::CountOne);
    slept.guide.advance(after_sleep(10_100, MINUTE));
    assert_eq!((slept.guide.snapshot().result(), end(&slept)), (Some((1, false)), RunEnd::Stopped));
}

#[test]
fn a_beat_is_heard_each_second_and_the_head_is_at_the_other_end_on_each() {
    let mut watched = Watched::new(BEAT, Side::Neither);
    watched.until(5_000);
    let cues: Vec<_> = watched.guide.cues().into_iter().map(|cue| (cue.at_ms - STEADY_MS, cue.sound)).collect();
    let beats: Vec<u64> = cues.iter().filter(|(_, sound)| *sound == Sound::Beat).map(|(at, _)| *at).collect();
    assert_eq!(&beats[..9], (6..15).map(|s| s * 1000).collect::<Vec<_>>());
    assert!(beats[9] > 23_000, "not in the rest: {beats:?}");
    let (first, last) = ((5_000, Sound::Start), (15_000, Sound::Rest));
    assert!(cues[0] == first && cues.contains(&last), "{cues:?}");
    let poses: Vec<(f64, f64)> = [5_000, 6_000, 7_000, 7_500]
        .map(|at| watched.until(at).guide.view())
        .map(|view| (view.pose, view.beats.expect("on the beat")))
        .to_vec();
    assert_eq!(poses, [(0.0, 0.0), (1.0, 1.0), (0.0, 2.0), (0.5, 2.5)]);
    watched.until(60_000);
    assert_eq!((held(&watched), end(&watched)), (vec![10_000, 10_000], RunEnd::Completed));
}

#[test]
fn after_a_pause_the_beat_goes_on_where_it_was() {
    let mut watched = Watched::new(BEAT, Side::Neither);
    watched.until(8_250).press(Press::Pause);
    assert_eq!(watched.guide.cues(), []);
    assert_eq!(watched.guide.view().beats, None, "nothing swings in a pause");
    watched.until(20_000).press(Press::Resume);
    let beats = watched.guide.cues().into_iter().filter(|cue| cue.sound == Sound::Beat);
    assert_eq!(beats.map(|cue| cue.at_ms - STEADY_MS).next(), Some(20_000 + 3_000 + 750));
}

#[test]
fn the_quickest_beat_does_not_run_into_the_starting_sound() {
    let mut watched = Watched::new(Dose::Beat { repetitions: 1, seconds: 5, per_minute: 180, rest_s: 0 }, Side::Neither);
    watched.until(5_000);
    let beats: Vec<u64> =
        watched.guide.cues().into_iter().filter(|cue| cue.sound == Sound::Beat).map(|cue| cue.at_ms).collect();
    assert!(beats[0] - STEADY_MS - 5_000 >= u64::from(Sound::Start.duration_ms()), "{beats:?}");
    assert!(beats.windows(2).all(|pair| pair[1] - pair[0] == 333), "{beats:?}");
}
