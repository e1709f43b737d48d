"""The words of tables in every language that is in `resources/tables`, a file each."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from planner.assets import resource
from planner.logbook.columns import unguard_formula


@dataclass(frozen=True)
class Vocabulary:
    """What words mean, those of all languages together, plain as `words_of` and `plain` give them.

    months: the number of a month by how its name begins. weekdays: how their names begin.
    ordinals, of, at, hours: what stands around the numbers of a date or a clock. degrees: words
    beside a unit. not_recorded: cells that stand for no count. units: "m", "ft", "C" or "F" by
    its words. columns: the meaning of a column by its name.
    """

    months: Mapping[str, int]
    weekdays: tuple[str, ...]
    ordinals: tuple[str, ...]
    of: tuple[str, ...]
    at: tuple[str, ...]
    hours: tuple[str, ...]
    degrees: frozenset[str]
    not_recorded: frozenset[str]
    units: Mapping[str, str]
    columns: Mapping[str, str]


@cache
def vocabulary() -> Vocabulary:
    """Return the words of all languages."""
    files = sorted(resource("tables").glob("*.toml"))
    languages = [tomllib.loads(path.read_text("utf-8")) for path in files]

    def gathered(key: str) -> tuple[str, ...]:
        return tuple(dict.fromkeys(plain(word) for each in languages for word in each[key]))

    return Vocabulary(
        months={
            plain(begin): number
            for each in languages
            for number, begins in enumerate(each["months"], start=1)
            for begin in begins.split(", ")
        },
        weekdays=gathered("weekdays"),
        ordinals=gathered("ordinals"),
        of=gathered("of"),
        at=gathered("at"),
        hours=gathered("hours"),
        degrees=frozenset(gathered("degrees")),
        not_recorded=frozenset(gathered("not_recorded")),
        units=_by_word(languages, "units"),
        columns=_by_word(languages, "columns"),
    )


def _by_word(languages: Sequence[dict[str, Any]], table: str) -> dict[str, str]:
    return {
        words_of(word): meaning
        for each in languages
        for meaning, words in each[table].items()
        for word in words
    }


def month_of(name: str) -> int | None:
    """Return the number of a month by its written name, short or long; None for no month's."""
    written = plain(name)
    found = (at for begin, at in vocabulary().months.items() if written.startswith(begin))
    return next(found, None)


def plain(text: str) -> str:
    """Return a text in small letters without accents, its blanks single."""
    letters = unicodedata.normalize("NFD", text.casefold())
    return " ".join("".join(each for each in letters if not unicodedata.combining(each)).split())


def words_of(name: str) -> str:
    """Return a name in plain small letters and single spaces: "Trap-No." is "trap no"."""
    letters = plain(unicodedata.normalize("NFKD", unguard_formula(name)))
    return " ".join(re.sub(r"[^0-9a-z]+", " ", letters.replace("°", " deg ")).split())
