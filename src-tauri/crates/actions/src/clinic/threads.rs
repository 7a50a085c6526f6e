//! Work that is shared among the computer's processors.

use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::sync::{Mutex, PoisonError, mpsc};
use std::thread;

/// Does `work` with each of these jobs, on as many threads as the computer has processors; the results come in any order. The jobs are made on
/// this thread, each when there is room for it: no more of them are in memory than are worked on, and as many again.
pub(super) fn each<J: Send, R: Send>(jobs: impl ExactSizeIterator<Item = J>, work: impl Fn(J) -> R + Sync) -> Vec<R> {
    let threads = thread::available_parallelism().map_or(1, |number| number.get()).min(jobs.len());
    if threads <= 1 {
        return jobs.map(work).collect();
    }
    let (to_do, waiting) = mpsc::sync_channel(threads);
    let (done, results) = mpsc::channel();
    let waiting = Mutex::new(waiting);
    thread::scope(|scope| {
        for _ in 0..threads {
            let (done, waiting, work) = (done.clone(), &waiting, &work);
            scope.spawn(move || {
                let next = || waiting.lock().unwrap_or_else(PoisonError::into_inner).recv();
                while let Ok(job) = next() {
                    // A thread that ended here would leave the others' jobs waiting.
                    drop(done.send(catch_unwind(AssertUnwindSafe(|| work(job)))));
                }
            });
        }
        let to_do = to_do;
        jobs.for_each(|job| drop(to_do.send(job)));
    });
    drop(done);
    results.into_iter().map(|result| result.unwrap_or_else(|panic| resume_unwind(panic))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_job_is_done_once() {
        for number in [0, 1, 2, 3, 100] {
            let mut done = each((0..number).collect::<Vec<u32>>().into_iter(), |job| job * 2);
            done.sort_unstable();
            assert_eq!(done, (0..number).map(|job| job * 2).collect::<Vec<_>>());
        }
    }

    #[test]
    fn a_job_that_fails_is_not_passed_over() {
        let failing = || each([1, 2, 3, 4].into_iter(), |job| assert_ne!(job, 3, "the third"));
        assert!(catch_unwind(failing).is_err());
    }
}
