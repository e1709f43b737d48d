"""Instants and local days: UTC inside, the place's own clock at the edge.

Arrays of instants are `datetime64[ms]` in UTC; single instants are aware `datetime`s.
A naive `datetime` is refused everywhere.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta, tzinfo
from typing import Final
from zoneinfo import ZoneInfo

import numpy as np
from numpy.typing import NDArray

Instants = NDArray[np.datetime64]

MS_PER_MINUTE: Final = 60_000
MS_PER_HOUR: Final = 3_600_000
MS_PER_DAY: Final = 86_400_000
YEAR_D: Final = 365.2425  # the mean year of the calendar
LUNATION_D: Final = 29.530589  # the mean synodic month (Meeus, Astronomical Algorithms, chapter 49)


def require_aware(instant: datetime) -> datetime:
    """Return the instant in UTC; ValueError when it carries no offset."""
    if instant.tzinfo is None or instant.utcoffset() is None:
        raise ValueError(f"{instant.isoformat()} has no UTC offset; give one, such as +00:00")
    return instant.astimezone(UTC)


def to_utc64(instant: datetime) -> np.datetime64:
    """Return an aware instant as `datetime64[ms]` in UTC."""
    return np.datetime64(require_aware(instant).replace(tzinfo=None), "ms")


def from_utc64(instant: np.datetime64) -> datetime:
    """Return a UTC `datetime64` as an aware `datetime`."""
    naive: datetime = instant.astype("datetime64[us]").astype(datetime)
    return naive.replace(tzinfo=UTC)


def minutes64(minutes: float) -> np.timedelta64:
    """Return minutes, whole or not, as `timedelta64[ms]`."""
    return np.timedelta64(round(minutes * MS_PER_MINUTE), "ms")


def local_midnight(day: date, zone: ZoneInfo) -> datetime:
    """Return, in UTC, the instant at which the local day begins.

    On the rare day whose midnight does not exist (clocks put forward at 00:00) this is
    the first instant that carries the day's date.
    """
    naive = datetime.combine(day, time())
    return naive.replace(tzinfo=zone, fold=0).astimezone(UTC)


def day_edges(first: date, last: date, zone: ZoneInfo) -> Instants:
    """Return the UTC instants at which the local days first..last begin, and the last ends.

    Shape (n + 1,), `datetime64[ms]`; neighbouring edges are 23, 24 or 25 hours apart.
    """
    count = (last - first).days + 2
    days = [first + timedelta(days=i) for i in range(count)]
    return np.array([to_utc64(local_midnight(day, zone)) for day in days], dtype="datetime64[ms]")


def days_between(first: date, last: date) -> list[date]:
    """Return every date from first to last, both included; empty when last precedes first."""
    return [first + timedelta(days=i) for i in range((last - first).days + 1)]


def parse_instant(text: str, zone: tzinfo) -> datetime:
    """Return an ISO 8601 instant in UTC; without an offset it is local time in the zone.

    A bare date is its local midnight. A local time that the clocks skip is read as the
    offset before the change; one that happens twice is its first occurrence. ValueError
    when the text is not an instant.
    """
    instant = datetime.fromisoformat(text)
    if instant.tzinfo is None:
        instant = instant.replace(tzinfo=zone, fold=0)
    return instant.astimezone(UTC)
