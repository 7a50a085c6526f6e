//! The page for when the front end has crashed. It has its texts in every language, because the front end can no longer provide
//! them.

use std::error::Error;
use std::path::Path;

use crate::dist::Files;

/// The place in the page where the texts are inserted.
const PLACE: &str = "<!-- crash page: a part for each language -->";

/// The page's texts, in this order.
const TEXTS: [&str; 6] =
    ["crash-title", "crash-what", "crash-open-again", "crash-details", "crash-could-not-load", "crash-refused"];

/// Inserts a part for each language into `index.html`; `faults.js` shows the part of the page's language.
pub fn fill_in(files: &mut Files, ui: &Path) -> Result<(), Box<dyn Error>> {
    let locales = ui.join("../src-tauri/crates/words/locales");
    let texts = text_generator::texts_of(&locales, &TEXTS).map_err(|faults| faults.join("\n"))?;
    let page = files.get_mut(Path::new("index.html")).ok_or("there is no index.html")?;
    let before = String::from_utf8(std::mem::take(page))?;
    if !before.contains(PLACE) {
        return Err(format!("index.html has no place for the texts: {PLACE}").into());
    }
    let parts: Vec<String> = texts.iter().map(|(tag, texts)| part(tag, texts)).collect();
    *page = before.replace(PLACE, &parts.join("\n    ")).into_bytes();
    Ok(())
}

/// The part for one language.
fn part(tag: &str, texts: &[String]) -> String {
    let texts: Vec<String> = texts.iter().map(|text| escaped(text)).collect();
    let [title, what, open_again, details, could_not_load, refused] = texts.as_slice() else { return String::new() };
    format!(
        r#"<div lang="{tag}" data-could-not-load="{could_not_load}" data-refused="{refused}" hidden><h1>{title}</h1><p>{what}</p><a class="button" href="/">{open_again}</a><p class="small">{details}</p></div>"#
    )
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dist;

    #[test]
    fn the_page_has_its_texts_in_every_language() {
        let ui = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        let mut files = dist::still_files(ui).unwrap();
        fill_in(&mut files, ui).unwrap();
        let page = String::from_utf8(files[Path::new("index.html")].clone()).unwrap();
        for part in
            [r#"<div lang="en" "#, r#"<div lang="es-MX" "#, "This window has stopped", "Esta ventana ha dejado de funcionar"]
        {
            assert!(page.contains(part), "{part} in {page}");
        }
        assert!(!page.contains(PLACE));
    }

    #[test]
    fn special_characters_in_a_text_are_escaped() {
        let texts = ["a < b", "\"c\" & d", "e", "f", "{address}", "g"].map(str::to_owned);
        let part = part("en", &texts);
        assert!(
            part.contains("a &lt; b") && part.contains("&quot;c&quot; &amp; d") && part.contains(r#"="{address}""#),
            "{part}"
        );
    }
}
