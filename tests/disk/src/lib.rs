//! Stands between a program and its files: records every call that changes files, and makes one of them fail or the last.
//!
//! The library is loaded with `LD_PRELOAD`, on Linux on x86-64 alone. It asks the kernel (seccomp) to turn each of these calls into a
//! signal, whose handler then does the call itself. So it does not matter whether a call comes from the C library, from SQLite, or from
//! Rust code that calls the kernel without the C library, which functions of the same names in front of the C library's would not see.
//!
//! strace can let calls fail and end processes too. But it counts each kind of call by itself, cannot end a process when half of the
//! bytes are written, and writes a log for people.
//!
//! Environment variables:
//!
//! | name | what it says |
//! | --- | --- |
//! | `DISK_BELOW` | the folder whose files are meant, an absolute path without links; nothing happens without it |
//! | `DISK_LOG` | a file outside that folder, to which a line is appended for each call, as `Change::record` writes it |
//! | `DISK_CALL` | number of the call, from 1, at which `DISK_HOW` happens |
//! | `DISK_HOW` | `eio`, `enospc`: the call fails; `before`: the process ends instead; `half`: it ends when half of the bytes are written |
//!
//! Each call that may change a file or make a change durable counts, whether it succeeds or not: opening for creating or emptying,
//! writing, changing the length, giving and removing names, making and removing folders, syncing. What is changed through memory is not
//! seen: of SQLite's files that is the index of its log alone, which is made anew after a crash.

#![cfg(all(target_os = "linux", target_arch = "x86_64"))]

use libc::{c_char, c_int, c_long, c_void};
use std::ffi::{CStr, CString, OsString};
use std::os::unix::ffi::{OsStrExt, OsStringExt};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;
use std::sync::atomic::{AtomicU64, Ordering};

/// How the process ends at the chosen call, so that nobody takes it for an end of its own.
const ENDED: c_long = 86;

/// The calls that are caught.
const CAUGHT: &[c_long] = &[
    libc::SYS_open,
    libc::SYS_openat,
    libc::SYS_creat,
    libc::SYS_write,
    libc::SYS_pwrite64,
    libc::SYS_writev,
    libc::SYS_pwritev,
    libc::SYS_pwritev2,
    libc::SYS_ftruncate,
    libc::SYS_truncate,
    libc::SYS_fallocate,
    libc::SYS_rename,
    libc::SYS_renameat,
    libc::SYS_renameat2,
    libc::SYS_link,
    libc::SYS_linkat,
    libc::SYS_symlink,
    libc::SYS_symlinkat,
    libc::SYS_unlink,
    libc::SYS_unlinkat,
    libc::SYS_mkdir,
    libc::SYS_mkdirat,
    libc::SYS_rmdir,
    libc::SYS_fsync,
    libc::SYS_fdatasync,
    libc::SYS_copy_file_range,
    libc::SYS_sendfile,
];

