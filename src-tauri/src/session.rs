//! What commands and reminders share: the open data folder and the clock.

use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};

use actions::{Clock, House, Moment};
use exercises::sway::Sample;
use wire::Failure;

/// Recorded trials that the window replays, one after the other, as if they came from the sensor.
pub struct Replays(pub Vec<Vec<Sample>>);

/// The open data folder (or why it could not be opened) and the clock.
pub struct Session {
    house: Mutex<Result<House, Failure>>,
    clock: Clock,
}

impl Session {
    /// Opens the data folder. A refusal is kept, so that the window can show it.
    pub fn open(home: &Path, clock: Clock) -> Session {
        let house = House::open(home, true).map(|mut house| {
            house.at_is_set = clock.is_set();
            house
        });
        Session { house: Mutex::new(house), clock }
    }

    /// Does something in the house at this moment.
    ///
    /// # Errors
    /// Whatever `act` refuses, or the refusal of the folder itself.
    pub fn with<T>(&self, act: impl FnOnce(&mut House, &Moment) -> Result<T, Failure>) -> Result<T, Failure> {
        // A command that panicked has written nothing: a transaction that is not finished is undone.
        let mut house: MutexGuard<'_, _> = self.house.lock().unwrap_or_else(PoisonError::into_inner);
        match house.as_mut() {
            Ok(house) => act(house, &self.clock.moment()),
            Err(failure) => Err(failure.clone()),
        }
    }
}
