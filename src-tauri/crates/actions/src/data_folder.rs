//! An open data folder: the side it is on, its catalogue, and on the clinic's side the keys once the store is unlocked.

use crate::clinic::clinicians::FIRST;
use crate::clinic::issuing::LastCard;
use crate::clinic::known_lines::KnownLines;
use crate::clinic::lock;
use crate::clinic::own_rows::Own;
use crate::clinic::plan_holders::PlanHolders;
use crate::clinic::rows::OpenedCard;
use crate::clinic::upkeep::ChangedOutside;
use crate::{ActionResult, Moment, patient, platform, refuse};
use chrono::NaiveDate;
use exercises::catalogue::Catalogue;
use exercises::slots::SlotRef;
use format::frames::Gathered;
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use store::table::setting;
use store::{Home, Provenance};
use wire::Failure;
use wire::app::{AppState, Copied, LockState, Role, ScreenLock};
use words::Locale;

const ROLE: &str = "role";
const LANGUAGE: &str = "language";
/// Stored in place of a language tag if the system's language is used.
const FOLLOW_SYSTEM: &str = "system";

/// An open data folder.
pub struct DataFolder {
    pub(crate) home: Home,
    pub(crate) role: Option<Role>,
    pub(crate) catalogue: Catalogue,
    pub(crate) keys: Option<vault::keys::Keys>,
    /// The clinician who is in, or was asked for the passphrase last: see [`crate::clinic::clinicians`].
    pub(crate) clinician: i64,
    /// What was already read of the patient's side.
    pub(crate) plan_cache: RefCell<patient::plans::PlanCache>,
    /// The card that was previewed last, until it is accepted.
    pub(crate) looked_at: RefCell<Option<patient::taking::LookedAt>>,
    /// The codes that were read of a card that is shown as several.
    pub(crate) card_parts: RefCell<Option<Gathered>>,
    /// To whom the clinic's plans belong, as far as that was looked up.
    pub(crate) plan_holders: RefCell<PlanHolders>,
    /// The clinic's cards that were opened so far, by row. They are asked for only with the keys.
    pub(crate) issued_cards: RefCell<BTreeMap<i64, OpenedCard>>,
    /// The lines of the clinic's list that were made so far.
    pub(crate) known_lines: RefCell<KnownLines>,
    /// The rows of the clinic's own exercises that were opened so far.
    pub(crate) own_rows: RefCell<BTreeMap<i64, Arc<Own>>>,
    /// What was found to be changed from outside when the clinic's store was unlocked.
    pub(crate) changed_outside: ChangedOutside,
    /// The files of the card that was issued last.
    pub(crate) last_card: LastCard,
    /// Whether the time was set with `--at`.
    pub at_is_set: bool,
    /// Whether this is a sample for looking around: see [`crate::patient::sample`].
    pub is_sample: bool,
    /// The day of the last automatic backup, as far as it is known.
    pub(crate) backed_up: Option<NaiveDate>,
    /// Why today's automatic backup could not be written.
    pub(crate) backup_fault: Option<Failure>,
    /// Whether the patient's window was opened with its code, if it has one.
    pub(crate) screen_is_open: bool,
    /// The slot whose page a notification's action asked to open.
    pub open_slot: Option<SlotRef>,
}

impl DataFolder {
    /// Opens the data folder, or creates it if `create` is true. A copy cannot be told from the original: a program that a person uses
    /// opens it with [`DataFolder::open_remembering`].
    ///
    /// # Errors
    /// Any failure to use the folder, each kind reported separately.
    pub fn open(dir: &Path, create: bool) -> ActionResult<DataFolder> {
        DataFolder::open_remembering(dir, create, None)
    }

    /// Opens the data folder, or creates it if `create` is true. If it is a copy, or was put back to an earlier state, its log goes on
    /// under another id: see [`DataFolder::copied`]. What was used on this machine is remembered in the folder `remembered`, usually
    /// [`platform::remembered`].
    ///
    /// # Errors
    /// As for [`DataFolder::open`].
    pub fn open_remembering(dir: &Path, create: bool, remembered: Option<&Path>) -> ActionResult<DataFolder> {
        DataFolder::of(Home::open_watched(dir, create, remembered).map_err(refuse::store(dir))?)
    }