struct Settings {
    below: PathBuf,
    log: Option<c_int>,
    call: u64,
    how: How,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum How {
    Fail(c_int),
    EndBefore,
    EndHalfway,
}

static SETTINGS: OnceLock<Settings> = OnceLock::new();
static CALLS: AtomicU64 = AtomicU64::new(0);

std::arch::global_asm!(
    // The only place from which caught calls pass: the filter knows the address behind it.
    ".globl disk_call, disk_call_end",
    "disk_call:",
    "mov rax, rdi",
    "mov rdi, rsi",
    "mov rsi, rdx",
    "mov rdx, rcx",
    "mov r10, r8",
    "mov r8, r9",
    "mov r9, [rsp + 8]",
    "syscall",
    "disk_call_end:",
    "ret",
);

unsafe extern "C" {
    /// Makes a system call: its number and six values; returns what the kernel returns, a negative number for an error.
    fn disk_call(number: c_long, a: c_long, b: c_long, c: c_long, d: c_long, e: c_long, f: c_long) -> c_long;
    fn disk_call_end();
}

fn call(number: c_long, with: [c_long; 6]) -> c_long {
    let [a, b, c, d, e, f] = with;
    // SAFETY: either the program's own call with the program's own values, or one of the calls below, with values that live that long.
    unsafe { disk_call(number, a, b, c, d, e, f) }
}

#[used]
#[unsafe(link_section = ".init_array")]
static BEGIN: extern "C" fn() = begin;

/// Runs when the library is loaded, before the program's own code.
extern "C" fn begin() {
    let Some(below) = std::env::var_os("DISK_BELOW") else { return };
    let number = std::env::var("DISK_CALL").ok().and_then(|number| number.parse().ok()).unwrap_or(0);
    let how = match std::env::var("DISK_HOW").unwrap_or_default().as_str() {
        "eio" => How::Fail(libc::EIO),
        "enospc" => How::Fail(libc::ENOSPC),
        "half" => How::EndHalfway,
        _ => How::EndBefore,
    };
    let log = std::env::var_os("DISK_LOG").map(|path| {
        let path = CString::new(path.as_bytes()).expect("a path");
        let flags = libc::O_CREAT | libc::O_APPEND | libc::O_WRONLY | libc::O_CLOEXEC;
        // SAFETY: the path is a C string.
        let file = unsafe { libc::open(path.as_ptr(), flags, 0o600) };
        assert!(file >= 0, "DISK_LOG cannot be written");
        file
    });
    let settings = Settings { below: below.into(), log, call: number, how };
    if SETTINGS.set(settings).is_ok() {
        catch();
    }
}

/// Asks the kernel for a signal instead of each caught call, except from [`disk_call`].
fn catch() {
    // SAFETY: the handler has the signature that SA_SIGINFO asks for, and the structures are complete.
    unsafe {
        let mut action: libc::sigaction = std::mem::zeroed();
        action.sa_sigaction = caught as *const () as usize;
        action.sa_flags = libc::SA_SIGINFO | libc::SA_NODEFER;
        assert_eq!(libc::sigaction(libc::SIGSYS, &action, std::ptr::null_mut()), 0, "a handler");
    }
    let statement = |code: u32, jt: u8, jf: u8, k: u32| libc::sock_filter { code: code as u16, jt, jf, k };
    let load = |offset: u32| statement(libc::BPF_LD | libc::BPF_W | libc::BPF_ABS, 0, 0, offset);
    let equals = |k: u32, jt: u8, jf: u8| statement(libc::BPF_JMP | libc::BPF_JEQ | libc::BPF_K, jt, jf, k);
    let answer = |k: u32| statement(libc::BPF_RET | libc::BPF_K, 0, 0, k);
    let from = disk_call_end as *const () as u64;
    // Offsets in `seccomp_data`: the number at 0, the address behind the call at 8.
    let mut filter = vec![load(8), equals(from as u32, 0, 3), load(12), equals((from >> 32) as u32, 0, 1)];
    filter.extend([answer(libc::SECCOMP_RET_ALLOW), load(0)]);
    for number in CAUGHT {
        filter.extend([equals(*number as u32, 0, 1), answer(libc::SECCOMP_RET_TRAP)]);
    }
    filter.push(answer(libc::SECCOMP_RET_ALLOW));
    let program = libc::sock_fprog { len: filter.len() as u16, filter: filter.as_mut_ptr() };
    // SAFETY: the filter lives until it was copied.
    unsafe {
        assert_eq!(libc::prctl(libc::PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0), 0, "no new privileges");
        let set = libc::prctl(libc::PR_SET_SECCOMP, libc::SECCOMP_MODE_FILTER, &program as *const _);
        assert_eq!(set, 0, "the kernel takes the filter");
    }
}

/// Does what the program asked for, unless it is what is to fail.
extern "C" fn caught(_signal: c_int, _info: *mut libc::siginfo_t, context: *mut c_void) {
    // SAFETY: the kernel passes the registers of the interrupted call.
    let registers = unsafe { &mut (*context.cast::<libc::ucontext_t>()).uc_mcontext.gregs };
    let at = |register: c_int| registers[register as usize] as c_long;
    let with = [libc::REG_RDI, libc::REG_RSI, libc::REG_RDX, libc::REG_R10, libc::REG_R8, libc::REG_R9].map(at);
    let answer = answer(at(libc::REG_RAX), with);
    registers[libc::REG_RAX as usize] = answer;
}

fn answer(number: c_long, with: [c_long; 6]) -> c_long {
    let Some(settings) = SETTINGS.get() else { return call(number, with) };
    if matches!(number, libc::SYS_copy_file_range | libc::SYS_sendfile) {
        // Whoever calls these goes on to reading and writing when the kernel has none of them.
        return -c_long::from(libc::ENOSYS);
    }
    let Some(change) = Change::of(number, with, &settings.below) else { return call(number, with) };
    let count = CALLS.fetch_add(1, Ordering::SeqCst) + 1;
    if count == settings.call {
        match settings.how {
            How::Fail(error) => return -c_long::from(error),
            How::EndBefore => {}
            How::EndHalfway => {
                if let Change::Write { file, offset, bytes, .. } = &change {
                    let half = &bytes[..bytes.len() / 2];
                    let (place, length) = (half.as_ptr() as c_long, half.len() as c_long);
                    call(libc::SYS_pwrite64, [*file, place, length, *offset as c_long, 0, 0]);
                }
            }
        }
        call(libc::SYS_exit_group, [ENDED, 0, 0, 0, 0, 0]);
    }
    let result = call(number, with);
    if let Some(log) = settings.log {
        let record = if result < 0 { b"failed\n".to_vec() } else { change.record(result, &settings.below) };
        call(libc::SYS_write, [log.into(), record.as_ptr() as c_long, record.len() as c_long, 0, 0, 0]);
    }
    result
}

/// What a call changes below the folder.
enum Change {
    /// Opening for creating or emptying.
    Open {
        path: PathBuf,
        is_new: bool,
        empties: bool,
    },
    Write {
        file: c_long,
        offset: u64,
        bytes: Vec<u8>,
    },
    Length {
        file: c_long,
        length: u64,
        only_grows: bool,
    },
    Rename {
        from: PathBuf,
        to: PathBuf,
    },
    Unlink {
        path: PathBuf,
    },
    MakeFolder {
        path: PathBuf,
    },
    RemoveFolder {
        path: PathBuf,
    },
    Sync {
        file: c_long,
    },
}

impl Change {
    /// What the call changes; nothing if it is not about a file below the folder.
    fn of(number: c_long, with: [c_long; 6], below: &Path) -> Option<Change> {
        let here = c_long::from(libc::AT_FDCWD);
        let [a, b, c, d, ..] = with;
        let path = |folder: c_long, text: c_long| at(folder, text).filter(|path| path.starts_with(below));
        let open = |folder: c_long, text: c_long, flags: c_int| {
            if flags & (libc::O_CREAT | libc::O_TRUNC) == 0 {
                return None;
            }
            let path = path(folder, text)?;
            let is_new = flags & libc::O_CREAT != 0 && path.symlink_metadata().is_err();
            Some(Change::Open { is_new, empties: flags & libc::O_TRUNC != 0 && !is_new, path })
        };
        let file = || name(a).filter(|path| path.starts_with(below)).map(|_| a);
        let write = |offset: Option<u64>, bytes: Vec<u8>| {
            Some(Change::Write { file: a, offset: offset.unwrap_or_else(|| place(a)), bytes })
        };
        match number {
            libc::SYS_open => open(here, a, b as c_int),
            libc::SYS_openat => open(a, b, c as c_int),
            libc::SYS_creat => open(here, a, libc::O_CREAT | libc::O_TRUNC),
            libc::SYS_write => file().and_then(|_| write(None, copied(b, c))),
            libc::SYS_pwrite64 => file().and_then(|_| write(Some(d as u64), copied(b, c))),
            libc::SYS_writev => file().and_then(|_| write(None, gathered(b, c))),
            libc::SYS_pwritev | libc::SYS_pwritev2 => file().and_then(|_| write(Some(d as u64), gathered(b, c))),
            libc::SYS_ftruncate => file().map(|file| Change::Length { file, length: b as u64, only_grows: false }),
            libc::SYS_fallocate => file().map(|file| Change::Length { file, length: (c + d) as u64, only_grows: true }),
            libc::SYS_rename => Some(Change::Rename { from: path(here, a)?, to: path(here, b)? }),
            libc::SYS_renameat | libc::SYS_renameat2 => Some(Change::Rename { from: path(a, b)?, to: path(c, d)? }),
            libc::SYS_unlink => path(here, a).map(|path| Change::Unlink { path }),
            libc::SYS_unlinkat if c as c_int & libc::AT_REMOVEDIR != 0 => {
                path(a, b).map(|path| Change::RemoveFolder { path })
            }
            libc::SYS_unlinkat => path(a, b).map(|path| Change::Unlink { path }),
            libc::SYS_mkdir => path(here, a).map(|path| Change::MakeFolder { path }),
            libc::SYS_mkdirat => path(a, b).map(|path| Change::MakeFolder { path }),
            libc::SYS_rmdir => path(here, a).map(|path| Change::RemoveFolder { path }),
            libc::SYS_fsync | libc::SYS_fdatasync => file().map(|file| Change::Sync { file }),
            // The program does none of these; if it begins to, its log would not be complete.
            libc::SYS_link | libc::SYS_symlink => path(here, b).map(|_| unknown(number)),
            libc::SYS_linkat => path(c, d).map(|_| unknown(number)),
            libc::SYS_symlinkat => path(b, c).map(|_| unknown(number)),
            libc::SYS_truncate => path(here, a).map(|_| unknown(number)),
            _ => None,
        }
    }

