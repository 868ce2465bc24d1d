//! Running other programs and speaking to the terminal, in one way for all commands.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;

/// What a command of ours ends with: nothing, or the sentence that says what stopped it.
pub type Done<T = ()> = Result<T, String>;

/// The folder that holds the workspace's `Cargo.toml`.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}

/// Says which step is under way.
pub fn step(what: &str) {
    eprintln!("· {what}");
}

/// A program run from the root of the project, our tools first on its PATH.
pub fn program(name: &str) -> Command {
    let mut command = Command::new(name);
    command.current_dir(root()).env("PATH", path_with_tools());
    command
}

/// `cargo`, as the one that runs us.
pub fn cargo() -> Command {
    program(&std::env::var("CARGO").unwrap_or_else(|_| "cargo".to_string()))
}

/// Runs it; an exit code other than 0 is an error that names what was run.
pub fn run(command: &mut Command) -> Done {
    let shown = shown(command);
    match command.status() {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => Err(format!("`{shown}` failed ({status})")),
        Err(why) => Err(format!("`{shown}` could not be run: {why}")),
    }
}

/// Runs it and gives back what it printed; its errors go to the terminal.
pub fn output(command: &mut Command) -> Done<String> {
    let shown = shown(command);
    let output = command.stderr(std::process::Stdio::inherit()).output();
    match output {
        Ok(output) if output.status.success() => {
            String::from_utf8(output.stdout).map_err(|why| why.to_string())
        }
        Ok(output) => Err(format!("`{shown}` failed ({})", output.status)),
        Err(why) => Err(format!("`{shown}` could not be run: {why}")),
    }
}

/// Where a program of that name would be found, ours first.
pub fn found(name: &str) -> Option<PathBuf> {
    std::env::split_paths(&path_with_tools()).map(|folder| folder.join(name)).find(|file| file.is_file())
}

/// The PATH with the folders of our own tools in front, and the system's programs for file systems behind.
pub fn path_with_tools() -> OsString {
    let old = std::env::var_os("PATH").unwrap_or_default();
    let folders = crate::setup::tool_folders()
        .into_iter()
        .chain(std::env::split_paths(&old))
        .chain([PathBuf::from("/usr/sbin"), PathBuf::from("/sbin")]);
    std::env::join_paths(folders).unwrap_or(old)
}

/// Reads a text file; the error names it.
pub fn read(file: &Path) -> Done<String> {
    std::fs::read_to_string(file).map_err(|why| format!("{}: {why}", file.display()))
}

/// Writes a file and the folders above it; the error names it.
pub fn write(file: &Path, content: impl AsRef<[u8]>) -> Done {
    if let Some(folder) = file.parent() {
        std::fs::create_dir_all(folder).map_err(|why| format!("{}: {why}", folder.display()))?;
    }
    std::fs::write(file, content).map_err(|why| format!("{}: {why}", file.display()))
}

/// All files below a folder, in the order of their names; a folder that isn't there has none.
pub fn files_below(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(next) = open.pop() {
        for entry in std::fs::read_dir(&next).into_iter().flatten().flatten() {
            let path = entry.path();
            if path.is_dir() { open.push(path) } else { found.push(path) }
        }
    }
    found.sort();
    found
}

/// An empty folder of a test's own.
#[cfg(test)]
pub fn scratch() -> PathBuf {
    use std::sync::atomic::{AtomicU32, Ordering};
    static NEXT: AtomicU32 = AtomicU32::new(0);
    let number = NEXT.fetch_add(1, Ordering::Relaxed);
    let folder = std::env::temp_dir().join(format!("xtask-{}-{number}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn shown(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    words.map(|word| word.to_string_lossy()).collect::<Vec<_>>().join(" ")
}
