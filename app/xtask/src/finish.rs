//! `cargo xtask finish`: the last touches to a release build, once, on Trunk's staging folder: short names between
//! script and program, the security policy with the hashes of the inline scripts, the list of files that the service
//! worker keeps, ready header settings, and copies compressed once and for all. Debug rounds are left as they are.

use crate::headers::{apache, is_hashed, nginx, policy};
use crate::shell::{Done, files_below, program, read, root, run, write};
use sha2::{Digest, Sha256};
use std::path::{Path, PathBuf};

const POLICY_MARK: &str = "<!-- finish: policy -->";
const VERSION_MARK: &str = "<!-- finish: version -->";
const BUILD_MARK: &str = "const BUILD = { version: \"\", hashed: [], plain: [] };";

/// Served with the rest, but not kept for offline: the device itself keeps the icons of what is installed; the rest
/// is for people.
const NOT_KEPT: [&str; 6] = ["sw.js", "screenshots/", "notices/", "LICENSE", "icons/icon-", "icons/maskable"];

/// Reads the staging folder from Trunk's hook.
pub fn command() -> Done {
    let variable =
        |name: &str| std::env::var(name).map_err(|_| format!("{name} is not set: Trunk calls this, not you"));
    let staging = PathBuf::from(variable("TRUNK_STAGING_DIR")?);
    if variable("TRUNK_PROFILE")? != "release" {
        return Ok(());
    }
    write(&staging.join("notices/notices.txt"), crate::notices::notices()?)?;
    crate::glue::shorten(&staging)?;
    finish(&staging)?;
    compress(&staging)
}

/// Everything but the compressing.
fn finish(staging: &Path) -> Done {
    let page = staging.join("index.html");
    let html = replaced(&read(&page)?, POLICY_MARK, &{
        let scripts = inline_scripts(&read(&page)?);
        format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{}\">", policy(&scripts))
    })?;
    let version = version(staging, &html)?;
    let html = replaced(&html, VERSION_MARK, &format!("<meta name=\"version\" content=\"{version}\">"))?;
    write(&page, &html)?;

    let worker = staging.join("sw.js");
    write(&worker, replaced(&read(&worker)?, BUILD_MARK, &build_line(staging, &version))?)?;

    let policy = policy(&inline_scripts(&html));
    write(&staging.join("headers-nginx.conf"), nginx(&policy))?;
    write(&staging.join(".htaccess"), apache(&policy))
}

/// The bodies of the scripts that stand in the page itself, as the browser hashes them.
fn inline_scripts(html: &str) -> Vec<String> {
    let pieces = html.split("<script").skip(1);
    let scripts = pieces.filter_map(|piece| {
        let (attributes, rest) = piece.split_once('>')?;
        let (body, _) = rest.split_once("</script>")?;
        (!attributes.contains(" src=")).then(|| body.to_string())
    });
    scripts.collect()
}

/// Sixteen digits that change with any byte of what is served.
fn version(staging: &Path, html: &str) -> Done<String> {
    let mut digest = Sha256::new();
    for file in files_below(staging) {
        let name = name_in(staging, &file);
        digest.update(name.as_bytes());
        match name.as_str() {
            "index.html" => digest.update(html.as_bytes()),
            _ => digest.update(std::fs::read(&file).map_err(|why| format!("{}: {why}", file.display()))?),
        }
    }
    Ok(format!("{:x}", digest.finalize()).chars().take(16).collect())
}

fn build_line(staging: &Path, version: &str) -> String {
    let kept =
        files_below(staging).into_iter().map(|file| name_in(staging, &file)).filter(|name| is_kept(name));
    let (hashed, plain): (Vec<String>, Vec<String>) = kept.partition(|name| is_hashed(name));
    format!("const BUILD = {};", serde_json::json!({ "version": version, "hashed": hashed, "plain": plain }))
}

fn is_kept(name: &str) -> bool {
    let hidden = name.rsplit('/').next().is_some_and(|file| file.starts_with('.'));
    let served_only = [".br", ".conf", ".txt"].iter().any(|end| name.ends_with(end));
    !hidden && !served_only && !NOT_KEPT.iter().any(|start| name.starts_with(start))
}

fn name_in(staging: &Path, file: &Path) -> String {
    file.strip_prefix(staging).unwrap_or(file).to_string_lossy().replace('\\', "/")
}

/// Brotli at its best, beside each file that gets smaller by it.
fn compress(staging: &Path) -> Done {
    run(program("node").arg(root().join("app/xtask/compress.mjs")).arg(staging))
}

/// Puts the text where the mark stands; a mark that is missing or stands twice is an error.
fn replaced(whole: &str, mark: &str, with: &str) -> Done<String> {
    match whole.matches(mark).count() {
        1 => Ok(whole.replacen(mark, with, 1)),
        count => Err(format!("`{mark}` stands {count} times; it must stand once")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn staged() -> PathBuf {
        let folder = crate::shell::scratch();
        let page = format!(
            "<head>{POLICY_MARK}{VERSION_MARK}<script src=\"boot.js\"></script></head>\
             <script type=\"module\">\nimport a from './a.js';\n</script>"
        );
        write(&folder.join("index.html"), page).unwrap();
        write(&folder.join("sw.js"), format!("{BUILD_MARK}\nrest")).unwrap();
        write(&folder.join("a-0123456789abcde.js"), "1").unwrap();
        write(&folder.join("fonts/lettering-400.woff2"), "2").unwrap();
        write(&folder.join("screenshots/bench.png"), "3").unwrap();
        folder
    }

    #[test]
    fn the_policy_holds_the_hash_of_each_inline_script_and_of_no_linked_one() {
        let folder = staged();
        finish(&folder).unwrap();
        let html = read(&folder.join("index.html")).unwrap();
        assert_eq!(inline_scripts(&html), ["\nimport a from './a.js';\n"]);
        assert_eq!(html.matches("'sha256-").count(), 1, "{html}");
        assert!(read(&folder.join(".htaccess")).unwrap().contains("'sha256-"));
    }

    #[test]
    fn the_worker_keeps_all_the_page_needs_and_nothing_else() {
        let folder = staged();
        finish(&folder).unwrap();
        let worker = read(&folder.join("sw.js")).unwrap();
        assert!(worker.contains("\"hashed\":[\"a-0123456789abcde.js\"]"), "{worker}");
        assert!(worker.contains("\"plain\":[\"fonts/lettering-400.woff2\",\"index.html\"]"), "{worker}");
    }

    #[test]
    fn the_version_follows_any_byte_served_and_stands_in_page_and_worker() {
        let version_of = |folder: &Path| {
            finish(folder).unwrap();
            let worker = read(&folder.join("sw.js")).unwrap();
            let version = worker.split("\"version\":\"").nth(1).unwrap().get(..16).unwrap().to_string();
            assert!(read(&folder.join("index.html")).unwrap().contains(&version));
            version
        };
        let (one, two, three) = (staged(), staged(), staged());
        write(&three.join("fonts/lettering-400.woff2"), "9").unwrap();
        let version = version_of(&one);
        assert_eq!(version, version_of(&two));
        assert_ne!(version, version_of(&three));
    }

    #[test]
    fn a_second_finish_is_refused_rather_than_doubling_the_policy() {
        let folder = staged();
        finish(&folder).unwrap();
        assert!(finish(&folder).is_err());
    }
}
