//! A workshop's own knowledge: causes, signs and layouts from files in its data folder, added to what is
//! shipped and never in its place. A bad row is refused by file, line and reason; the rest keeps working.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::de::DeserializeOwned;
use sha2::{Digest, Sha256};
use toml::{Spanned, Table};

use crate::model::hex;

use super::check::{check_cause, check_layout, check_sign};
use super::load::{Refused, Trade, line_at, located};
use super::rows::{CauseRow, Layout, SignRow};
use crate::model::limits;

/// Most causes of one layout.
pub const MAX_CAUSES: usize = limits::CAUSES;

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Rows {
    #[serde(default)]
    cause: Vec<Spanned<Table>>,
    #[serde(default)]
    sign: Vec<Spanned<Table>>,
    #[serde(default)]
    layout: Vec<Spanned<Table>>,
}

/// Where a row stands.
#[derive(Clone)]
struct RowAt {
    file: String,
    line: usize,
}

impl RowAt {
    fn refuse(&self, reason: String) -> Refused {
        Refused { file: self.file.clone(), reason: format!("line {}: {reason}", self.line) }
    }
}

/// Adds the rows of the workshop's own files (`name`, `text`) and says which were refused, and why.
/// Causes come first, then layouts, then signs, whatever the order in the files.
pub fn add(trade: &mut Trade, files: &[(String, String)]) -> Vec<Refused> {
    let mut refused = Vec::new();
    let mut read: Vec<(&str, &str, Rows)> = Vec::new();
    for (name, text) in files {
        match toml::from_str::<Rows>(text) {
            Ok(rows) => read.push((name, text, rows)),
            Err(fault) => refused.push(Refused { file: name.clone(), reason: located(&fault, text) }),
        }
    }
    let mut own = Own { trade, refused, places: BTreeMap::new() };
    for (file, text, rows) in &read {
        rows.cause.iter().for_each(|row| own.take(file, text, row, Own::cause));
    }
    for (file, text, rows) in &read {
        rows.layout.iter().for_each(|row| own.take(file, text, row, Own::layout));
    }
    own.place_causes();
    for (file, text, rows) in &read {
        rows.sign.iter().for_each(|row| own.take(file, text, row, Own::sign));
    }
    own.drop_unmoved_causes();
    own.refused
}

struct Own<'t> {
    trade: &'t mut Trade,
    refused: Vec<Refused>,
    /// Where each own cause stands, by id.
    places: BTreeMap<String, RowAt>,
}

