//! The tour of the demo's patient at the office, and of the person's own data.

use super::Tour;
use crate::{Desktop, scenes};

impl Tour<'_> {
    /// Visits the demo's patient at the office.
    pub(super) fn patient(&self) {
        let desktop = Desktop::new();
        let window = self.open(&desktop, "A11-work");
        let keep = |name: &str| (self.at_screen)(&window, &format!("patient-{name}"));
        window.see("Now");
        keep("now");
        if window.can_press("Skip this time") {
            window.press("Skip this time");
            keep("leave-out");
            window.press("Take days off");
            keep("leave-out-days");
            window.press("Back");
            window.see("Why skip it?");
            window.press("Back");
        }
        window.press("Plan");
        keep("plan");
        window.press("Reminders");
        window.see("Next reminder");
        keep("reminders");
        window.press("30 minutes");
        window.see("In a meeting until");
        keep("reminders-meeting");
        window.press("End meeting");
        window.see("30 minutes");
        window.press("Back");
        window.press_part("How to do it");
        keep("how-to");
        window.press("Back");
        window.press("Record");
        window.see("For the visit");
        keep("record");
        window.press("For the visit");
        window.see("What you share");
        keep("visit");
        window.press("Back");
        window.see("Was something entered by mistake?");
        window.press("Your data");
        window.see("Erase everything");
        keep("mine");
        self.pages(&window, "patient", "Erase everything");
    }

    /// Visits the export of the person's data, and the question before they are erased.
    pub(super) fn erased(&self) {
        let desktop = Desktop::new();
        desktop.with_a_step_ahead();
        let window = self.scene(&desktop, scenes::STEP_DUE);
        let keep = |name: &str| (self.at_screen)(&window, &format!("own-{name}"));
        window.press("Record");
        window.see("Was something entered by mistake?");
        window.press("Your data");
        window.press("Export my data");
        window.see("Saved in");
        keep("saved");
        window.press("Erase everything");
        window.see("Yes, erase everything");
        keep("erase-asked");
        window.press("Yes, erase everything");
        window.see("Everything is erased.");
        keep("erased");
    }
}
