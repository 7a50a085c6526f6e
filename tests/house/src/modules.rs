//! Finds which module of a crate uses which.

use crate::{Source, sources};
use std::collections::{BTreeMap, BTreeSet};
use syn::{Attribute, Item, ItemUse, UseTree, Visibility};

/// A module's path within the crate: `["patient", "run"]`; empty for the crate itself.
type Place = Vec<String>;

struct Module {
    /// Every path that its code uses, without tests.
    paths: Vec<Vec<String>>,
    /// Its re-exports: each name, with the path of what it names.
    exports: BTreeMap<String, Vec<String>>,
}

/// The cycles among sibling modules in `folder`, a crate's sources: for each the modules in it and, for each dependency, where it
/// comes from. Tests may use any module.
pub fn circles(folder: &str) -> Vec<String> {
    let sources = sources(folder, &[".rs"]);
    let of_tests = |source: &Source| source.is_test() || source.path.ends_with("/samples.rs");
    let all: BTreeMap<Place, Module> = sources
        .iter()
        .filter(|source| !of_tests(source))
        .map(|source| (place_of(&source.path[folder.len()..]), read(source)))
        .collect();
    let mut arrows: BTreeMap<Place, BTreeMap<(String, String), String>> = BTreeMap::new();
    for (place, module) in &all {
        for path in &module.paths {
            let Some(target) = resolve(&all, place, path) else { continue };
            let shared = place.iter().zip(&target).take_while(|(a, b)| a == b).count();
            if let (Some(from), Some(to)) = (place.get(shared), target.get(shared)) {
                let why = format!("{} names {}", place.join("::"), path.join("::"));
                arrows.entry(place[..shared].to_vec()).or_default().entry((from.clone(), to.clone())).or_insert(why);
            }
        }
    }
    arrows.into_values().filter_map(in_circles).collect()
}

/// What remains of `arrows` after repeatedly removing every module that uses none or is used by none.
fn in_circles(mut arrows: BTreeMap<(String, String), String>) -> Option<String> {
    loop {
        let (begins, ends): (BTreeSet<String>, BTreeSet<String>) = arrows.keys().cloned().unzip();
        let before = arrows.len();
        arrows.retain(|(from, to), _| begins.contains(to) && ends.contains(from));
        if arrows.len() == before {
            break;
        }
    }
    let lines = arrows.iter().map(|((from, to), why)| format!("{from} -> {to}: {why}"));
    (!arrows.is_empty()).then(|| lines.collect::<Vec<_>>().join("\n"))
}

fn place_of(path: &str) -> Place {
    let names = path.trim_start_matches('/').trim_end_matches(".rs").split('/');
    let mut place: Place = names.map(str::to_owned).collect();
    if place.last().is_some_and(|last| ["mod", "lib", "main"].contains(&last.as_str())) {
        place.pop();
    }
    place
}

fn read(source: &Source) -> Module {
    let file = syn::parse_file(&source.text).unwrap_or_else(|error| panic!("{}: {error}", source.path));
    let mut module = Module { paths: Vec::new(), exports: BTreeMap::new() };
    items(&file.items, &mut module);
    module
}

fn items(all: &[Item], module: &mut Module) {
    for item in all {
        match item {
            Item::Use(one) if !only_for_tests(&one.attrs) => imports(one, module),
            Item::Mod(one) if !only_for_tests(&one.attrs) => {
                items(one.content.as_ref().map_or(&[], |(_, within)| within), module);
            }
            Item::Use(_) | Item::Mod(_) => {}
            other => in_tokens(quote::ToTokens::to_token_stream(other), &mut module.paths),
        }
    }
}

fn only_for_tests(attributes: &[Attribute]) -> bool {
    attributes
        .iter()
        .any(|one| one.path().is_ident("cfg") && quote::ToTokens::to_token_stream(one).to_string().contains("test"))
}

fn imports(one: &ItemUse, module: &mut Module) {
    let mut found = Vec::new();
    leaves(&one.tree, &mut Vec::new(), &mut found);
    for (name, path) in found {
        if !matches!(one.vis, Visibility::Inherited) {
            module.exports.insert(name, path.clone());
        }
        module.paths.push(path);
    }
}

