//! The clinic's passphrase, its lock and its keys.

mod change;
mod clinicians;
mod identity;
mod idle;
mod keys_page;
mod renew;
mod save;

pub use keys_page::Keys;
