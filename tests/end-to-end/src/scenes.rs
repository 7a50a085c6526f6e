//! Starting points of tests and of the tour: plans, and what somebody did with them. All of it is invented.

use crate::{Desktop, Opening, Prescribed, Window};
use std::path::{Path, PathBuf};

/// A plan with one hold an hour, with the permission to change the level or dose.
pub const HOLD: &str = r#"
review = 2027-04-12
age = "18-39"

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = { repetitions = 3, seconds = 10, rest = 10 }
every = { minutes = 60, from = "09:00", to = "17:00" }
days = "every-day"
may_step = true
"#;

/// A plan with two balance trials, with any set-up of the phone.
pub const BALANCE: &str = r#"
review = 2027-04-12
age = "18-39"
absent = ["high-fall-risk", "vertigo-or-fainting", "numb-feet", "neurological-unsteadiness", "partial-weight-bearing", "fresh-injury", "severe-osteoporosis", "sedatives-or-alcohol", "cognitive-impairment", "late-pregnancy"]

[[item]]
number = 1
exercise = "one-leg-stand"
side = "left"
balance = { trials = 2, target = 30, rest = 0 }
at = ["09:00"]
days = "every-day"
may_step = false

[[stance]]
leg = "left"
surface = "firm"
eyes = "open"
seconds = 9.0
"#;

/// A plan with an hourly hold and balance in the evening, for a complaint and with a named activity.
const BOTH: &str = r#"
review = 2027-04-12
age = "40-49"
absent = ["high-fall-risk", "vertigo-or-fainting", "numb-feet", "neurological-unsteadiness", "partial-weight-bearing", "fresh-injury", "severe-osteoporosis", "sedatives-or-alcohol", "cognitive-impairment", "late-pregnancy"]

[[complaint]]
number = 1
name = "upper back"
pain = 6

[[activity]]
number = 1
name = "carry the shopping home"
rating = 4

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = { repetitions = 3, seconds = 10, rest = 10 }
every = { minutes = 60, from = "09:00", to = "17:00" }
days = "every-day"
serves = 1

[[item]]
number = 2
exercise = "one-leg-stand"
side = "both"
balance = { trials = 3, target = 30, rest = 30 }
at = ["19:00"]
days = "every-day"

[[stance]]
leg = "left"
surface = "firm"
eyes = "open"
seconds = 12.0

[[stance]]
leg = "right"
surface = "firm"
eyes = "open"
seconds = 15.5
"#;

/// The doses of a plan with a hold at nine, repetitions at ten and trials of balance at eleven, as a plan file writes them.
pub struct Doses {
    /// Of the hold.
    pub hold: &'static str,
    /// Of the repetitions.
    pub reps: &'static str,
    /// Of the trials on the left leg.
    pub balance: &'static str,
}

fn one_of_each_kind(doses: &Doses) -> String {
    let Doses { hold, reps, balance } = doses;
    format!(
        r#"
review = 2027-04-12
age = "18-39"
absent = ["high-fall-risk", "vertigo-or-fainting", "numb-feet", "neurological-unsteadiness", "partial-weight-bearing", "fresh-injury", "severe-osteoporosis", "sedatives-or-alcohol", "cognitive-impairment", "late-pregnancy"]

[[item]]
number = 1
exercise = "sit-tall-chin-back"
hold = {hold}
at = ["09:00"]
days = "every-day"

[[item]]
number = 2
exercise = "heel-raise"
reps = {reps}
at = ["10:00"]
days = "every-day"

[[item]]
number = 3
exercise = "one-leg-stand"
side = "left"
balance = {balance}
at = ["11:00"]
days = "every-day"

[[stance]]
leg = "left"
surface = "firm"
eyes = "open"
seconds = 9.0
"#
    )
}

/// When the cards of these plans were taken.
pub const TAKEN: &str = "2027-03-01T08:30:00+01:00";
/// The moment at which a change of the dose is offered.
pub const STEP_DUE: &str = "2027-03-08T09:00:30+01:00";
/// The evening of the last of four weeks.
pub const FOUR_WEEKS_ON: &str = "2027-03-28T20:30:00+02:00";
/// The time zone of all scenes.
pub const ZONE: &str = "Europe/Vienna";

