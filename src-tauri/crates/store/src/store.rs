//! The open database: transactions, backup, erasing.

use crate::table::origin;
use crate::witness::Witness;
use crate::{StoreError, files, migration, opening};
use rusqlite::config::DbConfig;
use rusqlite::{Connection, Savepoint, Transaction, TransactionBehavior};
use std::ops::Deref;
use std::path::{Path, PathBuf};

/// The open database of one [`crate::Home`].
#[derive(Debug)]
pub struct Store {
    connection: Connection,
    path: PathBuf,
    /// Where the number of transactions is noted outside the data folder.
    witness: Option<Witness>,
    /// Why nothing can be written, if the disk had no room when the database was opened.
    closed: Option<Closed>,
}

/// Why nothing can be written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Closed {
    /// It was opened for reading: opening it again may help.
    NoRoom,
    /// It is a copy that has no ids of its own yet; what is written now would pass for the original's.
    Unsettled,
}

/// Access for reading: one unchanging view of all tables.
#[derive(Debug)]
pub struct View<'s>(Handle<'s>);

/// What SQLite keeps open during a read or a transaction.
#[derive(Debug)]
enum Handle<'s> {
    Whole(Transaction<'s>),
    /// A transaction within a larger one (see [`Store::begin`]): if it fails, only its own changes are undone.
    Part(Savepoint<'s>),
    /// A read within a larger transaction, during which nobody else can write.
    Look(&'s Connection),
}

/// Access for writing: a transaction during which nobody else can write. It can be used as a [`View`] for reading.
#[derive(Debug)]
pub struct Tx<'s>(View<'s>);

impl Store {
    pub(crate) fn new(connection: Connection, path: PathBuf) -> Store {
        Store { connection, path, witness: None, closed: None }
    }

    /// A database that is open for reading alone, because there was no room for what writing needs.
    pub(crate) fn for_reading(connection: Connection, path: PathBuf) -> Store {
        Store { connection, path, witness: None, closed: Some(Closed::NoRoom) }
    }

    /// From now on nothing can be written: the ids of a copy could not be written.
    pub(crate) fn close_for_writing(&mut self) {
        self.closed = Some(Closed::Unsettled);
    }

    /// Whether nothing can be written because the disk had no room when the database was opened.
    pub fn is_closed_for_writing(&self) -> bool {
        self.closed.is_some()
    }

    /// Makes sure that the database can be written; opens it again if there was no room before.
    fn writable(&mut self) -> Result<(), StoreError> {
        match self.closed {
            None => Ok(()),
            Some(Closed::Unsettled) => Err(StoreError::DiskFull),
            Some(Closed::NoRoom) => {
                // The other connection would keep this one out.
                drop(std::mem::replace(&mut self.connection, Connection::open_in_memory()?));
                let again = opening::open(&self.path).or_else(|_| opening::open_for_reading(&self.path))?;
                self.connection = again.connection;
                self.closed = again.closed;
                if self.closed.is_some() { Err(StoreError::DiskFull) } else { Ok(()) }
            }
        }
    }

    /// Does `work` and commits it, or undoes all of it if it or the commit fails or panics. Once this has returned `Ok`, the changes
    /// survive a crash and a power cut.
    pub fn transaction<T, E: From<StoreError>>(&mut self, work: impl FnOnce(&Tx<'_>) -> Result<T, E>) -> Result<T, E> {
        self.writable()?;
        let begun = if self.connection.is_autocommit() {
            // Immediate: takes the right to write now, so that waiting for it cannot fail halfway.
            Transaction::new(&mut self.connection, TransactionBehavior::Immediate).map(Handle::Whole)
        } else {
            self.connection.savepoint().map(Handle::Part)
        };
        let tx = Tx(View(begun.map_err(StoreError::from)?));
        let done = work(&tx)?;
        let generation = match tx.0.0 {
            Handle::Whole(whole) => {
                let generation = origin::count(&whole)?;
                whole.commit().map_err(StoreError::from)?;
                generation
            }
            Handle::Part(part) => {
                part.commit().map_err(StoreError::from)?;
                None
            }
            Handle::Look(_) => None,
        };
        if let (Some(witness), Some(generation)) = (&self.witness, generation) {
            witness.note(generation);
        }
        Ok(done)
    }

    /// From now on the number of transactions is noted in `witness`.
    pub(crate) fn watched_by(&mut self, witness: Option<Witness>) {
        self.witness = witness;
    }

    /// Begins a larger transaction: the transactions within it are committed together by [`Store::keep`], or undone together by
    /// [`Store::undo`] or when the program ends.
    pub fn begin(&mut self) -> Result<(), StoreError> {
        self.writable()?;
        Ok(self.connection.execute_batch("BEGIN IMMEDIATE")?)
    }

    /// Whether a larger transaction has begun and is neither kept nor undone.
    pub fn is_in_larger_transaction(&self) -> bool {
        !self.connection.is_autocommit()
    }

    /// Commits the larger transaction. If this fails, [`Store::undo`] must still be called.
    pub fn keep(&mut self) -> Result<(), StoreError> {
        let generation = origin::count(&self.connection)?;
        self.connection.execute_batch("COMMIT")?;
        if let (Some(witness), Some(generation)) = (&self.witness, generation) {
            witness.note(generation);
        }
        Ok(())
    }

    /// Undoes the larger transaction, if there is one.
    pub fn undo(&mut self) -> Result<(), StoreError> {
        // A disk error may have ended it already.
        if self.connection.is_autocommit() { Ok(()) } else { Ok(self.connection.execute_batch("ROLLBACK")?) }
    }

    /// Reads one consistent state of all tables.
    pub fn read<T, E: From<StoreError>>(&self, look: impl FnOnce(&View<'_>) -> Result<T, E>) -> Result<T, E> {
        let begun = if self.connection.is_autocommit() {
            Transaction::new_unchecked(&self.connection, TransactionBehavior::Deferred).map(Handle::Whole)
        } else {
            Ok(Handle::Look(&self.connection))
        };
        look(&View(begun.map_err(StoreError::from)?))
    }

    /// A number that changes whenever another connection than this one has changed the database: nothing that was read before then is to
    /// be taken for granted.
    pub fn state_by_others(&self) -> Result<u32, StoreError> {
        Ok(self.connection.pragma_query_value(None, "data_version", |row| row.get(0))?)
    }

    /// Copies everything into one file at `to`, replacing an existing file once the copy was checked. What is unencrypted here is
    /// unencrypted in the copy too. Returns the copy's size, in bytes.
    pub fn backup(&self, to: &Path) -> Result<u64, StoreError> {
        let to = files::absolute(to)?;
        if files::same(&to, &self.path) {
            return Err(StoreError::Occupied { path: to });
        }
        opening::backup(&self.connection, &to)?;
        Ok(files::size(&to)?.unwrap_or_default())
    }

    /// Removes every row of every table, including the append-only log, and what the file and its write-ahead log still contain of
    /// them. The folder is then like new.
    pub fn erase(&mut self) -> Result<(), StoreError> {
        migration::drop_all_tables(&mut self.connection)?;
        self.connection.execute_batch("VACUUM")?;
        self.settle()
    }

    /// The database's path.
    pub(crate) fn path(&self) -> &Path {
        &self.path
    }

    /// Closes the file, so that it can be removed, and leaves its log as it is, to be overwritten as well. Later calls on this store find no
    /// data.
    pub(crate) fn let_go(&mut self) -> Result<(), StoreError> {
        self.witness = None;
        self.connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
        let held = std::mem::replace(&mut self.connection, Connection::open_in_memory()?);
        held.close().map_err(|(_, error)| error.into())
    }

    /// Moves the write-ahead log into the database and empties it, so that deleted or replaced data (a patient, keys under an old
    /// passphrase) are in neither file. Closing the program does this too.
    pub fn settle(&self) -> Result<(), StoreError> {
        let busy: bool = self.connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |row| row.get(0))?;
        if busy { Err(StoreError::Busy) } else { Ok(()) }
    }
}

impl<'s> Deref for Tx<'s> {
    type Target = View<'s>;

    fn deref(&self) -> &View<'s> {
        &self.0
    }
}

impl View<'_> {
    pub(crate) fn sql(&self) -> &Connection {
        match &self.0 {
            Handle::Whole(whole) => whole,
            Handle::Part(part) => part,
            Handle::Look(connection) => connection,
        }
    }

    /// The id that the next insert into a table with `AUTOINCREMENT` gets. It was never used before, so bytes encrypted for a
    /// deleted row can never be decrypted as another row.
    pub(crate) fn next_id(&self, table: &str) -> Result<i64, StoreError> {
        let mut query =
            self.sql().prepare_cached("SELECT coalesce(max(seq), 0) + 1 FROM sqlite_sequence WHERE name = ?1")?;
        Ok(query.query_row([table], |row| row.get(0))?)
    }
}

