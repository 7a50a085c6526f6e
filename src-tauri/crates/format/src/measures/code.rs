//! The names of what is measured, in tables and as codes of our own in medical records. Names are for good.

use crate::names::{Named, name};
use exercises::alarm::{Circumstance, Trouble};
use exercises::catalogue::{Eyes, PrescriberFlag, Surface};
use exercises::log::Barrier;
use exercises::run::SetUp;
use exercises::visit::{Advice, Moment};

macro_rules! codes {
    ($($(#[doc = $doc:literal])+ $code:ident $name:literal $display:literal,)+) => {
        /// What is measured, or a part of it.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Code {
            $($(#[doc = $doc])+ $code,)+
        }

        impl Code {
            /// All of them, each with its name and what it says.
            pub(crate) const ALL: &'static [(Code, &'static str, &'static str)] = &[$((Code::$code, $name, $display)),+];
        }
    };
}

codes! {
    /// The plan, its orders and everything that was measured in it.
    HomeExercise "home-exercise" "Home exercise",
    /// Sessions done in full, in percent of those planned.
    Adherence "adherence-percent" "Sessions done in full of those planned",
    /// Sessions that were planned and are over.
    Planned "sessions-planned" "Sessions planned",
    /// Of those, done in full.
    Done "sessions-done" "Sessions done in full",
    /// Of those, done in part.
    Partial "sessions-partial" "Sessions done in part",
    /// Of those, not done on days without any record.
    NotRecorded "sessions-not-recorded" "Sessions on days without any record",
    /// Sessions on days off, which were not planned.
    DayOff "sessions-on-days-off" "Sessions on days off",
    /// Sessions that an alarm paused, which were not planned.
    Paused "sessions-paused" "Sessions paused after a warning sign",
    /// The longest stretch of days on which it was planned and nothing was done.
    LongestGap "longest-gap-days" "Longest stretch of planned days without a session",
    /// How often it was done while it was to be done as needed.
    AsNeeded "times-as-needed" "Times done as needed",
    /// The longest time of the day standing on one leg at home, timed by the person.
    OneLegStance "single-leg-stance-time" "Single-leg stance at home, longest time of the day",
    /// The longest time of the day in another position to balance in.
    Stance "stance-time" "Balance position at home, longest time of the day",
    /// The median of the day's times.
    StanceMedian "stance-time-median" "Median time of the day",
    /// Trials that were measured.
    Trials "trials" "Trials measured",
    /// What was stood on.
    SurfaceStoodOn "surface" "Surface stood on",
    /// Where the phone was.
    PhonePlace "phone-place" "Place of the phone",
    /// Pain of a complaint in the morning, 0 to 10.
    MorningPain "pain-in-the-morning" "Pain in the morning, 0 to 10",
    /// The highest pain while doing it, 0 to 10.
    DuringPain "pain-while-exercising" "Highest pain while exercising, 0 to 10",
    /// Days with a rating of it.
    DaysRated "days-rated" "Days with a rating",
    /// Result of a test by repetitions in a set time.
    Repetitions "repetitions-in-time" "Repetitions in a set time",
    /// That time.
    TestSeconds "test-seconds" "Length of the test",
    /// How well an activity goes that the patient named, 0 (cannot) to 10 (as before).
    Activity "activity-rating" "Rating of an activity that the patient named, 0 cannot, 10 as before",
    /// A warning sign that the patient said, or pain above the limit of an item.
    Alarm "alarm" "Warning sign at home",
    /// Whether the clinic has cleared it.
    AlarmCleared "alarm-cleared" "Cleared by the clinic",
    /// Whether the patient says that it was a mistake.
    AlarmMistaken "alarm-said-mistaken" "Said by the patient to be a mistake",
    /// Whether the device's clock was wrong, so that the day is not known.
    DayNotKnown "day-not-known" "Day not known, the device's clock was wrong",
    /// What was answered about it.
    CircumstanceOf "circumstance" "Circumstance of the warning sign",
    /// The rating above the limit, 0 to 10.
    PainRated "pain-rated" "Pain rated, 0 to 10",
    /// The limit, 0 to 10.
    PainLimit "pain-limit" "Highest pain allowed, 0 to 10",
    /// How often each reason was given for skipping a session.
    Reasons "reasons-for-skipping" "Reasons given for skipping sessions",
    /// Pain of a complaint at a visit, 0 to 10.
    VisitPain "visit-pain" "Pain at a visit, 0 to 10",
    /// How it is altogether at a visit, compared with the visit before, -5 to 5.
    VisitChange "visit-change" "Change since the last visit, -5 very much worse, 5 very much better",
    /// Pain in a movement at a visit, 0 to 10.
    VisitMovementPain "visit-movement-pain" "Pain in a movement at a visit, 0 to 10",
    /// How far a movement goes at a visit.
    VisitMotion "visit-range-of-motion" "Range of a movement at a visit",
    /// Strength of the grip at a visit, the best of the trials.
    VisitGrip "visit-grip-strength" "Grip strength at a visit, best of the trials",
    /// Risings from a chair in 30 s at a visit, the best of the trials.
    VisitChairRise "visit-chair-rise" "Risings from a chair in 30 s at a visit, best of the trials",
    /// Time on one leg at a visit, the best of the trials.
    VisitStance "visit-single-leg-stance-time" "Single-leg stance at a visit, best of the trials",
    /// A measure of the clinician's own.
    VisitOther "visit-measure" "Another measure at a visit",
    /// What was asked about before anything was prescribed.
    VisitScreening "visit-screening" "Screening at a visit",
    /// A fall in the last twelve months.
    VisitFell "visit-fall-last-year" "Fall in the last twelve months",
    /// A note of the clinician's.
    VisitNote "visit-note" "Note of the clinician at a visit",
    /// A proposal of the program that the clinician did not follow.
    VisitOverridden "visit-proposal-not-followed" "Proposal not followed",
    /// When in the visit something was measured.
    VisitMoment "visit-moment" "Before or after treatment",
    /// The result of one trial.
    VisitTrial "visit-trial" "Result of one trial",
    /// The side of the body.
    VisitSide "visit-side" "Side of the body",
    /// What the patient or the clinician said of it.
    VisitWords "visit-words" "In words",
}

impl Code {
    fn entry(self) -> Option<&'static (Code, &'static str, &'static str)> {
        Code::ALL.iter().find(|(code, ..)| *code == self)
    }

    /// Its name.
    pub fn name(self) -> &'static str {
        self.entry().map_or("", |(_, name, _)| name)
    }

    /// Whether it is of a visit, and not of the time at home.
    pub(crate) fn is_of_visit(self) -> bool {
        self.name().starts_with("visit-")
    }

    /// What it says, in English as all names are.
    pub(crate) fn display(self) -> &'static str {
        self.entry().map_or("", |(.., display)| display)
    }
}

