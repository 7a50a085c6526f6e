//! Step 1: drop rows with a value that is not finite, and rows whose time does not exceed that of the last kept row.

use super::sample::Sample;

/// The kept rows, strictly rising in time.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Clean {
    pub(crate) samples: Vec<Sample>,
    /// Number of rows that were dropped.
    pub(crate) dropped: usize,
}

pub(crate) fn clean(samples: &[Sample]) -> Clean {
    let mut kept: Vec<Sample> = Vec::with_capacity(samples.len());
    for sample in samples {
        let finite = sample.t_s.is_finite() && sample.a.iter().all(|axis| axis.is_finite());
        if finite && kept.last().is_none_or(|last| sample.t_s > last.t_s) {
            kept.push(*sample);
        }
    }
    Clean { dropped: samples.len() - kept.len(), samples: kept }
}

impl Clean {
    /// Times between neighbouring rows, s.
    pub(crate) fn intervals(&self) -> Vec<f64> {
        self.samples.windows(2).map(|pair| pair[1].t_s - pair[0].t_s).collect()
    }

    /// Time from the first to the last row, s; 0 if there are fewer than two rows.
    pub(crate) fn span_s(&self) -> f64 {
        match (self.samples.first(), self.samples.last()) {
            (Some(first), Some(last)) => last.t_s - first.t_s,
            _ => 0.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(t_s: f64, x: f64) -> Sample {
        Sample { t_s, a: [x, 0.0, 0.0] }
    }

    #[test]
    fn rows_that_are_not_finite_or_do_not_advance_are_dropped() {
        let rows = [
            at(f64::NAN, 1.0),
            at(0.0, 1.0),
            at(0.0, 2.0),
            at(0.2, f64::INFINITY),
            at(0.3, 3.0),
            at(0.1, 4.0),
            at(f64::INFINITY, 5.0),
            at(0.4, 6.0),
        ];
        let got = clean(&rows);
        assert_eq!(got.samples, vec![at(0.0, 1.0), at(0.3, 3.0), at(0.4, 6.0)]);
        assert_eq!(got.dropped, 5);
    }
}
