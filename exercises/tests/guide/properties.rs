//! Properties that hold whatever is pressed, in whatever order, at whatever times.

use crate::{STEADY_MS, WALL_MS, run};
use exercises::catalogue::{Dose, Tempo};
use exercises::guide::{Guide, GuideEvent, Moment, Phase, Press};
use exercises::plan::Side;
use exercises::run::{Run, RunEnd, Work};
use proptest::prelude::*;

fn dose() -> impl Strategy<Value = Dose> {
    let hold =
        (1u8..6, 1u16..30, 0u16..40).prop_map(|(repetitions, hold_s, rest_s)| Dose::Hold { repetitions, hold_s, rest_s });
    let reps =
        (1u8..4, 1u8..6, 0u16..40, 1u8..4, 0u8..3, 1u8..4).prop_map(|(sets, repetitions, rest_s, up_s, hold_s, down_s)| {
            Dose::Reps { sets, repetitions, rest_s, tempo: Tempo { up_s, hold_s, down_s } }
        });
    let balance =
        (1u8..5, 5u16..60, 0u16..40).prop_map(|(trials, target_s, rest_s)| Dose::Balance { trials, target_s, rest_s });
    prop_oneof![hold, reps, balance]
}

fn side() -> impl Strategy<Value = Side> {
    prop_oneof![Just(Side::Left), Just(Side::Right), Just(Side::Both)]
}

#[derive(Debug, Clone, Copy)]
enum Act {
    /// Time passes on both clocks.
    Pass(u64),
    /// Both clocks jump by any amount; a steady clock that goes back does so for one look only.
    Jump(i64, i64),
    Press(Press),
    Hide,
}

fn act() -> impl Strategy<Value = Act> {
    let press = prop_oneof![
        Just(Press::Touch),
        Just(Press::Pause),
        Just(Press::Resume),
        Just(Press::Next),
        Just(Press::MoreRest),
        Just(Press::Failed),
    ];
    prop_oneof![
        12 => (1u64..2_500).prop_map(Act::Pass),
        5 => press.prop_map(Act::Press),
        1 => Just(Act::Hide),
        1 => (-100_000i64..100_000, -100_000i64..10_000_000).prop_map(|(steady, wall)| Act::Jump(steady, wall)),
    ]
}

/// Carries out the acts and passes every state in between to `look`.
fn play(dose: Dose, side: Side, acts: &[Act], mut look: impl FnMut(&Guide, Moment, &[GuideEvent])) -> Guide {
    let mut now = Moment { steady_ms: STEADY_MS, wall_ms: WALL_MS };
    let mut guide = Guide::new(run(dose), side, now).expect("the dose fits");
    for act in acts {
        let events = match act {
            Act::Pass(ms) => {
                now = Moment { steady_ms: now.steady_ms + ms, wall_ms: now.wall_ms + *ms as i64 };
                guide.advance(now)
            }
            Act::Jump(steady, wall) => {
                let jumped = Moment { steady_ms: now.steady_ms.saturating_add_signed(*steady), wall_ms: now.wall_ms + wall };
                now = Moment { steady_ms: now.steady_ms.max(jumped.steady_ms), ..jumped };
                guide.advance(jumped)
            }
            Act::Press(press) => guide.press(*press, now),
            Act::Hide => guide.window_hidden(now),
        };
        look(&guide, now, &events);
    }
    guide
}

/// The amount done, in the units of the dose.
fn done(run: &Run) -> u64 {
    match &run.work {
        Work::Timed(holds) => holds.iter().map(|held| u64::from(held.held_ms)).sum(),
        Work::Counted(sets) => sets.iter().map(|set| u64::from(set.done)).sum(),
        Work::Balance(balance) => balance.trials.iter().map(|trial| u64::from(trial.held_ms)).sum(),
        Work::Tally(tally) => tally.held_ms.into(),
    }
}

