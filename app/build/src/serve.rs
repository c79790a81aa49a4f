//! A finished folder on loopback, for trying out and for tests.

use anyhow::{Context, Result, ensure};
use std::fs;
use std::io::{Cursor, Write as _};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use tiny_http::{Header, Request, Response, Server};

/// Serves until the process is ended, and says where on the standard output.
///
/// # Errors
/// The folder is missing or the port is taken.
pub(crate) fn serve(folder: &Path, port: u16) -> Result<()> {
    ensure!(folder.is_dir(), "there is no folder {}; build first", folder.display());
    let server = Server::http(("127.0.0.1", port))
        .map_err(|error| anyhow::anyhow!("port {port} can't be opened: {error}"))?;
    let address = server.server_addr().to_ip().context("the server has no address")?;
    println!("serving http://{address}/");
    std::io::stdout().flush()?;
    let server = Arc::new(server);
    // A slow reader must not hold up the others.
    let threads: Vec<_> = (0..4)
        .map(|_| {
            let (server, folder) = (Arc::clone(&server), folder.to_owned());
            thread::spawn(move || {
                for request in server.incoming_requests() {
                    answer(&folder, request);
                }
            })
        })
        .collect();
    for thread in threads {
        thread.join().map_err(|_| anyhow::anyhow!("a serving thread has ended"))?;
    }
    Ok(())
}

fn answer(folder: &Path, request: Request) {
    let found =
        file(folder, request.url()).and_then(|path| Some((kind(&path), fs::read(path).ok()?)));
    let (status, kind, body) = match found {
        Some((kind, bytes)) => (200, kind, bytes),
        None => (404, "text/plain; charset=utf-8", b"There is no such file here.\n".to_vec()),
    };
    let length = body.len();
    let headers = [("Content-Type", kind), ("Cache-Control", "no-cache")]
        .into_iter()
        .filter_map(|(name, value)| Header::from_bytes(name, value).ok())
        .collect();
    let response = Response::new(status.into(), headers, Cursor::new(body), Some(length), None);
    // A browser that went away before the end is no fault of ours.
    let _ = request.respond(response);
}

/// The file that a request's target stands for, inside `folder` whatever the target says: only plain
/// names are known, so `..`, hidden files and escapes are simply not there.
fn file(folder: &Path, target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    let mut file = folder.to_owned();
    for segment in path.split('/').filter(|segment| !segment.is_empty()) {
        let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"-_.".contains(&byte);
        if segment.starts_with('.') || !segment.bytes().all(plain) {
            return None;
        }
        file.push(segment);
    }
    if path.is_empty() || path.ends_with('/') {
        file.push("index.html");
    }
    file.is_file().then_some(file)
}

fn kind(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("woff2") => "font/woff2",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("webmanifest") => "application/manifest+json",
        Some("json") => "application/json",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_plain_names_inside_the_folder_are_found() {
        let outside = tempfile::tempdir().expect("a folder for this test");
        let folder = outside.path().join("dist");
        fs::create_dir_all(folder.join("sub")).expect("folders");
        for name in
            ["secret.txt", "dist/index.html", "dist/a-1.js", "dist/.hidden", "dist/sub/index.html"]
        {
            fs::write(outside.path().join(name), "").expect("a file");
        }
        for (target, wanted) in [
            ("/", Some("index.html")),
            ("/?a=b", Some("index.html")),
            ("/a-1.js", Some("a-1.js")),
            ("/a-1.js?again", Some("a-1.js")),
            ("/sub/", Some("sub/index.html")),
            ("/sub", None),
            ("/b.js", None),
            ("/.hidden", None),
            ("/../secret.txt", None),
            ("/sub/../../secret.txt", None),
            ("/%2e%2e/secret.txt", None),
            ("/..%2fsecret.txt", None),
            ("/..\\secret.txt", None),
            ("//secret.txt", None),
            ("secret.txt", None),
            ("", None),
        ] {
            assert_eq!(
                file(&folder, target),
                wanted.map(|name| folder.join(name)),
                "for {target:?}"
            );
        }
    }

    #[test]
    fn browsers_are_strict_about_these_kinds() {
        for (name, wanted) in [
            ("a.wasm", "application/wasm"),
            ("a.js", "text/javascript; charset=utf-8"),
            ("a.css", "text/css; charset=utf-8"),
            ("a.webmanifest", "application/manifest+json"),
        ] {
            assert_eq!(kind(Path::new(name)), wanted, "for {name}");
        }
    }
}
