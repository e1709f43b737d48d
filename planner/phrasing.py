"""Numbers in the words a person uses, rounded to what is known.

Used by the command line, the handouts and the window alike, so that one forecast is
worded one way everywhere.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from planner.estimates import Interval
from planner.units import LengthUnit, TemperatureUnit, celsius_to, metres_to
from planner.words import MINUS, say


@dataclass(frozen=True)
class Style:
    """How this user reads numbers: units, and a 12 or 24 hour clock."""

    length: LengthUnit = "m"
    temperature: TemperatureUnit = "C"
    hours12: bool = False


def number_text(value: float, form: str = ".6g") -> str:
    """Return a number in a format of Python's, as the reader's language writes it.

    By itself as short as it can be written.
    """
    return say("{value:{form}}", value=value, form=form)


def typed_number(text: str) -> str:
    """Return a number as a person typed or copied it with the minus that `float` reads."""
    return text.replace(MINUS, "-")


def range_text(low: str, high: str) -> str:
    """Return "9–20" for two ends as they are shown, "−2 to 3" where a dash would mislead.

    It would beside another sign, and between ends of several words: "1 in 20 to 1 in 4".
    English joins with an en dash; Spanish with a hyphen, as the Real Academia has it
    (Ortografía, 2010, III 4.1.1.3.1: "páginas 23-45"): each language file says its own.
    """
    if any(sign.isspace() or sign in f"+-–{MINUS}" for sign in low + high):
        return say("{low} to {high}", low=low, high=high)
    return say("{low}–{high}", low=low, high=high)


def numbers_text(low: float, high: float, form: str = ".6g") -> str:
    """Return a range of two numbers, both in the format `form`."""
    return range_text(number_text(low, form), number_text(high, form))


def interval_text(estimate: Interval, form: str) -> str:
    """Return "14 (9–20)" for a mean and its interval, all three in the format `form`."""
    return say(
        "{mean} ({range})",
        mean=number_text(estimate.mean, form),
        range=numbers_text(estimate.low, estimate.high, form),
    )


def one_in(share: float) -> str:
    """Return a share as a natural frequency: "about 1 in 8", "fewer than 1 in 50"."""
    if not 0.02 <= share < 0.95:
        return short_one_in(share)
    return say("about {share}", share=short_one_in(share))


def short_one_in(share: float) -> str:
    """Return the same without "about", for inside brackets."""
    if share < 0.02:
        return say("fewer than 1 in 50")
    if share >= 0.95:
        return say("nearly all")
    if share < 0.35:
        count = 1 / share
        return say("1 in {count}", count=round(count) if count <= 12.5 else round(count / 5) * 5)
    tenths = round(share * 10)
    return say("half") if tenths == 5 else say("{tenths} in 10", tenths=tenths)


def light_text(share: Interval) -> str:
    """Return "about 1 in 8 (1 in 20 to 1 in 4)" for a light share and its interval.

    An interval whose ends are said alike tells nothing more, and is left out.
    """
    mean, low, high = one_in(share.mean), short_one_in(share.low), short_one_in(share.high)
    return mean if low == high else say("{mean} ({range})", mean=mean, range=range_text(low, high))


def count_text(count: Interval) -> str:
    """Return "about 14 (9–20)" for an expected number of crabs."""
    return say("about {count}", count=interval_text(count, ".0f"))


def height_text(height_m: float, style: Style) -> str:
    """Return a height to the nearest 5 cm or 0.1 ft, with its unit."""
    if style.length == "ft":
        return say("{height_ft:.1f} ft", height_ft=metres_to(height_m, "ft"))
    return say("{height_m:.2f} m", height_m=round(height_m * 20) / 20)


def temperature_text(value_c: float, style: Style) -> str:
    """Return a temperature to the degree, with its unit."""
    degrees = number_text(celsius_to(value_c, style.temperature), ".0f")
    return f"{degrees} °{style.temperature}"


def clock_text(instant: datetime, zone: ZoneInfo, style: Style) -> str:
    """Return the local time of an instant to the nearest five minutes."""
    local = _shown(instant, zone)
    if style.hours12:
        half = say("am") if local.hour < 12 else say("pm")
        return f"{local.hour % 12 or 12}:{local.minute:02d} {half}"
    return f"{local.hour:02d}:{local.minute:02d}"


def day_text(day: date) -> str:
    """Return "Fri 14 Aug" for a date."""
    return say("{day:%a} {day.day} {day:%b}", day=day)


def day_clock_text(instant: datetime, zone: ZoneInfo, style: Style) -> str:
    """Return "Fri 14 Aug 17:10" for an instant, in local time."""
    return f"{day_text(shown_day(instant, zone))} {clock_text(instant, zone, style)}"


def shown_day(instant: datetime, zone: ZoneInfo) -> date:
    """Return the local day that `clock_text` of the instant belongs to: 23:58 reads 00:00."""
    return _shown(instant, zone).date()


def _shown(instant: datetime, zone: ZoneInfo) -> datetime:
    return datetime.fromtimestamp(round(instant.timestamp() / 300) * 300, tz=zone)


def soak_text(soak_h: float) -> str:
    """Return a soak in hours and, over a day and a half, also in days."""
    whole = round(soak_h)
    return (
        say("{whole} h", whole=whole)
        if soak_h < 36
        else say("{whole} h ({soak_h:.1f} days)", whole=whole, soak_h=soak_h / 24)
    )


def daylight_text(hours: float) -> str:
    """Return daylight that is left, to the quarter hour: "7 h 15 min"."""
    if hours >= 24:
        return say("A day or more")
    whole, rest = divmod(round(hours * 4), 4)
    parts = (f"{whole} h" if whole else "", say("{rest} min", rest=rest * 15) if rest else "")
    return " ".join(part for part in parts if part) or say("Minutes")


def date_text(day: date) -> str:
    """Return "14 Aug 2026" for a date."""
    return say("{day.day} {day:%b %Y}", day=day)


def natural_order(label: str) -> tuple[tuple[int, int | str], ...]:
    """Return a key by which A2 comes before A10."""
    parts: list[tuple[int, int | str]] = []
    word = ""
    for letter in f"{label.casefold()}\0":
        if word and (letter == "\0" or letter.isdecimal() != word[-1].isdecimal()):
            parts.append((0, int(word)) if word.isdecimal() else (1, word))
            word = ""
        word += letter
    return tuple(parts)


def zone_text(instant: datetime, zone: ZoneInfo) -> str:
    """Return the name, such as "EDT", of the clock that `clock_text` of an instant is in."""
    return clock_name(_shown(instant, zone))


def clock_name(local: datetime) -> str:
    """Return "EDT" for a local time, or "UTC-03:00" where the zone has no letters of its own."""
    name = local.tzname() or str(local.tzinfo)
    # The time zone database names such clocks by bare digits: "-03", "+1345".
    return name if name[0] not in "+-" else from_utc_text(local.utcoffset() or timedelta())


def from_utc_text(offset: timedelta) -> str:
    """Return "UTC+09:30" for what a clock is ahead of UTC, as place files write it."""
    minutes = round(offset.total_seconds() / 60)
    sign = "-" if minutes < 0 else "+"
    return f"UTC{sign}{abs(minutes) // 60:02d}:{abs(minutes) % 60:02d}" if minutes else "UTC"


def until_text(span: timedelta) -> str:
    """Return "in 3 days", "today", "2 days ago" for a distance in whole days."""
    days = span.days
    if days == 0:
        return say("today")
    if days > 0:
        return say("tomorrow") if days == 1 else say("in {days} days", days=days)
    return say("yesterday") if days == -1 else say("{days} days ago", days=-days)


SHORT_DAYS = tuple(say("{day:%a}", day=date(2001, 1, day)) for day in range(1, 8))  # from Monday
SHORT_MONTHS = tuple(say("{month:%b}", month=date(2001, month, 1)) for month in range(1, 13))
WEEKDAYS = (
    say("Mondays"), say("Tuesdays"), say("Wednesdays"), say("Thursdays"), say("Fridays"),
    say("Saturdays"), say("Sundays"),
)  # fmt: skip
MOON_NAMES = (say("new moon"), say("first quarter"), say("full moon"), say("last quarter"))

TIDE_CAUTION = say(
    "Astronomical tide only: wind, rain and air pressure move real water. Not for navigation."
)
RULES_CAUTION = say(
    "Rules differ by place and change: check them with the agency before every trip."
)


def degrees_apart_text(warmer_c: float, style: Style) -> str:
    """Return "as warm", "2 °C warmer" or "4 °F colder" for a difference in degrees Celsius."""
    apart = round(warmer_c * (9 / 5 if style.temperature == "F" else 1))
    if apart == 0:
        return say("as warm")
    degrees = f"{abs(apart)} °{style.temperature}"
    if apart > 0:
        return say("{degrees} warmer", degrees=degrees)
    return say("{degrees} colder", degrees=degrees)
