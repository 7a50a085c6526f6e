//! The string of an exercise in progress, with a bob that marks the present moment.
//!
//! Lengths are in units of a box that is [`WIDTH`] wide and [`HEIGHT`] high, measured from its upper left corner, y downward.

/// Width of the box.
pub const WIDTH: f64 = 120.0;
/// Height of the box.
pub const HEIGHT: f64 = 320.0;
/// Horizontal position of the string.
pub const MIDDLE: f64 = WIDTH / 2.0;

/// Height of the bob at the beginning.
const FIRST: f64 = 34.0;
/// Height of the bob at the end.
const LAST: f64 = HEIGHT - 30.0;
/// Half the bob's height: the string ends at its upper tip and continues at its lower tip.
const TIP: f64 = 22.0;
/// How far the slack string swings out to the side when it has its full length.
const SLACK: f64 = 26.0;
/// Duration of one slow breath, in milliseconds.
const BREATH_MS: f64 = 6_000.0;
/// The share by which the slack string becomes wider with breathing in and narrower with breathing out.
const BREATH_SHARE: f64 = 0.45;
/// How slack the string still is after easing into a stretch, as a share.
const CALM: f64 = 0.25;
/// Length of one wave of the slack string.
const WAVE: f64 = 104.0;
/// Sideways movement of the bob for a sway of 1 m/s2.
const SWING_PER_MS2: f64 = 90.0;
/// Largest sideways movement of the bob, which keeps it in the box.
const MAX_SWING: f64 = MIDDLE - 18.0;
/// Sideways movement of the bob on a beat.
const BEAT_SWING: f64 = 30.0;
/// Number of points along the slack string.
const POINTS: u32 = 48;

/// The string of an exercise in progress.
#[derive(Debug, Clone, PartialEq)]
pub struct RunString {
    /// Height at which the straight string from the upper edge ends.
    pub straight_to: f64,
    /// Height of the bob's middle.
    pub bob: f64,
    /// Sideways distance of the bob from the string's line; positive to the right.
    pub swing: f64,
    /// Points of the string below the bob; empty if no string is left.
    pub below: Vec<(f64, f64)>,
    /// Height of the peg for the person's own median, if it is shown.
    pub own: Option<f64>,
    /// Height of the peg for the target, if it is shown.
    pub aim: Option<f64>,
}

impl RunString {
    /// The string with the bob moved sideways by the measured sway: `left` is the acceleration towards the person's left, m/s2. The
    /// screen faces away from the body, so left is drawn as the person would see it.
    pub fn swinging(self, left: f64) -> RunString {
        let swing = if left.is_finite() { (-left * SWING_PER_MS2).clamp(-MAX_SWING, MAX_SWING) } else { 0.0 };
        RunString { swing, ..self }
    }

    /// The string with the slack part below the bob moving like a slow breath, `held_ms` milliseconds after the hold began, so that
    /// somebody who looks from across the room sees that it goes on, and breathes as well. Unchanged for `None`.
    pub fn breathing(self, held_ms: Option<f64>) -> RunString {
        let Some(held_ms) = held_ms.filter(|ms| ms.is_finite()) else { return self };
        // It begins at rest, so that nothing jumps as the hold begins.
        let breath = libm::sin(core::f64::consts::TAU * held_ms / BREATH_MS);
        let wider = 1.0 + BREATH_SHARE * breath;
        let below = self.below.iter().map(|(x, y)| (MIDDLE + (x - MIDDLE) * wider, *y)).collect();
        RunString { below, ..self }
    }
}

/// A hold: as its time passes (`progress` 0 to 1), the bob falls, and the slack string below it becomes the straight string above
/// it.
pub fn hold(progress: f64) -> RunString {
    let progress = clamp(progress);
    let bob = fall(progress);
    RunString { straight_to: bob - TIP, bob, swing: 0.0, below: slack(bob + TIP, 1.0 - progress), own: None, aim: None }
}

