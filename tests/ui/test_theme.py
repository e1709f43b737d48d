"""Colours: text that can be read, and a scale of fullness that every eye can tell apart."""

from __future__ import annotations

from dataclasses import fields
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication, QCheckBox, QRadioButton, QSpinBox

from planner.ui import theme
from planner.ui.theme import DARK, LIGHT, Theme

Floats = NDArray[np.float64]

BOTH = pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])

# Machado, Oliveira and Fernandes (2009), IEEE Trans. Vis. Comput. Graph. 15(6), table of
# severity 1.0; they act on linear RGB.
CVD = {
    "full colour vision": np.eye(3),
    "protan": np.array(
        [
            [0.152286, 1.052583, -0.204868],
            [0.114503, 0.786281, 0.099216],
            [-0.003882, -0.048116, 1.051998],
        ]
    ),
    "deutan": np.array(
        [
            [0.367322, 0.860646, -0.227968],
            [0.280085, 0.672501, 0.047413],
            [-0.011820, 0.042940, 0.968881],
        ]
    ),
    "tritan": np.array(
        [
            [1.255528, -0.076749, -0.178779],
            [-0.078411, 0.930809, 0.147602],
            [0.004733, 0.691367, 0.303900],
        ]
    ),
}
SEEN = pytest.mark.parametrize("seen", CVD.values(), ids=CVD.keys())


def _linear(colours: list[QColor]) -> Floats:
    srgb = np.array([[c.redF(), c.greenF(), c.blueF()] for c in colours])
    return np.where(srgb <= 0.04045, srgb / 12.92, ((srgb + 0.055) / 1.055) ** 2.4)


