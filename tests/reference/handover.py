"""Reads handover files with code that is not ours: Python's zipfile, hashlib, and an Ed25519 from PyPI.

Not part of the suite: the Ed25519 comes from PyPI. Make a file, then run it by hand:

    target/debug/steady replay demo-data/03-pops-and-play.json --data target/handover-demo --new
    target/debug/steady replay demo-data/06-buzz-not-yet-under-the-car.json --data target/handover-demo --new
    target/debug/steady export --out target/demo.steady --papers --data target/handover-demo
    python3 -m venv target/venv && target/venv/bin/pip install PyNaCl==1.6.2
    target/venv/bin/python tests/reference/handover.py target/demo.steady

Every entry is read and its CRC checked by zipfile, and by unzip where it is installed; the signature is
checked over the manifest's bytes by PyNaCl (libsodium); every part is hashed; every ledger's chain is
reckoned anew from its lines. Then a byte of each kind of part, of the manifest and of the signature is
changed, and each change must be noticed: a check that says yes to everything would prove nothing. What
came out is written beside this file with the versions that gave it.
"""

import hashlib
import importlib.metadata
import io
import json
import pathlib
import platform
import shutil
import subprocess
import sys
import zipfile

import nacl.exceptions
import nacl.signing

PACKAGE, VERSION = "PyNaCl", "1.6.2"


def main(names):
    found = importlib.metadata.version(PACKAGE)
    if found != VERSION:
        return f"{PACKAGE} {VERSION} is expected, {found} is installed"
    if not names:
        return "name the handover files"
    rows, faults = [], []
    for name in names:
        path = pathlib.Path(name)
        row, wrong = judge(path)
        rows.append({"file": path.name, **row})
        faults += [f"{path.name}: {fault}" for fault in wrong]
    record = {
        "reader": f"zipfile of Python {platform.python_version()}",
        "signature": f"{PACKAGE} {VERSION}",
        "unzip": unzip_version(),
        "rows": rows,
    }
    target = pathlib.Path(__file__).with_suffix(".json")
    target.write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    print(f"{len(rows)} files, {len(faults)} faults")
    return "\n".join(faults) or None


def judge(path):
    parts = read(path)
    wrong = faults_of(parts)
    if unzip_version() and subprocess.run(["unzip", "-tqq", path], check=False).returncode != 0:
        wrong.append("unzip finds a fault")
    noticed = {}
    for name in one_of_each(parts):
        changed = dict(parts)
        middle = len(parts[name]) // 2
        changed[name] = parts[name][:middle] + bytes([parts[name][middle] ^ 1]) + parts[name][middle + 1 :]
        noticed[kind(name)] = bool(faults_of(changed))
    wrong += [f"change not noticed: {name}" for name, seen in noticed.items() if not seen]
    counts = {}
    for name in parts:
        counts[kind(name)] = counts.get(kind(name), 0) + 1
    lines = sum(parts[name].count(b"\n") for name in parts if kind(name) == "visits")
    return {"entries": counts, "ledger_lines": lines, "damage_noticed": noticed}, wrong


def read(path):
    """Every entry's bytes by name; zipfile checks the CRC of each."""
    with zipfile.ZipFile(io.BytesIO(path.read_bytes())) as archive:
        infos = archive.infolist()
        assert len({info.filename for info in infos}) == len(infos), "one name twice"
        assert all(info.compress_type == zipfile.ZIP_STORED for info in infos), "something is compressed"
        return {info.filename: archive.read(info) for info in infos}


def faults_of(parts):
    try:
        manifest = json.loads(parts["manifest.json"])
        key = nacl.signing.VerifyKey(bytes.fromhex(manifest["device"]))
        key.verify(parts["manifest.json"], parts["manifest.sig"])
    except (nacl.exceptions.BadSignatureError, ValueError, KeyError) as fault:
        return [f"signature: {type(fault).__name__}"]
    faults = []
    listed = [part["name"] for part in manifest["parts"]]
    if ["manifest.json", "manifest.sig", *listed] != list(parts):
        faults.append("the manifest lists other parts")
    for part in manifest["parts"]:
        data = parts.get(part["name"], b"")
        if len(data) != part["bytes"] or hashlib.sha256(data).hexdigest() != part["sha256"]:
            faults.append(f"changed: {part['name']}")
        elif kind(part["name"]) == "visits" and not chain_holds(data):
            faults.append(f"chain: {part['name']}")
    return faults


def chain_holds(data):
    """Each line's hash over its fields and the hash of the line before it, and its device's signature over the hash."""
    before = {}
    for line in map(json.loads, data.decode("utf-8").splitlines()):
        seq, prev = before.get(line["device"], (0, "0" * 64))
        fields = [line["visit"], line["device"], line["seq"], line["at"], line["prev"], line["body"]]
        text = "\n".join(["steady entry 1", *map(str, fields)])
        right = hashlib.sha256(text.encode("utf-8")).hexdigest()
        if (line["seq"], line["prev"], line["hash"]) != (seq + 1, prev, right):
            return False
        try:
            key = nacl.signing.VerifyKey(bytes.fromhex(line["device"]))
            key.verify(f"steady line 1\n{right}".encode("ascii"), bytes.fromhex(line["signature"]))
        except (nacl.exceptions.BadSignatureError, ValueError, KeyError):
            return False
        json.loads(line["body"])
        before[line["device"]] = (line["seq"], line["hash"])
    return bool(before)


def one_of_each(parts):
    found = {}
    for name in parts:
        found.setdefault(kind(name), name)
    return found.values()


def kind(name):
    return name.split("/")[0]


def unzip_version():
    if not shutil.which("unzip"):
        return None
    return subprocess.run(["unzip", "-v"], capture_output=True, text=True, check=False).stdout.splitlines()[0].strip()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
