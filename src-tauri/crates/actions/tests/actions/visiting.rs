//! What a visit changes beside its own findings.

use crate::people::{at, clinic};
use actions::DataFolder;
use actions::clinic::visiting;
use exercises::catalogue::PrescriberFlag;
use exercises::visit::{Finding, Screening};
use wire::visiting::{NoteRequest, VisitPage};

/// Notes a screening in which this holds, in place of the entry with the number `replaces`.
fn screen(folder: &mut DataFolder, moment: &str, flag: Option<PrescriberFlag>, replaces: Option<u32>) -> VisitPage {
    let finding = Finding::Screening(Screening { flags: flag.into_iter().collect(), fell: false });
    let asked = NoteRequest { code: "K17".into(), replaces, finding: Some(finding) };
    visiting::note(folder, &at(moment), &asked).expect("a screening")
}

#[test]
fn a_corrected_screening_holds_for_the_next_plans_only_if_there_is_no_newer_one() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let flags = |page: &VisitPage| page.flags.iter().copied().collect::<Vec<_>>();
    let first = screen(&mut folder, "11-25T09:00", Some(PrescriberFlag::Osteoporosis), None);
    assert_eq!(flags(&first), [PrescriberFlag::Osteoporosis]);
    let n = first.visits[0].found[0].n;
    let corrected = screen(&mut folder, "11-25T09:10", Some(PrescriberFlag::Pregnancy), Some(n));
    assert_eq!(flags(&corrected), [PrescriberFlag::Pregnancy], "the newest one was corrected");
    let second = screen(&mut folder, "12-02T09:00", None, None);
    assert_eq!(flags(&second), []);
    let n = second.visits[1].found[0].n;
    let older = screen(&mut folder, "12-02T09:10", Some(PrescriberFlag::Osteoporosis), Some(n));
    assert_eq!(flags(&older), [], "at the newer one nothing was found");
}
