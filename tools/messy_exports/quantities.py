"""What columns hold and in which unit, what had been done to them, flags, series at one depth."""

from .build import Col, Water, ask, cast, clock, export, table

W = Water()
N = len(W.z)
HEAD = ["start: 2023-06-02T08:30:00Z", "latitude: 51.20100", "longitude: -4.30200"]
START = "2023-06-02T08:30:00Z"


def put(name, cols, head=(), asks=(), why="", state=None, sep=",", decimal=".", start=START, **more):
    export(name, [*HEAD, *head, *table(cols, sep, decimal=decimal)], [cast(cols, start, state=state, **more)], asks=asks, why=why,
           delimiter="whitespace" if sep.strip(" ") == "" else sep, decimal=decimal)


def col(header, kind, values, form="{:.3f}"):
    return Col(header, kind, values, form)


def about(header, topic="units", must=True, also=None):
    """A question on a column, or on the one it disagrees with."""
    named = [header, also] if also else [header]
    words = [f"{topic}:{h}".lower() for h in named] if topic in ("units", "quantity", "flagScheme") else [topic.lower()]
    return ask(topic, [f"column:{header}"], must=must, words=words)


def between(header, other):
    """The two columns contradict each other: a question on either will do."""
    return [about(header, also=other), about(other, must=False, also=header)]


T = col("temperature [degC]", "t C", W.t)
C = col("conductivity [mS/cm]", "c mS", W.c)
P = col("pressure [dbar]", "p dbar", W.p)
Z = col("depth [m]", "z m", W.z)
S = col("salinity [PSU]", "s", W.s)

# units of pressure
for unit, kind, factor, form in (("psi", "p psi", 1 / 0.6894757293168, "{:.4f}"), ("kPa", "p kPa", 10, "{:.3f}"), ("bar", "p bar", 0.1, "{:.5f}"), ("mbar", "p mbar", 100, "{:.2f}"), ("MPa", "p MPa", 0.01, "{:.6f}")):
    put(f"pressure-in-{unit}.csv", [col(f"sea pressure ({unit})", kind, [p * factor for p in W.p], form), T, C])
put("absolute-pressure-in-kpa.csv", [col("Absolute pressure (kPa)", "pa kPa", [p * 10 + 101.325 for p in W.p]), T, C])
put("pressure-that-may-be-absolute.csv", [col("pressure [mbar]", "p mbar", [p * 100 + 1013 for p in W.p], "{:.1f}"), T, C], asks=[about("pressure [mbar]", "pressureKind")])
put("pressure-in-bar-called-dbar.csv", [col("pressure [dbar]", "p dbar", [p / 10 for p in W.p]), Z, T, C],
    asks=between("pressure [dbar]", "depth [m]"), why="the depth column says ten times as much")
put("pressure-in-kpa-called-dbar.csv", [col("pressure [dbar]", "p dbar", [p * 10 for p in W.p]), Z, T, C],
    asks=between("pressure [dbar]", "depth [m]"))
put("depth-in-feet-called-metres.csv", [P, col("depth [m]", "z m", [z / 0.3048 for z in W.z]), T, C],
    asks=between("depth [m]", "pressure [dbar]"))
put("pressure-beyond-the-rating.csv", [col("pressure [dbar]", "p dbar", [p * 100 for p in W.p], "{:.1f}"), T, C], ["rated to 100 dbar"], asks=[about("pressure [dbar]")])

# units of depth
put("depth-in-feet.csv", [col("Depth (ft)", "z ft", [z / 0.3048 for z in W.z]), T, C])
put("depth-in-fathoms.csv", [col("depth (fathoms)", "z fathom", [z / 1.8288 for z in W.z], "{:.4f}"), T, C])
put("depth-in-centimetres.csv", [col("depth_cm", "z cm", [z * 100 for z in W.z], "{:.0f}"), T, C])
put("heights-below-zero.csv", [col("depth [m]", "z up", [-z for z in W.z]), T, C], asks=[about("depth [m]", "depthSign")])
put("depth-below-chart-datum.csv", [Z, T, C], ["depths are below chart datum"], asks=[about("depth [m]", "verticalReference")])

