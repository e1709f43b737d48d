"""What would settle a comparison, in sentences for the window and the command line."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Final

from planner.phrasing import day_text, numbers_text
from planner.trials.trial import ToSettle, Trial
from planner.words import counted, say

# Above this a difference is no longer said to hide: the log shows next to nothing.
_HIDES_ALL: Final = 20


def settle_texts(trial: Trial, days: Sequence[date] = ()) -> list[str]:
    """Return what would settle it; days: when the trips that it takes should end."""
    needed = trial.to_settle
    texts = []
    if trial.verdict == "settled":
        texts.append(say("Nothing more is needed for this question."))
    elif needed.hauls_per_group is None:
        texts.append(
            say(
                "What it takes can be told once hauls of two groups or more, counted on the same "
                "trips, have caught something."
            )
        )
    else:
        texts.append(_hauls_text(needed) if needed.hauls_per_group else _enough_text(needed))
        texts += [*_seen_texts(needed), *_day_texts(days)]
    if needed.can_hide is not None and needed.can_hide < _HIDES_ALL:
        texts.append(
            say(
                "Differences smaller than about {can_hide:.1f} times may still hide in these "
                "hauls.",
                can_hide=needed.can_hide,
            )
        )
    if trial.common_soak_h is not None:
        texts.append(
            say("Rates are for a soak of {common_soak_h:.0f} h.", common_soak_h=trial.common_soak_h)
        )
    return texts


def _hauls_text(needed: ToSettle) -> str:
    assert needed.hauls_per_group is not None
    ends = ""
    if needed.low is not None and needed.high is not None:
        low, high = _rounded(needed.low), _rounded(needed.high)
        ends = f" ({numbers_text(low, high)})" if low < high else ""
    trips = (
        ""
        if not needed.trips
        else say(", about {plural} like yours", plural=counted(needed.trips, "trip"))
    )
    hauls = counted(_rounded(needed.hauls_per_group), "more haul")
    return say(
        "About {hauls} of each{ends}{trips}, dealt evenly over spots and trips, would "
        "bring a difference of {difference:g} times to light 4 times in 5, or show "
        "that there is none.",
        hauls=hauls,
        ends=ends,
        trips=trips,
        difference=needed.difference,
    )


def _enough_text(needed: ToSettle) -> str:
    return say(
        "There are hauls enough to show a difference of {difference:g} times; what is "
        "seen is smaller than that, or not the same everywhere.",
        difference=needed.difference,
    )


def _seen_texts(needed: ToSettle) -> list[str]:
    ratio, hauls = needed.seen_ratio, needed.seen_hauls
    if ratio is None or not hauls or ratio >= needed.difference:
        return []
    return [
        say(
            "The gap seen so far is smaller, {ratio:.1f} times: to be sure of one like it "
            "takes about {plural} of each.",
            ratio=ratio,
            plural=counted(_rounded(hauls), "more haul"),
        )
    ]


def _day_texts(days: Sequence[date]) -> list[str]:
    if not days:
        return []
    first = f"{day_text(days[0])} {days[0].year}"
    if len(days) == 1:
        return [say("At your pace that trip ends about {first}.", first=first)]
    return [
        say(
            "At your pace the next trip ends about {first}, and the last of these {plural} "
            "about {days:%B %Y}.",
            first=first,
            plural=counted(len(days), "trip"),
            days=days[-1],
        )
    ]


def _rounded(hauls: int) -> int:
    """Return a number of hauls to no more digits than such a figure is worth."""
    if hauls < 20:
        return hauls
    step = 5 if hauls < 100 else 10 ** (len(str(hauls)) - 2) * 5
    return round(hauls / step) * step
