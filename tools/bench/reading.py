"""The pandas side of reading.ts: reads the numeric text named with the C engine of pandas, once for each line of input,
and answers with a line of JSON: seconds of the clock and of the processor, rows and the sum of each column."""

import json
import sys
import time

import pandas as pd

path, header_lines = sys.argv[1], int(sys.argv[2])

print(json.dumps({"version": pd.__version__}), flush=True)
for _ in sys.stdin:
    clock, processor = time.perf_counter(), time.process_time()
    table = pd.read_csv(path, skiprows=header_lines, engine="c")
    processor, clock = time.process_time() - processor, time.perf_counter() - clock
    answer = {"clock": clock, "processor": processor, "rows": len(table), "sums": table.sum().tolist()}
    print(json.dumps(answer), flush=True)
