use super::*;

fn of(rows: &str) -> Result<Vec<DayValue>, SeriesCsvFault> {
    read(format!("day,value\n{rows}").as_bytes())
}

#[track_caller]
fn refuse(rows: &str, want: SeriesCsvFault) {
    assert_eq!(of(rows), Err(want.clone()));
    assert!(want.to_string().contains("line"));
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
    let not = |found: &str| SeriesCsvFault::NotADay { line: 2, found: found.to_owned() };
    for cell in ["", "1.5", "monday", "2026-02-30", "2026-3-1", "01.03.2026", "+026-03-01", "99999999999"] {
        refuse(&format!("{cell},1\n"), not(cell));
    }
}

#[test]
fn order_repeats_and_mixtures() {
    refuse("1,1\n1,2\n", SeriesCsvFault::NotLater { line: 3 });
    refuse("2,1\n1,2\n", SeriesCsvFault::NotLater { line: 3 });
    refuse("1,1\n2026-03-01,2\n", SeriesCsvFault::MixedDays { line: 3 });
}

#[test]
fn values_that_are_none() {
    refuse("1,nan\n", SeriesCsvFault::NotFinite { line: 2 });
    refuse("1,1e999\n", SeriesCsvFault::NotFinite { line: 2 });
    let not = CsvFault::NotANumber { line: 2, column: "value", found: "12 s".to_owned() };
    refuse("1,12 s\n", not.into());
    refuse("1,2,5\n", CsvFault::Columns { line: 2, expected: 2, found: 3 }.into());
    refuse("1;2\n", CsvFault::Separator { line: 2, found: ';' }.into());
}

#[test]
fn headers_and_limits() {
    let header = CsvFault::Header { expected: HEADER, found: "date,seconds".to_owned() };
    assert_eq!(read(b"date,seconds\n1,2\n"), Err(header.into()));
    let days = |count: usize| (0..count).map(|day| format!("{day},1\n")).collect::<String>();
    assert_eq!(of(&days(MAX_ROWS)).map(|series| series.len()), Ok(MAX_ROWS));
    assert_eq!(of(&days(MAX_ROWS + 1)), Err(CsvFault::TooManyRows { most: MAX_ROWS }.into()));
    let large = vec![b'0'; MAX_BYTES + 1];
    assert!(matches!(read(&large), Err(SeriesCsvFault::Csv(CsvFault::TooLarge { .. }))));
}

proptest::proptest! {
    #[test]
    fn no_bytes_make_it_panic(bytes in proptest::collection::vec(proptest::num::u8::ANY, 0..200)) {
        let _ = read(&bytes);
        let _ = read(&[b"day,value\n", bytes.as_slice()].concat());
    }
}
