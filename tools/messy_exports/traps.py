"""Exports in which the first reading that comes to mind is wrong."""

from .build import Col, Water, ask, cast, clock, export, table

W = Water()
N = len(W.z)
START = "2023-06-02T08:30:00Z"
ZONE = [ask("timeZone", ["start"], words=["timezone", "time"])]
PLACE = ["latitude: 51.20100", "longitude: -4.30200"]
WHERE = [ask("position", ["latitude", "longitude"], words=["position", "hemisphere"])]


def water():
    return [Col("pressure [dbar]", "p dbar", W.p), Col("temperature [degC]", "t C", W.t), Col("salinity [PSU]", "s", W.s)]


def put(name, head, cols=None, start=START, lat=51.201, lon=-4.302, asks=(), why="", **more):
    cols = cols or water()
    export(name, [*head, *table(cols)], [cast(cols, start, lat, lon, **more)], asks=asks, why=why)


def about(header, topic="units", must=True):
    return ask(topic, [f"column:{header}"], must=must, words=[f"{topic}:{header}".lower(), f"quantity:{header}".lower()])


# zones that are named and are not the clock's
put("utc-of-the-calibration-only.csv", ["calibrated 2023-01-02 10:00 UTC", "start: 2023-06-02 08:30:00", *PLACE], asks=ZONE)
put("utc-of-the-export-only.csv", ["exported: 2023-06-05 10:00 UTC", "start: 2023-06-02 08:30:00", *PLACE], asks=ZONE)
put("clock-ahead-of-utc.csv", ["clock: local time, 2 h ahead of UTC", "start: 2023-06-02 10:30:00", *PLACE], asks=[ask("timeZone", ["start"], must=False, words=["timezone"])])
put("clock-hours-behind-utc.csv", ["all times 7 hours behind UTC", "start: 2023-06-02 01:30:00", *PLACE], asks=[ask("timeZone", ["start"], must=False, words=["timezone"])])
put("utc-is-local-minus-two.csv", ["times are local, UTC is two hours less", "start: 2023-06-02 10:30:00", *PLACE], asks=ZONE)
put("clock-not-on-utc.csv", ["clock not on UTC", "start: 2023-06-02 10:30:00", *PLACE], asks=ZONE)
put("utc-with-a-question-mark.csv", ["clock: UTC?", "start: 2023-06-02 08:30:00", *PLACE], asks=ZONE)
put("probably-utc.csv", ["clock probably UTC", "start: 2023-06-02 08:30:00", *PLACE], asks=ZONE)
put("zone-of-the-other-sign.csv", ["time zone: Etc/GMT+2", "start: 2023-06-02 06:30:00", *PLACE], asks=[ask("timeZone", ["start"], must=False, words=["timezone"])],
    why="in these names GMT+2 is two hours behind Greenwich")
put("zone-by-a-city.csv", ["time zone: Europe/Lisbon", "start: 2023-06-02 09:30:00", *PLACE], asks=ZONE)
put("both-clocks.csv", ["start (local): 2023-06-02 10:30:00", "start (UTC): 2023-06-02 08:30:00", *PLACE], asks=[ask("time", ["start"], must=False, words=["time"])])
put("uhr-auf-ortszeit.csv", ["Uhr auf Ortszeit, UTC plus zwei Stunden", "Beginn: 2023-06-02 10:30:00", *PLACE], asks=ZONE)

# positions
put("packed-in-columns-near-the-equator.csv", ["start: 2023-06-02T08:30:00Z"], [Col("lat", "other", ["0030.0000"] * N), Col("lon", "other", ["00918.1200"] * N), *water()], lat=0.5, lon=9.302, asks=WHERE,
    why="0030.0000 is half a degree, not thirty")
put("packed-in-the-header-near-the-equator.csv", ["start: 2023-06-02T08:30:00Z", "latitude: 0030.0000", "longitude: 00018.1200"], lat=0.5, lon=0.302, asks=WHERE)
put("longitude-to-360.csv", ["start: 2023-06-02T08:30:00Z", "latitude: 51.20100", "longitude: 355.69800"], asks=WHERE)
put("letters-in-brackets.csv", ["start: 2023-06-02T08:30:00Z", "Latitude: 51 12.060 (N)", "Longitude: 4 18.120 (W)"], asks=[ask("position", ["latitude", "longitude"], must=False, words=["position", "hemisphere"])])
put("letters-joined.csv", ["start: 2023-06-02T08:30:00Z", "LAT 5112.060N LON 00418.120W"])
put("parted-by-a-slash.csv", ["start: 2023-06-02T08:30:00Z", "Pos. 51.2010N/004.3020W"], asks=[ask("position", ["latitude", "longitude"], must=False, words=["position"])])
put("two-stations-in-the-header.csv", ["start: 2023-06-02T08:30:00Z", "planned position: 51.25000 N 4.35000 W", "actual position: 51.20100 N 4.30200 W"], asks=[ask("position", ["latitude", "longitude"], must=False, words=["position"])])
put("old-datum.csv", ["start: 2023-06-02T08:30:00Z", "position (ED50): 51.20100 N 4.30200 W"], asks=[ask("position", ["latitude", "longitude"], words=["position", "datum"])],
    why="a hundred metres off WGS 84")

