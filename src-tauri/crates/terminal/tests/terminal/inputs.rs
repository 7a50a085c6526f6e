//! Files that a person writes by hand; passphrases, codes and paths.

use crate::place::{DONE, ISSUED, Place, clinic, patient, refusal};

/// The example plan with one change is refused, and the message names the changed line.
#[track_caller]
fn plan(place: &Place, from: &str, to: &str, says: &str) {
    let text = place.text("plan.toml");
    let at = text.find(from).unwrap_or_else(|| panic!("{from:?} is in the example"));
    let line = format!("own.toml, line {}: ", 1 + text[..at].matches('\n').count());
    place.write("own.toml", text.replacen(from, to, 1));
    let issue = ["issue", "K17", "own.toml", "--out", "own-card"];
    place.refused(&clinic(&issue), &[&line, says, "Correct the file."]);
}

#[test]
fn a_wrong_line_of_a_plan_is_named() {
    let place = Place::prepared();
    plan(&place, "repetitions = 3", "repetitions = -3", "repetitions: a number from 0 to 255 is expected here");
    plan(&place, "repetitions = 3", "repetitions = 10000", "repetitions: a number from 0 to 255 is expected here");
    plan(&place, "serves = 1", "cures = 1", "there is no field “cures” here; allowed: number, exercise");
    plan(&place, "\"numb-feet\"", "\"cold-feet\"", "absent: “cold-feet” is not allowed here; allowed: high-fall-risk");
    plan(&place, "from = \"09:00\"", "from = \"nine\"", "from: a time such as \"09:00\" is expected here");
    plan(&place, "days = \"every-day\"", "days = \"sundays\"", "\"workdays\", \"every-day\"");
    plan(&place, "days = \"every-day\"", "days = 5", "\"workdays\", \"every-day\"");
    plan(&place, "review = 2027-01-06", "review = 2027-02-31", "this is not valid TOML: ");
    plan(&place, "review = 2027-01-06", "review = \"soon\"", "review: a date such as 2026-11-25 is expected here");
    plan(&place, "clear = []", "clear = [\"all\"]", "clear: an alarm's name such as");
    plan(&place, "seconds = 12.4", "seconds = -1", "seconds: a number from 0 to 600 is expected here");
    plan(&place, "[[stance]]", "[[stance]", "this is not valid TOML: ");
}

/// A valid file that must not be issued: the message gives the reason, and no line.
#[track_caller]
fn unfit(place: &Place, from: &str, to: &str, says: &str) {
    let text = place.text("plan.toml");
    assert!(text.contains(from), "{from:?} is in the example");
    place.write("own.toml", text.replacen(from, to, 1));
    place.refused(&clinic(&["issue", "K17", "own.toml", "--out", "own-card"]), &[says, "Change the plan, then issue it."]);
}

#[test]
fn a_plan_that_must_not_be_issued() {
    let place = Place::prepared();
    unfit(&place, "seconds = 10", "seconds = 9999", "The dose of exercise 1 is out of range.");
    unfit(
        &place,
        "exercise = \"sit-tall-chin-back\"",
        "exercise = \"fly\"",
        "The exercise “fly” is not in this program's catalogue.",
    );
    unfit(&place, "side = \"left\"     #", "side = \"neither\" #", "The side of exercise 2 does not fit the exercise.");
    unfit(&place, "number = 3", "number = 1", "Two entries of the plan have the same number.");
    unfit(
        &place,
        "review = 2027-01-06",
        "review = 2026-11-20",
        "The date of the next visit must be after today and within one year.",
    );
    unfit(
        &place,
        "\"numb-feet\",",
        "",
        "do not have these. Tick each one that you have ruled out: neuropathy or numb feet.",
    );
    unfit(&place, "seconds = 12.4", "seconds = 4.9", "the patient stands less than 5 seconds on one leg with eyes open");
    unfit(&place, "serves = 1", "serves = 9", "Exercise 1 is for a complaint that is not in the plan.");
    unfit(&place, "minutes = 60", "minutes = 1", "The times of exercise 1 are empty or out of range.");
}

