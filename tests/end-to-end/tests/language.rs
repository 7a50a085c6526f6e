//! The language of the window: the closest to the system's that has texts, or a chosen one, which takes effect immediately.

use end_to_end::scenes::HOLD;
use end_to_end::{Desktop, Window};
use words::{Key, Locale, Words};

const ZONE: &str = "Europe/Vienna";
const CARD: &str = "2027-03-01T08:30:00+01:00";
const NOW: &str = "2027-03-01T14:10:00+01:00";

fn language_of(window: &Window) -> String {
    window.ask("return document.documentElement.lang", &[]).as_str().unwrap_or_default().to_owned()
}

fn text(locale: Locale, key: Key) -> &'static str {
    Words::new(locale).text(key)
}

/// Chooses a language while the window is in another one, and waits for it.
#[track_caller]
fn choose(window: &Window, from: Locale, to: Locale) {
    window.choose(text(from, Key::LanguageLabel), text(to, Key::LanguageName));
    window.see(text(to, Key::LanguageLabel));
    assert_eq!(language_of(window), to.tag());
    // It gets the focus again once the page is redrawn.
    window.wait_for("return document.activeElement.id === 'language'");
}

#[test]
fn the_choice_at_first_start_is_kept_and_the_system_can_be_followed_again() {
    let desktop = Desktop::new();
    let opening = || desktop.open("patient").at(NOW).zone(ZONE).with("LC_ALL", "es_MX.UTF-8").size(360, 640);
    let window = opening().start();
    window.see(text(Locale::EsMx, Key::WelcomeTitle));
    assert_eq!(language_of(&window), "es-MX");
    window.fits();
    window.screenshot("language-first-start");
    choose(&window, Locale::EsMx, Locale::EnGb);
    window.welcomed_in(Locale::EnGb);
    window.press(text(Locale::EnGb, Key::RolePatient));
    window.see(text(Locale::EnGb, Key::AddCardTitle));
    window.close();

    let window = opening().start();
    window.see(text(Locale::EnGb, Key::AddCardTitle));
    window.press(text(Locale::EnGb, Key::PlaceRecord));
    window.press(text(Locale::EnGb, Key::MineTitle));
    window.choose(text(Locale::EnGb, Key::LanguageLabel), text(Locale::EnGb, Key::LanguageAsSystem));
    window.see(text(Locale::EsMx, Key::MineTitle));
    assert_eq!(language_of(&window), "es-MX");
}

#[test]
fn a_choice_changes_texts_and_times_on_the_page_at_once() {
    for (size, dark) in [((390, 844), false), ((360, 640), true)] {
        let desktop = Desktop::new();
        desktop.prescribe(HOLD, CARD);
        let opening = desktop.open("patient").at(NOW).zone(ZONE).size(size.0, size.1);
        let window = if dark { opening.dark().start() } else { opening.start() };
        window.see("14:00");
        window.press(text(Locale::En, Key::PlaceRecord));
        window.press(text(Locale::En, Key::MineTitle));
        choose(&window, Locale::En, Locale::EsMx);
        window.see(text(Locale::EsMx, Key::EraseTitle));
        window.fits();
        window.screenshot(&format!("language-own-data-{}", size.0));
        choose(&window, Locale::EsMx, Locale::EnUs);
        window.press(text(Locale::EnUs, Key::Back));
        window.press(text(Locale::EnUs, Key::PlaceNow));
        window.see("2:00 PM");
        window.fits();
        window.screenshot(&format!("language-now-{}", size.0));
    }
}

#[test]
fn the_clinic_has_the_choice_beside_its_patients() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, CARD);
    let opening = desktop.open("clinic").at(NOW).zone(ZONE).size(1280, 800);
    let window = opening.dark().start();
    window.type_into(text(Locale::En, Key::Passphrase), "plumb line and lantern");
    window.press(text(Locale::En, Key::ClinicUnlock));
    window.see("K17");
    choose(&window, Locale::En, Locale::EsEs);
    window.see(text(Locale::EsEs, Key::Patients));
    window.fits();
    window.screenshot("language-clinic");
}

/// Presses the button with these words, and chooses a language before the shell can have answered.
const PRESS_AND_CHOOSE: &str = "
    [...document.querySelectorAll('button')].find((button) => button.innerText === arguments[0]).click();
    const list = document.getElementById('language');
    list.value = arguments[1];
    list.dispatchEvent(new Event('change', { bubbles: true }));
";

#[test]
fn a_choice_made_while_something_else_is_done_takes_effect() {
    let desktop = Desktop::new();
    desktop.prescribe(HOLD, CARD);
    let window = desktop.open("patient").at(NOW).zone(ZONE).start();
    window.press(text(Locale::En, Key::PlaceRecord));
    window.press(text(Locale::En, Key::MineTitle));
    let save = text(Locale::En, Key::MineSave);
    window.see(save);
    window.ask(PRESS_AND_CHOOSE, &[save.into(), Locale::EsMx.tag().into()]);
    window.see(text(Locale::EsMx, Key::MineTitle));
    assert_eq!(language_of(&window), "es-MX");
}
