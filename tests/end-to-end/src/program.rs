//! The program as built by cargo.

use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitStatus, Stdio};

use crate::desktop::Desktop;
use crate::sockets::Sockets;
use crate::wait;

/// The output of the binary `carryover` for these arguments; the test fails if the program refuses.
#[track_caller]
pub fn carryover(arguments: &[&str]) -> String {
    printed(Command::new(path().with_file_name("carryover")), arguments)
}

/// The same on a device in this zone, wherever the test runs.
#[track_caller]
pub fn carryover_in(zone: &str, arguments: &[&str]) -> String {
    let mut command = Command::new(path().with_file_name("carryover"));
    command.env("TZ", zone);
    printed(command, arguments)
}

#[track_caller]
fn printed(mut command: Command, arguments: &[&str]) -> String {
    // What is prepared is not remembered, or the window would take it for a copy. Tests read what it says in English.
    let command = command.args(arguments).env("XDG_STATE_HOME", "/dev/null").env("LC_ALL", "C.UTF-8").env_remove("LANGUAGE");
    let done = command.output().expect("carryover is built");
    assert!(done.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&done.stderr));
    String::from_utf8(done.stdout).expect("it prints UTF-8")
}

/// The program's path: in cargo's folder for programs, one level above that of the tests.
pub fn path() -> PathBuf {
    let own = std::env::current_exe().expect("a running test has a path");
    let folder = own.ancestors().skip(1).find(|folder| !folder.ends_with("deps")).expect("cargo puts programs into folders");
    let program = folder.join("carryover-shell");
    assert!(program.exists(), "{} is not built: run tests/window", program.display());
    program
}

/// The program started without a driver. It is ended when this is dropped.
pub struct Unattended(Child);

impl Unattended {
    pub(crate) fn start(desktop: &Desktop, home: &Path) -> Self {
        Self::run(desktop, &path(), &["--home".into(), home.display().to_string()], None)
    }

    /// The same with its sockets watched, at a moment instead of the real time and in this zone.
    pub(crate) fn watched(desktop: &Desktop, home: &Path, (at, zone): (&str, &str), sockets: &Sockets) -> Self {
        let own = ["--home".into(), home.display().to_string(), "--at".into(), at.into()];
        let (program, arguments) = sockets.around(&own);
        Self::run(desktop, &program, &arguments, Some(zone))
    }

    fn run(desktop: &Desktop, program: &Path, arguments: &[String], zone: Option<&str>) -> Self {
        let child = Command::new(program)
            .args(arguments)
            .envs(desktop.environment())
            .envs(zone.map(|zone| ("TZ", zone)))
            .stderr(Stdio::null())
            .spawn()
            .expect("the program can be started");
        Self(child)
    }

    /// Waits for the program to end by itself.
    #[track_caller]
    pub fn ends(&mut self) -> ExitStatus {
        wait::until(|| self.0.try_wait().expect("it is our child")).expect("the program ends by itself")
    }

    /// Whether it is running now.
    pub fn runs(&mut self) -> bool {
        self.0.try_wait().expect("it is our child").is_none()
    }
}

impl Drop for Unattended {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}
