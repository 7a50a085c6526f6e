//! Counted repetitions.

use crate::{REPS, Watched};
use exercises::catalogue::{Dose, Tempo};
use exercises::guide::{Beat, Phase, Press};
use exercises::plan::Side;
use exercises::run::{RunEnd, SetRecord, Work};

fn counted(watched: &Watched) -> Vec<(u8, u8)> {
    let Work::Counted(sets) = watched.guide.snapshot().work else { panic!("repetitions") };
    sets.into_iter().map(|SetRecord { done, failed, .. }| (done, failed)).collect()
}

#[test]
fn two_sets_of_three_by_the_tempo() {
    let mut watched = Watched::new(REPS, Side::Neither);
    watched.until(90_000);
    let beats: Vec<(u64, Phase)> = watched.phases().into_iter().take(4).collect();
    let expected = [
        (5_000, Phase::Beat(Beat::Up)),
        (7_000, Phase::Beat(Beat::Keep)),
        (8_000, Phase::Beat(Beat::Down)),
        (11_000, Phase::Beat(Beat::Up)),
    ];
    assert_eq!(beats, expected);
    assert_eq!((counted(&watched), watched.phase()), (vec![(3, 0), (3, 0)], Phase::Ended(RunEnd::Completed)));
}

#[test]
fn the_bob_follows_the_movement() {
    let mut watched = Watched::new(REPS, Side::Neither);
    let poses: Vec<f64> =
        [4_000, 5_000, 6_000, 7_000, 8_000, 9_500].into_iter().map(|ms| watched.until(ms).guide.view().pose).collect();
    assert_eq!(poses, [0.0, 0.0, 0.5, 1.0, 1.0, 0.5]);
}

#[test]
fn the_current_repetition_is_numbered() {
    let mut watched = Watched::new(REPS, Side::Neither);
    let shown: Vec<_> = [1_000, 6_000, 12_000, 18_000, 24_000, 42_000]
        .into_iter()
        .map(|ms| watched.until(ms).guide.view().repetition)
        .collect();
    assert_eq!(shown, [Some((1, 3)), Some((1, 3)), Some((2, 3)), Some((3, 3)), Some((3, 3)), Some((1, 3))]);
}

#[test]
fn one_tap_marks_the_current_repetition_as_failed_and_another_undoes_it() {
    let mut watched = Watched::new(REPS, Side::Neither);
    watched.until(12_000).press(Press::Failed);
    assert!(watched.guide.view().marked);
    watched.press(Press::Failed).press(Press::Failed).until(23_500);
    assert_eq!(counted(&watched), [(2, 1)]);
}

#[test]
fn the_last_repetition_can_still_be_marked_while_resting() {
    let mut watched = Watched::new(REPS, Side::Neither);
    watched.until(24_000);
    assert!(watched.guide.view().controls.failed, "the set ended a second ago");
    watched.press(Press::Failed);
    assert_eq!(counted(&watched), [(2, 1)]);
    watched.until(90_000);
    assert_eq!(counted(&watched), [(2, 1), (3, 0)]);
}

#[test]
fn a_repetition_interrupted_by_a_pause_starts_over() {
    let mut watched = Watched::new(REPS, Side::Neither);
    watched.until(16_000).press(Press::Pause);
    assert_eq!(counted(&watched), [(1, 0)]);
    watched.until(20_000).press(Press::Resume).until(23_000);
    let view = watched.guide.view();
    assert_eq!((view.phase, view.repetition, view.pose), (Phase::Beat(Beat::Up), Some((2, 3)), 0.0));
    watched.until(29_000);
    assert_eq!(counted(&watched), [(2, 0)]);
}

#[test]
fn stopping_in_a_repetition_does_not_count_it_but_a_failed_one_stays_failed() {
    let mut watched = Watched::new(REPS, Side::Neither);
    watched.until(12_000).press(Press::Failed).press(Press::Stop);
    assert_eq!(counted(&watched), [(1, 1)]);
}

#[test]
fn sets_of_both_sides_are_kept_apart() {
    let tempo = Tempo { up_s: 1, hold_s: 0, down_s: 1 };
    let mut watched = Watched::new(Dose::Reps { sets: 1, repetitions: 2, rest_s: 0, tempo }, Side::Both);
    watched.until(60_000);
    assert_eq!(counted(&watched), [(2, 0), (2, 0)]);
    let Work::Counted(sets) = watched.guide.snapshot().work else { panic!("repetitions") };
    assert_ne!(sets[0].side, sets[1].side);
}
