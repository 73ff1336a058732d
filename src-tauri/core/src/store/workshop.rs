//! The workshop's particulars on disk, and the language and sheet each paper was last made in.

use rusqlite::{Connection, OptionalExtension, Row, Transaction, params};

use super::fault::StoreFault;
use super::open::Store;
use crate::model::typed::LengthUnit;
use crate::model::verdict::Verdict;
use crate::model::visit::DistanceUnit;
use crate::model::workshop::{OwnInstrument, StockSleeve, TierHours, Units, Workshop};

impl Store {
    /// The particulars; all empty until they are entered.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn workshop(&self) -> Result<Workshop, StoreFault> {
        read(&self.connection).map_err(StoreFault::sql("read the workshop"))
    }

    /// Writes the particulars anew, all of them.
    ///
    /// # Errors
    /// What SQLite says; the earlier ones then stand.
    pub fn set_workshop(&mut self, workshop: &Workshop) -> Result<(), StoreFault> {
        let sql = StoreFault::sql("write the workshop");
        let transaction = self.connection.transaction().map_err(sql)?;
        let written = write(&transaction, workshop).and_then(|()| transaction.commit());
        written.map_err(StoreFault::sql("write the workshop"))
    }

    /// Keeps the language and sheet a visit's paper was made in.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn paper_made(&mut self, visit: &str, paper: &str, made: &PaperMade) -> Result<(), StoreFault> {
        let sql = "INSERT INTO paper_made (visit, paper, locale, sheet) VALUES (?1, ?2, ?3, ?4)
             ON CONFLICT (visit, paper) DO UPDATE SET locale = excluded.locale, sheet = excluded.sheet";
        let done = self.connection.execute(sql, params![visit, paper, made.locale, made.sheet]);
        done.map(|_| ()).map_err(StoreFault::sql("keep how a paper was made"))
    }

    /// The language and sheet a visit's paper was last made in, if it was.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn last_made(&self, visit: &str, paper: &str) -> Result<Option<PaperMade>, StoreFault> {
        let sql = "SELECT locale, sheet FROM paper_made WHERE visit = ?1 AND paper = ?2";
        let made = |row: &Row<'_>| Ok(PaperMade { locale: row.get("locale")?, sheet: row.get("sheet")? });
        let found = self.connection.query_row(sql, params![visit, paper], made).optional();
        found.map_err(StoreFault::sql("read how a paper was made"))
    }
}

/// How a paper was made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperMade {
    /// Tag (RFC 5646) of the language it was made in.
    pub locale: String,
    /// Id of its sheet.
    pub sheet: String,
}

/// The particulars in a database.
///
/// # Errors
/// What SQLite says.
pub fn read(connection: &Connection) -> Result<Workshop, rusqlite::Error> {
    let sql = "SELECT name, address, phone, length, distance, rate, currency FROM workshop";
    let kept = connection.query_row(sql, [], line).optional()?;
    let mut workshop = kept.unwrap_or_default();
    let mut statement = connection.prepare("SELECT tier, hours_from, hours_to FROM workshop_hours")?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        let id: String = row.get("tier")?;
        let tier = Verdict::ALL.into_iter().find(|tier| tier.id() == id);
        if let Some(tier) = tier {
            let hours = TierHours { tier, from: row.get("hours_from")?, to: row.get("hours_to")? };
            workshop.hours.push(hours);
        }
    }
    workshop.hours.sort_by_key(|hours| hours.tier);
    // A backup, or a database that is mined, may be of a program that had neither.
    if has_table(connection, "workshop_sleeve")? {
        workshop.sleeves = sleeves(connection)?;
    }
    if has_table(connection, "workshop_instrument")? {
        workshop.instruments = instruments(connection)?;
    }
    Ok(workshop)
}

fn has_table(connection: &Connection, name: &str) -> Result<bool, rusqlite::Error> {
    let sql = "SELECT count(*) > 0 FROM sqlite_schema WHERE type = 'table' AND name = ?1";
    connection.query_row(sql, [name], |row| row.get(0))
}

