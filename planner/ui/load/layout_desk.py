"""The layout of the next trip as the user has it: what was proposed, and the traps moved since."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Signal

from planner.handouts.layout import TrapLayout, moved, trip_layout
from planner.handouts.moved_traps import read_moves, trips_so_far, write_moves
from planner.logbook import TripKey
from planner.ui.hauls.haul_rows import trip_as_laid_out
from planner.ui.workbench import Workbench
from planner.words import say

Moves = dict[str, str]

_REST_MS = 60  # the view that asks is put up and painted first


class LayoutDesk(QObject):
    """Holds the layout of the open place's next trip; one for all views of a workbench.

    layout: None until it has been worked out, and at a place without spots.
    """

    changed = Signal()

    def __init__(self, bench: Workbench) -> None:
        super().__init__(bench)
        self.bench = bench
        self.layout: TrapLayout | None = None
        self.moves: Moves = {}
        self._done: list[tuple[str, Moves]] = []
        self._undone: list[tuple[str, Moves]] = []
        self._trip: tuple[str, int] | None = None

    @classmethod
    def of(cls, bench: Workbench) -> LayoutDesk:
        """Return the one of a workbench, made when there is none yet."""
        found = bench.findChild(cls)
        return found if found is not None else cls(bench)

    def refresh(self) -> None:
        """Work out the layout; another place or a further trip has moves of its own."""
        site, log = self.bench.site, self.bench.log
        if site is None:
            return
        trip = (site.name, trips_so_far(site.name, log))
        if trip != self._trip:
            self._trip = trip
            self._done, self._undone = [], []
            self.moves = read_moves(site.name, log)
        moves = dict(self.moves)
        self.bench.desk.start(
            "layout",
            say("Laying out the traps"),
            lambda _: trip_layout(site, log, moves),
            self._show,
            rest_ms=_REST_MS,
        )

    def _show(self, layout: TrapLayout) -> None:
        self.layout = layout if layout.spots else None
        self.changed.emit()

    # -- moving ------------------------------------------------------------------------------

    @property
    def undo_name(self) -> str | None:
        """What undo would take back."""
        return self._done[-1][0] if self._done else None

    @property
    def redo_name(self) -> str | None:
        """What redo would do again."""
        return self._undone[-1][0] if self._undone else None

    def move(self, trap: str, spot: str) -> None:
        """Put a trap at another spot of the place."""
        if self.layout is None or self.spot_of(trap) in (None, spot):
            return
        at_first = next(each.spot for each in self.layout.proposed if each.trap == trap)
        moves = {label: at for label, at in self.moves.items() if label != trap}
        if spot != at_first:
            moves[trap] = spot
        self._make(say("{trap} to {spot}", trap=trap, spot=spot), moves)

    def as_proposed(self) -> None:
        """Put every trap back where it was proposed."""
        if self.moves:
            self._make(say("layout as proposed"), {})

    def spot_of(self, trap: str) -> str | None:
        """Return where a trap goes; None for one that is not aboard."""
        placed = () if self.layout is None else self.layout.placed
        return next((each.spot for each in placed if each.trap == trap), None)

    def undo(self) -> None:
        """Take back the newest move."""
        if self._done:
            name, before = self._done.pop()
            self._undone.append((name, self.moves))
            self._take(before)

    def redo(self) -> None:
        """Make the move again that was taken back last."""
        if self._undone:
            name, after = self._undone.pop()
            self._done.append((name, self.moves))
            self._take(after)

    def _make(self, name: str, moves: Moves) -> None:
        self._done.append((name, self.moves))
        self._undone.clear()
        self._take(moves)

    def _take(self, moves: Moves) -> None:
        """Show the moves at once, keep them, and work out what they are worth."""
        assert self.layout is not None
        assert self.bench.site is not None
        self.moves = moves
        write_moves(self.bench.site.name, self.bench.log, moves)
        placed = moved(self.layout.proposed, moves, self.layout.spots)
        worth = say("Working out what this layout is worth…") if self.layout.sentence else ""
        self.layout = replace(self.layout, placed=placed, sentence=worth)
        self.changed.emit()
        self.refresh()

    # -- into the log ------------------------------------------------------------------------

    @property
    def may_log(self) -> bool:
        """Whether there is a layout, and a log that takes it."""
        book = self.bench.book
        return self.layout is not None and book is not None and not book.read_only

    def start_trip(self) -> None:
        """Begin a trip in the log with the traps at the spots laid out, and go there."""
        site, log, layout = self.bench.site, self.bench.log, self.layout
        if site is None or layout is None:
            return
        rows = trip_as_laid_out(log, site, self.bench.state.today, layout)
        name = rows[0].trip
        self.bench.change_log(
            lambda book: book.save_trip(name, rows, change=say("start of trip {name}", name=name)),
            lambda _: self._started((name, site.name)),
        )

    def _started(self, trip: TripKey) -> None:
        self.bench.trip_to_fill = trip
        self.bench.state.change(view="hauls")
        self.bench.notice.emit(
            say(
                "Trip {name} stands in the log with the traps as laid out. Correct what "
                "went otherwise; Undo in the Edit menu takes it out again.",
                name=trip[0],
            )
        )
