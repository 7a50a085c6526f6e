//! Passphrases and names from files and pipes; another passphrase; saved keys.

use crate::place::{PASSPHRASE, Place, ProgramOutput, clinic, refusal};
use std::io::Write;
use std::process::Stdio;

const NEW: &str = "eight brown wrens in a kettle";

/// Runs a command with this standard input.
fn with_input(place: &Place, arguments: &[&str], input: &str) -> ProgramOutput {
    let mut command = place.command(arguments);
    let mut child =
        command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().expect("the binary starts");
    // A command that was refused early may not read it.
    let _ = child.stdin.take().expect("a pipe").write_all(input.as_bytes());
    ProgramOutput::of(child.wait_with_output().expect("it ends"))
}

#[test]
#[cfg(unix)]
fn a_passphrase_file_that_others_can_read_is_refused() {
    use std::os::unix::fs::PermissionsExt;
    let place = Place::prepared();
    for mode in [0o666, 0o644, 0o640, 0o604, 0o610] {
        std::fs::set_permissions(place.path("pw"), PermissionsExt::from_mode(mode)).expect("the test owns it");
        place.refused(&clinic(&["patients"]), &["Other users of this computer can read pw", "chmod 600"]);
    }
    for mode in [0o600, 0o400] {
        std::fs::set_permissions(place.path("pw"), PermissionsExt::from_mode(mode)).expect("the test owns it");
        assert_eq!(place.clinic(&["patients"]), "K17\t0\n");
    }
}

#[test]
#[cfg(unix)]
fn a_passphrase_comes_from_the_standard_input_or_from_a_pipe() {
    let place = Place::prepared();
    let from = |file| ["--home", "clinic", "clinic", "--passphrase-file", file, "patients"];
    for input in [format!("{PASSPHRASE}\n"), format!("{PASSPHRASE}\r\nmore\n"), PASSPHRASE.to_owned()] {
        let said = with_input(&place, &from("-"), &input);
        assert_eq!((said.code, said.out.as_str()), (Some(0), "K17\t0\n"), "{said:?}");
    }
    refusal(&with_input(&place, &from("-"), ""), &["The passphrase is wrong."]);
    refusal(&with_input(&place, &from("-"), &"x".repeat(5000)), &["Could not read -."]);
    crate::place::program("mkfifo", &["-m".as_ref(), "600".as_ref(), place.path("pipe").as_ref()]);
    let path = place.path("pipe");
    let writer = std::thread::spawn(move || std::fs::write(path, PASSPHRASE).expect("the other end reads"));
    assert_eq!(place.done(&from("pipe")), "K17\t0\n");
    writer.join().expect("written");
}

#[test]
fn a_name_needs_not_be_on_the_command_line() {
    let place = Place::prepared();
    place.write("name", "Wilhelmina Underhill\n");
    place.clinic(&["add", "K18", "--name-file", "name"]);
    let from_input = ["--home", "clinic", "clinic", "--passphrase-file", "-", "add", "K19", "--name-file", "-"];
    let said = with_input(&place, &from_input, &format!("{PASSPHRASE}\nOttilie Grenfell\n"));
    assert_eq!(said.code, Some(0), "{said:?}");
    let listed = place.clinic(&["--json", "patients"]);
    for name in ["Wilhelmina Underhill", "Ottilie Grenfell"] {
        assert!(listed.contains(name), "{listed}");
    }
    let help = place.done(&["clinic", "add", "--help"]);
    assert!(help.contains("can read it here"), "the other way is documented as visible: {help}");
}

#[test]
fn a_passphrase_that_is_easy_to_guess_sets_up_no_clinic() {
    let place = Place::prepared();
    for guessable in ["            ", "password password", "Elm Row Practice"] {
        place.write("weak", guessable);
        place.refused(
            &["--home", "new", "clinic", "--passphrase-file", "weak", "start", "--name", "Elm Row Practice"],
            &["The passphrase is easy to guess.", "four or more words"],
        );
    }
}

#[test]
fn another_passphrase_opens_the_clinic_from_then_on() {
    let place = Place::prepared();
    place.write("new", NEW);
    place.write("weak", "            ");
    place.refused(&clinic(&["passphrase", "--new-passphrase-file", "weak"]), &["The passphrase is easy to guess."]);
    let said = place.clinic(&["passphrase", "--new-passphrase-file", "new"]);
    assert!(said.contains("was changed") && said.contains("still open with the old passphrase"), "{said}");
    place.refused(&clinic(&["patients"]), &["The passphrase is wrong."]);
    let new = ["--home", "clinic", "clinic", "--passphrase-file", "new", "patients"];
    assert_eq!(place.done(&new), "K17\t0\n");
    let both = ["--home", "clinic", "clinic", "--passphrase-file", "-", "passphrase", "--new-passphrase-file", "-"];
    let said = with_input(&place, &both, &format!("{NEW}\n{PASSPHRASE}\n"));
    assert_eq!(said.code, Some(0), "{said:?}");
    assert_eq!(place.clinic(&["patients"]), "K17\t0\n");
}

