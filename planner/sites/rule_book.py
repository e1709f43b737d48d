"""What agencies regulate: the headings that a trapper must settle, and how old a check may be.

No rule is in here, only the questions; the answers are the user's, for each place.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date, timedelta
from typing import Final

from planner.sites.site import Rules
from planner.words import say

# Rules change with the season, and a season is about four months.
STALE: Final = timedelta(days=120)
_DAYS_A_MONTH: Final = 30.44

# Rules of six states compared: no two agree. Beside each heading the words under which a user
# may have written it down; a note can answer more than one.
_HEADINGS: Final = (
    (say("licence or registration"), "licen[cs]e|registration|permit"),
    (say("area, closed water and season"), "area|season|closed water"),
    (say("closed days and night hauling"), "hour|day|night"),
    (say("number of traps"), "number of|how many|trap limit"),
    (say("buoy size, colour, name or number"), "buoy|float|label|mark"),
    (say("weighted line, none floating"), r"\blines?\b|rope"),
    (say("escape or cull rings"), "ring"),
    (say("degradable panel or cotton cord"), "panel|cord"),
    (say("turtle excluder"), "turtle|excluder"),
    (say("service interval"), "service|interval|soak"),
    (say("minimum size and how it is measured"), "size|measure"),
    (say("sex and egg-bearing rules"), r"\bsex|female|sponge|egg"),
    (say("soft-shell release"), "soft"),
    (say("bag limit"), r"\bbag|catch limit"),
    (say("catch record"), "record|report"),
    (say("gear out of channels"), "channel|navigation"),
)


def missing_headings(entered: Iterable[str]) -> tuple[str, ...]:
    """Return the headings that none of the user's own headings speaks of."""
    said = " / ".join(heading.casefold() for heading in entered)
    return tuple(
        heading
        for heading, words in _HEADINGS
        if heading.casefold() not in said and not re.search(words, said)
    )


def is_stale(rules: Rules, today: date) -> bool:
    """Return whether the rules were checked longer than a season ago, or nobody knows when."""
    return rules.checked is None or today - rules.checked > STALE


def is_ahead(rules: Rules, today: date) -> bool:
    """Return whether the rules are said to have been checked on a day that is still to come."""
    return rules.checked is not None and rules.checked > today


def months_since(checked: date, today: date) -> int:
    """Return how many months ago the rules were checked."""
    return round((today - checked).days / _DAYS_A_MONTH)
