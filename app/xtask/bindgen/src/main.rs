//! `wasm-bindgen`, as far as Trunk calls it: `--target=web --out-dir=… --out-name=… program.wasm`.
//! The library does the work; the ready-made command would take four times as long to compile.

use wasm_bindgen_cli_support::Bindgen;

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    if arguments.iter().any(|word| word == "--version" || word == "-V") {
        println!("wasm-bindgen {}", env!("CARGO_PKG_VERSION"));
        return;
    }
    if let Err(why) = bind(&arguments) {
        eprintln!("wasm-bindgen: {why}");
        std::process::exit(1);
    }
}

fn bind(arguments: &[String]) -> Result<(), String> {
    let value = |name: &str| arguments.iter().find_map(|word| word.strip_prefix(name)?.strip_prefix('='));
    let flag = |name: &str| arguments.iter().any(|word| word == name);
    let input = arguments.iter().find(|word| !word.starts_with("--")).ok_or("no .wasm file named")?;
    let folder = value("--out-dir").ok_or("no --out-dir=… named")?;
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(input)
        .typescript(!flag("--no-typescript"))
        .debug(flag("--debug"))
        .keep_debug(flag("--keep-debug"));
    if let Some(name) = value("--out-name") {
        bindgen.out_name(name);
    }
    let done = bindgen.web(true).and_then(|web| web.generate(folder));
    done.map_err(|why| format!("{why:#}"))
}