#[test]
fn a_plan_that_is_not_text_not_a_file_or_too_large() {
    let place = Place::prepared();
    let issue = |file| clinic(&["issue", "K17", file, "--out", "own-card"]);
    place.write("bytes.toml", b"review = \xFF");
    place.refused(&issue("bytes.toml"), &["bytes.toml, line 1: UTF-8 text is expected here."]);
    place.refused(&issue("none.toml"), &["There is no file none.toml."]);
    place.write("big.toml", "#".repeat(300_000));
    place.refused(&issue("big.toml"), &["big.toml is larger than the limit of 256 kB."]);
    place.write("empty.toml", "");
    place.refused(&issue("empty.toml"), &["empty.toml, line 1: the field “review” is missing."]);
}

#[test]
fn a_card_whose_files_cannot_be_written_is_issued_once_and_saved_again() {
    let place = Place::prepared();
    place.refused(&clinic(&["issue", "K17", "plan.toml", "--out", "pw"]), &["Could not write pw."]);
    place.refused(&clinic(&["issue", "K17", "plan.toml", "--out", "pw/deeper"]), &["Could not write pw/deeper"]);
    // One of the four files cannot be written under its name.
    std::fs::create_dir_all(place.path("half/card.txt")).expect("the test owns it");
    let issue = |out| {
        let command = ["clinic", "--passphrase-file", "pw", "issue", "K17", "plan.toml", "--out", out];
        [&["--json", "--home", "clinic", "--at", ISSUED][..], &command].concat()
    };
    let said = place.run(&issue("half"));
    refusal(&said, &["Plan 2 for K17 is issued", "could not be saved in half", "carryover clinic card"]);
    place.refused(&clinic(&["card", "K17", "--out", "half"]), &["Plan 2 for K17 is issued"]);
    assert!(place.done(&issue("whole")).contains("\"revision\":2"), "the same card");
    place.clinic(&["card", "K17", "--out", "again"]);
    place.clinic(&["card", "K17", "--revision", "1", "--out", "first"]);
    assert_eq!(place.read("again/card.bin"), place.read("whole/card.bin"));
    assert_eq!(place.read("first/card.bin"), place.read("card/card.bin"));
    place.refused(&clinic(&["card", "K17", "--revision", "3", "--out", "none"]), &["K17 has no plan 3."]);
    assert!(place.done(&issue("next")).contains("\"revision\":3"), "once its files are there, the plan can be issued anew");
}

/// The example's history with one changed line is refused, the message names that line, and no other line is recorded.
#[track_caller]
fn runs(place: &Place, from: &str, to: &str, says: &str) {
    let text = place.text("runs.jsonl");
    let at = text.find(from).unwrap_or_else(|| panic!("{from:?} is in the example"));
    let line = format!("own.jsonl, line {}: ", 1 + text[..at].matches('\n').count());
    place.write("own.jsonl", text.replacen(from, to, 1));
    place.refused(&patient(&["record", "own.jsonl"]), &[&line, says, "Correct the file."]);
}

