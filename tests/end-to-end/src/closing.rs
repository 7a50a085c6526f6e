//! Closes a window as the button in its frame does: the program is asked and may refuse (ICCCM 4.2.8.1).

use crate::Window;
use crate::display::Display;

impl Window {
    /// Presses the close button in the window's frame.
    #[track_caller]
    pub fn ask_to_close(&self) {
        let display = Display::open();
        let frame = display.frame("Carryover", self.home());
        let data = [display.atom("WM_DELETE_WINDOW"), x11rb::CURRENT_TIME, 0, 0, 0];
        display.send(frame, "WM_PROTOCOLS", data);
    }
}
