"""Effects and the forecast record as rows and sentences; no Qt here."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Final

from planner.estimates import Interval
from planner.molt.evidence_types import SURE, Effect, Evidence, Record
from planner.phrasing import day_text, one_in

CAUSE_WORDS: Final[Mapping[str, str]] = {
    "season": "Season and water",
    "moon": "Moon",
    "runs": "Recent trips",
    "place": "This place",
}
EFFECT_COLUMNS: Final = ("", "Swing", "80% interval", "Worth caring about", "Trips", "Crabs")
RECORD_COLUMNS: Final = ("Trip", "Forecast", "Came", "Judged")
RELIABLE_COLUMNS: Final = ("Forecast", "Came", "Trips", "Crabs")
SCORE_COLUMNS: Final = ("Forecast by", "Brier score", "Log score")
# What a trip must bring to tell of a cause, beside crabs judged.
_TELLING_TRIPS: Final[Mapping[str, str]] = {
    "season": "in every month that you fish",
    "moon": "spread over the whole moon",
    "runs": "some of them within two weeks after a light one",
    "place": "here and at another place of yours",
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
            f"{100 * effect.swing.mean:.0f} of 100",
            f"{100 * effect.swing.low:.0f} to {100 * effect.swing.high:.0f}",
            chance_text(effect.p_matters(care_points / 100)),
            str(effect.trips),
            str(effect.crabs),
        )
        for effect in evidence.effects
    ]


def effect_text(effect: Effect, care_points: int) -> str:
    """Return what is known of an effect, in plain words with what it rests on."""
    name, p = CAUSE_WORDS[effect.cause], effect.p_matters(care_points / 100)
    size = (
        f"light crabs vary by about {_points(effect.swing)} of 100 between its best and worst days"
    )
    if effect.trips == 0:
        return (
            f"{name}: no judged trip yet, so this is what is known in general: {size}. "
            "Judge crabs for fullness when you haul, and your own log will speak."
        )
    if p >= SURE:
        verdict = f"it matters: {size}"
    elif p <= 1 - SURE:
        verdict = f"most likely not worth caring about: {size}"
    else:
        verdict = f"your log cannot tell yet. Best estimate: {size}"
    basis = f"{_plural(effect.trips, 'trip')} and {_plural(effect.crabs, 'judged crab')}"
    text = (
        f"{name}: {verdict}. That it makes {care_points} of 100 or more: {chance_text(p)}, "
        f"from {basis}."
    )
    if not effect.settled(care_points / 100):
        text += f" {_what_settles(effect, care_points)}"
    if effect.trips < _FEW_TRIPS:
        text += " So few trips add little to what is known in general."
    return text


def _what_settles(effect: Effect, care_points: int) -> str:
    more, how = effect.trips_to_settle(care_points / 100), _TELLING_TRIPS[effect.cause]
    if more is None:
        return f"What would settle it: more trips with crabs judged, {how}."
    if more > _MOST_TRIPS_SAID:
        return f"More than {_MOST_TRIPS_SAID} more trips, {how}, would be needed to settle it."
    return f"About {_plural(_rounded(more), 'more trip')}, {how}, would settle it."


def chance_text(p: float) -> str:
    """Return a probability in words and natural frequencies."""
    if p >= 0.98:
        return "almost sure"
    return "hardly possible" if p < 0.02 else one_in(p)


def record_text(record: Record) -> str:
    """Return whether the model beat the running average and the season alone, and on how much."""
    n = len(record.trips)
    if n == 0:
        return (
            "No past trip could be forecast from earlier ones yet. From the second judged trip "
            "on, how forecasts did stands here."
        )
    others = {
        "the place's running average": record.log_score_running_mean,
        "the season alone": record.log_score_season_only,
    }
    basis = f"{_plural(n, 'past trip')} forecast from earlier trips only"
    if n < _FEW_TRIPS:
        return f"{basis}: too few to say which forecast is better."
    better = [name for name, score in others.items() if record.log_score < score - _CLOSE]
    worse = [name for name, score in others.items() if record.log_score > score + _CLOSE]
    even = [name for name in others if name not in (*better, *worse)]
    parts = [
        f"{verb} {' and '.join(names)}"
        for verb, names in (
            ("did better than", better),
            ("did no better than", even),
            ("did worse than", worse),
        )
        if names
    ]
    advice = "" if better and not worse else " Do not lean on it more than on those."
    return f"{basis}: the model {', '.join(parts)}.{advice}"


def score_rows(record: Record) -> list[tuple[str, ...]]:
    """Return the scores of the model and of the two simple forecasts; smaller is better."""
    return [
        (name, _score(brier), _score(log))
        for name, brier, log in (
            ("this model", record.brier, record.log_score),
            ("the season alone", record.brier_season_only, record.log_score_season_only),
            ("the running average", record.brier_running_mean, record.log_score_running_mean),
        )
    ]


def record_rows(record: Record) -> list[tuple[str, ...]]:
    """Return each past trip: what was forecast and what came."""
    return [
        (
            f"{day_text(trip.day)} {trip.day.year}",
            f"{trip.forecast.mean:.0%} ({trip.forecast.low:.0%} to {trip.forecast.high:.0%})",
            f"{trip.light / trip.judged:.0%}" if trip.judged else "",
            str(trip.judged),
        )
        for trip in record.trips
    ]


def reliable_rows(record: Record) -> list[tuple[str, ...]]:
    """Return trips of like forecasts together: what was forecast on average and what came."""
    return [
        (
            f"{group.forecast:.0%}",
            f"{group.came.mean:.0%} ({group.came.low:.0%} to {group.came.high:.0%})",
            str(group.trips),
            str(group.crabs),
        )
        for group in record.reliability
    ]


def _points(swing: Interval) -> str:
    return f"{100 * swing.mean:.0f} ({100 * swing.low:.0f} to {100 * swing.high:.0f})"


def _rounded(trips: int) -> int:
    """Return a number of trips to no more digits than such a figure is worth."""
    return trips if trips < 10 else round(trips / 5) * 5 if trips < 100 else round(trips, -1)


def _score(value: float) -> str:
    return "" if math.isnan(value) else f"{value:.3f}"


def _plural(count: int, noun: str) -> str:
    return f"{count} {noun}{'' if count == 1 else 's'}"
