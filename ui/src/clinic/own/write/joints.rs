//! The joints of the position that is shown, as sliders.

use exercises::authoring::{Touch, joints_of};
use exercises::catalogue::Joint;
use leptos::prelude::*;
use words::Key;

use super::writer::Writer;
use crate::clinic::fields::{Fold, Slide};

/// Number of joints that are shown at once; the others are folded.
const FIRST: usize = 10;

/// A slider for each joint that can be seen to move.
#[component]
pub fn Joints() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let view = Memo::new(move |_| writer.figure().view);
    let sliders = move || {
        let joints = joints_of(view.get());
        let (first, more) = joints.split_at(joints.len().min(FIRST));
        let more = more.to_vec();
        let folded = (!more.is_empty()).then(|| {
            view! {
                <Fold title=words.text(Key::DrawMoreJoints) inside=Signal::stored(String::new())>
                    {more.into_iter().map(|joint| view! { <One joint/> }).collect_view()}
                </Fold>
            }
        });
        view! { {first.iter().map(|joint| view! { <One joint=*joint/> }).collect_view()}{folded} }
    };
    view! { <div class="joints" role="group" aria-label=words.text(Key::DrawAngles)>{sliders}</div> }
}

/// The slider of one joint, in degrees.
#[component]
fn One(joint: Joint) -> impl IntoView {
    let writer = Writer::current();
    let value = Signal::derive(move || {
        let pose = writer.pose_shown();
        writer.figure().poses.get(pose).map_or(0, |pose| pose.angle(joint))
    });
    let put = move |angle: i16| {
        let pose = untrack(|| writer.pose_shown());
        let touch = Touch::Joint(writer.level.get_untracked(), pose, joint);
        writer.change_figure(touch, |figure| figure.poses[pose].turn(joint, angle));
    };
    view! { <Slide label=writer.words().joint(joint) value range=joint.range() put left=move || writer.end_change()/> }
}
