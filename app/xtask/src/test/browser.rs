//! The parts that need a browser: journeys through the release build, and rounds that end a browser or a machine
//! right after a confirmed write. All of them talk to a server of their own, in a sub-folder.

use super::tally::{Tally, node_line, round_line, watched};
use crate::shell::{Done, files_below, found, program, root};
use std::io::{BufRead, BufReader};
use std::process::{Child, Command, Stdio};

/// A server for as long as this lives.
pub struct Served {
    child: Child,
    pub address: String,
}

impl Served {
    /// Serves `dist` below a folder, on a free port.
    pub fn start(base: &str) -> Done<Served> {
        let own = std::env::current_exe().map_err(|why| why.to_string())?;
        let words = ["serve", "--built", "--port", "0", "--base", base];
        let child = Command::new(own).args(words).stdout(Stdio::piped()).spawn();
        let mut child = child.map_err(|why| why.to_string())?;
        let mut address = String::new();
        if let Some(out) = child.stdout.take() {
            BufReader::new(out).read_line(&mut address).map_err(|why| why.to_string())?;
        }
        let served = Served { child, address: address.trim().to_string() };
        if served.address.is_empty() { Err("the server did not start".into()) } else { Ok(served) }
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        // It may have ended by itself; then there is nothing to end.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// Every `*.test.mjs` below `tests/journeys`, by node's own runner.
pub fn journeys() -> Tally {
    let specs: Vec<_> = files_below(&root().join("tests/journeys"))
        .into_iter()
        .filter(|file| file.to_string_lossy().ends_with(".test.mjs"))
        .collect();
    if specs.is_empty() {
        return Tally::failed("no journeys in tests/journeys (*.test.mjs)");
    }
    with_server(|node| {
        node.args(["--test", "--test-concurrency=2", "--test-timeout=300000", "--test-reporter=spec"])
            .args(&specs);
        watched(node, node_line)
    })
}

/// `tests/loads/<name>.mjs`, which prints its own sum.
pub fn rounds(name: &str) -> Tally {
    let script = root().join(format!("tests/loads/{name}.mjs"));
    with_server(|node| watched(node.arg(&script), round_line))
}

fn with_server(run: impl FnOnce(&mut Command) -> Tally) -> Tally {
    match Served::start("/deep/folder/") {
        Ok(served) => run(&mut scripts(&served)),
        Err(why) => Tally::failed(&why),
    }
}

/// Node with all that a script may ask for: where the app is served, the browser, and our own program, so that a
/// journey can start and stop servers of its own.
pub fn scripts(served: &Served) -> Command {
    let own = std::env::current_exe().unwrap_or_default();
    let mut node = program("node");
    node.env("BENCHSLATE_URL", &served.address)
        .env("BENCHSLATE_XTASK", own)
        .env("BENCHSLATE_DIST", crate::build::dist())
        .env("BENCHSLATE_CHROMIUM", found("chromium").unwrap_or_default())
        .env("BENCHSLATE_OUT", root().join("target/journeys"));
    node
}
