"""Saves into a log whose disk is full at some size; run by test_power_cuts in its own process.

Writes, for every size, whether the save was refused and whether the log is whole, as JSON.
"""

from __future__ import annotations

import json
import resource
import sys
from pathlib import Path

from planner.logbook import Haul, Logbook, LogbookError

ROWS = [Haul("14 Aug", "x", trap=f"A{n}", notes="n" * 400) for n in range(30)]
MORE = [*ROWS, *(Haul("14 Aug", "x", trap=f"B{n}", notes="m" * 400) for n in range(30))]


def main(path: Path) -> None:
    told = []
    with Logbook.open(path) as book:
        book.save_trip("14 Aug", ROWS)
        whole = book.read()
        size = path.stat().st_size
        for limit in range(0, size + 30 * 4096, 2048):
            resource.setrlimit(resource.RLIMIT_FSIZE, (limit, resource.RLIM_INFINITY))
            try:
                book.save_trip("14 Aug", MORE)
                refused = ""
            except LogbookError as error:
                refused = str(error)
            resource.setrlimit(
                resource.RLIMIT_FSIZE, (resource.RLIM_INFINITY, resource.RLIM_INFINITY)
            )
            held = book.read().fingerprint == whole.fingerprint
            told.append((limit, refused, held))
            if not refused:
                book.undo()
        book.save_trip("14 Aug", MORE)
    with Logbook.open(path) as book:
        sys.stdout.write(json.dumps({"told": told, "after": len(book.read().hauls)}))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
