"""The rules of a place under the headings that a trapper must settle, and how old they are."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.phrasing import day_text
from planner.sites.site import Rules

# Rules change with the season, and a season is about four months.
STALE: Final = timedelta(days=120)

# What agencies regulate (rules of six states compared: no two agree), and the words under which
# a user may have written it down. A note can answer more than one heading.
_HEADINGS: Final = (
    ("licence or registration", "licen[cs]e|registration|permit"),
    ("area, closed water and season", "area|season|closed water"),
    ("closed days and night hauling", "hour|day|night"),
    ("number of traps", "number of|how many|trap limit"),
    ("buoy size, colour, name or number", "buoy|float|label|mark"),
    ("weighted line, none floating", r"\blines?\b|rope"),
    ("escape or cull rings", "ring"),
    ("degradable panel or cotton cord", "panel|cord"),
    ("turtle excluder", "turtle|excluder"),
    ("service interval", "service|interval|soak"),
    ("minimum size and how it is measured", "size|measure"),
    ("sex and egg-bearing rules", r"\bsex|female|sponge|egg"),
    ("soft-shell release", "soft"),
    ("bag limit", r"\bbag|catch limit"),
    ("catch record", "record|report"),
    ("gear out of channels", "channel|navigation"),
)


@dataclass(frozen=True)
class Rule:
    """One rule as the user entered it, under the user's own heading."""

    heading: str
    text: str


@dataclass(frozen=True)
class RulesHere:
    """The rules entered for a place, what is not entered, and when they were checked.

    missing: headings that no entered rule speaks of. checked: a sentence. stale: whether the
    check is older than a season, or was never dated.
    """

    rules: tuple[Rule, ...]
    missing: tuple[str, ...]
    checked: str
    stale: bool


def rules_here(rules: Rules, today: date) -> RulesHere:
    """Return the rules of a place as a trip's checklist shows them."""
    entered = [Rule(note.category, note.text) for note in rules.notes]
    said = " / ".join(note.category.casefold() for note in rules.notes)
    if rules.max_traps is not None:
        entered.append(Rule("number of traps", f"At most {rules.max_traps} traps."))
        said += " / number of traps"
    if rules.max_soak_h is not None:
        entered.append(Rule("soak limit", f"Haul within {rules.max_soak_h:g} hours of the set."))
        said += " / service interval"
    missing = tuple(heading for heading, words in _HEADINGS if not re.search(words, said))
    return RulesHere(tuple(entered), missing, *_checked(rules, today))


def _checked(rules: Rules, today: date) -> tuple[str, bool]:
    if rules.checked is None:
        return "No date entered for when these rules were checked: check with the agency.", True
    where = f" ({rules.checked_where})" if rules.checked_where else ""
    on = f"Checked {day_text(rules.checked)} {rules.checked.year}{where}"
    if today - rules.checked <= STALE:
        return f"{on}.", False
    months = round((today - rules.checked).days / 30.44)
    return f"{on}: {months} months ago, and rules change. Check with the agency again.", True
