//! The WebDriver process of one window, <https://www.w3.org/TR/webdriver2/>. It starts the program itself, so the program inherits
//! its environment.

use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::os::unix::process::CommandExt;
use std::process::{Child, Command};

use rustix::process::{Pid, Signal, kill_process_group};

use crate::wait;

/// A running driver. It serves one window: it would refuse a second session.
pub struct Driver {
    process: Child,
    port: u16,
}

impl Driver {
    /// Starts a driver on a free port and waits until it listens.
    pub fn start(environment: impl IntoIterator<Item = (String, String)>) -> Self {
        let port = free_port();
        let process = Command::new("WebKitWebDriver")
            .args([format!("--port={port}"), "--host=127.0.0.1".to_owned()])
            .envs(environment)
            .env("TAURI_AUTOMATION", "true")
            .env("TAURI_WEBVIEW_AUTOMATION", "true")
            // In its own process group, so that the program ends with it whatever state it is in.
            .process_group(0)
            .spawn()
            .expect("WebKitWebDriver is installed (tests/packages.txt)");
        let driver = Self { process, port };
        let address = SocketAddr::from((Ipv4Addr::LOCALHOST, port));
        wait::until(|| TcpStream::connect(address).ok()).expect("WebKitWebDriver listens");
        driver
    }

    /// The address at which it listens.
    pub fn url(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        if let Some(group) = i32::try_from(self.process.id()).ok().and_then(Pid::from_raw) {
            let _ = kill_process_group(group, Signal::KILL);
        }
        let _ = self.process.wait();
    }
}

/// A port that was free a moment ago.
fn free_port() -> u16 {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("this machine has free ports");
    listener.local_addr().expect("a bound listener has an address").port()
}
