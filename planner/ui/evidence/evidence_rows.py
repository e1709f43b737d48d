"""Effects and the forecast record as rows and sentences; no Qt here."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Final

from planner.estimates import Interval
from planner.molt.evidence_types import SURE, Effect, Evidence, Record
from planner.phrasing import day_text, interval_text, numbers_text, one_in
from planner.words import counted, say

CAUSE_WORDS: Final[Mapping[str, str]] = {
    "season": say("Season and water"),
    "moon": say("Moon"),
    "runs": say("Recent trips"),
    "place": say("This place"),
}
EFFECT_COLUMNS: Final = (
    "",
    say("Swing"),
    say("80% interval"),
    say("Worth caring about"),
    say("Trips"),
    say("Crabs"),
)
RECORD_COLUMNS: Final = (say("Trip"), say("Forecast"), say("Came"), say("Judged"))
RELIABLE_COLUMNS: Final = (say("Forecast"), say("Came"), say("Trips"), say("Crabs"))
SCORE_COLUMNS: Final = (say("Forecast by"), say("Brier score"), say("Log score"))
# What a trip must bring to tell of a cause, beside crabs judged.
_TELLING_TRIPS: Final[Mapping[str, str]] = {
    "season": say("in every month that you fish"),
    "moon": say("spread over the whole moon"),
    "runs": say("some of them within two weeks after a light one"),
    "place": say("here and at another place of yours"),
}
# More than this nobody will log to know.
_MOST_TRIPS_SAID: Final = 500
# Judgement: fewer trips say how those went, and little beyond.
_FEW_TRIPS: Final = 10
_CLOSE: Final = 0.01


def effect_rows(evidence: Evidence, care_points: int) -> list[tuple[str, ...]]:
    """Return the effects as rows of a table, under EFFECT_COLUMNS."""
    return [
        (
            CAUSE_WORDS[effect.cause],
            say("{mean:.0f} of 100", mean=100 * effect.swing.mean),
            numbers_text(100 * effect.swing.low, 100 * effect.swing.high, ".0f"),
            chance_text(effect.p_matters(care_points / 100)),
            str(effect.trips),
            str(effect.crabs),
        )
        for effect in evidence.effects
    ]


def effect_text(effect: Effect, care_points: int) -> str:
    """Return what is known of an effect, in plain words with what it rests on."""
    name, p = CAUSE_WORDS[effect.cause], effect.p_matters(care_points / 100)
    size = say(
        "light crabs vary by about {points} of 100 between its best and worst days",
        points=_points(effect.swing),
    )
    if effect.trips == 0:
        return say(
            "{name}: no judged trip yet, so this is what is known in general: "
            "{size}. Judge crabs for fullness when you haul, and your own log will "
            "speak.",
            name=name,
            size=size,
        )
    if p >= SURE:
        verdict = say("it matters: {size}", size=size)
    elif p <= 1 - SURE:
        verdict = say("most likely not worth caring about: {size}", size=size)
    else:
        verdict = say("your log cannot tell yet. Best estimate: {size}", size=size)
    basis = say(
        "{trips} and {crabs}",
        trips=counted(effect.trips, "trip"),
        crabs=counted(effect.crabs, "judged crab"),
    )
    text = say(
        "{name}: {verdict}. That it makes {care_points} of 100 or more: {chance}, from {basis}.",
        name=name,
        verdict=verdict,
        care_points=care_points,
        chance=chance_text(p),
        basis=basis,
    )
    if not effect.settled(care_points / 100):
        text += f" {_what_settles(effect, care_points)}"
    if effect.trips < _FEW_TRIPS:
        text += say(" So few trips add little to what is known in general.")
    return text


def _what_settles(effect: Effect, care_points: int) -> str:
    more, how = effect.trips_to_settle(care_points / 100), _TELLING_TRIPS[effect.cause]
    if more is None:
        return say("What would settle it: more trips with crabs judged, {how}.", how=how)
    if more > _MOST_TRIPS_SAID:
        return say(
            "More than {most_trips_said} more trips, {how}, would be needed to settle it.",
            most_trips_said=_MOST_TRIPS_SAID,
            how=how,
        )
    return say(
        "After about {trips}, {how}, it is as likely as not settled.",
        trips=counted(_rounded(more), "more trip"),
        how=how,
    )


def chance_text(p: float) -> str:
    """Return a probability in words and natural frequencies."""
    if p >= 0.98:
        return say("almost sure")
    return say("hardly possible") if p < 0.02 else one_in(p)


def record_text(record: Record) -> str:
    """Return whether the model beat the running average and the season alone, and on how much."""
    n = len(record.trips)
    if n == 0:
        return say(
            "No past trip could be forecast from earlier ones yet. From the second judged trip "
            "on, how forecasts did stands here."
        )
    others = {
        say("the place's running average"): record.log_score_running_mean,
        say("the season alone"): record.log_score_season_only,
    }
    basis = say("{trips} forecast from earlier trips only", trips=counted(n, "past trip"))
    if n < _FEW_TRIPS:
        return say("{basis}: too few to say which forecast is better.", basis=basis)
    better = [name for name, score in others.items() if record.log_score < score - _CLOSE]
    worse = [name for name, score in others.items() if record.log_score > score + _CLOSE]
    even = [name for name in others if name not in (*better, *worse)]
    parts = [
        f"{verb} {say(' and ').join(names)}"
        for verb, names in (
            (say("did better than"), better),
            (say("did no better than"), even),
            (say("did worse than"), worse),
        )
        if names
    ]
    advice = "" if better and not worse else say(" Do not lean on it more than on those.")
    return say(
        "{basis}: the model {parts}.{advice}", basis=basis, parts=", ".join(parts), advice=advice
    )


def score_rows(record: Record) -> list[tuple[str, ...]]:
    """Return the scores of the model and of the two simple forecasts; smaller is better."""
    return [
        (name, _score(brier), _score(log))
        for name, brier, log in (
            (say("this model"), record.brier, record.log_score),
            (say("the season alone"), record.brier_season_only, record.log_score_season_only),
            (say("the running average"), record.brier_running_mean, record.log_score_running_mean),
        )
    ]


def record_rows(record: Record) -> list[tuple[str, ...]]:
    """Return each past trip: what was forecast and what came."""
    return [
        (
            f"{day_text(trip.day)} {trip.day.year}",
            interval_text(trip.forecast, ".0%"),
            say("{light:.0%}", light=trip.light / trip.judged) if trip.judged else "",
            str(trip.judged),
        )
        for trip in record.trips
    ]


def reliable_rows(record: Record) -> list[tuple[str, ...]]:
    """Return trips of like forecasts together: what was forecast on average and what came."""
    return [
        (
            say("{forecast:.0%}", forecast=group.forecast),
            interval_text(group.came, ".0%"),
            str(group.trips),
            str(group.crabs),
        )
        for group in record.reliability
    ]


def _points(swing: Interval) -> str:
    of_100 = Interval(100 * swing.mean, 100 * swing.low, 100 * swing.high)
    return interval_text(of_100, ".0f")


def _rounded(trips: int) -> int:
    """Return a number of trips to no more digits than such a figure is worth."""
    return trips if trips < 10 else round(trips / 5) * 5 if trips < 100 else round(trips, -1)


def _score(value: float) -> str:
    return "" if math.isnan(value) else say("{value:.3f}", value=value)
