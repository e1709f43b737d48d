"""Compare groups of hauls: which gives more, how sure is that, and what would settle it."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from typing import Final

import numpy as np

from planner.estimates import INTERVAL_TAILS
from planner.logbook import Haul
from planner.trials.estimation import Estimate, estimate
from planner.trials.grouping import MEASURES, Bools, Measure, Observations, observations
from planner.trials.permutation import test_groups
from planner.trials.settling import TRIPS_TO_SETTLE, Settling
from planner.trials.sharing import Sharing, find_sharing
from planner.trials.trial import Contrast, Dispersion, Group, ToSettle, Trial
from planner.trials.verdict import Findings, cautions_of, sentence_of, verdict_of

# A group of one haul is shown, not judged.
_HAULS_TO_JUDGE: Final = 2
# A gap smaller than this is not worth any number of hauls.
_SEEN_AT_LEAST: Final = 1.02


def compare(
    hauls: Iterable[Haul],
    by: str = "design",
    measure: str = "keepers",
    care_ratio: float = 1.5,
    seed: int = 0,
) -> Trial:
    """Return the comparison of the groups that `by` makes of the hauls.

    by: design, entrances, colour, bait, spot, trap, depth, soak, or an unknown column of the
    log. measure: keepers, crabs, shorts, females, bycatch (per haul), or light (share of those
    judged).
    care_ratio: the difference worth knowing of, as a ratio over 1. One seed, one answer.
    InputError for a grouping or measure that there is not; ValueError for a ratio up to 1.
    """
    if not care_ratio > 1:
        raise ValueError("care_ratio is how many times more is worth knowing of: over 1")
    hauls = list(hauls)
    seen = observations(hauls, by, measure)
    counted = seen.per_group()
    judged = counted >= _HAULS_TO_JUDGE
    what = MEASURES[measure]
    fewest_best = what.fewest_best
    test_rng, rate_rng = (np.random.default_rng([seed, stream]) for stream in (0, 1))
    found = estimate(seen, rate_rng) if seen.counts.size else None
    test = test_groups(seen, judged, test_rng)
    sharing = find_sharing(seen, judged)
    order = _order(seen, found, fewest_best=fewest_best)
    groups = _groups(seen, found, judged, order, what)
    contrasts = _contrasts(seen, found, [i for i in order if judged[i]])
    settle = _to_settle(seen, found, judged, sharing, care_ratio, contrasts)
    findings = Findings(
        groups=groups,
        lead=contrasts[-1] if contrasts else None,
        test=test,
        p_difference=_p_difference(found, judged, care_ratio),
        care_ratio=care_ratio,
        could_show=(settle.can_hide or np.inf) <= care_ratio,
        confounded=bool(sharing.confounded),
        caught=bool(seen.counts.any()),
        hauls=seen.counts.size,
        trips=seen.trips,
        unit=what.unit,
    )
    verdict = verdict_of(findings)
    return Trial(
        by=by,
        measure=measure,
        common_soak_h=found.common_soak_h if found else None,
        groups=groups,
        contrasts=contrasts,
        test=test,
        dispersion=_dispersion(found),
        to_settle=_nothing_more(settle) if verdict == "settled" else settle,
        warnings=cautions_of(seen, judged, sharing, by, any(not haul.spot for haul in hauls)),
        verdict=verdict,
        sentence=sentence_of(findings, verdict),
        hauls=seen.counts.size,
        trips=seen.trips,
    )


def _order(seen: Observations, found: Estimate | None, *, fewest_best: bool) -> list[int]:
    """Return the groups from the best rate to the worst; those without a count come last."""
    if found is None:
        return list(range(seen.groups))
    middle = np.median(found.log_rates, axis=0) * (1 if fewest_best else -1)
    uncounted = seen.per_group() == 0
    return [int(i) for i in np.lexsort((middle, uncounted))]


def _groups(
    seen: Observations,
    found: Estimate | None,
    judged: Bools,
    order: list[int],
    what: Measure,
) -> tuple[Group, ...]:
    counted, totals = seen.per_group(), seen.per_group(seen.counts)
    p_best = _p_best(found, judged, fewest_best=what.fewest_best)
    # The model counts without an end; of the crabs looked at no more than all can be light.
    highest = np.inf if what.out_of is None else 0.0
    groups = []
    for i in order:
        low = rate = high = None
        if found is not None and counted[i] > 0:
            middle = float(np.median(found.log_rates[:, i]))
            ends = (min(found.low[i], middle), middle, max(found.high[i], middle))
            low, rate, high = map(float, np.exp(np.minimum(ends, highest)))
        groups.append(
            Group(
                name=seen.names[i],
                hauls=int(seen.all_hauls[i]),
                counted=int(counted[i]),
                keepers=int(totals[i]) if counted[i] else None,
                rate=rate,
                low=low,
                high=high,
                p_best=p_best.get(i),
            )
        )
    return tuple(groups)


def _p_best(found: Estimate | None, judged: Bools, *, fewest_best: bool) -> dict[int, float]:
    """Return, for each judged group, the probability that no other judged one is better."""
    among = np.flatnonzero(judged)
    if found is None or among.size < 2:
        return {}
    goodness = found.log_rates[:, among] * (-1 if fewest_best else 1)
    wins = np.bincount(goodness.argmax(axis=1), minlength=among.size) / len(goodness)
    return {int(i): float(p) for i, p in zip(among, wins, strict=True)}


def _contrasts(
    seen: Observations, found: Estimate | None, order: list[int]
) -> tuple[Contrast, ...]:
    if found is None or len(order) < 2:
        return ()
    best, others = order[0], order[1:]
    differences = found.log_rates[:, [best]] - found.log_rates[:, others]
    tails = (INTERVAL_TAILS[0], 0.5, INTERVAL_TAILS[1])
    ratios = np.exp(np.quantile(differences, tails, axis=0))
    return tuple(
        Contrast(seen.names[best], seen.names[other], float(ratio), float(low), float(high))
        for other, low, ratio, high in zip(others, *ratios, strict=True)
    )


def _p_difference(found: Estimate | None, judged: Bools, care_ratio: float) -> float | None:
    if found is None or np.count_nonzero(judged) < 2:
        return None
    spread = np.ptp(found.log_rates[:, judged], axis=1)
    return float(np.mean(spread > np.log(care_ratio)))


def _dispersion(found: Estimate | None) -> Dispersion | None:
    if found is None:
        return None
    low, k, high = map(float, np.quantile(found.k, (INTERVAL_TAILS[0], 0.5, INTERVAL_TAILS[1])))
    return Dispersion(k, low, high)


def _to_settle(
    seen: Observations,
    found: Estimate | None,
    judged: Bools,
    sharing: Sharing,
    care_ratio: float,
    contrasts: tuple[Contrast, ...],
) -> ToSettle:
    """Return what would settle it, for a typical pair of judged groups."""
    groups = int(np.count_nonzero(judged))
    if found is None or groups < 2 or not seen.counts.any():
        return ToSettle(None, care_ratio)
    sd = found.information_sd.copy()
    for i, j in sharing.confounded:  # of such a pair the hauls so far say nothing
        sd[i, j] = sd[j, i] = np.inf
    typical = float(np.median(sd[np.ix_(judged, judged)][np.triu_indices(groups, 1)]))
    low_k, k, high_k = map(float, np.quantile(found.k, (INTERVAL_TAILS[0], 0.5, INTERVAL_TAILS[1])))
    settling = Settling(float(seen.counts.mean()), k, typical, groups - 1)
    needed = settling.hauls_needed(care_ratio)
    trips = math.ceil(needed * groups / (seen.counts.size / seen.trips))
    seen_ratio = contrasts[-1].ratio if contrasts else 1.0
    return ToSettle(
        hauls_per_group=needed,
        difference=care_ratio,
        trips=max(trips, TRIPS_TO_SETTLE - seen.trips),
        can_hide=settling.detectable_ratio,
        low=settling.hauls_needed(care_ratio, high_k),
        high=settling.hauls_needed(care_ratio, low_k),
        seen_ratio=seen_ratio,
        seen_hauls=settling.hauls_needed(seen_ratio) if seen_ratio >= _SEEN_AT_LEAST else None,
    )


def _nothing_more(settle: ToSettle) -> ToSettle:
    """Return the same with nothing left to haul."""
    return replace(settle, hauls_per_group=0, trips=0, low=0, high=0, seen_hauls=None)
