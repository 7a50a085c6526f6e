//! What was done with received files: in the terminal a line for each file, in the window the patient first.

use crate::Words;
use wire::Failure;
use wire::receiving::{Outcome, Receipt, ReceiptNotice};

impl Words {
    /// "summary.age: K17, 2 new days."
    pub fn receipt(self, receipt: &Receipt) -> String {
        let file = &receipt.file;
        let said = match &receipt.outcome {
            Outcome::New { code, days } => self.receipt_new(days, file, code),
            Outcome::Filled { code, days: 0 } => self.receipt_filled_other(file, code),
            Outcome::Filled { code, days } => self.receipt_updated(days, file, code),
            Outcome::Known { code } => self.receipt_known(file, code),
            Outcome::Refused(failure) => self.refused_file(file, failure),
        };
        self.with_notices(said, &receipt.notices)
    }

    /// "K17: new summary, 2 new days." It does not name the file, unless that was refused.
    pub fn received(self, receipt: &Receipt) -> String {
        let said = match &receipt.outcome {
            Outcome::New { code, days } => self.received_new(days, code),
            Outcome::Filled { code, days: 0 } => self.received_filled_other(code),
            Outcome::Filled { code, days } => self.received_filled(days, code),
            Outcome::Known { code } => self.received_known(code),
            Outcome::Refused(failure) => self.refused_file(&receipt.file, failure),
        };
        self.with_notices(said, &receipt.notices)
    }

    /// "none.age: This is not an encrypted summary. Ask the patient for the file."
    pub fn refused_file(self, file: &str, failure: &Failure) -> String {
        let refusal = self.failure(failure);
        match names_file(failure) {
            true => self.two_sentences(&refusal.fault, &refusal.advice),
            false => self.receipt_refused(file, &refusal.fault, &refusal.advice),
        }
    }

    /// "70 files: This is not an encrypted summary. Ask the patient for the file."
    pub fn refused_files(self, n: usize, failure: &Failure) -> String {
        let refusal = self.failure(failure);
        self.received_refused(n, &self.two_sentences(&refusal.fault, &refusal.advice))
    }

    fn with_notices(self, said: String, notices: &[ReceiptNotice]) -> String {
        let notices = notices.iter().map(|notice| match notice {
            ReceiptNotice::NewDevice { device } => self.receipt_new_device(&device.to_string()),
            ReceiptNotice::StoreBehind { revision, next } => self.review_store_behind(revision, next),
            ReceiptNotice::CaseClosed { on } => self.receipt_case_closed(&self.date(*on)),
            ReceiptNotice::ClockAhead { days } => self.review_clock_ahead(days),
        });
        notices.fold(said, |said, notice| self.two_sentences(&said, &notice))
    }
}

/// Whether the sentences of a failure contain the file's name.
fn names_file(failure: &Failure) -> bool {
    matches!(failure, Failure::FileMissing { .. } | Failure::FileUnreadable { .. } | Failure::FileTooBig { .. })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    fn receipt(outcome: Outcome, notices: Vec<ReceiptNotice>) -> Receipt {
        Receipt { file: "a.age".into(), outcome, notices }
    }

    #[test]
    fn no_receipt_counts_zero_days() {
        for locale in Locale::ALL {
            let receipt = receipt(Outcome::Filled { code: "K17".into(), days: 0 }, Vec::new());
            for said in [Words::new(*locale).receipt(&receipt), Words::new(*locale).received(&receipt)] {
                assert!(!said.contains('0') && said.contains("K17"), "{said}");
            }
        }
    }

    #[test]
    fn in_the_window_a_receipt_begins_with_the_patient_and_keeps_its_notices() {
        let words = Words::new(Locale::En);
        let ahead = vec![ReceiptNotice::ClockAhead { days: 1 }];
        let said = words.received(&receipt(Outcome::New { code: "K17".into(), days: 2 }, ahead));
        assert!(said.starts_with("K17: new summary, 2 new days. The clock"), "{said}");
    }

    #[test]
    fn equal_refusals_are_counted_and_one_alone_is_named() {
        let words = Words::new(Locale::En);
        assert!(words.refused_files(70, &Failure::SummaryForeign).starts_with("70 files: This is not"));
        assert!(words.refused_file("a.age", &Failure::SummaryForeign).starts_with("a.age: This is not"));
        let missing = Failure::FileMissing { file: "a.age".into() };
        assert_eq!(words.refused_file("a.age", &missing).matches("a.age").count(), 1, "named once");
    }
}
