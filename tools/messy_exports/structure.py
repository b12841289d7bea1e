"""How the text is laid out: casts, heads, pages, notes, cells."""

from .build import Col, Water, ask, cast, clock, export, table

HEAD = ["# site: Otter Steps (invented)", "# start: 2023-06-02T08:30:00Z", "# latitude: 51.20100", "# longitude: -4.30200"]
START = "2023-06-02T08:30:00Z"
W = Water()


def plain(w=W):
    return [Col("pressure [dbar]", "p dbar", w.p), Col("temperature [degC]", "t C", w.t), Col("conductivity [mS/cm]", "c mS", w.c)]


def with_times(w, begin, day="2023-06-02 "):
    times = Col("time (UTC)", "time", [clock(begin + 2 * i, day) for i in range(len(w.z))])
    return [times, *plain(w)]


# casts parted by nothing but blank lines
three = [Water(n) for n in (20, 14, 17)]
begins = (30600, 33000, 36120)
parts = [with_times(w, b) for w, b in zip(three, begins)]
lines = ["site: Otter Steps (invented)", "latitude: 51.20100", "longitude: -4.30200", ""] + table(parts[0])
for p in parts[1:]:
    lines += ["", "", *table(p, names=False)]
export(
    "casts-parted-by-blank-lines.csv", lines,
    [cast(p, f"2023-06-02T{clock(b)}Z") for p, b in zip(parts, begins)],
    asks=[ask("castSplitting", ["casts", "position", "latitude", "longitude"], must=False, words=["castsplitting", "position"])],
    why="pressure begins again at the surface behind each blank line, half an hour later",
)

untimed = [plain(w) for w in three]
lines = [*HEAD, ""] + table(untimed[0])
for p in untimed[1:]:
    lines += ["", *table(p, names=False)]
export(
    "casts-parted-by-blank-lines-one-time.csv", lines, [cast(p, START) for p in untimed],
    asks=[ask("time", ["casts", "start"], words=["time", "castsplitting"], why="one time stands for three casts")],
    why="one start for the whole file cannot be the start of each cast",
)

one = with_times(W, 30600)
rows = table(one)
lines = ["latitude: 51.20100", "longitude: -4.30200", "", *rows[:6], "", *rows[6:11], "", *rows[11:16], "", *rows[16:]]
export("one-cast-with-a-blank-line-every-five-rows.csv", lines, [cast(one, START)], asks=[ask("castSplitting", ["casts"], must=False)])

# casts under headings of their own
lines = ["Boat log, Otter Steps (invented); clock UTC; sonde OS-12"]
casts = []
for i, (w, b) in enumerate(zip(three, begins)):
    cols = plain(w)
    lines += [f"--- Lowering {i + 4} ---", f"Let go {clock(b)} on 2 June 2023", f"Place at 51.20{i}00 N, 4.30{i}00 W", *table(cols)]
    casts.append(cast(cols, f"2023-06-02T{clock(b)}Z", 51.2 + i / 1000, -4.3 - i / 1000))
export("casts-under-headings.csv", lines, casts)

# casts in a column, rows of two casts mixed
a, b = plain(Water(12)), plain(Water(12, warm=(15.1, 11.0)))
lines = ["start: 2023-06-02T08:30:00Z", "latitude: 51.20100", "longitude: -4.30200", "dip," + ",".join(c.header for c in a)]
for k in range(12):
    for label, cols in (("A7", a), ("A8", b)):
        lines.append(label + "," + ",".join(c.cells[k] for c in cols))
export(
    "casts-by-a-column-one-start.csv", lines, [cast(a, START, id="A7"), cast(b, START, id="A8")],
    asks=[ask("time", ["start"], words=["time"], why="two dips, one start")],
)

# a small table of metadata above the table of data
lines = ["Station;Date;Time (UTC);Latitude;Longitude;Sonde no.", "OS-4;2023-06-02;08:30:00;51.20100;-4.30200;K117", "", *table(plain(), ";")]
export("small-table-above-the-data.csv", lines, [cast(plain(), START, notes=["OS-4;2023-06-02;08:30:00;51.20100;-4.30200;K117"])], delimiter=";",
       asks=[ask("time", ["start", "latitude", "longitude"], must=False, words=["time", "position"])])

