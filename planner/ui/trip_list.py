"""The logged trips, newest first, with what each gave."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView

from planner.logbook import TripOutcome
from planner.ui.haul_cells import NOT_RECORDED
from planner.ui.haul_rows import TripKey, light_words
from planner.ui.tables import RowsModel

_COLUMNS = ("Trip", "Keepers", "Judged", "Light", "Place")


class TripList(QTableView):
    """One row a trip; chosen: emitted with name and place when the user chooses one."""

    chosen = Signal(str, str)

    def __init__(self) -> None:
        super().__init__()
        self._rows = RowsModel(_COLUMNS, numbers=(1, 2), parent=self)
        self._keys: list[TripKey] = []
        self._filling = False
        self.setModel(self._rows)
        self.setAccessibleName("Logged trips, newest first")
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setResizeContentsPrecision(60)  # rows measured for the width of a column
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(True)
        self.selectionModel().currentRowChanged.connect(self._row_chosen)

    def show_trips(self, trips: Sequence[TripOutcome], chosen: TripKey | None) -> None:
        """Show these trips, with one of them chosen."""
        keys = [(trip.trip, trip.place) for trip in trips]
        self._filling = True
        self._keys = keys
        self._rows.show([_row(trip) for trip in trips])
        one_place = len({trip.place for trip in trips}) < 2
        self.setColumnHidden(_COLUMNS.index("Place"), one_place)
        modes = QHeaderView.ResizeMode
        self.horizontalHeader().setSectionResizeMode(
            _COLUMNS.index("Light"), modes.Stretch if one_place else modes.Interactive
        )
        self.resizeColumnsToContents()
        if chosen in keys:
            self.selectRow(keys.index(chosen))
        self._filling = False

    def _row_chosen(self, current: QModelIndex, _before: QModelIndex) -> None:
        if current.isValid() and not self._filling:
            self.chosen.emit(*self._keys[current.row()])


def _row(trip: TripOutcome) -> tuple[str, ...]:
    return (
        trip.trip,
        NOT_RECORDED if trip.keepers is None else str(trip.keepers),
        NOT_RECORDED if trip.judged is None else str(trip.judged),
        light_words(trip.judged, trip.light).removeprefix("about "),
        trip.place,
    )
