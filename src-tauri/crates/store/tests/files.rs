//! Plain files are written completely or not at all, and are read up to a limit.

use std::fs;
use std::path::{Path, PathBuf};
use store::files::{self, FileError, FileFault};

fn fault<T: std::fmt::Debug>(outcome: Result<T, FileError>, path: &Path) -> FileFault {
    let error = outcome.expect_err("to be refused");
    assert_eq!(error.path, path, "the error says where");
    error.fault
}

#[test]
fn written_bytes_are_read_back() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let path = dir.path().join("card.cbor");
    for bytes in [&b"first"[..], b"", b"a longer second one"] {
        files::write(&path, bytes).expect("room");
        assert_eq!(files::read(&path, 100).expect("there"), bytes);
    }
    assert_eq!(fs::read_dir(dir.path()).expect("the test owns it").count(), 1, "no other file is left");
}

#[test]
fn a_file_over_the_limit_is_an_error_and_not_truncated() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let path = dir.path().join("card.cbor");
    files::write(&path, &[1; 64]).expect("room");
    assert_eq!(files::read(&path, 64).expect("just fits").len(), 64);
    assert_eq!(fault(files::read(&path, 63), &path), FileFault::TooBig { cap: 63 });
    assert_eq!(files::read(&path, u64::MAX).expect("no limit").len(), 64);
}

#[test]
fn a_missing_file_is_reported() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let path = dir.path().join("nothing");
    assert_eq!(fault(files::read(&path, 9), &path), FileFault::NotFound);
    let below = path.join("deeper");
    assert_eq!(fault(files::write(&below, b"x"), &below), FileFault::NotFound);
}

#[test]
fn a_folder_or_device_is_not_a_file() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let folder = dir.path().join("folder");
    fs::create_dir(&folder).expect("the test owns it");
    assert_eq!(fault(files::read(&folder, 9), &folder), FileFault::NotAFile);
    assert_eq!(fault(files::write(&folder, b"x"), &folder), FileFault::NotAFile);
    let file = dir.path().join("file");
    files::write(&file, b"x").expect("room");
    let below = file.join("deeper");
    assert_eq!(fault(files::read(&below, 9), &below), FileFault::NotAFolder);
    assert_eq!(fault(files::write(&below, b"x"), &below), FileFault::NotAFolder);
}

#[cfg(unix)]
#[test]
fn a_pipe_is_refused_without_waiting_for_its_other_end() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let pipe = dir.path().join("pipe");
    let made = std::process::Command::new("mkfifo").arg(&pipe).status().expect("mkfifo (coreutils)");
    assert!(made.success());
    assert_eq!(fault(files::read(&pipe, 9), &pipe), FileFault::NotAFile);
}

#[cfg(unix)]
#[test]
fn a_new_file_is_for_its_owner_alone() {
    use std::os::unix::fs::PermissionsExt;
    let dir = tempfile::tempdir().expect("a temporary folder");
    let path = dir.path().join("log.csv");
    files::write(&path, b"x").expect("room");
    assert_eq!(fs::metadata(&path).expect("there").permissions().mode() & 0o777, 0o600);
}

/// `std::fs` is used in one module of this crate only, so that every write is complete and every read has a limit.
#[test]
fn only_one_module_touches_the_file_system() {
    let module = Path::new(env!("CARGO_MANIFEST_DIR")).join("src").join("files");
    let mut sources = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    let mut naming = Vec::new();
    while let Some(path) = sources.pop() {
        if path.is_dir() {
            sources
                .extend(fs::read_dir(&path).expect("the test owns it").map(|found| found.expect("the test owns it").path()));
        } else if fs::read_to_string(&path).expect("text").contains("std::fs") {
            naming.push(path);
        }
    }
    assert!(naming.contains(&module.join("mod.rs")), "{naming:?}");
    naming.retain(|path| !path.starts_with(&module));
    assert_eq!(naming, Vec::<PathBuf>::new());
}

#[test]
fn what_a_killed_program_left_among_a_persons_files_an_hour_ago_is_removed_and_nothing_else() {
    use std::time::{Duration, SystemTime};
    let dir = tempfile::tempdir().expect("a temporary folder");
    let aged = |name: &str, minutes: u64| {
        let folder = dir.path().join(name);
        fs::create_dir(&folder).expect("the test owns it");
        fs::write(folder.join("runs.csv"), "half a record").expect("room");
        let then = SystemTime::now() - Duration::from_secs(minutes * 60);
        fs::File::open(&folder).and_then(|folder| folder.set_modified(then)).expect("the test owns it");
        folder
    };
    let [left, recent, anothers] = [(".carryover-new-AbCdEf", 90), (".carryover-new-GhIjKl", 30), ("new", 90)]
        .map(|(name, minutes)| aged(name, minutes));
    files::write_folder(&dir.path().join("mine"), &[("one.csv", b"a,b\r\n".to_vec())]).expect("room");
    assert!(!left.exists(), "readable entries of a person");
    assert!(recent.exists() && anothers.exists(), "it may still be written, or is none of ours");
}

