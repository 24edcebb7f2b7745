//! What a source file defines and which paths it names, read with the parser of the language.

use std::collections::{BTreeMap, BTreeSet};
use syn::buffer::{Cursor, TokenBuffer};
use syn::visit::{self, Visit};
use syn::{Attribute, Item, Macro, Meta, Path, UseTree, Visibility};

/// One module: a file of its own, or one that is written out within a file.
#[derive(Default)]
pub(super) struct Module {
    /// The file, below `src`.
    pub(super) file: String,
    /// What is defined here by name.
    pub(super) items: BTreeSet<String>,
    /// What is brought here by `use`, under the name that it has here; one name may stand for a module and a function.
    pub(super) aliases: BTreeMap<String, Vec<Vec<String>>>,
    /// Modules of which everything is brought here.
    pub(super) globs: Vec<Vec<String>>,
    /// Paths that the file needs: those of its own `use` lines, and those named in its code. What it only hands on is not among them.
    pub(super) needs: BTreeSet<Vec<String>>,
    /// Whether a macro is called among the items; what cannot be found here otherwise is taken to be made by it.
    pub(super) made_by_macro: bool,
}

/// The modules of a tree by their path, such as `["plan", "tasks"]`, and the macros that stand at its root.
#[derive(Default)]
pub(super) struct Tree {
    pub(super) modules: BTreeMap<Vec<String>, Module>,
    /// File of each exported macro.
    pub(super) macros: BTreeMap<String, String>,
}

impl Tree {
    /// Reads a tree.
    ///
    /// # Arguments
    /// * `files`: path below `src`, with `/`, and text
    pub(super) fn read<'a>(files: impl IntoIterator<Item = (&'a str, &'a str)>) -> Self {
        let mut tree = Self::default();
        for (name, text) in files {
            let parsed = syn::parse_file(text).unwrap_or_else(|error| panic!("{name}: {error}"));
            let mut path: Vec<String> = name.trim_end_matches(".rs").split('/').map(str::to_owned).collect();
            if path.last().is_some_and(|last| last == "mod" || last == "lib") {
                path.pop();
            }
            tree.module(name, path, &parsed.items);
        }
        tree
    }

    fn module(&mut self, file: &str, path: Vec<String>, items: &[Item]) {
        let mut reader = Reader { module: Module { file: file.to_owned(), ..Module::default() } };
        for item in items {
            match item {
                Item::Mod(inner) if !only_in_tests(&inner.attrs) => {
                    if let Some((_, items)) = &inner.content {
                        let path = [&path[..], &[inner.ident.to_string()]].concat();
                        self.module(file, path, items);
                    }
                }
                Item::Macro(made) => {
                    match &made.ident {
                        Some(name) => {
                            reader.module.items.insert(name.to_string());
                            if made.attrs.iter().any(|attribute| attribute.path().is_ident("macro_export")) {
                                self.macros.insert(name.to_string(), file.to_owned());
                            }
                        }
                        None => reader.module.made_by_macro = true,
                    }
                    reader.visit_item(item);
                }
                _ => {
                    reader.module.items.extend(name_of(item));
                    reader.visit_item(item);
                }
            }
        }
        self.modules.insert(path, reader.module);
    }
}

fn only_in_tests(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("cfg") && attribute.parse_args::<Path>().is_ok_and(|argument| argument.is_ident("test"))
    })
}

fn name_of(item: &Item) -> Option<String> {
    let name = match item {
        Item::Const(it) => &it.ident,
        Item::Enum(it) => &it.ident,
        Item::Fn(it) => &it.sig.ident,
        Item::Static(it) => &it.ident,
        Item::Struct(it) => &it.ident,
        Item::Trait(it) => &it.ident,
        Item::Type(it) => &it.ident,
        Item::Union(it) => &it.ident,
        _ => return None,
    };
    Some(name.to_string())
}

/// Attributes that name no function and no type of ours.
const NAMING_NOTHING: [&str; 6] = ["derive", "cfg", "cfg_attr", "allow", "warn", "expect"];

struct Reader {
    module: Module,
}

impl Reader {
    /// Takes up a `use`; one that is seen from outside only hands its names on.
    fn brought(&mut self, tree: &UseTree, before: &[String], handed_on: bool) {
        let with = |name: &syn::Ident| [before, &[name.to_string()]].concat();
        match tree {
            UseTree::Path(path) => self.brought(&path.tree, &with(&path.ident), handed_on),
            UseTree::Group(group) => group.items.iter().for_each(|tree| self.brought(tree, before, handed_on)),
            UseTree::Glob(_) => self.module.globs.push(before.to_vec()),
            UseTree::Name(name) if name.ident == "self" => self.alias(before.last().unwrap().clone(), before.to_vec(), handed_on),
            UseTree::Name(name) => self.alias(name.ident.to_string(), with(&name.ident), handed_on),
            UseTree::Rename(name) => self.alias(name.rename.to_string(), with(&name.ident), handed_on),
        }
    }

    fn alias(&mut self, name: String, path: Vec<String>, handed_on: bool) {
        if !handed_on {
            self.module.needs.insert(path.clone());
        }
        self.module.aliases.entry(name).or_default().push(path);
    }

    /// Takes up every path among the tokens of a macro.
    fn tokens(&mut self, mut at: Cursor<'_>) {
        let mut after_dot = false;
        while !at.eof() {
            if let Some((first, mut rest)) = at.ident() {
                let mut path = vec![first.to_string()];
                while let Some((name, after)) = after_colons(rest).and_then(Cursor::ident) {
                    path.push(name.to_string());
                    rest = after;
                }
                if !after_dot {
                    self.module.needs.insert(path);
                }
                (at, after_dot) = (rest, false);
            } else if let Some((inside, _, _, rest)) = at.any_group() {
                self.tokens(inside);
                (at, after_dot) = (rest, false);
            } else {
                after_dot = at.punct().is_some_and(|(mark, _)| mark.as_char() == '.');
                at = at.token_tree().unwrap().1;
            }
        }
    }
}

fn after_colons(at: Cursor<'_>) -> Option<Cursor<'_>> {
    after_colon(after_colon(at)?)
}

fn after_colon(at: Cursor<'_>) -> Option<Cursor<'_>> {
    at.punct().filter(|(mark, _)| mark.as_char() == ':').map(|(_, rest)| rest)
}

impl<'ast> Visit<'ast> for Reader {
    fn visit_item(&mut self, item: &'ast Item) {
        let attributes = match item {
            Item::Fn(it) => &it.attrs,
            Item::Impl(it) => &it.attrs,
            Item::Mod(it) => &it.attrs,
            Item::Use(it) => &it.attrs,
            _ => &Vec::new(),
        };
        if !only_in_tests(attributes) {
            visit::visit_item(self, item);
        }
    }

    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        self.brought(&item.tree, &[], !matches!(item.vis, Visibility::Inherited));
    }

    /// Documentation, derived traits and lints name nothing that counts; what an attribute of a library is told may, such as a function that reads
    /// an argument.
    fn visit_attribute(&mut self, attribute: &'ast Attribute) {
        if let Meta::List(list) = &attribute.meta
            && !NAMING_NOTHING.iter().any(|name| list.path.is_ident(name))
        {
            self.tokens(TokenBuffer::new2(list.tokens.clone()).begin());
        }
    }

    fn visit_path(&mut self, path: &'ast Path) {
        self.module.needs.insert(path.segments.iter().map(|segment| segment.ident.to_string()).collect());
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, call: &'ast Macro) {
        self.visit_path(&call.path);
        self.tokens(TokenBuffer::new2(call.tokens.clone()).begin());
    }
}
