//! What a clinician prescribes: items of the real catalogue, and the plan file that they make.

use chrono::{Days, NaiveDate};

/// Days after the first card until the next visit; long enough for all people here.
const UNTIL_VISIT: u64 = 100;

/// The dose of one run on one side.
#[derive(Debug, Clone, Copy)]
pub enum Dose {
    /// Holds, and seconds of each.
    Hold(usize, u32),
    /// Sets, and repetitions of each.
    Reps(usize, u32),
    /// Trials, and the target of each in seconds.
    Balance(usize, u32),
    /// Trials on both feet, and the cap of each in seconds.
    Limit(usize, u32),
    /// Seconds in which repetitions are counted.
    Count(u32),
    /// Rounds, seconds of each, and beats a minute.
    Beat(usize, u32, u32),
    /// Minutes on the first day, minutes added every three days, and the goal.
    Quota(u32, u32, u32),
}

/// One item of a plan.
#[derive(Debug, Clone)]
pub struct Prescribed {
    pub number: u8,
    exercise: &'static str,
    level: Option<&'static str>,
    side: Option<&'static str>,
    pub dose: Dose,
    /// Load, effort and helper, as the plan file has them.
    with: String,
    times: String,
    /// First and last day of its phase, numbered from 1, as the plan file has them.
    phase: String,
    /// Empty for what is done as needed.
    days: String,
    limit: u8,
    serves: Option<u8>,
}

/// Item 1 of a plan, daily at 18:00, with a limit of 5, for complaint 1.
fn item(exercise: &'static str, side: Option<&'static str>, dose: Dose) -> Prescribed {
    Prescribed {
        number: 1,
        exercise,
        level: None,
        side,
        dose,
        with: String::new(),
        times: "at = [\"18:00\"]".to_owned(),
        phase: String::new(),
        days: "\"every-day\"".to_owned(),
        limit: 5,
        serves: Some(1),
    }
}

/// Standing, two sets of ten.
pub fn heel_raise() -> Prescribed {
    item("heel-raise", None, Dose::Reps(2, 10))
}

/// Standing, two sets of eight.
pub fn sit_to_stand() -> Prescribed {
    item("sit-to-stand", None, Dose::Reps(2, 8))
}

/// Sitting, three holds of ten seconds.
pub fn chin_back() -> Prescribed {
    item("sit-tall-chin-back", None, Dose::Hold(3, 10))
}

/// Sitting, five holds of eight seconds.
pub fn shoulder_blades() -> Prescribed {
    item("shoulder-blade-set", None, Dose::Hold(5, 8))
}

/// Lying, five holds of five seconds.
pub fn chin_nod() -> Prescribed {
    item("chin-nod-lying", None, Dose::Hold(5, 5))
}

/// Lying, five holds of ten seconds.
pub fn hip_bridge() -> Prescribed {
    item("hip-bridge", None, Dose::Hold(5, 10))
}

/// Sitting on its first level, standing on a later one; two sets of twelve.
pub fn toe_lift() -> Prescribed {
    item("toe-lift", None, Dose::Reps(2, 12))
}

/// Sitting, one set of five.
pub fn finger_glides() -> Prescribed {
    item("finger-glides", Some("right"), Dose::Reps(1, 5))
}

/// On the left leg, three trials of thirty seconds.
pub fn one_leg() -> Prescribed {
    item("one-leg-stand", Some("left"), Dose::Balance(3, 30))
}

/// The left foot behind, three trials of thirty seconds.
pub fn heel_to_toe() -> Prescribed {
    item("heel-to-toe-stand", Some("left"), Dose::Balance(3, 30))
}

/// On both feet, turning the head, three trials of twenty seconds.
pub fn turn_head() -> Prescribed {
    item("stand-turn-head", None, Dose::Limit(3, 20))
}

/// Sitting, three rounds of thirty seconds on the beat.
pub fn gaze() -> Prescribed {
    item("gaze-on-spot", None, Dose::Beat(3, 30, 60))
}

/// Sitting, ten minutes and two more every three days, up to thirty.
pub fn sitting() -> Prescribed {
    item("sitting-time", None, Dose::Quota(10, 2, 30))
}

/// The test of rising from a chair.
pub fn chair_rise() -> Prescribed {
    item("chair-rise-30s", None, Dose::Count(30))
}

