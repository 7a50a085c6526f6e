//! The system's file manager, which shows a file that was saved.

use std::path::Path;

use wire::saved::Shown;

/// Shows a file in its folder. It waits for the file manager's answer, so it has to be called where waiting holds up nobody.
pub fn show(file: &Path) -> Shown {
    if !file.exists() {
        Shown::Gone
    } else if system::show(file) {
        Shown::InFolder
    } else {
        Shown::NoFileManager { path: file.display().to_string() }
    }
}

#[cfg(target_os = "linux")]
mod system {
    use std::path::Path;
    use std::process::{Command, Stdio};
    use std::sync::mpsc;
    use std::thread;
    use std::time::Duration;

    use tauri::Url;

    /// The name under which a file manager answers on the session bus.
    const NAME: &str = "org.freedesktop.FileManager1";
    const PATH: &str = "/org/freedesktop/FileManager1";
    /// A file manager that is started by the bus takes its time.
    const PATIENCE: Duration = Duration::from_secs(15);
    /// What cannot be opened is refused within this time; what is open may stay open.
    const REFUSAL: Duration = Duration::from_secs(3);

    /// Asks whichever file manager is on the bus; otherwise whatever program opens folders, which then does not mark the file.
    pub fn show(file: &Path) -> bool {
        asked(file).is_ok() || file.parent().is_some_and(opened)
    }

    fn asked(file: &Path) -> zbus::Result<()> {
        let uri = Url::from_file_path(file).map_err(|()| zbus::Error::Unsupported)?;
        let bus = zbus::blocking::connection::Builder::session()?.method_timeout(PATIENCE).build()?;
        bus.call_method(Some(NAME), PATH, Some(NAME), "ShowItems", &(vec![uri.as_str()], "")).map(drop)
    }

    fn opened(folder: &Path) -> bool {
        let mut opener = Command::new("xdg-open");
        opener.arg(folder).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
        let Ok(mut child) = opener.spawn() else { return false };
        let (said, answer) = mpsc::channel();
        // Some openers end at once, others become the file manager and end with it.
        thread::spawn(move || said.send(child.wait().is_ok_and(|status| status.success())));
        answer.recv_timeout(REFUSAL).unwrap_or(true)
    }
}

#[cfg(target_os = "macos")]
mod system {
    use std::path::Path;
    use std::process::Command;

    pub fn show(file: &Path) -> bool {
        Command::new("open").arg("-R").arg(file).status().is_ok_and(|status| status.success())
    }
}

#[cfg(windows)]
mod system {
    use std::os::windows::process::CommandExt;
    use std::path::Path;
    use std::process::Command;

    /// Its exit code says nothing. No path has a quotation mark in it on this system.
    pub fn show(file: &Path) -> bool {
        Command::new("explorer").raw_arg(format!("/select,\"{}\"", file.display())).spawn().is_ok()
    }
}

#[cfg(not(any(target_os = "linux", target_os = "macos", windows)))]
mod system {
    use std::path::Path;

    pub fn show(_file: &Path) -> bool {
        false
    }
}