impl Own<'_> {
    fn take<T: DeserializeOwned>(
        &mut self,
        file: &str,
        text: &str,
        row: &Spanned<Table>,
        add: fn(&mut Self, T, &RowAt) -> Result<(), String>,
    ) {
        let place = RowAt { file: file.to_owned(), line: line_at(text, row.span().start) };
        let parsed = T::deserialize(toml::Value::Table(row.get_ref().clone()));
        let parsed = parsed.map_err(|fault| fault.message().to_owned());
        if let Err(reason) = parsed.and_then(|row| add(self, row, &place)) {
            self.refused.push(place.refuse(reason));
        }
    }

    fn cause(&mut self, row: CauseRow, place: &RowAt) -> Result<(), String> {
        check_id(&row.id)?;
        check_cause(&row)?;
        if self.trade.causes.iter().any(|cause| cause.id == row.id) || row.id == NORMAL {
            return Err(format!("id {}: this cause exists already; choose another id", row.id));
        }
        let named = row
            .name
            .as_deref()
            .is_some_and(|name| (1..=limits::CAUSE_NAME).contains(&name.trim().chars().count()));
        if !named {
            let most = limits::CAUSE_NAME;
            return Err(format!("cause {}: a name of at most {most} characters is needed", row.id));
        }
        self.places.insert(row.id.clone(), place.clone());
        self.trade.causes.push(row);
        Ok(())
    }

    fn layout(&mut self, row: Layout, _: &RowAt) -> Result<(), String> {
        check_layout(self.trade, &row)?;
        if row.causes.len() > MAX_CAUSES {
            return Err(too_many(&row.id));
        }
        self.trade.layouts.push(row);
        Ok(())
    }

    fn sign(&mut self, row: SignRow, _: &RowAt) -> Result<(), String> {
        check_id(&row.id)?;
        if self.trade.signs.iter().any(|sign| sign.id == row.id) {
            return Err(format!("id {}: this sign exists already; choose another id", row.id));
        }
        if self.trade.causes.iter().any(|cause| cause.id == row.id) {
            return Err(format!("id {}: a cause has this id; a sign cannot be its own cause", row.id));
        }
        let is_sign = |id: &str| id == row.id || self.trade.signs.iter().any(|sign| sign.id == id);
        if let Some(link) = row.links.iter().find(|link| is_sign(&link.cause)) {
            return Err(format!("sign {}: {} is a sign; only causes bring signs about", row.id, link.cause));
        }
        check_sign(self.trade, &row)?;
        self.trade.signs.push(row);
        Ok(())
    }

    /// Lists each own cause in the layouts it names, or takes it out again.
    fn place_causes(&mut self) {
        for id in self.own_causes() {
            let named = self.trade.causes.iter().find(|cause| cause.id == id);
            let named = named.map(|cause| cause.layouts.clone()).unwrap_or_default();
            let known = |layout: &String| self.trade.layout(layout).is_some();
            if let Some(unknown) = named.iter().find(|layout| !known(layout)) {
                let reason = format!("cause {id}: there is no layout {unknown}");
                self.drop_cause(&id, reason);
                continue;
            }
            let full = |layout: &&String| {
                self.trade
                    .layout(layout)
                    .is_some_and(|layout| !layout.causes.contains(&id) && layout.causes.len() >= MAX_CAUSES)
            };
            if let Some(layout) = named.iter().find(full) {
                let reason = too_many(layout);
                self.drop_cause(&id, reason);
                continue;
            }
            for layout in self.trade.layouts.iter_mut().filter(|layout| named.contains(&layout.id)) {
                if !layout.causes.contains(&id) {
                    layout.causes.push(id.clone());
                }
            }
        }
    }

    /// A cause that no sign speaks of, or that no layout has, would keep its prior for ever.
    fn drop_unmoved_causes(&mut self) {
        for id in self.own_causes() {
            let linked = self.trade.signs.iter().any(|sign| sign.links.iter().any(|link| link.cause == id));
            let placed = self.trade.layouts.iter().any(|layout| layout.causes.contains(&id));
            if !linked {
                self.drop_cause(
                    &id,
                    format!("cause {id}: no sign is linked to it, so no evidence could move it"),
                );
            } else if !placed {
                self.drop_cause(&id, format!("cause {id}: no layout has it; name its layouts"));
            }
        }
    }

    fn own_causes(&self) -> Vec<String> {
        self.places.keys().cloned().collect()
    }

    fn drop_cause(&mut self, id: &str, reason: String) {
        if let Some(place) = self.places.remove(id) {
            self.refused.push(place.refuse(reason));
        }
        self.trade.causes.retain(|cause| cause.id != id);
        for layout in &mut self.trade.layouts {
            layout.causes.retain(|cause| cause != id);
        }
        for sign in &mut self.trade.signs {
            sign.links.retain(|link| link.cause != id);
        }
    }
}

/// The id of "none of the causes".
const NORMAL: &str = "normal-character";

fn too_many(layout: &str) -> String {
    format!("layout {layout}: more than {MAX_CAUSES} causes could not be sorted on a phone")
}

fn check_id(id: &str) -> Result<(), String> {
    let plain = !id.is_empty() && id.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'-');
    if !plain {
        return Err("id: lower-case letters and hyphens only".to_owned());
    }
    if id.len() > limits::ID { Err(format!("id: at most {} letters", limits::ID)) } else { Ok(()) }
}

/// Marks the version with the workshop's own files, where there are any.
pub fn mark_version(trade: &mut Trade, files: &[(String, String)]) {
    if files.is_empty() {
        return;
    }
    let mut hasher = Sha256::new();
    for (name, text) in files {
        hasher.update(name.as_bytes());
        hasher.update([0]);
        hasher.update(text.as_bytes());
        hasher.update([0]);
    }
    let mark = hex::encode(&hasher.finalize());
    trade.version = format!("{}+{mark:.6}", trade.version);
}