/// The test of standing on the left leg, three trials of 45 seconds.
pub fn one_leg_test() -> Prescribed {
    item("one-leg-timed", Some("left"), Dose::Balance(3, 45))
}

/// Three trials around these seconds.
pub fn about(seconds: u64) -> [f64; 3] {
    let seconds = seconds as f64;
    [seconds - 0.8, seconds + 0.9, seconds]
}

impl Prescribed {
    pub fn number(mut self, number: u8) -> Self {
        self.number = number;
        self
    }

    pub fn dose(mut self, dose: Dose) -> Self {
        self.dose = dose;
        self
    }

    pub fn level(mut self, level: &'static str) -> Self {
        self.level = Some(level);
        self
    }

    pub fn at(mut self, times: &[&str]) -> Self {
        self.times = format!("at = {times:?}");
        self
    }

    pub fn hourly(mut self, from: &str, to: &str) -> Self {
        self.times = format!("every = {{ minutes = 60, from = {from:?}, to = {to:?} }}");
        self
    }

    pub fn on(mut self, days: &[&str]) -> Self {
        self.days = format!("{days:?}");
        self
    }

    /// On days that the patient chooses, or in a rhythm, as the plan file has them.
    pub fn on_days(mut self, days: &str) -> Self {
        self.days = days.to_owned();
        self
    }

    /// With a load, an effort or a helper: lines of the plan file.
    pub fn with(mut self, lines: &str) -> Self {
        self.with = lines.to_owned() + "\n";
        self
    }

    /// From this day of the plan, counted from 0 as in the review.
    pub fn starting_on(mut self, day: u64) -> Self {
        self.phase += &format!("first = {}\n", day + 1);
        self
    }

    /// Until this day of the plan.
    pub fn ending_on(mut self, day: u64) -> Self {
        self.phase += &format!("last = {}\n", day + 1);
        self
    }

    /// Whenever the patient needs it.
    pub fn when_needed(mut self) -> Self {
        self.times = "as_needed = true".to_owned();
        self.days.clear();
        self
    }

    pub fn limit(mut self, limit: u8) -> Self {
        self.limit = limit;
        self
    }

    pub fn serves(mut self, complaint: Option<u8>) -> Self {
        self.serves = complaint;
        self
    }

    /// Everything that one run asks for, as a line of a runs file gives it.
    pub fn full(&self) -> String {
        match self.dose {
            Dose::Hold(times, seconds) | Dose::Beat(times, seconds, _) => format!("\"held\":{:?}", vec![seconds; times]),
            Dose::Reps(sets, each) => format!("\"done\":{:?}", vec![each; sets]),
            Dose::Balance(trials, target) | Dose::Limit(trials, target) => self.trials(&vec![f64::from(target); trials]),
            Dose::Count(_) | Dose::Quota(..) => panic!("a number of its own"),
        }
    }

