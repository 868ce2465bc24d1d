//! The notices that go with what is shipped: every crate in the program with its licence, and each licence text
//! once. Written into the release by `finish`, from the crates themselves, so that none is forgotten.

use crate::shell::{Done, cargo, files_below, output};
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// One crate of the program.
struct Shipped {
    name: String,
    version: String,
    licence: String,
}

/// All notices as one text.
pub fn notices() -> Done<String> {
    let shape = ["--prefix", "none", "--format", "{p}|{l}"];
    let edges = ["--edges", "normal,no-proc-macro", "--target", "wasm32-unknown-unknown"];
    let tree =
        output(cargo().args(["tree", "--locked", "--package", "benchslate-web"]).args(edges).args(shape))?;
    let metadata = output(cargo().args(["metadata", "--locked", "--format-version", "1"]))?;
    let metadata: Value = serde_json::from_str(&metadata).map_err(|why| format!("cargo metadata: {why}"))?;
    let folders = folders(&metadata);
    let shipped = shipped(&tree);
    let mut texts: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for one in &shipped {
        let folder = folders.get(&(one.name.clone(), one.version.clone()));
        let found = folder.map(|folder| licence_texts(folder)).unwrap_or_default();
        for text in found {
            texts.entry(text).or_default().push(one.name.clone());
        }
    }
    Ok(written(&shipped, &texts))
}

/// The crates of `name v1.2.3|licence` lines, each once, without our own.
fn shipped(tree: &str) -> Vec<Shipped> {
    let mut shipped: BTreeMap<(String, String), String> = BTreeMap::new();
    for line in tree.lines() {
        let Some((package, licence)) = line.split_once('|') else { continue };
        let mut words = package.split(' ');
        let (Some(name), Some(version)) = (words.next(), words.next()) else { continue };
        if !name.starts_with("benchslate") {
            let key = (name.to_string(), version.trim_start_matches('v').to_string());
            shipped.insert(key, licence.trim_end_matches(" (*)").to_string());
        }
    }
    shipped.into_iter().map(|((name, version), licence)| Shipped { name, version, licence }).collect()
}

fn folders(metadata: &Value) -> BTreeMap<(String, String), PathBuf> {
    let text = |value: &Value| value.as_str().unwrap_or_default().to_string();
    let packages = metadata["packages"].as_array().cloned().unwrap_or_default();
    let folder =
        |package: &Value| PathBuf::from(text(&package["manifest_path"])).parent().map(Path::to_path_buf);
    packages
        .iter()
        .filter_map(|package| Some(((text(&package["name"]), text(&package["version"])), folder(package)?)))
        .collect()
}

/// The licence files at the top of a crate's folder; where there is a choice, the MIT one.
fn licence_texts(folder: &Path) -> Vec<String> {
    let named = |file: &&PathBuf, starts: &[&str]| {
        let name = file.file_name().unwrap_or_default().to_string_lossy().to_uppercase();
        file.parent() == Some(folder)
            && !name.ends_with(".RS")
            && starts.iter().any(|start| name.starts_with(start))
    };
    let files = files_below(folder);
    let all =
        files.iter().filter(|file| named(file, &["LICENSE", "LICENCE", "COPYING", "UNLICENSE", "COPYRIGHT"]));
    let all: Vec<&PathBuf> = all.collect();
    let mit: Vec<&PathBuf> = all
        .iter()
        .copied()
        .filter(|file| named(file, &["LICENSE-MIT", "LICENSE_MIT", "LICENCE-MIT"]))
        .collect();
    let chosen = if mit.is_empty() { all } else { mit };
    let read = chosen.iter().filter_map(|file| std::fs::read_to_string(file).ok());
    read.map(|text| text.replace("\r\n", "\n").trim().to_string()).collect()
}

fn written(shipped: &[Shipped], texts: &BTreeMap<String, Vec<String>>) -> String {
    let mut whole = String::from(
        "Benchslate is free software under the MIT licence or the Apache licence 2.0, as you like\n\
         (LICENSE-MIT.txt, LICENSE-APACHE.txt).\n\n\
         Its lettering, Benchslate Lettering, is under the SIL Open Font License 1.1 (fonts/OFL.txt).\n\n\
         The program is built with these crates:\n\n",
    );
    for one in shipped {
        whole.push_str(&format!("  {} {}  {}\n", one.name, one.version, one.licence));
    }
    for (text, names) in texts {
        whole.push_str(&format!("\n{}\nOf {}:\n\n{text}\n", "-".repeat(78), names.join(", ")));
    }
    whole
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_crate_stands_once_with_its_licence_and_ours_are_left_out() {
        let tree = "benchslate-web v0.1.0 (/a)|MIT\nleptos v0.8.23|MIT\nserde v1.0.1|MIT OR Apache-2.0 (*)\nserde v1.0.1|MIT OR Apache-2.0";
        let shipped = shipped(tree);
        let read: Vec<_> = shipped.iter().map(|one| (one.name.as_str(), one.licence.as_str())).collect();
        assert_eq!(read, [("leptos", "MIT"), ("serde", "MIT OR Apache-2.0")]);
    }

    #[test]
    fn where_a_crate_offers_a_choice_the_mit_text_is_taken() {
        let folder = crate::shell::scratch();
        for (name, text) in
            [("LICENSE-MIT", "m\r\n"), ("LICENSE-APACHE", "a"), ("src/LICENSE", "x"), ("README.md", "r")]
        {
            crate::shell::write(&folder.join(name), text).unwrap();
        }
        assert_eq!(licence_texts(&folder), ["m"]);
    }
}
