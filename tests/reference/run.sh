#!/bin/sh
# Asks general-purpose libraries from PyPI for the same numbers, pixels and codes and compares.
# `cargo xtask test --reference` runs it; exiftool is Debian's libimage-exiftool-perl.
set -eu
cd "$(dirname "$0")/../.."
venv=target/reference-venv
python="$venv/bin/python"
[ -x "$python" ] || python3 -m venv "$venv"
"$python" -m pip install --quiet --disable-pip-version-check --requirement tests/reference/requirements.txt
cargo build --locked --quiet --workspace --bin steady --bin taker --example reference
target/debug/examples/reference > target/reference-numbers.json
"$python" tests/reference/sorting.py target/reference-numbers.json
"$python" tests/reference/photos.py target/debug/taker
"$python" tests/reference/qr.py target/debug/steady
