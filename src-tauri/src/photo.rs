//! The `photo` protocol: `photo://localhost/SHA256/SIZE`, for reading and for nothing else.
//!
//! Bytes come from the core by hash, never from a path, so there is no folder to escape from.

use steady_core::app::PhotoSize;
use tauri::http::header::{CACHE_CONTROL, CONTENT_TYPE, HeaderValue, X_CONTENT_TYPE_OPTIONS};
use tauri::http::{Method, Request, Response, StatusCode};
use tauri::{AppHandle, Runtime, UriSchemeContext, UriSchemeResponder};

use crate::house;

/// The protocol's name; on Android and Windows it is a host name, `http://photo.localhost`.
pub const SCHEME: &str = "photo";

/// Answers one request, on a thread that may wait for the disk.
pub fn answer<R: Runtime>(
    context: UriSchemeContext<'_, R>,
    request: Request<Vec<u8>>,
    responder: UriSchemeResponder,
) {
    let app = context.app_handle().clone();
    tauri::async_runtime::spawn_blocking(move || responder.respond(reply(&app, &request)));
}

fn reply<R: Runtime>(app: &AppHandle<R>, request: &Request<Vec<u8>>) -> Response<Vec<u8>> {
    if request.method() != Method::GET {
        return with(StatusCode::METHOD_NOT_ALLOWED, Vec::new());
    }
    match named(request.uri().path())
        .and_then(|(sha256, size)| house::steady(app).ok()?.photo(&sha256, size).ok())
    {
        Some(jpeg) => with(StatusCode::OK, jpeg),
        None => with(StatusCode::NOT_FOUND, Vec::new()),
    }
}

/// Reads `/SHA256/SIZE`; the webview sends the slash between them escaped.
fn named(path: &str) -> Option<(String, PhotoSize)> {
    let path = path.strip_prefix('/')?.replace("%2F", "/");
    let (sha256, size) = path.split_once('/')?;
    let size = match size {
        "thumb" => PhotoSize::Thumb,
        "full" => PhotoSize::Full,
        _ => return None,
    };
    let is_hash = sha256.len() == 64 && sha256.bytes().all(|digit| digit.is_ascii_hexdigit());
    is_hash.then(|| (sha256.to_owned(), size))
}

fn with(status: StatusCode, jpeg: Vec<u8>) -> Response<Vec<u8>> {
    let mut response = Response::new(jpeg);
    *response.status_mut() = status;
    let headers = response.headers_mut();
    headers.insert(CONTENT_TYPE, HeaderValue::from_static("image/jpeg"));
    headers.insert(X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff"));
    headers.insert(CACHE_CONTROL, HeaderValue::from_static("no-store"));
    response
}

#[cfg(test)]
mod tests {
    use super::named;

    #[test]
    fn a_photo_is_named_by_hash_and_size() {
        let hash = "0123456789abcdef".repeat(4);
        assert!(named(&format!("/{hash}/thumb")).is_some());
        assert!(named(&format!("/{hash}%2Ffull")).is_some());
        for wrong in [
            format!("/{hash}"),
            format!("/{hash}/huge"),
            format!("/{hash}%2Ffull%2F"),
            format!("/{}/full", hash.trim_end_matches('f')),
            format!("/{}/full", hash.replace('f', "g")),
            "/..%2Fledger.sqlite/full".to_owned(),
            String::new(),
        ] {
            assert!(named(&wrong).is_none(), "{wrong}");
        }
    }
}