proptest! {
    #[test]
    fn nothing_that_is_done_exceeds_what_was_asked_for(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..400)) {
        let sides = side.in_turn().len();
        play(dose, side, &acts, |guide, _, _| {
            let run = guide.snapshot();
            let fits = match (dose, &run.work) {
                (Dose::Hold { repetitions, hold_s, .. }, Work::Timed(holds)) => {
                    holds.len() <= usize::from(repetitions) * sides
                        && holds.iter().all(|held| held.held_ms <= u32::from(hold_s) * 1000)
                }
                (Dose::Reps { sets: asked, repetitions, .. }, Work::Counted(sets)) => {
                    sets.len() <= usize::from(asked) * sides && sets.iter().all(|set| set.done + set.failed <= repetitions)
                }
                (Dose::Balance { trials, target_s, .. }, Work::Balance(balance)) => {
                    balance.trials.len() <= usize::from(trials) * sides
                        && balance.trials.iter().all(|trial| trial.held_ms <= u32::from(target_s) * 1000)
                }
                _ => false,
            };
            assert!(fits, "{run:?}");
        });
    }

    #[test]
    fn the_time_done_never_exceeds_the_time_observed(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..400)) {
        prop_assume!(!matches!(dose, Dose::Reps { .. }));
        let mut seen = 0;
        let mut latest = STEADY_MS;
        play(dose, side, &acts, |guide, now, _| {
            // After more than ten seconds without a look, nothing is known about what happened in between.
            let step = now.steady_ms.saturating_sub(latest);
            seen += if step > 10_000 { 0 } else { step };
            latest = latest.max(now.steady_ms);
            assert!(done(&guide.snapshot()) <= seen, "done {} of {seen} seen", done(&guide.snapshot()));
        });
    }

    #[test]
    fn the_amount_done_never_decreases(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..400)) {
        // A repetition may be marked as failed later, so only kinds with times are compared.
        prop_assume!(!matches!(dose, Dose::Reps { .. }));
        let mut before = 0;
        play(dose, side, &acts, |guide, _, _| {
            let now = done(&guide.snapshot());
            assert!(now >= before, "{now} after {before}");
            before = now;
        });
    }

    #[test]
    fn a_pause_holds_nothing(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..200)) {
        let mut before: Option<Run> = None;
        play(dose, side, &acts, |guide, _, events| {
            let run = guide.snapshot();
            if let Some(before) = before.take() {
                assert_eq!(run.work, before.work);
                assert!(run.paused_ms >= before.paused_ms);
            }
            let paused = matches!(guide.view().phase, Phase::Paused { .. });
            before = (paused && events.is_empty()).then_some(run);
        });
    }

    #[test]
    fn what_is_shown_is_within_its_bounds(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..400)) {
        play(dose, side, &acts, |guide, _, _| {
            let view = guide.view();
            assert!((0.0..=1.0).contains(&view.progress) && (0.0..=1.0).contains(&view.pose), "{view:?}");
            assert!((1..=view.part.of).contains(&view.part.number));
            assert!(view.repetition.is_none_or(|(number, of)| (1..=of).contains(&number)));
            if view.phase == Phase::Trial {
                assert!(view.controls.touch && !view.controls.stop && !view.controls.pause && !view.controls.next);
            }
            let pauses = [view.controls.pause, view.controls.resume];
            assert!(pauses != [true, true], "a pause cannot be both begun and ended");
        });
    }

    #[test]
    fn cues_are_in_order_and_ahead(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..200)) {
        play(dose, side, &acts, |guide, _, _| {
            let cues = guide.cues();
            assert!(cues.windows(2).all(|pair| pair[0].at_ms <= pair[1].at_ms));
            if matches!(guide.view().phase, Phase::Waiting | Phase::Paused { .. } | Phase::Ended(_)) {
                assert!(cues.is_empty());
            }
        });
    }

    #[test]
    fn the_end_is_final_and_reported_once(dose in dose(), side in side(), acts in prop::collection::vec(act(), 0..400), after in prop::collection::vec(act(), 0..40)) {
        let stop = [Act::Press(Press::Touch), Act::Pass(1_500), Act::Press(Press::Stop)];
        let all: Vec<Act> = acts.iter().chain(&stop).chain(&after).copied().collect();
        let mut told = 0;
        let guide = play(dose, side, &all, |_, _, events| {
            told += events.iter().filter(|event| matches!(event, GuideEvent::Ended(_))).count();
        });
        prop_assert_eq!(told, 1);
        prop_assert!(matches!(guide.snapshot().end, RunEnd::Stopped | RunEnd::Completed));
    }

    #[test]
    fn no_sequence_of_moments_panics(dose in dose(), side in side(), moments in prop::collection::vec((any::<u64>(), any::<i64>()), 1..30)) {
        let at = |(steady_ms, wall_ms)| Moment { steady_ms, wall_ms };
        let mut guide = Guide::new(run(dose), side, at(moments[0])).expect("the dose fits");
        for (turn, moment) in moments.into_iter().enumerate() {
            let press = [Press::Next, Press::Resume, Press::Pause, Press::MoreRest, Press::Failed][turn % 5];
            guide.press(press, at(moment));
            guide.cues();
            guide.view();
            guide.snapshot();
        }
    }
}
