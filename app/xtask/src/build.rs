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
    // Trunk reads NO_COLOR as a yes-or-no of its own and stops at `1`.
    run(program("trunk").args(["build", "--release"]).env_remove("NO_COLOR"))?;
    Ok(dist())
}

/// The folder that a web server serves.
pub fn dist() -> PathBuf {
    root().join("dist")
}
