//! What an exercise is done against: a weight or a band.

use crate::choice::array;
use strum::VariantArray;

/// A weight in steps of a quarter of a kilogram, 0.25 to 100 kg.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(try_from = "u16", into = "u16"))]
pub struct Kilograms(u16);

/// A band by its strength. Makers differ in what they call light or strong, and in colours, so no colour is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Band {
    /// A light one.
    Light,
    /// A medium one.
    Medium,
    /// A strong one.
    Strong,
    /// An extra strong one.
    ExtraStrong,
}

/// What an exercise is done against.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Load {
    /// A weight.
    Weight(Kilograms),
    /// A band.
    Band(Band),
}

impl Band {
    /// All bands, the lightest first.
    pub const ALL: [Band; Band::VARIANTS.len()] = array(Band::VARIANTS);
}

impl Kilograms {
    /// The weight that is offered first, 1 kg.
    pub const ONE: Kilograms = Kilograms(4);
    /// The lightest, in quarters of a kilogram.
    const LEAST: u16 = 1;
    /// The heaviest, in quarters of a kilogram.
    const MOST: u16 = 400;

    /// A weight of so many quarters of a kilogram; `None` if that is out of range.
    pub fn of_quarters(quarters: u16) -> Option<Kilograms> {
        (Kilograms::LEAST..=Kilograms::MOST).contains(&quarters).then_some(Kilograms(quarters))
    }

    /// A weight of so many kilograms; `None` if that is no whole number of quarters, or out of range.
    pub fn of(kilograms: f64) -> Option<Kilograms> {
        let quarters = kilograms * 4.0;
        let whole = quarters.fract() == 0.0 && (0.0..=f64::from(Kilograms::MOST)).contains(&quarters);
        whole.then_some(quarters as u16).and_then(Kilograms::of_quarters)
    }

    /// Quarters of a kilogram.
    pub fn quarters(self) -> u16 {
        self.0
    }

    /// Kilograms.
    pub fn kilograms(self) -> f64 {
        f64::from(self.0) / 4.0
    }
}

impl Load {
    /// The next heavier one: the next band, or a tenth more weight, half a kilogram at least (our design). `None` at the heaviest.
    pub fn heavier(self) -> Option<Load> {
        match self {
            Load::Band(band) => Band::ALL.get(band as usize + 1).copied().map(Load::Band),
            Load::Weight(now) => Kilograms::of_quarters(now.0 + more(now)).map(Load::Weight),
        }
    }

    /// The next lighter one: the band before, or a tenth less weight, half a kilogram at least. `None` at the lightest.
    pub fn lighter(self) -> Option<Load> {
        match self {
            Load::Band(band) => (band as usize).checked_sub(1).map(|place| Load::Band(Band::ALL[place])),
            Load::Weight(now) => now.0.checked_sub(more(now)).and_then(Kilograms::of_quarters).map(Load::Weight),
        }
    }
}

/// Quarters of a kilogram by which a step changes a weight.
fn more(now: Kilograms) -> u16 {
    (now.0 / 10).max(2)
}

impl TryFrom<u16> for Kilograms {
    type Error = &'static str;

    fn try_from(quarters: u16) -> Result<Kilograms, &'static str> {
        Kilograms::of_quarters(quarters).ok_or("0.25 to 100 kg")
    }
}

impl From<Kilograms> for u16 {
    fn from(weight: Kilograms) -> u16 {
        weight.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_weight_is_a_number_of_quarters_from_one_quarter_to_a_hundred() {
        let of = |kilograms| Kilograms::of(kilograms).map(Kilograms::quarters);
        assert_eq!([0.25, 2.5, 100.0].map(of), [Some(1), Some(10), Some(400)]);
        assert_eq!([0.0, -1.0, 0.3, 100.25, 1e9, f64::NAN, f64::INFINITY].map(of), [None; 7]);
        assert_eq!(Kilograms::of(7.75).map(Kilograms::kilograms), Some(7.75));
        assert_eq!([0, 401].map(Kilograms::of_quarters), [None; 2]);
        assert_eq!(Kilograms::ONE.kilograms(), 1.0);
    }

    #[test]
    fn loads_go_up_and_down_in_steps_and_end() {
        let kg = |quarters| Load::Weight(Kilograms::of_quarters(quarters).expect("a weight"));
        assert_eq!([kg(4), kg(40), kg(400)].map(Load::heavier), [Some(kg(6)), Some(kg(44)), None]);
        assert_eq!([kg(6), kg(44), kg(2)].map(Load::lighter), [Some(kg(4)), Some(kg(40)), None]);
        assert_eq!(Load::Band(Band::Light).heavier(), Some(Load::Band(Band::Medium)));
        assert_eq!(Load::Band(Band::ExtraStrong).heavier(), None);
        assert_eq!(Load::Band(Band::Light).lighter(), None);
        assert_eq!(Load::Band(Band::Medium).lighter(), Some(Load::Band(Band::Light)));
    }
}
