//! The phones' sets, from the same drawing: Android's two layers in five densities, iOS's sizes.
//!
//! iOS wants a full square without an alpha channel and rounds it itself; Android cuts its own shape out of a
//! picture of 108 dp, of which only the middle 66 are always seen.

use std::fs;
use std::io::Write as _;
use std::path::Path;
use std::process::Stdio;

use super::write;
use crate::{Outcome, rooms, start};

/// Android's densities and how many pixels they have for one dp.
const DENSITIES: [(&str, f64); 5] =
    [("mdpi", 1.0), ("hdpi", 1.5), ("xhdpi", 2.0), ("xxhdpi", 3.0), ("xxxhdpi", 4.0)];

/// Side of an Android layer, dp.
const LAYER_DP: f64 = 108.0;

/// iOS: points, then the scales wanted of them.
const IOS: [(f64, &[u32]); 7] = [
    (20.0, &[1, 2, 3]),
    (29.0, &[1, 2, 3]),
    (40.0, &[1, 2, 3]),
    (60.0, &[2, 3]),
    (76.0, &[1, 2]),
    (83.5, &[2]),
    (1024.0, &[1]),
];

/// Draws both sets.
pub fn draw_all() -> Outcome<()> {
    let icons = rooms::top().join("icons");
    let svg = fs::read_to_string(icons.join("steady.svg")).map_err(|error| format!("steady.svg: {error}"))?;
    let res = rooms::top().join("src-tauri/gen/android/app/src/main/res");
    let (front, plain) = (foreground(&svg)?, monochrome(&svg)?);
    for (density, scale) in DENSITIES {
        let folder = res.join(format!("mipmap-{density}"));
        make(&folder)?;
        draw(&front, LAYER_DP * scale, &folder.join("ic_launcher_foreground.png"))?;
        draw(&plain, LAYER_DP * scale, &folder.join("ic_launcher_monochrome.png"))?;
    }
    let (full, ios) = (square(&svg)?, icons.join("ios"));
    make(&ios)?;
    for (points, scales) in IOS {
        for scale in scales {
            let file = ios.join(format!("AppIcon-{points}x{points}@{scale}x.png"));
            draw(&full, points * f64::from(*scale), &file)?;
        }
    }
    Ok(())
}

/// The drawing without its ground, with room around it.
fn foreground(svg: &str) -> Outcome<String> {
    changed(&changed(svg, GROUND, "")?, VIEW, r#"viewBox="-160 -160 832 832""#)
}

/// The same in one colour: what is light in the drawing is what is seen.
fn monochrome(svg: &str) -> Outcome<String> {
    let front = foreground(svg)?;
    let (head, body) = front.split_once('>').ok_or("steady.svg has no beginning")?;
    let body = body.trim_end().strip_suffix("</svg>").ok_or("steady.svg has no end")?;
    let seen = r##"<rect x="-160" y="-160" width="832" height="832" fill="#ffffff" mask="url(#seen)"/>"##;
    Ok(format!(r#"{head}><mask id="seen">{body}</mask>{seen}</svg>"#))
}

/// The drawing with its ground to the corners.
fn square(svg: &str) -> Outcome<String> {
    changed(svg, r#" rx="104""#, "")
}

/// How the drawing names its ground and its frame; another drawing needs other words here.
const GROUND: &str = r##"<rect width="512" height="512" rx="104" fill="#14202b"/>"##;
const VIEW: &str = r#"viewBox="0 0 512 512""#;

fn changed(svg: &str, from: &str, to: &str) -> Outcome<String> {
    if svg.matches(from).count() == 1 {
        Ok(svg.replacen(from, to, 1))
    } else {
        Err(format!("icons/steady.svg no longer holds {from} once"))
    }
}

/// One picture, with no more channels and bytes than it needs.
fn draw(svg: &str, side: f64, to: &Path) -> Outcome<()> {
    let size = format!("{side:.0}");
    let mut command = start::program("rsvg-convert", &["--width", &size, "--height", &size]);
    let failed = |error: std::io::Error| format!("rsvg-convert: {error}");
    let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().map_err(failed)?;
    if let Some(mut input) = child.stdin.take() {
        input.write_all(svg.as_bytes()).map_err(failed)?;
    }
    let output = child.wait_with_output().map_err(failed)?;
    if !output.status.success() {
        return Err("rsvg-convert failed".to_owned());
    }
    write(to, &output.stdout)?;
    start::to_the_end(start::program("optipng", &["-quiet", "-o2", "-strip", "all"]).arg(to))
}

fn make(folder: &Path) -> Outcome<()> {
    fs::create_dir_all(folder).map_err(|error| format!("{}: {error}", folder.display()))
}

#[cfg(test)]
mod tests {
    use super::{foreground, monochrome, square};

    const SVG: &str = r##"<svg viewBox="0 0 512 512">
<rect width="512" height="512" rx="104" fill="#14202b"/><path/></svg>"##;

    #[test]
    fn each_set_gets_its_own_cut_of_the_one_drawing() {
        let front = foreground(SVG).expect("the drawing's own words");
        assert!(!front.contains("rect") && front.contains("-160 -160 832 832") && front.contains("<path/>"));
        let plain = monochrome(SVG).expect("the drawing's own words");
        assert!(plain.contains("<mask id=\"seen\">\n<path/></mask>") && plain.ends_with("/></svg>"));
        assert!(!square(SVG).expect("the drawing's own words").contains("rx="));
    }

    #[test]
    fn another_drawing_is_refused_instead_of_cut_wrongly() {
        assert!(foreground("<svg></svg>").is_err());
        assert!(square("<svg></svg>").is_err());
    }
}
