//! Handing over to a server from the command line: what is sent goes through the validators, and nowhere but to this computer.

use super::{faults, json};
use crate::place::{BINARY, Place, clinic, surroundings};
use serde_json::{Value, json};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpListener;
use std::process::Command;
use std::thread::JoinHandle;

/// A server that takes in one transaction, with its address. Afterwards the headers and the body that it was sent.
fn server() -> (String, JoinHandle<(String, String)>) {
    let listener = TcpListener::bind(("127.0.0.1", 0)).expect("a port");
    let address = format!("http://{}/fhir", listener.local_addr().expect("an address"));
    let thread = std::thread::spawn(move || {
        let (mut stream, _) = listener.accept().expect("a connection");
        let mut reader = BufReader::new(stream.try_clone().expect("the same connection"));
        let mut head = String::new();
        while !head.ends_with("\r\n\r\n") {
            assert!(reader.read_line(&mut head).expect("a line") > 0, "{head}");
        }
        let length = head.to_lowercase().split_once("content-length: ").expect("its length").1.to_owned();
        let length: usize = length.lines().next().expect("a line").parse().expect("a number");
        let mut body = vec![0; length];
        reader.read_exact(&mut body).expect("the whole body");
        let body = String::from_utf8(body).expect("text");
        let sent = json(&body);
        let taken = |_: &Value| json!({ "response": { "status": "201 Created" } });
        let entries: Vec<Value> = sent["entry"].as_array().expect("a list").iter().map(taken).collect();
        let said = json!({ "resourceType": "Bundle", "type": "transaction-response", "entry": entries }).to_string();
        write!(stream, "HTTP/1.1 200 OK\r\nContent-Length: {}\r\n\r\n{said}", said.len()).expect("it is read");
        (head, body)
    });
    (address, thread)
}

/// A clinic that has received a summary of K17 and noted a visit, with a token in a file.
fn received() -> Place {
    let place = Place::prepared();
    place.clinic(&["receive", "summary.age"]);
    place.clinic(&["visit", "complaint", "K17", "neck-upper-back", "4"]);
    place.clinic(&["visit", "note", "K17", "Sleeps better."]);
    place.write("token", "a-secret.token\n");
    place
}

#[test]
fn what_is_sent_passes_the_validators_and_is_what_would_be_written() {
    let place = received();
    let (address, thread) = server();
    let said = place.clinic(&["server", &address, "--token-file", "token"]);
    assert_eq!(said, format!("Reviews are handed over to {address} on this computer, with a token.\n"));
    let said = place.clinic(&["hand-over", "K17"]);
    let (head, body) = thread.join().expect("it was asked");
    let entries = json(&body)["entry"].as_array().expect("a list").len();
    assert_eq!(said, format!("K17: handed over, {entries} entries new, 0 replaced or unchanged\n"));
    assert!(
        head.starts_with("POST /fhir HTTP/1.1\r\n") && head.to_lowercase().contains("authorization: bearer a-secret.token")
    );
    assert_eq!(body, place.clinic(&["review", "K17", "--as", "fhir-transaction"]));
    assert_eq!(faults(&[("sent.json".to_owned(), &body)]), Vec::<String>::new());
    let shown = place.clinic(&["--json", "server"]);
    assert_eq!(json(&shown), json!({ "address": address, "has_token": true }), "the token is never shown");
    assert_eq!(place.clinic(&["server", "--remove"]), "No server is set. Nothing is handed over.\n");
    place.refused(&clinic(&["hand-over", "K17"]), &["No server is set", "clinic server"]);
}

#[test]
fn refusals_are_one_sentence_and_what_to_do() {
    let place = received();
    place.refused(&clinic(&["server", "http://192.168.0.7:8080/fhir"]), &["has to be on this computer", "127.0.0.1"]);
    place.refused(&clinic(&["server", "https://localhost/fhir"]), &["has to be on this computer"]);
    place.write("token", "two words\n");
    place.refused(&clinic(&["server", "http://localhost/fhir", "--token-file", "token"]), &["The token has signs"]);
    let free = TcpListener::bind(("127.0.0.1", 0)).and_then(|listener| listener.local_addr()).expect("a free port");
    place.clinic(&["server", &format!("http://{free}/fhir")]);
    place.refused(
        &clinic(&["hand-over", "--all"]),
        &["No server answers at the address on this computer", "hand over again"],
    );
    place.refused(&clinic(&["hand-over", "K99"]), &["K99"]);
}

/// Whatever the surroundings say of proxies: no name is looked up, and no other address is asked.
#[test]
fn it_connects_to_this_computer_alone() {
    let place = received();
    let (address, thread) = server();
    place.clinic(&["server", &address.replace("127.0.0.1", "localhost")]);
    let log = place.path("calls");
    let mut strace = Command::new("strace");
    strace.args(["--follow-forks", "--seccomp-bpf", "-qq", "--signal=none", "--trace=%network", "--output"]).arg(&log);
    strace.arg(BINARY).args(clinic(&["hand-over", "K17"])).current_dir(place.path(""));
    surroundings(&mut strace, &place.path(""));
    for name in ["http_proxy", "HTTP_PROXY", "all_proxy", "ALL_PROXY", "https_proxy", "HTTPS_PROXY"] {
        strace.env(name, "http://192.0.2.1:3128");
    }
    let output = strace.output().expect("strace is installed (tests/packages.txt)");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    thread.join().expect("it was asked");
    let calls = place.text("calls");
    let opened: Vec<&str> = calls.lines().filter(|call| call.contains("socket(") || call.contains("connect(")).collect();
    assert!(opened.iter().any(|call| call.contains("connect(") && call.contains("127.0.0.1")), "{calls}");
    for call in opened {
        assert!(call.contains("socket(AF_INET,") || call.contains("inet_addr(\"127.0.0.1\")"), "{call}");
    }
}
