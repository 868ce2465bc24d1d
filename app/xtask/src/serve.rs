//! `cargo xtask serve`: the release build on this machine, as a good static host would serve it: compressed
//! copies, right types, the headers of `headers.rs`, in any sub-folder. A few lines of HTTP/1.1 over the standard
//! library: enough for a browser on the same desk, not for the open internet (it listens on this machine only).

use crate::headers::{ALWAYS, cache_control, media_type, policy_as_header};
use crate::setup::{Need, set_up};
use crate::shell::{Done, read};
use sha2::{Digest, Sha256};
use std::io::{BufRead, BufReader, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

const USAGE: &str = "cargo xtask serve [--port N] [--base /folder/] [--dist FOLDER] [--built]";

/// What is served, and where.
struct Site {
    dist: PathBuf,
    /// Begins and ends with a slash.
    base: String,
    /// The policy of the build, as a header.
    policy: String,
}

struct Options {
    port: u16,
    base: String,
    dist: PathBuf,
    built: bool,
}

struct Request {
    method: String,
    /// Without its query.
    path: String,
    brotli: bool,
    known: Option<String>,
    stays_open: bool,
}

struct Answer {
    status: &'static str,
    headers: Vec<(&'static str, String)>,
    body: Vec<u8>,
}

/// Builds, unless told that it is built, and serves until it is stopped. The first line printed is the address.
pub fn command(words: &[&str]) -> Done {
    let options = options(words)?;
    if !options.built {
        set_up(Need::Build)?;
        crate::build::release()?;
    }
    let listener = TcpListener::bind(("127.0.0.1", options.port))
        .map_err(|why| format!("port {}: {why}; another one: --port 0", options.port))?;
    let port = listener.local_addr().map_err(|why| why.to_string())?.port();
    let policy = policy_of(&read(&options.dist.join("index.html"))?);
    let site = Arc::new(Site { dist: options.dist, base: options.base, policy });
    println!("http://localhost:{port}{}", site.base);
    for stream in listener.incoming().flatten() {
        let site = Arc::clone(&site);
        std::thread::spawn(move || {
            // A browser that goes away in the middle of an answer is no fault of ours.
            let _ = converse(&site, &stream);
        });
    }
    Ok(())
}

fn options(words: &[&str]) -> Done<Options> {
    let mut options = Options { port: 8080, base: "/".into(), dist: crate::build::dist(), built: false };
    let mut rest = words.iter();
    while let Some(word) = rest.next() {
        let mut value = || rest.next().copied().ok_or_else(|| format!("{word} wants a value\n{USAGE}"));
        match *word {
            "--port" => {
                options.port = value()?.parse().map_err(|_| format!("--port wants a number\n{USAGE}"))?
            }
            "--base" => options.base = with_slashes(value()?),
            "--dist" => options.dist = value()?.into(),
            "--built" => options.built = true,
            _ => return Err(USAGE.into()),
        }
    }
    Ok(options)
}

fn with_slashes(base: &str) -> String {
    match base.trim_matches('/') {
        "" => "/".to_string(),
        inner => format!("/{inner}/"),
    }
}

/// The policy stands in the page; it is sent as a header too, so that it holds before the page is read.
fn policy_of(html: &str) -> String {
    let content = html.split_once("http-equiv=\"Content-Security-Policy\" content=\"").map(|(_, rest)| rest);
    content
        .and_then(|rest| rest.split_once('"'))
        .map(|(policy, _)| policy_as_header(policy))
        .unwrap_or_default()
}

/// One connection: as many requests as the browser likes to send over it.
fn converse(site: &Site, stream: &TcpStream) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(60)))?;
    stream.set_nodelay(true)?;
    let mut reader = BufReader::new(stream);
    while let Some(request) = request(&mut reader)? {
        let answer = site.answer(&request);
        send(stream, &request, &answer)?;
        if !request.stays_open {
            break;
        }
    }
    Ok(())
}

/// The next request, or none when the browser has closed. Bodies are not read: nothing here takes one.
fn request(reader: &mut impl BufRead) -> std::io::Result<Option<Request>> {
    let mut line = String::new();
    if reader.read_line(&mut line)? == 0 {
        return Ok(None);
    }
    let mut words = line.split_whitespace();
    let method = words.next().unwrap_or_default().to_string();
    let target = words.next().unwrap_or_default();
    let path = target.split(['?', '#']).next().unwrap_or_default().to_string();
    let mut request = Request { method, path, brotli: false, known: None, stays_open: true };
    loop {
        let mut header = String::new();
        if reader.read_line(&mut header)? == 0 || header.trim().is_empty() {
            return Ok(Some(request));
        }
        let (name, value) = header.split_once(':').unwrap_or((&header, ""));
        match name.to_ascii_lowercase().as_str() {
            "accept-encoding" => {
                request.brotli = value.split(',').any(|coding| coding.trim().starts_with("br"))
            }
            "if-none-match" => request.known = Some(value.trim().to_string()),
            "connection" => request.stays_open = !value.trim().eq_ignore_ascii_case("close"),
            _ => {}
        }
    }
}

