"""The words of the program in the reader's language: every text a person reads passes here.

`say` takes the English text, finds it in the language that was set with `speak`, and fills in
its values by that language's habits of numbers and dates. The language is set before the rest of
the program is imported (`planner.cli.main`), so that headings made at import are in it too.
"""

from __future__ import annotations

import string
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from numbers import Real
from typing import Any, Final

MINUS: Final = "−"  # U+2212, as wide as a plus; a hyphen before a number is easily overlooked


@dataclass(frozen=True)
class Language:
    """A language other than English.

    `look_up(text, sense)` returns the translation, "" where there is none. `decimal` and `group`
    stand in numbers, `percent` after them.
    """

    code: str
    look_up: Callable[[str, str], str]
    decimal: str
    group: str
    percent: str


_language: Language | None = None


def speak(language: Language | None) -> None:
    """Set the language of what is said from now on; None for English."""
    global _language
    _language = language


def spoken() -> str:
    """Return the code of the language in use, such as "en"."""
    return "en" if _language is None else _language.code


def say(text: str, /, *, sense: str = "", **values: Any) -> str:
    """Return a text in the reader's language, with its `{named}` values filled in.

    Values may carry a format as in `str.format`. Numbers below zero get a real minus; for
    programs to read, a number is formatted without `say`. `sense` tells apart two texts that are
    one in English, such as "light" for a crab and for the day. A text without values is left as
    it is, braces and all.
    """
    if _language is None and values:
        plain = text.format(**values)
        # Few English texts have a sign; to look at each number of the others takes eight times
        # as long, and the first picture of the window says three thousand.
        if "-" not in plain and "+" not in plain:
            return plain
    said = text if _language is None else _language.look_up(text, sense) or text
    return _Habits(_language).format(said, **values) if values else said


def counted(count: int, one: str, many: str = "") -> str:
    """Return a count with its noun: "1 trap", "3 traps". `many` where no plain s makes it."""
    noun = say(one) if count == 1 else say(many or f"{one}s")
    return say("{count:,} {noun}", count=count, noun=noun)


def begun(text: str) -> str:
    """Return a text as a sentence begins: its first letter large, the others as they are."""
    return f"{text[:1].upper()}{text[1:]}"


class _Habits(string.Formatter):
    """Formats numbers and dates as the readers of a language, None for English, write them."""

    def __init__(self, language: Language | None) -> None:
        self.language = language

    def format_field(self, value: Any, format_spec: str) -> Any:
        if self.language and isinstance(value, date) and "%" in format_spec:
            return value.strftime(_named(self.language, value, format_spec))
        written = super().format_field(value, format_spec)
        return self._number(written) if isinstance(value, Real) else written

    def _number(self, written: str) -> str:
        swapped = {"-": MINUS}
        if "0" in written and not any(digit in written for digit in "123456789"):
            swapped = {"-": "", "+": ""}  # what is rounded to zero is on neither side of it
        if self.language:
            swapped |= {
                ",": self.language.group,
                ".": self.language.decimal,
                "%": self.language.percent,
            }
        return "".join(swapped.get(sign, sign) for sign in written)


def _named(language: Language, day: date, format_spec: str) -> str:
    """Return a format of dates with the names of days and months put in, in the language."""
    for directive, sense in _NAMES.items():
        if directive in format_spec:
            name = language.look_up(day.strftime(directive), sense)
            format_spec = format_spec.replace(directive, name or directive)
    return format_spec


# The names that a language must give, by the sense they are looked up in. "May" needs it.
_NAMES = {"%a": "short day", "%A": "day", "%b": "short month", "%B": "month"}


def names_of_days_and_months() -> list[tuple[str, str]]:
    """Return every name of a day or month with its sense, as `say` looks them up."""
    week = [date(2001, 1, day) for day in range(1, 8)]
    year = [date(2001, month, 1) for month in range(1, 13)]
    pairs = [(day.strftime(each), _NAMES[each]) for each in ("%a", "%A") for day in week]
    pairs += [(day.strftime(each), _NAMES[each]) for each in ("%b", "%B") for day in year]
    return pairs
