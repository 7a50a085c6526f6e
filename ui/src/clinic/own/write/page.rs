//! The page on which an exercise is written.

use leptos::ev;
use leptos::prelude::*;
use wire::prescribing::OwnEdited;
use words::Key;

use super::about::About;
use super::figure::FigureFields;
use super::levels::Levels;
use super::prescribers::ForPrescribers;
use super::preview::Preview;
use super::save::Save;
use super::texts::TextFields;
use super::writer::Writer;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::lock::LockButton;
use crate::shared::Fault;
use crate::shared::line::TimeIsSet;

/// The fields of an exercise, and beside them what the patient sees.
#[component]
pub fn Write(edited: OwnEdited) -> impl IntoView {
    let context = ClinicContext::current();
    let writer = Writer::new(context, edited);
    provide_context(writer);
    let words = writer.words();
    let title = move || {
        let name = writer.exercise.with(|exercise| words.exercise_name(exercise).trim().to_owned());
        if name.is_empty() { words.text(Key::WriteNew).to_owned() } else { name }
    };
    let (can_undo, can_redo) =
        (move || writer.edited.with(|edited| edited.can_undo()), move || writer.edited.with(|edited| edited.can_redo()));
    let undo = move || writer.edited.update(|edited| edited.undo());
    let redo = move || writer.edited.update(|edited| edited.redo());
    let keys = window_event_listener(ev::keydown, move |event| {
        if !(event.ctrl_key() || event.meta_key()) || event.alt_key() {
            return;
        }
        match event.key().to_lowercase().as_str() {
            "z" if event.shift_key() => {
                event.prevent_default();
                redo()
            }
            "z" => {
                event.prevent_default();
                undo()
            }
            "y" => {
                event.prevent_default();
                redo()
            }
            _ => {}
        }
    });
    on_cleanup(move || keys.remove());
    let back = move |_| context.keeper.when_kept(move || context.show(Page::Own(None)));
    view! {
        <main class="screen write">
            <header class="head">
                <div class="titles">
                    <button type="button" class="back" on:click=back>{words.text(Key::OwnTitle)}</button>
                    <h1 tabindex="-1">{title}</h1>
                </div>
                <div class="actions">
                    <button type="button" disabled=move || !can_undo() on:click=move |_| undo()>{words.text(Key::WriteUndo)}</button>
                    <button type="button" disabled=move || !can_redo() on:click=move |_| redo()>{words.text(Key::WriteRedo)}</button>
                </div>
                <LockButton/>
            </header>
            <TimeIsSet/>
            <Fault/>
            <div class="writing">
                <div class="composing">
                    <TextFields/>
                    <About/>
                    <FigureFields/>
                    <Levels/>
                    <ForPrescribers/>
                </div>
                <Preview/>
            </div>
        </main>
        <Save/>
    }
}