    /// A folder whose database is open.
    pub(crate) fn of(mut home: Home) -> ActionResult<DataFolder> {
        settle_in(&mut home)?;
        let mut folder = DataFolder {
            home,
            role: None,
            catalogue: DataFolder::shipped_catalogue()?,
            keys: None,
            clinician: FIRST,
            plan_cache: RefCell::default(),
            looked_at: RefCell::default(),
            card_parts: RefCell::default(),
            plan_holders: RefCell::default(),
            issued_cards: RefCell::default(),
            known_lines: RefCell::default(),
            own_rows: RefCell::default(),
            changed_outside: ChangedOutside::default(),
            last_card: LastCard::default(),
            at_is_set: false,
            is_sample: false,
            screen_is_open: false,
            open_slot: None,
            backed_up: None,
            backup_fault: None,
        };
        folder.role = match folder.setting(ROLE)?.as_deref() {
            Some("patient") => Some(Role::Patient),
            // Without keys the clinic was never set up, and the side can still be chosen.
            Some("clinic") if lock::is_started(&folder)? => Some(Role::Clinic),
            _ => None,
        };
        Ok(folder)
    }

    /// The exercises that ship with the program.
    ///
    /// # Errors
    /// [`Failure::Internal`] if one of them has a fault, which a test rules out.
    pub fn shipped_catalogue() -> ActionResult<Catalogue> {
        format::catalogue::embedded().map_err(|faults| refuse::internal(format!("{:?}", faults.first())))
    }

    /// Whether the folder was a copy when it was opened: moved here from elsewhere, or put back to an earlier state.
    pub fn copied(&self) -> Option<Copied> {
        match self.home.provenance() {
            Provenance::Moved => Some(Copied::Moved),
            Provenance::PutBack => Some(Copied::PutBack),
            Provenance::Same | Provenance::First | Provenance::Unknown => None,
        }
    }

    /// The folder's path.
    pub fn dir(&self) -> PathBuf {
        self.home.dir().to_path_buf()
    }

    /// The side, if it was chosen.
    pub fn role(&self) -> Option<Role> {
        self.role
    }

    /// All exercises that ship with the program.
    pub fn catalogue(&self) -> &Catalogue {
        &self.catalogue
    }

    /// The language of all texts: the chosen one, otherwise the system's, otherwise English.
    pub fn locale(&self) -> Locale {
        self.chosen_locale().unwrap_or_else(platform::locale)
    }

    /// The chosen language; `None` if the system's is used.
    fn chosen_locale(&self) -> Option<Locale> {
        Locale::closest(&self.setting(LANGUAGE).ok().flatten()?)
    }

    /// Chooses the language of all texts by its tag; `None` uses the system's.
    ///
    /// # Errors
    /// [`Failure::Internal`] for a language without texts; any failure to write the setting.
    pub fn choose_locale(&mut self, tag: Option<&str>) -> ActionResult<()> {
        let known = |tag| Locale::closest(tag).ok_or_else(|| refuse::internal(format!("no texts in {tag:?}")));
        let locale = tag.map(known).transpose()?;
        self.set_locale(locale)
    }

    /// Chooses a language that is known to exist; `None` uses the system's.
    ///
    /// # Errors
    /// Any failure to write the setting.
    pub(crate) fn set_locale(&mut self, locale: Option<Locale>) -> ActionResult<()> {
        let dir = self.dir();
        let tag = locale.map_or(FOLLOW_SYSTEM, Locale::tag);
        let done = self.home.store_mut().transaction(|tx| setting::put(tx, LANGUAGE, tag));
        done.map_err(refuse::store(&dir))
    }

    /// Chooses the side; choosing the same one again changes nothing.
    ///
    /// # Errors
    /// [`Failure::OtherRole`] if the folder is already on the other side.
    pub fn choose_role(&mut self, role: Role) -> ActionResult<()> {
        match self.role {
            Some(chosen) if chosen == role => return Ok(()),
            Some(_) => return Err(Failure::OtherRole),
            None => {}
        }
        let log = vault::random::log_id();
        let dir = self.dir();
        let name = if role == Role::Patient { "patient" } else { "clinic" };
        let chosen = self.home.store_mut().transaction(|tx| {
            setting::put(tx, ROLE, name)?;
            if role == Role::Patient { store::table::log::begin(tx, &log.0) } else { Ok(()) }
        });
        chosen.map_err(refuse::store(&dir))?;
        self.role = Some(role);
        Ok(())
    }

