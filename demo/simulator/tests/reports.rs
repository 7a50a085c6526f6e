//! The reports and letters of the demo's patients: never more than two pages, with what the review says.

mod scenario;

use actions::clinic::{printing, reporting, reviewing};
use scenario::{CODES, opened};
use std::path::Path;
use std::process::Command;
use wire::visiting::{PrintRequest, Printed};
use words::review::Names;
use words::{Key, Locale, Words};

fn said(program: &str, before: &[&str], file: &Path, after: &[&str]) -> String {
    let output = Command::new(program).args(before).arg(file).args(after).output().expect("poppler-utils");
    assert!(output.status.success(), "{program}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8_lossy(&output.stdout).into_owned()
}

fn pages(file: &Path) -> usize {
    let about = said("pdfinfo", &[], file, &[]);
    assert!(about.lines().any(|line| line.starts_with("Tagged:") && line.ends_with("yes")), "{about}");
    let line = about.lines().find_map(|line| line.strip_prefix("Pages:")).expect("a number of pages");
    line.trim().parse().expect("a number")
}

fn text(file: &Path) -> String {
    said("pdftotext", &["-raw", "-enc", "UTF-8"], file, &["-"]).split_whitespace().collect()
}

#[test]
fn no_patient_of_the_demo_needs_more_than_two_pages() {
    let (out, mut folder, moment) = opened("reports");
    for (locale, letter) in [(Locale::En, false), (Locale::Es, true)] {
        folder.choose_locale(Some(locale.tag())).expect("a language");
        let words = Words::new(locale);
        for code in CODES {
            let file = out.join(format!("{code}-{}.pdf", locale.tag()));
            let request = PrintRequest { code: code.to_owned(), what: Printed::Report, revision: None, letter };
            printing::save(&mut folder, &moment, &request, Some(&file)).expect("a report");
            assert!(pages(&file) <= 2, "{}", file.display());
            let page = reviewing::page(&folder, &moment, code).expect("a review");
            let (review, names) = (page.review.as_ref().expect("summaries"), Names::of(words, &page));
            let mut told: Vec<String> = review.alarms.iter().map(|one| words.review_alarm(one, names).line(words)).collect();
            told.extend(review.pain.iter().map(|one| words.pain(one, review.start).line(words)));
            told.extend(review.balance.iter().map(|one| words.stance(one).figures));
            told.extend(review.items.iter().map(|one| words.suggestion(one, names, review.start).line));
            let printed = text(&file);
            for one in told {
                let wanted: String = one.split_whitespace().collect();
                assert!(printed.contains(&wanted), "{code}: {one}");
            }
            let alarms = printed.find(&words.text(Key::ReviewQuestionAlarms).split_whitespace().collect::<String>());
            let rest = printed.find(&words.text(Key::ReportInShort).split_whitespace().collect::<String>());
            assert!(alarms < rest, "{code}: alarms come first");
            let file = out.join(format!("{code}-{}-letter.pdf", locale.tag()));
            let lines = ["Thank you.".to_owned()];
            reporting::save_letter(&folder, &moment, (code, &lines, letter), Some(&file)).expect("a letter");
            assert!(pages(&file) <= 2, "{}", file.display());
        }
    }
}
