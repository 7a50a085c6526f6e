//! The tour of screens that occur after weeks: a change of the dose, trials with the phone on the body, corrections, the summary as
//! codes.

use super::Tour;
use crate::{Desktop, Window, scenes};

impl Tour<'_> {
    /// Visits the change that the rules propose and the clinician allowed.
    pub(super) fn step(&self) {
        let desktop = Desktop::new();
        desktop.with_a_step_ahead();
        let window = self.scene(&desktop, scenes::STEP_DUE);
        window.see("Go up to 15 seconds per hold?");
        (self.at_screen)(&window, "step-offered");
    }

    /// Visits trials with the phone in the pocket: the sensor ends the second one, and the question comes after each.
    pub(super) fn sensed(&self) {
        let desktop = Desktop::new();
        desktop.prescribe(scenes::BALANCE, scenes::TAKEN);
        let trials = ["c_coarse_gap_landscape", "b_touchdowns_web60"].map(scenes::recorded_trial);
        let opening = desktop.open("patient").at("2027-03-01T09:00:30+01:00").zone(scenes::ZONE).motion(&trials);
        let window = self.begin(opening);
        let keep = |name: &str| (self.at_screen)(&window, &format!("sway-{name}"));
        window.press("Start");
        window.press("I have read this. Start");
        window.see("In a pocket at the waist");
        keep("set-up");
        window.press("At the breastbone");
        window.see("screen facing away from you");
        keep("set-up-breastbone");
        window.press("In a pocket at the waist");
        window.see("in a tight pocket");
        keep("set-up-pocket");
        window.press("Start countdown");
        window.see("Stand until the sound");
        keep("trial");
        window.see("Did your foot touch the floor, or did you hold on?");
        keep("asked");
        window.press("Yes");
        window.see("Continue");
        keep("asked-when");
        window.set("After about how many seconds?", "12");
        window.press("Continue");
        window.press("Start countdown");
        window.see("Did your foot touch the floor after about");
        keep("asked-at");
        window.press("Not sure");
        window.see("Not certain");
        keep("results");
    }

    /// Visits corrections, and the summary as codes.
    pub(super) fn visit(&self) {
        let desktop = Desktop::new();
        desktop.with_four_weeks();
        let window = self.scene(&desktop, scenes::FOUR_WEEKS_ON);
        window.press("Record");
        self.mistakes(&window);
        let keep = |name: &str| (self.at_screen)(&window, &format!("codes-{name}"));
        window.press("For the visit");
        window.press("Show it as codes");
        window.see("Code 1 of");
        window.press("Stay on this code");
        keep("one");
        window.press("Next code");
        window.see("Code 2 of");
        // The lowest height that the window allows.
        window.resize(self.size.1, 480);
        keep("on-its-side");
        window.resize(self.size.0, self.size.1);
        window.press("Back");
        window.see("What you share");
    }

    fn mistakes(&self, window: &Window) {
        let keep = |name: &str| (self.at_screen)(window, &format!("mistakes-{name}"));
        window.press("Was something entered by mistake?");
        window.see("Pain this morning, upper back: 9 of 10");
        keep("list");
        window.press_part("Pain this morning, upper back: 9 of 10");
        window.see("Delete: it was a mistake");
        keep("score");
        window.press("2");
        window.see("Now: 2 of 10.");
        window.press_part(": travelling");
        window.see("Save these days");
        keep("days");
        window.press("Delete: it was a mistake");
        window.see("Deleted.");
        window.press_part("skipped (no time");
        window.see("Forgot");
        keep("reasons");
        window.press_part("Tired");
        window.see("Now: tired");
        window.press_part("Something was wrong during");
        window.see("Note that it was a mistake");
        keep("alarm");
        window.press("Note that it was a mistake");
        window.see("Anything paused stays paused.");
        window.press_part("Pain this morning, upper back: 9 of 10");
        window.see("Back to what I entered first");
        keep("put-right");
        window.press("Show earlier days");
        window.see_no_more("Show earlier days");
        keep("earlier");
        window.press("Back");
    }
}
