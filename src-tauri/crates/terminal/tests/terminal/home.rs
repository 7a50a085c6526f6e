//! Data folders that cannot be used: each has its own message, and none is changed.

use crate::place::{BINARY, PASSPHRASE, Place, ProgramOutput, clinic, patient, refusal, surroundings};
use rusqlite::Connection;
use std::fs::{self, File, OpenOptions, Permissions};
use std::os::unix::fs::{MetadataExt, PermissionsExt};
use std::process::Command;

/// Refused on either side, by a command that only reads and by one that would write.
#[track_caller]
fn refused(place: &Place, home: &str, says: &[&str]) {
    place.refused(&["--home", home, "patient", "now"], says);
    place.refused(&["--home", home, "patient", "record", "runs.jsonl"], says);
    place.refused(&["--home", home, "clinic", "--passphrase-file", "pw", "receive", "summary.age"], says);
}

#[test]
fn a_folder_that_is_not_there() {
    let place = Place::prepared();
    refused(&place, "nowhere", &["There is no data folder at nowhere.", "Check the path"]);
    fs::create_dir(place.path("bare")).expect("the test owns it");
    refused(&place, "bare", &["There is no data folder at bare."]);
}

#[test]
fn a_file_instead_of_a_folder() {
    let place = Place::prepared();
    let says = ["pw is a file, not a folder.", "Choose a folder for the data."];
    refused(&place, "pw", &says);
    place.refused(&["--home", "pw", "patient", "accept", "card/card.png"], &says);
    place.refused(&["--home", "pw", "clinic", "--passphrase-file", "pw", "start"], &says);
    place.refused(&["--home", "pw/deeper", "patient", "accept", "card/card.png"], &["a file, not a folder."]);
}

#[test]
fn a_folder_of_a_newer_version() {
    let place = Place::prepared();
    let database = Connection::open(place.path("patient/carryover.db")).expect("a database");
    database.pragma_update(None, "user_version", store_version(&place) + 1).expect("room");
    drop(database);
    refused(&place, "patient", &["patient was made by a newer version", "Update the program. Nothing was changed."]);
    place.refused(&patient(&["accept", "card/card.png"]), &["newer version"]);
}

fn store_version(place: &Place) -> u32 {
    let database = Connection::open(place.path("clinic/carryover.db")).expect("a database");
    database.pragma_query_value(None, "user_version", |row| row.get(0)).expect("a number")
}

#[test]
fn the_database_of_another_program() {
    let place = Place::prepared();
    fs::create_dir(place.path("songs")).expect("the test owns it");
    let songs = Connection::open(place.path("songs/carryover.db")).expect("room");
    songs.execute_batch("CREATE TABLE song (title TEXT); INSERT INTO song VALUES ('Rain')").expect("room");
    drop(songs);
    fs::write(place.path("songs/lock"), "").expect("the test owns it");
    refused(&place, "songs", &["The database in songs belongs to another program.", "Choose another folder."]);
}

#[test]
fn a_damaged_database() {
    let place = Place::prepared();
    let whole = place.read("patient/carryover.db");
    let says = ["The database in patient is damaged.", "restore your last backup"];
    let mut spoiled = whole.clone();
    spoiled[4096..4160].fill(0xA5);
    let broken = [spoiled, whole[..whole.len() / 2].to_vec(), b"a shopping list".repeat(400), Vec::new()];
    for damaged in broken {
        place.write("patient/carryover.db", damaged);
        refused(&place, "patient", &says);
    }
}

