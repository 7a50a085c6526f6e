//! The drawing of one position, whose points can be dragged.

use exercises::authoring::Touch;
use exercises::catalogue::Joint;
use exercises::figure::{Handle, Point, Size, Stage, phase_of};
use leptos::ev::PointerEvent;
use leptos::prelude::*;
use leptos::svg;
use wasm_bindgen::JsCast;
use words::Key;

use super::writer::Writer;
use crate::shared::paint;

/// The size of the drawing, in its own unit.
const SIZE: Size = Size { width: 360.0, height: 340.0 };

/// What is being dragged: the joint that turns, and the frame, which stays as it was when the drag began.
struct Drag {
    joint: Joint,
    stage: Stage,
}

/// The figure in the chosen position. Keyboards use the sliders beside it, which say the same, so it is hidden from screen readers.
#[component]
pub fn Board() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let (group, board) = (NodeRef::<svg::G>::new(), NodeRef::<svg::Svg>::new());
    let drag = StoredValue::new_local(None::<Drag>);
    let handles = RwSignal::new(Vec::<Handle>::new());
    Effect::new(move || {
        let (figure, pose) = (writer.figure(), writer.pose_shown());
        let shown = drag.with_value(|drag| drag.as_ref().map(|drag| drag.stage.with_figure(&figure)));
        let stage = shown.unwrap_or_else(|| Stage::new(&figure, SIZE));
        if let Some(group) = group.get() {
            paint::paint(group.unchecked_ref(), &stage.draw(phase_of(&figure, pose)));
        }
        handles.set(stage.handles(pose));
    });
    let at = move |event: &PointerEvent| {
        let board = board.get_untracked()?;
        let place = board.get_bounding_client_rect();
        let scale = (place.width() / SIZE.width).min(place.height() / SIZE.height);
        let (left, top) = (place.width() - SIZE.width * scale, place.height() - SIZE.height * scale);
        let x = (f64::from(event.client_x()) - place.left() - left / 2.0) / scale;
        let y = (f64::from(event.client_y()) - place.top() - top / 2.0) / scale;
        Some(Point { x, y })
    };
    let moved = move |event: PointerEvent| {
        let Some(to) = at(&event) else { return };
        let pose = untrack(|| writer.pose_shown());
        let turned = drag.with_value(|drag| {
            let Drag { joint, stage } = drag.as_ref()?;
            let stage = stage.with_figure(&untrack(|| writer.figure()));
            Some((*joint, stage.dragged(pose, *joint, to)?))
        });
        if let Some((joint, angle)) = turned {
            let touch = Touch::Joint(writer.level.get_untracked(), pose, joint);
            writer.change_figure(touch, |figure| figure.poses[pose].turn(joint, angle));
        }
    };
    let ended = move |_| {
        if drag.with_value(Option::is_some) {
            drag.set_value(None);
            writer.end_change();
            // The frame follows what was dragged, now that nothing moves.
            writer.edited.update(|_| {});
        }
    };
    let begin = move |event: PointerEvent, joint: Joint| {
        event.prevent_default();
        if let Some(board) = board.get_untracked() {
            // Without it, the drag only ends at the edge of the drawing.
            let _ = board.set_pointer_capture(event.pointer_id());
        }
        drag.set_value(Some(Drag { joint, stage: Stage::new(&untrack(|| writer.figure()), SIZE) }));
    };
    let has_handles = Memo::new(move |_| handles.with(|handles| !handles.is_empty()));
    let point = move |(n, joint): (usize, Joint)| {
        let place = move || handles.with(|all| all.get(n).map(|handle| handle.place).unwrap_or_default());
        view! {
            <g class="handle" data-joint=joint.name() on:pointerdown=move |event| begin(event, joint)>
                <circle class="reach" r="16" cx=move || place().x.to_string() cy=move || place().y.to_string()/>
                <circle class="dot" r="6" cx=move || place().x.to_string() cy=move || place().y.to_string()/>
            </g>
        }
    };
    let joints = Memo::new(move |_| {
        handles.with(|all| all.iter().enumerate().map(|(n, handle)| (n, handle.joint)).collect::<Vec<_>>())
    });
    view! {
        <p class="small soft">{move || words.text(if has_handles.get() { Key::DrawWhat } else { Key::DrawNoHandles })}</p>
        <svg class="figure board" viewBox=format!("0 0 {} {}", SIZE.width, SIZE.height) aria-hidden="true" node_ref=board
            on:pointermove=moved on:pointerup=ended on:pointercancel=ended>
            <g node_ref=group></g>
            <For each=move || joints.get() key=|joint| *joint children=point/>
        </svg>
    }
}
