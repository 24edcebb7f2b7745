//! No two files import each other in a circle. An import counts for the file that defines what is named, through however many re-exports, so that
//! a `mod.rs` which hands names on neither makes a circle nor hides one.

use super::paths::{Module, Tree};
use super::{texts, top};
use petgraph::Graph;
use petgraph::algo::tarjan_scc;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

/// The longest chain of re-exports that is followed.
const MOST_STEPS: usize = 20;

/// What a path leads to.
#[derive(Clone, Debug, PartialEq)]
enum Found {
    Module(Vec<String>),
    /// Something that this file defines, and its name.
    In(String, String),
}

/// What each file needs of which other: user, definer, names.
type Imports = BTreeMap<(String, String), BTreeSet<String>>;

impl Tree {
    /// Follows a path from a module; none if it leads out of the tree.
    fn follow(&self, from: &[String], path: &[String], as_module: bool, steps: usize) -> Option<Found> {
        let steps = steps.checked_sub(1)?;
        let (first, rest) = path.split_first()?;
        let mut found = match first.as_str() {
            "crate" | "vatsketch" => Found::Module(Vec::new()),
            "self" => Found::Module(from.to_vec()),
            "super" => Found::Module(from[..from.len().checked_sub(1)?].to_vec()),
            _ => self.find(from, first, as_module || !rest.is_empty(), steps)?,
        };
        for (at, name) in rest.iter().enumerate() {
            let Found::Module(module) = &found else { return Some(found) };
            found = if name == "super" {
                Found::Module(module[..module.len().checked_sub(1)?].to_vec())
            } else {
                self.find(module, name, as_module || at + 1 < rest.len(), steps)?
            };
        }
        Some(found)
    }

    /// Finds a name in a module: a module first where more of the path follows, else what is defined there.
    fn find(&self, path: &[String], name: &str, as_module: bool, steps: usize) -> Option<Found> {
        let module = self.modules.get(path)?;
        let child = [path, &[name.to_owned()]].concat();
        let child = self.modules.contains_key(&child).then_some(Found::Module(child));
        let in_file = |file: &String| Found::In(file.clone(), name.to_owned());
        let own = module.items.contains(name).then(|| in_file(&module.file));
        let here = if as_module { child.clone().or(own) } else { own };
        here.or_else(|| self.brought(module, path, name, as_module, steps))
            .or(child)
            .or_else(|| if path.is_empty() { self.macros.get(name).map(in_file) } else { None })
            .or_else(|| module.made_by_macro.then(|| in_file(&module.file)))
    }

    fn brought(&self, module: &Module, path: &[String], name: &str, as_module: bool, steps: usize) -> Option<Found> {
        let aliases = module.aliases.get(name).into_iter().flatten();
        let found: Vec<Found> = aliases.filter_map(|alias| self.follow(path, alias, as_module, steps)).collect();
        let wanted = found.iter().find(|found| matches!(found, Found::Module(_)) == as_module).or(found.first()).cloned();
        let glob = |from: &Vec<String>| match self.follow(path, from, true, steps)? {
            Found::Module(of) => self.find(&of, name, as_module, steps),
            item @ Found::In(..) => Some(item),
        };
        wanted.or_else(|| module.globs.iter().find_map(glob))
    }

    /// Returns what each file needs of which other, and the paths within the tree that lead nowhere.
    fn imports(&self) -> (Imports, Vec<String>) {
        let (mut imports, mut lost) = (Imports::new(), Vec::new());
        for (path, module) in &self.modules {
            for need in &module.needs {
                match self.follow(path, need, false, MOST_STEPS) {
                    Some(Found::In(file, name)) if file != module.file => {
                        imports.entry((module.file.clone(), file)).or_default().insert(name);
                    }
                    None if ["crate", "self", "super"].contains(&need[0].as_str()) && need.len() > 1 => {
                        lost.push(format!("{}: {}", module.file, need.join("::")));
                    }
                    // Of its own file, a whole module, or from another crate.
                    Some(_) | None => {}
                }
            }
        }
        (imports, lost)
    }
}

/// Returns every circle in words: how many files, and a line for each import that ties it.
fn circles(imports: &Imports) -> Vec<String> {
    let mut graph = Graph::<&str, ()>::new();
    let mut nodes = BTreeMap::new();
    for (user, definer) in imports.keys() {
        let [from, to] = [user, definer].map(|file| *nodes.entry(file.as_str()).or_insert_with(|| graph.add_node(file)));
        graph.add_edge(from, to, ());
    }
    let tied = tarjan_scc(&graph).into_iter().filter(|circle| circle.len() > 1);
    let mut circles: Vec<_> = tied
        .map(|circle| {
            let files: BTreeSet<String> = circle.into_iter().map(|node| graph[node].to_owned()).collect();
            let mut told = format!("{} files in a circle:\n", files.len());
            for ((user, definer), names) in imports {
                if files.contains(user) && files.contains(definer) {
                    let names: Vec<&str> = names.iter().map(String::as_str).collect();
                    writeln!(told, "  {user} uses {definer}: {}", names.join(", ")).unwrap();
                }
            }
            told
        })
        .collect();
    circles.sort();
    circles
}

