//! What a server answers to a transaction.

use exercises::plain_text::shown;
use serde_json::Value;

/// The most characters of a server's complaint that are shown.
const MOST_SAID: usize = 200;

/// What a server took in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TakenIn {
    /// Resources that it did not have before.
    pub added: u32,
    /// Resources that it had already.
    pub known: u32,
}

/// What a server took in, if `answer` is the answer to the transaction `sent`: as many entries, and each of them a success.
pub fn taken_in(sent: &[u8], answer: &[u8]) -> Option<TakenIn> {
    let (sent, answer): (Value, Value) = (serde_json::from_slice(sent).ok()?, serde_json::from_slice(answer).ok()?);
    let entries = answer["entry"].as_array()?;
    let is_answer = answer["resourceType"] == "Bundle" && answer["type"] == "transaction-response";
    if !is_answer || entries.len() != sent["entry"].as_array()?.len() {
        return None;
    }
    let mut taken = TakenIn { added: 0, known: 0 };
    for entry in entries {
        let status = entry["response"]["status"].as_str()?;
        match status.get(..3)? {
            "201" => taken.added += 1,
            "200" | "204" | "304" => taken.known += 1,
            _ => return None,
        }
    }
    Some(taken)
}

/// What a server says against it: the first text of an `OperationOutcome`, as one line, cut, and without hidden characters.
pub fn complaint(answer: &[u8]) -> Option<String> {
    let answer: Value = serde_json::from_slice(answer).ok()?;
    let issues = answer["issue"].as_array().filter(|_| answer["resourceType"] == "OperationOutcome")?;
    let said = |issue: &Value| {
        let texts = [&issue["diagnostics"], &issue["details"]["text"], &issue["code"]];
        let line = texts.into_iter().find_map(Value::as_str).map(one_line)?;
        (!line.is_empty()).then_some(line)
    };
    issues.iter().find_map(said)
}

fn one_line(text: &str) -> String {
    let words = shown(text).split_whitespace().collect::<Vec<_>>().join(" ");
    let mut line: String = words.chars().take(MOST_SAID).collect();
    if line.len() < words.len() {
        line.push('…');
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;

    const SENT: &[u8] = br#"{"resourceType":"Bundle","entry":[{},{}]}"#;

    fn answer(statuses: &[&str]) -> Vec<u8> {
        let entries: Vec<Value> =
            statuses.iter().map(|status| serde_json::json!({ "response": { "status": status } })).collect();
        serde_json::json!({ "resourceType": "Bundle", "type": "transaction-response", "entry": entries }).to_string().into()
    }

    #[test]
    fn an_answer_says_of_every_entry_what_became_of_it() {
        assert_eq!(taken_in(SENT, &answer(&["201 Created", "200"])), Some(TakenIn { added: 1, known: 1 }));
        for wrong in [&["201"][..], &["201", "201", "201"], &["200", "404 Not Found"], &["200", ""], &["200", "2é1"], &[]] {
            assert_eq!(taken_in(SENT, &answer(wrong)), None, "{wrong:?}");
        }
        for wrong in
            ["", "null", "[]", "{}", r#"{"resourceType":"Bundle","type":"batch-response","entry":[{},{}]}"#, "<html>"]
        {
            assert_eq!(taken_in(SENT, wrong.as_bytes()), None, "{wrong}");
        }
    }

    #[test]
    fn a_complaint_is_one_clean_line() {
        let said = |text: &str| {
            let issue = serde_json::json!({ "severity": "error", "code": "invalid", "diagnostics": text });
            complaint(serde_json::json!({ "resourceType": "OperationOutcome", "issue": [issue] }).to_string().as_bytes())
        };
        assert_eq!(said("no\n  \u{1b}[31msuch\u{202e} patient").as_deref(), Some("no [31msuch patient"));
        let long = said(&"ñ".repeat(500)).expect("a text");
        assert_eq!((long.chars().count(), long.chars().last()), (MOST_SAID + 1, Some('…')));
        assert_eq!(said(" \n"), None);
        let details = br#"{"resourceType":"OperationOutcome","issue":[{"details":{"text":"a rule"}}]}"#;
        assert_eq!(complaint(details).as_deref(), Some("a rule"));
        assert_eq!(complaint(br#"{"issue":[{"diagnostics":"x"}]}"#), None);
    }
}
