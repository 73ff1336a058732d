"""Asks libraries that are not ours for what the gauge and the fit work out, and writes their answers down.

Not part of the suite: the libraries come from PyPI. isofits installs modules with plain names, so it gets
a folder of its own.

    python3 -m venv target/venv
    target/venv/bin/pip install GTC==1.5.1 pressfit==0.1.0 scipy==1.17.1 numpy==2.4.6
    target/venv/bin/pip install --target target/isofits isofits==1.0
    target/venv/bin/python tests/reference/gauge_fit.py

- Student's t: scipy.
- The shipped gauge measurements: GTC, which finds sensitivities by itself, from the readings on.
- Trends: numpy's weighted polynomial fit.
- Hole classes: isofits for the limits, pressfit for the width of the grade.
- Pressed rings: numpy solves for the two constants of every ring at once (displacement A r + B / r).

The suite compares `gauge_fit.json` with our own numbers and counts what it compared.
"""

import importlib.metadata
import json
import math
import pathlib
import platform
import sys

import GTC
import numpy
import pressfit
from GTC import reporting, type_b
from scipy import stats

ROOT = pathlib.Path(__file__).parents[2]
sys.path.insert(0, str(ROOT / "target/isofits"))
import isofits  # noqa: E402

PINS = {"GTC": "1.5.1", "pressfit": "0.1.0", "scipy": "1.17.1", "numpy": "2.4.6"}
THOU_MM = 0.0254
TILT_DEG, POSITION_ERROR_MM = 10.0, 5.0
CLASSES = ["H7", "J6", "J7", "J8", "JS6", "JS7", "K6", "K7", "K8", "M6", "M7", "M8", "N6", "N7", "N8", "P6",
           "P7", "R7"]
DIAMETERS = [30.5, 31, 50, 50.5, 65, 65.5, 72, 80, 80.5, 100, 100.5, 120]


def main():
    for name, version in PINS.items():
        found = importlib.metadata.version(name)
        if found != version:
            return f"{name} {version} is expected, {found} is installed"
    record = {
        "versions": {**PINS, "isofits": "1.0", "python": platform.python_version()},
        "student": student(),
        "budgets": [budget(path) for path in sorted((ROOT / "demo-data/bench").glob("gauge-*.json"))],
        "trends": trends(),
        "holes": holes(),
        "stacks": stacks(),
    }
    target = pathlib.Path(__file__).with_suffix(".json")
    rows = {name: [json.dumps(row) for row in rows] for name, rows in record.items() if name != "versions"}
    text = ",\n".join(f' "{name}": [\n  ' + ",\n  ".join(rows) + "\n ]" for name, rows in rows.items())
    target.write_text("{\n" + f' "versions": {json.dumps(record["versions"])},\n{text}\n' + "}\n", encoding="utf-8")
    print({name: len(rows) for name, rows in record.items()})


def student():
    dofs = [1, 2, 3, 4, 5.5, 7, 10, 16.7, 30, 100, 1234.5, 1e5]
    shares = [0.6, 0.9, 0.95, 0.975, 0.995, 0.9999]
    rows = [{"p": p, "dof": dof, "t": float(stats.t.ppf(p, dof))} for dof in dofs for p in shares]
    return rows + [{"p": p, "dof": None, "t": float(stats.norm.ppf(p))} for p in shares]


def number(value, unit):
    return float(value.removesuffix(unit)) if isinstance(value, str) else float(value)


def budget(path):
    given = json.loads(path.read_text(encoding="utf-8"))
    unit = given["unit"]
    mm = THOU_MM if unit == "thou" else 1.0
    readings = [number(value, unit) * mm for value in given["readings"]]
    count = len(readings)
    mean = GTC.ureal(float(numpy.mean(readings)), float(numpy.std(readings, ddof=1)) / math.sqrt(count), count - 1)
    step = number(given["instrument"]["resolution"], unit) * mm
    mpe = number(given["instrument"]["mpe"], unit) * mm
    rectangular = lambda half: GTC.ureal(0, type_b.uniform(half), math.inf)
    push, pull = rectangular(step / 2), rectangular(step / 2)
    tilt = rectangular(1 - math.cos(math.radians(TILT_DEG)))
    movement = (mean + push - pull + rectangular(mpe)) * (1 + tilt)
    place = given["place"]
    if place["at"] == "shaft":
        error = place.get("error_mm", POSITION_ERROR_MM)
        gauge = abs(place["gauge_mm"] - place["pivot_mm"]) + rectangular(error)
        bearing = abs(place["bearing_mm"] - place["pivot_mm"]) + rectangular(error)
        movement = movement * bearing / gauge
    dof = movement.df
    return {
        "file": path.name,
        "mean_mm": movement.x,
        "standard_mm": movement.u,
        "dof": dof,
        "factor": reporting.k_factor(math.floor(dof), 95),
    }


