"""Asks a library that is not ours for the reading measures of sample notes, and writes its answers beside ours.

Not part of the suite: the library comes from PyPI. Let the core write its samples, then run it by hand:

    STEADY_WRITE_SAMPLES=1 cargo test -p steady-core --lib readability
    python3 -m venv target/venv && target/venv/bin/pip install textstat==0.7.8
    target/venv/bin/python tests/reference/readability.py

The samples are whole notes, with our counts and figures. Three things are compared:

- Sentences and words: each must be the same. textstat leaves out sentences of two words or fewer, which its
  documentation says, so such sentences are added to its count here.
- Every figure: textstat's own formula on its own words, but with our sentences and syllables, must give our
  figure within half of the last digit that `set_rounding_points(1)`, its documented rounding, leaves. Its
  constant for Szigriszt-Pazos is 206.84 where the author has 206.835, which adds 0.005.
- Syllables: the sum of a language's samples by textstat's dictionaries (cmudict for English, pyphen's points
  of hyphenation for the others, which leave out a syllable of one letter at either end of a word) beside
  ours. They are two estimates; the difference must stay below a tenth, and it is written down.
"""

import importlib.metadata
import json
import pathlib
import platform
import re
import sys

import textstat
from textstat.backend.counts import _count_monosyllable_words, _count_polysyllable_words, _count_syllables
from textstat.backend.metrics import _syllables_per_word, _szigriszt_pazos, _words_per_sentence
from textstat.backend.selections._list_words import list_words

VERSION, TOLERANCE = "0.7.8", 0.0551
PATH = pathlib.Path(__file__).with_suffix(".json")
# Those of our languages that textstat has, by its names for them.
LANGUAGES = {"en": "en_US", "de": "de_DE", "es": "es", "fr": "fr_FR"}
FIGURES = {
    "Flesch-Kincaid grade": textstat.flesch_kincaid_grade,
    "Wiener Sachtextformel 1": lambda text: textstat.wiener_sachtextformel(text, 1),
    "Fernández Huerta": textstat.fernandez_huerta,
    "Szigriszt-Pazos": textstat.szigriszt_pazos,
    "Kandel-Moles": textstat.flesch_reading_ease,
    "Amstad": textstat.flesch_reading_ease,
}


def sentences(text):
    """textstat's sentences, and those it leaves out for having two words or fewer."""
    found = re.findall(r"\b[^.!?]+[.!?]*", text)
    left_out = sum(1 for one in found if 0 < textstat.lexicon_count(one) <= 2)
    return textstat.sentence_count(text) + left_out


def main():
    found = importlib.metadata.version("textstat")
    if found != VERSION:
        return f"textstat {VERSION} is expected, {found} is installed"
    textstat.set_rounding_points(1)
    data = json.loads(PATH.read_text())
    faults, totals, compared = [], {}, 0
    own_syllables = _count_syllables.count_syllables
    for row in data["samples"]:
        # Figures alone are words to textstat and none to us.
        text = " ".join(token for token in row["text"].split() if any(letter.isalpha() for letter in token))
        locale = row["locale"]
        textstat.set_lang(LANGUAGES[locale])
        words = list_words(text, lowercase=True)
        if len(words) != len(row["syllables_each"]):
            faults.append(f"{locale}: {len(row['syllables_each'])} words, textstat has {len(words)}")
            continue
        theirs = sum(own_syllables(word, LANGUAGES[locale]) for word in words)
        total = totals.setdefault(locale, [0, 0])
        total[0] += row["syllables"]
        total[1] += theirs
        said = {"sentences": sentences(text), "words": len(words), "syllables": theirs}
        for name in ("sentences", "words"):
            compared += 1
            if said[name] != row[name]:
                faults.append(f"{locale}: {row[name]} {name}, textstat has {said[name]}: {text}")
        given = {word: int(digit) for word, digit in zip(words, row["syllables_each"])}
        install(given, row)
        for name in row["figures"]:
            compared += 1
            said[name] = FIGURES[name](text)
            if abs(said[name] - float(row["figures"][name])) > TOLERANCE:
                faults.append(f"{locale}: {name} {row['figures'][name]}, textstat has {said[name]}")
        row["textstat"] = said
    apart = {locale: round(ours / theirs - 1, 4) for locale, (ours, theirs) in totals.items()}
    faults += [f"{locale}: syllables {share:+.1%} apart" for locale, share in apart.items() if abs(share) > 0.1]
    data["checked_by"] = {"textstat": found, "pyphen": importlib.metadata.version("pyphen"),
                          "cmudict": importlib.metadata.version("cmudict"), "python": platform.python_version()}
    data["compared"] = compared
    data["syllables_apart"] = apart
    if not faults:
        PATH.write_text(json.dumps(data, indent=1, ensure_ascii=False, sort_keys=True) + "\n")
    print(f"{len(data['samples'])} samples, {compared} values compared, syllables apart {apart}")
    return "\n".join(faults[:20]) or None


def install(given, row):
    """Gives textstat our syllables and our count of sentences; its words and formulas stay its own."""

    def ours(text, lang):
        return sum(given[word] for word in list_words(text, lowercase=True) if word in given)

    for module in (_syllables_per_word, _szigriszt_pazos, _count_monosyllable_words, _count_polysyllable_words):
        module.count_syllables = ours
    for module in (_words_per_sentence, _szigriszt_pazos):
        module.count_sentences = lambda text: row["sentences"]


if __name__ == "__main__":
    sys.exit(main())
