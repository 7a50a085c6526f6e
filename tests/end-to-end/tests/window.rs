//! The window itself: that it opens, and what it is like before anything was done in it.

use end_to_end::Desktop;

#[test]
fn the_window_opens_on_its_first_screen() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").at("2027-03-01T14:02:00+01:00").start();
    window.see("Carryover");
    window.see("2027-03-01T14:02:00+01:00");
    window.screenshot("first-light");
}
