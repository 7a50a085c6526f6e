use super::*;

#[track_caller]
fn refuse(text: &str, want: CsvFault) {
    assert_eq!(read(text.as_bytes()), Err(want.clone()));
    assert!(!want.to_string().is_empty());
}

fn header(found: &str) -> CsvFault {
    CsvFault::Header { expected: HEADER, found: found.to_owned() }
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
    refuse("", CsvFault::Empty { expected: HEADER });
    refuse("\n", CsvFault::Empty { expected: HEADER });
    refuse("0.01,-0.5,9.8,0.25\n", header("0.01,-0.5,9.8,0.25"));
    refuse("t_ms,ax,ay,az\n", header("t_ms,ax,ay,az"));
    refuse("t_s, ax, ay, az\n", header("t_s, ax, ay, az"));
    refuse("t_s,ax,ay,az,gx\n", header("t_s,ax,ay,az,gx"));
    refuse("\u{feff}t_s,ax,ay,az\n", CsvFault::ByteOrderMark);
}

#[test]
fn other_separators() {
    refuse("t_s;ax;ay;az\n", CsvFault::Separator { line: 1, found: ';' });
    refuse("t_s,ax,ay,az\n0\t1\t2\t3\n", CsvFault::Separator { line: 2, found: '\t' });
    refuse("t_s,ax,ay,az\n0,1,2,3\n0;1;2;3\n", CsvFault::Separator { line: 3, found: ';' });
}

#[test]
fn rows_that_are_none() {
    let row = |text: &str| format!("t_s,ax,ay,az\n0,1,2,3\n{text}\n");
    refuse(&row("0,1,2"), CsvFault::Columns { line: 3, expected: 4, found: 3 });
    refuse(&row("0,01,1,0,2,0,3,0"), CsvFault::Columns { line: 3, expected: 4, found: 8 });
    refuse(&row("\n0,1,2,3"), CsvFault::EmptyLine { line: 3, expected: 4 });
    let not = |column, found: &str| CsvFault::NotANumber { line: 3, column, found: found.to_owned() };
    refuse(&row("0,1,2,"), not("az", ""));
    refuse(&row("0,1,\"2\",3"), not("ay", "\"2\""));
    refuse(&row("0, 1,2,3"), not("ax", " 1"));
    refuse(&row("12:00:00,1,2,3"), not("t_s", "12:00:00"));
}

#[test]
fn what_is_no_text() {
    assert_eq!(read(b"t_s,ax,ay,az\n0,1,2,3\n0,\xff,2,3\n"), Err(CsvFault::NotText { line: 3 }));
    assert_eq!(read(&[0xff; 20]), Err(CsvFault::NotText { line: 1 }));
    let long = format!("t_s,ax,ay,az\n{}\n", "1".repeat(300));
    refuse(&long, CsvFault::LineTooLong { line: 2, most: 256 });
}

#[test]
fn limits() {
    let mut many = String::from("t_s,ax,ay,az\n");
    many.push_str(&"0,1,2,3\n".repeat(MAX_ROWS));
    assert_eq!(read(many.as_bytes()).map(|samples| samples.len()), Ok(MAX_ROWS));
    many.push_str("0,1,2,3\n");
    refuse(&many, CsvFault::TooManyRows { most: MAX_ROWS });
    let large = vec![b'0'; MAX_BYTES + 1];
    assert_eq!(read(&large), Err(CsvFault::TooLarge { bytes: MAX_BYTES + 1, most: MAX_BYTES }));
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
