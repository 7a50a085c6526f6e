//! One call of a command fails: the command says so or does without, and what is there is what was there before or what should be.

use super::calls::{ENDED, How, Run};
use super::cases::{self, Case, fresh};
use super::held::{self, Held, files, held};
use super::images::Opened;
use super::replay::{All, Call, Disk, calls};
use crate::place::{Place, ProgramOutput};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

type Files = BTreeMap<PathBuf, Vec<u8>>;

/// How a name begins under which a file is not complete yet.
const UNFINISHED: &str = ".carryover-new-";

/// What a command does when nothing disturbs it.
pub struct Undisturbed {
    pub calls: Vec<Call>,
    /// The states of the data folder, from that before to that after, of two runs.
    states: [Vec<Held>; 2],
    before: Files,
    after: [Files; 2],
}

impl Undisturbed {
    /// Does the command twice.
    pub fn of(case: &Case, foremost: bool) -> Undisturbed {
        let before = files(&fresh(foremost).path(""));
        let [one, another] = [(), ()].map(|()| run(case, foremost));
        Undisturbed { calls: one.0, states: [one.1, another.1], before, after: [one.2, another.2] }
    }

    /// Which state this is, by its number.
    fn state(&self, is: &Held) -> Option<usize> {
        let [ones, others] = &self.states;
        let other = |at: usize| others.get(at).unwrap_or(&Held::Nothing);
        (0..ones.len()).find(|at| is.is_like(&ones[*at], other(*at)))
    }
}

fn run(case: &Case, foremost: bool) -> (Vec<Call>, Vec<Held>, Files) {
    let place = fresh(foremost);
    let mut disk = Disk::of(&place.path(""));
    let log = tempfile::NamedTempFile::new().expect("a file");
    let said = Run { arguments: &case.arguments, remembers: case.remembers, disturbance: None, log: Some(log.path()) };
    let said = said.in_place(&place);
    assert_eq!(said.code, Some(0), "{case:?}: {said:?}");
    let calls = calls(&std::fs::read(log.path()).expect("the log"));
    // What the process leaves if it ends between two of its calls.
    let mut opened = Opened::default();
    let mut look =
        |disk: &Disk| opened.held(&disk.image(&mut All), case.home).unwrap_or_else(|fault| panic!("{case:?}: {fault}")).0;
    let mut states = vec![look(&disk)];
    for (at, call) in calls.iter().enumerate() {
        disk.apply(call);
        let found = look(&disk);
        if states.last() != Some(&found) {
            assert!(!states.contains(&found), "{case:?}: after call {} it is as it was before", at + 1);
            states.push(found);
        }
    }
    let found: Vec<_> = states.iter().map(size).collect();
    assert!(states.len() <= 2 + case.between.len(), "{case:?}: {} states: {found:?}", states.len());
    assert_eq!(states.last(), Some(&held(&place.path(case.home)).expect("sound")), "{case:?}: the calls are complete");
    (calls, states, files(&place.path("")))
}

/// How many rows a state has, for a message.
fn size(held: &Held) -> String {
    match held {
        Held::Rows(rows) => rows.iter().map(|(table, rows)| format!("{table} {} ", rows.len())).collect(),
        other => format!("{other:?}"),
    }
}

