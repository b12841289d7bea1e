#!/usr/bin/python3
"""Recover the table of the Absolute Salinity Anomaly Ratio from the general-purpose TEOS-10 library.

Needs gsw and numpy (Debian: python3-gsw; the committed table was made with gsw 3.6.16). Writes
test-data/reference/saar-grid.json.gz, from which tools/pack_anomaly_ratio.py makes the text that the core
package ships, and prints how well the interpolation rule reproduces the library. Takes a minute.
"""
import gzip, json, os
import numpy as np
import gsw

OUT = os.path.join(os.path.dirname(os.path.abspath(__file__)), '..', 'test-data', 'reference')
LON = np.arange(0.0, 361.0, 4.0)            # 91
LAT = np.arange(-86.0, 91.0, 4.0)           # 45
P = np.array([0, 10, 20, 30, 40, 50, 76, 101, 126, 151, 176, 202, 252, 303, 353, 404, 505, 606, 707, 808, 909,
              1010, 1111, 1213, 1314, 1416, 1517, 1771, 2025, 2279, 2534, 2789, 3045, 3300, 3556, 3812, 4069,
              4325, 4583, 4840, 5098, 5355, 5614, 5872, 6131], float)  # 45
NX, NY, NZ = len(LON), len(LAT), len(P)
PAN_LON = np.array([260.00, 272.59, 276.50, 278.65, 280.73, 292.0])
PAN_LAT = np.array([19.55, 13.97, 9.60, 8.10, 9.33, 3.4])


def extract():
    eps = 1e-9
    # 1. deepest valid level of every 4 x 4 degree cell: last level at which the value still changes (0 = no ocean)
    cell = np.zeros((NX - 1, NY - 1), int)
    for i in range(NX - 1):
        for j in range(NY - 1):
            m = 0
            for fx, fy in ((.31, .47), (.77, .23), (.19, .83), (.61, .71)):
                v = gsw.SAAR(P, LON[i] + 4 * fx, LAT[j] + 4 * fy)
                if np.all(v == 0):
                    continue
                ch = np.where(np.diff(v) != 0)[0]
                m = max(m, NZ if v[-1] == 0 else (ch[-1] + 2) if len(ch) else 1)
            cell[i, j] = m
    # 2. node values: limits taken inside the surrounding cells that use this level; genuine when they agree.
    #    (Where only one cell uses the level, its limit may already be a filled-in mean: storing it is harmless.)
    val = np.full((NX, NY, NZ), np.nan)
    for i in range(NX):
        for j in range(NY):
            lim, use = [], []
            for dx, ci in ((1, i), (-1, i - 1)):
                for dy, cj in ((1, j), (-1, j - 1)):
                    if not (0 <= cj < NY - 1 and 0 <= ci < NX - 1):
                        continue  # the 0 and 360 degree columns are separate in the source table
                    lim.append(gsw.SAAR(P, LON[i] + dx * eps, LAT[j] + dy * eps))
                    use.append(np.arange(NZ) < cell[ci, cj])
            lim = np.where(np.array(use), np.array(lim), np.nan)
            have = np.isfinite(lim).any(axis=0)
            with np.errstate(all='ignore'):
                hi = np.max(np.where(np.isfinite(lim), lim, -9), axis=0)
                lo_ = np.min(np.where(np.isfinite(lim), lim, 9), axis=0)
            good = have & (hi - lo_ < 2e-11)
            val[i, j, good] = hi[good]
    val[val == 0] = np.nan      # exactly 0 all round: no data (or data equal to 0, which reads the same)
    val[val < 1e-12] = 0.0      # genuine zeros (Baltic) show up as a residue of the 1e-9 degree offset
    return val, cell


