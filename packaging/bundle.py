"""Build the desktop bundle of the system that this runs on, and try it.

    python3 packaging/bundle.py [--into FOLDER] [--untried]

Linux: a folder with the program, and an archive of it with an installer for one user. Windows:
the folder, and a set-up program where Inno Setup is there. macOS: the app, and an archive of it.
The program is taken from a wheel in an environment of its own, `.venv-bundle`.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036  an older Python must get as far as this message
    sys.exit(
        "Fullshell needs Python 3.11 or later; this is %d.%d (%s)."  # noqa: UP031
        % (sys.version_info[0], sys.version_info[1], sys.executable)
    )

import argparse
import os
import platform
import shutil
import subprocess
import tempfile
from pathlib import Path

import environment
import icons
import machine
import smoke
from bundle_start import MUTEX

ROOT = environment.ROOT
EXTRAS = ("window", "bundle")
LINUX = ROOT / "packaging" / "linux"
WINDOWS_SCRIPT = ROOT / "packaging" / "windows" / "fullshell.iss"


class BundleError(Exception):
    """The bundle cannot be built; the text says why and what to do."""


def main() -> int:
    """Build, try and pack; return 1 when any of it failed."""
    parser = argparse.ArgumentParser(description="Build the bundle of this system.")
    parser.add_argument("--into", type=Path, default=ROOT / "dist", metavar="FOLDER")
    parser.add_argument("--untried", action="store_true", help="leave out trying what was built")
    asked = parser.parse_args()
    into = asked.into.absolute()
    try:
        machine.prepare(screen=True)
        machine.prepare_bundling()
        python = prepare_environment()
        built = build(python, into)
        machine.say(f"{built}: {size_mb(built):.0f} MB")
        if not asked.untried and smoke.try_all(program_of(built)):
            raise BundleError("The bundle does not do everything it must; see above.")
        packed = pack(built, version_of(python), into)
    except (machine.SetUpError, BundleError) as error:
        print(error, file=sys.stderr)
        return 1
    machine.say(f"Ready: {packed}")
    return 0


def prepare_environment(wheel: Path | None = None) -> Path:
    """Return the interpreter of `.venv-bundle`, which holds a wheel and what bundles it.

    wheel: one that is there already; None to build it from the checkout.
    """
    python = environment.prepare(".venv-bundle", EXTRAS, source=wheel or ROOT)
    with tempfile.TemporaryDirectory() as name:
        # The environment is kept from run to run, its copy of the program is not.
        fresh = wheel or build_wheel(python, Path(name))
        if not environment.pip_install(python, "--no-deps", "--force-reinstall", str(fresh)):
            raise BundleError("The wheel could not be installed; see pip's own message above.")
    return python


def build_wheel(python: Path, folder: Path) -> Path:
    """Return a wheel of the checkout, built into a folder."""
    options = ["--no-deps", "--no-build-isolation", "--disable-pip-version-check"]
    if not machine.run([python, "-m", "pip", "wheel", *options, "--wheel-dir", folder, ROOT]):
        raise BundleError("The wheel could not be built; see pip's own message above.")
    (wheel,) = folder.glob("*.whl")
    return wheel


def build(python: Path, into: Path) -> Path:
    """Return the folder of the bundle (on macOS the app), built from what an environment holds."""
    work = into / "work"
    spec = ROOT / "packaging" / "fullshell.spec"
    command: list[str | Path] = [python, "-m", "PyInstaller"]
    command += ["--noconfirm", "--clean", "--log-level", "WARN"]
    command += ["--workpath", work, "--distpath", into, spec]
    # In another folder, so that the program comes from the wheel and not from the checkout.
    into.mkdir(parents=True, exist_ok=True)
    if not machine.run(command, folder=into):
        raise BundleError("PyInstaller could not build the bundle; its message stands above.")
    built = built_in(into)
    if sys.platform.startswith("linux"):
        add_installer(built, work / "fullshell" / "icons")
    return built


def built_in(folder: Path) -> Path:
    """Return where PyInstaller leaves the bundle: a folder, on macOS an app."""
    return folder / ("Fullshell.app" if sys.platform == "darwin" else "fullshell")


def add_installer(built: Path, pngs: Path) -> None:
    """Put the installer of one user, and what it tells the desktop, beside the program."""
    share = built / "share"
    for name in ("install.sh", "uninstall.sh"):
        shutil.copy(LINUX / name, built / name)
        (built / name).chmod(0o755)
    (share / "icons").mkdir(parents=True)
    for name in ("fullshell.desktop", "fullshell-place.xml", "may_go.sh", "refresh.sh"):
        shutil.copy(LINUX / name, share / name)
    shutil.copy(icons.DRAWING, share / "icons")
    for size in icons.SIZES:
        shutil.copy(pngs / f"{size}.png", share / "icons")


def program_of(built: Path) -> Path:
    """Return the executable of a bundle that runs jobs."""
    if built.suffix == ".app":
        return built / "Contents" / "MacOS" / "fullshell"
    return built / ("fullshell.exe" if sys.platform == "win32" else "fullshell")


def size_mb(folder: Path) -> float:
    """Return how much room a folder takes, in MB of a million bytes; links count as nothing."""
    files = (path for path in folder.rglob("*") if path.is_file() and not path.is_symlink())
    return sum(path.stat().st_size for path in files) / 1e6


def version_of(python: Path) -> str:
    """Return the version of the program that an environment holds: the one source is the code."""
    asked = "import planner; print(planner.__version__)"
    done = subprocess.run([python, "-P", "-c", asked], capture_output=True, text=True, check=True)
    return done.stdout.strip()


def pack(built: Path, version: str, into: Path) -> Path:
    """Return the one file that is handed on: an archive, or the set-up program of Windows."""
    name = f"fullshell-{version}-{sys.platform}-{platform.machine().lower()}"
    if sys.platform == "win32":
        return _windows_setup(built, version, into, name)
    if sys.platform == "darwin":
        packed = into / f"{name}.zip"
        # The system's own tool: it keeps links, rights and signatures.
        if not machine.run(["ditto", "-c", "-k", "--keepParent", built, packed]):
            raise BundleError("The app could not be packed; the message of ditto stands above.")
        return packed
    return Path(shutil.make_archive(str(into / name), "gztar", into, built.name))


def _windows_setup(built: Path, version: str, into: Path, name: str) -> Path:
    compiler = _inno_setup()
    if compiler is None:
        machine.say(
            "There is no Inno Setup 6 (ISCC.exe) here, so no set-up program was made: install "
            "it and run this again. The folder works as it is."
        )
        return built
    settings = [f"/DVersion={version}", f"/DSource={built}", f"/DMutex={MUTEX}"]
    settings += [f"/DRunsOn={setup_runs_on(platform.machine())}", f"/O{into}", f"/F{name}-setup"]
    if not machine.run([compiler, "/Q", *settings, WINDOWS_SCRIPT]):
        raise BundleError("The set-up program could not be made; see the message above.")
    return into / f"{name}-setup.exe"


def setup_runs_on(machine_name: str) -> str:
    """Return Inno Setup's word for the machines that a bundle built on this one runs on."""
    return "arm64" if machine_name.lower() == "arm64" else "x64compatible"


def _inno_setup() -> str | None:
    """Return the compiler of Inno Setup, found on the path or where it installs itself."""
    found = shutil.which("iscc")
    folders = [os.environ.get(name) for name in ("ProgramFiles(x86)", "ProgramFiles")]
    usual = [Path(folder, "Inno Setup 6", "ISCC.exe") for folder in folders if folder]
    return found or next((str(path) for path in usual if path.is_file()), None)


if __name__ == "__main__":
    try:
        sys.exit(main())
    except KeyboardInterrupt:
        sys.exit("\nstopped")
