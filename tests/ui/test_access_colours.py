"""Marks that mean different things are told apart by every eye: by colour, or by shape as well.

Seen through the three common kinds of colour vision as Machado, Oliveira and Fernandes (2009),
IEEE Trans. Vis. Comput. Graph. 15(6), simulate them at severity 1.0; see `test_theme` for the
matrices and for the scale of fullness. Apart means CIEDE2000 (Sharma, Wu and Dalal 2005, Color
Research & Application 30(1)) of at least 10: some five times what is just noticeable side by
side, as marks are small and stand apart.
"""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtGui import QColor
from test_theme import BOTH, SEEN, Floats, _lab, _linear

from planner.ui.theme import Theme

_APART = 10.0
# Neighbours in one picture whose difference is told by colour first.
_NEIGHBOURS = (
    ("forecast", "logged", "the trips on the forecast's line"),
    ("forecast", "forecast_band", "the forecast's line in its interval"),
    ("water", "water_fill", "the water's edge on its band"),
    ("water", "caution", "the ramp's level across the water"),
    ("water", "accent", "set and haul beside the soak's curve"),
    ("text", "accent", "the chosen plan among the others"),
    ("text", "quiet", "facts and asides"),
    ("accent", "caution", "set and haul beside the ramp's level"),
    ("free", "closed", "free and closed days, which differ in shape too"),
)
# Pairs that share a picture and are told by shape: underline and cross. They need not differ in
# colour, and what they need is held to by the strip's own tests.
_BY_SHAPE = {("free", "closed"), ("accent", "caution")}


def ciede2000(one: Floats, other: Floats) -> float:
    """Return the difference of two colours in L*a*b*; formula of Sharma et al. (2005)."""
    (l1, a1, b1), (l2, a2, b2) = one, other
    mean_c = (np.hypot(a1, b1) + np.hypot(a2, b2)) / 2
    g = 0.5 * (1 - np.sqrt(mean_c**7 / (mean_c**7 + 25.0**7)))
    a1, a2 = (1 + g) * a1, (1 + g) * a2
    c1, c2 = np.hypot(a1, b1), np.hypot(a2, b2)
    h1, h2 = (np.degrees(np.arctan2(b, a)) % 360 for b, a in ((b1, a1), (b2, a2)))
    dl, dc = l2 - l1, c2 - c1
    dh = (h2 - h1 + 180) % 360 - 180 if c1 * c2 else 0.0
    dh_big = 2 * np.sqrt(c1 * c2) * np.sin(np.radians(dh) / 2)
    ml, mc = (l1 + l2) / 2, (c1 + c2) / 2
    mh = (h1 + dh / 2) % 360 if c1 * c2 else h1 + h2
    t = (
        1
        - 0.17 * np.cos(np.radians(mh - 30))
        + 0.24 * np.cos(np.radians(2 * mh))
        + 0.32 * np.cos(np.radians(3 * mh + 6))
        - 0.20 * np.cos(np.radians(4 * mh - 63))
    )
    sl = 1 + 0.015 * (ml - 50) ** 2 / np.sqrt(20 + (ml - 50) ** 2)
    sc, sh = 1 + 0.045 * mc, 1 + 0.015 * mc * t
    turn = 30 * np.exp(-(((mh - 275) / 25) ** 2))
    rt = -2 * np.sqrt(mc**7 / (mc**7 + 25.0**7)) * np.sin(np.radians(2 * turn))
    parts = (dl / sl, dc / sc, dh_big / sh)
    return float(np.sqrt(sum(p * p for p in parts) + rt * parts[1] * parts[2]))


@pytest.mark.parametrize(
    ("one", "other", "published"),
    [
        ((50.0, 2.6772, -79.7751), (50.0, 0.0, -82.7485), 2.0425),
        ((50.0, 2.5, 0.0), (73.0, 25.0, -18.0), 27.1492),
        ((50.0, 2.5, 0.0), (50.0, 3.2592, 0.3350), 1.0000),
        ((22.7233, 20.0904, -46.6940), (23.0331, 14.9730, -42.5619), 2.0373),
        ((90.8027, -2.0831, 1.4410), (91.1528, -1.6435, 0.0447), 1.4441),
    ],
)
def test_the_difference_is_that_of_the_published_pairs(
    one: tuple[float, ...], other: tuple[float, ...], published: float
) -> None:
    """Table 1 of Sharma et al. (2005), pairs 1, 17, 21, 31 and 32, given to four places."""
    assert ciede2000(np.array(one), np.array(other)) == pytest.approx(published, abs=6e-5)


def differences(colours: Theme, seen: Floats) -> dict[tuple[str, str], float]:
    """Return how far apart neighbouring marks are to an eye."""
    found = {}
    for one, other, _ in _NEIGHBOURS:
        pair = [QColor(getattr(colours, name)) for name in (one, other)]
        found[one, other] = ciede2000(*_lab(np.clip(_linear(pair) @ seen.T, 0, 1)))
    return found


@BOTH
@SEEN
def test_neighbouring_marks_are_told_apart(colours: Theme, seen: Floats) -> None:
    """Protects one man in twelve from a chart whose parts run together."""
    near = {
        pair: round(apart, 1)
        for pair, apart in differences(colours, seen).items()
        if apart < _APART and pair not in _BY_SHAPE
    }
    assert near == {}
