"""Saves of place files that can be undone by name, newest first; no Qt here."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

_KEPT: Final = 50


@dataclass(frozen=True)
class Step:
    """One save, or (saved False) an edit that undo took off the screen before it was saved."""

    name: str
    before: str
    after: str
    saved: bool = True


@dataclass
class SaveHistory:
    """What was saved of one place file while the view has been open."""

    done: list[Step] = field(default_factory=list)
    undone: list[Step] = field(default_factory=list)

    def add(self, step: Step) -> None:
        """Remember a new step; what was undone before it is gone."""
        self.done = [*self.done[-(_KEPT - 1) :], step]
        self.undone.clear()

    def put_aside(self, text: str, edit: str, name: str) -> None:
        """Remember an edit that was not saved, so that redo brings it back."""
        self.undone.append(Step(name, text, edit, saved=False))

    def undo(self) -> Step:
        """Move the newest step to what can be redone, and return it."""
        step = self.done.pop()
        self.undone.append(step)
        return step

    def redo(self) -> Step:
        """Take back the newest undoing, and return its step."""
        step = self.undone.pop()
        if step.saved:
            self.done.append(step)
        return step
