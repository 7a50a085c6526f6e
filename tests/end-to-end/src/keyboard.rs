//! What a person does who has only a keyboard, and where they are on the page meanwhile.

use fantoccini::actions::{InputSource, KeyAction, KeyActions};
use serde_json::Value;

use crate::window::Window;
use crate::{page, wait};

/// More stops than any page has.
const MAX_STOPS: usize = 150;

/// Where the focus is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Focus {
    /// The element's name, such as `BUTTON`.
    pub tag: String,
    /// Its words, or its label's.
    pub words: String,
    /// What keeps it from being seen; empty when nothing does.
    pub unseen: String,
}

impl Window {
    /// Presses a key wherever the focus is: `Tab`, `Enter`, `Escape`, an arrow such as `ArrowLeft`, or a character.
    /// `Shift+` before it holds the shift key.
    #[track_caller]
    pub fn key(&self, key: &str) {
        let (shift, name) = key.strip_prefix("Shift+").map_or((false, key), |name| (true, name));
        let value = code(name);
        let mut actions = KeyActions::new("keyboard".to_owned());
        if shift {
            actions = actions.then(KeyAction::Down { value: SHIFT });
        }
        actions = actions.then(KeyAction::Down { value }).then(KeyAction::Up { value });
        if shift {
            actions = actions.then(KeyAction::Up { value: SHIFT });
        }
        let pressed = self.run(async |client| client.perform_actions(actions).await);
        pressed.unwrap_or_else(|error| panic!("{key:?} cannot be pressed: {error}"));
    }

    /// Types into the field that has the focus.
    #[track_caller]
    pub fn type_here(&self, text: &str) {
        let typed = self.run(async |client| client.active_element().await?.send_keys(text).await);
        typed.unwrap_or_else(|error| panic!("nothing can be typed here: {error}"));
    }

    /// Where the focus is.
    #[track_caller]
    pub fn focus(&self) -> Focus {
        let told = self.ask(&page::focus(), &[]);
        let part = |name: &str| told[name].as_str().unwrap_or_default().to_owned();
        Focus { tag: part("tag"), words: part("words"), unseen: part("unseen") }
    }

    /// Waits until a page that was just opened has taken the focus, where it can be seen.
    #[track_caller]
    pub fn focus_is_kept(&self) {
        let kept = wait::until(|| (self.focus().tag != "BODY").then_some(()));
        assert!(kept.is_some(), "the focus is lost; the page says: {}", self.text());
        self.focus_is_seen();
    }

    /// Waits until what has the focus has been scrolled into sight, all of it, and is marked.
    #[track_caller]
    fn focus_is_seen(&self) {
        let seen = wait::until(|| Some(self.focus()).filter(|focus| focus.tag == "BODY" || focus.unseen.is_empty()));
        assert!(seen.is_some(), "{:?}", self.focus());
    }

    /// Goes with Tab to what has these words or this label. Every stop on the way can be seen.
    #[track_caller]
    pub fn tab_to(&self, words: &str) {
        self.walk_to("Tab", words);
    }

    /// The same with Shift+Tab, backwards.
    #[track_caller]
    pub fn tab_back_to(&self, words: &str) {
        self.walk_to("Shift+Tab", words);
    }

    #[track_caller]
    fn walk_to(&self, key: &str, words: &str) {
        let mut stops = Vec::new();
        for _ in 0..MAX_STOPS {
            let focus = self.focus();
            if focus.words == words {
                return;
            }
            stops.push(focus.words);
            self.key(key);
            self.focus_is_seen();
        }
        panic!("{words:?} is not reached with {key}: {stops:?}; the page says: {}", self.text());
    }

    /// Goes to what has these words and presses the key there; waits for it to be switched on.
    #[track_caller]
    pub fn press_by_key(&self, words: &str, key: &str) {
        let there = wait::until(|| self.can_press(words).then_some(()));
        assert!(there.is_some(), "there is no {words:?} to press; the page says: {}", self.text());
        self.tab_to(words);
        self.key(key);
    }

    /// Goes once through all of the page with Tab: every stop is reached, and none holds the focus.
    #[track_caller]
    pub fn no_trap(&self) {
        let stops = self.ask(&page::stops(), &[]).as_u64().expect("a number");
        let mut reached = std::collections::BTreeSet::new();
        for _ in 0..MAX_STOPS {
            self.key("Tab");
            let number = self.ask(page::NUMBER, &[]);
            if let Value::Number(number) = number {
                reached.insert(number.as_u64());
            }
            self.focus_is_seen();
            if reached.len() as u64 == stops {
                return;
            }
        }
        panic!("{} of {stops} stops are reached, the last is {:?}", reached.len(), self.focus());
    }
}

const SHIFT: char = '\u{E008}';

/// The code of a key, <https://www.w3.org/TR/webdriver2/#keyboard-actions>.
fn code(name: &str) -> char {
    match name {
        "Escape" => '\u{E00C}',
        "Enter" => '\u{E007}',
        "Tab" => '\u{E004}',
        "ArrowLeft" => '\u{E012}',
        "ArrowUp" => '\u{E013}',
        "ArrowRight" => '\u{E014}',
        "ArrowDown" => '\u{E015}',
        "Space" => ' ',
        one => one.chars().next().expect("a key has a name"),
    }
}
