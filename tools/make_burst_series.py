#!/usr/bin/env python3
"""A series sampled in bursts: of the demo's series at one depth, the first 20 seconds of each minute.

    python3 tools/make_burst_series.py            writes test-data/bursts

The way down in the first minute and the way up at the end are kept whole. Standard library only.
"""

import datetime
import hashlib
import pathlib
import re

ROOT = pathlib.Path(__file__).resolve().parent.parent
DEMO, OUT = ROOT / "test-data" / "demo", ROOT / "test-data" / "bursts"
BURST, EVERY, AT_FIRST = 20, 60, 40
# invented: the cell reads less and less
CALIBRATIONS = "calibrations: [{ date: 2025-02-12, slope: 1 }, { date: 2025-09-01, slope: 1.002 }]"


def main():
    head, table = (DEMO / "oe25_p1.tsv").read_text().split("time [UTC]", 1)
    names, *rows = table.rstrip("\n").split("\n")
    moments = [datetime.datetime.fromisoformat(row.split("\t")[0].rstrip("Z")) for row in rows]
    elapsed = [(moment - moments[0]).total_seconds() for moment in moments]
    kept = [row for row, s in zip(rows, elapsed) if s < AT_FIRST or s % EVERY < BURST]
    text = head.replace("OE25-P1", "OE25-P2") + "\n".join([f"time [UTC]{names}", *kept]) + "\n"
    OUT.mkdir(exist_ok=True)
    (OUT / "oe25_p2.tsv").write_text(text)

    sheet = (DEMO / "survey.yaml").read_text()
    before, casts = sheet.split("casts:\n")
    entry = casts[casts.index("  - id: OE25-P1") :].replace("OE25-P1", "OE25-P2").replace("oe25_p1", "oe25_p2")
    entry = re.sub(r"sha256: \w+", f"sha256: {hashlib.sha256(text.encode()).hexdigest()}", entry)
    before = before.replace("id: ostrel-2025", "id: ostrel-2025-bursts")
    before = before.replace("uncertainty: 0.006, units: mS cm-1 }", f"uncertainty: 0.006, units: mS cm-1, {CALIBRATIONS} }}")
    before = before.replace("processing:\n", "processing:\n  recipe:\n    bursts: { mean: true }\n")
    (OUT / "survey.yaml").write_text(f"{before}casts:\n{entry}")


if __name__ == "__main__":
    main()
