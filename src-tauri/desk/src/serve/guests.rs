//! Who is connected, and how many may be. A browser opens six connections; whoever opens many and sends nothing must
//! not keep it out.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use tokio::task::AbortHandle;

/// As many connections are open at once.
pub const MOST: usize = 64;

/// Whether somebody at a connection has shown the key.
#[derive(Debug, Clone, Default)]
pub struct Known(Arc<AtomicBool>);

impl Known {
    /// The key was shown.
    pub fn note(&self) {
        self.0.store(true, Ordering::Relaxed);
    }

    fn is_noted(&self) -> bool {
        self.0.load(Ordering::Relaxed)
    }
}

/// The open connections, eldest first.
#[derive(Debug, Default)]
pub struct Guests(Vec<(Known, AbortHandle)>);

impl Guests {
    /// Whether one more may come in. Where there are enough, the eldest that has not shown the key is cut off for it;
    /// where all have, nobody is.
    pub fn make_room(&mut self) -> bool {
        self.0.retain(|(_, task)| !task.is_finished());
        if self.0.len() < MOST {
            return true;
        }
        let stranger = self.0.iter().position(|(known, _)| !known.is_noted());
        stranger.map(|place| self.0.remove(place).1.abort()).is_some()
    }

    /// One more has come in.
    pub fn admit(&mut self, known: Known, task: AbortHandle) {
        self.0.push((known, task));
    }
}

#[cfg(test)]
mod tests {
    use super::{Guests, Known, MOST};

    #[test]
    fn eldest_stranger_makes_room_and_nobody_who_is_known() {
        let runtime = tokio::runtime::Builder::new_current_thread().build().expect("a runtime");
        runtime.block_on(guests_come_and_go());
    }

    async fn guests_come_and_go() {
        let mut guests = Guests::default();
        let tasks: Vec<_> = (0..MOST).map(|_| tokio::spawn(std::future::pending::<()>())).collect();
        let known: Vec<Known> = tasks.iter().map(|_| Known::default()).collect();
        for (known, task) in known.iter().zip(&tasks) {
            assert!(guests.make_room());
            guests.admit(known.clone(), task.abort_handle());
        }
        known[0].note();
        assert!(guests.make_room());
        let late = tokio::spawn(std::future::pending::<()>());
        let late_known = Known::default();
        guests.admit(late_known.clone(), late.abort_handle());
        for (place, task) in tasks.into_iter().enumerate() {
            if place == 1 {
                assert!(task.await.unwrap_err().is_cancelled(), "the eldest that showed no key");
            } else {
                assert!(!task.is_finished(), "{place}");
            }
        }
        known[2..].iter().for_each(Known::note);
        late_known.note();
        assert!(!guests.make_room(), "nobody is cut off who has shown the key");
    }
}
