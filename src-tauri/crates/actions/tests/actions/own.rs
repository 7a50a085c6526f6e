//! The person's own settings and data: reminder settings, export, erasure.

use crate::people::{Patient, at, card, slot};
use actions::patient::due_reminder::{self, Reminder};
use actions::patient::own_data::{self, WebView};
use actions::patient::{answering, calendar, reminders, running, today, tray_summary};
use actions::{DataFolder, Moment, platform};
use base64::Engine;
use exercises::alarm::Trouble;
use exercises::id::ItemId;
use exercises::log::DayOffReason;
use exercises::remind::{Span, UpcomingReminder};
use exercises::run::{HoldRecord, RunEnd, Work};
use exercises::score::Score;
use format::card;
use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::path::Path;
use wire::Failure;
use wire::device::{EraseRequest, MeetingRequest, QuietTimesRequest};
use wire::patient::{BeginRequest, DaysOffRequest, QuestionAnswer, RunSnapshot, TakeCardRequest, TroubleRequest};

fn due(patient: &mut Patient, moment: &str) -> Option<Reminder> {
    due_reminder::due(&mut patient.folder, &at(moment)).expect("the loop can look")
}

fn quiet(patient: &mut Patient, moment: &str, spans: &[(u16, u16)]) -> Result<wire::device::Reminders, Failure> {
    let quiet = spans.iter().map(|(from, to)| Span { from: *from, to: *to }).collect();
    reminders::set(&mut patient.folder, &at(moment), &QuietTimesRequest { quiet })
}

fn meeting(patient: &mut Patient, moment: &str, minutes: Option<u16>) -> Result<wire::device::Reminders, Failure> {
    reminders::meeting(&mut patient.folder, &at(moment), MeetingRequest { minutes })
}

/// Does the hold's run of the slot that is open at that moment.
fn hold(patient: &mut Patient, moment: &str) {
    let (plan, moment) = (patient.plan, at(moment));
    let script = running::begin(&mut patient.folder, &moment, &BeginRequest { plan, item: ItemId(1), step: false })
        .expect("free to begin");
    let held = vec![HoldRecord { side: None, held_ms: 10_000 }; 3];
    let run = exercises::run::Run { end: RunEnd::Completed, work: Work::Timed(held), ..script.run };
    running::checkpoint(&mut patient.folder, &moment, &RunSnapshot { plan, run }).expect("a run that was begun");
}

#[test]
fn a_reminder_in_a_quiet_time_comes_at_its_end_even_after_a_restart() {
    let mut patient = Patient::new();
    quiet(&mut patient, "11-25T08:50", &[(9 * 60, 9 * 60 + 30), (12 * 60, 13 * 60)]).expect("two quiet times");
    let mut patient = patient.restarted();
    assert_eq!(due(&mut patient, "11-25T09:00"), None);
    let next = due_reminder::next_due_ms(&patient.folder, &at("11-25T09:01")).expect("looks");
    assert_eq!(next, Some(at("11-25T09:30").now.utc_ms), "the loop wakes for the end of the quiet time");
    let nine = due(&mut patient, "11-25T09:30").expect("still open");
    assert_eq!((nine.slot, nine.open_ms), (slot(1, 0), 30 * 60_000));
    assert_eq!(due(&mut patient, "11-25T12:59"), None);
    assert_eq!(due(&mut patient, "11-25T13:00").map(|reminder| reminder.slot), Some(slot(1, 4)), "twelve is over by then");
}

#[test]
fn a_meeting_ends_by_itself_and_can_be_ended_early() {
    let mut patient = Patient::new();
    let stands = meeting(&mut patient, "11-25T08:50", Some(120)).expect("two hours");
    assert_eq!(
        (stands.silent, stands.meeting_until, stands.next),
        (true, Some(at("11-25T10:50").now), Some(at("11-25T10:50").now))
    );
    assert_eq!(due(&mut patient, "11-25T10:00"), None);
    let stands = meeting(&mut patient, "11-25T10:10", None).expect("it is over");
    assert_eq!((stands.silent, stands.meeting_until), (false, None));
    assert_eq!(due(&mut patient, "11-25T10:10").map(|reminder| reminder.slot), Some(slot(1, 1)));
    meeting(&mut patient, "11-25T10:30", Some(60)).expect("another one");
    assert_eq!(due(&mut patient, "11-25T11:29"), None);
    assert_eq!(due(&mut patient, "11-25T11:30").map(|reminder| reminder.slot), Some(slot(1, 2)), "by itself");
}

