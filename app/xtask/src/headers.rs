//! What a web server says with each file: the type, how long it may be kept, and the security policy. The one
//! source of `cargo xtask serve`, of the page's own `<meta>`, and of the ready settings for two common servers.

use base64::Engine;
use sha2::{Digest, Sha256};

/// A year: as long as anyone keeps anything.
const FOR_EVER: &str = "public, max-age=31536000, immutable";

/// Headers of every answer but the policy, which depends on the build.
pub const ALWAYS: [(&str, &str); 6] = [
    ("X-Content-Type-Options", "nosniff"),
    ("Referrer-Policy", "no-referrer"),
    ("Cross-Origin-Opener-Policy", "same-origin"),
    ("Cross-Origin-Resource-Policy", "same-origin"),
    ("Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()"),
    ("X-Frame-Options", "DENY"),
];

/// The policy for a page with these inline scripts: our own files, our own program, nothing of anyone else's.
pub fn policy(inline_scripts: &[String]) -> String {
    let hashes: String = inline_scripts
        .iter()
        .map(|script| {
            let hash = base64::engine::general_purpose::STANDARD.encode(Sha256::digest(script.as_bytes()));
            format!(" 'sha256-{hash}'")
        })
        .collect();
    format!(
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'{hashes}; style-src 'self'; \
         img-src 'self' blob:; connect-src 'self'; font-src 'self'; manifest-src 'self'; worker-src 'self'; \
         base-uri 'none'; form-action 'none'"
    )
}

/// The same as a header, where one more thing can be said: no other page may hold this one in a frame.
pub fn policy_as_header(policy: &str) -> String {
    format!("{policy}; frame-ancestors 'none'")
}

/// The media type by the end of the name.
pub fn media_type(name: &str) -> &'static str {
    match name.rsplit_once('.').map_or("", |(_, end)| end) {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        "json" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "woff2" => "font/woff2",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// A name with a hash in it is kept for ever; any other is asked about each time.
pub fn cache_control(name: &str) -> &'static str {
    if is_hashed(name) { FOR_EVER } else { "no-cache" }
}

/// Does the name hold a hash of the content, as in `benchslate-b548b6622892423_bg.wasm`? The hash may lack its
/// leading zeros, so its length is no mark.
pub fn is_hashed(name: &str) -> bool {
    let file = name.rsplit('/').next().unwrap_or(name);
    file.split('-').skip(1).any(|piece| {
        let end = piece.trim_start_matches(|c| matches!(c, '0'..='9' | 'a'..='f'));
        piece.len() - end.len() >= 8 && end.starts_with(['.', '_'])
    })
}

/// Settings for nginx, to be included in the `server` or `location` that serves the folder.
pub fn nginx(policy: &str) -> String {
    let lines: String = all(policy)
        .iter()
        .map(|(name, value)| format!("    add_header {name} \"{value}\" always;\n"))
        .collect();
    format!(
        "# nginx: include this in the `location` that serves the folder, e.g.\n\
         #   location /benchslate/ {{ alias /srv/benchslate/; include /srv/benchslate/headers-nginx.conf; }}\n\
         # HTTPS is needed for offline use. Compressed copies: with the brotli module, uncomment the next line.\n\
         # brotli_static on;\n\
         index index.html;\n\
         location ~ \"-[0-9a-f]{{8,}}(_bg)?\\.(css|js|wasm)$\" {{\n\
         {lines}    add_header Cache-Control \"{FOR_EVER}\" always;\n\
         \x20   types {{ application/wasm wasm; text/javascript js; text/css css; }}\n}}\n\
         location ~ \"\\.webmanifest$\" {{\n\
         {lines}    add_header Cache-Control \"no-cache\" always;\n\
         \x20   types {{ application/manifest+json webmanifest; }}\n}}\n\
         {lines}add_header Cache-Control \"no-cache\" always;\n"
    )
}

