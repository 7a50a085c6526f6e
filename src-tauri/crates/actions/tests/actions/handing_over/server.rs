//! A strict server of records on this computer: what is not as HTTP and FHIR want it fails the test.

use serde_json::Value;
use std::collections::BTreeMap;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{TcpListener, TcpStream};
use std::thread::JoinHandle;

/// What was asked of it.
pub struct Asked {
    pub headers: BTreeMap<String, String>,
    pub bundle: Value,
}

/// What it answers: to a transaction as it should, these bytes, or nothing at all until the other side gives up.
pub enum Answer {
    TakeIn,
    Say(Vec<u8>),
    Nothing,
}

pub struct Server {
    pub address: String,
    thread: JoinHandle<Vec<Asked>>,
}

impl Server {
    /// Answers one connection after the other, and then no more.
    pub fn answering(answers: Vec<Answer>) -> Server {
        let listener = TcpListener::bind(("127.0.0.1", 0)).expect("a port");
        let address = format!("http://{}/fhir", listener.local_addr().expect("an address"));
        let thread = std::thread::spawn(move || {
            let mut known: Vec<String> = Vec::new();
            answers.into_iter().map(|answer| one(&listener, answer, &mut known)).collect()
        });
        Server { address, thread }
    }

    /// What was asked of it, once it has answered everything.
    pub fn asked(self) -> Vec<Asked> {
        self.thread.join().expect("everything asked was as it should be")
    }
}

/// An answer as HTTP has it.
pub fn http(status: &str, more: &str, body: &str) -> Vec<u8> {
    format!("HTTP/1.1 {status}\r\n{more}Content-Length: {}\r\n\r\n{body}", body.len()).into_bytes()
}

fn one(listener: &TcpListener, answer: Answer, known: &mut Vec<String>) -> Asked {
    let (mut stream, from) = listener.accept().expect("a connection");
    assert!(from.ip().is_loopback());
    let asked = read(&stream);
    let said = match answer {
        Answer::TakeIn => http("200 OK", "Content-Type: application/fhir+json\r\n", &taken_in(&asked.bundle, known)),
        Answer::Say(bytes) => bytes,
        Answer::Nothing => {
            // Until the other side closes.
            let _ = stream.read(&mut [0]);
            return asked;
        }
    };
    // Who has read enough may have gone.
    let _ = stream.write_all(&said);
    asked
}

fn read(stream: &TcpStream) -> Asked {
    let mut reader = BufReader::new(stream);
    let mut line = String::new();
    reader.read_line(&mut line).expect("a line");
    assert_eq!(line, "POST /fhir HTTP/1.1\r\n");
    let mut headers = BTreeMap::new();
    loop {
        let mut line = String::new();
        reader.read_line(&mut line).expect("a line");
        let line = line.strip_suffix("\r\n").expect("it ends as lines of HTTP do");
        let Some((name, value)) = line.split_once(':') else {
            assert_eq!(line, "");
            break;
        };
        let twice = headers.insert(name.to_ascii_lowercase(), value.trim().to_owned());
        assert_eq!(twice, None, "{name}");
    }
    let length: usize = headers["content-length"].parse().expect("a number");
    let mut body = vec![0; length];
    reader.read_exact(&mut body).expect("the whole body");
    assert_eq!(headers["content-type"], "application/fhir+json");
    assert!(headers["host"].starts_with("127.0.0.1:"), "{headers:?}");
    let bundle: Value = serde_json::from_slice(&body).expect("JSON");
    assert_eq!((&bundle["resourceType"], &bundle["type"]), (&"Bundle".into(), &"transaction".into()));
    Asked { headers, bundle }
}

/// What it does with each entry: by its name or id it knows what it has.
fn taken_in(bundle: &Value, known: &mut Vec<String>) -> String {
    let one = |entry: &Value| {
        let request = &entry["request"];
        let method = request["method"].as_str().expect("a method");
        let url = request["url"].as_str().expect("a place");
        let name = match method {
            "PUT" => url.to_owned(),
            "POST" => format!("{url}?{}", request["ifNoneExist"].as_str().expect("a name")),
            other => panic!("{other} {url}"),
        };
        let kind = entry["resource"]["resourceType"].as_str().expect("a type");
        assert!(url.starts_with(kind), "{url} is no {kind}");
        let is_known = known.contains(&name);
        if !is_known {
            known.push(name);
        }
        serde_json::json!({ "response": { "status": if is_known { "200 OK" } else { "201 Created" } } })
    };
    let entries: Vec<Value> = bundle["entry"].as_array().expect("a list").iter().map(one).collect();
    serde_json::json!({ "resourceType": "Bundle", "type": "transaction-response", "entry": entries }).to_string()
}
