//! The optional code of the patient's window, and the bytes that leave the device.

use end_to_end::scenes::{HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Window};

const MORNING: &str = "2027-03-01T09:10:00+01:00";

fn begin_lock(window: &Window) {
    window.press("Record");
    window.press("Your data");
    window.see("It does not encrypt your record");
    window.type_into("Code", "4711");
    window.type_into("Code again", "4712");
    window.see("The two codes are not the same.");
    window.type_into("Code again", "4711");
    window.press("Lock with this code");
    window.see("The window asks for a code.");
}

#[test]
fn with_a_code_the_window_shows_nothing_until_it_is_typed() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let window = desktop.open("patient").at(MORNING).zone(ZONE).start();
    begin_lock(&window);
    window.look_at_phone_sizes("screen-lock");
    window.press("Lock now");
    window.see("call your local emergency number");
    window.look_at_phone_sizes("screen-locked");
    let source = window.ask("return document.documentElement.outerHTML", &[]);
    for gone in ["Ropewalk Practice", "Sit tall", "Your day"] {
        assert!(!source.as_str().expect("a text").contains(gone), "{gone}");
    }
    window.close();

    let window = desktop.open("patient").at(MORNING).zone(ZONE).start();
    window.see("Locked");
    window.type_into("Code", "0000");
    window.press("Open");
    window.see("This is not your code.");
    window.type_into("Code", "4711");
    window.press("Open");
    window.see("Monday, 09:1");
    window.press("Record");
    window.press("Your data");
    window.type_into("Your present code", "4711");
    window.press("Remove the lock");
    window.see("Code again");
}

#[test]
fn a_patients_window_that_nobody_uses_locks_by_itself() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let window = desktop.open("patient").at(MORNING).zone(ZONE).start();
    begin_lock(&window);
    window.close();
    let window = desktop.open("patient").at(MORNING).zone(ZONE).with("CARRYOVER_IDLE_MS", "1500").start();
    // Nobody looks in time to see it open, so the page itself remembers that it was.
    let remember = "new MutationObserver(() => {
        window.wasOpen = window.wasOpen || document.body.textContent.includes('Your data') || document.body.textContent.includes('Start');
    }).observe(document.body, { subtree: true, childList: true })";
    window.ask(remember, &[]);
    window.type_into("Code", "4711");
    window.press("Open");
    window.wait_for("return window.wasOpen === true");
    window.see("call your local emergency number");
}

#[test]
fn the_privacy_page_shows_every_byte_that_leaves_the_device() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let window = desktop.open("patient").at(MORNING).zone(ZONE).start();
    window.press("Record");
    window.press("Your data");
    window.press("Privacy");
    window.see("What leaves this device");
    window.press("Show every byte");
    window.see("Random number of your plan");
    window.look_at_phone_sizes("bytes");
    // The plan's number: eight bytes as CBOR, with a byte for their kind and count.
    let first = window.ask("return document.querySelector('.bytes').textContent", &[]);
    let first = first.as_str().expect("a text").to_owned();
    assert!(first.starts_with("48 ") && first.split(' ').count() == 9, "{first}");
    window.press("Hide the bytes");
    window.see_no_more("Random number of your plan");
}
