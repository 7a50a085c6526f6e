//! The names under which choices stand in files that people write or read.

/// A choice whose values have names.
pub(crate) trait Named: Sized + Clone + 'static {
    /// Names with their values.
    const NAMES: &'static [(&'static str, Self)];
}

/// The value of a name.
pub(crate) fn find<T: Named>(name: &str) -> Option<T> {
    T::NAMES.iter().find(|(known, _)| *known == name).map(|(_, value)| value.clone())
}

/// The name of a value; empty for one that has its own words.
pub(crate) fn name<T: Named + PartialEq>(value: &T) -> &'static str {
    T::NAMES.iter().find(|(_, known)| known == value).map_or("", |(name, _)| name)
}

/// All names, for a person to choose from.
pub(crate) fn all<T: Named>() -> Vec<String> {
    T::NAMES.iter().map(|(name, _)| (*name).to_owned()).collect()
}
