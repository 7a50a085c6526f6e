//! The process that draws the page. It can end by itself, for example because the system is short of memory; the window would stay empty
//! until the program is quit. Everything that was recorded is in the database, so the page is simply opened again.

use std::cell::Cell;

use actions::clock;
use tauri::WebviewWindow;
use webkit2gtk::{WebProcessTerminationReason, WebViewExt};

/// The shortest time between two openings, in milliseconds. A process that ends again sooner was probably ended by the page itself, and
/// would end each time.
const LEAST_LIFE_MS: i64 = 10_000;

/// Opens `page`, the address of the program's first page, again whenever the process that draws it has ended by itself.
pub fn watch(window: &WebviewWindow, page: String) {
    let watching = window.with_webview(move |webview| {
        let opened = Cell::new(None);
        webview.inner().connect_web_process_terminated(move |view, reason| {
            let now = clock::awake_ms();
            let is_again = opened.get().is_some_and(|before| now - before < LEAST_LIFE_MS);
            if reason != WebProcessTerminationReason::TerminatedByApi && !is_again {
                opened.set(Some(now));
                // Not `reload`, which does nothing if the process ended before its first page.
                view.load_uri(&page);
            }
        });
    });
    if let Err(fault) = watching {
        eprintln!("the web view is not watched: {fault}");
    }
}
