//! Exercises of the clinic's own, written in the window, and sets.

use end_to_end::{Desktop, Window};

const MONDAY: &str = "2027-03-01T08:30:00+01:00";

fn open(desktop: &Desktop, passphrase: &str, dark: bool) -> Window {
    let clinic = desktop.open("clinic").at(MONDAY).zone("Europe/Vienna").size(1280, 800);
    let clinic = if dark { clinic.dark() } else { clinic };
    let clinic = clinic.start();
    clinic.type_into("Passphrase", passphrase);
    clinic.press("Unlock");
    clinic.see("Receive summaries");
    clinic.press("Your exercises and sets");
    clinic.see("Exercises you wrote");
    clinic
}

/// Looks at the page in the sizes of a desk and of two phones, and leaves it as large as a desk's.
fn look(clinic: &Window, name: &str) {
    for (width, height) in [(1280, 800), (390, 844), (360, 640)] {
        clinic.resize(width, height);
        clinic.fits();
        clinic.screenshot(&format!("authoring-{name}-{width}x{height}"));
    }
    clinic.resize(1280, 800);
}

/// Lines as they are typed, with the Enter key at the end of each.
fn lines(all: &[&str]) -> String {
    all.join("\u{E007}")
}

/// A copy of the wall sit, with nothing changed yet.
fn begin_a_copy(clinic: &Window) {
    clinic.press("Start from a copy");
    clinic.type_into("Find an exercise to copy", "wall sit");
    clinic.press("Copy Wall sit");
    clinic.see("Another exercise has this name");
}

/// Drags the point that turns a joint by so many pixels.
fn drag(clinic: &Window, joint: &str, right: i32, down: i32) {
    let script = r"
        const point = document.querySelector(`.handle[data-joint='${arguments[0]}'] .reach`);
        const place = point.getBoundingClientRect();
        const [x, y] = [place.left + place.width / 2, place.top + place.height / 2];
        const board = document.querySelector('.board');
        const event = (name, target, dx, dy) => target.dispatchEvent(new PointerEvent(name,
            { bubbles: true, pointerId: 1, clientX: x + dx, clientY: y + dy }));
        event('pointerdown', point, 0, 0);
        for (const part of [0.25, 0.5, 0.75, 1]) event('pointermove', board, arguments[1] * part, arguments[2] * part);
        event('pointerup', board, arguments[1], arguments[2]);
        return true";
    clinic.ask(script, &[joint.into(), right.into(), down.into()]);
}

fn angle(clinic: &Window, joint: &str) -> i64 {
    let script = "return Number(document.querySelector(`input[type=number][aria-label='${arguments[0]}']`).value)";
    clinic.ask(script, &[joint.into()]).as_i64().expect("an angle")
}

#[test]
fn a_copy_is_changed_saved_and_prescribed() {
    let desktop = Desktop::new();
    let clinic = open(&desktop, desktop.with_a_clinic(), false);
    look(&clinic, "empty");
    begin_a_copy(&clinic);
    clinic.type_into("Name", "Lean on the kitchen wall");
    clinic.see("Name (Español): Another exercise has this name");
    clinic.type_into("Steps", &lines(&["Slide down a little.", "Stay there.", "Push up again."]));
    clinic.see("Steps (Español): 4 lines, but 3 in the other language");
    look(&clinic, "unequal");
    clinic.press("Español");
    clinic.type_into("Steps", &lines(&["Baje un poco.", "Quédese ahí.", "Suba otra vez."]));
    clinic.type_into("Name", "Apoyo en la cocina");
    clinic.press("English");
    clinic.see("Nothing is missing");
    look(&clinic, "ready");
    clinic.press("Save exercise");
    clinic.see("Lean on the kitchen wall is saved");
    look(&clinic, "saved");
    clinic.press("Patients");
    clinic.press("First plan: K17");
    clinic.type_into("Find an exercise", "kitchen");
    clinic.key("Enter");
    clinic.wait_for("return document.querySelector('.items h2')?.textContent === 'Lean on the kitchen wall'");
}

#[test]
fn the_figure_is_dragged_and_slid_and_each_change_is_undone() {
    let desktop = Desktop::new();
    let clinic = open(&desktop, desktop.with_a_clinic(), true);
    clinic.press("Start from nothing");
    clinic.see("Still to write");
    look(&clinic, "blank-dark");
    clinic.press("End");
    drag(&clinic, "shoulder-near", 60, -60);
    let raised = angle(&clinic, "Near arm, forward");
    assert!((60..=170).contains(&raised), "the arm is raised: {raised}");
    clinic.set("Near elbow", "90");
    clinic.press("Undo");
    assert_eq!((angle(&clinic, "Near elbow"), angle(&clinic, "Near arm, forward")), (10, raised), "one at a time");
    clinic.press("Undo");
    assert_eq!(angle(&clinic, "Near arm, forward"), 4, "the whole drag at once");
    clinic.press("Redo");
    assert_eq!(angle(&clinic, "Near arm, forward"), raised);
    clinic.press("Arrow along the movement");
    clinic.see("Beside");
    clinic.press("Dark");
    clinic.wait_for("return document.querySelector('.phone.in-dark') !== null");
    look(&clinic, "figure-dark");
}

#[test]
fn what_is_unfinished_is_kept() {
    let desktop = Desktop::new();
    let clinic = open(&desktop, desktop.with_a_clinic(), false);
    clinic.press("Start from nothing");
    clinic.see("Still to write");
    clinic.type_into("Name", "Half an idea");
    clinic.press("Your exercises and sets");
    clinic.see("Unfinished");
    clinic.see("Half an idea");
    clinic.press("Go on writing: Half an idea");
    clinic.see("What the patient sees");
    clinic.press("Your exercises and sets");
    clinic.press("Delete: Half an idea");
    clinic.see_no_more("Half an idea");
}

#[test]
fn a_set_is_saved_and_begins_another_plan() {
    let desktop = Desktop::new();
    let clinic = open(&desktop, desktop.with_a_clinic(), false);
    clinic.press("Patients");
    clinic.press("First plan: K17");
    clinic.type_into("Find an exercise", "heel raise");
    clinic.key("Enter");
    clinic.press_part("Sets of exercises");
    clinic.type_into("Name of the set", "Calves");
    clinic.press("Save as a set");
    clinic.see("The set Calves is saved");
    clinic.press("Remove: Heel raise");
    clinic.see("The plan is empty");
    clinic.press("Add the set Calves");
    clinic.wait_for("return document.querySelector('.items h2')?.textContent === 'Heel raise'");
    look(&clinic, "set");
}
