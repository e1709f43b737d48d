"""Every figure of how the window starts, feels and can be used, by one command.

    python -m tests.benchmarks.house_figures [--quick]

Start and feel: first paint and the strip after it; frames while panning and zooming; the calls
of a recorded session; memory over a thousand changes. Access: contrasts, and how far apart
neighbouring marks are to the common kinds of colour vision; what is counted rather than
measured (names, keys, tables, nothing cut) is told by size, letters, scale and language, and
held by tests/ui/test_access_*.py.

On a machine that does other things too, read the *own* times: processor time of the thread.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
_ROOMS = (
    (),
    ("--points", "16", "--size", "1100x700"),
    ("--points", "16", "--size", "1100x700", "--language", "es"),
    ("--points", "10", "--size", "1100x700", "--mirrored"),
    ("--points", "8", "--size", "1100x700", "--scale", "3"),
    ("--size", "2560x1440"),
)
_TESTS = Path(__file__).parents[1] / "ui"


def _run(title: str, module: str, *options: str) -> None:
    """Run a benchmark in a process of its own, so that none warms or burdens another."""
    if title:
        print(f"\n{title}", flush=True)
    subprocess.run(
        [sys.executable, "-m", f"tests.benchmarks.{module}", *options],
        check=True,
        stderr=subprocess.DEVNULL,
        env={**os.environ, "QT_LOGGING_RULES": "*=false"},
    )


def contrasts() -> None:
    """Print the least contrast of text, marks and edges in each theme."""
    from PySide6.QtGui import QColor

    from planner.ui import theme

    grounds = ("ground", "panel", "raised", "weekend", "caution_ground")
    kinds = {
        "text (goal 4.5)": (("text", "quiet", "caution", "accent"), grounds),
        "marks (goal 3)": (
            ("water", "forecast", "logged", "free", "closed", "accent"),
            ("panel", "ground", "weekend", "night"),
        ),
    }
    for name, colours in (("light", theme.LIGHT), ("dark", theme.DARK)):
        least = {
            kind: min(
                theme.contrast(QColor(getattr(colours, ink)), QColor(getattr(colours, ground)))
                for ink in inks
                for ground in under
            )
            for kind, (inks, under) in kinds.items()
        }
        least["edge and focus of fields (goal 3)"] = min(
            theme.contrast(QColor(edge), QColor(ground))
            for edge in (theme.EDGE, theme.FOCUS)
            for ground in (colours.panel, colours.ground)
        )
        print(f"{name}: " + ", ".join(f"{kind} {ratio:.1f}" for kind, ratio in least.items()))


def colour_vision() -> None:
    """Print the least CIEDE2000 between neighbouring marks, by theme and kind of vision."""
    sys.path.insert(0, str(_TESTS))
    from test_access_colours import _APART, _BY_SHAPE, differences
    from test_theme import CVD

    from planner.ui import theme

    for name, colours in (("light", theme.LIGHT), ("dark", theme.DARK)):
        found = []
        for kind, seen in CVD.items():
            apart = {
                pair: value
                for pair, value in differences(colours, seen).items()
                if pair not in _BY_SHAPE
            }
            pair = min(apart, key=lambda each: apart[each])
            found.append(f"{kind} {apart[pair]:.0f} ({pair[0]}, {pair[1]})")
        print(f"{name}, goal {_APART:.0f}: {', '.join(found)}")


def main() -> None:
    """Print them all."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--quick", action="store_true", help="fewer runs, frames and changes")
    quick = parser.parse_args().quick
    _run("First paint", "first_paint", "--runs", "7" if quick else "15")
    _run("Frames over ten years of days", "frames", "--frames", "40" if quick else "120")
    _run("Turns of a session", "session", "--times", "2" if quick else "3")
    _run("Memory", "leaks", "--changes", "100" if quick else "1000")
    print("\nRooms by keyboard, by screen reader, and for words that are cut")
    for options in _ROOMS[:1] if quick else _ROOMS:
        _run("", "access", *options)
    print("\nLeast contrasts (WCAG 2.1)")
    contrasts()
    print("\nNeighbouring marks, least CIEDE2000 as seen (Machado et al. 2009)")
    colour_vision()


if __name__ == "__main__":
    main()
