//! What is visible on the page.

use std::fs;

use fantoccini::error::CmdError;

use crate::window::Window;
use crate::{out, page, wait};

/// Answers when the fonts are loaded and two frames were painted.
const PAINTED: &str = r"
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    return document.fonts.ready.then(frame).then(frame).then(() => true);
";

/// Lets the rule with the dark colours hold for these media, and returns how many such rules there are.
const DARKEN: &str = r"
    const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
    window.darkRules ??= rules.filter((rule) => rule.media?.mediaText.includes('prefers-color-scheme: dark'));
    for (const rule of window.darkRules) rule.media.mediaText = arguments[0];
    document.documentElement.style.colorScheme = arguments[1];
    return window.darkRules.length;
";

impl Window {
    /// All visible words.
    pub fn text(&self) -> String {
        let answer = self.try_ask(&page::text(), &[]);
        answer.ok().and_then(|text| text.as_str().map(str::to_owned)).unwrap_or_default()
    }

    /// What the page says, for the message of a failed test: in short lines, because some viewers of such messages cut long ones.
    pub fn page(&self) -> String {
        match self.try_ask(&page::text(), &[]) {
            Ok(text) => format!("the page says:{}", short_lines(text.as_str().unwrap_or_default())),
            Err(error) => format!("the page does not answer: {error}"),
        }
    }

    /// Waits until these words are visible.
    #[track_caller]
    pub fn see(&self, words: &str) {
        if wait::until(|| self.text().contains(words).then_some(())).is_none() {
            panic!("{words:?} is not visible; {}", self.page());
        }
    }

    /// Waits until these words are not visible.
    #[track_caller]
    pub fn see_no_more(&self, words: &str) {
        if wait::until(|| (!self.text().contains(words)).then_some(())).is_none() {
            panic!("{words:?} is still visible; {}", self.page());
        }
    }

    /// Whether these words are visible now.
    pub fn sees(&self, words: &str) -> bool {
        self.text().contains(words)
    }

    /// Waits until a script that returns true or false returns true.
    #[track_caller]
    pub fn wait_for(&self, script: &str) {
        let answered = wait::until(|| self.try_ask(script, &[]).ok()?.as_bool()?.then_some(()));
        assert!(answered.is_some(), "never true: {script}; {}", self.page());
    }

    /// Checks that nothing on the page is cut off at the side, and that everything that can be pressed is large enough for a finger.
    #[track_caller]
    pub fn fits(&self) {
        assert_eq!(self.misfits(), Vec::<String>::new(), "on a page of this size");
    }

    /// The elements that are cut off at the side of the page or too small to be pressed with a finger.
    #[track_caller]
    pub fn misfits(&self) -> Vec<String> {
        let found = self.ask(&page::misfits(), &[]);
        found.as_array().into_iter().flatten().filter_map(|line| line.as_str().map(str::to_owned)).collect()
    }

    /// Doubles the size of all text (WCAG 2.2, 1.4.4), or undoes that.
    #[track_caller]
    pub fn enlarge_text(&self, so: bool) {
        let size = if so { "200%" } else { "" };
        self.ask("document.documentElement.style.fontSize = arguments[0]; return true", &[size.into()]);
    }

    /// Shows the page in the colours that it has on a dark desktop, or undoes that.
    #[track_caller]
    pub fn darken(&self, so: bool) {
        let [media, scheme] = if so { ["all", "dark"] } else { ["(prefers-color-scheme: dark)", ""] };
        assert_eq!(self.ask(DARKEN, &[media.into(), scheme.into()]), 1, "the dark colours are in one rule");
    }

    /// Problems with large text: words broken in the middle, words beyond their button, a header that leaves too little space, and
    /// elements that are not visible while an exercise is done.
    #[track_caller]
    pub fn cramped(&self) -> Vec<String> {
        let found = self.ask(&page::cramped(), &[]);
        found.as_array().into_iter().flatten().filter_map(|line| line.as_str().map(str::to_owned)).collect()
    }

    /// Saves a picture of the page as `tests/out/NAME.png`.
    #[track_caller]
    pub fn screenshot(&self, name: &str) {
        self.keep_as(name).expect("the page can be painted");
    }

    /// Checks at both sizes of a phone that nothing is cut off, and saves a picture of each, named after the size. The window keeps the
    /// larger one.
    #[track_caller]
    pub fn look_at_phone_sizes(&self, name: &str) {
        [(390, 844), (360, 640)].into_iter().for_each(|size| self.look_at(name, size));
        self.resize(390, 844);
    }

    /// The same at one size. The control that has the focus, which is the one that was used last, is in the picture: in a page of another
    /// width another stretch would be in sight.
    #[track_caller]
    fn look_at(&self, name: &str, (width, height): (u32, u32)) {
        self.resize(width, height);
        self.fits();
        self.ask("document.activeElement.matches('main :is(button, input, select, textarea)') && document.activeElement.scrollIntoView({ block: 'center' }); return true", &[]);
        self.screenshot(&format!("{name}-{width}x{height}"));
    }

    /// The same at the size of a desk too, which the window keeps.
    #[track_caller]
    pub fn look_at_desk_and_phones(&self, name: &str) {
        self.look_at(name, (1280, 800));
        self.look_at_phone_sizes(name);
        self.resize(1280, 800);
    }

    /// Saves a picture of the page as this file.
    #[track_caller]
    pub fn picture(&self, file: &std::path::Path) {
        self.paint(file).expect("the page can be painted");
    }

    fn keep_as(&self, name: &str) -> Result<(), CmdError> {
        self.paint(&out().join(format!("{name}.png")))
    }

    fn paint(&self, file: &std::path::Path) -> Result<(), CmdError> {
        // The page may not be painted yet: fonts may still be loading, and a picture shows the last frame.
        self.try_ask(PAINTED, &[])?;
        let picture = self.run(async |client| client.screenshot().await)?;
        fs::write(file, picture).expect("the folder is writable");
        Ok(())
    }

    /// Saves a picture under the running test's name, if the page can still be painted.
    pub(crate) fn keep_picture(&self, event: &str) {
        let test = std::thread::current().name().unwrap_or("test").replace("::", "-");
        let _ = self.keep_as(&format!("{test}-{event}"));
    }

    /// The page's errors so far, and what its content policy blocked.
    pub fn faults(&self) -> String {
        let answer = self.try_ask("return document.getElementById('faults').textContent", &[]);
        answer.ok().and_then(|text| text.as_str().map(str::to_owned)).unwrap_or_default()
    }

    /// Like [`Window::faults`], but a test that caused them on purpose does not fail because of them.
    pub fn take_faults(&self) -> String {
        let faults = self.faults();
        self.ask("document.getElementById('faults').textContent = ''", &[]);
        faults
    }
}

fn short_lines(text: &str) -> String {
    let mut lines = String::new();
    let mut width = usize::MAX;
    for word in text.split(' ') {
        let is_full = width >= 100;
        lines.push_str(if is_full { "\n    " } else { " " });
        lines.push_str(word);
        width = if is_full { 0 } else { width } + word.chars().count() + 1;
    }
    lines
}