#[test]
fn no_files_import_each_other_in_a_circle() {
    let src = top().join("src");
    let files: Vec<(String, String)> = texts("src", ".rs")
        .into_iter()
        .map(|(path, text)| (path.strip_prefix(&src).unwrap().to_string_lossy().replace('\\', "/"), text))
        .collect();
    let (imports, lost) = Tree::read(files.iter().map(|(name, text)| (name.as_str(), text.as_str()))).imports();
    assert!(lost.is_empty(), "these paths lead nowhere, so this test would miss circles:\n{}", lost.join("\n"));
    assert!(imports.len() > 500, "only {} imports are seen", imports.len());
    let told = circles(&imports).concat();
    assert!(told.is_empty(), "two files that need each other need a third that both import:\n{told}");
}

fn told(files: &[(&str, &str)]) -> Vec<String> {
    let (imports, lost) = Tree::read(files.iter().copied()).imports();
    assert_eq!(lost, Vec::<String>::new());
    circles(&imports)
}

#[test]
fn a_circle_behind_re_exports_is_found() {
    let files = [
        ("lib.rs", "pub mod curd; pub mod whey;"),
        ("curd/mod.rs", "mod cut; mod knife; pub use cut::{Cut, cut}; pub(crate) use knife::Knife;"),
        ("curd/cut.rs", "use super::Knife; pub struct Cut; pub fn cut(_: &Knife) -> Cut { Cut }"),
        // The way back leads through another folder and a module in the body.
        ("curd/knife.rs", "use crate::{whey}; pub struct Knife; fn sharp() { whey::drip(); }"),
        ("whey/mod.rs", "mod drop; pub use drop::drip;"),
        ("whey/drop.rs", "pub fn drip() { let _ = [vec![crate::curd::cut(&todo!())]]; }"),
    ];
    let expected = "3 files in a circle:\n  curd/cut.rs uses curd/knife.rs: Knife\n  curd/knife.rs uses whey/drop.rs: drip\n  whey/drop.rs uses curd/cut.rs: cut\n";
    assert_eq!(told(&files), [expected]);
}

#[test]
fn a_function_that_an_attribute_names_is_needed() {
    let files = [
        ("lib.rs", "mod names; mod options;"),
        ("names.rs", "use super::options::Options; pub fn reads() {} fn of(_: &Options) {}"),
        (
            "options.rs",
            "use super::names; #[derive(Debug)] pub struct Options { #[arg(long, value_parser = names::reads())] name: String }",
        ),
    ];
    let expected = "2 files in a circle:\n  names.rs uses options.rs: Options\n  options.rs uses names.rs: reads\n";
    assert_eq!(told(&files), [expected]);
}

#[test]
fn a_module_that_only_hands_on_is_in_no_circle() {
    let files = [
        ("lib.rs", "pub mod curd;"),
        ("curd/mod.rs", "mod cut; mod knife; pub use cut::cut; pub use knife::Knife;"),
        ("curd/cut.rs", "use super::Knife; pub fn cut(_: &Knife) {}"),
        ("curd/knife.rs", "/// Used by [`super::cut`].\npub struct Knife; #[cfg(test)] mod tests { use super::super::cut; }"),
    ];
    assert_eq!(told(&files), Vec::<String>::new());
}

#[test]
fn a_module_that_defines_what_its_child_uses_is_in_a_circle_with_it() {
    let files = [
        ("lib.rs", "pub mod curd;"),
        ("curd/mod.rs", "mod cut; use cut::cut; pub struct Curd; pub fn all() { cut(&Curd) }"),
        ("curd/cut.rs", "use super::Curd; pub fn cut(_: &Curd) {}"),
    ];
    let expected = "2 files in a circle:\n  curd/cut.rs uses curd/mod.rs: Curd\n  curd/mod.rs uses curd/cut.rs: cut\n";
    assert_eq!(told(&files), [expected]);
}

#[test]
fn what_a_macro_makes_is_defined_where_the_macro_is_called() {
    let files = [
        ("lib.rs", "pub mod record; pub mod salt; pub mod brine;"),
        (
            "record.rs",
            "#[macro_export] macro_rules! constants { ($($id:ident = $value:expr),*) => { $(pub const $id: f64 = $value;)* } }",
        ),
        ("salt.rs", "crate::constants! { SHARE = crate::brine::OF_BRINE }"),
        ("brine.rs", "use crate::salt; crate::constants! { OF_BRINE = 0.2 } fn twice() -> f64 { 2.0 * salt::SHARE }"),
    ];
    let expected = "2 files in a circle:\n  brine.rs uses salt.rs: SHARE\n  salt.rs uses brine.rs: OF_BRINE\n";
    assert_eq!(told(&files), [expected]);
}
