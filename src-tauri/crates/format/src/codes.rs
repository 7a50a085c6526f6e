//! The numbers of choices in cards, logs and summaries. They never change; new ones are only added at the end.
//!
//! An unknown number is refused with the name of the field; it is never read as another value.

use exercises::alarm::Circumstance;
use minicbor::{Decode, Decoder, Encode, Encoder, decode, encode};
use std::collections::BTreeSet;

/// A choice that has a number for each of its values.
pub(crate) trait Coded: Copy {
    /// The number.
    fn code(self) -> u8;
    /// The value with this number; `None` if there is none.
    fn of(code: u8) -> Option<Self>;
}

/// A choice, written as its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Code<T>(pub T);

impl<C, T: Coded> Encode<C> for Code<T> {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, _: &mut C) -> Result<(), encode::Error<W::Error>> {
        out.u8(self.0.code())?.ok()
    }
}

impl<'b, C, T: Coded> Decode<'b, C> for Code<T> {
    fn decode(input: &mut Decoder<'b>, _: &mut C) -> Result<Self, decode::Error> {
        T::of(input.u8()?).map(Code).ok_or_else(|| decode::Error::message("an unknown code"))
    }
}

/// What was answered about an alarm as bits; `None` if nothing was, so that nothing is written.
pub(crate) fn circumstance_bits(answered: &BTreeSet<Circumstance>) -> Option<u8> {
    Some(answered.iter().fold(0, |bits, one| bits | 1 << one.code())).filter(|bits| *bits != 0)
}

/// The answers whose bits are set; bits that this version does not know are ignored.
pub(crate) fn circumstances_of(bits: Option<u8>) -> BTreeSet<Circumstance> {
    let bits = bits.unwrap_or_default();
    (0..8).filter(|bit| bits & (1 << bit) != 0).filter_map(Circumstance::of).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::alarm::Trouble;
    use exercises::catalogue::{Eyes, Surface};
    use exercises::log::{Barrier, DayOffReason};
    use exercises::plan::{AgeBand, Band, BodySide, Risk, Side};
    use exercises::run::{RunEnd, SetUp, TrialEnd};
    use exercises::sway::{Flag, Reason, SourceKind};
    use strum::VariantArray;

    /// The values of a choice, by their numbers from 0 up to the first gap.
    fn coded<T: Coded>() -> Vec<T> {
        (0..=u8::MAX).map_while(T::of).collect()
    }

    #[test]
    fn the_numbers_of_a_choice_are_without_gaps_and_in_the_order_of_its_values() {
        fn check<T: Coded + VariantArray + PartialEq + std::fmt::Debug>() {
            assert_eq!(coded::<T>(), T::VARIANTS);
            for value in T::VARIANTS {
                assert_eq!(T::of(value.code()), Some(*value));
            }
        }
        check::<Side>();
        check::<BodySide>();
        check::<Band>();
        check::<Surface>();
        check::<Eyes>();
        check::<AgeBand>();
        check::<Risk>();
        check::<Trouble>();
        check::<Barrier>();
        check::<DayOffReason>();
        check::<RunEnd>();
        check::<SetUp>();
        check::<TrialEnd>();
        check::<SourceKind>();
        check::<Flag>();
        check::<Reason>();
    }

    #[test]
    fn an_unknown_code_is_refused() {
        assert!(minicbor::decode::<Code<Trouble>>(&[12]).is_err());
        assert!(minicbor::decode::<Code<BodySide>>(&[2]).is_err());
    }
}
