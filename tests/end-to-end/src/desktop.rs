//! A test desktop: folders, a session bus, a notification service.

use std::path::PathBuf;

use tempfile::TempDir;

use crate::bus::Bus;
use crate::program::Unattended;
use crate::sockets::Sockets;
use crate::window::Opening;
use crate::{file_manager, tray, wait};

/// One person's computer. It has its own folders and its own bus, which are removed when it is dropped.
pub struct Desktop {
    // Declared before the folder, so that the services end before their files are removed.
    bus: Bus,
    folder: TempDir,
}

impl Desktop {
    /// A computer on which the program was never started.
    #[expect(clippy::new_without_default, reason = "it starts processes, which a default should not")]
    pub fn new() -> Self {
        assert!(std::env::var_os("DISPLAY").is_some(), "these tests need a display: run tests/window");
        let folder = tempfile::tempdir().expect("there is room for temporary files");
        for name in ["data", "config", "cache", "run", "bin"] {
            std::fs::create_dir(folder.path().join(name)).expect("the folder was just made");
        }
        file_manager::refuse_to_open(&folder.path().join("bin"));
        Self { bus: Bus::start(folder.path()), folder }
    }

    /// The address of its session bus.
    pub(crate) fn bus_address(&self) -> &str {
        &self.bus.address
    }

    /// Prepares to open the program's window with the home of this name.
    pub fn open(&self, home: &str) -> Opening<'_> {
        Opening::new(self, home)
    }

    /// Prepares to open the program's window with a home in another folder.
    pub fn open_at(&self, home: &std::path::Path) -> Opening<'_> {
        Opening::on(self, home.to_path_buf())
    }

    /// A path in the desktop's own folder, for homes and for files that are exchanged.
    pub fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// Waits for a notification whose title and text contain these words, and returns it.
    #[track_caller]
    pub fn notified(&self, text: &str) -> String {
        let found = wait::until(|| self.bus.notes().into_iter().rev().find(|note| note.contains(text)));
        found.unwrap_or_else(|| panic!("no notification says {text:?}; there were {:?}", self.bus.notes()))
    }

    /// The number of notifications so far.
    pub fn notifications(&self) -> usize {
        self.bus.notes().len()
    }

    /// Waits until no notification is shown any more.
    #[track_caller]
    pub fn no_notification(&self) {
        let shown = || self.bus.tell_notifier(&["count", "displayed"]);
        let gone = wait::until(|| (shown().as_deref() == Some("0")).then_some(()));
        gone.unwrap_or_else(|| panic!("{:?} notifications are still shown", shown()));
    }

    /// Clicks the topmost notification.
    #[track_caller]
    pub fn click_notification(&self) {
        self.bus.tell_notifier(&["action", "0"]).expect("the notification service answers");
    }

    /// Presses the button with these words on the notification.
    #[track_caller]
    pub fn press_on_notification(&self, words: &str) {
        self.bus.choose(words);
    }

    /// Waits until the menu of the program's tray icon has exactly these lines.
    #[track_caller]
    pub fn tray_says(&self, lines: &[&str]) {
        let said = || tray::lines(&self.bus).into_iter().map(|(_, label)| label).collect::<Vec<_>>();
        assert!(wait::until(|| (said() == lines).then_some(())).is_some(), "the tray's menu says {:?}", said());
    }

    /// Chooses the item with these words from the menu of the program's tray icon.
    #[track_caller]
    pub fn choose_in_tray(&self, words: &str) {
        let found = tray::lines(&self.bus).into_iter().find(|(_, label)| label == words);
        let (number, _) = found.unwrap_or_else(|| panic!("the tray's menu has no {words:?}: {:?}", tray::lines(&self.bus)));
        tray::choose(&self.bus, &number).expect("the menu answers");
    }

    /// Starts the program with the home of this name, without a driver for its window.
    pub fn start_unattended(&self, home: &str) -> Unattended {
        Unattended::start(self, &self.path(home))
    }

    /// Starts the program without a driver at this moment in this zone, so that its sockets are watched.
    pub fn start_watched(&self, home: &str, at: &str, zone: &str, sockets: &Sockets) -> Unattended {
        Unattended::watched(self, &self.path(home), (at, zone), sockets)
    }

    /// The environment of a program that is started on this desktop.
    pub fn environment(&self) -> Vec<(String, String)> {
        let own = |name: &str| self.path(name).to_string_lossy().into_owned();
        let programs = std::env::var("PATH").unwrap_or_default();
        let variables = [
            ("PATH", format!("{}:{programs}", own("bin"))),
            ("DBUS_SESSION_BUS_ADDRESS", self.bus.address.clone()),
            ("HOME", own("")),
            ("XDG_DATA_HOME", own("data")),
            ("XDG_CONFIG_HOME", own("config")),
            ("XDG_CACHE_HOME", own("cache")),
            ("XDG_STATE_HOME", own("state")),
            ("XDG_RUNTIME_DIR", own("run")),
            // The machine's language and its accessibility bus, which is not on our bus, must have no influence.
            ("LC_ALL", "C.UTF-8".to_owned()),
            ("LANGUAGE", String::new()),
            ("NO_AT_BRIDGE", "1".to_owned()),
        ];
        variables.map(|(name, value)| (name.to_owned(), value)).to_vec()
    }
}
