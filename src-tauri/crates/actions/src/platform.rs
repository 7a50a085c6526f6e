//! Where things come from and go to outside the data folder: files that a person names, the folder for what is saved.

use crate::{ActionResult, DataFolder, Moment, refuse};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use exercises::file_fault::FileFault;
use exercises::id::EntryRef;
use std::path::{Path, PathBuf};
pub use store::WEB_VIEW;
use wire::Failure;
use wire::clinic::ReviewPage;
use wire::patient::CardSource;
use words::Locale;

/// Most bytes of a picture or card file.
pub const MAX_PICTURE: u64 = 20 * 1024 * 1024;
/// Most bytes of a sealed summary's file.
pub const MAX_SUMMARY: u64 = format::summary::MAX_SEALED as u64;

/// Reads a file that a person named, up to `most` bytes.
pub fn read(path: &Path, most: u64) -> ActionResult<Vec<u8>> {
    store::files::read(path, most).map_err(refuse::reading)
}

/// Reads what a clinic receives: a picture may be larger than a sealed file.
pub fn read_received(path: &Path) -> ActionResult<Vec<u8>> {
    let ending = path.extension().and_then(|ending| ending.to_str()).unwrap_or_default();
    let picture = ["png", "jpg", "jpeg"].iter().any(|known| ending.eq_ignore_ascii_case(known));
    read(path, if picture { MAX_PICTURE } else { MAX_SUMMARY })
}

/// Writes a file whole or not at all; the old one stays until the new one is safe.
pub fn write(path: &Path, bytes: &[u8]) -> ActionResult<()> {
    store::files::write(path, bytes).map_err(refuse::writing)
}

/// Writes several files; none takes its place before all of them are whole.
pub(crate) fn write_all(files: &[(PathBuf, Vec<u8>)]) -> ActionResult<()> {
    store::files::write_all(files).map_err(refuse::writing)
}

/// Refuses a path at which nothing could be written, before anything is done that only a written file makes good.
pub(crate) fn could_write(path: &Path) -> ActionResult<()> {
    store::files::could_write(path).map_err(refuse::writing)
}

/// Writes a new folder of files, whole or not at all; what is there already stays.
pub(crate) fn write_folder(dir: &Path, files: &[(&str, Vec<u8>)]) -> ActionResult<()> {
    store::files::write_folder(dir, files).map_err(refuse::writing)
}

/// Removes a file that this program wrote, if it is there.
pub(crate) fn remove(path: &Path) -> ActionResult<()> {
    store::files::remove(path).map_err(refuse::writing)
}

/// Bytes that the window sends as Base64.
pub fn from_base64(text: &str) -> ActionResult<Vec<u8>> {
    STANDARD.decode(text).map_err(|_| Failure::Internal { detail: "the window sent no Base64".into() })
}

/// Bytes as the window sends them.
pub fn to_base64(bytes: &[u8]) -> String {
    STANDARD.encode(bytes)
}

/// The card's bytes, whatever they came in: text, a picture of the code, a card file.
pub(crate) fn card_bytes(source: &CardSource) -> ActionResult<Vec<u8>> {
    match source {
        CardSource::Text(text) => format::card::from_text(text).map_err(refuse::card),
        CardSource::File(base64) => card_in_file(&from_base64(base64)?),
    }
}

fn card_in_file(bytes: &[u8]) -> ActionResult<Vec<u8>> {
    if is_picture(bytes) {
        let text = pictures::qr::read(bytes).map_err(refuse::picture)?;
        return format::card::from_text(&text).map_err(refuse::card);
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => format::card::from_text(text).map_err(refuse::card),
        Err(_) => Ok(bytes.to_vec()),
    }
}

/// Whether these are the first bytes of a PNG or JPEG picture.
pub(crate) fn is_picture(bytes: &[u8]) -> bool {
    bytes.starts_with(b"\x89PNG") || bytes.starts_with(&[0xFF, 0xD8, 0xFF])
}

