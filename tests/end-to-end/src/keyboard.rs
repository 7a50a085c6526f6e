//! What a person can do with a keyboard alone, and where the focus is.

use fantoccini::actions::{InputSource, KeyAction, KeyActions};
use serde_json::Value;

use crate::window::Window;
use crate::{page, wait};

/// More stops of the Tab key than any page has.
const MAX_STOPS: usize = 150;

/// The element that has the focus.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Focus {
    /// The element's name, such as `BUTTON`.
    pub tag: String,
    /// Its words, or those of its label.
    pub words: String,
    /// Why it cannot be seen; empty if it can be seen.
    pub unseen: String,
}

impl Window {
    /// Presses a key wherever the focus is: `Tab`, `Enter`, `Escape`, an arrow such as `ArrowLeft`, or a character. A prefix
    /// `Shift+` or `Control+` holds that key.
    #[track_caller]
    pub fn key(&self, key: &str) {
        let held = [("Shift+", SHIFT), ("Control+", CONTROL)];
        let held = held.into_iter().find_map(|(prefix, held)| Some((key.strip_prefix(prefix)?, held)));
        let (name, held) = held.map_or((key, None), |(name, held)| (name, Some(held)));
        let value = code(name);
        let mut actions = KeyActions::new("keyboard".to_owned());
        if let Some(value) = held {
            actions = actions.then(KeyAction::Down { value });
        }
        actions = actions.then(KeyAction::Down { value }).then(KeyAction::Up { value });
        if let Some(value) = held {
            actions = actions.then(KeyAction::Up { value });
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

    /// The element that has the focus.
    #[track_caller]
    pub fn focus(&self) -> Focus {
        let told = self.ask(&page::focus(), &[]);
        let part = |name: &str| told[name].as_str().unwrap_or_default().to_owned();
        Focus { tag: part("tag"), words: part("words"), unseen: part("unseen") }
    }

    /// Waits until a page that was just opened has taken the focus at a visible place.
    #[track_caller]
    pub fn focus_is_kept(&self) {
        let kept = wait::until(|| (self.focus().tag != "BODY").then_some(()));
        assert!(kept.is_some(), "the focus is lost; {}", self.page());
        self.focus_is_seen();
    }

    /// Waits until the focused element is completely visible and has a visible focus mark.
    #[track_caller]
    fn focus_is_seen(&self) {
        let seen = wait::until(|| Some(self.focus()).filter(|focus| focus.tag == "BODY" || focus.unseen.is_empty()));
        assert!(seen.is_some(), "{:?}", self.focus());
    }

    /// Moves with Tab to the element with these words or this label. Checks that every stop on the way is visible.
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
        panic!("{words:?} is not reached with {key}: {stops:?}; {}", self.page());
    }

    /// Moves to the element with these words, waits until it is enabled, and presses the key there.
    #[track_caller]
    pub fn press_by_key(&self, words: &str, key: &str) {
        let there = wait::until(|| self.can_press(words).then_some(()));
        assert!(there.is_some(), "there is no {words:?} to press; {}", self.page());
        self.tab_to(words);
        self.key(key);
    }

    /// Moves once through the whole page with Tab: every stop is reached, and none traps the focus.
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
const CONTROL: char = '\u{E009}';

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
