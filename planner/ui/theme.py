"""Every colour, size and stacking order of the window, each with its reason.

Colours come in two sets. Text on its ground has a contrast of at least 4.5:1 in both; marks
that carry meaning differ in shape as well.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication, QLineEdit, QPlainTextEdit, QTextEdit, QToolTip

from planner.estimates import Floats
from planner.ui.state import ThemeChoice

EDGE: Final = "#7c868d"  # around fields to type in: 3:1 in both themes, so that they are found
FOCUS: Final = "#c4622c"  # around the field under the keyboard: 3:1 in both themes, and warm
SPACE: Final = 8  # one scale of spacing: multiples and halves of this, in device-independent px
LINE_GAP: Final = SPACE // 4  # between lines that are read as one thing
LEAST_PT: Final = 6.5  # letters smaller than this are not read on deck


@dataclass(frozen=True)
class Theme:
    """One set of colours."""

    dark: bool
    ground: str  # behind everything
    panel: str  # cards, tables, lanes: lifts them off the ground
    raised: str  # buttons and headers on a panel
    line: str  # hairlines between lanes and cells; not a carrier of meaning
    text: str
    quiet: str  # secondary text; still 4.5:1 on ground and panel
    accent: str  # the chosen thing: day, plan, view; text on it is `on_accent`
    on_accent: str
    water: str  # tide curve and envelope: blue as water, drawn as line or band only
    water_fill: str
    night: str  # behind charts when the sun is down
    forecast: str  # forecast line of the share of full crabs
    forecast_band: str  # its 80% interval, to be told from the line by lightness
    logged: str  # marks of logged trips, to stand out from forecast in shape and colour
    free: str  # underline of free days
    closed: str  # crosses of closed days
    caution: str  # warnings; always with the word or the sign beside it
    caution_ground: str
    weekend: str  # tint of Saturday and Sunday columns


LIGHT: Final = Theme(
    dark=False,
    ground="#f3f1ec",
    panel="#fcfbf8",
    raised="#e9e6de",
    line="#d5d1c7",
    text="#1d2429",
    quiet="#55606a",
    accent="#8a3b12",
    on_accent="#ffffff",
    water="#1f6a8c",
    water_fill="#b9d6e2",
    night="#dcdfe8",
    forecast="#2b4a8f",
    forecast_band="#c3cce6",
    logged="#8a3b12",
    free="#2f6b3f",
    closed="#7a5560",
    caution="#7a4a00",
    caution_ground="#fbeccb",
    weekend="#efebe1",
)

DARK: Final = Theme(
    dark=True,
    ground="#14191d",
    panel="#1c2328",
    raised="#283137",
    line="#38434b",
    text="#e8e6e1",
    quiet="#a3adb5",
    accent="#f0a573",
    on_accent="#20140c",
    water="#7cc0dd",
    water_fill="#24485a",
    night="#101418",
    forecast="#a9bcf0",
    forecast_band="#34426b",
    logged="#f0a573",
    free="#8fce9f",
    closed="#c9a0ac",
    caution="#f2c879",
    caution_ground="#3a2f1b",
    weekend="#222a30",
)

# Stacking of what is drawn on charts, from the back: one scale for every chart.
Z_GROUND: Final = -20
Z_BAND: Final = -10
Z_CURVE: Final = 0
Z_MARK: Final = 10
Z_CHOSEN: Final = 20


def system_is_dark() -> bool:
    """Return whether the desktop asks for dark windows."""
    hints = QGuiApplication.styleHints()
    return bool(hints.colorScheme() == Qt.ColorScheme.Dark)


def theme_of(choice: ThemeChoice) -> Theme:
    """Return the set of colours for the user's choice."""
    if choice == "system":
        return DARK if system_is_dark() else LIGHT
    return DARK if choice == "dark" else LIGHT


_current: Theme = LIGHT


def current() -> Theme:
    """Return the set of colours in use."""
    return _current


def apply(app: QApplication, choice: ThemeChoice) -> Theme:
    """Give the whole application the colours of a choice.

    Style and style sheet are the same for every choice and are given once: a new sheet would
    polish every widget anew, seconds of them, where a palette takes milliseconds.
    """
    global _current
    _current = theme_of(choice)
    if app.styleSheet() != _SHEET:
        # Or the sheet would keep a palette from reaching the widgets that are there.
        app.setAttribute(Qt.ApplicationAttribute.AA_UseStyleSheetPropagationInWidgetStyles)
        app.setStyle("Fusion")
        app.setStyleSheet(_SHEET)
    palette = _palette(_current)
    app.setPalette(palette)
    # The style draws the edge of these in the window's colour darkened so: unseen on a dark one.
    edged = QPalette(palette)
    edged.setColor(QPalette.ColorRole.Window, QColor(EDGE).lighter(140))
    for kind in ("QAbstractSpinBox", "QCheckBox", "QRadioButton"):
        # PySide takes a str here; its own type hints ask for bytes, which it refuses.
        app.setPalette(edged, kind)  # type: ignore[arg-type]
    QToolTip.setPalette(palette)
    # Now, so that whoever asks next finds the new colours.
    app.sendPostedEvents(None, QEvent.Type.ApplicationPaletteChange)
    for field in app.allWidgets():
        if isinstance(field, QLineEdit | QPlainTextEdit | QTextEdit):
            # What has a rule in the sheet keeps the ground it was first painted on.
            field.style().unpolish(field)
            field.style().polish(field)
    return _current