/// Every path of a `use`, with the name that it gets.
fn leaves(tree: &UseTree, before: &mut Vec<String>, found: &mut Vec<(String, Vec<String>)>) {
    let with = |before: &[String], name: String| [before, &[name]].concat();
    match tree {
        UseTree::Path(path) => {
            before.push(path.ident.to_string());
            leaves(&path.tree, before, found);
            before.pop();
        }
        UseTree::Name(name) if name.ident == "self" => {
            found.push((before.last().cloned().unwrap_or_default(), before.clone()));
        }
        UseTree::Name(name) => found.push((name.ident.to_string(), with(before, name.ident.to_string()))),
        UseTree::Rename(rename) => found.push((rename.rename.to_string(), with(before, rename.ident.to_string()))),
        UseTree::Glob(_) => found.push(("*".into(), before.clone())),
        UseTree::Group(group) => group.items.iter().for_each(|tree| leaves(tree, before, found)),
    }
}

/// Paths that begin with `crate`, `self` or `super`, including those in macros, which a parser of Rust does not resolve.
fn in_tokens(tokens: proc_macro2::TokenStream, found: &mut Vec<Vec<String>>) {
    use proc_macro2::TokenTree::{Group, Ident, Punct};
    let mut path: Vec<String> = Vec::new();
    for token in tokens {
        match token {
            Ident(name) if path.is_empty() && !(name == "crate" || name == "self" || name == "super") => {}
            Ident(name) => path.push(name.to_string()),
            Punct(mark) if mark.as_char() == ':' && !path.is_empty() => {}
            other => {
                found.extend((path.len() > 1).then(|| std::mem::take(&mut path)));
                path.clear();
                if let Group(group) = other {
                    in_tokens(group.stream(), found);
                }
            }
        }
    }
    found.extend((path.len() > 1).then_some(path));
}

/// The module that contains what `path` names, as seen from `place`, through at most one re-export. `None` for a path in another
/// crate.
fn resolve(all: &BTreeMap<Place, Module>, place: &[String], path: &[String]) -> Option<Place> {
    let mut rest = path;
    let mut at: Place = match rest.first()?.as_str() {
        "crate" => Vec::new(),
        "self" => place.to_vec(),
        "super" => place.to_vec(),
        _ => return None,
    };
    while let Some((first, after)) = rest.split_first() {
        match first.as_str() {
            "crate" | "self" => {}
            "super" => drop(at.pop()),
            name => {
                at.push(name.to_owned());
                if !all.contains_key(&at) {
                    at.pop();
                    break;
                }
            }
        }
        rest = after;
    }
    let exported = rest.first().and_then(|name| all.get(&at)?.exports.get(name));
    let child = exported.and_then(|path| path.iter().find(|name| *name != "self"));
    let within =
        child.map(|child| [&at[..], std::slice::from_ref(child)].concat()).filter(|within| all.contains_key(within));
    Some(within.unwrap_or(at))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn module(text: &str) -> Module {
        read(&Source { path: "x.rs".into(), text: text.into() })
    }

    fn path(text: &str) -> Vec<String> {
        text.split("::").map(str::to_owned).collect()
    }

    #[test]
    fn paths_are_found_in_imports_bodies_and_macros_but_not_in_tests() {
        let found = module(
            "use crate::a::{self, b::C};\nfn f() { super::d::e(); view! { <X y=move || self::g::h/> } }\n#[cfg(test)]\nmod tests { use crate::z; }",
        );
        let expected = ["crate::a", "crate::a::b::C", "super::d::e", "self::g::h"].map(path);
        assert_eq!(found.paths, expected);
    }

    #[test]
    fn a_re_export_leads_to_the_defining_module() {
        let all = [
            (Place::new(), module("pub use a::Thing;")),
            (path("a"), module("use crate::b::Other;")),
            (path("b"), module("use crate::Thing;")),
        ];
        let all: BTreeMap<Place, Module> = all.into();
        assert_eq!(resolve(&all, &path("b"), &path("crate::Thing")), Some(path("a")));
        assert_eq!(resolve(&all, &path("a"), &path("super::b::Other")), Some(path("b")));
        assert_eq!(resolve(&all, &path("a"), &path("std::fmt")), None);
    }

    #[test]
    fn a_cycle_is_found_and_a_chain_is_not_one() {
        let arrow = |from: &str, to: &str| ((from.to_owned(), to.to_owned()), String::new());
        assert!(in_circles([arrow("a", "b"), arrow("b", "c")].into()).is_none());
        let circle = in_circles([arrow("a", "b"), arrow("b", "c"), arrow("c", "b")].into()).expect("b and c");
        assert!(circle.contains("b -> c") && circle.contains("c -> b") && !circle.contains("a -> b"), "{circle}");
    }
}
