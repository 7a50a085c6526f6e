//! Starting at login, if the person wants it. The system stores this setting, so the system is asked.

use std::path::Path;

use auto_launch::{AutoLaunch, AutoLaunchBuilder, WindowsEnableMode};
use tauri::AppHandle;
use wire::Failure;

use crate::home;

/// The command that the system starts at login, or why it cannot be set up.
pub struct AtLogin(Result<AutoLaunch, String>);

impl AtLogin {
    /// For the home on the command line, or for the usual one. For the system, each home is a separate program.
    pub fn of(app: &AppHandle, home: Option<&Path>) -> AtLogin {
        AtLogin(program(app, home).map_err(|error| error.to_string()))
    }

    /// Whether the program starts at login.
    pub fn is_on(&self) -> bool {
        self.0.as_ref().is_ok_and(|program| program.is_enabled().unwrap_or(false))
    }

    /// Sets whether the program starts at login.
    ///
    /// # Errors
    /// The system's error message.
    pub fn set(&self, on: bool) -> Result<(), Failure> {
        let refused = |detail: String| Failure::AtLoginRefused { detail };
        let program = self.0.as_ref().map_err(|error| refused(error.clone()))?;
        let done = if on { program.enable() } else { program.disable() };
        done.map_err(|error| refused(error.to_string()))
    }
}

fn program(app: &AppHandle, home: Option<&Path>) -> Result<AutoLaunch, Box<dyn std::error::Error>> {
    let path = tauri::process::current_binary(&tauri::Manager::env(app))?;
    let mut name = String::from("Carryover");
    let mut arguments = vec![String::from("--hidden")];
    if let Some(home) = home {
        name.extend(["-", &home::short_name(home)]);
        arguments.extend([String::from("--home"), word(&home.to_string_lossy())]);
    }
    let program = AutoLaunchBuilder::new()
        .set_app_name(&name)
        .set_app_path(&word(&path.to_string_lossy()))
        .set_args(&arguments)
        .set_windows_enable_mode(WindowsEnableMode::CurrentUser)
        .build()?;
    Ok(program)
}

/// Quotes one word of a command line, whatever it contains. The library joins words without quoting them.
///
/// The rules are those of `Exec` in the Desktop Entry Specification, version 1.5: the word is quoted, with a backslash before
/// characters that are special within quotes; the backslash itself is doubled, because the file is read as a string first; `%` is
/// doubled.
#[cfg(target_os = "linux")]
fn word(text: &str) -> String {
    let plain = |letter: char| letter.is_ascii_alphanumeric() || "/._-+:,@".contains(letter);
    if text.chars().all(plain) {
        return text.to_owned();
    }
    let mut quoted = String::from("\"");
    for letter in text.chars() {
        match letter {
            '"' | '`' | '$' => quoted.extend(["\\\\", letter.encode_utf8(&mut [0; 4])]),
            '\\' => quoted.push_str("\\\\\\\\"),
            '%' => quoted.push_str("%%"),
            letter => quoted.push(letter),
        }
    }
    quoted.push('"');
    quoted
}

/// A path on Windows cannot contain a quotation mark.
#[cfg(windows)]
fn word(text: &str) -> String {
    format!("\"{text}\"")
}

/// On other systems the file format separates the words.
#[cfg(not(any(target_os = "linux", windows)))]
fn word(text: &str) -> String {
    text.to_owned()
}

#[cfg(all(test, target_os = "linux"))]
mod tests {
    use super::*;

    #[test]
    fn a_plain_path_stays_and_any_other_is_one_word() {
        assert_eq!(word("/opt/carryover/carryover-shell"), "/opt/carryover/carryover-shell");
        assert_eq!(word("/mnt/my own"), "\"/mnt/my own\"");
        assert_eq!(word("/a$b"), r#""/a\\$b""#);
        assert_eq!(word(r"/a\b"), r#""/a\\\\b""#);
        assert_eq!(word("/100%"), "\"/100%%\"");
    }
}
