//! What a person can do on the page.

use std::path::{Path, PathBuf};
use std::thread;
use std::time::Duration;

use fantoccini::actions::{InputSource, MOUSE_BUTTON_LEFT, MouseActions, PointerAction};
use fantoccini::elements::Element;
use serde_json::{Value, json};

use crate::window::Window;
use crate::{page, wait};

/// How often it is asked for the click of a press before it counts as none, and how long between.
const LATE: u32 = 40;
const BETWEEN: Duration = Duration::from_millis(50);

impl Window {
    /// Presses the button, link or label with these words, as soon as it is there and can be pressed.
    #[track_caller]
    pub fn press(&self, words: &str) {
        let pressed = wait::until(|| {
            let element = self.find(&page::pressable(), words)?;
            self.click(&element)
        });
        assert!(pressed.is_some(), "there is no {words:?} to press; {}", self.page());
    }

    /// Presses the button or link whose words contain these.
    #[track_caller]
    pub fn press_part(&self, words: &str) {
        let pressed = wait::until(|| {
            let element = self.find(&page::pressable_part(), words)?;
            self.click(&element)
        });
        assert!(pressed.is_some(), "there is nothing with {words:?} to press; {}", self.page());
    }

    /// Presses the button or link whose words contain these, if there is one now; returns whether it was hit.
    pub fn try_press_part(&self, words: &str) -> bool {
        self.find(&page::pressable_part(), words).and_then(|element| self.click(&element)).is_some()
    }

    /// Whether something with these words can be pressed now.
    pub fn can_press(&self, words: &str) -> bool {
        self.find(&page::pressable(), words).is_some()
    }

    /// Writes into the field with this label, replacing its content.
    #[track_caller]
    pub fn type_into(&self, label: &str, text: &str) {
        let field = self.field(label);
        self.bring_into_sight(&field);
        let typed = self.run(async |_| {
            field.clear().await?;
            field.send_keys(text).await
        });
        typed.unwrap_or_else(|error| panic!("{label:?} does not accept text: {error}"));
    }

    /// Chooses an option from the list with this label.
    #[track_caller]
    pub fn choose(&self, label: &str, option: &str) {
        let list = self.field(label);
        self.bring_into_sight(&list);
        let chosen = self.run(async |_| list.select_by_label(option).await);
        chosen.unwrap_or_else(|error| panic!("{label:?} has no {option:?}: {error}"));
    }

    /// Sets a slider, date or time with this label, whose value the keyboard would change step by step.
    #[track_caller]
    pub fn set(&self, label: &str, value: &str) {
        let field = self.field(label);
        let script = "const [field, value] = arguments; field.value = value;
            for (const kind of ['input', 'change']) field.dispatchEvent(new Event(kind, { bubbles: true }));";
        let field = serde_json::to_value(field).expect("an element is a plain reference");
        self.ask(script, &[field, json!(value)]);
    }

    /// Chooses a file in the field with this label.
    #[track_caller]
    pub fn choose_file(&self, label: &str, file: &Path) {
        self.choose_files(label, &[file.to_path_buf()]);
    }

    /// Chooses several files at once in the field with this label.
    #[track_caller]
    pub fn choose_files(&self, label: &str, files: &[PathBuf]) {
        let field = self.field(label);
        let paths: Vec<&str> = files.iter().map(|file| file.to_str().expect("the tests' paths are plain")).collect();
        let chosen = self.run(async |_| field.send_keys(&paths.join("\n")).await);
        chosen.unwrap_or_else(|error| panic!("{label:?} does not accept a file: {error}"));
    }

    /// Touches the middle of the page, whatever is there.
    #[track_caller]
    pub fn touch_anywhere(&self) {
        let middle = self.ask("return [innerWidth / 2, innerHeight / 2].map(Math.round)", &[]);
        let at = |index: usize| middle[index].as_f64().expect("a page has a size");
        let touch = MouseActions::new("hand".to_owned())
            .then(PointerAction::MoveTo { duration: None, x: at(0), y: at(1) })
            .then(PointerAction::Down { button: MOUSE_BUTTON_LEFT })
            .then(PointerAction::Up { button: MOUSE_BUTTON_LEFT });
        self.run(async |client| client.perform_actions(touch).await).expect("the page can be touched");
    }

    /// Double-clicks what has these words. Both clicks are sent as events with their counts: on a slow machine two real ones
    /// could lie too far apart to count as a double click.
    #[track_caller]
    pub fn press_twice(&self, words: &str) {
        let found = wait::until(|| self.find(&page::pressable(), words));
        let element = found.unwrap_or_else(|| panic!("there is no {words:?} to press; {}", self.page()));
        self.bring_into_sight(&element);
        let presses =
            "for (const detail of [1, 2]) arguments[0].dispatchEvent(new MouseEvent('click', { bubbles: true, detail }))";
        self.ask(presses, &[serde_json::to_value(&element).expect("an element has a reference")]);
    }

    /// Gives the page this width and height in CSS pixels.
    #[track_caller]
    pub fn resize(&self, width: u32, height: u32) {
        self.run(async |client| client.set_window_rect(0, 0, width, height).await).expect("the window takes a size");
        self.wait_for(&format!("return innerWidth === {width} && innerHeight === {height}"));
    }

    /// Reloads the page, as opening the window again would.
    #[track_caller]
    pub fn reload(&self) {
        self.run(async |client| client.refresh().await).expect("the page loads again");
    }

    /// Clicks the element and checks whether it was hit. The driver measures first and clicks then: an element that moved in
    /// between, because an answer of the shell arrived, is missed, and a person would press again.
    fn click(&self, element: &Element) -> Option<()> {
        self.bring_into_sight(element);
        let place = serde_json::to_value(element).expect("an element is a plain reference");
        self.try_ask(page::WATCH, &[place]).ok()?;
        self.run(async |_| element.click().await).ok()?;
        for _ in 0..LATE {
            // A page that is gone was left because of the press.
            let Ok(missed) = self.try_ask(page::MISSED, &[]) else { return Some(()) };
            if let Some(missed) = missed.as_bool() {
                return (!missed).then_some(());
            }
            thread::sleep(BETWEEN);
        }
        // An element that was disabled just then gets no click at all.
        None
    }

    /// Scrolls so that the element is not behind parts of the page with a fixed position.
    fn bring_into_sight(&self, element: &Element) {
        let element = serde_json::to_value(element).expect("an element is a plain reference");
        // If it is gone meanwhile, it is looked for again.
        let _ = self.try_ask("arguments[0].scrollIntoView({ block: 'center' })", &[element]);
    }

    /// The field with this label, as soon as it is there.
    #[track_caller]
    fn field(&self, label: &str) -> Element {
        let found = wait::until(|| self.find(&page::field(), label));
        found.unwrap_or_else(|| panic!("there is no field {label:?}; {}", self.page()))
    }

    fn find(&self, script: &str, words: &str) -> Option<Element> {
        let found: Value = self.try_ask(script, &page::named(words)).ok()?;
        self.element(found.as_array()?.first()?)
    }
}