/// Settings for Apache: a file that the server reads by itself where `AllowOverride` lets it.
pub fn apache(policy: &str) -> String {
    let lines: String =
        all(policy).iter().map(|(name, value)| format!("  Header always set {name} \"{value}\"\n")).collect();
    format!(
        "# Apache: stands in the folder it speaks of. Needs mod_headers and mod_mime; mod_rewrite for compressed copies.\n\
         DirectoryIndex index.html\n\
         AddType application/wasm .wasm\n\
         AddType application/manifest+json .webmanifest\n\
         AddType text/javascript .js\n\
         <IfModule mod_headers.c>\n{lines}  Header always set Cache-Control \"no-cache\"\n\
         \x20 <FilesMatch \"-[0-9a-f]{{8,}}(_bg)?\\.(css|js|wasm)$\">\n\
         \x20   Header always set Cache-Control \"{FOR_EVER}\"\n  </FilesMatch>\n</IfModule>\n\
         <IfModule mod_rewrite.c>\n  RewriteEngine On\n\
         \x20 RewriteCond %{{HTTP:Accept-Encoding}} br\n  RewriteCond %{{REQUEST_FILENAME}}.br -f\n\
         \x20 RewriteRule \"^(.*)\\.(css|js|wasm|html|svg|webmanifest)$\" \"$1.$2.br\" [QSA,L]\n\
         \x20 RewriteRule \"\\.css\\.br$\" \"-\" [T=text/css,E=no-gzip:1]\n\
         \x20 RewriteRule \"\\.js\\.br$\" \"-\" [T=text/javascript,E=no-gzip:1]\n\
         \x20 RewriteRule \"\\.wasm\\.br$\" \"-\" [T=application/wasm,E=no-gzip:1]\n\
         \x20 RewriteRule \"\\.html\\.br$\" \"-\" [T=text/html,E=no-gzip:1]\n\
         \x20 RewriteRule \"\\.svg\\.br$\" \"-\" [T=image/svg+xml,E=no-gzip:1]\n\
         \x20 RewriteRule \"\\.webmanifest\\.br$\" \"-\" [T=application/manifest+json,E=no-gzip:1]\n\
         \x20 <FilesMatch \"\\.br$\">\n    Header append Content-Encoding br\n    Header append Vary Accept-Encoding\n\
         \x20 </FilesMatch>\n</IfModule>\n"
    )
}

fn all(policy: &str) -> Vec<(&'static str, String)> {
    let mut all: Vec<_> = ALWAYS.iter().map(|(name, value)| (*name, (*value).to_string())).collect();
    all.push(("Content-Security-Policy", policy_as_header(policy)));
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_a_name_with_a_hash_is_kept_for_ever() {
        for name in [
            "benchslate-b548b6622892423.js",
            "benchslate-b548b6622892423_bg.wasm",
            "main-0123456789abcdef.css",
        ] {
            assert!(is_hashed(name), "{name}");
        }
        for name in [
            "index.html",
            "sw.js",
            "icons/icon-192.png",
            "fonts/lettering-400.woff2",
            "maskable-512.png",
            "a-feedbead",
        ] {
            assert!(!is_hashed(name), "{name}");
        }
    }

    #[test]
    fn the_policy_allows_nothing_unsafe_but_the_compiling_of_wasm() {
        let policy = policy(&["let a;".to_string()]);
        assert!(!policy.contains("unsafe-inline") && !policy.contains("'unsafe-eval'"), "{policy}");
        // Source: published. The hash of `alert('Hello, world.');` in the W3C's Content Security Policy Level 2, 4.2.5.
        let published = super::policy(&["alert('Hello, world.');".to_string()]);
        assert!(published.contains("'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='"), "{published}");
    }

    #[test]
    fn both_ready_settings_carry_every_header() {
        for settings in [nginx(&policy(&[])), apache(&policy(&[]))] {
            for (name, _) in ALWAYS {
                assert!(settings.contains(name), "{name} in\n{settings}");
            }
            assert!(
                settings.contains("frame-ancestors 'none'") && settings.contains("immutable"),
                "{settings}"
            );
        }
    }
}
