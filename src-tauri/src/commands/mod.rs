//! What the window can ask of the shell: one file for each area of the screen, one function for
//! each command, and in each function one call.

mod app;
mod clinic;
mod device;
mod patient;

use tauri::ipc::Invoke;
use wire::Command;

/// What a command is asked with, by the contract's declaration of it.
type Args<C> = <C as Command>::Args;
/// What a command answers.
type CommandResult<C> = Result<<C as Command>::Reply, wire::Failure>;

/// Every command, in the order of [`wire::COMMANDS`].
pub fn handler() -> impl Fn(Invoke) -> bool + Send + Sync + 'static {
    tauri::generate_handler![
        app::app_state,
        app::choose_role,
        app::show_sample,
        app::choose_locale,
        app::data_folder,
        app::catalogue,
        patient::read_card,
        patient::take_card,
        patient::today,
        patient::plan,
        patient::begin,
        patient::checkpoint,
        patient::save_sensed,
        patient::replay,
        patient::put_off,
        patient::skip_slot,
        patient::did_it,
        patient::take_days_off,
        patient::answer,
        patient::trouble,
        patient::record,
        patient::preview_summary,
        patient::seal_summary,
        patient::show_frames,
        patient::correctable,
        patient::correct,
        device::reminders,
        device::set_reminders,
        device::meeting,
        device::export_own_data,
        device::export_calendar,
        device::erase_everything,
        device::background_state,
        device::set_at_login,
        device::leave,
        clinic::clinic_start,
        clinic::clinic_unlock,
        clinic::patients,
        clinic::add_patient,
        clinic::draft,
        clinic::keep_draft,
        clinic::discard_draft,
        clinic::check_plan,
        clinic::issue,
        clinic::receive,
        clinic::review,
    ]
}

#[cfg(test)]
mod tests {
    /// A command that the contract declares has a handler here, a line in the app manifest, and a permission for the
    /// window; and nothing else has.
    #[test]
    fn contract_handlers_manifest_and_permissions_agree() {
        let between = |text: &str, from: &str, to: &str| -> String {
            let start = text.find(from).expect("the file has this part") + from.len();
            text[start..start + text[start..].find(to).expect("and its end")].to_owned()
        };
        let names = |list: String, keep: fn(&str) -> &str| -> Vec<String> {
            let items = list.split(',').map(|item| keep(item.trim()).to_owned());
            items.filter(|item| !item.is_empty()).collect()
        };
        let handlers = between(include_str!("mod.rs"), "generate_handler![", "]");
        let handlers = names(handlers, |path| path.rsplit("::").next().unwrap_or(path));
        assert_eq!(handlers, wire::COMMANDS, "handlers of src/commands/mod.rs");
        let capability = between(include_str!("../../capabilities/window.json"), "\"permissions\": [", "]");
        let permissions = names(capability, |name| name.trim_matches('"'));
        let mut own: Vec<String> =
            permissions.iter().filter_map(|name| Some(name.strip_prefix("allow-")?.replace('-', "_"))).collect();
        let mut declared: Vec<String> = wire::COMMANDS.iter().map(|name| (*name).to_owned()).collect();
        own.sort();
        declared.sort();
        assert_eq!(own, declared, "permissions of capabilities/window.json");
        let others: Vec<&String> = permissions.iter().filter(|name| !name.starts_with("allow-")).collect();
        assert_eq!(others, ["core:event:allow-listen", "core:event:allow-unlisten"], "nothing else of the system");
    }
}
