"""Every wrong value is refused by field, with all others of the file in the same message."""

from __future__ import annotations

import pytest
from place_text import OFFSETS, WHOLE

from planner.sites import SiteError, load_site

# (what stands in the file, what the user wrote instead, field named, words of the message)
SLIPS = [
    ("format = 1", "format = 2", "format", "later Fullshell"),
    ("format = 1\n", "", "format", "is missing"),
    ('name = "Otter Bight"', 'name = " "', "name", "is empty"),
    ('name = "Otter Bight"', "name = 7", "name", "text in quotes"),
    ("latitude = 38.2", "latitude = 138.2", "latitude", "90 or less"),
    ("latitude = 38.2", "latitude = true", "latitude", "must be a number"),
    ("latitude = 38.2", 'latitude = "38.2"', "latitude", "must be a number"),
    ("latitude = 38.2", "latitude = nan", "latitude", "not nan or inf"),
    ("latitude = 38.2", "latitude = -inf", "latitude", "not nan or inf"),
    ("latitude = 38.2", "lattitude = 38.2", "lattitude", "did you mean latitude"),
    ("latitude = 38.2", "lat = 38.2", "lat", "did you mean latitude"),
    ("longitude = -76.1", "longitude = 76.1", "longitude", "west longitudes are negative"),
    ('timezone = "America/New_York"\n', "", "timezone", "is missing"),
    ('"America/New_York"', '"New York"', "timezone", "America/New_York"),
    ('"America/New_York"', '"America"', "timezone", "not a known time zone"),
    ('"America/New_York"', '"../../etc/passwd"', "timezone", "not a known time zone"),
    ('"blue-crab"', "3", "species", "text in quotes"),
    ("invented = true", 'invented = "yes"', "invented", "true or false"),
    ('units = "m"', 'units = "feet"', "water.units", "'m' or 'ft'"),
    ('units = "m"\n', "", "water.units", "is missing"),
    ("mean_level = 0.26\n", "", "water.mean_level", "is missing"),
    ("mean_level = 0.26", "mean_level = 260", "water.mean_level", "cannot be 260.00 m"),
    ('_reference = "UTC"', '_reference = "EST"', "water.phase_reference", '"UTC-05:00"'),
    ('_reference = "UTC"', '_reference = "UTC-25:00"', "water.phase_reference", "fixed distance"),
    ('"yearly"', '"monthly"', "water.node_factors", "'yearly' or 'continuous'"),
    ("M2 = {", "M99 = {", "water.constituents.M99", "not a constituent"),
    ("amplitude = 0.21", "amplitude = -0.21", "water.constituents.M2.amplitude", "0 or more"),
    ("phase = 61.0", "phase = 721", "water.constituents.M2.phase", "720 or less"),
    ("phase = 61.0 }", "phase = 61.0, speed = 2 }", "water.constituents.M2.speed", "not a key"),
    ("amplitude = 0.21,", "", "water.constituents.M2.amplitude", "is missing"),
    ("lowest_level = -0.1", "lowest_level = -99", "ramp.lowest_level", "cannot be"),
    ("depth = 1.8", "depth = 1800", "spots[1].depth", "cannot be 1800.00 m"),
    ("trap_height = 0.35", "trap_height = 14", "spots[1].trap_height", "cannot be 14.00 m"),
    ("trap_height = 0.35\n", "", "spots[1].trap_height", "is missing"),
    ('"deep bend"', '"Grass Edge"', "spots[2].name", "also the name of spot 1"),
    ("monthly = [4, 4,", "monthly = [4,", "temperature.monthly", "at least 12"),
    ("monthly = [4, 4,", "monthly = [4, 4, 4,", "temperature.monthly", "at most 12"),
    ("monthly = [4, 4,", "monthly = [39.2, 52.3,", "temperature.monthly[2]", "degrees Celsius"),
    ('to = "03-15"\n', "", "closures[1].to", "both ends"),
    ('to = "03-15"', 'to = "02-30"', "closures[1].to", "not a day of the year"),
    ('to = "03-15"', "to = 2026-03-15", "closures[1]", "mixes"),
    ("to = 2026-07-05", "to = 2026-07-03", "closures[2]", "ends before it begins"),
    ('weekdays = ["Sun"]', "", "closures[3]", "does not say when"),
    ('weekdays = ["Sun"]', 'weekdays = ["Sunn"]', "closures[3].weekdays[1]", "Mon, Tue"),
    ('reason = "winter"\n', "", "closures[1].reason", "is missing"),
    ("checked = 2026-03-02", 'checked = "March"', "rules.checked", "must be a date"),
    ("max_traps = 20", "max_traps = 2.5", "rules.max_traps", "whole number"),
    ("max_traps = 20", "max_traps = 8", "trip.traps", "more than the 8"),
    ("max_soak_hours = 72", "max_soak_hours = 10", "trip.soak_hours", "over the 10 hours"),
    ('category = "minimum size"\n', "", "rules.notes[1].category", "is missing"),
    ('from = "05:30"', 'from = "21:30"', "free.to", "is not after"),
    ('from = "05:30"', 'from = "5.30"', "free.from", "time of day"),
    ("also = [2026-05-25]", 'also = ["25 May"]', "free.also[1]", "must be a date"),
    ("soak_hours = [14, 50]", "soak_hours = [50, 14]", "trip.soak_hours", "exchange"),
    ("soak_hours = [14, 50]", "soak_hours = 24", "trip.soak_hours", "must be a list"),
    ("latitude = 38.2", "latitude = -38.2", "temperature.monthly", "south is negative"),
    ("mean_level = 0.26", "mean_level = 0,26", "line 12, column 15", "a decimal point"),
    ("K1 = {", "M2 = {", "line 19, column 41", "keep one of the two"),
    (
        "depth = 1.8",
        "depth = 1.8\nlatitude = 38.21\nlongitude = 76.11",
        "spots[1]",
        "west longitudes and south latitudes are negative",
    ),
    ("cover_margin = 0.25", "cover_margin = 25", "trip.cover_margin", "cannot be 25.00 m"),
    ("minutes = 40 ", "minutes = 400 ", "slack.after_high_minutes", "must be 360 or less (found"),
    ("minutes = -15.5", "minutes = -361", "slack.after_low_minutes", "-360 to 360, such as 25"),
    ("minutes = 40 ", 'minutes = "0:40" ', "slack.after_high_minutes", "must be a number"),
    ("after_high_minutes", "high_minutes", "slack.high_minutes", "did you mean after_high"),
]


