//! Opens the data folder, and says if it is a copy.

use crate::args::Args;
use crate::out::Out;
use actions::{ActionResult, DataFolder, platform};
use std::path::Path;

/// Opens the data folder of the command line.
pub fn open(args: &Args, out: &mut Out) -> ActionResult<DataFolder> {
    open_at(&args.home()?, false, out)
}

/// Opens the data folder at `home`, or creates it if `create` is true. If it is a copy or was put back, that is said once, on stderr.
pub fn open_at(home: &Path, create: bool, out: &mut Out) -> ActionResult<DataFolder> {
    let folder = DataFolder::open_remembering(home, create, platform::remembered().as_deref())?;
    say_if_copied(&folder, out);
    Ok(folder)
}

/// Says on stderr that the folder is a copy, if it is one.
pub fn say_if_copied(folder: &DataFolder, out: &mut Out) {
    if let Some((role, copied)) = folder.role().zip(folder.copied()) {
        out.note(out.words.data_copied(role, copied));
    }
}
