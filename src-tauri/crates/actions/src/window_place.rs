//! The window's position and size, stored in the data folder, so that each folder's window opens as it was left.

use crate::{ActionResult, DataFolder, refuse};
use store::table::setting;
use wire::app::Role;

/// The setting's name.
const WINDOW: &str = "window";
/// The smallest size of the window (width, height), in logical pixels.
pub const MIN: (u32, u32) = (320, 320);
/// Least part of a window that must be on a screen so that a person can take hold of it, in logical pixels.
const HOLD: i32 = 80;

/// A window's position and size, in logical pixels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WindowPlace {
    /// Width and height of the area inside the frame.
    pub size: (u32, u32),
    /// The frame's upper left corner; `None` if the system chooses it.
    pub at: Option<(i32, i32)>,
    /// Whether the window is maximised.
    pub maximized: bool,
}

/// A screen, in logical pixels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Screen {
    /// Its upper left corner.
    pub at: (i32, i32),
    /// Its width and height.
    pub size: (u32, u32),
}

impl WindowPlace {
    /// The size that a side's pages are made for: a phone's for a patient or if no side was chosen yet, a desktop's for a clinician.
    pub fn usual(role: Option<Role>) -> WindowPlace {
        let size = if role == Some(Role::Clinic) { (1280, 800) } else { (460, 844) };
        WindowPlace { size, at: None, maximized: false }
    }

    /// The same place, adapted to the present screens: no larger than the largest screen, and placed by the system if its upper edge
    /// would not be on any screen. Without any screen it is unchanged.
    pub fn onto(self, screens: &[Screen]) -> WindowPlace {
        let most = |of: fn(&Screen) -> u32, least: u32| screens.iter().map(of).max().unwrap_or(u32::MAX).max(least);
        let (width, height) = self.size;
        let size = (
            width.clamp(MIN.0, most(|screen| screen.size.0, MIN.0)),
            height.clamp(MIN.1, most(|screen| screen.size.1, MIN.1)),
        );
        let width = i32::try_from(size.0).unwrap_or(i32::MAX);
        let within = |(x, y): (i32, i32), screen: &Screen| {
            let (left, top) = screen.at;
            let right = left.saturating_add_unsigned(screen.size.0);
            let bottom = top.saturating_add_unsigned(screen.size.1);
            x.saturating_add(width) >= left.saturating_add(HOLD)
                && x <= right.saturating_sub(HOLD)
                && y >= top
                && y <= bottom.saturating_sub(HOLD)
        };
        let at = self.at.filter(|at| screens.is_empty() || screens.iter().any(|screen| within(*at, screen)));
        WindowPlace { size, at, maximized: self.maximized }
    }

    /// One line of text: width, height, and `at X Y` and `maximized` where they apply.
    fn text(self) -> String {
        let at = self.at.map(|(x, y)| format!(" at {x} {y}")).unwrap_or_default();
        let maximized = if self.maximized { " maximized" } else { "" };
        format!("{} {}{at}{maximized}", self.size.0, self.size.1)
    }

    fn read(text: &str) -> Option<WindowPlace> {
        let mut words = text.split(' ').peekable();
        let size = (words.next()?.parse().ok()?, words.next()?.parse().ok()?);
        let at = match words.next_if_eq(&"at") {
            Some(_) => Some((words.next()?.parse().ok()?, words.next()?.parse().ok()?)),
            None => None,
        };
        let maximized = words.next_if_eq(&"maximized").is_some();
        words.next().is_none().then_some(WindowPlace { size, at, maximized })
    }
}

impl DataFolder {
    /// How the window was left; `None` if it was never stored or cannot be understood.
    pub fn window_place(&self) -> Option<WindowPlace> {
        self.setting(WINDOW).ok().flatten().and_then(|text| WindowPlace::read(&text))
    }

    /// Stores how the window is left. Before a side was chosen nothing is stored, because the window then opens in the size of that
    /// side.
    ///
    /// # Errors
    /// Any failure to write it.
    pub fn keep_window_place(&mut self, place: WindowPlace) -> ActionResult<()> {
        if self.role().is_none() || self.window_place() == Some(place) {
            return Ok(());
        }
        let dir = self.dir();
        let kept = self.home.store_mut().transaction(|tx| setting::put(tx, WINDOW, &place.text()));
        kept.map_err(refuse::store(&dir))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ONE: Screen = Screen { at: (0, 0), size: (1920, 1080) };
    const LEFT_OF_IT: Screen = Screen { at: (-1280, 0), size: (1280, 720) };

    fn place(size: (u32, u32), at: (i32, i32)) -> WindowPlace {
        WindowPlace { size, at: Some(at), maximized: false }
    }

    #[test]
    fn a_clinicians_window_opens_wide_and_a_patients_like_a_phone() {
        assert_eq!(WindowPlace::usual(Some(Role::Clinic)).size, (1280, 800));
        assert_eq!(WindowPlace::usual(Some(Role::Patient)).size, WindowPlace::usual(None).size);
        let small = [Screen { at: (0, 0), size: (1024, 600) }];
        assert_eq!(WindowPlace::usual(Some(Role::Clinic)).onto(&small).size, (1024, 600));
    }

    #[test]
    fn a_window_on_a_screen_that_is_gone_is_brought_back() {
        let left = place((900, 600), (-1000, 40));
        assert_eq!(left.onto(&[ONE, LEFT_OF_IT]), left);
        assert_eq!(left.onto(&[ONE]).at, None, "the other screen is unplugged");
        for outside in [(1900, 40), (40, 1050), (40, -20), (i32::MIN, 0), (i32::MAX, i32::MAX)] {
            assert_eq!(place((900, 600), outside).onto(&[ONE]).at, None, "{outside:?}");
        }
        assert_eq!(left.onto(&[]), left, "nothing is known of the screens");
    }

    #[test]
    fn a_stored_place_is_read_again_and_an_invalid_one_is_ignored() {
        for maximized in [false, true] {
            for at in [None, Some((-1280, 40))] {
                let place = WindowPlace { size: (1280, 800), at, maximized };
                assert_eq!(WindowPlace::read(&place.text()), Some(place));
            }
        }
        assert_eq!(
            WindowPlace::read("1280 800 at -1280 40 maximized"),
            Some(WindowPlace { size: (1280, 800), at: Some((-1280, 40)), maximized: true })
        );
        for spoilt in ["", "1280", "a b", "1280 800 at 3", "1280 800 maximised", "-3 800", "1280 800 at 1 2 maximized x"] {
            assert_eq!(WindowPlace::read(spoilt), None, "{spoilt:?}");
        }
    }

    #[test]
    fn each_folder_keeps_its_own_once_a_side_is_chosen() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let mut folder = DataFolder::open(&dir.path().join("one"), true).expect("a new folder");
        let left = place((1100, 700), (200, 120));
        folder.keep_window_place(left).expect("nothing to keep");
        assert_eq!(folder.window_place(), None, "no side was chosen");
        folder.choose_role(Role::Clinic).expect("free to choose");
        folder.keep_window_place(left).expect("room");
        drop(folder);
        let folder = DataFolder::open(&dir.path().join("one"), false).expect("the folder opens");
        assert_eq!(folder.window_place(), Some(left));
        let other = DataFolder::open(&dir.path().join("other"), true).expect("a new folder");
        assert_eq!(other.window_place(), None);
    }
}
