"""The comparison in words: what the log says, how sure, and what chance alone does."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.phrasing import one_in
from planner.trials.grouping import Bools, Observations
from planner.trials.settling import TRIPS_TO_SETTLE
from planner.trials.sharing import Sharing
from planner.trials.trial import Caution, Contrast, Group, Test, Verdict

_SURE: Final = 0.05
_HINT: Final = 0.10
_CLEARLY_BEST: Final = 0.8
# Chance that a difference worth caring about is still hidden when "no difference" is settled.
_HIDDEN: Final = 0.1
_FEW_HAULS: Final = 5
_SOAKS_DIFFER: Final = 1.25
_SOAKS_UNKNOWN: Final = 0.2
_SHOWN_PAIRS: Final = 3


@dataclass(frozen=True)
class Findings:
    """What the verdict rests on; groups are in order, the leading one first.

    p_difference: probability that the best and the worst judged group differ by the ratio
    the user cares about. could_show: whether the log would bring that ratio to light.
    """

    groups: Sequence[Group]
    lead: Contrast | None
    test: Test
    p_difference: float | None
    care_ratio: float
    could_show: bool
    confounded: bool
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
    basis = f"{_plural(found.hauls, 'counted haul')} in {_plural(found.trips, 'trip')}"
    lead, p = found.lead, found.test.p
    if lead is None:
        return f"Nothing to compare yet: {basis}."
    rates = {group.name: group for group in found.groups}
    best, other = rates[lead.better], rates[lead.other]
    gap = _gap_text(best, other, found.unit)
    early = f"Too early to tell, after {basis}: {gap}"
    if p is None:
        return f"{early}, but never side by side in one trip."
    if found.confounded:
        return f"{early}, but the layout cannot tell the groups from where or when they were set."
    chance = f"Chance alone makes a gap as wide as this {one_in(p)} times."
    if p < 0.02:
        chance = "Chance alone hardly ever makes a gap as wide as this."
    if verdict == "settled" and p > _SURE:
        return (
            f"Settled, after {basis}: no difference of {found.care_ratio:g} times is left to "
            f"find ({gap}). {chance}"
        )
    if verdict == "settled":
        small = (found.p_difference or 0.0) < _HIDDEN
        worth = f", less than the {found.care_ratio:g} worth caring about" if small else ""
        return (
            f"Settled, after {basis}: {lead.better} gives about {lead.ratio:.1f} times what "
            f"{lead.other} gives ({lead.low:.1f} to {lead.high:.1f}){worth}; {gap}. {chance}"
        )
    if verdict == "leaning" and p <= _SURE and (best.p_best or 0.0) < _CLEARLY_BEST:
        return f"They differ, but which is best is not clear after {basis}: {gap}. {chance}"
    if verdict == "leaning":
        return f"Leaning towards {lead.better}, after {basis}: {gap}. {chance}"
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
    counted = seen.per_group()
    few = [seen.names[i] for i in range(seen.groups) if counted[i] < _FEW_HAULS]
    if few:
        text = f"Fewer than {_FEW_HAULS} counted hauls: {_listed(few)}. One haul is not judged."
        found.append(Caution("few", text))
    missing = int(seen.all_hauls.sum()) - int(counted.sum())
    if missing:
        text = f"{_plural(missing, 'haul')} without a count left out: not recorded is not zero."
        found.append(Caution("uncounted", text))
    if unknown_spots and "spot" in seen.blocks:
        text = "Spots are not all recorded, so a good spot may pass for a good trap."
        found.append(Caution("unplaced", text))
    if seen.trips == 1:
        found.append(Caution("one_trip", "One trip alone: it says how that day went, no more."))
    return tuple(found)


def _soak_cautions(seen: Observations, judged: Bools) -> list[Caution]:
    known = ~np.isnan(seen.soak_h)
    found = []
    if known.size and np.mean(~known) > _SOAKS_UNKNOWN and known.any():
        share = one_in(float(np.mean(~known)))
        text = f"The soak of {share} hauls is not known; they are taken to be like the others."
        found.append(Caution("soak", text))
    medians = {
        seen.names[i]: float(np.median(seen.soak_h[known & (seen.group == i)]))
        for i in np.flatnonzero(judged)
        if np.any(known & (seen.group == i))
    }
    if medians and max(medians.values()) > _SOAKS_DIFFER * min(medians.values()):
        short = min(medians, key=lambda name: medians[name])
        long = max(medians, key=lambda name: medians[name])
        text = (
            f"Soaks differ: {short} mostly {medians[short]:.0f} h, {long} {medians[long]:.0f} h. "
            "Rates are brought to one soak by a curve; compare like soaks to be sure."
        )
        found.append(Caution("soak", text))
    return found


def _confounded_text(names: Sequence[str], pairs: Sequence[tuple[int, int]], where: str) -> str:
    shown = [f"{names[i]} and {names[j]}" for i, j in pairs[:_SHOWN_PAIRS]]
    more = len(pairs) - len(shown)
    rest = f", and {more} more pairs" if more > 0 else ""
    return (
        f"Hardly ever in the same {where}: {'; '.join(shown)}{rest}. "
        f"A difference between them may be the {where}'s doing."
    )


def _gap_text(best: Group, other: Group, unit: str) -> str:
    """Return "2.4 keepers a haul from A and 1.9 from B"; A and B may hold commas."""
    one, two = best.rate or 0.0, other.rate or 0.0
    if unit == "light":
        return f"{one:.0%} light from {best.name} and {two:.0%} from {other.name}"
    return f"{one:.1f} {unit} a haul from {best.name} and {two:.1f} from {other.name}"


def _listed(names: Sequence[str]) -> str:
    return ", ".join(names[:6]) + (f" and {len(names) - 6} more" if len(names) > 6 else "")


def _plural(count: int, noun: str) -> str:
    return f"{count} {noun}{'' if count == 1 else 's'}"
