//! Renewed keys of a clinic, from its next card to the summaries of devices with the old card and with the new one.

use crate::forge;
use crate::place::{DONE, Place, TAKEN, VISIT, clinic, copy, program};

/// A plan that differs from the prepared one only in the day on which it was confirmed.
fn issue(place: &Place, out: &str) {
    let plan = place.done(&["--at", VISIT, "example", "plan"]);
    place.write("next.toml", plan);
    place.clinic(&["issue", "K17", "next.toml", "--out", out]);
}

/// What the clinic's command says, with a warning or without.
fn fingerprint(said: &str) -> String {
    said.lines().next().and_then(|line| line.rsplit_once(": ")).expect("a fingerprint").1.to_owned()
}

#[test]
fn renewed_keys_go_on_with_the_plan_and_open_the_summaries_of_old_and_new_cards() {
    let place = Place::prepared();
    copy(&place.path("done"), &place.path("with-old-card"));
    place.refused(&clinic(&["renew-keys"]), &["changes this clinic's security code for good.", "add --yes"]);
    let said = place.clinic(&["renew-keys", "--yes"]);
    assert!(said.contains("The keys were renewed.") && said.contains("Save the keys again"), "{said}");
    let new = fingerprint(&said);
    issue(&place, "second");
    let accepted = place.done(&["--home", "done", "--at", VISIT, "patient", "accept", "second/card.png"]);
    assert!(accepted.contains(&new) && accepted.contains("The clinic has renewed its keys"), "{accepted}");
    for (home, out) in [("with-old-card", "old.age"), ("done", "new.age")] {
        place.done(&["--home", home, "--at", VISIT, "patient", "summary", "--until", "2026-11-26", "--out", out]);
    }
    place.clinic(&["receive", "summary.age", "old.age", "new.age"]);
    let review = place.clinic(&["review", "K17"]);
    assert!(review.contains("Record from 25 November to 26 November."), "{review}");
    // Any age tool opens both with what is printed.
    forge::identity(&place);
    for sealed in ["old.age", "new.age"] {
        let plain = program(
            "age",
            &["-d", "-i"]
                .map(AsRef::as_ref)
                .into_iter()
                .chain([place.path("identity.txt").as_ref(), place.path(sealed).as_ref()])
                .collect::<Vec<_>>(),
        );
        assert!(!plain.is_empty(), "{sealed}");
    }
    assert!(place.text("identity.txt").contains("# cards until 2026-11-27"), "each key has its days");
}

#[test]
fn cards_of_renewed_keys_that_are_none_of_the_clinic_are_refused() {
    let place = Place::prepared();
    copy(&place.path("clinic"), &place.path("former"));
    place.clinic(&["renew-keys", "--yes"]);
    issue(&place, "second");
    // The former key's signature under other keys, with and without the honest list.
    let honest =
        format::card::open(&place.read("second/card.bin")).expect("a card").into_card_after_checking_the_signature();
    assert_eq!(honest.former.len(), 1);
    let stranger = forge::signed_by_another(&place, |card| {
        card.plan.header.revision = 2;
        card.former = honest.former.clone();
    });
    place.write("stranger.bin", stranger);
    let accept = |file| ["--home", "patient", "--at", DONE, "patient", "accept", file];
    place.refused(&accept("stranger.bin"), &["from another clinic, but that clinic did not sign it."]);
    place.done(&["--home", "patient", "--at", VISIT, "patient", "accept", "second/card.bin"]);
    // A backup of the patient's copy has the new key as well.
    place.done(&["--home", "patient", "backup", "--to", "copy.carryover"]);
    let restored = place.run(&["--home", "moved", "restore", "copy.carryover"]);
    assert_eq!(restored.code, Some(0), "{restored:?}");
    for out in ["forged-2", "forged-3"] {
        let home = ["--home", "former", "--at", VISIT, "clinic", "--passphrase-file", "pw"];
        place.done(&[&home[..], &["issue", "K17", "next.toml", "--out", out]].concat());
    }
    for home in ["patient", "moved"] {
        place.refused(
            &["--home", home, "--at", VISIT, "patient", "accept", "forged-3/card.bin"],
            &["from another clinic, but that clinic did not sign it."],
        );
    }
}

#[test]
fn what_a_clinic_without_renewed_keys_writes_stays_as_it_was() {
    let place = Place::prepared();
    assert_eq!(place.read("card/card.bin")[4], 2, "the card's version");
    let said = place.run(&clinic(&["identity", "--show"]));
    assert_eq!(said.out.lines().count(), 1);
    let first = place.done(&["--home", "first", "--at", TAKEN, "--json", "patient", "accept", "card/card.txt"]);
    assert!(first.contains(r#""renewed":false"#), "{first}");
}

#[test]
fn a_renewal_that_is_killed_leaves_the_old_keys_or_the_new_ones() {
    let place = Place::prepared();
    let started = std::time::Instant::now();
    copy(&place.path("clinic"), &place.path("whole"));
    let renew = |home| ["--home", home, "--at", VISIT, "clinic", "--passphrase-file", "pw", "renew-keys", "--yes"];
    place.done(&renew("whole"));
    let whole = started.elapsed();
    for (home, part) in [("half", 6), ("late", 11)] {
        copy(&place.path("clinic"), &place.path(home));
        let mut child = place.command(&renew(home)).stdout(std::process::Stdio::null()).spawn().expect("the binary starts");
        std::thread::sleep(whole * part / 12);
        // It may have ended by itself.
        let _ = child.kill();
        child.wait().expect("it ends");
        let command = |arguments: &[&str]| {
            let said =
                place.run(&[&["--home", home, "--at", VISIT, "clinic", "--passphrase-file", "pw"][..], arguments].concat());
            assert_eq!(said.code, Some(0), "{home}: {said:?}");
            said.out
        };
        let identities = command(&["identity", "--show"]).matches("AGE-SECRET-KEY-1").count();
        assert!([1, 2].contains(&identities), "{home}: {identities}");
        assert!(command(&["receive", "summary.age"]).contains("K17, 2 new days."), "{home}");
    }
}
