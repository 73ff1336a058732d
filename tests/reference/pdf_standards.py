"""Asks a checker that is not ours whether printed papers are PDF/A-3a and PDF/UA-1.

Not part of the suite: the checker comes from PyPI. Print the papers, then run it by hand:

    cargo test --workspace --test papers
    python3 -m venv target/venv && target/venv/bin/pip install page-validation==0.11.0
    target/venv/bin/python tests/reference/pdf_standards.py target/tmp/*.pdf

Each paper must hold both standards. Each is also damaged in three ways, and each damage must be
noticed: a checker that says yes to everything would prove nothing. The verdicts are written beside this
file with the versions that gave them.

One complaint is looked into and set aside, and each is written down: the checker finds a stream's end by going
back from `endstream` over what may be a line's end, so that where the last byte of the data is a carriage return
it counts one too few. /Length is right where so many bytes are followed by one line feed and `endstream`.
"""

import importlib.metadata
import json
import pathlib
import platform
import re
import sys

import page

PACKAGE, VERSION = "page-validation", "0.11.0"
PROFILES = {"PDF/A-3a": page.ValidationProfile.PDF_A_3A, "PDF/UA-1": page.ValidationProfile.PDF_UA_1}
# What is damaged, with what, and which standard must then fail. Lengths stay, so offsets hold.
DAMAGES = [
    ("no claim of PDF/UA", b"<pdfuaid:part>1<", b"<pdfuaid:part>9<", "PDF/UA-1"),
    ("no claim of PDF/A", b"<pdfaid:part>3<", b"<pdfaid:part>9<", "PDF/A-3a"),
    ("not marked as tagged", b"/Marked true", b"/Marked null", "PDF/UA-1"),
]


def main(names):
    found = importlib.metadata.version(PACKAGE)
    if found != VERSION:
        return f"{PACKAGE} {VERSION} is expected, {found} is installed"
    if not names:
        return "name the printed papers: target/tmp/*.pdf"
    rows, faults = [], []
    for name in names:
        paper = pathlib.Path(name)
        row, wrong = judge(paper.read_bytes())
        rows.append({"paper": paper.name, **row})
        faults += [f"{paper.name}: {fault}" for fault in wrong]
    record = {
        "checker": f"{PACKAGE} {VERSION}",
        "python": platform.python_version(),
        "papers": len(rows),
        "verdicts": sum(len(row["holds"]) + len(row["damage_noticed"]) for row in rows),
        "rows": rows,
    }
    target = pathlib.Path(__file__).with_suffix(".json")
    target.write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    print(f"{record['papers']} papers, {record['verdicts']} verdicts, {len(faults)} wrong")
    return "\n".join(faults) or None


def judge(paper):
    holds = {name: holds_to(paper, profile) for name, profile in PROFILES.items()}
    wrong = [f"{name} does not hold" for name, held in holds.items() if not held]
    noticed = {}
    for what, old, new, standard in DAMAGES:
        if paper.count(old) != 1:
            wrong.append(f"cannot be damaged: {what}")
            continue
        noticed[what] = not holds_to(paper.replace(old, new), PROFILES[standard])
        if not noticed[what]:
            wrong.append(f"damage not noticed: {what}")
    short = [fault for fault in faults_of(paper, PROFILES["PDF/A-3a"]) if counted_short(paper, fault)]
    return {"holds": holds, "damage_noticed": noticed, "streams_counted_short": len(short)}, wrong


def holds_to(paper, profile):
    return not [fault for fault in faults_of(paper, profile) if not counted_short(paper, fault)]


def faults_of(paper, profile):
    return page.validate_pdf_bytes(paper, profile=profile).failures


def counted_short(paper, fault):
    """The checker counts a stream one byte too few whose data ends in a carriage return."""
    if fault.rule_id != "PDFA3A-STREAM-LENGTH-001":
        return False
    name = f"{fault.object_id.object_number} {fault.object_id.generation} obj".encode()
    head = re.compile(rb"\n" + name + rb"\s*<<(?:(?!stream).)*?/Length (\d+).*?stream\r?\n", re.DOTALL)
    found = head.search(paper)
    end = found and found.end() + int(found[1])
    return bool(found) and paper[end - 1 : end + 10] == b"\r\nendstream"


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
