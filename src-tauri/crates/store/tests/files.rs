//! Plain files are written completely or not at all, and are read up to a limit.

use std::fs;
use std::path::Path;
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

/// `std::fs` is used in one file of this crate only, so that every write is complete and every read has a limit.
#[test]
fn only_one_module_touches_the_file_system() {
    let mut sources = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    let mut naming = Vec::new();
    while let Some(path) = sources.pop() {
        if path.is_dir() {
            sources
                .extend(fs::read_dir(&path).expect("the test owns it").map(|found| found.expect("the test owns it").path()));
        } else if fs::read_to_string(&path).expect("text").contains("std::fs") {
            naming.push(path.file_name().expect("a file").to_owned());
        }
    }
    assert_eq!(naming, ["files.rs"]);
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
