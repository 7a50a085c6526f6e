//! What the window says of a file that it saved, and how the file is shown: by a file manager on the bus, by a program that opens folders,
//! or, where there is neither, by telling the path.

use end_to_end::{Desktop, Window, until};

const AT: &str = "2027-03-01T08:30:00+01:00";

const PLAN: &str = r#"
review = 2027-04-12

[[item]]
number = 1
exercise = "walk"
go = { minutes = 15, effort = 3 }
at = ["12:30"]
days = "every-day"
"#;

/// A clinic with a plan, on a desktop with a folder for downloads; its window shows the card again.
fn issued(desktop: &Desktop) -> Window {
    desktop.prescribe(PLAN, AT);
    std::fs::create_dir(desktop.path("Downloads")).expect("the desktop's folder is writable");
    let clinic = desktop.unlocked_clinic(AT);
    clinic.press("Case of K17");
    clinic.press("Show or save plan 1");
    clinic.see("Saved as card.png in the folder plan-card-2027-03-01 in Downloads.");
    clinic
}

#[test]
fn a_file_manager_on_the_bus_shows_the_file_that_was_saved() {
    let desktop = Desktop::new();
    let files = desktop.with_file_manager();
    let clinic = issued(&desktop);
    assert!(!clinic.text().contains(&desktop.path("").to_string_lossy().into_owned()), "no path is on the page");
    clinic.press("Save the hand-out (PDF)");
    clinic.see("Saved as hand-out-2027-03-01.pdf in your Downloads folder.");
    clinic.look_at_desk_and_phones("saved-files");
    clinic.press("Show in folder: hand-out-2027-03-01.pdf");
    let hand_out = format!("file://{}", desktop.path("Downloads/hand-out-2027-03-01.pdf").display());
    let shown = until(|| (files.shown() == [hand_out.clone()]).then_some(()));
    assert!(shown.is_some(), "{hand_out} is not the one of {:?}", files.shown());
    std::fs::remove_file(desktop.path("Downloads/hand-out-2027-03-01.pdf")).expect("it was saved");
    clinic.press("Show in folder: hand-out-2027-03-01.pdf");
    clinic.see("The file is not there any more.");
    assert_eq!(files.shown().len(), 1);
    clinic.close();
}

#[test]
fn without_a_file_manager_the_folder_is_opened_and_without_an_opener_the_path_is_told() {
    let desktop = Desktop::new();
    let clinic = issued(&desktop);
    clinic.press("Save the diary (PDF)");
    clinic.see("Saved as diary-2027-03-01.pdf in your Downloads folder.");
    clinic.press("Show in folder: diary-2027-03-01.pdf");
    clinic.see("No program for files could be opened. The file is here:");
    clinic.see(&desktop.path("Downloads/diary-2027-03-01.pdf").to_string_lossy());
    clinic.look_at_desk_and_phones("saved-not-shown");
    assert_eq!(desktop.opened_folders(), Vec::<String>::new());
    desktop.with_opener();
    clinic.press("Show in folder: diary-2027-03-01.pdf");
    clinic.see_no_more("No program for files could be opened.");
    assert_eq!(desktop.opened_folders(), [desktop.path("Downloads").to_string_lossy()]);
    clinic.close();
}

#[test]
fn what_a_patient_saves_is_named_with_its_place_too() {
    let desktop = Desktop::new();
    let files = desktop.with_file_manager();
    desktop.prescribe(PLAN, AT);
    std::fs::create_dir(desktop.path("Downloads")).expect("the desktop's folder is writable");
    let window = desktop.open("patient").at("2027-03-02T13:00:00+01:00").zone("Europe/Berlin").dark().start();
    window.press("Record");
    window.press("For the visit");
    window.press("Save encrypted summary");
    window.see("Saved as summary-2027-03-02.age in your Downloads folder.");
    window.press("Show in folder: summary-2027-03-02.age");
    let summary = format!("file://{}", desktop.path("Downloads/summary-2027-03-02.age").display());
    assert!(until(|| (files.shown() == [summary.clone()]).then_some(())).is_some(), "{:?}", files.shown());
    window.look_at_phone_sizes("saved-summary-dark");
    window.press("Back");
    window.press("Your data");
    window.press("Save a backup now");
    window.see("Saved as carryover-backup-2027-03-02.db in your Downloads folder.");
    window.press("Export my data");
    window.see("Saved in the folder carryover-2027-03-02 in Downloads.");
    window.look_at_desk_and_phones("saved-own-data-dark");
    window.close();
}
