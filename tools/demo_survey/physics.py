"""Water, motion of the probe and its sensors. Stated physics, nothing measured.

Water: salinity and temperature of a station are two layers joined by a hyperbolic tangent, plus a weak gradient in
each; pressure follows from the hydrostatic equation with the TEOS-10 density of that water and the gravity of its
latitude; conductivity follows from Practical Salinity (PSS-78).

Motion: the probe rests in air, is dipped (where the cast has a soak it is soaked, then lifted close to the surface
for a moment), goes down by hand or in free fall, rests at the bottom and is hauled up. Hand speed varies by some
tens of per cent over a few seconds; waves lift the boat, and the probe with it, by a sine of given height and period.

Sensors: true values at 20 Hz pass through first-order responses (temperature 0.35 s, conductivity 0.10 s, pressure
none), are sampled at the row times and get white noise (pressure 0.008 dbar, temperature 0.0015 degC, conductivity
0.002 mS/cm, one standard deviation), then spikes. In air the conductivity reads a few uS/cm and never below 0.
"""

import gsw
import numpy as np

DT = 0.05  # s, step of the simulation
NOISE = {"pressure": 0.008, "temperature": 0.0015, "conductivity": 0.002}
RESPONSE = {"temperature": 0.35, "conductivity": 0.10}


class Water:
    """True water column of a station on a grid of 1 cm."""

    def __init__(self, bottom, salinity, temperature, interface, thickness, lat, lon):
        self.bottom = bottom
        self.z = np.arange(0, bottom + 2, 0.01)
        step = 0.5 * (1 + np.tanh((self.z - interface) / thickness))
        self.salinity = salinity[0] + (salinity[1] - salinity[0]) * step + 0.004 * self.z * np.sign(salinity[1] - salinity[0])
        self.temperature = temperature[0] + (temperature[1] - temperature[0]) * step - 0.006 * self.z
        pressure = self.z * 1.01
        gravity = gsw.grav(lat, 0.0)
        for _ in range(4):  # pressure depends on density and a little the other way round
            sa = gsw.SA_from_SP(self.salinity, pressure, lon, lat)
            rho = gsw.rho(sa, gsw.CT_from_t(sa, self.temperature, pressure), pressure)
            weight = rho * gravity * (1 + 2.26e-7 * self.z) * 1e-4
            pressure = np.concatenate([[0], np.cumsum(0.5 * (weight[1:] + weight[:-1]) * 0.01)])
        self.pressure = pressure
        self.conductivity = gsw.C_from_SP(self.salinity, self.temperature, pressure)

    def at(self, name, z):
        return np.interp(z, self.z, getattr(self, name))


def motion(rng, plan):
    """Depth of the probe (m, negative in air) and phase of every step of 0.05 s."""
    depth, phase = [], []

    def hold(seconds, kind):
        n = int(round(seconds / DT))
        depth.extend([depth[-1]] * n)
        phase.extend([kind] * n)

    def move(target, speed, kind, uneven):
        wobble, z = 0.0, depth[-1]
        sign = np.sign(target - z)
        while sign * (target - z) > 1e-9:
            wobble += DT * (-wobble / 1.5) + uneven * np.sqrt(2 * DT / 1.5) * rng.standard_normal()
            z += sign * max(0.05, speed * (1 + np.clip(wobble, -0.8, 0.8))) * DT
            depth.append(z if sign * (target - z) > 0 else target)
            phase.append(kind)

    depth.append(-0.6)
    phase.append("air")
    hold(plan["air"], "air")
    if plan["soak"]:
        move(plan["soak_depth"], 0.5, "other", 0.1)
        hold(plan["soak"], "soak")
        move(0.3, 0.3, "other", 0.1)
        hold(3.5, "other")
    move(plan["deepest"], plan["down"], "down", plan["uneven"])
    hold(plan["bottom"], "bottom")
    for stop, seconds in plan["stops"]:
        move(stop, plan["up"], "up", 0.15)
        hold(seconds, "up")
    move(-0.6, plan["up"], "up", 0.15)
    hold(plan["air_after"], "air")

    depth, phase = np.array(depth), np.array(phase)
    height, period = plan["waves"]
    t = np.arange(len(depth)) * DT
    heave = height / 2 * np.sin(2 * np.pi * t / period + rng.uniform(0, 2 * np.pi))
    # the line goes slack at the surface and on the bottom
    share = np.clip((depth - 0.1) / 0.6, 0, 1) * (phase != "bottom")
    return np.minimum(depth + heave * share, plan["deepest"]), phase


