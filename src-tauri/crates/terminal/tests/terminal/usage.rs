//! Wrong usage: exit code 2, and nothing is changed.

use crate::place::{Place, clinic, patient};

#[test]
fn wrong_usage_differs_from_a_refusal() {
    let place = Place::prepared();
    let before = place.all();
    for (arguments, says) in [
        (&[][..], "Usage: carryover"),
        (&["dance"], "unrecognized subcommand 'dance'"),
        (&["--at", "yesterday", "patient", "now"], "an instant such as 2026-11-25T09:00:00+01:00"),
        (&["--at", "1999-12-31T23:59:59Z", "patient", "now"], "between 2020 and 2199"),
        (&["patient", "slots", "--from", "2026-02-30", "--days", "1", "--zone", "Europe/Vienna"], "'--from <DATE>'"),
        (&["patient", "slots", "--from", "2026-02-03", "--days", "0", "--zone", "Europe/Vienna"], "not in 1..=400"),
        (
            &["patient", "slots", "--from", "2026-02-03", "--days", "1", "--zone", "Europe/Nowhere"],
            "a zone by its name in the tz database",
        ),
        (&["patient", "--plan", "first", "now"], "16 digits"),
        (&["patient", "summary", "--out", "x.age"], "--until <DATE>"),
        (&["clinic", "receive"], "<PATH>..."),
        (&["sway", "--trial", "x.csv", "--on", "0"], "--off <S>"),
        (&["sway", "--trial", "x.csv", "--on", "nan", "--off", "1"], "a finite number"),
        (&["trend", "--series", "x.csv", "--mdc=-1"], "a number, 0 or more"),
        (&["proportion", "5", "7", "--rho", "0.2"], "--per-day <M>"),
        (&["proportion", "5", "7", "--per-day", "7", "--rho", "1.2"], "a number from 0 to 1"),
        (&["clinic", "review", "K17", "--as", "poem"], "possible values: text, json"),
    ] {
        let said = place.run(&[&["--home", "patient"][..], arguments].concat());
        assert_eq!((said.code, said.out.as_str()), (Some(2), ""), "{arguments:?}: {said:?}");
        assert!(said.err.contains(says), "{says:?} is missing: {said:?}");
    }
    assert!(before == place.all());
}

#[test]
fn help_names_every_command_and_succeeds() {
    let place = Place::empty();
    let help = |arguments: &[&str]| place.done(&[arguments, &["--help"]].concat());
    assert!(help(&[]).contains("Print one JSON object per line"));
    for (area, commands) in [
        ("example", &["plan", "runs"][..]),
        ("catalogue", &["check"]),
        ("clinic", &["start", "add", "issue", "receive", "review", "patients", "identity", "passphrase", "keys"]),
        ("patient", &["accept", "slots", "record", "now", "summary"]),
    ] {
        let text = help(&[area]);
        for command in commands {
            assert!(text.contains(&format!("\n  {command} ")), "{command} is missing in\n{text}");
            help(&[area, command]);
        }
    }
    assert_eq!(place.done(&["--version"]), concat!("carryover ", env!("CARGO_PKG_VERSION"), "\n"));
}

/// Checks the help of every command, by the names that the help of its area lists.
#[test]
fn help_uses_plain_words() {
    let place = Place::empty();
    let help = |arguments: &[&str]| place.done(&[arguments, &["--help"]].concat());
    let mut all = help(&[]);
    for area in ["example", "catalogue", "sway", "trend", "proportion", "clinic", "patient"] {
        let text = help(&[area]);
        let commands = text.split_once("Commands:\n").map_or("", |(_, rest)| rest.split("\n\n").next().unwrap_or_default());
        let names = commands.lines().filter(|line| line.starts_with("  ") && !line.starts_with("   "));
        for name in names.filter_map(|line| line.split_whitespace().next()).filter(|name| *name != "help") {
            all.push_str(&help(&[area, name]));
        }
        all.push_str(&text);
    }
    assert!(all.contains("Hours without reminders") && all.contains("How many hours ahead"), "{all}");
    for word in ["stands", "so many", "So many", "for good", "sealed", "Seal ", "uiet time", "falls due", "in plain"] {
        assert!(!all.contains(word), "{word:?} in\n{all}");
    }
}