fn sleeves(connection: &Connection) -> Result<Vec<StockSleeve>, rusqlite::Error> {
    let sql = "SELECT material, outside_mm, bore_mm FROM workshop_sleeve ORDER BY place";
    let mut statement = connection.prepare(sql)?;
    let sleeve = |row: &Row<'_>| {
        Ok(StockSleeve {
            material: row.get("material")?,
            outside_mm: row.get("outside_mm")?,
            bore_mm: row.get("bore_mm")?,
        })
    };
    statement.query_map([], sleeve)?.collect()
}

fn instruments(connection: &Connection) -> Result<Vec<OwnInstrument>, rusqlite::Error> {
    let sql = "SELECT name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due FROM workshop_instrument
         ORDER BY place";
    let mut statement = connection.prepare(sql)?;
    let day = |text: String| (!text.is_empty()).then_some(text);
    let instrument = |row: &Row<'_>| {
        Ok(OwnInstrument {
            name: row.get("name")?,
            resolution_mm: row.get("resolution_mm")?,
            mpe_mm: row.get("mpe_mm")?,
            repeatability_mm: row.get("repeatability_mm")?,
            calibrated: day(row.get("calibrated")?),
            due: day(row.get("due")?),
            overdue: false,
        })
    };
    statement.query_map([], instrument)?.collect()
}

fn write_lists(transaction: &Transaction<'_>, workshop: &Workshop) -> Result<(), rusqlite::Error> {
    transaction.execute("DELETE FROM workshop_sleeve", [])?;
    transaction.execute("DELETE FROM workshop_instrument", [])?;
    for (place, sleeve) in (1_i64..).zip(&workshop.sleeves) {
        let StockSleeve { material, outside_mm, bore_mm } = sleeve;
        let sql =
            "INSERT INTO workshop_sleeve (place, material, outside_mm, bore_mm) VALUES (?1, ?2, ?3, ?4)";
        transaction.execute(sql, params![place, material, outside_mm, bore_mm])?;
    }
    for (place, instrument) in (1_i64..).zip(&workshop.instruments) {
        let OwnInstrument { name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due, overdue: _ } =
            instrument;
        let [calibrated, due] = [calibrated, due].map(|day| day.as_deref().unwrap_or_default());
        let sql = "INSERT INTO workshop_instrument
             (place, name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
        let row = params![place, name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due];
        transaction.execute(sql, row)?;
    }
    Ok(())
}

fn line(row: &Row<'_>) -> Result<Workshop, rusqlite::Error> {
    let address: String = row.get("address")?;
    let (length, distance): (String, String) = (row.get("length")?, row.get("distance")?);
    Ok(Workshop {
        name: row.get("name")?,
        address: address.lines().map(str::to_owned).collect(),
        phone: row.get("phone")?,
        units: Units {
            length: [LengthUnit::Mm, LengthUnit::Thou].into_iter().find(|unit| unit.sign() == length),
            distance: [DistanceUnit::Km, DistanceUnit::Miles].into_iter().find(|unit| unit.id() == distance),
        },
        hours: Vec::new(),
        rate: row.get("rate")?,
        currency: row.get("currency")?,
        sleeves: Vec::new(),
        instruments: Vec::new(),
    })
}

pub(super) fn write(transaction: &Transaction<'_>, workshop: &Workshop) -> Result<(), rusqlite::Error> {
    transaction.execute("DELETE FROM workshop", [])?;
    transaction.execute("DELETE FROM workshop_hours", [])?;
    let sql = "INSERT INTO workshop (line, name, address, phone, length, distance, rate, currency)
         VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6, ?7)";
    let length = workshop.units.length.map_or("", LengthUnit::sign);
    let distance = workshop.units.distance.map_or("", DistanceUnit::id);
    let address = workshop.address.join("\n");
    let Workshop { name, phone, rate, currency, .. } = workshop;
    transaction.execute(sql, params![name, address, phone, length, distance, rate, currency])?;
    for hours in &workshop.hours {
        let sql = "INSERT INTO workshop_hours (tier, hours_from, hours_to) VALUES (?1, ?2, ?3)";
        transaction.execute(sql, params![hours.tier.id(), hours.from, hours.to])?;
    }
    write_lists(transaction, workshop)
}
