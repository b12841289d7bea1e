"""The CSV beside a product equals it number by number, read by Python's csv module through its CSVW metadata."""

import csv
import datetime
import json
import math
import re

import numpy as np

from .reading import arrangement, numbers, opened, texts

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
        wanted = wanted_of(dataset, name, len(rows), met)
        if not tally.check(wanted is not None, table.name, f"column {name} is no variable of {path.name}, or of another shape"):
            continue
        missing = column.get("null", "")
        wrong = [(i, row[k], want) for i, (row, want) in enumerate(zip(rows, wanted)) if not same(row[k], want, missing)]
        tally.check(not wrong, table.name, f"{name}: {len(wrong)} cells differ, first {wrong[:1]}")
    # what holds only attributes, and the lengths of the casts, have no column
    bare = {name for name in dataset.variables if re.match(r"^(crs|row_size|platform\d+|instrument\d+)$", name)}
    left = sorted(set(dataset.variables) - met - bare)
    tally.check(not left, table.name, f"variables without a column: {left}")
    keys = [tuple(row[head.index(name)] for name in metadata["tableSchema"].get("primaryKey", [])) for row in rows]
    tally.check(len(set(keys)) == len(rows), table.name, "the primary key is not unique")


def wanted_of(dataset, name, rows, met):
    """What the column must hold; None if the file has nothing of that name and length."""
    if name in dataset.variables:
        met.add(name)
        return spread(dataset, name, rows)
    if name == "row":
        _, _, counts = arrangement(dataset)
        counted = [float(k + 1) for count in counts for k in range(count)]
        return counted if len(counted) == rows else None
    if name == "time_utc":
        return spread(dataset, "time", rows)
    edge = re.match(r"^(.*_bounds)_(lower|upper)$", name)
    if edge and edge[1] in dataset.variables:
        met.add(edge[1])
        return numbers(dataset, edge[1])[:, 0 if edge[2] == "lower" else 1]
    return None


def spread(dataset, name, rows):
    """Values of a variable, one per row of the table: values per cast are repeated over the cast's rows."""
    variable = dataset.variables[name]
    values = texts(dataset, name) if variable.dtype.kind == "S" else numbers(dataset, name)
    values = np.atleast_1d(np.array(values, dtype=object))
    _, element, counts = arrangement(dataset)
    if element in variable.dimensions:
        return values if values.shape == (rows,) else None
    if sum(counts) == rows and len(values) == len(counts):
        return np.repeat(values, counts)
    return np.repeat(values, rows) if len(values) == 1 else None


def same(cell, want, missing):
    """Equal to the last bit of the stored number; a moment may be written as ISO 8601."""
    if isinstance(want, str):
        return cell == want
    if cell in ([missing] if isinstance(missing, str) else missing) or cell == "":
        return math.isnan(want)
    if "T" in cell:
        moment = datetime.datetime.fromisoformat(cell.replace("Z", "+00:00"))
        return abs((moment - EPOCH).total_seconds() - want) < 1e-3
    # a single-precision number is written with the digits that single precision needs
    return float(cell) == want or np.float32(cell) == np.float32(want)
