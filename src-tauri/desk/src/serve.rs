//! `steady serve`: the core behind a browser on this computer, and on this computer alone.
//!
//! Here is the listening and the start; what is answered is in [`routes`], who is let in in [`guard`].

mod browser;
mod doorway;
mod files;
mod guard;
mod guests;
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
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::TcpListener;

use crate::args::Serve;
use crate::{fault, house, say};
use doorway::Doorway;
use guard::Guard;
use guests::{Guests, Known};
use secret::Secret;

/// A browser on the same computer sends a request at once; whoever does not is cut off.
const PATIENCE: Patience = Patience { head: Duration::from_secs(10), body: Duration::from_secs(30) };
/// After a failed accept (no file handles left) the desk waits before it tries again.
const ACCEPT_PAUSE: Duration = Duration::from_millis(100);

/// For how long the desk waits for each part of a request.
pub struct Patience {
    head: Duration,
    body: Duration,
}

/// What every connection shares.
pub struct Server {
    steady: Steady,
    guard: Guard,
    patience: Patience,
}

/// Runs the command until the process is ended.
pub fn run(how: &Serve) -> Result<(), Failure> {
    let data_dir = house::data_dir(how.data.as_deref(), house::Begin::new(how.new))?;
    let steady = house::open(&data_dir)?;
    let doorway = Doorway::of(&data_dir)?;
    // One thread carries the connections; the core is called on threads for blocking work.
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
    runtime.map_err(|_| fault::internal())?.block_on(serve(steady, &doorway, how))
}

/// Prints what others made and its licences, as they came with the screens.
pub fn notices() -> Result<(), Failure> {
    let text = files::notices().ok_or_else(|| {
        fault::failure(
            "no-notices",
            "this program was built without the screens, and the notices come with them",
            files::HOW_TO_BUILD,
        )
    })?;
    say::line(text);
    Ok(())
}

async fn serve(steady: Steady, doorway: &Doorway, how: &Serve) -> Result<(), Failure> {
    let listener = listen(doorway, how.port).await.map_err(|e| port_taken(&e))?;
    let port = listener.local_addr().map_err(|e| port_taken(&e))?.port();
    let secret = Secret::fresh()?;
    let address = format!("http://127.0.0.1:{port}/#key={}", secret.as_text());
    let page = doorway.page(&address)?;
    let server = Arc::new(Server { steady, guard: Guard::new(port, secret), patience: PATIENCE });

    say::line(&address);
    if files::is_empty() {
        say::note(files::HOW_TO_BUILD);
    }
    if !how.no_open {
        browser::open(&page);
    }
    let mut guests = Guests::default();
    loop {
        match listener.accept().await {
            Ok((stream, _)) if guests.make_room() => {
                let known = Known::default();
                let task = tokio::spawn(answer(stream, Arc::clone(&server), known.clone()));
                guests.admit(known, task.abort_handle());
            }
            Ok(_) => {}
            Err(_) => tokio::time::sleep(ACCEPT_PAUSE).await,
        }
    }
}

/// At the port that was asked for; else at the one this data folder was served at before, else at a free one.
async fn listen(doorway: &Doorway, asked: u16) -> io::Result<TcpListener> {
    let bind = |port| TcpListener::bind((Ipv4Addr::LOCALHOST, port));
    if asked == 0
        && let Some(port) = doorway.port()
    {
        match bind(port).await {
            Ok(listener) => return Ok(listener),
            Err(_) => say::note(&format!(
                "Port {port}, where a browser keeps what was typed here and not sent, is taken; this once it is another."
            )),
        }
        return bind(0).await;
    }
    let listener = bind(asked).await?;
    doorway.remember(listener.local_addr()?.port());
    Ok(listener)
}

async fn answer(stream: impl AsyncRead + AsyncWrite + Unpin, server: Arc<Server>, known: Known) {
    let head = server.patience.head;
    let service = service_fn(move |request| {
        let (server, known) = (Arc::clone(&server), known.clone());
        async move { Ok::<_, Infallible>(routes::answer(&server, &known, request).await) }
    });
    // A connection that breaks off concerns only the browser at its other end.
    let _ = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(head)
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

#[cfg(test)]
mod tests {
    use std::sync::Arc;
    use std::time::Duration;

    use steady_core::app::{Setup, Steady};
    use steady_core::model::time::Moment;
    use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _, DuplexStream, duplex};

    use super::doorway::Doorway;
    use super::guard::Guard;
    use super::guests::Known;
    use super::secret::Secret;
    use super::{Patience, Server, answer, listen};

    /// A server of little patience, that a test speaks to without a network.
    fn server() -> (tempfile::TempDir, Arc<Server>, String) {
        let data = tempfile::tempdir().expect("a folder");
        let press = Arc::new(steady_papers::press().expect("fonts"));
        let setup = Setup { data_dir: data.path().to_owned(), press, clock: Moment::now };
        let secret = Secret::fresh().expect("random bytes");
        let key = secret.as_text().to_owned();
        let patience = Patience { head: Duration::from_millis(100), body: Duration::from_millis(100) };
        let steady = Steady::open(setup).expect("opens");
        let server = Server { steady, guard: Guard::new(8123, secret), patience };
        (data, Arc::new(server), key)
    }

    fn connected(server: &Arc<Server>) -> DuplexStream {
        let (ours, theirs) = duplex(4_096);
        tokio::spawn(answer(theirs, Arc::clone(server), Known::default()));
        ours
    }

    /// What comes back until the desk hangs up, though nothing more is sent.
    async fn told(mut stream: DuplexStream, sent: &str) -> String {
        stream.write_all(sent.as_bytes()).await.expect("sent");
        let mut reply = String::new();
        stream.read_to_string(&mut reply).await.expect("hung up");
        reply
    }

    fn wait_for<T>(work: impl Future<Output = T>) -> T {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
        runtime.expect("a runtime").block_on(work)
    }

    #[test]
    fn whoever_sends_no_whole_head_is_cut_off() {
        let (_data, server, _) = server();
        for sent in ["", "GET / HTTP/1.1\r\nHost: 127.0", "GET / HTTP/1.1\r\nHost: 127.0.0.1:8123\r\nX: "] {
            let reply = wait_for(async { told(connected(&server), sent).await });
            assert!(!reply.contains(" 200 "), "{sent}: {reply}");
        }
    }

    #[test]
    fn whoever_sends_no_whole_body_is_told_and_cut_off() {
        let (_data, server, key) = server();
        let head = format!(
            "POST /api HTTP/1.1\r\nHost: 127.0.0.1:8123\r\nX-Steady-Key: {key}\r\n\
             Content-Type: application/json\r\nContent-Length: 15\r\n\r\n{{\"ask\":"
        );
        let reply = wait_for(async { told(connected(&server), &head).await });
        assert!(reply.starts_with("HTTP/1.1 408 ") && reply.contains("request-too-slow"), "{reply}");
    }

    #[test]
    fn data_folder_is_served_at_one_port() {
        wait_for(ports());
    }

    async fn ports() {
        let data = tempfile::tempdir().expect("a folder");
        let doorway = Doorway::of(data.path()).expect("a folder of its own");
        let first = listen(&doorway, 0).await.expect("a free port");
        let port = first.local_addr().expect("an address").port();
        let meanwhile = listen(&doorway, 0).await.expect("another, while it is taken");
        assert_ne!(meanwhile.local_addr().expect("an address").port(), port);
        drop(first);
        let again = listen(&doorway, 0).await.expect("the port");
        assert_eq!(again.local_addr().expect("an address").port(), port);
    }
}
