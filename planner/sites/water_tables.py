"""The tables of a place file about its water: constituents, or differences from elsewhere."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from planner.sites.file_values import Clock, Minutes, Number, PhaseReference, Text
from planner.units import LengthUnit
from planner.words import say


class Table(BaseModel):
    """A table of the file: no unknown keys, no silent conversion of types."""

    model_config = ConfigDict(extra="forbid", strict=True, frozen=True)


class ConstituentEntry(Table):
    """One line of [water.constituents]."""

    amplitude: Annotated[Number, Field(ge=0)] = Field(
        description=say("the amplitude in the units of the file, 0 or more")
    )
    phase: Annotated[Number, Field(ge=-360, le=720)] = Field(
        description=say("the phase lag in degrees, 0 to 360")
    )


class TimeColumn(Table):
    """One column of tabled time differences: it holds at `at` and twelve hours later."""

    at: Clock = Field(description=say('a time on the clock of the table, such as "06:00"'))
    minutes: Minutes = Field(description=say("minutes added to the time, such as 23"))


class HeightColumn(Table):
    """One column of tabled height differences."""

    there: Number = Field(description=say("the height at the reference place, such as 4.2"))
    add: Number = Field(description=say("what is added to it, such as 0.3"))


TimeColumns = Annotated[list[TimeColumn], Field(min_length=2, max_length=2)]
HeightColumns = Annotated[list[HeightColumn], Field(min_length=2, max_length=2)]


class TabledTable(Table):
    """[water.offsets.tabled]: differences by time of day and by height at the reference."""

    clock: PhaseReference = Field(
        description=say('the clock of the table, "UTC" or such as "UTC+01:00", never summer time')
    )
    high_times: TimeColumns = Field(
        description=say('two columns such as { at = "00:00", minutes = 35 }')
    )
    low_times: TimeColumns = Field(
        description=say('two columns such as { at = "06:00", minutes = 23 }')
    )
    high_heights: HeightColumns = Field(
        description=say("two columns such as { there = 4.2, add = 1.1 }")
    )
    low_heights: HeightColumns = Field(
        description=say("two columns such as { there = 0.4, add = 0.1 }")
    )


class OffsetsTable(Table):
    """[water.offsets]: high and low waters as those of a reference place, shifted."""

    reference: Text = Field(
        description=say(
            'the place file (or place name) of the reference, such as "other-place.toml"'
        )
    )
    high_minutes: Minutes | None = Field(
        default=None, description=say("minutes added to the times of high water, such as 47")
    )
    low_minutes: Minutes | None = Field(
        default=None, description=say("minutes added to the times of low water, such as 62")
    )
    high_factor: Annotated[Number, Field(gt=0, le=10)] = Field(
        default=1.0, description=say("the ratio of the heights of high water, such as 0.86")
    )
    low_factor: Annotated[Number, Field(gt=0, le=10)] = Field(
        default=1.0, description=say("the ratio of the heights of low water, such as 0.90")
    )
    high_add: Number = Field(
        default=0.0, description=say("what is added to the heights of high water, such as -0.12")
    )
    low_add: Number = Field(
        default=0.0, description=say("what is added to the heights of low water, such as -0.05")
    )
    tabled: TabledTable | None = Field(
        default=None, description=say("a table with clock, high_times, low_times and the heights")
    )


class WaterTable(Table):
    """[water]: what the tide is made of."""

    units: LengthUnit = Field(description=say('the unit of every height in this file, "m" or "ft"'))
    datum: Text = Field(description=say('what zero means, such as "MLLW"'))
    mean_level: Number | None = Field(
        default=None, description=say("the mean water level above the datum, such as 0.26")
    )
    phase_reference: PhaseReference = Field(
        default=0.0,
        description=say(
            'the clock the phase lags were worked out in, "UTC" or such as "UTC-05:00"'
        ),
    )
    node_factors: Literal["yearly", "continuous"] = Field(
        default="yearly", description=say('"yearly" (as agency tables do) or "continuous"')
    )
    constants_state: str = Field(
        default="",
        max_length=200,
        description=say('when the constants were issued, such as "2022"'),
    )
    source: str = Field(
        default="", max_length=1000, description=say("where the constants are from, in quotes")
    )
    constituents: dict[str, ConstituentEntry] | None = Field(
        default=None,
        description=say("lines such as M2 = { amplitude = 0.21, phase = 61.0 }"),
    )
    offsets: OffsetsTable | None = Field(
        default=None, description=say("a table with reference, high_minutes and low_minutes")
    )
