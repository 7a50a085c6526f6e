//! The issued card: a code for the patient to scan, and everything else beside it.

use leptos::prelude::*;
use wire::clinic::IssuedCard;
use words::Key;

use super::card_codes::CardCodes;
use super::card_files::CardFiles;
use super::card_text::CardText;
use super::on_paper::OnPaper;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::head::Head;

/// The issued card of the patient with `code`.
#[component]
pub fn Issued(code: String, card: IssuedCard) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let title = words.issued_title(&code);
    let picture = match card.svg {
        // The drawing comes from the shell, which makes it from black and white squares only.
        Some(svg) => {
            view! { <div class="qr" role="img" aria-label=words.text(Key::IssuedCode) inner_html=svg></div> }.into_any()
        }
        None if !card.codes.is_empty() => view! { <CardCodes codes=card.codes/> }.into_any(),
        None => view! { <p class="note">{words.text(Key::IssuedTooLarge)}</p> }.into_any(),
    };
    let review = words.list_visit_on(&words.date_in_full(card.plan.prescription.review));
    let line = words.revision_and_review(&words.issued_revision(card.plan.header.revision), &review);
    view! {
        <main class="screen issued">
            <Head title line>
                <button type="button" on:click=move |_| context.show(Page::Patients)>{words.text(Key::Close)}</button>
            </Head>
            <div class="two">
                <figure>{picture}</figure>
                <div class="stack-8">
                    <p>{words.text(Key::IssuedWhat)}</p>
                    <p class="note">{words.text(Key::IssuedWarning)}</p>
                    <div>
                        <h2>{words.text(Key::SecurityCode)}</h2>
                        <p class="fingerprint">{card.fingerprint}</p>
                        <p class="small soft">{words.text(Key::SecurityCodeWhat)}</p>
                    </div>
                    <OnPaper code=code.clone() revision=card.plan.header.revision/>
                    <CardText text=card.text/>
                    <CardFiles files=card.files/>
                </div>
            </div>
        </main>
    }
}