#[test]
fn a_wrong_line_of_a_history_is_named_and_nothing_is_recorded() {
    let place = Place::prepared();
    runs(&place, "\"score\":5", "\"score\":11", "score: a number from 0 to 10 is expected here");
    runs(&place, "\"score\":5", "\"score\":-1", "score: a number from 0 to 10 is expected here");
    runs(&place, "\"do\":\"activity\"", "\"do\":\"settle\"", "do: “settle” is not allowed here; allowed: opened, run");
    runs(
        &place,
        "2026-11-26T09:00:00+01:00",
        "tomorrow",
        "at: a date and time such as 2026-11-25T09:02:00+01:00 is expected here",
    );
    runs(
        &place,
        "\"what\":\"nearly-fell\"",
        "\"what\":\"gloom\"",
        "what: “gloom” is not allowed here; allowed: heart, neck",
    );
    runs(&place, "\"held\":[10,10,6.5]", "\"held\":[10,10,1e9]", "held: a number from 0 to 3600 is expected here");
    runs(
        &place,
        "\"held\":[10,10,6.5]",
        "\"held\":[10,10,6.5],\"speed\":3",
        "there is no field “speed” here; allowed: do, at, item",
    );
    runs(&place, "{\"do\":\"trouble\"", "\"do\":\"trouble\"", "this is not a valid JSON object, at character ");
    // Valid, but not part of this plan; everything before it would have been accepted.
    runs(&place, "\"complaint\":1,\"score\":5", "\"complaint\":9,\"score\":5", "the plan has no such");
    runs(&place, "\"what\":\"nearly-fell\",\"item\":2", "\"what\":\"nearly-fell\",\"item\":7", "the plan has no such");
    runs(&place, "T15:04:00+01:00", "T19:04:00+01:00", "no session of this exercise is open at that time");
    runs(
        &place,
        "\"leg\":\"left\",\"seconds\":14.1",
        "\"leg\":\"right\",\"seconds\":14.1",
        "or the exercise is of another kind",
    );
    runs(&place, "\"done\":[10,9],\"failed\":[0,1]", "\"held\":[10,9]", "or the exercise is of another kind");
    let said = place.done(&patient(&["record", "runs.jsonl"]));
    assert_eq!(said, "20\n", "as if none of it had been tried");
}

