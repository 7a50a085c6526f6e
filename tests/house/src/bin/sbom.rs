//! Prints the program's bill of materials: every library that is compiled into the window, its front end or the terminal, or that runs
//! while they are built, as CycloneDX 1.6. The same commit gives the same bytes.

use house_rules::{cargo_online, root};
use serde_json::{Map, Value, json};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

/// The packages that a person gets.
const SHIPPED: [&str; 3] = ["carryover-shell", "carryover-ui", "terminal"];

fn main() {
    let metadata = cargo_online(&["metadata", "--locked", "--format-version", "1"]);
    let metadata: Value = serde_json::from_str(&metadata).expect("cargo prints JSON");
    let checksums = checksums();
    let bill = Bill::of(&metadata, &checksums);
    println!("{}", serde_json::to_string_pretty(&bill.document()).expect("JSON"));
}

/// The SHA-256 of each library's source, as the lock file has it.
fn checksums() -> BTreeMap<(String, String), String> {
    let lock = fs::read_to_string(root().join("Cargo.lock")).expect("the lock file");
    let lock: toml::Table = lock.parse().expect("TOML");
    let text = |row: &toml::Value, key: &str| row.get(key).and_then(toml::Value::as_str).map(str::to_owned);
    let rows = lock["package"].as_array().expect("a list").iter();
    rows.filter_map(|row| Some(((text(row, "name")?, text(row, "version")?), text(row, "checksum")?))).collect()
}

/// A package as cargo describes it.
struct Package<'a> {
    facts: &'a Value,
    /// What it depends on, and whether only its build does.
    needs: Vec<(&'a str, bool)>,
}

struct Bill<'a> {
    packages: BTreeMap<&'a str, Package<'a>>,
    checksums: &'a BTreeMap<(String, String), String>,
    /// Ids of the packages in the program, and of those that only run while it is built.
    shipped: BTreeSet<&'a str>,
    building: BTreeSet<&'a str>,
}

impl<'a> Bill<'a> {
    fn of(metadata: &'a Value, checksums: &'a BTreeMap<(String, String), String>) -> Self {
        let packages: BTreeMap<_, _> = list(&metadata["resolve"]["nodes"])
            .map(|node| (text(&node["id"]), list(&node["deps"]).filter_map(need).collect()))
            .map(|(id, needs)| {
                let facts =
                    list(&metadata["packages"]).find(|package| package["id"] == *id).expect("each node is a package");
                (id, Package { facts, needs })
            })
            .collect();
        let mut bill = Bill { packages, checksums, shipped: BTreeSet::new(), building: BTreeSet::new() };
        let roots = bill.packages.iter().filter(|(_, package)| SHIPPED.contains(&text(&package.facts["name"])));
        let roots: Vec<&str> = roots.map(|(id, _)| *id).collect();
        assert_eq!(roots.len(), SHIPPED.len());
        bill.shipped = bill.reached(&roots, false);
        bill.building = bill.reached(&roots, true).difference(&bill.shipped).copied().collect();
        bill
    }

    /// The packages that these need, with or without what their builds need.
    fn reached(&self, roots: &[&'a str], building: bool) -> BTreeSet<&'a str> {
        let mut open = roots.to_vec();
        let mut found = BTreeSet::new();
        while let Some(id) = open.pop() {
            if found.insert(id) {
                open.extend(self.packages[id].needs.iter().filter(|(_, build)| building || !build).map(|(need, _)| *need));
            }
        }
        found
    }

    fn document(&self) -> Value {
        let ids: BTreeSet<&str> = self.shipped.union(&self.building).copied().collect();
        let own = json!({ "type": "application", "bom-ref": "carryover", "name": "carryover", "version": env!("CARGO_PKG_VERSION"),
                          "licenses": [{ "expression": "MIT OR Apache-2.0" }] });
        let edges = ids.iter().map(|id| {
            let needs: BTreeSet<String> = self.packages[id]
                .needs
                .iter()
                .filter(|(need, _)| ids.contains(need))
                .map(|(need, _)| self.reference(need))
                .collect();
            json!({ "ref": self.reference(id), "dependsOn": needs })
        });
        let roots = ids.iter().filter(|id| SHIPPED.contains(&text(&self.packages[**id].facts["name"])));
        let roots: Vec<String> = roots.map(|id| self.reference(id)).collect();
        let edges: Vec<Value> = std::iter::once(json!({ "ref": "carryover", "dependsOn": roots })).chain(edges).collect();
        json!({ "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json", "bomFormat": "CycloneDX", "specVersion": "1.6", "version": 1,
                "metadata": { "component": own }, "components": ids.iter().map(|id| self.component(id)).collect::<Vec<_>>(),
                "dependencies": edges })
    }

    fn component(&self, id: &str) -> Value {
        let facts = self.packages[id].facts;
        let (name, version) = (text(&facts["name"]), text(&facts["version"]));
        let mut part = Map::new();
        let mut put = |key: &str, value: Value| part.insert(key.into(), value);
        put("type", "library".into());
        put("bom-ref", self.reference(id).into());
        put("name", name.into());
        put("version", version.into());
        put("scope", if self.shipped.contains(id) { "required" } else { "excluded" }.into());
        if let Some(sum) = self.checksums.get(&(name.into(), version.into())) {
            put("hashes", json!([{ "alg": "SHA-256", "content": sum }]));
            put("purl", self.reference(id).into());
        }
        if let Some(licence) = facts["license"].as_str() {
            // Older packages write a slash for "or".
            put("licenses", json!([{ "expression": licence.replace('/', " OR ").replace("  ", " ") }]));
        }
        Value::Object(part)
    }

    /// The package's address as a purl, which is also its name within the document.
    fn reference(&self, id: &str) -> String {
        let facts = self.packages[id].facts;
        format!("pkg:cargo/{}@{}", text(&facts["name"]), text(&facts["version"]).replace('+', "%2B"))
    }
}

/// A dependency's id, and whether only the build needs it; none if only tests do.
fn need(edge: &Value) -> Option<(&str, bool)> {
    let kinds: Vec<&Value> = list(&edge["dep_kinds"]).map(|kind| &kind["kind"]).collect();
    match (kinds.iter().any(|kind| kind.is_null()), kinds.iter().any(|kind| **kind == "build")) {
        (true, _) => Some((text(&edge["pkg"]), false)),
        (false, true) => Some((text(&edge["pkg"]), true)),
        _ => None,
    }
}

fn list(value: &Value) -> impl Iterator<Item = &Value> {
    value.as_array().expect("a list").iter()
}

fn text(value: &Value) -> &str {
    value.as_str().expect("a text")
}
