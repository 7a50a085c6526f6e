//! One call of a command fails: the command says so or does without, and what is there is what was there before or what should be.

use super::calls::{ENDED, How, Run};
use super::cases::{self, Case, fresh};
use super::held::{self, Held, files, held};
use super::images::{Opened, STATE};
use super::number;
use super::replay::{All, Call, Disk, calls};
use crate::place::{Place, ProgramOutput};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

/// The foremost cases, for the tests of both files.
pub static FOREMOST: LazyLock<Vec<(Case, Undisturbed)>> = LazyLock::new(|| each(cases::foremost(), true));

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

/// The cases with what they do undisturbed.
pub fn each(cases: Vec<Case>, foremost: bool) -> Vec<(Case, Undisturbed)> {
    let done = |case: Case| {
        let undisturbed = Undisturbed::of(&case, foremost);
        (case, undisturbed)
    };
    cases.into_iter().map(done).collect()
}

impl Undisturbed {
    /// Does the command twice.
    fn of(case: &Case, foremost: bool) -> Undisturbed {
        let before = files(&fresh(foremost).path(""));
        let [one, another] = [(), ()].map(|()| run(case, foremost));
        Undisturbed { calls: one.0, states: [one.1, another.1], before, after: [one.2, another.2] }
    }

    /// Which state this is, by its number.
    fn state(&self, is: &Held) -> Result<usize, String> {
        let [ones, others] = &self.states;
        let other = |at: usize| others.get(at).unwrap_or(&Held::Nothing);
        let differences: Vec<_> = (0..ones.len()).map(|at| is.difference(&ones[at], other(at))).collect();
        let same = differences.iter().position(Option::is_none);
        same.ok_or_else(|| {
            format!("neither before nor after: {}", differences.into_iter().flatten().collect::<Vec<_>>().join("; "))
        })
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

/// Runs the case with one call disturbed, and looks at what is left; returns what is wrong with it.
pub fn disturb(case: &Case, undisturbed: &Undisturbed, foremost: bool, call: usize, how: How) -> Result<(), String> {
    let place = fresh(foremost);
    let run = Run { arguments: &case.arguments, remembers: case.remembers, disturbance: Some((call, how)), log: None };
    let said = run.in_place(&place);
    let which: String = format!("{:?}", undisturbed.calls.get(call - 1)).chars().take(160).collect();
    let what = format!("{} {} {}, call {call} {which} {how:?}", case.command, case.what, case.home);
    look(case, undisturbed, &place, &said, call).map_err(|fault| format!("{what}: {fault}: {said:?}"))
}

fn look(case: &Case, undisturbed: &Undisturbed, place: &Place, said: &ProgramOutput, call: usize) -> Result<(), String> {
    let ended = said.code == Some(ENDED);
    if !ended {
        sentence(said)?;
    }
    let left = files(&place.path(""));
    let is = held(&place.path(case.home))?;
    let state = undisturbed.state(&is)?;
    let unlinks = matches!(undisturbed.calls.get(call - 1), Some(Call::Unlink { .. }));
    for (name, bytes) in left.iter().filter(|(name, _)| !name.starts_with(STATE)) {
        let at_home = name.starts_with(case.home);
        let unfinished = name.components().any(|part| part.as_os_str().to_string_lossy().starts_with(UNFINISHED));
        let is_there = place.path("").join(name).exists();
        let is_swept = !is_there || unfinished && is == Held::Nothing;
        let passes = at_home && is_swept || unfinished && !at_home && (ended || unlinks);
        ensure(passes || is_known(undisturbed, name, bytes), || format!("{} is left", name.display()))?;
    }
    if said.code == Some(0) {
        let is_done = state + 1 == undisturbed.states[0].len() || case.done_from.is_some_and(|first| state >= first);
        ensure(is_done, || format!("it says that it is done, but is in state {state}"))?;
        let kept =
            |name: &Path| left.contains_key(name) || name.starts_with(STATE) || is_backup(name) || is_one_of_frames(name);
        let missing: Vec<_> = undisturbed.after[0].keys().filter(|name| !kept(name)).collect();
        ensure(missing.is_empty(), || format!("it says that it is done, but {missing:?} is missing"))?;
    }
    let has_keys = matches!(&is, Held::Rows(rows) if !rows.get("keys").is_none_or(Vec::is_empty));
    if case.is_of_clinic() && has_keys && call.is_multiple_of(4) { opens(case, place) } else { Ok(()) }
}

fn ensure(holds: bool, fault: impl FnOnce() -> String) -> Result<(), String> {
    if holds { Ok(()) } else { Err(fault()) }
}

/// A file that is as it was before, or as it is when the command has done its work.
fn is_known(undisturbed: &Undisturbed, name: &Path, bytes: &[u8]) -> bool {
    let [one, another] = &undisturbed.after;
    let whole = |one: &Vec<u8>| held::is_whole(name, bytes, one, another.get(name).unwrap_or(one));
    if is_one_of_frames(name) {
        return held::is_whole(name, bytes, &[], &[0]);
    }
    // The log of a database that was put aside, beside it.
    if name.to_string_lossy().strip_suffix("-wal").is_some_and(|database| one.contains_key(Path::new(database))) {
        return true;
    }
    undisturbed.before.get(name).is_some_and(|before| before == bytes) || one.get(name).is_some_and(whole)
}

/// A picture of a summary. Their number is another each time, as the summary's length is.
fn is_one_of_frames(name: &Path) -> bool {
    name.starts_with("frames") && name.extension().is_some_and(|ending| ending == "png")
}

/// The automatic backup, which is made another time if it fails.
fn is_backup(name: &Path) -> bool {
    name.parent().is_some_and(|folder| folder.ends_with("backups"))
}

/// The exit code is one of ours, and a refusal says what is wrong and what to do.
fn sentence(said: &ProgramOutput) -> Result<(), String> {
    let last = said.err.trim_end().lines().last().unwrap_or_default();
    let is_said = said.code == Some(0) || last.ends_with('.') && last.len() > 30 && !last.contains("Err(");
    ensure(matches!(said.code, Some(0 | 1)) && is_said && !said.err.contains("panicked"), || "no clear refusal".to_owned())
}

/// The clinic unlocks, and finds nothing wrong with any of its rows.
fn opens(case: &Case, place: &Place) -> Result<(), String> {
    let patients = |file| place.run(&["--home", case.home, "clinic", "--passphrase-file", file, "patients"]);
    let said = Some(patients("pw")).filter(|said| said.code == Some(0)).unwrap_or_else(|| patients("new-pw"));
    ensure((said.code, said.err.as_str()) == (Some(0), ""), || format!("afterwards {said:?}"))
}

/// Fails with all faults, if there are any.
#[track_caller]
pub fn none(faults: &[String]) {
    let first: Vec<String> = faults.iter().take(20).map(|fault| fault.chars().take(900).collect()).collect();
    assert!(faults.is_empty(), "{} faults, of which\n{}", faults.len(), first.join("\n"));
}

#[test]
fn a_call_that_fails_leaves_what_was_there_or_what_should_be() {
    let wanted = std::env::var("DISK_ALL").ok();
    let all = wanted.is_some();
    let mut cases = cases::all();
    cases.retain(|case| wanted.as_ref().is_some_and(|part| part == "1" || case.command.contains(part)));
    let cases = if all { &each(cases, false) } else { &*FOREMOST };
    let (mut count, mut faults) = (0, Vec::new());
    for (at, (case, undisturbed)) in cases.iter().enumerate() {
        let step = number("DISK_STEP", if all { 1 } else { 7 });
        for call in (1 + at % step..=undisturbed.calls.len()).step_by(step) {
            let ways = match (all && !case.is_of_clinic(), call % 2) {
                (true, _) => &[How::Eio, How::Enospc][..],
                (false, 0) => &[How::Eio],
                (false, _) => &[How::Enospc],
            };
            for how in ways {
                faults.extend(disturb(case, undisturbed, !all, call, *how).err());
                count += 1;
            }
        }
        if all {
            println!("{} {}: {} calls, each failed", case.command, case.what, undisturbed.calls.len());
        }
    }
    println!("{count} failing calls");
    none(&faults);
}
