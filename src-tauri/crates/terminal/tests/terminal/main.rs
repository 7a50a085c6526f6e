//! The real binary on real files: what it does, what it refuses, and that a refusal leaves everything as it was.
//!
//! Needs, besides the binary: `age` and `age-keygen` (age), `zbarimg` (zbar-tools), `setpriv` (util-linux).

mod card;
mod catalogue;
mod clock;
mod correct;
mod forge;
mod frames;
mod home;
mod inputs;
mod loop_closed;
mod norms;
mod own;
mod place;
mod summary;
mod sums;
mod usage;
