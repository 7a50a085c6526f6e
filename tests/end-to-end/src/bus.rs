//! A session bus for one test desktop, with a notification service on it.

use std::fs;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

use crate::wait;

/// The file with the words of the action to be chosen from the menu of a notification.
const WANTED: &str = "wanted-action";

/// The bus and the notification service; both end when it is dropped.
pub struct Bus {
    daemon: Child,
    notifier: Child,
    /// The bus's address for programs.
    pub address: String,
    notes: PathBuf,
}

impl Bus {
    /// Starts both and waits until the service has its name on the bus.
    pub fn start(folder: &Path) -> Self {
        let mut daemon = Command::new("dbus-daemon")
            .args(["--nofork", "--nopidfile", "--print-address"])
            .arg(format!("--config-file={}", rules(folder).display()))
            .stdout(Stdio::piped())
            // It complains that it cannot raise its limit of open files.
            .stderr(Stdio::null())
            .spawn()
            .expect("dbus-daemon is installed (tests/packages.txt)");
        let mut address = String::new();
        let printed = daemon.stdout.take().expect("its output is a pipe");
        BufReader::new(printed).read_line(&mut address).expect("dbus-daemon prints its address");
        let address = address.trim().to_owned();
        let notes = folder.join("notes");
        let settings = settings(folder, &notes);
        let notifier = start_notifier(&settings, &address);
        let mut bus = Self { daemon, notifier, address, notes };
        let answers = wait::until(|| {
            // On a display that was just started it may end immediately; then it is started again.
            if matches!(bus.notifier.try_wait(), Ok(Some(_))) {
                bus.notifier = start_notifier(&settings, &bus.address);
            }
            bus.tell_notifier(&["count", "displayed"])
        });
        answers.expect("the notification service answers");
        bus
    }

    /// The notifications so far, one line each with title and text, oldest first.
    pub fn notes(&self) -> Vec<String> {
        let text = fs::read_to_string(&self.notes).unwrap_or_default();
        text.lines().map(str::to_owned).collect()
    }

    /// Chooses the action with these words from the menu of the notifications that are shown.
    pub fn choose(&self, words: &str) {
        fs::write(self.notes.with_file_name(WANTED), words).expect("the desktop's folder is writable");
        self.tell_notifier(&["context"]).expect("the notification service answers");
    }

    /// The output of `dunstctl`; `None` if it fails.
    pub fn tell_notifier(&self, words: &[&str]) -> Option<String> {
        let answer = Command::new("dunstctl").args(words).env("DBUS_SESSION_BUS_ADDRESS", &self.address).output().ok()?;
        answer.status.success().then(|| String::from_utf8_lossy(&answer.stdout).trim().to_owned())
    }
}

impl Drop for Bus {
    fn drop(&mut self) {
        for child in [&mut self.notifier, &mut self.daemon] {
            let _ = child.kill();
            let _ = child.wait();
        }
    }
}

/// Starts the notification service on the bus with this address.
fn start_notifier(settings: &Path, address: &str) -> Child {
    Command::new("dunst")
        .arg("-conf")
        .arg(settings)
        .env("DBUS_SESSION_BUS_ADDRESS", address)
        .stderr(Stdio::null())
        .spawn()
        .expect("dunst is installed (tests/packages.txt)")
}

/// Rules for a session bus on which everyone may talk and which starts nothing by itself, so that no service of the machine that
/// runs the tests takes part.
fn rules(folder: &Path) -> PathBuf {
    let file = folder.join("bus.conf");
    let rules = format!(
        r#"<busconfig>
            <type>session</type>
            <listen>unix:dir={}</listen>
            <auth>EXTERNAL</auth>
            <policy context="default">
                <allow send_destination="*" eavesdrop="true"/>
                <allow eavesdrop="true"/>
                <allow own="*"/>
            </policy>
        </busconfig>"#,
        folder.display()
    );
    fs::write(&file, rules).expect("the desktop's folder is writable");
    file
}

/// Settings with which the service writes each notification to a file when it is shown, and with which its menu of actions chooses
/// the one whose words are in [`WANTED`].
fn settings(folder: &Path, notes: &Path) -> PathBuf {
    let script = folder.join("note-down");
    let line = format!("#!/bin/sh\nprintf '%s: %s\\n' \"$DUNST_SUMMARY\" \"$DUNST_BODY\" >> '{}'\n", notes.display());
    fs::write(&script, line).expect("the desktop's folder is writable");
    make_executable(&script);
    let file = folder.join("dunstrc");
    let menu = folder.join("choose");
    let wanted = folder.join(WANTED);
    let choose = format!("#!/bin/sh\ngrep -F -e \"$(cat '{}')\" | head -n 1\n", wanted.display());
    fs::write(&menu, choose).expect("the desktop's folder is writable");
    make_executable(&menu);
    let settings = format!(
        "[global]\nenable_posix_regex = true\ndmenu = {}\n[note-down]\nsummary = \".*\"\nscript = {}\n",
        menu.display(),
        script.display()
    );
    fs::write(&file, settings).expect("the desktop's folder is writable");
    file
}

fn make_executable(script: &Path) {
    use std::os::unix::fs::PermissionsExt;
    fs::set_permissions(script, fs::Permissions::from_mode(0o700)).expect("the script is part of the test");
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Makes the service show a notification.
    fn notify(bus: &Bus, title: &str, text: &str) {
        let call = ["call", "--session", "--dest", "org.freedesktop.Notifications"];
        let on = ["--object-path", "/org/freedesktop/Notifications", "--method", "org.freedesktop.Notifications.Notify"];
        let event = ["by hand", "0", "", title, text, "[]", "{}", "0"];
        let mut gdbus = Command::new("gdbus");
        gdbus.args(call).args(on).args(event).env("DBUS_SESSION_BUS_ADDRESS", &bus.address).stdout(Stdio::null());
        assert!(gdbus.status().unwrap().success());
    }

    #[test]
    fn notifications_are_recorded_in_order() {
        let folder = tempfile::tempdir().unwrap();
        let bus = Bus::start(folder.path());
        assert_eq!(bus.notes(), Vec::<String>::new());
        notify(&bus, "Sit tall", "due now");
        wait::until(|| (bus.notes().len() == 1).then_some(())).unwrap();
        notify(&bus, "One leg", "by the chair's back");
        wait::until(|| (bus.notes().len() == 2).then_some(())).unwrap();
        assert_eq!(bus.notes(), ["Sit tall: due now", "One leg: by the chair's back"]);
        assert_eq!(bus.tell_notifier(&["count", "displayed"]).as_deref(), Some("2"));
    }

    #[test]
    fn two_desktops_do_not_get_each_others_notifications() {
        let folders = [tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap()];
        let [here, there] = [0, 1].map(|index: usize| Bus::start(folders[index].path()));
        notify(&here, "Sit tall", "due now");
        wait::until(|| (here.notes().len() == 1).then_some(())).unwrap();
        assert_eq!(there.notes(), Vec::<String>::new());
    }
}