#[test]
fn after_a_reminder_that_was_acted_on_the_next_has_no_sound() {
    let mut patient = Patient::new();
    assert!(!due(&mut patient, "11-25T09:00").expect("nine").light);
    hold(&mut patient, "11-25T09:02");
    assert!(due(&mut patient, "11-25T10:00").expect("ten").light);
    assert!(!due(&mut patient, "11-25T11:00").expect("eleven").light, "ten was let pass");
}

#[test]
fn invalid_settings_are_refused_and_change_nothing() {
    let mut patient = Patient::new();
    quiet(&mut patient, "11-25T08:50", &[(720, 780)]).expect("one");
    let before = patient.bytes();
    let nine: Vec<(u16, u16)> = (0..9).map(|hour| (hour * 60, hour * 60 + 30)).collect();
    for spans in [&[(600, 600)][..], &[(600, 1440)], &nine] {
        assert_eq!(quiet(&mut patient, "11-25T08:51", spans), Err(Failure::QuietUnfit { most: 8 }));
    }
    for minutes in [0, 721, u16::MAX] {
        let refused = meeting(&mut patient, "11-25T08:51", Some(minutes));
        assert_eq!(refused, Err(Failure::OutOfRange { least: 1, most: 720 }));
    }
    assert!(patient.bytes() == before, "not a byte");
    let both = QuietTimesRequest { quiet: Vec::new() };
    let request = MeetingRequest { minutes: Some(0) };
    let refused = reminders::change(&mut patient.folder, &at("11-25T08:51"), Some(&both), Some(request));
    assert_eq!(refused, Err(Failure::OutOfRange { least: 1, most: 720 }));
    assert_eq!(reminders::show(&patient.folder, &at("11-25T08:51")).expect("shown").quiet, [Span { from: 720, to: 780 }]);
}

/// The list for a phone's system is compared with the loop itself, which is asked every minute of the same day in a copy of the
/// folder.
#[test]
fn the_reminders_listed_ahead_are_those_that_the_loop_shows() {
    let mut patient = Patient::new();
    quiet(&mut patient, "11-25T08:50", &[(12 * 60, 13 * 60 + 30), (21 * 60, 7 * 60)]).expect("two");
    due(&mut patient, "11-25T09:00").expect("nine");
    hold(&mut patient, "11-25T09:02");
    meeting(&mut patient, "11-25T09:10", Some(65)).expect("until 10:15");
    let trouble = TroubleRequest {
        plan: patient.plan,
        trouble: Trouble::NearlyFell,
        item: Some(ItemId(2)),
        circumstances: BTreeSet::new(),
    };
    answering::trouble(&mut patient.folder, &at("11-25T09:20"), &trouble).expect("always possible");
    let day = at("11-26T00:00").now.date();
    let off = DaysOffRequest { plan: patient.plan, from: day, until: day, why: DayOffReason::Travelling };
    answering::take_days_off(&mut patient.folder, &at("11-25T09:21"), &off).expect("within the plan");
    let listed = reminders::upcoming(&patient.folder, &at("11-25T09:30"), 54).expect("listed");
    let begin = at("11-25T09:30").now.utc_ms;
    let mut shown = Vec::new();
    for minute in 0..=54 * 60 {
        let moment = later(begin + minute * 60_000);
        if let Some(found) = due_reminder::due(&mut patient.folder, &moment).expect("looks") {
            shown.push((moment.now, found.slot, found.takes_s, found.light));
        }
    }
    let told = |one: &UpcomingReminder| (one.at, one.reminder.slot, one.reminder.takes_s, one.reminder.light);
    assert_eq!(listed.iter().map(told).collect::<Vec<_>>(), shown);
    assert_eq!(shown[0].0, at("11-25T10:15").now, "when the meeting is over");
    assert!(shown[0].3, "lightly, since nine was followed");
    assert!(shown.len() > 9 && shown.iter().all(|(at, ..)| at.date() != day), "nothing on the day off: {shown:?}");
}

fn later(utc_ms: i64) -> Moment {
    actions::clock::at(utc_ms, actions::zone::named("Europe/Vienna").expect("a zone"))
}

