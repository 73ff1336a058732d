//! The bore file: one header line, one line of column names, one reading a line.
//!
//! ```text
//! bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.004
//! depth_mm,angle_deg,diameter
//! 4,0,72.031
//! ```
//!
//! Cells are parted by commas, semicolons or tabs; numbers have a decimal point, or a decimal comma where semicolons
//! or tabs part the cells. Lines that start with `#` and empty lines are left out. README.md lists the header's words.

use std::collections::BTreeMap;

use crate::model::bore::{BoreInstrument, BoreKind, BoreLevel, BoreReading, BoreReadings};
use crate::model::limits;

use super::check::{ReadingAt, check};
use super::comma::{Comma, Seen, plain, seen};
use super::fault::{BoreFault, BoreRefusal};
use super::unit::{Unit, is_number, length_mm, number};

/// Reads a bore file and checks it.
///
/// # Errors
/// What is wrong, with its line; with both readings where the file can be read in two ways.
pub fn read(text: &str) -> Result<BoreReadings, BoreFault> {
    if text.len() as u64 > limits::BORE_FILE_BYTES {
        return Err(BoreRefusal::TooManyReadings.into());
    }
    let lines: Vec<(&str, usize)> = text
        .trim_start_matches('\u{feff}')
        .lines()
        .zip(1..)
        .map(|(line, at)| (line.trim(), at))
        .filter(|(line, _)| !is_blank(line) && !line.starts_with('#'))
        .collect();
    let (first, _) = lines.first().ok_or(BoreRefusal::Empty)?;
    let mark = mark_of(first);
    if mark == ',' {
        return read_as(&lines, mark, Comma::Cells);
    }
    match seen(numbers(&lines, mark)) {
        Seen::None | Seen::Decimal => read_as(&lines, mark, Comma::Decimal),
        Seen::Either(cell, line) if read_as(&lines, mark, Comma::Thousands).is_ok() => {
            let readings = [Comma::Decimal, Comma::Thousands].map(|comma| plain(cell, comma).into_owned());
            Err(BoreFault::two_readings(BoreRefusal::TwoReadings, line, readings))
        }
        Seen::Either(..) => read_as(&lines, mark, Comma::Decimal),
    }
}

/// Every cell in which a number may stand, with its line: behind the words of the header, and in the rows.
fn numbers<'t>(lines: &'t [(&'t str, usize)], mark: char) -> impl Iterator<Item = (&'t str, usize)> {
    let value = |cell: &'t str| cell.split_once('=').map_or(cell, |(_, value)| value.trim());
    let of_line = move |numbered: &'t (&'t str, usize)| {
        let (line, at) = *numbered;
        cells(line, mark).into_iter().map(move |cell| (value(cell), at))
    };
    lines.iter().flat_map(of_line)
}

fn read_as(lines: &[(&str, usize)], mark: char, comma: Comma) -> Result<BoreReadings, BoreFault> {
    let mut lines = lines.iter().copied();
    let (first, at) = lines.next().ok_or(BoreRefusal::Empty)?;
    let header = header(&cells(first, mark), comma).map_err(|why| BoreFault::at(why, at))?;
    let (names, at) = lines.next().ok_or(BoreRefusal::Empty)?;
    let columns = columns(header.readings.kind, &cells(names, mark)).map_err(|why| BoreFault::at(why, at))?;
    let mut rows = Vec::new();
    for (line, at) in lines {
        let cells = cells(line, mark);
        if let Some(readings) = too_many(&cells, columns.count).filter(|_| comma == Comma::Cells) {
            return Err(BoreFault::two_readings(BoreRefusal::DecimalComma, at, readings));
        }
        let cells: Vec<_> = cells.into_iter().map(|cell| plain(cell, comma)).collect();
        let cells: Vec<&str> = cells.iter().map(AsRef::as_ref).collect();
        let (depth, reading) = row(&header, &columns, &cells).map_err(|why| BoreFault::at(why, at))?;
        rows.push(Row { depth, reading, line: at });
    }
    if rows.is_empty() {
        return Err(BoreRefusal::Empty.into());
    }
    gathered(header.readings, rows)
}

