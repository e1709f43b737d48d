"""The tests' own promises: no network, and no reach into the user's data."""

from __future__ import annotations

import os
import socket
from pathlib import Path

import pytest
from network_guard import NetworkUsed

from planner import faults
from planner.assets import log_folder, user_folder
from planner.ui.settings import Settings, open_settings

# 192.0.2.0/24 is set aside for documentation (RFC 5737), .invalid for names (RFC 2606).
FAR_ADDRESS = "192.0.2.1"
FAR_NAME = "tides.invalid"


def test_a_connection_to_another_machine_is_refused() -> None:
    """Protects the promise that the program never uses the network: a test that tries must fail."""
    with socket.socket() as probe, pytest.raises(NetworkUsed):
        probe.connect((FAR_ADDRESS, 80))


def test_a_datagram_to_another_machine_is_refused() -> None:
    """Protects the same promise for sockets that send without connecting."""
    with socket.socket(type=socket.SOCK_DGRAM) as probe, pytest.raises(NetworkUsed):
        probe.sendto(b"", (FAR_ADDRESS, 9))


def test_looking_up_a_name_is_refused() -> None:
    """Protects against a look-up that would leave the machine before any connection does."""
    with pytest.raises(NetworkUsed):
        socket.getaddrinfo(FAR_NAME, 80)


def test_sockets_on_this_machine_work() -> None:
    """Protects event loops and worker processes, which talk over loopback."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        with socket.create_connection(server.getsockname()) as client:
            client.sendall(b"x")
        arrived, _ = server.accept()
        with arrived:
            assert arrived.recv(1) == b"x"


def test_a_user_without_a_home_has_an_empty_folder(monkeypatch: pytest.MonkeyPatch) -> None:
    """In a container the system may not know who runs a job: it must answer all the same."""
    import platformdirs

    def unknown(*_: object, **__: object) -> Path:
        raise RuntimeError("could not determine the home directory")

    monkeypatch.delenv("FULLSHELL_HOME")
    monkeypatch.setattr(platformdirs, "user_data_path", unknown)
    monkeypatch.setattr(platformdirs, "user_log_path", unknown)
    assert open_settings() == (Settings(), "")
    assert not faults.keep("a report")
    for folder in (user_folder(), log_folder()):
        assert not folder.exists()
        with pytest.raises(OSError, match="fullshell"):
            folder.mkdir(parents=True)


def test_a_moved_folder_may_begin_at_the_home(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A menu entry has no shell that would put the home in: a folder called "~" would be made
    wherever the program was started, and the log be missed."""
    for name in ("HOME", "USERPROFILE"):
        monkeypatch.setenv(name, str(tmp_path))
    monkeypatch.setenv("FULLSHELL_HOME", "~/crabs")
    assert user_folder() == tmp_path / "crabs"
    assert log_folder() == tmp_path / "crabs" / "faults"


def test_the_user_folder_is_the_tests_own(user_home: Path, tmp_path: Path) -> None:
    """Protects the developer's own places and logs from the tests."""
    assert user_folder() == user_home
    assert Path(os.environ["FULLSHELL_HOME"]).is_relative_to(tmp_path.parent)
    assert not list(user_home.iterdir())