#[cfg(test)]
mod tests {
    use crate::table::{entry, setting};
    use crate::{Home, StoreError, Tx};
    use rusqlite::StatementStatus;
    use std::panic::{AssertUnwindSafe, catch_unwind};

    fn append(tx: &Tx<'_>, size: usize) -> Result<u32, StoreError> {
        entry::append(tx, &entry::NewEntry { plan: b"p", at_ms: 0, offset_s: 0, payload: &vec![7; size] })
    }

    #[test]
    fn a_query_is_planned_once_whatever_it_asks_for() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let home = Home::open(&dir.path().join("home"), true).expect("a new folder");
        let mut query =
            home.store().connection.prepare("SELECT seq FROM sqlite_sequence WHERE name = ?1").expect("a statement");
        for name in ["entry", "issued", "received"] {
            query.exists([name]).expect("readable");
        }
        assert_eq!(query.get_status(StatementStatus::RePrepare), 0);
    }

    /// Makes SQLite respond as on a full disk, at a size of our choice.
    #[test]
    fn a_full_disk_is_reported_and_loses_nothing() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let mut home = Home::open(&dir.path().join("home"), true).expect("a new folder");
        let limit = |home: &mut Home, pages: i64| {
            let set = home.store_mut().connection.pragma_update_and_check(None, "max_page_count", pages, |_| Ok(()));
            set.expect("known");
        };
        limit(&mut home, 40);
        let mut kept = 0;
        let error = loop {
            // Two rows each time: there may be space for one but not for both.
            let added = home.store_mut().transaction(|tx| append(tx, 3_000).and_then(|_| append(tx, 9_000)));
            match added {
                Ok(n) => kept = n,
                Err(error) => break error,
            }
        };
        assert_eq!(error, StoreError::DiskFull);
        assert!(kept > 0, "some fitted before");
        assert_eq!(home.store().read(entry::count), Ok::<_, StoreError>(kept), "the half that fitted is undone too");
        limit(&mut home, 4_000);
        assert_eq!(home.store_mut().transaction(|tx| append(tx, 9_000)), Ok(kept + 1), "with free space it continues");
    }

    #[test]
    fn work_that_panics_or_fails_halfway_is_undone() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let mut home = Home::open(&dir.path().join("home"), true).expect("a new folder");
        let half = |tx: &Tx<'_>| setting::put(tx, "half", "done");
        let failed = home.store_mut().transaction(|tx| half(tx).and(Err::<(), _>(StoreError::Busy)));
        assert_eq!(failed, Err(StoreError::Busy), "the error of the work is the error of the transaction");
        let panicked = catch_unwind(AssertUnwindSafe(|| {
            home.store_mut().transaction(|tx| {
                half(tx)?;
                panic!("halfway");
                #[expect(unreachable_code, reason = "gives the closure its type")]
                Ok::<(), StoreError>(())
            })
        }));
        assert!(panicked.is_err());
        assert_eq!(home.store().read(setting::all).map(|all| all.len()), Ok::<_, StoreError>(0));
    }

    #[test]
    fn a_larger_transaction_is_kept_or_undone_as_one() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let mut home = Home::open(&dir.path().join("home"), true).expect("a new folder");
        let store = home.store_mut();
        let count = |store: &crate::Store| store.read(entry::count).expect("a view");
        store.begin().expect("free");
        for n in 1..=3 {
            assert_eq!(store.transaction(|tx| append(tx, 10)), Ok(n));
        }
        let failed = store.transaction(|tx| append(tx, 10).and(Err::<(), _>(StoreError::Busy)));
        assert_eq!((failed, count(store)), (Err(StoreError::Busy), 3), "a failure within undoes itself alone");
        store.undo().and_then(|()| store.undo()).expect("also twice");
        assert_eq!(count(store), 0);
        store.begin().expect("free again");
        assert_eq!(store.transaction(|tx| append(tx, 10)), Ok(1), "and the numbers start again");
        store.keep().expect("room");
        assert_eq!(count(store), 1);
    }

    /// The connection's settings that the module's documentation promises, as SQLite itself reports them.
    #[test]
    fn the_connection_is_set_as_promised() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let home = Home::open(&dir.path().join("home"), true).expect("a new folder");
        let set = |name: &str| {
            let value =
                home.store().connection.pragma_query_value(None, name, |row| row.get::<_, rusqlite::types::Value>(0));
            value.expect("known")
        };
        assert_eq!(set("journal_mode"), "wal".to_owned().into());
        for (name, value) in [
            ("synchronous", 2i64),
            ("fullfsync", 1),
            ("checkpoint_fullfsync", 1),
            ("foreign_keys", 1),
            ("trusted_schema", 0),
            ("cell_size_check", 1),
            ("secure_delete", 1),
            ("temp_store", 2),
        ] {
            assert_eq!(set(name), value.into(), "{name}");
        }
    }
}