/// The folder for what is saved: the person's downloads, else their own folder, else the data folder.
pub(crate) fn saves(home: &Path) -> PathBuf {
    let own = std::env::var_os("HOME").map(PathBuf::from);
    let named = std::env::var_os("XDG_DOWNLOAD_DIR").map(PathBuf::from);
    let downloads = named.or_else(|| own.as_ref().map(|own| own.join("Downloads")));
    [downloads, own].into_iter().flatten().find(|place| place.is_dir()).unwrap_or_else(|| home.to_path_buf())
}

/// A name in the folder for what is saved that is not taken: the day, and a number where there are several.
pub(crate) fn free_name(folder: &DataFolder, moment: &Moment, name: &str, ending: &str) -> PathBuf {
    let place = saves(&folder.dir());
    let day = moment.now.date();
    let name = |number: u32| match number {
        1 => place.join(format!("{name}-{day}{ending}")),
        _ => place.join(format!("{name}-{day}-{number}{ending}")),
    };
    (1..).map(name).find(|path| !path.exists()).unwrap_or_else(|| name(1))
}

/// Makes a folder that a person named, if it is not there yet.
pub fn folder(path: &Path) -> ActionResult<()> {
    store::files::make_folder(path).map_err(refuse::writing)
}

/// The language of the system, by the closest that there are texts in; else English.
pub fn locale() -> Locale {
    let names = ["LC_ALL", "LC_MESSAGES", "LANG"].into_iter();
    let tag = names.filter_map(|name| std::env::var(name).ok()).find(|value| !value.is_empty());
    tag.and_then(|tag| Locale::closest(&tag)).unwrap_or(Locale::En)
}

/// The texts of a language. A program built for tests has them in the made-up language where it is asked to.
pub fn words(locale: Locale) -> words::Words {
    words::Words::new(locale).in_pseudo(is_pseudo())
}

/// Whether texts are in the made-up language of the tests; never in a program as it is handed out.
pub fn is_pseudo() -> bool {
    cfg!(debug_assertions) && std::env::var_os("CARRYOVER_PSEUDO").is_some()
}

/// The data folder where none is named: the platform's own for this program.
pub fn default_home() -> PathBuf {
    let path = |name: &str| std::env::var_os(name).map(PathBuf::from).filter(|path| path.is_absolute());
    let data = if cfg!(windows) {
        path("APPDATA")
    } else if cfg!(target_vendor = "apple") {
        path("HOME").map(|home| home.join("Library/Application Support"))
    } else {
        path("XDG_DATA_HOME").or_else(|| path("HOME").map(|home| home.join(".local/share")))
    };
    data.unwrap_or_else(std::env::temp_dir).join("carryover")
}

/// A file that a person wrote and that cannot be understood.
pub fn not_understood(file: &str) -> impl FnOnce(FileFault) -> Failure {
    let file = file.to_owned();
    |fault| Failure::NotUnderstood { file, fault }
}

/// An alarm's name, as a plan file takes it to clear the alarm.
pub fn alarm_name(entry: EntryRef) -> String {
    format!("{}:{}", entry.log, entry.n)
}

/// A review as one JSON object: what the review holds, and whose it is. Without a summary its lists are empty.
pub fn review_json(page: &ReviewPage) -> String {
    let empty = serde_json::json!({
        "alarms": [], "adherence": [], "days": [], "pain": [], "balance": [], "activities": [], "barriers": [], "items": [],
    });
    let mut object = page.review.as_ref().map_or(empty, |review| serde_json::json!(review));
    let alarms = page.review.iter().flat_map(|review| &review.alarms);
    for (place, alarm) in alarms.enumerate() {
        object["alarms"][place]["name"] = serde_json::json!(alarm_name(alarm.entry));
    }
    object["code"] = serde_json::json!(page.code);
    object["today"] = serde_json::json!(page.today);
    object.to_string()
}
