"""The figures of the page on sun and moon, worked out as the tests do; run it to write the page.

python tests/sky/sky_figures.py
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from functools import cache
from itertools import pairwise
from pathlib import Path

import numpy as np
from almanac_reference import EVENTS, PLACES, SPANS, ephem_event, phase_differences_s, place

from planner.clock import day_edges
from planner.sky import phases, sky_days

PAGE = Path(__file__).parents[2] / "docs" / "accuracy-sky.md"
LIMIT_S = 60
_EDGES = ((1899, 9), (1972, 1), (2026, 12), (2053, 10))
_EVERY = 11  # phases: one in eleven, so that each kind comes in turn
_NAMES = {
    "sunrise": "sunrise",
    "sunset": "sunset",
    "civil_dawn": "start of civil twilight",
    "civil_dusk": "end of civil twilight",
    "moonrise": "moonrise",
    "moonset": "moonset",
}


def event_differences_s(event: str, first: date, count: int) -> list[float]:
    """Return how far an event is from ephem's at every place and day of a span, in seconds."""
    kind, body, horizon, centre = EVENTS[event]
    last = first + timedelta(days=count - 1)
    apart = []
    for where in PLACES:
        site = place(*where)
        ours = getattr(sky_days(site, first, last), event)
        starts = day_edges(first, last, site.zone)[:-1]
        for mine, start in zip(ours, starts, strict=True):
            if np.isnat(mine):
                continue
            expected = ephem_event(site, kind, body(), start, horizon, centre)
            assert expected is not None
            apart.append(abs(int((mine - expected) / np.timedelta64(1, "ms"))) / 1000)
    return apart


def phases_apart_s(first: datetime, last: datetime) -> list[float]:
    """Return how far one in eleven of the phases of a span is from ephem's, in seconds."""
    return list(phase_differences_s(phases(first, last), _EVERY))


@cache
def figures() -> dict[str, list[list[float]]]:
    """Return the differences by what they are of, in seconds: for each of the three times."""
    found = {
        _NAMES[event]: [event_differences_s(event, *span) for span in sorted(SPANS)]
        for event in EVENTS
    }
    edges = [datetime(year, month, 2, tzinfo=UTC) for year, month in _EDGES]
    found["phases of the moon"] = [phases_apart_s(*each) for each in pairwise(edges)]
    return found


def page() -> str:
    """Return the page."""
    rows = []
    for name, times in figures().items():
        largest = " | ".join(f"{max(apart):.1f}" for apart in times)
        rows.append(f"| {name} | {sum(map(len, times))} | {largest} | {LIMIT_S} |")
    return _TEXT.format(rows="\n".join(rows), places=len(PLACES))


_TEXT = """# How right are sun and moon?

Every figure here is worked out by the tests, and written by
`python tests/sky/sky_figures.py`; a test fails when the page and the figures part.

Positions come from the ephemeris DE421 of JPL by way of Skyfield. They are held against an
independent library, ephem, which computes them from series of its own, in the almanac's
convention: upper limb, 34 minutes of arc of refraction at the horizon; twilight at 6 degrees.
The {places} places run from the equator to 64 degrees north and 55 south and on both sides of
the date line; the days are of March 2026, June 1903 and December 2049; the phases are one in
eleven of those before 1972, from then to 2026, and after, to 2053.

| largest difference, seconds | compared | June 1903 | March 2026 | December 2049 | asked for |
|---|---:|---:|---:|---:|---:|
{rows}

## What is known to differ

- Real refraction changes with the air: near the horizon by a minute or more, and by far more
  over cold water. Hills and trees make their own sunrise.
- Near the poles the sun grazes the horizon, and minutes mean little. There the height of its
  limb at each crossing is within 0.02 degrees of nil.
- Before 1972 there were no leap seconds. UTC is counted back here with the ten of that year, which
  puts times of 1903 some 40 s off the clock of then. Ahead of now both libraries guess how the
  earth's turning will slow.
- Dates outside 1899 to 2053 are refused, with the range that works.
"""


if __name__ == "__main__":
    PAGE.write_text(page(), encoding="utf-8")
