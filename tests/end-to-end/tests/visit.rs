//! A visit in the window: complaints, measures with the stop-watch, screening, corrections; the next visit; papers and files for records.

use end_to_end::{Desktop, Window};
use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpListener;
use std::path::PathBuf;
use std::process::Command;

const PLAN: &str = r#"
review = 2027-04-12

[[complaint]]
number = 1
name = "lower back"
pain = 5

[[item]]
number = 1
exercise = "walk"
go = { minutes = 15, effort = 3 }
at = ["12:30"]
days = "every-day"
serves = 1
"#;

#[test]
fn a_visit_is_noted_corrected_and_compared_at_the_next() {
    let desktop = Desktop::new();
    desktop.with_a_clinic();
    let clinic = desktop.unlocked_clinic("2027-03-01T08:30:00+01:00");
    clinic.press("Visit: K17");
    clinic.see("Nothing is noted yet.");
    clinic.look_at_desk_and_phones("visit-empty");
    clinic.choose("Region", "Lower back");
    clinic.choose("Side", "left");
    clinic.choose("Pain, 0 to 10", "6");
    clinic.type_into("In the patient’s words", "after driving");
    clinic.press("Where it hurts today: Note");
    clinic.see("Lower back, left: after driving; pain 6 of 10");
    clinic.choose("What", "How far a movement goes, degrees");
    clinic.choose("Treatment", "before");
    clinic.type_into("Movement", "bending forward");
    clinic.type_into("Results, up to three with spaces between", "40");
    clinic.press("Measured: Note");
    clinic.see("Bending forward, before treatment: 40°");
    clinic.choose("Treatment", "after");
    clinic.type_into("Results, up to three with spaces between", "400");
    clinic.press("Measured: Note");
    clinic.see("This number is from -180 to 360");
    clinic.type_into("Results, up to three with spaces between", "55");
    clinic.press("Measured: Note");
    clinic.see("+15° since before treatment");
    clinic.choose("What", "Time on one leg, seconds");
    clinic.choose("Which side", "left");
    clinic.choose("Treatment", "none");
    clinic.press_part("Start the stop-watch");
    clinic.look_at_desk_and_phones("visit-stop-watch");
    clinic.wait_for("return parseFloat(document.querySelector('.stop-watch .number').textContent) >= 0.3");
    clinic.press_part("Stop");
    clinic.wait_for("return document.querySelector('.stop-watch .number').textContent !== '0'");
    clinic.press("Measured: Note");
    clinic.see("On one leg, firm floor, eyes open, left: ");
    clinic.press("Osteoporosis");
    clinic.press("Screening: Note");
    clinic.see("Screening: osteoporosis. No fall in the last twelve months.");
    clinic.type_into("What else matters", "Will move house in May.");
    clinic.press("Note: Note");
    clinic.see("Will move house in May.");
    clinic.press("Correct: Will move house in May.");
    clinic.see("What you note next replaces what you chose to correct.");
    clinic.type_into("What else matters", "Moves house in June.");
    clinic.press("Note: Note");
    clinic.see("Moves house in June. (corrected)");
    clinic.see_no_more("Will move house in May.");
    clinic.look_at_desk_and_phones("visit-noted");
    are_in_sight(&clinic);
    clinic.screenshot("visit-noted-top-1280x800");
    clinic.resize(390, 844);
    assert!(tallest(&clinic) <= 76.0, "{} px on a phone", tallest(&clinic));
    clinic.resize(1280, 800);
    is_reported_without_a_plan(&desktop, &clinic);
    clinic.close();

    let next = desktop.unlocked_clinic("2027-03-15T08:30:00+01:00");
    next.press("Visit: K17");
    next.press("Still the same as on 1 March");
    next.choose("Overall change", "+3, better");
    next.press("Since last time: Note");
    next.see("Change since last time: +3, better");
    next.see("Moves house in June.");
    next.look_at_desk_and_phones("visit-next");
    next.ask("document.querySelector('.visit-page h1').scrollIntoView({ block: 'center' }); return true", &[]);
    next.screenshot("visit-next-top-1280x800");
    next.close();
}

/// What was found can be saved for the record as a report, although no plan was issued.
fn is_reported_without_a_plan(desktop: &Desktop, clinic: &Window) {
    clinic.press("Review");
    clinic.see("There is no plan yet.");
    clinic.choose("Save as", "Report (PDF, US Letter)");
    clinic.press("Save the review");
    clinic.see(".pdf");
    let report = saved(desktop, clinic);
    let read = Command::new("pdftotext").arg(&report).arg("-").output().expect("poppler-utils");
    let text = String::from_utf8_lossy(&read.stdout).into_owned();
    assert!(text.contains("Lower back, left: after driving; pain 6 of 10"), "{text}");
    clinic.look_at_desk_and_phones("visit-no-plan");
}

