#!/usr/bin/env python3
"""Makes test-data/reference/anomaly-ratio-points.json: the anomaly ratio and Absolute Salinity of the TEOS-10
library at random places, many of them at coasts, in Central America and about the Baltic. Needs gsw and numpy.

Left out are the places where the table that is shipped is known not to follow the library: in the Central
American box below 3800 dbar.
"""

import json
import pathlib

import gsw
import numpy as np

OUT = pathlib.Path(__file__).resolve().parent.parent / "test-data" / "reference" / "anomaly-ratio-points.json"

rng = np.random.default_rng(20250601)


def box(n, lon, lat, p):
    return [(rng.uniform(*lon), rng.uniform(*lat), rng.uniform(*p)) for _ in range(n)]


points = [
    *box(700, (-180, 360), (-85.9, 89.9), (0, 200)),
    *box(300, (-180, 360), (-85.9, 89.9), (0, 6500)),
    *box(500, (258, 294), (1, 22), (0, 3800)),
    *box(400, (5, 47), (49, 70), (0, 100)),
    *box(200, (-12, 12), (42, 62), (0, 60)),
]
rows = []
for lon, lat, p in points:
    lon, lat, p = round(lon, 4), round(lat, 4), round(p, 2)
    sp = round(rng.uniform(2, 36), 3)
    ratio, salinity = float(gsw.SAAR(p, lon, lat)), float(gsw.SA_from_SP(sp, p, lon, lat))
    if 260 <= lon % 360 <= 292 and 3.4 <= lat <= 19.55 and p > 3800:
        continue
    rows.append([lon, lat, p, sp, ratio, salinity])
doc = {
    "about": "Anomaly ratio (1) and Absolute Salinity (g/kg) of the TEOS-10 library at random places",
    "made_by": "tools/make_anomaly_points.py",
    "gsw_version": gsw.__version__,
    "columns": ["lon", "lat", "p_dbar", "SP", "SAAR", "SA"],
}
lines = ",\n".join(json.dumps(row) for row in rows)
OUT.write_text(json.dumps(doc)[:-1] + ', "points": [\n' + lines + "\n]}\n", encoding="ascii")
print(OUT.name, len(rows))
