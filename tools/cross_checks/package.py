"""A deposit package, read with Python's own libraries: zip, checksums, XML, JSON and CSV."""

import csv
import hashlib
import io
import json
import pathlib
import urllib.parse
import xml.etree.ElementTree as ElementTree
import zipfile

import netCDF4


class Files:
    """Files of a package by their path from its base directory, in a folder or a zip archive."""

    def __init__(self, path):
        if path.is_dir():
            self.read = {str(p.relative_to(path)): p.read_bytes() for p in path.rglob("*") if p.is_file()}
            return
        with zipfile.ZipFile(path) as archive:
            assert archive.testzip() is None
            (base,) = {name.split("/")[0] for name in archive.namelist()}
            self.read = {name[len(base) + 1 :]: archive.read(name) for name in archive.namelist()}


def package(path, tally):
    files = Files(path).read
    name = path.name
    tally.check(
        files["bagit.txt"] == b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n", name, "bagit.txt"
    )
    payload = {p: b for p, b in files.items() if p.startswith("data/")}
    for algorithm in ("sha256", "sha512"):
        for manifest, wanted in ((f"manifest-{algorithm}.txt", set(payload)), (f"tagmanifest-{algorithm}.txt", None)):
            if manifest not in files:
                continue
            lines = [line.split("  ", 1) for line in files[manifest].decode().splitlines()]
            sums = {urllib.parse.unquote(p): digest for digest, p in lines}
            same = all(hashlib.new(algorithm, files[p]).hexdigest() == digest for p, digest in sums.items())
            tally.check(same, name, f"{manifest}: every checksum")
            tally.check(wanted is None or set(sums) == wanted, name, f"{manifest}: every file of the payload, once")
    oxum = f"Payload-Oxum: {sum(map(len, payload.values()))}.{len(payload)}"
    tally.check(oxum in files["bag-info.txt"].decode().splitlines(), name, "Payload-Oxum")
    for file, content in payload.items():
        if "/original/" in file:
            continue
        if file.endswith(".json"):
            json.loads(content)
        elif file.endswith((".xml", ".svg")):
            ElementTree.fromstring(content)
        elif file.endswith(".txt"):
            text = content.decode()
            tally.check(all(c.isprintable() or c == "\n" for c in text), name, f"{file}: plain text")
    tally.check(True, name, "records are well formed")
    positions(payload, name, tally)


def positions(payload, name, tally):
    """The position list says what the products say, as the netCDF library reads them."""
    (file,) = [p for p in payload if p.endswith("_positions.csv")]
    rows = list(csv.DictReader(io.StringIO(payload[file].decode(), newline="")))
    found = {}
    for path in (p for p in payload if p.endswith("_full.nc")):
        with netCDF4.Dataset(pathlib.Path(path).name, memory=payload[path]) as data:
            if "profile_id" not in data.variables or data["profile_id"].ndim != 2:
                continue
            ids = netCDF4.chartostring(data["profile_id"][:])
            for k, cast in enumerate(ids):
                found[str(cast)] = (float(data["latitude"][k]), float(data["longitude"][k]))
    listed = {
        row["cast"]: (float(row["start_latitude"]), float(row["start_longitude"]))
        for row in rows
        if row["kind"] == "profile"
    }
    tally.check(bool(found) and listed == found, name, "positions are those of the full product")
