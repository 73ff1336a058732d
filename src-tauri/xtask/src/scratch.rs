//! Where tests put what they throw away: in memory where there is room. They open hundreds of data folders, each write
//! of which waits for the disk; on a slow one that is half of their time. No test cuts the power, so none learns less
//! there; what a sync costs is measured by the benches, which stay on the disk.

use std::fs;
use std::path::PathBuf;
use std::process::Command;

use crate::start;

/// Linux's file system in memory.
const MEMORY: &str = "/dev/shm";
/// What the largest tests take, and as much again, bytes.
const ROOM: u64 = 4 << 30;

/// A folder in memory, removed with everything in it when this is dropped; none where there is no room for one.
pub struct Scratch(Option<PathBuf>);

impl Scratch {
    /// Makes the folder.
    pub fn in_memory() -> Self {
        let folder = PathBuf::from(MEMORY).join(format!("steady-tests-{}", std::process::id()));
        let told = start::asked("df", &["--output=avail", "--block-size=1", MEMORY]).unwrap_or_default();
        let made = free(&told) >= ROOM && fs::create_dir(&folder).is_ok();
        Self(made.then_some(folder))
    }

    /// Has a program put its temporary files there.
    pub fn lent_to(&self, command: &mut Command) {
        if let Some(folder) = &self.0 {
            command.env("TMPDIR", folder);
        }
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        if let Some(folder) = &self.0 {
            let _ = fs::remove_dir_all(folder);
        }
    }
}

/// The bytes that `df` says are free; 0 where it says nothing.
fn free(told: &str) -> u64 {
    told.lines().last().and_then(|line| line.trim().parse().ok()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::free;

    #[test]
    fn free_room_is_read_from_what_df_says() {
        for (told, bytes) in [("     Avail\n25167368192", 25_167_368_192), ("Avail\n", 0), ("", 0)] {
            assert_eq!(free(told), bytes, "{told:?}");
        }
    }
}
