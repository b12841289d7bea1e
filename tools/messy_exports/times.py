"""Dates, clocks, zones and what a header says of them."""

from .build import Col, Water, ask, cast, clock, export, table

W = Water()
POSITION = ["latitude: 51.20100", "longitude: -4.30200"]


def water(w=W):
    return [Col("depth [m]", "z m", w.z, "{:.2f}"), Col("temperature [degC]", "t C", w.t), Col("salinity [PSU]", "s", w.s)]


def timed(header, cells, w=W):
    return [Col(header, "time", cells), *water(w)]


N = len(W.z)
BEGIN = 30600  # 08:30:00

# 2 June 2023 is day 153
cols = timed("day of year (UTC)", [f"{153 + (BEGIN + 2 * i) / 86400:.6f}" for i in range(N)])
export("day-of-year-with-fraction.csv", ["year: 2023", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:day of year (UTC)"], must=False, words=["time", "day"])])
cols = [Col("DOY", "time", ["153"] * N), *timed("UTC", [clock(BEGIN + 2 * i) for i in range(N)])]
export("day-of-year-and-clock.csv", ["Year: 2023", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:DOY"], must=False, words=["time", "day"])])
cols = timed("day of year", [f"{153 + (BEGIN + 2 * i) / 86400:.6f}" for i in range(N)])
export("day-of-year-without-year.csv", ["clock: UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:day of year"], words=["time", "year"])])

# serial day numbers: 2023-06-02 is 45079 where 1970-01-01 is 25569, and 43617 in the system that begins in 1904
serial = [45079 + (BEGIN + 2 * i) / 86400 for i in range(N)]
cols = timed("Date/Time", [f"{x:.7f}" for x in serial])
export("serial-days-of-unknown-epoch.csv", ["clock: UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:Date/Time"], words=["time", "serial", "days"])])
cols = timed("days since 1899-12-30 UTC", [f"{x:.7f}" for x in serial])
export("serial-days-since-1899.csv", [*POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:days since 1899-12-30 UTC"], must=False, words=["time", "days"])])
cols = timed("serial date", [f"{x - 1462:.7f}" for x in serial])
export("serial-days-since-1904.csv", ["dates count days since 1904-01-01, clock UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:serial date"], must=False, words=["time", "days"])])
cols = timed("time", [f"{x:.7f}" for x in serial])
export("serial-days-under-time.csv", ["start: 2023-06-02T08:30:00Z", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:time"], must=False, words=["time", "days", "units"])])

EPOCH = 1685694600
cols = timed("epoch ms", [str((EPOCH + 2 * i) * 1000 + 250) for i in range(N)])
export("epoch-milliseconds.csv", [*POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00.25Z")])
cols = timed("unix time", [str(EPOCH + 2 * i) for i in range(N)])
export("epoch-seconds.csv", [*POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")])
cols = timed("t [s]", [str(EPOCH + 2 * i) for i in range(N)])
export("epoch-seconds-under-t.csv", ["start: 2023-06-02T08:30:00Z", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:t [s]"], must=False, words=["time", "t [s]"])])
cols = timed("time [s]", [str(EPOCH + 2 * i) for i in range(N)])
export("epoch-seconds-under-time.csv", ["start: 2023-06-02T08:30:00Z", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:time [s]"], must=False, words=["time"])])


def elapsed(header, cells, w=W):
    return [Col(header, "other", cells), *water(w)]


cols = elapsed("elapsed [min]", [f"{i / 30:.4f}" for i in range(N)])
export("elapsed-minutes-from-t0.csv", ["t0 = 2023-06-02 08:30:00 UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start"], must=False, words=["time"])])
cols = timed("seconds since 2023-06-02T08:20:00Z", [str(600 + 2 * i) for i in range(N)])
export("seconds-since-a-stated-moment.csv", [*POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")])
cols = elapsed("elapsed [s]", [str(2 * i) for i in range(N)])
export("elapsed-without-a-start.csv", ["clock: UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")], asks=[ask("time", ["start"], words=["time"])])

# a time of day that passes midnight, in a zone where the UTC date is another
late = 86400 - 20
cols = timed("local time", [clock(late + 2 * i) for i in range(N)])
export("midnight-in-local-time.csv", ["date: 2023-12-31", "zone: UTC-10", "latitude: 21.30100", "longitude: -157.90200", *table(cols)],
       [cast(cols, "2024-01-01T09:59:40Z", 21.301, -157.902, end="2024-01-01T10:00:18Z")])
cols = timed("Uhrzeit", [clock(late + 2 * i) for i in range(N)])
export("midnight-in-german.csv", ["Datum: 31. Dezember 2023", "Zeitzone: MEZ", "Breite: 54,2010 N", "Länge: 8,3020 O", *table(cols, ";", decimal=",")],
       [cast(cols, "2023-12-31T22:59:40Z", 54.201, 8.302, end="2023-12-31T23:00:18Z")], delimiter=";", decimal=",")
cols = timed("time", [f"{(h + 11) % 12 + 1}:{m:02d}:{s:02d} {'AM' if h < 12 else 'PM'}" for h, m, s in (((43190 + 2 * i) // 3600, (43190 + 2 * i) // 60 % 60, (43190 + 2 * i) % 60) for i in range(N))])
export("noon-on-a-twelve-hour-clock.csv", ["date: 2023-06-02", "clock: UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T11:59:50Z", end="2023-06-02T12:00:28Z")])

# zones
for name, zone, must in (("zone-ist.csv", "IST", True), ("zone-cst.csv", "CST", True), ("zone-missing.csv", "", True), ("zone-hst.csv", "HST", False)):
    cols = timed("time", [clock(BEGIN + 2 * i, "2023-06-02 ") for i in range(N)])
    head = [f"clock: {zone}"] if zone else []
    export(name, [*head, *POSITION, *table(cols)], [cast(cols, "2023-06-02T18:30:00Z" if zone == "HST" else "2023-06-02T08:30:00Z")],
           asks=[ask("timeZone", ["start"], must=must, words=["zone"]), ask("hemisphere", ["longitude", "latitude"], must=False, words=["hemisphere"])])
cols = timed("local time", [clock(1800 + 2 * i, "01/01/2024 ") for i in range(N)])
export("utc-year-is-the-year-before.csv", ["all times are UTC+10, day before month", "latitude: -33.20100", "longitude: 151.30200", *table(cols)],
       [cast(cols, "2023-12-31T14:30:00Z", -33.201, 151.302)])

# orders of day and month
days = {"day-first-by-the-file.csv": ("13/06/2023", "2023-06-13", False), "month-first-by-the-file.csv": ("06/13/2023", "2023-06-13", False), "day-or-month-first.csv": ("05/06/2023", "2023-06-05", True)}
for name, (written, day, must) in days.items():
    cols = timed("when", [f"{written} {clock(BEGIN + 2 * i)}" for i in range(N)])
    export(name, ["clock: UTC", *POSITION, *table(cols)], [cast(cols, f"{day}T08:30:00Z")], asks=[ask("dateOrder", ["start"], must=must, words=["order"])])
cols = timed("time", [clock(BEGIN + 2 * i) for i in range(N)])
export("two-digit-year.csv", ["date: 05-06-07", "clock: UTC", *POSITION, *table(cols)], [cast(cols, "2007-06-05T08:30:00Z")], asks=[ask("dateOrder", ["start"], words=["order"])])

# months in words
months = {
    "spanish": ("Inicio: 5 de enero de 2023, 08:30 UTC", "2023-01-05"), "portuguese": ("Início: 5 de fevereiro de 2023 08:30 UTC", "2023-02-05"),
    "italian": ("Inizio: 5 giugno 2023, ore 08:30 UTC", "2023-06-05"), "dutch": ("Begin: 5 mrt 2023 08:30 UTC", "2023-03-05"),
    "danish": ("Start: 5. oktober 2023 kl. 08:30 UTC", "2023-10-05"), "norwegian": ("Start: 5. desember 2023 kl. 08.30 UTC", "2023-12-05"),
    "finnish": ("Alku: 5. kesäkuuta 2023 klo 08:30 UTC", "2023-06-05"), "icelandic": ("Upphaf: 5. október 2023 kl. 08:30 UTC", "2023-10-05"),
    "french": ("Début : 5 août 2023 à 08h30 TU", "2023-08-05"),
}
for language, (line, day) in months.items():
    export(f"month-in-{language}.csv", [line, *POSITION, *table(water())], [cast(water(), f"{day}T08:30:00Z")],
           asks=[ask("time", ["start"], must=False, words=["time"])])

# words that take something back
export("start-is-approximate.csv", ["start: approx. 2023-06-02 08:30 UTC", *POSITION, *table(water())], [cast(water(), "2023-06-02T08:30:00Z")], asks=[ask("time", ["start"], words=["time"])])
export("position-is-approximate.csv", ["start: 2023-06-02 08:30 UTC", "position: about 51.2010 N 4.3020 W", *table(water())], [cast(water(), "2023-06-02T08:30:00Z")],
       asks=[ask("position", ["latitude", "longitude"], words=["position"])])
for name, line in (("clock-fast.csv", "clock fast by 4 min 12 s"), ("clock-slow-by.csv", "Logger clock slow by 95 s on return"), ("uhr-geht-vor.csv", "Uhr geht 3 min vor")):
    cols = timed("time (UTC)", [clock(BEGIN + 2 * i, "2023-06-02 ") for i in range(N)])
    export(name, [line, *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
           asks=[ask("clock", ["start"], words=["clock"])], why="the clock is said to be wrong: nothing tells whether that was put right")

# start and end in the header
cols = water()
export("end-in-the-header.csv", ["let go 2023-06-02 23:58:10 UTC", "back on deck 00:03:40 UTC", *POSITION, *table(cols)],
       [cast(cols, "2023-06-02T23:58:10Z", end="2023-06-03T00:03:40Z")])
cols = timed("ISO", [f"20230602T{clock(BEGIN + 2 * i, sep='')}Z" for i in range(N)])
export("compact-iso.csv", [*POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")])
cols = timed("time", [clock(2 * 3600 - 20 + 2 * i, "2023-10-29 ") + "+01:00" for i in range(N)])
export("offset-in-the-cells.csv", [*POSITION, *table(cols)], [cast(cols, "2023-10-29T00:59:40Z")])
cols = [Col("year", "time", ["2023"] * N), Col("month", "time", ["6"] * N), Col("day", "time", ["2"] * N), Col("hour", "time", ["8"] * N), Col("minute", "time", ["30"] * N), Col("second", "time", [str(2 * i) for i in range(N)]), *water()]
export("year-month-day-in-columns.csv", ["clock: UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", *(f"column:{c.header}" for c in cols[:6])], must=False, words=["time"])])

# seconds that do not begin at 0: of the day, since the power was switched on, or since the start?
cols = elapsed("time [s]", [str(30600 + 2 * i) for i in range(N)])
export("seconds-of-the-day.csv", ["start: 2023-06-02T08:30:00Z", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start"], must=False, words=["time"])], why="08:30:00 is 30600 s of the day")
cols = elapsed("time [s]", [str(4000 + 2 * i) for i in range(N)])
export("seconds-that-begin-late.csv", ["start: 2023-06-02T08:30:00Z", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start"], words=["time"])], why="seconds since the power was switched on, or since the start?")
cols = elapsed("elapsed [s]", [f"{0.5 * i + 0.5:.1f}" for i in range(N)])
export("elapsed-from-half-a-second.csv", ["start: 2023-06-02T08:30:00Z", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00.5Z")])
cols = timed("hhmmss", [clock(BEGIN + 2 * i, sep="") for i in range(N)])
export("clock-without-colons.csv", ["date: 2023-06-02", "clock: UTC", *POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("units", ["start", "column:hhmmss"], must=False, words=["units:hhmmss", "time"])])
cols = timed("date UTC", [clock(BEGIN + 2 * i, "20230602", sep="") for i in range(N)])
export("stamp-of-fourteen-digits.csv", [*POSITION, *table(cols)], [cast(cols, "2023-06-02T08:30:00Z")],
       asks=[ask("time", ["start", "column:date UTC"], must=False, words=["units", "time"])])
