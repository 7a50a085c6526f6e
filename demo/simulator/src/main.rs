//! Demo simulator.
fn main() {}
