//! Plural categories of whole numbers and decimals, by the rules of CLDR. A language without a rule does not compile.

use crate::{Locale, Number};

/// A plural category; only those that occur in the languages here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(dead_code, reason = "which of them occur is up to the texts")]
pub(crate) enum Plural {
    /// "one".
    One,
    /// "many": a million and its multiples in Spanish.
    Many,
    /// All other numbers.
    Other,
}

/// The category of `number`.
pub(crate) fn of(locale: Locale, number: Number) -> Plural {
    let whole = number.whole();
    let one = whole == 1 && number.decimals() == 0;
    match locale {
        Locale::En | Locale::EnGb | Locale::EnUs if one => Plural::One,
        Locale::Es | Locale::EsEs | Locale::EsMx if one => Plural::One,
        Locale::Es | Locale::EsEs | Locale::EsMx
            if whole > 0 && whole.is_multiple_of(1_000_000) && number.decimals() == 0 =>
        {
            Plural::Many
        }
        Locale::En | Locale::EnGb | Locale::EnUs | Locale::Es | Locale::EsEs | Locale::EsMx => Plural::Other,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use fixed_decimal::Decimal;
    use icu_plurals::{PluralCategory, PluralRules};

    fn as_cldr(rules: &PluralRules, units: i32, decimals: i16) -> Plural {
        let mut decimal = Decimal::from(units);
        decimal.multiply_pow10(-decimals);
        decimal.absolute.trim_end();
        match rules.category_for(&decimal) {
            PluralCategory::One => Plural::One,
            PluralCategory::Many => Plural::Many,
            PluralCategory::Other => Plural::Other,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn every_locale_has_the_categories_of_cldr() {
        for locale in Locale::ALL {
            let tag: icu_locale_core::Locale = locale.tag().parse().expect("a tag");
            let rules = PluralRules::try_new_cardinal(tag.into()).expect("rules");
            for units in (0..3000).chain([10_000, 999_999, 1_000_000, 2_000_000, 10_000_000, 10_000_010, 15_000_000]) {
                for decimals in 0..=2_u8 {
                    let number = Number::rounded(f64::from(units) / f64::from(10_i32.pow(decimals.into())), decimals);
                    assert_eq!(
                        of(*locale, number),
                        as_cldr(&rules, units, decimals.into()),
                        "{} {units} {decimals}",
                        locale.tag()
                    );
                }
            }
        }
    }
}
