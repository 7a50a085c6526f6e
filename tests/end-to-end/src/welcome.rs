//! The first page at the first start.

use words::{Key, Locale, Words};

use crate::Window;

impl Window {
    /// Reads what the program is for, in English, and continues to the choice of a side.
    #[track_caller]
    pub fn welcomed(&self) {
        self.welcomed_in(Locale::En);
    }

    /// The same in another language.
    #[track_caller]
    pub fn welcomed_in(&self, locale: Locale) {
        let words = Words::new(locale);
        self.see(words.text(Key::WelcomeTitle));
        self.press(words.text(Key::WelcomeUnderstood));
        self.see(words.text(Key::ChooseRole));
    }
}
