//! Plays the sounds of a run: made with Web Audio from the domain's notes, and scheduled ahead on the audio clock.

use std::cell::RefCell;

use exercises::guide::{AudioClock, Cue, Note, SoundMode};
use js_sys::Reflect;
use leptos::prelude::window;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{AudioContext, AudioContextState, OscillatorNode, OscillatorType};

use super::voice;
use crate::shared::clock;

/// Volume of a note, 0 to 1. Low, because others in an office hear it too.
const LOUD: f32 = 0.22;
/// Time in which a note fades in, in seconds, so that it does not click.
const SWELL_S: f64 = 0.012;
/// Time in which a note fades out, in seconds.
const FADE_S: f64 = 0.06;
/// A sound that comes sooner than this is not rescheduled, in milliseconds.
const NEAR_MS: f64 = 300.0;
/// The name under which the web view stores the person's choice of sound.
const HEARING: &str = "hearing";

thread_local! {
    static AUDIO: RefCell<Option<Audio>> = const { RefCell::new(None) };
}

struct Audio {
    context: AudioContext,
    clock: AudioClock,
    /// Sounds that were scheduled and are not over yet.
    ahead: Vec<Told>,
}

/// A sound that was scheduled.
struct Told {
    cue: Cue,
    /// Its time on the audio clock, in seconds.
    at: f64,
    notes: Vec<OscillatorNode>,
}

impl Told {
    fn silence(&self) {
        self.notes.iter().for_each(|note| note.disconnect().unwrap_or_default());
    }
}

/// Must be called by a press, because a web view plays no sound before one. It never waits for the result: without a press, or
/// without a sound card, there may never be one.
pub fn unlock() {
    AUDIO.with_borrow_mut(|audio| {
        if audio.is_none() {
            *audio =
                AudioContext::new().ok().map(|context| Audio { context, clock: AudioClock::default(), ahead: Vec::new() });
        }
        if let Some(Ok(resumed)) = audio.as_ref().map(|audio| audio.context.resume()) {
            spawn_local(async move {
                // With or without sound the run continues, because everything audible is also visible.
                let _ = JsFuture::from(resumed).await;
            });
        }
    });
}

/// Schedules the sounds that were not scheduled yet.
pub fn schedule(cues: &[Cue]) {
    if sound_mode() == SoundMode::Nothing {
        return;
    }
    AUDIO.with_borrow_mut(|audio| {
        let Some(audio) = audio.as_mut().filter(|audio| audio.context.state() == AudioContextState::Running) else { return };
        let now = clock::steady_ms();
        audio.clock.sync(now, audio.context.current_time());
        audio.ahead.retain(|told| told.cue.at_ms as f64 + f64::from(told.cue.sound.duration_ms()) > now);
        // The estimate of the audio clock is better now than when these sounds were scheduled.
        audio.ahead.retain(|told| {
            let at_ms = told.cue.at_ms as f64;
            let again = at_ms > now + NEAR_MS && audio.clock.has_moved(at_ms, told.at);
            if again {
                told.silence();
            }
            !again
        });
        for cue in cues {
            if audio.ahead.iter().all(|told| told.cue != *cue) {
                let at = audio.clock.at(cue.at_ms as f64).unwrap_or_default().max(audio.context.current_time());
                let notes = cue.sound.notes().iter().filter_map(|note| play(&audio.context, *note, at)).collect();
                audio.ahead.push(Told { cue: *cue, at, notes });
            }
        }
    });
}

/// Cancels all scheduled sounds.
pub fn silence() {
    AUDIO.with_borrow_mut(|audio| {
        let Some(audio) = audio.as_mut() else { return };
        let now = clock::steady_ms();
        // A sound that is already playing may end by itself.
        audio.ahead.drain(..).filter(|told| told.cue.at_ms as f64 > now).for_each(|told| told.silence());
    });
}

/// The person's choice of sound.
pub fn sound_mode() -> SoundMode {
    let kept = kept().and_then(|kept| kept.get_item(HEARING).ok().flatten());
    kept.map_or(SoundMode::default(), |code| SoundMode::from_code(&code))
}

/// Sets the person's choice of sound.
pub fn set_sound_mode(sound_mode: SoundMode) {
    if let Some(kept) = kept() {
        // A web view that stores nothing uses tones next time.
        let _ = kept.set_item(HEARING, sound_mode.code());
    }
    if sound_mode == SoundMode::Nothing {
        silence();
    }
    if sound_mode != SoundMode::Voice {
        voice::stop();
    }
}

fn kept() -> Option<web_sys::Storage> {
    window().local_storage().ok().flatten()
}

fn play(context: &AudioContext, note: Note, at: f64) -> Option<OscillatorNode> {
    let (start, length) = (at + f64::from(note.at_ms) / 1000.0, f64::from(note.for_ms) / 1000.0);
    let end = start + length;
    let tone = context.create_oscillator().ok()?;
    let loud = context.create_gain().ok()?;
    tone.set_type(OscillatorType::Triangle);
    tone.frequency().set_value_at_time(note.from_hz.into(), start).ok()?;
    tone.frequency().linear_ramp_to_value_at_time(note.to_hz.into(), end).ok()?;
    let gain = loud.gain();
    gain.set_value_at_time(0.0, start).ok()?;
    gain.linear_ramp_to_value_at_time(LOUD, start + SWELL_S).ok()?;
    gain.set_value_at_time(LOUD, (end - FADE_S).max(start + SWELL_S)).ok()?;
    gain.linear_ramp_to_value_at_time(0.0, end).ok()?;
    tone.connect_with_audio_node(&loud).ok()?;
    loud.connect_with_audio_node(&context.destination()).ok()?;
    tone.start_with_when(start).ok()?;
    tone.stop_with_when(end + 0.02).ok()?;
    Some(tone)
}

/// Vibrates in this pattern, if the device can: vibration and pause in turn, in milliseconds.
pub fn shake(pattern: &[u16]) {
    let navigator = window().navigator();
    let Ok(Ok(vibrate)) = Reflect::get(&navigator, &"vibrate".into()).map(|v| v.dyn_into::<js_sys::Function>()) else {
        return;
    };
    let pattern: js_sys::Array = pattern.iter().map(|ms| wasm_bindgen::JsValue::from(*ms)).collect();
    // If the device refuses to vibrate, nothing happens.
    let _ = vibrate.call1(&navigator, &pattern);
}
