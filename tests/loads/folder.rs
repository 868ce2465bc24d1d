//! The kept files, by folder: `stored/v1` (never edited, only added to) and `stored/crashers`; journals as text, and
//! backups.

use std::path::{Path, PathBuf};

/// Every file with that ending (`jsonl`, `zip`) of a folder below `tests/loads/stored`, by name.
pub fn files(folder: &str, ending: &str) -> Vec<PathBuf> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("loads/stored").join(folder);
    let read = std::fs::read_dir(&root).unwrap_or_else(|error| panic!("{}: {error}", root.display()));
    let mut files: Vec<PathBuf> = read.map(|file| file.unwrap().path()).collect();
    files.retain(|file| file.extension().is_some_and(|ends| ends == ending));
    files.sort();
    assert!(!files.is_empty(), "{} is empty", root.display());
    files
}
