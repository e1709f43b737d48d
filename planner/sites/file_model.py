"""The place file, format 1: its tables, and what each value alone may be.

Every field's `description` says what to write, with an example; error messages end in it.
What must hold between fields is in `checks`.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field

from planner.sites.file_values import (
    LONGEST_NAME,
    Clock,
    Number,
    PeriodEnd,
    Plain,
    PlainDate,
    Text,
    Weekday,
    Zone,
)
from planner.sites.water_tables import Table, WaterTable
from planner.words import say


class RampTable(Table):
    """[ramp]: when the boat can be launched."""

    lowest_level: Number = Field(
        description=say("the lowest water level at which the boat launches, such as -0.1")
    )


# Six hours from a turn is the next one, where there are two tides a day.
_SlackMinutes = Annotated[Number, Field(ge=-360, le=360)]


class SlackTable(Table):
    """[slack]: how long after a turn the current rests, by the user's own watch."""

    after_high_minutes: _SlackMinutes | None = Field(
        default=None,
        description=say(
            "minutes from high water to slack, -360 to 360, such as 40; negative is before"
        ),
    )
    after_low_minutes: _SlackMinutes | None = Field(
        default=None,
        description=say(
            "minutes from low water to slack, -360 to 360, such as 25; negative is before"
        ),
    )


class SpotTable(Table):
    """[[spots]]: where traps stand."""

    name: Text = Field(description=say('the name of the spot, such as "grass edge"'))
    depth: Number = Field(description=say("the charted depth below the datum, such as 1.8"))
    trap_height: Number = Field(description=say("the height of the trap, such as 0.35 m"))
    latitude: Annotated[Number, Field(ge=-90, le=90)] | None = Field(
        default=None, description=say("the position in degrees, north positive, such as 38.2034")
    )
    longitude: Annotated[Number, Field(ge=-180, le=180)] | None = Field(
        default=None, description=say("the position in degrees, east positive, such as -76.1012")
    )


class TemperatureTable(Table):
    """[temperature]: water temperature by month."""

    monthly: Annotated[
        list[Annotated[Number, Field(ge=-2, le=40)]], Field(min_length=12, max_length=12)
    ] = Field(
        description=say(
            "twelve water temperatures, January to December, in degrees Celsius (-2 to 40)"
        )
    )


class ClosureTable(Table):
    """[[closures]]: when no trap may be in the water."""

    reason: Text = Field(description=say('why it is closed, such as "trap clean-up"'))
    first: PeriodEnd | None = Field(
        default=None,
        alias="from",
        description=say('a date such as 2026-02-11, or "02-11" for every year'),
    )
    last: PeriodEnd | None = Field(
        default=None,
        alias="to",
        description=say('a date such as 2026-02-20, or "02-20" for every year'),
    )
    weekdays: list[Weekday] = Field(
        default=[], max_length=7, description=say('days of the week, such as ["Sun"]')
    )


class RuleNoteTable(Table):
    """[[rules.notes]]: a rule as the user wrote it down."""

    category: Text = Field(description=say('the heading it stands under, such as "minimum size"'))
    text: Annotated[str, Field(max_length=1000), Plain] = Field(
        description=say("the rule in your own words, in quotes")
    )


class RulesTable(Table):
    """[rules]: the rules of the place and when they were checked."""

    checked: PlainDate | None = Field(
        default=None, description=say("the date you last checked the rules, such as 2026-03-02")
    )
    where: Text | None = Field(default=None, description=say("where you checked them, in quotes"))
    max_traps: Annotated[int, Field(ge=1, le=10_000)] | None = Field(
        default=None, description=say("the most traps allowed, a whole number")
    )
    max_soak_hours: Annotated[Number, Field(gt=0, le=2000)] | None = Field(
        default=None, description=say("the longest soak allowed in hours, such as 72")
    )
    notes: list[RuleNoteTable] = Field(default=[], description=say("tables headed [[rules.notes]]"))


class FreeTable(Table):
    """[free]: when the user can be on the water."""

    weekdays: list[Weekday] | None = Field(
        default=None,
        max_length=7,
        description=say('the days you are free, such as ["Fri", "Sat", "Sun"]'),
    )
    earliest: Clock | None = Field(
        default=None, alias="from", description=say('a time of day such as "05:30"')
    )
    latest: Clock | None = Field(
        default=None, alias="to", description=say('a time of day such as "20:30"')
    )
    also: list[PlainDate] = Field(default=[], description=say("dates such as [2026-05-25]"))
    never: list[PlainDate] = Field(default=[], description=say("dates such as [2026-07-04]"))


class TripTable(Table):
    """[trip]: how the user fishes here."""

    traps: Annotated[int, Field(ge=1, le=10_000)] | None = Field(
        default=None, description=say("how many traps you set, a whole number")
    )
    soak_hours: (
        Annotated[list[Annotated[Number, Field(gt=0, le=1000)]], Field(min_length=2, max_length=2)]
        | None
    ) = Field(default=None, description=say("the shortest and the longest soak, such as [14, 50]"))
    bait_minutes: Annotated[Number, Field(ge=0, le=600)] | None = Field(
        default=None, description=say("minutes from fetching bait to the first set, 0 to 600")
    )
    set_minutes: Annotated[Number, Field(gt=0, le=1440)] | None = Field(
        default=None, description=say("minutes it takes to set all traps, up to 1440")
    )
    haul_minutes: Annotated[Number, Field(gt=0, le=1440)] | None = Field(
        default=None, description=say("minutes it takes to haul all traps, up to 1440")
    )
    cover_margin: Annotated[Number, Field(ge=0)] | None = Field(
        default=None, description=say("least water to keep over every trap, such as 0.3 m")
    )


class PlaceFile(Table):
    """A whole place file."""

    format: Literal[1] = Field(
        description=say("format = 1; a later number needs a later Fullshell")
    )
    name: Annotated[str, Field(max_length=LONGEST_NAME), Plain] = Field(
        description=say('the name of the place, such as "Otter Bight"')
    )
    latitude: Annotated[Number, Field(ge=-90, le=90)] = Field(
        description=say("degrees from -90 to 90, north positive, such as 38.2")
    )
    longitude: Annotated[Number, Field(ge=-180, le=180)] = Field(
        description=say("degrees from -180 to 180, east positive, such as -76.1")
    )
    timezone: Zone = Field(description=say('the name of the time zone, such as "America/New_York"'))
    species: Text | None = Field(
        default=None, description=say('a species profile, such as "blue-crab"')
    )
    invented: bool = Field(default=False, description=say("true or false"))
    water: WaterTable = Field(description=say("a table headed [water]"))
    ramp: RampTable | None = Field(default=None, description=say("a table headed [ramp]"))
    slack: SlackTable | None = Field(default=None, description=say("a table headed [slack]"))
    spots: Annotated[list[SpotTable], Field(max_length=1000)] = Field(
        default=[], description=say("tables headed [[spots]]")
    )
    temperature: TemperatureTable | None = Field(
        default=None, description=say("a table headed [temperature]")
    )
    closures: Annotated[list[ClosureTable], Field(max_length=200)] = Field(
        default=[], description=say("tables headed [[closures]]")
    )
    rules: RulesTable = Field(default=RulesTable(), description=say("a table headed [rules]"))
    free: FreeTable = Field(default=FreeTable(), description=say("a table headed [free]"))
    trip: TripTable = Field(default=TripTable(), description=say("a table headed [trip]"))
