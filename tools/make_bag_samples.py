"""Makes the deposit packages in test-data/packages with Python's own zipfile, tarfile and hashlib, as an independent
writer: python3 tools/make_bag_samples.py. The data in them are invented."""

import hashlib
import io
import pathlib
import tarfile
import zipfile

OUT = pathlib.Path(__file__).parent.parent / "test-data" / "packages"
STAMP = (2030, 1, 1, 0, 0, 0)
LONG = "data/" + "/".join(["a-folder-with-a-rather-long-name"] * 8) + "/note.txt"

payload = {
    "data/readme.txt": b"Invented casts, made for tests.\n",
    "data/casts.csv": b"cast,depth\r\na,1.5\r\n",
    "data/100%25 sure.txt".replace("%25", "%"): b"a percent sign in the name\n",
    LONG: b"a long path\n",
}


def manifest(files, algorithm):
    return "".join(
        f"{hashlib.new(algorithm, content).hexdigest()}  {path.replace('%', '%25')}\n"
        for path, content in sorted(files.items())
    ).encode()


tags = {
    "bagit.txt": b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
    "bag-info.txt": (
        f"Bagging-Date: 2030-01-01\nPayload-Oxum: {sum(map(len, payload.values()))}.{len(payload)}\n"
        "External-Description: Invented casts of a pier,\n  for tests only\n"
    ).encode(),
    "manifest-sha256.txt": manifest(payload, "sha256"),
    "manifest-sha512.txt": manifest(payload, "sha512"),
}
bag = {**tags, "tagmanifest-sha256.txt": manifest(tags, "sha256"), **payload}


def write_zip(name, files, compression=zipfile.ZIP_DEFLATED):
    with zipfile.ZipFile(OUT / name, "w", compression) as archive:
        for path, content in files.items():
            info = zipfile.ZipInfo(path, STAMP)
            info.compress_type = compression
            with archive.open(info, "w", force_zip64=zipfile.ZIP64_LIMIT == 0) as member:
                member.write(content)


def write_tar(name, files, form, links=()):
    with tarfile.open(OUT / name, "w", format=form) as archive:
        for path, content in files.items():
            info = tarfile.TarInfo(path)
            info.size = len(content)
            archive.addfile(info, io.BytesIO(content))
        for path, target in links:
            info = tarfile.TarInfo(path)
            info.type, info.linkname = tarfile.SYMTYPE, target
            archive.addfile(info)


OUT.mkdir(exist_ok=True)
based = {f"bag/{path}": content for path, content in bag.items()}
write_zip("deflated.zip", based)
write_zip("stored.zip", based, zipfile.ZIP_STORED)
write_zip("escape.zip", {**based, "bag/../../outside.txt": b"out\n"})
write_tar("pax.tar", based, tarfile.PAX_FORMAT)
write_tar("gnu.tar", based, tarfile.GNU_FORMAT)
write_tar("dotted.tar", {f"./{path}": content for path, content in based.items()}, tarfile.PAX_FORMAT)
write_tar("links.tar", based, tarfile.PAX_FORMAT, [("bag/data/link.txt", "/etc/hostname")])
# with this limit every size, offset and the end of the archive are written in the 64-bit form
zipfile.ZIP64_LIMIT = 0
write_zip("sizes64.zip", based)
