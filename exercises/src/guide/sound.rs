//! The sounds of a run as notes. They are defined here; the player only follows the numbers.
//!
//! Each sound differs from the others in the course of its pitch alone, so that loudness, timbre or a trained ear are not needed and
//! the person can look elsewhere. Pitches stay between 200 and 1,100 Hz, which are still audible with age-related hearing loss (ISO
//! 7029:2017 puts the losses above 2 kHz).

use crate::choice::array;
use strum::VariantArray;

/// A sound that tells something.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
pub enum Sound {
    /// Three, two, one.
    CountIn,
    /// A hold or a trial begins.
    Start,
    /// Half of the hold or trial is over.
    Half,
    /// A part is over; rest.
    Rest,
    /// The rest is over; the next part begins when the person starts it.
    Ready,
    /// The run is over.
    End,
    /// The outward movement of a repetition.
    Up,
    /// The return movement of a repetition.
    Down,
    /// Breathe in.
    BreathIn,
    /// Breathe out.
    BreathOut,
    /// One beat of a movement on a beat.
    Beat,
}

impl Sound {
    /// All of them.
    pub const ALL: [Sound; Sound::VARIANTS.len()] = array(Sound::VARIANTS);

    /// Its notes, in order and without overlap.
    pub fn notes(self) -> &'static [Note] {
        match self {
            Sound::CountIn => const { &[Note::level(0, 90, 523)] },
            Sound::Start => const { &[Note::level(0, 120, 523), Note::level(130, 260, 784)] },
            Sound::Half => const { &[Note::level(0, 70, 659), Note::level(140, 70, 659)] },
            Sound::Rest => const { &[Note::level(0, 120, 659), Note::level(130, 300, 440)] },
            Sound::Ready => const { &[Note::level(0, 110, 659), Note::level(120, 110, 523), Note::level(240, 240, 784)] },
            Sound::End => const { &[Note::level(0, 140, 784), Note::level(150, 140, 587), Note::level(300, 480, 392)] },
            Sound::Up => const { &[Note::glide(0, 320, 349, 587)] },
            Sound::Down => const { &[Note::glide(0, 320, 587, 349)] },
            Sound::BreathIn => const { &[Note::glide(0, 520, 220, 294), Note::level(530, 340, 294)] },
            Sound::Beat => const { &[Note::glide(0, 40, 440, 659), Note::glide(45, 50, 659, 440)] },
            Sound::BreathOut => const { &[Note::glide(0, 520, 294, 220), Note::level(530, 340, 220)] },
        }
    }

    /// Its duration, in milliseconds.
    pub fn duration_ms(self) -> u32 {
        self.notes().iter().map(|note| u32::from(note.at_ms) + u32::from(note.for_ms)).max().unwrap_or(0)
    }
}

/// One note.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Note {
    /// When the note begins, in milliseconds after the sound's beginning.
    pub at_ms: u16,
    /// Duration of the note, in milliseconds.
    pub for_ms: u16,
    /// Pitch at the beginning, in hertz.
    pub from_hz: u16,
    /// Pitch at the end, in hertz.
    pub to_hz: u16,
}

impl Note {
    const fn level(at_ms: u16, for_ms: u16, hz: u16) -> Note {
        Note { at_ms, for_ms, from_hz: hz, to_hz: hz }
    }

    const fn glide(at_ms: u16, for_ms: u16, from_hz: u16, to_hz: u16) -> Note {
        Note { at_ms, for_ms, from_hz, to_hz }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::cmp::Ordering;
    use std::collections::BTreeSet;

    /// The course of the pitch: within each note, and from each note to the next.
    fn contour(sound: Sound) -> Vec<Ordering> {
        let pitches: Vec<u16> = sound.notes().iter().flat_map(|note| [note.from_hz, note.to_hz]).collect();
        pitches.windows(2).map(|pair| pair[1].cmp(&pair[0])).collect()
    }

    #[test]
    fn each_sound_has_a_contour_of_its_own() {
        let contours: BTreeSet<Vec<Ordering>> = Sound::ALL.into_iter().map(contour).collect();
        assert_eq!(contours.len(), Sound::ALL.len());
    }

    #[test]
    fn pitch_steps_are_wide_enough_to_be_heard() {
        for sound in Sound::ALL {
            let pitches: Vec<f64> = sound.notes().iter().flat_map(|n| [n.from_hz.into(), n.to_hz.into()]).collect();
            for pair in pitches.windows(2).filter(|pair| pair[0] != pair[1]) {
                let semitones = 12.0 * (pair[1] / pair[0]).log2().abs();
                assert!(semitones >= 3.5, "{sound:?} steps by {semitones:.1} semitones");
            }
        }
    }

    #[test]
    fn notes_follow_each_other_within_a_second_and_within_hearing() {
        for sound in Sound::ALL {
            for pair in sound.notes().windows(2) {
                assert!(pair[0].at_ms + pair[0].for_ms < pair[1].at_ms, "{sound:?} overlaps itself");
            }
            assert!((1..1000).contains(&sound.duration_ms()), "{sound:?} lasts {} ms", sound.duration_ms());
            assert!(sound.notes().iter().all(|n| (200..=1100).contains(&n.from_hz) && (200..=1100).contains(&n.to_hz)));
        }
    }

    #[test]
    fn the_sounds_of_the_shortest_repetition_do_not_run_into_each_other() {
        assert!(Sound::Beat.duration_ms() < 60_000 / 180, "the quickest beat");
        assert!(Sound::Up.duration_ms() < 1000 && Sound::Down.duration_ms() < 1000, "the shortest beat is a second");
    }
}
