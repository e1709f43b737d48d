"""What the user is looking at: a plain object that the panels follow; no Qt here."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, fields
from datetime import date
from typing import Any, Literal

from planner.phrasing import Style

ViewName = Literal["dates", "load", "hauls", "evidence", "places"]
ThemeChoice = Literal["system", "light", "dark"]

Listener = Callable[[frozenset[str]], None]


@dataclass
class ViewState:
    """Which view, day and plan are chosen, and how numbers are shown.

    day: the selected local day. plan: rank of the chosen plan, None before there is one.
    as_table: whether the strip is shown as a table of the same days. care_points: the
    difference in light crabs of 100 that the user finds worth caring about. language: the code
    of the language chosen for the next start, "" for the system's.
    """

    today: date
    day: date
    view: ViewName = "dates"
    plan: int | None = None
    as_table: bool = False
    care_points: int = 10
    style: Style = field(default_factory=Style)
    theme: ThemeChoice = "system"
    language: str = ""
    _listeners: list[Listener] = field(default_factory=list, repr=False, compare=False)

    def listen(self, listener: Listener) -> None:
        """Call the listener with the names of the fields that changed, after every change."""
        self._listeners.append(listener)

    def forget(self, listener: Listener) -> None:
        """Stop calling a listener; one that never listened is no error."""
        if listener in self._listeners:
            self._listeners.remove(listener)

    def change(self, **values: Any) -> None:
        """Set fields by name and tell the listeners which of them really changed."""
        known = {each.name for each in fields(self) if not each.name.startswith("_")}
        unknown = values.keys() - known
        if unknown:
            raise TypeError(f"no such field: {', '.join(sorted(unknown))}")
        changed = {name for name, value in values.items() if getattr(self, name) != value}
        for name in changed:
            setattr(self, name, values[name])
        if changed:
            self.tell(*changed)

    def tell(self, *names: str) -> None:
        """Tell the listeners of fields whose meaning changed, such as the system's own theme."""
        for listener in tuple(self._listeners):
            listener(frozenset(names))
