//! All files that the program reads or writes outside its database. The only module that calls `std::fs`.
//!
//! A file is written completely or not at all: the bytes go to a new file in the same folder, are synced, and replace the old file
//! by a rename; then the folder is synced, so that the new name survives a power cut too. A file larger than the reader's limit is
//! an error and is not truncated. New files are readable by their owner only (0600 on Unix), because all of them can be about a
//! person.

use std::fs::{self, DirBuilder, File, OpenOptions, TryLockError};
use std::io::{self, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};
use tempfile::NamedTempFile;

/// How the names of unfinished files begin, including those that SQLite keeps next to an unfinished database.
const HALF_MADE: &str = ".carryover-new-";

/// A file operation that failed.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}: {fault}", path.display())]
pub struct FileError {
    /// The file or folder.
    pub path: PathBuf,
    /// What is wrong with it.
    pub fault: FileFault,
}

/// What is wrong with a file or folder.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum FileFault {
    /// Nothing has that name, or its folder does not exist.
    #[error("not found")]
    NotFound,
    /// A folder, pipe or device instead of a plain file.
    #[error("not a plain file")]
    NotAFile,
    /// A file instead of a folder.
    #[error("not a folder")]
    NotAFolder,
    /// A new folder was to be created where one exists that is not empty.
    #[error("not empty")]
    Occupied,
    /// No permission, or a read-only disk.
    #[error("no permission")]
    ReadOnly,
    /// Another copy of the program has it locked.
    #[error("in use")]
    InUse,
    /// The disk, the quota or the file-size limit is exhausted.
    #[error("no room left")]
    NoRoom,
    /// Larger than the reader's limit.
    #[error("larger than {cap} bytes")]
    TooBig {
        /// The limit, in bytes.
        cap: u64,
    },
    /// Any other fault, in the system's words.
    #[error("{detail}")]
    Other {
        /// The system's text, for an error report.
        detail: String,
    },
}

/// Writes `bytes` to `path`, replacing an existing file. On an error the old file is unchanged.
pub fn write(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    let mut new = writable(path)?;
    new.write_all(bytes).map_err(at(path))?;
    put_in_place(new, path)
}

/// Writes several files; none of them appears before all are complete.
pub fn write_all(files: &[(PathBuf, Vec<u8>)]) -> Result<(), FileError> {
    let made = files.iter().map(|(path, bytes)| {
        let mut new = writable(path)?;
        new.write_all(bytes).map_err(at(path))?;
        Ok((new, path))
    });
    let made = made.collect::<Result<Vec<_>, FileError>>()?;
    made.into_iter().try_for_each(|(new, path)| put_in_place(new, path))
}

/// Checks whether a file could be written to `path`, as far as that can be known in advance: new files can be created in its folder,
/// and `path` is not something other than a file.
pub fn could_write(path: &Path) -> Result<(), FileError> {
    writable(path).map(drop)
}

/// A new file that is to replace `path`. Folders and devices are refused: a rename would replace even `/dev/null` with a file.
fn writable(path: &Path) -> Result<NamedTempFile, FileError> {
    match fs::metadata(path) {
        Ok(facts) if !facts.is_file() => Err(FileError { path: path.into(), fault: FileFault::NotAFile }),
        _ => beside(path),
    }
}

/// Removes the file at `path`, if it exists.
pub fn remove(path: &Path) -> Result<(), FileError> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(at(path)(error)),
        _ => Ok(()),
    }
}

/// Removes the folder at `path` with everything in it, if it exists. If it is a link to a folder, only the link is removed.
pub(crate) fn remove_tree(path: &Path) -> Result<(), FileError> {
    match fs::symlink_metadata(path) {
        Ok(facts) if facts.is_dir() => fs::remove_dir_all(path).map_err(at(path)),
        Ok(_) => remove(path),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => Err(at(path)(error)),
    }
}

/// Syncs the folder, so that files created, renamed or removed in `dir` survive a power cut.
pub(crate) fn settle(dir: &Path) -> Result<(), FileError> {
    sync_folder(dir).map_err(at(dir))
}

/// Writes a new folder of files; it appears when all files are complete. An existing folder of that name must be empty.
pub fn write_folder(dir: &Path, named: &[(&str, Vec<u8>)]) -> Result<(), FileError> {
    let above = folder_of(dir);
    fs::create_dir_all(above).map_err(at(dir))?;
    vacant(dir)?;
    let new = tempfile::Builder::new().prefix(HALF_MADE).tempdir_in(above).map_err(at(dir))?;
    for (name, bytes) in named {
        write(&new.path().join(name), bytes).map_err(|error| FileError { path: dir.into(), ..error })?;
    }
    // Not every system can rename a folder onto an empty one.
    match fs::remove_dir(dir) {
        Err(error) if error.kind() != ErrorKind::NotFound => return Err(at(dir)(error)),
        _ => fs::rename(new.path(), dir).map_err(at(dir))?,
    }
    // The folder has its final name, so it must not be deleted as a temporary one.
    let _ = new.keep();
    settle(above)
}

/// Fails unless `dir` is an empty folder or does not exist.
fn vacant(dir: &Path) -> Result<(), FileError> {
    match fs::read_dir(dir).map(|inside| inside.count()) {
        Ok(0) => Ok(()),
        Ok(_) => Err(FileError { path: dir.into(), fault: FileFault::Occupied }),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => Err(at(dir)(error)),
    }
}

