//! A window of the program: how it is opened, and access to its page.

use std::path::{Path, PathBuf};

use fantoccini::elements::Element;
use fantoccini::error::{CmdError, NewSessionError};
use fantoccini::wd::Capabilities;
use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use tokio::runtime::Runtime;

use crate::desktop::Desktop;
use crate::driver::Driver;
use crate::program;
use crate::sockets::Sockets;
use crate::wait::PATIENCE;

/// The settings of a window that is about to be opened.
pub struct Opening<'a> {
    desktop: &'a Desktop,
    home: PathBuf,
    arguments: Vec<String>,
    environment: Vec<(String, String)>,
    size: Option<(u32, u32)>,
    sockets: Option<Sockets>,
}

impl<'a> Opening<'a> {
    pub(crate) fn new(desktop: &'a Desktop, home: &str) -> Self {
        Self::on(desktop, desktop.path(home))
    }

    pub(crate) fn on(desktop: &'a Desktop, home: PathBuf) -> Self {
        Self { desktop, home, arguments: Vec::new(), environment: Vec::new(), size: Some((390, 844)), sockets: None }
    }

    /// Opens it at this moment, RFC 3339, instead of the real time.
    pub fn at(mut self, instant: &str) -> Self {
        self.arguments.extend(["--at".to_owned(), instant.to_owned()]);
        self
    }

    /// Opens it on a desktop that is set to dark.
    pub fn dark(self) -> Self {
        self.with("GTK_THEME", "Adwaita:dark")
    }

    /// Opens it in the made-up language, whose accents the functions of [`Window`] ignore.
    pub fn pseudo(self) -> Self {
        self.with("CARRYOVER_PSEUDO", "1")
    }

    /// Opens it with recorded trials that are replayed in turn as if they came from the motion sensor.
    pub fn motion(mut self, files: &[PathBuf]) -> Self {
        for file in files {
            self.arguments.extend(["--motion".to_owned(), file.to_string_lossy().into_owned()]);
        }
        self
    }

    /// Opens it in this time zone, an IANA name.
    pub fn zone(self, zone: &str) -> Self {
        self.with("TZ", zone)
    }

    /// Opens it with a page of this width and height in CSS pixels; the default is a phone's size.
    pub fn size(mut self, width: u32, height: u32) -> Self {
        self.size = Some((width, height));
        self
    }

    /// Opens it in the size that the program chooses.
    pub fn in_its_own_size(mut self) -> Self {
        self.size = None;
        self
    }

    /// Opens it with this variable in the program's environment.
    pub fn with(mut self, name: &str, value: &str) -> Self {
        self.environment.push((name.to_owned(), value.to_owned()));
        self
    }

    /// Opens it so that its sockets are watched, and those of every process that it starts.
    pub fn watched(mut self, sockets: &Sockets) -> Self {
        self.sockets = Some(sockets.clone());
        self
    }

    /// Opens it and waits for the page.
    pub fn start(self) -> Window {
        let home = self.home.to_string_lossy().into_owned();
        let own = [vec!["--home".to_owned(), home], self.arguments].concat();
        let (program, arguments) = match &self.sockets {
            Some(sockets) => sockets.around(&own),
            None => (program::path(), own),
        };
        let environment = [self.desktop.environment(), self.environment].concat();
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("this machine has threads");
        // Another program may have taken the port between asking for a free one and listening on it; then no window was opened.
        let opened = (0..3).find_map(|_| {
            let driver = Driver::start(environment.clone());
            runtime.block_on(connect(&driver.url(), &program, &arguments)).map(|client| (client, driver))
        });
        let (client, driver) = opened.expect("a driver answers");
        let window = Window { client, runtime, driver, home: self.home };
        if let Some((width, height)) = self.size {
            window.resize(width, height);
        }
        window
    }
}

/// The session in which the window is open; `None` if no driver answers at this address.
async fn connect(url: &str, program: &Path, arguments: &[String]) -> Option<Client> {
    let options = json!({ "binary": program, "args": arguments });
    let capabilities = Capabilities::from_iter([("webkitgtk:browserOptions".to_owned(), options)]);
    let mut builder = ClientBuilder::new(HttpConnector::new());
    builder.capabilities(capabilities);
    // The driver itself waits forever for a program that ended before opening a window.
    let opened = tokio::time::timeout(PATIENCE, builder.connect(url)).await.expect("the window opens in time");
    match opened {
        Ok(client) => Some(client),
        Err(NewSessionError::Failed(_) | NewSessionError::FailedC(_)) => None,
        Err(error) => panic!("the window does not open: {error}"),
    }
}

/// An open window. Dropping it ends the program; if its page has had an error by then, the test fails.
pub struct Window {
    client: Client,
    runtime: Runtime,
    // Declared last, so that the program ends after the last question.
    driver: Driver,
    home: PathBuf,
}

impl Window {
    /// The data folder of this window.
    pub fn home(&self) -> &PathBuf {
        &self.home
    }

    /// The result of a script that is run in the page, for what has no function of its own.
    #[track_caller]
    pub fn ask(&self, script: &str, arguments: &[Value]) -> Value {
        match self.try_ask(script, arguments) {
            Ok(answer) => answer,
            Err(error) => panic!("the page cannot be asked {script:?}: {error}"),
        }
    }

    pub(crate) fn try_ask(&self, script: &str, arguments: &[Value]) -> Result<Value, CmdError> {
        self.runtime.block_on(self.client.execute(script, arguments.to_vec()))
    }

    /// Carries out one WebDriver command.
    pub(crate) fn run<T>(&self, command: impl AsyncFnOnce(&Client) -> Result<T, CmdError>) -> Result<T, CmdError> {
        self.runtime.block_on(command(&self.client))
    }

    pub(crate) fn element(&self, answer: &Value) -> Option<Element> {
        let id = answer.as_object()?.values().next()?.as_str()?.to_owned();
        Some(Element::from_element_id(self.client.clone(), id.into()))
    }

    /// Ends the process that draws the page; returns whether another one draws it afterwards, which cannot be asked anything.
    #[track_caller]
    pub fn is_drawn_again(self) -> bool {
        self.driver.is_drawn_again()
    }

    /// Ends the program as closing its window would, after checking that its page had no error.
    pub fn close(self) {
        let lock = self.home.join("lock");
        drop(self);
        // The program may take a moment to end; its home can be opened again once the lock is released.
        let free = || std::fs::File::options().write(true).open(&lock).is_ok_and(|file| file.try_lock().is_ok());
        crate::wait::until(|| (!lock.exists() || free()).then_some(())).expect("the program ends");
    }
}

impl Drop for Window {
    fn drop(&mut self) {
        if std::thread::panicking() {
            self.keep_picture("failed");
            return;
        }
        let faults = self.faults();
        // The driver returns an error if the window is gone already; both results are fine.
        let _ = self.runtime.block_on(self.client.clone().close());
        assert!(faults.is_empty(), "the page had faults:\n{faults}");
    }
}
