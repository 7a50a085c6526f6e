//! Erasing everything: nothing of ours remains and nothing else is changed, even if the program is killed meanwhile.

mod support;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::time::Duration;
use store::table::{entry, log, setting};
use store::{Home, StoreError, WebView};
use support::{again, append, database, first_line, own_binary, place, sound};

#[test]
fn child() {
    support::act();
}

/// A folder with a log of `entries` entries, a setting, a web view's folder, and files that are not ours.
fn lived_in(home: &Path, entries: u32) {
    let mut open = Home::open(home, true).expect("a new folder");
    open.store_mut()
        .transaction(|tx| log::begin(tx, b"log-one").and_then(|()| setting::put(tx, "role", "patient")))
        .expect("new");
    for _ in 0..entries {
        append(&mut open).expect("room");
    }
    drop(open);
    fs::create_dir_all(home.join("web-view/storage")).expect("the test owns it");
    fs::write(home.join("web-view/storage/local"), "sound on").expect("the test owns it");
    for (name, what) in [("summary-2026-11-25.age", "saved by the person"), ("carryover.db.mine", "a copy by hand")] {
        fs::write(home.join(name), what).expect("the test owns it");
    }
    fs::create_dir(home.join("pictures")).expect("the test owns it");
}

fn names(home: &Path) -> BTreeSet<String> {
    fs::read_dir(home)
        .expect("a folder")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect()
}

/// Opens the folder and checks that it is like new, and that only files that are not ours remain.
#[track_caller]
fn as_new(home: &Path) {
    let open = Home::open(home, true).expect("usable");
    assert_eq!(open.store().read(entry::count), Ok::<_, StoreError>(0));
    assert_eq!(open.store().read(log::id), Ok::<_, StoreError>(None), "the next log is another one");
    assert_eq!(open.store().read(setting::all).map(|all| all.len()), Ok::<_, StoreError>(0));
    drop(open);
    let left = ["carryover.db", "carryover.db.mine", "lock", "pictures", "summary-2026-11-25.age"];
    assert_eq!(names(home), left.map(str::to_owned).into());
    assert_eq!(fs::read(home.join("carryover.db.mine")).expect("there"), b"a copy by hand");
}

#[test]
fn nothing_of_ours_is_left_and_nothing_else_is_touched() {
    let (_dir, home) = place();
    lived_in(&home, 30);
    let mut open = Home::open(&home, false).expect("there");
    open.erase(WebView::Closed).expect("erased");
    assert_eq!(open.store().read(entry::count), Ok::<_, StoreError>(0), "the same folder continues, empty");
    open.store_mut().transaction(|tx| log::begin(tx, b"log-two")).expect("and accepts new data");
    open.erase(WebView::Closed).expect("also twice");
    drop(open);
    as_new(&home);
    for file in fs::read_dir(&home).expect("a folder").flatten().filter(|file| file.path().is_file()) {
        let bytes = fs::read(file.path()).expect("readable");
        assert!(!bytes.windows(5).any(|part| part == b"knot "), "{:?} still contains an entry", file.file_name());
    }
}

#[test]
fn wherever_erasing_was_interrupted_the_next_start_finishes_it() {
    let mark = {
        let (_dir, home) = place();
        lived_in(&home, 3);
        Home::open(&home, false).expect("there").erase(WebView::Open).expect("erased");
        let names = names(&home);
        names.into_iter().find(|name| name.contains("erasing")).expect("a mark while the web view is open")
    };
    let everything = b"everything in this folder that is Carryover's is being erased\n";
    let steps = [
        "",
        "carryover.db",
        "carryover.db-wal",
        "carryover.db-shm",
        "carryover.db-journal",
        "web-view/storage/local",
        "web-view",
    ];
    for done in 1..=steps.len() {
        for create in [true, false] {
            let (_dir, home) = place();
            lived_in(&home, 3);
            for companion in ["carryover.db-wal", "carryover.db-shm", "carryover.db-journal"] {
                fs::write(home.join(companion), "what a killed program left").expect("the test owns it");
            }
            fs::write(home.join(&mark), everything).expect("the test owns it");
            for gone in steps[..done].iter().map(|name| home.join(name)) {
                let _ =
                    if gone.is_dir() && gone != home.join("") { fs::remove_dir_all(&gone) } else { fs::remove_file(&gone) };
            }
            let opened = Home::open(&home, create).map(drop);
            let expected = if create { Ok(()) } else { Err(StoreError::NotThere { path: home.clone() }) };
            assert_eq!(opened, expected, "{done} steps done: erased, so there is nothing to open");
            as_new(&home);
        }
    }
}

#[test]
fn a_foreign_file_with_the_markers_name_erases_nothing() {
    let (_dir, home) = place();
    lived_in(&home, 3);
    for contents in
        ["", "everything", "a note to myself, rather longer than the mark would be: do not erase anything in here"]
    {
        fs::write(home.join(".carryover-erasing"), contents).expect("the test owns it");
        assert_eq!(sound(&home), 3);
    }
}

