//! Version, data folder, and licences: the program's own, those of all libraries in it, and the notices of medical codes.

use leptos::prelude::*;
use wire::app::ShowDataFolder;
use words::Key;

use super::on_demand::OnDemand;
use crate::shared::AppContext;

/// The bundler puts these files next to the program; they are loaded when somebody wants to read them.
const OWN: [&str; 2] = ["/licences/LICENSE-MIT.txt", "/licences/LICENSE-APACHE.txt"];
const TYPEFACE: &str = "/assets/fonts/LICENSE.txt";
const CODES: &str = "/licences/codes.txt";
const LIBRARIES: &str = "/licences/libraries.txt";

/// The version of this front end.
const VERSION: &str = env!("CARGO_PKG_VERSION");

/// The version, the location of the data, and the licences.
#[component]
pub fn About() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let folder = RwSignal::new(None::<String>);
    app.query::<ShowDataFolder>((), move |path| folder.set(Some(path)));
    let where_data_is = move || folder.get().map(|folder| words.about_data_folder(&folder));
    view! {
        <p>{words.about_version(VERSION)}</p>
        <p class="path">{where_data_is}</p>
        <section class="stack-2">
            <h2>{words.text(Key::LicencesTitle)}</h2>
            <p>{words.text(Key::LicencesProgram)}</p>
            {OWN.map(|file| view! { <OnDemand file title=name_of(file) is_name=true/> })}
            <p>{words.text(Key::LicencesTypeface)}</p>
            <OnDemand file=TYPEFACE title="SIL Open Font License 1.1" is_name=true/>
            <p>{words.text(Key::LicencesCodes)}</p>
            <OnDemand file=CODES title=words.text(Key::LicencesShowNotices)/>
            <p>{words.text(Key::LicencesLibraries)}</p>
            <OnDemand file=LIBRARIES title=words.text(Key::LicencesShow)/>
        </section>
    }
}

/// A licence's own name, which is the same in every language.
fn name_of(file: &str) -> &'static str {
    if file.contains("MIT") { "MIT" } else { "Apache 2.0" }
}