lines = ["Estacion\tFecha\tHora UTC\tLatitud\tLongitud", "R2\t02/06/2023\t08:30\t51,2010\t-4,3020", "", *table(plain(), "\t", decimal=",")]
export("small-table-in-spanish.txt", lines, [cast(plain(), START)], delimiter="\t", decimal=",",
       asks=[ask("dateOrder", ["start", "latitude", "longitude"], must=False, words=["order", "time", "position", "decimal"])])

# header block parted by another sign than the table
export("header-by-tabs-table-by-commas.txt", ["Place:\tOtter Steps (invented)", "Start:\t2023-06-02 08:30:00 UTC", "Lat:\t51.20100", "Lon:\t-4.30200", *table(plain())], [cast(plain(), START)])
export("header-by-commas-table-by-blanks.txt", ["Start,2023-06-02 08:30:00 UTC", "Lat,51.20100", "Lon,-4.30200", *table(plain(), "   ")], [cast(plain(), START)], delimiter="whitespace")

# pages with form feeds, page headers and the names again
cols = with_times(W, 30600)
rows = table(cols)
lines = ["Recorder print, page 1 of 3", "fix 51.20100 N 4.30200 W", *rows[:8], "\fRecorder print, page 2 of 3", rows[0], *rows[8:15], "\fRecorder print, page 3 of 3", rows[0], *rows[15:], "End of print"]
export("pages-with-form-feeds.txt", lines, [cast(cols, START)])

rows = table(plain())
lines = [*HEAD, *rows[:7], rows[0], *rows[7:13], rows[0], *rows[13:]]
export("names-repeated.csv", lines, [cast(plain(), START)])

# rulers, boxes, leading and trailing delimiters
rows = table(plain(), " | ", edge="| ", end=" |")
ruler = "+" + "-" * 40 + "+"
export("boxed-table.txt", [*HEAD, ruler, rows[0], ruler, *rows[1:], ruler], [cast(plain(), START)], delimiter="|")
rows = table(plain(), ";", end=";", edge=";")
export("leading-and-trailing-semicolons.csv", ["Start;2023-06-02 08:30 UTC", "Lat;51.20100", "Lon;-4.30200", *rows], [cast(plain(), START)], delimiter=";")

# what stands below the table
below = {
    "notes-below-the-table.csv": ["", "3 readings repeated by hand at 2 m", "Swell 0.5 m, wind 4 m/s", "20 rows written"],
    "statistics-below-the-table.csv": ["Mean,5.021,13.421,33.123", "Max,9.811,16.800,41.200", "Min,0.201,10.900,19.900"],
    "statistics-behind-a-blank-line.csv": ["", "mean,5.021,13.421,33.123", "sd,2.9,1.8,6.5"],
    "row-count-below-the-table.csv": ["20"],
}
for name, tail in below.items():
    cols = plain()
    names = table(cols)
    if name.startswith("statistics"):
        cols = [Col("row", "other", [str(i + 1) for i in range(20)]), *plain()]
        names = table(cols)
    export(name, [*HEAD, *names, *tail], [cast(cols, START, notes=[tail[-1]] if name.startswith("notes") else ())])

# heads
cols = [Col("pressure [dbar]", "p dbar", W.p), Col("temperature [degC]", "t C", W.t), Col("temperature [degC]", "t C", [t + 0.012 for t in W.t], says="temperature [degC] (2)"), Col("conductivity [mS/cm]", "c mS", W.c)]
export("two-columns-of-one-name.csv", [*HEAD, *table(cols)], [cast(cols, START)])
cols = plain()
for c, (n, u) in zip(cols, (("pressure", "dbar"), ("temperature", "degC"), ("conductivity", "mS/cm"))):
    c.header = c.says = n
    c.unit = u
