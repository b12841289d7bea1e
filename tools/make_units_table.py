#!/usr/bin/env python3
"""Packs the unit database of Debian's libudunits2-data into packages/core/src/units/table.generated.ts.

Facts only (names, symbols, definitions, prefixes); comments and descriptions are left out. The licence asks that
its notice goes with every copy: it is written above the table, from the package's copyright file.
"""

import pathlib
import re
import subprocess
import xml.etree.ElementTree as ET

DATA = pathlib.Path("/usr/share/xml/udunits")
COPYRIGHT = pathlib.Path("/usr/share/doc/libudunits2-data/copyright")
OUT = pathlib.Path("packages/core/src/units/table.generated.ts")
FILES = ["base", "derived", "accepted", "common"]  # in the order in which udunits2.xml includes them


def words(element):
    return "".join(element.itertext()).strip()


def plural(name):
    """Explicit plural of a <name>, or None where the regular one is meant."""
    found = name.find("plural")
    return None if found is None else words(found)


def names(unit):
    out = []
    for name in [*unit.findall("name"), *unit.findall("aliases/name")]:
        singular = words(name.find("singular"))
        irregular = plural(name)
        out.append(singular if irregular is None else f"{singular}/{irregular}")
    return out


def symbols(unit):
    return [words(symbol) for symbol in [*unit.findall("symbol"), *unit.findall("aliases/symbol")]]


def definition(unit):
    if unit.find("base") is not None:
        return "base"
    if unit.find("dimensionless") is not None:
        return "dimensionless"
    return " ".join(words(unit.find("def")).split())


def unit_lines():
    for file in FILES:
        for unit in ET.parse(DATA / f"udunits2-{file}.xml").getroot().iter("unit"):
            yield "|".join([definition(unit), " ".join(names(unit)), " ".join(symbols(unit))])


def prefix_lines():
    for prefix in ET.parse(DATA / "udunits2-prefixes.xml").getroot().iter("prefix"):
        yield "|".join(
            [
                words(prefix.find("value")),
                " ".join(words(name) for name in prefix.findall("name")),
                " ".join(words(symbol) for symbol in prefix.findall("symbol")),
            ]
        )


def notice():
    """From the copyright line to the end of the disclaimer, without the part on the expat library."""
    text = COPYRIGHT.read_text(encoding="utf-8")
    return re.search(r"Copyright 2008.*?(?=\nExpat\n)", text, re.S).group(0).strip()


def version():
    found = subprocess.run(
        ["dpkg-query", "-W", "-f", "${source:Upstream-Version}", "libudunits2-data"],
        capture_output=True,
        text=True,
        check=True,
    )
    return found.stdout.strip()


def literal(lines):
    text = "\n".join(lines)
    assert "`" not in text and "\\" not in text and "${" not in text
    return f"`\n{text}\n`"


def main():
    comment = "\n".join(f" * {line}".rstrip() for line in notice().splitlines())
    OUT.write_text(
        f"""/*
 * Unit database of UDUNITS {version()}, made by tools/make_units_table.py from libudunits2-data.
 * Names, symbols, definitions and prefixes are kept; comments and descriptions are left out.
 *
{comment}
 */

/** Version of the unit database. */
export const unitTableVersion = "{version()}";

/** One unit a line: definition, names, symbols. A name is singular or singular/plural. */
export const unitTable = {literal(unit_lines())};

/** One prefix a line: value, names, symbols. */
export const prefixTable = {literal(prefix_lines())};
""",
        encoding="utf-8",
    )
    print(OUT)


if __name__ == "__main__":
    main()