/// What a running web view still writes is removed at the next start; what the person saved since then remains.
#[test]
fn an_open_web_view_loses_its_folder_at_the_next_start() {
    let (_dir, home) = place();
    lived_in(&home, 3);
    let mut open = Home::open(&home, false).expect("there");
    open.erase(WebView::Open).expect("erased");
    assert!(!home.join("web-view").exists());
    fs::create_dir(home.join("web-view")).expect("the web view makes its folder again");
    append(&mut open).expect("a new log begins");
    drop(open);
    assert_eq!(sound(&home), 1, "the new log stays");
    assert!(!home.join("web-view").exists() && !home.join(".carryover-erasing").exists());
    fs::create_dir(home.join("web-view")).expect("the next one's");
    assert_eq!(sound(&home), 1);
    assert!(home.join("web-view").exists(), "and is left alone from then on");
}

#[cfg(unix)]
#[test]
fn of_a_link_to_another_folder_only_the_link_is_removed() {
    let (dir, home) = place();
    lived_in(&home, 3);
    let other = dir.path().join("other");
    fs::create_dir(&other).expect("the test owns it");
    fs::write(other.join("kept"), "kept").expect("the test owns it");
    fs::remove_dir_all(home.join("web-view")).expect("the test owns it");
    std::os::unix::fs::symlink(&other, home.join("web-view")).expect("the test owns it");
    Home::open(&home, false).expect("there").erase(WebView::Closed).expect("erased");
    assert_eq!(fs::read(other.join("kept")).expect("there"), b"kept");
    as_new(&home);
}

#[cfg(unix)]
#[test]
fn a_killed_program_has_erased_nothing_or_everything_by_the_next_start() {
    let (mut kept, mut erased) = (0, 0);
    for round in 0..20u32 {
        let (_dir, home) = place();
        lived_in(&home, 60);
        let mut eraser = again(&[], &own_binary(), "erase", &home).spawn().expect("started");
        first_line(&mut eraser, "begins");
        std::thread::sleep(Duration::from_micros(u64::from(round) * 400));
        eraser.kill().expect("a child of the test");
        eraser.wait().expect("a child of the test");
        let left = Home::open(&home, true).expect("usable").store().read(entry::count).expect("readable");
        match left {
            0 => {
                as_new(&home);
                erased += 1;
            }
            entries => {
                assert_eq!((entries, sound(&home)), (60, 60), "round {round}");
                assert!(home.join("web-view/storage/local").exists() && !home.join(".carryover-erasing").exists());
                kept += 1;
            }
        }
        assert!(database(&home).exists());
    }
    assert_eq!(kept + erased, 20);
    assert!(erased > 0, "it was not always too late or too early");
}

/// Every file below the folder that contains the words.
fn with_words(dir: &Path, words: &[u8]) -> Vec<std::path::PathBuf> {
    let mut found = Vec::new();
    for file in fs::read_dir(dir).expect("a folder").flatten().map(|entry| entry.path()) {
        if file.is_dir() {
            found.extend(with_words(&file, words));
        } else if fs::read(&file).expect("readable").windows(words.len()).any(|part| part == words) {
            found.push(file);
        }
    }
    found
}

/// The former bytes of a removed file are still on the disk. Another name for the same file shows what they are.
#[test]
fn what_is_removed_was_overwritten_in_all_files_backups_and_the_log_included() {
    let (dir, home) = place();
    lived_in(&home, 60);
    let mut open = Home::open(&home, false).expect("there");
    open.back_up("2026-11-25").expect("room");
    append(&mut open).expect("room");
    drop(open);
    let backup = home.join("backups/carryover-2026-11-25.db");
    drop(Home::restore_over(&home, &backup, "2026-11-26", None).expect("a backup"));
    let mut open = Home::open(&home, false).expect("there");
    append(&mut open).expect("room");
    fs::write(home.join(".carryover-new-left"), "knot of an unfinished file").expect("the test owns it");
    fs::write(home.join("backups/mine.txt"), "saved by the person").expect("the test owns it");
    let ours = with_words(&home, b"knot ");
    assert_eq!(ours.len(), 5, "database, its log, a backup, what was replaced, an unfinished file: {ours:?}");
    let other_names: Vec<_> = (0..ours.len()).map(|n| dir.path().join(format!("other-name-{n}"))).collect();
    for (file, other) in ours.iter().zip(&other_names) {
        fs::hard_link(file, other).expect("the test owns it");
    }
    open.erase(WebView::Closed).expect("erased");
    drop(open);
    assert_eq!(with_words(dir.path(), b"knot "), [] as [std::path::PathBuf; 0]);
    assert!(other_names.iter().all(|name| fs::metadata(name).expect("there").len() > 0), "overwritten, not cut");
    assert_eq!(fs::read(home.join("backups/mine.txt")).expect("there"), b"saved by the person");
}