names, *rows = table(cols, "  ")
units = "  ".join(c.unit for c in cols)
export("units-below-a-ruler.txt", [*HEAD, names, "-" * 40, units, "=" * 40, *rows], [cast(cols, START)], delimiter="whitespace")
export("units-above-the-names.txt", [*HEAD, units, names, *rows], [cast(cols, START)], delimiter="whitespace")
export("no-head-at-all.txt", ["start 2023-06-02 08:30 UTC", "51.20100 N 4.30200 W", *rows],
       [cast([Col("", "other", c.cells, says=f"column {i + 1}") for i, c in enumerate(cols)], START)], delimiter="whitespace",
       asks=[ask("quantity", [f"column:column {i + 1}" for i in range(3)], words=["quantity", "column"])])

# cells
v = [f"{x:,.1f}" for x in W.v]
cols = [Col("depth (m)", "z m", W.z), Col("sound speed (m/s)", "v", [f'"{x}"' for x in v])]
export("thousands-in-quotes.csv", ["start,2023-06-02 08:30 UTC", "lat,51.20100", "lon,-4.30200", *table(cols)], [cast(cols, START, thousands=",")],
       asks=[ask("units", ["column:sound speed (m/s)"], must=False)])
us = [f"{x * 1000:,.1f}".replace(",", "_").replace(".", ",").replace("_", ".") for x in W.c]
cols = [Col("Tiefe [m]", "z m", [f"{x:.2f}".replace(".", ",") for x in W.z]), Col("Leitfähigkeit [µS/cm]", "c uS", us), Col("Temperatur [°C]", "t C", [f"{x:.2f}".replace(".", ",") for x in W.t])]
export("decimal-comma-and-thousands-dot.csv", ["Ort: Otterstufen (erfunden)", "Beginn: 2. Juni 2023 10:30 MESZ", "Breite: 51,2010 N", "Länge: 4,3020 W", *table(cols, ";")],
       [cast(cols, START, decimal=",", thousands=".")], delimiter=";", decimal=",", eol="CRLF", encoding="windows-1252")
cols = [Col("pressure [dbar]", "p dbar", W.p, "{:+.4E}"), Col("temperature [degC]", "t C", W.t, "{:+.3f}"), Col("conductivity [S/m]", "c S", [f"{x / 10:.5E}".replace("E", "D") for x in W.c])]
export("plus-signs-and-exponents.txt", [*HEAD, *table(cols, "\t")], [cast(cols, START)], delimiter="\t", eol="CR")

# empty cells in fixed columns
names = f"{'depth[m]':>10}{'temp[degC]':>12}{'sal[PSU]':>10}{'turb[NTU]':>11}"
turb = [f"{1 + i / 7:.1f}" if i % 3 else "" for i in range(20)]
sal = [f"{x:.2f}" if i not in (4, 5) else "" for i, x in enumerate(W.s)]
cols = [Col("depth[m]", "z m", W.z, "{:.1f}"), Col("temp[degC]", "t C", W.t), Col("sal[PSU]", "s", sal), Col("turb[NTU]", "turb", turb)]
rows = ["".join(f"{c:>{n}}" for c, n in zip(cells, (10, 12, 10, 11))) for cells in zip(*(c.cells for c in cols))]
export("fixed-columns-with-empty-cells.txt", [*HEAD, names, *rows], [cast(cols, START, missing=("",))], delimiter="fixed")

# missing markers
t = [f"{x:.2f}" for x in W.t]
t[3], t[9] = "-9.99", "-9.99"
c = [f"{x:.2f}" for x in W.c]
c[0], c[1], c[-1] = "***", "***", "***"
cols = [Col("pressure [dbar]", "p dbar", W.p), Col("temperature [degC]", "t C", t), Col("conductivity [mS/cm]", "c mS", c)]
export("markers-named-in-french.csv", ["début: 2023-06-02 08:30 UTC", "latitude: 51.2010 N", "longitude: 4.3020 O", "-9.99 = pas de mesure", *table(cols)],
       [cast(cols, START, missing=("-9.99", "***"))], missing=("-9.99", "***"))
