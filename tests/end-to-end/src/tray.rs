//! Reads the menu of the program's tray icon over the session bus, as a panel would (the interface `com.canonical.dbusmenu`). No
//! panel shows icons on the tests' desktops, but the menu exists nonetheless.

use std::process::Command;

use crate::bus::Bus;

const ITEMS: &str = "/org/ayatana/NotificationItem";
const MENU: &str = "com.canonical.dbusmenu";

/// Where the menu is: the program's name on the bus, and the menu's path.
struct Place {
    name: String,
    path: String,
}

/// The menu's lines with their numbers, from the top; empty while there is no menu.
pub fn lines(bus: &Bus) -> Vec<(String, String)> {
    let Some(place) = find(bus) else { return Vec::new() };
    let layout = ["GetLayout", "0", "--", "-1", "['label']"];
    let said = call(bus, &place, &layout).unwrap_or_default();
    // The answer, as gdbus prints it: <(2, {'label': <'Open'>}, ...
    let items = said.split("<(").skip(1).filter_map(|item| {
        let (number, rest) = item.split_once(", {'label': <")?;
        let quote = rest.chars().next()?;
        let label = rest[1..].split_once(&format!("{quote}>"))?.0;
        Some((number.to_owned(), label.to_owned()))
    });
    items.collect()
}

/// Chooses the item with this number.
pub fn choose(bus: &Bus, number: &str) -> Option<()> {
    call(bus, &find(bus)?, &["Event", number, "clicked", "<0>", "0"]).map(drop)
}

fn find(bus: &Bus) -> Option<Place> {
    let list = gdbus(
        bus,
        &["call", "--dest", "org.freedesktop.DBus", "--object-path", "/", "--method", "org.freedesktop.DBus.ListNames"],
    )?;
    let names = list.split('\'').filter(|name| name.starts_with(':'));
    names.map(str::to_owned).find_map(|name| {
        let tree = gdbus(bus, &["introspect", "--dest", &name, "--object-path", ITEMS, "--recurse", "--only-properties"])?;
        let path = tree.split_whitespace().find(|word| word.starts_with(ITEMS) && word.ends_with("/Menu"))?.to_owned();
        Some(Place { name, path })
    })
}

fn call(bus: &Bus, place: &Place, event: &[&str]) -> Option<String> {
    let method = format!("{MENU}.{}", event[0]);
    let call = ["call", "--dest", &place.name, "--object-path", &place.path, "--method", &method];
    gdbus(bus, &[&call[..], &event[1..]].concat())
}

fn gdbus(bus: &Bus, words: &[&str]) -> Option<String> {
    let mut gdbus = Command::new("gdbus");
    gdbus.arg(words[0]).arg("--session").args(&words[1..]).env("DBUS_SESSION_BUS_ADDRESS", &bus.address);
    let answer = gdbus.output().expect("gdbus is installed (tests/packages.txt)");
    answer.status.success().then(|| String::from_utf8_lossy(&answer.stdout).into_owned())
}
