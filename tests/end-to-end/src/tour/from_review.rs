//! The tour of what a clinician opens from a patient's review: what is looked at together, a diary on paper, the files for the record with
//! the server that they can be handed over to, the case, and removing the patient.

use super::Tour;
use crate::Window;

/// On this computer; nothing is sent to it.
const SERVER: &str = "http://127.0.0.1:8080/fhir";

impl Tour<'_> {
    /// Visits them from the review of this patient, who has a plan; ends at the list of patients.
    pub(super) fn opened_in_review(&self, window: &Window, code: &str) {
        let keep = |name: &str| (self.at_screen)(window, &format!("clinic-{name}"));
        window.press("Look at it together");
        window.see("Change anything else");
        keep("together");
        window.press("Leave it out");
        window.press("In other words");
        window.see("Your reason");
        keep("together-why");
        window.press("Keep");
        window.press("Review");
        window.press("Enter a diary from paper");
        window.see("Save these days");
        window.press("Save these days");
        window.see("Nothing was changed.");
        keep("diary");
        window.press("Review");
        self.records(window);
        window.press(&format!("Case of {code}"));
        window.see("Close the case");
        keep("case");
        window.press("Remove patient");
        window.see("Keep this patient");
        keep("remove");
        window.press("Keep this patient");
        window.see("Receive summaries");
    }

    /// Visits the files for the record, before and after a server is set.
    fn records(&self, window: &Window) {
        let keep = |name: &str| (self.at_screen)(window, &format!("clinic-{name}"));
        window.press_part("For the medical record");
        window.see("Address of the server");
        window.press("Save the review");
        window.see("Saved as ");
        keep("records");
        window.type_into("Address of the server", SERVER);
        window.press("Set the server");
        window.see("Hand this review over");
        keep("hand-over");
        window.press("Hand nothing over any more");
        window.see("Address of the server");
    }
}
