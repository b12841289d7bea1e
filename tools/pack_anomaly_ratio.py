#!/usr/bin/env python3
"""Packs test-data/reference/saar-grid.json.gz (made by tools/extract_anomaly_ratio.py) into
packages/core/src/seawater/anomaly-ratio-table.generated.ts. Needs only Python.

Code of the text, which packages/core/src/seawater/anomaly-ratio-table.ts reads: 90 digits, the characters from
"#" to "}" without the backslash. First 90 x 44 digits, the number of levels that each cell uses. Then for each of
91 x 45 columns, by longitude and then latitude, one digit with its number of levels, and its levels from the
surface down: "~" for no value, else value less forecast, signs folded (0, -1, 1, -2 ... as 0, 1, 2, 3 ...), least
part first: a digit below 45 ends the number, one from 45 on carries on. The forecast of a level is the value of
the level above plus the change there in the column to the west, where these three are known, else the last known
value of the column, else 0.
"""

import gzip
import json
import pathlib

ROOT = pathlib.Path(__file__).resolve().parent.parent
SOURCE = ROOT / "test-data" / "reference" / "saar-grid.json.gz"
OUT = ROOT / "packages" / "core" / "src" / "seawater" / "anomaly-ratio-table.generated.ts"
NX, NY = 91, 45
DIGITS = "".join(chr(c) for c in range(35, 126) if c != 92)
HALF = 45
WIDTH = 200

NOTICE = """\
Licence for the use of the Gibbs SeaWater (GSW) Oceanographic Toolbox

Copyright (c) 2011, SCOR/IAPSO WG127 (Scientific Committee on Oceanic Research/
International Association for the Physical Sciences of the Oceans, Working Group 127).

All rights reserved.

Redistribution and use, in source and binary forms, without modification, is permitted
provided that the following conditions are met:

- Redistributions of source code must retain the above copyright notice, this list
  of conditions and the following disclaimer.

- Redistributions in binary form must reproduce the above copyright notice, this
  list of conditions and the following disclaimer in the documentation and/or other
  materials provided with the distribution.

- Neither the name of SCOR/IAPSO WG127 nor the names of its contributors may be used
  to endorse or promote products derived from this software without specific prior
  written permission.

THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS" AND ANY
EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES
OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT
SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT,
INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED
TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR
BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN
CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN
ANY WAY OUT OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH
DAMAGE.

The software is available from http://www.TEOS-10.org
"""


def number(n):
    u = 2 * n if n >= 0 else -2 * n - 1
    text = ""
    while u >= HALF:
        u -= HALF
        text += DIGITS[HALF + u % HALF]
        u //= HALF
    return text + DIGITS[u]


def column(values, west):
    text, last = DIGITS[len(values)], 0
    for k, value in enumerate(values):
        if value is None:
            text += "~"
            continue
        forecast = last
        if k > 0 and values[k - 1] is not None and k < len(west) and None not in (west[k], west[k - 1]):
            forecast += west[k] - west[k - 1]
        text += number(value - forecast)
        last = value
    return text


def main():
    grid = json.loads(gzip.decompress(SOURCE.read_bytes()))
    assert len(DIGITS) == 2 * HALF and len(grid["columns"]) == NX * NY and len(grid["cell_depth"]) == (NX - 1) * (NY - 1)
    text = "".join(DIGITS[n] for n in grid["cell_depth"])
    for i, values in enumerate(grid["columns"]):
        text += column(values, grid["columns"][i - NY] if i >= NY else [])
    lines = [text[i : i + WIDTH] for i in range(0, len(text), WIDTH)]
    notice = "\n".join((" * " + line).rstrip() for line in NOTICE.splitlines())
    OUT.write_text(
        "/*! @license\n"
        " * Absolute Salinity Anomaly Ratio: numbers sampled through the public function of the TEOS-10 library\n"
        f" * (GSW {grid['gsw_version']}), rounded to 1e-9. Made by tools/pack_anomaly_ratio.py, where the code of the text is\n"
        " * described; not edited by hand. The notice of the source:\n *\n"
        f"{notice}\n */\n\n"
        "export const packedTable: string = [\n"
        + "".join(f'  "{line}",\n' for line in lines)
        + '].join("");\n',
        encoding="ascii",
    )
    print(OUT.relative_to(ROOT))


if __name__ == "__main__":
    main()
