"""The logged trips, newest first, with what each gave, a line to find some of them, and sums."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QObject, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLineEdit,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.logbook import TripKey, TripOutcome
from planner.phrasing import short_one_in
from planner.ui.hauls.haul_cells import NOT_RECORDED
from planner.ui.hauls.haul_words import light_words, trips_words
from planner.ui.parts import quiet
from planner.ui.tables import TextModel
from planner.ui.theme import SPACE
from planner.words import say

_COLUMNS = (say("Trip"), say("Kept"), say("Judged"), say("Light"), say("Place"))
_NUMBERS = (1, 2, 3)
_NAME_EM = 20  # letters: a longer name of a trip or place is told by the pointer


class TripList(QWidget):
    """One row a trip; chosen: emitted with name and place when the user chooses one."""

    chosen = Signal(str, str)

    def __init__(self) -> None:
        super().__init__()
        self._all: Sequence[TripOutcome] = ()
        self._chosen: TripKey | None = None
        self._rows = _TripRows(self)
        self._filling = False
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Find: trip, month, year or place"))
        self.search.setAccessibleName(say("Find trips by name or place"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(lambda _: self._fill())
        self.sums = quiet()
        self.table = self._made_table()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE // 2)
        for widget, share in ((self.search, 0), (self.table, 1), (self.sums, 0)):
            column.addWidget(widget, share)

    def _made_table(self) -> QTableView:
        table = QTableView()
        table.setModel(self._rows)
        table.setAccessibleName(say("Logged trips, newest first"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.setWordWrap(False)
        table.verticalHeader().hide()
        # Rows of one height, so that a long log needs no measuring.
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setResizeContentsPrecision(60)  # rows measured for the width of a column
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        table.selectionModel().currentRowChanged.connect(self._row_chosen)
        return table

    def show_trips(self, trips: Sequence[TripOutcome], chosen: TripKey | None) -> None:
        """Show these trips, with one of them chosen."""
        as_many = len(trips) == len(self._all)
        self._all, self._chosen = trips, chosen
        self._fill()
        if as_many:
            return  # a count typed into a row leaves the columns as wide as they are
        one_place = len({trip.place for trip in trips}) < 2
        self.table.setColumnHidden(_COLUMNS.index(say("Place")), one_place)
        self._fit_columns(last=_COLUMNS.index(say("Light") if one_place else say("Place")))

    def _fit_columns(self, last: int) -> None:
        """Make columns as wide as their words, and the list wide enough for all of them.

        last: the last column that is seen, which takes the room that is left.
        """
        table, header = self.table, self.table.horizontalHeader()
        for column in range(len(_COLUMNS)):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.Interactive)
        table.resizeColumnsToContents()
        most = _NAME_EM * table.fontMetrics().averageCharWidth()
        for column in (0, last):
            header.resizeSection(column, min(header.sectionSize(column), most))
        bar = table.verticalScrollBar().sizeHint().width()
        table.setMinimumWidth(header.length() + bar + 2 * table.frameWidth())
        header.setSectionResizeMode(last, QHeaderView.ResizeMode.Stretch)

    def _fill(self) -> None:
        """Show the trips that the line asks for, every word of it."""
        words = self.search.text().casefold().split()
        trips = [trip for trip in self._all if _fits(trip, words)] if words else self._all
        self._filling = True
        at = self._rows.show(trips, self._chosen)
        selection = self.table.selectionModel()
        if at is None:
            selection.clear()
        elif at not in [index.row() for index in selection.selectedRows()]:
            self.table.selectRow(at)
        self._filling = False
        self.sums.setText(trips_words(trips) if trips else say("No trip fits."))

    def _row_chosen(self, current: QModelIndex, _before: QModelIndex) -> None:
        if current.isValid() and not self._filling:
            trip = self._rows.trips[current.row()]
            self._chosen = _key(trip)
            self.chosen.emit(*self._chosen)


class _TripRows(TextModel):
    """Puts a trip into words only when its row is seen, however long the log is."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(_COLUMNS, _NUMBERS, parent)
        self.trips: Sequence[TripOutcome] = ()
        self._told: dict[int, tuple[str, ...]] = {}  # rows in words, from when they are asked

    def show(self, trips: Sequence[TripOutcome], chosen: TripKey | None) -> int | None:
        """Show other trips and return the row of the chosen one.

        The same ones stay where they are, seen and chosen; those that came out otherwise are told.
        """
        pairs = tuple(zip(trips, self.trips, strict=False))
        as_many = len(trips) == len(self.trips)
        if as_many and all(trip is was or _key(trip) == _key(was) for trip, was in pairs):
            self.trips = trips
            for at, (trip, was) in enumerate(pairs):
                if trip is not was and trip != was:
                    self._told.pop(at, None)
                    self.dataChanged.emit(self.index(at, 0), self.index(at, len(_COLUMNS) - 1))
        else:
            self.beginResetModel()
            self.trips = trips
            self._told.clear()
            self.endResetModel()
        return next((at for at, trip in enumerate(trips) if _key(trip) == chosen), None)

    def _count(self) -> int:
        return len(self.trips)

    def _cell(self, row: int, column: int) -> str:
        told = self._told.get(row)
        if told is None:
            trip = self.trips[row]
            told = self._told[row] = tuple(_words(trip, at) for at in range(len(_COLUMNS)))
        return told[column]


def _key(trip: TripOutcome) -> TripKey:
    return trip.trip, trip.place


def _fits(trip: TripOutcome, words: Sequence[str]) -> bool:
    told = f"{trip.trip} {trip.place}".casefold()
    return all(word in told for word in words)


def _words(trip: TripOutcome, column: int) -> str:
    if column == 0:
        return trip.trip
    if column == 3:
        return light_words(trip.judged, trip.light, short_one_in)
    if column == 4:
        return trip.place
    count = trip.keepers if column == 1 else trip.judged
    return NOT_RECORDED if count is None else str(count)
