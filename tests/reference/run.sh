#!/bin/sh
# Asks general-purpose libraries from PyPI for the same numbers and compares. `cargo xtask test --reference` runs it.
set -eu
cd "$(dirname "$0")/../.."
venv=target/reference-venv
[ -x "$venv/bin/python" ] || python3 -m venv "$venv"
"$venv/bin/pip" install --quiet --disable-pip-version-check --requirement tests/reference/requirements.txt
cargo build --quiet --workspace --example reference
target/debug/examples/reference > target/reference-numbers.json
"$venv/bin/python" tests/reference/sorting.py target/reference-numbers.json
