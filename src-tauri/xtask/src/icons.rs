//! `cargo xtask icons`: every size that desktops and phones want, drawn from `icons/steady.svg`.
//!
//! The two container formats hold whole PNG files behind a short table, so they are written here;
//! the drawing itself is librsvg's work. The phones' sets are in `phones`.

mod phones;

use std::fs;
use std::path::Path;

use crate::{Outcome, debian, rooms, start};

/// Sizes kept as files of their own.
const SIZES: [u32; 4] = [32, 128, 256, 512];
/// Sizes within `icon.ico`; 256 is the largest its table can name.
const ICO_SIZES: [u32; 4] = [16, 32, 48, 256];
/// Types within `icon.icns` and the sizes they stand for.
const ICNS_TYPES: [(&[u8; 4], u32); 3] = [(b"ic07", 128), (b"ic08", 256), (b"ic09", 512)];

/// Runs the command.
pub fn run() -> Outcome<()> {
    debian::ensure(debian::ICONS)?;
    let folder = rooms::top().join("icons");
    for size in SIZES {
        write(&folder.join(format!("{size}x{size}.png")), &draw(&folder, size)?)?;
    }
    let drawn = |size: u32| draw(&folder, size).map(|png| (size, png));
    let ico: Vec<(u32, Vec<u8>)> = ICO_SIZES.into_iter().map(drawn).collect::<Outcome<_>>()?;
    write(&folder.join("icon.ico"), &pack_ico(&ico))?;
    let icns: Vec<(&[u8; 4], Vec<u8>)> = ICNS_TYPES
        .into_iter()
        .map(|(kind, size)| draw(&folder, size).map(|png| (kind, png)))
        .collect::<Outcome<_>>()?;
    write(&folder.join("icon.icns"), &pack_icns(&icns))?;
    phones::draw_all()
}

fn draw(folder: &Path, size: u32) -> Outcome<Vec<u8>> {
    let mut draw = start::program("rsvg-convert", &["--width", &size.to_string(), "--keep-aspect-ratio"]);
    let output = draw
        .arg(folder.join("steady.svg"))
        .output()
        .map_err(|error| format!("rsvg-convert cannot be started: {error}"))?;
    if output.status.success() { Ok(output.stdout) } else { Err("rsvg-convert failed".to_owned()) }
}

/// Header, one 16-byte row for each picture, pictures; numbers are little-endian.
fn pack_ico(pictures: &[(u32, Vec<u8>)]) -> Vec<u8> {
    let mut file = vec![0, 0, 1, 0];
    file.extend(u16::try_from(pictures.len()).unwrap_or(u16::MAX).to_le_bytes());
    let mut offset = 6 + 16 * pictures.len();
    for (size, png) in pictures {
        // A side of 256 is written as 0.
        let side = u8::try_from(*size).unwrap_or(0);
        file.extend([side, side, 0, 0, 1, 0, 32, 0]);
        file.extend(length(png.len()).to_le_bytes());
        file.extend(length(offset).to_le_bytes());
        offset += png.len();
    }
    pictures.iter().for_each(|(_, png)| file.extend(png));
    file
}

/// Magic and length, then type, length and picture in turn; numbers are big-endian.
fn pack_icns(pictures: &[(&[u8; 4], Vec<u8>)]) -> Vec<u8> {
    let total: usize = 8 + pictures.iter().map(|(_, png)| 8 + png.len()).sum::<usize>();
    let mut file = b"icns".to_vec();
    file.extend(length(total).to_be_bytes());
    for (kind, png) in pictures {
        file.extend(*kind);
        file.extend(length(8 + png.len()).to_be_bytes());
        file.extend(png);
    }
    file
}

fn length(bytes: usize) -> u32 {
    u32::try_from(bytes).unwrap_or(u32::MAX)
}

fn write(path: &Path, bytes: &[u8]) -> Outcome<()> {
    fs::write(path, bytes).map_err(|error| format!("{}: {error}", path.display()))
}

#[cfg(test)]
mod tests {
    use super::{pack_icns, pack_ico};

    #[test]
    fn an_ico_names_where_each_picture_begins() {
        let file = pack_ico(&[(16, vec![7; 3]), (256, vec![9; 5])]);
        assert_eq!(&file[..6], &[0, 0, 1, 0, 2, 0]);
        assert_eq!((file[6], file[22]), (16, 0));
        assert_eq!(&file[14..22], &[3, 0, 0, 0, 38, 0, 0, 0]);
        assert_eq!(&file[30..38], &[5, 0, 0, 0, 41, 0, 0, 0]);
        assert_eq!(file.len(), 38 + 3 + 5);
    }

    #[test]
    fn an_icns_counts_itself() {
        let file = pack_icns(&[(b"ic07", vec![1; 4])]);
        assert_eq!(file, [&b"icns"[..], &[0, 0, 0, 20], b"ic07", &[0, 0, 0, 12], &[1; 4]].concat());
    }
}
