//! All files that the program reads or writes outside its database. The only folder that calls `std::fs`.
//!
//! A file is written completely or not at all: the bytes go to a new file in the same folder, are synced, and replace the old file
//! by a rename; then the folder is synced, so that the new name survives a power cut too. A file larger than the reader's limit is
//! an error and is not truncated. New files are readable by their owner only (0600 on Unix), because all of them can be about a
//! person.

use std::fs::{self, DirBuilder, File};
use std::io::{self, ErrorKind, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::time::Duration;
use tempfile::NamedTempFile;

mod fault;
mod identity;
mod inside;
mod lock;

use fault::at;
pub use fault::{FileError, FileFault};
pub(crate) use identity::{Identity, identity};
pub use inside::{Inside, InsideKind, inside, is_folder};
pub(crate) use lock::{Lock, lock};

/// How the names of unfinished files begin, including those that SQLite keeps next to an unfinished database.
const HALF_MADE: &str = ".carryover-new-";

/// A file that is not complete yet; it is removed unless it is put in place.
pub(crate) type NewFile = NamedTempFile;

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
fn writable(path: &Path) -> Result<NewFile, FileError> {
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

/// Removes the folder at `path`, unless something is in it.
pub fn remove_empty_folder(path: &Path) -> Result<(), FileError> {
    match fs::remove_dir(path) {
        Err(error) if !matches!(error.kind(), ErrorKind::NotFound | ErrorKind::DirectoryNotEmpty) => Err(at(path)(error)),
        _ => Ok(()),
    }
}

/// Overwrites the file at `path`, or those in the folder at `path`, with zeros, syncs and removes it, if it exists. Where the disk writes to the same place, its former
/// contents are gone.
pub(crate) fn wipe(path: &Path) -> Result<(), FileError> {
    match fs::symlink_metadata(path) {
        Ok(facts) if facts.is_file() => {
            // A file that cannot be overwritten is removed all the same.
            let _ = overwrite(path, facts.len());
            remove(path)
        }
        Ok(facts) if facts.is_dir() => {
            for name in names(path).into_iter().flatten() {
                let _ = wipe(&path.join(name));
            }
            remove_tree(path)
        }
        _ => remove_tree(path),
    }
}

fn overwrite(path: &Path, length: u64) -> io::Result<()> {
    let mut file = File::options().write(true).open(path)?;
    io::copy(&mut io::repeat(0).take(length), &mut file)?;
    file.sync_all()
}

/// Copies a file's bytes to a new file, completely or not at all.
pub(crate) fn copy(from: &Path, to: &Path) -> Result<(), FileError> {
    let mut new = writable(to)?;
    let mut source = File::open(from).map_err(at(from))?;
    io::copy(&mut source, &mut new).map_err(at(to))?;
    put_in_place(new, to)
}

/// The first bytes of a file, as many as there are up to `most`.
pub(crate) fn beginning(path: &Path, most: u64) -> Result<Vec<u8>, FileError> {
    let mut bytes = Vec::new();
    File::open(path).and_then(|file| file.take(most).read_to_end(&mut bytes)).map_err(at(path))?;
    Ok(bytes)
}

/// Shortens a file to whole pages of `page` bytes, at least 1, and writes their number at `place`, in four bytes, the highest first.
pub(crate) fn cut_to_pages(path: &Path, page: u64, place: u64) -> Result<(), FileError> {
    let mut file = File::options().write(true).open(path).map_err(at(path))?;
    let pages = file.metadata().map_err(at(path))?.len() / page.max(1);
    file.set_len(pages * page).map_err(at(path))?;
    let number = u32::try_from(pages).unwrap_or(u32::MAX).to_be_bytes();
    file.seek(SeekFrom::Start(place)).and_then(|_| file.write_all(&number)).map_err(at(path))
}

/// Gives a file another name in the same folder.
pub(crate) fn rename(from: &Path, to: &Path) -> Result<(), FileError> {
    fs::rename(from, to).map_err(at(from))?;
    settle(folder_of(to))
}

/// The names of what is in `dir`; none if there is no such folder.
pub(crate) fn names(dir: &Path) -> Result<Vec<String>, FileError> {
    match fs::read_dir(dir) {
        Ok(found) => Ok(found.filter_map(|entry| entry.ok()?.file_name().into_string().ok()).collect()),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(Vec::new()),
        Err(error) => Err(at(dir)(error)),
    }
}

/// Whether this is the name of an unfinished file.
pub(crate) fn is_half_made(name: &str) -> bool {
    name.starts_with(HALF_MADE)
}

/// Removes the folder at `path` if it is empty.
pub(crate) fn remove_if_empty(path: &Path) {
    let _ = fs::remove_dir(path);
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

/// Writes a new folder of files; it appears when all files are complete. An existing folder of that name must be empty. What a killed
/// program left beside it is removed, as [`fn@write`] does.
pub fn write_folder(dir: &Path, named: &[(&str, Vec<u8>)]) -> Result<(), FileError> {
    let above = folder_of(dir);
    create_folders(above, &mut DirBuilder::new()).map_err(|error| FileError { path: dir.into(), ..error })?;
    vacant(dir)?;
    let new = tempfile::Builder::new().prefix(HALF_MADE).tempdir_in(above).map_err(at(dir))?;
    if let Ok(facts) = fs::metadata(new.path()) {
        remove_left(above, &facts);
    }
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
    let too_big = || FileError { path: path.into(), fault: FileFault::TooBig { cap } };
    if facts.len() > cap {
        return Err(too_big());
    }
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(at(path))?;
    // Reads one byte more than allowed, to detect a file that is too big even if it grows meanwhile.
    file.take(cap.saturating_add(1)).read_to_end(&mut bytes).map_err(at(path))?;
    if bytes.len() as u64 > cap { Err(too_big()) } else { Ok(bytes) }
}

/// Reads a secret of at most `cap` bytes: from a plain file that only its owner can read, or from a pipe until its other end closes it.
/// What passes through a pipe is stored nowhere, so its permissions do not matter.
pub fn read_secret(path: &Path, cap: u64) -> Result<Vec<u8>, FileError> {
    let fault = |fault| FileError { path: path.into(), fault };
    let facts = fs::metadata(path).map_err(at(path))?;
    if is_exposed(&facts) {
        return Err(fault(FileFault::Exposed));
    }
    if !facts.is_file() && !is_pipe(&facts) {
        return Err(fault(FileFault::NotAFile));
    }
    // With its full size from the beginning, so that no part of it remains where the list was before it grew.
    let mut bytes = Vec::with_capacity(cap as usize + 32);
    File::open(path).map_err(at(path))?.take(cap.saturating_add(1)).read_to_end(&mut bytes).map_err(at(path))?;
    if bytes.len() as u64 > cap { Err(fault(FileFault::TooBig { cap })) } else { Ok(bytes) }
}

#[cfg(unix)]
fn is_exposed(facts: &fs::Metadata) -> bool {
    facts.is_file() && std::os::unix::fs::PermissionsExt::mode(&facts.permissions()) & 0o077 != 0
}

/// Elsewhere a folder decides who can read its files.
#[cfg(not(unix))]
fn is_exposed(_facts: &fs::Metadata) -> bool {
    false
}

#[cfg(unix)]
fn is_pipe(facts: &fs::Metadata) -> bool {
    std::os::unix::fs::FileTypeExt::is_fifo(&facts.file_type())
}

#[cfg(not(unix))]
fn is_pipe(_facts: &fs::Metadata) -> bool {
    false
}

/// Creates the folder that a person named and its parents, if they do not exist yet.
pub fn make_folder(dir: &Path) -> Result<(), FileError> {
    match fs::metadata(dir) {
        Ok(facts) if facts.is_dir() => Ok(()),
        Ok(_) => Err(FileError { path: dir.into(), fault: FileFault::NotAFolder }),
        Err(_) => create_folders(dir, &mut DirBuilder::new()),
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
            #[cfg(unix)]
            std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
            create_folders(dir, &mut builder)
        }
        Err(error) => Err(at(dir)(error)),
    }
}

/// Creates the folder `dir` and its parents, unless they exist. The names of all of them survive a power cut, not only those of the files
/// in the last one.
fn create_folders(dir: &Path, builder: &mut DirBuilder) -> Result<(), FileError> {
    let new: Vec<&Path> = dir.ancestors().take_while(|one| !one.as_os_str().is_empty() && !one.exists()).collect();
    builder.recursive(true).create(dir).map_err(at(dir))?;
    new.into_iter().rev().try_for_each(|one| sync_folder(folder_of(one)).map_err(at(dir)))
}

/// Makes sure that only its owner can read or change what is in `dir`. A folder that holds, or will hold, nothing but our data is made so;
/// any other is refused, because that would shut others out of their own files.
#[cfg(unix)]
pub(crate) fn make_private(dir: &Path, is_ours: bool) -> Result<(), FileError> {
    use std::os::unix::fs::PermissionsExt;
    let mode = fs::metadata(dir).map_err(at(dir))?.permissions().mode();
    if mode & 0o077 == 0 {
        return Ok(());
    }
    let open = || FileError { path: dir.into(), fault: FileFault::OpenToOthers };
    // A folder that many people share has this bit.
    if !is_ours || mode & 0o1000 != 0 {
        return Err(open());
    }
    fs::set_permissions(dir, fs::Permissions::from_mode(0o700)).map_err(|_| open())
}

/// On other systems a person's folders are private by where they are.
#[cfg(not(unix))]
pub(crate) fn make_private(_dir: &Path, _is_ours: bool) -> Result<(), FileError> {
    Ok(())
}

/// Fails if no file can be created in `dir`, so that this is reported at the start and not when the first data are to be stored.
pub(crate) fn takes_files(dir: &Path) -> Result<(), FileError> {
    tempfile::Builder::new().prefix(HALF_MADE).tempfile_in(dir).map_err(at(dir)).map(drop)
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

/// A small file whose beginning is overwritten in place again and again.
#[derive(Debug)]
pub(crate) struct Register(File);

impl Register {
    /// Overwrites the beginning. The system may write it to the disk later.
    pub(crate) fn overwrite(&self, bytes: &[u8]) -> io::Result<()> {
        let mut file = &self.0;
        file.seek(SeekFrom::Start(0))?;
        file.write_all(bytes)
    }
}

/// Opens an existing file to overwrite its beginning.
pub(crate) fn register(path: &Path) -> Result<Register, FileError> {
    File::options().write(true).open(path).map(Register).map_err(at(path))
}

/// The absolute path. SQLite would read a relative `file:...` as an address with options.
pub(crate) fn absolute(path: &Path) -> Result<PathBuf, FileError> {
    std::path::absolute(path).map_err(at(path))
}

/// Removes the unfinished files that a killed copy of the program left in `dir`. The caller must hold the folder's lock.
pub(crate) fn sweep(dir: &Path) -> Result<(), FileError> {
    for found in fs::read_dir(dir).map_err(at(dir))? {
        let found = found.map_err(at(dir))?;
        if is_half_made(&found.file_name().to_string_lossy()) {
            wipe(&found.path())?;
        }
    }
    Ok(())
}

/// A new, empty file in the folder of `path`, which is removed again unless it is put in place.
///
/// What a killed program left in that folder more than an hour ago is removed. In a person's own folders nothing else does that.
pub(crate) fn beside(path: &Path) -> Result<NewFile, FileError> {
    let dir = folder_of(path);
    let new = tempfile::Builder::new().prefix(HALF_MADE).tempfile_in(dir).map_err(at(path))?;
    if let Ok(facts) = new.as_file().metadata() {
        remove_left(dir, &facts);
    }
    Ok(new)
}

/// Writes `bytes` into a file that is still empty.
pub(crate) fn fill(new: &NewFile, bytes: &[u8]) -> Result<(), FileError> {
    new.as_file().write_all(bytes).map_err(at(new.path()))
}

/// Removes unfinished files and folders in `dir` that are more than an hour older than the new one of which these are the facts, and of the same person.
/// One that cannot be removed does no harm.
fn remove_left(dir: &Path, new: &fs::Metadata) {
    const HOUR: Duration = Duration::from_secs(60 * 60);
    let is_old = |facts: &fs::Metadata| {
        let (Ok(then), Ok(now)) = (facts.modified(), new.modified()) else { return false };
        now.duration_since(then).is_ok_and(|age| age > HOUR)
    };
    for found in fs::read_dir(dir).into_iter().flatten().flatten() {
        let left = is_half_made(&found.file_name().to_string_lossy())
            && found.metadata().is_ok_and(|facts| is_old(&facts) && owner(&facts) == owner(new));
        if left {
            let _ = wipe(&found.path());
        }
    }
}

#[cfg(unix)]
fn owner(facts: &fs::Metadata) -> u32 {
    std::os::unix::fs::MetadataExt::uid(facts)
}

/// On other systems a person's folders have files of their own alone.
#[cfg(not(unix))]
fn owner(_facts: &fs::Metadata) -> u32 {
    0
}

/// Syncs `new`, renames it to `path`, and syncs the folder.
pub(crate) fn put_in_place(new: NewFile, path: &Path) -> Result<(), FileError> {
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
