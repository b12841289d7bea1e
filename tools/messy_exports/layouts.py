"""Layouts in which a careless reader joins, parts or misplaces rows, heads and casts."""

from .build import Col, Water, ask, cast, clock, export, table

W = Water()
START = "2023-06-02T08:30:00Z"
HEAD = ["start: 2023-06-02T08:30:00Z", "latitude: 51.20100", "longitude: -4.30200"]
PLACE = HEAD[1:]


def plain(w=W):
    return [Col("pressure [dbar]", "p dbar", w.p), Col("temperature [degC]", "t C", w.t), Col("conductivity [mS/cm]", "c mS", w.c)]


def timed(w, begin):
    return [Col("UTC", "time", [clock(begin + 2 * i, "2023-06-02 ") for i in range(len(w.z))]), *plain(w)]


class DownUp(Water):
    """Down to the bottom and back up, in 2 n - 1 rows."""

    def __init__(self, n):
        super().__init__(n)
        for name in ("z", "p", "t", "s", "c", "sc", "v", "rho"):
            down = getattr(self, name)
            setattr(self, name, down + down[-2::-1])


SPLIT = [ask("castSplitting", ["casts", "position", "latitude", "longitude"], must=False, words=["castsplitting"])]
pair = [timed(DownUp(12), 30600), timed(DownUp(15), 33000)]
truth = [cast(pair[0], START), cast(pair[1], "2023-06-02T09:10:00Z")]
for name, between in (
    ("down-and-up-casts-parted-by-a-blank-line.csv", [""]),
    ("down-and-up-casts-parted-by-stars.csv", ["*****"]),
    ("down-and-up-casts-parted-by-new-dip.csv", ["new dip"]),
    ("down-and-up-casts-parted-by-a-repeated-head.csv", [table(pair[0])[0]]),
    ("down-and-up-casts-parted-by-a-form-feed.txt", ["\f"]),
):
    lines = [*PLACE, "", *table(pair[0]), *between, *table(pair[1], names=False)]
    export(name, lines, truth, asks=SPLIT)

lines = [*PLACE, "", *table(pair[0])]
lines[10:10] = ["boat moved a little", ""]
export("remark-and-blank-line-inside-one-cast.csv", lines, [cast(pair[0], START)])

# a block of its own before each table; the second does not say where
a, b = plain(Water(12)), plain(Water(14))
lines = ["Cast 1", "start 2023-06-02 08:30 UTC", "51.20100 N 4.30200 W", *table(a), "Cast 2", "start 2023-06-02 09:10 UTC", *table(b)]
export("second-cast-without-a-position.csv", lines, [cast(a, START), cast(b, "2023-06-02T09:10:00Z", None, None)],
       asks=[ask("position", ["latitude", "longitude"], must=False, words=["position"])])
lines = ["Cast 1", "start 2023-06-02 08:30 UTC", "51.20100 N 4.30200 W", *table(a), "Cast 2", "51.20300 N 4.30500 W", *table(b)]
export("second-cast-without-a-time.csv", lines, [cast(a, START), cast(b, "2023-06-02T09:10:00Z", 51.203, -4.305)],
       asks=[ask("time", ["start"], must=False, words=["time"])])
lines = ["Survey day 2 June 2023, clock UTC", "Position 51.20100 N 4.30200 W for all dips", "Dip 1, start 08:30", *table(a), "Dip 2, start 09:10", *table(b)]
export("date-and-place-for-all-dips.csv", lines, [cast(a, START), cast(b, "2023-06-02T09:10:00Z")], asks=[ask("time", ["start"], must=False, words=["time", "position"])])

# stations in a column, times in the rows
rows = []
for station, w, begin in (("S1", Water(8), 30600), ("S2", Water(9), 33000)):
    rows.append([Col("station", "other", [station] * len(w.z)), *timed(w, begin)])
lines = [*PLACE, *table(rows[0]), *table(rows[1], names=False)]
export("stations-in-a-column.csv", lines, [cast(rows[0], START), cast(rows[1], "2023-06-02T09:10:00Z")])

# spreadsheet habits
export("first-line-names-the-delimiter.csv", ["sep=;", *HEAD, *table(plain(), ";")], [cast(plain(), START)], delimiter=";")
cols = plain()
quoted = [f'"{c.header}"' for c in cols]
export("quoted-names-over-two-lines.csv", [*HEAD, '"pressure\n[dbar]","temperature\n[degC]","conductivity\n[mS/cm]"', *table(cols, names=False)], [cast(cols, START)],
       asks=[ask("quantity", [f"column:{c.header}" for c in cols], must=False, words=["quantity", "units"])])