/// The checks at opening do not decode the contents of rows.
#[test]
fn an_unreadable_row_is_refused() {
    let place = Place::prepared();
    let database = Connection::open(place.path("done/carryover.db")).expect("a database");
    for trigger in triggers(&database) {
        database.execute_batch(&format!("DROP TRIGGER \"{trigger}\"")).expect("there");
    }
    database.execute("UPDATE entry SET payload = x'FFFF' WHERE n = 3", []).expect("one row");
    drop(database);
    place.refused(&["--home", "done", "patient", "now"], &["The database in done is damaged."]);
    let database = Connection::open(place.path("clinic/carryover.db")).expect("a database");
    database.execute("UPDATE patient SET sealed = zeroblob(length(sealed))", []).expect("one row");
    database.execute_batch("PRAGMA wal_checkpoint(TRUNCATE)").expect("room");
    drop(database);
    let said = place.run(&clinic(&["review", "K17"]));
    assert_eq!((said.code, said.out.as_str(), said.err.lines().count()), (Some(1), "", 2), "{said:?}");
    let says = [
        "1 row of the clinic's store was changed from outside.",
        "1 patient's record is damaged, and it may be in that one.",
    ];
    says.into_iter().zip(said.err.lines()).for_each(|(says, line)| assert!(line.contains(says), "{line}"));
    // The clinic goes on with the others.
    let said = place.run(&clinic(&["add", "K18"]));
    assert_eq!((said.code, said.out.as_str()), (Some(0), "K18\n"));
    let said = place.run(&clinic(&["patients"]));
    assert_eq!((said.code, said.out.as_str()), (Some(0), "K18\t0\n"));
    assert!(said.err.contains("1 patient's record is damaged and is not in the list"), "{said:?}");
}

fn triggers(database: &Connection) -> Vec<String> {
    let mut query = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'").expect("a query");
    let names = query.query_map([], |row| row.get(0)).expect("rows");
    names.collect::<Result<_, _>>().expect("names")
}

#[test]
fn damaged_keys() {
    let place = Place::prepared();
    let database = Connection::open(place.path("clinic/carryover.db")).expect("a database");
    let keys: Vec<u8> = database.query_row("SELECT sealed FROM keys", [], |row| row.get(0)).expect("one row");
    let mut damaged = keys.clone();
    damaged[keys.len() / 2] ^= 1;
    database.execute("UPDATE keys SET sealed = ?1", [damaged]).expect("one row");
    database.execute_batch("PRAGMA wal_checkpoint(TRUNCATE)").expect("room");
    drop(database);
    place.refused(&clinic(&["review", "K17"]), &["The clinic's keys are damaged.", "from your last backup"]);
}

#[test]
fn a_folder_that_another_copy_has_open() {
    let place = Place::prepared();
    for home in ["patient", "clinic"] {
        let lock = OpenOptions::new().write(true).open(place.path(&format!("{home}/lock"))).expect("the lock");
        lock.lock().expect("free");
        let held = format!("{home} is open in another copy of the program.");
        refused(&place, home, &[&held, "Close the other copy first."]);
        lock.unlock().expect("held");
    }
    place.done(&patient(&["record", "runs.jsonl"]));
}

/// Runs the binary as a user without privileges.
fn as_unprivileged_user(place: &Place, arguments: &[&str]) -> ProgramOutput {
    // The build folder may be closed to other users.
    let binary = place.path("carryover");
    if !binary.exists() {
        fs::copy(BINARY, &binary).expect("copied");
    }
    fs::set_permissions(place.path(""), Permissions::from_mode(0o755)).expect("the test owns it");
    let root = fs::metadata(place.path("")).expect("the test owns it").uid() == 0;
    let mut command = Command::new(if root { "setpriv".into() } else { binary.clone() });
    if root {
        command.args(["--reuid=65534", "--regid=65534", "--clear-groups"]).arg(&binary);
    }
    command.args(arguments).current_dir(place.path(""));
    surroundings(&mut command, &place.path(""));
    ProgramOutput::of(command.output().expect("setpriv (util-linux) starts the binary"))
}

#[track_caller]
fn refused_to_nobody(place: &Place, arguments: &[&str], says: &[&str]) {
    as_unprivileged_user(place, &["--version"]);
    let before = place.all();
    refusal(&as_unprivileged_user(place, arguments), says);
    assert!(before == place.all(), "{arguments:?}: something changed");
}

/// Makes the folder that of the user without privileges. Without privileges of its own, the test is that user.
fn give_away(place: &Place, name: &str) {
    let _ = std::os::unix::fs::chown(place.path(name), Some(65534), None);
}

