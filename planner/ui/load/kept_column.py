"""A column whose widgets stay while what they stand for stays, and with them focus and scroll."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Hashable, Iterable
from typing import Generic, TypeVar

from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from planner.ui.theme import SPACE

Line = TypeVar("Line", bound=QWidget)
Content = TypeVar("Content")


class KeptColumn(QVBoxLayout, Generic[Line, Content]):
    """Lines by key: one that is there already is told its new content, others come and go.

    make: returns an empty line. tell: gives a line its content.
    """

    def __init__(self, make: Callable[[], Line], tell: Callable[[Line, Content], object]) -> None:
        super().__init__()
        self.setSpacing(line_gap(roomy=False))
        self._make, self._tell = make, tell
        self._lines: dict[tuple[Hashable, int], Line] = {}

    @property
    def lines(self) -> list[Line]:
        """What is in the column, from the top."""
        return list(self._lines.values())

    def fill(self, contents: Iterable[tuple[Hashable, Content]]) -> None:
        """Show contents with their keys; lines that share a key are told apart by their order."""
        before, self._lines = self._lines, {}
        times: Counter[Hashable] = Counter()
        for key, content in contents:
            times[key] += 1
            name = key, times[key]
            line = before.pop(name) if name in before else self._make()
            self._tell(line, content)
            self._lines[name] = line
        for gone in before.values():
            self.removeWidget(gone)
            gone.hide()
            gone.deleteLater()
        for at, line in enumerate(self._lines.values()):
            if self.indexOf(line) != at:
                self.removeWidget(line)
                self.insertWidget(at, line)
                if line.parentWidget() is not None:
                    line.show()  # now, not at the next turn of the event loop


def words_column(make: Callable[[], QLabel]) -> KeptColumn[QLabel, str]:
    """Return a column of words; make: returns a label of the kind wanted."""
    return KeptColumn(make, lambda label, text: label.setText(text))


def line_gap(roomy: bool) -> int:
    """Return the pixels between lines of a card, in a window with room for air or without."""
    return 3 * SPACE // 2 if roomy else SPACE // 2
