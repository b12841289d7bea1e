#!/usr/bin/env python3
"""Makes text exports as invented devices and people write them, with the truth of each, in test-data/exports.

    /usr/bin/python3 tools/make_messy_exports.py            writes the files
    /usr/bin/python3 tools/make_messy_exports.py --check    compares them with what stands in the folder

Needs the TEOS-10 library gsw (Debian: python3-gsw), for water whose quantities belong together. Places and devices
are invented.
"""

import json
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))
from messy_exports import layouts, positions, quantities, structure, times, traps  # noqa: E402,F401
from messy_exports.build import FILES  # noqa: E402

# read wrongly, or not at all, when they were written: kept so that it does not happen again
FAILED_FIRST = set(
    """
    casts-by-a-column-one-start casts-parted-by-blank-lines casts-parted-by-blank-lines-one-time clock-fast
    clock-slow-by cold-fahrenheit-called-celsius degrees-and-minutes-in-columns depth-in-feet-called-metres
    end-fix-forty-kilometres-off end-fix-with-the-other-sign epoch-seconds-under-t epoch-seconds-under-time
    hemisphere-in-a-column lag-corrected-in-spanish leitfaehigkeit-25 no-correction-of-pressure not-averaged
    oxygen-micromoles-called-milligrams pages-with-form-feeds ph-of-seventy plus-signs-and-exponents
    position-is-approximate pressure-beyond-the-rating pressure-in-bar-called-dbar pressure-in-kpa-called-dbar
    quantities-in-finnish quantities-in-icelandic salinity-in-percent seconds-since-a-stated-moment
    siemens-per-metre-called-ms specific-conductance start-is-approximate statistics-behind-a-blank-line
    statistics-below-the-table thousands-in-quotes uhr-geht-vor upcast-turned-round
    clock-ahead-of-utc clock-hours-behind-utc clock-not-on-utc compensated-conductivity letters-in-brackets old-datum
    one-column-with-two-places-and-points packed-in-the-header-near-the-equator probably-utc rows-in-turned-order
    seconds-of-the-day seconds-that-begin-late uhr-auf-ortszeit utc-is-local-minus-two utc-with-a-question-mark
    zone-of-the-other-sign remark-and-blank-line-inside-one-cast units-in-words
    casts-by-letters-one-start letters-above-their-units offset-of-half-hours-as-a-decimal winter-name-behind-a-summer-time winter-name-in-summer winterzeit-im-sommer
    """.split()
)
FOLDER = pathlib.Path(__file__).resolve().parent.parent / "test-data" / "exports"


def wanted():
    stems = {name.split(".")[0] for name in FILES}
    assert FAILED_FIRST <= stems, FAILED_FIRST - stems
    for name, (_, truth) in FILES.items():
        if name.split(".")[0] in FAILED_FIRST:
            truth["failed_first"] = True
    files = {name: data for name, (data, _) in FILES.items()}
    truth = {"about": "Truth of the exports of this folder, written with them by tools/make_messy_exports.py.", "files": {n: t for n, (_, t) in FILES.items()}}
    files["truth.json"] = (json.dumps(truth, ensure_ascii=False, indent=1) + "\n").encode()
    return files


def main():
    files = wanted()
    if "--check" in sys.argv:
        there = {path.name for path in FOLDER.iterdir()}
        wrong = sorted(there ^ files.keys()) + [n for n, data in files.items() if n in there and (FOLDER / n).read_bytes() != data]
        if wrong:
            sys.exit(f"not as the script makes them: {', '.join(wrong)}")
    else:
        FOLDER.mkdir(parents=True, exist_ok=True)
        for old in FOLDER.iterdir():
            old.unlink()
        for name, data in files.items():
            (FOLDER / name).write_bytes(data)
    print(f"{len(files) - 1} exports")


main()
