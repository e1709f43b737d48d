"""Everything works where no socket can be made at all: every view, dialog page and job."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

# In a process of its own: an audit hook cannot be taken away again. Every use of a socket ends
# the process, whichever library it is in and whatever it would catch; asking for a name, too.
FORBID = """
import os, sys
def refuse(event, arguments):
    if event.startswith("socket.") and event not in ("socket.gethostname",):
        os.write(2, f"NETWORK: {event} {arguments}\\n".encode())
        os._exit(99)
sys.addaudithook(refuse)
os.environ["QT_QPA_PLATFORM"] = "offscreen"
"""

PROBE = FORBID + "import socket; socket.socket()"

WINDOW = (
    FORBID
    + """
import tempfile
from datetime import date
from pathlib import Path
from PySide6.QtWidgets import QApplication, QTabWidget
from planner.ui.app import make_app
from planner.ui import theme
from planner.ui.picture import draw, Shot
from planner.ui.window import VIEWS
from planner.ui.guide.help_pages import pages

def everything(window):
    for tabs in window.findChildren(QTabWidget):
        for at in range(tabs.count()):
            tabs.setCurrentIndex(at)
            QApplication.processEvents()
    if window.state.view == "places":
        for page in pages():
            window.help.open(page)
            QApplication.processEvents()
    print(window.state.view)

for name, *_ in VIEWS:
    out = Path(tempfile.mkdtemp()) / "view.png"
    draw(out, Shot(view=name, today=date(2026, 11, 25)), None, everything)
"""
)

JOBS = [
    # First: the PDFs would make an application object that cannot draw views.
    "picture {out}/view.png --view load --today 2026-11-25",
    "water sedge-hollow --from 2026-08-14 --to 2026-08-15",
    "water sedge-hollow --from 2026-08-14 --to 2026-08-15 --turns",
    "sky sedge-hollow --from 2026-08-14 --to 2026-08-15",
    "dates sedge-hollow --from 2026-08-14 --to 2026-08-23",
    "plans sedge-hollow --from 2026-08-14 --to 2026-08-23",
    "learn sedge-hollow --log {log}",
    "trials --log {log}",
    "check sedge-hollow",
    "take sedge-hollow {out}/trip.pdf --log {log} --from 2026-12-01 --to 2026-12-14",
    "take sedge-hollow {out}/trip.ics --from 2026-12-01 --to 2026-12-14",
    "tally sedge-hollow {out}/tally.html --log {log} --day 2026-12-05",
    "tally sedge-hollow {out}/tally.pdf --log {log} --day 2026-12-05",
    "doctor",
]

COMMANDS = (
    FORBID
    + """
from planner.cli import main
for line in sys.stdin.read().splitlines():
    # The doctor may find a machine wanting.
    if main(line.split()) != 0 and line != "doctor":
        sys.exit(f"failed: {line}")
    print("DONE", line)
"""
)


def _run(code: str, said: str = "") -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-c", code], input=said, capture_output=True, text=True, check=False
    )


def test_a_socket_is_really_forbidden() -> None:
    """Without this the others would prove nothing."""
    ended = _run(PROBE)
    assert ended.returncode == 99
    assert "NETWORK" in ended.stderr


@pytest.mark.slow
def test_every_view_and_every_page_opens_without_a_socket() -> None:
    """The promise of the first page: nothing is sent and nothing is fetched."""
    ended = _run(WINDOW)
    assert ended.returncode == 0, ended.stderr[-2000:]
    assert ended.stdout.split() == ["dates", "load", "hauls", "evidence", "places"]


@pytest.mark.slow
def test_every_job_of_the_command_line_runs_without_a_socket(tmp_path: Path) -> None:
    """Each job that the command line knows, and each kind of file that it writes."""
    from planner.assets import demo_log
    from planner.cli.parser import _parser

    lines = [line.format(log=demo_log(), out=tmp_path) for line in JOBS]
    jobs = next(action for action in _parser()._actions if action.dest == "job" or action.choices)
    assert {line.split()[0] for line in lines} == set(jobs.choices or ())
    ended = _run(COMMANDS, "\n".join(lines))
    assert ended.returncode == 0, ended.stderr[-2000:]
    assert ended.stdout.count("DONE ") == len(lines)
