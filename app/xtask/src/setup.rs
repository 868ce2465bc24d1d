//! `cargo xtask setup`: what building and testing need, once, from nothing. Tools are built or come from
//! package registries, lie in folders keyed by version under `target/tools`, and stand first on our PATH only;
//! nothing of the user's own is touched. The second time it only looks.

use crate::shell::{Done, cargo, found, output, program, read, root, run, step, write};
use sha2::{Digest, Sha256};
use std::path::PathBuf;

const TRUNK: &str = "0.21.14";
const TARGET: &str = "wasm32-unknown-unknown";

/// What a command needs of the machine, least first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Need {
    /// Enough for the release build.
    Build,
    /// Also a browser, and programs for file systems, to test in.
    Test,
    /// Also what measures pages.
    Bench,
}

/// The command: all that tests need.
pub fn everything() -> Done {
    set_up(Need::Test)?;
    let folders: Vec<_> = tool_folders().iter().map(|folder| folder.display().to_string()).collect();
    eprintln!("set up. For `trunk serve` by hand: export PATH=\"{}:$PATH\"", folders.join(":"));
    Ok(())
}

/// Brings in what is missing, and says each step that takes time.
pub fn set_up(need: Need) -> Done {
    system_programs(need)?;
    rust_target()?;
    node_packages(need)?;
    trunk()?;
    wasm_bindgen()
}

/// The folders that our tools are found in, whether they are there yet or not.
pub fn tool_folders() -> Vec<PathBuf> {
    let tools = root().join("target/tools");
    let bindgen = bindgen_version().unwrap_or_default();
    vec![
        tools.join(format!("trunk-{TRUNK}/bin")),
        tools.join(format!("wasm-bindgen-{bindgen}/bin")),
        root().join("tests/node_modules/.bin"),
    ]
}

fn system_programs(need: Need) -> Done {
    // (a program that shows the package is there, the Debian package, from which need on)
    let wanted = [
        ("cc", "build-essential", Need::Build),
        ("node", "nodejs", Need::Build),
        ("npm", "npm", Need::Build),
        ("chromium", "chromium", Need::Test),
        ("mkfs.ext4", "e2fsprogs", Need::Test),
    ];
    let missing: Vec<&str> = wanted
        .iter()
        .filter(|(program, _, from)| need >= *from && found(program).is_none())
        .map(|(_, package, _)| *package)
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    let line = format!("apt-get update && apt-get install -y --no-install-recommends {}", missing.join(" "));
    let root_user = output(program("id").arg("-u")).is_ok_and(|id| id.trim() == "0");
    if !root_user || found("apt-get").is_none() {
        return Err(format!("missing here: {}. As root on Debian, run\n  {line}", missing.join(", ")));
    }
    step(&format!("system packages: {}", missing.join(", ")));
    run(program("sh").args(["-c", &line]).env("DEBIAN_FRONTEND", "noninteractive"))
}

fn rust_target() -> Done {
    let sysroot = output(program("rustc").args(["--print", "sysroot"]))?;
    if PathBuf::from(sysroot.trim()).join("lib/rustlib").join(TARGET).is_dir() {
        return Ok(());
    }
    step(&format!("Rust target {TARGET}"));
    run(program("rustup").args(["target", "add", TARGET]))
}

fn node_packages(need: Need) -> Done {
    packages_of("tests")?;
    // What measures pages is large: only `bench` asks for it.
    if need >= Need::Bench { packages_of("tests/loads") } else { Ok(()) }
}

/// The packages of one lock file, unless they are those already.
fn packages_of(folder: &str) -> Done {
    let lock = read(&root().join(folder).join("package-lock.json"))?;
    let mark = format!("{:x}\n", Sha256::digest(lock.as_bytes()));
    let stamp = root().join(folder).join("node_modules/.installed");
    if std::fs::read_to_string(&stamp).is_ok_and(|old| old == mark) {
        return Ok(());
    }
    step(&format!("node packages of {folder}"));
    let words =
        ["ci", "--legacy-peer-deps", "--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error"];
    run(program("npm").current_dir(root().join(folder)).args(words))?;
    write(&stamp, mark)
}

fn trunk() -> Done {
    let folder = root().join(format!("target/tools/trunk-{TRUNK}"));
    if folder.join("bin/trunk").is_file() {
        return Ok(());
    }
    step(&format!("trunk {TRUNK} (some minutes, once)"));
    let version = format!("trunk@{TRUNK}");
    let mut install = cargo();
    install.args(["install", "--locked", &version, "--no-default-features", "--root"]).arg(&folder);
    run(quick_release(&mut install))
}

fn wasm_bindgen() -> Done {
    let version = bindgen_version()?;
    let folder = root().join(format!("target/tools/wasm-bindgen-{version}"));
    if folder.join("bin/wasm-bindgen").is_file() {
        return Ok(());
    }
    let source = root().join("app/xtask/bindgen");
    if !read(&source.join("Cargo.toml"))?.contains(&format!("\"={version}\"")) {
        return Err(format!(
            "Cargo.lock has wasm-bindgen {version}, app/xtask/bindgen another: put {version} in its Cargo.toml (twice) \
             and run `cargo update` there"
        ));
    }
    step(&format!("wasm-bindgen {version} (a minute, once)"));
    let mut install = cargo();
    install.args(["install", "--locked", "--path"]).arg(&source).arg("--root").arg(&folder);
    run(quick_release(&mut install))
}

/// Tools are used, not shipped: they compile fast rather than small, beside nobody else's builds.
fn quick_release(command: &mut std::process::Command) -> &mut std::process::Command {
    command
        .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1")
        .env("CARGO_PROFILE_RELEASE_LTO", "off")
        .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
        .env("CARGO_TARGET_DIR", root().join("target/tools/build"))
}

/// The version of wasm-bindgen that the program was locked to: the tool must be the very same.
fn bindgen_version() -> Done<String> {
    let lock = read(&root().join("Cargo.lock"))?;
    locked_version(&lock, "wasm-bindgen").ok_or_else(|| "Cargo.lock names no wasm-bindgen".to_string())
}

fn locked_version(lock: &str, package: &str) -> Option<String> {
    let after = lock.split_once(&format!("\nname = \"{package}\"\nversion = \""))?.1;
    Some(after.split_once('"')?.0.to_string())
}

#[cfg(test)]
mod tests {
    use super::locked_version;

    #[test]
    fn the_locked_version_is_that_of_the_package_itself_not_of_one_named_like_it() {
        let lock = "\n[[package]]\nname = \"wasm-bindgen-macro\"\nversion = \"0.2.1\"\n\n[[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";
        assert_eq!(locked_version(lock, "wasm-bindgen"), Some("0.2.130".to_string()));
        assert_eq!(locked_version(lock, "trunk"), None);
    }
}
