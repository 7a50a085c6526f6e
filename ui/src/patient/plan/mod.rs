//! Plan: what was agreed until the next visit.

mod one_plan;
mod plan_item;
mod plan_page;
mod refit;

pub use plan_page::Plan;
pub use refit::Refit;