/// Runs the case with one call disturbed, and looks at what is left.
pub fn disturb(case: &Case, undisturbed: &Undisturbed, foremost: bool, call: usize, how: How) {
    let place = fresh(foremost);
    let run = Run { arguments: &case.arguments, remembers: case.remembers, disturbance: Some((call, how)), log: None };
    let said = run.in_place(&place);
    let what =
        format!("{} {} {}, call {call} ({:?}) {how:?}", case.command, case.what, case.home, undisturbed.calls.get(call - 1));
    let what = what.chars().take(300).collect::<String>();
    let ended = matches!(how, How::Before | How::Half) && said.code == Some(ENDED);
    if !ended {
        sentence(&said, &what);
    }
    let left = files(&place.path(""));
    let is = held(&place.path(case.home)).unwrap_or_else(|fault| panic!("{what}: {fault}: {said:?}"));
    let state =
        undisturbed.state(&is).unwrap_or_else(|| panic!("{what}: neither before nor after: {said:?}\n{}", size(&is)));
    let unlinks = matches!(undisturbed.calls.get(call - 1), Some(Call::Unlink { .. }));
    let at_home = |name: &Path| name.starts_with(case.home);
    for (name, bytes) in &left {
        let unfinished = name.file_name().is_some_and(|name| name.to_string_lossy().starts_with(UNFINISHED));
        if unfinished && (ended || unlinks) || name.starts_with(super::images::STATE) {
            assert!(!at_home(name) || !place.path("").join(name).exists(), "{what}: {} is left", name.display());
            continue;
        }
        assert!(
            is_known(undisturbed, name, bytes) || at_home(name) && is_passing(name),
            "{what}: {}: {said:?}",
            name.display()
        );
    }
    if said.code == Some(0) {
        assert_eq!(state + 1, undisturbed.states[0].len(), "{what}: it says that it is done");
        let kept = |name: &Path| left.contains_key(name) || name.starts_with(super::images::STATE) || is_backup(name);
        let missing: Vec<_> = undisturbed.after[0].keys().filter(|name| !kept(name)).collect();
        assert!(missing.is_empty(), "{what}: it says that it is done, but not {missing:?}");
    }
    let has_keys = matches!(&is, Held::Rows(rows) if !rows.get("keys").is_none_or(Vec::is_empty));
    if case.is_of_clinic() && has_keys && call.is_multiple_of(4) {
        opens(case, &place, &what);
    }
}

/// A file that is as it was before, or as it is when the command has done its work.
fn is_known(undisturbed: &Undisturbed, name: &Path, bytes: &[u8]) -> bool {
    let [one, another] = &undisturbed.after;
    let whole = |one: &Vec<u8>| held::is_whole(name, bytes, one, another.get(name).unwrap_or(one));
    undisturbed.before.get(name).is_some_and(|before| before == bytes) || one.get(name).is_some_and(whole)
}

/// What an interrupted command may leave in the data folder until the next start or the next command of that kind: the mark of erasing, and
/// the log of a database that was put aside, before the database itself.
fn is_passing(name: &Path) -> bool {
    let name = name.file_name().unwrap_or_default().to_string_lossy();
    name == ".carryover-erasing"
}

/// The automatic backup, which is made another time if it fails.
fn is_backup(name: &Path) -> bool {
    name.parent().is_some_and(|folder| folder.ends_with("backups"))
}

/// The exit code is one of ours, and a refusal says what is wrong and what to do.
fn sentence(said: &ProgramOutput, what: &str) {
    assert!(matches!(said.code, Some(0 | 1)) && !said.err.contains("panicked"), "{what}: {said:?}");
    if said.code == Some(1) {
        let last = said.err.trim_end().lines().last().unwrap_or_default();
        assert!(last.ends_with('.') && last.len() > 30 && !last.contains("Err("), "{what}: {said:?}");
    }
}

/// The clinic unlocks, and finds nothing wrong with any of its rows.
fn opens(case: &Case, place: &Place, what: &str) {
    let patients = |file| place.run(&["--home", case.home, "clinic", "--passphrase-file", file, "patients"]);
    let said = Some(patients("pw")).filter(|said| said.code == Some(0)).unwrap_or_else(|| patients("new-pw"));
    assert_eq!((said.code, said.err.as_str()), (Some(0), ""), "{what}: afterwards");
}

#[test]
fn a_call_that_fails_leaves_what_was_there_or_what_should_be() {
    let all = std::env::var_os("DISK_ALL").is_some();
    let mut count = 0;
    for (number, case) in if all { cases::all() } else { cases::foremost() }.iter().enumerate() {
        let undisturbed = Undisturbed::of(case, !all);
        let step = if all { 1 } else { 7 };
        for call in (1 + number % step..=undisturbed.calls.len()).step_by(step) {
            let faults = match (all && !case.is_of_clinic(), call % 2) {
                (true, _) => &[How::Eio, How::Enospc][..],
                (false, 0) => &[How::Eio],
                (false, _) => &[How::Enospc],
            };
            for how in faults {
                disturb(case, &undisturbed, !all, call, *how);
                count += 1;
            }
        }
        if all {
            println!("{} {}: {} calls, each failed", case.command, case.what, undisturbed.calls.len());
        }
    }
    println!("{count} failing calls");
}
