//! The replies of the desk and the headers that all of them carry.

use std::io::{self, Read as _};
use std::pin::Pin;
use std::task::{Context, Poll};

use http_body_util::{Either, Full};
use hyper::body::{Body, Bytes, Frame};
use hyper::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, CONTENT_TYPE, HeaderName, HeaderValue, REFERRER_POLICY,
    X_CONTENT_TYPE_OPTIONS, X_FRAME_OPTIONS,
};
use hyper::{Response, StatusCode};
use steady_core::app::failure::Failure;
use steady_core::store::outgoing::OutgoingFile;
use tokio::sync::mpsc;

/// A reply, whole or in pieces.
pub type Reply = Response<Either<Full<Bytes>, Pieces>>;

/// A file on its way to a browser, piece by piece, however long it is.
pub struct Pieces(mpsc::Receiver<io::Result<Bytes>>);

/// What is read of a file at once, bytes.
const PIECE: usize = 64 * 1024;
/// Pieces that wait for a slow browser; the reading waits with them.
const AHEAD: usize = 2;

impl Body for Pieces {
    type Data = Bytes;
    type Error = io::Error;

    fn poll_frame(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
    ) -> Poll<Option<io::Result<Frame<Bytes>>>> {
        self.0.poll_recv(context).map(|piece| piece.map(|piece| piece.map(Frame::data)))
    }
}

/// A file's bytes, read on a thread that may wait for the disk and ends with the connection.
pub fn file(mut file: OutgoingFile) -> Reply {
    let (to, pieces) = mpsc::channel(AHEAD);
    tokio::task::spawn_blocking(move || {
        let mut next = || {
            let mut piece = vec![0; PIECE];
            let read = file.read(&mut piece).map(|length| piece.truncate(length));
            read.map(|()| Bytes::from(piece))
        };
        loop {
            let piece = next();
            let is_end = piece.as_ref().is_ok_and(Bytes::is_empty);
            let is_last = is_end || piece.is_err();
            if is_end || to.blocking_send(piece).is_err() || is_last {
                return;
            }
        }
    });
    headed(StatusCode::OK, "application/octet-stream", Either::Right(Pieces(pieces)))
}

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
    headed(status, kind, Either::Left(Full::new(body.into())))
}

fn headed(status: StatusCode, kind: &'static str, body: Either<Full<Bytes>, Pieces>) -> Reply {
    let mut reply = Response::new(body);
    *reply.status_mut() = status;
    let headers = reply.headers_mut();
    headers.insert(CONTENT_TYPE, HeaderValue::from_static(kind));
    for (name, value) in ALWAYS {
        headers.insert(name, HeaderValue::from_static(value));
    }
    reply
}

/// Bytes that tell nothing of anybody and that the browser may keep for a day.
pub fn cacheable(kind: &'static str, body: impl Into<Bytes>) -> Reply {
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