@pytest.mark.parametrize(("right", "wrong", "where", "words"), SLIPS)
def test_slip_is_named_by_field(refusals, right, wrong, where, words):
    """Each slip gives a problem at its own field, in words with a remedy."""
    assert right in WHOLE
    problems = refusals(WHOLE.replace(right, wrong, 1))
    assert words in problems[where]


def test_all_slips_at_once(refusals):
    """Protects "every problem at once": independent slips do not hide one another."""
    text, expected = WHOLE, set()
    for right, wrong, where, _ in [SLIPS[i] for i in (4, 13, 21, 25, 31, 38, 44, 50, 53)]:
        text = text.replace(right, wrong, 1)
        expected.add(where)
    assert expected <= set(refusals(text))


def test_a_slack_table_that_says_nothing(refusals):
    """An empty table is one not filled in."""
    start = WHOLE.index("after_high_minutes")
    problems = refusals(WHOLE[:start] + WHOLE[WHOLE.index("[[spots]]") :])
    assert "after_high_minutes, after_low_minutes or both" in problems["slack"]


def test_an_amplitude_that_cannot_be_read_is_not_taken_for_none(refusals):
    """A comma in one amplitude must not bring a second problem about the mean level."""
    problems = refusals(WHOLE.replace("amplitude = 0.21", 'amplitude = "0,21"'))
    assert list(problems) == ["water.constituents.M2.amplitude"]


def test_what_was_written_is_shown_in_its_own_letters(refusals):
    """Escapes for accented letters would hide from a Spaniard what he wrote."""
    problems = refusals(WHOLE.replace('species = "blue-crab"', 'species = "jaiba añil\\u0007"'))
    assert 'found "jaiba añil\\x07"' in problems["species"]


