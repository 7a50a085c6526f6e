//! A change that the clinician allowed: offered on the patient's page once the rules propose it, and accepted by a press.

use end_to_end::Desktop;
use end_to_end::scenes::{STEP_DUE, ZONE};

#[test]
fn a_step_is_offered_and_taken() {
    let desktop = Desktop::new();
    desktop.with_a_step_ahead();

    let window = desktop.open("patient").at(STEP_DUE).zone(ZONE).start();
    window.see("Go up to 15 seconds per hold?");
    window.see("6 March and on 7 March");
    window.see("3 holds of 10 seconds");
    window.fits();
    window.screenshot("step-offered");
    window.press("Start with this step");
    window.see("Hold 1 of 3");
    window.press("Stop");
    window.press("Continue");
    window.see("3 holds of 15 seconds");
    window.screenshot("step-in-use");
}
