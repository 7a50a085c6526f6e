//! Benchmarks of the computations that a person waits for, in native code. `tests/bench` runs them and shows them beside what they
//! are compared with.

use criterion::Criterion;
use std::hint::black_box;
use workloads::Prepared;

fn workloads(criterion: &mut Criterion) {
    let prepared = Prepared::new();
    criterion.bench_function("sway", |bencher| bencher.iter(|| black_box(&prepared).sway(1)));
    criterion.bench_function("slots", |bencher| bencher.iter(|| black_box(&prepared).slots(1)));
    criterion.bench_function("review", |bencher| bencher.iter(|| black_box(&prepared).review(1)));
    criterion.bench_function("page", |bencher| bencher.iter(|| black_box(&prepared).page(1)));
    criterion.bench_function("find", |bencher| bencher.iter(|| black_box(&prepared).find(1)));
    criterion.bench_function("index", |bencher| bencher.iter(|| black_box(&prepared).index(1)));
    criterion.bench_function("arrive", |bencher| bencher.iter(|| black_box(&prepared).arrive(1)));
    criterion.bench_function("figures", |bencher| bencher.iter(|| black_box(&prepared).figures(1)));
    criterion
        .benchmark_group("files")
        .sample_size(10)
        .bench_function("read", |bencher| bencher.iter(|| black_box(&prepared).read(1)));
    criterion
        .benchmark_group("slow")
        .sample_size(10)
        .bench_function("scan", |bencher| bencher.iter(|| black_box(&prepared).scan(1)));
    criterion.bench_function("fold", |bencher| bencher.iter(|| black_box(&prepared).fold(1)));
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args();
    workloads(&mut criterion);
    criterion.final_summary();
}
