"""Moving a plan by hand: what is held, where it snaps to, and the way back."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Final, Literal

from PySide6.QtCore import QObject, Signal

from planner.ui.dates.own_plans import read_own, write_own
from planner.ui.strip.days import instant_at, place_of_instant
from planner.ui.workbench import Workbench

if TYPE_CHECKING:
    from planner.trips import Plan

Part = Literal["whole", "set", "haul"]
_STEP: Final = timedelta(minutes=15)
_KEPT: Final = 50


@dataclass(frozen=True)
class _Chosen:
    """What was chosen at a moment: a rank, and the user's own times if there were any."""

    rank: int | None
    own: Plan | None


class PlanMoves(QObject):
    """Takes a plan by one end or as a whole; the times snap to what every limit allows.

    The plan that is moved stays among the ranked ones: the moved one is the user's own. It is
    the chosen plan from the first movement on. changed: after every step and every way back.
    """

    changed = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__(bench)
        self.bench = bench
        self.part: Part | None = None
        self._from: Plan | None = None
        self._before = _Chosen(None, None)
        self._steps = 0
        self._done: list[_Chosen] = []
        # Whether the times kept for the open place have been looked for.
        self._recalled = False
        bench.site_changed.connect(self._forget)
        bench.plans_changed.connect(self._recall)

    @property
    def can_undo(self) -> bool:
        """Whether there is a move to take back."""
        return self.part is not None or bool(self._done)

    def hold(self, rank: int, part: Part) -> None:
        """Take a plan by its set, its haul or as a whole."""
        self.keep()
        self._before = _Chosen(self.bench.state.plan, self.bench.own_plan)
        self.bench.state.change(plan=rank)
        self._from, self._steps = self.bench.plan, 0
        self.part = part if self._from is not None else None
        self.changed.emit()

    def drag(self, days: float) -> None:
        """Move what is held by days of the strip from where it was taken."""
        if self._from is None or self.bench.site is None:
            return
        zone = self.bench.site.zone
        self._move(
            *(
                instant_at(place_of_instant(at, zone) + days, zone)
                for at in (self._from.set_at, self._from.haul_at)
            )
        )

    def step(self, quarters: int) -> None:
        """Move what is held on by quarter hours, past times that no limit allows."""
        if self._from is not None:
            self._steps += quarters
            by = self._steps * _STEP
            self._move(self._from.set_at + by, self._from.haul_at + by)

    def _move(self, set_at: datetime, haul_at: datetime) -> None:
        assert self._from is not None
        if self.part == "set":
            haul_at = self._from.haul_at
        elif self.part == "haul":
            set_at = self._from.set_at
        self.bench.draw_plan(set_at, haul_at)
        self.changed.emit()

    def keep(self) -> None:
        """Let go; what was chosen before can be had back."""
        if self.part is not None and self.bench.own_plan is not self._before.own:
            self._done = [*self._done[-(_KEPT - 1) :], self._before]
            self._remember()
        self._let_go()

    def undo(self) -> None:
        """Take back what is being moved, or else the newest move."""
        if self.part is not None:
            before = self._before
        elif self._done:
            before = self._done.pop()
        else:
            return
        self._let_go()
        self.bench.choose_own(before.own, before.rank)
        self._remember()
        self.changed.emit()

    def _let_go(self) -> None:
        self.part, self._from = None, None
        self.changed.emit()

    def _remember(self) -> None:
        site, own = self.bench.site, self.bench.own_plan
        if site is not None and self._is_kept():
            write_own(site.name, None if own is None else (own.set_at, own.haul_at))

    def _recall(self) -> None:
        """Have the user's own times back at the next start, while they are still to come."""
        site = self.bench.site
        if self._recalled or site is None:
            return
        self._recalled = True
        times = read_own(site.name) if self._is_kept() else None
        if times is None or times[0].astimezone(site.zone).date() < self.bench.state.today:
            return
        self._done.append(_Chosen(self.bench.state.plan, None))
        self.bench.draw_plan(*times)
        self.changed.emit()

    def _is_kept(self) -> bool:
        """Tell whether the open place is the user's, and not only shown."""
        return self.bench.source.keep and not self.bench.source.demo

    def _forget(self) -> None:
        self._done.clear()
        self._recalled = False
        self._let_go()
