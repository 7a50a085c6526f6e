//! Prints results, as text or as JSON lines.

use actions::platform;
use exercises::plain_text::shown;
use serde_json::Value;
use std::io::{IsTerminal, Write};
use wire::Failure;
use words::Words;

/// The output for results.
pub struct Out {
    json: bool,
    /// The texts of the chosen language.
    pub words: Words,
}

impl Out {
    /// Prints text, or with `json` one JSON object per line.
    pub fn new(json: bool) -> Out {
        Out { json, words: Words::new(platform::locale()) }
    }

    /// Whether JSON is wanted.
    pub fn json(&self) -> bool {
        self.json
    }

    /// Prints one result: the text, or the object on a line of its own.
    pub fn say(&self, text: impl FnOnce(Words) -> String, object: impl FnOnce() -> Value) {
        let line = if self.json { object().to_string() } else { text(self.words) };
        let line = shown(&line);
        // A reader that has gone away (a closed pipe) is not an error.
        let _ = writeln!(std::io::stdout(), "{line}");
    }

    /// Prints text unchanged.
    pub fn print(&mut self, text: &str) {
        let _ = write!(std::io::stdout(), "{}", shown(text));
    }

    /// Prints a table, whose lines end with CRLF.
    pub fn print_table(&mut self, table: &str) {
        for line in table.split_terminator("\r\n") {
            let _ = write!(std::io::stdout(), "{}\r\n", shown(line));
        }
    }

    /// One of several faults: what is wrong, on stderr.
    pub fn fault(&mut self, failure: &Failure) {
        let fault = self.words.failure(failure).fault;
        let line = if self.json { serde_json::json!({ "refused": failure, "fault": fault }).to_string() } else { fault };
        self.say_to_stderr(&line);
    }

    /// Prints a sentence that is not about what was asked for: on stderr.
    pub fn note(&self, said: &str) {
        let line = if self.json { serde_json::json!({ "note": said }).to_string() } else { said.to_owned() };
        let _ = writeln!(std::io::stderr(), "{line}");
    }

    /// Prints a failure to stderr: what is wrong and what to do.
    pub fn refuse(&mut self, failure: &Failure) {
        let refusal = self.words.failure(failure);
        let line = if self.json {
            serde_json::json!({ "refused": failure, "fault": refusal.fault, "advice": refusal.advice }).to_string()
        } else {
            format!("{} {}", refusal.fault, refusal.advice)
        };
        self.say_to_stderr(&line);
    }

    /// Says how far something is, in a line that the next one takes the place of; only where somebody looks at a terminal.
    pub fn progress(&self, said: impl FnOnce(Words) -> String) {
        if self.is_watched() {
            let _ = write!(std::io::stderr(), "\r{}\x1b[K", shown(&said(self.words)));
            let _ = std::io::stderr().flush();
        }
    }

    /// Clears the line of [`Out::progress`].
    pub fn clear_progress(&self) {
        if self.is_watched() {
            let _ = write!(std::io::stderr(), "\r\x1b[K");
        }
    }

    fn is_watched(&self) -> bool {
        !self.json && std::io::stderr().is_terminal()
    }

    /// Prints a line to stderr. Like everything that is printed, it holds no character that a terminal would obey.
    pub fn say_to_stderr(&self, line: &str) {
        let _ = writeln!(std::io::stderr(), "{}", shown(line));
    }
}
