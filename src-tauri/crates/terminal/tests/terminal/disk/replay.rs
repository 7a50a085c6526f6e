//! A disk that is made of the recorded calls: what is on it for good, and what the system may or may not have written when the power
//! is cut.
//!
//! A file's bytes are on the disk once the file was synced; the names in a folder once that folder was synced. Of what came later, any part
//! may be there: no write, some of them, parts of each by sectors; and names that were given, changed or removed, or not, one without
//! the other. That is harsher than the file systems of today, which keep names in order.

use std::collections::BTreeMap;
use std::fs;
use std::os::unix::fs::MetadataExt;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Bytes that a disk writes whole or not at all.
const SECTOR: usize = 512;

/// A call that succeeded.
#[derive(Debug, Clone)]
pub enum Call {
    Create {
        inode: u64,
        path: String,
    },
    Write {
        inode: u64,
        offset: usize,
        bytes: Arc<[u8]>,
    },
    Length {
        inode: u64,
        length: usize,
        only_grows: bool,
    },
    Rename {
        from: String,
        to: String,
    },
    Unlink {
        path: String,
    },
    MakeFolder {
        path: String,
    },
    RemoveFolder {
        path: String,
    },
    Sync {
        inode: u64,
    },
    Settle {
        path: String,
    },
    /// It changed nothing, or it failed.
    Nothing,
}

/// Reads the calls that the library of `tests/disk` wrote down.
pub fn calls(log: &[u8]) -> Vec<Call> {
    let (mut all, mut rest) = (Vec::new(), log);
    while let Some(end) = rest.iter().position(|byte| *byte == b'\n') {
        let line = String::from_utf8(rest[..end].to_vec()).expect("text");
        rest = &rest[end + 1..];
        let parts: Vec<&str> = line.split('\t').collect();
        let number = |at: usize| parts[at].parse::<usize>().expect("a number");
        let text = |at: usize| parts[at].to_owned();
        all.push(match parts[0] {
            "create" => Call::Create { inode: number(1) as u64, path: text(2) },
            "write" => {
                let (bytes, after) = rest.split_at(number(3));
                rest = after;
                Call::Write { inode: number(1) as u64, offset: number(2), bytes: bytes.into() }
            }
            kind @ ("length" | "grow") => {
                Call::Length { inode: number(1) as u64, length: number(2), only_grows: kind == "grow" }
            }
            "rename" => Call::Rename { from: text(1), to: text(2) },
            "unlink" => Call::Unlink { path: text(1) },
            "mkdir" => Call::MakeFolder { path: text(1) },
            "rmdir" => Call::RemoveFolder { path: text(1) },
            "sync" => Call::Sync { inode: number(1) as u64 },
            "settle" => Call::Settle { path: text(1) },
            "open" | "failed" => Call::Nothing,
            other => panic!("{other:?} is no call"),
        });
    }
    all
}

/// A file or folder by its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Node {
    File(usize),
    Folder(usize),
}

type Names = BTreeMap<String, Node>;

#[derive(Debug, Clone)]
enum Data {
    Write(usize, Arc<[u8]>),
    Length(usize, bool),
}

#[derive(Debug, Clone)]
enum Naming {
    Give(String, Node),
    Take(String),
    Move(String, String, Node),
}

#[derive(Debug, Default)]
struct File {
    durable: Vec<u8>,
    pending: Vec<Data>,
}

#[derive(Debug, Default)]
struct Folder {
    durable: Names,
    pending: Vec<Naming>,
    current: Names,
}

/// The disk after some of the calls.
#[derive(Debug)]
pub struct Disk {
    files: Vec<File>,
    folders: Vec<Folder>,
    numbers: BTreeMap<u64, usize>,
}

/// What is on a disk: the files by their paths, and the folders.
pub type Image = BTreeMap<PathBuf, Option<Vec<u8>>>;

/// Chooses what of a list of pending changes is on the disk, and what of one write.
pub trait Choice {
    /// For each of so many pending changes to the bytes of a file, whether it was done.
    fn data(&mut self, changes: usize) -> Vec<bool>;
    /// For each of so many pending changes of names, whether it was done.
    fn names(&mut self, changes: usize) -> Vec<bool>;
    /// Whether a sector of a write was written that was only done in part; `None` for a write that was done as a whole.
    fn sectors(&mut self, sectors: usize) -> Option<Vec<bool>>;
}

/// Everything was done: what a process leaves that ends.
pub struct All;

impl Choice for All {
    fn data(&mut self, changes: usize) -> Vec<bool> {
        vec![true; changes]
    }
    fn names(&mut self, changes: usize) -> Vec<bool> {
        vec![true; changes]
    }
    fn sectors(&mut self, _sectors: usize) -> Option<Vec<bool>> {
        None
    }
}

impl Disk {
    /// A disk with everything that is in `place`, synced.
    pub fn of(place: &Path) -> Disk {
        let mut disk = Disk { files: Vec::new(), folders: vec![Folder::default()], numbers: BTreeMap::new() };
        disk.take_in(place, 0);
        disk
    }

    fn take_in(&mut self, dir: &Path, number: usize) {
        for entry in fs::read_dir(dir).expect("a folder") {
            let path = entry.expect("an entry").path();
            let name = path.file_name().expect("a name").to_string_lossy().into_owned();
            let node = if path.is_dir() {
                self.folders.push(Folder::default());
                let new = self.folders.len() - 1;
                self.take_in(&path, new);
                Node::Folder(new)
            } else {
                self.files.push(File { durable: fs::read(&path).expect("readable"), pending: Vec::new() });
                self.numbers.insert(fs::metadata(&path).expect("there").ino(), self.files.len() - 1);
                Node::File(self.files.len() - 1)
            };
            self.folders[number].durable.insert(name.clone(), node);
            self.folders[number].current.insert(name, node);
        }
    }

