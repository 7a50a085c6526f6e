//! The system's folders for a person.

use crate::{ActionResult, DataFolder, Moment};
use std::path::{Component, Path, PathBuf};
use wire::Failure;
use wire::saved::{KnownFolder, Place};

/// The folder for saved files: the person's downloads, otherwise their home folder, otherwise the data folder.
pub(crate) fn saves(home: &Path) -> PathBuf {
    let places = [downloads(), dirs::home_dir()];
    places.into_iter().flatten().find(|place| place.is_dir()).unwrap_or_else(|| home.to_path_buf())
}

/// The person's downloads.
fn downloads() -> Option<PathBuf> {
    // A desktop that does not list its folders usually still has this one.
    let usual = || dirs::home_dir().map(|own| own.join("Downloads"));
    let named = std::env::var_os("XDG_DOWNLOAD_DIR").map(PathBuf::from).or_else(dirs::download_dir);
    named.or_else(usual)
}

/// Where a file lies, in terms that a person knows. `data` is the data folder.
pub fn place_of(file: &Path, data: &Path) -> Place {
    let known = [
        (KnownFolder::Data, Some(data.to_path_buf())),
        // A system that has no folder of its own for one of the others says that it is this one.
        (KnownFolder::Home, dirs::home_dir()),
        (KnownFolder::Downloads, downloads()),
        (KnownFolder::Documents, dirs::document_dir()),
        (KnownFolder::Desktop, dirs::desktop_dir()),
    ];
    let known = known.into_iter().filter_map(|(name, path)| Some((name, path?))).collect::<Vec<_>>();
    place_among(file, &known)
}

/// Where a file lies: in the innermost of the known folders around it, of equal ones in the first. In none of them, its folder's name.
fn place_among(file: &Path, known: &[(KnownFolder, PathBuf)]) -> Place {
    let folder = file.parent().unwrap_or(file);
    let around = known.iter().filter(|(_, path)| path.components().next().is_some() && folder.starts_with(path));
    let innermost = around.rev().max_by_key(|(_, path)| path.components().count());
    let (known, within) = match innermost {
        Some((known, path)) => (*known, names(folder.strip_prefix(path).unwrap_or(folder))),
        None => (KnownFolder::Other, names(Path::new(folder.file_name().unwrap_or(folder.as_os_str())))),
    };
    Place { known, within }
}

fn names(path: &Path) -> Vec<String> {
    let name = |part: Component<'_>| part.as_os_str().to_string_lossy().into_owned();
    path.components().map(name).collect()
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

#[cfg(test)]
mod tests {
    use super::*;

    fn place(file: &str) -> Place {
        let known = [
            (KnownFolder::Data, "/home/a/data"),
            (KnownFolder::Home, "/home/a"),
            (KnownFolder::Downloads, "/home/a/Descargas"),
            (KnownFolder::Documents, "/home/a"),
        ];
        place_among(Path::new(file), &known.map(|(known, path)| (known, PathBuf::from(path))))
    }

    #[test]
    fn a_file_lies_in_the_innermost_folder_that_the_person_knows() {
        let within = |known, names: &[&str]| Place { known, within: names.iter().map(|name| (*name).to_owned()).collect() };
        assert_eq!(place("/home/a/Descargas/report.pdf"), within(KnownFolder::Downloads, &[]));
        assert_eq!(place("/home/a/Descargas/card/1/card.png"), within(KnownFolder::Downloads, &["card", "1"]));
        assert_eq!(place("/home/a/data/backups/x.db"), within(KnownFolder::Data, &["backups"]));
        assert_eq!(place("/home/a/x.db"), within(KnownFolder::Home, &[]), "this system has no folder for documents");
        assert_eq!(place("/home/another/x.db"), within(KnownFolder::Other, &["another"]));
        assert_eq!(place("/x.db"), within(KnownFolder::Other, &["/"]));
    }
}
