//! Closed choices: the values of an enum, listed once by its definition.

/// All values of a choice as an array, from the list that `strum` derives; `N` is that list's length.
pub(crate) const fn array<T: Copy, const N: usize>(values: &[T]) -> [T; N] {
    assert!(values.len() == N, "the length is that of the list");
    match values.first_chunk() {
        Some(values) => *values,
        None => unreachable!(),
    }
}
