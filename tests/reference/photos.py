"""Holds photo intake against an imaging library and a reader of tags that are not ours.

Not part of the suite: Pillow comes from PyPI, exiftool from Debian (libimage-exiftool-perl).
`cargo xtask test --reference` runs it with the others, `run.sh` says how.

- Orientation: Pillow writes a picture that looks different from every side under each of the eight values of tag
  0x0112, and stands each upright (`ImageOps.exif_transpose`). The samples and the upright pixels are written to
  `photos.json`; the suite takes each sample in and compares pixel by pixel.
- Private tags: Pillow and exiftool put a place, a serial number, names, comments, a maker's block and a thumbnail
  into a JPEG; exiftool must find them there. The core takes that photo in (`tests/recorder/taker.rs`), and exiftool
  must find none of them in the photo and the thumbnail to be kept: only what it says of any file, and JFIF's own
  segment.
"""

import base64
import importlib.metadata
import io
import json
import pathlib
import platform
import subprocess
import sys
import tempfile

from PIL import Image, ImageOps

VERSION = "13.0.0"
WIDTH, HEIGHT = 48, 32
# What exiftool says of any file; JFIF's segment holds its version and its density.
HARMLESS = {"SourceFile", "ExifTool", "File", "JFIF", "Composite"}
PLANTED = {
    "GPSLatitude": "47.5", "GPSLatitudeRef": "N", "GPSLongitude": "8.5", "GPSLongitudeRef": "E",
    "GPSAltitude": "400", "SerialNumber": "SN-4417", "OwnerName": "Kim Marsh", "Artist": "Kim Marsh",
    "Comment": "in the yard", "XMP:Creator": "Kim Marsh", "IPTC:City": "Nowhere", "ImageDescription": "yard",
    "LensSerialNumber": "L-1", "DateTimeOriginal": "2026:11:25 09:30:00",
}


def main(words):
    found = importlib.metadata.version("Pillow")
    if found != VERSION:
        return f"Pillow {VERSION} is expected, {found} is installed"
    if len(words) != 1:
        return "name the program: target/debug/taker"
    tags, faults = private_tags(pathlib.Path(words[0]))
    record = {
        "versions": {"Pillow": VERSION, "exiftool": asked("exiftool", "-ver").strip(),
                     "python": platform.python_version()},
        "private_tags": tags,
        "orientation": [sample(value) for value in range(1, 9)],
    }
    target = pathlib.Path(__file__).with_suffix(".json")
    target.write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    print(f"8 orientations written, {len(tags)} files read for tags, {len(faults)} faults")
    return "\n".join(faults) or None


def picture():
    """Red grows to the right, green downwards, blue both ways: smooth, so that coding anew changes little."""
    def shade(x, y):
        return 5 * x, 7 * y, 2 * (x + y)
    made = Image.new("RGB", (WIDTH, HEIGHT))
    made.putdata([shade(x, y) for y in range(HEIGHT) for x in range(WIDTH)])
    return made


def sample(orientation):
    tags = Image.Exif()
    tags[0x0112] = orientation
    file = io.BytesIO()
    picture().save(file, "JPEG", quality=95, subsampling=0, exif=tags)
    upright = ImageOps.exif_transpose(Image.open(io.BytesIO(file.getvalue()))).convert("RGB")
    coded = {"orientation": orientation, "jpeg": file.getvalue(), "upright": upright.tobytes()}
    row = {key: base64.b64encode(value).decode() if isinstance(value, bytes) else value
           for key, value in coded.items()}
    return {**row, "width": upright.width, "height": upright.height}


def private_tags(taker):
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        photo = folder / "photo.jpg"
        picture().resize((640, 480)).save(photo, "JPEG", quality=90, comment=b"in the yard")
        thumbnail = folder / "small.jpg"
        picture().save(thumbnail, "JPEG")
        planted = [f"-{tag}={value}" for tag, value in PLANTED.items()]
        asked("exiftool", "-q", "-overwrite_original", *planted, f"-ThumbnailImage<={thumbnail}", str(photo))
        given, kept = folder / "given", folder / "kept"
        for made in (given, kept):
            made.mkdir()
        photo = photo.rename(given / "photo.jpg")
        asked(str(taker.resolve()), str(given), str(kept))
        rows = [{"file": name, **groups(path)} for name, path in
                [("given", photo), ("kept", kept / "full.jpg"), ("thumbnail", kept / "thumb.jpg")]]
    faults = []
    missing = {"EXIF", "GPS", "XMP", "IPTC"} - set(rows[0]["groups"])
    if missing:
        faults.append(f"given: nothing planted in {sorted(missing)}")
    faults += [f"{row['file']}: {row['private']}" for row in rows[1:] if row["private"]]
    return rows, faults


def groups(path):
    """How many tags exiftool finds in each group, and the names of those that are not harmless."""
    told = json.loads(asked("exiftool", "-json", "-G0:1", "-a", "-u", "-U", "-ee", str(path)))[0]
    counts, private = {}, []
    for name in told:
        family = name.split(":")
        group = "GPS" if "GPS" in family[:-1] else family[0]
        counts[group] = counts.get(group, 0) + 1
        if group not in HARMLESS or family[-1] == "Comment":
            private.append(name)
    return {"groups": counts, "private": sorted(private)}


def asked(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
