//! Handing reviews over to a server on this computer, and each way in which it can fail.

mod server;

use crate::people::at;
use crate::receiving::{receive, summary, two_patients, unlocked};
use actions::clinic::handing_over::{self, MAX_ANSWER, MAX_TOKEN, Patience};
use actions::clinic::lock;
use actions::{ActionResult, DataFolder};
use server::{Answer, Server, http};
use std::net::TcpListener;
use std::path::Path;
use std::time::Duration;
use wire::handing_over::{HandOverFault, HandedOver, ServerSetting, SetServerRequest};
use wire::{Failure, Secret};
use words::{Locale, Words};

const TOKEN: &str = "a.Token-of_40~signs+/==";

fn set(folder: &mut DataFolder, address: &str, token: Option<&str>) -> ActionResult<ServerSetting> {
    handing_over::set(folder, &SetServerRequest { address: address.to_owned(), token: token.map(Secret::from) })
}

fn send_within(folder: &DataFolder, code: &str, patience: Patience) -> ActionResult<HandedOver> {
    handing_over::parcel(folder, &at("12-02T08:00"), Words::new(Locale::En), code, false)?.send(patience)
}

fn send(folder: &DataFolder, code: &str) -> ActionResult<HandedOver> {
    send_within(folder, code, Patience::default())
}

fn fault(result: ActionResult<HandedOver>) -> HandOverFault {
    match result {
        Err(Failure::HandOver(fault)) => fault,
        other => panic!("{other:?}"),
    }
}

/// A clinic that has received a summary of K17 and of K18.
fn received(dir: &Path) -> DataFolder {
    let cards = two_patients(dir);
    let summaries = [("a", &cards[0]), ("b", &cards[1])].map(|(name, card)| summary(&dir.join(name), card));
    let mut folder = unlocked(dir);
    summaries.iter().for_each(|sealed| drop(receive(&mut folder, sealed)));
    folder
}

/// What becomes of one review, where the server answers with these.
fn answered(answer: Answer, patience: Patience) -> HandOverFault {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    let server = Server::answering(vec![answer]);
    set(&mut folder, &server.address, None).expect("it is of this computer");
    let fault = fault(send_within(&folder, "K17", patience));
    server.asked();
    fault
}

#[test]
fn what_is_handed_over_twice_is_there_once() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    let server = Server::answering(vec![Answer::TakeIn, Answer::TakeIn, Answer::TakeIn]);
    set(&mut folder, &server.address, Some(TOKEN)).expect("it is of this computer");
    assert_eq!(handing_over::codes_of_all(&folder), Ok(vec!["K17".to_owned(), "K18".to_owned()]));
    let first = send(&folder, "K17").expect("taken in");
    let second = send(&folder, "K17").expect("taken in");
    let other = send(&folder, "K18").expect("taken in");
    assert!(first.added > 5 && first.known == 0, "{first:?}");
    assert_eq!((second.added, second.known), (0, first.added), "a retry is harmless");
    assert!(other.added > 5 && other.known == 1, "the program is the same: {other:?}");
    let asked = server.asked();
    assert_eq!(asked[0].bundle["entry"], asked[1].bundle["entry"]);
    for one in &asked {
        assert_eq!(one.headers["authorization"], format!("Bearer {TOKEN}"));
        assert_eq!(
            (one.headers["accept"].as_str(), one.headers["prefer"].as_str()),
            ("application/fhir+json", "return=minimal")
        );
        assert!(!one.headers.contains_key("cookie") && !one.headers.contains_key("accept-language"));
    }
}

#[test]
fn it_is_off_until_an_address_of_this_computer_is_set_and_after_it_is_removed() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    assert_eq!(handing_over::setting(&folder), Ok(ServerSetting::default()));
    assert_eq!(fault(send(&folder, "K17")), HandOverFault::NotSet);
    for elsewhere in
        ["http://192.168.0.7/fhir", "https://127.0.0.1/fhir", "http://example.org/fhir", "http://localhost.example.org/"]
    {
        assert_eq!(
            set(&mut folder, elsewhere, None),
            Err(Failure::HandOver(HandOverFault::AddressElsewhere)),
            "{elsewhere}"
        );
    }
    for unfit in ["two words", "line\r\nHost: x", "ñ", &"a".repeat(MAX_TOKEN + 1)] {
        let refused = set(&mut folder, "http://127.0.0.1:9/", Some(unfit));
        assert_eq!(refused, Err(Failure::HandOver(HandOverFault::TokenUnfit)), "{unfit}");
    }
    assert_eq!(handing_over::setting(&folder), Ok(ServerSetting::default()), "nothing changed");
    let expected = ServerSetting { address: Some("http://localhost:80/fhir".to_owned()), has_token: true };
    assert_eq!(set(&mut folder, "http://localhost/fhir/", Some(TOKEN)), Ok(expected));
    lock::lock(&mut folder);
    assert_eq!(handing_over::setting(&folder), Err(Failure::ClinicLocked));
    assert_eq!(handing_over::remove(&mut folder), Err(Failure::ClinicLocked));
    drop(folder);
    let mut folder = unlocked(dir.path());
    assert!(handing_over::setting(&folder).expect("it opens").has_token);
    assert_eq!(handing_over::remove(&mut folder), Ok(ServerSetting::default()));
    assert_eq!(fault(send(&folder, "K17")), HandOverFault::NotSet);
}

