//! The tour of a new patient's first minutes.

use super::Tour;
use crate::Desktop;
use crate::story::back_to_now;
use std::path::PathBuf;

impl Tour<'_> {
    /// Visits a new patient's first minutes, with a data folder on the desktop.
    pub(super) fn first_day(&self) {
        let desktop = Desktop::new();
        let window = self.begin(desktop.open("new").at(&self.at));
        let keep = |name: &str| (self.at_screen)(&window, &format!("first-{name}"));
        window.see("What Carryover is for");
        keep("welcome");
        window.welcomed();
        keep("side");
        window.press("I do exercises");
        window.see("Card text");
        keep("card");
        window.press("Look around with a sample plan");
        window.see("I already did it");
        keep("sample");
        window.press("Exit sample");
        window.see("Card text");
        window.choose_file("Card picture or file", &self.card());
        window.see("Start this plan");
        keep("preview");
        window.press("Start this plan");
        window.press("Do one now");
        keep("which-one");
        window.press_part("Sit tall");
        window.see("Before you start");
        keep("cautions");
        window.press("I have read this. Start");
        window.see("Halfway");
        keep("hold");
        window.press("Stop");
        window.press("Continue");
        back_to_now(&window);
        window.press("Do one now");
        window.press_part("Stand on one leg");
        window.press("I have read this. Start");
        keep("set-up");
        window.press("Start countdown");
        window.see("Press any key or touch the screen when your foot comes down");
        keep("balance");
        window.touch_anywhere();
        window.see("Last attempt");
        keep("between");
        window.press("Stop");
        window.see("Stopped here");
        keep("result");
        window.press("Continue");
        window.see("Pain while doing it");
        keep("question");
        window.press("I'd rather not answer");
        window.press("Something is wrong");
        keep("something-is-wrong");
        window.press("I nearly fell");
        window.see("During which exercise?");
        window.press_part("Stand on one leg");
        window.see("Before this is recorded");
        window.press("Record it");
        window.see("What is paused");
        keep("advice-fall");
        window.press("Close");
        window.press("Something is wrong");
        window.press("Too much pain, or a new pain");
        window.see("During which exercise?");
        keep("during-which");
        window.press_part("Sit tall");
        window.see("Before this is recorded");
        keep("before-recorded");
        window.press("Record it");
        window.see("What is paused");
        window.press("Close");
        window.press("Something is wrong");
        window.press_part("Chest pain");
        window.see("Call your local emergency number now, or ask somebody to call");
        keep("advice-urgent");
        window.press("Close");
        window.see("Your plan is paused for safety");
        keep("on-hold");
    }

    /// The picture of one of the scenario's cards.
    pub(super) fn card(&self) -> PathBuf {
        let cards = std::fs::read_dir(self.homes.join("cards")).expect("the demo has cards");
        let first = cards.filter_map(Result::ok).find(|card| card.file_name().to_string_lossy().starts_with("A11"));
        let card = first.expect("the demo has a card for A11").path().join("card.png");
        std::path::absolute(card).expect("a card has a path")
    }
}
