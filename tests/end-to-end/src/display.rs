//! The X display on which the windows are, for what no driver of web pages can do: finding a window among those of all programs, and
//! sending it what a desktop sends.

use std::fs;
use std::path::Path;

use x11rb::connection::Connection;
use x11rb::protocol::xproto::{AtomEnum, ClientMessageEvent, ConnectionExt, EventMask, MapState, Window as Frame};
use x11rb::rust_connection::RustConnection;

use crate::wait;

/// A connection to the display.
pub struct Display {
    pub connection: RustConnection,
    pub root: Frame,
}

impl Display {
    /// Connects to the display of the tests.
    pub fn open() -> Display {
        let (connection, screen) = x11rb::connect(None).expect("the tests have a display");
        let root = connection.setup().roots[screen].root;
        Display { connection, root }
    }

    /// Waits until a window with this title is shown by the program that was started with this home.
    #[track_caller]
    pub fn frame(&self, title: &str, home: &Path) -> Frame {
        let found = wait::until(|| self.shown_frame(title, home));
        found.unwrap_or_else(|| {
            let titles: Vec<String> = self.below(self.root).into_iter().filter_map(|frame| self.title(frame)).collect();
            panic!("no window on the display is {title:?} of {}, only {titles:?}", home.display())
        })
    }

    /// The window with this title of the program that was started with this home, if it is shown now.
    pub fn shown_frame(&self, title: &str, home: &Path) -> Option<Frame> {
        let home = home.to_string_lossy();
        self.below(self.root).into_iter().find(|frame| self.is_of(*frame, title, &home) && self.is_shown(*frame))
    }

    /// The numbers in this property of a window; `None` if it has none.
    pub fn numbers(&self, frame: Frame, property: &str) -> Option<Vec<u32>> {
        let asked = self.connection.get_property(false, frame, self.atom(property), AtomEnum::ANY, 0, 16).ok()?;
        let numbers: Vec<u32> = asked.reply().ok()?.value32()?.collect();
        Some(numbers)
    }

    /// The number of a name.
    pub fn atom(&self, name: &str) -> u32 {
        let asked = self.connection.intern_atom(false, name.as_bytes()).expect("the display answers");
        asked.reply().expect("an atom has a number").atom
    }

    /// Sends a window a message of this kind, and waits until the display has it.
    #[track_caller]
    pub fn send(&self, frame: Frame, kind: &str, data: [u32; 5]) {
        let event = ClientMessageEvent::new(32, frame, self.atom(kind), data);
        let sent = self.connection.send_event(false, frame, EventMask::NO_EVENT, event).expect("the display answers");
        // If the connection were closed too early, the message would be lost.
        sent.check().expect("the window is there");
    }

    /// All windows below this one, at any depth.
    fn below(&self, frame: Frame) -> Vec<Frame> {
        let asked = self.connection.query_tree(frame).ok();
        let children = asked.and_then(|tree| tree.reply().ok()).map(|tree| tree.children).unwrap_or_default();
        children.into_iter().flat_map(|child| [vec![child], self.below(child)].concat()).collect()
    }

    /// Whether it is a program's own window with this title, which can be asked to close, and the program was started with this home.
    fn is_of(&self, frame: Frame, title: &str, home: &str) -> bool {
        let close = self.atom("WM_DELETE_WINDOW");
        let closes = self.numbers(frame, "WM_PROTOCOLS").is_some_and(|all| all.contains(&close));
        let process = self.numbers(frame, "_NET_WM_PID").and_then(|numbers| numbers.first().copied());
        let line = process.and_then(|process| fs::read_to_string(format!("/proc/{process}/cmdline")).ok());
        closes
            && self.title(frame).as_deref() == Some(title)
            && line.is_some_and(|line| line.split('\0').any(|word| word == home))
    }

    /// A window's title; `None` if it has none.
    fn title(&self, frame: Frame) -> Option<String> {
        let asked = self.connection.get_property(false, frame, AtomEnum::WM_NAME, AtomEnum::ANY, 0, 64).ok()?;
        let name = String::from_utf8(asked.reply().ok()?.value).ok()?;
        (!name.is_empty()).then_some(name)
    }

    fn is_shown(&self, frame: Frame) -> bool {
        let asked = self.connection.get_window_attributes(frame).ok().and_then(|asked| asked.reply().ok());
        asked.is_some_and(|attributes| attributes.map_state == MapState::VIEWABLE)
    }
}
