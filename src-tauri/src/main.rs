//! The desktop binary: everything is in the library, which is also the phone's entry point.

// A release on Windows opens no console window beside the program's own.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    carryover_shell::run();
}
