//! Input and output of a run: presses, phases, events.

use super::step::{Beat, Breathing};
use crate::run::RunEnd;

/// What the person can press. [`super::Controls`] says which presses are possible at the moment; any other press has no effect.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Press {
    /// A touch anywhere on the screen.
    Touch,
    /// "Pause".
    Pause,
    /// "Continue" after a pause.
    Resume,
    /// One movement at one's own pace is done.
    CountOne,
    /// All movements at one's own pace are done.
    AllDone,
    /// So many movements were completed in the time of a test.
    Number(u8),
    /// So many minutes were done in the time that nobody saw.
    Minutes(u8),
    /// Starts the next part now: begins a trial's count-in, or ends a rest.
    Next,
    /// "More rest".
    MoreRest,
    /// "That one failed": the current repetition, or the last one.
    Failed,
    /// "Stop".
    Stop,
    /// "Something is wrong": the person has a complaint.
    Trouble,
}

/// What is going on at the moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Phase {
    /// Waits for the person to start the next trial.
    Waiting,
    /// Counting in.
    CountIn,
    /// A hold.
    Holding,
    /// Easing into a stretch.
    EasingIn,
    /// A stretch.
    Stretching,
    /// Movements at the person's own pace.
    OwnPace,
    /// A time that needs no guidance.
    Timing,
    /// Waits until the person has said how long it was.
    Confirming,
    /// Movements on a beat.
    OnBeat,
    /// The time of a test in which the person counts movements.
    Tallying,
    /// Waits until the person has said how many there were.
    Saying,
    /// One part of a breath.
    Breathing(Breathing),
    /// One beat of a repetition.
    Beat(Beat),
    /// A balance trial.
    Trial,
    /// The moment after a trial, in which presses have no effect.
    Settling,
    /// A rest.
    Resting,
    /// Paused.
    Paused {
        /// Whether the pause is due to the device's sleep and not to a press.
        slept: bool,
    },
    /// The run has ended.
    Ended(RunEnd),
}

/// What happened, for the code that drives the guide.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GuideEvent {
    /// A new phase began.
    Entered(Phase),
    /// The device slept, or the program did not run; the run may have gone on by the clock.
    Interrupted,
    /// The run so far should be logged.
    Checkpoint,
    /// The run ended.
    Ended(RunEnd),
}
