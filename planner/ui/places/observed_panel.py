"""High and low waters that the user saw, kept in a small table, beside the prediction."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QFileDialog,
    QGridLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.errors import PlannerError
from planner.sites.site import Site
from planner.ui.parts import Halves, body, button, caution, heading, quiet, refill, scrolling
from planner.ui.places.observed_rows import (
    Cells,
    Checked,
    cells_of_file,
    check_observed,
    comparison_texts,
    difference_rows,
)
from planner.ui.tables import RowsModel, alignment, rows_table, say_when_empty
from planner.ui.theme import SPACE
from planner.ui.work import Checkpoint
from planner.ui.workbench import Workbench
from planner.words import say


class ObservedPanel(QWidget):
    """A table to fill in on the left; what it says of the prediction on the right."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__()
        self.bench, self.state = bench, bench.state
        self.site: Site | None = None
        self._checked = Checked(())
        self._filling = False
        self._removed: list[tuple[int, Cells]] = []
        self._build()
        self.state.listen(self._state_changed)

    def _build(self) -> None:
        self.table = QTableWidget(0, 3)
        self.table.setAccessibleName(say("Observed high and low waters"))
        self.table.setMinimumHeight(9 * self.fontMetrics().height())
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        header = self.table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        say_when_empty(
            self.table, say("Nothing entered yet. Add a water that you saw, or load a file.")
        )
        self.table.itemChanged.connect(lambda _: self._changed())
        self.add = button(
            say("Add a water"), self.add_row, say("A row for a high or low water that you saw")
        )
        self.remove = button(say("Take out"), self.remove_row, say("Take the chosen line out"))
        self.remove.setEnabled(False)
        self.table.currentCellChanged.connect(lambda row, *_: self.remove.setEnabled(row >= 0))
        self.back = button(say("Put back"), self.put_back, say("Put back the line taken out last"))
        self.back.setEnabled(False)
        tip = say("A table with the header time,height,kind")
        self.load = button(say("Load a CSV file…"), self.pick_file, tip)
        buttons = QGridLayout()
        for at, each in enumerate((self.add, self.load, self.remove, self.back)):
            buttons.addWidget(each, at // 2, at % 2)
        self.hint = quiet()
        column = scrolling(self, say("Check against what you saw"))
        column.setContentsMargins(0, SPACE, 0, 0)
        left, right = QVBoxLayout(), QVBoxLayout()
        column.addWidget(Halves(left, right))
        left.addWidget(self.hint)
        left.addWidget(self.table, 1)
        left.addLayout(buttons)
        self._words = QVBoxLayout()
        self._words.setSpacing(SPACE // 2)
        self.differences = RowsModel(
            (say("Seen"), say("Water"), say("Time off"), say("Height off")), numbers=(2, 3)
        )
        self.difference_table = rows_table(
            self.differences, say("Differences from prediction"), wide=0
        )
        self.difference_table.setMinimumHeight(9 * self.fontMetrics().height())
        right.addWidget(heading(say("What they say")))
        right.addLayout(self._words)
        right.addWidget(self.difference_table, 1)
        right.addStretch(1)

    # -- showing -----------------------------------------------------------------------------

    def show_site(self, site: Site) -> None:
        """Show the waters kept for a place."""
        self.site = site
        self._removed.clear()
        self.back.setEnabled(False)
        unit = site.water.file_units
        self.table.setHorizontalHeaderLabels(
            [say("Local time"), say("Height, {unit}", unit=unit), say("High or low water")]
        )
        self.hint.setText(
            say(
                "Times on the clock of {key}, such as 2026-07-04 06:12. Heights above "
                "{datum} in {unit}, as in the place file; leave them empty when you only "
                "saw the time.",
                key=site.zone.key,
                datum=site.water.datum,
                unit=unit,
            )
        )
        self._check(None)

    def _show(self, checked: Checked) -> None:
        """Show what was found; the table is filled only when it holds something else."""
        self._checked = checked
        if checked.rows != self.rows():
            self._fill(checked.rows)
        self._say()

    def _say(self) -> None:
        checked, style = self._checked, self.state.style
        texts = [caution(text) for text in checked.problems]
        if not checked.problems:
            texts = [body(t) for t in comparison_texts(checked.found, len(checked.rows), style)]
            texts += [caution(f"{each.text} {each.remedy}") for each in checked.suspicions]
        refill(self._words, texts)
        shown = checked.found is not None and self.site is not None
        self.difference_table.setVisible(shown)
        if checked.found is not None and self.site is not None:
            self.differences.show(difference_rows(self.site, checked.found, style))

    def _fill(self, rows: Sequence[Cells]) -> None:
        self._filling = True
        self.table.setRowCount(0)
        for row in rows:
            self._insert(self.table.rowCount(), row)
        self._filling = False

    def _insert(self, at: int, cells: Cells) -> None:
        self.table.insertRow(at)
        for column in (0, 1):
            item = QTableWidgetItem(cells[column])
            if column == 1:
                item.setTextAlignment(alignment(figures=True))
            self.table.setItem(at, column, item)
        kind = QComboBox()
        kind.setAccessibleName(say("High or low water"))
        kind.addItems([say("high"), say("low")])
        kind.setCurrentIndex(1 if cells[2].casefold() in ("low", "l") else 0)
        kind.currentIndexChanged.connect(lambda _: self._changed())
        self.table.setCellWidget(at, 2, kind)

    # -- changing ----------------------------------------------------------------------------

    def rows(self) -> tuple[Cells, ...]:
        """Return what the table holds; rows without a time and a height are left out."""
        found = []
        for row in range(self.table.rowCount()):
            time, height = (self._cell(row, column) for column in (0, 1))
            kind = self.table.cellWidget(row, 2)
            if (time or height) and isinstance(kind, QComboBox):
                found.append((time, height, "low" if kind.currentIndex() else "high"))
        return tuple(found)

    def _cell(self, row: int, column: int) -> str:
        item = self.table.item(row, column)
        return item.text().strip() if item is not None else ""

    def add_row(self) -> None:
        """Add an empty row and begin typing in it; kinds alternate as the waters do."""
        rows = self.rows()
        self._filling = True
        at = self.table.rowCount()
        self._insert(at, ("", "", "low" if rows and rows[-1][2] == "high" else "high"))
        self._filling = False
        self.table.setCurrentCell(at, 0)
        self.table.edit(self.table.currentIndex())

    def remove_row(self) -> None:
        """Remove the chosen water; it can be put back."""
        at = self.table.currentRow()
        if at < 0:
            return
        kind = self.table.cellWidget(at, 2)
        words = ("low" if kind.currentIndex() else "high") if isinstance(kind, QComboBox) else ""
        self._removed.append((at, (self._cell(at, 0), self._cell(at, 1), words)))
        self.back.setEnabled(True)
        self.table.removeRow(at)
        self._changed()

    def put_back(self) -> None:
        """Put the water removed last back where it was."""
        at, cells = self._removed.pop()
        self.back.setEnabled(bool(self._removed))
        self._filling = True
        self._insert(min(at, self.table.rowCount()), cells)
        self._filling = False
        self._changed()

    def pick_file(self) -> None:
        """Let the user pick a CSV file of observed waters."""
        path, _ = QFileDialog.getOpenFileName(
            self, say("Load observed waters"), "", say("Tables (*.csv)")
        )
        if path:
            self.load_file(Path(path))

    def load_file(self, path: Path) -> None:
        """Add the waters of a CSV file to those in the table."""
        site = self.site
        if site is None:
            return

        def done(cells: tuple[Cells, ...]) -> None:
            if self.site is site:
                self._fill(tuple(dict.fromkeys([*self.rows(), *cells])))
                self._changed()

        def failed(error: PlannerError) -> None:
            lines = str(error).splitlines()
            self._checked = Checked(self.rows(), problems=tuple(line.strip() for line in lines))
            self._say()

        self.bench.desk.start(
            "observed file",
            say("Reading the waters"),
            lambda _: cells_of_file(site, path),
            done,
            failed,
        )

    def _changed(self) -> None:
        if not self._filling:
            self._check(self.rows())

    def _check(self, rows: Sequence[Cells] | None) -> None:
        site = self.site
        if site is None:
            return

        def work(_: Checkpoint) -> Checked:
            return check_observed(site, rows)

        # One after the other, so that an older table never lands on a newer one.
        self.bench.clerk.start("observed", say("Comparing the waters"), work, self._show)

    def _state_changed(self, changed: frozenset[str]) -> None:
        if "style" in changed:
            self._say()
