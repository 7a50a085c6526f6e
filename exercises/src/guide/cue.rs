//! The sounds that come without a press, with their times, so that they can be scheduled ahead on the audio clock.

use super::course::Guide;
use super::sound::Sound;
use super::stage::Stage;
use super::step::{Beat, Breathing, COUNT_IN_MS, Step, StepKind};

/// How far ahead sounds are given, in milliseconds. A hidden window still asks every two seconds.
pub const AHEAD_MS: u64 = 30_000;
/// Least length of a hold or trial that has a half-way sound, in milliseconds.
const HALF_FROM_MS: u64 = 6_000;
/// Time between two beats of a count-in, in milliseconds.
const COUNT_MS: u64 = 1_000;

/// A sound and its time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Cue {
    /// Time on the steady clock, in milliseconds.
    pub at_ms: u64,
    /// The sound.
    pub sound: Sound,
}

impl Guide {
    /// The sounds within the next [`AHEAD_MS`], assuming that the person presses nothing. Each call returns all of them; after a
    /// press, the sounds returned earlier are no longer valid.
    pub fn cues(&self) -> Vec<Cue> {
        let now = self.now_ms();
        let mut cues = Vec::new();
        let (mut step, mut since, mut extra, from) = match self.stage {
            Stage::Going { step, since, extra } => (step, since, extra, now),
            Stage::LeadIn { step, until, done } => (step, until.saturating_sub(done), 0, until),
            Stage::Paused { .. } | Stage::Ended(_) => return cues,
        };
        while let Some(this) = self.steps.get(step).copied() {
            if this.kind.is_open() {
                cues.extend((this.kind == StepKind::OwnPace).then_some(Cue { at_ms: since, sound: Sound::Start }));
                break;
            }
            let length = this.ms.saturating_add(extra);
            cues.extend(self.of_step(this, step, since, length));
            (step, since, extra) = (step + 1, since.saturating_add(length), 0);
            if since > now.saturating_add(AHEAD_MS) {
                break;
            }
        }
        cues.retain(|cue| cue.at_ms >= from);
        if let Stage::LeadIn { until, done, .. } = self.stage {
            count_in(until, &mut cues);
            cues.extend((done > 0).then_some(Cue { at_ms: until, sound: Sound::Start }));
        }
        cues.retain(|cue| cue.at_ms >= now && cue.at_ms <= now.saturating_add(AHEAD_MS));
        cues.sort();
        let ahead = self.ahead_ms();
        cues.into_iter().map(|cue| Cue { at_ms: cue.at_ms.saturating_sub(ahead), ..cue }).collect()
    }

    fn of_step(&self, this: Step, step: usize, since: u64, length: u64) -> Vec<Cue> {
        let end = since.saturating_add(length);
        let over = if self.over_after(step) { Sound::End } else { Sound::Rest };
        let at = |at_ms, sound| Cue { at_ms, sound };
        let mut cues = Vec::new();
        match this.kind {
            StepKind::CountIn => count_in(end, &mut cues),
            StepKind::EaseIn => cues.push(at(since, Sound::Up)),
            StepKind::Breath(_, part) => {
                cues.extend(of_breath(part).map(|sound| at(since, sound)));
                if step + 1 == self.steps.len() {
                    cues.push(at(end, over));
                }
            }
            StepKind::Hold | StepKind::Stretch | StepKind::Timer | StepKind::Tally | StepKind::Trial => {
                cues.push(at(since, Sound::Start));
                if this.ms >= HALF_FROM_MS {
                    cues.push(at(since.saturating_add(this.ms / 2), Sound::Half));
                }
                cues.push(at(end, over));
            }
            StepKind::OnBeat(each_ms) => {
                cues.push(at(since, Sound::Start));
                cues.extend(beats(each_ms, this.ms).map(|ms| at(since.saturating_add(ms), Sound::Beat)));
                cues.push(at(end, over));
            }
            StepKind::Beat(_, Beat::Up) => cues.push(at(since, Sound::Up)),
            StepKind::Beat(_, Beat::Keep) => {}
            StepKind::Beat(_, Beat::Down) => {
                cues.push(at(since, Sound::Down));
                if !matches!(self.steps.get(step + 1).map(|next| next.kind), Some(StepKind::Beat(..))) {
                    cues.push(at(end, over));
                }
            }
            // A rest before a count-in needs no sound, because the count-in is audible. A rest before a wait ends with a call.
            StepKind::Rest if self.steps.get(step + 1).is_some_and(|next| next.kind == StepKind::Wait) => {
                cues.push(at(end, Sound::Ready))
            }
            StepKind::Rest | StepKind::Settle | StepKind::Wait | StepKind::OwnPace | StepKind::Confirm | StepKind::Say => {}
        }
        cues
    }

    fn over_after(&self, step: usize) -> bool {
        self.steps[step + 1..].iter().all(|next| matches!(next.kind, StepKind::Settle | StepKind::Confirm | StepKind::Say))
    }
}

/// The sound with which a part of a breath begins.
fn of_breath(part: Breathing) -> Option<Sound> {
    match part {
        Breathing::In => Some(Sound::BreathIn),
        Breathing::Out => Some(Sound::BreathOut),
        Breathing::Full | Breathing::Empty => None,
    }
}

/// The milliseconds at which beats are heard in `length` of them. The first would run into the starting sound, one at the end into the
/// last sound.
fn beats(each_ms: u64, length: u64) -> impl Iterator<Item = u64> {
    let all = (1..).map(move |beat| beat * each_ms).take_while(move |ms| *ms < length);
    all.skip_while(|ms| *ms < u64::from(Sound::Start.duration_ms()))
}

/// Adds the sounds of "three, two, one", the last one a second before `until`.
fn count_in(until: u64, cues: &mut Vec<Cue>) {
    let first = until.saturating_sub(COUNT_IN_MS);
    cues.extend((0..COUNT_IN_MS / COUNT_MS).map(|n| Cue { at_ms: first + n * COUNT_MS, sound: Sound::CountIn }));
}
