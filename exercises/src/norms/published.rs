//! The tables that come with the program.

use super::row::{Ages, Cap, Conditions, Evidence, NormRow, Published, Statistic};
use crate::catalogue::{Arms, Eyes, Feet, Surface};
use std::borrow::Cow;

/// All rows, seen and recalled. Only [`Norms`](super::Norms) decides what is shown.
pub(super) fn rows() -> Vec<NormRow> {
    [springer_2007(), bohannon_1984(), bohannon_2006(), blodgett_2023()].concat()
}

const fn ages(from: u8, to: u8) -> Ages {
    Ages { from, to: Some(to) }
}

/// Ages, people; mean and SD in seconds: eyes open best and mean of three, eyes closed best and mean of three.
type SpringerRow = (Ages, u32, [(f64, f64); 4]);

const SPRINGER: [SpringerRow; 6] = [
    (ages(18, 39), 98, [(44.7, 3.1), (43.3, 5.1), (15.2, 13.3), (9.4, 9.4)]),
    (ages(40, 49), 98, [(41.9, 9.9), (40.3, 10.8), (12.7, 12.9), (7.3, 7.0)]),
    (ages(50, 59), 98, [(41.2, 10.2), (37.0, 12.6), (8.3, 8.4), (4.8, 4.8)]),
    (ages(60, 69), 101, [(32.1, 16.2), (26.9, 16.6), (4.4, 5.1), (2.8, 2.2)]),
    (ages(70, 79), 96, [(21.5, 17.3), (15.0, 13.9), (3.1, 4.5), (2.0, 1.6)]),
    (Ages { from: 80, to: None }, 58, [(9.4, 12.7), (6.2, 9.3), (1.9, 1.0), (1.3, 0.6)]),
];

/// Springer et al. 2007, J Geriatr Phys Ther 30(1):8-15, 10.1519/00139143-200704000-00003: 549 healthy adults, barefoot on a firm
/// floor, arms crossed on the chest, 45 s cap, three trials each with eyes open and closed; not related to sex. The cells are quoted
/// from memory: consistent among themselves, but to be checked against the paper before anybody sees them.
fn springer_2007() -> Vec<NormRow> {
    let columns = [
        (Eyes::Open, Statistic::BestOf(3)),
        (Eyes::Open, Statistic::MeanOf(3)),
        (Eyes::Closed, Statistic::BestOf(3)),
        (Eyes::Closed, Statistic::MeanOf(3)),
    ];
    let row = |ages, people, (eyes, statistic), (mean_s, sd_s)| NormRow {
        source: Cow::Borrowed("Springer et al. 2007, J Geriatr Phys Ther 30(1):8-15"),
        evidence: Evidence::Recalled,
        conditions: Conditions {
            ages: Some(ages),
            eyes: Some(eyes),
            surface: Some(Surface::Firm),
            feet: Some(Feet::Bare),
            arms: Some(Arms::Crossed),
            statistic: Some(statistic),
            cap: Some(Cap::Seconds(45)),
        },
        people: Some(people),
        published: Published::Mean { mean_s, sd_s: Some(sd_s) },
    };
    let of_ages = |(ages, people, cells): SpringerRow| {
        columns.into_iter().zip(cells).map(move |(column, cell)| row(ages, people, column, cell))
    };
    SPRINGER.into_iter().flat_map(of_ages).collect()
}

/// Bohannon et al. 1984, Phys Ther 64:1067-1070, 10.1093/ptj/64.7.1067: 184 people, 30 s cap, best of up to five. The cells are
/// quoted from memory.
fn bohannon_1984() -> Vec<NormRow> {
    let table = [
        (ages(20, 29), 30.0, 28.8),
        (ages(30, 39), 30.0, 27.8),
        (ages(40, 49), 29.7, 24.2),
        (ages(50, 59), 29.4, 21.0),
        (ages(60, 69), 22.5, 10.2),
        (ages(70, 79), 14.2, 4.3),
    ];
    let row = |ages, eyes, mean_s| NormRow {
        source: Cow::Borrowed("Bohannon et al. 1984, Phys Ther 64:1067-1070"),
        evidence: Evidence::Recalled,
        conditions: Conditions {
            ages: Some(ages),
            eyes: Some(eyes),
            surface: None,
            feet: None,
            arms: None,
            statistic: Some(Statistic::BestOf(5)),
            cap: Some(Cap::Seconds(30)),
        },
        people: None,
        published: Published::Mean { mean_s, sd_s: None },
    };
    let both = |(ages, open, closed)| [row(ages, Eyes::Open, open), row(ages, Eyes::Closed, closed)];
    table.into_iter().flat_map(both).collect()
}

/// Bohannon 2006, Top Geriatr Rehabil 22(1):70-77: means over 22 studies, 3484 people, eyes open. The studies differ in floor, feet,
/// arms, trials and cap, so these conditions are left open.
fn bohannon_2006() -> Vec<NormRow> {
    let table = [(ages(60, 69), 27.0), (ages(70, 79), 17.2), (ages(80, 99), 8.5)];
    let row = |(ages, mean_s)| NormRow {
        source: Cow::Borrowed("Bohannon 2006, Top Geriatr Rehabil 22(1):70-77"),
        evidence: Evidence::Seen,
        conditions: Conditions {
            ages: Some(ages),
            eyes: Some(Eyes::Open),
            surface: None,
            feet: None,
            arms: None,
            statistic: None,
            cap: None,
        },
        people: None,
        published: Published::Mean { mean_s, sd_s: None },
    };
    table.into_iter().map(row).collect()
}

/// Blodgett 2023, Front Sports Act Living 4:1066913, 10.3389/fspor.2022.1066913: a British birth cohort at 53 and at 60 to 64 years,
/// medians, 30 s cap. Floor, feet, arms and number of trials were not seen in the source.
fn blodgett_2023() -> Vec<NormRow> {
    let table = [
        (ages(53, 53), Eyes::Open, 30.0),
        (ages(60, 64), Eyes::Open, 30.0),
        (ages(53, 53), Eyes::Closed, 5.0),
        (ages(60, 64), Eyes::Closed, 3.0),
    ];
    let row = |(ages, eyes, median_s)| NormRow {
        source: Cow::Borrowed("Blodgett 2023, Front Sports Act Living 4:1066913"),
        evidence: Evidence::Seen,
        conditions: Conditions {
            ages: Some(ages),
            eyes: Some(eyes),
            surface: None,
            feet: None,
            arms: None,
            statistic: None,
            cap: Some(Cap::Seconds(30)),
        },
        people: None,
        published: Published::Median { median_s },
    };
    table.into_iter().map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_within_its_cap_and_falls_with_age() {
        for row in rows() {
            let middle = row.published.middle_s();
            assert!(middle > 0.0, "{row:?}");
            if let Some(Cap::Seconds(cap)) = row.conditions.cap {
                assert!(middle <= f64::from(cap), "{row:?}");
            }
        }
        for columns in springer_2007().chunks(4).collect::<Vec<_>>().windows(2) {
            for (younger, older) in columns[0].iter().zip(columns[1]) {
                assert!(younger.published.middle_s() > older.published.middle_s());
            }
        }
    }

    #[test]
    fn the_recalled_table_adds_up_to_its_study() {
        let people: u32 = springer_2007().iter().step_by(4).filter_map(|row| row.people).sum();
        assert_eq!(people, 549);
        assert_eq!(springer_2007().len(), 24);
    }
}
