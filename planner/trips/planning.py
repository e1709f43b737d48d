"""The ranked set-and-haul plans of an outlook."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime
from typing import Literal

import numpy as np

from planner.clock import Instants, day_edges, from_utc64, to_utc64
from planner.estimates import Floats
from planner.logbook import Log
from planner.phrasing import Style
from planner.tides import Tide
from planner.trips.candidates import STEP, Ints, find_candidates
from planner.trips.catch import learn_catch
from planner.trips.catch_record import activity_at, plan_mix, season_angle, trip_catches
from planner.trips.choosing import Windows, Wishes, best_of_each, find_windows, fold
from planner.trips.facts import Facts, least_cover, turns_within
from planner.trips.outlook import Outlook
from planner.trips.plan import Plan, PlanSet
from planner.trips.wish_words import wish_outcomes
from planner.trips.wording import reasons, warnings

_HOUR = np.timedelta64(1, "h")
_STEP_H = float(STEP / _HOUR)


def plan_trips(
    outlook: Outlook,
    *,
    log: Log | None = None,
    limit: int = 12,
    wishes: Wishes | None = None,
    not_before: datetime | None = None,
    today: date | None = None,
    style: Style | None = None,
    seed: int = 0,
    tide: Tide | None = None,
) -> PlanSet:
    """Return the plans for an outlook's place and days, the most full keepers first.

    log: what to learn the catch from; None for published rates.
    limit: how many plans at most.
    not_before: aware instant before which no outing may begin.
    today: the date that the age of the rules is counted to, by default the first day.
    seed: of the draws behind the intervals; one seed gives one answer.
    Raises RangeError where sun or water cannot be computed.
    """
    search = Search(outlook, log=log, not_before=not_before, seed=seed, tide=tide)
    return search.plans(limit, wishes or Wishes(), style or Style(), today)


class Search:
    """The allowed pairs of an outlook and what each is worth: made once, asked many times."""

    def __init__(
        self,
        outlook: Outlook,
        *,
        log: Log | None = None,
        not_before: datetime | None = None,
        seed: int = 0,
        tide: Tide | None = None,
    ) -> None:
        site = outlook.site
        tide = tide or Tide(site)
        self.outlook = outlook
        self.candidates = find_candidates(
            site,
            outlook.days[0],
            outlook.days[-1],
            tide=tide,
            not_before=None if not_before is None else to_utc64(not_before),
        )
        mix = plan_mix(site, log)
        self.catch = learn_catch(trip_catches(site, log.hauls if log else ()), seed, mix)
        soaks_h = np.arange(max(self.candidates.max_steps, 0) + 1.0) * _STEP_H
        self._per_trap = self.catch.per_trap(soaks_h) * self.catch.effects.traps_mean()
        self._tide = tide
        self._seed = seed
        self._edges = day_edges(outlook.days[0], outlook.days[-1], site.zone)
        self._windows = find_windows(self.candidates)
        self._day = self.candidates.day
        self._activity = activity_at(outlook.forecast.water_c, site.species)
        self._seasons = np.array([season_angle(from_utc64(edge)) for edge in self._edges[:-1]])
        self._season = self.catch.effects.season_means(self._seasons)
        worth = self._worth(self._windows.first_set, self._windows.haul)
        self._most = float(worth.max(initial=0.0))

    def plans(self, limit: int, wishes: Wishes, style: Style, today: date | None) -> PlanSet:
        """Return at most `limit` plans, near-duplicates folded, and what ruled out the rest."""
        windows = self._wished(self._windows, wishes)
        ranked = self._ranked(windows, wishes)
        chosen = windows.take(fold(windows, ranked, self._day, limit))
        today = today or self.outlook.days[0]
        plans = tuple(
            self._plan(at + 1, self._facts(chosen, at, wishes), wishes, style, today)
            for at in range(chosen.haul.size)
        )
        return PlanSet(plans, self.candidates.rejected())

    def rejected_on(self, day: date, outing: Literal["set", "haul"] = "set") -> dict[str, int]:
        """Return, for sets or hauls on one local day, how many pairs each limit ruled out."""
        at = self.outlook.index(day)
        if outing == "set":
            return self.candidates.rejected(self._day == at)
        first, end = np.searchsorted(self._day, [at, at + 1])
        return self.candidates.rejected_hauls(int(first), int(end))

    def best_on(
        self,
        day: date,
        outing: Literal["set", "haul"],
        wishes: Wishes,
        style: Style,
        today: date | None = None,
    ) -> Plan | None:
        """Return the best plan that sets, or hauls, on a local day; None where none may.

        It carries rank 0. ValueError for a day outside the outlook.
        """
        at, windows = self.outlook.index(day), self._wished(self._windows, wishes)
        if outing == "set":
            windows = windows.take(np.flatnonzero(self._day[windows.first_set] == at))
        else:
            windows = windows.take(np.flatnonzero(self._day[windows.haul] == at))
        if windows.haul.size == 0:
            return None
        facts = self._facts(windows, int(self._ranked(windows, wishes)[0]), wishes)
        return self._plan(0, facts, wishes, style, today or self.outlook.days[0])

    def plan_near(
        self,
        set_at: datetime,
        haul_at: datetime,
        wishes: Wishes | None = None,
        style: Style | None = None,
        today: date | None = None,
    ) -> Plan | None:
        """Return the allowed plan nearest to a set and haul drawn by hand; None without any.

        set_at, haul_at: aware. The plan carries rank 0. ValueError for a naive instant.
        """
        windows = self._windows
        if windows.haul.size == 0:
            return None
        start = self.candidates.times[0]
        wanted_set, wanted_haul = (round((to_utc64(at) - start) / STEP) for at in (set_at, haul_at))
        sets = np.clip(wanted_set, windows.first_set, windows.last_set)
        apart = np.abs(sets - wanted_set) + np.abs(windows.haul - wanted_haul)
        nearest = np.array([np.argmin(apart)])
        window = replace(windows.take(nearest), first_set=sets[nearest])
        today = today or self.outlook.days[0]
        wishes = wishes or Wishes()
        return self._plan(0, self._facts(window, 0, wishes), wishes, style or Style(), today)

    def _wished(self, windows: Windows, wishes: Wishes) -> Windows:
        """Return the windows from the set on that ranks best: the first, but for a short soak.

        Within a window only the length of the soak differs. A late set keeps the daylight wished
        for where the window has it.
        """
        if wishes.soak != "short":
            return windows
        steps = np.arange(self._per_trap.size)
        soaks_h = steps.astype(np.float64) * _STEP_H
        priced: Floats = self._per_trap * wishes.price(soaks_h, steps >= 0)
        from_best = np.clip(
            windows.haul - int(np.argmax(priced)), windows.first_set, windows.last_set
        )
        slack_min = self._slack_h(self.candidates.set_ends[from_best]) * 60
        earlier = np.ceil(np.maximum(wishes.daylight_slack_min - slack_min, 0) / (60 * _STEP_H))
        first_set = np.maximum(from_best - earlier.astype(np.int64), windows.first_set)
        return replace(windows, first_set=first_set)

    def _ranked(self, windows: Windows, wishes: Wishes) -> Ints:
        """Return the best window of each run of sets and haul day, as indices, best first."""
        worth = self._worth(windows.first_set, windows.haul)
        priced = worth * self._price(windows.first_set, windows.haul, wishes)
        return best_of_each(windows, priced, self._comfort(windows.haul, wishes), self._day)

    def _price(self, sets: Ints, hauls: Ints, wishes: Wishes) -> Floats:
        """Return what the prices of the wishes leave of the keepers, shape (n,)."""
        soaks_h = (hauls - sets).astype(np.float64) * _STEP_H
        return wishes.price(soaks_h, self._day[sets] == self._day[hauls])

    def _worth(self, sets: Ints, hauls: Ints) -> Floats:
        """Return the expected full keepers, shape (n,), of sets and hauls on the grid."""
        day = self._day[hauls]
        full_share = 1 - self.outlook.forecast.light_share.mean[day]
        caught = (
            self.outlook.site.habits.traps
            * self._per_trap[hauls - sets]
            * self._active(sets, hauls)
        )
        worth: Floats = caught * self._season[day] * full_share
        return worth

    def _active(self, sets: Ints, hauls: Ints) -> Floats:
        """Return how active crabs are over each soak: the mean of its first and last day."""
        active: Floats = (self._activity[self._day[sets]] + self._activity[self._day[hauls]]) / 2
        return active

    def _comfort(self, hauls: Ints, wishes: Wishes) -> Floats:
        """Return how far each haul, shape (n,), meets the wishes; more is better."""
        found = self.candidates
        slack_min = self._slack_h(found.haul_ends[hauls]) * 60
        comfort = (slack_min >= wishes.daylight_slack_min).astype(np.float64)
        start, stop = found.times[hauls], found.haul_ends[hauls]
        turns = found.turns.times
        turning = np.searchsorted(turns, stop) > np.searchsorted(turns, start)
        rises = found.haul_end_levels_m[hauls] > found.levels_m[hauls]
        met = {"turning": turning, "rising": ~turning & rises, "falling": ~turning & ~rises}
        if wishes.haul_water != "any":
            comfort += met[wishes.haul_water]
        if wishes.haul_time != "any":
            hour = (start - self._edges[self._day[hauls]]) / _HOUR
            comfort += (24 - hour if wishes.haul_time == "early" else hour) / 24
        return comfort

    def _slack_h(self, ends: Instants) -> Floats:
        """Return the hours of daylight left when outings end, shape (n,)."""
        sunset = self.candidates.light_to[np.searchsorted(self.candidates.light_to, ends)]
        slack_h: Floats = (sunset - ends) / _HOUR
        return slack_h

    def _plan(self, rank: int, facts: Facts, wishes: Wishes, style: Style, today: date) -> Plan:
        outlook, cover = self.outlook, facts.cover
        return Plan(
            rank=rank,
            set_at=facts.set_at,
            latest_set_at=facts.latest_set_at,
            haul_at=facts.haul_at,
            soak_h=facts.soak_h,
            full_keepers=facts.full_keepers,
            light_share=facts.light_share,
            lowest_cover_m=None if cover is None else cover.least_m,
            lowest_cover_spot=None if cover is None else cover.spot,
            lowest_cover_at=None if cover is None else cover.at,
            reasons=tuple(reasons(outlook.site, facts, self.catch, wishes, style)),
            warnings=tuple(warnings(outlook.site, facts, outlook.forecast, today, style)),
            ranked_keepers=facts.ranked_keepers,
            set_daylight_h=facts.slack_after_set_h,
            haul_daylight_h=facts.slack_after_haul_h,
            wishes=tuple(wish_outcomes(outlook.site, facts, wishes, style)),
        )

    def _facts(self, windows: Windows, at: int, wishes: Wishes) -> Facts:
        found, site = self.candidates, self.outlook.site
        one = windows.take(np.array([at]))
        first, last, haul = (int(index[0]) for index in (one.first_set, one.last_set, one.haul))
        day = int(self._day[haul])
        light = self.outlook.forecast.light_share.at(day)
        season = float(self._seasons[day])
        soak_h = (haul - first) * _STEP_H
        active = float(self._active(one.first_set, one.haul)[0])
        full_keepers = self.catch.full_keepers(
            soak_h, site.habits.traps, active, light, self._seed, season
        )
        cover = least_cover(site, self._tide, found.times[first], found.haul_ends[haul])
        return Facts(
            set_at=from_utc64(found.times[first]),
            latest_set_at=from_utc64(found.times[last]),
            haul_at=from_utc64(found.times[haul]),
            haul_end=from_utc64(found.haul_ends[haul]),
            soak_h=soak_h,
            traps=site.habits.traps,
            full_keepers=full_keepers,
            latest_full_keepers=float(self._worth(one.last_set, one.haul)[0]),
            most_keepers=self._most,
            ranked_keepers=full_keepers.mean
            * float(self._price(one.first_set, one.haul, wishes)[0]),
            season=season,
            light_share=light,
            water_c=float(self.outlook.forecast.water_c[day]),
            activity=active,
            cover=cover,
            ramp_spare_m=self._ramp_spare_m(first, haul),
            slack_after_set_h=float(self._slack_h(found.set_ends[one.first_set])[0]),
            slack_after_haul_h=float(self._slack_h(found.haul_ends[one.haul])[0]),
            haul_level_m=float(found.levels_m[haul]),
            haul_end_level_m=float(found.haul_end_levels_m[haul]),
            haul_turns=turns_within(found.turns, found.times[haul], found.haul_ends[haul]),
        )

    def _ramp_spare_m(self, first_set: int, haul: int) -> float | None:
        lowest_m = self.outlook.site.lowest_ramp_level_m
        if lowest_m is None:
            return None
        found = self.candidates
        levels = (
            found.levels_m[first_set],
            found.set_end_levels_m[first_set],
            found.levels_m[haul],
            found.haul_end_levels_m[haul],
        )
        return float(min(levels)) - lowest_m