impl Site {
    fn answer(&self, request: &Request) -> Answer {
        if !matches!(request.method.as_str(), "GET" | "HEAD") {
            return plain("405 Method Not Allowed", "only GET and HEAD");
        }
        if format!("{}/", request.path) == self.base {
            return Answer {
                status: "308 Permanent Redirect",
                headers: vec![("Location", self.base.clone())],
                body: vec![],
            };
        }
        match self.file(&request.path) {
            Some(file) => self.content(&file, request),
            None => plain("404 Not Found", "nothing here"),
        }
    }

    /// The file at a path: below the base, below `dist`, and not one of the hidden ones.
    fn file(&self, path: &str) -> Option<PathBuf> {
        let name = path.strip_prefix(&self.base)?;
        let name = if name.is_empty() { "index.html" } else { name };
        let plain = name
            .split('/')
            .all(|piece| !piece.is_empty() && !piece.starts_with('.') && !piece.contains('\\'));
        let file = self.dist.join(name);
        (plain && file.is_file()).then_some(file)
    }

    fn content(&self, file: &Path, request: &Request) -> Answer {
        let compressed = PathBuf::from(format!("{}.br", file.display()));
        let brotli = request.brotli && compressed.is_file();
        let Ok(body) = std::fs::read(if brotli { &compressed } else { file }) else {
            return plain("404 Not Found", "nothing here");
        };
        let name = file.to_string_lossy();
        let tag: String = format!("{:x}", Sha256::digest(&body)).chars().take(20).collect();
        let tag = format!("\"{tag}\"");
        let mut headers: Vec<_> = ALWAYS.iter().map(|(name, value)| (*name, (*value).to_string())).collect();
        headers.push(("Content-Type", media_type(&name).to_string()));
        headers.push(("Cache-Control", cache_control(&name).to_string()));
        headers.push(("Vary", "Accept-Encoding".to_string()));
        headers.push(("ETag", tag.clone()));
        if !self.policy.is_empty() {
            headers.push(("Content-Security-Policy", self.policy.clone()));
        }
        if request.known.as_deref() == Some(tag.as_str()) {
            return Answer { status: "304 Not Modified", headers, body: vec![] };
        }
        if brotli {
            headers.push(("Content-Encoding", "br".to_string()));
        }
        Answer { status: "200 OK", headers, body }
    }
}

fn plain(status: &'static str, words: &str) -> Answer {
    Answer {
        status,
        headers: vec![("Content-Type", media_type("a.txt").to_string())],
        body: words.as_bytes().to_vec(),
    }
}

fn send(mut stream: &TcpStream, request: &Request, answer: &Answer) -> std::io::Result<()> {
    let mut head = format!("HTTP/1.1 {}\r\nContent-Length: {}\r\n", answer.status, answer.body.len());
    for (name, value) in &answer.headers {
        head.push_str(&format!("{name}: {value}\r\n"));
    }
    head.push_str("\r\n");
    let mut whole = head.into_bytes();
    if request.method == "GET" {
        whole.extend_from_slice(&answer.body);
    }
    stream.write_all(&whole)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn site() -> Site {
        let dist = crate::shell::scratch();
        crate::shell::write(&dist.join("index.html"), "page").unwrap();
        crate::shell::write(&dist.join("index.html.br"), "small").unwrap();
        crate::shell::write(&dist.join("a-0123456789abcdef_bg.wasm"), "program").unwrap();
        Site { dist, base: "/deep/folder/".into(), policy: "default-src 'none'".into() }
    }

    fn get(path: &str, more: &str) -> Answer {
        let text = format!("GET {path} HTTP/1.1\r\n{more}\r\n");
        site().answer(&request(&mut text.as_bytes()).unwrap().unwrap())
    }

    fn header(answer: &Answer, name: &str) -> String {
        answer
            .headers
            .iter()
            .find(|(key, _)| *key == name)
            .map(|(_, value)| value.clone())
            .unwrap_or_default()
    }

    #[test]
    fn the_page_answers_at_every_address_of_its_folder_compressed_where_the_browser_can() {
        let page = get("/deep/folder/?at=build-7", "Accept-Encoding: gzip, br\r\n");
        assert_eq!((page.status, page.body.as_slice()), ("200 OK", b"small".as_slice()));
        assert_eq!(header(&page, "Content-Encoding"), "br");
        assert_eq!(header(&page, "Cache-Control"), "no-cache");
        assert_eq!(header(&page, "Content-Security-Policy"), "default-src 'none'");
        assert_eq!(get("/deep/folder/", "").body, b"page");
    }

    #[test]
    fn the_program_is_wasm_and_kept_for_ever() {
        let program = get("/deep/folder/a-0123456789abcdef_bg.wasm", "");
        assert_eq!(header(&program, "Content-Type"), "application/wasm");
        assert!(header(&program, "Cache-Control").contains("immutable"));
    }

    #[test]
    fn what_the_browser_has_is_not_sent_again() {
        let tag = header(&get("/deep/folder/", ""), "ETag");
        let again = get("/deep/folder/", &format!("If-None-Match: {tag}\r\n"));
        assert_eq!((again.status, again.body.len()), ("304 Not Modified", 0));
    }

    #[test]
    fn nothing_outside_the_folder_is_served() {
        for path in
            ["/", "/deep/folder/../serve.rs", "/deep/folder/.htaccess", "/deep/folder//etc/passwd", "/other/"]
        {
            assert_eq!(get(path, "").status, "404 Not Found", "{path}");
        }
        assert_eq!(get("/deep/folder", "").status, "308 Permanent Redirect");
    }
}
