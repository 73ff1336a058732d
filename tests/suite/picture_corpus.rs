//! A corpus of hostile and odd pictures, made anew at each run. Each row says what must become of it: the code it is
//! refused under, or the size of the photo that is kept of it.

use jpeg_encoder::{ColorType, SamplingFactor};

use crate::picture_files::{
    Coding, Header, PLAIN, SIGNATURE, TRUE_COLOUR, changed, chunk, claiming, entry, first, head, jpeg,
    markers, packed, plain_png, png, rows, segment, small, tagged, tiff, with,
};

const NO_PICTURE: &str = "photo-not-an-image";
const CUT_SHORT: &str = "photo-cut-short";
const FORMAT: &str = "photo-format";
const HEIC: &str = "photo-heic";
const TOO_LARGE: &str = "photo-too-large";
/// What a sound picture of the size used throughout becomes.
const SMALL: &str = "24x16";

/// What each file is, its bytes, and what becomes of it.
pub type Corpus = Vec<(String, Vec<u8>, &'static str)>;

/// Every picture that is short.
pub fn corpus() -> Corpus {
    let kinds = [
        jpegs_cut_short,
        pngs_cut_short,
        other_kinds,
        jpegs_that_claim,
        jpegs_gone_wrong,
        jpegs_that_are_odd_and_sound,
        pngs_that_claim,
        pngs_gone_wrong,
        pngs_that_are_odd_and_sound,
        tags_gone_wrong,
    ];
    kinds.iter().flat_map(|kind| kind()).collect()
}

/// Short or long files whose decoding takes much memory or would like to.
pub fn bombs() -> Corpus {
    let gray = |side, bits, interlaced| Header { width: side, height: side, bits, color: 0, interlaced };
    let large = Header { width: 12_000, height: 12_000, ..TRUE_COLOUR };
    let progressive = jpeg(24, 16, Coding { scans: Some(4), ..PLAIN });
    let mut long = small();
    long.resize(60 * 1024 * 1024, 0);
    let rows: Vec<(&str, Vec<u8>, &'static str)> = vec![
        ("144 megapixels of zeros in one bit each", plain_png(gray(12_000, 1, 0)), "2560x2560"),
        ("the same in seven passes", plain_png(gray(12_000, 1, 1)), TOO_LARGE),
        ("36 megapixels in seven passes", plain_png(gray(6_000, 1, 1)), "2560x2560"),
        ("36 megapixels of zeros in 16 bits", plain_png(gray(6_000, 16, 0)), "2560x2560"),
        (
            "144 megapixels claimed, one row there",
            png(&[head(large), chunk(b"IDAT", &packed(&[0; 36_001])), chunk(b"IEND", b"")]),
            NO_PICTURE,
        ),
        ("a JPEG that claims 144 megapixels", claiming(&small(), 12_000, 12_000), CUT_SHORT),
        ("a progressive one", claiming(&progressive, 12_000, 12_000), TOO_LARGE),
        ("a progressive one of 81 megapixels", claiming(&progressive, 9_000, 9_000), CUT_SHORT),
        ("60 MB of zeros behind a sound picture", long.clone(), SMALL),
        ("one byte over 60 MB", [&long[..], &[0]].concat(), TOO_LARGE),
    ];
    rows.into_iter().map(|(what, bytes, expected)| (what.to_owned(), bytes, expected)).collect()
}

fn named(rows: Vec<(&str, Vec<u8>, &'static str)>) -> Corpus {
    rows.into_iter().map(|(what, bytes, expected)| (what.to_owned(), bytes, expected)).collect()
}

/// Three ways of coding, cut before, within and behind each marker.
fn jpegs_cut_short() -> Corpus {
    let mut found = Corpus::new();
    let exif = tagged(&tiff(&[entry(0x0112, 3, 1, 6 << 16)], 0, &[]));
    for (name, whole) in [
        ("a JPEG", exif),
        ("a progressive one", jpeg(24, 16, Coding { scans: Some(4), ..PLAIN })),
        ("one with restarts", jpeg(48, 32, Coding { restart: 1, ..PLAIN })),
    ] {
        for (at, marker) in markers(&whole) {
            for (place, length) in [("before", at), ("within", at + 1), ("behind", at + 3)] {
                if length < whole.len() {
                    let expected = if length < 3 { NO_PICTURE } else { CUT_SHORT };
                    let what = format!("{name} cut {place} marker {marker:02x} at {at}");
                    found.push((what, whole[..length].to_vec(), expected));
                }
            }
        }
        let scan = first(&whole, 0xda);
        for share in 1..6 {
            let length = scan + (whole.len() - scan) * share / 6;
            found.push((format!("{name} cut in its scan at {length}"), whole[..length].to_vec(), CUT_SHORT));
        }
    }
    found
}

fn pngs_cut_short() -> Corpus {
    let whole = plain_png(Header { color: 3, ..TRUE_COLOUR });
    let data = whole.windows(4).position(|kind| kind == b"IDAT").unwrap();
    let mut found = Corpus::new();
    for length in (0..data + 4).step_by(5) {
        let expected = if length < 8 { NO_PICTURE } else { CUT_SHORT };
        found.push((format!("a PNG cut at {length}"), whole[..length].to_vec(), expected));
    }
    found.push(("a PNG cut within its data".to_owned(), whole[..data + 6].to_vec(), CUT_SHORT));
    found
}

/// Files of another kind, or of none.
fn other_kinds() -> Corpus {
    let zeros = |head: &[u8]| [head, &[0; 200]].concat();
    let brand = |brand: &[u8]| zeros(&[&[0, 0, 0, 24], &b"ftyp"[..], brand].concat());
    named(vec![
        ("nothing", Vec::new(), NO_PICTURE),
        ("one byte", vec![0xff], NO_PICTURE),
        ("the start of a JPEG", vec![0xff, 0xd8], NO_PICTURE),
        ("the start of a marker", vec![0xff, 0xd8, 0xff], CUT_SHORT),
        ("a PNG's signature", SIGNATURE.to_vec(), CUT_SHORT),
        ("zeros", zeros(b""), NO_PICTURE),
        ("ones", vec![0xff; 100_000], NO_PICTURE),
        ("a text", b"not a picture at all".to_vec(), NO_PICTURE),
        ("a page", b"<!doctype html><script>alert(1)</script>".to_vec(), NO_PICTURE),
        ("a drawing", b"<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"x()\"/>".to_vec(), NO_PICTURE),
        (
            "a drawing that calls itself",
            b"<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"&a;\">]>".to_vec(),
            NO_PICTURE,
        ),
        ("a paper", zeros(b"%PDF-1.7\n"), NO_PICTURE),
        ("a program", zeros(b"\x7fELF\x02\x01\x01"), NO_PICTURE),
        ("another program", zeros(b"MZ\x90\0"), NO_PICTURE),
        ("a zip", zeros(b"PK\x03\x04\x14\0"), NO_PICTURE),
        ("a GIF", zeros(b"GIF89a\x01\0\x01\0"), FORMAT),
        ("an old GIF", zeros(b"GIF87a\xff\xff\xff\xff"), FORMAT),
        ("a WebP", zeros(b"RIFF\xff\xff\xff\xffWEBPVP8L"), FORMAT),
        ("a sound", zeros(b"RIFF\xff\xff\xff\xffWAVEfmt "), NO_PICTURE),
        ("a TIFF", zeros(b"II\x2a\0\x08\0\0\0"), FORMAT),
        ("a TIFF the other way round", zeros(b"MM\0\x2a\0\0\0\x08"), FORMAT),
        ("a bitmap", zeros(b"BM\xff\xff\xff\x7f"), FORMAT),
        ("an icon", zeros(b"\0\0\x01\0\x01\0"), FORMAT),
        ("a plain pixmap", zeros(b"P6\n99999 99999\n255\n"), FORMAT),
        ("a QOI", zeros(b"qoif\xff\xff\xff\xff"), FORMAT),
        ("an HEIC", brand(b"heic"), HEIC),
        ("an HEIF of another brand", brand(b"mif1"), HEIC),
        ("an AVIF", brand(b"avif"), FORMAT),
        ("a film", brand(b"isom"), FORMAT),
        ("a film without a brand", zeros(b"\0\0\0\x08ftyp"), FORMAT),
        ("a JPEG 2000", zeros(b"\0\0\0\x0cjP  \r\n\x87\n"), NO_PICTURE),
        ("a JPEG XL", zeros(b"\xff\x0a\xff\x07"), NO_PICTURE),
        ("a JPEG behind a line feed", [b"\n", &small()[..]].concat(), NO_PICTURE),
        ("a JPEG behind a paper's head", [b"%PDF-1.7\n", &small()[..]].concat(), NO_PICTURE),
        ("a JPEG behind a GIF's head", [b"GIF89a", &small()[..]].concat(), FORMAT),
        (
            "a PNG's signature that went through a text mode",
            [b"\x89PNG\n\x1a\n", &plain_png(TRUE_COLOUR)[8..]].concat(),
            NO_PICTURE,
        ),
    ])
}

/// A picture that claims somewhat more than its scan holds, with its end in place, cannot be told from a whole one
/// without decoding it twice: the rest of it is grey. One that claims much more is found by its length.
fn jpegs_that_claim() -> Corpus {
    let mut found = Corpus::new();
    for (height, width, expected) in [
        (0, 24, NO_PICTURE),
        (16, 0, NO_PICTURE),
        (0, 0, NO_PICTURE),
        (12_001, 24, TOO_LARGE),
        (16, 12_001, TOO_LARGE),
        (u16::MAX, u16::MAX, TOO_LARGE),
        (u16::MAX, 1, TOO_LARGE),
        (1, u16::MAX, TOO_LARGE),
        (160, 24, "24x160"),
        (16, 240, "240x16"),
        (1_600, 1_600, CUT_SHORT),
    ] {
        found.push((
            format!("a JPEG that claims {width} by {height}"),
            claiming(&small(), height, width),
            expected,
        ));
    }
    found
}

fn jpegs_gone_wrong() -> Corpus {
    let whole = small();
    let frame = first(&whole, 0xc0);
    let scan = first(&whole, 0xda);
    let tables = first(&whole, 0xdb);
    let codes = first(&whole, 0xc4);
    let data = scan + 2 + usize::from(whole[scan + 3]);
    let end = [0xff, 0xd9];
    let mut found = named(vec![
        ("start and end", vec![0xff, 0xd8, 0xff, 0xd9], NO_PICTURE),
        ("no scan", [&whole[..scan], &end].concat(), NO_PICTURE),
        ("a scan of nothing", [&whole[..data], &end].concat(), SMALL),
        ("half a scan", [&whole[..data + (whole.len() - data) / 2], &end].concat(), SMALL),
        ("a scan of ones", [&whole[..data], &[0xff, 0].repeat(50), &end].concat(), NO_PICTURE),
        ("a scan before its frame", [&whole[..frame], &whole[scan..]].concat(), NO_PICTURE),
        ("two frames", with(&whole, frame, &whole[frame..scan]), NO_PICTURE),
        (
            "a second frame of 65,535 a side",
            with(&whole, scan, &claiming(&whole, u16::MAX, u16::MAX)[frame..frame + 19]),
            NO_PICTURE,
        ),
        ("a frame of no component", changed(&whole, frame + 9, &[0]), NO_PICTURE),
        ("a frame of 255 components", changed(&whole, frame + 9, &[255]), NO_PICTURE),
        ("a component sampled 0 times", changed(&whole, frame + 11, &[0]), NO_PICTURE),
        ("a component sampled 15 times", changed(&whole, frame + 11, &[0xff]), NO_PICTURE),
        ("a component without its table", changed(&whole, frame + 12, &[3]), NO_PICTURE),
        ("a frame of 12 bits", changed(&whole, frame + 4, &[12]), FORMAT),
        ("a scan of no component", changed(&whole, scan + 4, &[0]), NO_PICTURE),
        ("a scan of 200 components", changed(&whole, scan + 4, &[200]), NO_PICTURE),
        ("a scan of a stranger's component", changed(&whole, scan + 5, &[77]), NO_PICTURE),
        ("a scan with codes that are not there", changed(&whole, scan + 6, &[0x33]), NO_PICTURE),
        ("codes that overflow", changed(&whole, codes + 5, &[0xff; 16]), NO_PICTURE),
        ("codes of class 15", changed(&whole, codes + 4, &[0xff]), NO_PICTURE),
        ("tables of number 15", changed(&whole, tables + 4, &[0x0f]), NO_PICTURE),
        ("no tables", [&whole[..tables], &whole[frame..]].concat(), NO_PICTURE),
        ("a segment of length 0", changed(&whole, tables + 2, &[0, 0]), NO_PICTURE),
        ("a segment of length 1", changed(&whole, tables + 2, &[0, 1]), NO_PICTURE),
        ("a segment longer than the file", changed(&whole, tables + 2, &[0xff, 0xff]), CUT_SHORT),
        ("a restart interval of 3 bytes", with(&whole, scan, &[0xff, 0xdd, 0, 3, 9]), NO_PICTURE),
        ("a height that is given later", with(&whole, scan, &[0xff, 0xdc, 0, 4, 0, 16]), NO_PICTURE),
    ]);
    for code in [0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf] {
        found.push((format!("a frame of kind {code:02x}"), changed(&whole, frame + 1, &[code]), FORMAT));
    }
    let progressive = jpeg(24, 16, Coding { scans: Some(4), ..PLAIN });
    let at = markers(&progressive).iter().rev().find(|(_, marker)| *marker == 0xda).unwrap().0;
    let last = &progressive[at..progressive.len() - 2];
    for scans in [101, 5_000] {
        let many = [&progressive[..at], &last.repeat(scans), &end].concat();
        found.push((format!("{scans} scans"), many, NO_PICTURE));
    }
    found
}

fn jpegs_that_are_odd_and_sound() -> Corpus {
    let whole = small();
    let film = [0xff, 0xd9, 0xff, 0xda, 0x12].repeat(10_000);
    let mut found = named(vec![
        ("a film behind it", [&whole[..], b"\0\0\0\x18ftypmp42", &film].concat(), SMALL),
        ("a larger JPEG behind it", [&whole[..], &jpeg(640, 480, PLAIN)].concat(), SMALL),
        ("a zip behind it", [&whole[..], b"PK\x05\x06", &[0; 18]].concat(), SMALL),
        (
            "a page in a comment",
            with(&whole, 2, &segment(0xfe, b"<?php system($_GET[0]); ?><script>")),
            SMALL,
        ),
        ("a JPEG in a segment", with(&whole, 2, &segment(0xe1, &whole)), SMALL),
        ("fill bytes before a marker", with(&whole, 2, &[0xff; 9]), SMALL),
        ("10,000 comments", with(&whole, 2, &segment(0xfe, b"").repeat(10_000)), SMALL),
        (
            "a colour profile cut in 200 pieces",
            with(&whole, 2, &segment(0xe2, b"ICC_PROFILE\0\x01\xc8").repeat(200)),
            SMALL,
        ),
        ("one pixel", jpeg(1, 1, PLAIN), "1x1"),
        ("12,000 by 1", jpeg(12_000, 1, PLAIN), "2560x1"),
        ("1 by 12,000", jpeg(1, 12_000, PLAIN), "1x2560"),
    ]);
    for (name, coding) in [
        ("grey", Coding { color: ColorType::Luma, ..PLAIN }),
        ("CMYK", Coding { color: ColorType::Cmyk, ..PLAIN }),
        ("YCCK", Coding { color: ColorType::CmykAsYcck, ..PLAIN }),
        ("no subsampling", Coding { sampling: SamplingFactor::F_1_1, ..PLAIN }),
        ("4:2:2", Coding { sampling: SamplingFactor::F_2_1, ..PLAIN }),
        ("4:4:0", Coding { sampling: SamplingFactor::F_1_2, ..PLAIN }),
        ("4:1:1", Coding { sampling: SamplingFactor::F_4_1, ..PLAIN }),
        ("progressive in 4 scans", Coding { scans: Some(4), ..PLAIN }),
        ("progressive in 20 steps", Coding { scans: Some(20), ..PLAIN }),
        ("a restart at each block", Coding { restart: 1, ..PLAIN }),
        ("progressive and grey", Coding { color: ColorType::Luma, scans: Some(10), ..PLAIN }),
    ] {
        found.push((name.to_owned(), jpeg(24, 16, coding), SMALL));
    }
    // The decoder does not read these; no camera writes them.
    let press = Coding { color: ColorType::Cmyk, scans: Some(10), ..PLAIN };
    found.push(("progressive and CMYK".to_owned(), jpeg(24, 16, press), NO_PICTURE));
    found
}

fn pngs_that_claim() -> Corpus {
    let sized = |width, height| plain_head(Header { width, height, ..TRUE_COLOUR });
    named(vec![
        ("a PNG of no width", sized(0, 16), NO_PICTURE),
        ("a PNG of no height", sized(24, 0), NO_PICTURE),
        ("a PNG 12,001 wide", sized(12_001, 16), TOO_LARGE),
        ("a PNG 12,001 high", sized(24, 12_001), TOO_LARGE),
        ("a PNG of 2^31 - 1 a side", sized(0x7fff_ffff, 0x7fff_ffff), TOO_LARGE),
        ("a PNG of 2^32 - 1 a side", sized(u32::MAX, u32::MAX), TOO_LARGE),
        ("a PNG that holds less than it claims", sized(24, 160), NO_PICTURE),
    ])
}

/// The header as told, and the data of the small picture.
fn plain_head(header: Header) -> Vec<u8> {
    png(&[head(header), chunk(b"IDAT", &packed(&rows(TRUE_COLOUR))), chunk(b"IEND", b"")])
}

fn pngs_gone_wrong() -> Corpus {
    let end = chunk(b"IEND", b"");
    let good = head(TRUE_COLOUR);
    let data = chunk(b"IDAT", &packed(&rows(TRUE_COLOUR)));
    let header = |bits, color, interlaced| plain_head(Header { bits, color, interlaced, ..TRUE_COLOUR });
    let odd = |place: usize| changed(&plain_head(TRUE_COLOUR), 16 + place, &[9]);
    let chunks =
        |middle: &[Vec<u8>]| png(&[std::slice::from_ref(&good), middle, std::slice::from_ref(&end)].concat());
    let sum = data.len() - 1;
    named(vec![
        ("3 bits a sample", header(3, 2, 0), NO_PICTURE),
        ("1 bit of true colour", header(1, 2, 0), NO_PICTURE),
        ("colours of kind 5", header(8, 5, 0), NO_PICTURE),
        ("a table of colours that is not there", header(8, 3, 0), NO_PICTURE),
        ("packed in an unknown way", odd(10), NO_PICTURE),
        ("filtered in an unknown way", odd(11), NO_PICTURE),
        ("interlaced in an unknown way", odd(12), NO_PICTURE),
        ("no header", png(&[data.clone(), end.clone()]), NO_PICTURE),
        (
            "a header of 12 bytes",
            png(&[chunk(b"IHDR", &[0, 0, 0, 24, 0, 0, 0, 16, 8, 2, 0, 0]), data.clone(), end.clone()]),
            NO_PICTURE,
        ),
        ("two headers", chunks(&[head(Header { width: 12_000, ..TRUE_COLOUR }), data.clone()]), NO_PICTURE),
        ("a header with another sum", changed(&plain_head(TRUE_COLOUR), 29, &[0]), NO_PICTURE),
        ("data with another sum", chunks(&[changed(&data, sum, &[data[sum] ^ 1])]), NO_PICTURE),
        ("no data", chunks(&[]), NO_PICTURE),
        ("data that is not packed", chunks(&[chunk(b"IDAT", &rows(TRUE_COLOUR))]), NO_PICTURE),
        (
            "a filter of kind 9",
            chunks(&[chunk(b"IDAT", &packed(&vec![9; rows(TRUE_COLOUR).len()]))]),
            NO_PICTURE,
        ),
        ("a chunk of 2^32 - 1 bytes", chunks(&[[&[0xff; 4], &b"IDAT"[..], &[0; 40]].concat()]), NO_PICTURE),
        ("a chunk that nobody knows and must", chunks(&[chunk(b"XXXX", b"?"), data.clone()]), NO_PICTURE),
        ("a JPEG where the data should be", chunks(&[chunk(b"IDAT", &small())]), NO_PICTURE),
    ])
}

fn pngs_that_are_odd_and_sound() -> Corpus {
    let good = head(TRUE_COLOUR);
    let data = chunk(b"IDAT", &packed(&rows(TRUE_COLOUR)));
    let before = |middle: Vec<u8>| png(&[good.clone(), middle, data.clone(), chunk(b"IEND", b"")]);
    let million = packed(&vec![0; 64_000_000]);
    let loops = tiff(&[entry(0x8769, 4, 1, 8)], 8, &[]);
    let mut found = named(vec![
        ("a zip behind a PNG", [&plain_png(TRUE_COLOUR)[..], b"PK\x05\x06", &[0; 18]].concat(), SMALL),
        ("a text of 64 MB, packed", before(chunk(b"zTXt", &[b"Comment\0\0", &million[..]].concat())), SMALL),
        (
            "a colour profile of 64 MB, packed",
            before(chunk(b"iCCP", &[b"x\0\0", &million[..]].concat())),
            SMALL,
        ),
        (
            "a translated text of 64 MB, packed",
            before(chunk(b"iTXt", &[b"x\0\x01\0\0\0", &million[..]].concat())),
            SMALL,
        ),
        ("10,000 chunks of nothing", before(chunk(b"teXt", b"").repeat(10_000)), SMALL),
        ("tags that call themselves", before(chunk(b"eXIf", &loops)), SMALL),
        (
            "data one byte a chunk",
            {
                let pieces: Vec<u8> =
                    packed(&rows(TRUE_COLOUR)).iter().flat_map(|byte| chunk(b"IDAT", &[*byte])).collect();
                png(&[good.clone(), pieces, chunk(b"IEND", b"")])
            },
            SMALL,
        ),
    ]);
    for (color, depths) in
        [(0, &[1, 2, 4, 8, 16][..]), (2, &[8, 16]), (3, &[1, 2, 4, 8]), (4, &[8, 16]), (6, &[8, 16])]
    {
        for bits in depths {
            for interlaced in [0, 1] {
                let header = Header { bits: *bits, color, interlaced, ..TRUE_COLOUR };
                let what = format!("a PNG of colour type {color}, {bits} bits, interlacing {interlaced}");
                found.push((what, plain_png(header), SMALL));
            }
        }
    }
    found
}

/// Tags never refuse a picture, whatever they say.
fn tags_gone_wrong() -> Corpus {
    let one = |tag, kind, count, value| tiff(&[entry(tag, kind, count, value)], 0, &[]);
    let turned = |value: u32| one(0x0112, 3, 1, value << 16);
    let dated = |text: &[u8]| {
        let exif = [
            &1_u16.to_be_bytes()[..],
            &entry(0x9003, 2, u32::try_from(text.len()).unwrap(), 44),
            &[0; 4],
            text,
        ];
        tiff(&[entry(0x8769, 4, 1, 26)], 0, &exif.concat())
    };
    let many: Vec<Vec<u8>> = (0..5_000).map(|_| entry(0x0112, 3, 1, 6 << 16)).collect();
    let mut found = Corpus::new();
    for (what, tags, expected) in [
        ("a directory that follows itself", tiff(&[entry(0x0100, 3, 1, 1)], 8, &[]), SMALL),
        ("a directory within itself", one(0x8769, 4, 1, 8), SMALL),
        ("a place within itself", one(0x8825, 4, 1, 8), SMALL),
        ("a directory beyond the end", one(0x8769, 4, 1, 0xffff_fff0), SMALL),
        ("2^32 - 1 values", one(0x9003, 2, u32::MAX, 8), SMALL),
        ("2^32 - 1 fractions", one(0x829a, 5, u32::MAX, 8), SMALL),
        ("5,000 orientations", tiff(&many, 0, &[]), "16x24"),
        ("65,535 entries claimed", b"MM\0\x2a\0\0\0\x08\xff\xff".to_vec(), SMALL),
        ("a kind of value that nobody knows", one(0x9003, 99, 1, 0), SMALL),
        (
            "a thumbnail beyond the end",
            tiff(&[entry(0x0201, 4, 1, 0xffff), entry(0x0202, 4, 1, u32::MAX)], 0, &[]),
            SMALL,
        ),
        ("orientation 0", turned(0), SMALL),
        ("orientation 9", turned(9), SMALL),
        ("orientation 65,535", turned(65_535), SMALL),
        ("orientation 6", turned(6), "16x24"),
        ("an orientation in words", one(0x0112, 2, 4, 0x726f_756e), SMALL),
        ("no tags", Vec::new(), SMALL),
        ("half a head", b"MM\0".to_vec(), SMALL),
        ("a head of neither order", b"XX\0\x2a\0\0\0\x08\0\0".to_vec(), SMALL),
        ("little-endian nonsense", b"II\x2a\0\xff\xff\xff\xff".to_vec(), SMALL),
        (
            "a directory within the head, and a second head behind it",
            [&b"MM\0\x2a\0\0\0\x01\0\0\0\0\0\x01\xef"[..], &one(0x8769, 4, 1, 8)].concat(),
            SMALL,
        ),
        ("64 KB of ones", vec![0xff; 65_000], SMALL),
        ("the year 0", dated(b"0000:00:00 00:00:00\0"), SMALL),
        ("the 99th of the 99th", dated(b"9999:99:99 99:99:99\0"), SMALL),
        ("a time in words", dated(b"yesterday at about 9\0"), SMALL),
        ("a time of 60 KB", dated(&[b'2'; 60_000]), SMALL),
        ("a time that is no text", dated(&[0xff; 20]), SMALL),
        ("a time that breaks the line", dated(b"2026:11:25\n09:30:00\0"), SMALL),
        ("no time", dated(b"\0"), SMALL),
    ] {
        found.push((what.to_owned(), tagged(&tags), expected));
    }
    let twice = with(&tagged(&turned(6)), 2, &segment(0xe1, &[b"Exif\0\0", &turned(3)[..]].concat()));
    // Which of the two counts is written down nowhere; it is the later one here.
    found.push(("tags twice".to_owned(), twice, "16x24"));
    found
}
