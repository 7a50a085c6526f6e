//! The commands that the window can call: one file for each area of the screen, one function for each command. What a command does is in
//! `actions`; here it is brought together with what only the shell has, such as the session, dialogues and threads.

mod app;
mod cases;
mod clinic;
mod device;
mod patient;
mod prescribing;
mod receiving;
mod visiting;

use std::sync::{Mutex, PoisonError};
use tauri::ipc::Invoke;
use wire::{Command, Failure};

/// The argument of a command, as declared in `wire`.
type Args<C> = <C as Command>::Args;
/// The result of a command.
type CommandResult<C> = Result<<C as Command>::Reply, Failure>;

/// Does what takes its time, such as decoding pictures, on a thread for such work and before the data folder is locked: checkpoints of a
/// run and reminders do not wait for it. One after the other, so that the pictures of several commands are never in memory together.
async fn without_folder<T: Send + 'static>(act: impl FnOnce() -> Result<T, Failure> + Send + 'static) -> Result<T, Failure> {
    static ONE: Mutex<()> = Mutex::new(());
    let alone = move || {
        let _one = ONE.lock().unwrap_or_else(PoisonError::into_inner);
        act()
    };
    let done = tauri::async_runtime::spawn_blocking(alone).await;
    done.unwrap_or_else(|error| Err(Failure::Internal { detail: error.to_string() }))
}

macro_rules! handlers {
    ($($area:ident { $($(#[$doc:meta])* $marker:ident = $command:ident($args:ty) -> $reply:ty;)* })*) => {
        tauri::generate_handler![$($($area::$command,)*)*]
    };
}

/// Every command of the table [`wire::commands!`]: each is a function of the module named after its area.
pub fn handler() -> impl Fn(Invoke) -> bool + Send + Sync + 'static {
    wire::commands!(handlers)
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};
    use std::collections::BTreeSet;

    /// Checks what the build compiled into the program: the window may call each command of the table and receive events, and
    /// nothing else; no other window and no foreign page may do anything.
    #[test]
    fn the_window_is_allowed_the_commands_of_the_table_and_nothing_of_the_system() {
        let built = include_str!(concat!(env!("OUT_DIR"), "/capabilities.json"));
        let built: Value = serde_json::from_str(built).expect("JSON");
        let names: Vec<&String> = built.as_object().expect("capabilities by name").keys().collect();
        assert_eq!(names, ["window"]);
        let window = &built["window"];
        assert_eq!((&window["windows"], &window["local"]), (&json!(["main"]), &json!(true)));
        assert_eq!(
            [window.get("remote"), window.get("webviews")].map(|list| list.filter(|list| **list != json!([]))),
            [None; 2]
        );
        let allowed: Vec<&str> =
            window["permissions"].as_array().expect("a list").iter().filter_map(Value::as_str).collect();
        let expected = wire::COMMANDS.iter().map(|command| format!("allow-{}", command.replace('_', "-")));
        let expected: Vec<String> = ["core:event:allow-listen", "core:event:allow-unlisten"]
            .map(str::to_owned)
            .into_iter()
            .chain(expected)
            .collect();
        assert_eq!(allowed, expected);
        assert_eq!(window["permissions"].as_array().map(Vec::len), Some(expected.len()), "none with a scope of its own");
    }

    /// The window finds a command by its name alone: of two commands with the same name, the second would never be called.
    #[test]
    fn no_two_commands_have_one_name() {
        let names: BTreeSet<&str> = wire::COMMANDS.iter().copied().collect();
        assert_eq!(names.len(), wire::COMMANDS.len());
        assert!(names.contains("issue") && names.contains("today"), "the table is read: {names:?}");
    }
}
