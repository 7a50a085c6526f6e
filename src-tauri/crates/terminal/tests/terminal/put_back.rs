//! A patient's data folder that was copied and put back, or copied to another machine: nothing is lost at the clinic, nothing counts twice,
//! and a card never clears an alarm that the clinician has not seen.

use crate::place::{ISSUED, PASSPHRASE, Place, ProgramOutput, copy};
use serde_json::Value;
use std::fs;

/// A machine on which what was used is remembered in the folder `state` of the place.
pub struct Story {
    pub place: Place,
}

impl Story {
    /// A clinic whose patient took her first card at 08:40 on 25 November.
    pub fn begun() -> Story {
        let place = Place::empty();
        place.write("pw", format!("{PASSPHRASE}\n"));
        let story = Story { place };
        story.clinic(ISSUED, &["start", "--name", "Linden Lane Practice"]);
        story.clinic(ISSUED, &["add", "K17"]);
        story.place.write("plan.toml", story.place.done(&["--at", ISSUED, "example", "plan"]));
        story.clinic(ISSUED, &["issue", "K17", "plan.toml", "--out", "card-1"]);
        story.patient("25T08:40", &["accept", "card-1/card.txt"]);
        story
    }

    pub fn run(&self, state: &str, arguments: &[&str]) -> ProgramOutput {
        let mut command = self.place.command(arguments);
        command.env("XDG_STATE_HOME", self.place.path(state));
        ProgramOutput::of(command.output().expect("the binary starts"))
    }

    #[track_caller]
    pub fn done(&self, state: &str, arguments: &[&str]) -> String {
        let said = self.run(state, arguments);
        assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{arguments:?}");
        said.out
    }

    #[track_caller]
    pub fn clinic(&self, at: &str, what: &[&str]) -> String {
        self.done("state", &[&["--home", "clinic", "--at", at, "clinic", "--passphrase-file", "pw"][..], what].concat())
    }

    #[track_caller]
    pub fn patient(&self, at: &str, what: &[&str]) -> String {
        self.patient_at("state", "patient", at, what)
    }

    #[track_caller]
    pub fn patient_at(&self, state: &str, home: &str, at: &str, what: &[&str]) -> String {
        let at = format!("2026-11-{at}:00+01:00");
        self.done(state, &[&["--home", home, "--at", &at, "patient"][..], what].concat())
    }

    /// The first command after the folder was copied: it says what was found, and does what it is asked.
    #[track_caller]
    pub fn says_at_first(&self, state: &str, home: &str, says: &str) {
        let now = ["--home", home, "--at", "2026-11-26T09:00:00+01:00", "patient", "now"];
        let said = self.run(state, &now);
        assert_eq!(said.code, Some(0), "{said:?}");
        assert!(said.err.contains(says) && said.err.lines().count() == 1, "{said:?}");
        self.done(state, &now);
    }

    pub fn records(&self, state: &str, home: &str, lines: &[String]) {
        self.place.write("lines.jsonl", lines.join("\n"));
        self.patient_at(state, home, "27T12:00", &["record", "lines.jsonl"]);
    }

    fn is_wrong(&self, what: &str, at: &str) {
        self.records(
            "state",
            "patient",
            &[format!("{{\"do\":\"trouble\",\"at\":\"2026-11-{at}:00+01:00\",\"what\":\"{what}\"}}")],
        );
    }

    /// The summary of everything until the 27th, brought to the clinic; the clinic's review.
    pub fn review(&self, state: &str, home: &str, out: &str) -> Value {
        self.patient_at(state, home, "27T20:00", &["summary", "--until", "2026-11-27", "--out", out]);
        self.clinic("2026-11-28T09:00:00+01:00", &["receive", out]);
        self.reviewed()
    }

    pub fn reviewed(&self) -> Value {
        let said = self.clinic("2026-11-28T09:10:00+01:00", &["review", "K17", "--as", "json"]);
        serde_json::from_str(&said).expect("JSON")
    }

    fn put_back(&self) {
        fs::remove_dir_all(self.place.path("patient")).expect("the test owns it");
        copy(&self.place.path("copy"), &self.place.path("patient"));
    }
}

pub fn alarms(review: &Value) -> Vec<(String, bool)> {
    let all = review["alarms"].as_array().expect("a list").iter();
    all.map(|alarm| (alarm["kind"].as_str().expect("a text").to_owned(), alarm["cleared"] == true)).collect()
}

#[test]
fn a_card_does_not_clear_an_alarm_raised_after_a_copy_was_put_back() {
    let story = Story::begun();
    copy(&story.place.path("patient"), &story.place.path("copy"));
    story.is_wrong("pain", "25T09:00");
    let seen = story.review("state", "patient", "one.age");
    let id = seen["alarms"][0]["id"].as_str().expect("a name").to_owned();
    let plan = story.place.text("plan.toml");
    assert!(plan.contains("\nclear = []\n"), "the example clears nothing");
    story.place.write("plan-2.toml", plan.replace("\nclear = []\n", &format!("\nclear = [\"{id}\"]\n")));
    story.clinic("2026-11-26T08:00:00+01:00", &["issue", "K17", "plan-2.toml", "--out", "card-2"]);
    story.put_back();
    story.says_at_first("state", "patient", "put back to an earlier state");
    story.is_wrong("heart", "26T10:00");
    story.patient("26T11:00", &["accept", "card-2/card.txt"]);
    let page: Value = serde_json::from_str(&story.patient("26T11:05", &["now", "--json"])).expect("JSON");
    assert!(!page["alarms"].as_array().expect("a list").is_empty(), "it still suspends: {page}");
    let after = story.review("state", "patient", "two.age");
    assert_eq!(alarms(&after), [("heart".to_owned(), false), ("pain".to_owned(), true)]);
    let text = story.clinic("2026-11-28T09:20:00+01:00", &["review", "K17"]);
    assert!(text.contains("one device's data were moved, copied or put back from a copy"), "{text}");
    assert!(!text.contains("from 2 devices"), "{text}");
}

/// A rating of the first complaint in the morning.
pub fn rating(at: &str, score: u8) -> String {
    format!("{{\"do\":\"pain\",\"at\":\"2026-11-{at}:00+01:00\",\"complaint\":1,\"score\":{score}}}")
}

/// Both go on: what both have counts once, and what each has of its own counts.
#[test]
fn a_copy_on_another_machine_and_the_original_count_what_they_share_once() {
    let story = Story::begun();
    story.records("state", "patient", &[rating("25T09:00", 3)]);
    copy(&story.place.path("patient"), &story.place.path("laptop"));
    story.says_at_first("state-of-the-laptop", "laptop", "moved or copied here");
    story.records("state", "patient", &[rating("26T09:00", 4)]);
    story.records("state-of-the-laptop", "laptop", &[rating("27T09:00", 5)]);
    story.review("state", "patient", "one.age");
    let review = story.review("state-of-the-laptop", "laptop", "two.age");
    assert_eq!(review["pain"][0]["last_day"], 2);
    assert_eq!(review["pain"][0]["now"], Value::Null, "three mornings, not four: too few for a trend");
}
