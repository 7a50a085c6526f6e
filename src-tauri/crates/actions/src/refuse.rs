//! Turns the errors of other crates into failures for the screen: a code and its facts.

use format::card::CardFault;
use pictures::PictureError;
use std::path::Path;
use store::StoreError;
use store::files::{FileError, FileFault};
use wire::Failure;

/// The failure for an error of the store in the data folder `home`.
pub(crate) fn store(home: &Path) -> impl Fn(StoreError) -> Failure {
    let home = home.display().to_string();
    move |error| {
        let home = home.clone();
        match error {
            StoreError::NotThere { .. } => Failure::HomeMissing { home },
            StoreError::NotAFolder { .. } => Failure::HomeIsFile { home },
            StoreError::ReadOnly { .. } | StoreError::WriteRefused => Failure::HomeReadOnly { home },
            StoreError::OpenToOthers { .. } => Failure::HomeOpenToOthers { home },
            StoreError::InUse { .. } | StoreError::Busy => Failure::HomeInUse { home },
            StoreError::Foreign { .. } => Failure::HomeForeign { home },
            StoreError::Newer { .. } => Failure::HomeNewer { home },
            StoreError::Damaged { .. } | StoreError::Corrupt { .. } => Failure::HomeDamaged { home },
            StoreError::DiskFull => Failure::HomeFull { home },
            StoreError::DiskFault { .. } => Failure::HomeDisk { home },
            StoreError::File(error) => reading(error),
            other => internal(other),
        }
    }
}

/// The failure for a file that a person wanted to be read.
pub(crate) fn reading(error: FileError) -> Failure {
    let file = error.path.display().to_string();
    match error.fault {
        FileFault::NotFound => Failure::FileMissing { file },
        FileFault::TooBig { cap } => Failure::FileTooBig { file, most: cap },
        FileFault::Exposed => Failure::FileExposed { file },
        _ => Failure::FileUnreadable { file },
    }
}

/// The failure for a file that a person wanted to be written.
pub(crate) fn writing(error: FileError) -> Failure {
    let file = error.path.display().to_string();
    match error.fault {
        FileFault::Occupied => Failure::FolderOccupied { folder: file },
        _ => Failure::FileUnwritable { file },
    }
}

/// The failure for a card's bytes.
pub(crate) fn card(fault: CardFault) -> Failure {
    match fault {
        CardFault::NotACard => Failure::CardForeign,
        CardFault::TooBig { .. } => Failure::CardTooBig,
        CardFault::Cut => Failure::CardCut,
        CardFault::Surplus | CardFault::Damaged | CardFault::Malformed { .. } => Failure::CardDamaged,
        CardFault::NewerVersion { found } => Failure::CardNewer { found, known: format::card::VERSION },
        CardFault::UnknownRecipient { found } => Failure::CardNewer { found, known: format::card::VERSION },
    }
}

/// The failure for a picture.
pub(crate) fn picture(error: PictureError) -> Failure {
    match error {
        PictureError::NoCode | PictureError::SeveralCodes { .. } => Failure::NoCode,
        PictureError::TooManyPixels { most, .. } => too_big(most),
        PictureError::TooLong { .. } => too_big(pictures::qr::MAX_PIXELS),
        PictureError::FileTooBig { .. } | PictureError::TextTooBig { .. } => Failure::CardTooBig,
        PictureError::NotAPicture { .. } => Failure::NotAPicture,
    }
}

/// The failure for a picture with more pixels than `most`.
fn too_big(most: u64) -> Failure {
    Failure::PictureTooBig { most: u16::try_from(most / 1_000_000).unwrap_or(u16::MAX) }
}

/// The failure for a fault of the program itself.
pub(crate) fn internal(error: impl std::fmt::Display) -> Failure {
    Failure::Internal { detail: error.to_string() }
}
