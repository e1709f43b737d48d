"""How long light crabs take to fill: the sentence a trapper needs after a light trip."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.estimates import Floats, Interval, interval_of_draws
from planner.logbook import Log
from planner.logbook.entries import LIGHT_TRIP_SHARE
from planner.molt.curves import PosteriorDraws
from planner.molt.learning import learn
from planner.molt.year import day_of_year
from planner.phrasing import Style, day_text, one_in, temperature_text
from planner.sites.site import Site
from planner.words import say

# A crab at nine tenths of full passes for full; judgement.
_FULL: Final = 0.9
_LONGEST_D: Final = 365


@dataclass(frozen=True)
class Filling:
    """Days that crabs caught light on a day take to fill, with the 80% interval.

    days: at most 365, which stands for never in the water to come. until: the local day by
    which they should be full. water_c: expected on the first day, NaN where unknown.
    """

    days: Interval
    until: date
    water_c: float

    def sentence(self, style: Style) -> str:
        """Return it in words."""
        if self.days.high >= _LONGEST_D and self.days.mean > _LONGEST_D / 2:
            return say("In water as cold as here light crabs take half a year or more to fill.")
        low, mean, high = (_rounded(each) for each in _ends(self.days))
        water = ""
        if not math.isnan(self.water_c):
            water = say("At {temperature} ", temperature=temperature_text(self.water_c, style))
        return say(
            "{value}light crabs fill in about {mean} days ({low} to {high}): from {day} it "
            "matters little.",
            value=water or say("In this water "),
            mean=mean,
            low=low,
            high=high,
            day=day_text(self.until),
        )


def days_to_fill(site: Site, day: date, log: Log | None = None, seed: int = 0) -> Filling:
    """Return how long crabs caught light on a local day take to fill in the water to come.

    From the mean emptiness of the crabs that a trap catches and a picker calls light, to nine
    tenths of full, by the usual water and what the last reading says of it.
    """
    learned = learn(site, log)
    draws = PosteriorDraws(learned, seed)
    chosen = learned.year.parameters
    which = draws.which
    refill_d, refused_d = chosen.refill_d[which], chosen.refused_d[which]
    just_caught = (1 - chosen.f0[which]) * np.exp(-refused_d / refill_d)
    no_more_light = 1 - chosen.light_below[which]
    emptiness = _mean_of_decay(np.maximum(just_caught, no_more_light), no_more_light)
    wanted = refill_d * np.log(np.maximum(emptiness / (1 - _FULL), 1.0))
    ahead = [day + timedelta(days=gone) for gone in range(_LONGEST_D)]
    water_c = learned.year.water_c[which[:, None], day_of_year(ahead)]
    water_c = water_c + learned.water.spell(ahead)
    pace = chosen.q10[which, None] ** ((water_c - 25) / 10)
    refilled = np.cumsum(np.where(water_c > chosen.base_c[which, None], pace, 0), axis=1)
    needed = (refilled < wanted[:, None]).sum(axis=1)
    found = interval_of_draws(needed.astype(np.float64))
    expected = float(water_c[:, 0].mean()) if learned.water.known else math.nan
    until = day + timedelta(days=math.ceil(found.mean))
    return Filling(found, until, expected)


def last_trip_text(site: Site, log: Log | None, style: Style, today: date | None = None) -> str:
    """Return what a light last trip means for the days to come, "" when it was not light.

    today: when given, "" too once crabs like those should have filled.
    """
    trips = learn(site, log).trips
    if not trips.counted_here.any():
        return ""
    newest = int(np.flatnonzero(trips.counted_here)[-1])
    light_share = trips.light[newest] / trips.judged[newest]
    if light_share < LIGHT_TRIP_SHARE:
        return ""
    day = trips.days[newest]
    filling = days_to_fill(site, day, log)
    if today is not None and day + timedelta(days=math.ceil(filling.days.high)) < today:
        return ""
    when = f"{day_text(day)} {day.year}"
    told = filling.sentence(style)
    return say(
        "Your last judged trip, {when}, was {one_in} light. {told}",
        when=when,
        one_in=one_in(light_share),
        told=told,
    )


def _mean_of_decay(start: Floats, end: Floats) -> Floats:
    """Return the mean over time of what decays exponentially from start to end."""
    fall = np.log(start / end)
    return np.where(fall > 1e-6, (start - end) / np.maximum(fall, 1e-6), start)


def _ends(days: Interval) -> tuple[float, float, float]:
    return days.low, days.mean, days.high


def _rounded(days: float) -> int:
    """Return days as exact as such a figure is worth."""
    return round(days) if days < 20 else round(days / 5) * 5
