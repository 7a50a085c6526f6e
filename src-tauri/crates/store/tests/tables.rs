//! The constraints that the tables themselves enforce, even against SQL that bypasses the program's functions.

mod support;

use rusqlite::Connection;
use std::fs;
use std::path::Path;
use store::table::card::{self, Card};
use store::table::entry::{self, NewEntry};
use store::table::{
    clinician, device, digest, draft, issued, keys, log, manifest, norms, own_exercise, patient, patient_case, plan_set,
    received, setting, visit,
};
use store::{Home, LATEST, StoreError, Tx};
use support::{database, place};

/// The result of one transaction in a new folder.
fn within<T>(work: impl FnOnce(&Tx<'_>) -> Result<T, StoreError>) -> Result<T, StoreError> {
    let (_dir, home) = place();
    Home::open(&home, true).expect("a new folder").store_mut().transaction(work)
}

fn sealed(bytes: &[u8]) -> impl FnOnce(i64) -> Result<Vec<u8>, StoreError> {
    move |_| Ok(bytes.to_vec())
}

fn a_card(plan: &[u8], revision: u32, clinic: &[u8]) -> Card {
    Card {
        plan: plan.into(),
        revision,
        clinic: clinic.into(),
        taken_ms: 1_700_000_000_000,
        taken_offset_s: -3_600,
        bytes: format!("signed {revision}").into(),
    }
}

#[track_caller]
fn conflict<T: std::fmt::Debug>(outcome: Result<T, StoreError>, rule: &str) {
    match outcome {
        Err(StoreError::Conflict { detail }) => {
            assert!(detail.contains(rule), "{detail:?} names {rule:?}")
        }
        other => panic!("a conflict is expected, not {other:?}"),
    }
}

#[test]
fn a_setting_is_set_replaced_and_deleted() {
    within(|tx| {
        assert_eq!(setting::get(tx, "language")?, None);
        setting::put(tx, "language", "en")?;
        setting::put(tx, "language", "de")?;
        setting::put(tx, "role", "patient")?;
        assert_eq!(setting::get(tx, "language")?.as_deref(), Some("de"));
        setting::remove(tx, "language")?;
        setting::remove(tx, "never set")?;
        assert_eq!(setting::all(tx)?, [("role".into(), "patient".into())].into());
        Ok(())
    })
    .expect("all allowed");
}

#[test]
fn a_patient_has_one_draft_which_goes_with_the_patient() {
    within(|tx| {
        let one = patient::insert(tx, sealed(b"one"))?;
        let other = patient::insert(tx, sealed(b"other"))?;
        assert_eq!(draft::get(tx, one)?, None);
        draft::put(tx, one, b"first")?;
        draft::put(tx, one, b"second")?;
        draft::put(tx, other, b"of the other")?;
        assert_eq!(draft::get(tx, one)?.as_deref(), Some(&b"second"[..]));
        draft::remove(tx, one)?;
        draft::remove(tx, one)?;
        assert_eq!(draft::get(tx, one)?, None);
        patient::remove(tx, other)?;
        assert_eq!(draft::get(tx, other)?, None);
        Ok(())
    })
    .expect("all allowed");
    conflict(within(|tx| draft::put(tx, 1, b"of nobody")), "FOREIGN KEY");
}

#[test]
fn a_table_of_norms_replaces_the_previous_one() {
    within(|tx| {
        assert_eq!(norms::get(tx)?, None);
        norms::put(tx, b"first")?;
        norms::put(tx, b"second")?;
        assert_eq!(norms::get(tx)?.as_deref(), Some(&b"second"[..]));
        norms::remove(tx)?;
        norms::remove(tx)?;
        assert_eq!(norms::get(tx)?, None);
        Ok(())
    })
    .expect("all allowed");
    conflict(within(|tx| norms::put(tx, b"")), "length(sealed) > 0");
}

#[test]
fn own_exercises_and_sets_are_rows_whose_ids_are_never_used_twice() {
    within(|tx| {
        let (one, other) = (own_exercise::insert(tx, sealed(b"one"))?, own_exercise::insert(tx, sealed(b"other"))?);
        own_exercise::update(tx, one, b"one anew")?;
        own_exercise::remove(tx, other)?;
        own_exercise::remove(tx, other)?;
        let rows = own_exercise::all(tx)?;
        assert_eq!(rows, [own_exercise::Row { id: one, sealed: b"one anew".to_vec() }]);
        assert!(own_exercise::insert(tx, sealed(b"third"))? > other);
        assert_eq!(own_exercise::update(tx, 99, b"x"), Err(StoreError::NoRow { table: "own_exercise", id: 99 }));
        let set = plan_set::insert(tx, sealed(b"set"))?;
        plan_set::update(tx, set, b"set anew")?;
        assert_eq!(plan_set::all(tx)?, [plan_set::Row { id: set, sealed: b"set anew".to_vec() }]);
        plan_set::remove(tx, set)?;
        assert!(plan_set::all(tx)?.is_empty() && plan_set::insert(tx, sealed(b"next"))? > set);
        assert_eq!(plan_set::update(tx, 99, b"x"), Err(StoreError::NoRow { table: "plan_set", id: 99 }));
        Ok(())
    })
    .expect("all allowed");
    conflict(within(|tx| own_exercise::insert(tx, sealed(b""))), "length(sealed) > 0");
    conflict(within(|tx| plan_set::insert(tx, sealed(b""))), "length(sealed) > 0");
}

#[test]
fn entries_of_visits_are_added_and_never_changed_and_go_with_their_patient() {
    within(|tx| {
        let (one, other) = (patient::insert(tx, sealed(b"one"))?, patient::insert(tx, sealed(b"other"))?);
        let first = visit::insert(tx, one, sealed(b"first"))?;
        let second = visit::insert(tx, other, sealed(b"second"))?;
        assert_eq!(visit::of_patient(tx, one)?, [visit::Row { id: first, patient: one, sealed: b"first".to_vec() }]);
        assert_eq!(visit::all(tx)?.len(), 2);
        patient::remove(tx, other)?;
        assert_eq!(visit::all(tx)?.len(), 1);
        assert!(visit::insert(tx, one, sealed(b"third"))? > second);
        Ok(())
    })
    .expect("all allowed");
    conflict(within(|tx| visit::insert(tx, 99, sealed(b"x"))), "FOREIGN KEY");
    let empty = |tx: &Tx<'_>| patient::insert(tx, sealed(b"one")).and_then(|one| visit::insert(tx, one, sealed(b"")));
    conflict(within(empty), "length(sealed) > 0");
}

#[test]
fn a_digest_and_a_case_are_replaced_and_go_with_their_patient() {
    within(|tx| {
        let (one, other) = (patient::insert(tx, sealed(b"one"))?, patient::insert(tx, sealed(b"other"))?);
        for patient in [one, other] {
            digest::put(tx, patient, b"first")?;
            patient_case::put(tx, patient, b"closed")?;
        }
        digest::put(tx, one, b"second")?;
        patient_case::put(tx, one, b"reopened")?;
        assert_eq!(digest::all(tx)?, [(one, b"second".to_vec()), (other, b"first".to_vec())]);
        patient::remove(tx, other)?;
        assert_eq!(digest::all(tx)?.len(), 1);
        assert_eq!(patient_case::all(tx)?, [(one, b"reopened".to_vec())]);
        assert_eq!((patient_case::get(tx, one)?, patient_case::get(tx, other)?), (Some(b"reopened".to_vec()), None));
        Ok(())
    })
    .expect("all allowed");
    conflict(within(|tx| digest::put(tx, 99, b"x")), "FOREIGN KEY");
    conflict(within(|tx| patient_case::put(tx, 99, b"x")), "FOREIGN KEY");
}

#[test]
fn clinicians_have_names_of_their_own_and_numbers_that_are_not_given_again() {
    within(|tx| {
        let (one, other) = (clinician::insert(tx, "Rowan Hale", b"one")?, clinician::insert(tx, "Ash Lindqvist", b"other")?);
        clinician::replace(tx, one, b"one anew")?;
        clinician::remove(tx, other)?;
        assert_eq!(
            clinician::all(tx)?,
            [clinician::Clinician { id: one, name: "Rowan Hale".into(), sealed: b"one anew".into() }]
        );
        assert!(clinician::insert(tx, "Ash Lindqvist", b"again")? > other);
        assert_eq!(clinician::replace(tx, 99, b"x"), Err(StoreError::NoRow { table: "clinician", id: 99 }));
        assert_eq!(clinician::remove(tx, 99), Err(StoreError::NoRow { table: "clinician", id: 99 }));
        Ok(())
    })
    .expect("all allowed");
    let twice =
        |tx: &Tx<'_>| clinician::insert(tx, "Rowan Hale", b"x").and_then(|_| clinician::insert(tx, "Rowan Hale", b"x"));
    conflict(within(twice), "UNIQUE");
}

#[test]
fn a_log_begins_once_and_counts_its_exports() {
    let outcome = within(|tx| {
        assert_eq!(log::id(tx)?, None);
        assert_eq!(log::next_export(tx), Err(StoreError::NoRow { table: "log", id: 1 }));
        log::begin(tx, b"12345678")?;
        assert_eq!(log::id(tx)?.as_deref(), Some(&b"12345678"[..]));
        assert_eq!((log::next_export(tx)?, log::next_export(tx)?), (1, 2));
        log::begin(tx, b"87654321")
    });
    conflict(outcome, "log.one");
}

#[test]
fn cards_are_kept_by_plan_and_revision() {
    within(|tx| {
        for (plan, revision, clinic) in [("p", 2, "north"), ("p", 1, "north"), ("q", 1, "south")] {
            card::insert(tx, &a_card(plan.as_bytes(), revision, clinic.as_bytes()))?;
        }
        assert_eq!(card::get(tx, b"p", 1)?, Some(a_card(b"p", 1, b"north")));
        assert_eq!(card::get(tx, b"p", 3)?, None);
        assert_eq!(card::newest(tx)?, [a_card(b"p", 2, b"north"), a_card(b"q", 1, b"south")]);
        assert_eq!(card::all(tx)?.len(), 3);
        Ok(())
    })
    .expect("all allowed");
}

#[test]
fn the_same_card_is_not_kept_twice() {
    let outcome = within(|tx| {
        card::insert(tx, &a_card(b"p", 1, b"north"))?;
        card::insert(tx, &a_card(b"p", 1, b"north"))
    });
    conflict(outcome, "card.plan, card.revision");
}

#[test]
fn a_plan_stays_with_its_clinic() {
    let outcome = within(|tx| {
        card::insert(tx, &a_card(b"p", 1, b"north"))?;
        card::insert(tx, &a_card(b"p", 2, b"south"))
    });
    conflict(outcome, "belongs to another clinic");
}

#[test]
fn entries_are_numbered_and_found_by_time() {
    within(|tx| {
        for (at_ms, payload) in [(100, b"a"), (300, b"b"), (200, b"c")] {
            entry::append(tx, &NewEntry { plan: b"p", at_ms, offset_s: 0, payload })?;
        }
        let payloads = |entries: Vec<entry::Entry>| entries.into_iter().flat_map(|e| e.payload).collect::<Vec<_>>();
        assert_eq!(payloads(entry::all(tx)?), b"abc", "the order is that of appending, not of the clock");
        assert_eq!(payloads(entry::after(tx, 1)?), b"bc");
        assert_eq!(payloads(entry::within(tx, 100..300)?), b"ac", "the end is excluded");
        assert_eq!(entry::count(tx)?, 3);
        Ok(())
    })
    .expect("all allowed");
}

#[test]
fn keys_are_kept_once_and_replaced_on_purpose() {
    let outcome = within(|tx| {
        assert_eq!(keys::get(tx)?, None);
        assert_eq!(keys::replace(tx, b"x"), Err(StoreError::NoRow { table: "keys", id: 1 }));
        keys::insert(tx, b"first")?;
        keys::replace(tx, b"under a new passphrase")?;
        assert_eq!(keys::get(tx)?.as_deref(), Some(&b"under a new passphrase"[..]));
        keys::insert(tx, b"second")
    });
    conflict(outcome, "keys.one");
}

#[test]
fn the_first_card_of_each_patient_is_found() {
    within(|tx| {
        let [one, two, _without] = [1, 2, 3].map(|_| patient::insert(tx, sealed(b"patient")).expect("a new row"));
        issued::insert(tx, two, 2, sealed(b"two, second"))?;
        issued::insert(tx, two, 1, sealed(b"two, first"))?;
        issued::insert(tx, one, 3, sealed(b"one, third"))?;
        let above = |row| issued::oldest_of_each_above(tx, row);
        let first: Vec<_> = above(0)?.into_iter().map(|row| (row.patient, row.sealed)).collect();
        assert_eq!(first, [(two, b"two, first".to_vec()), (one, b"one, third".to_vec())]);
        let later: Vec<_> = above(2)?.into_iter().map(|row| row.patient).collect();
        assert_eq!(later, [one]);
        Ok(())
    })
    .expect("all of it is kept");
}

#[test]
fn a_row_is_sealed_for_the_id_that_it_gets() {
    within(|tx| {
        let seal = |id: i64| Ok::<_, StoreError>(format!("for {id}").into_bytes());
        let one = patient::insert(tx, seal)?;
        let two = patient::insert(tx, seal)?;
        let card = issued::insert(tx, two, 1, seal)?;
        let summary = received::insert(tx, two, b"log", 1, seal)?;
        for (id, bytes) in [
            (one, patient::get(tx, one)?.expect("there").sealed),
            (two, patient::get(tx, two)?.expect("there").sealed),
            (card, issued::of_patient(tx, two)?.remove(0).sealed),
            (summary, received::of_patient(tx, two)?.remove(0).sealed),
        ] {
            assert_eq!(bytes, format!("for {id}").into_bytes());
        }
        Ok(())
    })
    .expect("all allowed");
}

#[test]
fn an_id_is_never_given_twice() {
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    let add = |tx: &Tx<'_>| patient::insert(tx, sealed(b"x"));
    let last = open.store_mut().transaction(|tx| add(tx).and_then(|_| add(tx))).expect("room");
    open.store_mut().transaction(|tx| patient::remove(tx, last)).expect("there");
    drop(open);
    let mut open = Home::open(&home, false).expect("there");
    assert_eq!(open.store_mut().transaction(add), Ok(last + 1), "not even after the newest row is gone");
}

#[test]
fn a_row_that_cannot_be_sealed_is_not_there() {
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    let refuse = |_| Err(StoreError::Busy);
    assert_eq!(open.store_mut().transaction(|tx| patient::insert(tx, refuse)), Err(StoreError::Busy));
    assert_eq!(open.store().read(patient::all), Ok::<_, StoreError>(vec![]));
}

#[test]
fn a_patient_is_changed_and_removed_with_all_their_rows() {
    within(|tx| {
        let (one, two) = (patient::insert(tx, sealed(b"1"))?, patient::insert(tx, sealed(b"2"))?);
        for id in [one, two] {
            issued::insert(tx, id, 7, sealed(b"card"))?;
            received::insert(tx, id, b"log", 3, sealed(b"summary"))?;
        }
        patient::update(tx, two, b"renamed")?;
        patient::remove(tx, one)?;
        assert_eq!(patient::all(tx)?, [patient::Patient { id: two, sealed: b"renamed".into() }]);
        assert_eq!((issued::of_patient(tx, one)?.len(), received::of_patient(tx, one)?.len()), (0, 0));
        assert_eq!((issued::of_patient(tx, two)?.len(), received::of_patient(tx, two)?.len()), (1, 1));
        assert_eq!(patient::update(tx, one, b"x"), Err(StoreError::NoRow { table: "patient", id: one }));
        assert_eq!(patient::remove(tx, one), Err(StoreError::NoRow { table: "patient", id: one }));
        Ok(())
    })
    .expect("all allowed");
}

#[test]
fn nothing_is_issued_to_or_received_from_an_unknown_patient() {
    conflict(within(|tx| issued::insert(tx, 9, 1, sealed(b"card"))), "FOREIGN KEY");
    conflict(within(|tx| received::insert(tx, 9, b"log", 1, sealed(b"summary"))), "FOREIGN KEY");
}

#[test]
fn a_revision_is_issued_once() {
    let outcome = within(|tx| {
        let id = patient::insert(tx, sealed(b"1"))?;
        issued::insert(tx, id, 1, sealed(b"card"))?;
        issued::insert(tx, id, 1, sealed(b"another"))
    });
    conflict(outcome, "issued.patient, issued.revision");
}

#[test]
fn an_export_is_received_once_and_found_again() {
    let outcome = within(|tx| {
        let id = patient::insert(tx, sealed(b"1"))?;
        for (log, counter) in [(&b"work"[..], 2), (b"home", 2), (b"work", 1)] {
            received::insert(tx, id, log, counter, sealed(b"summary"))?;
        }
        assert_eq!(received::find(tx, id, b"work", 2)?.map(|row| row.counter), Some(2));
        assert_eq!(received::find(tx, id, b"home", 1)?, None, "an older one that is missing may still come");
        let order: Vec<_> = received::of_patient(tx, id)?.into_iter().map(|row| (row.log, row.counter)).collect();
        assert_eq!(order, [(b"home".into(), 2), (b"work".into(), 1), (b"work".into(), 2)]);
        received::insert(tx, id, b"work", 2, sealed(b"again"))
    });
    conflict(outcome, "received.patient, received.log, received.counter");
}

#[test]
fn no_sql_changes_permanent_rows() {
    let (_dir, home) = place();
    let mut open = Home::open(&home, true).expect("a new folder");
    open.store_mut()
        .transaction(|tx| {
            log::begin(tx, b"12345678")?;
            log::next_export(tx)?;
            card::insert(tx, &a_card(b"p", 1, b"north"))?;
            entry::append(tx, &NewEntry { plan: b"p", at_ms: 1, offset_s: 0, payload: b"x" })
        })
        .expect("room");
    drop(open);
    let connection = Connection::open(database(&home)).expect("sound");
    for sql in [
        "UPDATE entry SET payload = x'00'",
        "UPDATE entry SET n = 2",
        "DELETE FROM entry",
        "INSERT INTO entry VALUES (0, x'70', 1, 0, x'00')",
        "UPDATE log SET id = x'00'",
        "UPDATE log SET exports = 0",
        "DELETE FROM log",
        "UPDATE card SET bytes = x'00'",
        "UPDATE card SET clinic = x'00'",
    ] {
        let error = connection.execute(sql, []).expect_err(sql);
        assert_eq!(error.sqlite_error_code(), Some(rusqlite::ErrorCode::ConstraintViolation), "{sql}: {error}");
    }
}

#[test]
fn devices_and_the_manifest_are_replaced_as_a_whole_and_devices_go_with_the_patient() {
    within(|tx| {
        let one = patient::insert(tx, |_| Ok::<_, StoreError>(b"one".to_vec()))?;
        for bytes in [&b"first"[..], b"second"] {
            device::put(tx, one, bytes)?;
            manifest::put(tx, bytes)?;
        }
        assert_eq!(device::get(tx, one)?.as_deref(), Some(&b"second"[..]));
        assert_eq!(manifest::get(tx)?.as_deref(), Some(&b"second"[..]));
        assert_eq!(device::all(tx)?, [(one, b"second".to_vec())]);
        patient::remove(tx, one)?;
        assert_eq!((device::get(tx, one)?, device::all(tx)?), (None, Vec::new()));
        Ok(())
    })
    .expect("allowed");
    conflict(within(|tx| device::put(tx, 1, b"of nobody")), "FOREIGN KEY");
}

#[test]
fn rows_that_are_sealed_anew_keep_their_place() {
    within(|tx| {
        let one = patient::insert(tx, |_| Ok::<_, StoreError>(b"one".to_vec()))?;
        let card = issued::insert(tx, one, 1, |_| Ok::<_, StoreError>(b"card".to_vec()))?;
        let summary = received::insert(tx, one, b"log", 1, |_| Ok::<_, StoreError>(b"summary".to_vec()))?;
        issued::update(tx, card, b"card anew")?;
        received::update(tx, summary, b"summary anew")?;
        assert_eq!(issued::all(tx)?, issued::of_patient(tx, one)?);
        assert_eq!(received::all(tx)?, received::of_patient(tx, one)?);
        assert_eq!((issued::all(tx)?[0].sealed.as_slice(), issued::all(tx)?[0].id), (&b"card anew"[..], card));
        assert_eq!((received::all(tx)?[0].sealed.as_slice(), received::all(tx)?[0].id), (&b"summary anew"[..], summary));
        assert_eq!(issued::update(tx, 99, b"x"), Err(StoreError::NoRow { table: "issued", id: 99 }));
        assert_eq!(received::update(tx, 99, b"x"), Err(StoreError::NoRow { table: "received", id: 99 }));
        Ok(())
    })
    .expect("allowed");
}

/// Compares the whole schema, as SQLite stores it, with `schema.sql` next to this file, so that a change of the schema is seen as a
/// whole.
#[test]
fn the_schema_is_the_one_on_record() {
    let (_dir, home) = place();
    drop(Home::open(&home, true).expect("a new folder"));
    assert_eq!(schema(&home), include_str!("schema.sql"));
}

#[test]
fn erasing_leaves_the_schema_on_record() {
    let (_dir, home) = place();
    Home::open(&home, true).expect("a new folder").store_mut().erase().expect("free");
    assert_eq!(schema(&home), include_str!("schema.sql"));
}

fn schema(home: &Path) -> String {
    let connection = Connection::open(database(home)).expect("sound");
    let number = |name| connection.pragma_query_value(None, name, |row| row.get::<_, i64>(0)).expect("a number");
    let mut all = format!(
        "PRAGMA application_id = {:#010x};\nPRAGMA user_version = {};\n",
        number("application_id"),
        number("user_version")
    );
    let mut query = connection
        .prepare("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY tbl_name, type <> 'table', name")
        .expect("sound");
    for sql in query.query_map([], |row| row.get::<_, String>(0)).expect("sound") {
        all.push_str(&format!("\n{};\n", sql.expect("text")));
    }
    all
}

/// Opens a sample database of every schema version that people have. The samples are never rewritten; a new version adds one.
#[test]
fn databases_of_all_versions_open() {
    let samples = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/samples");
    for version in 1..=LATEST {
        let (_dir, home) = place();
        fs::create_dir(&home).expect("the test owns it");
        fs::copy(samples.join(format!("v{version}.db")), database(&home)).expect("one sample a version");
        let open = Home::open(&home, false).expect("an old database is brought up to date");
        open.store()
            .read(|view| {
                assert_eq!(setting::get(view, "language")?.as_deref(), Some("en"), "version {version}");
                assert_eq!(log::id(view)?.as_deref(), Some(&b"12345678"[..]));
                assert_eq!(card::all(view)?, [a_card(b"p", 1, b"north")]);
                assert_eq!(entry::all(view)?.len(), 3);
                assert_eq!(keys::get(view)?.as_deref(), Some(&b"keys"[..]));
                let patients = patient::all(view)?;
                assert_eq!(patients.len(), 1);
                assert_eq!(issued::of_patient(view, patients[0].id)?.len(), 1);
                assert_eq!(received::of_patient(view, patients[0].id)?.len(), 1);
                let since_5 = |kept: Option<Vec<u8>>| kept.is_some() == (version >= 5);
                assert!(since_5(manifest::get(view)?) && since_5(device::get(view, patients[0].id)?), "version {version}");
                let since_6 = |rows: usize| rows == usize::from(version >= 6);
                let entries = visit::of_patient(view, patients[0].id)?;
                assert_eq!(entries.len(), usize::from(version >= 7), "version {version}");
                let since_8 = [
                    digest::all(view)?.len(),
                    usize::from(patient_case::get(view, patients[0].id)?.is_some()),
                    clinician::all(view)?.len(),
                ];
                assert_eq!(since_8, [usize::from(version >= 8); 3], "version {version}");
                assert!(since_6(own_exercise::all(view)?.len()) && since_6(plan_set::all(view)?.len()), "version {version}");
                Ok::<_, StoreError>(())
            })
            .expect("readable");
    }
}
