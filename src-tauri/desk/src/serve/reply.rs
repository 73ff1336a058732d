//! The replies of the desk and the headers that all of them carry.

use http_body_util::Full;
use hyper::body::Bytes;
use hyper::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, CONTENT_TYPE, HeaderName, HeaderValue, REFERRER_POLICY,
    X_CONTENT_TYPE_OPTIONS, X_FRAME_OPTIONS,
};
use hyper::{Response, StatusCode};
use steady_core::app::failure::Failure;

/// A whole reply.
pub type Reply = Response<Full<Bytes>>;

/// The page may load its own parts, show photos and hand out a PDF it holds; nothing else, nowhere else.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; \
    img-src 'self' blob: data:; connect-src 'self'; base-uri 'none'; form-action 'none'; \
    frame-ancestors 'none'";

/// Headers of every reply.
const ALWAYS: [(HeaderName, &str); 7] = [
    (CONTENT_SECURITY_POLICY, POLICY),
    (CACHE_CONTROL, "no-store"),
    (X_CONTENT_TYPE_OPTIONS, "nosniff"),
    (X_FRAME_OPTIONS, "DENY"),
    (REFERRER_POLICY, "no-referrer"),
    (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
    (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
];

/// A reply with these bytes.
pub fn with(status: StatusCode, kind: &'static str, body: impl Into<Bytes>) -> Reply {
    let mut reply = Response::new(Full::new(body.into()));
    *reply.status_mut() = status;
    let headers = reply.headers_mut();
    headers.insert(CONTENT_TYPE, HeaderValue::from_static(kind));
    for (name, value) in ALWAYS {
        headers.insert(name, HeaderValue::from_static(value));
    }
    reply
}

/// Bytes that tell nothing of anybody and that the browser may keep for a day.
pub fn kept(kind: &'static str, body: impl Into<Bytes>) -> Reply {
    let mut reply = with(StatusCode::OK, kind, body);
    reply.headers_mut().insert(CACHE_CONTROL, HeaderValue::from_static("private, max-age=86400"));
    reply
}

/// JSON that is already written.
pub fn json(status: StatusCode, text: String) -> Reply {
    with(status, "application/json", text)
}

/// A failure as JSON.
pub fn failure(status: StatusCode, failure: &Failure) -> Reply {
    json(status, serde_json::to_string(failure).unwrap_or_default())
}
