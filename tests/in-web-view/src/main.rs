//! `in-web-view PROFILE...` prints the times of the workloads in the web view, one per line: profile, workload, milliseconds (the
//! median and the best).

use in_web_view::Page;

fn main() {
    for profile in std::env::args().skip(1) {
        let page = Page::open(&profile);
        assert!(page.texts() == workloads::texts(), "the web view and native code say the same");
        for sum in ["sway", "review", "find", "index", "arrive", "figures"] {
            let [median, best] = page.milliseconds(sum);
            println!("{profile} {sum} {median} {best}");
        }
    }
}
