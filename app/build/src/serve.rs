//! A finished folder on loopback, for trying out and for tests.

use anyhow::{Context, Result, ensure};
use axum::Router;
use axum::http::{HeaderValue, header};
use std::io::Write as _;
use std::path::Path;
use tokio::net::TcpListener;
use tower_http::compression::CompressionLayer;
use tower_http::services::ServeDir;
use tower_http::set_header::SetResponseHeaderLayer;

/// Serves until the process is ended, and says where on the standard output.
///
/// # Errors
/// The folder is missing or the port is taken.
#[tokio::main(flavor = "current_thread")]
pub(crate) async fn serve(folder: &Path, port: u16) -> Result<()> {
    ensure!(folder.is_dir(), "there is no folder {}; build first", folder.display());
    let listener = TcpListener::bind(("127.0.0.1", port))
        .await
        .with_context(|| format!("port {port} can't be opened"))?;
    println!("serving http://{}/", listener.local_addr()?);
    std::io::stdout().flush()?;
    Ok(axum::serve(listener, files(folder)).await?)
}

/// The folder's files; a browser must ask each time whether they are still the same.
fn files(folder: &Path) -> Router {
    let no_cache = HeaderValue::from_static("no-cache");
    Router::new()
        .fallback_service(ServeDir::new(folder))
        // As a host does: what the phone waits for is the packed bytes.
        .layer(CompressionLayer::new())
        .layer(SetResponseHeaderLayer::overriding(header::CACHE_CONTROL, no_cache))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read as _;
    use std::net::{SocketAddr, TcpStream};
    use std::time::Duration;
    use tempfile::TempDir;

    /// A folder with something beside it, and where it is served.
    fn served() -> (TempDir, SocketAddr) {
        let outside = tempfile::tempdir().expect("a folder for this test");
        let folder = outside.path().join("dist");
        std::fs::create_dir(&folder).expect("a folder");
        for name in [
            "secret.txt",
            "dist/index.html",
            "dist/a.wasm",
            "dist/a.js",
            "dist/a.css",
            "dist/a.svg",
            "dist/a.png",
            "dist/a.woff2",
            "dist/a.webmanifest",
        ] {
            std::fs::write(outside.path().join(name), name).expect("a file");
        }
        let (tell, told) = std::sync::mpsc::channel();
        std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
            runtime.expect("a runtime").block_on(async {
                let listener = TcpListener::bind("127.0.0.1:0").await.expect("a port");
                tell.send(listener.local_addr().expect("its address")).expect("told");
                axum::serve(listener, files(&folder)).await.expect("serving");
            });
        });
        (outside, told.recv().expect("an address"))
    }

    fn connect(address: SocketAddr) -> TcpStream {
        let stream = TcpStream::connect(address).expect("a connection");
        stream.set_read_timeout(Some(Duration::from_secs(20))).expect("a limit to waiting");
        stream
    }

    fn ask(stream: &mut TcpStream, target: &str) {
        write!(stream, "GET {target} HTTP/1.1\r\nHost: here\r\n\r\n").expect("asked");
    }

    /// Status line and headers, in small letters.
    fn head(stream: &mut TcpStream) -> String {
        let mut bytes = [0; 2048];
        let count = stream.read(&mut bytes).expect("an answer");
        String::from_utf8_lossy(&bytes[..count]).to_lowercase()
    }

    fn answer(address: SocketAddr, target: &str) -> String {
        let mut stream = connect(address);
        ask(&mut stream, target);
        head(&mut stream)
    }

    #[test]
    fn only_what_is_in_the_folder_is_served() {
        let (_folder, address) = served();
        for target in ["/", "/?a=b", "/index.html", "/a.js?again"] {
            let head = answer(address, target);
            assert!(head.starts_with("http/1.1 200 "), "for {target}: {head}");
            assert!(head.contains("cache-control: no-cache"), "for {target}: {head}");
        }
        for target in ["/b.js", "/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt"] {
            let head = answer(address, target);
            assert!(!head.starts_with("http/1.1 200 "), "for {target}: {head}");
            assert!(!head.contains("secret"), "for {target}: {head}");
        }
    }

    #[test]
    fn browsers_are_strict_about_these_kinds() {
        let (_folder, address) = served();
        for (name, kind) in [
            ("index.html", "text/html"),
            ("a.wasm", "application/wasm"),
            ("a.js", "text/javascript"),
            ("a.css", "text/css"),
            ("a.svg", "image/svg+xml"),
            ("a.png", "image/png"),
            ("a.woff2", "font/woff2"),
            ("a.webmanifest", "application/manifest+json"),
        ] {
            let head = answer(address, &format!("/{name}"));
            assert!(head.contains(&format!("content-type: {kind}")), "for {name}: {head}");
        }
    }

    /// A browser opens six connections at once and keeps each: none may wait for another to close.
    #[test]
    fn connections_kept_open_hold_up_no_other() {
        let (_folder, address) = served();
        let mut streams: Vec<TcpStream> = (0..32).map(|_| connect(address)).collect();
        for stream in &mut streams {
            ask(stream, "/");
        }
        for stream in &mut streams {
            let head = head(stream);
            assert!(head.starts_with("http/1.1 200 "), "{head}");
        }
    }
}
