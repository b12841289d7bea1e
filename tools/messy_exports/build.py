"""Rows of invented water, and the truth of a text export beside its text.

The truth is written from the values that were printed, by factors of the published unit definitions, never from
what our own program reads.
"""

import gsw

# kind of column -> standard name, unit of the product, printed value -> value in that unit
SEA = "sea_water_pressure_due_to_sea_water"
ABSOLUTE = "sea_water_pressure"
SP = "sea_water_practical_salinity"
COND = "sea_water_electrical_conductivity"
TEMP = "sea_water_temperature"
SPEED = "speed_of_sound_in_sea_water"
KINDS = {
    "p dbar": (SEA, "dbar", lambda x: x),
    "p kPa": (SEA, "dbar", lambda x: x * 0.1),
    "p bar": (SEA, "dbar", lambda x: x * 10),
    "p mbar": (SEA, "dbar", lambda x: x * 0.01),
    "p MPa": (SEA, "dbar", lambda x: x * 100),
    "p psi": (SEA, "dbar", lambda x: x * 0.6894757293168),
    "pa dbar": (ABSOLUTE, "dbar", lambda x: x),
    "pa kPa": (ABSOLUTE, "dbar", lambda x: x * 0.1),
    "pa mbar": (ABSOLUTE, "dbar", lambda x: x * 0.01),
    "z m": ("depth", "m", lambda x: x),
    "z up": ("depth", "m", lambda x: -x),
    "z cm": ("depth", "m", lambda x: x * 0.01),
    "z ft": ("depth", "m", lambda x: x * 0.3048),
    # UDUNITS: six feet of the US survey
    "z fathom": ("depth", "m", lambda x: x * 6 * 1200 / 3937),
    "t C": (TEMP, "degree_C", lambda x: x),
    "t F": (TEMP, "degree_C", lambda x: (x - 32) * 5 / 9),
    "t K": (TEMP, "degree_C", lambda x: x - 273.15),
    "t 68": (TEMP, "degree_C", lambda x: x / 1.00024),
    "c mS": (COND, "S m-1", lambda x: x * 0.1),
    "c uS": (COND, "S m-1", lambda x: x * 1e-4),
    "c S": (COND, "S m-1", lambda x: x),
    # PSS-78: C(35, 15, 0) is 42.914 mS/cm
    "c ratio": (COND, "S m-1", lambda x: x * 4.2914),
    "c mS/m": (COND, "S m-1", lambda x: x * 1e-3),
    # CF has no name for conductivity referred to 25 degC
    "sc mS": (None, "S m-1", lambda x: x * 0.1),
    "sc uS": (None, "S m-1", lambda x: x * 1e-4),
    "s": (SP, "1", lambda x: x),
    "v": (SPEED, "m s-1", lambda x: x),
    "v ft": (SPEED, "m s-1", lambda x: x * 0.3048),
    "rho": ("sea_water_density", "kg m-3", lambda x: x),
    "rho g": ("sea_water_density", "kg m-3", lambda x: x * 1000),
    "sigma": ("sea_water_sigma_t", "kg m-3", lambda x: x),
    "o2 mg": ("mass_concentration_of_oxygen_in_sea_water", "kg m-3", lambda x: x * 1e-3),
    "o2 ml": ("volume_fraction_of_oxygen_in_sea_water", "1e-3", lambda x: x),
    "o2 umol": ("moles_of_oxygen_per_unit_mass_in_sea_water", "umol kg-1", lambda x: x),
    "o2 %": ("fractional_saturation_of_oxygen_in_sea_water", "percent", lambda x: x),
    "turb": ("sea_water_turbidity", "1", lambda x: x),
    "chl": ("mass_concentration_of_chlorophyll_in_sea_water", "kg m-3", lambda x: x * 1e-6),
    "time": ("time", None, None),
    "other": (None, None, None),
}


class Water:
    """Levels from `top` by `step`: depth and pressure, temperature, salinity, and what follows from them."""

    def __init__(self, n=20, top=0.2, step=0.5, salt=(14.0, 33.0), warm=(16.8, 10.9)):
        self.z = [round(top + step * i, 3) for i in range(n)]
        part = [min(1, z / (step * n)) ** 1.5 for z in self.z]
        self.p = [round(float(gsw.p_from_z(-z, 51.2)), 3) for z in self.z]
        self.t = [round(warm[0] + (warm[1] - warm[0]) * f, 3) for f in part]
        self.s = [round(salt[0] + (salt[1] - salt[0]) * f, 3) for f in part]
        self.c = [float(gsw.C_from_SP(s, t, p)) for s, t, p in zip(self.s, self.t, self.p)]
        # common practice, no source: linear, 1.91 % a degree
        self.sc = [c / (1 + 0.0191 * (t - 25)) for c, t in zip(self.c, self.t)]
        sa = [float(gsw.SA_from_SP(s, p, -4.3, 51.2)) for s, p in zip(self.s, self.p)]
        ct = [float(gsw.CT_from_t(a, t, p)) for a, t, p in zip(sa, self.t, self.p)]
        self.v = [float(gsw.sound_speed(a, c, p)) for a, c, p in zip(sa, ct, self.p)]
        self.rho = [float(gsw.rho(a, c, p)) for a, c, p in zip(sa, ct, self.p)]


