"""Whatever is typed as an instant, date or step is read or refused, never a crash."""

from __future__ import annotations

from argparse import ArgumentTypeError
from contextlib import suppress
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.cli.errors import UsageError
from planner.cli.spans import day, day_span, instant_span, instant_text, step

ZONES = st.sampled_from(["America/New_York", "Pacific/Kiritimati", "Asia/Kolkata", "UTC"])
TYPED = st.one_of(
    st.text(max_size=30),
    st.from_regex(r"[0-9]{1,4}-[0-9]{1,2}-[0-9]{1,2}(T[0-9:.]{0,8}(Z|[+-][0-9:]{1,5})?)?"),
    st.from_regex(r"[0-9]{1,6}(\.[0-9]{1,3})? ?(s|sec|m|min|h|hours|d|days|w)"),
)


@given(TYPED)
def test_words_are_read_or_refused(text):
    """Protects the promise of status 2 with a message for every slip of the fingers."""
    for read in (instant_text, day, step):
        with suppress(ArgumentTypeError):
            read(text)


@given(st.datetimes(), st.datetimes(), ZONES)
def test_spans_are_in_order(begin, end, zone):
    """A span that is accepted starts before it stops, on the place's clock."""
    words = [begin.isoformat(), end.isoformat()]
    with suppress(ArgumentTypeError, UsageError):
        start, stop = map(instant_text, words)
        span = instant_span(start, stop, ZoneInfo(zone), 14)
        assert span.start <= span.stop
    with suppress(UsageError):
        days = day_span(begin.date(), end.date(), ZoneInfo(zone), 14)
        assert days.first <= days.last


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("6m", 6),
        ("15min", 15),
        ("1h", 60),
        ("1.5 h", 90),
        ("90s", 1.5),
        ("60.0004s", 1),
        ("1d", 1440),
        ("2 days", 2880),
    ],
)
def test_steps(text, minutes):
    """The spellings people use."""
    assert step(text) == timedelta(minutes=minutes)


def test_left_out_ends():
    """Without --to the span has its usual length, counted on the place's clock."""
    zone = ZoneInfo("America/New_York")
    days = day_span(date(2026, 3, 1), None, zone, 14)
    assert days.last == date(2026, 3, 15)
    span = instant_span("2026-03-01", None, zone, 14)
    # Clocks go forward on 8 March 2026: fourteen local days are an hour short.
    assert span.stop - span.start == timedelta(days=14, hours=-1)
    assert datetime.now(zone).date() == day_span(None, None, zone, 0).first