/// A folder in which others have files of their own is not made private.
#[test]
fn a_folder_that_others_share() {
    let place = Place::prepared();
    fs::create_dir(place.path("shared")).expect("the test owns it");
    place.write("shared/somebody's", "file");
    set_mode(&place, "shared", 0o777);
    let accept = ["--home", "shared", "patient", "accept", "card/card.bin"];
    let said = place.run(&accept);
    refusal(&said, &["Other people can read or change what is in the folder shared.", "one that only you can open"]);
    assert!(!place.path("shared/carryover.db").exists());
    set_mode(&place, "patient", 0o777);
    place.done(&patient(&["now"]));
    let mode = fs::metadata(place.path("patient")).expect("there").permissions().mode();
    assert_eq!(mode & 0o777, 0o700, "of a folder that is ours alone");
}

/// A user whom the system does not know has no home; the folder for temporary files is shared, and never used instead.
#[test]
fn without_a_home_nothing_is_put_where_others_can_reach_it() {
    let place = Place::prepared();
    as_unprivileged_user(&place, &["--version"]);
    set_mode(&place, "card", 0o755);
    set_mode(&place, "card/card.bin", 0o644);
    fs::create_dir(place.path("shared")).expect("the test owns it");
    set_mode(&place, "shared", 0o1777);
    let root = fs::metadata(place.path("")).expect("the test owns it").uid() == 0;
    let mut command = Command::new(if root { "setpriv".into() } else { place.path("carryover") });
    if root {
        command.args(["--reuid=54321", "--regid=54321", "--clear-groups"]).arg(place.path("carryover"));
    }
    command.args(["--at", crate::place::TAKEN, "patient", "accept", "card/card.bin"]).current_dir(place.path(""));
    surroundings(&mut command, &place.path(""));
    command.env("HOME", "").env("TMPDIR", place.path("shared"));
    let said = ProgramOutput::of(command.output().expect("setpriv (util-linux) starts the binary"));
    assert!(fs::read_dir(place.path("shared")).expect("a folder").next().is_none(), "{said:?}");
    if root {
        refusal(&said, &["This system names no folder for your data.", "Name one with --home."]);
    }
}

fn set_mode(place: &Place, name: &str, mode: u32) {
    fs::set_permissions(place.path(name), Permissions::from_mode(mode)).expect("the test owns it");
}

#[test]
fn a_folder_that_cannot_be_written() {
    let place = Place::prepared();
    let says = ["Could not write to the data folder patient.", "write permission there"];
    for (folder, file) in [(0o555, 0o444), (0o555, 0o666), (0o700, 0o444)] {
        if folder == 0o700 {
            give_away(&place, "patient");
        }
        set_mode(&place, "patient", folder);
        set_mode(&place, "patient/carryover.db", file);
        set_mode(&place, "patient/lock", if folder == 0o700 { 0o666 } else { file });
        refused_to_nobody(&place, &patient(&["now"]), &says);
        refused_to_nobody(&place, &patient(&["record", "runs.jsonl"]), &says);
    }
    let place = Place::prepared();
    for (name, mode) in [("patient", 0o777), ("patient/carryover.db", 0o666), ("patient/lock", 0o666)] {
        set_mode(&place, name, mode);
    }
    give_away(&place, "patient");
    let said = as_unprivileged_user(&place, &patient(&["now"]));
    assert_eq!(said.code, Some(0), "with all permissions there is no other reason: {said:?}");
}

#[test]
fn a_place_where_no_folder_can_be_made() {
    let place = Place::prepared();
    fs::create_dir(place.path("closed")).expect("the test owns it");
    set_mode(&place, "closed", 0o555);
    let accept = ["--home", "closed/home", "patient", "accept", "card.png"];
    fs::copy(place.path("card/card.png"), place.path("card.png")).expect("copied");
    set_mode(&place, "card.png", 0o644);
    refused_to_nobody(&place, &accept, &["Could not write to the data folder closed/home."]);
}

