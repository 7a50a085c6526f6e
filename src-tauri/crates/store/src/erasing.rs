//! The end of a data folder: everything of ours goes, nothing else does, and a program that is killed meanwhile finishes at
//! its next start.
//!
//! A mark is written first and removed last. Between the two the folder counts as erased, whatever is still in it.

use crate::files::{self, FileError, FileFault};
use std::path::Path;

/// The mark's name in the data folder.
const MARK: &str = ".carryover-erasing";
/// The mark while anything may still be there. A file of that name with other contents is somebody else's.
const EVERYTHING: &[u8] = b"everything in this folder that is Carryover's is being erased\n";
/// The mark when only the web view's folder is left.
const WEB_VIEW_ONLY: &[u8] = b"the web view's folder is being erased\n";
/// The folder in which the window's web view keeps what it keeps.
pub const WEB_VIEW: &str = "web-view";
/// SQLite's companions to a database, by the end of their names.
const COMPANIONS: [&str; 3] = ["-wal", "-shm", "-journal"];

/// Whether the web view of this data folder is running.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WebView {
    /// It is not: its folder goes with the rest.
    Closed,
    /// It is, and may write until it ends: its folder goes now as far as it can, and for good at the next start.
    Open,
}

/// From now on the folder counts as erased.
pub(crate) fn begin(dir: &Path) -> Result<(), FileError> {
    files::write(&dir.join(MARK), EVERYTHING)
}

/// Whether an erasing was begun and has not ended.
pub(crate) fn begun(dir: &Path) -> Result<bool, FileError> {
    Ok(stage(dir)?.is_some())
}

/// Ends an erasing that was begun, if one was: removes what is ours from `dir`, whose database is at `database` and closed.
/// Only for who holds the folder's lock.
pub(crate) fn end(dir: &Path, database: &Path, web_view: WebView) -> Result<(), FileError> {
    match stage(dir)? {
        None => return Ok(()),
        Some(Stage::Everything) => {
            files::remove(database)?;
            for companion in COMPANIONS {
                let mut name = database.as_os_str().to_owned();
                name.push(companion);
                files::remove(Path::new(&name))?;
            }
            files::sweep(dir)?;
            // What went must be gone before the mark says so.
            files::settle(dir)?;
        }
        Some(Stage::WebViewOnly) => {}
    }
    let folder = dir.join(WEB_VIEW);
    if web_view == WebView::Open {
        files::write(&dir.join(MARK), WEB_VIEW_ONLY)?;
        // A file that the web view holds may refuse to go: it goes at the next start.
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
    let mark = dir.join(MARK);
    match files::read(&mark, EVERYTHING.len() as u64) {
        Ok(bytes) if bytes == EVERYTHING => Ok(Some(Stage::Everything)),
        Ok(bytes) if bytes == WEB_VIEW_ONLY => Ok(Some(Stage::WebViewOnly)),
        // Nothing, or nothing of ours.
        Ok(_) => Ok(None),
        Err(error) => match error.fault {
            FileFault::NotFound | FileFault::NotAFile | FileFault::TooBig { .. } => Ok(None),
            _ => Err(error),
        },
    }
}
