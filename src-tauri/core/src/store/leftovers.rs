//! Photos that were kept and that no line names: their request was refused, or the process was killed. The
//! database knows each photo before its file is there, so nothing has to be searched for.

use rusqlite::Connection;

use super::fault::StoreFault;
use super::folders;
use super::open::Store;
use super::photo_files::PhotoSize;

impl Store {
    /// Removes photos that no line names. Not to be called between a photo and the line that will name it.
    ///
    /// # Errors
    /// What SQLite or the file system says; the next start tries again.
    pub(super) fn clear_unnamed(&self) -> Result<(), StoreFault> {
        let sql = StoreFault::sql("look for photos that no line names");
        for sha256 in unnamed(&self.connection).map_err(sql)? {
            self.remove_photo(&sha256)?;
        }
        Ok(())
    }

    /// Removes a photo's files, and what is known of it.
    pub(super) fn remove_photo(&self, sha256: &str) -> Result<(), StoreFault> {
        for size in [PhotoSize::Thumb, PhotoSize::Full] {
            folders::remove_if_there(&self.photo_path(sha256, size)).map_err(StoreFault::file)?;
        }
        let done = self.connection.execute("DELETE FROM photo WHERE sha256 = ?1", [sha256]);
        done.map(|_| ()).map_err(StoreFault::sql("forget a photo"))
    }
}

fn unnamed(connection: &Connection) -> Result<Vec<String>, rusqlite::Error> {
    let mut statement = connection.prepare_cached("SELECT sha256 FROM photo WHERE named = 0")?;
    statement.query_map([], |row| row.get("sha256"))?.collect()
}
