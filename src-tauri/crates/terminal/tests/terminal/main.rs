//! Runs the real binary on real files: what it does, what it refuses, and that a refusal changes nothing.
//!
//! Besides the binary it needs `age` and `age-keygen` (package age), `zbarimg` (zbar-tools), `setpriv` (util-linux), `strace`,
//! and the validators that `tests/install` fetches.

mod analysis;
mod backup;
mod card;
mod catalogue;
mod clock;
mod correct;
mod device;
mod disk;
mod door;
mod forge;
mod frames;
mod home;
mod inputs;
mod loop_closed;
mod norms;
mod own_exercises;
mod patients;
mod place;
mod put_back;
mod receiving;
mod records;
mod renewing;
mod sockets;
mod summary;
mod usage;
mod vignettes;
mod visit;
