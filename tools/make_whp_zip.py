#!/usr/bin/env python3
"""Make test-data/whp-zip: archives of invented WHP-Exchange casts, packed by Python's zipfile.

An independent packer: the reader under test uses another library. Run again to get the same bytes.
"""
import pathlib
import zipfile

root = pathlib.Path(__file__).resolve().parent.parent / "test-data"
samples = root / "samples" / "openformats"
out = root / "whp-zip"
out.mkdir(exist_ok=True)
first = (samples / "whp_ok_00003_00001_ct1.csv").read_bytes()
second = first.replace(b"STNNBR = 3", b"STNNBR = 4").replace(b"TIME = 0712", b"TIME = 0845")


def pack(name, members, method=zipfile.ZIP_DEFLATED):
    with zipfile.ZipFile(out / name, "w") as archive:
        for path, content in members:
            info = zipfile.ZipInfo(path, date_time=(2024, 1, 1, 0, 0, 0))
            info.compress_type = method
            archive.writestr(info, content)


casts = [("99ZZ_00003_00001_ct1.csv", first), ("99ZZ_00004_00001_ct1.csv", second)]
pack("two_casts_ct1.zip", [*casts, ("README.txt", b"An invented cruise.\n")])
pack("stored_ct1.zip", casts, zipfile.ZIP_STORED)
pack("in_folder_ct1.zip", [("cruise/" + casts[0][0], first)])
pack("no_casts.zip", [("README.txt", b"An invented cruise.\n")])
