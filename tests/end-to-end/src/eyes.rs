//! What a person sees.

use std::fs;

use fantoccini::error::CmdError;

use crate::window::Window;
use crate::{out, page, wait};

/// Answered when the letters are loaded and two frames have passed.
const PAINTED: &str = r"
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    return document.fonts.ready.then(frame).then(frame).then(() => true);
";

impl Window {
    /// All words that are in sight.
    pub fn text(&self) -> String {
        let answer = self.try_ask(&page::text(), &[]);
        answer.ok().and_then(|text| text.as_str().map(str::to_owned)).unwrap_or_default()
    }

    /// Waits until these words are in sight.
    #[track_caller]
    pub fn see(&self, words: &str) {
        if wait::until(|| self.text().contains(words).then_some(())).is_none() {
            panic!("{words:?} is not to be seen; the page says: {}", self.text());
        }
    }

    /// Waits until these words are out of sight.
    #[track_caller]
    pub fn see_no_more(&self, words: &str) {
        if wait::until(|| (!self.text().contains(words)).then_some(())).is_none() {
            panic!("{words:?} is still to be seen; the page says: {}", self.text());
        }
    }

    /// Whether these words are in sight at this moment.
    pub fn sees(&self, words: &str) -> bool {
        self.text().contains(words)
    }

    /// Waits until a question about the page, a script that returns true or false, is answered with true.
    #[track_caller]
    pub fn wait_for(&self, script: &str) {
        let answered = wait::until(|| self.try_ask(script, &[]).ok()?.as_bool()?.then_some(()));
        assert!(answered.is_some(), "never true: {script}; the page says: {}", self.text());
    }

    /// Checks that nothing on the page is cut off at the side, and that all there is to press is large enough
    /// for a finger.
    #[track_caller]
    pub fn fits(&self) {
        assert_eq!(self.misfits(), Vec::<String>::new(), "on a page of this size");
    }

    /// What is cut off at the side of the page, and what is too small to be pressed with a finger.
    #[track_caller]
    pub fn misfits(&self) -> Vec<String> {
        let found = self.ask(&page::misfits(), &[]);
        found.as_array().into_iter().flatten().filter_map(|line| line.as_str().map(str::to_owned)).collect()
    }

    /// Keeps a picture of the page as `tests/out/NAME.png`.
    #[track_caller]
    pub fn screenshot(&self, name: &str) {
        self.keep_as(name).expect("the page can be painted");
    }

    /// Keeps a picture of the page as this file.
    #[track_caller]
    pub fn picture(&self, file: &std::path::Path) {
        self.paint(file).expect("the page can be painted");
    }

    fn keep_as(&self, name: &str) -> Result<(), CmdError> {
        self.paint(&out().join(format!("{name}.png")))
    }

    fn paint(&self, file: &std::path::Path) -> Result<(), CmdError> {
        // What is there is not yet painted: the letters may still load, and the picture is of the last frame.
        self.try_ask(PAINTED, &[])?;
        let picture = self.run(async |client| client.screenshot().await)?;
        fs::write(file, picture).expect("the folder is writable");
        Ok(())
    }

    /// Keeps a picture under the running test's name, when there still is a page to be painted.
    pub(crate) fn keep_picture(&self, event: &str) {
        let test = std::thread::current().name().unwrap_or("test").replace("::", "-");
        let _ = self.keep_as(&format!("{test}-{event}"));
    }

    /// What went wrong in the page so far: errors, and what its policy refused.
    pub fn faults(&self) -> String {
        let answer = self.try_ask("return document.getElementById('faults').textContent", &[]);
        answer.ok().and_then(|text| text.as_str().map(str::to_owned)).unwrap_or_default()
    }

    /// As [`Window::faults`], and takes note of them: a test that provoked them on purpose is not failed by them.
    pub fn take_faults(&self) -> String {
        let faults = self.faults();
        self.ask("document.getElementById('faults').textContent = ''", &[]);
        faults
    }
}
