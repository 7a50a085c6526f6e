//! The names of choices in files that people write or read, and on the command line.

/// A choice whose values have names.
pub trait Named: Sized + Clone + 'static {
    /// The names, each with its value.
    const NAMES: &'static [(&'static str, Self)];
}

/// The value with this name.
pub fn find<T: Named>(name: &str) -> Option<T> {
    T::NAMES.iter().find(|(known, _)| *known == name).map(|(_, value)| value.clone())
}

/// The name of a value; empty if the value has no name because it holds text of its own.
pub fn name<T: Named + PartialEq>(value: &T) -> &'static str {
    T::NAMES.iter().find(|(_, known)| known == value).map_or("", |(name, _)| name)
}

/// All names, so that a person can choose one.
pub fn all<T: Named>() -> Vec<String> {
    T::NAMES.iter().map(|(name, _)| (*name).to_owned()).collect()
}
