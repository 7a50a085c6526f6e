//! `carryover backup`, `carryover restore` and `carryover salvage`.

use crate::Done;
use crate::args::Args;
use crate::home;
use crate::out::Out;
use actions::{Clock, backup, platform};
use serde_json::json;
use std::path::Path;
use wire::app::Role;
use words::Key;

/// Writes the automatic backup of today after a command that has done something, unless there is one. With a set time, or if the folder
/// cannot be opened or written now, it is left for another time.
pub fn daily(args: &Args, clock: &Clock) {
    let Ok(home) = args.home() else { return };
    if clock.is_set() {
        return;
    }
    if let Ok(mut folder) = actions::DataFolder::open_remembering(&home, false, platform::remembered().as_deref()) {
        let _ = backup::daily(&mut folder, &clock.moment());
    }
}

pub fn save(args: &Args, to: Option<&Path>, clock: &Clock, out: &mut Out) -> Done {
    let folder = home::open(args, out)?;
    let saved = backup::save(&folder, &clock.moment(), to)?;
    let readable = folder.role() == Some(Role::Patient);
    out.say(
        |words| {
            let what = words.text(if readable { Key::BackupWhatPatient } else { Key::BackupWhatClinic });
            format!("{} ({} bytes)\n{what}", saved.path, saved.bytes)
        },
        || json!({ "path": saved.path, "bytes": saved.bytes, "encrypted": !readable }),
    );
    Ok(true)
}

pub fn restore(args: &Args, file: &Path, clock: &Clock, out: &mut Out) -> Done {
    let remembered = platform::remembered();
    let (folder, before) = backup::restore(&args.home()?, file, &clock.moment(), remembered.as_deref())?;
    let before = before.map(|path| path.display().to_string());
    out.say(
        |words| match &before {
            Some(before) => words.backup_restored_over(before),
            None => words.text(Key::BackupRestored).to_owned(),
        },
        || json!({ "restored": folder.dir(), "before": before }),
    );
    home::say_if_copied(&folder, out);
    Ok(true)
}

pub fn salvage(args: &Args, clock: &Clock, out: &mut Out) -> Done {
    let remembered = platform::remembered();
    let (folder, salvaged) = backup::salvage(&args.home()?, &clock.moment(), remembered.as_deref())?;
    for table in &salvaged.tables {
        out.say(
            |words| words.salvaged(&table.name, table.saved, table.lost, table.is_whole),
            || json!({ "table": table.name, "saved": table.saved, "lost": table.lost, "whole": table.is_whole }),
        );
    }
    out.say(|words| words.salvage_kept(&salvaged.kept), || json!({ "kept": salvaged.kept }));
    home::say_if_copied(&folder, out);
    Ok(true)
}
