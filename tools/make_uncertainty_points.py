#!/usr/bin/python3
"""Makes test-data/reference/uncertainty-points.json: standard uncertainties of salinity, density, sound speed and
depth by the TEOS-10 library. Needs gsw and numpy (Debian: python3-gsw).

Two ways at each point, with Absolute Salinity of the place: `first_order` by derivatives (the library's own for
density, central differences of the library's functions where it has none), `drawn` as the standard deviation of
the library's results for 200,000 normal draws of conductivity, temperature and pressure (seeded).
"""

import json
import pathlib

import gsw
import numpy as np

OUT = pathlib.Path(__file__).resolve().parent.parent / "test-data" / "reference" / "uncertainty-points.json"
DRAWS = 200_000
PASCAL = 1e4

# standard uncertainties of conductivity (mS/cm), temperature (degC), pressure (dbar): three grades of sensors
SENSORS = [(0.003, 0.002, 0.05), (0.01, 0.01, 0.1), (0.05, 0.05, 0.5)]
PLACES = [(-30.0, 30.0), (4.1, 52.0), (-122.4, 37.8), (144.9, -38.1), (20.0, 57.5)]


def quantities(c, t, p, lon, lat):
    sp = gsw.SP_from_C(c, t, p)
    sa = gsw.SA_from_SP(sp, p, lon, lat)
    ct = gsw.CT_from_t(sa, t, p)
    return {"SP": sp, "rho": gsw.rho(sa, ct, p), "sound_speed": gsw.sound_speed(sa, ct, p), "depth": -gsw.z_from_p(p, lat)}


def central(c, t, p, lon, lat):
    """Derivatives with respect to conductivity, temperature and pressure."""
    steps = (1e-4 * c, 1e-3, 1e-2)
    found = []
    for k, step in enumerate(steps):
        hi, lo = [c, t, p], [c, t, p]
        hi[k] += step
        lo[k] -= step
        above, below = quantities(*hi, lon, lat), quantities(*lo, lon, lat)
        found.append({name: (above[name] - below[name]) / (2 * step) for name in above})
    return found


def density_by_library(c, t, p, lon, lat, by):
    """Density's derivatives by those of the library; salinity's by central differences."""
    sp = gsw.SP_from_C(c, t, p)
    sa = gsw.SA_from_SP(sp, p, lon, lat)
    ct = gsw.CT_from_t(sa, t, p)
    rho_sa, rho_ct, rho_p = gsw.rho_first_derivatives(sa, ct, p)
    ct_sa, ct_t, ct_p = gsw.CT_first_derivatives_wrt_t_exact(sa, t, p)
    sa_sp = (gsw.SA_from_SP(sp + 1e-3, p, lon, lat) - gsw.SA_from_SP(sp - 1e-3, p, lon, lat)) / 2e-3
    by_sa = rho_sa + rho_ct * ct_sa
    return [
        by_sa * sa_sp * by[0]["SP"],
        by_sa * sa_sp * by[1]["SP"] + rho_ct * ct_t,
        by_sa * sa_sp * by[2]["SP"] + (rho_p + rho_ct * ct_p) * PASCAL,
    ]


rng = np.random.default_rng(20250917)
points = []
for n in range(60):
    u = SENSORS[n % 3]
    lon, lat = PLACES[n % 5]
    sp = float(np.exp(rng.uniform(np.log(0.3), np.log(38))))
    t, p = float(rng.uniform(1, 30)), float(rng.uniform(1, 300))
    # not across the bend at SP 2, where the two forms meet at an angle
    if 1.7 < sp < 2.3:
        sp = 2.6
    c, t, p = round(float(gsw.C_from_SP(sp, t, p)), 4), round(t, 4), round(p, 3)
    by = central(c, t, p, lon, lat)
    root = lambda parts: float(np.sqrt(sum((part * each) ** 2 for part, each in zip(parts, u))))
    first = {name: root([each[name] for each in by]) for name in by[0]}
    first["rho"] = root(density_by_library(c, t, p, lon, lat, by))
    draw = [rng.normal(value, each, DRAWS) for value, each in zip((c, t, p), u)]
    drawn = {name: float(np.std(values)) for name, values in quantities(*draw, lon, lat).items()}
    points.append({"C": c, "t": t, "p": p, "lon": lon, "lat": lat, "u": u, "first_order": first, "drawn": drawn})

doc = {
    "about": "Standard uncertainties by the TEOS-10 library; C mS/cm, t degC ITS-90, p dbar; u the standard uncertainties of the three; SP 1, rho kg/m3, sound_speed m/s, depth m",
    "made_by": "tools/make_uncertainty_points.py",
    "gsw_version": gsw.__version__,
    "draws": DRAWS,
}
lines = ",\n".join(json.dumps(point) for point in points)
OUT.write_text(json.dumps(doc)[:-1] + ', "points": [\n' + lines + "\n]}\n", encoding="ascii")
print(OUT.name, len(points))
