//! Erases a data folder: removes everything that the program stored in it and nothing else. If the program is killed meanwhile, it
//! finishes at its next start.
//!
//! A marker file is written first and removed last. As long as it exists, the folder counts as erased, whatever is still in it.

use crate::backups::{self, COMPANIONS, beside};
use crate::files::{self, FileError, FileFault};
use std::path::Path;

/// The marker's file name in the data folder.
const MARK: &str = ".carryover-erasing";
/// The database's name in place of a marker, for which a full disk has no room.
const RENAMED: &str = ".carryover-erasing.db";
/// The marker's contents while anything may still be left. A file of that name with other contents is not ours.
const EVERYTHING: &[u8] = b"everything in this folder that is Carryover's is being erased\n";
/// The marker's contents when only the web view's folder is left.
const WEB_VIEW_ONLY: &[u8] = b"the web view's folder is being erased\n";
/// The folder in which the window's web view stores its data.
pub const WEB_VIEW: &str = "web-view";

/// Whether the web view of this data folder is running.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WebView {
    /// It is not running: its folder is removed with the rest.
    Closed,
    /// It is running and may still write: its folder is removed now as far as possible, and completely at the next start.
    Open,
}

/// Whether this is the marker's name.
pub(crate) fn is_mark(name: &str) -> bool {
    name == MARK || name == RENAMED
}

/// Writes the marker: from now on the folder counts as erased.
///
/// On a full disk there is no room for it; then the database at `path`, which must be closed, gets another name, which says the same.
pub(crate) fn begin(dir: &Path, path: &Path) -> Result<(), FileError> {
    match files::write(&dir.join(MARK), EVERYTHING) {
        Err(FileError { fault: FileFault::NoRoom, .. }) => files::rename(path, &dir.join(RENAMED)),
        written => written,
    }
}

/// Whether erasing was begun and is not finished.
pub(crate) fn begun(dir: &Path) -> Result<bool, FileError> {
    Ok(stage(dir)?.is_some())
}

/// Finishes erasing, if it was begun: removes our files from `dir`. `database` is the database's path; it must be closed. The caller
/// must hold the folder's lock.
pub(crate) fn end(dir: &Path, database: &Path, web_view: WebView) -> Result<(), FileError> {
    match stage(dir)? {
        None => return Ok(()),
        Some(Stage::Everything) => {
            // Overwritten before they are removed, because the bytes of a removed file stay on the disk.
            files::wipe(database)?;
            for companion in COMPANIONS {
                files::wipe(&beside(database, companion))?;
            }
            let (backups, folder) = backups::all(dir, database)?;
            backups.iter().try_for_each(|path| files::wipe(path))?;
            // What a person saved in it stays.
            files::remove_if_empty(&folder);
            files::sweep(dir)?;
            files::wipe(&dir.join(RENAMED))?;
            // The removals must be on the disk before the marker says so.
            files::settle(dir)?;
        }
        Some(Stage::WebViewOnly) => {}
    }
    let folder = dir.join(WEB_VIEW);
    if web_view == WebView::Open {
        match files::write(&dir.join(MARK), WEB_VIEW_ONLY) {
            Err(FileError { fault: FileFault::NoRoom, .. }) => files::remove(&dir.join(MARK))?,
            written => written?,
        }
        // A file that the web view has open may be impossible to remove; it is removed at the next start.
        let _ = files::remove_tree(&folder);
        return Ok(());
    }
    files::remove_tree(&folder)?;
    files::settle(dir)?;
    files::remove(&dir.join(MARK))
}

enum Stage {
    Everything,
    WebViewOnly,
}

fn stage(dir: &Path) -> Result<Option<Stage>, FileError> {
    if files::size(&dir.join(RENAMED))?.is_some() {
        return Ok(Some(Stage::Everything));
    }
    let mark = dir.join(MARK);
    match files::read(&mark, EVERYTHING.len() as u64) {
        Ok(bytes) if bytes == EVERYTHING => Ok(Some(Stage::Everything)),
        Ok(bytes) if bytes == WEB_VIEW_ONLY => Ok(Some(Stage::WebViewOnly)),
        // The file has contents that are not ours.
        Ok(_) => Ok(None),
        Err(error) => match error.fault {
            FileFault::NotFound | FileFault::NotAFile | FileFault::TooBig { .. } => Ok(None),
            _ => Err(error),
        },
    }
}
