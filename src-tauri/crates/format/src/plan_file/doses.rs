//! The doses among an item's fields: each stands under the name of its kind, with the fields that the kind states.
//!
//! The other fields go on to a shape of their own, as if the doses were not there.

use exercises::catalogue::kind::DoseField;
use exercises::catalogue::{Dose, Kind};
use serde::de::{DeserializeSeed, Error, IntoDeserializer, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, forward_to_deserialize_any};
use std::fmt;
use std::marker::PhantomData;

/// A table with the doses that stand in it, and the rest of it.
pub(super) struct WithDoses<T> {
    /// All fields that are no doses.
    pub rest: T,
    /// The doses, in the order of the file.
    pub doses: Vec<Dose>,
}

/// The names under which a dose can stand.
pub(super) fn names() -> Vec<&'static str> {
    Kind::ALL.iter().map(|kind| kind.rules().name()).collect()
}

impl<'de, T: Deserialize<'de>> Deserialize<'de> for WithDoses<T> {
    fn deserialize<D: Deserializer<'de>>(input: D) -> Result<Self, D::Error> {
        input.deserialize_map(Table(PhantomData))
    }
}

struct Table<T>(PhantomData<T>);

impl<'de, T: Deserialize<'de>> Visitor<'de> for Table<T> {
    type Value = WithDoses<T>;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("a table")
    }

    fn visit_map<M: MapAccess<'de>>(self, table: M) -> Result<Self::Value, M::Error> {
        let mut doses = Vec::new();
        let rest = T::deserialize(Rest { table, doses: &mut doses })?;
        Ok(WithDoses { rest, doses })
    }
}

/// A table of which the doses are taken out before its shape sees them.
struct Rest<'a, M> {
    table: M,
    doses: &'a mut Vec<Dose>,
}

impl<'de, M: MapAccess<'de>> Deserializer<'de> for Rest<'_, M> {
    type Error = M::Error;

    fn deserialize_any<V: Visitor<'de>>(self, shape: V) -> Result<V::Value, M::Error> {
        shape.visit_map(Fields { table: self.table, doses: self.doses, known: &[] })
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        known: &'static [&'static str],
        shape: V,
    ) -> Result<V::Value, M::Error> {
        shape.visit_map(Fields { table: self.table, doses: self.doses, known })
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 u8 u16 u32 u64 f32 f64 char str string bytes byte_buf option unit unit_struct newtype_struct seq
        tuple tuple_struct map enum identifier ignored_any
    }
}

/// The fields that are left.
struct Fields<'a, M> {
    table: M,
    doses: &'a mut Vec<Dose>,
    known: &'static [&'static str],
}

impl<'de, M: MapAccess<'de>> MapAccess<'de> for Fields<'_, M> {
    type Error = M::Error;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, M::Error> {
        let known: Vec<&str> = self.known.iter().copied().chain(names()).collect();
        while let Some(name) = self.table.next_key_seed(Name { known: &known })? {
            match Kind::ALL.iter().find(|kind| kind.rules().name() == name) {
                Some(kind) => self.doses.push(self.table.next_value_seed(DoseOf(*kind))?),
                None => return seed.deserialize(name.into_deserializer()).map(Some),
            }
        }
        Ok(None)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, M::Error> {
        self.table.next_value_seed(seed)
    }
}

/// A field's name, one of those known: a fault of the name is noted at its own place.
struct Name<'a> {
    known: &'a [&'a str],
}

impl<'de> DeserializeSeed<'de> for Name<'_> {
    type Value = String;

    fn deserialize<D: Deserializer<'de>>(self, input: D) -> Result<String, D::Error> {
        let name = String::deserialize(input)?;
        if self.known.contains(&name.as_str()) {
            return Ok(name);
        }
        let known: Vec<String> = self.known.iter().map(|known| format!("`{known}`")).collect();
        Err(Error::custom(format_args!("unknown field `{name}`, expected one of {}", known.join(", "))))
    }
}

/// The dose of one kind.
struct DoseOf(Kind);

impl<'de> DeserializeSeed<'de> for DoseOf {
    type Value = Dose;

    fn deserialize<D: Deserializer<'de>>(self, input: D) -> Result<Dose, D::Error> {
        input.deserialize_map(self)
    }
}

impl<'de> Visitor<'de> for DoseOf {
    type Value = Dose;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("a table")
    }

    fn visit_map<M: MapAccess<'de>>(self, mut table: M) -> Result<Dose, M::Error> {
        let fields = self.0.rules().fields();
        let groups: Vec<&[DoseField]> =
            fields.chunk_by(|one, next| one.group.is_some() && one.group == next.group).collect();
        let known: Vec<&str> = groups.iter().map(|group| name_of(group)).collect();
        let mut found: Vec<Option<Vec<i64>>> = vec![None; groups.len()];
        while let Some(name) = table.next_key_seed(Name { known: &known })? {
            let place = known.iter().position(|known| *known == name).expect("only known names come through");
            found[place] = Some(table.next_value_seed(Values(groups[place]))?);
        }
        let missing = found.iter().zip(&known).find(|(values, _)| values.is_none());
        if let Some((_, name)) = missing {
            return Err(Error::custom(format_args!("missing field `{name}`")));
        }
        let values: Vec<i64> = found.into_iter().flatten().flatten().collect();
        Dose::from_values(self.0, &values).ok_or_else(|| Error::custom("a number that a dose has no room for"))
    }
}

fn name_of(group: &[DoseField]) -> &'static str {
    group[0].group.unwrap_or(group[0].plan_key)
}

/// The value of a field, or the list of the values of a group.
struct Values<'a>(&'a [DoseField]);

impl<'de> DeserializeSeed<'de> for Values<'_> {
    type Value = Vec<i64>;

    fn deserialize<D: Deserializer<'de>>(self, input: D) -> Result<Vec<i64>, D::Error> {
        let field = self.0[0];
        let small = field.room == u16::from(u8::MAX);
        match field.group {
            None if small => Ok(vec![u8::deserialize(input)?.into()]),
            None => Ok(vec![u16::deserialize(input)?.into()]),
            Some(_) => {
                let values: Vec<u8> = Vec::deserialize(input)?;
                let expected = format!("an array of length {}", self.0.len());
                let all = (values.len() == self.0.len()).then(|| values.iter().map(|value| i64::from(*value)).collect());
                all.ok_or_else(|| Error::invalid_length(values.len(), &expected.as_str()))
            }
        }
    }
}
