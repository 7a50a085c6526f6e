//! What shows files on a test desktop: a file manager on its bus, and the command that opens folders.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError};

use crate::desktop::Desktop;

/// The command that opens folders, and the file in which the stand-in notes them.
const OPENER: &str = "xdg-open";
const OPENED: &str = "opened-folders";

/// A file manager that shows nothing, and notes what it was asked to show. It leaves the bus when it is dropped.
pub struct FileManager {
    shown: Shown,
    _bus: zbus::blocking::Connection,
}

/// The addresses of files, in order.
type Shown = Arc<Mutex<Vec<String>>>;

/// What it answers on the bus.
struct Items(Shown);

#[zbus::interface(name = "org.freedesktop.FileManager1")]
impl Items {
    fn show_items(&self, uris: Vec<String>, _startup_id: &str) {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).extend(uris);
    }
}

impl FileManager {
    /// The addresses of the files that it was asked to show.
    pub fn shown(&self) -> Vec<String> {
        self.shown.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }
}

impl Desktop {
    /// Starts a file manager on this desktop.
    pub fn with_file_manager(&self) -> FileManager {
        let shown = Shown::default();
        let serve = || {
            zbus::blocking::connection::Builder::address(self.bus_address())?
                .name("org.freedesktop.FileManager1")?
                .serve_at("/org/freedesktop/FileManager1", Items(Arc::clone(&shown)))?
                .build()
        };
        let bus: zbus::Result<_> = serve();
        FileManager { _bus: bus.expect("the desktop's bus takes another service"), shown }
    }

    /// From now on this desktop has a program that opens folders, which notes them. Without it, the command refuses.
    pub fn with_opener(&self) {
        let line = format!("printf '%s\\n' \"$1\" >> '{}'", self.path(OPENED).display());
        write_opener(&self.path("bin"), &line);
    }

    /// The folders that were opened so far.
    pub fn opened_folders(&self) -> Vec<String> {
        let noted = fs::read_to_string(self.path(OPENED)).unwrap_or_default();
        noted.lines().map(str::to_owned).collect()
    }
}

/// Puts a command into the folder `bin` that refuses to open anything, so that no test opens a program of the machine.
pub fn refuse_to_open(bin: &Path) {
    write_opener(bin, "exit 4");
}

fn write_opener(bin: &Path, line: &str) {
    let script = bin.join(OPENER);
    let written = fs::write(&script, format!("#!/bin/sh\n{line}\n"));
    written
        .and_then(|()| fs::set_permissions(&script, fs::Permissions::from_mode(0o700)))
        .expect("the folder is the desktop's");
}
