//! `steady serve`: the core behind a browser on this computer, and on this computer alone.
//!
//! Here is the listening and the start; what is answered is in [`routes`], who is let in in [`guard`].

mod browser;
mod files;
mod guard;
mod reply;
mod routes;
mod secret;

use std::convert::Infallible;
use std::io;
use std::net::Ipv4Addr;
use std::sync::Arc;
use std::time::Duration;

use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use steady_core::app::Steady;
use steady_core::app::failure::Failure;
use tokio::net::{TcpListener, TcpStream};

use crate::args::Serve;
use crate::{fault, house, say};
use guard::Guard;
use secret::Secret;

/// A browser sends a request's head at once; whoever does not is cut off.
const HEAD_TIMEOUT: Duration = Duration::from_secs(10);
/// After a failed accept (no file handles left) the desk waits before it tries again.
const ACCEPT_PAUSE: Duration = Duration::from_millis(100);

/// What every connection shares.
pub struct Desk {
    steady: Steady,
    guard: Guard,
}

/// Runs the command until the process is ended.
pub fn run(how: &Serve) -> Result<(), Failure> {
    let steady = house::open(&house::data_dir(how.data.as_deref())?)?;
    // One thread carries the connections; the core is called on threads for blocking work.
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
    runtime.map_err(|_| fault::internal())?.block_on(serve(steady, how))
}

async fn serve(steady: Steady, how: &Serve) -> Result<(), Failure> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, how.port)).await.map_err(|e| port_taken(&e))?;
    let port = listener.local_addr().map_err(|e| port_taken(&e))?.port();
    let secret = Secret::fresh()?;
    let address = format!("http://127.0.0.1:{port}/#key={}", secret.as_text());
    let desk = Arc::new(Desk { steady, guard: Guard::new(port, secret) });

    say::line(&address);
    if files::is_empty() {
        say::aside(files::HOW_TO_BUILD);
    }
    if !how.no_open {
        browser::open(&address);
    }
    loop {
        match listener.accept().await {
            Ok((stream, _)) => {
                tokio::spawn(answer(stream, Arc::clone(&desk)));
            }
            Err(_) => tokio::time::sleep(ACCEPT_PAUSE).await,
        }
    }
}

async fn answer(stream: TcpStream, desk: Arc<Desk>) {
    let service = service_fn(move |request| {
        let desk = Arc::clone(&desk);
        async move { Ok::<_, Infallible>(routes::answer(&desk, request).await) }
    });
    // A connection that breaks off concerns only the browser at its other end.
    let _ = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(HEAD_TIMEOUT)
        .serve_connection(TokioIo::new(stream), service)
        .await;
}

fn port_taken(error: &io::Error) -> Failure {
    fault::failure(
        "port-taken",
        format!("the port on 127.0.0.1: {}", fault::cause(error)),
        "Give another with --port N, or leave --port out to take a free one.",
    )
}
