"""Compares the sorting with libraries that are not ours: posteriors with pyAgrum, scores with scikit-learn.

`run.sh` beside this file installs the pinned versions, prints our numbers (`emit.rs`) and calls this with
them. The results are written beside this file with the versions that gave them. Every comparison counts
its values: one that compared nothing must not pass.
"""

import importlib.metadata
import json
import math
import pathlib
import platform
import statistics
import sys
import time

import numpy
import pyagrum as gum
from sklearn.calibration import calibration_curve
from sklearn.metrics import brier_score_loss, log_loss

TOLERANCE = 1e-9
FASTER = 50
PACKAGES = ("pyAgrum", "scikit-learn", "numpy")


def build(network):
    """A Bayesian network of the same numbers. `addNoisyORNet` keeps the leak as P(sign without any cause);
    pyAgrum's other noisy-OR compounds it with the links."""
    bn = gum.BayesNet()
    for index, prior in enumerate(network["priors"]):
        bn.add(gum.LabelizedVariable(f"c{index}", "", 2))
        bn.cpt(f"c{index}").fillWith([1 - prior, prior])
    for index, sign in enumerate(network["signs"]):
        name = f"s{index}"
        if sign["links"]:
            bn.addNoisyORNet(gum.LabelizedVariable(name, "", 2), sign["leak"])
        else:
            bn.add(gum.LabelizedVariable(name, "", 2))
        for cause, strength in sign["links"]:
            bn.addWeightedArc(f"c{cause}", name, strength)
        if not sign["links"]:
            bn.cpt(name).fillWith([1 - sign["leak"], sign["leak"]])
    return bn


def posteriors(bn, engine, evidence, causes):
    inference = engine(bn)
    inference.setEvidence({f"s{sign}": [absent, present] for sign, absent, present in evidence["signs"]})
    inference.makeInference()
    return [inference.posterior(f"c{cause}")[1] for cause in range(causes)]


def compare_networks(networks):
    largest, compared = 0.0, 0
    for network in networks:
        bn = build(network)
        for evidence in network["evidence"]:
            theirs = posteriors(bn, gum.LazyPropagation, evidence, len(network["priors"]))
            for ours, other in zip(evidence["posterior"], theirs, strict=True):
                largest = max(largest, abs(ours - other))
                compared += 1
    return {"largest_difference": largest, "compared": compared}


def quickest(network):
    """The quickest of pyAgrum's exact engines with every sign seen; a fresh engine each time, as ours."""
    bn, evidence = build(network), network["evidence"][-1]
    times = {}
    for engine in (gum.LazyPropagation, gum.VariableElimination, gum.ShaferShenoyInference):
        runs = []
        for _ in range(9):
            start = time.perf_counter()
            posteriors(bn, engine, evidence, len(network["priors"]))
            runs.append(time.perf_counter() - start)
        times[engine.__name__] = statistics.median(runs)
    name = min(times, key=times.get)
    return name, times[name], times


def compare_scores(scores):
    probability = numpy.array(scores["probability"])
    there = numpy.array(scores["there"], dtype=float)
    ours = scores["ours"]
    pairs = [
        (ours["brier"], brier_score_loss(there, probability)),
        (ours["log_score"], log_loss(there, probability)),
    ]
    frequency, mean = calibration_curve(there, probability, n_bins=10, strategy="uniform")
    groups = ours["groups"]
    assert len(groups) == len(frequency) == 10, "the reliability diagrams have different groups"
    edges = numpy.linspace(0, 1, 11)
    counts = numpy.histogram(probability, edges)[0]
    for group, f, m, count in zip(groups, frequency, mean, counts, strict=True):
        pairs += [(group["frequency"], f), (group["mean"], m), (group["count"], count)]
    share = counts / counts.sum()
    pairs.append((ours["calibration"], float((share * (mean - frequency) ** 2).sum())))
    pairs.append((ours["refinement"], float((share * frequency * (1 - frequency)).sum())))
    # With each forecast replaced by its group's mean, the Brier score is exactly the first two parts.
    grouped = mean[numpy.clip(numpy.digitize(probability, edges) - 1, 0, 9)]
    pairs.append((ours["calibration"] + ours["refinement"], brier_score_loss(there, grouped)))
    largest = max(abs(a - b) for a, b in pairs)
    return {"largest_difference": float(largest), "compared": len(pairs)}


def main(path):
    numbers = json.loads(pathlib.Path(path).read_text(encoding="utf-8"))
    engine, theirs, times = quickest(numbers["shipped"])
    ours = numbers["seconds"]["all_signs_seen"]
    record = {
        "versions": {name: importlib.metadata.version(name) for name in PACKAGES},
        "python": platform.python_version(),
        "shipped_network": compare_networks([numbers["shipped"]]),
        "random_networks": {"networks": len(numbers["random"]), **compare_networks(numbers["random"])},
        "scores": compare_scores(numbers["scores"]),
        "speed": {
            "ours_ms": ours * 1e3,
            "quickest_engine": engine,
            "quickest_ms": theirs * 1e3,
            "engines_ms": {name: value * 1e3 for name, value in times.items()},
            "times_as_fast": theirs / ours,
        },
    }
    pathlib.Path(__file__).with_suffix(".json").write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    print(json.dumps(record, indent=1))
    faults = []
    for part, least in (("shipped_network", 21 * 11), ("random_networks", 1_000), ("scores", 35)):
        if record[part]["compared"] < least:
            faults.append(f"{part}: only {record[part]['compared']} values compared")
        if not record[part]["largest_difference"] <= TOLERANCE or math.isnan(record[part]["largest_difference"]):
            faults.append(f"{part}: {record[part]['largest_difference']} is more than {TOLERANCE}")
    if record["random_networks"]["networks"] < 200:
        faults.append("fewer than 200 random networks")
    if record["speed"]["times_as_fast"] < FASTER:
        faults.append(f"only {record['speed']['times_as_fast']:.0f} times as fast, wanted {FASTER}")
    return "\n".join(faults) or None


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