    /// Trials of these seconds: to the target, or ended by a touch.
    pub fn trials(&self, seconds: &[f64]) -> String {
        let (Dose::Balance(_, target) | Dose::Limit(_, target)) = self.dose else { panic!("trials") };
        let leg = self.side.map(|side| format!(r#""leg":"{side}","#)).unwrap_or_default();
        let one = |seconds: &f64| {
            let end = if *seconds >= f64::from(target) { "target" } else { "touch" };
            format!(r#"{{{leg}"seconds":{seconds},"end":"{end}"}}"#)
        };
        format!("\"trials\":[{}]", seconds.iter().map(one).collect::<Vec<_>>().join(","))
    }

    /// Everything but a little of the last part: one repetition failed, or the last hold let go half-way.
    pub fn just_short(&self) -> String {
        match self.dose {
            Dose::Hold(times, seconds) | Dose::Beat(times, seconds, _) => {
                let mut held = vec![seconds; times];
                held[times - 1] = seconds / 2;
                format!("\"held\":{held:?}")
            }
            Dose::Reps(sets, each) => {
                let (mut done, mut failed) = (vec![each; sets], vec![0; sets]);
                (done[sets - 1], failed[sets - 1]) = (each - 1, 1);
                format!("\"done\":{done:?},\"failed\":{failed:?}")
            }
            Dose::Balance(..) | Dose::Limit(..) | Dose::Count(_) | Dose::Quota(..) => panic!("a result of its own"),
        }
    }

    /// Only the first hold or set.
    pub fn first_part(&self) -> String {
        match self.dose {
            Dose::Hold(_, seconds) | Dose::Beat(_, seconds, _) => format!("\"held\":[{seconds}]"),
            Dose::Reps(_, each) => format!("\"done\":[{each}]"),
            Dose::Balance(_, target) | Dose::Limit(_, target) => self.trials(&[f64::from(target)]),
            Dose::Count(_) | Dose::Quota(..) => panic!("it has one part"),
        }
    }

    fn in_plan(&self) -> String {
        let dose = match self.dose {
            Dose::Hold(times, seconds) => format!("hold = {{ repetitions = {times}, seconds = {seconds}, rest = 10 }}"),
            Dose::Reps(sets, each) => {
                format!("reps = {{ sets = {sets}, repetitions = {each}, rest = 45, tempo = [2, 1, 3] }}")
            }
            Dose::Balance(trials, target) => format!("balance = {{ trials = {trials}, target = {target}, rest = 30 }}"),
            Dose::Beat(times, seconds, beats) => {
                format!("beat = {{ repetitions = {times}, seconds = {seconds}, per_minute = {beats}, rest = 20 }}")
            }
            Dose::Count(seconds) => format!("count = {{ seconds = {seconds} }}"),
            Dose::Quota(minutes, step, goal) => {
                format!("quota = {{ minutes = {minutes}, step = {step}, every_days = 3, goal = {goal} }}")
            }
            Dose::Limit(trials, cap) => format!("limit = {{ trials = {trials}, cap = {cap}, rest = 20 }}"),
        };
        let maybe = |name: &str, value: Option<String>| value.map(|value| format!("{name} = {value}\n")).unwrap_or_default();
        let quoted = |text: Option<&str>| text.map(|text| format!("{text:?}"));
        format!(
            "[[item]]\nnumber = {}\nexercise = {:?}\n{}{}{dose}\n{}{}\n{}{}pain_limit = {}\n{}",
            self.number,
            self.exercise,
            maybe("rung", quoted(self.level)),
            maybe("side", quoted(self.side)),
            self.with,
            self.times,
            self.phase,
            maybe("days", Some(self.days.clone()).filter(|days| !days.is_empty())),
            self.limit,
            maybe("serves", self.serves.map(|complaint| complaint.to_string())),
        )
    }
}

/// A plan as its clinician writes it.
#[derive(Debug, Clone)]
pub struct Plan {
    pub age: &'static str,
    /// Name, side and pain at the first visit of each complaint, numbered from 1.
    pub complaints: Vec<(&'static str, Option<&'static str>, Option<u8>)>,
    pub items: Vec<Prescribed>,
    /// Alarms that it clears, by name.
    pub clear: Vec<String>,
}

impl Plan {
    /// The text of the plan file.
    pub fn file(&self, start: NaiveDate) -> String {
        let review = start + Days::new(UNTIL_VISIT);
        let complaints = (1..).zip(&self.complaints).map(|(number, (name, side, pain))| {
            let side = side.map(|side| format!("side = {side:?}\n")).unwrap_or_default();
            let pain = pain.map(|pain| format!("pain = {pain}\n")).unwrap_or_default();
            format!("[[complaint]]\nnumber = {number}\nname = {name:?}\n{side}{pain}")
        });
        let items = self.items.iter().map(Prescribed::in_plan);
        let parts: Vec<String> = complaints.chain(items).collect();
        format!(
            "review = {review}\nage = {:?}\nabsent = {ABSENT}\nclear = {:?}\n\n{}\n{STANCES}",
            self.age,
            self.clear,
            parts.join("\n")
        )
    }
}

const ABSENT: &str = r#"["high-fall-risk", "vertigo-or-fainting", "numb-feet", "neurological-unsteadiness",
    "partial-weight-bearing", "fresh-injury", "severe-osteoporosis", "sedatives-or-alcohol", "cognitive-impairment", "late-pregnancy"]"#;

const STANCES: &str = r#"[[stance]]
leg = "left"
surface = "firm"
eyes = "open"
seconds = 12.4
capped = false

[[stance]]
leg = "right"
surface = "firm"
eyes = "open"
seconds = 30.0
capped = true
"#;