    /// Does one more call.
    pub fn apply(&mut self, call: &Call) {
        match call {
            Call::Create { inode, path } => {
                self.files.push(File::default());
                self.numbers.insert(*inode, self.files.len() - 1);
                self.give(path, Node::File(self.files.len() - 1));
            }
            Call::Write { inode, offset, bytes } => self.file(*inode).pending.push(Data::Write(*offset, bytes.clone())),
            Call::Length { inode, length, only_grows } => self.file(*inode).pending.push(Data::Length(*length, *only_grows)),
            Call::Rename { from, to } => {
                let ((folder, old), (other, new)) = (self.place(from), self.place(to));
                assert_eq!(folder, other, "nothing is moved from one folder to another");
                let names = &mut self.folders[folder].current;
                let node = names.remove(&old).unwrap_or_else(|| panic!("{from} is there"));
                names.insert(new.clone(), node);
                self.folders[folder].pending.push(Naming::Move(old, new, node));
            }
            Call::Unlink { path } | Call::RemoveFolder { path } => {
                let (folder, name) = self.place(path);
                self.folders[folder].current.remove(&name);
                self.folders[folder].pending.push(Naming::Take(name));
            }
            Call::MakeFolder { path } => {
                self.folders.push(Folder::default());
                self.give(path, Node::Folder(self.folders.len() - 1));
            }
            Call::Sync { inode } => {
                let file = self.file(*inode);
                file.durable = done(file, &mut All);
                file.pending.clear();
            }
            Call::Settle { path } => {
                let number = self.folder(path);
                let folder = &mut self.folders[number];
                folder.pending.clear();
                folder.durable.clone_from(&folder.current);
            }
            Call::Nothing => {}
        }
    }

    /// How many changes are not on the disk for sure.
    pub fn pending(&self) -> usize {
        let data: usize = self.files.iter().map(|file| file.pending.len()).sum();
        data + self.folders.iter().map(|folder| folder.pending.len()).sum::<usize>()
    }

    /// What is on the disk, if this of the pending changes was done.
    pub fn image(&self, choice: &mut impl Choice) -> Image {
        let mut image = Image::new();
        self.write_folder(0, Path::new(""), choice, &mut image);
        image
    }

    fn write_folder(&self, number: usize, at: &Path, choice: &mut impl Choice, image: &mut Image) {
        let folder = &self.folders[number];
        let mut names = folder.durable.clone();
        for (naming, was_done) in folder.pending.iter().zip(choice.names(folder.pending.len())) {
            match naming {
                _ if !was_done => {}
                Naming::Give(name, node) => drop(names.insert(name.clone(), *node)),
                Naming::Take(name) => drop(names.remove(name)),
                Naming::Move(from, to, node) => {
                    names.remove(from);
                    names.insert(to.clone(), *node);
                }
            }
        }
        for (name, node) in names {
            let path = at.join(&name);
            match node {
                // The index of SQLite's log is made anew, since nobody has it open.
                Node::File(_) if name.ends_with("-shm") => {}
                Node::File(file) => drop(image.insert(path, Some(done(&self.files[file], choice)))),
                Node::Folder(folder) => {
                    image.insert(path.clone(), None);
                    self.write_folder(folder, &path, choice, image);
                }
            }
        }
    }

    fn give(&mut self, path: &str, node: Node) {
        let (folder, name) = self.place(path);
        self.folders[folder].current.insert(name.clone(), node);
        self.folders[folder].pending.push(Naming::Give(name, node));
    }

    fn file(&mut self, inode: u64) -> &mut File {
        let number = self.numbers.get(&inode).unwrap_or_else(|| panic!("the file {inode} is known"));
        &mut self.files[*number]
    }

    /// The folder of a path, and the name in it.
    fn place(&self, path: &str) -> (usize, String) {
        let (above, name) = path.rsplit_once('/').unwrap_or(("", path));
        (self.folder(above), name.to_owned())
    }

    fn folder(&self, path: &str) -> usize {
        path.split('/').filter(|part| !part.is_empty()).fold(0, |at, part| match self.folders[at].current.get(part) {
            Some(Node::Folder(number)) => *number,
            other => panic!("{path}: {part} is {other:?}"),
        })
    }
}

/// The bytes of a file, if this of its pending changes was done.
fn done(file: &File, choice: &mut impl Choice) -> Vec<u8> {
    let mut bytes = file.durable.clone();
    for (data, was_done) in file.pending.iter().zip(choice.data(file.pending.len())) {
        match data {
            _ if !was_done => {}
            Data::Length(length, only_grows) if !only_grows || *length > bytes.len() => bytes.resize(*length, 0),
            Data::Length(..) => {}
            Data::Write(offset, new) => {
                let end = offset + new.len();
                if bytes.len() < end {
                    bytes.resize(end, 0);
                }
                let sectors = end.div_ceil(SECTOR) - offset / SECTOR;
                let written = choice.sectors(sectors);
                for (at, byte) in (*offset..end).zip(new.iter()) {
                    if written.as_ref().is_none_or(|written| written[at / SECTOR - offset / SECTOR]) {
                        bytes[at] = *byte;
                    }
                }
            }
        }
    }
    bytes
}