def lookup(val, cell, p, lon, lat):
    """one point; the interpolation rule, as packages/core/src/seawater/anomaly-ratio.ts has it"""
    if not (-86.0 <= lat <= 90.0) or not np.isfinite(p + lon + lat):
        return np.nan
    lon = lon % 360.0
    i = min(int(np.floor(lon / 4.0)), NX - 2)
    j = min(int(np.floor((lat + 86.0) / 4.0)), NY - 2)
    corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)]
    nmax = cell[i, j]
    if nmax == 0:
        return 0.0
    p = min(p, P[nmax - 1])
    if p <= P[0]:
        k = 0
    elif p >= P[-1]:
        k = NZ - 2
    else:
        k = min(int(np.searchsorted(P, p, side='right')) - 1, NZ - 2)
    r = (lon - LON[i]) / 4.0
    s = (lat - LAT[j]) / 4.0
    t = (p - P[k]) / (P[k + 1] - P[k])
    pan = PAN_LON[0] <= lon <= PAN_LON[-1] - 0.001 and PAN_LAT[-1] <= lat <= PAN_LAT[0]
    out = []
    for kk in (k, k + 1):
        v = np.array([val[c][kk] for c in corners])
        use = np.isfinite(v)
        if pan:
            # outside the end longitudes the end segment is extrapolated
            def line(x):
                q = min(max(int(np.searchsorted(PAN_LON, x, side='left')) - 1, 0), len(PAN_LON) - 2)
                w = (x - PAN_LON[q]) / (PAN_LON[q + 1] - PAN_LON[q])
                return PAN_LAT[q] + w * (PAN_LAT[q + 1] - PAN_LAT[q])
            side0 = line(lon) <= lat
            side = np.array([line(LON[c[0]]) <= LAT[c[1]] for c in corners])
            use = use & (side == side0)
        fill = v[use].mean() if use.any() else 0.0
        v = np.where(use, v, fill)
        out.append((1 - s) * (v[0] + r * (v[1] - v[0])) + s * (v[3] + r * (v[2] - v[3])))
    return out[0] + t * (out[1] - out[0])


if __name__ == '__main__':
    val, cell = extract()
    # units of 1e-9: SAAR is O(1e-5..1e-3), so int32 keeps 5e-10 absolute (1.8e-8 g/kg)
    q = np.where(np.isfinite(val), np.round(val * 1e9), -2147483648).astype('int32')
    flat = []
    for i in range(NX):
        for j in range(NY):
            col = [None if x == -2147483648 else int(x) for x in q[i, j]]
            while col and col[-1] is None:
                col.pop()
            flat.append(col)
    doc = {'about': 'Absolute Salinity Anomaly Ratio; column index = ilon*45 + ilat; each column lists levels from the surface down (null = no data, empty = land); unit 1e-9; cell_depth[ilon*44+ilat] (90 x 44 cells) is the number of levels a cell uses, 0 = no ocean, and serves to clip pressure',
           'lon': LON.tolist(), 'lat': LAT.tolist(), 'p_dbar': P.tolist(), 'scale': 1e-9, 'columns': flat, 'cell_depth': cell.ravel().tolist(),
           'panama_line': {'lon': PAN_LON.tolist(), 'lat': PAN_LAT.tolist()}, 'gsw_version': gsw.__version__}
    with gzip.GzipFile(os.path.join(OUT, 'saar-grid.json.gz'), 'wb', mtime=0) as f:
        f.write(json.dumps(doc, separators=(',', ':')).encode())
    dq = np.where(q == -2147483648, np.nan, q * 1e-9)
    rng = np.random.default_rng(11)
    n = 40000
    lon = rng.uniform(0, 360, n); lat = np.degrees(np.arcsin(rng.uniform(-0.997, 1, n))); p = np.where(rng.random(n) < .5, rng.uniform(0, 200, n), rng.uniform(0, 6500, n))
    ref = gsw.SAAR(p, lon, lat)
    for name, table in (('full precision', val), ('quantised 1e-9', dq)):
        got = np.array([lookup(table, cell, a, b, c) for a, b, c in zip(p, lon, lat)])
        d = np.abs(got - ref)
        oc = ref != 0
        print(name, 'points', n, 'non-zero', int(oc.sum()), 'max', np.nanmax(d), 'p99.9', np.nanpercentile(d, 99.9), 'n>1e-8:', int((d > 1e-8).sum()), 'nan mismatch', int((np.isnan(got) != np.isnan(ref)).sum()))
        bad = np.where(d > 1e-8)[0]
        for b in bad[:12]:
            print('   ', round(lon[b], 3), round(lat[b], 3), round(p[b], 1), got[b], ref[b])
    # Panama box
    lon = rng.uniform(258, 294, 8000); lat = rng.uniform(1, 22, 8000); p = rng.uniform(0, 1500, 8000)
    d = np.abs(np.array([lookup(dq, cell, a, b, c) for a, b, c in zip(p, lon, lat)]) - gsw.SAAR(p, lon, lat))
    print('Panama box max', d.max(), 'n>1e-8', int((d > 1e-8).sum()))
    print('range', np.nanmin(val), np.nanmax(val), 'ocean nodes', int(np.isfinite(val).any(axis=2).sum()), 'values', int(np.isfinite(val).sum()), 'ocean cells', int((cell > 0).sum()))
