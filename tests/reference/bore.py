"""Fits made by numpy and scipy, for the suite to hold ours against; and their times, for the bench.

Not part of the suite: the packages come from PyPI. Run it by hand when the sets change:

    python3 -m venv target/venv && target/venv/bin/pip install numpy==2.4.6 scipy==1.17.1
    target/venv/bin/python tests/reference/bore.py

It writes what it found beside itself, with the versions that found it. The point sets are not written: the
suite makes the same ones from the same seeds (`tests/suite/bore_sets.rs`).

`bore.py time` prints, as JSON, what scipy takes for the minimum zone of the bench's 3,600 points and for the
page of 36 angles by 5 depths, and the most memory it held (kB); `cargo xtask bench` calls it when
STEADY_PYTHON names an interpreter that has the packages.
"""

import json
import math
import pathlib
import platform
import resource
import sys
import time

import numpy
import scipy
from scipy.optimize import least_squares, linprog, minimize

NUMPY, SCIPY = "2.4.6", "1.17.1"
SETS = 200
MASK = (1 << 64) - 1


class Chance:
    """A linear congruential generator, the same as the suite's."""

    def __init__(self, seed):
        self.state = (seed * 0x9E3779B97F4A7C15 + 1) & MASK

    def unit(self):
        self.state = (self.state * 6364136223846793005 + 1442695040888963407) & MASK
        return (self.state >> 11) / float(1 << 53)


def points_of(seed):
    """A bore with lobes and scatter; every tenth is far from any circle."""
    chance = Chance(seed)
    wild = seed % 10 == 0
    count = 5 + int(chance.unit() * 36)
    x, y = 2.0 * chance.unit() - 1.0, 2.0 * chance.unit() - 1.0
    radius = 20.0 + 30.0 * chance.unit()
    lobes, amplitude = 2 + int(chance.unit() * 6), 0.02 * chance.unit()
    phase = 2.0 * math.pi * chance.unit()
    scatter = 0.4 * radius if wild else 0.02 * chance.unit()
    points = []
    for at in range(count):
        angle = 2.0 * math.pi * (at + 0.8 * (chance.unit() - 0.5)) / count
        reach = radius + amplitude * math.cos(lobes * angle + phase) + scatter * (chance.unit() - 0.5)
        points.append((x + reach * math.cos(angle), y + reach * math.sin(angle)))
    return numpy.array(points), wild


def spread(centre, points):
    distances = numpy.hypot(points[:, 0] - centre[0], points[:, 1] - centre[1])
    return float(distances.max() - distances.min())


def least_squares_circle(points):
    def residuals(it):
        return numpy.hypot(points[:, 0] - it[0], points[:, 1] - it[1]) - it[2]

    middle = points.mean(axis=0)
    start = [*middle, numpy.hypot(*(points - middle).T).mean()]
    found = least_squares(residuals, start, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=10000)
    return [float(value) for value in found.x]


def zone_from(points, start):
    """Minimum zone by sequential quadratic programming: unknowns are centre, outer and inner radius.

    Distances count from the start's mean radius, so that the stopping rule sees their small differences.
    """
    offsets = points - start
    base = float(numpy.hypot(*offsets.T).mean())

    def constraints(it):
        distances = numpy.hypot(offsets[:, 0] - it[0], offsets[:, 1] - it[1]) - base
        return numpy.concatenate([it[2] - distances, distances - it[3]])

    def slopes(it):
        away = offsets - it[:2]
        unit = away / numpy.hypot(*away.T)[:, None]
        ones, none = numpy.ones(len(points)), numpy.zeros(len(points))
        outer = numpy.column_stack([unit, ones, none])
        inner = numpy.column_stack([-unit, none, -ones])
        return numpy.vstack([outer, inner])

    first = numpy.hypot(*offsets.T) - base
    found = minimize(
        lambda it: it[2] - it[3],
        [0.0, 0.0, first.max(), first.min()],
        jac=lambda it: numpy.array([0.0, 0.0, 1.0, -1.0]),
        method="SLSQP",
        constraints={"type": "ineq", "fun": constraints, "jac": slopes},
        options={"ftol": 1e-14, "maxiter": 500},
    )
    return start + found.x[:2]


def minimum_zone(points, seed, wild):
    """The best of several starts, each polished without slopes; judged by the width itself."""
    chance = Chance(seed + 1_000_003)
    x, y, radius = least_squares_circle(points)
    starts = [numpy.array([x, y])]
    for _ in range(40 if wild else 6):
        reach = (0.9 if wild else 0.01) * radius
        starts.append(numpy.array([x + reach * (2 * chance.unit() - 1), y + reach * (2 * chance.unit() - 1)]))
    best = math.inf
    for start in starts:
        centre = zone_from(points, start)
        polished = minimize(
            spread, centre, args=(points,), method="Nelder-Mead",
            options={"xatol": 1e-13, "fatol": 1e-15, "maxiter": 4000},
        )
        best = min(best, spread(start, points), spread(centre, points), float(polished.fun))
    return best


def enclosing(points):
    x, y, radius = least_squares_circle(points)

    def constraints(it):
        return it[2] - numpy.hypot(points[:, 0] - it[0], points[:, 1] - it[1])

    far = numpy.hypot(points[:, 0] - x, points[:, 1] - y).max()
    found = minimize(
        lambda it: it[2], [x, y, far], method="SLSQP",
        constraints={"type": "ineq", "fun": constraints}, options={"ftol": 1e-15, "maxiter": 500},
    )
    polished = minimize(
        lambda it: numpy.hypot(points[:, 0] - it[0], points[:, 1] - it[1]).max(), found.x[:2],
        method="Nelder-Mead", options={"xatol": 1e-13, "fatol": 1e-15, "maxiter": 4000},
    )
    return float(polished.fun)


