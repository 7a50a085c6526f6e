//! An empty window of the same framework, for comparing what the program costs while nothing happens.

fn main() {
    tauri::Builder::default()
        .setup(|app| {
            let page = tauri::WebviewUrl::External("about:blank".parse()?);
            tauri::WebviewWindowBuilder::new(app, "main", page).inner_size(460.0, 844.0).build()?;
            Ok(())
        })
        .run(tauri::generate_context!())
        .expect("the system has a web view and a display to show it on");
}