export("every-cell-quoted.csv", [*HEAD, ",".join(quoted), *(",".join(f'"{x}"' for x in row) for row in zip(*(c.cells for c in cols)))], [cast(cols, START)])
export("empty-columns-between.csv", [*HEAD, ",,".join(c.header for c in cols), *(",,".join(row) for row in zip(*(c.cells for c in cols)))], [cast(cols, START)])
export("blanks-around-commas.csv", [*HEAD, " , ".join(c.header for c in cols), *("  ,  ".join(row) for row in zip(*(c.cells for c in cols)))], [cast(cols, START)])

# comma for both: cells and decimals
lines = [*HEAD, "pressure [dbar],temperature [degC]", *(",".join(x.replace(".", ",") for x in row) for row in zip(*(c.cells for c in cols[:2])))]
export("comma-parts-cells-and-decimals.csv", lines, [cast(cols[:2], START, decimal=".")], decimal=",",
       asks=[ask("quantity", ["decimal", "casts", *(f"column:{c.header}" for c in cols[:2])], words=["quantity", "decimal"])], why="0,202,16,783 is two numbers or four")

# marks in front of the lines
export("hash-before-the-head.txt", [*(f"# {x}" for x in HEAD), "# " + "  ".join(f"{n}[{u}]" for n, u in (("pressure", "dbar"), ("temperature", "degC"), ("conductivity", "mS/cm"))), *table(cols, "  ", names=False)],
       [cast([Col(f"{n}[{u}]", c.kind, c.cells) for c, (n, u) in zip(cols, (("pressure", "dbar"), ("temperature", "degC"), ("conductivity", "mS/cm")))], START)], delimiter="whitespace")
export("a-letter-before-each-row.txt", [*HEAD, "rec,pressure [dbar],temperature [degC],conductivity [mS/cm]", *(",".join(("D", *row)) for row in zip(*(c.cells for c in cols)))], [cast(cols, START)])
export("metadata-below-the-table.csv", [*table(cols), "", *HEAD], [cast(cols, START)])
export("head-above-the-metadata.csv", [table(cols)[0], *HEAD, *table(cols, names=False)], [cast(cols, START)],
       asks=[ask("quantity", [f"column:{c.header}" for c in cols], must=False, words=["quantity", "units"])])

# rows that are not rows
lines = [*HEAD, *table(cols)]
lines[9] = "0.9,1.1"
lines[12] = lines[12] + ",7"
export("rows-too-short-and-too-long.csv", lines, [cast([Col(c.header, c.kind, [x for i, x in enumerate(c.cells) if i not in (5, 8)]) for c in cols], START)])
lines = [*HEAD, *table(cols)]
lines.insert(12, lines[11])
export("a-row-twice.csv", lines, [cast([Col(c.header, c.kind, [*c.cells[:8], c.cells[7], *c.cells[8:]]) for c in cols], START)])
lines = [*HEAD, *table(cols), "END"]
export("end-mark.csv", lines, [cast(cols, START)])

# a second small table of something else
wind = ["time,wind speed [m/s]", "08:00,4.1", "08:30,4.4", "09:00,4.9"]
export("wind-table-above.csv", [*HEAD, *wind, "", *table(cols)], [cast(cols, START)], asks=[ask("time", ["start"], must=False, words=["time"])])
export("wind-table-below.csv", [*HEAD, *table(cols), "", *wind], [cast(cols, START)], asks=[ask("time", ["start"], must=False, words=["time"])])

# units as words, scaled, or for the whole line
cols = [Col("pressure in decibars", "p dbar", W.p), Col("temperature in degrees Celsius", "t C", W.t), Col("conductivity in millisiemens per centimetre", "c mS", W.c)]
export("units-in-words.csv", [*HEAD, *table(cols)], [cast(cols, START)], asks=[ask("units", [f"column:{c.header}" for c in cols], must=False, words=["units", "quantity"])])
cols = [plain()[0], Col("temperature x 100 [degC]", "t C", [t * 100 for t in W.t], "{:.0f}"), plain()[2]]
export("temperature-times-hundred.csv", [*HEAD, *table(cols)], [cast(cols, START)], asks=[ask("units", ["column:temperature x 100 [degC]"], words=["units:temp", "quantity:temp"])])

a, b = plain(Water(12)), plain(Water(14))
lines = [*HEAD, "Cast A", *table(a), "Cast B", *table(b)]
export("casts-by-letters-one-start.csv", lines, [cast(a, START), cast(b, START)], asks=[ask("time", ["start"], words=["time"])], why="one start for two casts")