def shown(amplitude):
    """An amplitude with digits down to a ten-millionth of a nanometre."""
    return round(float(amplitude), 13)


def waves(points, most=15):
    """Amplitudes of the radius about the least-squares centre, one for each number of waves from 1."""
    x, y, radius = least_squares_circle(points)
    angles = numpy.arctan2(points[:, 1] - y, points[:, 0] - x)
    deviations = numpy.hypot(points[:, 0] - x, points[:, 1] - y) - radius
    pairs = min((len(points) - 1) // 2, most)
    terms = [numpy.ones(len(points))]
    for pair in range(1, pairs + 1):
        terms += [numpy.cos(pair * angles), numpy.sin(pair * angles)]
    found, _, rank, _ = numpy.linalg.lstsq(numpy.column_stack(terms), deviations, rcond=None)
    if rank < len(terms):
        return None
    return [shown(numpy.hypot(found[2 * pair - 1], found[2 * pair])) for pair in range(1, pairs + 1)]


def even_profile(seed, count):
    """Radii at equal angles: scatter alone, so that every wave is there."""
    chance = Chance(seed + 5_000_011)
    return numpy.array([36.0 + 0.02 * (chance.unit() - 0.5) for _ in range(count)])


def fourier(seed, count):
    found = numpy.fft.rfft(even_profile(seed, count)) / count
    return [shown(2.0 * abs(value)) for value in found[1 : 1 + min((count - 1) // 2, 15)]]


def bench_points(count=3600, depth=0):
    """The bench's bore: an oval with three lobes and scatter."""
    chance = Chance(77 + depth)
    points = []
    for at in range(count):
        angle = 2.0 * math.pi * at / count
        reach = 36.0 + 0.006 * math.cos(2 * angle + 0.4) + 0.004 * math.cos(3 * angle) + 0.003 * (chance.unit() - 0.5)
        points.append((0.05 + reach * math.cos(angle), -0.03 + reach * math.sin(angle)))
    return numpy.array(points)


def zone_by_programs(points):
    """Minimum zone by a sequence of linear programs (HiGHS): scipy's quickest way for many points."""
    centre = points.mean(axis=0)
    for _ in range(20):
        away = points - centre
        distances = numpy.hypot(*away.T)
        unit, base = away / distances[:, None], distances.mean()
        ones, none = numpy.ones(len(points)), numpy.zeros(len(points))
        outer = numpy.column_stack([-unit, -ones, none])
        inner = numpy.column_stack([unit, none, ones])
        found = linprog(
            [0, 0, 1, -1], A_ub=numpy.vstack([outer, inner]),
            b_ub=numpy.concatenate([base - distances, distances - base]), bounds=[(None, None)] * 4, method="highs",
        )
        step = found.x[:2]
        centre = centre + step
        if numpy.hypot(*step) < 1e-10:
            break
    return centre


def timed(work, turns):
    times = []
    for _ in range(turns):
        start = time.perf_counter()
        value = work()
        times.append(time.perf_counter() - start)
    return sorted(times)[len(times) // 2] * 1e3, value


def page(levels):
    """What scipy and numpy need for the page: circle, minimum zone and waves at each depth."""
    widths = []
    for points in levels:
        waves(points)
        x, y, _ = least_squares_circle(points)
        widths.append(spread(zone_from(points, numpy.array([x, y])), points))
    return widths


def peak_kb():
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss


def print_times():
    imported = peak_kb()
    points = bench_points()
    x, y, _ = least_squares_circle(points)
    quadratic, centre = timed(lambda: zone_from(points, numpy.array([x, y])), 3)
    linear, other = timed(lambda: zone_by_programs(points), 5)
    levels = [bench_points(36, depth) for depth in range(5)]
    whole, widths = timed(lambda: page(levels), 9)
    print(json.dumps({
        "scipy": scipy.__version__,
        "zone_slsqp_ms": quadratic,
        "zone_slsqp_mm": spread(centre, points),
        "zone_linprog_ms": linear,
        "zone_linprog_mm": spread(other, points),
        "page_ms": whole,
        "page_mm": widths,
        "imported_kb": imported,
        "peak_kb": peak_kb(),
    }))


def main(words):
    for package, wanted in ((numpy, NUMPY), (scipy, SCIPY)):
        if package.__version__ != wanted:
            return f"{package.__name__} {wanted} is expected, {package.__version__} is installed"
    if words == ["time"]:
        return print_times()
    rows = []
    for seed in range(1, SETS + 1):
        points, wild = points_of(seed)
        rows.append({
            "seed": seed,
            "count": len(points),
            "circle": least_squares_circle(points),
            "zone": minimum_zone(points, seed, wild),
            "enclosing": enclosing(points),
            "waves": None if wild else waves(points),
            "fourier": fourier(seed, len(points)),
        })
        print(seed, end=" ", flush=True)
    record = {"numpy": NUMPY, "scipy": SCIPY, "python": platform.python_version(), "sets": rows}
    text = json.dumps(record).replace('{"seed"', '\n{"seed"')
    pathlib.Path(__file__).with_suffix(".json").write_text(text + "\n", encoding="utf-8")
    print(f"\n{len(rows)} sets")
    return None


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