    /// The line of the log, and the bytes after it. `result` is what the call returned.
    fn record(&self, result: c_long, below: &Path) -> Vec<u8> {
        let shown = |path: &Path| path.strip_prefix(below).unwrap_or(path).display().to_string();
        let mut record = Vec::new();
        let mut line = |text: String| record.extend((text + "\n").into_bytes());
        match self {
            Change::Open { path, is_new: true, .. } => line(format!("create\t{}\t{}", inode(result), shown(path))),
            Change::Open { empties: true, .. } => line(format!("length\t{}\t0", inode(result))),
            Change::Open { .. } => line("open".to_owned()),
            Change::Write { file, offset, bytes } => {
                let bytes = &bytes[..(result as usize).min(bytes.len())];
                line(format!("write\t{}\t{offset}\t{}", inode(*file), bytes.len()));
                record.extend(bytes);
            }
            Change::Length { file, length, only_grows } => {
                line(format!("{}\t{}\t{length}", if *only_grows { "grow" } else { "length" }, inode(*file)));
            }
            Change::Rename { from, to } => line(format!("rename\t{}\t{}", shown(from), shown(to))),
            Change::Unlink { path } => line(format!("unlink\t{}", shown(path))),
            Change::MakeFolder { path } => line(format!("mkdir\t{}", shown(path))),
            Change::RemoveFolder { path } => line(format!("rmdir\t{}", shown(path))),
            Change::Sync { file } => match name(*file) {
                Some(path) if path.is_dir() => line(format!("settle\t{}", shown(&path))),
                _ => line(format!("sync\t{}", inode(*file))),
            },
        }
        record
    }
}

/// Ends the process: a change that cannot be recorded must not go unnoticed.
fn unknown(number: c_long) -> Change {
    let said = format!("disk: system call {number} is not known here\n");
    call(libc::SYS_write, [2, said.as_ptr() as c_long, said.len() as c_long, 0, 0, 0]);
    call(libc::SYS_exit_group, [ENDED + 1, 0, 0, 0, 0, 0]);
    Change::Sync { file: -1 }
}

/// The absolute path that a call names: as a C string, relative to an open folder.
fn at(folder: c_long, text: c_long) -> Option<PathBuf> {
    if text == 0 {
        return None;
    }
    // SAFETY: the program passes a C string.
    let text = unsafe { CStr::from_ptr(text as *const c_char) };
    let path = Path::new(std::ffi::OsStr::from_bytes(text.to_bytes()));
    let base = if path.is_absolute() {
        PathBuf::new()
    } else if folder as c_int == libc::AT_FDCWD {
        std::env::current_dir().ok()?
    } else {
        name(folder)?
    };
    // The last part may not exist yet or be a link; what is before it is resolved.
    let whole = base.join(path);
    let last = whole.file_name()?.to_owned();
    let above = whole.parent().and_then(|above| above.canonicalize().ok()).or_else(|| whole.parent().map(Path::to_owned))?;
    Some(above.join(last))
}

/// The path of an open file or folder.
fn name(file: c_long) -> Option<PathBuf> {
    let link = CString::new(format!("/proc/self/fd/{}", file as c_int)).ok()?;
    let mut bytes = vec![0u8; 4096];
    // SAFETY: both live during the call.
    let length = unsafe { libc::readlink(link.as_ptr(), bytes.as_mut_ptr().cast(), bytes.len()) };
    bytes.truncate(usize::try_from(length).ok()?);
    Some(PathBuf::from(OsString::from_vec(bytes)))
}

/// The number of an open file on its disk.
fn inode(file: c_long) -> u64 {
    // SAFETY: the structure is filled by the call.
    unsafe {
        let mut facts: libc::stat64 = std::mem::zeroed();
        if libc::fstat64(file as c_int, &mut facts) == 0 { facts.st_ino } else { 0 }
    }
}

/// Where the next write goes.
fn place(file: c_long) -> u64 {
    // SAFETY: plain calls with numbers.
    let (flags, from) =
        unsafe { (libc::fcntl(file as c_int, libc::F_GETFL), libc::lseek64(file as c_int, 0, libc::SEEK_CUR)) };
    let appends = flags & libc::O_APPEND != 0;
    if appends {
        std::fs::metadata(format!("/proc/self/fd/{file}")).map_or(0, |facts| facts.len())
    } else {
        from.max(0) as u64
    }
}

fn copied(place: c_long, length: c_long) -> Vec<u8> {
    // SAFETY: the program passes this many bytes; an empty slice may be anywhere.
    if length <= 0 {
        Vec::new()
    } else {
        unsafe { std::slice::from_raw_parts(place as *const u8, length as usize) }.to_vec()
    }
}

fn gathered(parts: c_long, number: c_long) -> Vec<u8> {
    let part = |at: usize| {
        // SAFETY: the program passes a list of this many parts.
        let part = unsafe { &*(parts as *const libc::iovec).add(at) };
        copied(part.iov_base as c_long, part.iov_len as c_long)
    };
    (0..number as usize).flat_map(part).collect()
}
