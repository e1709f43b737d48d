"""What can go wrong in a way that the user can put right.

Everything the program says to a person about a failure is a `PlannerError`; any other
exception is our own fault and is reported as such.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.words import counted, say


class PlannerError(Exception):
    """A failure the user can act on; its text is a sentence that ends in what to do."""


@dataclass(frozen=True)
class Problem:
    """One thing wrong with an input.

    where: the field ("water.constituents.M2.amplitude") or line ("line 7, keepers").
    value: what was found there, as written; "" when nothing was.
    what: what is wrong, as a clause without a full stop.
    remedy: what to do about it, as a clause without a full stop.
    """

    where: str
    value: str
    what: str
    remedy: str

    def __str__(self) -> str:
        shown = self.value if len(self.value) <= 60 else self.value[:57] + "..."
        found = say(" (found {shown})", shown=shown) if shown else ""
        sentence = f"{self.where}: {self.what}{found}; {self.remedy}"
        # What was found may hold anything; a message must not move the user's cursor.
        return "".join(letter if letter.isprintable() else "\ufffd" for letter in sentence)


class InputError(PlannerError):
    """An input file or value that cannot be used, with every problem found in it."""

    def __init__(self, source: str, problems: Sequence[Problem]) -> None:
        self.source = source
        self.problems = tuple(problems)
        lines = "\n".join(f"  {problem}" for problem in self.problems)
        count = len(self.problems)
        super().__init__(f"{source}: {counted(count, 'problem')}\n{lines}")


class RangeError(PlannerError):
    """A date outside what a part of the program can compute; says the range that works."""


class Cancelled(Exception):  # noqa: N818  (a decision of the user, not an error)
    """Raised by a checkpoint to stop work whose result is no longer wanted."""