#[test]
fn a_run_of_more_parts_than_any_dose_asks_for() {
    let place = Place::prepared();
    let trials = |count| vec![r#"{"leg":"left","seconds":1,"end":"cut-off"}"#; count].join(",");
    let run = |count| format!(r#"{{"do":"run","at":"2026-11-25T19:33:00+01:00","item":2,"trials":[{}]}}"#, trials(count));
    place.write("many.jsonl", run(65));
    place.refused(&patient(&["record", "many.jsonl"]), &["line 1: a session has up to 64 holds, sets or attempts."]);
    place.write("many.jsonl", run(64));
    place.done(&patient(&["record", "many.jsonl"]));
    place.done(&patient(&["now"]));
    place.done(&patient(&["summary", "--until", "2026-11-26", "--out", "many.age"]));
    assert_eq!(place.clinic(&["receive", "many.age"]), "many.age: K17, 2 new days.\n");
}

#[test]
fn the_same_history_twice_is_not_recorded_in_part() {
    let place = Place::prepared();
    place.done(&patient(&["record", "runs.jsonl"]));
    place.refused(
        &patient(&["record", "runs.jsonl"]),
        &["runs.jsonl, line 28: no session of this exercise is open at that time, or it is already done"],
    );
}

#[test]
fn a_wrong_passphrase_or_none() {
    let place = Place::prepared();
    place.write("wrong", "correct horse battery stapler\n");
    let with = |file| ["--home", "clinic", "clinic", "--passphrase-file", file, "review", "K17"];
    place.refused(&with("wrong"), &["The passphrase is wrong.", "A lost passphrase cannot be recovered."]);
    place.write("nothing", "");
    place.refused(&with("nothing"), &["The passphrase is wrong."]);
    place.refused(&with("no-such-file"), &["There is no file no-such-file."]);
    place.write("bytes", b"\xFF\xFE\n");
    place.refused(&with("bytes"), &["Could not read bytes."]);
    place.refused(&with("/dev/null"), &["Could not read /dev/null."]);
    place.refused(&with("card"), &["Could not read card."]);
    // Windows line breaks and a second line are allowed.
    place.write("crlf", format!("{}\r\nsecond line\r\n", crate::place::PASSPHRASE));
    place.done(&with("crlf"));
}

#[test]
fn without_a_terminal_the_passphrase_cannot_be_asked_for() {
    let place = Place::prepared();
    let mut command = std::process::Command::new("setsid");
    command.arg("--wait").arg(crate::place::BINARY).args(["--home", "clinic", "clinic", "review", "K17"]);
    crate::place::surroundings(&mut command, &place.path(""));
    let said = command.current_dir(place.path("")).output().expect("setsid (util-linux) starts the binary");
    crate::place::refusal(&crate::place::ProgramOutput::of(said), &["No passphrase was given", "--passphrase-file"]);
}

#[test]
fn a_clinic_that_cannot_be_started_leaves_nothing_behind() {
    let place = Place::prepared();
    place.write("weak", "short\n");
    let start = |home, file, name| ["--home", home, "clinic", "--passphrase-file", file, "start", "--name", name];
    place.refused(&start("new", "weak", "Elm Row"), &["The passphrase has fewer than 12 characters.", "a longer one"]);
    place.refused(&start("new", "no-such-file", "Elm Row"), &["There is no file no-such-file."]);
    let length = ["The clinic's name is empty or longer than 60 characters. Enter a name of that length."];
    place.refused(&start("new", "pw", ""), &length);
    let long = "é".repeat(61);
    place.refused(&start("new", "pw", &long), &length);
    let character = ["The clinic's name has a character that cannot be shown", "on one line."];
    place.refused(&start("new", "pw", "Elm\nRow"), &character);
    place.refused(&start("clinic", "pw", "Elm Row"), &["This clinic already has its keys."]);
    place.refused(&start("patient", "pw", "Elm Row"), &["set up for the other role", "--home"]);
}

#[test]
fn codes_of_patients() {
    let place = Place::prepared();
    for code in ["", "K 17", "K17K17K17K17K", "Åse", "a/b"] {
        place.refused(&clinic(&["add", code]), &["A code has 1 to 12 letters, digits or hyphens."]);
    }
    place.refused(&clinic(&["add", "k17"]), &["The code k17 is already in use."]);
    place.refused(&clinic(&["review", "K18"]), &["There is no patient with the code K18.", "or add the patient"]);
    place.refused(&clinic(&["issue", "K18", "plan.toml", "--out", "o"]), &["There is no patient with the code K18."]);
    assert!(place.clinic(&["review", "k17"]).starts_with("K17\n"), "small letters find it too");
}

#[test]
fn each_side_keeps_to_its_folder() {
    let place = Place::prepared();
    let other = ["This data folder is set up for the other role.", "--home"];
    place.refused(&["--home", "patient", "clinic", "--passphrase-file", "pw", "review", "K17"], &other);
    place.refused(&["--home", "patient", "clinic", "--passphrase-file", "pw", "receive", "summary.age"], &other);
    for what in [
        &["accept", "card/card.png"][..],
        &["now"],
        &["record", "runs.jsonl"],
        &["summary", "--until", "2026-11-26", "--out", "x"],
    ] {
        place.refused(&[&["--home", "clinic", "--at", DONE, "patient"][..], what].concat(), &other);
    }
}

#[test]
fn a_summary_that_cannot_be_written_takes_no_number() {
    let place = Place::prepared();
    let out = |path| patient(&["summary", "--until", "2026-11-26", "--out", path]);
    place.refused(
        &out("no/such/folder/x.age"),
        &["Could not write no/such/folder/x.age.", "a folder where you have write permission"],
    );
    place.refused(&out("card"), &["Could not write card."]);
    place.refused(&out("/dev/full"), &["Could not write /dev/full."]);
    assert!(!std::fs::metadata("/dev/full").expect("a device").is_file(), "a device stays a device");
    let long = "x".repeat(501);
    place.refused(
        &patient(&["summary", "--until", "2026-11-26", "--out", "x.age", "--note", &long]),
        &["The text is longer than 280 characters"],
    );
}

#[test]
fn an_existing_file_is_replaced_by_a_whole_one() {
    let place = Place::prepared();
    place.write("x.age", "an older file");
    place.done(&patient(&["summary", "--until", "2026-11-26", "--out", "x.age"]));
    assert!(place.read("x.age").starts_with(b"age-encryption.org/v1\n"));
}

/// In Spanish, which shows that no sentence comes from outside the texts.
#[track_caller]
fn in_spanish(place: &Place, arguments: &[&str], says: &str) {
    let said = place.command(arguments).env("LC_ALL", "es_ES.UTF-8").output().expect("the binary starts");
    let said = crate::place::ProgramOutput::of(said);
    crate::place::refusal(&said, &[says]);
}

#[test]
fn a_fault_in_a_file_is_described_in_the_persons_language() {
    let place = Place::prepared();
    let issue = clinic(&["issue", "K17", "own.toml", "--out", "own-card"]);
    let plan = |from: &str, to: &str| place.write("own.toml", place.text("plan.toml").replacen(from, to, 1));
    plan("eyes = \"open\"", "eyes = \"half\"");
    in_spanish(&place, &issue, ": eyes: aquí no se permite «half»; se permite: open, closed. Corrija el archivo.\n");
    plan("review = 2027-01-06", "");
    in_spanish(&place, &issue, "own.toml, línea 1: falta el campo «review». Corrija el archivo.\n");
    plan("minutes = 60", "minutes = \"often\"");
    in_spanish(&place, &issue, ": minutes: aquí se espera un número entero, pero hay un texto. Corrija el archivo.\n");
    place.write("own.jsonl", place.text("runs.jsonl").replacen("\"score\":5", "\"score\":11", 1));
    let record = patient(&["record", "own.jsonl"]);
    in_spanish(&place, &record, "own.jsonl, línea 6: score: aquí se espera un número entre 0 y 10. Corrija el archivo.\n");
    place.write("own.jsonl", place.text("runs.jsonl").replacen("T15:04:00", "T19:04:00", 1));
    in_spanish(&place, &record, "a esa hora no hay ninguna sesión abierta de este ejercicio");
    place.write("bad.toml", "source = \"x\"\n[[row]]\nages = \"forties\"\nmean = 3\n");
    let norms = clinic(&["norms", "bad.toml"]);
    in_spanish(&place, &norms, "bad.toml, línea 3: ages: aquí se esperan años enteros como \"60-69\" u \"80-plus\".");
    place.write("days.csv", "day,value\n1;2\n");
    let trend = ["trend", "--series", "days.csv"];
    in_spanish(
        &place,
        &trend,
        "days.csv, línea 2: entre las columnas se esperan comas, pero hay «;». Corrija el archivo.\n",
    );
    std::fs::create_dir(place.path("empty")).expect("the test owns it");
    in_spanish(&place, &["catalogue", "check", "empty"], "No se entiende empty: no contiene ningún archivo de ejercicio");
}

/// Each is sparse: refused by its size, whatever it would say.
#[test]
fn a_file_larger_than_its_reader_takes_is_refused_by_its_size() {
    let place = Place::prepared();
    let large = |name: &str, bytes: u64| {
        let file = std::fs::File::create(place.path(name)).expect("created");
        // A file with a secret must be its owner's alone.
        file.set_permissions(std::os::unix::fs::PermissionsExt::from_mode(0o600)).expect("the test owns it");
        file.set_len(bytes + 1).expect("sparse");
    };
    large("runs", 64 * 1024 * 1024);
    place.refused(&patient(&["record", "runs"]), &["runs is larger than the limit of 64 MB."]);
    large("norms", 64 * 1024);
    place.refused(&clinic(&["norms", "norms"]), &["norms is larger than the limit of 64 kB."]);
    large("words", 4 * 1024);
    let unlock = ["--home", "clinic", "clinic", "--passphrase-file", "words", "patients"];
    place.refused(&unlock, &["words is larger than the limit of 4 kB."]);
}
