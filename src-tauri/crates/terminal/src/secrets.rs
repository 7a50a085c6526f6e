//! Passphrases and names that must not be on the command line, where every program of this computer can read them.

use actions::clinic::passphrase;
use actions::{ActionResult, platform};
use std::io::IsTerminal;
use std::path::Path;
use wire::{Failure, Secret};
use words::{Key, Words};
use zeroize::Zeroizing;

/// In place of a file: the standard input.
const STDIN: &str = "-";

/// A passphrase: the first line of the file or pipe, the next line of the standard input for `-`, or typed without being shown.
pub fn passphrase(file: Option<&Path>, words: Words) -> ActionResult<Secret> {
    given(file, words, Key::PassphrasePrompt)
}

/// A new passphrase. Where it is typed, it is asked for twice, and how hard it is to guess is said in between.
pub fn new_passphrase(file: Option<&Path>, words: Words) -> ActionResult<Secret> {
    let new = given(file, words, Key::NewPassphrasePrompt)?;
    if file.is_none() {
        eprintln!("{}", words.passphrase_strength(passphrase::strength(&new, &[])));
    }
    if file.is_none() && given(None, words, Key::NewPassphraseAgainPrompt)?.expose() != new.expose() {
        return Err(Failure::PassphrasesDiffer);
    }
    Ok(new)
}

/// A patient's name from a file or from the standard input.
pub fn name(file: &Path) -> ActionResult<Secret> {
    if file == Path::new(STDIN) { next_line() } else { platform::read_secret(file) }
}

/// The token of a server, from a file of its owner alone or from the standard input.
pub fn token(file: &Path) -> ActionResult<Secret> {
    if file == Path::new(STDIN) { next_line() } else { platform::read_secret(file) }
}

fn given(file: Option<&Path>, words: Words, prompt: Key) -> ActionResult<Secret> {
    match file {
        Some(file) if file == Path::new(STDIN) && !std::io::stdin().is_terminal() => next_line(),
        Some(file) if file != Path::new(STDIN) => platform::read_secret(file),
        _ => {
            let typed = rpassword::prompt_password(format!("{} ", words.text(prompt)));
            typed.map(Secret::from).map_err(|_| Failure::PassphraseMissing)
        }
    }
}

/// Longest line, in bytes.
const MAX_LINE: usize = 4096;

/// The next line of the standard input, without its end. What the standard library buffers of the input is not wiped.
fn next_line() -> ActionResult<Secret> {
    use std::io::Read;
    let unreadable = || Failure::FileUnreadable { file: STDIN.to_owned() };
    let mut line = Zeroizing::new(Vec::with_capacity(MAX_LINE));
    for byte in std::io::stdin().lock().bytes() {
        match byte.map_err(|_| unreadable())? {
            b'\n' => break,
            _ if line.len() == MAX_LINE => return Err(unreadable()),
            byte => line.push(byte),
        }
    }
    let line = line.strip_suffix(b"\r").unwrap_or(&line);
    std::str::from_utf8(line).map(Secret::from).map_err(|_| unreadable())
}