fn files(dir: &Path) -> BTreeMap<String, Vec<u8>> {
    let all = std::fs::read_dir(dir).expect("a folder").flatten();
    all.map(|file| (file.file_name().to_string_lossy().into_owned(), std::fs::read(file.path()).expect("readable")))
        .collect()
}

#[test]
fn everything_is_exported_without_any_secret() {
    let mut patient = Patient::new();
    hold(&mut patient, "11-25T09:02");
    let pain = QuestionAnswer::Morning {
        plan: patient.plan,
        complaint: exercises::id::ComplaintId(1),
        score: Score::at_most_ten(3),
    };
    answering::answer(&mut patient.folder, &at("11-25T09:05"), &pain).expect("a score");
    let dir = patient.dir.path().join("mine");
    let saved = own_data::export(&patient.folder, &at("11-25T20:00"), Some(&dir)).expect("room");
    let files = files(&dir);
    assert_eq!(
        files.keys().collect::<Vec<_>>(),
        ["alarms.csv", "answers.csv", "corrections.csv", "days.csv", "everything.json", "runs.csv"]
    );
    for one in &saved {
        let name = Path::new(&one.path).file_name().expect("a name").to_string_lossy().into_owned();
        assert_eq!(files[&name].len() as u64, one.bytes);
    }
    let wire::patient::CardSource::Text(text) = card() else { panic!("the card is text") };
    let bytes = card::from_text(&text).expect("a card");
    let taken = vault::card::verify(card::open(&bytes).expect("a card"), None).expect("signed");
    let secret = taken.pairing_secret.expose_the_secret_bytes();
    let hex: String = secret.iter().map(|byte| format!("{byte:02x}")).collect();
    let numbers: String = secret.iter().map(|byte| format!("{byte},")).collect();
    let base64 = base64::engine::general_purpose::STANDARD_NO_PAD.encode(secret);
    for (name, file) in &files {
        let plain = String::from_utf8_lossy(file).replace([' ', '\n'], "");
        for form in [&hex, &hex.to_uppercase(), &numbers, &base64, &text] {
            assert!(!plain.contains(form.as_str()), "{name} contains a secret");
        }
        assert!(!file.windows(secret.len()).any(|part| part == secret), "{name} contains the secret");
    }
    let whole = String::from_utf8_lossy(&files["everything.json"]);
    assert!(whole.contains("\"score\": 3") && whole.contains("\"held_s\": 10.0"));
    let again = own_data::export(&patient.folder, &at("11-25T20:01"), Some(&dir));
    assert_eq!(again, Err(Failure::FolderOccupied { folder: dir.display().to_string() }));
}

#[test]
fn the_calendar_is_replaced_by_a_later_one() {
    let mut patient = Patient::new();
    let path = patient.dir.path().join("times.ics");
    let write = |patient: &Patient, moment: &str| {
        calendar::export(&patient.folder, &at(moment), None, Some(&path)).expect("room");
        String::from_utf8(platform::read(&path, 1 << 20).expect("written")).expect("UTF-8")
    };
    let numbers = |text: &str| {
        let found = |start: &str| text.lines().find_map(|line| line.strip_prefix(start).map(str::to_owned));
        (found("UID:"), found("SEQUENCE:").and_then(|number| number.parse::<u32>().ok()).expect("a number"))
    };
    let first = numbers(&write(&patient, "11-25T09:30"));
    let day = at("11-27T00:00").now.date();
    let off = DaysOffRequest { plan: patient.plan, from: day, until: day, why: DayOffReason::Ill };
    answering::take_days_off(&mut patient.folder, &at("11-25T09:31"), &off).expect("within the plan");
    let text = write(&patient, "11-25T09:32");
    let second = numbers(&text);
    assert_eq!(first.0, second.0);
    assert!(first.1 < second.1, "{first:?} {second:?}");
    assert!(text.contains("\r\nEXDATE:20261127T"), "{text}");
    let stopped =
        TroubleRequest { plan: patient.plan, trouble: Trouble::HeartOrBreath, item: None, circumstances: BTreeSet::new() };
    answering::trouble(&mut patient.folder, &at("11-25T09:33"), &stopped).expect("always possible");
    let refused = calendar::export(&patient.folder, &at("11-25T09:34"), None, Some(&path));
    assert_eq!(refused, Err(Failure::NothingAhead));
}

