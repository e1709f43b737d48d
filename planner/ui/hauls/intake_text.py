"""What a table would bring into the log, in words and rows; no Qt."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Final

from planner.intake import Grid, Intake, Mapping, plan_intake, recall, understand
from planner.intake.meanings import IN_WORDS, MEANINGS
from planner.intake.plan import missing_clocks
from planner.intake.understanding import needs_order, needs_place, order_of
from planner.logbook import Log
from planner.logbook.joining import join
from planner.logbook.reading import Zones
from planner.words import counted, say

# Gives a table's grid under an encoding, None to find out.
Read = Callable[[str | None], Grid]

MEANING_CHOICES: Final = tuple((meaning, IN_WORDS[meaning]) for meaning in ("", *MEANINGS))
_EXAMPLES: Final = 3
_MOST_LINES: Final = 500
_QUESTIONS: Final = {
    "place": say("At which place was this? Fill it in above."),
    "order": say(
        "Dates such as 3/4 can mean two days, and these rows do not tell which: choose above."
    ),
    "clock": say("Some rows have a date without a time of day: give the usual one above."),
}


@dataclass(frozen=True)
class Offer:
    """A table as it is understood now, and what taking it in would do to the log.

    examples: the first values of each column, as one text. twice: how many of the new hauls are
    of a trap that stands in the same trip with other values.
    is_own: a haul table under its own names and without any fault, about which there is nothing
    to ask.
    """

    intake: Intake
    examples: tuple[str, ...]
    new: int
    filled: int
    known: int
    twice: int
    needs_order: bool
    needs_place: bool
    clocks: frozenset[str]

    @property
    def grid(self) -> Grid:
        """The table."""
        return self.intake.grid

    @property
    def mapping(self) -> Mapping:
        """How it is understood."""
        return self.intake.mapping

    @property
    def is_own(self) -> bool:
        """Whether there is nothing to ask."""
        columns = self.mapping.columns
        exact = all(name.casefold() == meaning for name, meaning in columns.items())
        whole = {"trip", "place"} <= set(columns.values())
        clear = not self.intake.problems and not self.intake.questions
        return exact and whole and clear and not self.twice and not self.needs_place


def first_offer(
    read: Read, log: Log, zones: Zones, now: datetime, place: str, checkpoint: Callable[[], None]
) -> Offer:
    """Return a table as it was understood last time, else as it seems; LogError when unreadable."""
    grid = read(None)
    seems = understand(grid, now, place)
    mapping = recall(grid.heading) or seems
    if mapping.encoding is not None and grid.guessed_letters:
        grid = read(mapping.encoding)
    if mapping is not seems:
        # What the dates prove goes before what was remembered.
        proved = order_of(grid, mapping, now)
        mapping = replace(mapping, order=proved or mapping.order, place=mapping.place or place)
    return offer(grid, mapping, log, zones, now, checkpoint)


def offer(
    grid: Grid,
    mapping: Mapping,
    log: Log,
    zones: Zones,
    now: datetime,
    checkpoint: Callable[[], None],
) -> Offer:
    """Return what a table would do under a mapping."""
    intake = plan_intake(grid, mapping, zones, now, checkpoint)
    joined = join(log.hauls, intake.hauls)
    return Offer(
        intake,
        tuple(_first_values(grid.column(name)) for name in grid.heading),
        new=len(joined.new),
        filled=len(joined.filled),
        known=joined.known,
        twice=sum(bool(intake.hauls[number].trap) for number in joined.beside),
        needs_order=needs_order(grid, mapping),
        needs_place=needs_place(grid, mapping),
        clocks=frozenset(missing_clocks(grid, mapping)),
    )


def _first_values(cells: Sequence[str]) -> str:
    told = (cell.strip() for cell in cells)
    return " | ".join(list(dict.fromkeys(cell for cell in told if cell))[:_EXAMPLES])


def made_of(grid: Grid) -> str:
    """Return what kind of file it is, and how large."""
    return say(
        "{source}: {made_of}, {many} below the heading.",
        source=grid.source,
        made_of=grid.made_of,
        many=_lines(grid),
    )


def found(offer: Offer) -> str:
    """Return what taking it in would do, and what was decided on the way."""
    intake = offer.intake
    if intake.questions:
        return "\n".join(_QUESTIONS[question] for question in intake.questions)
    parts = [counted(offer.new, "new haul")] if offer.new or not offer.filled else []
    if offer.filled:
        parts.append(
            say("{rows} filled where nothing was recorded", rows=counted(offer.filled, "row"))
        )
    if offer.known:
        parts.append(say("{known} in the log already", known=offer.known))
    notes = list(intake.notes)
    if offer.twice:
        notes.append(
            say(
                "{hauls} of traps that stand in the same trip with other values; both will stand",
                hauls=counted(offer.twice, "haul"),
            )
        )
    return "\n".join([f"{', '.join(parts)}.", *(f"{note}." for note in notes)])


def button_text(offer: Offer) -> str:
    """Return what the button does."""
    count = offer.new + offer.filled
    if offer.intake.problems:
        return say("Take in {hauls}", hauls=counted(count, "good haul"))
    return say("Take in {hauls}", hauls=counted(count, "haul"))


def problem_lines(offer: Offer) -> Sequence[str]:
    """Return every problem as a sentence; of very many, the first."""
    problems = [str(problem) for problem in offer.intake.problems]
    if len(problems) > _MOST_LINES:
        return [
            *problems[:_MOST_LINES],
            say("and {problems} more", problems=len(problems) - _MOST_LINES),
        ]
    return problems


def taken_words(source: str, added: int, filled: int) -> str:
    """Return what was done."""
    if not added and not filled:
        return say(
            "{source}: nothing added; every haul in it is in the log already.", source=source
        )
    parts = [say("{hauls} added", hauls=counted(added, "haul"))] if added else []
    if filled:
        parts.append(say("{rows} filled", rows=counted(filled, "row")))
    return say(
        "{source}: {parts}. Undo in the Edit menu takes them out again.",
        source=source,
        parts=", ".join(parts),
    )


def _lines(grid: Grid) -> str:
    count = len(grid.lines)
    return counted(count, "row") if grid.unit == "row" else counted(count, "line")
