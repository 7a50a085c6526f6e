use super::*;
use exercises::file_fault::{CsvFault, FaultKind};

#[track_caller]
fn refuse(text: &str, line: u32, kind: FaultKind) {
    assert_eq!(read(text.as_bytes()), Err(FileFault::at(line, kind)), "{text:?}");
}

fn header(found: &str) -> FaultKind {
    FaultKind::Csv(CsvFault::Header { header: HEADER.to_owned(), found: found.to_owned() })
}

#[test]
fn samples_in_the_order_of_the_file() {
    let want = [Sample { t_s: 0.01, a: [-0.5, 9.8, 0.25] }, Sample { t_s: 0.0, a: [1.0, -2e-3, 3.0] }];
    for text in [
        "t_s,ax,ay,az\n0.01,-0.5,9.8,0.25\n0,1,-2e-3,3.0\n",
        "t_s,ax,ay,az\n0.01,-0.5,9.8,0.25\n0,1,-2e-3,3.0",
        "t_s,ax,ay,az\r\n0.01,-0.5,9.8,0.25\r\n0,1,-2e-3,3.0\r\n",
    ] {
        assert_eq!(read(text.as_bytes()).expect("sound"), want);
    }
}

#[test]
fn a_header_alone_is_a_trial_without_samples() {
    assert_eq!(read(b"t_s,ax,ay,az\n"), Ok(vec![]));
    assert_eq!(read(b"t_s,ax,ay,az"), Ok(vec![]));
}

#[test]
fn a_sensor_with_nothing_to_say() {
    let got = read(b"t_s,ax,ay,az\n0,nan,inf,-inf\n").expect("sound");
    assert!(got[0].a[0].is_nan() && got[0].a[1] == f64::INFINITY);
}

#[test]
fn nothing_no_header_other_columns_other_units() {
    refuse("", 0, FaultKind::Csv(CsvFault::Empty { header: HEADER.to_owned() }));
    refuse("\n", 0, FaultKind::Csv(CsvFault::Empty { header: HEADER.to_owned() }));
    refuse("0.01,-0.5,9.8,0.25\n", 1, header("0.01,-0.5,9.8,0.25"));
    refuse("t_ms,ax,ay,az\n", 1, header("t_ms,ax,ay,az"));
    refuse("t_s, ax, ay, az\n", 1, header("t_s, ax, ay, az"));
    refuse("t_s,ax,ay,az,gx\n", 1, header("t_s,ax,ay,az,gx"));
    refuse("\u{feff}t_s,ax,ay,az\n", 1, FaultKind::Csv(CsvFault::ByteOrderMark));
}

#[test]
fn other_separators() {
    refuse("t_s;ax;ay;az\n", 1, FaultKind::Csv(CsvFault::Separator { found: ';' }));
    refuse("t_s,ax,ay,az\n0\t1\t2\t3\n", 2, FaultKind::Csv(CsvFault::Separator { found: '\t' }));
    refuse("t_s,ax,ay,az\n0,1,2,3\n0;1;2;3\n", 3, FaultKind::Csv(CsvFault::Separator { found: ';' }));
}

#[test]
fn rows_that_are_none() {
    let row = |text: &str| format!("t_s,ax,ay,az\n0,1,2,3\n{text}\n");
    refuse(&row("0,1,2"), 3, FaultKind::Csv(CsvFault::Columns { columns: 4, found: 3 }));
    refuse(&row("0,01,1,0,2,0,3,0"), 3, FaultKind::Csv(CsvFault::Columns { columns: 4, found: 8 }));
    refuse(&row("\n0,1,2,3"), 3, FaultKind::Csv(CsvFault::EmptyLine { columns: 4 }));
    let not =
        |column: &str, found: &str| FaultKind::Csv(CsvFault::Number { column: column.to_owned(), found: found.to_owned() });
    refuse(&row("0,1,2,"), 3, not("az", ""));
    refuse(&row("0,1,\"2\",3"), 3, not("ay", "\"2\""));
    refuse(&row("0, 1,2,3"), 3, not("ax", " 1"));
    refuse(&row("12:00:00,1,2,3"), 3, not("t_s", "12:00:00"));
}

#[test]
fn what_is_no_text() {
    assert_eq!(read(b"t_s,ax,ay,az\n0,1,2,3\n0,\xff,2,3\n"), Err(FileFault::at(3, FaultKind::NotUtf8)));
    assert_eq!(read(&[0xff; 20]), Err(FileFault::at(1, FaultKind::NotUtf8)));
    let long = format!("t_s,ax,ay,az\n{}\n", "1".repeat(300));
    refuse(&long, 2, FaultKind::Csv(CsvFault::LineLength { most: 256 }));
}

#[test]
fn limits() {
    let mut many = String::from("t_s,ax,ay,az\n");
    many.push_str(&"0,1,2,3\n".repeat(MAX_ROWS));
    assert_eq!(read(many.as_bytes()).map(|samples| samples.len()), Ok(MAX_ROWS));
    many.push_str("0,1,2,3\n");
    refuse(&many, 0, FaultKind::Csv(CsvFault::Rows { most: MAX_ROWS as u32 }));
    let large = vec![b'0'; MAX_BYTES + 1];
    let kind = FaultKind::TooLarge { bytes: MAX_BYTES as u64 + 1, most: MAX_BYTES as u64 };
    assert_eq!(read(&large), Err(FileFault::at(0, kind)));
}

proptest::proptest! {
    #[test]
    fn no_bytes_make_it_panic(bytes in proptest::collection::vec(proptest::num::u8::ANY, 0..200)) {
        let _ = read(&bytes);
        let _ = read(&[b"t_s,ax,ay,az\n", bytes.as_slice()].concat());
    }

    #[test]
    fn what_is_written_is_read(rows in proptest::collection::vec(proptest::array::uniform4(-1e9..1e9f64), 0..20)) {
        let mut text = format!("{HEADER}\n");
        for [t, x, y, z] in &rows {
            text.push_str(&format!("{t},{x},{y},{z}\n"));
        }
        let want: Vec<Sample> = rows.iter().map(|&[t_s, x, y, z]| Sample { t_s, a: [x, y, z] }).collect();
        proptest::prop_assert_eq!(read(text.as_bytes()), Ok(want));
    }
}
