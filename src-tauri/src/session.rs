//! The state that commands and reminders share: the open data folder and the clock.

use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use actions::patient::{refitting, sample, screen_lock};
use actions::{Clock, DataFolder, Moment, backup, platform};
use exercises::sway::Sample;
use wire::Failure;
use wire::app::Role;

use crate::home::SampleFolder;

/// Recorded trials that the window replays one after the other, as if they came from the sensor.
pub struct Replays(pub Vec<Vec<Sample>>);

/// The open data folder (or why it could not be opened), the sample if one is open, and the clock.
pub struct Session {
    home: PathBuf,
    folder: Mutex<Result<DataFolder, Failure>>,
    // If both are locked, this one must be locked first.
    open_sample: Mutex<Option<OpenSample>>,
    clock: Clock,
}

/// `act`, but only while the patient's window is not locked.
fn unless_locked<T>(
    act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>,
) -> impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure> {
    move |folder, moment| {
        screen_lock::refuse_if_locked(folder)?;
        act(folder, moment)
    }
}

fn opened(home: &Path, clock: &Clock) -> Result<DataFolder, Failure> {
    let mut folder = DataFolder::open_remembering(home, true, platform::remembered().as_deref())?;
    folder.at_is_set = clock.is_set();
    Ok(folder)
}

/// A sample and its folder.
struct OpenSample {
    folder: DataFolder,
    // Declared after the data folder, so that the data folder is closed before its directory is removed.
    _folder: SampleFolder,
}

impl Session {
    /// Opens the data folder. A failure is kept, so that the window can show it.
    pub fn open(home: &Path, clock: Clock) -> Session {
        let folder = opened(home, &clock).inspect(|_| {
            // Removes a sample that a killed program left behind.
            drop(SampleFolder::within(home));
        });
        Session { home: home.into(), folder: Mutex::new(folder), open_sample: Mutex::new(None), clock }
    }

    /// The data folder's path, also if it could not be opened.
    pub fn home(&self) -> &Path {
        &self.home
    }

    /// Closes the data folder, if it is open, and puts the one in its place that `make` makes at its path. If that fails, the folder is
    /// opened as it was; a clinic's store is then locked.
    ///
    /// # Errors
    /// Any failure of `make`; [`Failure::OnlySample`] while a sample is open.
    pub fn replace_folder<T>(
        &self,
        make: impl FnOnce(&Path, &Moment) -> Result<(DataFolder, T), Failure>,
    ) -> Result<T, Failure> {
        if self.open_sample().is_some() {
            return Err(Failure::OnlySample);
        }
        let mut folder = self.folder.lock().unwrap_or_else(PoisonError::into_inner);
        folder.as_ref().map_or(Ok(()), screen_lock::refuse_if_locked)?;
        // Another folder can be opened only after this one is closed.
        *folder = Err(Failure::HomeInUse { home: self.home.display().to_string() });
        match make(&self.home, &self.clock.moment()) {
            Ok((mut made, said)) => {
                made.at_is_set = self.clock.is_set();
                *folder = Ok(made);
                Ok(said)
            }
            Err(failure) => {
                *folder = opened(&self.home, &self.clock);
                Err(failure)
            }
        }
    }

    /// Whether the data folder could be opened.
    pub fn is_open(&self) -> bool {
        self.folder.lock().unwrap_or_else(PoisonError::into_inner).is_ok()
    }

    /// Calls `act` on what the window shows at this moment: the person's own data folder, or the sample.
    ///
    /// # Errors
    /// Any failure of `act`, or the failure to open the folder; [`Failure::ScreenLocked`] while the patient's window is locked.
    pub fn with<T>(&self, act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        self.even_if_locked(unless_locked(act))
    }

    /// Like [`Session::with`], also while the patient's window is locked: for what shows nothing of the record.
    ///
    /// # Errors
    /// As for [`Session::with`], but for the lock.
    pub fn even_if_locked<T>(&self, act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        match self.open_sample().as_mut() {
            Some(open_sample) => act(&mut open_sample.folder, &self.clock.moment()),
            None => self.with_own_folder(act),
        }
    }

    /// Like [`Session::with`], for commands that make no sense in a sample.
    ///
    /// # Errors
    /// As for [`Session::with`]; [`Failure::OnlySample`] while a sample is open.
    pub fn outside_sample<T>(&self, act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        let open_sample = self.open_sample();
        if open_sample.is_some() { Err(Failure::OnlySample) } else { self.with_own_folder(unless_locked(act)) }
    }

    /// Opens a sample plan, or closes it.
    ///
    /// # Errors
    /// Any failure to create the sample.
    pub fn show_sample(&self, begin: bool) -> Result<(), Failure> {
        let mut open_sample = self.open_sample();
        *open_sample = if begin { Some(self.sample()?) } else { None };
        Ok(())
    }

    /// Chooses the language of all texts, in the person's own folder and in a sample; `None` for the system's.
    ///
    /// # Errors
    /// As for [`Session::with`].
    pub fn choose_locale(&self, tag: Option<&str>) -> Result<(), Failure> {
        if let Some(open_sample) = self.open_sample().as_mut() {
            open_sample.folder.choose_locale(tag)?;
        }
        self.with_own_folder(|folder, _| folder.choose_locale(tag))
    }

    fn sample(&self) -> Result<OpenSample, Failure> {
        let (locale, sample_folder) =
            self.with_own_folder(|folder, _| Ok((folder.locale(), SampleFolder::within(&folder.dir()))))?;
        sample_folder.remove().map_err(|error| Failure::Internal { detail: error.to_string() })?;
        let mut folder = sample::open(sample_folder.path(), &self.clock.moment(), locale)?;
        folder.at_is_set = self.clock.is_set();
        Ok(OpenSample { folder, _folder: sample_folder })
    }

    fn open_sample(&self) -> MutexGuard<'_, Option<OpenSample>> {
        self.open_sample.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Calls `act` on the person's own data folder, even if the window shows a sample.
    ///
    /// # Errors
    /// As for [`Session::with`].
    pub fn with_own_folder<T>(
        &self,
        act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        // A command that panicked has written nothing, because an unfinished transaction is undone.
        let mut folder: MutexGuard<'_, _> = self.folder.lock().unwrap_or_else(PoisonError::into_inner);
        match folder.as_mut() {
            Ok(folder) => {
                let moment = self.clock.moment();
                // One that could not be written now is tried again the next time; the section about backups says why.
                let _ = backup::daily(folder, &moment);
                if folder.role() == Some(Role::Patient) {
                    // Times that could not be written now are written the next time.
                    let _ = refitting::settle(folder, &moment);
                }
                act(folder, &moment)
            }
            Err(failure) => Err(failure.clone()),
        }
    }
}
