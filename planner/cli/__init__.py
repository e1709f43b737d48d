"""The same jobs without a window: `fullshell water`, `sky`, `dates`, `plans` and the others."""

from collections.abc import Sequence

from planner.ui.language_choice import ENGLISH, wanted

__all__ = ["main"]


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command in the user's language and return the exit status (see `entry.main`)."""
    # Before anything that has texts is imported.
    code = wanted()
    if code != ENGLISH:
        _speak(code)
    from planner.cli.entry import main as run

    return run(argv)


def _speak(code: str) -> None:
    try:
        from planner.ui.languages import use
    except ImportError:  # without Qt there is English only
        return
    use(code)