fn is_blank(line: &str) -> bool {
    line.chars().all(|letter| ",;\t ".contains(letter))
}

/// The mark between cells: the first that stands behind the word `bore`.
fn mark_of(header: &str) -> char {
    header.chars().find(|letter| ",;\t".contains(*letter)).unwrap_or(',')
}

/// The cells of a line. Empty ones at its end are a spreadsheet's and are left out.
fn cells(line: &str, mark: char) -> Vec<&str> {
    let ends = |letter: char| letter == mark || letter.is_whitespace();
    line.trim_end_matches(ends).split(mark).map(|cell| cell.trim().trim_matches('"').trim()).collect()
}

/// Two ways to read a row with more numbers than columns, where commas part cells: the last or the first two cells
/// may be one number with a decimal comma. None where it has no more, or a cell is no number.
fn too_many(cells: &[&str], columns: usize) -> Option<[String; 2]> {
    if cells.len() <= columns || !cells.iter().all(|cell| is_number(cell)) {
        return None;
    }
    let joined = |at: usize| {
        let pieces = cells.iter().enumerate().map(|(place, cell)| match place {
            0 => (*cell).to_owned(),
            _ if place == at => format!(".{cell}"),
            _ => format!(" | {cell}"),
        });
        pieces.collect::<String>()
    };
    Some([joined(cells.len() - 1), joined(1)])
}

struct Header {
    readings: BoreReadings,
    unit: Unit,
    /// A higher reading of a dial means a narrower bore.
    narrower: bool,
}

const WORDS: [&str; 12] = [
    "kind",
    "unit",
    "resolution",
    "mpe",
    "repeatability",
    "zero-diameter",
    "zero",
    "higher",
    "turn",
    "wall",
    "wall-error",
    "seat",
];

fn header(cells: &[&str], comma: Comma) -> Result<Header, BoreRefusal> {
    let Some((&"bore", words)) = cells.split_first() else { return Err(BoreRefusal::NoHeader) };
    let mut said = BTreeMap::new();
    for word in words {
        match word.split_once('=') {
            Some((name, value)) if WORDS.contains(&name.trim()) => {
                if said.insert(name.trim(), value.trim()).is_some() {
                    return Err(BoreRefusal::HeaderWord);
                }
            }
            None if is_number(word) => return Err(BoreRefusal::DecimalComma),
            _ => return Err(BoreRefusal::HeaderWord),
        }
    }
    let asked = |name: &str| said.get(name).copied().ok_or(BoreRefusal::HeaderMissing);
    let kind = match asked("kind")? {
        "two-point" => BoreKind::TwoPoint,
        "three-point" => BoreKind::ThreePoint,
        "dial" => BoreKind::Dial,
        "coordinates" => BoreKind::Coordinates,
        _ => return Err(BoreRefusal::KindUnknown),
    };
    let unit = Unit::named(asked("unit")?).ok_or(BoreRefusal::UnitUnknown)?;
    let length = |name: &str| said.get(name).map(|value| length_mm(&plain(value, comma), unit)).transpose();
    let needed = |name: &str| length(name)?.ok_or(BoreRefusal::HeaderMissing);
    let instrument = BoreInstrument {
        resolution_mm: needed("resolution")?,
        mpe_mm: needed("mpe")?,
        repeatability_mm: length("repeatability")?.unwrap_or_default(),
    };
    let dial = kind == BoreKind::Dial;
    let choice = |name: &str, yes: &str, no: &str| match said.get(name).copied() {
        Some(word) if word == yes => Ok(Some(true)),
        Some(word) if word == no => Ok(Some(false)),
        Some(_) => Err(BoreRefusal::HeaderWord),
        None => Ok(None),
    };
    // A dial's sign and zero decide where metal is cut, so they are never guessed.
    let dial_choice = |name: &str, yes: &str, no: &str| match choice(name, yes, no)? {
        Some(_) if !dial => Err(BoreRefusal::HeaderWord),
        None if dial => Err(BoreRefusal::HeaderMissing),
        said => Ok(said.unwrap_or_default()),
    };
    if said.contains_key("zero-diameter") && !dial {
        return Err(BoreRefusal::HeaderWord);
    }
    let readings = BoreReadings {
        kind,
        instrument,
        zero_diameter_mm: length("zero-diameter")?,
        zero_was_set: dial_choice("zero", "set", "nominal")?,
        clockwise: choice("turn", "clockwise", "counter-clockwise")?.unwrap_or_default(),
        wall_mm: length("wall")?,
        wall_error_mm: length("wall-error")?,
        seat_width_mm: length("seat")?,
        levels: Vec::new(),
    };
    Ok(Header { readings, unit, narrower: dial_choice("higher", "narrower", "wider")? })
}

