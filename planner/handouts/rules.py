"""The rules of a place under the headings that a trapper must settle, and how old they are."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.phrasing import day_text
from planner.sites.rule_book import is_ahead, is_stale, missing_headings, months_since
from planner.sites.site import Rules
from planner.words import say


@dataclass(frozen=True)
class Rule:
    """One rule as the user entered it, under the user's own heading."""

    heading: str
    text: str


@dataclass(frozen=True)
class RulesHere:
    """The rules entered for a place, what is not entered, and when they were checked.

    missing: headings that no entered rule speaks of. checked: a sentence. stale: whether the
    check is older than a season, still to come, or was never dated.
    """

    rules: tuple[Rule, ...]
    missing: tuple[str, ...]
    checked: str
    stale: bool


def rules_here(rules: Rules, today: date) -> RulesHere:
    """Return the rules of a place as a trip's checklist shows them."""
    entered = [Rule(note.category, note.text) for note in rules.notes]
    said = [note.category for note in rules.notes]
    if rules.max_traps is not None:
        entered.append(
            Rule(
                say("number of traps"), say("At most {max_traps} traps.", max_traps=rules.max_traps)
            )
        )
        said.append("number of traps")
    if rules.max_soak_h is not None:
        entered.append(
            Rule(
                say("soak limit"),
                say("Haul within {max_soak_h:g} hours of the set.", max_soak_h=rules.max_soak_h),
            )
        )
        said.append("service interval")
    return RulesHere(tuple(entered), missing_headings(said), *_checked(rules, today))


def _checked(rules: Rules, today: date) -> tuple[str, bool]:
    if rules.checked is None:
        return say(
            "No date entered for when these rules were checked: check with the agency."
        ), True
    where = f" ({rules.checked_where})" if rules.checked_where else ""
    on = say(
        "Checked {day} {year}{where}",
        day=day_text(rules.checked),
        year=rules.checked.year,
        where=where,
    )
    if is_ahead(rules, today):
        return say(
            "{on}, which is still to come: correct it, and check with the agency.", on=on
        ), True
    if not is_stale(rules, today):
        return f"{on}.", False
    months = months_since(rules.checked, today)
    return say(
        "{on}: {months} months ago, and rules change. Check with the agency again.",
        on=on,
        months=months,
    ), True
