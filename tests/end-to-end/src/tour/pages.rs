//! The pages that explain the program.

use super::Tour;
use crate::Window;

impl Tour<'_> {
    /// Visits help, privacy, version and licences, from the page with the words `begins` and back to it.
    pub(super) fn pages(&self, window: &Window, side: &str, begins: &str) {
        for (title, says, name) in [
            ("Help", "What Carryover is for", "help"),
            ("Privacy", "There is no account and no server.", "privacy"),
            ("About Carryover", "Data folder: ", "about"),
        ] {
            window.press(title);
            window.see(says);
            if name == "about" {
                window.press("Show the list");
                window.see("tauri ");
            }
            (self.at_screen)(window, &format!("{side}-{name}"));
            window.press("Back");
            window.see(begins);
        }
    }
}
