"""What every test stands on: a Qt without a screen, a user folder of its own, and no network."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import pytest
from hypothesis import settings
from network_guard import refuse_network

# Qt reads this when the application object is made; a test may set another before the run.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# Shared machines have slow moments, so no example is timed. Where the tests gate a change the
# examples are the same on every run, so that a failure is the change's own.
settings.register_profile("developer", deadline=None)
settings.register_profile("gate", deadline=None, derandomize=True, print_blob=True)
settings.load_profile("gate" if os.environ.get("CI") else "developer")

# An audit hook sees every socket of the process, however it was opened, and cannot be undone
# by a library that keeps its own reference to `socket.socket`.
sys.addaudithook(refuse_network)


@pytest.fixture(autouse=True)
def user_home(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give each test an empty folder for the user's data, so that none touches the real one."""
    home = tmp_path_factory.mktemp("user-home")
    monkeypatch.setenv("FULLSHELL_HOME", str(home))
    return home
