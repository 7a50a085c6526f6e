//! Receiving summaries: what is going on, and what was done. It goes on while other pages are shown, and stays until the clinic is locked.

mod parts;
mod report;

use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::Failure;
use wire::receiving::{
    ChooseFolder, FilesEvent, NamedRequest, Receipt, Receive, ReceiveNamed, ReceiveRequest, Received, StopReceiving,
};

use crate::invoke;
use crate::shared::AppContext;
pub use parts::Chosen;
use parts::Parts;
pub use report::Report;

/// How far it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Progress {
    /// Files that were read.
    pub read: u32,
    /// Files among them that do not wait for being taken in.
    pub done: u32,
    /// All files.
    pub of: u32,
}

/// What is to be received.
enum Source {
    /// Files that were chosen in the page.
    Chosen(Chosen),
    /// What was dropped on the window, or a folder that was chosen in the system's dialogue, by its number.
    Named(u32),
}

/// What is being received, and what was.
#[derive(Clone, Copy)]
pub struct Receiving {
    app: AppContext,
    /// How far it is; `None` while nothing is being received.
    pub progress: RwSignal<Option<Progress>>,
    /// What was done.
    pub report: RwSignal<Report>,
    /// Whether files are dragged over the window that would be received.
    pub over: RwSignal<bool>,
    /// Counts the times after which the list of patients has changed.
    pub news: RwSignal<u32>,
    /// On how many pages that are shown something can be received: while one takes another's place, two.
    places: StoredValue<u32>,
    /// Whether the person has asked to stop.
    stopping: RwSignal<bool>,
    /// What comes when this is done.
    waiting: StoredValue<Vec<Source>, LocalStorage>,
    /// Counts the locks: what was begun before the last one says nothing any more.
    locks: StoredValue<u32>,
}

impl Receiving {
    /// Nothing yet.
    pub fn new(app: AppContext) -> Receiving {
        Receiving {
            app,
            progress: RwSignal::new(None),
            report: RwSignal::new(Report::default()),
            over: RwSignal::new(false),
            news: RwSignal::new(0),
            places: StoredValue::new(0),
            stopping: RwSignal::new(false),
            waiting: StoredValue::new_local(Vec::new()),
            locks: StoredValue::new(0),
        }
    }

    /// Receives files that were chosen in the page.
    pub fn chosen(self, files: Chosen) {
        if files.of() > 0 || files.passed_over > 0 {
            self.receive(Source::Chosen(files));
        }
    }

    /// Lets the person choose a folder in the system's dialogue, and receives it.
    pub fn choose_folder(self) {
        self.app.request::<ChooseFolder>((), move |chosen| {
            if let Some(number) = chosen {
                self.receive(Source::Named(number));
            }
        });
    }

    /// The page on which something can be received is shown, until it is left.
    pub fn is_shown(self) {
        self.places.update_value(|places| *places += 1);
        on_cleanup(move || self.places.update_value(|places| *places -= 1));
    }

    /// Files are dragged over the window or dropped on it. They are received if the page that is shown says that it receives.
    pub fn files_over(self, event: FilesEvent) {
        let receives = self.places.get_value() > 0;
        self.over.set(receives && event == FilesEvent::Over);
        if let (true, FilesEvent::Dropped { number }) = (receives, event) {
            self.receive(Source::Named(number));
        }
    }

    /// Stops after the part that is on its way.
    pub fn stop(self) {
        self.stopping.set(true);
    }

    /// Forgets everything, since the clinic is locked.
    pub fn forget(self) {
        self.locks.update_value(|locks| *locks += 1);
        self.waiting.update_value(Vec::clear);
        self.stopping.set(true);
        self.progress.set(None);
        self.report.set(Report::default());
    }

    fn receive(self, source: Source) {
        if self.progress.with_untracked(Option::is_some) {
            return self.waiting.update_value(|waiting| waiting.push(source));
        }
        self.report.set(Report::default());
        spawn_local(self.all(source));
    }

    /// Receives one source after the other.
    async fn all(self, first: Source) {
        let locks = self.locks.get_value();
        let mut next = Some(first);
        self.stopping.set(false);
        while let Some(source) = next {
            let of = if let Source::Chosen(files) = &source { files.of() } else { 0 };
            self.progress.set(Some(Progress { read: 0, done: 0, of }));
            let done = match source {
                Source::Chosen(files) => self.parts(files, locks).await,
                Source::Named(number) => self.named(number, locks).await,
            };
            if self.locks.get_value() != locks {
                return;
            }
            if let Err(failure) = done {
                self.app.fault.set(Some(failure));
            }
            if self.report.with_untracked(Report::has_received) {
                self.news.update(|news| *news += 1);
            }
            next = self.waiting.try_update_value(|waiting| (!waiting.is_empty()).then(|| waiting.remove(0))).flatten();
        }
        self.report.update(|report| report.finished = true);
        self.progress.set(None);
    }

    /// Sends the files that were chosen in the page, a part after the other, and lets the shell receive what it gathered of them.
    async fn parts(self, files: Chosen, locks: u32) -> Result<(), Failure> {
        let (of, mut parts, mut first, mut unread) = (files.of(), Parts::of(files.files), true, 0);
        self.report.update(|report| report.passed_over += files.passed_over);
        let before = self.report.with_untracked(Report::told);
        loop {
            let (received, refused) = if first || !parts.is_over() {
                let (files, refused) = parts.next().await;
                let request = ReceiveRequest { files, first, last: parts.is_over() };
                (invoke::call::<Receive>(&request).await?, refused)
            } else {
                (invoke::call::<ReceiveNamed>(&NamedRequest { begin: None }).await?, Vec::new())
            };
            let Received { mut receipts, done, last, .. } = received;
            unread += u32::try_from(refused.len()).unwrap_or(u32::MAX);
            receipts.extend(refused);
            first = false;
            let progress = Progress { read: parts.read, done: done.saturating_add(unread), of };
            if !self.told(receipts, progress, last, before, locks) {
                return if last { Ok(()) } else { invoke::call::<StopReceiving>(&()).await };
            }
        }
    }

    /// Lets the shell receive what was dropped or chosen there, a part after the other.
    async fn named(self, number: u32, locks: u32) -> Result<(), Failure> {
        let before = self.report.with_untracked(Report::told);
        let mut begin = Some(number);
        loop {
            let Received { receipts, read, done, of, passed_over, last } =
                invoke::call::<ReceiveNamed>(&NamedRequest { begin }).await?;
            if begin.take().is_some() {
                self.report.update(|report| {
                    report.passed_over += passed_over;
                    report.nothing |= of == 0;
                });
            }
            if !self.told(receipts, Progress { read, done, of }, last, before, locks) {
                return if last { Ok(()) } else { invoke::call::<StopReceiving>(&()).await };
            }
        }
    }

    /// Takes the receipts of a part; returns whether to go on. `before` is what was told of earlier sources.
    fn told(self, receipts: Vec<Receipt>, progress: Progress, last: bool, before: u32, locks: u32) -> bool {
        if self.locks.get_value() != locks {
            return false;
        }
        let over = receipts.iter().any(Receipt::ends_receiving);
        let stops = (over || self.stopping.get_untracked()) && progress.done < progress.of;
        self.report.update(|report| {
            report.add(receipts);
            if stops {
                // Codes in pictures that were read wait for the last file: they were not touched either.
                report.untouched += progress.of.saturating_sub(report.told() - before);
            }
        });
        if stops {
            self.waiting.update_value(Vec::clear);
        }
        self.progress.set(Some(progress));
        !(last || stops || over)
    }
}
