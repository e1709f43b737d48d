"""Drawing a view of the window to a file, with no screen needed."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from planner.errors import PlannerError
from planner.phrasing import Style
from planner.ui.state import ThemeChoice, ViewName
from planner.words import say

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication, QWidget

    from planner.ui.window import MainWindow


@dataclass(frozen=True)
class Shot:
    """What to draw: a view of a place and a log, in a theme and size, as on a day.

    place: file or name, None for the demo with its log. size: width and height in pixels.
    own_log: show the user's own log of the place, which can be written in, instead of `log`.
    """

    view: ViewName = "dates"
    place: str | None = None
    log: Path | None = None
    theme: ThemeChoice = "light"
    size: tuple[int, int] = (1280, 800)
    today: date | None = None
    style: Style = field(default_factory=Style)
    own_log: bool = False


def draw(
    out: Path,
    shot: Shot,
    look: Callable[[QWidget], None] | None = None,
    act: Callable[[MainWindow], None] | None = None,
) -> None:
    """Draw the window to an image file (PNG by its name); nothing of the user's is changed.

    act: what to do in the window before it is drawn. look: called with the window as it was
    drawn, before it is closed.
    Raises PlannerError when the place or log cannot be read or the file not be written.
    """
    # Before the application object exists; a screen, where there is one, is not needed.
    if "PYTEST_CURRENT_TEST" not in os.environ:
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
    from PySide6.QtCore import QCoreApplication, QEvent

    from planner.assets import demo_log
    from planner.ui import theme
    from planner.ui.app import make_app
    from planner.ui.sources import Source, demo_source
    from planner.ui.state import ViewState
    from planner.ui.window import MainWindow
    from planner.ui.workbench import Workbench

    app = make_app()
    _want_letters(app)
    theme.apply(app, shot.theme)
    today = shot.today or date.today()  # noqa: DTZ011  (the user's own day)
    state = ViewState(today=today, day=today, view=shot.view, theme=shot.theme, style=shot.style)
    bench = Workbench(state)
    troubles: list[str] = []
    bench.trouble.connect(troubles.append)
    faults: list[BaseException] = []
    for desk in (bench.desk, bench.clerk):
        desk.crashed.connect(faults.append)
    window = MainWindow(bench)
    window.resize(*shot.size)
    window.show()
    demo = demo_source()
    if shot.place is None:
        log = None if shot.own_log else shot.log or demo_log()
        bench.open(Source(demo.place, log=log, demo=True))
    else:
        bench.open(Source(shot.place, log=shot.log, keep=False))
    try:
        _settle(bench)
        if faults:
            raise faults[0]
        if troubles:
            raise PlannerError("\n".join(troubles))
        if act is not None:
            act(window)
            _settle(bench)
        # Layouts and charts settle over a few turns of the event loop.
        for _ in range(10):
            app.processEvents()
        if not window.grab().save(str(out)):
            raise PlannerError(
                say(
                    "{out}: the picture could not be written; name a .png file in a folder "
                    "that exists and can be written to",
                    out=out,
                )
            )
        if look is not None:
            look(window)
    finally:
        window.close()
        window.deleteLater()
        # Now, while no loop runs that would do it.
        QCoreApplication.sendPostedEvents(window, QEvent.Type.DeferredDelete)
        theme.apply(app, "light")
        # Its cycles must end on this thread, not on a worker of the next picture.
        gc.collect()


def _want_letters(app: QApplication) -> None:
    """PlannerError where there is no font: a picture of boxes is none."""
    from PySide6.QtGui import QFontMetrics

    from planner.ui.trouble.checkup.screen import FONT

    if not QFontMetrics(app.font()).inFont("a"):
        raise PlannerError(
            say(
                "there is no font on this machine, so all text would be boxes; install one; on "
                "Debian and Ubuntu: sudo apt-get install {package}",
                package=FONT,
            )
        )


def _settle(bench: object) -> None:
    """Run the event loop until nothing is being worked out."""
    from PySide6.QtCore import QEventLoop, QTimer

    loop = QEventLoop()
    timer = QTimer(interval=20)
    timer.timeout.connect(lambda: loop.quit() if bench.idle else None)  # type: ignore[attr-defined]
    timer.start()
    loop.exec()
