//! Reads a printed file with programs of poppler-utils, which know nothing of how it was made, and codes with zbarimg.

use paper::Paper;
use std::path::Path;
use std::process::Command;

/// Runs a program on the file: its arguments before and after the file's name. What it wrote to standard output.
fn run(program: &str, before: &[&str], bytes: &[u8], after: &[&str]) -> String {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("paper.pdf");
    std::fs::write(&file, bytes).expect("a file");
    output(program, before, &file, after)
}

fn output(program: &str, before: &[&str], file: &Path, after: &[&str]) -> String {
    let run = Command::new(program).args(before).arg(file).args(after).output();
    let done = run.unwrap_or_else(|error| panic!("{program} (tests/packages.txt): {error}"));
    assert!(done.status.success(), "{program}: {}", String::from_utf8_lossy(&done.stderr));
    // pdfinfo writes the titles of headings in Latin-1 whatever it is asked for.
    String::from_utf8_lossy(&done.stdout).into_owned()
}

/// All text in the order of drawing.
pub fn text(bytes: &[u8]) -> String {
    run("pdftotext", &["-raw", "-enc", "UTF-8"], bytes, &["-"])
}

/// The structure with its texts, an element a line.
pub fn structure(bytes: &[u8]) -> String {
    run("pdfinfo", &["-enc", "UTF-8", "-struct-text"], bytes, &[])
}

/// How many elements of a kind the structure has.
pub fn count(structure: &str, kind: &str) -> usize {
    structure.lines().filter(|line| element(line) == Some(kind)).count()
}

/// The kind of element of a line.
fn element(line: &str) -> Option<&str> {
    let line = line.trim_start();
    let kind = line.split([' ', ':']).next().unwrap_or_default();
    (!line.starts_with('"') && !line.starts_with('/') && kind.chars().all(char::is_alphanumeric)).then_some(kind)
}

/// The headings with their levels.
pub fn headings(structure: &str) -> Vec<(u8, String)> {
    let mut headings: Vec<(u8, usize, String)> = Vec::new();
    let mut open = false;
    for line in structure.lines() {
        let indent = line.len() - line.trim_start().len();
        if let Some(text) = line.trim().strip_prefix('"') {
            let text = text.strip_suffix('"').unwrap_or(text);
            match headings.last_mut().filter(|heading| open && indent > heading.1) {
                Some(heading) => heading.2.push_str(text),
                None => open = false,
            }
        } else if let Some(level) =
            element(line).and_then(|kind| kind.strip_prefix('H')).and_then(|level| level.parse().ok())
        {
            headings.push((level, indent, String::new()));
            open = true;
        } else if element(line).is_some() {
            open = false;
        }
    }
    headings.into_iter().map(|(level, _, text)| (level, text)).collect()
}

/// The texts of each row's cells, those of all tables one after the other.
pub fn rows(structure: &str) -> Vec<Vec<String>> {
    let mut rows: Vec<Vec<String>> = Vec::new();
    // How far the cell is indented whose texts are being read.
    let mut cell = None;
    for line in structure.lines() {
        let indent = line.len() - line.trim_start().len();
        if let Some(text) = line.trim().strip_prefix('"') {
            let last = rows.last_mut().and_then(|row| row.last_mut()).filter(|_| cell.is_some_and(|cell| indent > cell));
            if let Some(said) = last {
                // Texts of two elements are two words.
                said.push_str(text.strip_suffix('"').unwrap_or(text));
                said.push(' ');
            }
        } else if let Some(kind) = element(line) {
            let begins = matches!(kind, "TH" | "TD");
            match rows.last_mut() {
                Some(row) if begins => row.push(String::new()),
                _ if kind == "TR" => rows.push(Vec::new()),
                _ => {}
            }
            cell = if begins { Some(indent) } else { cell.filter(|cell| indent > *cell) };
        }
    }
    rows
}

/// What stands in the place of each drawing, as the file says it (ISO 32000-1, 7.9.2.2: text strings).
pub fn drawings(bytes: &[u8]) -> Vec<String> {
    let places = (0..bytes.len()).filter(|at| bytes[*at..].starts_with(b"/Alt"));
    places.filter_map(|at| text_string(&bytes[at + 4..])).collect()
}

