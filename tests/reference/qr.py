"""Reads the short text's QR code with decoders that are not ours: ZXing and OpenCV, both from PyPI.

Not part of the suite, which decodes with a second Rust library. `cargo xtask test --reference` runs it with the
others, `run.sh` says how.

Starts `steady serve` on a scratch folder, opens a visit for each name, asks for its code in every language,
draws the code's path as pixels and has it read. The text must come back to the letter from ZXing; OpenCV,
which ignores the announced encoding, is counted beside it. The same is done with a third of the picture
covered, where nothing may be read: a reader that says yes to everything would prove nothing. What came out
is written beside this file with the versions that gave it.
"""

import importlib.metadata
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import time
import urllib.request

import cv2
import numpy
import zxingcpp

NAMES = ["Åström", "Łukasz", "O'Brien", "Nguyễn"]
# The languages there are; a way of writing one, such as en-US, says the same.
TEXTS = pathlib.Path(__file__).parents[2] / "src-tauri/core/text"
LOCALES = sorted(one.name for one in TEXTS.iterdir() if one.is_dir() and "-" not in one.name)
DOTS = 4


def main(arguments):
    if len(arguments) != 1:
        return "name the program"
    with tempfile.TemporaryDirectory() as folder:
        desk = subprocess.Popen(
            [arguments[0], "serve", "--data", folder, "--port", "0", "--no-open"],
            stdout=subprocess.PIPE,
            text=True,
        )
        try:
            rows = [read_back(ask, name, locale) for ask in [door(desk)] for name in NAMES for locale in LOCALES]
        finally:
            desk.terminate()
            desk.wait()
    faults = [f"{row['name']} in {row['locale']}" for row in rows if not row["zxing"] or row["covered"]]
    libraries = {name: importlib.metadata.version(name) for name in ["zxing-cpp", "opencv-python-headless"]}
    record = {
        "libraries": libraries,
        "codes": len(rows),
        "read_by_zxing": sum(row["zxing"] for row in rows),
        "read_by_opencv": sum(row["opencv"] for row in rows),
        "read_when_covered": sum(row["covered"] for row in rows),
        "rows": rows,
    }
    target = pathlib.Path(__file__).with_suffix(".json")
    target.write_text(json.dumps(record, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    print(json.dumps({name: record[name] for name in record if name != "rows"}))
    return "\n".join(faults) or None


def door(desk):
    """Waits for the address and gives the function that asks behind it."""
    for line in desk.stdout:
        found = re.search(r"(http://127\.0\.0\.1:\d+)/#key=(\w+)", line)
        if found:
            break
    else:
        raise SystemExit("no address")
    origin, key = found.groups()

    def ask(**request):
        request["ask"] = request["ask"].replace("_", "-")
        headers = {"Content-Type": "application/json", "X-Steady-Key": key, "Origin": origin}
        sent = urllib.request.Request(f"{origin}/api", json.dumps(request).encode(), headers)
        with urllib.request.urlopen(sent) as reply:
            return json.load(reply)

    ask(ask="set-technician", name="Kim Marsh")
    return ask


def read_back(ask, name, locale):
    intake = {"vehicle": {"layout": "rigid-engine-speed", "label": name}}
    visit = ask(ask="open", intake=intake)["visit"]
    code = ask(ask="qr-code", visit=visit, locale=locale)
    if name not in code["text"]:
        raise SystemExit(f"{name} is not in the text: {code['text']}")
    picture = drawn(code)
    covered = picture.copy()
    covered[:, : picture.shape[1] // 3] = 255
    read = zxingcpp.read_barcodes(picture)
    opencv, *_ = cv2.QRCodeDetector().detectAndDecode(picture)
    return {
        "name": name,
        "locale": locale,
        "characters": len(code["text"]),
        "modules": code["side"] - 8,
        "zxing": [one.text for one in read] == [code["text"]],
        "opencv": opencv == code["text"],
        "covered": any(one.text for one in zxingcpp.read_barcodes(covered)),
    }


def drawn(code):
    """The path as dark dots on light, by what the path is made of and nothing else."""
    side = code["side"]
    modules = numpy.full((side, side), 255, numpy.uint8)
    runs = re.findall(r"M(\d+),(\d+)h(\d+)v1h-(\d+)z", code["path"])
    if "".join(f"M{x},{y}h{run}v1h-{back}z" for x, y, run, back in runs) != code["path"]:
        raise SystemExit("the path is made of something else")
    for x, y, run, _ in runs:
        modules[int(y), int(x) : int(x) + int(run)] = 0
    return numpy.kron(modules, numpy.ones((DOTS, DOTS), numpy.uint8))


if __name__ == "__main__":
    started = time.monotonic()
    fault = main(sys.argv[1:])
    print(f"{time.monotonic() - started:.1f} s")
    sys.exit(fault)
