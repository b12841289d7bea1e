"""The survey sheet and the read-me of the demo survey. Everything in them is invented."""

HEAD = """\
# Survey sheet of the demo survey. Everything in it is invented: the estuary, its places, the people, the station.
version: 1
created: 2025-06-02T08:00:00Z

survey:
  id: ostrel-2025
  title: CTD casts of the Ostrel Estuary, May 2025 (invented demonstration data)
  summary: >-
    Fifteen hand-lowered conductivity, temperature and pressure casts from a launch along the invented Ostrel
    Estuary, from its weir to the open roads, and one series at a fixed depth at the Pilot Jetty, on 13 and 14 May
    2025. The set shows a salt wedge and its mixing towards the sea. The data were simulated from stated physics;
    no such place exists.
  keywords: [invented data, estuary, salt wedge, hand-lowered cast]
  keywords_vocabulary: free words
  naming_authority: org.example.ostrel
  product_version: "1.0.0"
  institution: Ostrel Field Station (invented)
  project: Ostrel Estuary Spring Survey 2025 (invented)
  program: Ostrel Estuary Watch (invented)
  source: simulated hand-lowered conductivity, temperature and pressure probe
  comment: Simulated data with an invented place, for demonstration only. Not for navigation or diving.
  acknowledgement: No one paid for this invented survey.
  license: CC0-1.0
  access: { right: open }
  places: [Saltings Bridge (invented), Pilot Jetty (invented), Outer Roads (invented)]
  water_level: Neaps; the tide was not levelled, and depths refer to the water surface at the time of each cast.
  methods: >-
    Simulated as lowered by hand from the launch: a pause in air, a soak below the surface, down at about half a metre
    a second, and up again with stops.
  quality: >-
    The numbers are simulated and good for trying out programs only. Spikes, swell and a broken-off record were put in
    on purpose.
  references:
    - https://ostrel.example.org/notes/spring-survey-2025
  metadata_link: https://ostrel.example.org/records/ostrel-2025
  sea_name: Ostrel Estuary (invented)
  date_issued: 2025-06-02
  date_modified: 2025-06-02

people:
  creator:
    name: Survey party of the Ostrel Field Station
    type: group
    institution: Ostrel Field Station (invented)
    email: survey@ostrel.example.org
    url: https://ostrel.example.org
  publisher:
    name: Data desk of the Ostrel Field Station
    type: group
    institution: Ostrel Field Station (invented)
    email: data@ostrel.example.org
    url: https://ostrel.example.org/data
  contributors:
    - name: Launch crew of the Ostrel Field Station
      role: handling of the probe
      type: group
      institution: Ostrel Field Station (invented)
    - name: Data desk of the Ostrel Field Station
      role: processing and description
      type: group
      institution: Ostrel Field Station (invented)

platforms:
  - id: launch
    name: open survey launch of six metres
    comment: invented; no call sign, no platform code
  - id: jetty
    name: pontoon of the Pilot Jetty
    comment: invented; it floats, so the probe keeps its depth below the surface

instruments:
  - id: hand-probe
    name: conductivity, temperature and pressure probe lowered by hand
    model: invented probe for this demonstration
    serial_number: "OP-0231"
    calibration_date: 2025-02-11
    rated_pressure: 100
    sensors:
      temperature: { accuracy: 0.01, precision: 0.001, uncertainty: 0.005, units: degree_C }
      conductivity: { accuracy: 0.01, precision: 0.001, uncertainty: 0.006, units: mS cm-1 }
      pressure: { accuracy: 0.1, precision: 0.01, uncertainty: 0.05, units: dbar }
  - id: hung-probe
    name: conductivity, temperature and pressure probe hung at a fixed depth
    model: invented probe for this demonstration
    serial_number: "OP-0118"
    calibration_date: 2025-02-12
    rated_pressure: 100
    sensors:
      temperature: { accuracy: 0.01, precision: 0.001, uncertainty: 0.005, units: degree_C }
      conductivity: { accuracy: 0.01, precision: 0.001, uncertainty: 0.006, units: mS cm-1 }
      pressure: { accuracy: 0.1, precision: 0.001, uncertainty: 0.05, units: dbar }

exchange:
  expocode: 99ZZ20250513
  section: OSTREL
  stamp: OFSDESK

processing:
  preset: estuary
  bin_width: 0.5
  bin_coordinate: depth
  direction: down

"""


def sheet(listed):
    lines = ["casts:"]
    for cast, known, sha256 in listed:
        jetty = known["kind"] == "fixed-depth"
        lines += [
            f"  - id: {cast['id']}",
            f"    file: {known['file']}",
            f"    sha256: {sha256}",
            f"    station: {cast['place']}",
            f"    platform: {'jetty' if jetty else 'launch'}",
            f"    instrument: {'hung-probe' if jetty else 'hand-probe'}",
            *([f"    notes: {cast['remark']}"] if cast["remark"] else []),
        ]
    return HEAD + "\n".join(lines) + "\n"


READ_ME = """\
# The demo survey

**Everything here is invented**: the Ostrel Estuary, its places, its field station, its people and its probes. The
positions lie in an empty patch of open sea and name no real survey. The numbers were simulated from stated physics
by `tools/make_demo_survey.py`; nobody edits the files by hand. What is true of each cast (segments, offset, deepest
row, layer means of the true water) stands in `test-data/demo-truth`. No licence is needed: CC0.

`survey.yaml` is the complete survey sheet. The records come in four layouts whose wording and order are our own.

| record | file | place | what happened |
| --- | --- | --- | --- |
"""

LAYOUT = """
| ending | layout |
| --- | --- |
| `.csv` | commas, decimal point, units in the column names, UTF-8, LF, UTC |
| `.txt` | semicolons, decimal comma, units on a line of their own, Latin-1, CRLF, local clock UTC+02:00 |
| `.tsv` | tabs, decimal point, S/m, every row with its moment in UTC |
| `.dat` | columns padded with blanks, start with its offset from UTC |

Rows come four times a second (the series: once). Every record starts about 5 s in air. One record,
OE25-10, is damaged on purpose: its battery failed and the file ends inside a row.
"""


def what(cast, known):
    if known["kind"] == "fixed-depth":
        return f"series at {cast['depth']:g} m, {cast['remark']}"
    plan = cast["plan"]
    parts = ["soaked" if plan["soak"] else "no soak"]
    if plan["waves"][0] >= 0.5:
        parts.append("waves lift the probe")
    if not cast["end_fix"]:
        parts.append("no end fix")
    if known["max_sea_pressure_dbar"] > cast["rated"]:
        parts.append("deeper than the rated pressure")
    if cast["spikes"]:
        parts.append("spikes")
    if cast["cut"]:
        parts.append("cut off inside a row")
    if cast["satellites"][0] <= 3:
        parts.append("weak start fix")
    return ", ".join(parts) + (f"; {cast['remark']}" if cast["remark"] else "")


def readme(listed):
    rows = [f"| {cast['id']} | `{known['file']}` | {cast['place']} | {what(cast, known)} |" for cast, known, _ in listed]
    return READ_ME + "\n".join(rows) + "\n" + LAYOUT
