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

use tauri::Manager;

use args::Args;
use session::{Replays, Session};

/// Starts the program and returns when its last window has closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let args = Args::from_command_line();
    let mut context = tauri::generate_context!();
    if let Some(home) = &args.home {
        context.config_mut().identifier = home::identifier(home);
    }
    with_plugins(tauri::Builder::default())
        .invoke_handler(commands::handler())
        .on_permission_request(|_, kind| window::permit(kind))
        .setup(move |app| {
            let home = home::of(app.handle(), &args)?;
            app.manage(Session::open(&home, args.clock()));
            app.manage(Replays(args.motion.clone()));
            #[cfg(desktop)]
            app.manage(at_login::AtLogin::of(app.handle(), args.home.as_deref()));
            window::open(app.handle(), &home, args.hidden)?;
            #[cfg(desktop)]
            {
                tray::show(app.handle());
                reminders::start(app.handle().clone());
            }
            #[cfg(mobile)]
            schedule_ahead::start(app.handle().clone());
            Ok(())
        })
        .run(context)
        .expect("the system has a web view and a display to show it on");
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
