"""Closures, free days and free hours by hand, and outings at midnight where the night is light."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from made_waters import MadeTide, made_site

from planner.clock import Instants, to_utc64
from planner.estimates import Floats
from planner.sites.site import Closure, FreeTime, Habits
from planner.trips.allowed import free_stretches, why_closed, why_not_free
from planner.trips.candidates import Candidates, find_candidates, low_waters

NEW_YORK, OSLO = ZoneInfo("America/New_York"), ZoneInfo("Europe/Oslo")


def test_a_day_closed_every_year_is_that_day_alone() -> None:
    """A period that begins and ends on one day is not the whole year, as one over New Year is."""
    fourth = Closure("holiday", date(2020, 7, 4), date(2020, 7, 4), every_year=True)
    days = [date(2026, 1, 1) + timedelta(days=at) for at in range(365)]
    assert [day for day in days if why_closed([fourth], day)] == [date(2026, 7, 4)]
    assert why_closed([fourth], date(2026, 7, 4)) == "holiday"
    assert why_closed([Closure("", date(2026, 7, 4), date(2026, 7, 4))], date(2026, 7, 4))


def test_a_day_that_is_never_free_is_not_whatever_else_is_said() -> None:
    """Days marked one by one go before days of the week, and "not free" before "free as well"."""
    monday, tuesday, wednesday = (date(2026, 6, day) for day in (1, 2, 3))
    free = FreeTime(
        weekdays=frozenset({0}), also=frozenset({tuesday, monday}), never=frozenset({monday})
    )
    assert why_not_free(free, monday) == "marked as not free"
    assert why_not_free(free, tuesday) == ""
    assert why_not_free(free, wednesday) == "Wednesdays are not free"


@pytest.mark.parametrize(
    ("day", "clock", "begin_utc", "end_utc"),
    [
        # 1:30 twice: from the second to the first, so an hour shorter at either end
        (date(2026, 11, 1), time(1, 30), "2026-11-01T06:30", "2026-11-01T05:31"),
        # 2:30 never: as if it were 3:30 at the begin and 1:30 at the end
        (date(2026, 3, 8), time(2, 30), "2026-03-08T07:30", "2026-03-08T06:31"),
        (date(2026, 6, 1), time(2, 30), "2026-06-01T06:30", "2026-06-01T06:31"),
    ],
)
def test_free_hours_on_a_night_the_clocks_change(
    day: date, clock: time, begin_utc: str, end_utc: str
) -> None:
    """What the clock shows twice or never is not free at that end; the last minute is free."""
    free = FreeTime(earliest=clock, latest=time(23, 59))
    assert free_stretches(free, day, day, NEW_YORK)[0] == np.datetime64(begin_utc)
    free = FreeTime(earliest=time(0), latest=clock)
    assert free_stretches(free, day, day, NEW_YORK)[1] == np.datetime64(end_utc)


def midsummer(*, closures: tuple[Closure, ...] = (), **free: object) -> Candidates:
    """Return the pairs of 20 to 23 June at 70 degrees north: an hour for bait, set and haul."""
    site = made_site(
        "Europe/Oslo",
        69.65,
        18.96,
        closures=closures,
        free=FreeTime(earliest=time(0), latest=time(23, 59), **free),  # type: ignore[arg-type]
        habits=Habits(min_soak_h=2.0, bait_minutes=60.0, set_minutes=60.0, haul_minutes=60.0),
    )
    return find_candidates(site, date(2026, 6, 20), date(2026, 6, 23), tide=MadeTide())  # type: ignore[arg-type]


def in_oslo(day: int, hour: int) -> np.datetime64:
    return to_utc64(datetime(2026, 6, day, hour, tzinfo=OSLO))


class SteppedTide(MadeTide):
    """A tide that drops by 30 cm at New Year, as heights by yearly node factors can a little."""

    def heights(self, times: Instants) -> Floats:
        return super().heights(times) - 0.3 * (times >= np.datetime64("2027-01-01"))


def test_the_step_of_the_tide_at_new_year_is_among_the_low_waters() -> None:
    """Rising water is lowest right after a step down, where there is no turn: traps may lie bare.

    Against the level minute by minute in windows of five hours: none goes below its ends and the
    low waters in it by more than the parabola that finds those is off.
    """
    tide = SteppedTide(lags=(3.0, 1.1, 4.0))
    edges = np.array(["2026-12-31", "2027-01-02"], dtype="datetime64[ms]")
    times, heights = low_waters(tide, tide.turns(edges[0], edges[1]), edges)
    assert (np.diff(times) > np.timedelta64(0, "ms")).all()
    for start in np.arange(edges[0], edges[1] - np.timedelta64(5, "h"), np.timedelta64(1, "h")):
        minutes = start + np.arange(5 * 60 + 1) * np.timedelta64(1, "m")
        levels = tide.heights(minutes)
        lows = heights[(minutes[0] <= times) & (times <= minutes[-1])]
        assert levels.min() >= min(levels[0], levels[-1], *lows) - 1e-3


def test_a_set_at_midnight_has_its_bait_from_the_evening_before() -> None:
    """Free days that touch are one stretch, also with the day before the first."""
    every = midsummer()
    sets = every.times[every.may_set]
    assert sets[0] == in_oslo(20, 0)
    assert (np.diff(sets) == np.timedelta64(15, "m")).all()  # over midnight, too
    bound = midsummer(never=frozenset({date(2026, 6, 19)}))
    assert bound.times[bound.may_set][0] == in_oslo(20, 1)


def test_traps_may_be_out_at_the_stroke_that_closes_and_in_at_that_which_opens() -> None:
    """Closed on 22 June: the last haul ends at its midnight, the next set begins at the other."""
    found = midsummer(closures=(Closure("shut", date(2026, 6, 22), date(2026, 6, 22)),))
    sets = found.times[found.may_set]
    before, after = sets[sets < in_oslo(22, 0)], sets[sets >= in_oslo(22, 0)]
    assert after[0] == in_oslo(23, 0)
    of_before = found.last_haul[np.searchsorted(found.times, before)]
    assert found.times[of_before].max() == in_oslo(21, 23)