def trends():
    rows = []
    generator = numpy.random.default_rng(20)
    for count in (2, 3, 5, 8):
        days = numpy.sort(generator.uniform(-2000, 0, count))
        standard = generator.uniform(0.004, 0.02, count)
        movement = 0.05 + 4e-5 * days + standard * generator.normal(size=count)
        (slope, intercept), covariance = numpy.polyfit(days, movement, 1, w=1 / standard, cov="unscaled")
        points = [[float(value) for value in row] for row in zip(days, movement, standard)]
        rows.append({"points": points, "slope": float(slope), "intercept": float(intercept),
                     "slope_standard": float(math.sqrt(covariance[0][0]))})
    return rows


def holes():
    rows = []
    for name in CLASSES:
        grade = int(name.lstrip("HJSKMNPR"))
        for diameter in DIAMETERS:
            upper, lower = isofits.isotol("hole", diameter, name, "both")
            width = pressfit.it_value(diameter, grade)
            assert upper - lower == width, (name, diameter, upper, lower, width)
            rows.append({"class": name, "mm": diameter, "upper_um": upper, "lower_um": lower})
    return rows


def stacks():
    steel, aluminium = (208e3, 0.3), (72e3, 0.33)
    cases = [
        ([32, 36, 50], [steel, aluminium], [0.039]),
        ([32.3, 36, 46], [steel, aluminium], [0.017]),
        ([32, 36, 39, 50], [steel, (207e3, 0.3), aluminium], [0.02, 0.08]),
        ([30, 36, 37.5, 60], [steel, (100e3, 0.34), aluminium], [0.05, 0.03]),
        ([20, 31, 34, 40], [steel, (207e3, 0.3), (45e3, 0.35)], [0.03, 0.09]),
    ]
    return [{"radii_mm": radii, "materials": materials, "interference_mm": overlaps,
             "pressures_mpa": pressures(radii, materials, overlaps)} for radii, materials, overlaps in cases]


def pressures(radii, materials, overlaps):
    """Free bore, free rim; at each interface equal radial stress and a jump of displacement of half the overlap."""
    rings = len(materials)
    matrix, right = numpy.zeros((2 * rings, 2 * rings)), numpy.zeros(2 * rings)

    def stress(row, ring, radius, sign):
        modulus, poisson = materials[ring]
        matrix[row][2 * ring] += sign * modulus / (1 - poisson)
        matrix[row][2 * ring + 1] -= sign * modulus / (1 + poisson) / radius**2

    def moved(row, ring, radius, sign):
        matrix[row][2 * ring] += sign * radius
        matrix[row][2 * ring + 1] += sign / radius

    stress(0, 0, radii[0], 1)
    stress(1, rings - 1, radii[-1], 1)
    for at, overlap in enumerate(overlaps):
        radius = radii[at + 1]
        stress(2 + 2 * at, at, radius, 1)
        stress(2 + 2 * at, at + 1, radius, -1)
        moved(3 + 2 * at, at + 1, radius, 1)
        moved(3 + 2 * at, at, radius, -1)
        right[3 + 2 * at] = overlap / 2
    solved = numpy.linalg.solve(matrix, right)
    found = []
    for at in range(len(overlaps)):
        modulus, poisson = materials[at]
        even, curved = solved[2 * at], solved[2 * at + 1]
        found.append(float(-(modulus / (1 - poisson) * even - modulus / (1 + poisson) * curved / radii[at + 1] ** 2)))
    return found


if __name__ == "__main__":
    sys.exit(main())
