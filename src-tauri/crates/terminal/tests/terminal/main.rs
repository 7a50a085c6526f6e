//! The real binary on real files: what it does, what it refuses, and that a refusal leaves everything as it was.
//!
//! Needs, besides the binary: `age` and `age-keygen` (age), `zbarimg` (zbar-tools), `setpriv` (util-linux).

mod analysis;
mod card;
mod catalogue;
mod clock;
mod correct;
mod device;
mod forge;
mod frames;
mod home;
mod inputs;
mod loop_closed;
mod norms;
mod place;
mod summary;
mod usage;
