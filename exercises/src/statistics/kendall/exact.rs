//! The exact distribution of S over all orders of the given values.
//!
//! An order of values with tie groups t_1, t_2, ... has S = M - 2 I, with M the count of untied pairs and I the count of
//! inversions; the orders by I are counted by the Gaussian multinomial coefficient [n; t_1, t_2, ...]_q (MacMahon 1916,
//! Combinatory Analysis), a product of Gaussian binomials: one for each group put in among those before it. Each
//! binomial comes from Pascal's rule for q, and that of a single value is a sum of powers, so that there is only adding, and no digits
//! cancel.

use std::cmp::Reverse;

/// P(|S| >= |s|) over all orders, which are equally likely. `ties` lists the sizes of the groups of equal values, including groups
/// of one.
pub(super) fn two_sided(s: i64, ties: &[usize]) -> f64 {
    let by_inversions = inversions(ties);
    let untied = by_inversions.len() as i64 - 1;
    let tail: f64 = by_inversions
        .iter()
        .enumerate()
        .filter(|(count, _)| (untied - 2 * *count as i64).abs() >= s.abs())
        .map(|(_, share)| share)
        .sum();
    tail.min(1.0)
}

/// The share of all orders that have 0, 1, 2, ... inversions.
fn inversions(ties: &[usize]) -> Vec<f64> {
    // The largest group goes first, because the first one takes no work, and small ones take little.
    let mut groups = ties.to_vec();
    groups.sort_unstable_by_key(|group| Reverse(*group));
    let mut product = vec![1.0];
    let mut placed = 0;
    for group in groups {
        product = match group {
            1 => times_ones(&product, placed + 1),
            _ => times(&product, &gaussian_binomial(placed + group, group)),
        };
        placed += group;
        scale_to_one(&mut product);
    }
    product
}

/// Coefficients of [n choose k]_q, which are those of [n choose n - k]_q.
fn gaussian_binomial(n: usize, k: usize) -> Vec<f64> {
    let k = k.min(n - k);
    // row[j] holds [m choose j]_q; [m choose j] = [m-1 choose j] q^j + [m-1 choose j-1].
    let mut row: Vec<Vec<f64>> = (0..=k).map(|j| Vec::with_capacity(j * (n - j) + 1)).collect();
    row[0].push(1.0);
    for m in 1..=n {
        // Of a row only what the last one is made of.
        let first = (k + m).saturating_sub(n).max(1);
        for j in (first..=m.min(k)).rev() {
            let (before, from) = row.split_at_mut(j);
            let (sum, one_less) = (&mut from[0], &before[j - 1]);
            let stay = sum.len();
            sum.resize(j * (m - j) + 1, 0.0);
            if stay > 0 {
                sum.copy_within(..stay, j);
                sum[..j].fill(0.0);
            }
            sum.iter_mut().zip(one_less).for_each(|(into, from)| *into += from);
        }
    }
    row.pop().unwrap_or_default()
}

/// The product with 1 + q + ... + q^(terms - 1): each of its coefficients is a sum of `terms` neighbouring ones. These sums are made from
/// sums of 1, 2, 4, ... neighbours, by the binary digits of `terms`.
fn times_ones(one: &[f64], terms: usize) -> Vec<f64> {
    let length = one.len() + terms - 1;
    let (mut runs, mut run) = (one.to_vec(), 1);
    runs.resize(length, 0.0);
    let (mut product, mut summed) = (vec![0.0; length], 0);
    while run <= terms {
        if terms & run != 0 {
            product[summed..].iter_mut().zip(&runs).for_each(|(into, from)| *into += from);
            summed += run;
        }
        (run..length).rev().for_each(|place| runs[place] += runs[place - run]);
        run *= 2;
    }
    product
}

fn times(one: &[f64], other: &[f64]) -> Vec<f64> {
    let mut product = vec![0.0; one.len() + other.len() - 1];
    for (place, factor) in one.iter().enumerate() {
        for (shift, term) in other.iter().enumerate() {
            product[place + shift] += factor * term;
        }
    }
    product
}

