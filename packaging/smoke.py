"""Try an installed program the way a user would meet it: every view, every kind of job.

    python3 packaging/smoke.py PROGRAM [--log HAULS.csv]

PROGRAM is the executable of a bundle or of an environment. Nothing of the user's is touched, and
no screen is needed. A job that ends well but complains on standard error counts as failed: the
window says there what went wrong on its threads.
"""

from __future__ import annotations

import argparse
import csv
import json
import os
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

DEMO = "sedge-hollow"
DEMO_LOG = Path(__file__).parent.parent / "resources" / "demo" / "sedge-hollow-hauls.csv"
VIEWS = ("dates", "load", "hauls", "evidence", "places")
DAYS = ("--from", "2026-11-25", "--to", "2026-12-09")

# Longer than any job takes on a slow machine; one that hangs must not hold the run.
JOB_S = 180
# A view with nothing on it is a tenth of this.
LEAST_PICTURE_B = 20_000


class SmokeError(Exception):
    """The program did not do what it was asked for; the text says what came instead."""


@dataclass
class Trial:
    """One program in a folder and a home of their own."""

    program: Path
    folder: Path
    log: Path
    variables: dict[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        # Nothing of the environment that this script runs in may help the program along.
        foreign = ("PYTHON", "VIRTUAL_ENV", "QT_", "DISPLAY", "WAYLAND_", "LD_LIBRARY_PATH")
        own = {name: value for name, value in os.environ.items() if not name.startswith(foreign)}
        home = str(self.folder / "home")
        asked = {"FULLSHELL_HOME": home, "FULLSHELL_TRACEBACK": "1", "FULLSHELL_LANGUAGE": "en"}
        self.variables = {**own, **asked}

    def run(self, *words: str | Path) -> str:
        """Return what a job prints; SmokeError unless it ended well and without a complaint."""
        done = subprocess.run(
            [self.program, *words],
            cwd=self.folder,
            env=self.variables,
            stdin=subprocess.DEVNULL,
            capture_output=True,
            text=True,
            encoding="utf-8",
            # A pipe of Windows gets the letters of its code page; what is looked for is ASCII.
            errors="replace",
            timeout=JOB_S,
            check=False,
        )
        if done.returncode != 0 or done.stderr.strip():
            raise SmokeError(f"status {done.returncode}; it said: {done.stderr.strip()[-2000:]}")
        return done.stdout

    def file(self, name: str, least_b: int, *words: str | Path) -> bytes:
        """Run a job that writes a file; return its content when there is enough of it."""
        self.run(*words)
        content = (self.folder / name).read_bytes()
        if len(content) < least_b:
            raise SmokeError(f"{name} holds only {len(content)} bytes")
        return content


def speaks(trial: Trial) -> None:
    """Its version and its help."""
    if not trial.run("--version").startswith("fullshell "):
        raise SmokeError("no version")
    if "picture" not in trial.run("--help"):
        raise SmokeError("the help names no jobs")


def finds_itself_well(trial: Trial) -> None:
    """Its own examination: libraries, files, time zones, the window."""
    found = json.loads(trial.run("doctor", "--format", "json"))
    if not found["well"]:
        raise SmokeError(json.dumps(found["findings"], indent=1))


def speaks_another_language(trial: Trial) -> None:
    """A language file that ships, on the command line."""
    english = trial.run("sky", DEMO, *DAYS)
    trial.variables["FULLSHELL_LANGUAGE"] = "es"
    if trial.run("sky", DEMO, *DAYS) == english:
        raise SmokeError("asked for Spanish it speaks English")


def water_and_sky(trial: Trial) -> None:
    """Tide, ephemeris and time zones: files that ship in packages."""
    water = json.loads(trial.run("water", DEMO, *DAYS, "--turns", "--format", "json"))
    sky = json.loads(trial.run("sky", DEMO, *DAYS, "--format", "json"))
    if not water["turns"] or len(sky["days"]) != 15:
        raise SmokeError("no turns of the tide, or days missing from the sky")


def dates_and_plans(trial: Trial) -> None:
    """The forecast and the search, from the demo place that ships."""
    dates = json.loads(trial.run("dates", DEMO, *DAYS, "--log", trial.log, "--format", "json"))
    plans = json.loads(trial.run("plans", DEMO, *DAYS, "--log", trial.log, "--format", "json"))
    if len(dates["days"]) != 15 or not plans["plans"]:
        raise SmokeError("days or plans missing")


def evidence(trial: Trial) -> None:
    """What the log says: statistics from compiled libraries."""
    trial.run("learn", DEMO, "--log", trial.log)
    trial.run("trials", "--log", trial.log, "--by", "design")


def fit(trial: Trial) -> None:
    """Constants fitted to levels."""
    days = ("--from", "2026-06-01", "--to", "2026-07-01")
    levels = json.loads(
        trial.run("water", DEMO, *days, "--every", "1h", "--units", "m", "--format", "json")
    )
    with (trial.folder / "levels.csv").open("w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(("time", "height"))
        writer.writerows(zip(levels["times"], levels["heights"], strict=True))
    found = trial.run("check", DEMO, "--observed", "levels.csv", "--units", "m", "--fit")
    if "M2" not in found:
        raise SmokeError("no M2 among the fitted constants")


def papers(trial: Trial) -> None:
    """Everything that is taken along, printed sheets among them."""
    for name, least_b in (
        ("sheet.pdf", 5_000),
        ("trip.ics", 500),
        ("spots.csv", 200),
    ):
        trial.file(name, least_b, "take", DEMO, name, *DAYS, "--log", trial.log)
    trial.file("tally.pdf", 5_000, "tally", DEMO, "tally.pdf", "--day", "2026-11-25")
    trial.file("tally.html", 5_000, "tally", DEMO, "tally.html", "--day", "2026-11-25")


def view(name: str) -> Callable[[Trial], None]:
    """Return the trial of one view of the window, drawn with the demo's log."""

    def draw(trial: Trial) -> None:
        png = f"{name}.png"
        words = ("--view", name, "--today", "2026-11-25", "--size", "1100x700")
        content = trial.file(png, LEAST_PICTURE_B, "picture", png, *words)
        size = (int.from_bytes(content[16:20], "big"), int.from_bytes(content[20:24], "big"))
        if content[:8] != b"\x89PNG\r\n\x1a\n" or size != (1100, 700):
            raise SmokeError(f"no picture of 1100x700: {content[:24]!r}")

    draw.__doc__ = f"The view {name}."
    return draw


def opens_a_place_file(trial: Trial) -> None:
    """What a double click on a place file starts: the window, on that place, with its log."""
    place = trial.folder / "smoke.fullshell"
    place.write_text(_PLACE, encoding="utf-8")
    variables = {**trial.variables, "QT_QPA_PLATFORM": "offscreen"}
    if sys.platform.startswith("linux"):
        variables["DISPLAY"] = ":0"  # named, so that the program opens a window; never asked
    with (trial.folder / "window.txt").open("w+", encoding="utf-8") as said:
        window = subprocess.Popen(
            [trial.program, place],
            cwd=trial.folder,
            env=variables,
            stdin=subprocess.DEVNULL,
            stderr=said,
        )
        try:
            _wait_for_log(window, Path(variables["FULLSHELL_HOME"]))
        finally:
            window.send_signal(signal.SIGTERM)
            window.wait(JOB_S)
        said.seek(0)
        words = said.read().strip()
    if words:
        raise SmokeError(f"the window complained: {words[-2000:]}")


# Invented; the least that a place file says.
_PLACE = """format = 1
name = "Smoke Gut"
invented = true
latitude = 38.2
longitude = -76.1
timezone = "America/New_York"

[water]
units = "m"
datum = "MLLW"
mean_level = 0.26
source = "invented"
[water.constituents]
M2 = { amplitude = 0.21, phase = 61.0 }

[[spots]]
name = "grass edge"
depth = 1.8
trap_height = 0.35

[temperature]
monthly = [4, 4, 7, 13, 19, 24, 27, 26, 23, 17, 11, 6]
"""


def _wait_for_log(window: subprocess.Popen[bytes], home: Path) -> None:
    """Wait until the user's log is made: that comes after the place has been read and shown."""
    end = time.monotonic() + JOB_S
    while time.monotonic() < end:
        if window.poll() is not None:
            raise SmokeError(f"the window closed by itself with status {window.returncode}")
        if any(home.glob("*.logbook")) and not (home / "demo.logbook").exists():
            return
        time.sleep(0.1)
    raise SmokeError(f"no log was opened for the place within {JOB_S} s")


def refuses_a_bad_file(trial: Trial) -> None:
    """A place file that cannot be: every problem, and the status of wrong input."""
    (trial.folder / "bad.fullshell").write_text('format = 1\nname = "Bad"\n', encoding="utf-8")
    try:
        trial.run("check", "bad.fullshell")
    except SmokeError as error:
        if "status 3" in str(error) and "latitude" in str(error):
            return
        raise
    raise SmokeError("it was taken")


TRIALS: tuple[tuple[str, Callable[[Trial], None]], ...] = (
    ("version and help", speaks),
    ("its own examination", finds_itself_well),
    ("another language", speaks_another_language),
    ("water and sky", water_and_sky),
    ("dates and plans", dates_and_plans),
    ("evidence", evidence),
    ("constants fitted", fit),
    ("papers", papers),
    *((f"view {name}", view(name)) for name in VIEWS),
    ("a bad place file", refuses_a_bad_file),
    ("a place file opened", opens_a_place_file),
)


def try_all(program: Path, log: Path = DEMO_LOG) -> list[str]:
    """Try everything, saying how each went; return the names of what failed."""
    failed = []
    for name, attempt in TRIALS:
        begun = time.monotonic()
        with tempfile.TemporaryDirectory() as folder:
            try:
                attempt(Trial(program.absolute(), Path(folder), log.absolute()))
                outcome = "works"
            except (SmokeError, OSError, ValueError, KeyError, subprocess.SubprocessError) as error:
                outcome = f"FAILED: {type(error).__name__}: {error}"
                failed.append(name)
        print(f"  {time.monotonic() - begun:5.1f} s  {name}: {outcome}", flush=True)
    return failed


def main() -> int:
    """Try the program named on the command line; return 1 when anything failed."""
    parser = argparse.ArgumentParser(description="Try every view and job of an installed program.")
    parser.add_argument("program", type=Path)
    parser.add_argument("--log", type=Path, default=DEMO_LOG, help="a haul table to work with")
    asked = parser.parse_args()
    failed = try_all(asked.program, asked.log)
    print(f"FAILED: {', '.join(failed)}" if failed else "Everything works.")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