def stay(plan):
    """Motion of a series at one depth: in, wait, out; the float follows the waves."""
    n = int(round(plan["seconds"] / DT))
    move = np.arange(-0.6, plan["depth"], 0.4 * DT)
    depth = np.concatenate([np.full(int(plan["air"] / DT), -0.6), move, np.full(n, plan["depth"]), move[::-1], np.full(int(plan["air_after"] / DT), -0.6)])
    phase = np.concatenate([np.full(int(plan["air"] / DT), "air"), np.full(len(move), "other"), np.full(n, "stay"), np.full(len(move), "other"), np.full(int(plan["air_after"] / DT), "air")])
    t = np.arange(len(depth)) * DT
    height, period = plan["waves"]
    wave = 0.05 * height * np.sin(2 * np.pi * t / period) * (phase == "stay")
    return depth + wave, phase


def respond(values, tau):
    """First-order response, exact for values constant over a step."""
    out = np.empty_like(values)
    out[0] = values[0]
    share = 1 - np.exp(-DT / tau)
    for k in range(1, len(values)):
        out[k] = out[k - 1] + share * (values[k] - out[k - 1])
    return out


def record(rng, water, depth, phase, *, offset, air_temperature, interval, change=None, spikes=()):
    """Rows as the probe would store them, and the truth beside them."""
    wet = depth > 0
    inside = np.clip(depth, 0, None)
    t = np.arange(len(depth)) * DT
    drift = np.zeros_like(depth) if change is None else change(t)
    salinity = water.at("salinity", inside) + drift
    temperature = np.where(wet, water.at("temperature", inside), air_temperature)
    pressure = np.where(wet, water.at("pressure", inside), 0.0)
    conductivity = np.where(wet, gsw.C_from_SP(np.clip(salinity, 0.01, None), np.where(wet, temperature, 10.0), pressure), 0.004)

    pick = np.arange(0, len(depth), int(round(interval / DT)))
    rows = {
        "elapsed": t[pick],
        "pressure": pressure[pick] + offset + rng.normal(0, NOISE["pressure"], len(pick)),
        "temperature": respond(temperature, RESPONSE["temperature"])[pick] + rng.normal(0, NOISE["temperature"], len(pick)),
        "conductivity": np.maximum(0, respond(conductivity, RESPONSE["conductivity"])[pick] + rng.normal(0, NOISE["conductivity"], len(pick))),
    }
    kinds = phase[pick].copy()
    dry = ~wet[pick]
    first, last = np.flatnonzero(~dry)[[0, -1]]
    kinds[:first], kinds[last + 1 :] = "air", "air"
    kinds[first : last + 1][kinds[first : last + 1] == "air"] = "other"
    placed = []
    for name, kind, part, added in spikes:
        rows_of = np.flatnonzero(kinds == kind)
        at = int(rows_of[int(part * (len(rows_of) - 1))])
        rows[name][at] += added
        placed.append({"row": at, "column": name, "added": added})
    truth = {
        "sea_pressure": pressure[pick],
        "kinds": kinds,
        "temperature": temperature[pick],
        "salinity": salinity[pick],
        "depth": inside[pick],
        "spikes": placed,
    }
    return rows, truth


def segments(kinds):
    runs, start = [], 0
    for k in range(1, len(kinds) + 1):
        if k == len(kinds) or kinds[k] != kinds[start]:
            runs.append({"kind": str(kinds[start]), "firstRow": start, "lastRow": k - 1})
            start = k
    return runs


def layers(water, deepest, width):
    """Means of the true water over layers of depth centred at multiples of the width, down to the deepest row."""
    out = {"width_m": width, "centre_m": [], "pressure": [], "temperature": [], "salinity": []}
    for k in range(1, int(deepest / width) + 1):
        inside = (water.z >= (k - 0.5) * width) & (water.z < min((k + 0.5) * width, deepest))
        if not inside.any():
            continue
        out["centre_m"].append(round(k * width, 3))
        for name in ("pressure", "temperature", "salinity"):
            out[name].append(round(float(getattr(water, name)[inside].mean()), 5))
    return out
