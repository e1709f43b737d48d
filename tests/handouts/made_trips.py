"""Hand-made plans at the demo place for the tests of the handouts."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from planner.estimates import Interval
from planner.trips import Plan


def made_plan(set_at: datetime, soak_h: float = 42.5, **values: object) -> Plan:
    """Return a plan that sets then and hauls after the soak."""
    usual: dict[str, object] = {
        "rank": 1,
        "set_at": set_at,
        "latest_set_at": set_at + timedelta(hours=1),
        "haul_at": set_at + timedelta(hours=soak_h),
        "soak_h": soak_h,
        "full_keepers": Interval(14.0, 9.0, 20.0),
        "light_share": Interval(0.12, 0.05, 0.25),
        "lowest_cover_m": 0.8,
        "lowest_cover_spot": "ramp flat",
        "lowest_cover_at": set_at + timedelta(hours=12),
        "reasons": ("About 14 full keepers.",),
        "warnings": ("Little daylight left after the haul.",),
    }
    return Plan(**{**usual, **values})  # type: ignore[arg-type]


NOVEMBER = datetime(2026, 11, 27, 19, 0, tzinfo=UTC)
# The clocks at the demo place go back in the night to 1 November 2026.
CLOCKS_BACK = datetime(2026, 10, 31, 20, 0, tzinfo=UTC)
# And on in the night to 8 March.
CLOCKS_ON = datetime(2026, 3, 7, 14, 0, tzinfo=UTC)
