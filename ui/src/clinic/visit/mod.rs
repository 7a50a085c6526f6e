//! What is found at a visit: noted section by section, with the list of what was noted beside it.

mod change;
mod complaint;
mod context;
mod measure;
mod not_followed;
mod note;
mod note_it;
mod noted;
mod screening;
mod stop_watch;
mod visit_page;

pub use visit_page::Visit;
