//! A backup from elsewhere is restored or refused, and a database that was changed from outside is opened, salvaged or refused; nothing
//! of it is run. The input: a byte that says which of the store's samples, then pieces, each of them a place in the file (three bytes,
//! little endian) and the bytes that are written there; a piece with a place alone cuts the file there.
#![no_main]

use libfuzzer_sys::fuzz_target;
use std::fs;
use std::path::PathBuf;
use store::Home;

const SAMPLES: [&[u8]; 7] = [
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v1.db"),
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v2.db"),
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v3.db"),
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v4.db"),
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v5.db"),
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v6.db"),
    include_bytes!("../../../src-tauri/crates/store/tests/samples/v7.db"),
];
const DAY: &str = "2026-11-25";

fuzz_target!(|input: &[u8]| {
    let Some((which, changes)) = input.split_first() else { return };
    let mut database = SAMPLES[usize::from(*which) % SAMPLES.len()].to_vec();
    for change in fuzz::pieces(changes) {
        let Some(([low, middle, high], bytes)) = change.split_first_chunk() else { continue };
        let place = u32::from_le_bytes([*low, *middle, *high, 0]) as usize % database.len().max(1);
        let end = place.saturating_add(bytes.len()).min(database.len());
        match end - place {
            0 => database.truncate(place),
            length => database[place..end].copy_from_slice(&bytes[..length]),
        }
    }
    let dir: PathBuf = std::env::temp_dir().join(format!("carryover-fuzz-{}", std::process::id()));
    let _ = fs::remove_dir_all(&dir);
    fs::create_dir_all(dir.join("opened")).expect("room");
    let backup = dir.join("backup.db");
    fs::write(&backup, &database).expect("room");
    fs::write(dir.join("opened/carryover.db"), &database).expect("room");

    if let Ok(home) = Home::restore(&dir.join("restored"), &backup) {
        home.back_up(DAY).expect("what was restored can be backed up");
    }
    if Home::open(&dir.join("opened"), false).is_err() {
        if let Ok((home, _)) = Home::salvage(&dir.join("opened"), DAY, None) {
            home.back_up(DAY).expect("what was salvaged is whole");
        }
    }
    assert_eq!(fs::read(&backup).expect("still there"), database, "a backup is only read");
    let _ = fs::remove_dir_all(&dir);
});
