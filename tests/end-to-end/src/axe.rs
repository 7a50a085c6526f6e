//! Checks the page's accessibility with axe-core (only in tests; tests/install downloads it).

use std::path::PathBuf;
use std::sync::LazyLock;

use serde_json::Value;

use crate::window::Window;
use crate::{program, wait};

static AXE: LazyLock<String> = LazyLock::new(|| {
    let file = file();
    std::fs::read_to_string(&file).unwrap_or_else(|_| panic!("{} is missing: run tests/install", file.display()))
});

/// Where tests/install puts it: in cargo's target folder, one level above the folder of the programs.
fn file() -> PathBuf {
    let program = program::path();
    let target = program.ancestors().nth(2).expect("cargo puts programs two folders deep");
    target.join("axe-core.min.js")
}

/// Checks every rule of WCAG 2.2, A and AA, and good practice. Reports the rule, the reason, and the place.
const RUN: &str = r"
    window.axeFound = null;
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    axe.run(document, { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] }).then((results) => {
        window.axeFound = results.violations.flatMap((rule) =>
            rule.nodes.map((node) => `${rule.id}: ${rule.help}: ${node.html.slice(0, 160)} ${(node.any[0] ?? node.all[0] ?? node.none[0])?.message ?? ''}`));
    }, (error) => { window.axeFound = ['axe itself: ' + error]; });
    return true;
";

impl Window {
    /// The page's present accessibility problems, one per line.
    #[track_caller]
    pub fn inaccessible(&self) -> Vec<String> {
        if self.ask("return typeof window.axe === 'object'", &[]) != Value::Bool(true) {
            self.ask(&format!("{}; return true;", *AXE), &[]);
        }
        self.ask(RUN, &[]);
        let found = wait::until(|| {
            let found = self.try_ask("return window.axeFound", &[]).ok()?;
            found.as_array().cloned()
        });
        let found = found.expect("axe answers");
        found.iter().filter_map(Value::as_str).map(str::to_owned).collect()
    }
}
