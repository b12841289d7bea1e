"""Runs a program and answers with a line of JSON: seconds of the clock and of the processor from its start to its exit,
its largest memory in MB, its exit status."""

import json
import resource
import subprocess
import sys
import time

started = time.perf_counter()
done = subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True)
seconds = time.perf_counter() - started
used = resource.getrusage(resource.RUSAGE_CHILDREN)
if done.returncode > 1:
    sys.exit(f"{sys.argv[1:]} ended with status {done.returncode}:\n{done.stderr[-2000:]}")
answer = {"clock": seconds, "processor": used.ru_utime + used.ru_stime, "megabytes": used.ru_maxrss / 1024}
print(json.dumps(answer))
