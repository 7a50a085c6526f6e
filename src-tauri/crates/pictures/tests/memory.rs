//! How much memory a picture may cost that is small as a file. In a process of its own, whose peak nothing else raises.
#![cfg(target_os = "linux")]

use pictures::PictureError;
use pictures::qr::{MAX_PIXELS, read};
use std::io::Write;

/// The largest picture that is accepted, with the most bytes a pixel: the file has a thousandth of them. Written row by row.
fn packed(side: u32) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, side, side);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_depth(png::BitDepth::Sixteen);
    let mut writer = encoder.write_header().expect("memory");
    let mut rows = writer.stream_writer().expect("memory");
    let row = vec![0x7F; side as usize * 8];
    (0..side).for_each(|_| rows.write_all(&row).expect("memory"));
    rows.finish().expect("memory");
    drop(writer);
    bytes
}

/// The most memory that this process has had, in megabytes.
fn peak_mb() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").expect("Linux");
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).expect("the peak");
    line.trim().trim_end_matches(" kB").parse::<u64>().expect("a number") / 1024
}

#[test]
fn a_picture_costs_about_a_byte_a_pixel() {
    let picture = packed(8_000);
    assert!(picture.len() < 2_000_000, "{}", picture.len());
    let before = peak_mb();
    assert!(before < 60, "{before} MB before anything is read");
    assert_eq!(read(&picture), Err(PictureError::NoCode));
    let most = MAX_PIXELS / 1_000_000 + 60;
    assert!(peak_mb() < before + most, "{} MB more for {MAX_PIXELS} pixels", peak_mb() - before);
}
