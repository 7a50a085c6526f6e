//! Drags files over a window and drops them on it, as a file manager does: the source's side of XDND, version 5,
//! <https://www.freedesktop.org/wiki/Specifications/XDND/>.

use std::fmt::Write;
use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};

use x11rb::connection::Connection;
use x11rb::protocol::Event;
use x11rb::protocol::xproto::{
    AtomEnum, ClientMessageEvent, ConnectionExt, CreateWindowAux, EventMask, PropMode, SELECTION_NOTIFY_EVENT,
    SelectionNotifyEvent, SelectionRequestEvent, Window as Frame, WindowClass,
};
use x11rb::wrapper::ConnectionExt as _;

use crate::display::Display;
use crate::{Window, wait};

/// The newest version that is spoken here.
const VERSION: u32 = 5;
/// In what the target says of a position, the bit of whether it would take a drop there.
const WOULD_TAKE: u32 = 1;

/// A display has one pointer, so only one drag at a time.
static POINTER: Mutex<()> = Mutex::new(());

/// Files that are dragged over a window and were not let go yet.
#[must_use]
pub struct Drag {
    display: Display,
    /// The window from which the files come.
    source: Frame,
    target: Frame,
    version: u32,
    /// The addresses of the files, in the form of `text/uri-list`.
    list: String,
    _pointer: MutexGuard<'static, ()>,
}

impl Window {
    /// Drags these files and folders to the middle of the window, and waits until the window would take them.
    #[track_caller]
    pub fn drag<P: AsRef<Path>>(&self, paths: &[P]) -> Drag {
        let pointer = POINTER.lock().unwrap_or_else(PoisonError::into_inner);
        let display = Display::open();
        let target = display.frame("Carryover", self.home());
        let aware = display.numbers(target, "XdndAware").and_then(|numbers| numbers.first().copied());
        let version = aware.expect("the window takes part in drag and drop").min(VERSION);
        let source = source(&display);
        let list = paths.iter().map(|path| address(path.as_ref())).collect();
        let drag = Drag { display, source, target, version, list, _pointer: pointer };
        drag.enter();
        drag.over_the_middle();
        drag
    }
}

impl Drag {
    /// Lets the files go, and waits until the window has them.
    #[track_caller]
    pub fn drop_here(self) {
        self.say("XdndDrop", [0, x11rb::CURRENT_TIME, 0, 0]);
        let answer = self.answer("XdndFinished");
        assert_eq!(answer[1] & WOULD_TAKE, WOULD_TAKE, "the window took what was dropped");
    }

    /// Drags the files out of the window again.
    #[track_caller]
    pub fn leave(self) {
        self.say("XdndLeave", [0; 4]);
    }

    fn enter(&self) {
        let types = [self.display.atom("text/uri-list"), 0, 0];
        self.say("XdndEnter", [self.version << 24, types[0], types[1], types[2]]);
    }

    /// Stays over the middle until the window would take a drop there: a hand that lets go earlier drops nothing.
    #[track_caller]
    fn over_the_middle(&self) {
        let Display { connection, root, .. } = &self.display;
        let size = connection.get_geometry(self.target).expect("the display answers").reply().expect("the window is there");
        let middle = |length: u16| i16::try_from(length / 2).expect("windows are small");
        let (x, y) = (middle(size.width), middle(size.height));
        let place = connection.translate_coordinates(self.target, *root, x, y).expect("the display answers");
        let place = place.reply().expect("the window is there");
        let at = u32::from(place.dst_x.cast_unsigned()) << 16 | u32::from(place.dst_y.cast_unsigned());
        let taken = wait::until(|| {
            self.say("XdndPosition", [0, at, x11rb::CURRENT_TIME, self.display.atom("XdndActionCopy")]);
            (self.answer("XdndStatus")[1] & WOULD_TAKE == WOULD_TAKE).then_some(())
        });
        taken.expect("the window takes files");
    }

    #[track_caller]
    fn say(&self, kind: &str, data: [u32; 4]) {
        self.display.send(self.target, kind, [self.source, data[0], data[1], data[2], data[3]]);
    }

    /// Waits for this answer of the window; until then, gives it the list of files if it asks for it.
    #[track_caller]
    fn answer(&self, kind: &str) -> [u32; 5] {
        let kind_number = self.display.atom(kind);
        let answered = wait::until(|| {
            while let Some(event) = self.display.connection.poll_for_event().expect("the display answers") {
                match event {
                    Event::SelectionRequest(asked) => self.give(&asked),
                    Event::ClientMessage(ClientMessageEvent { type_, data, .. }) if type_ == kind_number => {
                        return Some(data.as_data32());
                    }
                    _ => {}
                }
            }
            None
        });
        answered.unwrap_or_else(|| panic!("the window does not answer with {kind}"))
    }

    /// Gives the list of files to the window that asks for it. Other forms of it there are none.
    fn give(&self, asked: &SelectionRequestEvent) {
        let connection = &self.display.connection;
        let has = asked.target == self.display.atom("text/uri-list");
        let property = if has { asked.property } else { u32::from(AtomEnum::NONE) };
        if has {
            let list = self.list.as_bytes();
            let given = connection.change_property8(PropMode::REPLACE, asked.requestor, property, asked.target, list);
            given.expect("the display answers").check().expect("the window is there");
        }
        let SelectionRequestEvent { time, requestor, selection, target, .. } = *asked;
        let response_type = SELECTION_NOTIFY_EVENT;
        let told = SelectionNotifyEvent { response_type, sequence: 0, time, requestor, selection, target, property };
        let sent = connection.send_event(false, requestor, EventMask::NO_EVENT, told).expect("the display answers");
        sent.check().expect("the window is there");
    }
}

/// A window of the source, which nobody sees. What is dragged is asked of it.
fn source(Display { connection, root }: &Display) -> Frame {
    let window = connection.generate_id().expect("the display has numbers left");
    let aux = CreateWindowAux::new();
    let made = connection.create_window(0, window, *root, 0, 0, 1, 1, 0, WindowClass::INPUT_ONLY, 0, &aux);
    made.expect("the display answers").check().expect("a small window");
    let selection = connection.intern_atom(false, b"XdndSelection").expect("the display answers").reply();
    let selection = selection.expect("an atom has a number").atom;
    let owned = connection.set_selection_owner(window, selection, x11rb::CURRENT_TIME).expect("the display answers");
    owned.check().expect("the window is there");
    window
}

/// A path as a line of `text/uri-list`: all but plain letters and digits is written as its bytes, as file managers do.
fn address(path: &Path) -> String {
    let mut line = "file://".to_owned();
    for byte in path.to_str().expect("the tests' paths are plain").bytes() {
        match byte {
            b'/' | b'.' | b'-' | b'_' | b'0'..=b'9' | b'a'..=b'z' | b'A'..=b'Z' => line.push(char::from(byte)),
            _ => write!(line, "%{byte:02X}").expect("a text takes more text"),
        }
    }
    line + "\r\n"
}
