//! `in-web-view PROFILE...` prints what the sums take in the web view, a line each: profile, sum, milliseconds
//! (the median and the best).

use in_web_view::Page;

fn main() {
    for profile in std::env::args().skip(1) {
        let page = Page::open(&profile);
        assert!(page.texts() == workloads::texts(), "the web view and native code say the same");
        for sum in ["sway", "review"] {
            let [median, best] = page.milliseconds(sum);
            println!("{profile} {sum} {median} {best}");
        }
    }
}