# temperature
put("temperature-in-fahrenheit.csv", [P, col("temp (°F)", "t F", [t * 1.8 + 32 for t in W.t]), C])
put("temperature-in-kelvin.csv", [P, col("temp [K]", "t K", [t + 273.15 for t in W.t]), C])
put("temperature-on-ipts-68.csv", [P, col("temp [degC IPTS-68]", "t 68", W.t), C])
put("fahrenheit-called-celsius.csv", [P, col("temp [degC]", "t C", [t * 1.8 + 32 for t in W.t]), C], asks=[about("temp [degC]")])
put("kelvin-called-celsius.csv", [P, col("temp [degC]", "t C", [t + 273.15 for t in W.t]), C], asks=[about("temp [degC]")])
COLD = Water(warm=(4.4, 2.9))
put("cold-fahrenheit-called-celsius.csv", [P, col("temp [degC]", "t C", [t * 1.8 + 32 for t in COLD.t]), col("conductivity [mS/cm]", "c mS", COLD.c), col("salinity [PSU]", "s", COLD.s)], asks=between("temp [degC]", "conductivity [mS/cm]"),
    why="37 to 39 degC: warm, but the file's own salinity does not follow from it")

# conductivity and salinity
put("conductivity-in-siemens-per-metre.csv", [P, T, col("Cond. (S/m)", "c S", [c / 10 for c in W.c], "{:.5f}")])
put("conductivity-in-microsiemens.csv", [P, T, col("Cond µS/cm", "c uS", [c * 1000 for c in W.c], "{:.0f}")])
put("conductivity-in-millisiemens-per-metre.csv", [P, T, col("conductivity [mS/m]", "c mS/m", [c * 100 for c in W.c], "{:.1f}")])
put("siemens-per-metre-called-ms.csv", [P, T, col("conductivity [mS/cm]", "c mS", [c / 10 for c in W.c], "{:.4f}"), S], asks=between("conductivity [mS/cm]", "salinity [PSU]"),
    why="the file's own salinity says ten times as much")
put("siemens-for-millisiemens.csv", [P, T, col("conductivity [S/m]", "c S", W.c)], asks=[about("conductivity [S/m]")])
put("conductivity-ratio.csv", [P, T, col("conductivity ratio", "c ratio", [c / 42.914 for c in W.c], "{:.5f}")])
put("specific-conductance.csv", [P, T, col("SpC @25C (mS/cm)", "sc mS", W.sc)])
put("specific-conductance-in-spanish.csv", [col("Profundidad (m)", "z m", W.z), col("Temperatura (°C)", "t C", W.t), col("Conductividad a 25 °C (µS/cm)", "sc uS", [c * 1000 for c in W.sc], "{:.0f}")])
put("leitfaehigkeit-25.csv", [col("Tiefe (m)", "z m", W.z), col("Temp. (°C)", "t C", W.t), col("Leitf. 25°C (mS/cm)", "sc mS", W.sc)], asks=[about("Leitf. 25°C (mS/cm)", "quantity", must=False)])
put("bare-ec.csv", [P, T, col("EC mS/cm", "c mS", W.c)], asks=[about("EC mS/cm", "conductivityKind")])
put("ec-with-salinity.csv", [P, T, col("EC (mS/cm)", "sc mS", W.sc), S], asks=[about("EC (mS/cm)", "conductivityKind", must=False)])
put("specific-conductance-called-conductivity.csv", [P, T, col("conductivity [mS/cm]", "sc mS", W.sc), S], asks=[about("conductivity [mS/cm]", "conductivityKind")])
put("salinity-in-grams-per-kilogram.csv", [P, T, col("salinity [g/kg]", "s", W.s)], asks=[about("salinity [g/kg]", "salinityScale")])
put("salinity-per-mille.csv", [P, T, col("Salinity (‰)", "s", W.s)], asks=[about("Salinity (‰)", "salinityScale")])
put("salinity-in-percent.csv", [P, T, col("salinity [PSU]", "s", [s / 1000 for s in W.s], "{:.6f}"), C], asks=between("salinity [PSU]", "conductivity [mS/cm]"),
    why="a thousandth of what conductivity and temperature give")

