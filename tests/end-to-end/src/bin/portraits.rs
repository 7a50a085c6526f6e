//! Opens the demo's windows one after the other and keeps pictures of their screens.
//!
//! `portraits HOMES OUT INSTANT SIDE`: the folder with the demo's data folders, the folder for the pictures, the moment that
//! the windows take for now, and `patient`, `clinic` or `both`.

use end_to_end::{Tour, Window};
use std::path::{Path, PathBuf};

const PHONE: (u32, u32) = (390, 844);
const SMALL: (u32, u32) = (360, 640);
const DESK: (u32, u32) = (1280, 800);

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [homes, out, at, side] = arguments.as_slice() else { panic!("portraits HOMES OUT INSTANT SIDE") };
    for (dark, phone, desk) in [(false, PHONE, DESK), (true, PHONE, DESK), (false, SMALL, PHONE), (true, SMALL, PHONE)] {
        let keep = |size: (u32, u32)| move |window: &Window, name: &str| picture(window, Path::new(out), name, dark, size);
        let tour = |size| (PathBuf::from(homes), at.clone(), size);
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

fn picture(window: &Window, out: &Path, name: &str, dark: bool, size: (u32, u32)) {
    let shade = if dark { "dark" } else { "light" };
    window.picture(&out.join(format!("{name}-{}x{}-{shade}.png", size.0, size.1)));
}
