"""Four ways of writing a record as text. Wording and order are our own and belong to this survey alone."""

from datetime import timedelta

INVENTED = "Ostrel Estuary - an invented survey of an invented place"


def letters(value, positive, negative):
    return abs(value), positive if value >= 0 else negative


def minutes(value, positive, negative, decimal=".", spaced=True):
    size, letter = letters(value, positive, negative)
    degrees = int(size)
    rest = f"{(size - degrees) * 60:.4f}".replace(".", decimal)
    blank = " " if spaced else ""
    return f"{degrees}\N{DEGREE SIGN}{blank}{rest}'{blank}{letter}"


def comma(cast, rows):
    """Commas, decimal point, units in the column names, UTF-8, LF, UTC."""

    def fix(label, place):
        if place is None:
            return [f"{label}: none"]
        lat, ns = letters(place["lat"], "N", "S")
        lon, ew = letters(place["lon"], "E", "W")
        return [f"{label}: {lat:.6f} {ns}, {lon:.6f} {ew}, {place['satellites']} satellites"]

    lines = [
        f"Remark: {INVENTED}",
        f"Record name: {cast['id']}",
        f"Place: {cast['place']}",
        f"Record started: {cast['start']:%Y-%m-%d %H:%M:%S} UTC",
        *fix("Fix at start", cast["from"]),
        *fix("Fix at end", cast["to"]),
        f"Probe number: {cast['serial']}",
        f"Probe rated to: {cast['rated']} dbar",
        *([f"Remark: {cast['remark']}"] if cast["remark"] else []),
        "",
        "elapsed time (s),conductivity (mS/cm),temperature (degC),pressure (dbar)",
    ]
    for t, c, k, p in zip(rows["elapsed"], rows["conductivity"], rows["temperature"], rows["pressure"]):
        lines.append(f"{t:.2f},{c:.3f},{k:.3f},{p:.2f}")
    return ("\n".join(lines) + "\n").encode("utf-8")


def semicolon(cast, rows):
    """Semicolons, decimal comma, units on a line of their own, Latin-1, CRLF, local clock."""

    def fix(label, place):
        if place is None:
            return []
        lat = minutes(place["lat"], "N", "S", ",")
        lon = minutes(place["lon"], "E", "W", ",")
        return [f"{label};{lat};{lon};{place['satellites']} satellites"]

    local = cast["start"] + timedelta(hours=2)
    lines = [
        f"About;{INVENTED}",
        f"Station;{cast['place']}",
        f"Cast;{cast['id']}",
        "Clock;local time, UTC+02:00",
        f"Started;{local:%Y-%m-%d %H:%M:%S}",
        *fix("Start position", cast["from"]),
        *fix("End position", cast["to"]),
        f"Serial number;{cast['serial']}",
        f"Rated pressure;{cast['rated']} dbar",
        *([f"Notes;{cast['remark']}"] if cast["remark"] else []),
        "",
        "Elapsed;Pressure;Temperature;Conductivity",
        "s;dbar;\N{DEGREE SIGN}C;\N{MICRO SIGN}S/cm",
    ]
    for t, p, k, c in zip(rows["elapsed"], rows["pressure"], rows["temperature"], rows["conductivity"]):
        lines.append(f"{t:.2f};{p:.2f};{k:.3f};{c * 1000:.0f}".replace(".", ","))
    text = "\r\n".join(lines) + "\r\n"
    if cast.get("cut"):
        # the battery died: the file ends inside a row
        text = text[: text.rindex(";")]  # without the last value
        text = text[: text.rindex(";") + 3]  # and with two characters of the one before
    return text.encode("latin-1")


def tabs(cast, rows):
    """Tabs, decimal point, units in brackets, every row with its moment in UTC."""

    def fix(label, place):
        if place is None:
            return [f"{label}\tno fix, under the jetty roof"]
        return [f"{label} latitude\t{place['lat']:.6f}", f"{label} longitude\t{place['lon']:.6f}", f"{label} satellites\t{place['satellites']}"]

    lines = [
        f"What\t{INVENTED}",
        f"Name of this record\t{cast['id']}",
        f"Taken at\t{cast['place']}",
        *(["Kind of record\tseries at one depth", f"Depth of sensor\t{cast['depth']:.2f} m below the water surface"] if cast.get("depth") else []),
        *fix("start", cast["from"]),
        *fix("end", cast["to"]),
        f"Probe serial number\t{cast['serial']}",
        f"Pressure rating\t{cast['rated']} dbar",
        *([f"Note\t{cast['remark']}"] if cast["remark"] else []),
        "time [UTC]\ttemperature [degC]\tconductivity [S/m]\tpressure [dbar]",
    ]
    for t, k, c, p in zip(rows["elapsed"], rows["temperature"], rows["conductivity"], rows["pressure"]):
        moment = cast["start"] + timedelta(milliseconds=round(t * 1000))
        lines.append(f"{moment:%Y-%m-%dT%H:%M:%S}.{moment.microsecond // 10000:02d}Z\t{k:.3f}\t{c / 10:.4f}\t{p:.3f}")
    return ("\n".join(lines) + "\n").encode("utf-8")


def blanks(cast, rows):
    """Columns padded with blanks, units in the names, UTF-8, LF, time with its offset."""

    def fix(label, place):
        if place is None:
            return []
        lat = minutes(place["lat"], "N", "S", spaced=False)
        lon = minutes(place["lon"], "E", "W", spaced=False)
        return [f"{label} = {lat} {lon} ({place['satellites']} satellites)"]

    local = cast["start"] + timedelta(hours=2)
    lines = [
        f"-- {INVENTED}",
        f"cast = {cast['id']}",
        f"station = {cast['place']}",
        f"start of record = {local:%Y-%m-%dT%H:%M:%S}+02:00",
        *fix("fix when lowered", cast["from"]),
        *fix("fix when recovered", cast["to"]),
        f"serial number = {cast['serial']}",
        f"rated pressure = {cast['rated']} dbar",
        *([f"note = {cast['remark']}"] if cast["remark"] else []),
        "",
        "  row  elapsed_s  pressure_dbar  conductivity_mS/cm  temperature_degC",
    ]
    for k, (t, p, c, q) in enumerate(zip(rows["elapsed"], rows["pressure"], rows["conductivity"], rows["temperature"])):
        lines.append(f"{k + 1:5d} {t:10.2f} {p:14.2f} {c:19.4f} {q:17.4f}")
    return ("\n".join(lines) + "\n").encode("utf-8")


LAYOUTS = {"comma": (comma, "csv"), "semicolon": (semicolon, "txt"), "tabs": (tabs, "tsv"), "blanks": (blanks, "dat")}
