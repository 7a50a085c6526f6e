//! Reading a card with the camera.

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::MediaStream;
use wire::Failure;
use wire::patient::{CardPreview, CardSource, ReadCard};
use words::Key;

use crate::invoke;
use crate::patient::context::PatientContext;
use crate::shared::{camera, clock};

/// Time between two checks of the camera's picture, in milliseconds.
const LOOK_MS: u64 = 400;

/// The state of the camera.
#[derive(Clone, Copy, PartialEq)]
enum CameraState {
    Closed,
    Open,
    /// The camera could not be opened.
    Refused,
}

/// A button that opens the camera; then the camera's picture until a card is found. A note if the web view has no access to a
/// camera.
#[component]
pub fn CardCamera(found: impl Fn(CardPreview) + Copy + Send + Sync + 'static) -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    if !camera::is_known() {
        return view! { <p class="small soft">{text(Key::CameraUnknown)}</p> }.into_any();
    }
    let state = RwSignal::new(CameraState::Closed);
    let stream = StoredValue::new_local(None::<MediaStream>);
    let close = move || {
        if let Some(stream) = stream.try_update_value(Option::take).flatten() {
            camera::close(&stream);
        }
    };
    on_cleanup(close);
    let open = move |_| {
        spawn_local(async move {
            match camera::open().await {
                // The page may have been left while the system asked for permission.
                Ok(opened) if state.try_get_untracked().is_some() => {
                    stream.set_value(Some(opened));
                    state.set(CameraState::Open);
                }
                Ok(opened) => camera::close(&opened),
                Err(_) => drop(state.try_set(CameraState::Refused)),
            }
        });
    };
    let leave = move |_| {
        close();
        state.set(CameraState::Closed);
    };
    let shown = move || match state.get() {
        CameraState::Open => view! {
            <Viewfinder stream found/>
            <button type="button" on:click=leave>{text(Key::CameraClose)}</button>
        }
        .into_any(),
        stood => view! {
            <button type="button" class="main" on:click=open>{text(Key::CameraOpen)}</button>
            <p class="small" role="status">{(stood == CameraState::Refused).then(|| text(Key::CameraRefused))}</p>
        }
        .into_any(),
    };
    view! { <div class="stack-2">{shown}</div> }.into_any()
}

/// The camera's picture. The shell reads it at intervals; a picture without a card is not an error, and any other failure is shown.
#[component]
fn Viewfinder(
    stream: StoredValue<Option<MediaStream>, LocalStorage>,
    found: impl Fn(CardPreview) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let context = PatientContext::current();
    let video = NodeRef::<html::Video>::new();
    Effect::new(move || {
        if let Some(video) = video.get() {
            stream.with_value(|stream| video.set_src_object(stream.as_ref()));
            // A web view that does not play the video by itself shows its first picture, which is read nonetheless.
            let _ = video.play();
        }
    });
    let looking = RwSignal::new(false);
    let parts = RwSignal::new(None::<Failure>);
    let missing = move || parts.get().map(|part| context.app.words().failure(&part).fault);
    let look = move || {
        let Some(bytes) = video.get_untracked().and_then(|video| camera::picture(&video)) else { return };
        if looking.get_untracked() {
            return;
        }
        looking.set(true);
        spawn_local(async move {
            let answer = invoke::call::<ReadCard>(&CardSource::File(bytes)).await;
            if looking.try_set(false).is_some() {
                // The camera was closed in the meantime.
                return;
            }
            match answer {
                Ok(preview) => found(preview),
                Err(Failure::NoCode | Failure::NotAPicture) => {}
                // One of several codes: the shell keeps it until the others were read.
                Err(part @ Failure::CardPart { .. }) => parts.set(Some(part)),
                Err(failure) => context.app.fault.set(Some(failure)),
            }
        });
    };
    clock::every(LOOK_MS, look);
    view! {
        <video class="viewfinder" node_ref=video autoplay playsinline muted aria-label=context.app.text(Key::CameraSees)></video>
        <p class="small soft">{context.app.text(Key::CameraHow)}</p>
        <p class="small" role="status">{missing}</p>
    }
}