def title_font() -> QFont:
    """Return the letters at the head of a view: 1.4 times the window's, and heavier."""
    font = QFont()
    font.setPointSizeF(round(1.4 * QApplication.font().pointSizeF()))
    font.setWeight(QFont.Weight.DemiBold)
    return font


def text_scale() -> float:
    """Return how large the window's text is against the 10 points that sizes are made for."""
    return max(0.8, QFont(QApplication.font()).pointSizeF() / 10)


def smaller(font: QFont, points: float = 1.0) -> QFont:
    """Return the letters of notes on charts and in legends: a point or so less than `font`."""
    small = QFont(font)
    small.setPointSizeF(max(LEAST_PT, font.pointSizeF() - points))
    return small


def colour(value: str, alpha: int = 255) -> QColor:
    """Return a colour of the theme, with an opacity of 0 to 255."""
    made = QColor(value)
    made.setAlpha(alpha)
    return made


# Fullness: a straight line in CIE L*a*b* from pale straw (empty) to deep blue (full), so equal
# steps of fullness look equally far apart; lightness alone carries it, and straw to blue is the
# axis that all three common kinds of colour vision keep. Fixed from 0 to 1, in both themes.
_EMPTY_LAB: Final = np.array([93.0, -2.0, 26.0])
_FULL_LAB: Final = np.array([24.0, 6.0, -40.0])
UNSURE_WIDTH: Final = 0.25  # an 80% interval of fullness wider than this is hatched


@lru_cache(maxsize=1)
def fullness_table() -> tuple[int, ...]:
    """Return 101 colours (0xAARRGGBB) for fullness 0.00 to 1.00."""
    share = np.linspace(0, 1, 101)[:, None]
    rgb = _lab_to_srgb(_EMPTY_LAB + share * (_FULL_LAB - _EMPTY_LAB))
    return tuple(0xFF000000 | int(r) << 16 | int(g) << 8 | int(b) for r, g, b in rgb)


def fullness_colour(fullness: float) -> QColor:
    """Return the colour of a fullness from 0 to 1."""
    return QColor.fromRgb(fullness_table()[round(100 * min(max(fullness, 0.0), 1.0))])


@lru_cache(maxsize=101)
def ink_of_fullness(percent: int) -> QColor:
    """Return the ink that reads on the colour of a fullness of 0 to 100."""
    return ink_on(fullness_colour(percent / 100))


def ink_on(ground: QColor) -> QColor:
    """Return black or white, whichever reads better on a ground: at least 4.5:1 on any."""
    return max(QColor("#000000"), QColor("#ffffff"), key=lambda ink: contrast(ground, ink))


def contrast(one: QColor, other: QColor) -> float:
    """Return the contrast ratio of two colours (WCAG 2.1, section 1.4.3), 1 to 21."""
    bright, dim = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (bright + 0.05) / (dim + 0.05)


def _luminance(value: QColor) -> float:
    channels = np.array([value.redF(), value.greenF(), value.blueF()])
    linear = np.where(channels <= 0.03928, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)
    return float(linear @ np.array([0.2126, 0.7152, 0.0722]))


def _lab_to_srgb(lab: Floats) -> NDArray[np.int64]:
    """Return 0-255 sRGB of CIE L*a*b* (D65) rows, shape (n, 3); IEC 61966-2-1."""
    fy = (lab[:, 0] + 16) / 116
    f = np.stack([fy + lab[:, 1] / 500, fy, fy - lab[:, 2] / 200], axis=1)
    xyz = np.where(f > 6 / 29, f**3, 3 * (6 / 29) ** 2 * (f - 4 / 29))
    xyz = xyz * np.array([0.95047, 1.0, 1.08883])
    to_rgb = np.array(
        [[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415], [0.0557, -0.2040, 1.0570]]
    )
    linear = np.clip(xyz @ to_rgb.T, 0, 1)
    srgb = np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)
    rounded: NDArray[np.int64] = np.rint(srgb * 255).astype(np.int64)
    return rounded


def _palette(theme: Theme) -> QPalette:
    palette = QPalette()
    role = QPalette.ColorRole
    for which, value in (
        (role.Window, theme.ground),
        (role.WindowText, theme.text),
        (role.Base, theme.panel),
        (role.AlternateBase, theme.weekend),
        (role.Text, theme.text),
        (role.PlaceholderText, theme.quiet),
        (role.Button, theme.raised),
        (role.ButtonText, theme.text),
        (role.BrightText, theme.caution),
        (role.Highlight, theme.accent),
        (role.HighlightedText, theme.on_accent),
        (role.ToolTipBase, theme.panel),
        (role.ToolTipText, theme.text),
        (role.Link, theme.accent),
        (role.Mid, theme.line),
        (role.Dark, theme.line),
        (role.Light, theme.raised),
        (role.Midlight, theme.caution_ground),  # which Fusion has no other use for
    ):
        palette.setColor(which, QColor(value))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(theme.quiet))
    return palette


# Nothing here changes with the theme: a new sheet would polish every widget anew. Fields have the
# one edge, and the one edge under the keyboard, that stand out in both themes.
_SHEET: Final = f"""
QLineEdit, QPlainTextEdit, QTextEdit {{
    border: 1px solid {EDGE}; border-radius: 3px; padding: 2px 4px;
}}
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus {{
    border: 2px solid {FOCUS}; padding: 1px 3px;
}}
QTableView QLineEdit, QTableView QLineEdit:focus {{
    border: 1px solid {FOCUS}; border-radius: 0; padding: 0;
}}
"""
