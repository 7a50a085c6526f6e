//! Opens the demo's windows one after the other and takes pictures of their screens.
//!
//! - `portraits story HOMES OUT FIRST AT SIDE`: one picture for each part of the story
//! - `portraits all HOMES OUT FIRST AT SIDE`: every screen, light and dark, at two sizes
//! - `portraits picture HOMES OUT FIRST AT`: the pictures of README.md
//!
//! HOMES is the folder with the demo's data folders, OUT the one for the pictures, FIRST the moment of the first visit, AT the time
//! that the windows show, SIDE `patient`, `clinic` or `both`.

use end_to_end::{Panel, Part, Story, Tour, Window, panels};
use std::cell::RefCell;
use std::path::{Path, PathBuf};
use words::{Key, Locale, Words};

const PHONE: (u32, u32) = (390, 844);
const SMALL: (u32, u32) = (360, 640);
const DESK: (u32, u32) = (1280, 800);
/// Size of a screen in README.md's picture: three of them are shown 800 pixels wide, and must remain legible.
const PANEL: (u32, u32) = (340, 704);

/// The three panels of README.md's picture, each with its caption.
const PANELS: [(Part, &str); 3] = [
    (Part::PlanCard, "The clinic hands over a code"),
    (Part::GuidedHold, "The phone guides a hold"),
    (Part::Review, "The next visit starts with what happened"),
];

/// A phone shows no scroll bars while nothing moves.
const NO_SCROLLBARS: &str = "const style = new CSSStyleSheet(); style.replaceSync('* { scrollbar-width: none }');
    document.adoptedStyleSheets = [style]; return true";

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match arguments.as_slice() {
        ["story", homes, out, first, at, side] => story(&told(homes, first, at), Path::new(out), side),
        ["all", homes, out, _, at, side] => all(homes, Path::new(out), at, side),
        ["picture", homes, out, first, at] => picture(&told(homes, first, at), Path::new(out)),
        _ => panic!("portraits story|all|picture HOMES OUT FIRST AT [SIDE]"),
    }
}

fn told(homes: &str, first: &str, at: &str) -> Story<'static> {
    Story {
        homes: PathBuf::from(homes),
        first: first.to_owned(),
        at: at.to_owned(),
        zone: None,
        phone: PHONE,
        desk: DESK,
        dark: false,
        at_part: &|_, _| (),
    }
}

fn story(story: &Story<'_>, out: &Path, side: &str) {
    let keep = |window: &Window, part: Part| {
        settle(window, part);
        if side == "both" || part.at_the_clinic() == (side == "clinic") {
            window.picture(&out.join(part.file_name()));
        }
    };
    Story { at_part: &keep, ..story.clone() }.whole();
}

fn all(homes: &str, out: &Path, at: &str, side: &str) {
    for (dark, phone, desk) in [(false, PHONE, DESK), (true, PHONE, DESK), (false, SMALL, PHONE), (true, SMALL, PHONE)] {
        let keep = |size: (u32, u32)| move |window: &Window, name: &str| screen(window, out, name, dark, size);
        let tour = |size| (PathBuf::from(homes), at.to_owned(), size);
        if side != "clinic" {
            let (homes, at, size) = tour(phone);
            let tour = Tour { homes, at, size, dark, pseudo: false, at_screen: &keep(size) };
            tour.patients_side();
        }
        if side != "patient" {
            let (homes, at, size) = tour(desk);
            let tour = Tour { homes, at, size, dark, pseudo: false, at_screen: &keep(size) };
            tour.clinics_side();
        }
    }
}

fn screen(window: &Window, out: &Path, name: &str, dark: bool, size: (u32, u32)) {
    let shade = if dark { "dark" } else { "light" };
    window.picture(&out.join(format!("{name}-{}x{}-{shade}.png", size.0, size.1)));
}

/// Waits for the moment at which a part looks best: for a hold, when half of it is over.
fn settle(window: &Window, part: Part) {
    if part == Part::GuidedHold {
        window.see(Words::new(Locale::En).text(Key::Halfway));
    }
}

/// Takes the same three screens of one patient, light and dark.
fn picture(story: &Story<'_>, out: &Path) {
    for (dark, shade) in [(false, "light"), (true, "dark")] {
        let screens = RefCell::new(Vec::new());
        let keep = |window: &Window, part: Part| {
            settle(window, part);
            window.ask(NO_SCROLLBARS, &[]);
            if let Some((_, caption)) = PANELS.iter().find(|(shown, _)| *shown == part) {
                let file = std::env::temp_dir().join(format!("panel-{}.png", std::process::id()));
                window.picture(&file);
                let picture = std::fs::read(&file).expect("it was just written");
                std::fs::remove_file(&file).expect("it can be removed");
                screens.borrow_mut().push(Panel { picture, caption: (*caption).to_owned() });
            }
        };
        Story { phone: PANEL, desk: PANEL, dark, at_part: &keep, ..story.clone() }.whole();
        panels(&screens.into_inner(), dark, &out.join(format!("picture-{shade}.png")));
    }
}
