//! Complaints and named activities, and the numbers that tell them apart for good.

use super::Draft;
use crate::id::{ActivityId, ComplaintId};
use crate::plan::{Activity, Complaint, MAX_NAME, MAX_NAMED, Plan, Side};

/// The highest numbers given in any revision of a plan; 0 where none was.
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
    /// The numbers that one revision holds.
    pub fn of(plan: &Plan) -> UsedNumbers {
        UsedNumbers {
            items: plan.items.iter().map(|item| item.id.0).max().unwrap_or(0),
            complaints: plan.complaints.iter().map(|complaint| complaint.id.0).max().unwrap_or(0),
            activities: plan.activities.iter().map(|activity| activity.id.0).max().unwrap_or(0),
        }
    }

    /// The numbers of both.
    pub fn and(self, other: UsedNumbers) -> UsedNumbers {
        UsedNumbers {
            items: self.items.max(other.items),
            complaints: self.complaints.max(other.complaints),
            activities: self.activities.max(other.activities),
        }
    }

    /// A new item's number; `None` when 255 were given.
    pub(super) fn item(&mut self) -> Option<u8> {
        self.items = self.items.checked_add(1)?;
        Some(self.items)
    }
}

/// `text` without control characters, cut at `most` characters.
pub fn truncated(text: &str, most: usize) -> String {
    text.chars().filter(|letter| !letter.is_control()).take(most).collect()
}

impl Draft {
    /// Adds a complaint with an empty name; `None` where the plan is full. Items serve a first complaint at once.
    pub fn add_complaint(&mut self) -> Option<ComplaintId> {
        if self.plan.complaints.len() >= MAX_NAMED {
            return None;
        }
        self.used.complaints = self.used.complaints.checked_add(1)?;
        let id = ComplaintId(self.used.complaints);
        self.plan.complaints.push(Complaint { id, name: String::new(), side: Side::Neither, pain: None });
        if self.plan.complaints.len() == 1 {
            self.plan.items.iter_mut().for_each(|item| item.serves = Some(id));
        }
        Some(id)
    }

    /// Takes a complaint out; items that served it serve none.
    pub fn remove_complaint(&mut self, id: ComplaintId) {
        self.plan.complaints.retain(|complaint| complaint.id != id);
        let served = self.plan.items.iter_mut().filter(|item| item.serves == Some(id));
        served.for_each(|item| item.serves = None);
    }

    /// Changes one complaint; its name is cut at [`MAX_NAME`] characters.
    pub fn edit_complaint(&mut self, id: ComplaintId, change: impl FnOnce(&mut Complaint)) {
        if let Some(complaint) = self.plan.complaints.iter_mut().find(|complaint| complaint.id == id) {
            change(complaint);
            complaint.name = truncated(&complaint.name, MAX_NAME);
        }
    }

    /// Adds an activity with an empty name; `None` where the plan is full.
    pub fn add_activity(&mut self) -> Option<ActivityId> {
        if self.plan.activities.len() >= MAX_NAMED {
            return None;
        }
        self.used.activities = self.used.activities.checked_add(1)?;
        let id = ActivityId(self.used.activities);
        self.plan.activities.push(Activity { id, name: String::new(), rating: None });
        Some(id)
    }

    /// Takes an activity out.
    pub fn remove_activity(&mut self, id: ActivityId) {
        self.plan.activities.retain(|activity| activity.id != id);
    }

    /// Changes one activity; its name is cut at [`MAX_NAME`] characters.
    pub fn edit_activity(&mut self, id: ActivityId, change: impl FnOnce(&mut Activity)) {
        if let Some(activity) = self.plan.activities.iter_mut().find(|activity| activity.id == id) {
            change(activity);
            activity.name = truncated(&activity.name, MAX_NAME);
        }
    }
}
