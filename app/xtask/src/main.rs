//! `cargo xtask …`: everything that is done to the house rather than in it. This file only dispatches; each
//! command has a file of its own.

mod bench;
mod budget;
mod build;
mod finish;
mod glue;
mod headers;
mod notices;
mod serve;
mod setup;
mod sheet;
mod shell;
mod test;
mod tidy;

const USAGE: &str = "\
cargo xtask setup            what building and testing need, once
cargo xtask serve            the release build on this machine  [--port N] [--base /folder/] [--built]
cargo xtask test             everything; `test quick` is core and tidy in under a minute;
                             `test <part>` runs one part again
cargo xtask tidy             the laws of the house
cargo xtask budget           what the first load weighs  [--accept writes the ratchet]
cargo xtask bench            the numbers to reach, with their conditions
cargo xtask build            the release build in dist/
(Trunk itself calls `sheet` before a build and `finish` after it.)";

fn main() -> std::process::ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let done = match words.as_slice() {
        ["setup"] => setup::everything(),
        ["serve", rest @ ..] => serve::command(rest),
        ["test", rest @ ..] => test::command(rest),
        ["tidy"] => tidy::command(),
        ["budget", rest @ ..] => budget::command(rest),
        ["bench", rest @ ..] => bench::command(rest),
        ["build"] => build::command(),
        ["sheet"] => sheet::command(),
        ["finish"] => finish::command(),
        _ => Err(USAGE.to_string()),
    };
    match done {
        Ok(()) => std::process::ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("{why}");
            std::process::ExitCode::FAILURE
        }
    }
}
