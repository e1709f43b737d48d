"""Intervals of the groups' rates that hold the truth four times in five, whatever the truth.

The interval of a pooled estimate is right on average over designs as unlike as the pooling
takes them to be: where all are alike it is far too wide, and for one that stands out it
misses too often. These keep the same coverage everywhere: the values of a group that a test
at 20% would not refuse by the group's own hauls. Of all such tests that one is taken which
is sharpest if the group is like the others, so that pooling shortens the interval and draws
it towards the others without a claim on what it covers (Pratt 1963, J. R. Stat. Soc. B
25:201; Yu and Hoff 2018, Biometrika 105:319, both from memory).
"""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.estimates import INTERVAL_TAILS, SD_TO_TAIL, Floats

_MISSED: Final = 1 - (INTERVAL_TAILS[1] - INTERVAL_TAILS[0])
_FINEST: Final = 0.0005
_LEVELS: Final = 2000


def steady_intervals(alone: Floats, spread: float) -> tuple[Floats, Floats]:
    """Return the ends (groups,), (groups,) of the 80% intervals, on the log scale.

    alone: draws (draws, groups) of what each group's own hauls say, nothing pooled.
    spread: how much groups are thought to differ (standard deviation); it changes how long
    the intervals are, not how often they hold the truth.
    """
    groups = alone.shape[1]
    levels = np.linspace(_FINEST, 1 - _FINEST, _LEVELS)
    ordered = np.sort(alone, axis=0)
    values = ordered[np.rint(levels * (len(ordered) - 1)).astype(np.int64)]
    tenth, middle, ninth = np.quantile(ordered, (INTERVAL_TAILS[0], 0.5, INTERVAL_TAILS[1]), axis=0)
    if groups == 1:
        return tenth, ninth
    sd = (ninth - tenth) / (2 * SD_TO_TAIL)
    weight = 1 / (sd**2 + spread**2)
    others_weight = weight.sum() - weight
    others = ((weight * middle).sum() - weight * middle) / others_weight
    lean = 2 * sd * (values - others) / (spread**2 + 1 / others_weight)
    upper_share = _share_of_lean(lean)
    kept = (levels[:, None] >= _MISSED * (1 - upper_share)) & (
        levels[:, None] <= 1 - _MISSED * upper_share
    )
    first = kept.argmax(axis=0)
    last = _LEVELS - 1 - kept[::-1].argmax(axis=0)
    columns = np.arange(groups)
    return values[first, columns], values[last, columns]


def lag_of_few(information: Floats) -> Floats:
    """Return how far the log of an average of few counts mostly lies below that of its mean.

    A third of its variance, by which the median of a gamma variable lies below its mean:
    few counts that are mostly luck hold none of the great ones that make up the mean.
    information: of each group's hauls on its log rate; the one keeps the lag of a group that
    next to nothing is known of within bounds.
    """
    return 1 / (3 * information + 1)


def _share_of_lean(lean: Floats) -> Floats:
    """Return which share of the missed fifth lies above, for how far a value leans upwards."""
    from scipy.special import ndtri

    shares = np.concatenate([np.logspace(-8, -2, 60), np.linspace(0.0101, 0.5, 200)])
    shares = np.concatenate([shares, 1 - shares[-2::-1]])
    leans = ndtri(_MISSED * shares) - ndtri(_MISSED * (1 - shares))
    found: Floats = np.interp(lean, leans, shares)
    return found
