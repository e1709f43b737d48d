"""Figures of the accuracy page beyond heights on a grid: extremes, arguments, offsets, a fit."""

from __future__ import annotations

import re

import numpy as np
from accuracy_table import Figure, turned, worst_mm
from tide_reference import constants, offset_place, place, rows, station, utc, vlissingen

from planner.constituents import STANDARD_37, find
from planner.sites.site import HeightDifferences, TimeDifferences
from planner.tides import Tide
from planner.tides.arguments import Constituents
from planner.tides.differences import addition_by_height, minutes_by_clock, shifted
from planner.tides.turns import TurnList

M_PER_FT = 0.3048


def highest_tides() -> list[Figure]:
    """Return differences from published highest tides, in mm."""
    figures = []
    for number, limit_ft in (("8413320", 0.024), ("", 0.012)):
        tested = [
            row
            for row in rows("stations.csv")
            if row["HAT_minus_MSL_ft_published"]
            and row["station"] != "8656483"  # its datum and constants are of different states
            and (row["station"] == number if number else row["station"] != "8413320")
        ]
        apart = []
        for row in tested:
            tide = station(row["station"], mean_level_m=0.0)
            _, levels = tide.series(utc("1983-01-01"), utc("2002-01-01"), np.timedelta64(6, "m"))
            apart.append(levels.max() - float(row["HAT_minus_MSL_ft_published"]) * M_PER_FT)
        what = "Bar Harbor" if number else f"{len(tested)} other stations"
        figures.append(
            Figure(
                f"{what}, highest tide of 1983 to 2001 over mean sea level",
                "NOAA's datums, to 0.01 ft",
                "mm",
                worst_mm(np.array(apart)),
                (limit_ft + 5e-4) * M_PER_FT * 1000,
            )
        )
    row = rows("predictions/extreme_tides_noaa_9447130.csv")[0]
    tide = Tide(place(constants("9447130_2026"), (14.58 - 7.94) * M_PER_FT))
    when, hours = utc(row["time_utc"].rstrip("Z")), np.timedelta64(6, "h")
    turns = tide.turns(when - hours, when + hours)
    nearest = np.abs(turns.times - when).argmin()
    apart_m = turns.heights[nearest] - float(row["height_m_above_MLLW"])
    what = "Seattle, highest predicted tide, from amplitudes to 0.01 ft"
    return [*figures, Figure(what, "NOAA, April 2026", "mm", worst_mm(apart_m), 14.0)]


def dutch_turns() -> list[Figure]:
    """Return differences of the official high and low waters of a month, in mm."""
    ours, apart = vlissingen().turns(utc("2019-01-01"), utc("2019-02-01")), []
    for row in rows("predictions/turning_points_rws_VLISSGN_201901.csv"):
        same = np.flatnonzero(ours.is_high == (row["type"] == "H"))
        nearest = same[np.abs(ours.times[same] - utc(row["time_utc"].rstrip("Z"))).argmin()]
        apart.append(ours.heights[nearest] - float(row["height_cm_above_NAP"]) / 100)
    what = "Vlissingen, high and low waters of January 2019"
    return [Figure(what, "Rijkswaterstaat", "mm", worst_mm(np.array(apart)), 50.0)]


def arguments_at_instants() -> list[Figure]:
    """Return differences of f and V + u from hatyan at seven instants, beside the libraries'."""
    members = Constituents([find(name) for name in STANDARD_37])
    of_f, of_v = np.zeros(3), np.zeros(3)
    for row in rows("arguments_by_library.csv"):
        if row["name"] == "M1":  # whose perigee each takes in another way: tested by itself
            continue
        index = STANDARD_37.index(row["name"])
        at = np.array([utc(row["time_utc"].rstrip("Z"))]).astype(np.int64)
        f, u = members.f_and_u(at)
        theirs = float(row["V_deg_schureman_hatyan"]) + float(row["u_deg_schureman_hatyan"])
        ours = float(members.v_deg(at)[0, index] + u[0, index])
        for which, (one_f, one_v) in enumerate(
            (
                (float(f[0, index]), ours),
                (row["f_utide_lat45"], row["Vplusu_deg_utide_lat45"]),
                (row["f_pytmd_fes"], row["Vplusu_deg_pytmd_fes"]),
            )
        ):
            if one_f == "" or one_v == "":
                continue
            of_f[which] = max(of_f[which], abs(float(one_f) - float(row["f_schureman_hatyan"])))
            of_v[which] = max(of_v[which], turned(float(one_v) - theirs))
    source = "hatyan 2.14.0, seven instants of 1992 to 2050"
    unit = "hundredths of a degree"
    return [
        Figure("f of 36 constituents", source, "thousandths", *_row(of_f * 1e3, 3.0)),
        Figure("V + u of 36 constituents", source, unit, *_row(of_v * 100, 17.0)),
    ]


