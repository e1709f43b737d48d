"""Modules that several threads ask for at once."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from threading import Thread

import pytest

from planner.errors import Cancelled
from planner.ui.imports import read_in_sips, read_module

_CODE = "import sys, time\nsys.read_so_far.append(__name__)\ntime.sleep(0.1)\n"


def test_modules_are_read_one_thread_at_a_time(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protects a click on another view in the first instant, while a worker reads the place: of
    two threads that each wait for what the other reads, one gets a module half read and fails."""
    names = [f"read_by_thread_{number}" for number in range(3)]
    for name in names:
        (tmp_path / f"{name}.py").write_text(f"{_CODE}sys.read_so_far.append(__name__)\n")
    monkeypatch.syspath_prepend(str(tmp_path))
    order: list[str] = []
    monkeypatch.setattr(sys, "read_so_far", order, raising=False)
    threads = [Thread(target=read_module, args=(name,)) for name in names]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(10)
    assert sorted(order) == sorted(2 * names)
    assert order[0::2] == order[1::2], "one was begun before another had ended"


def test_a_package_read_ahead_is_read_whole_and_can_be_stopped(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Every module is read, so that no view waits for its own; closing the window waits for one."""
    folder = tmp_path / "read_ahead"
    folder.mkdir()
    for name in ("__init__", "first", "second", "third"):
        (folder / f"{name}.py").touch()
    monkeypatch.syspath_prepend(str(tmp_path))
    left = 1

    def checkpoint() -> None:
        nonlocal left
        if not left:
            raise Cancelled
        left -= 1

    with pytest.raises(Cancelled):
        read_in_sips("read_ahead", checkpoint)
    assert {name for name in sys.modules if name.startswith("read_ahead.")} == {"read_ahead.first"}
    left = 3
    read_in_sips("read_ahead", checkpoint)
    assert {"read_ahead.first", "read_ahead.second", "read_ahead.third"} <= sys.modules.keys()


def test_the_first_paint_reads_nothing_of_the_core() -> None:
    """What places, water and logs need is read by a worker, once the window is there."""
    code = (
        "import sys, planner.ui.app, planner.ui.window, planner.ui.dates.view;"
        "print([each for each in ('planner.sites', 'planner.tides', 'planner.logbook', 'scipy',"
        " 'pydantic', 'skyfield') if each in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
