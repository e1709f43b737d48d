"""What a system lacks, and which packages bring it."""

from __future__ import annotations

import machine
import pytest

DEBIAN = """
PRETTY_NAME="Debian GNU/Linux 12 (bookworm)"
ID=debian
VERSION_ID="12"
"""
MADE_FROM_DEBIAN = """
# a comment = not a field
ID=mint
ID_LIKE="ubuntu debian"
"""
ANOTHER = """
ID="fedora"
ID_LIKE="rhel"
"""


def test_os_release_is_read_with_and_without_quotes() -> None:
    """Protects the choice of the package manager from a quoted or commented line."""
    fields = machine.parse_os_release(MADE_FROM_DEBIAN)
    assert fields == {"ID": "mint", "ID_LIKE": "ubuntu debian"}


@pytest.mark.parametrize(
    ("text", "apt"), [(DEBIAN, True), (MADE_FROM_DEBIAN, True), (ANOTHER, False), ("", False)]
)
def test_apt_is_used_on_debian_and_its_relatives_only(text: str, apt: bool) -> None:
    """Protects other systems from commands that they do not have."""
    assert machine.uses_apt(machine.parse_os_release(text)) is apt


def test_missing_libraries_are_those_that_do_not_load() -> None:
    """Protects a set-up from asking for rights to install what is there."""
    there = {library.file for library in machine.TO_DRAW} - {"libEGL.so.1", "libfontconfig.so.1"}
    missing = machine.missing_libraries(machine.TO_DRAW, loads=there.__contains__)
    assert [library.apt for library in missing] == ["libegl1", "libfontconfig1"]


def test_a_library_that_no_system_has_does_not_load() -> None:
    """Protects the look for libraries itself: a made-up name must be found missing."""
    assert not machine.can_load("libfullshell-has-no-such.so.9")


@pytest.mark.parametrize(
    ("has_ensurepip", "prefix", "package"),
    [
        (False, "/usr", "python3.11-venv"),
        (True, "/usr", None),
        # A Python that Debian did not make is not mended by Debian's package.
        (False, "/opt/python", None),
    ],
)
def test_debian_python_without_ensurepip_gets_its_package(
    has_ensurepip: bool, prefix: str, package: str | None
) -> None:
    """Protects a bare Debian, whose Python cannot make environments by itself."""
    assert machine.environment_package(has_ensurepip, prefix, (3, 11)) == package


def test_root_installs_directly_others_through_sudo_or_not_at_all() -> None:
    """Protects from asking for rights that are there, or that nobody can give."""
    as_root = machine.apt_commands(["libgl1"], root=True, sudo=True)
    assert [command[0] for command in as_root] == ["apt-get", "apt-get"]
    assert as_root[1][-1] == "libgl1"
    as_user = machine.apt_commands(["libgl1"], root=False, sudo=True)
    assert [command[:2] for command in as_user] == [["sudo", "apt-get"]] * 2
    assert machine.apt_commands(["libgl1"], root=False, sudo=False) == []


def test_the_command_for_an_administrator_is_printed_when_there_are_no_rights(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Protects a user without rights: the refusal holds the very command to pass on."""
    monkeypatch.setattr(machine, "_os_release", lambda: {"ID": "debian"})
    monkeypatch.setattr(machine.sys, "platform", "linux")
    monkeypatch.setattr(machine, "missing_libraries", lambda wanted: list(machine.TO_DRAW[:2]))
    monkeypatch.setattr(machine.os, "geteuid", lambda: 1000, raising=False)
    monkeypatch.setattr(machine.shutil, "which", lambda name: None)
    monkeypatch.setattr(machine, "run", lambda *words, **options: pytest.fail("ran a command"))
    with pytest.raises(machine.SetUpError, match=r"apt-get install .* libglib2.0-0 libgl1$"):
        machine.prepare(screen=False)


def test_hints_name_each_package_once_and_say_they_are_from_memory() -> None:
    """Protects users of other systems from a hint taken for a tested command."""
    hint = machine.hint_for_others(machine.FOR_A_SCREEN)
    assert "from memory" in hint
    assert hint.count("libxcb-shape.so.0") == 1
    assert " libxcb libxcb" not in hint


@pytest.mark.parametrize(
    ("platform", "variables", "screen"),
    [
        ("linux", {}, False),
        ("linux", {"DISPLAY": ""}, False),
        ("linux", {"DISPLAY": ":0"}, True),
        ("linux", {"WAYLAND_DISPLAY": "wayland-0"}, True),
        ("win32", {}, True),
        ("darwin", {}, True),
    ],
)
def test_a_screen_is_what_the_system_says(
    platform: str, variables: dict[str, str], screen: bool
) -> None:
    """Protects the start on a machine without a display, which Qt would abort."""
    assert machine.has_screen(platform, variables) is screen


def test_a_command_that_fails_cannot_start_or_hangs_has_not_ended_well() -> None:
    """Protects the checks from counting a command that never ran as passed."""
    python = machine.sys.executable
    assert machine.run([python, "-c", ""])
    assert not machine.run([python, "-c", "raise SystemExit(3)"])
    assert not machine.run(["fullshell-has-no-such-command"])
    assert not machine.run([python, "-c", "import time; time.sleep(60)"], limit_s=0.1)


def test_a_browser_is_known_by_any_of_its_names() -> None:
    """Protects a machine with a browser from fetching another."""
    assert machine.has_browser({"google-chrome": "/opt/chrome"}.get)
    assert not machine.has_browser({}.get)


def test_a_machine_without_a_browser_is_still_set_up(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Protects every other check where no browser can be had."""

    def refuse(packages: list[str]) -> None:
        raise machine.SetUpError("no rights")

    monkeypatch.setattr(machine, "has_browser", lambda: False)
    monkeypatch.setattr(machine, "_os_release", lambda: {"ID": "debian"})
    monkeypatch.setattr(machine, "_install_with_apt", refuse)
    machine.prepare_browser()
    assert "no rights" in capsys.readouterr().out


def test_the_doctor_names_the_same_packages_by_debians_rule() -> None:
    """One list is kept here; the doctor must not send a user for another package."""
    from planner.ui.trouble.checkup.libraries import debian_package

    for library in (*machine.TO_DRAW, *machine.FOR_A_SCREEN, *machine.TO_DRIVE):
        assert debian_package(library.file) == library.apt, library.file