#[test]
fn files_that_this_user_may_not_read() {
    let place = Place::prepared();
    fs::copy(place.path("runs.jsonl"), place.path("secret.jsonl")).expect("copied");
    set_mode(&place, "secret.jsonl", 0o600);
    refused_to_nobody(
        &place,
        &patient(&["record", "secret.jsonl"]),
        &["Could not read secret.jsonl.", "that you have read permission"],
    );
    let summary = ["--home", "patient", "patient", "summary", "--until", "2026-11-26", "--out", "x.age"];
    set_mode(&place, "patient", 0o700);
    set_mode(&place, "patient/carryover.db", 0o666);
    set_mode(&place, "patient/lock", 0o666);
    give_away(&place, "patient");
    let said = as_unprivileged_user(&place, &summary);
    refusal(&said, &["Could not write x.age."]);
}

/// Runs the binary with a limit on the size of files: for the program this is the same as a full disk.
fn with_limit(place: &Place, kilobytes: u32, arguments: &[&str]) -> ProgramOutput {
    let blocks = (kilobytes * 2).to_string();
    let mut command = Command::new("sh");
    command.args(["-c", "trap '' XFSZ; ulimit -f \"$1\"; shift; exec \"$0\" \"$@\"", BINARY, &blocks]).args(arguments);
    command.current_dir(place.path(""));
    surroundings(&mut command, &place.path(""));
    ProgramOutput::of(command.output().expect("sh starts the binary"))
}

/// All rows of all tables, as text.
fn rows(place: &Place, home: &str) -> Vec<String> {
    let database = Connection::open(place.path(&format!("{home}/carryover.db"))).expect("a database");
    let mut tables = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").expect("a query");
    let tables: Vec<String> =
        tables.query_map([], |row| row.get(0)).expect("rows").collect::<Result<_, _>>().expect("names");
    let mut found = Vec::new();
    for table in tables {
        let mut all = database.prepare(&format!("SELECT * FROM \"{table}\"")).expect("a query");
        let columns = all.column_count();
        let lines = all.query_map([], |row| {
            let values: Result<Vec<_>, _> = (0..columns).map(|at| row.get::<_, rusqlite::types::Value>(at)).collect();
            Ok(format!("{table} {:?}", values?))
        });
        found.extend(lines.expect("rows").collect::<Result<Vec<_>, _>>().expect("values"));
    }
    found
}

#[test]
fn a_full_disk_while_recording() {
    let place = Place::prepared();
    let before = rows(&place, "patient");
    let many: String = (0..400).map(|_| "{\"do\":\"opened\",\"at\":\"2026-11-25T09:00:00+01:00\"}\n").collect();
    let pains: String = (0..60)
        .map(|n| format!("{{\"do\":\"pain\",\"at\":\"2026-11-25T10:{n:02}:00+01:00\",\"complaint\":1,\"score\":3}}\n"))
        .collect();
    place.write("many.jsonl", many + &pains);
    for kilobytes in [4, 8, 12] {
        let said = with_limit(&place, kilobytes, &patient(&["record", "many.jsonl"]));
        refusal(&said, &["patient", "What was saved before is safe."]);
        assert_eq!(rows(&place, "patient"), before, "with {kilobytes} kB");
    }
    place.done(&patient(&["record", "many.jsonl"]));
}

