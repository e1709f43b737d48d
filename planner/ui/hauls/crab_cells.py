"""One cell of the table of single crabs: its heading, what it shows, what typing means; no Qt."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass, replace
from typing import Any, Final

from planner.logbook import Crab
from planner.logbook.columns import CellError
from planner.logbook.entries import ABDOMENS, GRADES, PEELER_SIGNS, SEXES, SHELLS, WIDTHS_BY
from planner.logbook.rules import crab_problems
from planner.phrasing import number_text
from planner.ui.hauls.log_words import IN_WORDS
from planner.words import say


@dataclass(frozen=True)
class CrabColumn:
    """A column: the field of a crab, its heading, its words; without words a number or text."""

    field: str
    heading: str
    words: tuple[str, ...] = ()
    is_number: bool = False


CRAB_COLUMNS: Final = (
    CrabColumn("sex", say("Sex"), SEXES),
    CrabColumn("width_mm", say("Width (mm)"), is_number=True),
    CrabColumn("width_by", say("Measured"), WIDTHS_BY),
    CrabColumn("weight_g", say("Weight (g)"), is_number=True),
    CrabColumn("shell", say("Shell"), SHELLS),
    CrabColumn("peeler_sign", say("Peeler sign"), PEELER_SIGNS),
    CrabColumn("abdomen", say("Abdomen"), ABDOMENS),
    CrabColumn("grade", say("Fullness"), GRADES),
    CrabColumn("meat_g", say("Picked meat (g)"), is_number=True),
    CrabColumn("notes", say("Notes")),
)


def crab_text(crab: Crab, column: CrabColumn) -> str:
    """Return the text that a person would type for the cell; "" for not recorded."""
    value = getattr(crab, column.field)
    if value is None:
        return ""
    if column.is_number:
        return number_text(value)
    return IN_WORDS[value] if column.words and value else str(value)


def crab_with(crab: Crab, column: CrabColumn, text: str) -> Crab:
    """Return the crab with a cell as typed; "" means not recorded, a word may be cut short.

    CellError when the cell cannot hold it.
    """
    text = text.strip()
    made = replace(crab, **{column.field: _value(column, text)})
    for problem in crab_problems(made, lambda name: name):
        if problem.where in (column.field, "meat_g"):
            raise CellError(problem.what, problem.remedy)
    return made


def crab_as_above(above: Crab | None) -> Crab:
    """Return a new crab: measured as the one above, nothing of its own recorded."""
    return Crab() if above is None else Crab(width_by=above.width_by)


def says_something(crab: Crab) -> bool:
    """Tell whether anything of the crab itself is recorded."""
    return replace(crab, width_by="") != Crab()


def _value(column: CrabColumn, text: str) -> Any:
    if column.is_number:
        if not text:
            return None
        try:
            return float(text.replace(",", "."))
        except ValueError:
            raise CellError(say("is not a number"), say("write digits, such as 142")) from None
    if not column.words or not text:
        return text
    shown = {_plain(IN_WORDS[word]): word for word in column.words}
    fits = {word for said, word in shown.items() if said.startswith(_plain(text))}
    if len(fits) != 1:
        words = ", ".join(IN_WORDS[word] for word in column.words)
        raise CellError(say("is not one of the words"), say("write {words}", words=words))
    return fits.pop()


def _plain(word: str) -> str:
    """Return a word in small letters without accents, as fingers in a hurry type it."""
    parts = unicodedata.normalize("NFD", word.casefold())
    return "".join(letter for letter in parts if not unicodedata.combining(letter))
