//! The folder that the shell embeds: its static files, and how it is written.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// Files by their path within the folder.
pub type Files = BTreeMap<PathBuf, Vec<u8>>;

/// Files of `ui` that are copied under their own name.
const PAGE: [&str; 3] = ["index.html", "faults.js", "start.js"];

/// Style sheets that the others depend on, in this order; the rest follow in the order of their names.
const FIRST_STYLES: [&str; 2] = ["tokens.css", "base.css"];

/// Everything except the wasm program: the page, one style sheet, and the assets.
pub fn still_files(ui: &Path) -> io::Result<Files> {
    let mut files = Files::new();
    for name in PAGE {
        files.insert(name.into(), fs::read(ui.join(name))?);
    }
    files.insert("style.css".into(), style(&ui.join("style"))?);
    files.append(&mut read_below(&ui.join("assets"), ui)?);
    Ok(files)
}

/// All files in a folder and below, with their paths relative to `root`.
pub fn read_below(folder: &Path, root: &Path) -> io::Result<Files> {
    let mut files = Files::new();
    for file in files_below(folder)? {
        let content = fs::read(&file)?;
        let name = file.strip_prefix(root).expect("the folder is root or below it").to_owned();
        files.insert(name, content);
    }
    Ok(files)
}

/// Joins all style sheets of the folder, so that a new one needs no entry anywhere.
fn style(folder: &Path) -> io::Result<Vec<u8>> {
    let mut sheets = files_below(folder)?;
    sheets.retain(|sheet| sheet.extension().is_some_and(|kind| kind == "css"));
    let rank = |sheet: &PathBuf| FIRST_STYLES.iter().position(|first| sheet.ends_with(first)).unwrap_or(FIRST_STYLES.len());
    sheets.sort_by_key(|sheet| (rank(sheet), sheet.clone()));
    let mut all = Vec::new();
    for sheet in sheets {
        let css = fs::read_to_string(&sheet)?;
        if sheet.ends_with(FIRST_STYLES[0]) {
            all.extend(schemes(&css).into_bytes());
        }
        all.extend(css.into_bytes());
        all.push(b'\n');
    }
    Ok(all)
}

/// The classes `in-light` and `in-dark`: the light and the dark colours of the tokens for a part of a page, whatever the system prefers.
fn schemes(tokens: &str) -> String {
    let (light, dark) = tokens.split_once("@media (prefers-color-scheme: dark)").unwrap_or((tokens, ""));
    let colours = |part: &str| {
        part.lines().map(str::trim).filter(|line| line.starts_with("--") && line.contains(": #")).collect::<String>()
    };
    let class = |name: &str, part: &str| format!(".in-{name} {{ color-scheme: {name}; {} }}\n", colours(part));
    class("light", light) + &class("dark", dark)
}

/// Makes the folder contain exactly these files. A file that already has the right contents is not written, so that nothing that
/// depends on it is rebuilt.
pub fn put(folder: &Path, files: &Files) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    for old in files_below(folder)? {
        if !files.contains_key(old.strip_prefix(folder).expect("it was found below the folder")) {
            fs::remove_file(old)?;
        }
    }
    for (name, content) in files {
        let path = folder.join(name);
        if fs::read(&path).is_ok_and(|there| there == *content) {
            continue;
        }
        if let Some(parent) = path.parent() {
            fs::create_dir_all(parent)?;
        }
        fs::write(path, content)?;
    }
    Ok(())
}

/// All files in a folder at any depth, ordered by name.
fn files_below(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            found.extend(files_below(&path)?);
        } else {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn unneeded_files_are_removed_and_unchanged_files_stay() {
        let folder = std::env::temp_dir().join(format!("bundler-{}", std::process::id()));
        let first = Files::from([("a.css".into(), b"a".to_vec()), ("fonts/b.woff2".into(), b"b".to_vec())]);
        put(&folder, &first).unwrap();
        let written = fs::metadata(folder.join("a.css")).unwrap().modified().unwrap();
        let second = Files::from([("a.css".into(), b"a".to_vec()), ("c.js".into(), b"c".to_vec())]);
        put(&folder, &second).unwrap();
        let names: Vec<_> =
            files_below(&folder).unwrap().iter().map(|f| f.strip_prefix(&folder).unwrap().to_owned()).collect();
        assert_eq!(names, [PathBuf::from("a.css"), PathBuf::from("c.js")]);
        assert_eq!(fs::metadata(folder.join("a.css")).unwrap().modified().unwrap(), written);
        fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn tokens_come_before_base_and_both_before_the_rest() {
        let ui = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        let sheet = String::from_utf8(style(&ui.join("style")).unwrap()).unwrap();
        let at = |text: &str| sheet.find(text).unwrap_or_else(|| panic!("{text} is in the sheet"));
        assert!(at("--paper:") < at("box-sizing"));
    }
}
