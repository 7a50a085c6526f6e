//! The review from invented summaries, and the laws of their union.

mod page;
mod strings;
mod union;
