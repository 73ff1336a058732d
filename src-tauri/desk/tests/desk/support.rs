//! Starts the binary and speaks plain HTTP/1.1 to it, so that any header can be sent.

use std::io::{BufRead as _, BufReader, Read as _, Write as _};
use std::net::TcpStream;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use tempfile::TempDir;

pub const STEADY: &str = env!("CARGO_BIN_EXE_steady");
/// A command that was not refused (`serve`) would run on; it is ended then.
const LONGEST_REFUSAL: Duration = Duration::from_secs(60);

/// What is said where a data folder is begun.
const BEGUN: &str = "A new data folder is begun: ";

/// A running desk on a fresh folder; ended when it goes out of scope.
pub struct Desk {
    child: Child,
    data: TempDir,
    /// `127.0.0.1:PORT`.
    pub host: String,
    /// The key of this start.
    pub key: String,
}

/// What came back.
pub struct Reply {
    pub status: u16,
    pub head: String,
    pub body: String,
}

impl Reply {
    /// The failure's code; empty where it is none.
    pub fn code(&self) -> String {
        let failure: serde_json::Value = serde_json::from_str(&self.body).unwrap_or_default();
        failure.get("code").and_then(|code| code.as_str()).unwrap_or_default().to_owned()
    }
}

impl Desk {
    /// Starts a desk that opens no browser, and reads the address it prints.
    pub fn start() -> Self {
        Self::start_with(&["--no-open"], &[])
    }

    /// Starts a desk with these words, on a fresh folder where they name none, in this environment.
    pub fn start_with(words: &[&str], environment: &[(&str, &str)]) -> Self {
        let data = tempfile::tempdir().expect("a temporary folder");
        let mut command = Command::new(STEADY);
        command.arg("serve").args(words).envs(environment.iter().copied());
        if !words.contains(&"--data") {
            command.arg("--data").arg(data.path());
        }
        let mut child =
            command.stdout(Stdio::piped()).stderr(Stdio::null()).spawn().expect("the desk starts");
        let mut address = String::new();
        BufReader::new(child.stdout.take().expect("its output"))
            .read_line(&mut address)
            .expect("the address is printed");
        let rest = address.trim().strip_prefix("http://").expect("an address");
        let (host, key) = rest.split_once("/#key=").expect("an address with its key");
        Self { host: host.to_owned(), key: key.to_owned(), child, data }
    }

    pub fn id(&self) -> u32 {
        self.child.id()
    }

    pub fn port(&self) -> String {
        self.host.rsplit_once(':').expect("a port").1.to_owned()
    }

    pub fn folder(&self) -> &str {
        self.data.path().to_str().expect("a plain path")
    }

    pub fn get(&self, path: &str, host: &str, more: &str) -> Reply {
        self.send(&format!("GET {path} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n{more}\r\n"), "")
    }

    pub fn post(&self, key: &str, body: &str) -> Reply {
        let head = format!(
            "POST /api HTTP/1.1\r\nHost: {}\r\nConnection: close\r\nX-Steady-Key: {key}\r\n\
             Content-Type: application/json\r\nContent-Length: {}\r\n\r\n",
            self.host,
            body.len(),
        );
        self.send(&head, body)
    }

    fn send(&self, head: &str, body: &str) -> Reply {
        let mut stream = TcpStream::connect(&self.host).expect("the desk listens");
        stream.set_read_timeout(Some(Duration::from_secs(30))).expect("a time-out");
        stream.write_all(head.as_bytes()).expect("the head is sent");
        // A refused body may not be read to its end; the reply comes all the same.
        let _ = stream.write_all(body.as_bytes());
        let mut bytes = Vec::new();
        let _ = stream.read_to_end(&mut bytes);
        let text = String::from_utf8_lossy(&bytes);
        let (head, body) = text.split_once("\r\n\r\n").expect("a reply with head and body");
        let status = head.split(' ').nth(1).and_then(|status| status.parse().ok()).expect("a status");
        Reply { status, head: head.to_owned(), body: body.to_owned() }
    }
}

impl Drop for Desk {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// Runs a command that has to be refused: status 2, the code, and what to do about it.
#[track_caller]
pub fn refused(words: &[&str], code: &str) {
    let mut child = Command::new(STEADY)
        .args(words)
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the command starts");
    let started = Instant::now();
    while child.try_wait().expect("the command is watched").is_none() {
        if started.elapsed() > LONGEST_REFUSAL {
            let _ = child.kill();
        }
        std::thread::sleep(Duration::from_millis(20));
    }
    let output = child.wait_with_output().expect("what the command said");
    let said = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{said}");
    let told: Vec<&str> = said.lines().filter(|line| !line.starts_with(BEGUN)).collect();
    let (first, help) = (told.first().expect("a line"), told.get(1..).expect("another").concat());
    assert!(first.starts_with(&format!("{code}: ")), "{said}");
    assert!(help.trim().len() > 10, "{said}");
    assert!(output.stdout.is_empty(), "a refused command printed an answer");
}

/// Runs a command that has to succeed, and gives back what it printed.
#[track_caller]
pub fn answered(words: &[&str]) -> String {
    let output = Command::new(STEADY).args(words).output().expect("the command runs");
    let said = String::from_utf8_lossy(&output.stderr);
    let said_nothing_else = said.lines().all(|line| line.starts_with(BEGUN));
    assert!(output.status.success() && said_nothing_else, "{said}");
    String::from_utf8(output.stdout).expect("plain text")
}