#[test]
fn a_screening_comes_before_the_note_on_a_phone_and_hides_nothing_that_was_noted_later() {
    let desktop = Desktop::new();
    desktop.with_a_clinic();
    let clinic = desktop.unlocked_clinic("2027-03-01T08:30:00+01:00");
    clinic.press("Visit: K17");
    clinic.see("All asked, none applies");
    for (width, height) in [(390, 844), (360, 640)] {
        clinic.resize(width, height);
        clinic.wait_for(SCREENING_BEFORE_NOTE);
    }
    clinic.resize(1280, 800);
    clinic.type_into("What else matters", "First time here.");
    clinic.press("Note: Note");
    clinic.see("First time here.");
    clinic.close();

    let next = desktop.unlocked_clinic("2027-03-15T08:30:00+01:00");
    next.press("Visit: K17");
    next.see("not done yet");
    next.type_into("What else matters", "Walks further.");
    next.press("Note: Note");
    next.see("Walks further.");
    next.wait_for("return !document.querySelector('.screening details').open");
    let seen = "document.querySelector('.visit-page h1').scrollIntoView({ block: 'center' });
        const of = (one) => document.querySelector(one).getBoundingClientRect();
        return of('.noted').top >= of('.screening').bottom && of('.findings li').bottom <= innerHeight / 2";
    next.wait_for(seen);
    next.look_at_desk_and_phones("visit-not-screened");
    next.ask("document.querySelector('.visit-page h1').scrollIntoView({ block: 'center' }); return true", &[]);
    next.screenshot("visit-not-screened-top-1280x800");
    next.resize(390, 844);
    next.wait_for(SCREENING_BEFORE_NOTE);
    next.ask("document.querySelector('.screening').scrollIntoView({ block: 'start' }); return true", &[]);
    next.screenshot("visit-not-screened-below-390x844");
    next.press_part("Screening");
    next.press("Screening: All asked, none applies");
    next.see("Screening: none of the conditions asked about. No fall in the last twelve months.");
    next.close();
}

/// Headings in the order of reading, which is that of the screen.
const SCREENING_BEFORE_NOTE: &str = "
    const all = [...document.querySelectorAll('.visit-page h2, .visit-page .fold .title')];
    const at = (title) => all.findIndex((one) => one.textContent === title);
    const top = (title) => all[at(title)].getBoundingClientRect().top;
    return at('Measured') < at('Screening') && at('Screening') < at('Note') && at('Note') < at('Noted today')
        && top('Measured') < top('Screening') && top('Screening') < top('Note') && top('Note') < top('Noted today')";

/// Five of today's findings are on a desk's screen together with the forms, each in a row of its own.
fn are_in_sight(clinic: &Window) {
    assert!(tallest(clinic) <= 60.0, "{} px on a desk's screen", tallest(clinic));
    let seen = "document.querySelector('.visit-page h1').scrollIntoView({ block: 'center' });
        const box = (one) => one.getBoundingClientRect();
        const findings = [...document.querySelectorAll('.findings li')].filter((one) => box(one).bottom <= innerHeight);
        return [box(document.querySelector('h1')).top >= 0, findings.length >= 5]";
    assert_eq!(clinic.ask(seen, &[]), serde_json::json!([true, true]), "{}", clinic.text());
}

/// The height of the tallest finding, in pixels.
fn tallest(clinic: &Window) -> f64 {
    let heights = "return Math.max(...[...document.querySelectorAll('.findings li')].map((one) => one.getBoundingClientRect().height))";
    clinic.ask(heights, &[]).as_f64().expect("findings")
}

#[test]
fn a_plan_is_printed_and_a_review_saved_for_the_record() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(PLAN, "2027-03-01T08:30:00+01:00");
    let brought = desktop.path("brought.age").to_string_lossy().into_owned();
    made.patient("2027-03-08T08:00:00+01:00", &["summary", "--until", "2027-03-07", "--out", &brought]);
    made.clinic_at("2027-03-08T08:30:00+01:00", &["receive", &brought]);
    let clinic = desktop.unlocked_clinic("2027-03-08T09:00:00+01:00");
    clinic.press_part("K17");
    clinic.see("What got in the way");
    clinic.press_part("For the medical record");
    clinic.choose("Save as", "HL7 FHIR R4, to hand over");
    clinic.press("Save the review");
    clinic.see("Saved as ");
    let bundle = fs::read_to_string(saved(&desktop, &clinic)).expect("it is there");
    let bundle: serde_json::Value = serde_json::from_str(&bundle).expect("JSON");
    assert_eq!((&bundle["resourceType"], &bundle["type"]), (&"Bundle".into(), &"collection".into()));
    clinic.look_at_desk_and_phones("visit-record");
    clinic.choose("Save as", "Report (PDF, A4)");
    clinic.press("Save the review");
    clinic.see(".pdf");
    assert!(fs::read(saved(&desktop, &clinic)).expect("it is there").starts_with(b"%PDF-"));
    hands_over(&clinic);
    clinic.press("Show the card again");
    clinic.press("Save the hand-out (PDF)");
    clinic.see("Saved as ");
    clinic.look_at_desk_and_phones("visit-printing");
    let file = saved(&desktop, &clinic);
    assert!(fs::read(&file).expect("it is there").starts_with(b"%PDF-"), "{}", file.display());
    clinic.close();
}

