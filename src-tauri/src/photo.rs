//! The `photo` protocol: `photo://localhost/SHA256/SIZE`, for reading and for nothing else.
//!
//! Bytes come from the core by hash, never from a path, so there is no folder to escape from.

use steady_core::app::photo_address;
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
    // The webview sends the slash between hash and size escaped.
    let address = request.uri().path().trim_start_matches('/').replace("%2F", "/");
    let photo =
        photo_address(&address).and_then(|(sha256, size)| house::steady(app).ok()?.photo(sha256, size).ok());
    match photo {
        Some(jpeg) => with(StatusCode::OK, jpeg),
        None => with(StatusCode::NOT_FOUND, Vec::new()),
    }
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
