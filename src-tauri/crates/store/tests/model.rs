//! After any sequence of transactions, some of them aborted, with restarts, backups, restoring, salvaging and erasing in between, the store
//! has the same contents as a simple model in memory. What is remembered outside the data folder says each time whether it is a copy.

mod model_state;
mod support;

use model_state::{Model, Operation, observed};
use proptest::prelude::*;
use std::path::Path;
use store::{Home, Provenance, StoreError, WebView};
use support::place;

/// A step after which the store is compared with the model.
#[derive(Debug, Clone)]
enum Step {
    /// One transaction; if `given_up` is set, its work ends with an error.
    Transaction {
        operations: Vec<Operation>,
        given_up: bool,
    },
    Reopen,
    /// Makes a backup and continues with the restored copy in another folder.
    Move,
    /// Makes a backup that a later step may put back.
    Keep,
    /// Puts the last backup back, if there is one.
    PutBack,
    /// Makes a new database of all rows of this one, as if it were damaged.
    Salvage,
    Erase,
    /// Erases the whole folder.
    EraseFolder,
    Settle,
}

fn steps() -> impl Strategy<Value = Vec<Step>> {
    let transaction = (prop::collection::vec(Operation::any(), 1..6), prop::bool::weighted(0.2))
        .prop_map(|(operations, given_up)| Step::Transaction { operations, given_up });
    prop::collection::vec(
        prop_oneof![
            24 => transaction,
            3 => Just(Step::Reopen),
            1 => Just(Step::Move),
            2 => Just(Step::Keep),
            2 => Just(Step::PutBack),
            1 => Just(Step::Salvage),
            1 => Just(Step::EraseFolder),
            1 => Just(Step::Erase),
            1 => Just(Step::Settle),
        ],
        1..40,
    )
}

/// Does the operations in both, and checks that both allow or refuse them; a refused or aborted transaction is undone in both.
fn transact(home: &mut Home, model: &mut Model, operations: &[Operation], given_up: bool) {
    let mut tried = model.clone();
    let allowed = operations.iter().all(|operation| operation.in_model(&mut tried));
    let outcome = home.store_mut().transaction(|tx| {
        operations.iter().try_for_each(|operation| operation.in_store(tx))?;
        if given_up { Err(StoreError::Busy) } else { Ok(()) }
    });
    match outcome {
        Ok(()) => assert!(allowed && !given_up, "the store allowed what the model refuses: {operations:?}"),
        Err(StoreError::Busy) => assert!(allowed && given_up, "{operations:?}"),
        Err(StoreError::Conflict { .. } | StoreError::NoRow { .. }) => {
            assert!(!allowed, "the store refused what the model allows: {operations:?}");
        }
        Err(other) => panic!("{other}"),
    }
    if allowed && !given_up {
        *model = tried;
    }
}

/// Fewer cases than usual, because each case syncs the disk many times; `PROPTEST_CASES` sets another number.
fn config() -> ProptestConfig {
    let usual = ProptestConfig::default();
    match std::env::var_os("PROPTEST_CASES") {
        Some(_) => usual,
        None => ProptestConfig { cases: 24, ..usual },
    }
}

/// A data folder, the model of it, and what is remembered of it.
struct World {
    dir: tempfile::TempDir,
    at: std::path::PathBuf,
    home: Option<Home>,
    model: Model,
    kept: Option<Model>,
    /// The last number of which ids were made.
    ids: u64,
}

impl World {
    fn new() -> World {
        let (dir, at) = place();
        let mut world = World { dir, at, home: None, model: Model::default(), kept: None, ids: 0 };
        world.open(true, &[Provenance::First]);
        world
    }

    fn home(&mut self) -> &mut Home {
        self.home.as_mut().expect("open")
    }

    fn state(&self) -> std::path::PathBuf {
        self.dir.path().join("state")
    }

    /// Closes the folder and opens it again; it must be one of these.
    fn open(&mut self, create: bool, expected: &[Provenance]) {
        drop(self.home.take());
        let home = Home::open_watched(&self.at, create, Some(&self.state())).expect("closed in order");
        assert!(expected.contains(&home.provenance()), "{:?} is none of {expected:?}", home.provenance());
        self.settle_in(home);
    }

    /// Gives the folder ids of its own, if it is new or a copy.
    fn settle_in(&mut self, mut home: Home) {
        self.ids += 1;
        let id = self.ids.to_be_bytes();
        home.settle_in(&[id, id].concat().try_into().expect("16 bytes"), &id).expect("room");
        if home.provenance().is_copy() {
            self.model.succeed(&id);
        }
        self.home = Some(home);
    }

    /// Backs up, and continues with the restored copy in another folder.
    fn move_to(&mut self, name: &Path) {
        let copy = self.dir.path().join("copy");
        self.home().store().backup(&copy).expect("room");
        drop(self.home.take());
        self.at = self.dir.path().join(name);
        drop(Home::restore(&self.at, &copy).expect("a new folder"));
        self.open(false, &[Provenance::Moved, Provenance::First]);
    }

    fn keep(&mut self) {
        let kept = self.dir.path().join("kept");
        self.home().store().backup(&kept).expect("room");
        self.kept = Some(self.model.clone());
    }

    fn put_back(&mut self) {
        let Some(kept) = self.kept.clone() else { return };
        drop(self.home.take());
        let replaced = std::mem::replace(&mut self.model, kept);
        let (from, state) = (self.dir.path().join("kept"), self.state());
        let (home, before) = Home::restore_over(&self.at, &from, "a day", Some(&state)).expect("a sound copy");
        let elsewhere = self.dir.path().join("looked at");
        let seen = Home::restore(&elsewhere, &before.expect("there was one")).expect("what was replaced is whole");
        assert_eq!(seen.store().read(observed), Ok::<_, StoreError>(replaced));
        drop(seen);
        std::fs::remove_dir_all(elsewhere).expect("the test owns it");
        assert!(home.provenance().is_copy(), "{:?}", home.provenance());
        self.settle_in(home);
    }

    fn salvage(&mut self) {
        drop(self.home.take());
        let (home, salvaged) = Home::salvage(&self.at, "a day", Some(&self.state())).expect("nothing is damaged");
        assert!(salvaged.tables.iter().all(|table| table.lost == 0 && table.is_whole), "{salvaged:?}");
        self.settle_in(home);
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_store_holds_what_the_model_says(steps in steps()) {
        let mut world = World::new();
        for (number, step) in steps.into_iter().enumerate() {
            match step {
                Step::Transaction { operations, given_up } => {
                    let World { home, model, .. } = &mut world;
                    transact(home.as_mut().expect("open"), model, &operations, given_up);
                }
                Step::Reopen => world.open(false, &[Provenance::Same, Provenance::First]),
                Step::Move => world.move_to(Path::new(&format!("home after step {number}"))),
                Step::Keep => world.keep(),
                Step::PutBack => world.put_back(),
                Step::Salvage => world.salvage(),
                Step::Erase => {
                    world.home().store_mut().erase().expect("free");
                    world.model = Model::default();
                }
                Step::EraseFolder => {
                    world.home().erase(WebView::Closed).expect("free");
                    world.model = Model::default();
                }
                Step::Settle => world.home().store().settle().expect("free"),
            }
            let found = world.home().store().read(observed).expect("readable");
            prop_assert_eq!(&found, &world.model);
        }
    }
}
