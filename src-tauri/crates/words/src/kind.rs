//! The texts of each kind of exercise, in one place: its dose, its parts, its steps.

use crate::{Key, Words};
use exercises::adherence::DoseUnit;
use exercises::catalogue::Quantity::{
    ActivityMinutes, BeatSeconds, BeatsPerMinute, BreathEmptySeconds, BreathFullSeconds, BreathInSeconds, BreathMinutes,
    BreathOutSeconds, CareMinutes, CountSeconds, Effort, HoldSeconds, QuotaDays, QuotaGoal, QuotaMinutes, QuotaStep,
    Repetitions, RestSeconds, Sets, StretchSeconds, TargetSeconds, TempoDownSeconds, TempoHoldSeconds, TempoUpSeconds,
    Trials,
};
use exercises::catalogue::{Dose, Kind, Quantity};
use exercises::guide::{Beat, Breathing};

/// A text with one number.
type Say = fn(Words, i64) -> String;
/// Makes the sentence of a dose from the values of its fields and the texts that are shown in their places.
type Sentence = fn(Words, &[i64], &[String]) -> String;

/// The texts that belong to a kind.
struct KindTexts {
    /// Its name, in a list of exercises.
    name: Key,
    /// The label of each field of its dose.
    fields: &'static [(Quantity, Key)],
    /// The text for a change of the dose ("to 15 seconds per hold"), by the quantity that changes.
    steps: &'static [(Quantity, Say)],
    /// The current part of a run and the number of parts; empty for a kind whose runs have one part.
    part: fn(Words, u8, u8) -> String,
    /// The next part of a run and the number of parts.
    next_part: fn(Words, u8, u8) -> String,
    /// The number of parts done and the number of parts.
    done: fn(Words, u32, u32) -> String,
    /// The dose as a sentence, from the values of its fields and the texts shown in their places.
    sentence: Sentence,
    /// The same for the fields that are rarely changed; `None` if there are no such fields.
    seldom_sentence: Option<Sentence>,
}

/// A part of the sentence for a dose.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DosePart {
    /// Words between the numbers.
    Text(String),
    /// A number, as the locale writes it.
    Number(Quantity, String),
}

/// The first of the characters that mark the places of numbers while a sentence is made. They are private-use characters and occur
/// in no text.
const MARK: u32 = 0xE000;

/// The names of a movement's three beats: outward, staying, back.
const MOVEMENT: [Key; 3] = [Key::BeatGo, Key::BeatHold, Key::BeatReturn];
/// The same for a movement that goes up.
const UPWARD: [Key; 3] = [Key::BeatUp, Key::BeatHold, Key::BeatDown];

