"""Environments of the checkout: made when absent, kept while they still fit, never half ready."""

from __future__ import annotations

import hashlib
import json
import subprocess
import sys
import venv
from collections.abc import Iterable
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Literal

from machine import SetUpError, run, say

ROOT = Path(__file__).resolve().parent.parent
CONSTRAINTS = ROOT / "packaging" / "constraints.txt"
STAMP = "fullshell-set-up.json"


@dataclass(frozen=True)
class Stamp:
    """What an environment was made from; written last, so that its presence means finished."""

    python: str
    checkout: str
    requirements: str
    extras: tuple[str, ...]


Step = Literal["keep", "install", "rebuild"]


def requirements_digest(*files: bytes) -> str:
    """Return a digest of the contents of the files that say what is installed."""
    digest = hashlib.sha256()
    for content in files:
        digest.update(hashlib.sha256(content).digest())
    return digest.hexdigest()


def next_step(found: Stamp | None, wanted: Stamp, python_there: str | None) -> Step:
    """Return what an environment needs.

    `python_there` is the version its interpreter gives, None when it does not run. Another
    Python or a moved checkout breaks an environment beyond installing; anything else does not,
    and an environment that others made is added to rather than thrown away.
    """
    if python_there != wanted.python or (found and found.checkout != wanted.checkout):
        return "rebuild"
    if (
        found
        and found.requirements == wanted.requirements
        and set(found.extras) >= set(wanted.extras)
    ):
        return "keep"
    return "install"


def parse_stamp(text: str) -> Stamp | None:
    """Return the stamp written as JSON; None when the text is not one."""
    try:
        fields = json.loads(text)
        return Stamp(**{**fields, "extras": tuple(fields["extras"])})
    except (ValueError, TypeError, KeyError):
        return None


def python_of(environment: Path, platform: str = sys.platform) -> Path:
    """Return the interpreter of an environment; `platform` as in `sys.platform`."""
    if platform == "win32":
        return environment / "Scripts" / "python.exe"
    return environment / "bin" / "python"


def prepare(name: str, extras: Iterable[str], source: Path = ROOT) -> Path:
    """Return the interpreter of an environment that holds our package with these extras.

    `source` is the checkout, installed so that edits count at once, or a wheel.
    SetUpError when the environment cannot be made or a package cannot be installed.
    """
    folder = ROOT / name
    stamp_file = folder / STAMP
    found = parse_stamp(stamp_file.read_text(encoding="utf-8")) if stamp_file.is_file() else None
    wanted = Stamp(
        python=sys.version.split()[0],
        checkout=str(ROOT),
        requirements=requirements_digest(
            (ROOT / "pyproject.toml").read_bytes(), CONSTRAINTS.read_bytes()
        ),
        extras=tuple(sorted({*extras, *(found.extras if found else ())})),
    )
    python = python_of(folder)
    step = next_step(found, wanted, _version_of(python))
    if step == "keep":
        say(f"{name}: ready")
        return python
    stamp_file.unlink(missing_ok=True)
    if step == "rebuild":
        say(f"{name}: making the environment with Python {wanted.python}")
        _make(folder)
    say(f"{name}: installing what pyproject.toml asks for (this fetches packages)")
    target = f"{source}[{','.join(wanted.extras)}]"
    editable = ["--editable"] if source.is_dir() else []
    if not pip_install(python, "--constraint", str(CONSTRAINTS), *editable, target):
        raise SetUpError(
            f"{name}: pip could not install the packages; its own message stands above. "
            "Nothing is half done: run the same command again when the cause is gone."
        )
    stamp_file.write_text(json.dumps(asdict(wanted), indent=2), encoding="utf-8")
    return python


def pip_install(python: Path, *arguments: str) -> bool:
    """Run pip in an environment, by the machine's own pip settings."""
    return run([python, "-m", "pip", "install", "--disable-pip-version-check", *arguments])


def _make(folder: Path) -> None:
    try:
        venv.create(folder, clear=True, with_pip=True, symlinks=sys.platform != "win32")
    except (OSError, subprocess.CalledProcessError) as error:
        raise SetUpError(f"The environment {folder} could not be made: {error}") from error


def _version_of(python: Path) -> str | None:
    """Return the version of an interpreter, or None when it does not run."""
    try:
        asked = subprocess.run(
            [python, "-c", "import sys; print(sys.version.split()[0])"],
            capture_output=True,
            text=True,
            check=True,
        )
    except (OSError, subprocess.CalledProcessError):
        return None
    return asked.stdout.strip()