#[test]
fn address_and_token_are_in_no_file_in_the_clear_nor_after_they_were_replaced() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    set(&mut folder, "http://127.0.0.1:8123/records", Some(TOKEN)).expect("it is of this computer");
    drop(folder);
    let all = std::fs::read_dir(dir.path().join("clinic")).expect("a folder").map(|entry| entry.expect("a file").path());
    let files = all.filter(|path| path.is_file()).map(|path| std::fs::read(path).expect("a file"));
    let bytes = files.collect::<Vec<_>>().concat();
    let has = |bytes: &[u8], text: &[u8]| bytes.windows(text.len()).any(|part| part == text);
    assert!(!has(&bytes, TOKEN.as_bytes()) && !has(&bytes, b"8123/records"));
    assert!(has(&bytes, b"clinic-server"), "the setting is in these files");
    assert!(!format!("{:?}", SetServerRequest { address: String::new(), token: Some(TOKEN.into()) }).contains(TOKEN));
}

#[test]
fn a_server_that_is_not_there_is_said_to_be_down() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = received(dir.path());
    let port = TcpListener::bind(("127.0.0.1", 0)).and_then(|listener| listener.local_addr()).expect("a free port").port();
    for host in ["127.0.0.1", "localhost"] {
        set(&mut folder, &format!("http://{host}:{port}/fhir"), None).expect("it is of this computer");
        assert_eq!(fault(send(&folder, "K17")), HandOverFault::Down, "{host}");
    }
}

#[test]
fn a_server_that_says_nothing_is_waited_for_so_long_and_no_longer() {
    let patience = Patience(Duration::from_millis(300));
    assert_eq!(answered(Answer::Nothing, patience), HandOverFault::Slow { seconds: 0 });
    let half = b"HTTP/1.1 200 OK\r\nContent-Length: 10\r\n\r\n{".to_vec();
    assert_eq!(answered(Answer::Say(half), Patience::default()), HandOverFault::NotUnderstood, "it broke off");
}

#[test]
fn a_refusal_is_told_with_what_the_server_says_cut_and_cleaned() {
    let outcome = |text: &str| {
        let issue = serde_json::json!({ "severity": "error", "code": "invalid", "diagnostics": text });
        serde_json::json!({ "resourceType": "OperationOutcome", "issue": [issue] }).to_string()
    };
    let told = |status: &str, body: &str| answered(Answer::Say(http(status, "", body)), Patience::default());
    let refused = |status, said: &str| HandOverFault::Refused { code: "K17".to_owned(), status, said: said.to_owned() };
    assert_eq!(told("422 Unprocessable", &outcome("no\n \u{1b}[2Jsuch code")), refused(422, "no [2Jsuch code"));
    assert_eq!(told("400 Bad Request", "<html>no</html>"), refused(400, ""));
    assert_eq!(told("404 Not Found", ""), refused(404, ""));
    assert_eq!(told("401 Unauthorized", &outcome("who are you")), HandOverFault::NotLetIn { status: 401 });
    assert_eq!(told("500 Oh", &outcome("x")), HandOverFault::Failed { status: 500 });
    assert_eq!(told("503 Later", ""), HandOverFault::Failed { status: 503 });
}

#[test]
fn an_answer_that_is_none_is_not_taken_for_one() {
    let bundle = r#"{"resourceType":"Bundle","type":"transaction-response","entry":[]}"#;
    let longer = vec![b' '; MAX_ANSWER as usize + 1];
    let mut endless = format!("HTTP/1.1 200 OK\r\nContent-Length: {}\r\n\r\n", longer.len()).into_bytes();
    endless.extend(longer);
    for said in [
        b"\0\0\0 what?\r\n\r\n".to_vec(),
        Vec::new(),
        http("200 OK", "", "<html></html>"),
        http("200 OK", "", bundle),
        http("204 No Content", "", ""),
        http("200 OK", &format!("X: {}\r\n", "a".repeat(100_000)), "{}"),
        endless,
    ] {
        let begins = String::from_utf8_lossy(&said[..said.len().min(60)]).into_owned();
        assert_eq!(answered(Answer::Say(said), Patience::default()), HandOverFault::NotUnderstood, "{begins}");
    }
}

#[test]
fn a_redirection_is_refused_and_nobody_else_is_asked() {
    let other = TcpListener::bind(("127.0.0.1", 0)).expect("a port");
    other.set_nonblocking(true).expect("an option");
    let to = other.local_addr().expect("an address");
    for status in ["301 Moved", "302 Found", "303 See Other", "307 Temporary", "308 Permanent"] {
        let said = http(status, &format!("Location: http://{to}/fhir\r\n"), "");
        assert_eq!(answered(Answer::Say(said), Patience::default()), HandOverFault::SentElsewhere, "{status}");
    }
    assert_eq!(other.accept().expect_err("nobody came").kind(), std::io::ErrorKind::WouldBlock);
}
