//! Texts about the phone during balance, and about sway.

use crate::{Key, Words};
use exercises::run::SetUp;
use exercises::sway::{Reason, ReportedFigures, Sensed, TrialQuestion};

impl Words {
    /// "At the breastbone", and what it means.
    pub fn phone_place(self, set_up: SetUp) -> (&'static str, &'static str) {
        let (name, what) = match set_up {
            SetUp::OnSupport => (Key::OnTheSupport, Key::OnTheSupportWhat),
            SetUp::AtBreastbone => (Key::AtTheBreastbone, Key::AtTheBreastboneWhat),
            SetUp::InPocket => (Key::InAPocket, Key::InAPocketWhat),
        };
        (self.text(name), self.text(what))
    }

    /// What to do with the phone and the hands, in steps, for a stand on one leg or (`by_leg` is false) on both feet. Without a
    /// sensor it may be no phone at all.
    pub fn set_up_steps(self, set_up: SetUp, has_sensor: bool, by_leg: bool) -> [&'static str; 3] {
        let [phone, hands] = match set_up {
            SetUp::OnSupport if !has_sensor && by_leg => [Key::DeviceBesideSupport, Key::HandOverDevice],
            SetUp::OnSupport if !has_sensor => [Key::DeviceBesideSupport, Key::HandOverDeviceBoth],
            SetUp::OnSupport if by_leg => [Key::PhoneOnSupport, Key::HandOverPhone],
            SetUp::OnSupport => [Key::PhoneOnSupport, Key::HandOverPhoneBoth],
            SetUp::AtBreastbone => [Key::PhoneAtBreastbone, Key::OtherHandNear],
            SetUp::InPocket => [Key::PhoneInPocket, Key::HandsNear],
        };
        [Key::SupportNear, phone, hands].map(|key| self.text(key))
    }

    /// "Did your foot touch the floor after about 14.2 s?"
    pub fn asked_after_trial(self, asked: TrialQuestion) -> String {
        match asked {
            TrialQuestion::At(s) => self.ask_touched_at(self.number(s)),
            TrialQuestion::AtAll { another: false, .. } => self.text(Key::AskTouched).to_owned(),
            TrialQuestion::AtAll { another: true, .. } => self.text(Key::AskTouchedElse).to_owned(),
        }
    }

    /// That the time still has to be confirmed, with the other possible time; `None` if it is certain.
    pub fn to_be_confirmed(self, sensed: &Sensed) -> Option<String> {
        let other = sensed.otherwise?;
        let seconds = self.seconds(other.held_ms);
        Some(if other.censored { self.not_certain_least(seconds) } else { self.not_certain(seconds) })
    }

    /// "side to side 13.9 cm/s², all directions 18.7 cm/s², path per second 117.8 cm/s³".
    pub fn sway(self, shown: &ReportedFigures) -> String {
        // Figures are in tenths of a millimetre.
        let figure = |tenths: u32| self.number(f64::from(tenths) / 100.0);
        let side = shown.rms_ml.map(|ml| self.sway_figure(self.text(Key::SwaySide), figure(ml)));
        let all = self.sway_figure(self.text(Key::SwayAllDirections), figure(shown.rms_planar));
        let path = self.sway_path_figure(self.text(Key::SwayPath), figure(shown.path_per_s));
        self.commas(&side.into_iter().chain([all, path]).collect::<Vec<_>>())
    }

    /// "Not measured: the attempt was too short"; `None` if there are figures.
    pub fn not_measured(self, sensed: &Sensed) -> Option<String> {
        let why = sensed.reasons.first().map(|reason| self.text(why(*reason)))?;
        Some(self.not_measured_because(why))
    }
}

fn why(reason: Reason) -> Key {
    match reason {
        Reason::PhoneNotWorn | Reason::Hidden | Reason::PermissionDenied | Reason::NoSensor => Key::WhyNotSensor,
        Reason::RateTooLow | Reason::TooMuchMissing | Reason::SensorStalled => Key::WhyNotSlow,
        Reason::PhoneMoved => Key::WhyNotMoved,
        Reason::WindowTooShort => Key::WhyNotShort,
        Reason::SignalBelowResolution => Key::WhyNotQuiet,
        Reason::MarksInvalid | Reason::RecordTooLong | Reason::GravityImplausible | Reason::ValuesImplausible => {
            Key::WhyNotImpossible
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    #[test]
    fn a_device_without_a_sensor_is_no_phone() {
        for (locale, phone) in [(Locale::En, "phone"), (Locale::Es, "teléfono")] {
            let words = Words::new(locale);
            for by_leg in [true, false] {
                let said = |has_sensor| words.set_up_steps(SetUp::OnSupport, has_sensor, by_leg).concat();
                assert!(said(true).contains(phone) && !said(false).contains(phone), "{}", said(false));
            }
            assert!(!words.text(Key::NoMotionSensor).contains(phone));
        }
    }

    #[test]
    fn sway_is_shown_in_centimetres() {
        let shown = ReportedFigures { rms_ml: Some(1393), rms_planar: 1866, path_per_s: 11_780 };
        let said = "side to side 13.9\u{a0}cm/s², all directions 18.7\u{a0}cm/s², path per second 117.8\u{a0}cm/s³";
        assert_eq!(Words::new(Locale::En).sway(&shown), said);
        let without = ReportedFigures { rms_ml: None, ..shown };
        assert_eq!(
            Words::new(Locale::Es).sway(&without),
            "en todas las direcciones 18,7\u{a0}cm/s², recorrido por segundo 117,8\u{a0}cm/s³"
        );
    }

    #[test]
    fn a_question_names_the_moment() {
        let words = Words::new(Locale::En);
        assert_eq!(words.asked_after_trial(TrialQuestion::At(14.277)), "Did your foot touch the floor after about 14.3 s?");
    }
}