def _lab(linear: Floats) -> Floats:
    """Return CIE L*a*b* (D65) of linear RGB, shape (n, 3); IEC 61966-2-1 and CIE 15."""
    to_xyz = np.array(
        [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]
    )
    xyz = np.clip(linear, 0, 1) @ to_xyz.T / np.array([0.95047, 1.0, 1.08883])
    f = np.where(xyz > (6 / 29) ** 3, np.cbrt(xyz), xyz / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.stack(
        [116 * f[:, 1] - 16, 500 * (f[:, 0] - f[:, 1]), 200 * (f[:, 1] - f[:, 2])], axis=1
    )


# -- text ----------------------------------------------------------------------------------------


def test_contrast_is_that_of_the_standard() -> None:
    """WCAG 2.1: black on white is 21:1, a colour on itself 1:1; #767676 on white is 4.54:1.

    The grey is the well-known lightest one that passes on white, by the formula of the standard.
    """
    black, white = QColor("#000000"), QColor("#ffffff")
    assert theme.contrast(black, white) == pytest.approx(21)
    assert theme.contrast(white, black) == pytest.approx(21)
    assert theme.contrast(white, white) == pytest.approx(1)
    assert theme.contrast(QColor("#767676"), white) == pytest.approx(4.54, abs=0.005)


@BOTH
@pytest.mark.parametrize("ground", ["ground", "panel", "raised", "weekend", "caution_ground"])
@pytest.mark.parametrize("ink", ["text", "quiet", "caution", "accent"])
def test_words_can_be_read_on_every_ground(colours: Theme, ink: str, ground: str) -> None:
    """Text has at least 4.5:1 (WCAG 2.1, level AA) wherever the window may put it."""
    one, other = QColor(getattr(colours, ink)), QColor(getattr(colours, ground))
    assert theme.contrast(one, other) >= 4.5


@BOTH
def test_words_on_the_chosen_row_can_be_read(colours: Theme) -> None:
    """The chosen plan, day and trip are the ones that matter most."""
    assert theme.contrast(QColor(colours.on_accent), QColor(colours.accent)) >= 4.5


@BOTH
@pytest.mark.parametrize("mark", ["water", "forecast", "logged", "free", "closed", "accent"])
def test_lines_and_marks_stand_out_from_their_lane(colours: Theme, mark: str) -> None:
    """What carries meaning has at least 3:1 against what it is drawn on (WCAG 2.1, 1.4.11)."""
    for ground in (colours.panel, colours.ground, colours.weekend, colours.night):
        assert theme.contrast(QColor(getattr(colours, mark)), QColor(ground)) >= 3


def test_both_sets_name_real_colours() -> None:
    """A slip in a colour would show as black."""
    for colours in (LIGHT, DARK):
        for each in fields(colours):
            if each.name != "dark":
                assert QColor(getattr(colours, each.name)).isValid(), each.name


@pytest.mark.parametrize("fullness", np.linspace(0, 1, 21))
def test_the_number_in_a_cell_can_be_read(fullness: float) -> None:
    """From straw to deep blue the number keeps its contrast, in the middle too."""
    ground = theme.fullness_colour(fullness)
    assert theme.contrast(theme.ink_on(ground), ground) >= 4.5


# -- the scale of fullness -----------------------------------------------------------------------


def _scale() -> list[QColor]:
    return [theme.fullness_colour(step / 100) for step in range(101)]


@SEEN
def test_fuller_is_always_darker(seen: Floats) -> None:
    """Lightness alone carries the scale: to every eye, and in a copy without colour."""
    lightness = _lab(_linear(_scale()) @ seen.T)[:, 0]
    assert all(after < before for before, after in pairwise(lightness[::2]))
    assert lightness[0] - lightness[-1] > 60


@SEEN
def test_equal_steps_look_about_equally_far_apart(seen: Floats) -> None:
    """Ten points of fullness can be told apart anywhere, and no step shouts.

    Twice the difference of about 2.3 in L*a*b* that is just noticeable (Mahy et al. 1994).
    """
    steps = np.linalg.norm(np.diff(_lab(_linear(_scale()[::10]) @ seen.T), axis=0), axis=1)
    assert steps.min() > 2 * 2.3
    assert steps.max() < 2.2 * steps.min()


def test_the_scale_is_fixed_and_ends_where_fullness_ends() -> None:
    """It is never stretched to what happens to be shown; odd numbers stay on it."""
    first, last = theme.fullness_colour(0), theme.fullness_colour(1)
    assert theme.fullness_colour(-0.2) == first
    assert theme.fullness_colour(1.3) == last
    assert len(set(theme.fullness_table())) == 101


@SEEN
@BOTH
def test_the_chosen_frame_stands_out_from_the_scale(colours: Theme, seen: Floats) -> None:
    """The frame around the chosen day is told from the cells it crosses."""
    frame = _lab(_linear([QColor(colours.accent)]) @ seen.T)
    apart = np.linalg.norm(_lab(_linear(_scale()) @ seen.T) - frame, axis=1)
    assert apart.min() > 3 * 2.3


# -- giving it to the window ---------------------------------------------------------------------


@pytest.mark.parametrize(("choice", "colours"), [("light", LIGHT), ("dark", DARK)])
def test_a_choice_reaches_the_whole_application(
    app: QApplication, choice: Any, colours: Theme
) -> None:
    """Widgets that nobody styled follow the palette; painting asks for the current set."""
    assert theme.apply(app, choice) is colours
    assert theme.current() is colours
    palette = app.palette()
    assert palette.color(QPalette.ColorRole.Window) == QColor(colours.ground)
    assert palette.color(QPalette.ColorRole.Highlight) == QColor(colours.accent)
    disabled = palette.color(QPalette.ColorGroup.Disabled, QPalette.ColorRole.Text)
    assert disabled == QColor(colours.quiet)
    assert palette.color(QPalette.ColorRole.Midlight) == QColor(colours.caution_ground)


def test_the_system_decides_when_it_is_asked_to(
    app: QApplication, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Dark desktops get a dark window unless the user says otherwise."""
    monkeypatch.setattr(theme, "system_is_dark", lambda: True)
    assert theme.theme_of("system") is DARK
    assert theme.theme_of("light") is LIGHT
    monkeypatch.setattr(theme, "system_is_dark", lambda: False)
    assert theme.theme_of("system") is LIGHT
    assert theme.theme_of("dark") is DARK


def test_a_new_theme_leaves_the_style_sheet_alone(app: QApplication) -> None:
    """A sheet given anew polishes every widget anew: seconds, where a palette takes
    milliseconds."""
    before = app.styleSheet()
    theme.apply(app, "dark")
    assert app.styleSheet() == before


@BOTH
def test_fields_are_found_and_the_one_under_the_keyboard_is_told(colours: Theme) -> None:
    """The edge of a field has 3:1 against what is around and in it (WCAG 2.1, 1.4.11), the edge
    under the keyboard too (2.4.11 of 2.2), and that one is twice as wide."""
    for edge in (theme.EDGE, theme.FOCUS):
        for ground in (colours.panel, colours.ground):
            assert theme.contrast(QColor(edge), QColor(ground)) >= 3, (edge, ground)


@pytest.mark.parametrize("choice", ["light", "dark"])
@pytest.mark.parametrize("kind", [QSpinBox, QCheckBox, QRadioButton])
def test_boxes_have_an_edge_that_stands_out(qapp: Any, choice: Any, kind: Any) -> None:
    """The style draws it in the window's colour made darker: on a dark window none is seen, and
    a box without its tick is not there."""
    theme.apply(qapp, choice)
    box = kind()
    box.ensurePolished()
    drawn = box.palette().window().color().darker(140)
    assert theme.contrast(drawn, QColor(theme.current().panel)) >= 3.0
