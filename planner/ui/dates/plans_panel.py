"""The ranked plans as a table, the wishes that break ties, and what the limits left out."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any, Final
from zoneinfo import ZoneInfo

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QObject, Qt
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QTableView

from planner.phrasing import Style, day_clock_text, height_text, interval_text, short_one_in
from planner.ui.dates.plan_words import Days, moved_ranks
from planner.ui.parts import Card, quiet
from planner.ui.tables import Index, TextModel
from planner.ui.when_seen import WhenSeen
from planner.ui.whole_rows import WholeRows, WideTable
from planner.ui.workbench import Workbench
from planner.words import say

if TYPE_CHECKING:
    from planner.trips import Plan

_COLUMNS: Final = (
    ("", say("Rank by expected full keepers; ↑ and ↓: places gained and lost by the last wish")),
    (say("Set"), say("When the first trap goes in")),
    (say("Haul"), say("When hauling begins")),
    (say("Full keepers"), say("Expected, with the range that holds 8 times in 10")),
    (say("Light"), say("Share of crabs that will be light")),
    (say("Cover"), say("Least water over the top of any trap")),
)
_FIGURES: Final = (0, 4, 5)
# Looked up in Qt for every cell that is drawn, it would be felt.
_TIP: Final = Qt.ItemDataRole.ToolTipRole
# Each wish: what Wishes calls it, its accessible name, and its choices; the boxes read as a
# sentence: haul on any water, any time, for most keepers.
_WISHES: Final = (
    (
        "haul_water",
        say("Water at the haul"),
        (
            ("any", say("any water")),
            ("rising", say("rising water")),
            ("falling", say("falling water")),
            ("turning", say("turning water")),
        ),
    ),
    (
        "haul_time",
        say("Time of the haul"),
        (("any", say("any time")), ("early", say("early")), ("late", say("late"))),
    ),
)
_TRADES: Final = (
    (("any", "any"), say("most keepers")),
    (("short", "any"), say("short soak")),
    (("any", "long"), say("long drive")),
    (("short", "long"), say("both of these")),
)


def _roughly(count: int) -> str:
    """Return a count to two figures: "2.9 million", "79,000"."""
    if count >= 1_000_000:
        return say("{count:.1f} million", count=count / 1000000.0)
    digits = max(len(str(count)) - 2, 0)
    return say("{count:,}", count=round(count, -digits))


def _light_cell(share: float) -> str:
    """Return a light share, short enough for its column."""
    return say("< 1 in 50") if share < 0.02 else short_one_in(share)


class PlansModel(TextModel):
    """One row a plan."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__([name for name, _ in _COLUMNS], _FIGURES, parent)
        self._plans: Sequence[Plan] = ()
        self._zone = ZoneInfo("UTC")
        self._style = Style()
        self._moved: Mapping[int, int] = {}

    def show(
        self,
        plans: Sequence[Plan],
        zone: ZoneInfo,
        style: Style,
        moved: Mapping[int, int] | None = None,
    ) -> None:
        """Show other plans; moved: by how many places ranks are better than before a wish."""
        self.beginResetModel()
        self._plans, self._zone, self._style, self._moved = plans, zone, style, moved or {}
        self.endResetModel()

    def plan(self, row: int) -> Plan:
        """Return the plan of a row."""
        return self._plans[row]

    def _count(self) -> int:
        return len(self._plans)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role == _TIP and orientation == Qt.Orientation.Horizontal:
            return _COLUMNS[section][1]
        return super().headerData(section, orientation, role)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == _TIP:
            plan = self._plans[index.row()]
            return "\n".join((*plan.reasons, *plan.warnings))
        return super().data(index, role)

    def _cell(self, row: int, column: int) -> str:
        plan = self._plans[row]
        match column:
            case 0:
                places = self._moved.get(plan.rank, 0)
                moved = f"{'↑' if places > 0 else '↓'}{abs(places)} " if places else ""
                return f"{moved}{plan.rank}" if plan.rank else say("own")
            case 1:
                return day_clock_text(plan.set_at, self._zone, self._style)
            case 2:
                return day_clock_text(plan.haul_at, self._zone, self._style)
            case 3:
                return interval_text(plan.full_keepers, ".0f")
            case 4:
                return _light_cell(plan.light_share.mean)
            case _:
                cover = plan.lowest_cover_m
                return "–" if cover is None else height_text(cover, self._style)


