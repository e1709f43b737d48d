"""Hauls as hypothesis draws them: every possible one, awkward text included."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from hypothesis import strategies as st

from planner.logbook.columns import COLUMNS
from planner.logbook.entries import Haul

_FORMULAS = st.sampled_from(
    ["=1+1", "+x", "-x", "@a", "'=a", "''=a", " =a", "'", "\t=", "＝a", "5"]
)
_ANY_TEXT = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=8)
_TEXTS = st.one_of(_ANY_TEXT, _FORMULAS)
_LABELS = _TEXTS.map(str.strip)
_NAMES = _LABELS.filter(bool)
_COUNTS = st.none() | st.integers(0, 9999)
_TIMES = st.none() | st.datetimes(
    datetime(1990, 1, 2),  # noqa: DTZ001 - hypothesis wants them naive
    datetime(2050, 1, 1),  # noqa: DTZ001
    timezones=st.just(UTC),
)


def _measures(low: float, high: float) -> st.SearchStrategy[float | None]:
    return st.none() | st.floats(low, high)


@st.composite
def hauls(draw: st.DrawFn) -> Haul:
    """Draw a haul that keeps every rule."""
    set_at, females, judged = draw(_TIMES), draw(_COUNTS), draw(_COUNTS)
    soak = timedelta(microseconds=draw(st.integers(1, 10**12)))
    hauled_at = draw(_TIMES) if set_at is None else draw(st.none() | st.just(set_at + soak))
    unknown = _NAMES.filter(lambda name: name.casefold() not in COLUMNS)
    return Haul(
        trip=draw(_NAMES),
        place=draw(st.sampled_from(["Sedge Hollow", "Otter Bight", "=place"])),
        spot=draw(_LABELS),
        trap=draw(_LABELS),
        design=draw(_LABELS),
        bait=draw(_LABELS),
        set_at=set_at,
        hauled_at=hauled_at,
        depth_m=draw(_measures(0, 300)),
        keepers=draw(_COUNTS),
        shorts=draw(_COUNTS),
        females=females,
        sponge=draw(st.none() | st.integers(0, 9999 if females is None else females)),
        other=draw(_TEXTS),
        judged=judged,
        light=None if judged is None else draw(st.none() | st.integers(0, judged)),
        water_c=draw(_measures(-3, 45)),
        notes=draw(_TEXTS),
        extra=draw(st.dictionaries(unknown, _TEXTS, max_size=2)),
    )
