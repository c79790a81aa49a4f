//! Where things are in this workspace.

use std::path::PathBuf;

/// The workspace this tool was built in.
pub(crate) struct Workspace {
    root: PathBuf,
}

impl Workspace {
    /// The workspace whose `app/build` this tool was compiled from.
    pub(crate) fn here() -> Self {
        let mut root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
        root.pop();
        root.pop();
        Self { root }
    }

    /// A file or folder by its path from the top.
    pub(crate) fn at(&self, path: &str) -> PathBuf {
        self.root.join(path)
    }

    /// The finished folder.
    pub(crate) fn dist(&self) -> PathBuf {
        self.at("dist")
    }

    /// Packages that `npm ci` put down: fonts and wasm-opt.
    pub(crate) fn node_modules(&self) -> PathBuf {
        self.at("app/node_modules")
    }

    /// Cargo's folder, shared by native and WebAssembly builds.
    pub(crate) fn target(&self) -> PathBuf {
        std::env::var_os("CARGO_TARGET_DIR")
            .map_or_else(|| self.at("target"), |dir| self.root.join(dir))
    }
}
