"""Times `carryover patient record` of files of several lengths, each in a new data folder, and prints a line for each.

Usage: record.py BINARY [LINES ...]
"""

import json
import os
import subprocess
import sys
import tempfile
import time
from datetime import datetime, timedelta, timezone

BEGIN = datetime(2026, 11, 25, 9, 0, tzinfo=timezone(timedelta(hours=1)))


def lines(count):
    """Sessions, ratings and balance trials, a minute apart, as in the example."""
    for n in range(count):
        at = (BEGIN + timedelta(minutes=n)).isoformat()
        match n % 4:
            case 0:
                yield {"do": "run", "at": at, "item": 1, "held": [10, 10, 6.5]}
            case 1:
                yield {"do": "hurt", "at": at, "item": 1, "score": n % 3}
            case 2:
                trial = {"leg": "left", "seconds": 11.2, "end": "touch"}
                yield {"do": "run", "at": at, "item": 2, "trials": [trial, trial, trial]}
            case _:
                yield {"do": "pain", "at": at, "complaint": 1, "score": n % 5}


def timed(binary, count):
    with tempfile.TemporaryDirectory() as place:
        around = dict(os.environ, HOME=place, XDG_STATE_HOME=place, TZ="Europe/Vienna")

        def run(*arguments):
            begun = time.perf_counter()
            done = subprocess.run([binary, *arguments], cwd=place, env=around, capture_output=True, text=True, check=True)
            return time.perf_counter() - begun, done.stdout

        def write(name, text):
            with open(os.path.join(place, name), "w", encoding="utf-8") as file:
                file.write(text)

        issued, clinic = "2026-11-25T08:30:00+01:00", ["clinic", "--passphrase-file", "pw"]
        write("pw", "seven grey herons wade\n")
        write("plan.toml", run("--at", issued, "example", "plan")[1])
        run("--home", "clinic", *clinic, "start")
        run("--home", "clinic", *clinic, "add", "K17")
        run("--home", "clinic", "--at", issued, *clinic, "issue", "K17", "plan.toml", "--out", "card")
        run("--home", "patient", "--at", issued, "patient", "accept", "card/card.bin")
        write("lines.jsonl", "".join(json.dumps(line) + "\n" for line in lines(count)))
        return run("--home", "patient", "--at", "2026-12-20T08:00:00+01:00", "patient", "record", "lines.jsonl")[0]


for count in [int(word) for word in sys.argv[2:]] or [2_000, 8_000, 20_000]:
    print(f"recording {count:6} lines: {timed(os.path.abspath(sys.argv[1]), count):6.2f} s", flush=True)
