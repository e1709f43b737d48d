"""Everything works where no socket can be made at all: every view, dialog page and job."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

import planner

PLANNER = Path(planner.__file__).parent

# In a process of its own: an audit hook cannot be taken away again. Every use of a socket ends
# the process, whichever library it is in and whatever it would catch; asking for a name, too.
# Python reads this by its name as it starts, so that processes started from there obey it as well,
# and what one of them tried is written down where its parent cannot swallow it.
FORBID = """
import os, sys
def refuse(event, arguments):
    if event.startswith("socket.") and event not in ("socket.gethostname",):
        with open(os.environ["NETWORK_USED"], "a") as file:
            print("NETWORK:", event, arguments, file=file)
        os._exit(99)
sys.addaudithook(refuse)
os.environ["QT_QPA_PLATFORM"] = "offscreen"
"""

PROBES = {
    "itself": "import socket; socket.socket()",
    "a name": "import socket; socket.getaddrinfo('tides.invalid', 80)",
    "a child": "import subprocess, sys;"
    "subprocess.run([sys.executable, '-c', 'import socket; socket.socket()'])",
}

WINDOW = """
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
# Qt's own sockets are not Python's to refuse: what cannot be loaded cannot use them.
maps = Path("/proc/self/maps")
assert not maps.exists() or "Qt6Network" not in maps.read_text()
"""

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

COMMANDS = """
import sys
from planner.cli import main
for line in sys.stdin.read().splitlines():
    # The doctor may find a machine wanting.
    if main(line.split()) != 0 and line != "doctor":
        sys.exit(f"failed: {line}")
    print("DONE", line)
"""


class Shut:
    """Runs code in a process that may use no socket, nor may those that it starts."""

    def __init__(self, folder: Path) -> None:
        self.used = folder / "network-used.txt"
        self.variables = {**os.environ, "PYTHONPATH": str(folder), "NETWORK_USED": str(self.used)}
        (folder / "sitecustomize.py").write_text(FORBID, encoding="utf-8")

    def run(self, code: str, said: str = "") -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-c", code],
            input=said,
            env=self.variables,
            capture_output=True,
            text=True,
            check=False,
        )


@pytest.fixture
def shut(tmp_path: Path) -> Shut:
    return Shut(tmp_path)


@pytest.mark.parametrize("probe", PROBES)
def test_a_socket_is_really_forbidden(shut: Shut, probe: str) -> None:
    """Without this the others would prove nothing."""
    shut.run(PROBES[probe])
    assert "NETWORK" in shut.used.read_text()


def test_nothing_of_the_program_could_fetch_a_page() -> None:
    """What audit hooks do not see: Qt's own network, and a page handed to the browser. Whatever
    is opened with another program is a file that was just written."""
    code = {path: path.read_text(encoding="utf-8") for path in PLANNER.rglob("*.py")}
    fetchers = re.compile(
        r"QtNetwork|QtWeb|webbrowser|urllib\.request|http\.client|ftplib|smtplib|xmlrpc|requests"
        r"|setOpenExternalLinks\(True\)"
    )
    assert [path.name for path, text in code.items() if fetchers.search(text)] == []
    opened = [line for text in code.values() for line in text.splitlines() if "openUrl(" in line]
    assert opened
    assert [line for line in opened if "QUrl.fromLocalFile(" not in line] == []


@pytest.mark.slow
def test_every_view_and_every_page_opens_without_a_socket(shut: Shut) -> None:
    """The promise of the first page: nothing is sent and nothing is fetched."""
    ended = shut.run(WINDOW)
    assert not shut.used.exists(), shut.used.read_text()
    assert ended.returncode == 0, ended.stderr[-2000:]
    assert ended.stdout.split() == ["dates", "load", "hauls", "evidence", "places"]


@pytest.mark.slow
def test_every_job_of_the_command_line_runs_without_a_socket(shut: Shut, tmp_path: Path) -> None:
    """Each job that the command line knows, and each kind of file that it writes."""
    from planner.assets import demo_log
    from planner.cli.parser import _parser

    lines = [line.format(log=demo_log(), out=tmp_path) for line in JOBS]
    jobs = next(action for action in _parser()._actions if action.dest == "job" or action.choices)
    assert {line.split()[0] for line in lines} == set(jobs.choices or ())
    ended = shut.run(COMMANDS, "\n".join(lines))
    assert not shut.used.exists(), shut.used.read_text()
    assert ended.returncode == 0, ended.stderr[-2000:]
    assert ended.stdout.count("DONE ") == len(lines)
