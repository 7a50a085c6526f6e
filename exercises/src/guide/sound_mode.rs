//! What a person wants to hear of a run.

/// What is heard. Everything heard is also seen, and felt where the device shakes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum SoundMode {
    /// Tones.
    #[default]
    Tones,
    /// Tones, and each phase in words.
    Voice,
    /// Nothing.
    Nothing,
}

impl SoundMode {
    /// What one press changes it to; a device that cannot speak leaves the voice out.
    pub fn next(self, can_speak: bool) -> SoundMode {
        match self {
            SoundMode::Tones if can_speak => SoundMode::Voice,
            SoundMode::Tones | SoundMode::Voice => SoundMode::Nothing,
            SoundMode::Nothing => SoundMode::Tones,
        }
    }

    /// What is heard in fact: a device that cannot speak still sounds.
    pub fn effective(self, can_speak: bool) -> SoundMode {
        if self == SoundMode::Voice && !can_speak { SoundMode::Tones } else { self }
    }

    /// The name under which it is kept.
    pub fn code(self) -> &'static str {
        match self {
            SoundMode::Tones => "tones",
            SoundMode::Voice => "voice",
            SoundMode::Nothing => "nothing",
        }
    }

    /// By its name; whatever is no name is as if nothing had been chosen.
    pub fn from_code(code: &str) -> SoundMode {
        let all = [SoundMode::Tones, SoundMode::Voice, SoundMode::Nothing];
        all.into_iter().find(|one| one.code() == code).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn presses_go_round_and_leave_out_a_voice_that_is_not_there() {
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
    fn names_lead_back() {
        for one in [SoundMode::Tones, SoundMode::Voice, SoundMode::Nothing] {
            assert_eq!(SoundMode::from_code(one.code()), one);
        }
        assert_eq!(SoundMode::from_code("1"), SoundMode::Tones);
    }
}
