//! The system's dialogue for choosing a folder, where the page has none of its own: the dialogue that the web view of Linux opens for a page
//! lets files be chosen, even if the page asks for a folder.

use std::path::PathBuf;

use tauri::AppHandle;
use words::Words;

/// Lets the person choose a folder; `None` if they choose none.
#[cfg(target_os = "linux")]
pub async fn choose(app: &AppHandle, words: Words) -> Option<PathBuf> {
    use tauri::async_runtime::channel;
    let (said, mut answer) = channel(1);
    let of = app.clone();
    let asked = app.run_on_main_thread(move || native::show(&of, words, move |chosen| drop(said.try_send(chosen))));
    match asked {
        Ok(()) => answer.recv().await.flatten(),
        Err(_) => None,
    }
}

/// Elsewhere the page chooses folders as it chooses files.
#[cfg(not(target_os = "linux"))]
pub async fn choose(_app: &AppHandle, _words: Words) -> Option<PathBuf> {
    None
}

#[cfg(target_os = "linux")]
mod native {
    use std::cell::RefCell;
    use std::path::PathBuf;
    use std::rc::Rc;

    use gtk::prelude::{FileChooserExt, NativeDialogExt};
    use gtk::{FileChooserAction, FileChooserNative, ResponseType};
    use tauri::AppHandle;
    use words::{Key, Words};

    use crate::window;

    /// Shows the dialogue, and calls `then` once it is closed.
    pub fn show(app: &AppHandle, words: Words, then: impl Fn(Option<PathBuf>) + 'static) {
        let parent = window::native(app);
        let title = words.text(Key::ChooseFolder);
        let dialog = FileChooserNative::new(Some(title), parent.as_ref(), FileChooserAction::SelectFolder, None, None);
        // The dialogue lives as long as somebody holds it: until it answers.
        let held = Rc::new(RefCell::new(Some(dialog.clone())));
        dialog.connect_response(move |dialog, response| {
            then(dialog.filename().filter(|_| response == ResponseType::Accept));
            dialog.hide();
            held.borrow_mut().take();
        });
        dialog.show();
    }
}
