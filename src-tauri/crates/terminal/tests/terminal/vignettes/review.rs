//! What the review says, and how the vignettes ask it.

use serde_json::{Value, json};

/// What `clinic review CODE --as json` says.
#[derive(Debug)]
pub struct Review(pub Value);

impl Review {
    /// The entries of a list, such as `adherence`.
    #[track_caller]
    pub fn list(&self, key: &str) -> &[Value] {
        self.0[key].as_array().unwrap_or_else(|| panic!("a list {key} in {}", self.0))
    }

    /// The entry of a list for this item.
    #[track_caller]
    pub fn of(&self, key: &str, item: u8) -> &Value {
        let found: Vec<&Value> = self.list(key).iter().filter(|one| one["item"] == item).collect();
        let [only] = found.as_slice() else { panic!("one entry for item {item} in {key}: {}", self.0[key]) };
        only
    }

    #[track_caller]
    pub fn pain(&self, complaint: u8) -> &Value {
        self.list("pain").iter().find(|one| one["complaint"] == complaint).expect("a complaint of the plan")
    }

    /// Day, kind and what it suspends of each alarm, in the order of their days.
    pub fn alarms(&self) -> Vec<(u64, String, Vec<u64>)> {
        let number = |value: &Value| value.as_u64().expect("a number");
        let mut all: Vec<(u64, String, Vec<u64>)> = self
            .list("alarms")
            .iter()
            .map(|alarm| {
                let suspended = alarm["suspended"].as_array().expect("a list").iter().map(number).collect();
                (number(&alarm["day"]), alarm["kind"].as_str().expect("a word").to_owned(), suspended)
            })
            .collect();
        all.sort();
        all
    }

    #[track_caller]
    pub fn proposes(&self, item: u8, proposal: &str) {
        let found = self.of("items", item);
        assert_eq!(found["proposal"], proposal, "{found}");
    }

    #[track_caller]
    pub fn never_proposes(&self, item: u8, proposals: &[&str]) {
        let found = self.of("items", item);
        assert!(proposals.iter().all(|proposal| found["proposal"] != *proposal), "{found}");
    }

    #[track_caller]
    pub fn because(&self, item: u8, reasons: &[&str]) {
        let found = self.of("items", item);
        assert_eq!(found["reasons"], json!(reasons), "{found}");
    }

    #[track_caller]
    pub fn asks(&self, item: u8, ask: &[&str]) {
        let found = self.of("items", item);
        assert_eq!(found["ask"], json!(ask), "{found}");
    }

    /// How much was done in full, of how much was owed.
    #[track_caller]
    pub fn done(&self, item: u8) -> (u64, u64) {
        k_of_n(&self.of("adherence", item)["done"])
    }

    #[track_caller]
    pub fn last14(&self, item: u8) -> (u64, u64) {
        k_of_n(&self.of("adherence", item)["last14"])
    }
}

#[track_caller]
pub fn k_of_n(value: &Value) -> (u64, u64) {
    let number = |name: &str| value[name].as_u64().unwrap_or_else(|| panic!("k of n: {value}"));
    (number("k"), number("n"))
}
