//! A person who follows a plan on one device or more, through the real program, and what the clinic's review says about it.
//!
//! Days are counted from 0, the day of the first card, as in the review.

use super::prescribed::{Plan, Prescribed};
use super::review::Review;
use crate::place::{PASSPHRASE, Place, ProgramOutput};
use chrono::{Days, NaiveDate};
use serde_json::Value;
use std::ops::Range;

const CODE: &str = "P-1";

/// One patient, her devices, and her clinic.
pub struct Person {
    place: Place,
    start: NaiveDate,
    plan: Plan,
    cards: u32,
    device: &'static str,
    devices: Vec<&'static str>,
    /// What was not yet recorded: the device and the line of its runs file.
    lines: Vec<(&'static str, String)>,
    /// From which day on which offset from UTC holds.
    offsets: Vec<(u64, &'static str)>,
    files: u32,
}

impl Person {
    /// A person whose neck or the like was at 3 at the visit, with these items; the plan begins on Monday, 2 November 2026.
    pub fn with(items: &[Prescribed]) -> Person {
        Person::of(Plan {
            age: "40-49",
            complaints: vec![("what hurts", None, Some(3))],
            items: items.to_vec(),
            clear: Vec::new(),
        })
    }

    pub fn of(plan: Plan) -> Person {
        Person::starting(NaiveDate::from_ymd_opt(2026, 11, 2).expect("a date"), &[(0, "+01:00")], plan)
    }

    /// A person who takes her card at 08:40 on the first day, where these offsets from UTC hold from these days on.
    pub fn starting(start: NaiveDate, offsets: &[(u64, &'static str)], plan: Plan) -> Person {
        Person::taking_it_at("08:40", start, offsets, plan)
    }

    pub fn taking_it_at(time: &str, start: NaiveDate, offsets: &[(u64, &'static str)], plan: Plan) -> Person {
        let place = Place::empty();
        place.write("pw", format!("{PASSPHRASE}\n"));
        let mut person = Person {
            place,
            start,
            plan,
            cards: 0,
            device: "phone",
            devices: vec!["phone"],
            lines: Vec::new(),
            offsets: offsets.to_vec(),
            files: 0,
        };
        let clinic = ["--home", "clinic", "clinic", "--passphrase-file", "pw"];
        person.place.done(&[&clinic[..], &["start", "--name", "Elm Row"]].concat());
        person.place.done(&[&clinic[..], &["add", CODE]].concat());
        person.issue(0, time);
        person
    }

    fn date(&self, day: u64) -> NaiveDate {
        self.start + Days::new(day)
    }

    /// The moment in the patient's place; hours from 24 on are those of the next day.
    pub fn moment(&self, day: u64, time: &str) -> String {
        let (hour, minute) = time.split_once(':').expect("a time");
        let hour: u64 = hour.parse().expect("an hour");
        let day = day + hour / 24;
        let offset = self.offsets.iter().rfind(|(from, _)| *from <= day).expect("an offset").1;
        format!("{}T{:02}:{minute}:00{offset}", self.date(day), hour % 24)
    }

    /// The next card, issued at the beginning of `day` and taken at `time` by all devices.
    fn issue(&mut self, day: u64, time: &str) {
        self.record();
        self.cards += 1;
        let (file, folder) = (format!("plan-{}.toml", self.cards), format!("card-{}", self.cards));
        self.place.write(&file, self.plan.file(self.start));
        let issued = self.moment(day, "08:00");
        let issue = ["--home", "clinic", "--at", &issued, "clinic", "--passphrase-file", "pw", "issue", CODE, &file];
        self.place.done(&[&issue[..], &["--out", &folder]].concat());
        for device in self.devices.clone() {
            self.take_on(device, day, time);
        }
    }

    fn take_on(&self, device: &str, day: u64, time: &str) {
        let card = format!("card-{}/card.txt", self.cards);
        self.place.done(&["--home", device, "--at", &self.moment(day, time), "patient", "accept", &card]);
    }

    /// The plan is changed, and she takes the new card at 08:40 on `day`.
    pub fn gets_another_card(&mut self, day: u64, change: impl FnOnce(&mut Plan)) {
        change(&mut self.plan);
        self.issue(day, "08:40");
    }

    /// She takes the present card on another device as well.
    pub fn gets_another_device(&mut self, device: &'static str, day: u64) {
        self.devices.push(device);
        self.take_on(device, day, "08:50");
    }

    /// What follows happens on this device.
    pub fn on(&mut self, device: &'static str) -> &mut Person {
        self.device = device;
        self
    }

    fn says(&mut self, what: &str, day: u64, time: &str, more: &str) {
        let at = self.moment(day, time);
        self.line(format!("{{\"do\":\"{what}\",\"at\":\"{at}\"{more}}}"));
    }

    /// A line of the runs file, as it is.
    pub fn line(&mut self, line: String) {
        self.lines.push((self.device, line));
    }

    /// This morning's pain of complaint 1.
    pub fn morning(&mut self, day: u64, score: u8) {
        self.morning_of(1, day, score);
    }

    pub fn morning_of(&mut self, complaint: u8, day: u64, score: u8) {
        self.says("pain", day, "07:30", &format!(r#","complaint":{complaint},"score":{score}"#));
    }

    pub fn mornings(&mut self, days: Range<u64>, score: u8) {
        days.for_each(|day| self.morning(day, score));
    }

    fn item(&self, number: u8) -> &Prescribed {
        self.plan.items.iter().find(|item| item.number == number).expect("an item of the plan")
    }

    fn runs(&mut self, number: u8, day: u64, time: &str, work: &str) {
        self.says("run", day, time, &format!(r#","item":{number},{work}"#));
    }

    /// The item in full.
    pub fn does(&mut self, number: u8, day: u64, time: &str) {
        let work = self.item(number).full();
        self.runs(number, day, time, &work);
    }

    /// The item to its end, but for one repetition or half a hold.
    pub fn falls_short(&mut self, number: u8, day: u64, time: &str) {
        let work = self.item(number).just_short();
        self.runs(number, day, time, &work);
    }

    /// The first hold or set of the item, and no more.
    pub fn stops_early(&mut self, number: u8, day: u64, time: &str) {
        let work = self.item(number).first_part();
        self.runs(number, day, time, &work);
    }

    /// The test of an item was done to its end, with this count.
    pub fn counts(&mut self, item: u8, day: u64, time: &str, count: u8) {
        self.runs(item, day, time, &format!("\"count\":{count}"));
    }

    /// An activity went on for these minutes.
    pub fn goes_on(&mut self, item: u8, day: u64, time: &str, minutes: u64) {
        self.runs(item, day, time, &format!("\"held\":[{}]", minutes * 60));
    }

    /// Trials of these seconds.
    pub fn stands(&mut self, number: u8, day: u64, time: &str, seconds: &[f64]) {
        let work = self.item(number).trials(seconds);
        self.runs(number, day, time, &work);
    }

    /// "I already did it."
    pub fn writes_in(&mut self, number: u8, day: u64, time: &str) {
        let work = self.item(number).full();
        self.runs(number, day, time, &format!("\"live\":false,{work}"));
    }

    /// The pain while doing the item.
    pub fn hurts(&mut self, number: u8, day: u64, time: &str, score: u8) {
        self.says("hurt", day, time, &format!(r#","item":{number},"score":{score}"#));
    }

    pub fn skips(&mut self, number: u8, day: u64, time: &str, reason: &str) {
        self.says("skip", day, time, &format!(r#","item":{number},"reason":"{reason}""#));
    }

    /// Both days included.
    pub fn takes_days_off(&mut self, from: u64, until: u64, why: &str) {
        let days = format!(r#","from":"{}","until":"{}","why":"{why}""#, self.date(from), self.date(until));
        self.says("days-off", from, "07:00", &days);
    }

    /// "Something is wrong", while doing this item.
    pub fn says_wrong(&mut self, what: &str, item: Option<u8>, day: u64, time: &str) {
        let item = item.map(|item| format!(r#","item":{item}"#)).unwrap_or_default();
        self.says("trouble", day, time, &format!(r#","what":"{what}"{item}"#));
    }

    pub fn says_wrong_with(&mut self, what: &str, circumstances: &[&str], day: u64, time: &str) {
        self.says("trouble", day, time, &format!(r#","what":"{what}","circumstances":{circumstances:?}"#));
    }

    pub fn is_well_again(&mut self, day: u64, time: &str) {
        self.says("well-again", day, time, "");
    }

    fn runs_files(&mut self) -> Vec<(&'static str, String)> {
        let lines = std::mem::take(&mut self.lines);
        let of =
            |device: &str| lines.iter().filter(|(of, _)| *of == device).map(|(_, line)| line.as_str()).collect::<Vec<_>>();
        self.devices.iter().map(|device| (*device, of(device).join("\n"))).filter(|(_, text)| !text.is_empty()).collect()
    }

    fn record_file(&mut self, device: &str, text: &str) -> (String, ProgramOutput) {
        self.files += 1;
        let name = format!("runs-{}.jsonl", self.files);
        self.place.write(&name, text);
        let said = self.place.run(&["--home", device, "patient", "record", &name]);
        (name, said)
    }

    /// Records everything so far, each device its own.
    fn record(&mut self) {
        for (device, text) in self.runs_files() {
            let (_, said) = self.record_file(device, &text);
            assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{said:?}");
        }
    }

    /// What the first screen of the device in use says.
    pub fn sees_now(&mut self, day: u64, time: &str) -> String {
        self.record();
        let at = self.moment(day, time);
        self.place.done(&["--home", self.device, "--at", &at, "patient", "now"])
    }

    /// Recording what was not yet recorded is refused, and nothing of it is kept.
    #[track_caller]
    pub fn is_refused(&mut self, says: &str) {
        for (device, text) in self.runs_files() {
            let name = format!("refused-{}.jsonl", self.files);
            self.place.write(&name, text);
            self.place.refused(&["--home", device, "patient", "record", &name], &[says]);
        }
    }

    /// The summary of each device from `from` until the end of `until`, brought to a visit at 09:00 on `visit`.
    fn brings(&mut self, visit: u64, from: u64, until: u64) {
        self.record();
        let visit = self.moment(visit, "09:00");
        for device in self.devices.clone() {
            self.files += 1;
            let sealed = format!("summary-{}.age", self.files);
            let (from, until) = (self.date(from).to_string(), self.date(until).to_string());
            let seal = ["patient", "summary", "--from", &from, "--until", &until, "--out", &sealed];
            self.place.done(&[&["--home", device, "--at", &visit][..], &seal].concat());
            self.clinic(&visit, &["receive", &sealed]);
        }
    }

    fn clinic(&self, at: &str, what: &[&str]) -> String {
        self.place.done(&[&["--home", "clinic", "--at", at, "clinic", "--passphrase-file", "pw"][..], what].concat())
    }

    /// She brings everything until the end of `until`, and the clinician reviews it.
    pub fn review(&mut self, until: u64) -> Review {
        self.review_from(0, until)
    }

    pub fn review_from(&mut self, from: u64, until: u64) -> Review {
        self.review_at(until + 1, from, until)
    }

    /// The review on the day `visit`, of a summary from `from` until the end of `until`.
    pub fn review_at(&mut self, visit: u64, from: u64, until: u64) -> Review {
        self.brings(visit, from, until);
        let out = self.clinic(&self.moment(visit, "09:30"), &["review", CODE, "--as", "json"]);
        let said: Value = serde_json::from_str(&out).unwrap_or_else(|_| panic!("JSON: {out}"));
        assert!(said.is_object(), "{said}");
        Review(said)
    }

    /// The review as the clinician reads it.
    pub fn review_in_words(&mut self, until: u64) -> String {
        self.brings(until + 1, 0, until);
        self.clinic(&self.moment(until + 1, "09:30"), &["review", CODE])
    }

    /// The clinician notes something at a visit: the words of the command, without her code.
    pub fn visit(&self, day: u64, what: &[&str]) -> String {
        let (note, more) = what.split_first().expect("what is noted");
        self.clinic(&self.moment(day, "10:00"), &[&["visit", note, CODE], more].concat())
    }

    /// She brings everything until the end of `until`, and the review is written for records.
    pub fn for_records(&mut self, until: u64) -> Records {
        self.brings(until + 1, 0, until);
        let at = self.moment(until + 1, "09:30");
        let written = |form| self.clinic(&at, &["review", CODE, "--as", form]);
        Records { collection: written("fhir"), transaction: written("fhir-transaction"), table: written("csv") }
    }
}

/// A review as it is written for records.
#[derive(Debug, Clone)]
pub struct Records {
    /// A file to hand over.
    pub collection: String,
    /// What a server is asked to take in.
    pub transaction: String,
    pub table: String,
}
