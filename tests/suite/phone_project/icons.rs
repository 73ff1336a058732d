//! Every icon that the phones' projects want, at the size they want it.

use std::path::Path;

use super::RES;
use super::files::Project;

/// What is known of a picture.
#[derive(Debug, Clone, Copy)]
pub struct Picture {
    /// Pixels.
    pub width: u32,
    /// Pixels.
    pub height: u32,
    /// Whether it can be seen through anywhere.
    pub alpha: bool,
}

impl Picture {
    /// Reads a PNG.
    pub fn read(path: &Path) -> Self {
        let picture = image::open(path).unwrap();
        Self { width: picture.width(), height: picture.height(), alpha: picture.color().has_alpha() }
    }
}

/// Pixels for one dp. Source: Android's page on pixel densities.
const DENSITIES: [(&str, u32); 5] = [("mdpi", 2), ("hdpi", 3), ("xhdpi", 4), ("xxhdpi", 6), ("xxxhdpi", 8)];
/// Half of 108 dp, as densities are given in halves. Source: Android's page on adaptive icons.
const HALF_LAYER: u32 = 54;
/// File and side, pixels. Source: Apple's table of app icon sizes; the names are those of the Tauri CLI.
const IOS: [(&str, u32); 15] = [
    ("20x20@1x", 20),
    ("20x20@2x", 40),
    ("20x20@3x", 60),
    ("29x29@1x", 29),
    ("29x29@2x", 58),
    ("29x29@3x", 87),
    ("40x40@1x", 40),
    ("40x40@2x", 80),
    ("40x40@3x", 120),
    ("60x60@2x", 120),
    ("60x60@3x", 180),
    ("76x76@1x", 76),
    ("76x76@2x", 152),
    ("83.5x83.5@2x", 167),
    ("1024x1024@1x", 1024),
];

pub fn faults(project: &Project) -> Vec<String> {
    let mut faults = Vec::new();
    for (density, scale) in DENSITIES {
        for layer in ["foreground", "monochrome"] {
            let file = format!("{RES}/mipmap-{density}/ic_launcher_{layer}.png");
            sized(project, &file, HALF_LAYER * scale, &mut faults);
        }
    }
    for (name, side) in IOS {
        let file = format!("icons/ios/AppIcon-{name}.png");
        sized(project, &file, side, &mut faults);
        if project.pictures.get(&file).is_some_and(|picture| picture.alpha) {
            faults.push(format!("{file} has an alpha channel, which the store refuses"));
        }
    }
    faults
}

fn sized(project: &Project, file: &str, side: u32, faults: &mut Vec<String>) {
    match project.pictures.get(file) {
        None => faults.push(format!("{file} is missing")),
        Some(picture) if (picture.width, picture.height) != (side, side) => {
            faults.push(format!("{file} is {}x{}, not {side}", picture.width, picture.height));
        }
        Some(_) => {}
    }
}