fn text_string(bytes: &[u8]) -> Option<String> {
    let bytes = bytes.trim_ascii_start();
    let raw: Vec<u8> = match bytes.first()? {
        b'<' => {
            let end = bytes.iter().position(|byte| *byte == b'>')?;
            bytes[1..end]
                .chunks(2)
                .map(|pair| u8::from_str_radix(std::str::from_utf8(pair).ok()?, 16).ok())
                .collect::<Option<_>>()?
        }
        b'(' => {
            let mut raw = Vec::new();
            let mut letters = bytes[1..].iter();
            let mut depth = 0;
            while let Some(letter) = letters.next() {
                match letter {
                    b'\\' => raw.extend(letters.next()),
                    b')' if depth == 0 => break,
                    other => {
                        depth += i32::from(*other == b'(') - i32::from(*other == b')');
                        raw.push(*other);
                    }
                }
            }
            raw
        }
        _ => return None,
    };
    match raw.strip_prefix(b"\xFE\xFF") {
        Some(wide) => {
            let units: Vec<u16> = wide.chunks_exact(2).map(|pair| u16::from_be_bytes([pair[0], pair[1]])).collect();
            String::from_utf16(&units).ok()
        }
        None => Some(raw.into_iter().map(char::from).collect()),
    }
}

/// Checks what PDF/UA-1 asks of the file as a whole: title, language, structure, its own mark, and every font in it.
pub fn as_pdf_ua(bytes: &[u8], title: &str, language: &str, paper: Paper) {
    let about = run("pdfinfo", &["-enc", "UTF-8"], bytes, &[]);
    let line = |name: &str| about.lines().find_map(|line| line.strip_prefix(name)).unwrap_or_default().trim().to_owned();
    assert_eq!(line("Title:"), title);
    assert_eq!(line("Tagged:"), "yes");
    let size = line("Page size:");
    assert!(size.contains(if paper == Paper::A4 { "A4" } else { "letter" }), "{size}");
    let raw = String::from_utf8_lossy(bytes);
    assert!(raw.contains(&format!("/Lang({language})")) || raw.contains(&format!("/Lang ({language})")), "the language");
    assert!(raw.contains("/DisplayDocTitle true"));
    let said = run("pdfinfo", &["-meta"], bytes, &[]);
    assert!(said.contains("<pdfuaid:part>1</pdfuaid:part>") || said.contains("pdfuaid:part=\"1\""), "{said}");
    let fonts = run("pdffonts", &[], bytes, &[]);
    let fonts: Vec<&str> = fonts.lines().skip(2).collect();
    assert!(!fonts.is_empty() && fonts.iter().all(|font| font.contains("Identity-H       yes yes yes")), "{fonts:?}");
}

/// Checks that every word is on its page, away from the edges that printers cannot reach; the number of pages.
pub fn nothing_is_cut(bytes: &[u8]) -> usize {
    const EDGE: f64 = 12.0;
    // Where poppler puts a text from right to left that stands for other signs.
    const NOWHERE: &str = "xMin=\"0.000000\"";
    let boxes = run("pdftotext", &["-bbox"], bytes, &["-"]);
    let value = |line: &str, name: &str| -> f64 {
        let (_, rest) = line.split_once(&format!("{name}=\"")).unwrap_or_else(|| panic!("{name} in {line}"));
        rest.split('"').next().and_then(|number| number.parse().ok()).expect("a number")
    };
    let (mut pages, mut size) = (0, (0.0, 0.0));
    for line in boxes.lines().map(str::trim) {
        if line.starts_with("<page ") {
            pages += 1;
            size = (value(line, "width"), value(line, "height"));
        } else if line.starts_with("<word ") && !line.contains(NOWHERE) {
            let far = value(line, "xMax") <= size.0 - EDGE && value(line, "yMax") <= size.1 - EDGE;
            assert!(far && value(line, "xMin") >= EDGE && value(line, "yMin") >= EDGE, "page {pages}: {line}");
        }
    }
    pages
}

/// The texts of all codes on all pages, printed at 300 dots per inch in black and white.
pub fn codes(bytes: &[u8]) -> Vec<String> {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("paper.pdf");
    std::fs::write(&file, bytes).expect("a file");
    let to = folder.path().join("page");
    output("pdftoppm", &["-r", "300", "-mono"], &file, &[to.to_str().expect("a path")]);
    let mut pages: Vec<_> =
        std::fs::read_dir(folder.path()).expect("pages").map(|page| page.expect("a page").path()).collect();
    pages.retain(|page| page.extension().is_some_and(|ending| ending == "pbm"));
    pages.sort();
    let read = |page: &std::path::PathBuf| {
        // It ends with 4 for a page without a code.
        let done = Command::new("zbarimg").args(["-q", "--raw", "-Sdisable", "-Sqr.enable"]).arg(page).output();
        let done = done.unwrap_or_else(|error| panic!("zbarimg (tests/packages.txt): {error}"));
        String::from_utf8(done.stdout).expect("UTF-8")
    };
    pages.iter().map(read).collect::<String>().lines().map(str::to_owned).collect()
}
