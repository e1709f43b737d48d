"""Starting the window: settings, system habits, theme, then the place the user left."""

from __future__ import annotations

import gc
import locale
import sys
from datetime import date

from pyqtgraph.util.garbage_collector import GarbageCollector
from PySide6.QtCore import QLocale, QTimer
from PySide6.QtGui import QFont, QIcon
from PySide6.QtWidgets import QApplication

from planner.assets import resource
from planner.faults import HardCrashes, keep, report
from planner.phrasing import Style
from planner.ui import languages, theme
from planner.ui.focus_ring import FocusRing
from planner.ui.midnight import Midnight
from planner.ui.opening import Opening
from planner.ui.settings import Settings, open_settings, write_settings
from planner.ui.sources import Source, demo_source
from planner.ui.state import ViewState
from planner.ui.trouble.fault_dialog import FaultDialog
from planner.ui.trouble.faults import FaultCatcher
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench


def system_style(settings: Settings) -> Style:
    """Return how numbers are shown: the user's choice, else what the system's locale says."""
    habits = QLocale.system()
    metric = habits.measurementSystem() == QLocale.MeasurementSystem.MetricSystem
    american = habits.measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
    half_days = "AP" in habits.timeFormat(QLocale.FormatType.ShortFormat).upper()
    return Style(
        length=settings.length or ("m" if metric else "ft"),  # type: ignore[arg-type]
        temperature=settings.temperature or ("F" if american else "C"),  # type: ignore[arg-type]
        hours12=half_days if settings.hours12 is None else settings.hours12,
    )


def make_app() -> QApplication:
    """Return the application object, made when there is none yet."""
    app = QApplication.instance()
    if isinstance(app, QApplication):
        return app
    app = QApplication(sys.argv[:1])
    # Qt has set the C library to the system's habits; names of days and months are `say`'s to give.
    locale.setlocale(locale.LC_TIME, "C")
    languages.dress(app)
    app.setApplicationName("Fullshell")
    app.setDesktopFileName("fullshell")
    app.setWindowIcon(QIcon(str(resource("icon", "fullshell.svg"))))
    FocusRing(app)
    return app


def run(place: str | None = None) -> int:
    """Open the window on a place file, else where the user left off; return the exit status."""
    app = make_app()
    crashes = HardCrashes()
    faults = FaultCatcher()
    faults.install()
    try:
        return _run(app, faults, crashes.last, place)
    except Exception as error:  # noqa: BLE001  (there is no window to go on with)
        text = report(error)
        keep(text)
        dialog = FaultDialog.of_fault(None, error, text)
        dialog.show()
        app.exec()
        return 1
    finally:
        faults.remove()
        crashes.close()


def _run(app: QApplication, faults: FaultCatcher, crash: str, place: str | None) -> int:
    settings, remark = open_settings(set_aside=True)
    font = QFont(app.font())
    font.setPointSize(settings.font_pt)
    app.setFont(font)
    today = date.today()  # noqa: DTZ011  (the user's own day, not an instant)
    state = ViewState(
        today=today,
        day=today,
        view=settings.view,  # type: ignore[arg-type]
        theme=settings.theme,  # type: ignore[arg-type]
        language=settings.language,
        style=system_style(settings),
        care_points=settings.care_points,
    )
    theme.apply(app, state.theme)
    bench = Workbench(state)
    # Python may end a cycle of objects on any thread; Qt crashes or hangs when a widget, or
    # something drawn on a chart, ends on a worker. While this lives, cycles end on this thread.
    collector = GarbageCollector()
    window = MainWindow(bench)
    midnight = Midnight(state)
    faults.facts = window.faults.facts
    faults.fault.connect(window.faults.show)
    faults.again.connect(window.faults.again)
    window.resize(1280, 800)
    window.show()
    # What is there by now stays to the end: looking through it again and again takes time that
    # the first days on the strip need.
    gc.freeze()
    demo = settings.demo or not settings.place
    source = demo_source() if demo else Source(settings.place)
    # After the first paint, so that the window is there at once.
    QTimer.singleShot(0, Opening(bench, source, place).begin)
    if remark:
        bench.notice.emit(remark)
    if crash:
        window.faults.show_crash(crash)
    status = app.exec()
    del collector, midnight
    write_settings(
        Settings(
            # A place that could not be read is asked for again; it may be on a stick.
            place=bench.source.place if bench.site else settings.place,
            demo=bench.source.demo if bench.site else settings.demo,
            view=state.view,
            theme=state.theme,
            language=state.language,
            length=state.style.length,
            temperature=state.style.temperature,
            hours12=state.style.hours12,
            font_pt=settings.font_pt,
            care_points=state.care_points,
        )
    )
    return status
