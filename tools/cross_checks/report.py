"""The quick-look report beside the products: its pictures are XML, ask for nothing outside, and show the same numbers."""

import re
import xml.etree.ElementTree as ElementTree

import gsw
import numpy as np

from .reading import casts, code_of, numbers, opened

SVG = "{http://www.w3.org/2000/svg}"


def report(path, full, binned, tally):
    page = path.read_text(encoding="utf-8")
    pictures = re.findall(r"<svg .*?</svg>", page, re.DOTALL)
    tally.check(bool(pictures), path.name, "no picture")
    roots = {root.get("id"): root for root in map(ElementTree.fromstring, pictures)}
    tally.check(len(roots) == len(pictures), path.name, "two pictures have one id")
    for name, root in roots.items():
        told = [root.find(f"{SVG}{tag}") for tag in ("title", "desc")]
        tally.check(all(each is not None and each.text for each in told), path.name, f"{name} has no title or description")
    outside = re.findall(r"""(?:src|href)\s*=\s*["'](?!#)|url\((?!["']?#)|<(?:script|link|img|iframe|object)\b""", page)
    tally.check(not outside, path.name, f"asks for something outside: {outside[:3]}")
    with opened(full) as rows:
        table(path, page, rows, tally)
    with opened(binned) as layers:
        diagram(path, roots["diagram"], layers, tally)


def table(path, page, rows, tally):
    """Rows of each cast and the range of what is good or not judged, in water, as the table of casts prints them."""
    in_water = numbers(rows, "segment") != code_of(rows, "segment", "air")
    for name, part, _, _ in casts(rows):
        line = re.search(rf'<tr><th scope="row" class="w">(?:<a [^>]*>)?{re.escape(name)}<.*?</tr>', page, re.DOTALL)
        if not tally.check(line is not None, path.name, f"{name} is not in the table of casts"):
            continue
        cells = re.findall(r"<td[^>]*>(.*?)</td>", line.group(), re.DOTALL)
        tally.check(str(part.stop - part.start) in cells, path.name, f"{name}: another number of rows")
        for quantity in ("temperature", "salinity"):
            used = in_water[part] & np.isin(numbers(rows, f"{quantity}_qc")[part], (1, 2))
            values = numbers(rows, quantity)[part][used]
            # the file holds single precision, the table what was computed before
            printed = [[float(end) for end in cell.split(" to ")] for cell in cells if " to " in cell]
            close = any(abs(low - values.min()) < 0.0051 and abs(high - values.max()) < 0.0051 for low, high in printed)
            tally.check(close, path.name, f"{name}: {quantity} from {values.min():.2f} to {values.max():.2f} is not in the table")


def diagram(path, root, layers, tally):
    """Dots and lines of equal density against the TEOS-10 library, by the printed numbers of the axes."""
    ticks = [each for each in root.iter(f"{SVG}text") if each.get("class") == "tick"]
    lowest = max(float(each.get("y")) for each in ticks)
    across = [(float(each.get("x")), float(each.text)) for each in ticks if float(each.get("y")) == lowest and each.get("text-anchor") == "middle"]
    down = [(float(each.get("y")) - 4.2, float(each.text)) for each in ticks if float(each.get("y")) != lowest]
    to_salt, to_warmth = np.polyfit(*zip(*across), 1), np.polyfit(*zip(*down), 1)
    pixel = abs(to_salt[0]), abs(to_warmth[0])
    elements = list(root.iter())
    for line, name in zip(elements, elements[1:]):
        if line.get("class") != "density":
            continue
        points = np.array([[float(each) for each in pair.split(",")] for pair in re.findall(r"-?[\d.]+,-?[\d.]+", line.get("d"))])
        sigma = gsw.sigma0(np.polyval(to_salt, points[:, 0]), np.polyval(to_warmth, points[:, 1]))
        off = np.abs(sigma - float(name.text)).max()
        tally.check(off < 0.2 * (pixel[0] + pixel[1]), path.name, f"line of density {name.text} is off by {off:.3f} kg m-3")
    groups = [each for each in root.iter(f"{SVG}g") if each.get("data-cast")]
    t, SP = (numbers(layers, name) for name in ("temperature", "salinity"))
    if "pressure" in layers.variables:
        p = numbers(layers, "pressure")
    else:  # an arrangement without it; half a dbar moves no dot
        depth = numbers(layers, "depth")
        p = np.concatenate([gsw.p_from_z(-depth[part], lat) for _, part, lat, _ in casts(layers)])
    held = [each for each in casts(layers) if np.isfinite(t[each[1]] + p[each[1]] + SP[each[1]]).any()]
    tally.check(len(groups) == len(held), path.name, f"{len(groups)} casts in the diagram, {len(held)} in the layer means")
    for group, (name, part, lat, lon) in zip(groups, held):
        known = np.isfinite(t[part] + p[part] + SP[part])
        SA = gsw.SA_from_SP(SP[part][known], p[part][known], lon, lat)
        CT = gsw.CT_from_t(SA, t[part][known], p[part][known])
        dots = np.array([[float(each) for each in pair] for pair in re.findall(r"M([\d.]+) ([\d.]+)h", group[1].get("d"))])
        drawn = np.polyval(to_salt, dots[:, 0]), np.polyval(to_warmth, dots[:, 1])
        away = [np.hypot((SA - x) / pixel[0], (CT - y) / pixel[1]).min() for x, y in zip(*drawn)]
        tally.check(max(away) < 0.5, path.name, f"{name}: a dot lies {max(away):.1f} pixels from any layer")
