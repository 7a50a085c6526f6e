//! What a person wants to hear of a run.

/// What is heard. Everything heard is also seen, and felt where the device shakes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Hearing {
    /// Tones.
    #[default]
    Tones,
    /// Tones, and each phase in words.
    Voice,
    /// Nothing.
    Nothing,
}

impl Hearing {
    /// What one press changes it to; a device that cannot speak leaves the voice out.
    pub fn next(self, can_speak: bool) -> Hearing {
        match self {
            Hearing::Tones if can_speak => Hearing::Voice,
            Hearing::Tones | Hearing::Voice => Hearing::Nothing,
            Hearing::Nothing => Hearing::Tones,
        }
    }

    /// What is heard in fact: a device that cannot speak still sounds.
    pub fn heard(self, can_speak: bool) -> Hearing {
        if self == Hearing::Voice && !can_speak { Hearing::Tones } else { self }
    }

    /// The name under which it is kept.
    pub fn code(self) -> &'static str {
        match self {
            Hearing::Tones => "tones",
            Hearing::Voice => "voice",
            Hearing::Nothing => "nothing",
        }
    }

    /// By its name; whatever is no name is as if nothing had been chosen.
    pub fn of_code(code: &str) -> Hearing {
        let all = [Hearing::Tones, Hearing::Voice, Hearing::Nothing];
        all.into_iter().find(|one| one.code() == code).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn presses_go_round_and_leave_out_a_voice_that_is_not_there() {
        let round = |can_speak: bool| {
            let mut now = Hearing::default();
            [(); 4].map(|()| {
                let was = now;
                now = now.next(can_speak);
                was
            })
        };
        assert_eq!(round(true), [Hearing::Tones, Hearing::Voice, Hearing::Nothing, Hearing::Tones]);
        assert_eq!(round(false), [Hearing::Tones, Hearing::Nothing, Hearing::Tones, Hearing::Nothing]);
        assert_eq!(Hearing::Voice.next(false), Hearing::Nothing);
        assert_eq!(Hearing::Voice.heard(false), Hearing::Tones);
        assert_eq!(Hearing::Nothing.heard(false), Hearing::Nothing);
    }

    #[test]
    fn names_lead_back() {
        for one in [Hearing::Tones, Hearing::Voice, Hearing::Nothing] {
            assert_eq!(Hearing::of_code(one.code()), one);
        }
        assert_eq!(Hearing::of_code("1"), Hearing::Tones);
    }
}
