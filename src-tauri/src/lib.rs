//! The desktop and phone shell: windows, tray, commands, the reminder loop. Decides nothing.

mod args;
#[cfg(desktop)]
mod at_login;
mod background;
mod commands;
mod home;
#[cfg(desktop)]
mod reminders;
#[cfg(mobile)]
mod schedule_ahead;
mod session;
#[cfg(desktop)]
mod tray;
mod window;

#[cfg(desktop)]
use tauri::RunEvent;
use tauri::{App, Manager};

use args::Args;
use session::{Replays, Session};

/// How often a start is tried while the program that ran before is still ending, and how long it waits each time.
#[cfg(desktop)]
const STARTS: u32 = 20;
#[cfg(desktop)]
const BETWEEN_STARTS: std::time::Duration = std::time::Duration::from_millis(250);

/// Starts the program and returns when its last window has closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let app = started().expect("the system has a web view and a display to show it on");
    app.run(|app, event| {
        #[cfg(desktop)]
        if let RunEvent::Exit = event {
            reminders::end(app);
        }
        #[cfg(mobile)]
        let _ = (app, event);
    });
}

/// One that is ending can be asked to show its window and then say nothing more: the start is tried again.
#[cfg(desktop)]
fn started() -> tauri::Result<App> {
    let mut tries = 1;
    loop {
        match start() {
            Err(tauri::Error::PluginInitialization(..)) if tries < STARTS => std::thread::sleep(BETWEEN_STARTS),
            done => return done,
        }
        tries += 1;
    }
}

#[cfg(mobile)]
fn started() -> tauri::Result<App> {
    start()
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

fn set_up(app: &mut App, args: &Args) -> Result<(), Box<dyn std::error::Error>> {
    let home = home::of(app.handle(), args)?;
    let session = Session::open(&home, args.clock());
    // A folder that cannot be opened may not take what the web view keeps either; what is wrong is then still said.
    let kept = if session.is_open() { home::web_view_folder(&home) } else { home::passing_folder(&home) };
    app.manage(session);
    app.manage(Replays(args.motion.clone()));
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

/// A second start with the same home only brings the first one's window forward.
#[cfg(desktop)]
fn with_plugins(builder: tauri::Builder<tauri::Wry>) -> tauri::Builder<tauri::Wry> {
    builder.plugin(tauri_plugin_single_instance::init(|app, _args, _folder| window::bring_forward(app)))
}

#[cfg(mobile)]
fn with_plugins(builder: tauri::Builder<tauri::Wry>) -> tauri::Builder<tauri::Wry> {
    builder.plugin(tauri_plugin_notification::init())
}
