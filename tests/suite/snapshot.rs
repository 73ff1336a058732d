//! Printing and exporting beside the core: an answer comes back while a press is at work, what is printed is the
//! ledger of one moment, and a paper is printed once for a file.

use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex};
use std::time::Duration;

use serde_json::{Value, json};
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};

use crate::support::{MORNING, ask, code, fetched, holds};

/// After this nobody answers any more.
const NEVER: Duration = Duration::from_secs(60);

/// A press that says when it has begun and waits until it may go on.
struct Slow {
    begun: Mutex<Sender<()>>,
    go_on: Mutex<Receiver<()>>,
}

impl Press for Slow {
    fn print(&self, paper: Paper<'_>, _: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        self.begun.lock().unwrap().send(()).unwrap();
        self.go_on.lock().unwrap().recv().unwrap();
        let Paper::Finding(finding) = paper else { return Ok(Vec::new()) };
        Ok(serde_json::to_vec(finding).unwrap())
    }
}

/// A press that counts.
#[derive(Default)]
struct Counting(AtomicUsize);

impl Press for Counting {
    fn print(&self, _: Paper<'_>, _: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        self.0.fetch_add(1, Ordering::Relaxed);
        Ok(b"printed".to_vec())
    }
}

fn opened(folder: &Path, press: Arc<dyn Press>) -> (Arc<Steady>, String) {
    let setup = Setup { data_dir: folder.to_owned(), press, clock: || MORNING };
    let steady = Steady::open(setup).unwrap();
    assert_eq!(code(&steady, json!({ "ask": "set-technician", "name": "Kim Demo" })), "ok");
    let intake = json!({ "vehicle": { "layout": "rigid-engine-speed", "plate": "TR 4417" } });
    let visit = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
    (Arc::new(steady), visit)
}

/// What comes back to a request, on a thread of its own, which holds the core no longer than until it has answered.
fn sent(steady: &Arc<Steady>, request: Value) -> Receiver<Result<Response, String>> {
    let (to, from) = channel();
    let steady = Arc::clone(steady);
    std::thread::spawn(move || {
        let reply = steady.handle(serde_json::from_value(request).unwrap());
        drop(steady);
        let _ = to.send(reply.map_err(|failure| failure.code));
    });
    from
}

/// While `request` is at the press, the visit is answered; `then` gets what comes of the request.
fn answered_meanwhile(request: impl Fn(&str) -> Value, then: impl Fn(&Steady, Response)) {
    let folder = tempfile::tempdir().unwrap();
    let ((begun, at_work), (go_on, waits)) = (channel(), channel());
    let press = Arc::new(Slow { begun: Mutex::new(begun), go_on: Mutex::new(waits) });
    let (steady, visit) = opened(folder.path(), press);
    let printed = sent(&steady, request(&visit));
    at_work.recv_timeout(NEVER).unwrap();
    let answer = json!({ "ask": "answer", "visit": visit, "step": "road-speed-vibration", "value": "none" });
    let answered = sent(&steady, answer).recv_timeout(NEVER);
    // The press is let go before anything is asserted, so that a failure does not hang.
    for _ in 0..8 {
        let _ = go_on.send(());
    }
    assert!(matches!(answered, Ok(Ok(Response::Visit(_)))), "{answered:?}");
    then(&steady, printed.recv_timeout(NEVER).unwrap().unwrap());
}

#[test]
fn answer_comes_back_while_a_finding_prints_and_is_not_in_it() {
    let finding = |visit: &str| json!({ "ask": "paper", "visit": visit, "paper": "finding", "locale": "en" });
    answered_meanwhile(finding, |steady, reply| {
        let Response::Paper(file) = reply else { panic!("no paper but {reply:?}") };
        let finding: Value = serde_json::from_slice(&fetched(steady, &file.file)).unwrap();
        let answered = finding["steps"].as_array().unwrap().iter().filter(|step| !step["answer"].is_null());
        assert_eq!(answered.count(), 0, "{finding}");
    });
}

#[test]
fn answer_comes_back_while_an_export_prints() {
    let export = |visit: &str| json!({ "ask": "export", "visits": [visit], "papers": true });
    answered_meanwhile(export, |steady, reply| {
        let Response::Handover(file) = reply else { panic!("no file but {reply:?}") };
        let bytes = fetched(steady, &file.file);
        let told = steady_core::app::handover::verify(&mut &*bytes).unwrap();
        assert_eq!((told.entries, told.papers), (1, 2), "of the moment it was begun at");
    });
}

#[test]
fn visit_erased_while_it_prints_leaves_nothing_behind() {
    let folder = tempfile::tempdir().unwrap();
    let ((begun, at_work), (go_on, waits)) = (channel(), channel());
    let press = Arc::new(Slow { begun: Mutex::new(begun), go_on: Mutex::new(waits) });
    let (steady, visit) = opened(folder.path(), press);
    let paper = json!({ "ask": "paper", "visit": visit, "paper": "finding", "locale": "en" });
    let printed = sent(&steady, paper);
    at_work.recv_timeout(NEVER).unwrap();
    let erased = sent(&steady, json!({ "ask": "erase", "visit": visit, "word": "TR 4417" }));
    go_on.send(()).unwrap();
    let printed = printed.recv_timeout(NEVER).expect("an answer");
    let erased = erased.recv_timeout(NEVER).expect("an answer");
    assert!(matches!(erased, Ok(Response::Erased { .. })), "{erased:?}");
    if let Ok(Response::Paper(file)) = printed {
        assert_eq!(
            steady.outgoing(&file.file).err().map(|failure| failure.code).as_deref(),
            Some("upload-unknown")
        );
    }
    drop(steady);
    for file in files(folder.path()) {
        let bytes = std::fs::read(&file).unwrap();
        let found = holds(&bytes, "TR 4417");
        assert!(!found, "{}", file.display());
    }
}

fn files(folder: &Path) -> Vec<std::path::PathBuf> {
    let inside = std::fs::read_dir(folder).unwrap().flatten().map(|file| file.path());
    inside.flat_map(|path| if path.is_dir() { files(&path) } else { vec![path] }).collect()
}

#[test]
fn paper_is_printed_once_for_a_handover() {
    let folder = tempfile::tempdir().unwrap();
    let press = Arc::new(Counting::default());
    let (steady, visit) = opened(folder.path(), press.clone());
    assert_eq!(code(&steady, json!({ "ask": "export", "visits": [visit], "papers": true })), "ok");
    assert_eq!(press.0.load(Ordering::Relaxed), 2, "finding and note");
    let left = files(&folder.path().join("outgoing"));
    assert_eq!(left.len(), 1, "the file alone: {left:?}");
}
