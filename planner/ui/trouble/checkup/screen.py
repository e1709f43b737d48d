"""Whether Qt can show a window here; asked in another process, as a broken Qt ends its own."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import suppress
from importlib.util import find_spec
from pathlib import Path
from typing import Final

from planner.ui.trouble.checkup.finding import Finding, good, mind, wrong
from planner.ui.trouble.checkup.libraries import debian_package, missing_library
from planner.words import say

FONT: Final = "fonts-dejavu-core"  # the package; who draws without a font names it

_PATIENCE_S: Final = 120
_PROBE: Final = """
import ctypes, sys
from pathlib import Path
import PySide6
plugins = Path(PySide6.__file__).parent / "Qt" / "plugins" / "platforms"
for name in sys.argv[1:]:
    ctypes.CDLL(str(plugins / name))
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QApplication
app = QApplication([])
# Names of families are no proof: without a font there are still "Serif" and its like.
print("letters", int(QFontMetrics(app.font()).inFont("a")), "on", app.platformName())
"""


def check_window() -> Iterator[Finding]:
    """Open Qt's application object where nothing shows, and where there is a screen also there."""
    if hasattr(sys, "frozen"):
        drawing = _drawn()
        yield drawing
        if drawing.state == "good" and sys.platform.startswith("linux") and not _display():
            yield _no_screen()
        return
    if find_spec("PySide6") is None:
        yield wrong(
            say("window"),
            say("PySide6 is not installed; the command line works without it"),
            'pip install "fullshell[window]"',
        )
        return
    drawing = _probed(say("drawing"), {"QT_QPA_PLATFORM": "offscreen"})
    yield drawing
    if drawing.state == "wrong":
        return
    if sys.platform.startswith("linux"):
        yield from _on_a_linux_screen()
    else:
        yield _probed(say("screen"), {})


def _on_a_linux_screen() -> Iterator[Finding]:
    if _display():
        under_x = not os.environ.get("WAYLAND_DISPLAY")
        yield _probed(say("screen"), {}, *(["libqxcb.so"] if under_x else []))
    else:
        yield _no_screen()


def _display() -> str:
    """Return the display that Qt would use on Linux, "" where there is none."""
    return os.environ.get("WAYLAND_DISPLAY") or os.environ.get("DISPLAY", "")


def _no_screen() -> Finding:
    return mind(
        say("screen"),
        say("there is none here"),
        say("use the jobs of the command line, or a desktop"),
    )


def _probed(what: str, variables: dict[str, str], *plugins: str) -> Finding:
    try:
        ended = subprocess.run(
            [sys.executable, "-c", _PROBE, *plugins],
            capture_output=True,
            text=True,
            errors="replace",
            env={**os.environ, **variables},
            timeout=_PATIENCE_S,
            check=False,
        )
    except (OSError, subprocess.TimeoutExpired) as error:
        return wrong(
            what,
            say("Qt does not answer ({kind})", kind=type(error).__name__),
            say("start the machine anew"),
        )
    if ended.returncode == 0:
        return _with_fonts(what, ended.stdout)
    lacking = missing_library(ended.stderr)
    if lacking:
        return _lacking(what, lacking)
    if "could not connect to display" in ended.stderr or "create wl_display" in ended.stderr:
        return wrong(
            what,
            say("the display {name} does not answer", name=_display()),
            say("log in to the desktop, or leave DISPLAY and WAYLAND_DISPLAY unset"),
        )
    return wrong(
        what,
        say("Qt does not start (status {returncode})", returncode=ended.returncode),
        say(
            "set the program up again: python3 packaging/start.py; the system may lack what "
            "packaging/README.md lists"
        ),
    )


def _lacking(what: str, library: str) -> Finding:
    return wrong(
        what,
        say("the system lacks {lacking}", lacking=library),
        say(
            "install it; on Debian and Ubuntu: sudo apt-get install {debian_package}",
            debian_package=debian_package(library),
        ),
    )


def _without_font(what: str) -> Finding:
    return wrong(
        what,
        say("there is no font: all text would be boxes"),
        say("install one; on Debian and Ubuntu: sudo apt-get install {package}", package=FONT),
    )


def _with_fonts(what: str, said: str) -> Finding:
    words = said.split()
    if "letters" in words and words[words.index("letters") + 1] == "0":
        return _without_font(what)
    return good(what, say("Qt starts ({words})", words=words[-1] if words else say("silent")))


def _drawn() -> Finding:
    """Have a bundle draw a view of its own; what the system lacks is not the bundle's fault."""
    said = ""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "view.png"
        command = [sys.executable, "picture", str(out), "--view", "load"]
        with suppress(OSError, subprocess.TimeoutExpired):
            ended = subprocess.run(
                command,
                capture_output=True,
                text=True,
                errors="replace",
                timeout=_PATIENCE_S,
                check=False,
            )
            said = ended.stderr
        if out.exists():
            return good(say("window"), say("a view can be drawn"))
    if lacking := missing_library(said):
        return _lacking(say("window"), lacking)
    if FONT in said:
        return _without_font(say("window"))
    return wrong(say("window"), say("no view can be drawn"), say("install the program again"))
