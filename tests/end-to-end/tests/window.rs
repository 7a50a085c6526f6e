//! The window itself: that it opens, its state before anything was done, and what it refuses.

use end_to_end::{Desktop, Window};
use serde_json::json;
use std::fs::Permissions;
use std::os::unix::fs::PermissionsExt;
use std::path::PathBuf;
use std::process::{Command, Stdio};
use words::{Key, Locale, Words};

fn ground(window: &Window) -> serde_json::Value {
    window.ask("return getComputedStyle(document.documentElement).backgroundColor", &[])
}

#[test]
fn the_window_opens_on_its_first_screen() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").at("2027-03-01T14:02:00+01:00").start();
    window.see("Carryover");
    window.fits();
    assert_eq!(ground(&window), json!("rgb(250, 247, 241)"));
    window.screenshot("first-light");
}

#[test]
fn a_dark_desktop_gets_a_dark_window() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").dark().start();
    window.see("Carryover");
    assert_eq!(ground(&window), json!("rgb(20, 25, 28)"));
    window.screenshot("first-dark");
}

#[test]
fn the_font_is_the_programs_own() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    window.wait_for("return document.fonts.check('600 28px \"Atkinson Hyperlegible Next\"')");
}

#[test]
fn a_page_is_opened_again_when_the_process_that_draws_it_has_ended() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    assert!(window.is_drawn_again(), "the window stays empty");
}

#[test]
fn a_second_start_with_the_same_home_shows_the_first_window_and_ends() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    assert!(desktop.start_unattended("anna").ends().success());
    window.see("Carryover");
}

#[test]
fn another_home_opens_beside_it() {
    let desktop = Desktop::new();
    let mine = desktop.open("anna").start();
    let yours = desktop.open("ben").start();
    for window in [&mine, &yours] {
        window.see("Carryover");
    }
    assert_ne!(mine.home(), yours.home());
}

#[test]
fn the_page_connects_to_nothing_outside_and_evaluates_no_text_as_code() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    let outside = "return fetch('https://example.org/').then(() => 'reached', () => 'refused')";
    assert_eq!(window.ask(outside, &[]), json!("refused"));
    let run_text = "const script = document.createElement('script'); script.textContent = 'window.ran = true';
        document.head.append(script); return window.ran ?? 'refused'";
    assert_eq!(window.ask(run_text, &[]), json!("refused"));
    // Both were recorded, as an error of the program itself would be.
    let noted = window.take_faults();
    assert!(noted.contains("connect-src") && noted.contains("script-src"), "{noted}");
}

#[test]
fn reloading_anywhere_finds_the_program_again() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.see("Carryover");
    window.reload();
    window.see("Carryover");
}

#[test]
fn a_press_that_missed_a_moving_button_is_repeated() {
    let desktop = Desktop::new();
    let window = desktop.open("anna").start();
    window.welcomed();
    // Imitates an answer that changes the page between measuring and pressing.
    window.ask(
        "addEventListener('mousedown', () => { document.body.style.paddingTop = '300px'; window.moved = true; }, { once: true })",
        &[],
    );
    window.press("I prescribe exercises");
    window.see("Passphrase");
    assert_eq!(window.ask("return window.moved", &[]), json!(true));
}

#[test]
fn a_crashed_page_says_so_in_its_language_and_can_be_reopened() {
    for (system, locale, size, dark) in
        [("es_MX.UTF-8", Locale::EsMx, (360, 640), true), ("en_GB.UTF-8", Locale::EnGb, (390, 844), false)]
    {
        let words = Words::new(locale);
        let desktop = Desktop::new();
        let opening = desktop.open("anna").with("LC_ALL", system).size(size.0, size.1);
        let window = if dark { opening.dark().start() } else { opening.start() };
        window.see(words.text(Key::WelcomeTitle));
        window.ask("setTimeout(() => { throw new Error('as if the program had stopped'); }); return true", &[]);
        window.see(words.text(Key::CrashTitle));
        window.see("as if the program had stopped");
        assert_eq!(
            window
                .ask("return [...document.querySelectorAll('#broken h1')].filter((it) => it.checkVisibility()).length", &[]),
            json!(1)
        );
        assert_eq!(window.inaccessible(), Vec::<String>::new());
        window.fits();
        window.screenshot(&format!("stopped-{}", locale.tag()));
        assert!(window.take_faults().contains("as if the program had stopped"));
        window.press(words.text(Key::CrashOpenAgain));
        window.see_no_more(words.text(Key::CrashTitle));
        window.see(words.text(Key::WelcomeTitle));
    }
}

/// A folder into which nobody can write until this is dropped. Permissions do not restrict root, but an attribute of the file does.
struct Closed(PathBuf);

impl Closed {
    #[track_caller]
    fn new(folder: PathBuf) -> Closed {
        std::fs::set_permissions(&folder, Permissions::from_mode(0o500)).expect("the test owns it");
        let closed = Closed(folder);
        if closed.takes_files() {
            closed.attribute("+i");
        }
        assert!(!closed.takes_files(), "{} can still be written", closed.0.display());
        closed
    }

    fn takes_files(&self) -> bool {
        let probe = self.0.join("probe");
        std::fs::write(&probe, "").and_then(|()| std::fs::remove_file(&probe)).is_ok()
    }

    fn attribute(&self, change: &str) {
        let _ = Command::new("chattr").arg(change).arg(&self.0).stderr(Stdio::null()).status();
    }
}

impl Drop for Closed {
    fn drop(&mut self) {
        self.attribute("-i");
        let _ = std::fs::set_permissions(&self.0, Permissions::from_mode(0o700));
    }
}

#[test]
fn a_folder_that_cannot_be_written_is_named_with_what_to_do() {
    for (name, locale, wrong, what_to_do) in [
        ("empty", "C.UTF-8", "Could not write to the data folder", "Give yourself write permission there"),
        ("vacia", "es_ES.UTF-8", "No se pudo escribir en la carpeta de datos", "Obtenga permiso de escritura"),
    ] {
        let desktop = Desktop::new();
        let home = desktop.path(name);
        std::fs::create_dir(&home).expect("the desktop's folder is writable");
        let _closed = Closed::new(home.clone());
        let window = desktop.open(name).with("LC_ALL", locale).start();
        window.see(&home.display().to_string());
        let said = window.text();
        assert!(said.contains(wrong) && said.contains(what_to_do), "{said}");
        window.fits();
        window.screenshot(&format!("read-only-{name}"));
    }
}

#[test]
fn a_persons_own_folder_that_cannot_be_written_any_more_is_named_too() {
    let desktop = Desktop::new();
    desktop.prescribe(end_to_end::scenes::HOLD, "2027-03-01T08:30:00+01:00");
    let opening = || desktop.open("patient").at("2027-03-01T09:10:00+01:00").zone(end_to_end::scenes::ZONE);
    let window = opening().start();
    window.see("Start");
    window.close();
    let closed = Closed::new(desktop.path("patient"));
    let window = opening().start();
    window.see("Could not write to the data folder");
    window.close();
    drop(closed);
    opening().start().see("Start");
}
