"""The survey: stations, casts and what happened to each. All of it is invented."""

from datetime import datetime, timezone

PROBE = {"serial": "OP-0231", "rated": 100}
RECORDER = {"serial": "OP-0118", "rated": 100}

# place: latitude, longitude, depth of water (m), salinity top and bottom, temperature top and bottom,
# depth and half thickness of the interface (m). An empty patch of sea holds the invented estuary.
STATIONS = {
    "Weir Pool": (46.3112, -4.0125, 4.1, (0.35, 3.6), (16.2, 15.1), 2.4, 0.5),
    "Saltings Bridge": (46.3078, -4.0290, 6.6, (2.1, 24.5), (15.9, 13.2), 2.6, 0.7),
    "Reed Bend": (46.3031, -4.0467, 7.4, (1.2, 29.3), (15.8, 12.9), 3.1, 0.45),
    "Quern Point": (46.2984, -4.0651, 9.3, (9.8, 31.0), (15.2, 12.7), 3.4, 1.1),
    "Pilot Jetty": (46.2950, -4.0702, 8.2, (11.5, 31.4), (15.1, 12.7), 3.0, 1.0),
    "Lantern Buoy": (46.2907, -4.0846, 5.5, (17.4, 32.2), (14.7, 12.6), 2.2, 0.8),
    "Grey Sill": (46.2863, -4.1033, 12.6, (19.0, 33.4), (14.5, 12.3), 4.0, 1.4),
    "Marl Spit": (46.2811, -4.1262, 15.2, (24.3, 34.1), (14.1, 12.0), 4.6, 1.8),
    "Outer Roads": (46.2695, -4.1704, 43.0, (34.1, 35.2), (13.9, 11.4), 14.0, 4.0),
    "Long Deep": (46.2489, -4.2378, 112.0, (34.7, 35.4), (13.8, 10.9), 22.0, 6.0),
}


def at(day, hour, minute, second):
    return datetime(2025, 5, day, hour, minute, second, tzinfo=timezone.utc)


def cast(number, layout, place, start, **more):
    plan = {
        "air": 5.0, "soak": 0, "soak_depth": 1.1, "down": 0.45, "uneven": 0.25, "bottom": 4.0, "up": 0.6, "stops": [],
        "waves": (0.10, 3.5), "air_after": 4.0,
    }
    known = {
        "id": f"OE25-{number:02d}", "layout": layout, "place": place, "start": start, "remark": None, "offset": 0.12,
        "satellites": (14, 15), "end_fix": True, "spikes": (), "plan": plan, "air_temperature": 17.5, "cut": False,
        "short": 0.5, **PROBE,
    }
    for key, value in more.items():
        (plan if key in plan else known)[key] = value
    return known


CASTS = [
    cast(1, "comma", "Saltings Bridge", at(13, 6, 12, 4), soak=35, remark="salt wedge on the flood"),
    cast(2, "comma", "Weir Pool", at(13, 6, 41, 37), soak=25, soak_depth=0.8, remark="river side of the weir", down=0.35, satellites=(9, 9)),
    cast(3, "semicolon", "Grey Sill", at(13, 7, 20, 15), soak=45, waves=(0.20, 4.0), offset=0.15),
    cast(4, "semicolon", "Quern Point", at(13, 7, 58, 49), waves=(0.75, 3.6), down=0.5, offset=0.15, remark="wake of a ferry, probe lifted several times"),
    cast(5, "tabs", "Lantern Buoy", at(13, 8, 33, 20), soak=30, waves=(0.22, 3.0), offset=0.14, remark="made fast to the buoy"),
    cast(6, "tabs", "Pilot Jetty", at(13, 9, 5, 2), soak=30, end_fix=False, offset=0.13, satellites=(6, 0)),
    cast(7, "blanks", "Outer Roads", at(13, 9, 52, 11), soak=60, waves=(0.95, 4.0), down=0.7, up=0.8, bottom=5.0, offset=0.17, air_temperature=16.1, remark="steep swell"),
    cast(8, "blanks", "Long Deep", at(13, 10, 47, 30), soak=60, waves=(0.60, 6.5), down=1.0, up=1.1, bottom=6.0, short=2.5, offset=0.18, air_temperature=15.8, remark="more line paid out than the probe is made for"),
    cast(9, "comma", "Marl Spit", at(14, 6, 30, 55), soak=40, waves=(0.25, 4.0), offset=-0.08,
         spikes=(("conductivity", "down", 0.55, -3.4), ("temperature", "down", 0.72, 0.9), ("pressure", "up", 0.4, 6.5)),
         remark="weed on the probe when it came up"),
    cast(10, "semicolon", "Grey Sill", at(14, 7, 4, 18), soak=40, waves=(0.20, 4.0), offset=-0.07, cut=True, end_fix=False, remark="the battery failed while hauling"),
    cast(11, "comma", "Reed Bend", at(14, 7, 45, 41), soak=30, offset=-0.08, down=0.4, remark="sharp salt wedge"),
    cast(12, "tabs", "Marl Spit", at(14, 8, 11, 6), down=0.95, uneven=0.02, offset=-0.06, remark="let go and fell freely"),
    cast(13, "semicolon", "Saltings Bridge", at(14, 8, 40, 27), soak=35, offset=-0.07, satellites=(3, 12), remark="under the bridge at the start"),
    cast(14, "blanks", "Marl Spit", at(14, 9, 22, 58), soak=45, offset=-0.05, stops=[(9.0, 12.0), (4.0, 15.0)], waves=(0.15, 3.8), remark="two stops on the way up"),
    cast(15, "comma", "Outer Roads", at(14, 10, 15, 33), soak=50, waves=(0.50, 5.5), down=0.8, up=0.9, offset=-0.06, air_temperature=16.4),
]

SERIES = {
    "id": "OE25-P1", "layout": "tabs", "place": "Pilot Jetty", "start": at(13, 12, 0, 0), "depth": 2.0,
    "remark": "hung from the pontoon, which floats", "offset": 0.16, "satellites": (11, 11), "end_fix": True,
    "air_temperature": 18.2, "cut": False, "interval": 1.0,
    "plan": {"air": 6.0, "seconds": 1500.0, "depth": 2.0, "air_after": 5.0, "waves": (0.3, 3.0)}, **RECORDER,
}
