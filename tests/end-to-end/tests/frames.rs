//! A sealed summary shown as codes in the patient's window: an independent reader reads each code from a picture of the screen, and
//! the clinic's window accepts the pictures in any order.

use end_to_end::scenes::{FOUR_WEEKS_ON, TAKEN, ZONE};
use end_to_end::{Desktop, Window};
use format::frames::{Gathered, read};
use std::path::{Path, PathBuf};
use std::process::Command;

fn patient(desktop: &Desktop) -> Window {
    desktop.open("patient").at(FOUR_WEEKS_ON).zone(ZONE).dark().start()
}

fn show(window: &Window) {
    window.press("Record");
    window.press("For the visit");
    window.see("What you share");
    window.press("Show it as codes");
}

/// What an independent reader finds in the picture.
#[track_caller]
fn another_reader(picture: &Path) -> String {
    let read = Command::new("zbarimg").args(["--quiet", "--raw", "-Sdisable", "-Sqrcode.enable"]).arg(picture).output();
    let read = read.expect("zbarimg is installed (tests/packages.txt)");
    assert!(read.status.success(), "no code is read from {}", picture.display());
    String::from_utf8(read.stdout).expect("text").trim_end_matches('\n').to_owned()
}

/// A picture of each of the codes, and all of them together as read.
fn photographed(window: &Window, desktop: &Desktop) -> (Vec<PathBuf>, Gathered) {
    let first = desktop.path("screen-1.png");
    window.picture(&first);
    let mut gathered = Gathered::begin(read(&another_reader(&first)).expect("a frame"));
    let mut pictures = vec![first];
    for place in 2..=codes(window) {
        window.press("Next code");
        window.see(&format!("Code {place} of"));
        let picture = desktop.path(&format!("screen-{place}.png"));
        window.picture(&picture);
        gathered.take(read(&another_reader(&picture)).expect("a frame")).expect("of the same sealing");
        pictures.push(picture);
    }
    (pictures, gathered)
}

/// The number of codes, from the heading.
fn codes(window: &Window) -> usize {
    let text = window.text();
    let said = text.split("Code 1 of ").nth(1).and_then(|rest| rest.split(' ').next());
    said.and_then(|count| count.parse().ok()).unwrap_or_else(|| panic!("no count in {text}"))
}

#[test]
fn the_clinic_receives_pictures_of_the_screen_in_any_order() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let window = patient(&desktop);
    window.press("Record");
    window.press("For the visit");
    window.type_into("Note for the clinic (optional)", "Stairs are easier");
    window.press("Show it as codes");
    window.press("Stay on this code");
    window.fits();
    let (mut pictures, gathered) = photographed(&window, &desktop);
    assert!(pictures.len() > 1, "four weeks take more than one code");
    let sealed = gathered.whole().expect("nothing is missing");
    assert!(sealed.starts_with(b"age-encryption.org/v1"), "what the codes carry is the sealed file");

    // From the first backwards to the last, and back again, with the keyboard.
    let (first, last) = (format!("Code 1 of {}", pictures.len()), format!("Code {0} of {0}", pictures.len()));
    window.key("ArrowRight");
    window.see(&first);
    window.key("ArrowLeft");
    window.see(&last);
    // The code can also be read on a phone turned sideways.
    window.resize(844, 480);
    window.fits();
    window.picture(&desktop.path("on-its-side.png"));
    assert_eq!(another_reader(&desktop.path("on-its-side.png")), another_reader(&pictures[pictures.len() - 1]));
    window.resize(390, 844);
    // What was chosen and written is still there.
    window.press("Back");
    window.wait_for("return document.querySelector('textarea').value === 'Stairs are easier'");
    window.close();

    let middle = pictures.len() / 2;
    pictures.rotate_left(middle);
    pictures.reverse();
    the_clinic_takes(&desktop, &pictures);
}

fn the_clinic_takes(desktop: &Desktop, pictures: &[PathBuf]) {
    let clinic = desktop.open("clinic").at("2027-03-29T08:30:00+02:00").zone(ZONE).size(1280, 800).start();
    clinic.type_into("Passphrase", "plumb line and lantern");
    clinic.press("Unlock");
    // All but one: the page says so, and nothing is stored.
    clinic.choose_files("Choose files", &pictures[1..]);
    clinic.see("codes were read. Missing: 1.");
    clinic.choose_files("Choose files", pictures);
    clinic.see("28 new days");
    // The list follows: until then its row is about to be replaced.
    clinic.see("summary up to 28 March");
    clinic.press_part("K17");
    clinic.see("Adherence, by time of day");
    clinic.see("Stairs are easier");
    clinic.see("Nearly fell");
}

#[test]
fn codes_change_by_themselves_until_stopped() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let window = patient(&desktop);
    show(&window);
    window.see("Code 1 of");
    window.see("Code 2 of");
    window.see("Code 1 of");
    window.press("Stay on this code");
    window.see("Show them in turn");
}

#[test]
fn codes_do_not_change_by_themselves_with_reduced_motion() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let settings = desktop.path("config/gtk-3.0");
    std::fs::create_dir_all(&settings).expect("the desktop's folder is writable");
    std::fs::write(settings.join("settings.ini"), "[Settings]\ngtk-enable-animations=false\n").expect("writable");
    let window = patient(&desktop);
    window.wait_for("return matchMedia('(prefers-reduced-motion: reduce)').matches");
    show(&window);
    window.see("Code 1 of");
    window.press("Show them in turn");
    window.see("Code 2 of");
}

#[test]
fn a_single_code_has_no_buttons_for_others() {
    let desktop = Desktop::new();
    desktop.prescribe(end_to_end::scenes::BALANCE, TAKEN);
    let window = desktop.open("patient").at("2027-03-01T10:00:00+01:00").zone(ZONE).start();
    show(&window);
    window.see("The summary as a code");
    window.see("The clinic photographs this code.");
    for words in ["Next code", "Previous code", "Stay on this code", "Show them in turn"] {
        assert!(!window.can_press(words), "{words}");
    }
    window.fits();
    let picture = desktop.path("one.png");
    window.picture(&picture);
    let gathered = Gathered::begin(read(&another_reader(&picture)).expect("a frame"));
    assert!(gathered.whole().is_some());
}

#[test]
fn a_page_that_is_left_before_its_answer_comes_leaves_nothing_behind() {
    let desktop = Desktop::new();
    desktop.with_four_weeks();
    let window = patient(&desktop);
    window.press("Record");
    window.see("For the visit");
    // Faster than a person could: the page opens, asks the shell, and is left as soon as it is drawn, ten times.
    window.ask(
        "const press = (words) => [...document.querySelectorAll('button')].find((one) => one.innerText === words)?.click();
        const drawn = () => new Promise((done) => setTimeout(done, 0));
        return (async () => {
            for (let time = 0; time < 10; time += 1) {
                press('For the visit');
                for (let wait = 0; wait < 200 && !document.querySelector('select'); wait += 1) await drawn();
                press('Back');
                await drawn();
            }
            return true;
        })();",
        &[],
    );
    window.see("For the visit");
    window.press("For the visit");
    window.press("Show it as codes");
    window.see("Code 1 of");
}