class Col:
    """A column: its head, its kind, and its values as printed."""

    def __init__(self, header, kind, values, form="{:.3f}", says=None, unit=None):
        self.header, self.kind, self.unit = header, kind, unit
        self.cells = [v if isinstance(v, str) else form.format(v) for v in values]
        # head as a reader knows it, where the cells of name lines are more than one
        self.says = says or header


def number(cell, decimal=".", thousands=""):
    """Value of a printed cell, None if it is no number."""
    bare = cell.strip().strip('"')
    if thousands:
        bare = bare.replace(thousands, "")
    try:
        return float(bare.replace(decimal, ".").replace("D", "E"))
    except ValueError:
        return None


def truth_of(col, missing=(), decimal=".", thousands=""):
    name, unit, convert = KINDS[col.kind]
    entry = {"header": col.says, "standard_name": name}
    if col.kind == "time":
        return entry
    values = [None if c in missing else number(c, decimal, thousands) for c in col.cells]
    known = [v for v in values if v is not None]
    if not known:
        return entry
    entry |= {"first_source": known[0], "last_source": known[-1], "n_missing": len(values) - len(known)}
    if unit:
        entry |= {"canonical_units": unit, "first_canonical": convert(known[0]), "last_canonical": convert(known[-1])}
    return entry


def table(cols, sep=",", names=True, decimal=".", end="", edge=""):
    """Lines of a table; `end` stands behind each line and `edge` before it."""
    lines = [edge + sep.join(c.header for c in cols) + end] if names else []
    for cells in zip(*(c.cells for c in cols)):
        lines.append(edge + sep.join(cell.replace(".", decimal) if cols and number(cell) is not None else cell for cell in cells) + end)
    return lines


FILES = {}


def export(name, lines, casts, *, delimiter=",", decimal=".", eol="LF", encoding="utf-8", feature="profile", asks=(), missing=(), why=""):
    """Keeps a file with its truth. `lines` is its text, `casts` a list made by `cast`."""
    text = "\n".join(lines) if isinstance(lines, list) else lines
    if not text.endswith("\n"):
        text += "\n"
    text = text.replace("\n", {"LF": "\n", "CRLF": "\r\n", "CR": "\r"}[eol])
    codec = {"utf-8": "utf-8", "utf-8-bom": "utf-8-sig", "utf-16le": "utf-16-le", "utf-16be": "utf-16-be", "windows-1252": "cp1252"}[encoding]
    mark = "\ufeff" if encoding.startswith("utf-16") else ""
    assert name not in FILES, name
    truth = {
        "why": why,
        "encoding": "utf-8" if encoding == "utf-8-bom" else encoding,
        "eol": eol,
        "delimiter": delimiter,
        "decimal": decimal,
        "feature": feature,
        "casts": casts,
        "missing": list(missing),
        "asks": list(asks),
    }
    FILES[name] = ((mark + text).encode(codec), truth)


def cast(cols, start, lat=51.201, lon=-4.302, *, rows=None, missing=(), decimal=".", thousands="", end=None, fix=None, id=None, state=None, depth=None, notes=(), role="start"):
    """Truth of one cast. `start` is UTC, `fix` the end position."""
    truth = {
        "time_start_utc": start,
        "latitude": lat,
        "longitude": lon,
        "n_rows": rows or len(cols[0].cells),
        "columns": [truth_of(c, missing, decimal, thousands) for c in cols],
    }
    if end:
        truth["time_end_utc"] = end
    if fix:
        truth["latitude_end"], truth["longitude_end"] = fix
    if id:
        truth["cast_id"] = id
    if state:
        truth["state"] = state
    if depth is not None:
        truth["fixed_depth_m"] = depth
    if role != "start":
        truth["time_role"] = role
    if notes:
        truth["notes"] = list(notes)
    return truth


def ask(topic, facts, must=True, words=None, why=""):
    """A fact that may (or must) be asked. A silent answer to a `must` counts as wrong."""
    return {"topic": topic, "must": must, "facts": list(facts), "words": list(words or [topic.lower()]), "why": why}


def clock(seconds, day="", sep=":"):
    """hh:mm:ss of seconds from midnight, which may pass it."""
    s = int(seconds) % 86400
    return f"{day}{s // 3600:02d}{sep}{s // 60 % 60:02d}{sep}{s % 60:02d}"