/// Reads a whole plain file of at most `cap` bytes.
pub fn read(path: &Path, cap: u64) -> Result<Vec<u8>, FileError> {
    let facts = fs::metadata(path).map_err(at(path))?;
    if !facts.is_file() {
        // Checked before opening, because opening a pipe would wait for its other end.
        return Err(FileError { path: path.into(), fault: FileFault::NotAFile });
    }
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(at(path))?;
    // Reads one byte more than allowed, to detect a file that is too big even if it grows meanwhile.
    file.take(cap.saturating_add(1)).read_to_end(&mut bytes).map_err(at(path))?;
    if bytes.len() as u64 > cap {
        return Err(FileError { path: path.into(), fault: FileFault::TooBig { cap } });
    }
    Ok(bytes)
}

/// Creates the folder that a person named and its parents, if they do not exist yet.
pub fn make_folder(dir: &Path) -> Result<(), FileError> {
    match fs::metadata(dir) {
        Ok(facts) if facts.is_dir() => Ok(()),
        Ok(_) => Err(FileError { path: dir.into(), fault: FileFault::NotAFolder }),
        Err(_) => fs::create_dir_all(dir).map_err(at(dir)),
    }
}

/// The names and contents of the files in `dir` that end in `.{ending}`, ordered by name; each at most `cap` bytes.
pub fn read_all(dir: &Path, ending: &str, cap: u64) -> Result<Vec<(String, Vec<u8>)>, FileError> {
    let mut paths: Vec<_> = fs::read_dir(dir).map_err(at(dir))?.filter_map(|entry| Some(entry.ok()?.path())).collect();
    paths.retain(|path| path.extension().is_some_and(|found| found == ending));
    paths.sort();
    paths.into_iter().map(|path| Ok((path.display().to_string(), read(&path, cap)?))).collect()
}

/// Makes sure that `dir` is a folder. If it does not exist and `create` is true, it is created, accessible by its owner only.
pub(crate) fn folder(dir: &Path, create: bool) -> Result<(), FileError> {
    match fs::metadata(dir) {
        Ok(facts) if facts.is_dir() => Ok(()),
        Ok(_) => Err(FileError { path: dir.into(), fault: FileFault::NotAFolder }),
        Err(error) if error.kind() == ErrorKind::NotFound && create => {
            let mut builder = DirBuilder::new();
            builder.recursive(true);
            #[cfg(unix)]
            std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
            builder.create(dir).map_err(at(dir))
        }
        Err(error) => Err(at(dir)(error)),
    }
}

/// Fails if no file can be created in `dir`, so that this is reported at the start and not when the first data are to be stored.
pub(crate) fn takes_files(dir: &Path) -> Result<(), FileError> {
    tempfile::Builder::new().prefix(HALF_MADE).tempfile_in(dir).map_err(at(dir)).map(drop)
}

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

/// The size of the file at `path` in bytes, if it exists.
pub(crate) fn size(path: &Path) -> Result<Option<u64>, FileError> {
    match fs::metadata(path) {
        Ok(facts) => Ok(Some(facts.len())),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
        Err(error) => Err(at(path)(error)),
    }
}

/// Whether both paths lead to the same file. Two paths are not the same if either leads nowhere.
pub(crate) fn same(one: &Path, other: &Path) -> bool {
    matches!((fs::canonicalize(one), fs::canonicalize(other)), (Ok(one), Ok(other)) if one == other)
}

/// The absolute path. SQLite would read a relative `file:...` as an address with options.
pub(crate) fn absolute(path: &Path) -> Result<PathBuf, FileError> {
    std::path::absolute(path).map_err(at(path))
}

/// Removes the unfinished files that a killed copy of the program left in `dir`. The caller must hold the folder's lock.
pub(crate) fn sweep(dir: &Path) -> Result<(), FileError> {
    for found in fs::read_dir(dir).map_err(at(dir))? {
        let found = found.map_err(at(dir))?;
        if found.file_name().to_string_lossy().starts_with(HALF_MADE) {
            remove_tree(&found.path())?;
        }
    }
    Ok(())
}

/// A new, empty file in the folder of `path`, which is removed again unless it is put in place.
pub(crate) fn beside(path: &Path) -> Result<NamedTempFile, FileError> {
    let dir = folder_of(path);
    tempfile::Builder::new().prefix(HALF_MADE).tempfile_in(dir).map_err(at(path))
}

/// Syncs `new`, renames it to `path`, and syncs the folder.
pub(crate) fn put_in_place(new: NamedTempFile, path: &Path) -> Result<(), FileError> {
    // Opened again, because SQLite may have written the file through its own handle.
    File::options().write(true).open(new.path()).and_then(|file| file.sync_all()).map_err(at(path))?;
    new.persist(path).map_err(|refused| at(path)(refused.error))?;
    sync_folder(folder_of(path)).map_err(at(path))
}

#[cfg(unix)]
fn sync_folder(dir: &Path) -> io::Result<()> {
    File::open(dir)?.sync_all()
}

/// On other systems a folder cannot be opened for syncing, and the rename itself is written through.
#[cfg(not(unix))]
fn sync_folder(_dir: &Path) -> io::Result<()> {
    Ok(())
}

fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(dir) if !dir.as_os_str().is_empty() => dir,
        _ => Path::new("."),
    }
}

fn at(path: &Path) -> impl Fn(io::Error) -> FileError {
    let path = path.to_path_buf();
    move |error| FileError { path: path.clone(), fault: fault(&error) }
}

fn fault(error: &io::Error) -> FileFault {
    match error.kind() {
        ErrorKind::NotFound => FileFault::NotFound,
        ErrorKind::IsADirectory => FileFault::NotAFile,
        ErrorKind::NotADirectory => FileFault::NotAFolder,
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => FileFault::ReadOnly,
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::FileTooLarge => FileFault::NoRoom,
        _ => FileFault::Other { detail: error.to_string() },
    }
}