# names that sound like another quantity
put("potential-temperature.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [water()[0], Col("potential temperature [degC]", "other", W.t), water()[2]], asks=[about("potential temperature [degC]", "quantity", must=False)])
put("air-temperature-beside-water.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [Col("air temp [degC]", "other", ["18.2"] * N), *water()])
put("bottom-depth-beside-pressure.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [Col("water depth [m]", "other", ["12.5"] * N), *water()])
put("height-above-the-bottom.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [Col("altitude [m]", "other", [12 - z for z in W.z]), *water()])
put("compensated-conductivity.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [*water()[:2], Col("conductivity (temp. compensated) [mS/cm]", "sc mS", W.sc)], asks=[ask("conductivityKind", [], must=False, words=["conductivitykind"])])
put("conductivity-compensated-by-a-note.csv", ["start: 2023-06-02T08:30:00Z", "conductivities are normalised to 25 deg C", *PLACE], [*water()[:2], Col("conductivity [mS/cm]", "sc mS", W.sc)], asks=[ask("conductivityKind", ["column:conductivity [mS/cm]"], must=False, words=["conductivitykind"])])
put("sigma-theta.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [*water(), Col("sigma-theta [kg/m3]", "other", [r - 1000 for r in W.rho])])
put("micro-sign-lost.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [*water()[:2], Col("conductivity [?S/cm]", "c uS", [c * 1000 for c in W.c], "{:.0f}")], asks=[about("conductivity [?S/cm]")])
put("marks-behind-numbers.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [water()[0], Col("temperature [degC]", "other", [f"{t:.3f}B" for t in W.t]), water()[2]], asks=[about("temperature [degC]", must=False)],
    why="a letter behind each number is a mark, the column is kept as it stands")
put("standard-deviations-beside-means.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [*water(), Col("temperature sd [degC]", "other", ["0.012"] * N), Col("salinity sd", "other", ["0.021"] * N)])
put("minimum-and-maximum.csv", ["start: 2023-06-02T08:30:00Z", *PLACE], [*water()[:2], Col("temperature min [degC]", "other", [t - 0.1 for t in W.t]), Col("temperature max [degC]", "other", [t + 0.1 for t in W.t])])

# times
put("footer-with-another-start.csv", ["start: 2023-06-02T08:30:00Z", *PLACE])
cols = [Col("time (UTC)", "time", [clock(30600 + 2 * i, "2023-06-02 ") for i in range(N)]), *water()]
put("header-an-hour-from-the-rows.csv", ["start: 2023-06-02T09:30:00Z", *PLACE], cols, asks=[ask("time", ["start"], words=["time"])])
cols = [Col("time (UTC)", "time", [clock(30600 + 38 - 2 * i, "2023-06-02 ") for i in range(N)]), *water()]
put("rows-in-turned-order.csv", PLACE, cols, asks=[ask("time", ["start"], must=False, words=["time"])], why="the last row is the first in time")
cols = [Col("date", "time", ["2023-06-02"] * N), Col("local time", "time", [clock(37800 + 2 * i) for i in range(N)]), Col("UTC", "time", [clock(30600 + 2 * i) for i in range(N)]), *water()]
put("two-clocks-in-columns.csv", PLACE, cols)
put("year-of-three-digits.csv", ["start: 2-6-123 08:30 UTC", *PLACE], asks=[ask("time", ["start"], words=["time", "order"])])

# a date and a time of day of different clocks
cols = [Col("UTC", "time", [clock(5400 + 2 * i) for i in range(N)]), *water()]
put("local-date-and-utc-clock.csv", ["date (local): 2023-06-02", *PLACE], cols, start="2023-06-03T01:30:00Z", asks=ZONE, why="at 01:30 UTC it is still the day before in the west")
local = [Col("date", "time", ["2023-06-02"] * N), Col("local time", "time", [clock(66600 + 2 * i) for i in range(N)]), *cols]
put("local-date-beside-two-clocks.csv", PLACE, local, start="2023-06-03T01:30:00Z", asks=ZONE)
put("date-of-its-own-zone.csv", ["date: 2023-06-02 (UTC-7)", *PLACE], cols, start="2023-06-03T01:30:00Z", asks=ZONE)

# an order of day and month that is spelt out
for name, said in (("order-in-a-line.csv", "dates are dd/mm/yyyy"), ("order-in-german.csv", "Datum als TT/MM/JJJJ"), ("order-in-french.csv", "dates en jj/mm/aaaa")):
    cols = [Col("when", "time", [f"05/06/2023 {clock(30600 + 2 * i)}" for i in range(N)]), *water()]
    put(name, [said, "clock: UTC", *PLACE], cols, start="2023-06-05T08:30:00Z")
cols = [Col("date [mm/dd/yyyy]", "time", ["06/05/2023"] * N), Col("time UTC", "time", [clock(30600 + 2 * i) for i in range(N)]), *water()]
put("order-in-a-head.csv", PLACE, cols, start="2023-06-05T08:30:00Z")

# a clock of twelve hours that says neither am nor pm
twelve = [f"{(46790 + 2 * i) // 3600 if 46790 + 2 * i < 46800 else 1}:{(46790 + 2 * i) // 60 % 60:02d}:{(46790 + 2 * i) % 60:02d}" for i in range(N)]
cols = [Col("UTC", "time", twelve), *water()]
put("twelve-hours-without-am-or-pm.csv", ["date: 2023-06-02", *PLACE], cols, start="2023-06-02T12:59:50Z", asks=[ask("time", ["start"], words=["time"])])

# a whole header in each language: start, place, serial number, missing marker
HEADERS = {
    "french": (["Début : 2 juin 2023 10h30 (UTC+2)", "Latitude : 48,2010 N", "Longitude : 4,3020 O", "N° de série : K117"], 48.201, -4.302),
    "german": (["Beginn: 2. Juni 2023, 10:30 Uhr MESZ", "Breite: 54,2010 N", "Länge: 8,3020 O", "Seriennummer: K117"], 54.201, 8.302),
    "spanish": (["Inicio: 2 de junio de 2023, 08:30 UTC", "Latitud: 43,2010 N", "Longitud: 8,3020 O", "Número de serie: K117"], 43.201, -8.302),
    "portuguese": (["Início: 2 de junho de 2023, 08:30 UTC", "Latitude: 38,2010 N", "Longitude: 9,3020 O", "Número de série: K117"], 38.201, -9.302),
    "italian": (["Inizio: 2 giugno 2023 10:30 CEST", "Latitudine: 45,2010 N", "Longitudine: 12,3020 E", "Matricola: K117"], 45.201, 12.302),
    "dutch": (["Begin: 2 juni 2023 10:30 UTC+2", "Breedte: 52,2010 N", "Lengte: 4,3020 O", "Serienummer: K117"], 52.201, 4.302),
    "danish": (["Starttid: 2. juni 2023 kl. 10:30 UTC+2", "Bredde: 55,2010 N", "Længde: 12,3020 Ø", "Serienummer: K117"], 55.201, 12.302),
    "norwegian": (["Starttid: 2. juni 2023 kl. 10:30 UTC+2", "Breddegrad: 60,2010 N", "Lengdegrad: 5,3020 Ø", "Serienummer: K117"], 60.201, 5.302),
    "swedish": (["Starttid: 2 juni 2023 kl. 10:30 UTC+2", "Latitud: 58,2010 N", "Longitud: 11,3020 Ö", "Serienummer: K117"], 58.201, 11.302),
    "finnish": (["Alku: 2. kesäkuuta 2023 klo 11:30 UTC+3", "Leveysaste: 60,2010 N", "Pituusaste: 22,3020 E"], 60.201, 22.302),
    "icelandic": (["Upphaf: 2. júní 2023 kl. 08:30 UTC", "Breidd: 64,2010 N", "Lengd: 22,3020 V"], 64.201, -22.302),
}
for language, (head, lat, lon) in HEADERS.items():
    cols = [Col("P [dbar]", "p dbar", W.p), Col("T [°C]", "t C", W.t), Col("S [PSU]", "s", W.s)]
    export(f"header-in-{language}.csv", [*head, *table(cols, ";", decimal=",")], [cast(cols, START, lat, lon)], delimiter=";", decimal=",",
           asks=[ask("time", ["start", "latitude", "longitude"], must=False, words=["time", "position", "hemisphere"])])

put("offset-of-half-hours-as-a-decimal.csv", ["start: 2023-06-02 05:00 UTC-3.5", *PLACE], asks=[ask("timeZone", ["start"], must=False, words=["timezone"])])
put("winter-name-in-summer.csv", ["time zone: CET (DST in force)", "start: 2023-06-02 10:30", *PLACE], asks=ZONE, why="CET is UTC+1, its summer time UTC+2")
put("winterzeit-im-sommer.csv", ["Zeitzone: MEZ Sommerzeit", "Beginn: 2023-06-02 10:30", *PLACE], asks=ZONE)
put("winter-name-behind-a-summer-time.csv", ["start: 2023-06-02 10:30 CET (daylight saving)", *PLACE], asks=ZONE)
cols = [Col("D", "z m", W.z), Col("T", "t C", W.t), Col("S", "s", W.s)]
names, *rows = table(cols)
export("letters-above-their-units.csv", ["start: 2023-06-02T08:30:00Z", *PLACE, names, "m,degC,PSU", *rows], [cast(cols, START)])