#[test]
fn after_erasing_the_copy_is_like_new_and_a_card_can_be_taken_again() {
    let mut patient = Patient::new();
    hold(&mut patient, "11-25T09:02");
    quiet(&mut patient, "11-25T09:03", &[(720, 780)]).expect("one");
    let home = patient.dir.path().join("patient");
    std::fs::create_dir(home.join("web-view")).expect("the test owns it");
    let log = actions::patient::plans::one(&patient.folder, None).expect("a plan").log;
    let moment = at("11-25T09:10");
    assert_eq!(own_data::device_number(&patient.folder), Ok(Some(log)), "the number by which the clinic knows it");
    let unsure = own_data::erase(&mut patient.folder, &moment, EraseRequest { everything: false }, WebView::Closed);
    assert_eq!(unsure, Err(Failure::NotConfirmed { home: home.display().to_string() }));
    assert!(today::page(&patient.folder, &moment).is_ok_and(|page| page.string.len() > 5), "nothing was removed");
    let left =
        own_data::erase(&mut patient.folder, &moment, EraseRequest { everything: true }, WebView::Open).expect("erased");
    assert_eq!((left.role, left.has_plan), (None, false));
    assert_eq!(today::page(&patient.folder, &moment), Err(Failure::NoRole));
    assert_eq!(
        due_reminder::due(&mut patient.folder, &moment),
        Err(Failure::NoRole),
        "the loop continues and finds nothing"
    );
    patient.folder.choose_role(wire::app::Role::Patient).expect("free to choose again");
    let request = TakeCardRequest { source: card(), agreed: Vec::new() };
    actions::patient::taking::take(&mut patient.folder, &moment, &request).expect("the card is still valid");
    let one = actions::patient::plans::one(&patient.folder, None).expect("a plan");
    assert!(one.log != log && one.followed.history.runs.is_empty(), "under another log, without a history");
    assert_eq!(reminders::show(&patient.folder, &moment).expect("shown").quiet, []);
    let patient = patient.restarted();
    assert!(today::page(&patient.folder, &moment).is_ok(), "what came after the erasing stays");
    assert!(!home.join("web-view").exists());
}

#[test]
fn a_clinic_is_not_erased_from_here() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder: DataFolder = crate::people::clinic(dir.path());
    let erased = own_data::erase(&mut folder, &at("11-25T09:00"), EraseRequest { everything: true }, WebView::Closed);
    assert_eq!(erased.map(|left| left.role), Err(Failure::OtherRole));
}

#[test]
fn the_tray_shows_the_day_the_meeting_and_whether_a_plan_is_followed() {
    let mut patient = Patient::new();
    let shown = |patient: &Patient, moment| tray_summary::show(&patient.folder, &at(moment)).expect("a patient's day");
    hold(&mut patient, "11-25T09:02");
    let morning = shown(&patient, "11-25T09:10");
    assert_eq!((morning.meeting, morning.followed), (Some(false), true));
    assert!(morning.lines[0].starts_with("1 ") && morning.lines[1].contains("10:00"), "{:?}", morning.lines);
    meeting(&mut patient, "11-25T09:10", Some(120)).expect("two hours");
    let busy = shown(&patient, "11-25T09:11");
    assert_eq!(busy.meeting, Some(true));
    assert!(busy.lines.last().is_some_and(|line| line.contains("11:10")), "{:?}", busy.lines);
    assert_eq!(shown(&patient, "11-25T11:10").meeting, Some(false), "it ends by itself");
    let london = actions::zone::named("Europe/London").expect("a zone");
    let away = actions::clock::at(at("11-25T09:11").now.utc_ms, london);
    let until = reminders::show(&patient.folder, &away).expect("stands").meeting_until.expect("still in it");
    assert_eq!(until.minute(), 10 * 60 + 10, "by the clocks of where the person is");
    let without = Patient::without_card();
    let nothing = shown(&without, "11-25T09:10");
    assert_eq!((nothing.meeting, nothing.followed, nothing.lines.len()), (None, false, 1));
    let clinic = crate::people::clinic(without.dir.path());
    assert_eq!(
        tray_summary::show(&clinic, &at("11-25T09:10")).expect("no day"),
        tray_summary::TraySummary::nothing(clinic.locale())
    );
}
