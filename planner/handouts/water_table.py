"""The water over a soak as a table that any spreadsheet opens (CSV)."""

from __future__ import annotations

import csv
import io
from datetime import timedelta
from typing import Final

from planner.clock import from_utc64
from planner.handouts.facts import haul_end
from planner.logbook.columns import guard_formula
from planner.phrasing import Style
from planner.sites import Site
from planner.tides import Tide
from planner.trips.plan import Plan
from planner.units import metres_to
from planner.words import say

STEP: Final = timedelta(minutes=10)


def water_csv(site: Site, plan: Plan, style: Style) -> str:
    """Return the water every ten minutes from set to the end of the haul, as CSV.

    Columns: the instant in UTC and on the place's clock with its offset, the level above the
    datum, and for each spot the water over the top of a trap, in metres or feet. Cells that
    begin like a formula get an apostrophe. RangeError where the water cannot be computed.
    """
    unit = style.length
    tops = [(spot.name, spot.trap_top_m) for spot in site.spots]
    buffer = io.StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")  # as RFC 4180 has it
    writer.writerow(
        [
            "time_utc",
            "time_local",
            guard_formula(f"level_above_{site.water.datum}_{unit}"),
            *(
                guard_formula(say("{name}: over the trap, {unit}", name=name, unit=unit))
                for name, _ in tops
            ),
        ]
    )
    times, levels = Tide(site).series(plan.set_at, haul_end(site, plan) + STEP / 2, STEP)
    for time, level in zip(times, levels, strict=True):
        instant = from_utc64(time)
        heights = [float(level), *(float(level) - top_m for _, top_m in tops)]
        writer.writerow(
            [
                instant.strftime("%Y-%m-%dT%H:%M:%SZ"),
                instant.astimezone(site.zone).isoformat(timespec="seconds"),
                *(f"{metres_to(height, unit):.2f}" for height in heights),
            ]
        )
    return buffer.getvalue()
