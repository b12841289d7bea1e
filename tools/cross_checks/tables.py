"""The CSV beside a product equals it number by number, read by Python's csv module through its CSVW metadata."""

import csv
import datetime
import json
import math

import numpy as np

from .reading import numbers, opened, texts

EPOCH = datetime.datetime(1970, 1, 1, tzinfo=datetime.timezone.utc)


def tables(path, tally):
    stem = path.with_suffix("")
    table = stem.with_suffix(".csv")
    described = table.with_name(table.name + "-metadata.json")
    if not tally.check(table.exists() and described.exists(), path.name, f"{table.name} or its metadata is not there"):
        return
    metadata = json.loads(described.read_text(encoding="utf-8"))
    tally.check("http://www.w3.org/ns/csvw" in json.dumps(metadata.get("@context", "")), described.name, "no CSVW context")
    with opened(path) as dataset:
        for each in metadata.get("tables", [metadata]):
            compare(path, dataset, table.parent / each["url"], each, tally)


def compare(path, dataset, table, metadata, tally):
    columns = [column for column in metadata["tableSchema"]["columns"] if not column.get("virtual")]
    with open(table, encoding="utf-8", newline="") as stream:
        head, *rows = list(csv.reader(stream, strict=True))
    titles = [column.get("titles", column["name"]) for column in columns]
    titles = [title if isinstance(title, str) else title[0] for title in titles]
    tally.check(head == titles, table.name, f"head {head} is not that of the metadata {titles}")
    tally.check(all(len(row) == len(head) for row in rows), table.name, "rows of different width")
    met = set()
    for k, column in enumerate(columns):
        name = column["name"]
        if not tally.check(name in dataset.variables, table.name, f"column {name} is not a variable of {path.name}"):
            continue
        met.add(name)
        cells = [row[k] for row in rows]
        wanted = spread(dataset, name, len(rows))
        if wanted is None:
            tally.check(False, table.name, f"{name}: {len(rows)} rows do not fit its shape")
            continue
        missing = column.get("null", "")
        wrong = [(i, cell, want) for i, (cell, want) in enumerate(zip(cells, wanted)) if not same(cell, want, missing)]
        tally.check(not wrong, table.name, f"{name}: {len(wrong)} cells differ, first {wrong[:1]}")
    own = {name for name, variable in dataset.variables.items() if variable.dimensions[:1] and variable.dimensions[0] in ("obs", "time")}
    bare = {name for name in own if name.endswith("_bounds")}
    if len(metadata.get("tableSchema", {}).get("columns", [])) > 1 and len(rows) == max((len(d) for d in dataset.dimensions.values()), default=0):
        tally.check(own - bare <= met, table.name, f"variables without a column: {sorted(own - bare - met)}")


def spread(dataset, name, rows):
    """Values of a variable, one per row of the table: values per cast are repeated over the cast's rows."""
    variable = dataset.variables[name]
    if variable.dtype.kind == "S":
        values, shape = texts(dataset, name), variable.shape[:-1]
    else:
        values, shape = numbers(dataset, name), variable.shape
    values = np.atleast_1d(np.array(values, dtype=object))
    if shape == (rows,):
        return values
    if shape == () or len(values) == 1:
        return np.repeat(values, rows)
    if "row_size" in dataset.variables and len(values) == len(dataset.dimensions["profile"]):
        repeated = np.repeat(values, numbers(dataset, "row_size").astype(int))
        return repeated if len(repeated) == rows else None
    return None


def same(cell, want, missing):
    """Equal to the last bit of the stored number; a moment may be written as ISO 8601."""
    if isinstance(want, str):
        return cell == want
    if cell in ([missing] if isinstance(missing, str) else missing) or cell == "":
        return math.isnan(want)
    if "T" in cell:
        moment = datetime.datetime.fromisoformat(cell.replace("Z", "+00:00"))
        return abs((moment - EPOCH).total_seconds() - want) < 1e-5
    # a single-precision number is written with the digits that single precision needs
    return float(cell) == want or np.float32(cell) == np.float32(want)
