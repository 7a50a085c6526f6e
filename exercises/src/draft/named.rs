//! Complaints and named activities, and their permanent numbers.

use super::Draft;
use crate::id::{ActivityId, ComplaintId};
use crate::plan::{Activity, Complaint, Item, MAX_NAME, MAX_NAMED, Prescription, Side};

/// The highest numbers used in any revision of a plan; 0 if none was used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct UsedNumbers {
    /// Of items.
    pub items: u8,
    /// Of complaints.
    pub complaints: u8,
    /// Of activities.
    pub activities: u8,
}

impl UsedNumbers {
    /// The highest numbers in one prescription.
    pub fn of(prescription: &Prescription) -> UsedNumbers {
        UsedNumbers {
            items: prescription.items.iter().map(|item| item.id.0).max().unwrap_or(0),
            complaints: prescription.complaints.iter().map(|complaint| complaint.id.0).max().unwrap_or(0),
            activities: prescription.activities.iter().map(|activity| activity.id.0).max().unwrap_or(0),
        }
    }

    /// The higher number of each kind.
    pub fn and(self, other: UsedNumbers) -> UsedNumbers {
        UsedNumbers {
            items: self.items.max(other.items),
            complaints: self.complaints.max(other.complaints),
            activities: self.activities.max(other.activities),
        }
    }

    /// A new item's number; `None` if all 255 were used.
    pub(super) fn item(&mut self) -> Option<u8> {
        self.items = self.items.checked_add(1)?;
        Some(self.items)
    }
}

/// `text` without control characters, truncated to `most` characters.
pub fn truncated(text: &str, most: usize) -> String {
    text.chars().filter(|letter| !letter.is_control()).take(most).collect()
}

impl Draft {
    /// Adds a complaint with an empty name; `None` if the plan is full. The first complaint is assigned to all items
    /// after which pain is asked about.
    pub fn add_complaint(&mut self) -> Option<ComplaintId> {
        if self.prescription.complaints.len() >= MAX_NAMED {
            return None;
        }
        self.used.complaints = self.used.complaints.checked_add(1)?;
        let id = ComplaintId(self.used.complaints);
        self.prescription.complaints.push(Complaint { id, name: String::new(), side: Side::Neither, pain: None });
        if self.prescription.complaints.len() == 1 {
            let asked = |item: &&mut Item| item.dose.kind().rules().asks_pain();
            self.prescription.items.iter_mut().filter(asked).for_each(|item| item.serves = Some(id));
        }
        Some(id)
    }

    /// Removes a complaint; items that were assigned to it are assigned to none.
    pub fn remove_complaint(&mut self, id: ComplaintId) {
        self.prescription.complaints.retain(|complaint| complaint.id != id);
        let served = self.prescription.items.iter_mut().filter(|item| item.serves == Some(id));
        served.for_each(|item| item.serves = None);
    }

    /// Changes one complaint; its name is truncated to [`MAX_NAME`] characters.
    pub fn edit_complaint(&mut self, id: ComplaintId, change: impl FnOnce(&mut Complaint)) {
        if let Some(complaint) = self.prescription.complaints.iter_mut().find(|complaint| complaint.id == id) {
            change(complaint);
            complaint.name = truncated(&complaint.name, MAX_NAME);
        }
    }

    /// Adds an activity with an empty name; `None` if the plan is full.
    pub fn add_activity(&mut self) -> Option<ActivityId> {
        if self.prescription.activities.len() >= MAX_NAMED {
            return None;
        }
        self.used.activities = self.used.activities.checked_add(1)?;
        let id = ActivityId(self.used.activities);
        self.prescription.activities.push(Activity { id, name: String::new(), rating: None });
        Some(id)
    }

    /// Removes an activity.
    pub fn remove_activity(&mut self, id: ActivityId) {
        self.prescription.activities.retain(|activity| activity.id != id);
    }

    /// Changes one activity; its name is truncated to [`MAX_NAME`] characters.
    pub fn edit_activity(&mut self, id: ActivityId, change: impl FnOnce(&mut Activity)) {
        if let Some(activity) = self.prescription.activities.iter_mut().find(|activity| activity.id == id) {
            change(activity);
            activity.name = truncated(&activity.name, MAX_NAME);
        }
    }
}
