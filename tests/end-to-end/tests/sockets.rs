//! The window opens no connection, nor does any process of its web view: the system's calls are watched, whatever library makes them.
//!
//! Allowed is what stays within the computer: AF_UNIX, for the display, the session bus and the web view's own processes; and AF_NETLINK to
//! the kernel's table of routes, by which the web view's library learns whether there is a network at all.

use end_to_end::scenes::{HOLD, TAKEN, ZONE};
use end_to_end::{Desktop, Sockets};
use std::collections::BTreeMap;

/// The calls that are not allowed.
fn outside(sockets: &Sockets) -> BTreeMap<String, Vec<String>> {
    let mut found = sockets.by_family();
    assert!(found.remove("AF_UNIX").is_some_and(|calls| calls.len() > 5), "the calls are seen");
    for call in found.remove("AF_NETLINK").unwrap_or_default() {
        assert!(call.contains("NETLINK_ROUTE") || call.contains(" bind("), "another part of the kernel: {call}");
    }
    found
}

/// Without a driver: with a plan that is followed, its reminders, the tray, a notification, and a second start.
#[test]
fn a_window_that_reminds_opens_no_connection() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, TAKEN);
    let sockets = Sockets::in_file(&desktop.path("sockets"));
    let mut program = desktop.start_watched("patient", "2027-03-01T08:59:50+01:00", ZONE, &sockets);
    desktop.notified("Open Carryover when you are ready.");
    desktop.click_notification();
    assert!(desktop.start_unattended("patient").ends().success());
    assert!(program.runs());
    assert_eq!(outside(&sockets), BTreeMap::new());
}

/// With a driver, whose own connection to the web view is the only exception: it listens on this computer for it, and no other address
/// is asked for.
#[test]
fn a_window_that_is_used_connects_to_its_driver_alone() {
    let desktop = Desktop::new();
    let passphrase = desktop.with_a_clinic();
    let sockets = Sockets::in_file(&desktop.path("sockets"));
    let opening = desktop.open("clinic").at("2027-03-01T08:30:00+01:00").zone(ZONE).size(1280, 900).watched(&sockets);
    let clinic = opening.start();
    clinic.type_into("Passphrase", passphrase);
    clinic.press("Unlock");
    clinic.see("Receive summaries");
    let outside_page = "return fetch('https://example.org/').then(() => 'reached', () => 'refused')";
    assert_eq!(clinic.ask(outside_page, &[]), serde_json::json!("refused"));
    clinic.take_faults();
    let mut found = outside(&sockets);
    for call in found.remove("AF_INET").unwrap_or_default() {
        let names_address = call.contains("sin_addr");
        assert!(!names_address || call.contains("inet_addr(\"127.0.0.1\")"), "{call}");
    }
    assert_eq!(found, BTreeMap::new());
}
