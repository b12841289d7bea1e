"""Where a cast was made: forms of latitude and longitude, hemispheres, fixes that cannot be believed."""

from .build import Col, Water, ask, cast, export, table

W = Water()
START = "2023-06-02T08:30:00Z"
LAT, LON = 51.201, -4.302


def water(w=W):
    return [Col("pressure [dbar]", "p dbar", w.p), Col("temperature [degC]", "t C", w.t), Col("conductivity [mS/cm]", "c mS", w.c)]


def put(name, lines, lat=LAT, lon=LON, asks=(), fix=None, why="", cols=None, start="start: 2023-06-02T08:30:00Z"):
    cols = cols or water()
    export(name, [start, *lines, *table(cols)], [cast(cols, START, lat, lon, fix=fix)], asks=asks, why=why)


may = [ask("position", ["latitude", "longitude"], must=False, words=["position", "hemisphere"])]
must = [ask("position", ["latitude", "longitude"], words=["position", "hemisphere"])]

# 51.201 is 51 deg 12.06 min, 51 deg 12 min 3.6 s; 4.302 is 4 deg 18.12 min, 4 deg 18 min 7.2 s
put("degrees-and-minutes.csv", ["Fix: 51° 12.060' N, 4° 18.120' W"])
put("degrees-minutes-seconds.csv", ["lat 51°12′03.6″N", "lon 4°18′07.2″W"])
put("letters-before-the-degrees.csv", ["GPS: N51 12.060 W004 18.120"])
put("packed-degrees-and-minutes.csv", ["GPS: 5112.0600,N,00418.1200,W, fix quality 2, 09 satellites"])
put("longitude-named-first.csv", ["Longitude / Latitude: -4.30200 / 51.20100"])
put("position-with-decimal-commas.csv", ["Position: 51,20100 N; 4,30200 W"], asks=may)

words = {
    "french": ("Position : 51,2010 Nord, 4,3020 Ouest", LAT, LON), "italian": ("Posizione: 45,2010 Nord; 12,3020 Est", 45.201, 12.302),
    "portuguese": ("Posição: 38,2010 Norte; 9,3020 Oeste", 38.201, -9.302), "spanish": ("Posición: 33,2010 Sur; 71,3020 Oeste", -33.201, -71.302),
    "dutch": ("Positie: 52,2010 NB; 4,3020 OL", 52.201, 4.302), "danish": ("Position: 55,2010 nord, 12,3020 øst", 55.201, 12.302),
    "swedish": ("Position: 58,2010 nord, 11,3020 öst", 58.201, 11.302), "norwegian": ("Posisjon: 60,2010 nord, 5,3020 vest", 60.201, -5.302),
    "finnish": ("Paikka: 60,2010 pohjoista, 22,3020 itäistä", 60.201, 22.302), "icelandic": ("Staður: 64,2010 norður, 22,3020 vestur", 64.201, -22.302),
    "german": ("Position: 54,2010 Nord, 8,3020 Ost", 54.201, 8.302),
}
for language, (line, lat, lon) in words.items():
    put(f"hemisphere-in-{language}.csv", [line], lat, lon, asks=may)

put("letter-o-in-spanish.csv", ["Estación: Escalones (inventada)", "Latitud: 43.2010 N", "Longitud: 8.3020 O"], 43.201, -8.302)
put("letter-o-in-german.csv", ["Ort: Otterstufen (erfunden)", "Breite: 54.2010 N", "Länge: 8.3020 O"], 54.201, 8.302)
put("letter-o-alone.csv", ["51.20100 N 4.30200 O"], asks=must)
put("letter-o-in-two-languages.csv", ["Estación: Escalones", "Gerät: Sonde mit Kabel und Pumpe", "51.20100 N 4.30200 O"], asks=must)

# swapped: only one order is possible, or the other way round both are
put("swapped-beyond-the-pole.csv", ["Latitude: -122.30200", "Longitude: 47.50100"], 47.501, -122.302, asks=may, why="no latitude is -122")
put("swapped-in-columns.csv", ["site: Otter Steps"], 47.501, -122.302, asks=may,
    cols=[Col("lat", "other", ["-122.30200"] * 20), Col("lon", "other", ["47.50100"] * 20), *water()])

put("end-fix-forty-kilometres-off.csv", ["start fix: 51.20100 N 4.30200 W", "end fix: 51.56100 N 4.30200 W", "ended: 2023-06-02T08:40:00Z"], fix=(51.561, LON),
    asks=[ask("endPosition", ["latitude", "longitude", "endLatitude", "endLongitude"], words=["position"])], why="no drift makes 40 km in ten minutes")
put("end-fix-a-little-off.csv", ["start fix: 51.20100 N 4.30200 W (9 sats)", "end fix: 51.20160 N 4.30230 W (7 sats)"], fix=(51.2016, -4.3023))
put("end-fix-with-the-other-sign.csv", ["start lat: 51.20100 lon: -4.30200", "end lat: 51.20140 lon: 4.30210"], fix=(51.2014, -4.3021),
    asks=[ask("endPosition", ["latitude", "longitude", "endLatitude", "endLongitude"], words=["position", "hemisphere"])], why="600 km to the east")

for name, lines in (
    ("no-fix-zeros.csv", ["latitude: 0.00000", "longitude: 0.00000"]), ("no-fix-in-words.csv", ["GPS: no fix"]),
    ("no-fix-nines.csv", ["latitude: 99.99999", "longitude: 999.99999"]), ("no-fix-in-german.csv", ["Position: kein Empfang"]),
    ("no-fix-letters.csv", ["fix: 0000.0000,N,00000.0000,E, quality 0, 00 satellites"]),
):
    put(name, lines, None, None, asks=[ask("position", ["latitude", "longitude"], words=["position"])])

put("sign-and-letter-disagree.csv", ["latitude: 51.20100 N", "longitude: -4.30200 W"], asks=must)
put("west-shore-without-a-sign.csv", ["latitude: 47.50100", "longitude: 122.30200"], 47.501, -122.302, asks=must, start="start: 2023-06-02 01:30:00 PDT",
    why="the zone lies on the other side of Greenwich")

none = ["0.00000"] * 4
cols = [Col("lat", "other", none + [f"{51.201 + i * 1e-5:.5f}" for i in range(16)]), Col("lon", "other", none + [f"{-4.302 - i * 1e-5:.5f}" for i in range(16)]), *water()]
put("fix-comes-after-four-rows.csv", ["site: Otter Steps"], fix=(51.20115, -4.30215), cols=cols, asks=may)
cols = [Col("Lat deg", "other", ["51"] * 20), Col("Lat min", "other", ["12.060"] * 20), Col("Lon deg", "other", ["4"] * 20), Col("Lon min", "other", ["18.120"] * 20), Col("E/W", "other", ["W"] * 20), *water()]
put("degrees-and-minutes-in-columns.csv", ["site: Otter Steps"], cols=cols, asks=may)
cols = [Col("lat", "other", ["51.20100"] * 20), Col("N/S", "other", ["N"] * 20), Col("lon", "other", ["4.30200"] * 20), Col("E/W", "other", ["W"] * 20), *water()]
put("hemisphere-in-a-column.csv", ["site: Otter Steps"], cols=cols, asks=may)
put("position-of-something-else.csv", ["harbour: 51.30000 N 4.10000 W", "waypoint 3: 51.40000 N 4.20000 W", "fix: 51.20100 N 4.30200 W"])
