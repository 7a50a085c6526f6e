//! The desktop and phone shell: windows, tray, commands, the reminder loop. It contains no rules of its own.

mod args;
mod arriving;
#[cfg(desktop)]
mod at_login;
mod background;
mod commands;
mod door;
mod file_manager;
mod folder_dialog;
mod home;
#[cfg(desktop)]
mod reminders;
mod saved_files;
#[cfg(mobile)]
mod schedule_ahead;
mod session;
#[cfg(desktop)]
mod tray;
#[cfg(target_os = "linux")]
mod web_process;
mod window;

#[cfg(desktop)]
use tauri::RunEvent;
use tauri::{App, Manager};

use args::Args;
use session::{Replays, Session};

/// Starts the program and returns when its last window has closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    actions::platform::keep_out_of_core_dumps();
    let app = match start() {
        #[cfg(target_os = "linux")]
        Err(tauri::Error::PluginInitialization(..)) => start_again(),
        started => started.expect("the system has a web view and a display to show it on"),
    };
    app.run(|app, event| {
        #[cfg(desktop)]
        if let RunEvent::Exit = event {
            reminders::end(app);
        }
        #[cfg(mobile)]
        let _ = (app, event);
    });
}

fn start() -> tauri::Result<App> {
    let args = Args::from_command_line();
    let mut context = tauri::generate_context!();
    if let Some(home) = &args.home {
        context.config_mut().identifier = home::identifier(home);
    }
    with_plugins(tauri::Builder::default())
        .invoke_handler(commands::handler())
        .on_permission_request(|_, kind| window::permit(kind))
        .setup(move |app| set_up(app, &args))
        .build(context)
}

/// Replaces this process by a new start of the program. A running copy that is just ending can still be found on the bus, but does
/// not answer when it is asked to show its window. A new process is needed because a toolkit can be started only once. After a while
/// it gives up.
#[cfg(target_os = "linux")]
fn start_again() -> ! {
    use std::os::unix::process::CommandExt;
    const TRIES: &str = "CARRYOVER_TRIES";
    const MOST: u32 = 20;
    let tries = std::env::var(TRIES).ok().and_then(|tries| tries.parse().ok()).unwrap_or(0) + 1;
    assert!(tries <= MOST, "the program that ran before does not end");
    std::thread::sleep(std::time::Duration::from_millis(250));
    let program = std::env::current_exe().expect("a running program has a path");
    let failed = std::process::Command::new(program).args(std::env::args_os().skip(1)).env(TRIES, tries.to_string()).exec();
    panic!("the program cannot be started again: {failed}")
}

fn set_up(app: &mut App, args: &Args) -> Result<(), Box<dyn std::error::Error>> {
    let home = home::of(app.handle(), args)?;
    let session = Session::open(&home, args.clock());
    // If the data folder cannot be opened, the web view must not store its data there; the window can then still show the error.
    let kept = if session.is_open() { home::web_view_folder(&home) } else { home::passing_folder(&home) };
    app.manage(session);
    app.manage(door::Door::new());
    app.manage(arriving::Arriving::default());
    app.manage(saved_files::SavedFiles::default());
    app.manage(Replays(args.recorded_trials()));
    #[cfg(desktop)]
    app.manage(window::Moved::default());
    #[cfg(desktop)]
    app.manage(at_login::AtLogin::of(app.handle(), args.home.as_deref()));
    window::open(app.handle(), &kept, args.hidden)?;
    #[cfg(desktop)]
    {
        tray::show(app.handle());
        reminders::start(app.handle().clone());
    }
    #[cfg(mobile)]
    schedule_ahead::start(app.handle().clone());
    Ok(())
}

/// A second start with the same home only brings the first one's window to the front.
#[cfg(desktop)]
fn with_plugins(builder: tauri::Builder<tauri::Wry>) -> tauri::Builder<tauri::Wry> {
    builder.plugin(tauri_plugin_single_instance::init(|app, _args, _folder| window::bring_forward(app)))
}

#[cfg(mobile)]
fn with_plugins(builder: tauri::Builder<tauri::Wry>) -> tauri::Builder<tauri::Wry> {
    builder.plugin(tauri_plugin_notification::init())
}