#[test]
fn a_full_disk_while_issuing_receiving_and_sealing() {
    let place = Place::prepared();
    let before = rows(&place, "clinic");
    let said = with_limit(&place, 4, &clinic(&["receive", "summary.age"]));
    assert_eq!(said.code, Some(1), "{said:?}");
    assert!(said.err.lines().count() == 1 && said.err.contains("What was saved before is safe."), "{said:?}");
    // The picture of the code is the largest file of a card; its text fits within the limit.
    for kilobytes in [1, 20] {
        let said = with_limit(&place, kilobytes, &clinic(&["issue", "K17", "plan.toml", "--out", "full"]));
        refusal(&said, &[]);
        let left: Vec<_> =
            fs::read_dir(place.path("full")).map(|dir| dir.flatten().map(|file| file.path()).collect()).unwrap_or_default();
        assert_eq!(left, Vec::<std::path::PathBuf>::new(), "no part of a card with {kilobytes} kB");
        assert_eq!(rows(&place, "clinic"), before, "nor is it known to the clinic");
    }
    let done = rows(&place, "done");
    let said = with_limit(
        &place,
        0,
        &["--home", "done", "--at", crate::place::DONE, "patient", "summary", "--until", "2026-11-26", "--out", "x.age"],
    );
    refusal(&said, &[]);
    assert!(!place.path("x.age").exists());
    assert_eq!(rows(&place, "done"), done);
    place.clinic(&["receive", "summary.age"]);
}

/// With so little room SQLite cannot make the files that it needs to write.
#[test]
fn on_a_full_disk_everything_can_be_looked_at_exported_and_erased() {
    let place = Place::prepared();
    place.clinic(&["receive", "summary.age"]);
    let done = |kilobytes, arguments: &[&str]| {
        let said = with_limit(&place, kilobytes, arguments);
        assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{arguments:?}");
        said.out
    };
    for kilobytes in [0, 16] {
        assert_eq!(done(kilobytes, &patient(&["now"])), place.done(&patient(&["now"])));
        let review = clinic(&["review", "K17"]);
        assert_eq!(done(kilobytes, &review), place.clinic(&["review", "K17"]));
        let said = with_limit(&place, kilobytes, &patient(&["record", "runs.jsonl"]));
        refusal(&said, &["There is no space left for the data folder patient.", "What was saved before is safe."]);
    }
    // Each file that is exported is smaller than the limit, as another disk has room for it.
    done(30, &patient(&["export", "--out", "exported"]));
    assert!(place.path("exported/everything.json").exists());
    done(0, &patient(&["erase", "--yes"]));
    let left: Vec<_> =
        fs::read_dir(place.path("patient")).expect("a folder").flatten().map(|file| file.file_name()).collect();
    assert_eq!(left, ["lock"]);
}

#[test]
fn a_full_disk_while_a_folder_is_made() {
    let place = Place::prepared();
    for kilobytes in [0, 4, 16] {
        let said = with_limit(&place, kilobytes, &["--home", "new", "patient", "accept", "card/card.bin"]);
        refusal(&said, &["new"]);
        assert!(!place.path("new/carryover.db").exists(), "no half-made database with {kilobytes} kB");
    }
    place.done(&["--home", "new", "--at", crate::place::TAKEN, "patient", "accept", "card/card.bin"]);
}

#[test]
fn nothing_of_the_clinics_can_be_read_in_its_files() {
    let place = Place::prepared();
    place.clinic(&["add", "Q9", "--name", "Wilhelmina Brackwater"]);
    place.clinic(&["receive", "summary.age"]);
    let secret = crate::forge::card(&place).pairing_secret;
    let words: [&[u8]; 5] = [b"K17", b"Wilhelmina", b"upper back", PASSPHRASE.as_bytes(), secret.expose_the_secret_bytes()];
    for (path, bytes) in place.all().iter().filter(|(path, _)| path.starts_with(place.path("clinic"))) {
        for word in words {
            assert!(!bytes.windows(word.len()).any(|part| part == word), "{} shows {word:?}", path.display());
        }
    }
}

#[test]
fn the_folder_and_what_is_saved_are_for_their_owner_alone() {
    let place = Place::prepared();
    let mode = |name: &str| fs::metadata(place.path(name)).expect("there").permissions().mode() & 0o777;
    assert_eq!((mode("patient"), mode("clinic")), (0o700, 0o700));
    place.done(&patient(&["summary", "--until", "2026-11-26", "--out", "x.age"]));
    for file in ["patient/carryover.db", "clinic/carryover.db", "card/card.png", "card/card.txt", "x.age"] {
        assert_eq!(mode(file), 0o600, "{file}");
    }
    drop(File::open(place.path("x.age")).expect("the test owns it"));
}