/// A value out of a fixed list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Choice {
    /// The list, which begins the value's code.
    pub list: &'static str,
    /// The value's name in files.
    pub value: &'static str,
}

/// The lists out of which values are chosen.
trait Listed: Named + PartialEq {
    const LIST: &'static str;
}

macro_rules! listed {
    ($($choice:ident $list:literal),+) => {
        $(impl Listed for $choice {
            const LIST: &'static str = $list;
        })+

        impl Choice {
            /// All values of all lists.
            pub fn all() -> Vec<Choice> {
                let mut all = Vec::new();
                $(all.extend($choice::NAMES.iter().map(|(value, _)| Choice { list: $list, value }));)+
                all
            }
        }

        $(impl From<$choice> for Choice {
            fn from(value: $choice) -> Choice {
                Choice { list: <$choice as Listed>::LIST, value: name(&value) }
            }
        })+
    };
}

listed! {
    Trouble "alarm", Circumstance "circumstance", Barrier "reason", Eyes "eyes", Surface "surface", SetUp "phone", PrescriberFlag "condition",
    Advice "proposal", Moment "treatment"
}

impl Choice {
    /// "alarm-fell".
    pub fn code(self) -> String {
        format!("{}-{}", self.list, self.value)
    }

    /// "alarm: fell".
    pub fn display(self) -> String {
        format!("{}: {}", self.list, self.value.replace('-', " "))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn no_two_codes_have_one_name() {
        let own = Code::ALL.iter().map(|(_, name, _)| (*name).to_owned());
        let all: Vec<String> = own.chain(Choice::all().into_iter().map(Choice::code)).collect();
        assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), all.len());
        let plain = |name: &String| name.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'-');
        assert!(all.iter().all(plain), "{all:?}");
    }

    #[test]
    fn each_code_has_its_own_line() {
        for (code, name, display) in Code::ALL {
            assert_eq!((code.name(), code.display()), (*name, *display));
        }
    }
}
