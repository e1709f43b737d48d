"""Set up everything a developer needs and run every check.

    python3 packaging/check.py [--fast]

All checks run even when one fails; the last line says which did. `--fast` leaves out the tests
marked slow.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036  an older Python must get as far as this message
    sys.exit(
        "Fullshell needs Python 3.11 or later; this is %d.%d (%s)."  # noqa: UP031
        % (sys.version_info[0], sys.version_info[1], sys.executable)
    )

import argparse
import tempfile
import time
from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path

import environment
import machine

ROOT = environment.ROOT

# Folders of tests that run once only: the core's own where there is no Qt, two at a time; those
# that need Qt, a quiet machine or the checkout itself where there is, one after the other, since
# a worker that crashes under xdist can be reported as a success. All else runs in both.
ONLY_WITHOUT_QT = (
    "constituents",
    "sites",
    "tides",
    "sky",
    "logbook",
    "intake",
    "molt",
    "trips",
    "trials",
)
ONLY_WITH_QT = ("ui", "benchmarks", "packaging")

# A job that needs every file that the wheel must carry.
DATES = "dates sedge-hollow --from 2026-06-01 --to 2026-06-14"

# A test that hangs ends its run after ten minutes and shows where it stood; no test needs a
# third of that. A whole check ends after the longer limit, whatever holds it.
HUNG = "-o faulthandler_timeout=600 -o faulthandler_exit_on_timeout=true"
LIMIT_S = 45 * 60

# One thread a worker: two workers already fill two cores.
ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}
# Python must not take the package from the checkout where the wheel is on trial.
NOT_THE_CHECKOUT = {"PYTHONSAFEPATH": "1"}


class Report:
    """The checks made so far: name, whether it passed, and how long it took."""

    def __init__(self) -> None:
        self.results: list[tuple[str, bool, float]] = []

    def check(self, name: str, action: Callable[[], bool], *, after: bool = True) -> bool:
        """Make one check; one that builds on a failed one is not made and counts as failed."""
        machine.say(f"\n== {name}")
        begun = time.monotonic()
        passed = after and action()
        if not after:
            machine.say("  not run: the step before it failed")
        self.results.append((name, passed, time.monotonic() - begun))
        return passed

    def run(
        self,
        name: str,
        command: Sequence[str | Path],
        *,
        after: bool = True,
        folder: Path = ROOT,
        variables: Mapping[str, str] | None = None,
    ) -> bool:
        """Make one check that is a command."""
        return self.check(
            name,
            lambda: machine.run(command, folder=folder, variables=variables, limit_s=LIMIT_S),
            after=after,
        )

    def summary(self) -> str:
        """Return the closing text: every check, then one line that says whether all passed."""
        lines = [
            f"  {'passed' if passed else 'FAILED'}  {seconds:7.1f} s  {name}"
            for name, passed, seconds in self.results
        ]
        failed = [name for name, passed, _ in self.results if not passed]
        took = f"{sum(seconds for *_, seconds in self.results) / 60:.1f} minutes"
        if failed:
            closing = f"{len(failed)} of {len(lines)} checks FAILED in {took}: {'; '.join(failed)}"
        else:
            closing = f"All {len(lines)} checks passed in {took}."
        return "\n".join(["", *lines, closing])


def main() -> int:
    """Set up, run every check, print what came out; return 1 when anything failed."""
    parser = argparse.ArgumentParser(description="Set up everything and run every check.")
    parser.add_argument("--fast", action="store_true", help="leave out the tests marked slow")
    fast = parser.parse_args().fast
    options = ["--durations=10", *HUNG.split(), *(["-m", "not slow"] if fast else [])]
    begun = time.monotonic()
    try:
        machine.prepare(screen=False)
        machine.prepare_browser()
        python = environment.prepare(".venv", ["window", "dev"])
    except machine.SetUpError as error:
        print(error, file=sys.stderr)
        return 1
    machine.say(f"Set up in {time.monotonic() - begun:.0f} s")
    report = Report()
    check_code(report, python)
    check_window(report, python, options)
    check_core(report, python, options)
    machine.say(report.summary())
    return 0 if all(passed for _, passed, _ in report.results) else 1


def check_code(report: Report, python: Path) -> None:
    """Style, types and the rule of the layers."""
    report.run("ruff check", [python, "-m", "ruff", "check", "."])
    report.run("ruff format", [python, "-m", "ruff", "format", "--check", "."])
    report.run("mypy", [python, "-m", "mypy"])
    report.run("layers", [python.with_name("lint-imports")])


def check_window(report: Report, python: Path, options: Sequence[str]) -> None:
    """The tests of all that is not the core's own, where there is Qt."""
    report.run("tests with Qt", [python, "-m", "pytest", *_all_but(ONLY_WITHOUT_QT), *options])


def check_core(report: Report, python: Path, options: Sequence[str]) -> None:
    """The wheel, installed where there is no Qt: it holds what it needs, and its core works."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        pip_wheel = "-m pip wheel --no-deps --no-build-isolation --disable-pip-version-check"
        built = report.run(
            "wheel builds", [python, *pip_wheel.split(), "--wheel-dir", folder, ROOT]
        )
        installed = report.check(
            "wheel installs without Qt", lambda: _install_core(folder), after=built
        )
        core = environment.python_of(ROOT / ".venv-core")
        report.run(
            "core imports without Qt",
            [core, ROOT / "packaging" / "core_without_qt.py"],
            folder=folder,
            after=installed,
        )
        report.run(
            "wheel finds its files",
            [core.with_name("fullshell"), *DATES.split()],
            folder=folder,
            variables={"FULLSHELL_HOME": name},
            after=installed,
        )
        # A crashed worker ends the run as failed instead of being replaced in silence.
        workers = ["-n", "2", "--max-worker-restart=0", "--benchmark-skip"]
        report.run(
            "tests without Qt",
            [core, "-m", "pytest", *_all_but(ONLY_WITH_QT), *workers, *options],
            variables={**ONE_THREAD, **NOT_THE_CHECKOUT},
            after=installed,
        )


def _all_but(folders: Iterable[str]) -> list[str]:
    return ["tests", *(f"--ignore=tests/{folder}" for folder in folders)]


def _install_core(folder: Path) -> bool:
    """Put the one wheel of a folder into the environment without Qt."""
    (wheel,) = folder.glob("*.whl")
    try:
        core = environment.prepare(".venv-core", ["test"], source=wheel)
    except machine.SetUpError as error:
        machine.say(str(error))
        return False
    # The environment is kept from run to run, its copy of the program is not.
    return environment.pip_install(core, "--no-deps", "--force-reinstall", str(wheel))


if __name__ == "__main__":
    try:
        sys.exit(main())
    except KeyboardInterrupt:
        sys.exit("\nstopped")
