//! A virtual sound card that records what programs play on it.

use std::io::Read;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread;

use crate::wait;

/// Samples per second.
const RATE: usize = 48_000;
/// Least level that counts as a sound, of 32,768: a hundredth of full scale is below the softest cue.
const HEARD: u16 = 330;
/// Least silence before a new sound, in samples: the pauses within a cue are shorter.
const APART: usize = RATE / 5;

/// The virtual card and its recording. It ends when this is dropped.
pub struct SoundCard {
    server: Child,
    recorder: Child,
    address: String,
    onsets: Arc<Mutex<Vec<usize>>>,
}

impl SoundCard {
    /// A card whose files are in `folder`, and which records from now on.
    ///
    /// # Panics
    /// If the packages of `tests/packages-long.txt` are missing.
    pub fn new(folder: &Path) -> SoundCard {
        let socket: PathBuf = folder.join("sound");
        let module = format!("module-native-protocol-unix auth-anonymous=1 socket={}", socket.display());
        let server = Command::new("pulseaudio")
            .args(["--daemonize=no", "--exit-idle-time=-1", "-n", "--disable-shm=yes", "-L"])
            .arg(format!("module-null-sink sink_name=heard rate={RATE}"))
            .args(["-L", &module])
            .envs([("HOME", folder), ("XDG_RUNTIME_DIR", folder), ("XDG_CONFIG_HOME", folder)])
            .stderr(Stdio::null())
            .spawn()
            .expect("pulseaudio is installed (tests/packages-long.txt)");
        wait::until(|| socket.exists().then_some(())).expect("the sound server answers");
        let address = format!("unix:{}", socket.display());
        let mut recorder = Command::new("parec")
            .arg(format!("--server={address}"))
            .args(["--device=heard.monitor", "--format=s16le", "--channels=1", "--latency-msec=20"])
            .arg(format!("--rate={RATE}"))
            .stdout(Stdio::piped())
            .spawn()
            .expect("parec is installed (tests/packages-long.txt)");
        let onsets = Arc::new(Mutex::new(Vec::new()));
        let (heard, mut played) = (Arc::clone(&onsets), recorder.stdout.take().expect("it is a pipe"));
        thread::spawn(move || listen(&mut played, &heard));
        SoundCard { server, recorder, address, onsets }
    }

    /// The value that a program needs in its environment to play on it.
    pub fn address(&self) -> &str {
        &self.address
    }

    /// The beginning of each sound, in milliseconds since the recording began, by the card's own count of samples.
    pub fn onsets_ms(&self) -> Vec<f64> {
        let onsets = self.onsets.lock().unwrap_or_else(PoisonError::into_inner);
        onsets.iter().map(|at| *at as f64 * 1000.0 / RATE as f64).collect()
    }
}

impl Drop for SoundCard {
    fn drop(&mut self) {
        for child in [&mut self.recorder, &mut self.server] {
            let _ = child.kill();
            let _ = child.wait();
        }
    }
}

fn listen(played: &mut impl Read, onsets: &Mutex<Vec<usize>>) {
    let (mut at, mut last_heard) = (0_usize, None::<usize>);
    let mut bytes = [0_u8; 2];
    let mut played = std::io::BufReader::new(played);
    while played.read_exact(&mut bytes).is_ok() {
        if i16::from_le_bytes(bytes).unsigned_abs() > HEARD {
            if last_heard.is_none_or(|last| at - last > APART) {
                onsets.lock().unwrap_or_else(PoisonError::into_inner).push(at);
            }
            last_heard = Some(at);
        }
        at += 1;
    }
}
