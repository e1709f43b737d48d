"""How soon the window is there, against a bare window of the same toolkit; and the strip after it.

    python -m tests.benchmarks.first_paint [--runs 7]

The window is built as `planner.ui.app.run` builds it. Each run is a process of its own with
files warm; bare and ours take turns. Prints the ratio of the least times, since a busy machine
only ever adds; the median ratio of neighbours, since its speed may change between them; and the
time that a year of the strip takes after the first paint.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
from statistics import median

_BARE = """
import time; begun = time.perf_counter()
from PySide6.QtWidgets import QApplication
import pyqtgraph
app = QApplication([])
plot = pyqtgraph.PlotWidget()
plot.resize(1280, 800)
plot.show()
app.processEvents()
print(time.perf_counter() - begun)
"""

_OURS = """
import time; begun = time.perf_counter()
import gc
from datetime import date
from pyqtgraph.util.garbage_collector import GarbageCollector
from planner.ui import theme
from planner.ui.app import make_app
from planner.ui.state import ViewState
from planner.ui.window import MainWindow
from planner.ui.sources import demo_source
from planner.ui.workbench import Workbench
app = make_app()
theme.apply(app, "light")
today = date(2026, 11, 25)
bench = Workbench(ViewState(today=today, day=today))
collector = GarbageCollector()
window = MainWindow(bench)
window.resize(1280, 800)
window.show()
app.processEvents()
gc.freeze()
painted = time.perf_counter()

from PySide6.QtWidgets import QGraphicsView
from tests.ui.paints import Paints
paints = Paints(window._views["dates"].strip.findChild(QGraphicsView).viewport())

def shown():
    paints.wait()
    print(painted - begun, time.perf_counter() - painted)
    app.quit()

bench.outlook_changed.connect(shown)
bench.open(demo_source())
app.exec()
bench.close()
"""


def _run(code: str) -> list[float]:
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    # Installed packages come with their bytecode; ours must have it too, or it is compiled anew.
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    done = subprocess.run(
        [sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=True
    )
    return [float(word) for word in done.stdout.split()]


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--runs", type=int, default=7)
    runs = parser.parse_args().runs
    _run(_OURS)  # warms the files and writes the bytecode
    bare, ours = [], []
    for _ in range(runs):
        bare.append(_run(_BARE)[0])
        ours.append(_run(_OURS))
    paints = [run[0] for run in ours]
    ratios = [ours_s / bare_s for ours_s, bare_s in zip(paints, bare, strict=True)]
    print(
        f"bare window {min(bare):.2f} s, ours {min(paints):.2f} s: {min(paints) / min(bare):.2f} "
        f"times (goal 1.3); pair by pair {median(ratios):.2f} ({min(ratios):.2f} to "
        f"{max(ratios):.2f})"
    )
    print(f"a year of the strip {min(run[1] for run in ours):.2f} s after that (goal 1)")


if __name__ == "__main__":
    main()