#[test]
fn the_examples_fit_each_other_on_any_day() {
    let place = Place::prepared();
    for day in ["2024-02-28", "2026-03-28", "2026-12-31", "2027-10-30"] {
        let at = format!("{day}T07:00:00+01:00");
        let code = day.replace('-', "");
        place.write("day.toml", place.done(&["--at", &at, "example", "plan"]));
        let issue = ["--home", "clinic", "--at", &at, "clinic", "--passphrase-file", "pw"];
        place.done(&[&issue[..], &["add", &code]].concat());
        place.done(&[&issue[..], &["issue", &code, "day.toml", "--out", day]].concat());
        place.done(&["--home", &code, "--at", &at, "patient", "accept", &format!("{day}/card.png")]);
        place.write("day.jsonl", place.done(&["example", "runs", "--start", day]));
        let said = place.run(&["--home", &code, "--at", &at, "patient", "record", "day.jsonl"]);
        assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{day}");
    }
}

#[test]
fn dates_at_the_ends_of_the_calendar_are_accepted_or_refused() {
    let place = Place::prepared();
    for day in ["0001-01-01", "9999-12-31", "+262142-12-31", "-262143-01-01"] {
        let from = format!("--from={day}");
        let start = format!("--start={day}");
        assert_eq!(place.done(&patient(&["slots", &from, "--days", "400", "--zone", "Europe/Vienna"])), "", "{day}");
        place.done(&["example", "runs", &start]);
    }
    place.done(&patient(&["summary", "--from=-262143-01-01", "--until=+262142-12-31", "--out", "x.age"]));
    assert_eq!(place.clinic(&["receive", "x.age"]), "x.age: K17, 2 new days.\n", "to today, not beyond");
}

#[test]
fn a_reader_that_goes_away_is_not_an_error() {
    let place = Place::prepared();
    let mut command = std::process::Command::new("sh");
    command.args(["-c", "\"$0\" --home patient patient slots --from 2026-11-26 --days 300 --zone Europe/Vienna | head -1"]);
    command.arg(crate::place::BINARY).current_dir(place.path(""));
    crate::place::surroundings(&mut command, &place.path(""));
    let said = crate::place::ProgramOutput::of(command.output().expect("sh"));
    assert_eq!((said.code, said.err.as_str(), said.out.lines().count()), (Some(0), "", 1), "{said:?}");
}

#[test]
fn in_spanish_the_refusals_are_spanish() {
    let place = Place::prepared();
    let said = place.command(&clinic(&["review", "K18"])).env("LC_ALL", "es_ES.UTF-8").output().expect("the binary starts");
    let said = crate::place::ProgramOutput::of(said);
    crate::place::refusal(&said, &["No hay ningún paciente con el código K18.", "añada al paciente"]);
}

/// Sets the variables as the system's own programs use them: the list of preferred languages, then the language of everything, of
/// texts, the default one.
#[test]
fn the_language_is_the_systems() {
    let place = Place::empty();
    let spanish = |variables: &[(&str, &str)]| {
        let mut command = place.command(&["--home", "nowhere", "patient", "now"]);
        command.env_remove("LC_ALL").env_remove("LC_MESSAGES").env_remove("LANG").envs(variables.iter().copied());
        let said = crate::place::ProgramOutput::of(command.output().expect("the binary starts"));
        assert_ne!(said.code, Some(0), "there is no folder");
        said.err.contains("No hay")
    };
    let (es, en, none) = ("es_ES.UTF-8", "en_GB.UTF-8", "C.UTF-8");
    assert!(spanish(&[("LC_ALL", es), ("LC_MESSAGES", en), ("LANG", en)]));
    assert!(spanish(&[("LC_MESSAGES", es), ("LANG", en)]));
    assert!(spanish(&[("LC_ALL", ""), ("LANG", es)]));
    assert!(spanish(&[("LANGUAGE", "ca:es"), ("LANG", "ca_ES.UTF-8")]));
    assert!(!spanish(&[("LC_ALL", none), ("LANG", es)]));
    assert!(!spanish(&[("LC_MESSAGES", en), ("LANG", es)]));
    assert!(!spanish(&[]));
}
