//! The front end: Leptos, one component per file; the tree of files mirrors the screens.

mod app;
mod clinic;
mod events;
mod invoke;
mod pages;
mod patient;
mod shared;
mod start;

fn main() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(app::App);
}
