//! The system's folders for a person.

use crate::{ActionResult, DataFolder, Moment};
use std::path::{Path, PathBuf};
use wire::Failure;

/// The folder for saved files: the person's downloads, otherwise their home folder, otherwise the data folder.
pub(crate) fn saves(home: &Path) -> PathBuf {
    // A desktop that does not list its folders usually still has this one.
    let usual = || dirs::home_dir().map(|own| own.join("Downloads"));
    let named = std::env::var_os("XDG_DOWNLOAD_DIR").map(PathBuf::from).or_else(dirs::download_dir);
    let places = [named.or_else(usual), dirs::home_dir()];
    places.into_iter().flatten().find(|place| place.is_dir()).unwrap_or_else(|| home.to_path_buf())
}

/// An unused name in the folder for saved files: with the day, and a number if necessary.
pub(crate) fn free_name(folder: &DataFolder, moment: &Moment, name: &str, ending: &str) -> PathBuf {
    let place = saves(&folder.dir());
    let day = moment.now.date();
    let name = |number: u32| match number {
        1 => place.join(format!("{name}-{day}{ending}")),
        _ => place.join(format!("{name}-{day}-{number}{ending}")),
    };
    (1..).map(name).find(|path| !path.exists()).unwrap_or_else(|| name(1))
}

/// The folder of the system in which programs remember what belongs to this machine alone; `None` if the system names none.
pub fn remembered() -> Option<PathBuf> {
    dirs::state_dir().or_else(dirs::data_local_dir)
}

/// The data folder if none is named: the platform's own folder for this program. Never one that others share, such as the temporary one.
///
/// # Errors
/// [`Failure::HomeUnnamed`] if the system names none.
pub fn default_home() -> ActionResult<PathBuf> {
    dirs::data_dir().map(|data| data.join("carryover")).ok_or(Failure::HomeUnnamed)
}