def test_no_free_day_at_all(refusals, write):
    """Nobody can plan without a free day; single dates without a day of the week will do."""
    text = WHOLE.replace('weekdays = ["Fri", "Saturday"]', "weekdays = []")
    free = load_site(write(text)).free
    assert (free.weekdays, len(free.also)) == (frozenset(), 1)
    problems = refusals(text.replace("also = [2026-05-25]\n", ""))
    assert "or dates in also" in problems["free.weekdays"]


def test_same_constituent_twice_by_case(refusals):
    """One constituent under two spellings would be counted twice."""
    problems = refusals(WHOLE.replace("K1 = {", "m2 = {"))
    assert "same constituent as M2" in problems["water.constituents.m2"]


@pytest.mark.parametrize("body", ["", "M2 = { amplitude = 0, phase = 0 }"])
def test_no_tide_at_all(refusals, body):
    """Constituents that add up to nothing are a file not filled in."""
    start = WHOLE.index("M2 = {")
    text = WHOLE[:start] + body + "\n" + WHOLE[WHOLE.index("[ramp]") :]
    assert "no amplitude above zero" in refusals(text)["water.constituents"]


def test_feet_read_as_metres_by_size(refusals):
    """Amplitudes in feet of a large tide, under units = "m", are larger than any tide."""
    text = WHOLE.replace("amplitude = 0.21", "amplitude = 11.2").replace(
        "amplitude = 0.05", "amplitude = 1.1"
    )
    assert "feet" in refusals(text)["water.constituents"]


@pytest.mark.parametrize(
    ("right", "wrong"),
    [("mean_level = 0.26", "mean_level = 0.85"), ("amplitude = 0.21", "amplitude = 0.69")],
)
def test_mean_level_and_amplitudes_in_different_units(refusals, right, wrong):
    """0.26 m is 0.85 ft and 0.21 m is 0.69 ft: one of the two in feet cannot be MLLW."""
    problems = refusals(WHOLE.replace(right, wrong))
    assert "in one unit" in problems["water.mean_level"]


def test_mean_level_rule_is_for_low_water_datums_only(write):
    """About another datum the mean level may be anywhere."""
    text = WHOLE.replace('datum = "MLLW"', 'datum = "station datum"')
    site = load_site(write(text.replace("mean_level = 0.26", "mean_level = 4.44")))
    assert site.water.mean_level_m == 4.44


def test_tide_given_twice_or_not_at_all(refusals):
    """Exactly one of constituents and offsets makes the tide."""
    cut = WHOLE[: WHOLE.index("[water.constituents]")] + WHOLE[WHOLE.index("[ramp]") :]
    assert "nothing says what the tide is made of" in refusals(cut)["water"]
    both = WHOLE + OFFSETS[OFFSETS.index("[water.offsets]") :]
    assert "given twice" in refusals(both)["water"]


class TestOffsets:
    """What can be wrong with the reference of an offsets place."""

    def test_missing_reference(self, refusals):
        problems = refusals(OFFSETS)  # itself written as otter-bight.toml: refers to itself
        assert "itself an offset" in problems["water.offsets.reference"]
        problems = refusals(OFFSETS.replace("otter-bight", "nowhere"))
        assert "no such file" in problems["water.offsets.reference, nowhere.toml: file"]

    def test_unknown_name(self, refusals):
        problems = refusals(OFFSETS.replace("otter-bight.toml", "Nowhere Bay"))
        assert any("no such place" in text for text in problems.values())

    def test_two_places_offset_from_each_other(self, write):
        write(OFFSETS.replace("otter-bight", "b"), "a.toml")
        write(OFFSETS.replace("otter-bight", "a"), "b.toml")
        with pytest.raises(SiteError, match="itself an offset"):
            load_site(write(OFFSETS.replace("otter-bight", "a"), "b.toml"))

    def test_reference_with_problems_of_its_own(self, write):
        write(WHOLE.replace("latitude = 38.2", "latitude = 99"))
        with pytest.raises(SiteError, match=r"otter-bight\.toml: latitude"):
            load_site(write(OFFSETS, "heron-slough.toml"))

    def test_high_and_low_water_moved_apart(self, refusals):
        """A lost sign moves low water past the next high water, and no tide is left."""
        problems = refusals(OFFSETS.replace("low_minutes = 62", "low_minutes = -320"))
        assert "check the signs" in problems["water.offsets.low_minutes"]

    def test_impossible_addition(self, refusals):
        problems = refusals(OFFSETS.replace("high_add = -0.1", "high_add = 90"))
        assert "cannot be 27.43 m" in problems["water.offsets.high_add"]