# sound speed, density
put("own-sound-speed-and-density.csv", [P, T, C, S, col("sound speed [m/s]", "v", W.v, "{:.2f}"), col("density [kg/m3]", "rho", W.rho)])
put("sound-speed-in-feet.csv", [P, T, C, col("SV (ft/s)", "v ft", [v / 0.3048 for v in W.v], "{:.2f}")])
put("sound-speed-in-feet-called-metres.csv", [P, T, C, col("SV (m/s)", "v", [v / 0.3048 for v in W.v], "{:.2f}")], asks=[about("SV (m/s)")])
put("density-in-grams.csv", [P, T, C, col("density (g/cm3)", "rho g", [r / 1000 for r in W.rho], "{:.6f}")])
put("sigma-called-density.csv", [P, T, C, col("density [kg/m3]", "rho", [r - 1000 for r in W.rho])], asks=[about("density [kg/m3]")])

# everything else
o2 = [8.9 - 0.1 * i for i in range(N)]
put("oxygen-in-four-units.csv", [P, T, C, col("DO (mg/L)", "o2 mg", o2, "{:.2f}"), col("DO sat (%)", "o2 %", [o * 11 for o in o2], "{:.1f}"), col("O2 (ml/l)", "o2 ml", [o * 0.7 for o in o2]), col("oxygen [umol/kg]", "o2 umol", [o * 30.5 for o in o2], "{:.1f}")])
put("oxygen-micromoles-called-milligrams.csv", [P, T, C, col("oxygen [mg/l]", "o2 mg", [o * 30.5 for o in o2], "{:.1f}")], asks=[about("oxygen [mg/l]")])
put("turbidity-chlorophyll-ph-battery.csv", [col("no.", "other", range(1, N + 1), "{:d}"), P, T, C, col("Turb. FNU", "turb", [3 + i / 9 for i in range(N)], "{:.2f}"), col("Chl a (µg/l)", "chl", [2 + i / 9 for i in range(N)], "{:.2f}"), col("pH", "other", [8.1 - i / 99 for i in range(N)], "{:.2f}"), col("battery (V)", "other", [12.4 - i / 99 for i in range(N)], "{:.2f}")],
    asks=[about("Turb. FNU", must=False)])
put("ph-of-seventy.csv", [P, T, C, col("pH", "other", [81 - i / 9 for i in range(N)], "{:.1f}")], asks=[about("pH")], why="pH 81 is none")
put("columns-nobody-knows.csv", [P, T, C, col("Xq7", "other", [i * 1.5 for i in range(N)]), Col("remark", "other", ["calm" if i % 4 else "jerk" for i in range(N)])])

# languages: every quantity in each
LANGUAGES = {
    "french": ("Pression (dbar)", "Température (°C)", "Conductivité (mS/cm)", "Salinité", "Masse volumique (kg/m3)", "Célérité du son (m/s)"),
    "german": ("Druck (dbar)", "Wassertemperatur (°C)", "Leitfähigkeit (mS/cm)", "Salzgehalt", "Dichte (kg/m3)", "Schallgeschwindigkeit (m/s)"),
    "spanish": ("Presión (dbar)", "Temperatura (°C)", "Conductividad (mS/cm)", "Salinidad", "Densidad (kg/m3)", "Velocidad del sonido (m/s)"),
    "portuguese": ("Pressão (dbar)", "Temperatura (°C)", "Condutividade (mS/cm)", "Salinidade", "Densidade (kg/m3)", "Velocidade do som (m/s)"),
    "italian": ("Pressione (dbar)", "Temperatura (°C)", "Conducibilità (mS/cm)", "Salinità", "Densità (kg/m3)", "Velocità del suono (m/s)"),
    "dutch": ("Druk (dbar)", "Watertemperatuur (°C)", "Geleidbaarheid (mS/cm)", "Zoutgehalte", "Dichtheid (kg/m3)", "Geluidssnelheid (m/s)"),
    "danish": ("Tryk (dbar)", "Vandtemperatur (°C)", "Ledningsevne (mS/cm)", "Saltholdighed", "Massefylde (kg/m3)", "Lydhastighed (m/s)"),
    "norwegian": ("Trykk (dbar)", "Sjøtemperatur (°C)", "Konduktivitet (mS/cm)", "Saltholdighet", "Tetthet (kg/m3)", "Lydhastighet (m/s)"),
    "swedish": ("Tryck (dbar)", "Vattentemperatur (°C)", "Konduktivitet (mS/cm)", "Salthalt", "Densitet (kg/m3)", "Ljudhastighet (m/s)"),
    "finnish": ("Paine (dbar)", "Lämpötila (°C)", "Johtavuus (mS/cm)", "Suolaisuus", "Tiheys (kg/m3)", "Äänen nopeus (m/s)"),
    "icelandic": ("Þrýstingur (dbar)", "Hitastig (°C)", "Leiðni (mS/cm)", "Selta", "Eðlismassi (kg/m3)", "Hljóðhraði (m/s)"),
}
KINDS = ("p dbar", "t C", "c mS", "s", "rho", "v")
for language, heads in LANGUAGES.items():
    cols = [col(h, k, v) for h, k, v in zip(heads, KINDS, (W.p, W.t, W.c, W.s, W.rho, W.v))]
    put(f"quantities-in-{language}.csv", cols, sep=";", decimal=",")