s = [f"{x:.2f}" for x in W.s]
s[2] = "1e20"
t = [f"{x:.2f}" for x in W.t]
t[5] = "n/a"
t[6] = "NaN"
cols = [Col("pressure [dbar]", "p dbar", W.p), Col("temperature [degC]", "t C", t), Col("salinity", "s", s)]
export("several-markers-unnamed.csv", [*HEAD, *table(cols)], [cast(cols, START, missing=("1e20", "n/a", "NaN"))], asks=[ask("missingMarker", ["column:salinity"], must=False, words=["missing"])])
t = [f"{x:.1f}" for x in W.t]
t[4] = t[7] = "99.9"
cols = [Col("pressure [dbar]", "p dbar", W.p), Col("temperature [degC]", "t C", t), Col("conductivity [mS/cm]", "c mS", W.c)]
export("nines-that-nobody-names.csv", [*HEAD, *table(cols)], [cast(cols, START, missing=("99.9",))], asks=[ask("missingMarker", ["column:temperature [degC]"], words=["missing"])])

# encodings and line ends
cols = [Col("Djup [m]", "z m", W.z, "{:.2f}"), Col("Vattentemperatur [°C]", "t C", W.t), Col("Salthalt", "s", W.s)]
head = ["Plats: Utterstegen (påhittad)", "Starttid: 2 juni 2023 10:30 CEST", "Latitud: 58.20100 N", "Longitud: 11.30200 Ö"]
for name, codec, eol in (("swedish-utf-16-with-mark.txt", "utf-16le", "CRLF"), ("swedish-utf-16-big-endian.txt", "utf-16be", "LF"), ("swedish-windows-1252.txt", "windows-1252", "CR"), ("swedish-utf-8-with-mark.txt", "utf-8-bom", "CRLF")):
    export(name, [*head, *table(cols, "\t")], [cast(cols, START, 58.201, 11.302)], delimiter="\t", encoding=codec, eol=eol)

# a decimal comma in most columns, and one with points: thousands, or another sign?
comma = [f"{x:.2f}".replace(".", ",") for x in W.t]
cols = [Col("Tiefe [m]", "z m", [f"{x:.2f}".replace(".", ",") for x in W.z]), Col("Temperatur [°C]", "t C", comma), Col("Leitfähigkeit [mS/cm]", "c mS", [f"{x:.3f}" for x in W.c])]
GERMAN = ["Beginn: 2. Juni 2023 10:30 MESZ", "Breite: 51,2010 N", "Länge: 4,3020 W"]
truth = cast(cols[:2], START, decimal=",")
truth["columns"] += cast(cols[2:], START)["columns"]
export("one-column-with-points-among-commas.csv", [*GERMAN, *table(cols, ";")], [truth], delimiter=";", decimal=",",
       asks=[ask("decimalSign", ["column:Leitfähigkeit [mS/cm]"], words=["decimalsign", "units:leitf"])], why="19.532 is 19 thousand or 19 and a half")
cols[2] = Col("Leitfähigkeit [mS/cm]", "c mS", [f"{x:.2f}" for x in W.c])
truth = cast(cols[:2], START, decimal=",")
truth["columns"] += cast(cols[2:], START)["columns"]
export("one-column-with-two-places-and-points.csv", [*GERMAN, *table(cols, ";")], [truth], delimiter=";", decimal=",",
       asks=[ask("decimalSign", ["column:Leitfähigkeit [mS/cm]"], must=False, words=["decimalsign", "units:leitf", "quantity"])])
# a small table as wide as the data
cols = plain()
lines = ["Time UTC,Latitude,Longitude", "2023-06-02 08:30,51.20100,-4.30200", *table(cols)]
export("small-table-as-wide-as-the-data.csv", lines, [cast(cols, START)])
lines = ["Cast,Start UTC,Lat,Lon,Depth m", "K7,2023-06-02 08:30,51.20100,-4.30200,12", "K8,2023-06-02 09:10,51.20400,-4.30800,14", "", "Cast,pressure [dbar],temperature [degC],conductivity [mS/cm]"]
for name, w in (("K7", Water(14)), ("K8", Water(16))):
    lines += [",".join((name, *cells)) for cells in zip(*(c.cells for c in plain(w)))]
export("list-of-casts-above-the-data.csv", lines, [cast(plain(Water(14)), START, id="K7"), cast(plain(Water(16)), "2023-06-02T09:10:00Z", 51.204, -4.308, id="K8")],
       asks=[ask("time", ["start", "latitude", "longitude"], must=False, words=["time", "position"])])