fn scale_to_one(counts: &mut [f64]) {
    let total: f64 = counts.iter().sum();
    counts.iter_mut().for_each(|count| *count /= total);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::vectors::close;

    fn no_ties(n: usize) -> Vec<usize> {
        vec![1; n]
    }

    #[test]
    fn known_gaussian_binomials() {
        assert_eq!(gaussian_binomial(4, 2), vec![1.0, 1.0, 2.0, 1.0, 1.0]);
        assert_eq!(gaussian_binomial(5, 1), vec![1.0; 5]);
        assert_eq!(gaussian_binomial(3, 3), vec![1.0]);
        assert_eq!(gaussian_binomial(0, 0), vec![1.0]);
    }

    #[test]
    fn gaussian_binomials_count_what_binomials_count() {
        let mut binomials = vec![1.0];
        for n in 1..=40 {
            let next = |k: usize| binomials.get(k).unwrap_or(&0.0) + if k > 0 { binomials[k - 1] } else { 0.0 };
            binomials = (0..=n).map(next).collect();
            for (k, expected) in binomials.iter().enumerate() {
                let coefficients = gaussian_binomial(n, k);
                assert_eq!(coefficients.len(), k * (n - k) + 1, "{n} {k}");
                assert_eq!(coefficients.iter().sum::<f64>(), *expected, "{n} {k}");
                assert!(coefficients.iter().eq(coefficients.iter().rev()), "{n} {k}");
            }
        }
    }

    #[test]
    fn a_single_value_goes_to_every_place() {
        for terms in 1..20 {
            assert_eq!(times_ones(&[1.0, 3.0, 2.0], terms), times(&[1.0, 3.0, 2.0], &vec![1.0; terms]), "{terms} terms");
        }
    }

    #[test]
    fn the_smallest_p_of_short_series() {
        let smallest = |n: usize| two_sided((n * (n - 1) / 2) as i64, &no_ties(n));
        close(smallest(3), 0.333333, 5e-7);
        close(smallest(4), 0.083333, 5e-7);
        close(smallest(5), 0.016667, 5e-7);
        close(smallest(6), 0.002778, 5e-7);
        close(smallest(7), 0.000397, 5e-7);
    }

    #[test]
    fn the_smallest_s_below_five_percent() {
        for (n, s, p) in [
            (5, 10, 0.016667),
            (6, 13, 0.016667),
            (7, 15, 0.030159),
            (8, 18, 0.031151),
            (9, 20, 0.044615),
            (10, 23, 0.046623),
        ] {
            close(two_sided(s, &no_ties(n)), p, 5e-7);
            assert!(two_sided(s - 2, &no_ties(n)) >= 0.05, "n {n}: S {} is below too", s - 2);
        }
    }

    #[test]
    fn listing_all_orders_gives_the_same() {
        let values = [1, 1, 2, 3, 3, 3, 4];
        let ties = [2, 1, 3, 1];
        let mut counts = std::collections::BTreeMap::new();
        permute(&mut values.to_vec(), 0, &mut |order| *counts.entry(s_of(order)).or_insert(0) += 1);
        let total: i32 = counts.values().sum();
        for &s in counts.keys() {
            let listed: i32 = counts.iter().filter(|(other, _)| other.abs() >= s.abs()).map(|(_, n)| n).sum();
            close(two_sided(s, &ties), f64::from(listed) / f64::from(total), 1e-12);
        }
    }

    #[test]
    fn sixty_values_stay_within_range() {
        for ties in [no_ties(60), vec![30, 30], vec![60], vec![59, 1]] {
            let shares = inversions(&ties);
            close(shares.iter().sum(), 1.0, 1e-12);
            assert!(shares.iter().all(|share| share.is_finite() && *share >= 0.0));
        }
    }

    fn s_of(order: &[i32]) -> i64 {
        let pairs = (0..order.len()).flat_map(|i| (i + 1..order.len()).map(move |j| (i, j)));
        pairs.map(|(i, j)| i64::from((order[j] - order[i]).signum())).sum()
    }

    fn permute(order: &mut Vec<i32>, from: usize, seen: &mut impl FnMut(&[i32])) {
        if from == order.len() {
            return seen(order);
        }
        for place in from..order.len() {
            order.swap(from, place);
            permute(order, from + 1, seen);
            order.swap(from, place);
        }
    }
}