/// Most tests take a lower cost, see `tests/unseen`.
#[test]
fn the_keys_of_a_clinic_cost_2_to_the_17_unless_a_test_asks_for_less() {
    let place = Place::prepared();
    place.write("new", NEW);
    let save = clinic(&["keys", "--out", "kept.keys", "--sheet", "kept.html", "--new-passphrase-file", "new"]);
    for (asked, cost) in [(None, 17), (Some("11"), 11), (Some("0"), 17), (Some("many"), 17)] {
        let mut command = place.command(&save);
        command.env_remove("CARRYOVER_SCRYPT_LOG_N").envs(asked.map(|asked| ("CARRYOVER_SCRYPT_LOG_N", asked)));
        let said = ProgramOutput::of(command.output().expect("the binary starts"));
        assert_eq!(said.code, Some(0), "{said:?}");
        let file = place.read("kept.keys");
        let header = String::from_utf8_lossy(&file[..120]).into_owned();
        let stanza = header.lines().find(|line| line.starts_with("-> scrypt ")).expect("an age file");
        assert!(stanza.ends_with(&format!(" {cost}")), "{asked:?}: {stanza}");
        for name in ["kept.keys", "kept.html"] {
            std::fs::remove_file(place.path(name)).expect("written");
        }
    }
}

#[test]
fn saved_keys_make_the_same_clinic_on_a_new_computer_and_replace_a_forgotten_passphrase() {
    let place = Place::prepared();
    place.write("new", NEW);
    place.clinic(&["keys", "--out", "kept.keys", "--sheet", "kept.html", "--new-passphrase-file", "new"]);
    let fingerprint = |said: &str| said.trim_end().rsplit_once(": ").expect("a fingerprint").1.to_owned();
    let start = |home, file| {
        let start = ["start", "--name", "Linden Lane Practice", "--from-keys", "kept.keys"];
        [&["--home", home, "clinic", "--passphrase-file", file][..], &start].concat()
    };
    place.refused(&start("other", "pw"), &["The passphrase is wrong."]);
    let again = fingerprint(&place.done(&start("other", "new")));
    assert!(place.text("kept.html").contains(&again), "the sheet names the same clinic");
    let restored = ["--home", "clinic", "clinic", "--passphrase-file", "new", "passphrase", "--from-keys", "kept.keys"];
    place.done(&restored);
    assert_eq!(place.done(&["--home", "clinic", "clinic", "--passphrase-file", "new", "patients"]), "K17\t0\n");
    place.refused(&clinic(&["patients"]), &["The passphrase is wrong."]);
    place.write("list", "a shopping list");
    let list = ["--home", "clinic", "clinic", "--passphrase-file", "new", "passphrase", "--from-keys", "list"];
    place.refused(&list, &["does not contain a clinic's saved keys"]);
}

#[test]
fn the_secret_key_is_shown_only_when_that_is_asked_for() {
    let place = Place::prepared();
    assert_eq!(place.clinic(&["identity"]), "Not shown. Add --show to print it.\n");
    let said = place.run(&clinic(&["identity", "--show"]));
    assert!(said.out.starts_with("AGE-SECRET-KEY-1") && said.err.contains("can read every summary"), "{said:?}");
    let said = place.run(&clinic(&["identity", "--sheet", "secret.html"]));
    assert_eq!((said.code, said.out.as_str()), (Some(0), "secret.html\n"), "{said:?}");
    assert!(place.text("secret.html").contains("AGE-SECRET-KEY-1"));
}

#[test]
fn each_of_several_clinicians_has_a_name_and_a_passphrase() {
    let place = Place::prepared();
    place.write("theirs", "eight brown wrens in a kettle\n");
    let both = ["clinicians", "--add", "Ash Lindqvist", "--own-name", "Rowan Hale", "--new-passphrase-file", "theirs"];
    assert_eq!(place.clinic(&both), "Rowan Hale\tyou\nAsh Lindqvist\n");
    place.refused(&clinic(&["patients"]), &["A clinician's name is needed", "--clinician NAME"]);
    let theirs = |rest: &[&'static str]| {
        let who = ["--home", "clinic", "clinic", "--passphrase-file", "theirs", "--clinician", "Ash Lindqvist"];
        [&who[..], rest].concat()
    };
    assert_eq!(place.done(&theirs(&["patients"])), "K17\t0\n");
    place.refused(&theirs(&["clinicians", "--remove", "Ash Lindqvist"]), &["Nobody can remove themselves."]);
    let said = place.run(&theirs(&["clinicians", "--remove", "Rowan Hale"]));
    assert_eq!((said.code, said.out.as_str()), (Some(0), "Ash Lindqvist\tyou\n"));
    assert!(said.err.contains("could have copied them"), "{said:?}");
    place.refused(&clinic(&["patients"]), &["The passphrase is wrong."]);
    let alone = ["--home", "clinic", "clinic", "--passphrase-file", "theirs", "clinicians"];
    assert_eq!(place.done(&alone), "Ash Lindqvist\tyou\n", "nobody asks for a name any more");
}
