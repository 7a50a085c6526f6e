//! The sounds that come without a press.

use crate::{BALANCE, HOLD, REPS, STEADY_MS, Watched};
use exercises::catalogue::Dose;
use exercises::guide::{AHEAD_MS, Cue, Press, Sound};
use exercises::plan::Side;

fn heard(watched: &Watched) -> Vec<(u64, Sound)> {
    watched.guide.cues().into_iter().map(|Cue { at_ms, sound }| (at_ms - STEADY_MS, sound)).collect()
}

#[test]
fn the_sounds_of_a_hold_are_known_from_the_beginning() {
    let watched = Watched::new(Dose::Hold { repetitions: 1, hold_s: 10, rest_s: 0 }, Side::Neither);
    let expected = [
        (2_000, Sound::CountIn),
        (3_000, Sound::CountIn),
        (4_000, Sound::CountIn),
        (5_000, Sound::Start),
        (10_000, Sound::Half),
        (15_000, Sound::End),
    ];
    assert_eq!(heard(&watched), expected);
}

#[test]
fn only_the_last_part_ends_with_the_sound_for_the_end() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(1_000);
    assert!(heard(&watched).contains(&(15_000, Sound::Rest)));
    watched.until(40_000);
    assert!(heard(&watched).contains(&(55_000, Sound::End)));
}

#[test]
fn sounds_are_scheduled_only_as_far_ahead_as_they_can_be_cancelled() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    for ms in (0..55_000).step_by(500) {
        watched.until(ms);
        assert!(heard(&watched).iter().all(|(at, _)| (ms..=ms + AHEAD_MS).contains(at)));
    }
}

#[test]
fn a_pause_is_silent_and_a_lead_in_begins_the_hold_again() {
    let mut watched = Watched::new(HOLD, Side::Neither);
    watched.until(11_000).press(Press::Pause);
    assert_eq!(heard(&watched), []);
    watched.until(20_000).press(Press::Resume);
    let expected = [
        (20_000, Sound::CountIn),
        (21_000, Sound::CountIn),
        (22_000, Sound::CountIn),
        (23_000, Sound::Start),
        (27_000, Sound::Rest),
    ];
    assert_eq!(heard(&watched)[..5], expected, "the half was heard before the pause");
}

#[test]
fn a_repetition_has_a_sound_for_each_direction() {
    let mut watched = Watched::new(REPS, Side::Neither);
    watched.until(4_500);
    let expected = [
        (5_000, Sound::Up),
        (8_000, Sound::Down),
        (11_000, Sound::Up),
        (14_000, Sound::Down),
        (17_000, Sound::Up),
        (20_000, Sound::Down),
        (23_000, Sound::Rest),
    ];
    assert_eq!(heard(&watched)[..7], expected);
}

#[test]
fn a_trial_is_silent_until_begun_and_its_rest_ends_with_a_sound() {
    let mut watched = Watched::new(BALANCE, Side::Left);
    assert_eq!(heard(&watched), []);
    watched.press(Press::Next);
    assert!(heard(&watched).contains(&(5_000, Sound::Start)));
    watched.until(15_000);
    assert!(heard(&watched).contains(&(20_000, Sound::Half)) && heard(&watched).contains(&(35_000, Sound::Rest)));
    watched.press(Press::Touch).until(17_000);
    assert_eq!(heard(&watched), [(46_000, Sound::Ready)]);
}