struct Columns {
    count: usize,
    depth: Option<(usize, Unit)>,
    first: usize,
    second: usize,
}

fn columns(kind: BoreKind, names: &[&str]) -> Result<Columns, BoreRefusal> {
    let place = |name: &str| names.iter().position(|known| *known == name);
    let (first, second) = match kind {
        BoreKind::TwoPoint | BoreKind::ThreePoint => ("angle_deg", "diameter"),
        BoreKind::Dial => ("angle_deg", "reading"),
        BoreKind::Coordinates => ("x", "y"),
    };
    let depth = match (place("depth_mm"), place("depth_in")) {
        (Some(at), None) => Some((at, Unit::Millimetre)),
        (None, Some(at)) => Some((at, Unit::Inch)),
        (None, None) => None,
        (Some(_), Some(_)) => return Err(BoreRefusal::Columns),
    };
    let (Some(first), Some(second)) = (place(first), place(second)) else { return Err(BoreRefusal::Columns) };
    let count = 2 + usize::from(depth.is_some());
    if names.len() != count {
        return Err(BoreRefusal::Columns);
    }
    Ok(Columns { count, depth, first, second })
}

fn row(header: &Header, columns: &Columns, cells: &[&str]) -> Result<(f64, BoreReading), BoreRefusal> {
    if cells.len() != columns.count {
        return Err(BoreRefusal::CellCount);
    }
    let cell = |at: usize| cells.get(at).copied().ok_or(BoreRefusal::CellCount);
    let value = |at: usize| Ok(header.unit.to_mm(number(cell(at)?)?));
    let depth = match columns.depth {
        Some((at, unit)) => unit.to_mm(number(cell(at)?)?),
        None => 0.0,
    };
    if header.readings.kind == BoreKind::Coordinates {
        return Ok((depth, BoreReading::Point { x_mm: value(columns.first)?, y_mm: value(columns.second)? }));
    }
    let sign = if header.narrower { -1.0 } else { 1.0 };
    let angle_deg = number(cell(columns.first)?)?;
    Ok((depth, BoreReading::At { angle_deg, value_mm: sign * value(columns.second)? }))
}

struct Row {
    depth: f64,
    reading: BoreReading,
    line: usize,
}

/// Sorts the rows into depths, whatever their order, and checks the whole.
fn gathered(mut readings: BoreReadings, mut rows: Vec<Row>) -> Result<BoreReadings, BoreFault> {
    rows.sort_by(|a, b| a.depth.total_cmp(&b.depth));
    let mut lines: Vec<Vec<usize>> = Vec::new();
    for row in rows {
        match readings.levels.last_mut().zip(lines.last_mut()) {
            Some((level, lines)) if level.depth_mm == row.depth => {
                level.readings.push(row.reading);
                lines.push(row.line);
            }
            _ => {
                readings.levels.push(BoreLevel { depth_mm: row.depth, readings: vec![row.reading] });
                lines.push(vec![row.line]);
            }
        }
    }
    let line = |place: Option<ReadingAt>| lines.get(place?.0)?.get(place?.1).copied();
    check(&readings).map_err(|(why, place)| BoreFault { why, line: line(place), readings: None })?;
    Ok(readings)
}
