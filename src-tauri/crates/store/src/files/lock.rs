//! The lock on the data folder.

use super::fault::at;
use super::{FileError, FileFault};
use std::fs::{File, OpenOptions, TryLockError};
use std::path::Path;

/// An advisory lock, released when dropped or when the process ends for any reason.
#[derive(Debug)]
pub(crate) struct Lock {
    file: File,
}

impl Drop for Lock {
    /// Closing the file is not enough: a process that is just being started has a copy of the handle until it runs its own program,
    /// and would keep the lock that long.
    fn drop(&mut self) {
        // If this fails, the lock is released with the last copy of the handle, a moment later.
        let _ = self.file.unlock();
    }
}

/// Takes the lock on `path`, a file that exists for this purpose; fails if it is in use.
pub(crate) fn lock(path: &Path) -> Result<Lock, FileError> {
    let mut options = OpenOptions::new();
    options.write(true).create(true).truncate(false);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let file = options.open(path).map_err(at(path))?;
    match file.try_lock() {
        Ok(()) => Ok(Lock { file }),
        Err(TryLockError::WouldBlock) => Err(FileError { path: path.into(), fault: FileFault::InUse }),
        Err(TryLockError::Error(error)) => Err(at(path)(error)),
    }
}
