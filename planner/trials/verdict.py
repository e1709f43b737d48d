"""The comparison in words: what the log says, how sure, and what chance alone does."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.phrasing import numbers_text, one_in
from planner.trials.grouping import Bools, Observations
from planner.trials.settling import TRIPS_TO_SETTLE
from planner.trials.sharing import Sharing
from planner.trials.trial import Caution, Contrast, Group, Test, Verdict
from planner.words import counted, say

_SURE: Final = 0.05
_HINT: Final = 0.10
_CLEARLY_BEST: Final = 0.8
# Chance that a difference worth caring about is still hidden when "no difference" is settled.
_HIDDEN: Final = 0.1
_FEW_HAULS: Final = 5
_SOAKS_DIFFER: Final = 1.25
_SOAKS_UNKNOWN: Final = 0.2
_SHOWN_PAIRS: Final = 3
_UNITS: Final = {
    "keepers": say("keepers"),
    "crabs": say("crabs"),
    "shorts": say("shorts"),
    "females": say("females"),
    "others": say("others"),
}


@dataclass(frozen=True)
class Findings:
    """What the verdict rests on; groups are in order, the leading one first.

    p_difference: probability that the best and the worst judged group differ by the ratio
    the user cares about. could_show: whether the log would bring that ratio to light.
    caught: whether any count is more than zero.
    """

    groups: Sequence[Group]
    lead: Contrast | None
    test: Test
    p_difference: float | None
    care_ratio: float
    could_show: bool
    confounded: bool
    caught: bool
    hauls: int
    trips: int
    unit: str


def verdict_of(found: Findings) -> Verdict:
    """Return how much the log says: "settled" needs a test, three trips and a fair layout."""
    judged = [group for group in found.groups if group.p_best is not None]
    if len(judged) < 2 or found.test.p is None or found.p_difference is None:
        return "too early"
    fair = found.trips >= TRIPS_TO_SETTLE and not found.confounded
    clear = max(group.p_best or 0.0 for group in judged) >= _CLEARLY_BEST
    differ = found.test.p <= _SURE and clear
    alike = found.test.p > _SURE and found.p_difference < _HIDDEN and found.could_show
    if fair and (differ or alike):
        return "settled"
    return "leaning" if found.test.p <= _HINT and not found.confounded else "too early"


def sentence_of(found: Findings, verdict: Verdict) -> str:
    """Return the comparison in a few plain sentences, with the hauls that it rests on."""
    basis = say(
        "{hauls} in {trips}",
        hauls=counted(found.hauls, "counted haul"),
        trips=counted(found.trips, "trip"),
    )
    lead, p = found.lead, found.test.p
    if lead is None:
        return say(
            "Nothing to compare yet, after {basis}: it takes two groups of two counted hauls or "
            "more.",
            basis=basis,
        )
    if not found.caught:
        return say("Nothing to tell apart yet: {basis}, and every count is zero.", basis=basis)
    rates = {group.name: group for group in found.groups}
    best, other = rates[lead.better], rates[lead.other]
    gap = _gap_text(best, other, found.unit)
    early = say("Too early to tell, after {basis}: {gap}", basis=basis, gap=gap)
    if p is None:
        return say("{early}, but never side by side in one trip.", early=early)
    if found.confounded:
        return say(
            "{early}, but the layout cannot tell the groups from where or when they were set.",
            early=early,
        )
    chance = say(
        "Chance alone makes a gap as wide as this in {one_in} of such logs.", one_in=one_in(p)
    )
    if p < 0.02:
        chance = say("Chance alone hardly ever makes a gap as wide as this.")
    if verdict == "settled" and p > _SURE:
        return say(
            "Settled, after {basis}: no difference of {care_ratio:g} times is left to find "
            "({gap}). {chance}",
            basis=basis,
            care_ratio=found.care_ratio,
            gap=gap,
            chance=chance,
        )
    if verdict == "settled":
        small = (found.p_difference or 0.0) < _HIDDEN
        worth = (
            say(", less than the {care_ratio:g} worth caring about", care_ratio=found.care_ratio)
            if small
            else ""
        )
        return say(
            "Settled, after {basis}: {better} gives about {ratio:.1f} times what {other} "
            "gives ({range}){worth}; {gap}. {chance}",
            basis=basis,
            better=lead.better,
            ratio=lead.ratio,
            other=lead.other,
            range=numbers_text(lead.low, lead.high, ".1f"),
            worth=worth,
            gap=gap,
            chance=chance,
        )
    if verdict == "leaning" and p <= _SURE and (best.p_best or 0.0) < _CLEARLY_BEST:
        return say(
            "They differ, but which is best is not clear after {basis}: {gap}. {chance}",
            basis=basis,
            gap=gap,
            chance=chance,
        )
    if verdict == "leaning":
        return say(
            "Leaning towards {better}, after {basis}: {gap}. {chance}",
            better=lead.better,
            basis=basis,
            gap=gap,
            chance=chance,
        )
    return f"{early}. {chance}"


def cautions_of(
    seen: Observations, judged: Bools, sharing: Sharing, by: str, unknown_spots: bool
) -> tuple[Caution, ...]:
    """Return what the user must know beside the figures."""
    found: list[Caution] = []
    for pairs, where in ((sharing.by_trip, "trip"), (sharing.by_block, "spot")):
        if pairs:
            found.append(Caution("confounded", _confounded_text(seen.names, pairs, where)))
    if by != "soak":
        found += _soak_cautions(seen, judged)
    of_group = seen.per_group()
    few = [seen.names[i] for i in range(seen.groups) if of_group[i] < _FEW_HAULS]
    if few:
        text = say(
            "Fewer than {few_hauls} counted hauls: {listed}. One haul is not judged.",
            few_hauls=_FEW_HAULS,
            listed=_listed(few),
        )
        found.append(Caution("few", text))
    missing = int(seen.all_hauls.sum()) - int(of_group.sum())
    if missing:
        text = say(
            "{hauls} without a count left out: not recorded is not zero.",
            hauls=counted(missing, "haul"),
        )
        found.append(Caution("uncounted", text))
    if unknown_spots and "spot" in seen.blocks:
        text = say("Spots are not all recorded, so a good spot may pass for a good trap.")
        found.append(Caution("unplaced", text))
    if seen.trips == 1:
        found.append(
            Caution("one_trip", say("One trip alone: it says how that day went, no more."))
        )
    return tuple(found)


def _soak_cautions(seen: Observations, judged: Bools) -> list[Caution]:
    known = ~np.isnan(seen.soak_h)
    found = []
    if known.size and np.mean(~known) > _SOAKS_UNKNOWN and known.any():
        share = one_in(float(np.mean(~known)))
        text = say(
            "The soak of {share} of the hauls is not known; they are taken to be like the others.",
            share=share,
        )
        found.append(Caution("soak", text))
    medians = {
        seen.names[i]: float(np.median(seen.soak_h[known & (seen.group == i)]))
        for i in np.flatnonzero(judged)
        if np.any(known & (seen.group == i))
    }
    if medians and max(medians.values()) > _SOAKS_DIFFER * min(medians.values()):
        short = min(medians, key=lambda name: medians[name])
        long = max(medians, key=lambda name: medians[name])
        text = say(
            "Soaks differ: {short} mostly {short_h:.0f} h, {long} {long_h:.0f} h. Rates "
            "are brought to one soak by a curve; compare like soaks to be sure.",
            short=short,
            short_h=medians[short],
            long=long,
            long_h=medians[long],
        )
        found.append(Caution("soak", text))
    return found


def _confounded_text(names: Sequence[str], pairs: Sequence[tuple[int, int]], where: str) -> str:
    shown = [
        say("{one} and {other}", one=names[i], other=names[j]) for i, j in pairs[:_SHOWN_PAIRS]
    ]
    more = len(pairs) - len(shown)
    rest = say(", and {more} more pairs", more=more) if more > 0 else ""
    pairs_said = f"{'; '.join(shown)}{rest}"
    if where == "spot":
        return say(
            "Hardly ever in the same spot: {pairs}. A difference between them may be the "
            "spot's doing.",
            pairs=pairs_said,
        )
    return say(
        "Hardly ever in the same trip: {pairs}. A difference between them may be the trip's doing.",
        pairs=pairs_said,
    )


def _gap_text(best: Group, other: Group, unit: str) -> str:
    """Return "2.4 keepers a haul from A and 1.9 from B"; A and B may hold commas."""
    one, two = best.rate or 0.0, other.rate or 0.0
    if unit == "light":
        return say(
            "{one:.0%} light from {name} and {two:.0%} from {other_name}",
            one=one,
            name=best.name,
            two=two,
            other_name=other.name,
        )
    return say(
        "{one:.1f} {unit} a haul from {name} and {two:.1f} from {other_name}",
        one=one,
        unit=_UNITS.get(unit, unit),
        name=best.name,
        two=two,
        other_name=other.name,
    )


def _listed(names: Sequence[str]) -> str:
    return ", ".join(names[:6]) + (
        say(" and {names} more", names=len(names) - 6) if len(names) > 6 else ""
    )
