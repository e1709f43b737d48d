"""What the water does in order of time: turns, the ramp's hours, slack by the user's own lags."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from tide_reference import constants, place, utc

from planner.sites.site import SlackLags
from planner.tides import Tide
from planner.tides.events import Kind, events, kind_text, lags_text

BOSTON = place(constants("8443970"), 1.588)
SPAN = (utc("2026-05-01"), utc("2026-05-08"))
MS = np.timedelta64(1, "ms")


def test_all_events_stand_in_order_of_time_each_with_what_it_is() -> None:
    """The ramp works from each rise through its level to the fall; slack keeps its lag."""
    site = replace(BOSTON, lowest_ramp_level_m=0.6, slack=SlackLags(40.0, -25.0))
    tide = Tide(site)
    found = events(tide, *SPAN)
    assert (found.times[1:] >= found.times[:-1]).all()
    ramp = found.kinds[(found.kinds == Kind.RAMP_BEGINS) | (found.kinds == Kind.RAMP_ENDS)]
    assert len(ramp) > 20
    assert (ramp[1:] != ramp[:-1]).all()
    for kind, above in ((Kind.RAMP_BEGINS, True), (Kind.RAMP_ENDS, False)):
        at = found.times[found.kinds == kind]
        assert ((tide.heights(at) >= 0.6) == above).all()
        assert ((tide.heights(at - MS) >= 0.6) != above).all()
        assert (found.heights[found.kinds == kind] == 0.6).all()
    turns = tide.turns(*SPAN)
    after_high = found.times[found.kinds == Kind.SLACK_ESTIMATED_HIGH]
    highs = turns.times[turns.is_high] + np.timedelta64(40, "m")
    assert set(highs[highs < SPAN[1]]) <= set(after_high)
    before_low = found.times[found.kinds == Kind.SLACK_ESTIMATED_LOW]
    lows = turns.times[~turns.is_high] - np.timedelta64(25, "m")
    assert set(lows[lows >= SPAN[0]]) <= set(before_low)
    assert np.isnan(found.heights[found.kinds >= Kind.SLACK_ESTIMATED_HIGH]).all()


def test_what_is_not_wanted_is_left_out_and_the_turns_stay() -> None:
    """Asked for without, or taken out afterwards, is the same."""
    tide = Tide(replace(BOSTON, lowest_ramp_level_m=0.6, slack=SlackLags(40.0, None)))
    whole = events(tide, *SPAN)
    for ramp in (False, True):
        for slack in (False, True):
            asked, kept = (
                events(tide, *SPAN, ramp=ramp, slack=slack),
                whole.only(ramp=ramp, slack=slack),
            )
            assert (asked.times == kept.times).all()
            assert (asked.kinds == kept.kinds).all()
            assert (Kind.RAMP_ENDS in kept.kinds) == ramp
            assert (Kind.SLACK_ESTIMATED_HIGH in kept.kinds) == slack
            assert Kind.SLACK_ESTIMATED_LOW not in kept.kinds  # no lag, no slack
    assert (whole.only(ramp=False, slack=False).times == tide.turns(*SPAN).times).all()


@pytest.mark.parametrize("level_m", [-9.0, 9.0])
def test_a_ramp_that_always_or_never_works_has_no_events(level_m: float) -> None:
    """Nor has a place that says nothing of ramp and slack."""
    found = events(Tide(replace(BOSTON, lowest_ramp_level_m=level_m)), *SPAN)
    plain = events(Tide(BOSTON), *SPAN)
    assert (found.times == plain.times).all()
    assert set(found.kinds) == set(plain.kinds) == {Kind.HIGH, Kind.LOW}


def test_a_crossing_between_two_spans_is_in_one_of_them() -> None:
    """Spans are half open: at the start it belongs to the span, at the stop to the next."""
    tide = Tide(BOSTON)
    at = tide.crossings(0.6, *SPAN).times[3]
    assert at not in tide.crossings(0.6, SPAN[0], at).times
    assert tide.crossings(0.6, at, SPAN[1]).times[0] == at


@pytest.mark.parametrize(
    ("minutes", "words"),
    [
        (40.0, "slack (estimated) after high water"),
        (-40.0, "slack (estimated) before high water"),
        (0.2, "slack (estimated) at high water"),
    ],
)
def test_slack_says_that_it_is_estimated_and_from_which_turn(minutes: float, words: str) -> None:
    """A negative lag is before the turn, and never called after it."""
    lags = SlackLags(minutes, 10.0)
    assert kind_text(Kind.SLACK_ESTIMATED_HIGH, lags) == words
    assert kind_text(Kind.SLACK_ESTIMATED_LOW, lags) == "slack (estimated) after low water"


def test_lags_in_words_with_their_caution() -> None:
    """Only what was entered, and always that nobody predicts the current."""
    both = lags_text(SlackLags(40.0, -15.0))
    assert both.startswith("about 40 min after high water and about 15 min before low water: your")
    assert "currents are not predicted" in both
    assert lags_text(SlackLags(None, 0.0)).startswith("at low water:")
