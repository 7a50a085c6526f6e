//! After any sequence of transactions, some of them aborted, with restarts, backups and erasing in between, the store has the same
//! contents as a simple model in memory.

mod model_state;
mod support;

use model_state::{Model, Operation, observed};
use proptest::prelude::*;
use store::{Home, StoreError};
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
    Erase,
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
        None => ProptestConfig { cases: 32, ..usual },
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_store_holds_what_the_model_says(steps in steps()) {
        let (dir, mut at) = place();
        let mut home = Home::open(&at, true).expect("a new folder");
        let mut model = Model::default();
        for (number, step) in steps.into_iter().enumerate() {
            match step {
                Step::Transaction { operations, given_up } => transact(&mut home, &mut model, &operations, given_up),
                Step::Reopen => {
                    drop(home);
                    home = Home::open(&at, false).expect("closed in order");
                }
                Step::Move => {
                    let copy = dir.path().join("copy");
                    home.store().backup(&copy).expect("room");
                    at = dir.path().join(format!("home after step {number}"));
                    home = Home::restore(&at, &copy).expect("a new folder");
                }
                Step::Erase => {
                    home.store_mut().erase().expect("free");
                    model = Model::default();
                }
                Step::Settle => home.store().settle().expect("free"),
            }
            prop_assert_eq!(&home.store().read(observed).expect("readable"), &model);
        }
    }
}