def _row(values: np.ndarray, limit: float) -> tuple[float, float, float, float]:
    ours, utide, pytmd = (float(each) for each in values)
    return ours, limit, utide, pytmd


def offset_examples() -> list[Figure]:
    """Return differences from worked examples of both conventions of offsets."""
    day = rows("subordinate_examples_noaa.csv")
    kinds = {row["type"]: row for row in day}
    values = {
        f"{name}_{key}": float(kinds[kind][field]) * scale
        for name, kind in (("high", "H"), ("low", "L"))
        for key, field, scale in (
            ("minutes", "minutes", 1.0),
            ("factor", "ratio", 1.0),
            ("add_m", "increment_ft", M_PER_FT),
        )
    }
    offsets = offset_place(place(constants("8443970")), **values).water.offsets
    assert offsets is not None
    there = TurnList(
        np.array([utc(row["reference_time_local"]).astype(np.int64) for row in day]),
        np.array([float(row["reference_height_ft_MLLW"]) * M_PER_FT for row in day]),
        np.array([row["type"] == "H" for row in day]),
    )
    t_ms, heights = shifted(offsets, there)
    late = t_ms - np.array([utc(row["station_time_local"]).astype(np.int64) for row in day])
    apart = heights - np.array([float(row["station_height_ft_MLLW"]) for row in day]) * M_PER_FT
    source = "NOAA's offsets, 5 August 2020"
    return [
        Figure("Subordinate station, times", source, "min", float(np.abs(late).max()) / 6e4, 0.5),
        Figure("Subordinate station, heights", source, "mm", worst_mm(apart), 0.6e-3 * 304.8),
        *_tabled_examples(),
    ]


def _tabled_examples() -> list[Figure]:
    results = {
        row["example"]: [float(n) for n in re.findall(r"[+-]?\d+\.?\d*", row["result"])]
        for row in rows("secondary_port_examples_uk_style.csv")
    }
    by_day = TimeDifferences(0.0, 35.0, 6.0, 23.0)
    minutes = [
        (
            TimeDifferences(15.0, 51.0, 21.0, 44.0),
            18 + 46 / 60,
            "time difference by time of day",
            1,
        ),
        (by_day, 3.0, "time difference half way", 0),
        (by_day, 6 + 38 / 60, "time and height at a tabulated height", 0),
        (TimeDifferences(0.0, 15.0, 6.0, -10.0), 3.0, "sign trap", 0),
    ]
    late = [
        float(minutes_by_clock(each, np.array([clock_h]))[0]) - results[example][at]
        for each, clock_h, example, at in minutes
    ]
    metres = [
        (HeightDifferences(4.2, 1.1, 3.4, 0.8), 3.8, "height between neaps and springs"),
        (HeightDifferences(0.4, 0.1, 1.1, 0.2), 0.75, "low water height"),
    ]
    apart = [
        float(addition_by_height(each, np.array([there_m]))[0]) - results[example][0]
        for each, there_m, example in metres
    ]
    source = "training pages, to what they print"
    return [
        Figure("Secondary port, times", source, "min", float(np.abs(late).max()), 0.05),
        Figure("Secondary port, heights", source, "mm", worst_mm(np.array(apart)), 0.5),
    ]


def honolulu_fit() -> list[Figure]:
    """Return differences of constants fitted to a year of hours from the published fit."""
    fitted = rows("fit_honolulu_2010.csv")
    sizes = [float(r["fitted_amplitude_mm"]) - float(r["amplitude_mm"]) for r in fitted]
    lags = [
        turned(float(r["fitted_lag_deg"]) - float(r["phase_lag_greenwich_deg"])) for r in fitted
    ]
    source, what = "MATLAB UTide, year of 2010", f"Honolulu, {len(fitted)} constituents of 3 cm up"
    return [
        Figure(f"{what}, amplitude", source, "mm", max(abs(each) for each in sizes), 0.5),
        Figure(f"{what}, lag", source, "hundredths of a degree", max(lags) * 100, 50.0),
    ]
