//! Files that the person chooses.

use js_sys::Promise;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use wasm_bindgen_futures::JsFuture;
use web_sys::{File, FileReader, HtmlInputElement};
use wire::Failure;

/// Largest file that is read into the window, in bytes: a phone's photo has about a quarter of that. A larger picture is not decoded.
const MAX_BYTES: u64 = 20 * 1024 * 1024;

/// The files that were chosen in a field.
pub fn chosen(field: &HtmlInputElement) -> Vec<File> {
    let Some(files) = field.files() else { return Vec::new() };
    (0..files.length()).filter_map(|place| files.get(place)).collect()
}

/// A file's bytes in Base64.
///
/// # Errors
/// The file is too large or cannot be read.
pub async fn base64(file: &File) -> Result<String, Failure> {
    base64_of_at_most(file, MAX_BYTES).await
}

/// A file's text.
///
/// # Errors
/// The file is too large, cannot be read, or is no text.
pub async fn text(file: &File) -> Result<String, Failure> {
    if file.size() > MAX_BYTES as f64 {
        return Err(Failure::FileTooBig { file: file.name(), most: MAX_BYTES });
    }
    let unreadable = |_| Failure::FileUnreadable { file: file.name() };
    let text = JsFuture::from(file.text()).await.map_err(unreadable)?;
    text.as_string().ok_or_else(|| Failure::FileUnreadable { file: file.name() })
}

/// The bytes of a file of at most `most` bytes in Base64.
///
/// # Errors
/// The file is larger or cannot be read.
pub async fn base64_of_at_most(file: &File, most: u64) -> Result<String, Failure> {
    if file.size() > most as f64 {
        return Err(Failure::FileTooBig { file: file.name(), most });
    }
    let unreadable = |_| Failure::FileUnreadable { file: file.name() };
    let address = JsFuture::from(read(file)).await.map_err(unreadable)?;
    let address = address.as_string().unwrap_or_default();
    // A data address is "data:<kind>;base64,<bytes>"; an empty file has no comma in some web views.
    Ok(address.split_once(',').map_or_else(String::new, |(_, bytes)| bytes.to_owned()))
}

/// Reads a file as a data address.
fn read(file: &File) -> Promise {
    Promise::new(&mut |done, failed| {
        let Ok(reader) = FileReader::new() else {
            let _ = failed.call0(&JsValue::NULL);
            return;
        };
        let of = reader.clone();
        let settle = Closure::once_into_js(move || match of.result() {
            Ok(address) if !address.is_null() => done.call1(&JsValue::NULL, &address),
            _ => failed.call0(&JsValue::NULL),
        });
        reader.set_onloadend(Some(settle.unchecked_ref()));
        // If reading cannot be started, the promise is settled above.
        let _ = reader.read_as_data_url(file);
    })
}
