use super::*;

fn of(rows: &str) -> Result<Vec<DayValue>, FileFault> {
    read(format!("day,value\n{rows}").as_bytes())
}

#[track_caller]
fn refuse(rows: &str, line: u32, kind: FaultKind) {
    assert_eq!(of(rows), Err(FileFault::at(line, kind)), "{rows:?}");
}

fn column(name: &str) -> String {
    name.to_owned()
}

#[test]
fn whole_numbers_and_dates() {
    let want = vec![DayValue { day: -1, value: 8.2 }, DayValue { day: 2, value: 9.0 }];
    assert_eq!(of("-1,8.2\n2,9\n"), Ok(want));
    let dates = of("2026-02-28,8.2\n2026-03-01,9\n").expect("sound");
    assert_eq!(dates[1].day - dates[0].day, 1);
    assert_eq!(of(""), Ok(vec![]));
}

#[test]
fn days_that_are_none() {
    let not = |found: &str| FaultKind::Csv(CsvFault::Day { column: column("day"), found: found.to_owned() });
    for cell in ["", "1.5", "monday", "2026-02-30", "2026-3-1", "01.03.2026", "+026-03-01", "99999999999"] {
        refuse(&format!("{cell},1\n"), 2, not(cell));
    }
}

#[test]
fn order_repeats_and_mixtures() {
    refuse("1,1\n1,2\n", 3, FaultKind::Csv(CsvFault::DayOrder { column: column("day") }));
    refuse("2,1\n1,2\n", 3, FaultKind::Csv(CsvFault::DayOrder { column: column("day") }));
    refuse("1,1\n2026-03-01,2\n", 3, FaultKind::Csv(CsvFault::MixedDays { column: column("day") }));
}

#[test]
fn values_that_are_none() {
    refuse("1,nan\n", 2, FaultKind::Csv(CsvFault::Finite { column: column("value") }));
    refuse("1,1e999\n", 2, FaultKind::Csv(CsvFault::Finite { column: column("value") }));
    let not = FaultKind::Csv(CsvFault::Number { column: column("value"), found: "12 s".to_owned() });
    refuse("1,12 s\n", 2, not);
    refuse("1,2,5\n", 2, FaultKind::Csv(CsvFault::Columns { columns: 2, found: 3 }));
    refuse("1;2\n", 2, FaultKind::Csv(CsvFault::Separator { found: ';' }));
}

#[test]
fn headers_and_limits() {
    let header = FaultKind::Csv(CsvFault::Header { header: HEADER.to_owned(), found: "date,seconds".to_owned() });
    assert_eq!(read(b"date,seconds\n1,2\n"), Err(FileFault::at(1, header)));
    let days = |count: usize| (0..count).map(|day| format!("{day},1\n")).collect::<String>();
    assert_eq!(of(&days(MAX_ROWS)).map(|series| series.len()), Ok(MAX_ROWS));
    assert_eq!(of(&days(MAX_ROWS + 1)), Err(FileFault::at(0, FaultKind::Csv(CsvFault::Rows { most: MAX_ROWS as u32 }))));
    let large = vec![b'0'; MAX_BYTES + 1];
    assert!(matches!(read(&large), Err(FileFault { line: 0, kind: FaultKind::TooLarge { .. }, .. })));
}

proptest::proptest! {
    #[test]
    fn no_bytes_make_it_panic(bytes in proptest::collection::vec(proptest::num::u8::ANY, 0..200)) {
        let _ = read(&bytes);
        let _ = read(&[b"day,value\n", bytes.as_slice()].concat());
    }
}
