//! The devices that the summaries came from.

use leptos::prelude::*;
use wire::clinic::{DeviceLine, DeviceRequest, LeaveOutDevice};
use words::Key;

use crate::clinic::context::{ClinicContext, Page};

/// A line for each device, with a button that leaves it out of the review or takes it in again. Empty with one device that counts.
#[component]
pub fn Devices(code: String, devices: Vec<DeviceLine>) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    if devices.is_empty() {
        return ().into_any();
    }
    let lines = devices.into_iter().map(|line| {
        let asked = DeviceRequest { code: code.clone(), device: line.device, left_out: !line.left_out };
        let change = move |_| {
            context.app.request::<LeaveOutDevice>(asked.clone(), move |page| context.show(Page::Review(Box::new(page))));
        };
        let name = words.text(if line.left_out { Key::DeviceTakeIn } else { Key::DeviceLeaveOut });
        let which = line.number.map_or_else(|| words.review_device(&line), |number| words.device_of_number(number));
        let label = words.named_text(name, &which);
        view! {
            <li class="device">
                <div>
                    <p>{words.review_device(&line)}</p>
                    <p class="small soft">{words.review_device_which(&line)}</p>
                </div>
                <button type="button" class="quiet" aria-label=label disabled=context.app.busy on:click=change>{name}</button>
            </li>
        }
    });
    view! {
        <section class="devices stack-2">
            <h2>{words.text(Key::DevicesTitle)}</h2>
            <p class="small soft">{words.text(Key::DevicesWhat)}</p>
            <ul class="lines">{lines.collect_view()}</ul>
        </section>
    }
    .into_any()
}