#[test]
fn a_folder_of_files_is_complete_or_not_there() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let folder = dir.path().join("deeper/mine");
    let both = [("one.csv", b"a,b\r\n".to_vec()), ("two.json", b"{}".to_vec())];
    files::write_folder(&folder, &both).expect("room");
    assert_eq!(fs::read(folder.join("two.json")).expect("there"), b"{}");
    assert_eq!(
        fs::read_dir(dir.path().join("deeper")).expect("the test owns it").count(),
        1,
        "nothing half-made is left beside it"
    );
    assert_eq!(fault(files::write_folder(&folder, &both), &folder), FileFault::Occupied, "an older one stays as it is");
    let empty = dir.path().join("empty");
    fs::create_dir(&empty).expect("the test owns it");
    files::write_folder(&empty, &both).expect("an empty folder counts as none");
    let wrong = dir.path().join("wrong");
    let unwritable = [("one.csv", Vec::new()), ("below/two.json", Vec::new())];
    assert_eq!(fault(files::write_folder(&wrong, &unwritable), &wrong), FileFault::NotFound);
    assert!(!wrong.exists());
    let file = dir.path().join("file");
    files::write(&file, b"x").expect("room");
    assert_eq!(fault(files::write_folder(&file, &both), &file), FileFault::NotAFolder);
    let names: Vec<_> =
        fs::read_dir(dir.path()).expect("the test owns it").flatten().map(|entry| entry.file_name()).collect();
    assert_eq!(names.len(), 3, "{names:?}");
}

#[cfg(unix)]
#[test]
fn a_data_folder_that_is_open_to_others_is_made_private_or_refused() {
    use std::os::unix::fs::PermissionsExt;
    let dir = tempfile::tempdir().expect("a temporary folder");
    let home = dir.path().join("home");
    let set = |path: &Path, mode| fs::set_permissions(path, PermissionsExt::from_mode(mode)).expect("the test owns it");
    let mode = |path: &Path| fs::metadata(path).expect("there").permissions().mode() & 0o7777;
    fs::create_dir(&home).expect("the test owns it");
    for open in [0o777, 0o755, 0o770, 0o701] {
        set(&home, open);
        drop(store::Home::open(&home, true).expect("empty, and then ours"));
        assert_eq!(mode(&home), 0o700);
    }
    // Others may have files of their own in it.
    let shared = dir.path().join("shared");
    fs::create_dir(&shared).expect("the test owns it");
    fs::write(shared.join("somebody's"), "file").expect("the test owns it");
    let refused = store::Home::open(&shared, true).expect_err("open to others");
    assert_eq!(refused, store::StoreError::OpenToOthers { path: shared.clone() });
    assert!(!shared.join("carryover.db").exists() && mode(&shared) != 0o700);
    let sticky = dir.path().join("sticky");
    fs::create_dir(&sticky).expect("the test owns it");
    set(&sticky, 0o1777);
    assert!(matches!(store::Home::open(&sticky, true), Err(store::StoreError::OpenToOthers { .. })));
}

#[test]
fn what_a_killed_program_left_in_a_persons_folder_is_removed_at_the_next_save() {
    use std::time::Duration;
    let dir = tempfile::tempdir().expect("a temporary folder");
    let left = |name: &str, minutes: u64| {
        let file = fs::File::create(dir.path().join(name)).expect("room");
        let now = file.metadata().and_then(|facts| facts.modified()).expect("a time");
        file.set_modified(now - Duration::from_secs(minutes * 60)).expect("the test owns it");
    };
    left(".carryover-new-old", 90);
    left(".carryover-new-being-written", 10);
    left("carryover-new-mine", 90);
    left(".carryover", 90);
    files::write(&dir.path().join("summary.age"), b"sealed").expect("room");
    let mut names: Vec<_> = fs::read_dir(dir.path()).expect("a folder").flatten().map(|file| file.file_name()).collect();
    names.sort();
    assert_eq!(names, [".carryover", ".carryover-new-being-written", "carryover-new-mine", "summary.age"]);
}
