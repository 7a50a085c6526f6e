//! The first start without a card: looking around in a sample, and a missing camera.

use end_to_end::Desktop;

/// A Wednesday at eleven in the morning.
const AT: &str = "2027-03-03T11:05:00Z";

#[test]
fn a_sample_can_be_explored_and_nothing_of_it_is_kept() {
    let desktop = Desktop::new();
    let window = desktop.open("new").at(AT).zone("UTC").size(390, 844).start();
    window.welcomed();
    window.press("I do exercises");
    window.see("Add your plan card");
    window.screenshot("sample-offered");
    window.press("Look around with a sample plan");
    window.see("Sample plan: nothing is saved.");
    window.see("Start");
    assert!(window.home().join("sample").exists(), "it has a folder of its own");
    window.fits();
    window.screenshot("sample-now");
    window.press("I already did it");
    window.see("Nothing to do now");
    window.press("Plan");
    window.see("Sample clinic");
    assert!(
        !window.can_press("Add a new card") && !window.can_press("Reminders"),
        "what would be in earnest is not offered"
    );
    window.press("Record");
    window.see("Sample plan: nothing is saved.");
    assert!(!window.can_press("For the visit"), "there is nothing to hand over");
    window.fits();
    window.screenshot("sample-record");
    window.press("Exit sample");
    window.see("Add your plan card");
    window.see_no_more("nothing is saved.");
    assert_eq!(desktop.notifications(), 0, "nobody is reminded of a sample");
    window.close();

    let window = desktop.open("new").at(AT).zone("UTC").start();
    window.see("Add your plan card");
    assert!(window.can_press("Look around with a sample plan"));
    assert!(!window.home().join("sample").exists(), "its folder is gone");
}

#[test]
fn without_a_camera_the_page_says_what_else_can_be_done() {
    let desktop = Desktop::new();
    let window = desktop.open("new").at(AT).size(360, 640).start();
    window.welcomed();
    window.press("I do exercises");
    window.see("Add your plan card");
    if window.can_press("Scan the code with the camera") {
        window.press("Scan the code with the camera");
        window.see("The camera could not be opened.");
    } else {
        window.see("There is no camera here to scan with.");
    }
    window.see("Choose a picture of the code, or type its text.");
    window.fits();
    window.screenshot("card-without-camera");
}