    /// The state of the program for the window. On the patient's side this also logs that the program was opened today.
    pub fn app_state(&mut self, moment: &Moment) -> ActionResult<AppState> {
        let has_plan = self.role == Some(Role::Patient) && patient::plans::any(self)?;
        if has_plan {
            match patient::today::opened(self, moment) {
                // What is there can still be looked at.
                Err(failure) if is_no_room(&failure) => {}
                opened => opened?,
            }
        }
        let lock_state = if self.role == Some(Role::Clinic) { lock::state(self)? } else { LockState::NotStarted };
        let screen = patient::screen_lock::state(self)?;
        // Once the window is open, it goes where the notification leads.
        let open_slot = if screen == ScreenLock::Locked { None } else { self.open_slot.take() };
        Ok(AppState {
            role: self.role,
            now: moment.now,
            at_is_set: self.at_is_set,
            locale: self.locale().tag().to_owned(),
            chosen_locale: self.chosen_locale().map(|locale| locale.tag().to_owned()),
            pseudo: platform::is_pseudo(),
            has_plan,
            sample: self.is_sample,
            lock: lock_state,
            copied: self.copied(),
            screen,
            open_slot,
        })
    }

    /// Does all of `work`, which may have several steps, or nothing of it. As a step of larger work it is kept or undone with that.
    pub(crate) fn all_or_nothing<T>(&mut self, work: impl FnOnce(&mut DataFolder) -> ActionResult<T>) -> ActionResult<T> {
        if self.home.store().is_in_larger_transaction() {
            return work(self);
        }
        let dir = self.dir();
        self.home.store_mut().begin().map_err(refuse::store(&dir))?;
        let done = work(self).and_then(|done| self.home.store_mut().keep().map_err(refuse::store(&dir)).map(|()| done));
        if done.is_err() {
            // What was read during `work` is no longer valid.
            self.plan_cache.take();
            self.known_lines.take();
            self.plan_holders.take();
            self.home.store_mut().undo().map_err(refuse::store(&dir))?;
        }
        done
    }

    /// # Errors
    /// [`Failure::NoRole`] or [`Failure::OtherRole`].
    pub(crate) fn require_role(&self, role: Role) -> ActionResult<()> {
        match self.role {
            Some(chosen) if chosen == role => Ok(()),
            Some(_) => Err(Failure::OtherRole),
            None => Err(Failure::NoRole),
        }
    }

    pub(crate) fn setting(&self, name: &str) -> ActionResult<Option<String>> {
        self.home.store().read(|view| setting::get(view, name)).map_err(refuse::store(self.home.dir()))
    }
}

/// Whether the failure is that of a full disk. What only reads goes on.
pub fn is_no_room(failure: &Failure) -> bool {
    matches!(failure, Failure::HomeFull { .. } | Failure::HomeDisk { .. })
}

/// Gives a folder that is new here, or a copy, ids of its own.
pub(crate) fn settle_in(home: &mut Home) -> ActionResult<()> {
    let dir = home.dir().to_path_buf();
    home.settle_in(&vault::random::store_id(), &vault::random::log_id().0).map_err(refuse::store(&dir))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_is_chosen_by_tag_and_one_stored_without_a_region_is_read() {
        let dir = tempfile::tempdir().expect("there is room for temporary files");
        let mut folder = DataFolder::open(dir.path(), true).expect("a new folder");
        assert_eq!(folder.chosen_locale(), None);
        let stored = folder.home.store_mut().transaction(|tx| setting::put(tx, LANGUAGE, "es"));
        stored.expect("it is written");
        assert_eq!(folder.locale(), Locale::Es);
        folder.choose_locale(Some("en-US")).expect("there are texts in it");
        assert_eq!(folder.locale(), Locale::EnUs);
        assert!(matches!(folder.choose_locale(Some("xx")), Err(Failure::Internal { .. })));
        assert_eq!(folder.locale(), Locale::EnUs, "nothing has changed");
        folder.choose_locale(None).expect("the system's can always be followed");
        assert_eq!(folder.chosen_locale(), None);
    }
}