/// Easing into a stretch: while `progress` goes from 0 to 1, the bob stays above and the slack string below it calms down.
pub fn easing_in(progress: f64) -> RunString {
    let bob = fall(0.0);
    let below = slack(bob + TIP, 1.0 - clamp(progress) * (1.0 - CALM));
    RunString { straight_to: bob - TIP, bob, swing: 0.0, below, own: None, aim: None }
}

/// A stretch after it was eased into: the same as a hold, with a string that is calm already.
pub fn stretch(progress: f64) -> RunString {
    let progress = clamp(progress);
    let bob = fall(progress);
    RunString {
        straight_to: bob - TIP,
        bob,
        swing: 0.0,
        below: slack(bob + TIP, CALM * (1.0 - progress)),
        own: None,
        aim: None,
    }
}

/// A repetition: the bob is low in the first position (`pose` 0) and high in the last (1). The string is straight.
pub fn reps(pose: f64) -> RunString {
    let bob = fall(1.0 - clamp(pose));
    RunString { straight_to: bob - TIP, bob, swing: 0.0, below: Vec::new(), own: None, aim: None }
}

/// Movements on a beat: the bob falls as the time passes and swings from one side to the other, where it is on each beat. `beats` is the
/// number of beats that are over; with `None` it hangs still.
pub fn beat(progress: f64, beats: Option<f64>) -> RunString {
    let bob = fall(clamp(progress));
    let beats = beats.filter(|beats| beats.is_finite());
    let swing = beats.map_or(0.0, |beats| -BEAT_SWING * libm::cos(core::f64::consts::PI * beats));
    RunString { straight_to: bob - TIP, bob, swing, below: Vec::new(), own: None, aim: None }
}

/// A balance trial without a sensor: a calm string on which the bob falls toward the target. Pegs mark the target and the person's
/// own median; `own` is the median as a share of the target.
pub fn stance(progress: f64, own: Option<f64>) -> RunString {
    let bob = fall(clamp(progress));
    let below = if bob + TIP < HEIGHT { vec![(MIDDLE, bob + TIP), (MIDDLE, HEIGHT)] } else { Vec::new() };
    RunString { straight_to: bob - TIP, bob, swing: 0.0, below, own: own.map(|part| fall(clamp(part))), aim: Some(LAST) }
}

fn fall(progress: f64) -> f64 {
    FIRST + (LAST - FIRST) * progress
}

/// A slack string from `top`, of which the share `left` (0 to 1) remains. It swings to both sides, less and less as it runs out, and
/// ends above the lower edge, because a curved string reaches less far than a straight one.
fn slack(top: f64, left: f64) -> Vec<(f64, f64)> {
    let length = (HEIGHT - top) * (1.0 - 0.22 * left);
    if left <= 0.0 || length <= 2.0 {
        return Vec::new();
    }
    let swing = SLACK * libm::sqrt(left);
    let point = |n: u32| {
        let part = f64::from(n) / f64::from(POINTS);
        let y = part * length;
        // The string leaves the bob straight downward and curves from there.
        let out = libm::sin(core::f64::consts::TAU * y / WAVE) * swing * (1.0 - libm::exp(-4.0 * part));
        (MIDDLE + out, top + y)
    };
    (0..=POINTS).map(point).collect()
}

