//! The built app on loopback, by the tool that built it.

use crate::process::Process;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A serving process.
#[derive(Debug)]
pub struct Server {
    process: Process,
    folder: PathBuf,
    address: String,
}

impl Server {
    /// Serves the built app on a free port.
    ///
    /// # Panics
    /// Nothing was built yet.
    #[must_use]
    pub fn start() -> Self {
        Self::of(&dist())
    }

    /// Serves a folder on a free port.
    ///
    /// # Panics
    /// As [`Self::start`].
    #[must_use]
    pub fn of(folder: &Path) -> Self {
        let (process, address) = serve(folder, "0");
        Self { process, folder: folder.to_owned(), address }
    }

    /// Where it serves.
    #[must_use]
    pub fn url(&self) -> &str {
        &self.address
    }

    /// Ends the process at once.
    pub fn kill(&mut self) {
        self.process.kill();
    }

    /// Serves again where it served before.
    ///
    /// # Panics
    /// The port was taken by another.
    pub fn again(&mut self) {
        let port = self.address.trim_end_matches('/').rsplit(':').next().unwrap_or_default();
        self.process = serve(&self.folder, port).0;
    }
}

/// The folder of the built app.
#[must_use]
pub fn dist() -> PathBuf {
    std::env::var_os("PITLEAF_DIST")
        .map_or_else(|| Path::new(env!("CARGO_MANIFEST_DIR")).join("../dist"), PathBuf::from)
}

/// Beside the folder that holds this test.
fn tool() -> PathBuf {
    let test = std::env::current_exe().expect("the place of this test");
    test.ancestors().nth(2).expect("a target folder").join("pitleaf-build")
}

fn serve(folder: &Path, port: &str) -> (Process, String) {
    let tool = tool();
    assert!(
        tool.is_file() && folder.is_dir(),
        "{} or {} is missing: cargo run -p pitleaf-build -- build makes both",
        tool.display(),
        folder.display()
    );
    Process::start(
        Command::new(tool).args(["serve", "--port", port, "--dir"]).arg(folder),
        |line| line.strip_prefix("serving ").map(str::to_owned),
    )
}
