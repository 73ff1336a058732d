//! The desk's addresses: `POST /api`, `GET /photo/SHA256/SIZE`, `GET /file/ID`, and the UI's page and files.
//!
//! Each handler unpacks, makes one core call and packs. The core is called on a thread for blocking
//! work, since it waits for the disk.

use std::sync::Arc;
use std::time::Duration;

use http_body_util::{BodyExt as _, LengthLimitError, Limited};
use hyper::body::{Bytes, Incoming};
use hyper::header::{CONNECTION, CONTENT_TYPE, HeaderValue};
use hyper::{Method, Request, StatusCode};
use steady_core::app::failure::Failure;
use steady_core::app::photo_address;

use super::guests::Known;
use super::reply::{self, Reply};
use super::{Server, files};
use crate::fault;

/// Largest request body. The largest request is one piece of an upload, 512 KiB as base64.
const LARGEST_BODY: usize = 1024 * 1024;

/// Guards first, then the four addresses; never an error.
pub async fn answer(server: &Arc<Server>, known: &Known, request: Request<Incoming>) -> Reply {
    if !server.guard.knows_host(request.headers()) {
        return refuse(StatusCode::MISDIRECTED_REQUEST, "foreign-host", "the request names another host");
    }
    if !server.guard.knows_origin(request.headers()) {
        return refuse(StatusCode::FORBIDDEN, "foreign-origin", "the request comes from another page");
    }
    if server.guard.has_key(request.headers()) {
        known.note();
    }
    let path = request.uri().path().to_owned();
    match (request.method(), path.as_str()) {
        (&Method::POST, "/api") => ask(server, request).await,
        (&Method::GET, path) if path.starts_with("/photo/") => photo(server, &request, path).await,
        (&Method::GET, path) if path.starts_with("/file/") => file(server, &request, path).await,
        (&Method::GET, "/api") => {
            refuse(StatusCode::METHOD_NOT_ALLOWED, "wrong-method", "requests are posted")
        }
        (&Method::GET, path) => files::reply(path),
        _ => refuse(StatusCode::METHOD_NOT_ALLOWED, "wrong-method", "nothing here takes that method"),
    }
}

async fn ask(server: &Arc<Server>, request: Request<Incoming>) -> Reply {
    if !server.guard.has_key(request.headers()) {
        return no_key();
    }
    if request.headers().get(CONTENT_TYPE).is_none_or(|kind| kind != "application/json") {
        return refuse(StatusCode::UNSUPPORTED_MEDIA_TYPE, "not-json", "the request is not JSON");
    }
    let body = match body(request, server.patience.body).await {
        Ok(body) => body,
        Err(refused) => return refused,
    };
    let server = Arc::clone(server);
    // Bytes that are no text are no request either; the core says so.
    let asked = move || server.steady.handle_json(&String::from_utf8_lossy(&body));
    match tokio::task::spawn_blocking(asked).await {
        Ok(Ok(response)) => reply::json(StatusCode::OK, response),
        Ok(Err(failure)) => reply::json(StatusCode::UNPROCESSABLE_ENTITY, failure),
        Err(_) => reply::failure(StatusCode::INTERNAL_SERVER_ERROR, &fault::internal()),
    }
}

async fn body(request: Request<Incoming>, patience: Duration) -> Result<Bytes, Reply> {
    let body = Limited::new(request.into_body(), LARGEST_BODY).collect();
    match tokio::time::timeout(patience, body).await {
        Ok(Ok(body)) => Ok(body.to_bytes()),
        Ok(Err(error)) if error.is::<LengthLimitError>() => {
            Err(refuse(StatusCode::PAYLOAD_TOO_LARGE, "request-too-large", "the request is over 1 MiB"))
        }
        Ok(Err(_)) => Err(refuse(StatusCode::BAD_REQUEST, "request-cut-short", "the request broke off")),
        Err(_) => Err(slow()),
    }
}

/// The rest of a body that does not come is not waited for, on this connection or another.
fn slow() -> Reply {
    let mut reply = refuse(StatusCode::REQUEST_TIMEOUT, "request-too-slow", "the request did not come whole");
    reply.headers_mut().insert(CONNECTION, HeaderValue::from_static("close"));
    reply
}

async fn photo(server: &Arc<Server>, request: &Request<Incoming>, path: &str) -> Reply {
    let (guard, address) = (&server.guard, path.trim_start_matches("/photo/"));
    if !guard.has_key(request.headers()) && !guard.has_token(request.uri().query(), address) {
        return no_key();
    }
    let named = photo_address(address);
    let Some((sha256, size)) = named.map(|(sha256, size)| (sha256.to_owned(), size)) else {
        return not_found();
    };
    let server = Arc::clone(server);
    match tokio::task::spawn_blocking(move || server.steady.photo(&sha256, size)).await {
        Ok(Ok(jpeg)) => reply::with(StatusCode::OK, "image/jpeg", jpeg),
        Ok(Err(failure)) => reply::failure(StatusCode::NOT_FOUND, &failure),
        Err(_) => reply::failure(StatusCode::INTERNAL_SERVER_ERROR, &fault::internal()),
    }
}

async fn file(server: &Arc<Server>, request: &Request<Incoming>, path: &str) -> Reply {
    if !server.guard.has_key(request.headers()) {
        return no_key();
    }
    let id = path.trim_start_matches("/file/").to_owned();
    let server = Arc::clone(server);
    match tokio::task::spawn_blocking(move || server.steady.outgoing(&id)).await {
        Ok(Ok(file)) => reply::file(file),
        Ok(Err(failure)) => reply::failure(StatusCode::NOT_FOUND, &failure),
        Err(_) => reply::failure(StatusCode::INTERNAL_SERVER_ERROR, &fault::internal()),
    }
}

pub fn not_found() -> Reply {
    refuse(StatusCode::NOT_FOUND, "not-found", "there is nothing at this address")
}

fn no_key() -> Reply {
    refuse(StatusCode::UNAUTHORIZED, "no-key", "This page was opened without its key")
}

fn refuse(status: StatusCode, code: &str, message: &str) -> Reply {
    let failure: Failure = fault::failure(
        code,
        message,
        "Open the address that Steady printed when it started, key and all; if it is gone, start Steady again.",
    );
    reply::failure(status, &failure)
}
