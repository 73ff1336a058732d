//! The UI's files, compiled in by the build script from `ui/dist`. Nothing is read from disk.

use hyper::StatusCode;

use super::reply::{self, Reply};
use super::routes;

/// Address and bytes of each file.
static FILES: &[(&str, &[u8])] = include!(concat!(env!("OUT_DIR"), "/ui_files.rs"));

/// What a browser asks for unasked. The page names no icon: one that it named would be fetched and drawn anew at
/// every change of screen.
const TAB_ICON: &[u8] = include_bytes!("../../../../icons/icon.ico");

/// What to say where the UI was not built.
pub const HOW_TO_BUILD: &str = "The screens are not built in. Build them, then Steady again:\n    \
    npm --prefix ui ci && npm --prefix ui run build && cargo build --locked --package steady\n\
    or let `cargo xtask run` do all of it.";

/// Whether this binary was built without the UI.
pub fn is_empty() -> bool {
    FILES.is_empty()
}

/// What others made and its licences; none where the UI was not built.
pub fn notices() -> Option<&'static str> {
    let (_, bytes) = FILES.iter().find(|(name, _)| *name == "/notices.txt")?;
    std::str::from_utf8(bytes).ok()
}

/// The file at an address.
pub fn reply(path: &str) -> Reply {
    let address = match path {
        "/" => "/index.html",
        "/favicon.ico" => return reply::cacheable(kind(path), TAB_ICON),
        _ => path,
    };
    match FILES.iter().find(|(name, _)| *name == address) {
        Some((name, bytes)) => reply::with(StatusCode::OK, kind(name), *bytes),
        None if is_empty() && path == "/" => {
            reply::with(StatusCode::SERVICE_UNAVAILABLE, "text/plain; charset=utf-8", HOW_TO_BUILD)
        }
        None => routes::not_found(),
    }
}

fn kind(name: &str) -> &'static str {
    match name.rsplit_once('.').map(|(_, ending)| ending) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("ico") => "image/x-icon",
        Some("woff2") => "font/woff2",
        Some("ttf") => "font/ttf",
        Some("json" | "webmanifest") => "application/json",
        Some("ftl" | "txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}
