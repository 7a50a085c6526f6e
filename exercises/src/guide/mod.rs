//! Guides a run: what is going on, for how long, what the person can press, what is logged. Pure; the time is an argument.
//!
//! The course of a run is computed in advance (`step`), so that sounds can be scheduled ahead on the audio clock ([`Guide::cues`])
//! and a window that is called late loses no time. Only time that was observed counts as held: a pause never counts, and if the
//! device slept, a hold counts up to the last look at the clock before.

mod audio_clock;
mod course;
mod cue;
mod event;
mod moment;
mod press;
mod record;
mod sound;
mod sound_mode;
mod stage;
mod step;
mod view;

pub use audio_clock::AudioClock;
pub use course::{CHECKPOINT_MS, Guide};
pub use cue::{AHEAD_MS, Cue};
pub use event::{GuideEvent, Phase, Press};
pub use moment::{Moment, SLEPT_MS, STALLED_MS};
pub use press::MORE_REST_MS;
pub use record::{BalanceResult, balance_results};
pub use sound::{Note, Sound};
pub use sound_mode::SoundMode;
pub use step::{
    BALANCE_COUNT_IN_MS, BREASTBONE_COUNT_IN_MS, Beat, Breathing, CHANGE_SIDES_MS, COUNT_IN_MS, EASE_IN_MS,
    FIRST_COUNT_IN_MS, POCKET_COUNT_IN_MS, Part, SETTLE_MS,
};
pub use view::{Controls, GuideView};
