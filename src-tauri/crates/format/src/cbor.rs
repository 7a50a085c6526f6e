//! Writes and reads maps in CBOR (RFC 8949) with integer keys.
//!
//! Maps are written deterministically as section 4.2.1 requires: shortest integers and lengths, definite lengths, ascending
//! keys without repetition. The same form is required when they are read, but keys that this version does not know are
//! ignored, so that a later version may add keys to a map.

use minicbor::bytes::ByteArray;
use minicbor::{Decode, Decoder, Encode, Encoder, decode, encode};

/// A part that cannot be written or read; the text is its name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Malformed(pub &'static str);

/// A map that is being written, in ascending order of its keys.
#[derive(Default)]
pub(crate) struct MapOut {
    pairs: Vec<u8>,
    last: Option<u8>,
    count: u64,
}

impl MapOut {
    /// Writes one pair of key and value; `field` is its name in faults.
    pub(crate) fn put(&mut self, key: u8, field: &'static str, value: &impl Encode<()>) -> Result<(), Malformed> {
        debug_assert!(self.last.is_none_or(|last| last < key), "keys ascend: {field}");
        self.last = Some(key);
        self.count += 1;
        let mut out = Encoder::new(&mut self.pairs);
        out.u8(key).and_then(|out| out.encode(value)).map(drop).map_err(|_| Malformed(field))
    }

    /// Writes the list unless it is empty.
    pub(crate) fn put_list<T: Encode<()>>(&mut self, key: u8, field: &'static str, list: &[T]) -> Result<(), Malformed> {
        if list.is_empty() { Ok(()) } else { self.put(key, field, &List(list)) }
    }

    /// Writes the value if there is one.
    pub(crate) fn put_some(
        &mut self,
        key: u8,
        field: &'static str,
        value: Option<&impl Encode<()>>,
    ) -> Result<(), Malformed> {
        value.map_or(Ok(()), |value| self.put(key, field, value))
    }

    /// The bytes of the whole map.
    pub(crate) fn finish(self) -> Vec<u8> {
        let mut whole = Vec::with_capacity(self.pairs.len() + 3);
        Encoder::new(&mut whole).map(self.count).expect("a vector takes every byte");
        whole.extend(self.pairs);
        whole
    }
}

/// A slice, written as an array.
struct List<'a, T>(&'a [T]);

impl<C, T: Encode<C>> Encode<C> for List<'_, T> {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, ctx: &mut C) -> Result<(), encode::Error<W::Error>> {
        out.array(self.0.len() as u64)?;
        self.0.iter().try_for_each(|item| item.encode(out, ctx))
    }
}

/// A map split into its pairs; the values are still encoded.
pub(crate) struct MapIn<'b> {
    pairs: Vec<(u64, &'b [u8])>,
}

impl<'b> MapIn<'b> {
    /// Splits the map in `bytes`; `whole` is its name in faults.
    pub(crate) fn split(bytes: &'b [u8], whole: &'static str) -> Result<MapIn<'b>, Malformed> {
        let mut input = Decoder::new(bytes);
        let broken = |_| Malformed(whole);
        let count = input.map().map_err(broken)?.ok_or(Malformed(whole))?;
        let mut pairs: Vec<(u64, &[u8])> = Vec::new();
        for _ in 0..count {
            let key = input.u64().map_err(broken)?;
            if pairs.last().is_some_and(|(last, _)| *last >= key) {
                return Err(Malformed(whole));
            }
            let start = input.position();
            input.skip().map_err(broken)?;
            pairs.push((key, bytes.get(start..input.position()).ok_or(Malformed(whole))?));
        }
        if input.position() == bytes.len() { Ok(MapIn { pairs }) } else { Err(Malformed(whole)) }
    }

    /// Each key with its value, still encoded.
    pub(crate) fn pairs(&self) -> impl Iterator<Item = (u64, &'b [u8])> {
        self.pairs.iter().copied()
    }

    /// The value of `key`; `None` if the map does not have it.
    pub(crate) fn some<T: Decode<'b, ()>>(&self, key: u8, field: &'static str) -> Result<Option<T>, Malformed> {
        let Some((_, bytes)) = self.pairs.iter().find(|(k, _)| *k == u64::from(key)) else { return Ok(None) };
        minicbor::decode(bytes).map(Some).map_err(|_| Malformed(field))
    }

    /// The value of `key`, which the map must have.
    pub(crate) fn need<T: Decode<'b, ()>>(&self, key: u8, field: &'static str) -> Result<T, Malformed> {
        self.some(key, field)?.ok_or(Malformed(field))
    }

    /// The list of `key`, with at most `MAX` elements; empty if the map does not have it.
    pub(crate) fn list<T: Decode<'b, ()>, const MAX: usize>(
        &self,
        key: u8,
        field: &'static str,
    ) -> Result<Vec<T>, Malformed> {
        Ok(self.some::<AtMost<T, MAX>>(key, field)?.map_or_else(Vec::new, |list| list.0))
    }
}

