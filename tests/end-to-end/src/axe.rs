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

/// Every rule of WCAG 2.2, A and AA, and good practice.
const ALL: &str = "{ type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }";
/// The rules that depend on colours.
const COLOURS: &str = "{ type: 'rule', values: ['color-contrast', 'link-in-text-block'] }";

/// Checks the rules that stand in its place. Reports the rule, the reason, and the place.
const RUN: &str = r"
    window.axeFound = null;
    axe.run(document, { runOnly: RULES, resultTypes: ['violations'] }).then((results) => {
        window.axeFound = results.violations.flatMap((rule) =>
            rule.nodes.map((node) => `${rule.id}: ${rule.help}: ${node.html.slice(0, 160)} ${(node.any[0] ?? node.all[0] ?? node.none[0])?.message ?? ''}`));
    }, (error) => { window.axeFound = ['axe itself: ' + error]; });
    return true;
";

impl Window {
    /// The page's present accessibility problems, one per line.
    #[track_caller]
    pub fn inaccessible(&self) -> Vec<String> {
        self.checked(ALL)
    }

    /// Those of its colours.
    #[track_caller]
    pub fn unreadable(&self) -> Vec<String> {
        self.checked(COLOURS)
    }

    #[track_caller]
    fn checked(&self, rules: &str) -> Vec<String> {
        if self.ask("return typeof window.axe === 'object'", &[]) != Value::Bool(true) {
            self.ask(&format!("{}; return true;", *AXE), &[]);
        }
        self.ask(&RUN.replace("RULES", rules), &[]);
        let found = wait::until(|| {
            let found = self.try_ask("return window.axeFound", &[]).ok()?;
            found.as_array().cloned()
        });
        let found = found.expect("axe answers");
        found.iter().filter_map(Value::as_str).map(str::to_owned).collect()
    }
}
