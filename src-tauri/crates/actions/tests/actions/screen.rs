//! The optional code of the patient's window.

use crate::people::{Patient, at};
use actions::DataFolder;
use actions::clinic::idle::{self, Clocks, IdleWatch};
use actions::patient::screen_lock;
use wire::Failure;
use wire::app::ScreenLock;
use wire::device::ScreenCodeRequest;

fn request(old: Option<&str>, new: Option<&str>) -> ScreenCodeRequest {
    ScreenCodeRequest { old: old.map(Into::into), new: new.map(Into::into) }
}

#[test]
fn a_code_locks_the_window_at_the_next_start_until_it_is_typed() {
    let mut patient = Patient::new();
    assert_eq!(screen_lock::state(&patient.folder), Ok(ScreenLock::Off));
    assert_eq!(
        screen_lock::choose(&mut patient.folder, &request(None, Some("471"))),
        Err(Failure::ScreenCodeShort { least: 4 })
    );
    screen_lock::choose(&mut patient.folder, &request(None, Some("4711"))).expect("long enough");
    assert_eq!(screen_lock::state(&patient.folder), Ok(ScreenLock::Open));
    let dir = patient.folder.dir();
    drop(patient.folder);
    let mut folder = DataFolder::open(&dir, false).expect("the same folder");
    assert_eq!(folder.app_state(&at("11-25T09:00")).expect("a state").screen, ScreenLock::Locked);
    assert_eq!(screen_lock::refuse_if_locked(&folder), Err(Failure::ScreenLocked));
    assert_eq!(screen_lock::unlock(&mut folder, &"4712".into()), Err(Failure::ScreenCodeWrong));
    assert_eq!(screen_lock::choose(&mut folder, &request(Some("4711"), None)), Err(Failure::ScreenLocked));
    screen_lock::unlock(&mut folder, &"4711".into()).expect("the code");
    assert_eq!(screen_lock::refuse_if_locked(&folder), Ok(()));
    screen_lock::lock(&mut folder);
    assert_eq!(screen_lock::state(&folder), Ok(ScreenLock::Locked));
}

#[test]
fn the_code_is_changed_and_removed_by_who_has_it_and_removed_in_the_terminal_by_anyone() {
    let mut patient = Patient::new();
    let folder = &mut patient.folder;
    screen_lock::choose(folder, &request(None, Some("4711"))).expect("a code");
    for wrong in [request(None, Some("0815")), request(Some("0815"), None)] {
        assert_eq!(screen_lock::choose(folder, &wrong), Err(Failure::ScreenCodeWrong));
    }
    screen_lock::choose(folder, &request(Some("4711"), Some("0815"))).expect("the present code");
    screen_lock::choose(folder, &request(Some("0815"), None)).expect("the present code");
    assert_eq!(screen_lock::state(folder), Ok(ScreenLock::Off));
    screen_lock::choose(folder, &request(None, Some("4711"))).expect("a code");
    screen_lock::lock(folder);
    screen_lock::remove(folder).expect("room");
    assert_eq!(screen_lock::state(folder), Ok(ScreenLock::Off));
}

#[test]
fn a_window_with_a_code_is_idle_after_five_minutes_and_one_without_never() {
    let mut patient = Patient::new();
    let folder = &mut patient.folder;
    let clocks = |minutes: i64| Clocks { wall_ms: 1_795_600_000_000 + minutes * 60_000, awake_ms: minutes * 60_000 };
    let mut watch = IdleWatch::new(clocks(0));
    assert_eq!(idle::is_screen_idle(folder, &mut watch, clocks(60)), Ok(false));
    screen_lock::choose(folder, &request(None, Some("4711"))).expect("a code");
    assert_eq!(idle::is_screen_idle(folder, &mut watch, clocks(64)), Ok(false));
    assert_eq!(idle::is_screen_idle(folder, &mut watch, clocks(65)), Ok(true));
    watch.used(clocks(65));
    assert_eq!(idle::is_screen_idle(folder, &mut watch, clocks(66)), Ok(false));
}
