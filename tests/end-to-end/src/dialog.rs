//! The system's dialogue for choosing a folder, and the keys that are pressed in it: those of the display's own keyboard, since no driver of
//! web pages reaches it.

use x11rb::connection::Connection;
use x11rb::errors::ReplyError;
use x11rb::protocol::xproto::{
    ConnectionExt, InputFocus, KEY_PRESS_EVENT, KEY_RELEASE_EVENT, Keycode, Keysym, Window as Frame,
};
use x11rb::protocol::xtest::ConnectionExt as _;

use crate::display::Display;
use crate::{Window, wait};

/// The symbols of keys, as X numbers them. Those of Latin letters are the letters themselves.
const ESCAPE: Keysym = 0xff1b;
const ALT: Keysym = 0xffe9;
const HOME: Keysym = 0xff50;
const O: Keysym = 'o' as Keysym;

/// An open dialogue.
#[must_use]
pub struct Dialog<'w> {
    window: &'w Window,
    display: Display,
    title: String,
    frame: Frame,
}

impl Window {
    /// Waits until the program shows a dialogue with this title.
    #[track_caller]
    pub fn dialog(&self, title: &str) -> Dialog<'_> {
        let display = Display::open();
        let frame = display.frame(title, self.home());
        Dialog { window: self, display, title: title.to_owned(), frame }
    }
}

impl Dialog<'_> {
    /// Goes to the person's home folder (Alt+Home) and chooses it (Alt+O, for "Open").
    #[track_caller]
    pub fn choose_home(self) {
        self.press_until_gone(&[&[ALT, HOME], &[ALT, O]]);
    }

    /// Presses Escape.
    #[track_caller]
    pub fn cancel(self) {
        self.press_until_gone(&[&[ESCAPE]]);
    }

    /// Presses these keys again and again until the dialogue is gone: until it has read the folder, its button does nothing.
    #[track_caller]
    fn press_until_gone(&self, keys: &[&[Keysym]]) {
        let is_gone = || self.display.shown_frame(&self.title, self.window.home()) != Some(self.frame);
        let gone = wait::until(|| {
            // A dialogue that closes meanwhile takes no focus, and then nothing is pressed.
            let _ = keys.iter().try_for_each(|keys| self.press(keys));
            is_gone().then_some(())
        });
        assert!(gone.is_some(), "the dialogue {:?} does not close", self.title);
    }

    /// Presses keys together. No window manager gives a dialogue the focus here, and other windows may take it: the display does nothing else
    /// between giving it to this one and the keys.
    fn press(&self, symbols: &[Keysym]) -> Result<(), ReplyError> {
        let Display { connection, root } = &self.display;
        let keys: Vec<Keycode> = symbols.iter().map(|symbol| self.key(*symbol)).collect();
        let fake = |kind, key| connection.xtest_fake_input(kind, key, x11rb::CURRENT_TIME, *root, 0, 0, 0)?.check();
        connection.grab_server()?.check()?;
        let focused = connection.set_input_focus(InputFocus::PARENT, self.frame, x11rb::CURRENT_TIME)?.check();
        let pressed = focused.and_then(|()| {
            keys.iter().try_for_each(|key| fake(KEY_PRESS_EVENT, *key))?;
            keys.iter().rev().try_for_each(|key| fake(KEY_RELEASE_EVENT, *key))
        });
        connection.ungrab_server()?.check()?;
        pressed
    }

    /// The key of the display's keyboard that has this symbol.
    fn key(&self, symbol: Keysym) -> Keycode {
        let Display { connection, .. } = &self.display;
        let (first, last) = (connection.setup().min_keycode, connection.setup().max_keycode);
        let asked = connection.get_keyboard_mapping(first, last - first + 1).expect("the display answers");
        let mapping = asked.reply().expect("the display has a keyboard");
        let mut symbols = mapping.keysyms.chunks(usize::from(mapping.keysyms_per_keycode));
        let key = symbols.position(|symbols| symbols.first() == Some(&symbol)).expect("the keyboard has it");
        first + Keycode::try_from(key).expect("a keyboard has at most 255 keys")
    }
}