/// To a server on this computer, and to no other.
fn hands_over(clinic: &Window) {
    let (address, server) = server();
    clinic.see("Hand over to a server");
    clinic.type_into("Address of the server", "http://192.168.0.7:8080/fhir");
    clinic.press("Set the server");
    clinic.see("The address of the server has to be on this computer");
    clinic.type_into("Address of the server", &address);
    clinic.type_into("Token", "a-secret.token");
    clinic.press("Set the server");
    clinic.see(&format!("Reviews are handed over to {address} on this computer, with a token."));
    clinic.press("Hand this review over");
    let head = server.join().expect("it was asked");
    assert!(head.starts_with("POST /fhir HTTP/1.1") && head.contains("Bearer a-secret.token"), "{head}");
    clinic.see("K17: handed over, ");
    clinic.look_at_desk_and_phones("visit-handed-over");
    clinic.press("Hand this review over");
    clinic.see("No server answers at the address on this computer.");
    clinic.look_at_desk_and_phones("visit-server-down");
    clinic.press("Hand nothing over any more");
    clinic.see("Address of the server");
}

/// A server of records that takes in one transaction, and is gone. Afterwards what it was asked.
fn server() -> (String, std::thread::JoinHandle<String>) {
    let listener = TcpListener::bind(("127.0.0.1", 0)).expect("a port");
    let address = format!("http://{}/fhir", listener.local_addr().expect("an address"));
    let answer = move || {
        let (mut stream, _) = listener.accept().expect("a connection");
        drop(listener);
        let mut reader = BufReader::new(stream.try_clone().expect("the same connection"));
        let mut head = String::new();
        while !head.ends_with("\r\n\r\n") {
            assert!(reader.read_line(&mut head).expect("a line") > 0, "{head}");
        }
        let length = head.to_lowercase().split_once("content-length: ").expect("its length").1.to_owned();
        let length: usize = length.lines().next().expect("a line").parse().expect("a number");
        let mut body = vec![0; length];
        reader.read_exact(&mut body).expect("the whole body");
        let sent: serde_json::Value = serde_json::from_slice(&body).expect("JSON");
        let taken = |_: &serde_json::Value| serde_json::json!({ "response": { "status": "201" } });
        let entries: Vec<serde_json::Value> = sent["entry"].as_array().expect("a list").iter().map(taken).collect();
        let said =
            serde_json::json!({ "resourceType": "Bundle", "type": "transaction-response", "entry": entries }).to_string();
        write!(stream, "HTTP/1.1 200 OK\r\nContent-Length: {}\r\n\r\n{said}", said.len()).expect("it is read");
        head
    };
    (address, std::thread::spawn(answer))
}

/// The path of the file that was saved last, which lies in the person's home folder.
fn saved(desktop: &Desktop, window: &Window) -> PathBuf {
    let said = window.ask("return document.querySelector('.saved .files').textContent", &[]);
    let name = said.as_str().and_then(|said| said.strip_prefix("Saved as ")?.strip_suffix(" in your home folder."));
    desktop.path(name.unwrap_or_else(|| panic!("{said} names no file in the home folder")))
}

#[test]
fn a_diary_on_paper_is_entered_and_the_review_counts_it() {
    let desktop = Desktop::new();
    let made = desktop.prescribe(PLAN, "2027-03-01T08:30:00+01:00");
    let brought = desktop.path("brought.age").to_string_lossy().into_owned();
    made.patient("2027-03-02T08:00:00+01:00", &["summary", "--until", "2027-03-01", "--out", &brought]);
    made.clinic_at("2027-03-22T08:30:00+01:00", &["receive", &brought]);
    let clinic = desktop.unlocked_clinic("2027-03-22T09:00:00+01:00");
    clinic.press_part("K17");
    clinic.press("Enter a diary from paper");
    clinic.see("1 March to 14 March");
    clinic.type_into("Walk, sessions, 2 March", "1");
    clinic.type_into("Pain in the morning: lower back, 2 March", "5");
    clinic.type_into("Walk, sessions, 3 March", "0");
    clinic.type_into("Walk, sessions, 4 March", "many");
    clinic.press("Save these days");
    clinic.see("Walk, sessions, 4 March: a whole number from 0 to 99. Correct it, then save.");
    clinic.look_at_desk_and_phones("visit-diary");
    clinic.type_into("Walk, sessions, 4 March", "1");
    clinic.press("Save these days");
    clinic.see("Saved. The review counts these days.");
    clinic.press("Later days");
    clinic.see("15 March to 22 March");
    clinic.press("Earlier days");
    clinic.press("Review");
    clinic.see("Entered at the clinic from a diary on paper, up to 4 March.");
    clinic.close();
}
