//! Plan: what was agreed until the next visit.

mod one_plan;
mod plan_item;
mod plan_page;

pub use plan_page::Plan;