class PlansPanel(WhenSeen, Card):
    """Pick a plan; wishes decide between plans of the same catch, or are traded against it."""

    def __init__(self, bench: Workbench) -> None:
        super().__init__(say("Ranked plans, the next 12 weeks"))
        self.bench, self.state = bench, bench.state
        self.model = PlansModel(self)
        self.table = WideTable()
        self.table.setModel(self.model)
        self.table.setAccessibleName(say("Ranked plans"))
        self.table.verticalHeader().hide()
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        self.table.setWordWrap(False)
        self.table.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QTableView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + 8)
        self.table.selectionModel().currentRowChanged.connect(self._row_chosen)
        self.left_out = quiet()
        self._own: Plan | None = None
        self._before_wish: dict[Days, int] = {}
        self.column.addLayout(self._wishes())
        self.column.addWidget(WholeRows(self.table), 1000)
        self.column.addWidget(self.left_out)
        self.column.addStretch(1)
        bench.plans_changed.connect(self.refresh_when_seen)
        bench.site_changed.connect(self._another_place)
        self.state.listen(self._state_changed)
        self.refresh()

    def _wishes(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addWidget(QLabel(say("Haul on")))
        self._boxes: dict[str, QComboBox] = {}
        for name, label, options in _WISHES:
            box = self._box(label, say("Decides between plans that promise the same catch"))
            for value, words in options:
                box.addItem(words, value)
            row.addWidget(box)
            self._boxes[name] = box
        row.addWidget(QLabel(say("for")))
        self._trade = self._box(
            say("What plans are ranked for"),
            say(
                "Short soak: ranked as if each day of soak took a fifth of the keepers.\n"
                "Long drive: ranked by keepers a drive, two where the haul is on another day."
            ),
        )
        for pair, words in _TRADES:
            self._trade.addItem(words, pair)
        row.addWidget(self._trade)
        row.addStretch(1)
        return row

    def _box(self, label: str, tip: str) -> QComboBox:
        box = QComboBox()
        box.setAccessibleName(label)
        box.setToolTip(tip)
        box.activated.connect(self._wish)
        return box

    def _wish(self) -> None:
        from planner.trips import Wishes

        self._before_wish = self._ranks()
        wished = {name: box.currentData() for name, box in self._boxes.items()}
        soak, drive = self._trade.currentData()
        self.bench.wish(Wishes(**wished, soak=soak, drive=drive))

    def _another_place(self) -> None:
        self._before_wish = {}
        self.refresh_when_seen()

    def _ranks(self) -> dict[Days, int]:
        """Return the ranks by the days of set and haul, the better one where two share them."""
        site, found = self.bench.site, self.bench.plans
        if site is None or found is None:
            return {}
        ranks: dict[Days, int] = {}
        for plan in found.plans:
            days = [at.astimezone(site.zone).date() for at in (plan.set_at, plan.haul_at)]
            ranks.setdefault((days[0], days[1]), plan.rank)
        return ranks

    def refresh(self) -> None:
        """Show what the workbench holds."""
        site, found = self.bench.site, self.bench.plans
        if site is None or found is None:
            self.model.show((), ZoneInfo("UTC"), self.state.style)
            self.left_out.setText(say("No plans are worked out yet."))
            return
        from planner.trips import LIMIT_WORDS

        self._own = self.bench.own_plan
        own = () if self._own is None else (self._own,)
        moved = moved_ranks(self._before_wish, self._ranks())
        self.model.show((*own, *found.plans), site.zone, self.state.style, moved)
        self.table.fill_width()
        self._mark_chosen()
        left = [f"{LIMIT_WORDS[k]} {_roughly(n)}" for k, n in found.rejected.items() if n]
        words = say(
            "Set and haul times left out, tried by the quarter hour: {left}.",
            left=", ".join(left),
        )
        where = "" if found.plans else say("Limits are set in the place book.")
        self.left_out.setText(f"{words if left else ''} {where}".strip())

    def _mark_chosen(self) -> None:
        for row in range(self.model.rowCount()):
            if self.model.plan(row).rank == self.state.plan:
                flags = QItemSelectionModel.SelectionFlag
                self.table.selectionModel().setCurrentIndex(
                    self.model.index(row, 0), flags.ClearAndSelect | flags.Rows
                )

    def _row_chosen(self, current: QModelIndex, _previous: QModelIndex) -> None:
        if not current.isValid():
            return
        plan = self.model.plan(current.row())
        if plan.rank != self.state.plan and self.bench.site is not None:
            day = plan.haul_at.astimezone(self.bench.site.zone).date()
            self.state.change(plan=plan.rank, day=day)

    def _state_changed(self, changed: frozenset[str]) -> None:
        # Another style has the plans ranked anew, in its words.
        if self.bench.own_plan is not self._own:
            self.refresh_when_seen()
        elif "plan" in changed:
            self._mark_chosen()
