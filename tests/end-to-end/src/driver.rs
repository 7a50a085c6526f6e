//! The WebDriver process of one window, <https://www.w3.org/TR/webdriver2/>. It starts the program itself, so the program inherits
//! its environment.

use std::collections::BTreeSet;
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::os::unix::process::CommandExt;
use std::process::{Child, Command};
use std::sync::{Mutex, PoisonError};

use rustix::process::{Pid, Signal, kill_process, kill_process_group};

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

    /// Ends the process that draws the program's page, as a system does that is short of memory; returns whether another one draws it
    /// afterwards. The driver's session ends with the process.
    #[track_caller]
    pub fn is_drawn_again(&self) -> bool {
        let before = self.web_process().expect("a process draws the page");
        kill_process(before, Signal::KILL).expect("it is ours");
        wait::until(|| self.web_process().filter(|now| *now != before)).is_some()
    }

    /// The process that draws the program's page: of all processes, the one with that name in the driver's group.
    fn web_process(&self) -> Option<Pid> {
        let draws = |process: std::fs::DirEntry| {
            let pid: i32 = process.file_name().to_str()?.parse().ok()?;
            let stat = std::fs::read_to_string(process.path().join("stat")).ok()?;
            let (name, rest) = stat.split_once('(')?.1.split_once(')')?;
            let group: u32 = rest.split_whitespace().nth(2)?.parse().ok()?;
            let is_alive = !rest.trim_start().starts_with('Z');
            (name.starts_with("WebKitWebProces") && group == self.process.id() && is_alive).then_some(pid)
        };
        std::fs::read_dir("/proc").ok()?.flatten().find_map(draws).and_then(Pid::from_raw)
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

/// A port that was free a moment ago and was not given to another test, whose driver may not listen yet.
fn free_port() -> u16 {
    static GIVEN: Mutex<BTreeSet<u16>> = Mutex::new(BTreeSet::new());
    let mut given = GIVEN.lock().unwrap_or_else(PoisonError::into_inner);
    loop {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("this machine has free ports");
        let port = listener.local_addr().expect("a bound listener has an address").port();
        if given.insert(port) {
            return port;
        }
    }
}
