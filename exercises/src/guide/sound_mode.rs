//! The person's choice of sound during a run.

/// What is audible during a run. Everything is also visible, and felt if the device can vibrate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum SoundMode {
    /// Tones.
    #[default]
    Tones,
    /// Tones, and each phase in spoken words.
    Voice,
    /// No sound.
    Nothing,
}

impl SoundMode {
    /// The next choice when the button is pressed; without a voice on this device, `Voice` is skipped.
    pub fn next(self, can_speak: bool) -> SoundMode {
        match self {
            SoundMode::Tones if can_speak => SoundMode::Voice,
            SoundMode::Tones | SoundMode::Voice => SoundMode::Nothing,
            SoundMode::Nothing => SoundMode::Tones,
        }
    }

    /// The mode that is used: without a voice on this device, `Voice` becomes tones.
    pub fn effective(self, can_speak: bool) -> SoundMode {
        if self == SoundMode::Voice && !can_speak { SoundMode::Tones } else { self }
    }

    /// The name under which it is stored.
    pub fn code(self) -> &'static str {
        match self {
            SoundMode::Tones => "tones",
            SoundMode::Voice => "voice",
            SoundMode::Nothing => "nothing",
        }
    }

    /// The mode of this name; for any other text the default.
    pub fn from_code(code: &str) -> SoundMode {
        let all = [SoundMode::Tones, SoundMode::Voice, SoundMode::Nothing];
        all.into_iter().find(|one| one.code() == code).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn presses_go_round_and_skip_the_voice_if_there_is_none() {
        let round = |can_speak: bool| {
            let mut now = SoundMode::default();
            [(); 4].map(|()| {
                let was = now;
                now = now.next(can_speak);
                was
            })
        };
        assert_eq!(round(true), [SoundMode::Tones, SoundMode::Voice, SoundMode::Nothing, SoundMode::Tones]);
        assert_eq!(round(false), [SoundMode::Tones, SoundMode::Nothing, SoundMode::Tones, SoundMode::Nothing]);
        assert_eq!(SoundMode::Voice.next(false), SoundMode::Nothing);
        assert_eq!(SoundMode::Voice.effective(false), SoundMode::Tones);
        assert_eq!(SoundMode::Nothing.effective(false), SoundMode::Nothing);
    }

    #[test]
    fn codes_round_trip() {
        for one in [SoundMode::Tones, SoundMode::Voice, SoundMode::Nothing] {
            assert_eq!(SoundMode::from_code(one.code()), one);
        }
        assert_eq!(SoundMode::from_code("1"), SoundMode::Tones);
    }
}
