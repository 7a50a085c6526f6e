//! Closes a window as the button in its frame does: the program is asked and may refuse (ICCCM 4.2.8.1).

use std::fs;

use x11rb::connection::Connection;
use x11rb::protocol::xproto::{AtomEnum, ClientMessageEvent, ConnectionExt, EventMask, Window as Frame};
use x11rb::rust_connection::RustConnection;

use crate::{Window, wait};

impl Window {
    /// Presses the close button in the window's frame.
    #[track_caller]
    pub fn ask_to_close(&self) {
        let (display, screen) = x11rb::connect(None).expect("the tests have a display");
        let root = display.setup().roots[screen].root;
        let home = self.home().to_string_lossy().into_owned();
        let found = wait::until(|| all(&display, root).into_iter().find(|frame| is_of(&display, *frame, &home)));
        let frame = found.unwrap_or_else(|| panic!("no window on the display is of {home}"));
        let data = [atom(&display, "WM_DELETE_WINDOW"), x11rb::CURRENT_TIME, 0, 0, 0];
        let event = ClientMessageEvent::new(32, frame, atom(&display, "WM_PROTOCOLS"), data);
        let sent = display.send_event(false, frame, EventMask::NO_EVENT, event).expect("the display answers");
        // Waits until the display has received it: if the connection is closed too early, the request is lost.
        sent.check().expect("the window is there");
    }
}

/// All windows below this one, at any depth.
fn all(display: &RustConnection, root: Frame) -> Vec<Frame> {
    let children = display.query_tree(root).ok().and_then(|tree| tree.reply().ok()).map(|tree| tree.children);
    let below = children.unwrap_or_default().into_iter();
    below.flat_map(|child| [vec![child], all(display, child)].concat()).collect()
}

/// Whether it is a program's own window that can be asked to close, and the program was started with this home.
fn is_of(display: &RustConnection, frame: Frame, home: &str) -> bool {
    let numbers = |name: &str| {
        let asked = display.get_property(false, frame, atom(display, name), AtomEnum::ANY, 0, 16).ok()?;
        let answer = asked.reply().ok()?;
        let numbers: Vec<u32> = answer.value32()?.collect();
        Some(numbers)
    };
    let closes = numbers("WM_PROTOCOLS").is_some_and(|all| all.contains(&atom(display, "WM_DELETE_WINDOW")));
    let process = numbers("_NET_WM_PID").and_then(|numbers| numbers.first().copied());
    let line = process.and_then(|process| fs::read_to_string(format!("/proc/{process}/cmdline")).ok());
    let title = display.get_property(false, frame, AtomEnum::WM_NAME, AtomEnum::ANY, 0, 64).ok();
    let title = title.and_then(|asked| asked.reply().ok()).map(|name| name.value).unwrap_or_default();
    closes && title == b"Carryover" && line.is_some_and(|line| line.split('\0').any(|word| word == home))
}

fn atom(display: &RustConnection, name: &str) -> u32 {
    let asked = display.intern_atom(false, name.as_bytes()).expect("the display answers");
    asked.reply().expect("an atom has a number").atom
}