/// A list whose length is checked before any of its elements are read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct AtMost<T, const MAX: usize>(pub Vec<T>);

impl<'b, C, T: Decode<'b, C>, const MAX: usize> Decode<'b, C> for AtMost<T, MAX> {
    fn decode(input: &mut Decoder<'b>, ctx: &mut C) -> Result<Self, decode::Error> {
        match input.array()? {
            Some(length) if length <= MAX as u64 => {
                let items: Result<Vec<T>, _> = (0..length).map(|_| T::decode(input, ctx)).collect();
                Ok(AtMost(items?))
            }
            _ => Err(decode::Error::message("a list that is too long or has no length")),
        }
    }
}

impl<C, T: Encode<C>, const MAX: usize> Encode<C> for AtMost<T, MAX> {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, ctx: &mut C) -> Result<(), encode::Error<W::Error>> {
        List(&self.0).encode(out, ctx)
    }
}

/// Eight or thirty-two bytes as a byte string.
pub(crate) fn bytes<const N: usize>(bytes: [u8; N]) -> ByteArray<N> {
    ByteArray::from(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn split(bytes: &[u8]) -> Result<MapIn<'_>, Malformed> {
        MapIn::split(bytes, "whole")
    }

    #[test]
    fn a_map_is_written_in_its_shortest_form() {
        let mut map = MapOut::default();
        map.put(0, "small", &23_u32).expect("fits");
        map.put(3, "word", &"ab").expect("fits");
        map.put_list::<u8>(4, "none", &[]).expect("left out");
        map.put_list(5, "some", &[1_u16, 500]).expect("fits");
        assert_eq!(map.finish(), [0xA3, 0x00, 0x17, 0x03, 0x62, b'a', b'b', 0x05, 0x82, 0x01, 0x19, 0x01, 0xF4]);
    }

    #[test]
    fn unknown_keys_are_ignored() {
        let map = [0xA2, 0x00, 0x05, 0x18, 0x63, 0x9F, 0xA1, 0x61, b'x', 0x01, 0xFF];
        let read = split(&map).expect("a map");
        assert_eq!((read.need::<u8>(0, "known"), read.some::<u8>(7, "absent")), (Ok(5), Ok(None)));
    }

    #[test]
    fn doubled_or_descending_keys_tails_and_endless_maps_are_refused() {
        for (map, why) in [
            (&[0xA2, 0x00, 0x05, 0x00, 0x06][..], "the same key twice"),
            (&[0xA2, 0x01, 0x05, 0x00, 0x06], "descending"),
            (&[0xA1, 0x00, 0x05, 0x00], "a tail"),
            (&[0xBF, 0x00, 0x05, 0xFF], "no length"),
            (&[0xBB, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x00], "a length that no input has"),
            (&[], "nothing"),
        ] {
            assert!(matches!(split(map), Err(Malformed("whole"))), "{why}");
        }
    }

    #[test]
    fn a_list_over_its_limit_is_refused_by_its_length_alone() {
        let map = [0xA1, 0x00, 0x9A, 0xFF, 0xFF, 0xFF, 0xFF];
        let two = [0xA1, 0x00, 0x82, 0x01, 0x02];
        assert!(split(&map).is_err(), "a claim without the items");
        let read = split(&two).expect("a map");
        assert_eq!(read.list::<u8, 2>(0, "two"), Ok(vec![1, 2]));
        assert_eq!(read.list::<u8, 1>(0, "two"), Err(Malformed("two")));
    }
}
