//! What goes in and comes out of a run: presses, phases, events.

use super::step::Beat;
use crate::run::RunEnd;

/// What the person can press. Whether it means anything just then, [`super::Controls`] says; what means nothing does nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Press {
    /// Anywhere on the screen.
    Touch,
    /// "Pause".
    Pause,
    /// "Go on" after a pause.
    Resume,
    /// The next one now: begins a trial's count-in, ends a rest.
    Next,
    /// "More rest".
    MoreRest,
    /// "That one failed": the repetition that goes on, or the last one.
    Failed,
    /// "Stop".
    Stop,
    /// "Something is wrong" and something was.
    Trouble,
}

/// What is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Phase {
    /// Waits for the person: the next trial begins when they say so.
    Waiting,
    /// Counting in.
    CountIn,
    /// A hold.
    Holding,
    /// A beat of a repetition.
    Beat(Beat),
    /// A balance trial: everything on the screen ends it.
    Trial,
    /// The moment after a trial, in which nothing can be pressed.
    Settling,
    /// A rest.
    Resting,
    /// On pause.
    Paused {
        /// The device slept; the person did not ask for it.
        slept: bool,
    },
    /// Over.
    Ended(RunEnd),
}

/// What happened, for whoever drives the guide.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GuideEvent {
    /// Another phase is on.
    Entered(Phase),
    /// The device slept, or the program stood still.
    Interrupted,
    /// The run should be logged as far as it got.
    Checkpoint,
    /// It is over.
    Ended(RunEnd),
}
