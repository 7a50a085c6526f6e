//! What commands and reminders share: the open data folder and the clock.

use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};

use actions::patient::sample;
use actions::{Clock, House, Moment};
use exercises::sway::Sample;
use wire::Failure;

use crate::home::SampleFolder;

/// Recorded trials that the window replays, one after the other, as if they came from the sensor.
pub struct Replays(pub Vec<Vec<Sample>>);

/// The open data folder (or why it could not be opened), the sample that a person may look around in, and the clock.
pub struct Session {
    house: Mutex<Result<House, Failure>>,
    // Where both are locked, this one is first.
    around: Mutex<Option<Around>>,
    clock: Clock,
}

/// A sample and the folder that goes with it.
struct Around {
    house: House,
    // After the house, so that it is closed before its folder goes.
    _folder: SampleFolder,
}

impl Session {
    /// Opens the data folder. A refusal is kept, so that the window can show it.
    pub fn open(home: &Path, clock: Clock) -> Session {
        let house = House::open(home, true).map(|mut house| {
            house.at_is_set = clock.is_set();
            // What a start left that was ended by force.
            drop(SampleFolder::within(home));
            house
        });
        Session { house: Mutex::new(house), around: Mutex::new(None), clock }
    }

    /// Whether the data folder could be opened.
    pub fn is_open(&self) -> bool {
        self.house.lock().unwrap_or_else(PoisonError::into_inner).is_ok()
    }

    /// Does something in what the window shows at this moment: the person's own data folder, or the sample.
    ///
    /// # Errors
    /// Whatever `act` refuses, or the refusal of the folder itself.
    pub fn with<T>(&self, act: impl FnOnce(&mut House, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        match self.around().as_mut() {
            Some(around) => act(&mut around.house, &self.clock.moment()),
            None => self.own(act),
        }
    }

    /// As [`Session::with`], where it would mean nothing in a sample.
    ///
    /// # Errors
    /// As [`Session::with`]; [`Failure::OnlySample`] while the person looks around in one.
    pub fn in_earnest<T>(&self, act: impl FnOnce(&mut House, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        let around = self.around();
        if around.is_some() { Err(Failure::OnlySample) } else { self.own(act) }
    }

    /// Begins to look around in a sample plan, or leaves it.
    ///
    /// # Errors
    /// What keeps a sample from being made.
    pub fn look_around(&self, begin: bool) -> Result<(), Failure> {
        let mut around = self.around();
        *around = if begin { Some(self.sample()?) } else { None };
        Ok(())
    }

    fn sample(&self) -> Result<Around, Failure> {
        let (lang, folder) = self.own(|house, _| Ok((house.lang(), SampleFolder::within(&house.dir()))))?;
        folder.remove().map_err(|error| Failure::Internal { detail: error.to_string() })?;
        let mut house = sample::open(folder.path(), &self.clock.moment(), lang)?;
        house.at_is_set = self.clock.is_set();
        Ok(Around { house, _folder: folder })
    }

    fn around(&self) -> MutexGuard<'_, Option<Around>> {
        self.around.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Does something in the person's own data folder, whatever the window shows.
    ///
    /// # Errors
    /// As [`Session::with`].
    pub fn own<T>(&self, act: impl FnOnce(&mut House, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        // A command that panicked has written nothing: a transaction that is not finished is undone.
        let mut house: MutexGuard<'_, _> = self.house.lock().unwrap_or_else(PoisonError::into_inner);
        match house.as_mut() {
            Ok(house) => act(house, &self.clock.moment()),
            Err(failure) => Err(failure.clone()),
        }
    }
}
