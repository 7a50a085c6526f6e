//! What commands and reminders share: the open data folder and the clock.

use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};

use actions::patient::sample;
use actions::{Clock, DataFolder, Moment};
use exercises::sway::Sample;
use wire::Failure;

use crate::home::SampleFolder;

/// Recorded trials that the window replays, one after the other, as if they came from the sensor.
pub struct Replays(pub Vec<Vec<Sample>>);

/// The open data folder (or why it could not be opened), the sample that a person may look around in, and the clock.
pub struct Session {
    folder: Mutex<Result<DataFolder, Failure>>,
    // Where both are locked, this one is first.
    open_sample: Mutex<Option<OpenSample>>,
    clock: Clock,
}

/// A sample and the folder that goes with it.
struct OpenSample {
    folder: DataFolder,
    // After the data folder, so that it is closed before its folder goes.
    _folder: SampleFolder,
}

impl Session {
    /// Opens the data folder. A refusal is kept, so that the window can show it.
    pub fn open(home: &Path, clock: Clock) -> Session {
        let folder = DataFolder::open(home, true).map(|mut folder| {
            folder.at_is_set = clock.is_set();
            // What a start left that was ended by force.
            drop(SampleFolder::within(home));
            folder
        });
        Session { folder: Mutex::new(folder), open_sample: Mutex::new(None), clock }
    }

    /// Whether the data folder could be opened.
    pub fn is_open(&self) -> bool {
        self.folder.lock().unwrap_or_else(PoisonError::into_inner).is_ok()
    }

    /// Does something in what the window shows at this moment: the person's own data folder, or the sample.
    ///
    /// # Errors
    /// Whatever `act` refuses, or the refusal of the folder itself.
    pub fn with<T>(&self, act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        match self.open_sample().as_mut() {
            Some(open_sample) => act(&mut open_sample.folder, &self.clock.moment()),
            None => self.with_own_folder(act),
        }
    }

    /// As [`Session::with`], where it would mean nothing in a sample.
    ///
    /// # Errors
    /// As [`Session::with`]; [`Failure::OnlySample`] while the person looks around in one.
    pub fn outside_sample<T>(&self, act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        let open_sample = self.open_sample();
        if open_sample.is_some() { Err(Failure::OnlySample) } else { self.with_own_folder(act) }
    }

    /// Begins to look around in a sample plan, or leaves it.
    ///
    /// # Errors
    /// What keeps a sample from being made.
    pub fn show_sample(&self, begin: bool) -> Result<(), Failure> {
        let mut open_sample = self.open_sample();
        *open_sample = if begin { Some(self.sample()?) } else { None };
        Ok(())
    }

    /// Chooses the language of all text, in the person's own folder and in a sample; `None` for the system's.
    ///
    /// # Errors
    /// As [`Session::with`].
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

    /// Does something in the person's own data folder, whatever the window shows.
    ///
    /// # Errors
    /// As [`Session::with`].
    pub fn with_own_folder<T>(
        &self,
        act: impl FnOnce(&mut DataFolder, &Moment) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        // A command that panicked has written nothing: a transaction that is not finished is undone.
        let mut folder: MutexGuard<'_, _> = self.folder.lock().unwrap_or_else(PoisonError::into_inner);
        match folder.as_mut() {
            Ok(folder) => act(folder, &self.clock.moment()),
            Err(failure) => Err(failure.clone()),
        }
    }
}
