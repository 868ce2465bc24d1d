//! `cargo xtask build`: the release build in `dist/`, through Trunk.

use crate::setup::{Need, set_up};
use crate::shell::{Done, program, root, run, step};
use std::path::PathBuf;

/// Set-up where needed, then the build.
pub fn command() -> Done {
    set_up(Need::Build)?;
    release().map(|_| ())
}

/// Builds, and says where.
pub fn release() -> Done<PathBuf> {
    step("release build");
    // The sheet must be there before Trunk looks for it; the hook keeps it fresh.
    crate::sheet::command()?;
    let mut trunk = program("trunk");
    trunk.args(["build", "--release"]).env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", rust_flags());
    // Trunk reads NO_COLOR as a yes-or-no of its own and stops at `1`.
    run(trunk.env_remove("NO_COLOR"))?;
    Ok(dist())
}

/// As in `.cargo/config.toml`; and views without their types; no path of this machine
/// in what is shipped.
fn rust_flags() -> String {
    let home = std::env::home_dir().unwrap_or_default().join(".cargo");
    let crates = std::env::var_os("CARGO_HOME").map_or(home, PathBuf::from).join("registry/src");
    let flags = [
        "--cfg getrandom_backend=\"wasm_js\"".to_string(),
        format!("--remap-path-prefix={}=crates", crates.display()),
        format!("--remap-path-prefix={}=benchslate", root().display()),
    ];
    flags.join(" ")
}

/// The folder that a web server serves.
pub fn dist() -> PathBuf {
    root().join("dist")
}