fn clamp(part: f64) -> f64 {
    if part.is_finite() { part.clamp(0.0, 1.0) } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn steps() -> impl Iterator<Item = f64> {
        (0..=200).map(|n| f64::from(n) / 200.0)
    }

    #[test]
    fn the_bob_only_falls_and_stays_in_the_box() {
        let bobs: Vec<f64> = steps().map(|progress| hold(progress).bob).collect();
        assert!(bobs.windows(2).all(|pair| pair[1] > pair[0]));
        assert!(bobs.iter().all(|bob| bob - TIP >= 0.0 && bob + TIP <= HEIGHT));
    }

    #[test]
    fn the_slack_string_hangs_from_the_bob_and_stays_in_the_box() {
        for progress in steps() {
            let going = hold(progress);
            if let Some(first) = going.below.first() {
                assert_eq!(*first, (MIDDLE, going.bob + TIP));
            }
            assert!(going.below.iter().all(|(x, y)| (0.0..=WIDTH).contains(x) && (0.0..=HEIGHT).contains(y)));
        }
    }

    #[test]
    fn it_is_crooked_at_first_and_straight_at_the_end() {
        let widest = |progress| hold(progress).below.iter().map(|(x, _)| (x - MIDDLE).abs()).fold(0.0, f64::max);
        assert!(widest(0.0) > 20.0);
        assert!(hold(1.0).below.is_empty());
        let later: Vec<f64> = [0.0, 0.25, 0.5, 0.75].into_iter().map(widest).collect();
        assert!(later.windows(2).all(|pair| pair[1] < pair[0]), "{later:?}");
    }

    #[test]
    fn a_held_string_breathes_within_the_box_and_begins_at_rest() {
        let widest = |string: &RunString| string.below.iter().map(|(x, _)| (x - MIDDLE).abs()).fold(0.0, f64::max);
        let still = hold(0.2);
        assert_eq!(still.clone().breathing(None), still);
        assert_eq!(still.clone().breathing(Some(0.0)), still);
        assert!(widest(&still.clone().breathing(Some(BREATH_MS / 4.0))) > 1.4 * widest(&still));
        assert!(widest(&still.clone().breathing(Some(BREATH_MS * 0.75))) < 0.6 * widest(&still));
        for progress in steps() {
            let string = hold(progress).breathing(Some(progress * 40_000.0));
            assert!(string.below.iter().all(|(x, _)| (0.0..=WIDTH).contains(x)), "{progress}");
        }
    }

    #[test]
    fn a_stretch_begins_as_easing_into_it_ends_and_ends_straight() {
        assert_eq!(easing_in(1.0), stretch(0.0));
        assert_eq!(easing_in(0.0), hold(0.0));
        assert!(stretch(1.0).below.is_empty());
    }

    #[test]
    fn a_repetition_draws_the_bob_up_and_lets_it_down() {
        assert!(reps(1.0).bob < reps(0.5).bob && reps(0.5).bob < reps(0.0).bob);
    }

    #[test]
    fn on_each_beat_the_bob_is_at_the_other_side_and_without_beats_it_hangs_still() {
        let swings = [0.0, 0.5, 1.0, 2.0].map(|beats| beat(0.3, Some(beats)).swing);
        assert!(swings[0] < -20.0 && swings[1].abs() < 1e-9 && swings[2] > 20.0 && swings[3] < -20.0, "{swings:?}");
        assert_eq!([beat(0.3, None).swing, beat(0.3, Some(f64::NAN)).swing], [0.0; 2]);
        assert!(beat(0.9, None).bob > beat(0.1, None).bob);
    }

    #[test]
    fn the_pegs_of_a_trial_are_where_the_bob_will_be() {
        let going = stance(0.0, Some(0.5));
        assert_eq!(going.own, Some(stance(0.5, None).bob));
        assert_eq!(going.aim, Some(stance(1.0, None).bob));
        assert_eq!(stance(0.0, Some(7.0)).own, going.aim, "a value above the target is at the target");
    }

    #[test]
    fn the_bob_swings_to_the_side_of_the_sway_and_stays_in_the_box() {
        assert!(stance(0.5, None).swinging(0.2).swing < 0.0);
        for left in [-9.0, 9.0] {
            let swing = stance(0.5, None).swinging(left).swing;
            assert!(swing.signum() == -f64::signum(left) && MIDDLE + swing >= 15.0 && MIDDLE + swing <= WIDTH - 15.0);
        }
        assert_eq!(stance(0.5, None).swinging(f64::NAN), stance(0.5, None));
    }

    #[test]
    fn a_progress_that_is_not_a_number_is_drawn_as_zero() {
        assert_eq!(hold(f64::NAN), hold(0.0));
        assert_eq!(hold(-1.0), hold(0.0));
        assert_eq!(hold(9.0), hold(1.0));
    }
}
