"""The rules and closed periods of a place, in words."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from planner.phrasing import WEEKDAYS, date_text, day_text, until_text
from planner.sites import Site
from planner.sites.rule_book import months_since
from planner.sites.site import Closure
from planner.words import say


def rules_texts(site: Site, today: date) -> Iterator[str]:
    """Yield when the rules were checked, their limits, closures, and notes."""
    rules = site.rules
    if rules.checked is None:
        yield say("No date entered for when you checked the rules here.")
    else:
        where = f" ({rules.checked_where})" if rules.checked_where else ""
        months = months_since(rules.checked, today)
        ago = (
            say("{months} months ago", months=months)
            if months > 1
            else until_text(rules.checked - today)
        )
        yield say(
            "Rules last checked {day} {year}, {ago}{where}.",
            day=day_text(rules.checked),
            year=rules.checked.year,
            ago=ago,
            where=where,
        )
    if rules.max_traps is not None:
        yield say("At most {max_traps} traps.", max_traps=rules.max_traps)
    if rules.max_soak_h is not None:
        yield say("A soak of at most {max_soak_h:g} h.", max_soak_h=rules.max_soak_h)
    for closure in site.closures:
        yield say(
            "Closed {closure}: {reason}.", closure=closure_text(closure), reason=closure.reason
        )
    for note in rules.notes:
        yield f"{note.category[:1].upper()}{note.category[1:]}: {note.text}"


def closure_text(closure: Closure) -> str:
    """Return when a closure holds: a period, weekdays, or weekdays within a period."""
    days = say(" and ").join(WEEKDAYS[day] for day in sorted(closure.weekdays))
    if closure.first is None or closure.last is None:
        return say("on {days}", days=days) if days else say("always")
    shown = _of_every_year if closure.every_year else date_text
    first, last = shown(closure.first), shown(closure.last)
    span = (
        say("on {first}", first=first)
        if first == last
        else say("from {first} to {last}", first=first, last=last)
    )
    every = say(" every year") if closure.every_year else ""
    return (
        say("on {days} {span}{every}", days=days, span=span, every=every)
        if days
        else f"{span}{every}"
    )


def _of_every_year(day: date) -> str:
    return say("{day.day} {day:%b}", day=day)