# flags
flags = ["2"] * N
# a flag column stands with the column it flags, and its scheme is asked
def flagged(name, cols, measured, scheme, must, head=()):
    export(name, [*HEAD, *head, *table(cols)], [cast(measured, START)], asks=[ask("flagScheme", [], must=must, words=[f"flagscheme:{scheme}".lower()])])


flagged("flags-beside-their-columns.csv", [P, T, Col("QC", "other", flags), C, Col("QC", "other", flags)], [P, T, C], "QC", True)
flagged("flags-with-a-legend.csv", [P, T, Col("Q", "other", ["1"] * (N - 1) + ["4"]), C], [P, T, C], "Q", False, ["Q: 1 = good, 4 = bad"])

# what had been done before
DONE = {
    "averaged-in-french.csv": ("moyennes par tranche de 0,5 m", {"processing": "averaged"}),
    "downcast-only-in-german.csv": ("nur Abwärtsprofil", {"direction": "down"}),
    "zeroed-on-deck.csv": ("pressure tared on deck before the dip", {"pressureZeroed": True}),
    "lag-corrected-in-spanish.csv": ("retardo del sensor corregido", {"lagCorrected": True}),
    "upcast-turned-round.csv": ("upcast, order of rows reversed", {"direction": "up-reversed"}),
    "not-averaged.csv": ("raw data, not averaged", {"processing": "raw"}),
    "averaged-in-swedish.csv": ("medelvärden per halvmeter", {"processing": "averaged"}),
    "no-correction-of-pressure.csv": ("air pressure not subtracted, no lag correction", {"pressureZeroed": False, "lagCorrected": False}),
}
for name, (line, state) in DONE.items():
    timed = "processing" not in state or state["processing"] == "raw"
    cols = [Col("elapsed [s]", "other", [str(2 * i) for i in range(N)])] if timed else []
    put(name, [*cols, P, T, C], [line], state=state)

# a sensor that was held
M = 60
hours = [clock(30600 + 60 * i, "2023-06-02T") + "Z" for i in range(M)]
held = [Col("UTC", "time", hours), col("temp [degC]", "t C", [12 + i / 60 for i in range(M)]), col("salinity", "s", [30 + i / 90 for i in range(M)])]
place = ["51.20100 N 4.30200 W"]
export("series-below-the-surface.csv", [*place, "sensor depth 1.5 m below the surface", *table(held)], [cast(held, START, depth=1.5)], feature="timeSeries")
export("series-in-french.csv", [*place, "immersion du capteur : 2 m sous la surface", *table(held, ";")], [cast(held, START, depth=2.0)], feature="timeSeries", delimiter=";")
export("series-above-the-bed.csv", [*place, "sensor depth 0.4 m, above the bed", *table(held)], [cast(held, START, depth=0.4)], feature="timeSeries", asks=[ask("verticalReference", ["fixedDepth"], words=["verticalreference"])])
tide = [Col("UTC", "time", hours), col("pressure [dbar]", "p dbar", [1.4 + i / 300 for i in range(M)]), *held[1:]]
export("series-by-its-pressure.csv", [*place, *table(tide)], [cast(tide, START)], feature="timeSeries")