const HOLD: KindTexts = KindTexts {
    name: Key::KindHold,
    fields: &[(Repetitions, Key::DoseHolds), (HoldSeconds, Key::DoseHoldSeconds), (RestSeconds, Key::DoseRest)],
    steps: &[
        (HoldSeconds, |words, to| words.review_to_hold_seconds(to)),
        (Repetitions, |words, to| words.review_to_holds(to)),
    ],
    part: |words, n, of| words.hold_of(n, of),
    next_part: |words, n, of| words.next_hold_of(n, of),
    done: |words, done, of| words.done_holds(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([n, s, rest], [holds, seconds, pause]) => words.dose_sentence_hold(*n, holds, *s, seconds, *rest, pause),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const BALANCE: KindTexts = KindTexts {
    name: Key::KindBalance,
    fields: &[(Trials, Key::DoseTrials), (TargetSeconds, Key::DoseTarget), (RestSeconds, Key::DoseRest)],
    steps: &[(TargetSeconds, |words, to| words.review_to_target(to)), (Trials, |words, to| words.review_to_trials(to))],
    part: |words, n, of| words.attempt_of(n, of),
    next_part: |words, n, of| words.attempt_of(n, of),
    done: |words, done, of| words.done_attempts(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([n, s, rest], [attempts, seconds, pause]) => words.dose_sentence_balance(*n, attempts, *s, seconds, *rest, pause),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const LIMIT: KindTexts = KindTexts {
    name: Key::KindLimit,
    fields: &[(Trials, Key::DoseTrials), (TargetSeconds, Key::DoseCap), (RestSeconds, Key::DoseRest)],
    steps: &[(TargetSeconds, |words, to| words.review_to_cap(to)), (Trials, |words, to| words.review_to_trials(to))],
    ..BALANCE
};

const COUNT: KindTexts = KindTexts {
    name: Key::KindCount,
    fields: &[(CountSeconds, Key::DoseCountSeconds)],
    steps: &[],
    part: no_part,
    next_part: no_part,
    done: |words, done, of| words.text(if done >= of { Key::DoneTest } else { Key::StoppedTest }).to_owned(),
    sentence: |words, _, shown| match shown {
        [seconds] => words.dose_sentence_count(seconds),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const BEAT: KindTexts = KindTexts {
    name: Key::KindBeat,
    fields: &[
        (Repetitions, Key::DoseRepetitions),
        (BeatSeconds, Key::DoseSecondsEach),
        (BeatsPerMinute, Key::DoseBeats),
        (RestSeconds, Key::DoseRest),
    ],
    steps: &[
        (BeatsPerMinute, |words, to| words.review_to_beats(to)),
        (BeatSeconds, |words, to| words.review_to_beat_seconds(to)),
        (Repetitions, |words, to| words.review_to_repetitions(to)),
    ],
    part: |words, n, of| words.round_of(n, of),
    next_part: |words, n, of| words.next_round_of(n, of),
    done: |words, done, of| words.done_rounds(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([n, s, _, rest], [rounds, seconds, beats, pause]) => {
            words.dose_sentence_beat(*n, rounds, *s, seconds, beats, *rest, pause)
        }
        _ => String::new(),
    },
    seldom_sentence: None,
};

const REPS: KindTexts = KindTexts {
    name: Key::KindReps,
    fields: &[
        (Sets, Key::DoseSets),
        (Repetitions, Key::DoseRepetitions),
        (RestSeconds, Key::DoseRest),
        (TempoUpSeconds, Key::DoseTempoConcentric),
        (TempoHoldSeconds, Key::DoseTempoHold),
        (TempoDownSeconds, Key::DoseTempoEccentric),
    ],
    steps: &[(Repetitions, |words, to| words.review_to_repetitions(to)), (Sets, |words, to| words.review_to_sets(to))],
    part: |words, n, of| words.set_of(n, of),
    next_part: |words, n, of| words.next_set_of(n, of),
    done: |words, done, of| words.done_reps(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([of, n, rest, ..], [sets, repetitions, pause, ..]) => {
            words.dose_sentence_reps(*of, sets, *n, repetitions, *rest, pause)
        }
        _ => String::new(),
    },
    seldom_sentence: Some(|words, n, shown| match (n, shown) {
        ([.., out, stay, back], [.., concentric, hold, eccentric]) => {
            words.dose_sentence_tempo(*out, concentric, *stay, hold, *back, eccentric)
        }
        _ => String::new(),
    }),
};

const STRETCH: KindTexts = KindTexts {
    name: Key::KindStretch,
    fields: &[(Repetitions, Key::DoseStretches), (StretchSeconds, Key::DoseStretchSeconds), (RestSeconds, Key::DoseRest)],
    steps: &[
        (StretchSeconds, |words, to| words.review_to_stretch_seconds(to)),
        (Repetitions, |words, to| words.review_to_stretches(to)),
    ],
    part: |words, n, of| words.stretch_of(n, of),
    next_part: |words, n, of| words.next_stretch_of(n, of),
    done: |words, done, of| words.done_stretches(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([n, s, rest], [stretches, seconds, pause]) => words.dose_sentence_stretch(*n, stretches, *s, seconds, *rest, pause),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const MOVE: KindTexts = KindTexts {
    name: Key::KindMove,
    fields: &[(Repetitions, Key::DoseMovements)],
    steps: &[(Repetitions, |words, to| words.review_to_movements(to))],
    part: no_part,
    next_part: no_part,
    done: |words, done, of| words.done_reps(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([n], [movements]) => words.dose_sentence_move(*n, movements),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const GO: KindTexts = KindTexts {
    name: Key::KindGo,
    fields: &[(ActivityMinutes, Key::DoseMinutes), (Effort, Key::DoseEffort)],
    steps: &[(ActivityMinutes, |words, to| words.review_to_minutes(to))],
    part: no_part,
    next_part: no_part,
    done: done_once,
    sentence: |words, n, shown| match (n, shown) {
        ([n, _], [minutes, effort]) => words.dose_sentence_go(*n, minutes, effort),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const BREATH: KindTexts = KindTexts {
    name: Key::KindBreath,
    fields: &[
        (BreathMinutes, Key::DoseMinutes),
        (BreathInSeconds, Key::DoseBreathIn),
        (BreathFullSeconds, Key::DoseBreathFull),
        (BreathOutSeconds, Key::DoseBreathOut),
        (BreathEmptySeconds, Key::DoseBreathEmpty),
    ],
    steps: &[(BreathMinutes, |words, to| words.review_to_minutes(to))],
    part: no_part,
    next_part: no_part,
    done: done_once,
    sentence: |words, n, shown| match (n, shown) {
        ([n, ..], [minutes, ..]) => words.dose_sentence_minutes(*n, minutes),
        _ => String::new(),
    },
    seldom_sentence: Some(|words, _, shown| match shown {
        [_, breath_in, full, out, empty] => words.dose_sentence_pace(breath_in, full, out, empty),
        _ => String::new(),
    }),
};

const CARE: KindTexts = KindTexts {
    name: Key::KindCare,
    fields: &[(CareMinutes, Key::DoseMinutes)],
    steps: &[(CareMinutes, |words, to| words.review_to_minutes(to))],
    part: no_part,
    next_part: no_part,
    done: done_once,
    sentence: |words, n, shown| match (n, shown) {
        ([n], [minutes]) => words.dose_sentence_minutes(*n, minutes),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const QUOTA: KindTexts = KindTexts {
    name: Key::KindQuota,
    fields: &[
        (QuotaMinutes, Key::DoseQuotaMinutes),
        (QuotaStep, Key::DoseQuotaStep),
        (QuotaDays, Key::DoseQuotaDays),
        (QuotaGoal, Key::DoseQuotaGoal),
    ],
    steps: &[(QuotaMinutes, |words, to| words.review_to_minutes(to))],
    part: no_part,
    next_part: no_part,
    done: done_once,
    sentence: |words, n, shown| match (n, shown) {
        ([n, _, d, _], [minutes, step, days, goal]) => words.dose_sentence_quota(*n, minutes, step, *d, days, goal),
        _ => String::new(),
    },
    seldom_sentence: None,
};

const QUOTA_TIMES: KindTexts = KindTexts {
    name: Key::KindQuotaTimes,
    fields: &[
        (Repetitions, Key::DoseQuotaTimes),
        (QuotaStep, Key::DoseQuotaStep),
        (QuotaDays, Key::DoseQuotaDays),
        (QuotaGoal, Key::DoseQuotaGoal),
    ],
    steps: &[(Repetitions, |words, to| words.review_to_times(to))],
    done: |words, done, of| words.done_reps(of, done),
    sentence: |words, n, shown| match (n, shown) {
        ([n, _, d, _], [times, step, days, goal]) => words.dose_sentence_quota_times(*n, times, step, *d, days, goal),
        _ => String::new(),
    },
    ..QUOTA
};

const PROMPT: KindTexts = KindTexts {
    name: Key::KindPrompt,
    fields: &[],
    steps: &[],
    part: no_part,
    next_part: no_part,
    done: done_once,
    sentence: |words, _, _| words.text(Key::DoseSentencePrompt).to_owned(),
    seldom_sentence: None,
};

fn no_part(_: Words, _: u8, _: u8) -> String {
    String::new()
}

fn done_once(words: Words, done: u32, of: u32) -> String {
    words.text(if done >= of { Key::DoneOnce } else { Key::NotDone }).to_owned()
}

const fn texts(kind: Kind) -> &'static KindTexts {
    match kind {
        Kind::Hold => &HOLD,
        Kind::Balance => &BALANCE,
        Kind::Reps => &REPS,
        Kind::Stretch => &STRETCH,
        Kind::Move => &MOVE,
        Kind::Go => &GO,
        Kind::Breath => &BREATH,
        Kind::Care => &CARE,
        Kind::Prompt => &PROMPT,
        Kind::Limit => &LIMIT,
        Kind::Count => &COUNT,
        Kind::Beat => &BEAT,
        Kind::Quota => &QUOTA,
        Kind::QuotaTimes => &QUOTA_TIMES,
    }
}

impl Words {
    /// "holds".
    pub fn kind(self, kind: Kind) -> &'static str {
        self.text(texts(kind).name)
    }

    /// "3 holds of 10 seconds".
    pub fn dose(self, dose: Dose) -> String {
        match dose {
            Dose::Hold { repetitions, hold_s, .. } => self.dose_hold(repetitions, hold_s),
            Dose::Balance { trials, target_s, .. } => self.dose_balance(trials, target_s),
            Dose::Beat { repetitions, seconds, per_minute, .. } => self.dose_beat(repetitions, seconds, per_minute),
            Dose::Count { seconds } => self.dose_count(seconds),
            Dose::Limit { trials, cap_s, .. } => self.dose_balance(trials, cap_s),
            Dose::Reps { sets: 1, repetitions, .. } => self.dose_reps(repetitions),
            Dose::Reps { sets, repetitions, .. } => self.dose_reps_sets(repetitions, sets),
            Dose::Stretch { repetitions, stretch_s, .. } => self.dose_stretch(repetitions, stretch_s),
            Dose::Move { repetitions } => self.dose_move(repetitions),
            Dose::Go { minutes, effort } => self.dose_go(minutes, effort),
            Dose::Breath { minutes, pace } => self.dose_breath(minutes, pace.in_s, pace.out_s),
            Dose::Care { minutes } => self.dose_care(minutes),
            Dose::Prompt => self.text(Key::DosePrompt).to_owned(),
            Dose::Quota { minutes, step, every_days, goal } => {
                self.with_growth(self.dose_care(minutes), (minutes, step, every_days, goal))
            }
            Dose::QuotaTimes { times, step, every_days, goal } => {
                self.with_growth(self.dose_times(times), (times, step, every_days, goal))
            }
        }
    }

    /// "10 minutes, 2 more every 3 days, up to 30"; the amount alone once it grows no more.
    fn with_growth(self, amount: String, (now, step, every_days, goal): (u8, u8, u8, u8)) -> String {
        if step == 0 || now >= goal { amount } else { self.dose_grows(every_days, &amount, step, goal) }
    }

    /// The dose as a sentence, in parts: the fields that are often changed, or with `seldom` the others. Empty if there are none.
    pub fn dose_sentence(self, dose: Dose, seldom: bool) -> Vec<DosePart> {
        let texts = texts(dose.kind());
        let Some(say) = (if seldom { texts.seldom_sentence } else { Some(texts.sentence) }) else { return Vec::new() };
        let marks = || (MARK..).map_while(char::from_u32);
        let values = dose.values();
        let sentence = say(self, &values, &marks().take(values.len()).map(String::from).collect::<Vec<_>>());
        let number = |mark: char| {
            let at = marks().take(values.len()).position(|other| other == mark)?;
            Some(DosePart::Number(dose.fields().get(at)?.quantity, self.shown(*values.get(at)?)))
        };
        let mut parts = Vec::new();
        for letter in sentence.chars() {
            match (number(letter), parts.last_mut()) {
                (Some(part), _) => parts.push(part),
                (None, Some(DosePart::Text(text))) => text.push(letter),
                (None, _) => parts.push(DosePart::Text(letter.to_string())),
            }
        }
        parts
    }

    /// How much of a dose was done: `done` and `of` in its unit, and the share in whole percent.
    pub(crate) fn part_of_dose(self, unit: DoseUnit, done: u32, of: u32, percent: u32) -> String {
        match unit {
            DoseUnit::HoldSeconds => self.review_dose_seconds(of, done, percent),
            DoseUnit::Repetitions => self.review_dose_repetitions(of, done, percent),
            DoseUnit::Trials => self.review_dose_trials(of, done, percent),
            DoseUnit::BeatSeconds => self.review_dose_on_beat(of, done, percent),
            DoseUnit::StretchSeconds => self.review_dose_stretch(of, done, percent),
            DoseUnit::Minutes => self.review_dose_minutes(of, done, percent),
            DoseUnit::Times => self.review_dose_times(of, done, percent),
        }
    }

    /// The label of a quantity of a dose of `kind`.
    pub fn quantity(self, quantity: Quantity, kind: Kind) -> &'static str {
        of(texts(kind).fields, quantity).map_or("", |key| self.text(key))
    }

    /// "to 15 seconds per hold": a change of a dose of `kind` that sets `quantity` to `to`.
    pub fn dose_step(self, kind: Kind, quantity: Quantity, to: i64) -> String {
        of(texts(kind).steps, quantity).map(|say| say(self, to)).unwrap_or_default()
    }

    /// "Hold 2 of 3", or "Next: hold 2 of 3".
    pub fn part_of_kind(self, kind: Kind, number: u8, of: u8, comes_next: bool) -> String {
        let texts = texts(kind);
        let say = if comes_next { texts.next_part } else { texts.part };
        say(self, number, of)
    }

    /// "Go", "Hold", "Return", or for a movement that `moves_up` "Up", "Hold", "Down".
    pub fn beat(self, moves_up: bool, beat: Beat) -> &'static str {
        let [up, keep, down] = if moves_up { UPWARD } else { MOVEMENT };
        self.text(match beat {
            Beat::Up => up,
            Beat::Keep => keep,
            Beat::Down => down,
        })
    }

    /// "Effort aimed at: 3 of 10."; `None` for a dose without one.
    pub fn effort_of(self, dose: Dose) -> Option<String> {
        if let Dose::Go { effort, .. } = dose { Some(self.effort_aim(effort)) } else { None }
    }

    /// "Breathe in", "Stay", "Breathe out".
    pub fn breathing(self, part: Breathing) -> &'static str {
        self.text(match part {
            Breathing::In => Key::BreatheIn,
            Breathing::Out => Key::BreatheOut,
            Breathing::Full | Breathing::Empty => Key::BreathStay,
        })
    }

    /// "2 of 3 holds completed."
    pub(crate) fn parts_done(self, kind: Kind, done: u32, of: u32) -> String {
        (texts(kind).done)(self, done, of)
    }
}

fn of<T: Copy>(table: &[(Quantity, T)], quantity: Quantity) -> Option<T> {
    table.iter().find(|(other, _)| *other == quantity).map(|(_, text)| *text)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::catalogue::Tempo;
    use exercises::catalogue::kind::BreathPace;

    #[test]
    fn a_sentence_contains_every_number_of_a_dose_once() {
        let reps = Dose::Reps { sets: 1, repetitions: 12, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 1, down_s: 3 } };
        let doses = [
            Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 1 },
            Dose::Balance { trials: 1, target_s: 30, rest_s: 0 },
            reps,
            Dose::Stretch { repetitions: 3, stretch_s: 20, rest_s: 10 },
            Dose::Move { repetitions: 10 },
            Dose::Go { minutes: 20, effort: 3 },
            Dose::Breath { minutes: 5, pace: BreathPace { in_s: 4, full_s: 0, out_s: 6, empty_s: 0 } },
            Dose::Care { minutes: 15 },
            Dose::Prompt,
            Dose::Limit { trials: 3, cap_s: 20, rest_s: 20 },
            Dose::Count { seconds: 30 },
            Dose::Beat { repetitions: 3, seconds: 30, per_minute: 60, rest_s: 20 },
        ];
        for locale in Locale::ALL {
            for dose in doses {
                let parts = [false, true].map(|seldom| Words::new(*locale).dose_sentence(dose, seldom)).concat();
                let mut said: Vec<Quantity> = parts
                    .iter()
                    .filter_map(|part| if let DosePart::Number(quantity, _) = part { Some(*quantity) } else { None })
                    .collect();
                let mut all: Vec<Quantity> = dose.fields().iter().map(|field| field.quantity).collect();
                said.sort();
                all.sort();
                assert_eq!(said, all, "{} {dose:?}", locale.tag());
            }
        }
    }

    #[test]
    fn the_words_of_a_sentence_depend_on_its_numbers() {
        let said = |dose, seldom| {
            let parts = Words::new(Locale::En).dose_sentence(dose, seldom);
            parts.into_iter().map(|part| match part {
                DosePart::Text(text) => text,
                DosePart::Number(_, number) => format!("[{number}]"),
            })
        };
        let hold = Dose::Hold { repetitions: 1, hold_s: 10, rest_s: 5 };
        assert_eq!(said(hold, false).collect::<String>(), "[1] hold of [10] seconds, with [5] seconds of rest in between");
        assert_eq!(said(hold, true).count(), 0);
        let reps = Dose::Reps { sets: 2, repetitions: 8, rest_s: 60, tempo: Tempo { up_s: 2, hold_s: 1, down_s: 3 } };
        assert_eq!(
            said(reps, true).collect::<String>(),
            "Each repetition: [2] seconds concentric, [1] second hold, [3] seconds eccentric"
        );
    }

    #[test]
    fn a_movement_that_goes_up_is_called_so() {
        let beats = |words: Words, moves_up| [Beat::Up, Beat::Keep, Beat::Down].map(|beat| words.beat(moves_up, beat));
        assert_eq!(beats(Words::new(Locale::En), true), ["Up", "Hold", "Down"]);
        assert_eq!(beats(Words::new(Locale::En), false), ["Go", "Hold", "Return"]);
        assert_eq!(beats(Words::new(Locale::Es), true), ["Suba", "Mantenga", "Baje"]);
    }

    #[test]
    fn every_field_and_every_step_of_every_kind_has_its_text() {
        let words = Words::new(Locale::En);
        for kind in Kind::ALL {
            let rules = kind.rules();
            let labels = rules.fields().iter().map(|field| words.quantity(field.quantity, *kind));
            assert!(labels.clone().all(|label| !label.is_empty()), "{kind:?}: {:?}", labels.collect::<Vec<_>>());
            let changed = rules.forward().iter().map(|step| step.quantity).chain(rules.back().iter().map(|(q, _)| *q));
            for quantity in changed {
                assert!(words.dose_step(*kind, quantity, 7).contains('7'), "{kind:?} {quantity:?}");
            }
        }
    }
}
