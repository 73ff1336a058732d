//! Wishes for photos, in a side table of their own; what they are for is in `model::wish`.

use rusqlite::{OptionalExtension, Row, params};

use super::fault::StoreFault;
use super::open::Store;
use crate::model::time::Moment;
use crate::model::wish::PhotoWish;

impl Store {
    /// Writes a wish down, synced; an earlier one of the same step goes.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn wish(&mut self, wish: &PhotoWish) -> Result<(), StoreFault> {
        let sql = "INSERT OR REPLACE INTO pending_capture (id, visit, step, at) VALUES (?1, ?2, ?3, ?4)";
        let PhotoWish { id, visit, step, at } = wish;
        let done = self.connection.execute(sql, params![id, visit, step, at.0]);
        done.map(|_| ()).map_err(StoreFault::sql("write a wish"))
    }

    /// The visit's wishes, oldest first.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn wishes(&self, visit: &str) -> Result<Vec<PhotoWish>, StoreFault> {
        let read = || -> Result<Vec<PhotoWish>, rusqlite::Error> {
            let mut statement = self.connection.prepare_cached(
                "SELECT id, visit, step, at FROM pending_capture WHERE visit = ?1 ORDER BY at, id",
            )?;
            statement.query_map([visit], wish_of)?.collect()
        };
        read().map_err(StoreFault::sql("read wishes"))
    }

    /// The wish of this id, if it is still open.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn wish_by_id(&self, id: &str) -> Result<Option<PhotoWish>, StoreFault> {
        let sql = "SELECT id, visit, step, at FROM pending_capture WHERE id = ?1";
        let found = self.connection.query_row(sql, [id], wish_of).optional();
        found.map_err(StoreFault::sql("read a wish"))
    }

    /// Forgets the visit's wish for a photo of a step.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn forget_wish(&mut self, visit: &str, step: &str) -> Result<(), StoreFault> {
        let sql = "DELETE FROM pending_capture WHERE visit = ?1 AND step = ?2";
        let done = self.connection.execute(sql, params![visit, step]);
        done.map(|_| ()).map_err(StoreFault::sql("forget a wish"))
    }
}

fn wish_of(row: &Row<'_>) -> Result<PhotoWish, rusqlite::Error> {
    Ok(PhotoWish {
        id: row.get("id")?,
        visit: row.get("visit")?,
        step: row.get("step")?,
        at: Moment(row.get("at")?),
    })
}
