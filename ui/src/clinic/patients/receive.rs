//! Receives encrypted summaries.

use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;
use wire::Failure;
use wire::clinic;
use wire::clinic::{MAX_FILES, Outcome, Receipt, ReceiveRequest};
use words::Key;

use crate::shared::{AppContext, file};

/// The files that the system's dialogue offers: sealed files, and photos of codes. What a file really is depends on its contents.
const ACCEPTED: &str = ".age,.png,.jpg,.jpeg";

const TOO_MANY: Failure = Failure::TooManyFiles { most: MAX_FILES as u8 };

/// A file field, and a line for each file with its result. `received` is called if anything was received.
#[component]
pub fn Receive(received: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let receipts = RwSignal::new(Vec::<Receipt>::new());
    let take = move |field: HtmlInputElement| {
        let chosen = file::chosen(&field);
        spawn_local(async move {
            let (mut files, mut refused) = (Vec::new(), Vec::new());
            for (place, one) in chosen.into_iter().enumerate() {
                // What would be refused is not read: all files are in memory at once.
                let bytes = if place < MAX_FILES { file::base64(&one).await } else { Err(TOO_MANY) };
                match bytes {
                    Ok(bytes) => files.push((one.name(), bytes)),
                    Err(failure) => {
                        refused.push(Receipt { file: one.name(), outcome: Outcome::Refused(failure), notices: Vec::new() })
                    }
                }
            }
            // Allows the same file to be chosen again.
            field.set_value("");
            app.request::<clinic::Receive>(ReceiveRequest { files }, move |mut new| {
                new.extend(refused);
                let any = new.iter().any(|receipt| !matches!(receipt.outcome, Outcome::Refused(_)));
                receipts.set(new);
                if any {
                    received();
                }
            });
        });
    };
    view! {
        <section class="sheet stack">
            <h2>{app.text(Key::ReceiveSummaries)}</h2>
            <p class="small soft">{app.text(Key::ReceiveWhat)}</p>
            <label class="pick">
                <span>{app.text(Key::ChooseFiles)}</span>
                <input type="file" multiple accept=ACCEPTED on:change:target=move |event| take(event.target())/>
            </label>
            <div role="status"><ul class="receipts">
                {move || receipts.get().into_iter().map(|receipt| view! { <OneReceipt receipt/> }).collect_view()}
            </ul></div>
        </section>
    }
}

/// The result for one file.
#[component]
fn OneReceipt(receipt: Receipt) -> impl IntoView {
    let refused = matches!(receipt.outcome, Outcome::Refused(_));
    let line = AppContext::current().words().receipt(&receipt);
    view! { <li class:refused=refused>{line}</li> }
}
