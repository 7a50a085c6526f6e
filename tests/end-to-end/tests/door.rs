//! The clinic's lock and passphrase in the real window.

use end_to_end::{Desktop, Window};

const AT: &str = "2027-03-01T08:30:00+01:00";
const NEW: &str = "eight brown wrens in a kettle";

/// A window on an unlocked clinic with the patient K17, and its passphrase.
fn open(desktop: &Desktop) -> (Window, &'static str) {
    let passphrase = desktop.with_a_clinic();
    let window = desktop.open("clinic").at(AT).size(1280, 800).start();
    unlock(&window, passphrase);
    window.see("Receive summaries");
    (window, passphrase)
}

fn unlock(window: &Window, passphrase: &str) {
    window.see("Unlock this clinic");
    window.type_into("Passphrase", passphrase);
    window.press("Unlock");
}

/// The whole page as its source, not only what is in sight.
fn source(window: &Window) -> String {
    let source = window.ask("return document.documentElement.outerHTML", &[]);
    source.as_str().expect("a text").to_owned()
}

#[test]
fn locking_clears_the_page_and_unlocking_returns_to_it() {
    let desktop = Desktop::new();
    let (window, passphrase) = open(&desktop);
    window.press("First plan: K17");
    window.press("Add Heel raise");
    window.see("Heel raise");
    window.press("Lock");
    window.see("Unlock this clinic");
    for gone in ["K17", "Heel raise", "Ropewalk Practice"] {
        assert!(!source(&window).contains(gone), "{gone}");
    }
    assert!(!window.sees("Enter the passphrase."), "no page asked for data once it was locked");
    window.screenshot("door-locked");
    unlock(&window, passphrase);
    window.see("Draft of 1 March resumed.");
    window.see("Heel raise");
    // The keyboard locks it as well.
    let keys = "window.dispatchEvent(new KeyboardEvent('keydown', { key: 'l', ctrlKey: true, bubbles: true }))";
    window.ask(keys, &[]);
    window.see("Unlock this clinic");
    assert!(!source(&window).contains("K17"));
}

#[test]
fn a_patient_is_removed_after_the_code_was_typed() {
    let desktop = Desktop::new();
    let (window, _) = open(&desktop);
    window.press("Remove patient: K17");
    window.see("Remove K17?");
    window.see("how long local rules require");
    assert!(!window.can_press("Remove patient"), "not before the code is typed");
    window.screenshot("door-remove");
    window.type_into("Type K17 to confirm", "k17");
    window.press("Remove patient");
    window.see("K17 is removed: the name, every plan and every summary, also from the automatic backups.");
    window.press("Go on");
    window.see("No patients yet.");
}

#[test]
fn a_window_that_nobody_uses_locks_by_itself() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let window = desktop.open("clinic").at(AT).with("CARRYOVER_IDLE_MS", "1500").size(1280, 800).start();
    // Nobody looks in time to see it open, so the page itself remembers that it was.
    let remember = "new MutationObserver(() => {
        window.wasOpen = window.wasOpen || document.body.textContent.includes('Receive summaries');
    }).observe(document.body, { subtree: true, childList: true })";
    window.ask(remember, &[]);
    unlock(&window, passphrase);
    window.wait_for("return window.wasOpen === true");
    window.see("Unlock this clinic");
    assert!(!source(&window).contains("K17"));
}

#[test]
fn the_passphrase_is_judged_while_it_is_typed_and_can_be_changed() {
    let desktop = Desktop::new();
    let (window, passphrase) = open(&desktop);
    window.press("Passphrase and keys");
    window.see("Secret key for other programs");
    assert!(!source(&window).contains("AGE-SECRET-KEY"), "masked until it is asked for");
    window.type_into("Present passphrase", passphrase);
    window.type_into("New passphrase", "short");
    window.see("Too short");
    window.type_into("New passphrase", "Ropewalk Practice");
    window.see("Easy to guess");
    window.screenshot("door-guessable");
    window.type_into("New passphrase", NEW);
    window.see("Strong");
    window.type_into("Passphrase again", NEW);
    window.press("Change the passphrase");
    window.see("The passphrase was changed.");
    window.choose("Lock when nobody uses the program for", "30 minutes");
    window.screenshot("door-keys");
    window.press("Lock");
    unlock(&window, passphrase);
    window.see("The passphrase is wrong.");
    window.type_into("Passphrase", NEW);
    window.press("Unlock");
    window.see("Secret key for other programs");
    window.type_into("Enter the clinic's passphrase to confirm.", NEW);
}

#[test]
fn the_keys_are_renewed_once_it_was_confirmed() {
    let desktop = Desktop::new();
    let (window, passphrase) = open(&desktop);
    window.press("Passphrase and keys");
    window.see("It takes nothing back from whoever has a copy of the former keys.");
    window.type_into("The clinic's passphrase, to renew the keys", NEW);
    window.press("I will give out new cards, and save the keys again");
    window.press("Renew the keys");
    window.see("The passphrase is wrong.");
    window.type_into("The clinic's passphrase, to renew the keys", passphrase);
    window.press("Renew the keys");
    window.see("The keys were renewed.");
    window.see("New security code: ");
    window.screenshot("door-renewed");
    window.press("Lock");
    unlock(&window, passphrase);
    window.see("Secret key for other programs");
}

#[test]
fn what_was_written_of_a_card_is_named_and_can_be_removed() {
    let desktop = Desktop::new();
    let (window, _) = open(&desktop);
    window.press("First plan: K17");
    window.press("Add Heel raise");
    window.see("Ready to issue.");
    window.press("Issue plan card");
    window.see("Plan card for K17");
    window.see("These files are not encrypted.");
    window.screenshot("door-card");
    let folder = desktop.path("plan-card-2027-03-01");
    assert!(folder.join("card.png").is_file());
    window.press("Remove these files");
    window.see("The files were removed.");
    assert!(!folder.exists());
}
