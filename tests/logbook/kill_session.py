"""A busy entry session that is killed at random moments; run by test_power_cuts.

Forks a child that enters cell after cell and tells each before and after it is saved; kills it;
opens the log again and compares it with what must be there. Writes how it went as JSON.
"""

from __future__ import annotations

import json
import os
import random
import signal
import sys
import time
from dataclasses import replace
from pathlib import Path

from planner.logbook import Crab, Haul, Log, Logbook

TRIP, PLACE = "14 Aug", "Sedge Hollow"
START = tuple(Haul(TRIP, PLACE, trap=f"A{n}", notes="n" * 150) for n in range(12))
CELLS = ("keepers", "shorts", "females", "judged")
LONGEST_S = 0.03
DELETED_AT = 31  # every so many steps the trip is deleted, and then taken out of the bin


def state(step: int) -> tuple[Haul, ...]:
    """Return the rows after so many steps; none while the trip is in the bin."""
    rows = list(START)
    for number in range(step + 1):
        rows = _after(rows, number)
    return () if step % DELETED_AT == DELETED_AT - 2 else tuple(rows)


def _after(rows: list[Haul], number: int) -> list[Haul]:
    if number % DELETED_AT >= DELETED_AT - 2:
        return rows
    at, cell = number % len(rows), CELLS[number // 5 % len(CELLS)]
    made = replace(rows[at], **{cell: number % 40})
    if number % 23 == 0:
        made = replace(made, crabs=(*made.crabs[-3:], Crab("male", 100.0 + number % 90)))
    return [*rows[:at], made, *rows[at + 1 :]]


def enter(path: Path, step: int, tell: int) -> None:
    """Go on with the session from a step until killed."""
    book = Logbook.open(path)
    rows = list(START)
    for number in range(step):
        rows = _after(rows, number)
    while True:
        rows = _after(rows, step)
        match step % DELETED_AT - DELETED_AT:
            case -2:
                book.delete_trip(TRIP)
            case -1:
                book.take_out_of_bin(book.binned()[0].number)
            case _:
                book.save_trip(TRIP, rows)
        os.write(tell, b"%d\n" % step)
        step += 1


def killed(path: Path, step: int, saves: int, after_s: float) -> int:
    """Return the last step that the session had told when it was killed.

    saves: how many it is let make first, so that a slow machine gets as far as a quick one;
    after_s: from then, which ends it in the middle of something.
    """
    hears, tells = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(hears)
        enter(path, step, tells)
    os.close(tells)
    with os.fdopen(hears, "rb") as told:
        lines = [told.readline() for _ in range(saves)]
        time.sleep(after_s)
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        lines += told.readlines()
    return int(lines[-1]) if lines else step - 1


def same(log: Log, step: int) -> bool:
    """Tell whether the log holds what it must after a step, in order and to the last crab."""
    return log.hauls == state(step)


def main(path: Path, times: int, seed: int) -> None:
    rng = random.Random(seed)
    with Logbook.open(path) as book:
        book.save_trip(TRIP, START)
    step, within = 0, 0
    journal = path.with_name(f"{path.name}-journal")
    for _ in range(times):
        last = killed(path, step, rng.randrange(6), rng.uniform(0, LONGEST_S))
        within += journal.exists() and journal.stat().st_size > 0
        with Logbook.open(path) as book:
            log = book.read()
            found = [n for n in (last, last + 1) if n >= 0 and same(log, n)]
            if not found and not (last < 0 and log.hauls == START):
                sys.stdout.write(json.dumps({"wrong_after": last, "log": repr(log)}))
                return
        step = found[-1] + 1 if found else 0
    sys.stdout.write(json.dumps({"kills": times, "steps": step, "within": within}))


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
