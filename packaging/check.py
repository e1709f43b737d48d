"""Set up everything a developer needs and run every check.

    python3 packaging/check.py [--fast]

All checks run even when one fails; the last line says which did. `--fast` leaves out the tests
marked slow, the bundle and the benchmarks.
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

import bundle
import environment
import machine
import smoke

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

# They print ratios, which a reader judges: a check that fails on a busy machine teaches nothing.
BENCHMARKS = ("tides", "trips", "look_back", "house_figures --quick")

# Jobs that need every file that the wheel must carry.
DATES = "dates sedge-hollow --from 2026-06-01 --to 2026-06-14"
PICTURE = "picture window.png --today 2026-11-25"

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
    parser.add_argument(
        "--fast", action="store_true", help="leave out slow tests, bundle and benchmarks"
    )
    fast = parser.parse_args().fast
    options = ["--durations=10", *HUNG.split(), *(["-m", "not slow"] if fast else [])]
    begun = time.monotonic()
    try:
        machine.prepare(screen=False)
        machine.prepare_browser()
        if not fast:
            machine.prepare_bundling()
        python = environment.prepare(".venv", ["window", "dev"])
    except machine.SetUpError as error:
        print(error, file=sys.stderr)
        return 1
    machine.say(f"Set up in {time.monotonic() - begun:.0f} s")
    report = Report()
    check_code(report, python)
    check_window(report, python, options)
    with tempfile.TemporaryDirectory() as folder:
        built = build_wheel(report, python, Path(folder))
        check_core(report, Path(folder), options, after=built)
        if not fast:
            check_bundle(report, Path(folder), after=built)
            check_benchmarks(report, python)
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


def build_wheel(report: Report, python: Path, folder: Path) -> bool:
    """Build the wheel that both of what follows install."""
    pip_wheel = "-m pip wheel --no-deps --no-build-isolation --disable-pip-version-check"
    return report.run("wheel builds", [python, *pip_wheel.split(), "--wheel-dir", folder, ROOT])


def check_core(report: Report, folder: Path, options: Sequence[str], *, after: bool) -> None:
    """The wheel, installed where there is no Qt: it holds what it needs, and its core works."""
    installed = report.check(
        "wheel installs without Qt", lambda: _install_core(folder), after=after
    )
    core = environment.python_of(ROOT / ".venv-core")
    report.run(
        "core imports without Qt",
        [core, ROOT / "packaging" / "core_without_qt.py"],
        folder=folder,
        after=installed,
    )
    _find_files(report, "wheel finds its files", core, DATES, folder, after=installed)
    # A crashed worker ends the run as failed instead of being replaced in silence.
    workers = ["-n", "2", "--max-worker-restart=0", "--benchmark-skip"]
    report.run(
        "tests without Qt",
        [core, "-m", "pytest", *_all_but(ONLY_WITH_QT), *workers, *options],
        variables={**ONE_THREAD, **NOT_THE_CHECKOUT},
        after=installed,
    )


def check_bundle(report: Report, folder: Path, *, after: bool) -> None:
    """The wheel with its window, where there is nothing of a developer's; then the bundle of it."""
    installed = report.check(
        "wheel installs with its window", lambda: _install_window(folder), after=after
    )
    python = environment.python_of(ROOT / ".venv-bundle")
    for job in (DATES, PICTURE):
        name = f"wheel with its window: {job.split()[0]}"
        _find_files(report, name, python, job, folder, after=installed)
    built = report.check(
        "bundle builds", lambda: _build_bundle(python, folder / "bundle"), after=installed
    )
    report.check(
        "bundle does every job",
        lambda: not smoke.try_all(bundle.program_of(bundle.built_in(folder / "bundle"))),
        after=built,
    )


def check_benchmarks(report: Report, python: Path) -> None:
    """The benchmarks run and print their figures, last, when nothing else does."""
    for words in BENCHMARKS:
        name, *options = words.split()
        report.run(f"benchmark {name}", [python, "-m", f"tests.benchmarks.{name}", *options])


def _find_files(
    report: Report, name: str, python: Path, job: str, folder: Path, *, after: bool
) -> None:
    """Run a job that needs files of the wheel, away from the checkout."""
    report.run(
        name,
        [python.with_name("fullshell"), *job.split()],
        folder=folder,
        variables={"FULLSHELL_HOME": str(folder)},
        after=after,
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


def _install_window(folder: Path) -> bool:
    """Put the one wheel of a folder into the environment that bundles are built in."""
    (wheel,) = folder.glob("*.whl")
    try:
        bundle.prepare_environment(wheel)
    except (machine.SetUpError, bundle.BundleError) as error:
        machine.say(str(error))
        return False
    return True


def _build_bundle(python: Path, into: Path) -> bool:
    try:
        built = bundle.build(python, into)
    except bundle.BundleError as error:
        machine.say(str(error))
        return False
    machine.say(f"  {bundle.size_mb(built):.0f} MB")
    return True


if __name__ == "__main__":
    try:
        sys.exit(main())
    except KeyboardInterrupt:
        sys.exit("\nstopped")
