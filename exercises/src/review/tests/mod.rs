//! Tests of the review, made from invented summaries, and of the properties of united summaries.

mod page;
mod put_back;
mod strings;
mod union;
mod vignettes;