class TestFiles:
    """A file that cannot be read as text is refused before its tables."""

    def test_missing(self, tmp_path):
        with pytest.raises(SiteError, match="no such file"):
            load_site(tmp_path / "nowhere.toml")

    def test_folder(self, tmp_path):
        with pytest.raises(SiteError, match="is a folder"):
            load_site(tmp_path)

    def test_impossible_name(self):
        with pytest.raises(SiteError, match="cannot be read"):
            load_site("a\0b.toml")

    def test_not_utf8_names_the_line(self, tmp_path):
        path = tmp_path / "latin.toml"
        path.write_bytes('format = 1\nname = "Å"\n'.encode("latin-1"))
        with pytest.raises(SiteError, match="line 2: the file is not UTF-8"):
            load_site(path)

    def test_huge(self, tmp_path):
        path = tmp_path / "huge.toml"
        path.write_text("# filler\n" * 200_000, encoding="utf-8")
        with pytest.raises(SiteError, match="larger than"):
            load_site(path)

    def test_syntax_names_line_and_text(self, write):
        with pytest.raises(SiteError, match=r"line 4, column \d+: is not TOML.*38,2"):
            load_site(write(WHOLE.replace("38.2", "38,2")))
        with pytest.raises(SiteError, match=r"line 3 \(the last\): is not TOML"):
            load_site(write('format = 1\nname = "a"\nlist = ['))

    def test_key_twice(self, write):
        with pytest.raises(SiteError, match="line 5"):
            load_site(write(WHOLE.replace("latitude = 38.2", "latitude = 38.2\nlatitude = 38.2")))

    def test_deep_nesting(self, write):
        with pytest.raises(SiteError):
            load_site(write("a = " + "[" * 5000 + "]" * 5000))

    def test_number_with_too_many_digits(self, write):
        with pytest.raises(SiteError):
            load_site(write(WHOLE.replace("38.2", "9" * 5000)))


class TestTabledDifferences:
    """What can be wrong between the columns of tabled differences."""

    TABLED = """
[water.offsets.tabled]
clock = "UTC"
high_times = [{ at = "00:00", minutes = 35 }, { at = "06:00", minutes = 23 }]
low_times = [{ at = "00:00", minutes = 10 }, { at = "06:00", minutes = -5 }]
high_heights = [{ there = 4.2, add = 1.1 }, { there = 3.4, add = 0.8 }]
low_heights = [{ there = 0.4, add = 0.1 }, { there = 1.1, add = 0.2 }]
"""

    def _place(self, tabled):
        head = OFFSETS[: OFFSETS.index("high_minutes")]
        return head + tabled

    def test_columns_that_are_one(self, refusals):
        bent = self.TABLED.replace('at = "06:00", minutes = 23', 'at = "12:00", minutes = 23')
        bent = bent.replace("there = 1.1", "there = 0.4")
        problems = refusals(self._place(bent))
        assert "same times" in problems["water.offsets.tabled.high_times"]
        assert "same height" in problems["water.offsets.tabled.low_heights"]

    def test_one_column_only(self, refusals):
        bent = self.TABLED.replace(', { at = "06:00", minutes = 23 }', "")
        assert "at least 2" in refusals(self._place(bent))["water.offsets.tabled.high_times"]

    def test_beside_plain_offsets(self, refusals):
        problems = refusals(OFFSETS + self.TABLED)
        assert "take its place" in problems["water.offsets.high_add"]

    def test_neither_minutes_nor_tables(self, refusals):
        problems = refusals(self._place(""))
        assert "is missing" in problems["water.offsets.high_minutes"]
        assert "is missing" in problems["water.offsets.low_minutes"]