impl Desktop {
    /// A week in which every hold was done and hardly hurt: the rules propose a change.
    #[track_caller]
    pub fn with_a_step_ahead(&self) -> Prescribed {
        let made = self.prescribe(HOLD, TAKEN);
        let day = |day: u32| {
            let holds = (9..=17).map(|hour| held(day, hour, 2, 10)).collect::<String>();
            format!("{holds}{{\"do\":\"hurt\",\"at\":\"2027-03-{day:02}T17:10:00+01:00\",\"item\":1,\"score\":1}}\n")
        };
        self.record(&made, "2027-03-07T20:00:00+01:00", &(1..=7).map(day).collect::<String>());
        made
    }

    /// An exercise of each kind with these doses, of which the window is to be opened a little after this time on the first day.
    #[track_caller]
    pub fn with_one_of_each_kind(&self, doses: &Doses, time: &str) -> Opening<'_> {
        self.prescribe(&one_of_each_kind(doses), TAKEN);
        self.open("patient").at(&format!("2027-03-01T{time}:30+01:00")).zone(ZONE)
    }
    /// Four weeks of holds and balance, with some mistaken entries on the last day.
    #[track_caller]
    pub fn with_four_weeks(&self) -> Prescribed {
        let made = self.prescribe(BOTH, TAKEN);
        let weeks = (1..=27).map(a_day).collect::<String>() + LAST_DAY;
        self.record(&made, FOUR_WEEKS_ON, &weeks);
        made
    }

    #[track_caller]
    fn record(&self, made: &Prescribed, at: &str, deeds: &str) {
        let file = self.path("deeds.jsonl");
        std::fs::write(&file, deeds).expect("the desktop's folder is writable");
        made.patient(at, &["record", &file.to_string_lossy()]);
    }
}

impl Window {
    /// Starts the exercise that is due, past what is to be read before.
    #[track_caller]
    pub fn start_what_is_due(&self) {
        self.press("Start");
        self.press("I have read this. Start");
    }
}
/// A balance trial recorded with a phone on the body: this file of the analyses' own tests.
pub fn recorded_trial(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../exercises/tests/data/sway").join(format!("{name}.csv"))
}

fn held(day: u32, hour: u32, minute: u32, last_s: u32) -> String {
    let at = format!("2027-03-{day:02}T{hour:02}:{minute:02}:00+01:00");
    format!("{{\"do\":\"run\",\"at\":\"{at}\",\"item\":1,\"held\":[10,10,{last_s}]}}\n")
}

/// A day's entries: most hourly holds, six balance trials in the evening, then pain; the seconds differ from day to day without
/// being random.
fn a_day(day: u32) -> String {
    let hours = (9..=17).filter(|hour| !(day + hour).is_multiple_of(5));
    let holds = hours.map(|hour| held(day, hour, (day * 7 + hour * 3) % 40, 10 - (day + hour) % 3)).collect::<String>();
    let trial = |place: u32| {
        let leg = if place.is_multiple_of(2) { "left" } else { "right" };
        let ms = 9_000 + (day * 6 + place).wrapping_mul(2_654_435_761) % (300 * day + 4_000);
        format!("{{\"leg\":\"{leg}\",\"seconds\":{}.{:03},\"end\":\"touch\"}}", ms / 1000, ms % 1000)
    };
    let trials = (0..6).map(trial).collect::<Vec<_>>().join(",");
    let evening = format!("2027-03-{day:02}T19:");
    format!(
        "{holds}{{\"do\":\"run\",\"at\":\"{evening}04:00+01:00\",\"item\":2,\"trials\":[{trials}]}}\n\
         {{\"do\":\"pain\",\"at\":\"{evening}12:00+01:00\",\"complaint\":1,\"score\":{}}}\n",
        6 - day / 7
    )
}

const LAST_DAY: &str = r#"{"do":"settled","at":"2027-03-28T08:40:00+02:00","complaint":1,"settled":true}
{"do":"run","at":"2027-03-28T09:04:00+02:00","item":1,"held":[10,10,10]}
{"do":"skip","at":"2027-03-28T10:05:00+02:00","item":1,"reason":"no-time"}
{"do":"run","at":"2027-03-28T11:10:00+02:00","item":1,"live":false,"held":[10,10,10]}
{"do":"days-off","at":"2027-03-28T12:00:00+02:00","from":"2027-03-29","until":"2027-03-31","why":"travelling"}
{"do":"activity","at":"2027-03-28T18:00:00+02:00","activity":1,"score":5}
{"do":"trouble","at":"2027-03-28T19:10:00+02:00","what":"nearly-fell","item":2}
{"do":"pain","at":"2027-03-28T19:20:00+02:00","complaint":1,"score":9}
"#;
